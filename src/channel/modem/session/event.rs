//! What a session is told, and what it has done.

use crate::post::Link;

use super::super::at::Token;
use super::super::pdu::{Incoming, PduError, Submit};
use super::super::pin::Pin;
use super::{NotSent, Taken, Ticket};

/// What happens.
#[derive(Debug)]
pub enum Event {
    /// The modem says something.
    Heard(Token),
    /// A message with this ticket was taken, or not.
    Kept(Ticket, Taken),
    /// A message is to be sent; only when [`super::Session::can_send`].
    Send(Submit),
    /// Time has passed.
    Tick,
}

/// What is to be done.
#[derive(Debug, PartialEq, Eq)]
pub enum Action {
    /// The line is of no use; it is to be opened again.
    Close(String),
    /// A message or a receipt is there.
    Found(Found),
    /// The link stands so.
    Link(Link),
    /// The card has refused the PIN.
    PinRefused,
    /// How sending ended; the modem's number of the message if the network has it.
    Sent(Result<u8, NotSent>),
    /// How well the network is heard.
    Signal(Signal),
    /// Octets for the modem.
    Write(Octets),
}

/// Octets for the modem: a command, or a message.
#[derive(Clone, PartialEq, Eq)]
pub struct Octets(Box<[u8]>);

impl From<&str> for Octets {
    fn from(line: &str) -> Self {
        Self(line.as_bytes().into())
    }
}

impl std::ops::Deref for Octets {
    type Target = [u8];

    fn deref(&self) -> &[u8] {
        &self.0
    }
}

impl std::fmt::Debug for Octets {
    /// They may hold a PIN, a number, a text.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Octets(…)")
    }
}

/// A message or a receipt.
#[derive(Debug, PartialEq, Eq)]
pub struct Found {
    /// What to name it by when it is taken; nothing if the modem does not keep it.
    pub ticket: Option<Ticket>,
    /// What it is.
    pub content: Result<Incoming, PduError>,
}

/// How well the network is heard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Signal {
    /// -85 dBm or better.
    Good,
    /// Enough.
    Fair,
    /// Under -103 dBm: messages may not get through.
    Weak,
    /// The modem cannot tell.
    Unknown,
}

/// What we have for a card that asks for its PIN.
#[derive(Debug, Clone)]
pub enum Key {
    /// Nothing.
    Missing,
    /// What was refused before.
    Refused,
    /// A PIN that no card has refused.
    Untried(Pin),
}

impl Signal {
    /// From what a modem says: 0 is -113 dBm, each step 2 dB.
    #[must_use]
    pub const fn of(rssi: Option<u8>) -> Self {
        match rssi {
            None => Self::Unknown,
            Some(0..5) => Self::Weak,
            Some(5..14) => Self::Fair,
            Some(_) => Self::Good,
        }
    }
}
