//! The states of a conversation.
//!
//! ```text
//!            message understood, a fact lacks
//!   Quiet ─────────────────────────────────────▶ Asking
//!     │ ▲                                          │
//!     │ │ a refusal that ends it, forget           │ the fact comes
//!     ▼ │                                          ▼
//!   Told ◀───────────────────────────────────────(answer)
//!     │  a further question lacks a fact
//!     ▼
//!   AskingAfter ── the fact comes ──▶ Told
//! ```
//!
//! A question lapses after [`QUESTION_LIVES_MINUTES`], an answer after
//! [`ANSWER_LIVES_MINUTES`]: what has lapsed is as if it had never been, so that a figure that
//! comes days later is not taken for an answer to a question nobody remembers.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use crate::parser::Note;
use crate::request::{Facts, Field, Topic, Work};

use super::say::Beside;

/// A question of ours waits for its answer this long.
pub const QUESTION_LIVES_MINUTES: i64 = 60;
/// A few words with a new fact are about the last answer this long.
pub const FOLLOW_UP_LIVES_MINUTES: i64 = 60;
/// "Same but cloudy", `more` and `why` are about the last answer this long.
pub const ANSWER_LIVES_MINUTES: i64 = 24 * 60;

/// Where a conversation stands.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Talk {
    /// Nothing that a message could hang on.
    #[default]
    Quiet,
    /// We asked for a fact.
    Asking(Box<Asked>),
    /// We answered.
    Told(Told),
    /// We asked for a fact, and an answer before it can still be spoken of.
    AskingAfter(Box<Asked>, Told),
}

/// A question of ours.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Asked {
    /// What it asked for.
    pub field: Field,
    /// What the answer is for.
    pub work: Work,
    /// What was said so far.
    pub facts: Facts,
    /// What was noticed so far.
    pub notes: Vec<Note>,
    /// When.
    pub at: Timestamp,
    /// Whether anything hangs on it.
    pub urge: Urge,
}

/// Whether an answer waits for the fact that was asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Urge {
    /// Something was answered; with the fact it can be said more exactly.
    Invited,
    /// Nothing can be answered without it: the question is put again.
    Needed,
}

/// What we answered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Told {
    /// The last answer, for `more` and `why`.
    pub last: Answered,
    /// The last answer with figures of the person's own, for follow-ups, faster and weaker. "How
    /// do I store it?" in between does not put an end to "same but cloudy".
    pub work: Option<Answered>,
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
    /// What was counted, promised and seen beside it.
    #[serde(default)]
    pub beside: Beside,
}

impl Talk {
    /// Our question, while it waits for its answer.
    #[must_use]
    pub fn asked(&self, now: Timestamp) -> Option<&Asked> {
        match self {
            Self::Asking(asked) | Self::AskingAfter(asked, _) => Some(asked.as_ref()),
            Self::Quiet | Self::Told(_) => None,
        }
        .filter(|asked| lives(asked.at, now, QUESTION_LIVES_MINUTES))
    }

    fn told(&self) -> Option<&Told> {
        match self {
            Self::Told(told) | Self::AskingAfter(_, told) => Some(told),
            Self::Quiet | Self::Asking(_) => None,
        }
    }

    /// Our last answer, while it is no older than so many minutes.
    #[must_use]
    pub fn last(&self, now: Timestamp, minutes: i64) -> Option<&Answered> {
        self.told()
            .map(|told| &told.last)
            .filter(|last| lives(last.at, now, minutes))
    }

    /// Our last answer with figures, while it is no older than so many minutes.
    #[must_use]
    pub fn work(&self, now: Timestamp, minutes: i64) -> Option<&Answered> {
        self.told()
            .and_then(|told| told.work.as_ref())
            .filter(|work| lives(work.at, now, minutes))
    }

    /// We ask.
    #[must_use]
    pub fn ask(self, asked: Asked) -> Self {
        match self {
            Self::Quiet | Self::Asking(_) => Self::Asking(Box::new(asked)),
            Self::Told(told) | Self::AskingAfter(_, told) => {
                Self::AskingAfter(Box::new(asked), told)
            }
        }
    }

    /// We answer. A question about something else goes on waiting.
    #[must_use]
    pub fn tell(self, answered: Answered) -> Self {
        let work_before = self.told().and_then(|told| told.work.clone());
        let work = if answered.topic.work().is_some() {
            Some(answered.clone())
        } else {
            work_before
        };
        let told = Told {
            last: answered,
            work,
        };
        match self {
            Self::Asking(asked) | Self::AskingAfter(asked, _)
                if told.last.topic.work().is_none() =>
            {
                Self::AskingAfter(asked, told)
            }
            Self::Quiet | Self::Told(_) | Self::Asking(_) | Self::AskingAfter(..) => {
                Self::Told(told)
            }
        }
    }

    /// Nothing but what must not be forgotten.
    #[must_use]
    pub fn only(cautions: Option<Answered>) -> Self {
        match cautions {
            Some(cautions) => Self::default().tell(cautions),
            None => Self::Quiet,
        }
    }

    /// The question is withdrawn.
    #[must_use]
    pub fn close(self) -> Self {
        match self {
            Self::Quiet | Self::Asking(_) => Self::Quiet,
            Self::Told(told) | Self::AskingAfter(_, told) => Self::Told(told),
        }
    }
}

/// Whether no more than so many minutes have passed. A clock that was set back does not make an
/// old question young: the distance counts.
#[must_use]
pub(super) fn lives(since: Timestamp, now: Timestamp, minutes: i64) -> bool {
    (now.as_second() - since.as_second()).abs() <= minutes * 60
}
