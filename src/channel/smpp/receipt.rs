//! Delivery receipts: of which message, and what became of it.
//!
//! In: a `deliver_sm` that is a receipt, and the names that the SMSC gave to our messages.
//! Out: the name under which the message was kept, and its fate.
//! Promises bounded memory. Follows SMPP 3.4, section 5.2.28 and appendix B.

use std::collections::{HashSet, VecDeque};

use crate::message::Receipt;

use super::delivery::Delivery;

/// Names of messages in mind; a receipt comes seconds after its message, or hours.
const NAMES_MAX: usize = 20_000;

/// The bits of `esm_class` that say what kind of message it is.
const KIND_BITS: u8 = 0b0011_1100;
const KIND_RECEIPT: u8 = 0b0000_0100;
const KIND_MESSAGE: u8 = 0;

/// What a `deliver_sm` brings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// What somebody wrote.
    Message,
    /// News of something in between, or a telephone's own acknowledgement.
    Notice,
    /// What became of a message of ours.
    Receipt,
}

/// Tells what is brought.
#[must_use]
pub fn kind(delivery: &Delivery) -> Kind {
    match delivery.esm_class & KIND_BITS {
        KIND_RECEIPT => Kind::Receipt,
        // Some SMSCs do not mark receipts; no message of a person has this field.
        KIND_MESSAGE if delivery.receipted_message_id.is_some() => Kind::Receipt,
        KIND_MESSAGE => Kind::Message,
        _ => Kind::Notice,
    }
}

/// What a receipt says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Said {
    /// The message's name, as it is written there.
    pub name: String,
    /// What became of it; nothing where that is not settled or not known.
    pub fate: Option<Receipt>,
}

/// Reads a receipt; nothing where it does not say of which message.
#[must_use]
pub fn read(delivery: &Delivery) -> Option<Said> {
    // Receipts are written in ASCII, whatever they say of themselves.
    let text = String::from_utf8_lossy(&delivery.message);
    let name = match &delivery.receipted_message_id {
        Some(name) if !name.is_empty() => name.clone(),
        Some(_) | None => value(&text, "id:")?.to_owned(),
    };
    let fate = match delivery.message_state {
        Some(state) => by_state(state),
        None => value(&text, "stat:").and_then(by_word),
    };
    Some(Said { name, fate })
}

/// What stands behind a key.
fn value<'a>(text: &'a str, key: &str) -> Option<&'a str> {
    // ASCII capitals keep their places.
    let place = text.to_ascii_lowercase().find(key)?;
    let behind = text.get(place..)?.get(key.len()..)?;
    behind.split_whitespace().next()
}

const fn by_state(state: u64) -> Option<Receipt> {
    match state {
        // Delivered.
        2 => Some(Receipt::Delivered),
        // Expired, deleted, undeliverable, rejected.
        3 | 4 | 5 | 8 => Some(Receipt::Undelivered),
        // En route, accepted by somebody on the person's behalf, unknown.
        _ => None,
    }
}

fn by_word(word: &str) -> Option<Receipt> {
    let word = word.to_ascii_uppercase();
    match word.get(..5).unwrap_or(&word) {
        "DELIV" => Some(Receipt::Delivered),
        "EXPIR" | "DELET" | "UNDEL" | "REJEC" => Some(Receipt::Undelivered),
        _ => None,
    }
}

/// How the name in a receipt differs from that in the `submit_sm_resp`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Writing {
    /// Not at all, but for noughts before it and capitals.
    Same,
    /// Hexadecimal first, decimal in the receipt.
    DecimalOfHexadecimal,
    /// Decimal first, hexadecimal in the receipt.
    HexadecimalOfDecimal,
}

const WRITINGS: [Writing; 3] = [
    Writing::Same,
    Writing::DecimalOfHexadecimal,
    Writing::HexadecimalOfDecimal,
];

/// The names that an SMSC gave lately. Which way it writes them in receipts is learned from those
/// that can be told.
#[derive(Debug, Default)]
pub struct Names {
    known: HashSet<String>,
    oldest_first: VecDeque<String>,
    /// Receipts that were known again, by [`WRITINGS`].
    told: [u32; WRITINGS.len()],
}

impl Names {
    /// Notes a name that a message was given; how it is kept.
    pub fn given(&mut self, name: &str) -> String {
        let kept = plain(name);
        if self.known.insert(kept.clone()) {
            self.oldest_first.push_back(kept.clone());
        }
        while self.oldest_first.len() > NAMES_MAX {
            if let Some(oldest) = self.oldest_first.pop_front() {
                self.known.remove(&oldest);
            }
        }
        kept
    }

    /// How a name in a receipt is kept.
    #[must_use]
    pub fn meant(&mut self, name: &str) -> String {
        let mut order: Vec<(&mut u32, Writing)> = self.told.iter_mut().zip(WRITINGS).collect();
        // What was right most often goes first; the sort keeps the order of equals.
        order.sort_by(|(a, _), (b, _)| b.cmp(a));
        let mut usual = None;
        for (told, writing) in order {
            let Some(kept) = submitted(name, writing) else {
                continue;
            };
            if self.known.contains(&kept) {
                *told = told.saturating_add(1);
                return kept;
            }
            usual.get_or_insert(kept);
        }
        usual.unwrap_or_else(|| plain(name))
    }
}

/// Without noughts before it, in small letters.
fn plain(name: &str) -> String {
    let name = name.trim();
    let bare = name.trim_start_matches('0');
    let bare = if bare.is_empty() { name } else { bare };
    bare.to_ascii_lowercase()
}

/// How the name in a receipt was written in the `submit_sm_resp`, if it was written so.
fn submitted(name: &str, writing: Writing) -> Option<String> {
    let name = plain(name);
    match writing {
        Writing::Same => Some(name),
        Writing::DecimalOfHexadecimal => {
            let number: u128 = name.parse().ok()?;
            Some(format!("{number:x}"))
        }
        Writing::HexadecimalOfDecimal => {
            let number = u128::from_str_radix(&name, 16).ok()?;
            Some(number.to_string())
        }
    }
}
