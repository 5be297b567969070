//! What is remembered of a person.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use crate::quantity::UnitSystem;
use crate::request::Facts;

use super::bottle::{BOTTLES_MAX, Bottle};
use super::state::Talk;

/// One person, as far as the conversation needs to know.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Person {
    /// The language set, BCP 47.
    pub language: Option<String>,
    /// The language of the last message, BCP 47.
    pub wrote: Option<String>,
    /// Whose gallons, where set.
    pub units: Option<UnitSystem>,
    /// The bottles at hand, the one used last first.
    pub bottles: Vec<Bottle>,
    /// Whether unasked messages may be sent.
    pub listening: Listening,
    /// Where the conversation stands.
    pub talk: Talk,
    /// Messages to come.
    pub reminders: Vec<Reminder>,
}

/// Whether unasked messages may be sent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, strum::EnumString, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Listening {
    /// Yes.
    #[default]
    Open,
    /// The person said stop.
    Stopped,
}

/// A message that is to be sent when a wait is over.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Reminder {
    /// When.
    pub due: Timestamp,
    /// What is waited for.
    pub kind: Waited,
    /// How long, in minutes.
    pub wait_min: u64,
}

/// What a wait is for.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    Serialize,
    Deserialize,
    strum::EnumString,
    strum::IntoStaticStr,
    strum::VariantArray,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Waited {
    /// Chlorine in drinking water: the nose says whether it was enough.
    Chlorine,
    /// Another disinfectant.
    Disinfectant,
    /// A test that is to be done again.
    Retest,
    /// Sun.
    Sun,
    /// A surface that is to stay wet.
    Surface,
    /// A well.
    Well,
}

/// More reminders than this at once are a slip.
const REMINDERS_MAX: usize = 5;

impl Person {
    /// The bottle used last.
    #[must_use]
    pub fn current(&self) -> Option<&Bottle> {
        self.bottles.first()
    }

    /// Puts a bottle first, in the place of the same one or as a new one.
    pub(super) fn put_first(&mut self, bottle: Bottle) {
        self.bottles.retain(|other| !other.is_same(&bottle));
        self.bottles.insert(0, bottle);
        self.bottles.truncate(BOTTLES_MAX);
    }

    /// A message at the end of a wait; the oldest of too many are dropped.
    pub(super) fn promise(&mut self, reminder: Option<Reminder>) {
        // A second one for the same kind of wait stands in the place of the first.
        if let Some(new) = reminder {
            self.reminders.retain(|old| old.kind != new.kind);
        }
        self.reminders.extend(reminder);
        let over = self.reminders.len().saturating_sub(REMINDERS_MAX);
        self.reminders.drain(..over);
    }

    /// The bottle that facts rest on.
    pub(super) fn bottle_of(&self, facts: &Facts) -> Option<&Bottle> {
        self.bottles.iter().find(|bottle| bottle.is_of(facts))
    }
}
