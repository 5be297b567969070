//! A session with an SMSC, from the bind to the unbind.
//!
//! In: PDUs and the time.
//! Out: commands to send, and what is to be done about each PDU.
//! Promises that every request is answered in the standard's way, that no answer is answered, and
//! that silence ends the session.
//! Pure: the clock's time comes in as an argument. Follows SMPP 3.4, sections 2 and 4.

use std::time::{Duration, Instant};

use rusmpp::pdus::DeliverSmResp;
use rusmpp::{Command, CommandId, CommandStatus, Pdu as Body};

use super::bind::{Credentials, bind};
use super::delivery::Delivery;
use super::fields::text;
use super::frame::{FrameError, Pdu, command};
use super::queue::ANSWER_WAIT;
use super::status;

/// The last number that a sequence may have, section 3.2.
const SEQUENCE_MAX: u32 = 0x7fff_ffff;
/// The other side has so long to say goodbye.
const GOODBYE_WAIT: Duration = Duration::from_secs(1);

/// Why a session ended.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Over {
    /// The other side closed the connection.
    #[error("the SMSC closed the connection")]
    Closed,
    /// We said goodbye.
    #[error("the program is ending")]
    Ended,
    /// The stream is of no more use.
    #[error("{0}")]
    Frame(#[from] FrameError),
    /// The connection failed.
    #[error("the connection failed: {0}")]
    Io(std::io::ErrorKind),
    /// We are no longer bound.
    #[error("the SMSC no longer knows the session")]
    NotBound,
    /// We may not bind.
    #[error("the SMSC refused bind_transceiver: {0}")]
    Refused(String),
    /// A request was not answered.
    #[error("the SMSC did not answer {0}")]
    Silent(&'static str),
    /// The other side said goodbye.
    #[error("the SMSC sent unbind")]
    Unbound,
}

/// What is to be done about a PDU.
#[derive(Debug, PartialEq)]
pub enum Event {
    /// A `submit_sm` was answered, by this name if it was accepted.
    Answered {
        /// Which.
        sequence: u32,
        /// How.
        status: CommandStatus,
        /// What the SMSC calls the message.
        name: Option<String>,
    },
    /// We may send and receive.
    Bound,
    /// A message is brought; to be answered when it is taken. Nothing where it cannot be read.
    Delivered {
        /// What the answer carries.
        sequence: u32,
        /// What is brought.
        delivery: Option<Box<Delivery>>,
    },
    /// The session is over.
    Over(Over),
}

/// What comes of a PDU or of time.
#[derive(Debug, Default, PartialEq)]
pub struct Reaction {
    /// To be sent.
    pub send: Option<Command>,
    /// To be done.
    pub event: Option<Event>,
}

#[derive(Debug)]
enum Stage {
    Binding { sequence: u32, since: Instant },
    Bound { asked: Option<Instant> },
    Unbinding { since: Instant },
}

/// A session.
#[derive(Debug)]
pub struct Session {
    stage: Stage,
    next_sequence: u32,
    heard_at: Instant,
    enquire_every: Duration,
}

impl Session {
    /// Begins one on a new connection, with the command to send first.
    #[must_use]
    pub fn begin(
        credentials: &Credentials,
        enquire_every: Duration,
        now: Instant,
    ) -> (Self, Command) {
        let (sequence, next_sequence) = (1, 2);
        let session = Self {
            stage: Stage::Binding {
                sequence,
                since: now,
            },
            next_sequence,
            heard_at: now,
            enquire_every,
        };
        let bind = command(CommandStatus::EsmeRok, sequence, bind(credentials));
        (session, bind)
    }

    /// The number of the next request.
    pub fn sequence(&mut self) -> u32 {
        let sequence = self.next_sequence;
        self.next_sequence = following(sequence);
        sequence
    }

    /// Whether messages can be sent.
    #[must_use]
    pub const fn is_bound(&self) -> bool {
        matches!(self.stage, Stage::Bound { .. })
    }

    /// A PDU came.
    #[must_use]
    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "the list is the standard's and open: what is not known is refused or ignored"
    )]
    pub fn heard(&mut self, pdu: &Pdu, now: Instant) -> Reaction {
        self.heard_at = now;
        if let Stage::Bound { asked } = &mut self.stage {
            // Whatever comes, the other side is there.
            *asked = None;
        }
        match pdu.id {
            CommandId::BindTransceiverResp => self.bound(pdu),
            CommandId::DeliverSm => self.delivered(pdu),
            CommandId::EnquireLink => reply(pdu, Body::EnquireLinkResp),
            CommandId::GenericNack => self.refused(pdu),
            CommandId::SubmitSmResp => {
                let name = text(&pdu.body);
                let is_named = pdu.status == CommandStatus::EsmeRok && !name.is_empty();
                answered(pdu, pdu.status, is_named.then_some(name))
            }
            CommandId::Unbind => Reaction {
                event: Some(Event::Over(Over::Unbound)),
                ..reply(pdu, Body::UnbindResp)
            },
            CommandId::UnbindResp => match self.stage {
                Stage::Unbinding { .. } => over(Over::Ended),
                Stage::Binding { .. } | Stage::Bound { .. } => Reaction::default(),
            },
            // These have no answer.
            CommandId::AlertNotification | CommandId::Outbind => Reaction::default(),
            id if id.is_response() => Reaction::default(),
            id => {
                tracing::warn!(
                    command_id = format!("0x{:08x}", u32::from(id)),
                    "a PDU that an ESME does not take is refused"
                );
                let nack = command(
                    CommandStatus::EsmeRinvcmdid,
                    pdu.sequence,
                    Body::GenericNack,
                );
                Reaction {
                    send: Some(nack),
                    event: None,
                }
            }
        }
    }

    fn bound(&mut self, pdu: &Pdu) -> Reaction {
        let Stage::Binding { sequence, .. } = self.stage else {
            return Reaction::default();
        };
        if pdu.status != CommandStatus::EsmeRok {
            return over(Over::Refused(status::name(pdu.status)));
        }
        if pdu.sequence != sequence {
            return Reaction::default();
        }
        self.stage = Stage::Bound { asked: None };
        Reaction {
            event: Some(Event::Bound),
            send: None,
        }
    }

    fn delivered(&self, pdu: &Pdu) -> Reaction {
        match self.stage {
            Stage::Binding { .. } => Reaction {
                send: Some(delivered(pdu.sequence, CommandStatus::EsmeRinvbndsts)),
                event: None,
            },
            Stage::Bound { .. } => Reaction {
                send: None,
                event: Some(Event::Delivered {
                    sequence: pdu.sequence,
                    delivery: Delivery::read(&pdu.body).map(Box::new),
                }),
            },
            // What is not answered is brought again in the next session.
            Stage::Unbinding { .. } => Reaction::default(),
        }
    }

    fn refused(&self, pdu: &Pdu) -> Reaction {
        match self.stage {
            Stage::Binding { .. } => over(Over::Refused(status::name(pdu.status))),
            Stage::Bound { .. } | Stage::Unbinding { .. } => {
                // To refuse and say that all is well is no acceptance.
                let status = if pdu.status == CommandStatus::EsmeRok {
                    CommandStatus::EsmeRsyserr
                } else {
                    pdu.status
                };
                answered(pdu, status, None)
            }
        }
    }

    /// Time went by.
    #[must_use]
    pub fn tick(&mut self, now: Instant) -> Reaction {
        if now < self.wake_at() {
            return Reaction::default();
        }
        match &mut self.stage {
            Stage::Binding { .. } => over(Over::Silent("bind_transceiver")),
            Stage::Bound { asked: Some(_) } => over(Over::Silent("enquire_link")),
            Stage::Bound { asked } => {
                *asked = Some(now);
                let sequence = self.sequence();
                Reaction {
                    send: Some(command(CommandStatus::EsmeRok, sequence, Body::EnquireLink)),
                    event: None,
                }
            }
            Stage::Unbinding { .. } => over(Over::Ended),
        }
    }

    /// When [`Self::tick`] has something to do.
    #[must_use]
    pub fn wake_at(&self) -> Instant {
        match self.stage {
            Stage::Binding { since, .. } => since + ANSWER_WAIT,
            Stage::Bound { asked: Some(since) } => since + ANSWER_WAIT,
            Stage::Bound { asked: None } => self.heard_at + self.enquire_every,
            Stage::Unbinding { since } => since + GOODBYE_WAIT,
        }
    }

    /// Says goodbye; the session is over when that is answered, or soon after.
    #[must_use]
    pub fn unbind(&mut self, now: Instant) -> Command {
        self.stage = Stage::Unbinding { since: now };
        command(CommandStatus::EsmeRok, self.sequence(), Body::Unbind)
    }
}

/// The sequence number behind another: a session of months comes to the last one.
#[must_use]
pub const fn following(sequence: u32) -> u32 {
    if sequence >= SEQUENCE_MAX {
        1
    } else {
        sequence + 1
    }
}

/// The answer to a `deliver_sm`.
#[must_use]
pub fn delivered(sequence: u32, status: CommandStatus) -> Command {
    command(status, sequence, DeliverSmResp::default())
}

/// What tells the other side that it lost the measure of its PDUs.
#[must_use]
pub fn unframed() -> Command {
    command(CommandStatus::EsmeRinvcmdlen, 0, Body::GenericNack)
}

fn reply(pdu: &Pdu, body: Body) -> Reaction {
    Reaction {
        send: Some(command(CommandStatus::EsmeRok, pdu.sequence, body)),
        event: None,
    }
}

const fn over(over: Over) -> Reaction {
    Reaction {
        send: None,
        event: Some(Event::Over(over)),
    }
}

const fn answered(pdu: &Pdu, status: CommandStatus, name: Option<String>) -> Reaction {
    Reaction {
        send: None,
        event: Some(Event::Answered {
            sequence: pdu.sequence,
            status,
            name,
        }),
    }
}
