//! SMS-SUBMIT: a message that goes out (TS 23.040 section 9.2.2.2).

use std::fmt::Write as _;

use crate::reply::Encoding;
use crate::sms::{Segment, alphabet, header, ucs2};

use super::Number;

/// TP-MTI of SMS-SUBMIT, with a relative validity period, and with a receipt wanted.
const FIRST: u8 = 0x01 | 0x10 | 0x20;
/// TP-UDHI.
const HAS_HEADER: u8 = 0x40;
/// 24 hours: who is out of reach for longer has found water. (143 is twelve hours, each more half
/// an hour: section 9.2.3.12.1.)
const VALIDITY: u8 = 143 + 24;
/// What fits into a message.
const USER_DATA_OCTETS_MAX: usize = 140;
const GSM7: u8 = 0x00;
const UCS2: u8 = 0x08;

/// A message's octets, the service centre's left out: the card knows it.
#[derive(Clone, PartialEq, Eq)]
pub struct Submit(Vec<u8>);

/// Writes a segment; nothing for a number that is none, or a text that does not fit.
#[must_use]
pub fn submit(to: &Number, segment: &Segment) -> Option<Submit> {
    let header = segment.part.map(header::write);
    let header = header.as_ref().map_or(&[][..], |header| &header[..]);
    let (data_coding, length, text) = match segment.encoding {
        Encoding::Gsm7 => {
            let septets = alphabet::encode(&segment.text)?;
            let header_septets = (header.len() * 8).div_ceil(7);
            let fill_bits = header_septets * 7 - header.len() * 8;
            let packed = alphabet::pack(&septets, fill_bits);
            (GSM7, header_septets + septets.len(), packed)
        }
        Encoding::Ucs2 => {
            let text = ucs2::encode(&segment.text);
            (UCS2, header.len() + text.len(), text)
        }
    };
    if header.len() + text.len() > USER_DATA_OCTETS_MAX {
        return None;
    }
    let first = match segment.part {
        None => FIRST,
        Some(_) => FIRST | HAS_HEADER,
    };
    // TP-MR: the modem numbers messages itself.
    let mut octets = vec![first, 0];
    octets.extend(to.to_octets()?);
    octets.extend([0, data_coding, VALIDITY, u8::try_from(length).ok()?]);
    octets.extend(header);
    octets.extend(text);
    Some(Submit(octets))
}

impl Submit {
    /// What `AT+CMGS` is told: octets without the service centre's.
    #[must_use]
    pub fn length(&self) -> usize {
        self.0.len()
    }

    /// In hexadecimal digits, behind the octet that says that the service centre is left out.
    #[must_use]
    pub fn line(&self) -> String {
        let mut line = String::from("00");
        for octet in &self.0 {
            let _ = write!(line, "{octet:02X}");
        }
        line
    }
}

impl std::fmt::Debug for Submit {
    /// To whom and what is nobody's business.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Submit(…)")
    }
}
