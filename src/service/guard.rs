//! Who is answered: not more than so often, and no machine that answers back.
//!
//! In: who wrote what, when.
//! Out: whether it is answered.
//! Pure: the message's time comes in as an argument, so that a backlog after a standstill counts
//! as it was written. Keeps a bounded number of people in mind, and no text.

use std::collections::hash_map::DefaultHasher;
use std::collections::{HashMap, VecDeque};
use std::hash::{Hash, Hasher};

use jiff::{SignedDuration, Timestamp};

/// People in mind; beyond that, those who have not written for longest are forgotten.
const PEOPLE_MAX: usize = 20_000;
const MINUTE: SignedDuration = SignedDuration::from_mins(1);
/// The same words again and again within this time are a machine's.
const REPEAT_WITHIN: SignedDuration = SignedDuration::from_mins(10);
/// So often the same is a machine; a person asks for MORE less often.
const REPEATS_MAX: usize = 6;
/// More answers an hour than anybody reads.
const HOURLY_MAX: usize = 60;
const HOUR: SignedDuration = SignedDuration::from_hours(1);
/// Replies of ours that would be known again if they came back.
const REPLIES_KEPT: usize = 4;

/// Whether a message is answered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Admission {
    /// Yes.
    Admitted,
    /// It says what we said, or the same for the sixth time, or there is no end to it.
    Looping,
    /// More in a minute than one person is answered.
    OverRate,
}

/// What is in mind of the last messages.
#[derive(Debug)]
pub struct Guard {
    per_minute: usize,
    people: HashMap<String, Recent>,
}

#[derive(Debug, Default)]
struct Recent {
    /// Times and likenesses of what was admitted in the last hour.
    admitted: VecDeque<(Timestamp, u64)>,
    replies: VecDeque<u64>,
}

impl Guard {
    /// Admits so many messages of one person in a minute.
    #[must_use]
    pub fn new(per_minute: u32) -> Self {
        Self {
            per_minute: per_minute as usize,
            people: HashMap::new(),
        }
    }

    /// Whether a message is answered.
    pub fn admit(&mut self, person: &str, text: &str, at: Timestamp) -> Admission {
        self.make_room(at);
        let likeness = likeness(text);
        let recent = self.people.entry(person.to_owned()).or_default();
        let since = |span: SignedDuration| at.checked_sub(span).unwrap_or(Timestamp::MIN);
        recent.admitted.retain(|(then, _)| *then >= since(HOUR));
        let within = |span: SignedDuration| {
            let since = since(span);
            recent
                .admitted
                .iter()
                .filter(move |(then, _)| *then >= since)
        };
        if recent.replies.contains(&likeness) {
            return Admission::Looping;
        }
        let same = within(REPEAT_WITHIN).filter(|(_, other)| *other == likeness);
        if same.count() + 1 >= REPEATS_MAX || within(HOUR).count() >= HOURLY_MAX {
            return Admission::Looping;
        }
        if within(MINUTE).count() >= self.per_minute {
            return Admission::OverRate;
        }
        recent.admitted.push_back((at, likeness));
        Admission::Admitted
    }

    /// What the person was answered.
    pub fn replied(&mut self, person: &str, reply: &str) {
        if let Some(recent) = self.people.get_mut(person) {
            recent.replies.push_back(likeness(reply));
            while recent.replies.len() > REPLIES_KEPT {
                recent.replies.pop_front();
            }
        }
    }

    fn make_room(&mut self, now: Timestamp) {
        if self.people.len() < PEOPLE_MAX {
            return;
        }
        let since = now.checked_sub(HOUR).unwrap_or(Timestamp::MIN);
        let last = |recent: &Recent| recent.admitted.back().map(|(at, _)| *at);
        self.people
            .retain(|_, recent| last(recent).is_some_and(|at| at >= since));
        if self.people.len() >= PEOPLE_MAX {
            let mut times: Vec<Timestamp> = self.people.values().filter_map(last).collect();
            times.sort_unstable();
            let middle = times.get(times.len() / 2).copied().unwrap_or(now);
            self.people
                .retain(|_, recent| last(recent).is_some_and(|at| at > middle));
        }
    }
}

/// A text without what a network may change in it: spaces and capitals.
fn likeness(text: &str) -> u64 {
    let mut hasher = DefaultHasher::new();
    for word in text.split_whitespace() {
        word.to_lowercase().hash(&mut hasher);
    }
    hasher.finish()
}
