//! A modem's session: what is said to it, what it says, and what that means.
//!
//! In: lines and prompts, messages to send, what became of those that came in; the time.
//! Out: octets to write, messages and receipts that are there, how sending ended, how the link
//! stands.
//! Promises that one command is in flight at most and none for ever, that a message leaves the
//! modem's memory only after it was taken, and that a PIN is given once. Does no I/O and has no
//! clock.
//!
//! ```text
//! greeting ──► setting up ──► working ──► (silence) ──► greeting
//!     │             │  ▲
//!     │             ▼  │
//!     │           locked: the SIM wants something that we have not
//!     └─► (silence again and again) ──► resetting ──► over
//! ```

mod event;
mod sending;
mod setup;
mod stored;

use std::collections::VecDeque;
use std::time::{Duration, Instant};

use crate::post::Link;

use super::at::Token;
use super::command::{Command, RESET};
use super::pdu;
use super::said::{Heading, Said};

use sending::Outgoing;
use setup::Reach;
use stored::Shelf;

pub use event::{Action, Event, Found, Key, Octets, Signal};
pub use sending::NotSent;
pub use stored::{Place, Taken, Ticket};

/// Time-outs in a row, or of the same command, after which a modem hangs.
const SILENCES_MAX: u32 = 3;
/// The same while it has not said anything yet: it may still be starting, and one that is reset
/// before it is ready never is.
const FIRST_SILENCES_MAX: u32 = 10;
/// A late answer to what was given up comes within this time.
const AFTER_SILENCE: Duration = Duration::from_secs(1);
/// A modem that was told to start anew needs so long to hear it.
const RESETTING: Duration = Duration::from_secs(3);

/// A session.
#[derive(Debug)]
pub struct Session {
    key: Key,
    phase: Phase,
    asked: Option<Asked>,
    plan: VecDeque<Command>,
    /// Nothing is begun before.
    pause_until: Instant,
    /// Time-outs in a row.
    silences: u32,
    /// How many of them are borne.
    silences_max: u32,
    /// The command that timed out last, and how often, unless it has been answered since.
    stuck: Option<(Command, u32)>,
    /// Said, and its octets are to come.
    heading: Option<Heading>,
    reach: Reach,
    shelf: Shelf,
    outgoing: Option<Outgoing>,
    check_at: Instant,
    link: Option<Link>,
    actions: Vec<Action>,
}

/// Where it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Phase {
    Greeting,
    SettingUp,
    Locked,
    Working,
    Resetting,
    Over,
}

/// A command in flight.
#[derive(Debug, Clone, Copy)]
struct Asked {
    command: Command,
    until: Instant,
}

/// How a command ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Answer {
    Done,
    Refused(super::refusal::Refusal),
}

impl Session {
    /// A session on a line that has just been opened.
    #[must_use]
    pub fn new(key: Key, now: Instant) -> Self {
        Self {
            key,
            phase: Phase::Greeting,
            asked: None,
            plan: VecDeque::new(),
            pause_until: now,
            silences: 0,
            silences_max: FIRST_SILENCES_MAX,
            stuck: None,
            heading: None,
            reach: Reach::new(now),
            shelf: Shelf::new(now),
            outgoing: None,
            check_at: now,
            link: None,
            actions: Vec::new(),
        }
    }

    /// What an event leads to.
    pub fn handle(&mut self, event: Event, now: Instant) -> Vec<Action> {
        match event {
            Event::Heard(Token::Line(line)) => self.heard(&line, now),
            Event::Heard(Token::Prompt) => self.prompted(now),
            Event::Kept(ticket, taken) => self.shelf.settle(ticket, taken, now),
            Event::Send(submit) => self.outgoing = Some(Outgoing::new(submit)),
            Event::Tick => {
                if self.asked.is_some_and(|asked| asked.until <= now) {
                    self.silence(now);
                }
            }
        }
        self.proceed(now);
        std::mem::take(&mut self.actions)
    }

    /// When it wants to be told the time.
    #[must_use]
    pub fn wake_at(&self, now: Instant) -> Instant {
        if let Some(asked) = self.asked {
            return asked.until;
        }
        match self.phase {
            Phase::Greeting | Phase::SettingUp | Phase::Locked | Phase::Resetting => {
                self.pause_until
            }
            Phase::Working => self
                .shelf
                .list_at(now)
                .min(self.check_at)
                .max(self.pause_until),
            Phase::Over => now + RESETTING,
        }
    }

    /// Whether it takes a message to send.
    #[must_use]
    pub fn can_send(&self) -> bool {
        self.phase == Phase::Working && self.reach.is_registered() && self.outgoing.is_none()
    }

    /// Begins what is next, if nothing is in flight.
    fn proceed(&mut self, now: Instant) {
        if self.asked.is_some() || now < self.pause_until {
            return;
        }
        let next = match self.phase {
            Phase::Greeting => Some(self.greeting()),
            Phase::SettingUp => self.plan.pop_front(),
            Phase::Locked => {
                self.phase = Phase::SettingUp;
                Some(Command::PinState)
            }
            Phase::Working => self.plan.pop_front().or_else(|| self.choose(now)),
            Phase::Resetting => {
                self.phase = Phase::Over;
                self.actions
                    .push(Action::Close("the modem was reset".to_owned()));
                None
            }
            Phase::Over => None,
        };
        match next {
            Some(command) => self.begin(command, now),
            None if self.phase == Phase::SettingUp => {
                self.phase = Phase::Working;
                self.shelf.look_everywhere(now);
                self.proceed(now);
            }
            None => {}
        }
    }

    /// What a modem that works is to do now.
    fn choose(&mut self, now: Instant) -> Option<Command> {
        let sends = self.outgoing.is_some().then_some(Command::Send);
        // A memory that is announced to over and over does not keep messages from being sent.
        let command = if self.shelf.lets_send() {
            sends.or_else(|| self.shelf.next(now))
        } else {
            self.shelf.next(now).or(sends)
        };
        if command.is_some() {
            return command;
        }
        if now < self.check_at {
            return None;
        }
        self.plan_check();
        self.plan.pop_front()
    }

    fn begin(&mut self, command: Command, now: Instant) {
        let line = if command == Command::EnterPin {
            self.pin_line()
        } else if command == Command::Send {
            self.shelf.sending();
            self.outgoing.as_ref().map(Outgoing::line)
        } else {
            command.line()
        };
        let Some(line) = line else {
            return;
        };
        if command == Command::List {
            self.shelf.begin_list(now);
        }
        self.reach.forget_what_is_asked(command);
        self.actions
            .push(Action::Write(format!("{line}\r").as_str().into()));
        self.asked = Some(Asked {
            command,
            until: now + command.silence_max(),
        });
    }

    fn heard(&mut self, line: &str, now: Instant) {
        if let Some(heading) = self.heading
            && pdu::is_hex(line)
        {
            self.heading = None;
            self.found(heading, line, now);
            return self.still_listing(now);
        }
        match Said::read(line) {
            Said::Announced(memory) => self.shelf.announced(memory, now),
            Said::Done => self.finished(Answer::Done, now),
            Said::Heading(heading) => {
                self.heading_lost(now);
                self.heading = Some(heading);
                self.still_listing(now);
            }
            Said::Memories(memories) => self.shelf.offered(&memories),
            Said::Nothing => {}
            Said::Pin(state) => self.heard_pin(state, now),
            Said::PinTries(tries) => self.reach.pin_tries = Some(tries),
            Said::Refused(refusal) => self.finished(Answer::Refused(refusal), now),
            Said::Registration(domain, registration) => {
                self.reach.heard(domain, registration);
                if self.phase == Phase::Working && self.asked.is_none() {
                    self.conclude(now);
                }
            }
            Said::Restarted => self.restarted(now),
            Said::Sent(reference) => {
                if let Some(outgoing) = &mut self.outgoing {
                    outgoing.reference = Some(reference);
                }
            }
            Said::Signal(rssi) => self.actions.push(Action::Signal(Signal::of(rssi))),
        }
    }

    /// A listing is as long as it is; only silence ends it early.
    fn still_listing(&mut self, now: Instant) {
        if let Some(asked) = &mut self.asked
            && asked.command == Command::List
            && self.shelf.goes_on()
        {
            asked.until = now + asked.command.silence_max();
        }
    }

    fn finished(&mut self, answer: Answer, now: Instant) {
        self.heading_lost(now);
        let Some(Asked { command, .. }) = self.asked else {
            // A late answer, or noise.
            return;
        };
        if command == Command::Send && answer == Answer::Done && !self.is_taken() {
            // The end of something else: a message is sent when it has a number.
            return;
        }
        self.asked = None;
        self.silences = 0;
        self.silences_max = SILENCES_MAX;
        if self
            .stuck
            .is_some_and(|(stuck, _)| is_alike(stuck, command))
        {
            self.stuck = None;
        }
        self.answered(command, answer, now);
    }

    fn answered(&mut self, command: Command, answer: Answer, now: Instant) {
        match command {
            Command::Announce(how) => self.announces(how, answer),
            Command::Attention | Command::AttentionAfterEscape => self.greeted(answer, now),
            Command::ChooseMemory(memory) => self.keeps_in(memory, answer, now),
            Command::Delete(_) => self.shelf.deleted(),
            // A modem that lacks one of these does as well without it.
            Command::Charset
            | Command::EchoOff
            | Command::ErrorNumbers
            | Command::PduMode
            | Command::Service => {}
            Command::EnterPin => self.pin_answered(answer, now),
            Command::List => self.listed(answer, now),
            Command::Memories => {
                let memory = self.shelf.preferred();
                self.plan.push_front(Command::ChooseMemory(memory));
            }
            Command::PacketRegistration => self.conclude(now),
            Command::PinState => self.pin_state_answered(answer, now),
            Command::PinTries => self.pin_tries_answered(now),
            Command::Registration if self.reach.is_settled() => self.conclude(now),
            Command::Registration => self.plan.push_front(Command::PacketRegistration),
            Command::SelectMemory(memory) => self.shelf.selected(memory, answer, now),
            Command::Send => self.sent(answer, now),
            Command::Signal => self.check_at = now + self.reach.check_after(),
        }
    }

    /// The command in flight has no answer.
    fn silence(&mut self, now: Instant) {
        let Some(Asked { command, .. }) = self.asked.take() else {
            return;
        };
        self.heading_lost(now);
        self.silences += 1;
        let times = match self.stuck {
            Some((stuck, times)) if is_alike(stuck, command) => times + 1,
            _ => 1,
        };
        self.stuck = Some((command, times));
        self.shelf.deleted();
        if command == Command::Send {
            self.unanswered();
        }
        if self.silences.max(times) >= self.silences_max {
            return self.reset("the modem does not answer and is being reset", now);
        }
        if self.phase == Phase::Greeting {
            self.stands(Link::Retrying("the modem does not answer".to_owned()));
        }
        self.greet(now + AFTER_SILENCE);
    }

    fn reset(&mut self, why: &str, now: Instant) {
        self.asked = None;
        self.plan.clear();
        self.give_up_sending(why);
        self.phase = Phase::Resetting;
        self.pause_until = now + RESETTING;
        self.actions.push(Action::Write(RESET.into()));
        self.stands(Link::Retrying(why.to_owned()));
    }

    /// Says how the link stands, if that is new.
    fn stands(&mut self, link: Link) {
        if self.link.as_ref() != Some(&link) {
            self.link = Some(link.clone());
            self.actions.push(Action::Link(link));
        }
    }
}

/// Whether two are the same but for what they are about.
fn is_alike(one: Command, other: Command) -> bool {
    std::mem::discriminant(&one) == std::mem::discriminant(&other)
}
