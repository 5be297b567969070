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

use crate::store::InboxId;

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
    /// Times, likenesses and numbers of what was admitted in the last hour.
    admitted: VecDeque<(Timestamp, u64, InboxId)>,
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

    /// Whether a message is answered. One that was admitted stays so: where the store failed it is
    /// asked about again.
    pub fn admit(&mut self, id: InboxId, person: &str, text: &str, at: Timestamp) -> Admission {
        self.make_room(at);
        let likeness = likeness(text);
        let recent = self.people.entry(person.to_owned()).or_default();
        let since = |span: SignedDuration| at.checked_sub(span).unwrap_or(Timestamp::MIN);
        recent.admitted.retain(|(then, ..)| *then >= since(HOUR));
        if recent.admitted.iter().any(|(.., admitted)| *admitted == id) {
            return Admission::Admitted;
        }
        let within = |span: SignedDuration| {
            let since = since(span);
            recent
                .admitted
                .iter()
                .filter(move |(then, ..)| *then >= since)
        };
        if recent.replies.contains(&likeness) {
            return Admission::Looping;
        }
        let same = within(REPEAT_WITHIN).filter(|(_, other, _)| *other == likeness);
        if same.count() + 1 >= REPEATS_MAX || within(HOUR).count() >= HOURLY_MAX {
            return Admission::Looping;
        }
        if within(MINUTE).count() >= self.per_minute {
            return Admission::OverRate;
        }
        recent.admitted.push_back((at, likeness, id));
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
        let last = |recent: &Recent| recent.admitted.back().map(|(at, ..)| *at);
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

#[cfg(test)]
mod tests {
    use std::sync::atomic::{AtomicI64, Ordering};

    use jiff::{SignedDuration, Timestamp};

    use crate::store::InboxId;

    use super::{Admission, Guard, HOURLY_MAX, PEOPLE_MAX, REPEATS_MAX};

    impl Guard {
        /// A message that was not asked about before.
        fn new_message(&mut self, person: &str, text: &str, at: Timestamp) -> Admission {
            static NEXT: AtomicI64 = AtomicI64::new(0);
            let id = InboxId(NEXT.fetch_add(1, Ordering::Relaxed));
            self.admit(id, person, text, at)
        }
    }

    #[test]
    fn a_message_that_is_asked_about_again_counts_once() {
        let mut guard = Guard::new(1);
        for _ in 0..20 {
            let admission = guard.admit(InboxId(-1), "a", "20 L", at(0));
            assert_eq!(admission, Admission::Admitted);
        }
        assert_eq!(guard.new_message("a", "10 L", at(1)), Admission::OverRate);
    }

    fn at(second: i64) -> Timestamp {
        Timestamp::UNIX_EPOCH + SignedDuration::from_secs(1_770_000_000 + second)
    }

    #[test]
    fn one_person_is_answered_so_often_a_minute_and_another_as_well() {
        let mut guard = Guard::new(3);
        let mut admit =
            |person, n: i64, second| guard.new_message(person, &n.to_string(), at(second));
        for n in 0..3 {
            assert_eq!(admit("a", n, n), Admission::Admitted);
        }
        assert_eq!(admit("a", 3, 59), Admission::OverRate);
        assert_eq!(admit("b", 0, 59), Admission::Admitted);
        assert_eq!(admit("a", 4, 62), Admission::Admitted);
    }

    /// A backlog after a standstill counts as it was written, not as it is answered.
    #[test]
    fn messages_of_different_minutes_are_not_one_burst() {
        let mut guard = Guard::new(1);
        for minute in 0..10 {
            let admission = guard.new_message("a", &minute.to_string(), at(minute * 61));
            assert_eq!(admission, Admission::Admitted);
        }
    }

    #[test]
    fn our_own_words_and_the_same_words_again_and_again_are_a_machines() {
        let mut guard = Guard::new(100);
        assert_eq!(guard.new_message("a", "20 L", at(0)), Admission::Admitted);
        guard.replied("a", "What % is on the label?");
        assert_eq!(
            guard.new_message("a", "what %  is on the LABEL?", at(1)),
            Admission::Looping
        );
        let often = (0..20).map(|n| guard.new_message("b", "I am driving", at(n * 10)));
        let admitted = often.filter(|admission| *admission == Admission::Admitted);
        assert_eq!(admitted.count(), REPEATS_MAX - 1);
        // An hour later it may be a person again.
        assert_eq!(
            guard.new_message("b", "I am driving", at(4000)),
            Admission::Admitted
        );
    }

    #[test]
    fn there_is_an_end_to_two_machines_that_talk() {
        let mut guard = Guard::new(100);
        let admitted = (0..200)
            .filter(|n| guard.new_message("a", &n.to_string(), at(n * 10)) == Admission::Admitted)
            .count();
        assert_eq!(admitted, HOURLY_MAX);
    }

    #[test]
    fn it_keeps_a_bounded_number_of_people_in_mind() {
        let mut guard = Guard::new(12);
        for n in 0..(PEOPLE_MAX as i64 + 5000) {
            guard.new_message(&n.to_string(), "20 L", at(n / 100));
        }
        assert!(guard.people.len() <= PEOPLE_MAX);
    }
}
