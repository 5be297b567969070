//! What comes in and what goes out, whatever network carries it.
//!
//! Knows no network's own types, no language and no dose.

use std::fmt;
use std::hash::{Hash, Hasher};
use std::sync::Arc;

use jiff::Timestamp;

/// A channel as the deployment calls it.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct ChannelName(Arc<str>);

impl ChannelName {
    /// The name.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl From<&str> for ChannelName {
    fn from(name: &str) -> Self {
        Self(name.into())
    }
}

impl fmt::Display for ChannelName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// Whose names addresses are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::EnumString, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Network {
    /// A chat service's numbers of conversations.
    Chat,
    /// Telephone numbers: the same person on every channel that carries SMS.
    Phone,
}

/// Where a person is reached. Its `Debug` form does not show it; two ways to write one number are
/// the same address.
#[derive(Clone)]
pub struct Address {
    network: Network,
    number: String,
    written: String,
}

/// Fewer digits are a service's number, and no person's.
const PHONE_DIGITS_MIN: usize = 6;

impl Address {
    /// A conversation of a chat service.
    #[must_use]
    pub fn chat(id: i64) -> Self {
        Self::of_chat(id.to_string())
    }

    /// A telephone's number, as a network or a gateway writes it: `+255 700 000 001` and
    /// `255700000001` are one.
    #[must_use]
    pub fn phone(written: &str) -> Self {
        let bare: String = written
            .chars()
            .filter(|c| !matches!(c, ' ' | '-' | '(' | ')' | '.' | '\u{a0}'))
            .collect();
        let digits = bare
            .strip_prefix('+')
            .or_else(|| bare.strip_prefix("00"))
            .unwrap_or(&bare);
        // What is no number stays as it is written: a gateway's own name for a person.
        let number = if !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit()) {
            digits.to_owned()
        } else {
            written.trim().to_owned()
        };
        Self {
            network: Network::Phone,
            number,
            written: written.trim().to_owned(),
        }
    }

    /// An address as it was stored: as the network writes it.
    #[must_use]
    pub fn stored(network: Network, written: String) -> Self {
        match network {
            Network::Chat => Self::of_chat(written),
            Network::Phone => Self::phone(&written),
        }
    }

    fn of_chat(number: String) -> Self {
        Self {
            network: Network::Chat,
            written: number.clone(),
            number,
        }
    }

    /// Whose names it is of.
    #[must_use]
    pub const fn network(&self) -> Network {
        self.network
    }

    /// The number, or whatever the network goes by.
    #[must_use]
    pub fn number(&self) -> &str {
        &self.number
    }

    /// As the network wrote it, for the way back: a gateway that puts a plus before its numbers
    /// expects one.
    #[must_use]
    pub fn written(&self) -> &str {
        &self.written
    }

    /// Whether a telephone network's sender is a short code: a service's number, that reads no
    /// answer.
    #[must_use]
    pub fn is_short_code(&self) -> bool {
        match self.network {
            Network::Chat => false,
            Network::Phone => {
                self.number.len() < PHONE_DIGITS_MIN
                    && self.number.bytes().all(|b| b.is_ascii_digit())
            }
        }
    }

    /// Whether a telephone network's sender is a machine: a name in letters or a short code
    /// reads no answer.
    #[must_use]
    pub fn is_of_machine(&self) -> bool {
        match self.network {
            Network::Chat => false,
            Network::Phone => {
                self.number.len() < PHONE_DIGITS_MIN
                    || !self.number.bytes().all(|b| b.is_ascii_digit())
            }
        }
    }
}

impl PartialEq for Address {
    fn eq(&self, other: &Self) -> bool {
        self.network == other.network && self.number == other.number
    }
}

impl Eq for Address {}

impl Hash for Address {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.network.hash(state);
        self.number.hash(state);
    }
}

impl fmt::Debug for Address {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Address({:?}, …)", self.network)
    }
}

/// How a delivery is known again when it comes a second time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DeliveryKey {
    /// The network does not name it: what it is made of, and the session that it came in. The
    /// same again within a short while is the same, unless somebody writes it twice.
    Alike {
        /// Sender, receiver, text and reference as one.
        likeness: String,
        /// When the session with the network began, in milliseconds since 1970.
        session: i64,
    },
    /// The network's own name for it, for ever.
    Named(String),
}

/// Which part of a long message.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct PartOf {
    /// What tells the parts of one message from those of another.
    pub reference: u16,
    /// How many parts there are.
    pub total: u8,
    /// Which this is; the first is 1.
    pub number: u8,
}

/// A message that came in, or a part of one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Arrival {
    /// Who wrote.
    pub from: Address,
    /// What.
    pub text: String,
    /// Which part it is, where it is not all.
    pub part: Option<PartOf>,
    /// How it is known again.
    pub delivery: DeliveryKey,
    /// When.
    pub at: Timestamp,
}

/// The store's number of a message that is to go out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct OutboxId(pub i64);

/// A message that is to go out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Letter {
    /// The store's number of it.
    pub id: OutboxId,
    /// To whom.
    pub to: Address,
    /// What.
    pub text: String,
    /// Words that the person is likely to write next, for networks that can show them.
    pub next_words: Vec<String>,
    /// How many of its segments were accepted in an earlier attempt.
    pub parts_accepted: u32,
    /// Which attempt this is; the first is 1.
    pub attempt: u32,
}

/// How sending ended.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Sending {
    /// The network has it; its names for the segments, for receipts.
    Accepted(Vec<String>),
    /// The network will never take it.
    Failed(String),
    /// The network has so many segments of it, and goes on.
    PartAccepted(u32),
    /// Not now.
    TryAgain {
        /// Why.
        reason: String,
        /// When the network wants it again, if it says so.
        after: Option<std::time::Duration>,
    },
}

/// What became of a message behind the network's acceptance.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Receipt {
    /// The telephone has it.
    Delivered,
    /// It will never have it.
    Undelivered,
}
