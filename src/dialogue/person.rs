//! What is remembered of a person.

use jiff::Timestamp;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::parser::Note;
use crate::quantity::UnitSystem;
use crate::request::{Facts, Field, Product, Topic};

/// One person, as far as the conversation needs to know.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Person {
    /// The language set, BCP 47.
    pub language: Option<String>,
    /// Whose gallons, where set.
    pub units: Option<UnitSystem>,
    /// The bottle at hand.
    pub bottle: Option<Bottle>,
    /// Whether unasked messages may be sent.
    pub listening: Listening,
    /// Where the conversation stands.
    pub talk: Talk,
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

/// A remembered bottle or box.
#[derive(Debug, Clone, PartialEq)]
pub struct Bottle {
    /// The product, where said.
    pub product: Option<Product>,
    /// Its strength, percent.
    pub strength_percent: Option<f64>,
    /// Its tablets' mg.
    pub tablet_mg: Option<f64>,
    /// When it was opened.
    pub opened: Option<Date>,
    /// When we were told.
    pub told_at: Timestamp,
}

impl Bottle {
    /// Liquid chlorine over a year old is to be replaced (EPA 816-F-15-003: "less than one year
    /// old"). Without a date, the day we were told stands for it.
    #[must_use]
    pub fn is_old(&self, now: Timestamp) -> bool {
        const DAYS: i64 = 365;
        let since = self.opened.unwrap_or_else(|| date_of(self.told_at));
        date_of(now).duration_since(since).as_hours() > DAYS * 24
    }
}

/// The day, everywhere the same: a bottle's age does not hang on a time zone.
pub(super) fn date_of(timestamp: Timestamp) -> Date {
    jiff::tz::TimeZone::UTC.to_datetime(timestamp).date()
}

/// Where a conversation stands. A question of ours and the last answer live side by side: a
/// question is not forgotten because something else was said in between.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Talk {
    /// The question we asked, until it is answered or lapses.
    pub asked: Option<Asked>,
    /// The last answer we gave, for follow-ups, `more` and `why`.
    pub answered: Option<Answered>,
}

/// A question of ours.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Asked {
    /// What it asked for.
    pub field: Field,
    /// What the answer is for.
    pub topic: Topic,
    /// What was said so far.
    pub facts: Facts,
    /// What was noticed so far.
    pub notes: Vec<Note>,
    /// When.
    pub at: Timestamp,
}

/// An answer of ours.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Answered {
    /// What it was about.
    pub topic: Topic,
    /// All the facts it rested on, remembered ones included.
    pub facts: Facts,
    /// What was noticed.
    pub notes: Vec<Note>,
    /// When.
    pub at: Timestamp,
}

/// A question of ours waits for its answer this long.
pub const QUESTION_LIVES_MINUTES: i64 = 60;
/// A few words with a new fact are about the last answer this long.
pub const FOLLOW_UP_LIVES_MINUTES: i64 = 60;
/// "Same but cloudy", `more` and `why` are about the last answer this long.
pub const ANSWER_LIVES_MINUTES: i64 = 24 * 60;

/// Whether no more than so many minutes have passed. A clock that was set back does not make an
/// old question young: the distance counts.
#[must_use]
pub(super) fn lives(since: Timestamp, now: Timestamp, minutes: i64) -> bool {
    (now.as_second() - since.as_second()).abs() <= minutes * 60
}
