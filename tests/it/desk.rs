//! A desk with a memory, for tests of messages and conversations.

use std::collections::HashMap;
use std::sync::Arc;

use jiff::Timestamp;
use matone::contract::LineOut;
use matone::desk::{Answered, Desk};
use matone::dialogue::Person;
use matone::locale::{FALLBACK, Locales};
use matone::quantity::UnitSystem;
use serde_json::Value;

/// The languages of the program.
pub(crate) fn locales() -> &'static Arc<Locales> {
    Locales::embedded().unwrap_or_else(|errors| panic!("{errors}"))
}

/// The desk with them.
pub(crate) fn desk() -> Desk {
    Desk::new(Arc::clone(locales()), UnitSystem::Metric, FALLBACK)
}

/// A desk that remembers its people.
pub(crate) struct Office {
    desk: Desk,
    people: HashMap<String, Person>,
}

impl Office {
    pub(crate) fn new() -> Self {
        Self {
            desk: desk(),
            people: HashMap::new(),
        }
    }

    /// A desk where one person, `p`, has set a language.
    pub(crate) fn of(language: Option<&str>) -> Self {
        let mut office = Self::new();
        if let Some(language) = language {
            office.set_language("p", language);
        }
        office
    }

    /// A person's set language.
    pub(crate) fn set_language(&mut self, from: &str, language: &str) {
        let person = self.people.entry(from.to_owned()).or_default();
        person.language = Some(language.to_owned());
    }

    /// One message of `p`, answered as the contract's JSON.
    pub(crate) fn hear_json(&mut self, text: &str) -> Value {
        json(&self.hear("p", text, noon()).line(None))
    }

    /// One message of a person.
    pub(crate) fn hear(&mut self, from: &str, text: &str, at: Timestamp) -> Answered {
        let person = self.people.remove(from).unwrap_or_default();
        let answered = self
            .desk
            .answer(&person, text, at)
            .expect("every reply can be formed");
        if let Some(next) = answered.step.person.clone() {
            self.people.insert(from.to_owned(), next);
        }
        answered
    }

    /// One message of somebody who is not known.
    pub(crate) fn once(text: &str) -> Answered {
        Self::new().hear("p", text, noon())
    }

    /// The same, as the contract's JSON.
    pub(crate) fn once_json(text: &str) -> Value {
        json(&Self::once(text).line(None))
    }
}

pub(crate) fn noon() -> Timestamp {
    "2026-03-01T12:00:00Z".parse().expect("a timestamp")
}

pub(crate) fn json(line: &LineOut) -> Value {
    serde_json::to_value(line).expect("a line is JSON")
}

/// The lines of a JSON Lines file under `tests/data`.
pub(crate) fn json_lines(path: &str) -> Vec<Value> {
    let file = format!("{}/tests/data/{path}", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(&file).unwrap_or_else(|error| panic!("{file}: {error}"));
    let lines: Vec<Value> = text
        .lines()
        .map(|line| {
            serde_json::from_str(line).unwrap_or_else(|error| panic!("{path}: {error}: {line}"))
        })
        .collect();
    assert!(!lines.is_empty(), "{path} is empty");
    lines
}
