//! Commands, and how long a modem may be silent over each.
//!
//! Follows 3GPP TS 27.005, TS 27.007 and ITU-T V.250.

use std::time::Duration;

use super::said::Memory;

/// A command that can be in flight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Command {
    /// How new messages are told of.
    Announce(Announcing),
    /// Are you there?
    Attention,
    /// Are you there? If you are waiting for a message's octets, stop waiting.
    AttentionAfterEscape,
    /// Names come in the default alphabet.
    Charset,
    /// The memory for everything.
    ChooseMemory(Memory),
    /// Removes a message from the memory that is read.
    Delete(u16),
    /// Commands are not sent back.
    EchoOff,
    /// The PIN.
    EnterPin,
    /// Errors have numbers.
    ErrorNumbers,
    /// All messages of the memory that is read.
    List,
    /// Which memories there are.
    Memories,
    /// Whether an LTE network has us.
    PacketRegistration,
    /// Messages as octets.
    PduMode,
    /// What the SIM waits for.
    PinState,
    /// How often the PIN may still be tried.
    PinTries,
    /// Whether a network has us.
    Registration,
    /// The memory that is read.
    SelectMemory(Memory),
    /// A message to the network.
    Send,
    /// Messages that come in need no word from us.
    Service,
    /// How well the network is heard.
    Signal,
}

/// How a modem tells of new messages and receipts: stored and announced first, and what it can do
/// less well after it. Messages in a memory outlive a power cut.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Announcing {
    /// Messages are announced, receipts come at once.
    #[default]
    ReceiptsAtOnce,
    /// Both are announced.
    ReceiptsStored,
    /// There are no receipts.
    NoReceipts,
    /// Nothing is; the memory is looked into.
    Nothing,
}

/// Starts the modem anew. Nothing is awaited of a modem that hangs.
pub const RESET: &str = "AT+CFUN=1,1\r";
/// Ends a wait for a message's octets.
pub const ESCAPE: &str = "\x1b";
/// Ends a message's octets.
pub const CTRL_Z: char = '\x1a';

const AT_ONCE: Duration = Duration::from_secs(3);
const SOON: Duration = Duration::from_secs(5);
const FROM_THE_CARD: Duration = Duration::from_secs(10);
const FROM_THE_NETWORK: Duration = Duration::from_secs(120);

impl Command {
    /// How long the modem may say nothing.
    #[must_use]
    pub const fn silence_max(self) -> Duration {
        match self {
            Self::Attention | Self::AttentionAfterEscape => AT_ONCE,
            Self::Announce(_)
            | Self::Charset
            | Self::EchoOff
            | Self::ErrorNumbers
            | Self::Memories
            | Self::PacketRegistration
            | Self::PduMode
            | Self::Registration
            | Self::Service
            | Self::Signal => SOON,
            Self::ChooseMemory(_)
            | Self::Delete(_)
            | Self::EnterPin
            | Self::List
            | Self::PinState
            | Self::PinTries
            | Self::SelectMemory(_) => FROM_THE_CARD,
            // The prompt; the network has longer.
            Self::Send => FROM_THE_CARD,
        }
    }

    /// The line that says it; nothing for those that carry what is not known here.
    #[must_use]
    pub fn line(self) -> Option<String> {
        let line = match self {
            Self::Announce(how) => format!("AT+CNMI={}", how.figures()),
            Self::Attention => "AT".to_owned(),
            Self::AttentionAfterEscape => "\x1bAT".to_owned(),
            Self::Charset => "AT+CSCS=\"GSM\"".to_owned(),
            Self::ChooseMemory(memory) => {
                let memory: &str = memory.into();
                format!("AT+CPMS=\"{memory}\",\"{memory}\",\"{memory}\"")
            }
            Self::Delete(index) => format!("AT+CMGD={index}"),
            Self::EchoOff => "ATE0".to_owned(),
            Self::ErrorNumbers => "AT+CMEE=1".to_owned(),
            Self::List => "AT+CMGL=4".to_owned(),
            Self::Memories => "AT+CPMS=?".to_owned(),
            Self::PacketRegistration => "AT+CEREG?".to_owned(),
            Self::PduMode => "AT+CMGF=0".to_owned(),
            Self::PinState => "AT+CPIN?".to_owned(),
            Self::PinTries => "AT+CPINR=\"SIM PIN\"".to_owned(),
            Self::Registration => "AT+CREG?".to_owned(),
            Self::SelectMemory(memory) => format!("AT+CPMS=\"{}\"", <&str>::from(memory)),
            Self::Service => "AT+CSMS=0".to_owned(),
            Self::Signal => "AT+CSQ".to_owned(),
            Self::EnterPin | Self::Send => return None,
        };
        Some(line)
    }
}

/// How long the network may take over a message that the modem has.
#[must_use]
pub const fn sending_max() -> Duration {
    FROM_THE_NETWORK
}

impl Announcing {
    const fn figures(self) -> &'static str {
        match self {
            Self::ReceiptsAtOnce => "2,1,0,1",
            Self::ReceiptsStored => "2,1,0,2",
            Self::NoReceipts => "2,1,0,0",
            Self::Nothing => "0,0,0,0",
        }
    }

    /// What to try when a modem refuses this.
    #[must_use]
    pub const fn next(self) -> Option<Self> {
        match self {
            Self::ReceiptsAtOnce => Some(Self::ReceiptsStored),
            Self::ReceiptsStored => Some(Self::NoReceipts),
            Self::NoReceipts => Some(Self::Nothing),
            Self::Nothing => None,
        }
    }
}
