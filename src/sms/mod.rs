//! What SMS carries, whatever brings it: alphabets, and long messages in parts.
//!
//! In: texts, or the octets of user data.
//! Out: the other.
//! Promises no panic on any octets. Knows no SMPP and no modem.
//! Follows 3GPP TS 23.038 (alphabets) and TS 23.040 section 9.2.3.24 (user data headers).

pub mod alphabet;
pub mod header;
pub mod ucs2;

use crate::message::PartOf;
use crate::reply::{Encoding, encoding, segment_as};

/// One segment as it is carried.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Segment {
    /// Its place, where there are several.
    pub part: Option<PartOf>,
    /// How its text is encoded.
    pub encoding: Encoding,
    /// What it shows.
    pub text: String,
}

/// A text in segments; `reference` tells those of one message from those of another.
#[must_use]
pub fn segments(text: &str, reference: u8) -> Vec<Segment> {
    segments_as(text, reference, encoding(text))
}

/// A text in segments of an encoding that has all of its characters.
#[must_use]
pub fn segments_as(text: &str, reference: u8, encoding: Encoding) -> Vec<Segment> {
    let cut = segment_as(text, encoding);
    // A header counts to 255; no reply is a hundredth so long.
    let total = u8::try_from(cut.parts.len()).unwrap_or(u8::MAX);
    let place = |number: u8| PartOf {
        reference: u16::from(reference),
        total,
        number,
    };
    (1..=total)
        .zip(cut.parts)
        .map(|(number, text)| Segment {
            part: (total > 1).then(|| place(number)),
            encoding: cut.encoding,
            text,
        })
        .collect()
}
