//! Greeting, PIN, settings, registration.

use std::time::{Duration, Instant};

use crate::post::Link;

use super::super::command::{Announcing, Command};
use super::super::said::{Domain, Memory, PinState, Registration};
use super::{Action, Answer, Key, Phase, Session};

/// A card that is not ready is asked again after this.
const CARD_WAIT: Duration = Duration::from_secs(3);
/// A card that has just got its PIN is ready soon.
const PIN_WAIT: Duration = Duration::from_secs(1);
/// So often it is asked before it counts as refusing.
const PIN_LOOKS: u32 = 10;
/// Somebody may put another card in, or unlock this one.
const LOCKED_WAIT: Duration = Duration::from_secs(60);
/// How often registration and signal are looked at.
const CHECK_EVERY: Duration = Duration::from_secs(60);
/// How often while there is no network.
const CHECK_UNREGISTERED_EVERY: Duration = Duration::from_secs(10);
/// A modem that finds no network for so long may find one when it starts anew.
const UNREGISTERED_MAX: Duration = Duration::from_secs(15 * 60);
/// The last try before the card locks is a person's.
const PIN_TRIES_MIN: u8 = 2;

/// What is known of the card and the network.
#[derive(Debug)]
pub(super) struct Reach {
    pub(super) announcing: Announcing,
    pub(super) pin_state: Option<PinState>,
    pub(super) pin_tries: Option<u8>,
    /// How often the card was asked since it got its PIN.
    pin_looks: Option<u32>,
    circuit: Option<Registration>,
    packet: Option<Registration>,
    registered: Registered,
}

/// Whether messages can be sent.
#[derive(Debug, Clone, Copy)]
enum Registered {
    No { since: Instant },
    Yes,
}

impl Reach {
    pub(super) fn new(now: Instant) -> Self {
        Self {
            announcing: Announcing::default(),
            pin_state: None,
            pin_tries: None,
            pin_looks: None,
            circuit: None,
            packet: None,
            registered: Registered::No { since: now },
        }
    }

    /// An old answer is none to a new question.
    pub(super) fn forget_what_is_asked(&mut self, command: Command) {
        if command == Command::PinState {
            self.pin_state = None;
        } else if command == Command::PinTries {
            self.pin_tries = None;
        } else if command == Command::Registration {
            self.circuit = None;
            self.packet = None;
        }
    }

    pub(super) fn heard(&mut self, domain: Domain, registration: Registration) {
        match domain {
            Domain::Circuit => self.circuit = Some(registration),
            Domain::Packet => self.packet = Some(registration),
        }
    }

    /// Whether messages can be sent, as far as was found out last.
    pub(super) const fn is_registered(&self) -> bool {
        matches!(self.registered, Registered::Yes)
    }

    /// Whether a GSM or UMTS network has us: then there is no need to ask for another.
    pub(super) fn is_settled(&self) -> bool {
        self.circuit == Some(Registration::Registered)
    }

    fn has_network(&self) -> bool {
        let known = [self.circuit, self.packet];
        // Of a modem that tells of neither, the best is believed.
        known.contains(&Some(Registration::Registered)) || known == [None, None]
    }

    pub(super) const fn check_after(&self) -> Duration {
        match self.registered {
            Registered::No { .. } => CHECK_UNREGISTERED_EVERY,
            Registered::Yes => CHECK_EVERY,
        }
    }

    fn why_unregistered(&self) -> &'static str {
        match self.circuit.or(self.packet) {
            Some(Registration::Denied) => "the network denies registration",
            Some(Registration::Searching) => "the modem is looking for a network",
            Some(Registration::Registered | Registration::Unregistered) | None => {
                "the modem has no network"
            }
        }
    }
}

impl Session {
    /// Begins again from the start.
    pub(super) fn greet(&mut self, at: Instant) {
        self.asked = None;
        self.plan.clear();
        self.phase = Phase::Greeting;
        self.pause_until = at;
    }

    /// Begins again from the start: something is the matter with the card.
    pub(super) fn greet_card(&mut self, now: Instant) {
        self.greet(now + CARD_WAIT);
    }

    /// After silence the modem may be waiting for a message's octets.
    pub(super) const fn greeting(&self) -> Command {
        match self.silences {
            0 => Command::Attention,
            _ => Command::AttentionAfterEscape,
        }
    }

    pub(super) fn greeted(&mut self, answer: Answer, now: Instant) {
        match answer {
            // It has taken noise, or the escape, for the beginning of a command.
            Answer::Refused(_) => self.pause_until = now + PIN_WAIT,
            Answer::Done => {
                self.phase = Phase::SettingUp;
                self.plan
                    .extend([Command::EchoOff, Command::ErrorNumbers, Command::PinState]);
            }
        }
    }

    /// The modem says that it has just started: it has forgotten everything.
    pub(super) fn restarted(&mut self, now: Instant) {
        if self.phase == Phase::Working {
            self.give_up_sending("the modem has started anew");
            self.greet(now + PIN_WAIT);
        }
    }

    pub(super) fn heard_pin(&mut self, state: PinState, now: Instant) {
        self.reach.pin_state = Some(state);
        match state {
            PinState::Absent | PinState::Other | PinState::Pin | PinState::Puk => {
                self.restarted(now);
            }
            PinState::Ready => {}
        }
    }

    pub(super) fn pin_state_answered(&mut self, answer: Answer, now: Instant) {
        let state = match answer {
            Answer::Done => self.reach.pin_state.unwrap_or(PinState::Absent),
            Answer::Refused(refusal) if refusal.wants_pin() => PinState::Pin,
            Answer::Refused(refusal) if refusal.wants_puk() => PinState::Puk,
            Answer::Refused(_) => PinState::Absent,
        };
        match (state, &self.key) {
            (PinState::Ready, _) => {
                self.reach.pin_looks = None;
                self.plan_settings();
            }
            (PinState::Absent, _) => {
                self.stands(Link::Retrying(
                    "there is no SIM, or it is not ready".to_owned(),
                ));
                self.ask_card_again(now + CARD_WAIT);
            }
            (PinState::Puk, _) => self.lock("the SIM is locked and wants its PUK", now),
            (PinState::Other, _) => self.lock("the modem wants a code that is not the PIN", now),
            (PinState::Pin, Key::Missing) => self.lock(
                "the SIM wants its PIN, and neither pin_env nor pin_file tells it",
                now,
            ),
            (PinState::Pin, Key::Refused) => self.lock(
                "the SIM wants its PIN, and the one that is configured was refused; it is not \
                 tried again",
                now,
            ),
            (PinState::Pin, Key::Untried(_)) => match self.reach.pin_looks {
                None => self.plan.push_back(Command::PinTries),
                Some(looks) if looks < PIN_LOOKS => {
                    self.reach.pin_looks = Some(looks + 1);
                    self.ask_card_again(now + PIN_WAIT);
                }
                Some(_) => self.refuse_pin(now),
            },
        }
    }

    pub(super) fn pin_tries_answered(&mut self, now: Instant) {
        match self.reach.pin_tries {
            Some(left) if left < PIN_TRIES_MIN => self.lock(
                "the SIM wants its PIN and has one try left, which is a person's",
                now,
            ),
            // Not every modem knows.
            Some(_) | None => self.plan.push_back(Command::EnterPin),
        }
    }

    /// The line that gives the card its PIN; from then on it counts as tried.
    pub(super) fn pin_line(&mut self) -> Option<String> {
        match &self.key {
            Key::Missing | Key::Refused => None,
            Key::Untried(pin) => {
                self.reach.pin_looks = Some(0);
                Some(pin.command())
            }
        }
    }

    pub(super) fn pin_answered(&mut self, answer: Answer, now: Instant) {
        match answer {
            Answer::Done => self.ask_card_again(now + PIN_WAIT),
            // It has not looked at the PIN.
            Answer::Refused(refusal) if refusal.is_busy() => {
                self.reach.pin_looks = None;
                self.ask_card_again(now + CARD_WAIT);
            }
            Answer::Refused(_) => self.refuse_pin(now),
        }
    }

    fn refuse_pin(&mut self, now: Instant) {
        self.key = Key::Refused;
        self.actions.push(Action::PinRefused);
        self.lock("the SIM refused the PIN; it is not tried again", now);
    }

    fn lock(&mut self, why: &str, now: Instant) {
        self.plan.clear();
        self.phase = Phase::Locked;
        self.pause_until = now + LOCKED_WAIT;
        self.stands(Link::Down(why.to_owned()));
    }

    fn ask_card_again(&mut self, at: Instant) {
        self.plan.clear();
        self.plan.push_back(Command::PinState);
        self.pause_until = at;
    }

    /// How the modem took it to be told how it is to announce.
    pub(super) fn announces(&mut self, how: Announcing, answer: Answer) {
        match (answer, how.next()) {
            (Answer::Refused(_), Some(less)) => self.plan.push_front(Command::Announce(less)),
            // A modem that is not ready yet refuses everything; it is asked again.
            (Answer::Refused(_), None) => self.reach.announcing = Announcing::default(),
            (Answer::Done, _) => self.reach.announcing = how,
        }
    }

    /// How the modem took it to be told where to keep messages.
    pub(super) fn keeps_in(&mut self, memory: Memory, answer: Answer, now: Instant) {
        match answer {
            Answer::Refused(refusal) if refusal.is_busy() => {
                self.stands(Link::Retrying("the SIM is busy".to_owned()));
                self.plan.push_front(Command::ChooseMemory(memory));
                self.pause_until = now + CARD_WAIT;
            }
            Answer::Done | Answer::Refused(_) => {
                if let Some(other) = self.shelf.chosen(memory, answer) {
                    self.plan.push_front(Command::ChooseMemory(other));
                }
            }
        }
    }

    fn plan_settings(&mut self) {
        self.reach.announcing = Announcing::default();
        self.plan.extend([
            Command::PduMode,
            Command::Charset,
            Command::Service,
            Command::Memories,
            Command::Announce(self.reach.announcing),
            Command::Registration,
            Command::Signal,
        ]);
    }

    /// A modem that has started anew without a word has forgotten the first two.
    pub(super) fn plan_check(&mut self) {
        self.plan.extend([
            Command::PduMode,
            Command::Announce(self.reach.announcing),
            Command::Registration,
            Command::Signal,
        ]);
    }

    /// What the registration that was heard of means for the link.
    pub(super) fn conclude(&mut self, now: Instant) {
        if self.reach.has_network() {
            self.reach.registered = Registered::Yes;
            return self.stands(Link::Up);
        }
        let since = match self.reach.registered {
            Registered::No { since } => since,
            Registered::Yes => now,
        };
        self.reach.registered = Registered::No { since };
        self.stands(Link::Retrying(self.reach.why_unregistered().to_owned()));
        if now.saturating_duration_since(since) >= UNREGISTERED_MAX {
            self.reset(
                "the modem has found no network for long and is being reset",
                now,
            );
        }
    }
}
