//! Telephone numbers with their type (TON) and numbering plan (NPI).
//!
//! Follows SMPP 3.4, sections 5.2.5 and 5.2.6.

use rusmpp::values::{Npi, Ton};

use crate::message::Address;

const TON_NATIONAL: u8 = 2;
const TON_SUBSCRIBER: u8 = 4;
const TON_ALPHANUMERIC: u8 = 5;
/// Fewer digits are a service's number, which has no country.
const LONG_DIGITS_MIN: usize = 7;

/// Who wrote.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Sender {
    /// A name in letters or a short code.
    Machine,
    /// Somebody who can be answered.
    Person(Address),
}

/// Who wrote; `country` is put before numbers that lack it.
#[must_use]
pub fn sender(ton: u8, number: &str, country: Option<&str>) -> Sender {
    let written = Address::phone(number);
    if ton == TON_ALPHANUMERIC || written.is_of_machine() {
        return Sender::Machine;
    }
    let digits = written.number();
    // No country's code begins with nought.
    let is_national = matches!(ton, TON_NATIONAL | TON_SUBSCRIBER)
        || (digits.starts_with('0') && !number.starts_with('+'));
    match country {
        Some(country) if is_national => {
            let digits = digits.trim_start_matches('0');
            Sender::Person(Address::phone(&format!("{country}{digits}")))
        }
        Some(_) | None => Sender::Person(written),
    }
}

/// A number's type and plan where a setting does not say it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Plan {
    /// Type of number.
    pub ton: Ton,
    /// Numbering plan.
    pub npi: Npi,
}

/// By a number's looks, unless settings say it.
#[must_use]
pub fn plan(number: &str, ton: Option<u8>, npi: Option<u8>) -> Plan {
    let is_digits = number.bytes().all(|b| b.is_ascii_digit());
    let (by_looks, plan) = if !is_digits {
        (Ton::Alphanumeric, Npi::Unknown)
    } else if number.len() < LONG_DIGITS_MIN {
        (Ton::Unknown, Npi::Unknown)
    } else if number.starts_with('0') {
        (Ton::Unknown, Npi::Isdn)
    } else {
        (Ton::International, Npi::Isdn)
    };
    Plan {
        ton: ton.map_or(by_looks, Ton::from),
        npi: npi.map_or(plan, Npi::from),
    }
}
