//! What a `deliver_sm` means to the inbox.
//!
//! In: a delivery, what is known of the link, the time.
//! Out: a message, a receipt, or why it is neither.

use jiff::Timestamp;

use crate::config::Alphabet;
use crate::message::{Arrival, DeliveryKey, PartOf};
use crate::post::Aside;
use crate::sms::header;

use super::address::{Sender, sender};
use super::coding;
use super::delivery::Delivery;
use super::receipt::{self, Kind, Said};

/// The bit of `esm_class` that says that the message starts with a user data header.
const UDHI: u8 = 0b0100_0000;

/// How messages are written on a link.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Writing {
    /// What data coding 0 is.
    pub default_alphabet: Alphabet,
    /// What is put before numbers in national form.
    pub country_code: Option<String>,
}

/// What is to be done with a delivery.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Meaning {
    /// To be counted, not kept.
    Aside(Aside),
    /// Somebody wrote something.
    Message(Arrival),
    /// Nothing.
    Nothing,
    /// News of a message of ours.
    Receipt(Said),
}

/// Tells what a delivery means; `session` is when the session began, in milliseconds since 1970.
#[must_use]
pub fn meaning(delivery: &Delivery, writing: &Writing, session: i64, at: Timestamp) -> Meaning {
    match receipt::kind(delivery) {
        Kind::Message => message(delivery, writing, session, at),
        Kind::Notice => Meaning::Nothing,
        Kind::Receipt => {
            receipt::read(delivery).map_or(Meaning::Aside(Aside::Unreadable), Meaning::Receipt)
        }
    }
}

fn message(delivery: &Delivery, writing: &Writing, session: i64, at: Timestamp) -> Meaning {
    let country = writing.country_code.as_deref();
    let from = match sender(delivery.source_ton, &delivery.source, country) {
        Sender::Machine => return Meaning::Aside(Aside::Machine),
        Sender::Person(address) => address,
    };
    let headed = if delivery.esm_class & UDHI == 0 {
        Some((None, delivery.message.as_slice()))
    } else {
        header::read(&delivery.message)
    };
    let read = headed.and_then(|(part, octets)| {
        let text = coding::decode(delivery.data_coding, writing.default_alphabet, octets)?;
        Some((part.or_else(|| by_sar(delivery)), text))
    });
    let Some((part, text)) = read else {
        return Meaning::Aside(Aside::Unreadable);
    };
    Meaning::Message(Arrival {
        from,
        text,
        part,
        delivery: DeliveryKey::Alike {
            likeness: likeness(delivery),
            session,
        },
        at,
    })
}

/// The part that the fields for it tell of, if that can be.
fn by_sar(delivery: &Delivery) -> Option<PartOf> {
    let (reference, total, number) = delivery.sar?;
    let part = PartOf {
        // A reference only tells long messages apart: its lower octets do.
        reference: u16::try_from(reference & 0xffff).ok()?,
        total: u8::try_from(total).ok()?,
        number: u8::try_from(number).ok()?,
    };
    (part.total > 1 && (1..=part.total).contains(&part.number)).then_some(part)
}

/// All by which a delivery is known again; `deliver_sm` has no name of its own.
fn likeness(delivery: &Delivery) -> String {
    use std::fmt::Write;
    let [scheduled, valid] = &delivery.times;
    let mut likeness = format!(
        "{}\n{}\n{}\n{}\n{scheduled}\n{valid}\n{:?}\n{:?}\n",
        delivery.source,
        delivery.destination,
        delivery.data_coding,
        delivery.esm_class,
        delivery.user_message_reference,
        delivery.sar,
    );
    // The header with the part's reference is in the message.
    for octet in &delivery.message {
        // Writing into a String does not fail.
        let _ = write!(likeness, "{octet:02x}");
    }
    likeness
}
