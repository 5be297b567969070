//! Octets of messages as texts, by `data_coding`.
//!
//! In: texts or octets, and what data coding 0 means on the link.
//! Out: the other, or nothing where it cannot be.
//! Follows SMPP 3.4, section 5.2.19. A septet takes an octet of its own here; nothing is packed.

use crate::config::Alphabet;
use crate::sms::{alphabet, ucs2};

/// The SMSC's default alphabet.
pub const DEFAULT: u8 = 0;
/// IA5, which is ASCII.
const IA5: u8 = 1;
/// Latin-1.
const LATIN1: u8 = 3;
/// UCS-2.
pub const UCS2: u8 = 8;

const BYTE_ORDER: char = '\u{feff}';
const BYTE_ORDER_SWAPPED: char = '\u{fffe}';

/// A text, if such octets are one.
#[must_use]
pub fn decode(data_coding: u8, default: Alphabet, octets: &[u8]) -> Option<String> {
    match data_coding {
        DEFAULT => Some(match default {
            Alphabet::Ascii | Alphabet::Gsm7 if !octets.is_ascii() => eight_bits(octets),
            Alphabet::Ascii => eight_bits(octets),
            Alphabet::Gsm7 => alphabet::decode(octets),
            Alphabet::Latin1 => latin1(octets),
        }),
        IA5 => Some(if octets.is_ascii() && !is_written(octets) {
            alphabet::decode(octets)
        } else {
            eight_bits(octets)
        }),
        LATIN1 => Some(latin1(octets)),
        UCS2 => Some(two_octets(octets)),
        _ => None,
    }
}

/// A text in the link's default alphabet, if that has all of its characters.
#[must_use]
pub fn encode_default(default: Alphabet, text: &str) -> Option<Vec<u8>> {
    match default {
        Alphabet::Ascii => text.is_ascii().then(|| text.as_bytes().to_vec()),
        Alphabet::Gsm7 => alphabet::encode(text),
        Alphabet::Latin1 => text.chars().map(|c| u8::try_from(c).ok()).collect(),
    }
}

/// A text as UCS-2.
#[must_use]
pub fn encode_ucs2(text: &str) -> Vec<u8> {
    ucs2::encode(text)
}

/// Whether octets are letters, figures and signs of ASCII. Some say IA5 and send GSM 7-bit, which
/// has letters and the escape where ASCII has control codes.
fn is_written(octets: &[u8]) -> bool {
    octets
        .iter()
        .all(|octet| !octet.is_ascii_control() || matches!(octet, b'\t' | b'\n' | b'\r'))
}

/// Octets of what should be a 7-bit alphabet: with an eighth bit it is another one.
fn eight_bits(octets: &[u8]) -> String {
    match std::str::from_utf8(octets) {
        Ok(text) => text.to_owned(),
        Err(_) => latin1(octets),
    }
}

fn latin1(octets: &[u8]) -> String {
    octets.iter().map(|octet| char::from(*octet)).collect()
}

/// UCS-2, the other way round if its mark says so.
fn two_octets(octets: &[u8]) -> String {
    let text = ucs2::decode(octets);
    if let Some(text) = text.strip_prefix(BYTE_ORDER) {
        return text.to_owned();
    }
    if !text.starts_with(BYTE_ORDER_SWAPPED) {
        return text;
    }
    let swapped: Vec<u8> = octets
        .chunks_exact(2)
        .skip(1)
        .flat_map(|pair| pair.iter().rev().copied())
        .collect();
    ucs2::decode(&swapped)
}
