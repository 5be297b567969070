//! The modem's memories: what is in them, in hand, and to be deleted.

use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::time::{Duration, Instant};

use super::super::command::Command;
use super::super::pdu::{self, PduError};
use super::super::said::{Heading, Kept, Memory};
use super::{Action, Answer, Found, Session};

/// How often the memory is looked into, whatever was announced.
const LIST_EVERY: Duration = Duration::from_secs(30);
/// What was not taken, or not read well, is looked for again after this.
const AGAIN_AFTER: Duration = Duration::from_secs(5);
/// Messages that are being taken; what is over stays in its memory until the next look.
const IN_HAND_MAX: usize = 200;
/// Headings and octets of one listing that keep it going: four full memories of the largest kind.
const LISTED_MAX: usize = 2_000;
/// Several that come together are announced one by one and found in one look.
const LOOK_AFTER: Duration = Duration::from_millis(200);
/// What is no message each time it is read, [`AGAIN_AFTER`] apart, will be none the next time.
const READINGS_MAX: u8 = 20;
/// Memories for messages, the best first: a card can be read in another modem.
const FOR_MESSAGES: [Memory; 3] = [Memory::Card, Memory::Equipment, Memory::Joined];

/// Where a message is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// The memory.
    pub memory: Memory,
    /// The place in it.
    pub index: u16,
}

/// One reading of a place. The place may hold another message by the time that one is settled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ticket {
    place: Place,
    number: u64,
}

/// What became of a message that was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Taken {
    /// It is to be found again.
    No,
    /// It can be deleted.
    Yes,
}

/// What is known of the memories.
#[derive(Debug)]
pub(super) struct Shelf {
    /// Where new messages go.
    chosen: Memory,
    /// The one that is read and deleted from.
    selected: Memory,
    offered: BTreeSet<Memory>,
    /// When each is looked into.
    due: BTreeMap<Memory, Instant>,
    /// With the number of the reading.
    in_hand: BTreeMap<Place, u64>,
    readings: u64,
    taken: VecDeque<Place>,
    deleting: Option<Place>,
    /// What could not be read.
    unread: BTreeMap<Place, Unread>,
    listed: usize,
    turn: Turn,
}

/// How often a place could not be read, and when last.
#[derive(Debug, Clone, Copy)]
struct Unread {
    readings: u8,
    at: Instant,
}

/// Whose turn it is where both wait.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Turn {
    Listing,
    Sending,
}

impl Shelf {
    pub(super) fn new(now: Instant) -> Self {
        Self {
            chosen: Memory::Card,
            selected: Memory::Card,
            offered: BTreeSet::new(),
            due: BTreeMap::from([(Memory::Card, now)]),
            in_hand: BTreeMap::new(),
            readings: 0,
            taken: VecDeque::new(),
            deleting: None,
            unread: BTreeMap::new(),
            listed: 0,
            turn: Turn::Listing,
        }
    }

    pub(super) fn list_at(&self, now: Instant) -> Instant {
        self.due.values().copied().min().unwrap_or(now + LIST_EVERY)
    }

    pub(super) fn offered(&mut self, memories: &BTreeSet<Memory>) {
        self.offered.clone_from(memories);
    }

    pub(super) fn preferred(&self) -> Memory {
        FOR_MESSAGES
            .into_iter()
            .find(|memory| self.offered.contains(memory))
            .unwrap_or(Memory::Card)
    }

    /// The memory for everything, if the modem takes it; what to try next if not.
    pub(super) fn chosen(&mut self, memory: Memory, answer: Answer) -> Option<Memory> {
        match answer {
            Answer::Done => {
                self.chosen = memory;
                self.selected = memory;
                None
            }
            Answer::Refused(_) => FOR_MESSAGES
                .into_iter()
                .skip_while(|other| *other != memory)
                .nth(1),
        }
    }

    /// Messages may have come while nobody listened, and into a memory that is not ours to choose.
    pub(super) fn look_everywhere(&mut self, now: Instant) {
        // A session that begins again has forgotten what it was about to delete; it finds it
        // again, and the inbox knows it again.
        self.taken.clear();
        let also = self.offered.iter().copied();
        self.due = also
            .filter(|memory| *memory != Memory::Joined)
            .chain([self.chosen])
            .map(|memory| (memory, now))
            .collect();
        self.in_hand.clear();
    }

    pub(super) fn announced(&mut self, memory: Option<Memory>, now: Instant) {
        let soon = now + LOOK_AFTER;
        let due = self
            .due
            .entry(memory.unwrap_or(self.chosen))
            .or_insert(soon);
        *due = soon.min(*due);
    }

    /// What is to be done: deleting first, it makes room.
    pub(super) fn next(&mut self, now: Instant) -> Option<Command> {
        if let Some(place) = self.taken.front().copied() {
            if place.memory != self.selected {
                return Some(Command::SelectMemory(place.memory));
            }
            self.taken.pop_front();
            self.deleting = Some(place);
            return Some(Command::Delete(place.index));
        }
        let (memory, _) = self.due.iter().find(|(_, due)| **due <= now)?;
        Some(if *memory == self.selected {
            Command::List
        } else {
            Command::SelectMemory(*memory)
        })
    }

    /// Whether a message that waits to be sent goes before the next look.
    pub(super) const fn lets_send(&self) -> bool {
        matches!(self.turn, Turn::Sending)
    }

    pub(super) const fn sending(&mut self) {
        self.turn = Turn::Listing;
    }

    pub(super) fn begin_list(&mut self, now: Instant) {
        self.listed = 0;
        self.turn = Turn::Sending;
        // What is announced from here on may not be in this listing any more.
        if self.selected == self.chosen {
            self.due.insert(self.chosen, now + LIST_EVERY);
        } else {
            self.due.remove(&self.selected);
        }
    }

    /// Whether a listing that has said one thing more is still credible.
    pub(super) const fn goes_on(&mut self) -> bool {
        self.listed += 1;
        self.listed < LISTED_MAX
    }

    pub(super) fn selected(&mut self, memory: Memory, answer: Answer, now: Instant) {
        match answer {
            Answer::Done => self.selected = memory,
            Answer::Refused(_) => {
                self.taken.retain(|place| place.memory != memory);
                self.in_hand.retain(|place, _| place.memory != memory);
                self.due.remove(&memory);
                if memory == self.chosen {
                    self.due.insert(memory, now + LIST_EVERY);
                }
            }
        }
    }

    pub(super) fn settle(&mut self, ticket: Ticket, taken: Taken, now: Instant) {
        let Ticket { place, number } = ticket;
        if self.in_hand.get(&place) != Some(&number) {
            return;
        }
        match taken {
            Taken::No => {
                self.in_hand.remove(&place);
                self.look_again(place.memory, now);
            }
            Taken::Yes => self.taken.push_back(place),
        }
    }

    fn look_again(&mut self, memory: Memory, now: Instant) {
        let again = now + AGAIN_AFTER;
        let due = self.due.entry(memory).or_insert(again);
        *due = again.min(*due);
    }

    /// The place is empty; if it is not, what is there is found again, and known again.
    pub(super) fn deleted(&mut self) {
        if let Some(place) = self.deleting.take() {
            self.in_hand.remove(&place);
        }
    }

    /// Notes that a place could not be read; whether that was once too often.
    fn could_not_read(&mut self, place: Place, now: Instant) -> Readable {
        if self.unread.len() >= IN_HAND_MAX {
            self.unread.clear();
        }
        let unread = self.unread.entry(place).or_insert(Unread {
            readings: 1,
            at: now,
        });
        // Many looks in one moment of noise are one.
        if now.saturating_duration_since(unread.at) >= AGAIN_AFTER {
            unread.readings += 1;
            unread.at = now;
        }
        if unread.readings >= READINGS_MAX {
            self.unread.remove(&place);
            return Readable::Never;
        }
        self.look_again(place.memory, now);
        Readable::Perhaps
    }
}

/// Whether it is worth while to read a place again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Readable {
    Never,
    Perhaps,
}

impl Session {
    /// A heading's octets.
    pub(super) fn found(&mut self, heading: Heading, line: &str, now: Instant) {
        let (index, length) = match heading {
            Heading::Straight { length } => {
                let content = pdu::octets(line, length).and_then(|octets| pdu::read(&octets));
                self.actions.push(Action::Found(Found {
                    ticket: None,
                    content,
                }));
                return;
            }
            Heading::Kept {
                kind: Kept::Outgoing,
                ..
            } => return,
            Heading::Kept {
                index,
                length,
                kind: Kept::Received,
            } => (index, length),
        };
        let Some(place) = self.free(index) else {
            return;
        };
        let mut content = pdu::octets(line, length).and_then(|octets| pdu::read(&octets));
        // A line that lost a character may be whole the next time.
        if let Err(PduError::Broken | PduError::Short) = content {
            if self.shelf.could_not_read(place, now) == Readable::Perhaps {
                return;
            }
            // The same over and over: the modem counts otherwise than the standard does.
            content = pdu::octets_of_any_length(line).and_then(|octets| pdu::read(&octets));
        }
        self.hand_out(place, content);
    }

    /// No octets came behind a heading.
    pub(super) fn heading_lost(&mut self, now: Instant) {
        let Some(Heading::Kept {
            index,
            kind: Kept::Received,
            ..
        }) = self.heading.take()
        else {
            return;
        };
        if let Some(place) = self.free(index)
            && self.shelf.could_not_read(place, now) == Readable::Never
        {
            self.hand_out(place, Err(PduError::Broken));
        }
    }

    /// The place, if nothing of it is in hand and there is room for more.
    fn free(&self, index: u16) -> Option<Place> {
        let place = Place {
            memory: self.shelf.selected,
            index,
        };
        let is_free =
            self.shelf.in_hand.len() < IN_HAND_MAX && !self.shelf.in_hand.contains_key(&place);
        is_free.then_some(place)
    }

    fn hand_out(&mut self, place: Place, content: Result<pdu::Incoming, PduError>) {
        self.shelf.unread.remove(&place);
        self.shelf.readings += 1;
        let number = self.shelf.readings;
        self.shelf.in_hand.insert(place, number);
        self.actions.push(Action::Found(Found {
            ticket: Some(Ticket { place, number }),
            content,
        }));
    }

    pub(super) fn listed(&mut self, answer: Answer, now: Instant) {
        match answer {
            Answer::Done => {}
            Answer::Refused(refusal) if refusal.is_of_card() => self.greet_card(now),
            // Cards are slow to be ready.
            Answer::Refused(_) => {
                let memory = self.shelf.selected;
                if memory == self.shelf.chosen {
                    self.shelf.look_again(memory, now);
                }
            }
        }
    }
}
