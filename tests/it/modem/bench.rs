//! A session and a modem that is none, in a time of their own.

use std::collections::VecDeque;
use std::time::{Duration, Instant};

use matone::channel::modem::at::Splitter;
use matone::channel::modem::pdu::{Incoming, Submit, submit};
use matone::channel::modem::session::{Action, Event, Found, Key, Session, Taken, Ticket};
use matone::channel::modem::{Pin, receiver};
use matone::message::Address;
use matone::post::Link;
use matone::sms::segments;

use super::board::Board;

/// More happens in no test.
const STEPS_MAX: usize = 100_000;
/// Sooner nothing is said to a modem that owes an answer.
const PATIENCE: Duration = Duration::from_secs(3);

pub(crate) struct Bench {
    pub(crate) session: Session,
    pub(crate) board: Board,
    pub(crate) now: Instant,
    /// All that was done but written and found.
    pub(crate) done: Vec<Action>,
    pub(crate) found: Vec<(Option<Ticket>, String)>,
    /// What becomes of what is found; nothing is settled where there is nothing.
    pub(crate) taken: Option<Taken>,
    splitter: Splitter,
    owes_since: Option<Instant>,
}

pub(crate) fn pin(digits: &str) -> Key {
    Key::Untried(Pin::new(digits.to_owned().into()).unwrap())
}

pub(crate) fn message() -> Submit {
    let to = receiver(&Address::phone("+255700000001")).unwrap();
    submit(&to, &segments("Add 8 mL.", 0)[0]).unwrap()
}

impl Bench {
    pub(crate) fn new(board: Board, key: Key) -> Self {
        let now = Instant::now();
        Self {
            session: Session::new(key, now),
            board,
            now,
            done: Vec::new(),
            found: Vec::new(),
            taken: Some(Taken::Yes),
            splitter: Splitter::default(),
            owes_since: None,
        }
    }

    /// A modem that works.
    pub(crate) fn working() -> Self {
        let mut bench = Self::new(Board::new(), Key::Missing);
        bench.pass(10);
        assert!(bench.session.can_send());
        bench
    }

    /// So many seconds go by.
    pub(crate) fn pass(&mut self, seconds: u64) {
        let end = self.now + Duration::from_secs(seconds);
        for _ in 0..STEPS_MAX {
            let wake_at = self.session.wake_at(self.now).max(self.now);
            if wake_at > end {
                self.now = end;
                return;
            }
            // Whoever is woken to no purpose is woken a moment later.
            self.now = wake_at.max(self.now + Duration::from_millis(1));
            self.happen(Event::Tick);
        }
        panic!("it never rests");
    }

    /// The modem says something unasked.
    pub(crate) fn say(&mut self, said: &str) {
        for token in self.splitter.feed(said.as_bytes()) {
            self.happen(Event::Heard(token));
        }
    }

    pub(crate) fn receive(&mut self, line: &str) {
        let said = self.board.receive(line);
        self.say(&said);
    }

    pub(crate) fn happen(&mut self, event: Event) {
        let mut events = VecDeque::from([event]);
        while let Some(event) = events.pop_front() {
            for action in self.session.handle(event, self.now) {
                match action {
                    Action::Write(octets) => {
                        self.write(&octets);
                        for octet in octets.iter().copied() {
                            let said = self.board.feed(octet);
                            if said.contains("OK") || said.contains("ERROR") {
                                self.owes_since = None;
                            }
                            let tokens = self.splitter.feed(said.as_bytes());
                            events.extend(tokens.into_iter().map(Event::Heard));
                        }
                    }
                    Action::Found(Found { ticket, content }) => {
                        let what = match content {
                            Ok(Incoming::Deliver(deliver)) => deliver.text,
                            Ok(Incoming::Report(report)) => format!("{:?}", report.status),
                            Err(error) => error.to_string(),
                        };
                        self.found.push((ticket, what));
                        if let (Some(ticket), Some(taken)) = (ticket, self.taken) {
                            events.push_back(Event::Kept(ticket, taken));
                        }
                    }
                    other => self.done.push(other),
                }
            }
        }
    }

    /// One command at a time: the next only behind its answer, or when it has been waited for.
    fn write(&mut self, octets: &[u8]) {
        if !octets.ends_with(b"\r") {
            return;
        }
        if let Some(since) = self.owes_since {
            assert!(self.now - since >= PATIENCE, "two commands at a time");
        }
        self.owes_since = Some(self.now);
    }

    pub(crate) fn texts(&self) -> Vec<&str> {
        self.found.iter().map(|(_, text)| text.as_str()).collect()
    }

    pub(crate) fn link(&self) -> Option<&Link> {
        self.done.iter().rev().find_map(|action| match action {
            Action::Link(link) => Some(link),
            _ => None,
        })
    }

    pub(crate) fn sent(&self) -> Vec<&Action> {
        self.done
            .iter()
            .filter(|action| matches!(action, Action::Sent(_)))
            .collect()
    }

    pub(crate) fn is_closed(&self) -> bool {
        self.done
            .iter()
            .any(|action| matches!(action, Action::Close(_)))
    }

    pub(crate) fn asked(&self, command: &str) -> usize {
        let asked = self.board.commands.iter();
        asked.filter(|line| line.starts_with(command)).count()
    }
}
