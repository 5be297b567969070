//! User data headers: which part of which long message.

use crate::message::PartOf;

/// Concatenated message, 8-bit reference.
const SHORT_REFERENCE: u8 = 0x00;
/// Concatenated message, 16-bit reference.
const LONG_REFERENCE: u8 = 0x08;

/// Octets of the header that [`write()`] makes, its length octet with them.
pub const HEADER_OCTETS: usize = 6;

/// A header that says which part this is, with its length before it.
#[must_use]
pub fn write(part: PartOf) -> [u8; HEADER_OCTETS] {
    let [_, reference] = part.reference.to_be_bytes();
    [5, SHORT_REFERENCE, 3, reference, part.total, part.number]
}

/// The part that a header tells of, if it does, and what stands behind the header; nothing where
/// the octets are no header. `user_data` starts with the header's length.
#[must_use]
pub fn read(user_data: &[u8]) -> Option<(Option<PartOf>, &[u8])> {
    let (length, rest) = user_data.split_first()?;
    let (header, text) = rest.split_at_checked(usize::from(*length))?;
    let mut part = None;
    let mut elements = header;
    while let [identifier, length, behind @ ..] = elements {
        let (element, behind) = behind.split_at_checked(usize::from(*length))?;
        let found = match (*identifier, element) {
            (SHORT_REFERENCE, [reference, total, number]) => {
                Some((u16::from(*reference), *total, *number))
            }
            (LONG_REFERENCE, [high, low, total, number]) => {
                Some((u16::from_be_bytes([*high, *low]), *total, *number))
            }
            _ => None,
        };
        part = part.or(found);
        elements = behind;
    }
    // A part that cannot be is as if nothing had been said of it.
    let part = part.filter(|(_, total, number)| *number >= 1 && number <= total && *total > 1);
    Some((
        part.map(|(reference, total, number)| PartOf {
            reference,
            total,
            number,
        }),
        text,
    ))
}
