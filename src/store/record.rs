//! Rows and JSON of the store, and the way back.
//!
//! A row that an older or newer program wrote and this one cannot read costs the conversation,
//! never the bottle, the units or the languages.

use std::str::FromStr;

use jiff::Timestamp;
use rusqlite::Row;
use serde::{Deserialize, Serialize};

use crate::dialogue::{Bottle, Listening, Person, Reminder, Talk, Waited};

/// Raised when a stored conversation can no longer be read; the old ones lapse.
const TALK_VERSION: u32 = 2;

#[derive(Serialize, Deserialize)]
struct TalkRecord<T> {
    version: u32,
    talk: T,
}

pub(super) fn talk(talk: &Talk) -> Result<String, serde_json::Error> {
    serde_json::to_string(&TalkRecord {
        version: TALK_VERSION,
        talk,
    })
}

fn read_talk(json: &str) -> Talk {
    serde_json::from_str::<TalkRecord<Talk>>(json)
        .ok()
        .filter(|record| record.version == TALK_VERSION)
        .map(|record| record.talk)
        .unwrap_or_default()
}

/// A person without bottles and reminders, which have tables of their own.
pub(super) fn person(row: &Row<'_>) -> rusqlite::Result<Person> {
    let word = |column: &str| row.get::<_, Option<String>>(column);
    Ok(Person {
        language: word("language")?,
        wrote: word("wrote")?,
        units: word("units")?.and_then(|units| units.parse().ok()),
        bottles: Vec::new(),
        listening: word("listening")?
            .and_then(|listening| Listening::from_str(&listening).ok())
            .unwrap_or_default(),
        talk: read_talk(&word("talk")?.unwrap_or_default()),
        reminders: Vec::new(),
    })
}

pub(super) fn bottle(row: &Row<'_>) -> rusqlite::Result<Option<Bottle>> {
    let word = |column: &str| row.get::<_, Option<String>>(column);
    let Ok(told_at) = Timestamp::from_second(row.get("told_at")?) else {
        return Ok(None);
    };
    Ok(Some(Bottle {
        product: word("product")?.and_then(|product| product.parse().ok()),
        strength_percent: row.get("strength_percent")?,
        tablet_mg: row.get("tablet_mg")?,
        opened: word("opened")?.and_then(|date| jiff::civil::Date::from_str(&date).ok()),
        told_at,
        left: word("left_over")?.and_then(|left| serde_json::from_str(&left).ok()),
    }))
}

pub(super) fn reminder(row: &Row<'_>) -> rusqlite::Result<Option<Reminder>> {
    let due = Timestamp::from_second(row.get("due_at")?).ok();
    let kind = Waited::from_str(&row.get::<_, String>("kind")?).ok();
    let wait_min = u64::try_from(row.get::<_, i64>("wait_min")?).ok();
    Ok(due
        .zip(kind)
        .zip(wait_min)
        .map(|((due, kind), wait_min)| Reminder {
            due,
            kind,
            wait_min,
        }))
}
