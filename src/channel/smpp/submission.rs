//! A letter as `submit_sm`, one for each segment.
//!
//! In: a letter, and how messages are written on the link.
//! Out: its segments, or why it can never be sent.
//! Promises that the segments of a letter are the same in every attempt, so that one can go on
//! where another was broken off.
//! Follows SMPP 3.4, section 4.4, and 3GPP TS 23.040 for the header of a part.

use std::str::FromStr;

use rusmpp::pdus::SubmitSm;
use rusmpp::types::{COctetString, OctetString};
use rusmpp::values::{DataCoding, EsmClass, RegisteredDelivery};

use crate::config::Alphabet;
use crate::message::Letter;
use crate::reply::Encoding;
use crate::sms::{self, Segment, header};

use super::address::{Plan, plan};
use super::coding;

/// Store and forward, an ordinary message. The library's own default is another.
const PLAIN: u8 = 0b0000_0000;
const UDHI: u8 = 0b0100_0000;
/// A receipt whether it was delivered or not, and nothing else.
const RECEIPT: u8 = 1;

/// The number that replies come from, and how those that they go to are written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Numbering {
    /// The number people write to.
    pub source: String,
    /// Its type and plan.
    pub source_plan: Plan,
    /// Type of number of people, where a setting says it.
    pub dest_ton: Option<u8>,
    /// Numbering plan of people, where a setting says it.
    pub dest_npi: Option<u8>,
}

/// Why a letter can never be sent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Unsendable {
    /// SMPP has twenty characters of ASCII for a number.
    #[error("the address does not fit into a destination_addr")]
    Address,
    /// SMPP has 254 octets for a segment.
    #[error("a segment does not fit into a short_message")]
    Segment,
    /// SMPP has twenty characters of ASCII for a number.
    #[error("the setting `source` does not fit into a source_addr")]
    Source,
}

/// The segments of a letter.
///
/// # Errors
/// [`Unsendable`] when there can be none.
pub fn submissions(
    letter: &Letter,
    numbering: &Numbering,
    default_alphabet: Alphabet,
) -> Result<Vec<SubmitSm>, Unsendable> {
    let number = letter.to.number();
    let source_addr = COctetString::from_str(&numbering.source).map_err(|_| Unsendable::Source)?;
    let destination_addr = COctetString::from_str(number).map_err(|_| Unsendable::Address)?;
    let destination = plan(number, numbering.dest_ton, numbering.dest_npi);
    // The lower octet of the letter's own number: the same in every attempt.
    let [.., reference] = letter.id.0.to_be_bytes();
    coded(&letter.text, reference, default_alphabet)
        .into_iter()
        .map(|coded| {
            let (esm_class, octets) = match coded.header {
                Some(header) => (PLAIN | UDHI, [header.as_slice(), &coded.octets].concat()),
                None => (PLAIN, coded.octets),
            };
            let short_message = OctetString::from_vec(octets).map_err(|_| Unsendable::Segment)?;
            Ok(SubmitSm::builder()
                .source_addr_ton(numbering.source_plan.ton)
                .source_addr_npi(numbering.source_plan.npi)
                .source_addr(source_addr.clone())
                .dest_addr_ton(destination.ton)
                .dest_addr_npi(destination.npi)
                .destination_addr(destination_addr.clone())
                .esm_class(EsmClass::from(esm_class))
                .registered_delivery(RegisteredDelivery::from(RECEIPT))
                .data_coding(DataCoding::from(coded.data_coding))
                .short_message(short_message)
                .build())
        })
        .collect()
}

/// A segment in octets.
struct Coded {
    header: Option<[u8; header::HEADER_OCTETS]>,
    data_coding: u8,
    octets: Vec<u8>,
}

/// A text in segments: in the link's alphabet if that carries all of it, as UCS-2 if not.
fn coded(text: &str, reference: u8, default_alphabet: Alphabet) -> Vec<Coded> {
    let segments = sms::segments(text, reference);
    let in_default: Option<Vec<Coded>> = segments
        .iter()
        .map(|segment| {
            let octets = coding::encode_default(default_alphabet, &segment.text)?;
            Some(code(segment, coding::DEFAULT, octets))
        })
        .collect();
    in_default.unwrap_or_else(|| {
        // What GSM 7-bit carries and the link's alphabet does not is cut anew, into shorter ones.
        sms::segments_as(text, reference, Encoding::Ucs2)
            .iter()
            .map(|segment| code(segment, coding::UCS2, coding::encode_ucs2(&segment.text)))
            .collect()
    })
}

fn code(segment: &Segment, data_coding: u8, octets: Vec<u8>) -> Coded {
    Coded {
        header: segment.part.map(header::write),
        data_coding,
        octets,
    }
}
