//! A GSM modem on a serial line.
//!
//! In: messages from the modem's memory, letters from the outlet.
//! Out: the other way round.
//! Promises that a message is deleted from the card only when it is in the inbox, that one command
//! is in flight at most, and that a modem that hangs, is reset or pulled out is found again.
//! Follows 3GPP TS 27.005 and TS 27.007 (commands), TS 23.040 (messages) and TS 23.038 (alphabets).
//!
//! Three that work side by side: `line` moves octets and time between the device and the
//! [`session`], which decides everything; `inbox` hands in what was found; `outbox` cuts letters
//! into segments and passes them on one by one.

mod address;
pub mod at;
pub mod command;
mod inbox;
mod line;
mod outbox;
pub mod pdu;
mod pin;
pub mod refusal;
pub mod said;
pub mod session;

use std::future::Future;
use std::path::PathBuf;
use std::pin::Pin as Pinned;

use tokio::sync::mpsc;

use crate::config::ModemSettings;
use crate::message::ChannelName;
use crate::post::Port;

use super::{Channel, ChannelError, secret};

use inbox::Inbox;
use line::{Card, Line};
use outbox::Outbox;
use pin::Note;
use session::Key;

pub use address::{receiver, sender};
pub use pin::Pin;

/// Found messages that wait for the inbox: more than the session hands out at once.
const FOUND_MAX: usize = 512;
/// Receipts that wait until the letter in hand is settled.
const RECEIPTS_MAX: usize = 256;

/// The channel.
#[derive(Debug)]
pub struct Modem {
    name: ChannelName,
    device: PathBuf,
    baud: u32,
    card: Card,
}

impl Modem {
    /// From its settings.
    ///
    /// # Errors
    /// [`ChannelError`] when the PIN is not where it should be, or is none.
    pub fn open(settings: &ModemSettings) -> Result<Self, ChannelError> {
        let pin = secret(
            &settings.name,
            "pin",
            settings.pin_env.as_deref(),
            settings.pin_file.as_deref(),
        )?;
        let pin = match pin {
            None => None,
            Some(secret) => Some(Pin::new(secret).ok_or_else(|| ChannelError::Setting {
                channel: settings.name.clone(),
                reason: "a SIM's PIN has four to eight digits, and this one has not".to_owned(),
            })?),
        };
        let note = settings.refused_pin_file.clone().map(Note);
        let key = match pin {
            None => Key::Missing,
            Some(pin) if note.as_ref().is_some_and(|note| note.is_of(&pin)) => Key::Refused,
            Some(pin) => Key::Untried(pin),
        };
        Ok(Self {
            name: settings.name.as_str().into(),
            device: settings.device.clone(),
            baud: settings.baud,
            card: Card { key, note },
        })
    }
}

impl Channel for Modem {
    fn name(&self) -> &ChannelName {
        &self.name
    }

    /// A modem sends one message at a time; what waits longer than its lease must not be lent a
    /// second time.
    fn places(&self) -> usize {
        1
    }

    fn run(self: Box<Self>, port: Port) -> Pinned<Box<dyn Future<Output = ()> + Send>> {
        Box::pin(carry(*self, port))
    }
}

async fn carry(modem: Modem, port: Port) {
    let (found, arriving) = mpsc::channel(FOUND_MAX);
    let (settled, settling) = mpsc::channel(FOUND_MAX);
    let (receipts, receiving) = mpsc::channel(RECEIPTS_MAX);
    let (orders, ordered) = mpsc::channel(1);
    let line = Line {
        name: modem.name.clone(),
        device: modem.device,
        baud: modem.baud,
        card: modem.card,
        state: port.state,
        ending: port.ending.clone(),
        orders: ordered,
        found,
        settled: settling,
    };
    let inbox = Inbox {
        name: modem.name.clone(),
        intake: port.intake.clone(),
        ending: port.ending.clone(),
        found: arriving,
        settled,
        receipts,
    };
    let outbox = Outbox {
        name: modem.name,
        intake: port.intake,
        outlet: port.outlet,
        ending: port.ending,
        orders,
        receipts: receiving,
    };
    tokio::join!(line.keep_open(), inbox.carry(), outbox.carry());
}
