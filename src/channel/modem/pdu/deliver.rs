//! SMS-DELIVER: a message that came in (TS 23.040 section 9.2.2.1).

use jiff::Timestamp;

use crate::message::PartOf;
use crate::sms::{alphabet, header, ucs2};

use super::octets::Octets;
use super::{Coding, Number, Party, PduError, number, time};

/// TP-UDHI, in the first octet.
const HAS_HEADER: u8 = 0x40;

/// TP-PID of a message that only looks whether a telephone is there.
const SILENT: u8 = 0x40;

/// A message.
#[derive(Clone, PartialEq, Eq)]
pub struct Deliver {
    /// The service centre it came through.
    pub centre: Option<Number>,
    /// Who wrote.
    pub from: Party,
    /// What.
    pub text: String,
    /// Which part it is, where it is not all.
    pub part: Option<PartOf>,
    /// When the service centre had it.
    pub sent_at: Option<Timestamp>,
    /// What tells it from others of the same sender and time: its coding and its octets.
    pub user_data: Vec<u8>,
}

pub(super) fn read(
    first: u8,
    centre: Option<Number>,
    mut octets: Octets<'_>,
) -> Result<Deliver, PduError> {
    let from = number::party(&mut octets)?;
    let protocol = octets.next()?;
    let data_coding = octets.next()?;
    let sent_at = time::timestamp(&mut octets)?;
    let length = usize::from(octets.next()?);
    let coding = Coding::of(data_coding);
    let count = match coding {
        Coding::Gsm7 => (length * 7).div_ceil(8),
        Coding::Octets | Coding::Ucs2 => length,
    };
    let user_data = octets.take(count)?;
    let (part, header_octets) = match first & HAS_HEADER {
        0 => (None, 0),
        _ => {
            let (part, behind) = header::read(user_data).ok_or(PduError::Header)?;
            (part, user_data.len() - behind.len())
        }
    };
    let behind = user_data.get(header_octets..).unwrap_or_default();
    let text = match coding {
        Coding::Gsm7 => {
            // The text starts at the next septet.
            let header_septets = (header_octets * 8).div_ceil(7);
            let fill_bits = header_septets * 7 - header_octets * 8;
            let count = length.saturating_sub(header_septets);
            alphabet::decode(&alphabet::unpack(behind, count, fill_bits))
        }
        Coding::Ucs2 => ucs2::decode(behind),
        Coding::Octets => return Err(PduError::NoText),
    };
    if protocol == SILENT {
        return Err(PduError::NoText);
    }
    let mut told_apart = vec![first & HAS_HEADER, data_coding];
    told_apart.extend(user_data);
    Ok(Deliver {
        centre,
        from,
        text,
        part,
        sent_at,
        user_data: told_apart,
    })
}

impl std::fmt::Debug for Deliver {
    /// Who wrote and what is nobody's business.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Deliver")
            .field("part", &self.part)
            .field("sent_at", &self.sent_at)
            .finish_non_exhaustive()
    }
}
