//! Lanes: what goes to one address goes one behind the other, and no address waits for another.
//!
//! In: things to send, each with where it goes.
//! Out: those that may be sent now.
//! Pure; as long as what comes in, which the post bounds.

use std::collections::{HashMap, VecDeque};
use std::hash::Hash;

/// What is being sent, and what waits behind it.
#[derive(Debug)]
pub(super) struct Lanes<K, T> {
    /// A lane is there while one of its things is being sent.
    waiting: HashMap<K, VecDeque<T>>,
}

impl<K, T> Default for Lanes<K, T> {
    fn default() -> Self {
        Self {
            waiting: HashMap::new(),
        }
    }
}

impl<K: Eq + Hash, T> Lanes<K, T> {
    /// One more; it is given back if it may be sent now.
    pub(super) fn enter(&mut self, to: K, thing: T) -> Option<T> {
        if let Some(waiting) = self.waiting.get_mut(&to) {
            waiting.push_back(thing);
            return None;
        }
        self.waiting.insert(to, VecDeque::new());
        Some(thing)
    }

    /// What was being sent to an address no longer is; the next one for it.
    pub(super) fn leave(&mut self, to: &K) -> Option<T> {
        let next = self.waiting.get_mut(to).and_then(VecDeque::pop_front);
        if next.is_none() {
            self.waiting.remove(to);
        }
        next
    }

    /// Everything that waits.
    pub(super) fn drain(&mut self) -> Vec<T> {
        self.waiting.drain().flat_map(|(_, lane)| lane).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::Lanes;

    #[test]
    fn one_lane_waits_and_another_does_not() {
        let mut lanes = Lanes::default();
        assert_eq!(lanes.enter("a", 1), Some(1));
        assert_eq!(lanes.enter("a", 2), None);
        assert_eq!(lanes.enter("b", 3), Some(3));
        assert_eq!(lanes.leave(&"a"), Some(2));
        assert_eq!(lanes.leave(&"b"), None);
        assert_eq!(lanes.leave(&"a"), None);
        assert_eq!(lanes.enter("a", 4), Some(4));
    }

    #[test]
    fn what_waits_is_given_back_at_the_end() {
        let mut lanes = Lanes::default();
        lanes.enter("a", 1);
        lanes.enter("a", 2);
        lanes.enter("a", 3);
        assert_eq!(lanes.drain(), [2, 3]);
    }
}
