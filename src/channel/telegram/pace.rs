//! How fast messages go out: the service's limits, overall and for each chat.
//!
//! In: which chat, and the time.
//! Out: whether it is that chat's turn.
//! Pure: the time comes in as an argument. Keeps only chats of the last second in mind, and those
//! that the service asked to wait with.

use std::collections::{HashMap, VecDeque};
use std::time::Duration;

use tokio::time::Instant;

const SECOND: Duration = Duration::from_secs(1);
/// The service takes thirty a second; the way there bunches them.
const PER_SECOND: usize = 25;
/// As above: a little more than the second that the service asks for.
const PER_CHAT: Duration = Duration::from_millis(1050);
/// Chats in mind before those that need it no more are looked for.
const CHATS_KEPT: usize = 512;

/// When what was sent was sent.
#[derive(Debug, Default)]
pub(super) struct Pace {
    /// In the last second, the oldest first.
    sent: VecDeque<Instant>,
    chats: HashMap<i64, Free>,
}

/// When a chat may be written to again.
#[derive(Debug, Clone, Copy)]
enum Free {
    /// Soon.
    At(Instant),
    /// When the service has got over what was sent there.
    Held(Instant),
}

/// Whether a message may go.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Turn {
    /// The service asked to leave the chat alone for so long.
    Held(Duration),
    /// It goes, and is counted.
    Now,
    /// Ask again after so long.
    Wait(Duration),
}

impl Pace {
    /// Whether a message may go to a chat.
    pub(super) fn turn(&mut self, chat: i64, now: Instant) -> Turn {
        match self.chats.get(&chat) {
            Some(Free::Held(until)) if *until > now => return Turn::Held(*until - now),
            Some(Free::At(at)) if *at > now => return Turn::Wait(*at - now),
            Some(Free::At(_) | Free::Held(_)) | None => {}
        }
        while self.sent.front().is_some_and(|at| *at + SECOND <= now) {
            self.sent.pop_front();
        }
        match self.sent.front() {
            Some(oldest) if self.sent.len() >= PER_SECOND => Turn::Wait(*oldest + SECOND - now),
            Some(_) | None => {
                self.sent.push_back(now);
                self.make_room(now);
                self.chats.insert(chat, Free::At(now + PER_CHAT));
                Turn::Now
            }
        }
    }

    /// The service asks to wait a little with a chat.
    pub(super) fn defer(&mut self, chat: i64, until: Instant) {
        self.chats.insert(chat, Free::At(until));
    }

    /// The service asks to leave a chat alone.
    pub(super) fn hold(&mut self, chat: i64, until: Instant) {
        self.chats.insert(chat, Free::Held(until));
    }

    fn make_room(&mut self, now: Instant) {
        if self.chats.len() >= CHATS_KEPT {
            self.chats.retain(|_, free| match free {
                Free::At(at) | Free::Held(at) => *at > now,
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Duration, Instant, PER_CHAT, PER_SECOND, Pace, SECOND, Turn};

    #[test]
    fn a_chat_waits_for_itself_only() {
        let mut pace = Pace::default();
        let now = Instant::now();
        assert_eq!(pace.turn(1, now), Turn::Now);
        assert_eq!(pace.turn(1, now), Turn::Wait(PER_CHAT));
        assert_eq!(pace.turn(2, now), Turn::Now);
        assert_eq!(pace.turn(1, now + PER_CHAT), Turn::Now);
    }

    #[test]
    fn no_second_has_more_than_its_share() {
        let mut pace = Pace::default();
        let start = Instant::now();
        let mut sent = Vec::new();
        let mut now = start;
        for chat in 0..500 {
            while let Turn::Wait(wait) = pace.turn(chat, now) {
                now += wait;
            }
            sent.push(now);
            now += Duration::from_millis(1);
        }
        for (first, last) in sent.iter().zip(sent.iter().skip(PER_SECOND)) {
            assert!(*last - *first >= SECOND);
        }
        assert!(now - start < Duration::from_secs(21));
    }

    #[test]
    fn a_chat_that_is_held_is_left_alone() {
        let mut pace = Pace::default();
        let now = Instant::now();
        let seconds = Duration::from_secs;
        pace.hold(1, now + seconds(7));
        assert_eq!(pace.turn(1, now + seconds(3)), Turn::Held(seconds(4)));
        assert_eq!(pace.turn(2, now), Turn::Now);
        assert_eq!(pace.turn(1, now + seconds(7)), Turn::Now);
    }

    #[test]
    fn chats_are_forgotten() {
        let mut pace = Pace::default();
        let mut now = Instant::now();
        for chat in 0..5_000 {
            now += SECOND;
            assert_eq!(pace.turn(chat, now), Turn::Now);
        }
        assert!(pace.chats.len() <= super::CHATS_KEPT);
    }
}
