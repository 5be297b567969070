//! Numbers as a network writes them, and the addresses that the rest of the program knows.
//!
//! In: a number and how it is meant.
//! Out: an address with the country's code wherever that can be told; the other way round.
//! Promises that nobody abroad is ever written to in place of somebody at home: a number is only
//! taken for an international one if the network says so or the country is known.
//! Follows ITU-T E.164 and the list of its country codes.

use crate::message::{Address, Network};

use super::pdu::{Number, NumberKind, Party};

/// Country codes of two digits; those that begin with 1 or 7 have one, all others three.
const TWO_DIGITS: [&str; 44] = [
    "20", "27", "30", "31", "32", "33", "34", "36", "39", "40", "41", "43", "44", "45", "46", "47",
    "48", "49", "51", "52", "53", "54", "55", "56", "57", "58", "60", "61", "62", "63", "64", "65",
    "66", "81", "82", "84", "86", "90", "91", "92", "93", "94", "95", "98",
];
/// With its country's code no number is shorter.
const INTERNATIONAL_DIGITS_MIN: usize = 8;
/// Fewer digits are a service's number.
const PERSON_DIGITS_MIN: usize = 6;
/// What is dialled before a number at home, nearly everywhere.
const TRUNK: char = '0';

/// Who wrote, if somebody did who can be answered: a name in letters cannot. `centre` is the
/// service centre that passed the message on; a number without a country is of that country.
#[must_use]
pub fn sender(from: &Party, centre: Option<&Number>) -> Option<Address> {
    match from {
        Party::Name(_) => None,
        Party::Number(number) => {
            let address = Address::phone(&whole(number, centre));
            (!address.is_of_machine()).then_some(address)
        }
    }
}

/// The number to write to; nothing for an address that is no telephone's.
#[must_use]
pub fn receiver(address: &Address) -> Option<Number> {
    let digits = address.number();
    let is_number = !digits.is_empty() && digits.bytes().all(|byte| byte.is_ascii_digit());
    match address.network() {
        Network::Phone if is_number => Some(
            if digits.starts_with(TRUNK) || digits.len() < INTERNATIONAL_DIGITS_MIN {
                Number::dialled(digits)
            } else {
                Number::international(digits)
            },
        ),
        Network::Chat | Network::Phone => None,
    }
}

/// A number as it is to be read by whoever knows nothing of its kind.
fn whole(number: &Number, centre: Option<&Number>) -> String {
    let digits = number.digits.as_str();
    match number.kind {
        NumberKind::International => return format!("+{digits}"),
        NumberKind::National | NumberKind::Unknown => {}
    }
    // The network's own word for it is good for the way back as well.
    if digits.starts_with(TRUNK) || digits.len() < PERSON_DIGITS_MIN {
        return digits.to_owned();
    }
    let country = centre
        .filter(|centre| centre.kind == NumberKind::International)
        .and_then(|centre| country(&centre.digits));
    match (country, number.kind) {
        (Some(country), NumberKind::Unknown) if is_whole(digits, country) => format!("+{digits}"),
        (Some(country), _) => format!("+{country}{digits}"),
        (None, _) => format!("{TRUNK}{digits}"),
    }
}

/// Whether a number that is said to be of no kind has its country's code already. Numbers at home
/// may begin with the same digits; they are shorter.
fn is_whole(digits: &str, country: &str) -> bool {
    let least = match country.len() {
        1 => 11,
        2 => 12,
        _ => 10,
    };
    digits.starts_with(country) && digits.len() >= least
}

/// The country's code that an international number begins with.
fn country(digits: &str) -> Option<&str> {
    let length = match digits.get(..2)? {
        first if first.starts_with(['1', '7']) => 1,
        first if TWO_DIGITS.contains(&first) => 2,
        _ => 3,
    };
    digits.get(..length)
}
