//! Messages in the octets that a modem gives and takes in PDU mode.
//!
//! In: hexadecimal digits from the modem, or a segment to be sent.
//! Out: a message or a receipt, or octets for the modem.
//! Promises no panic on any octets, and no text that is shorter than its header says: a figure
//! that has lost its last digit is worse than none.
//! Does not undo compression and does not read the national tables of TS 23.038 annex A: a
//! message that uses them is read by the default alphabet.
//! Follows 3GPP TS 23.040 section 9.2.

mod coding;
mod deliver;
mod number;
mod octets;
mod report;
mod submit;
mod time;

pub use coding::Coding;
pub use deliver::Deliver;
pub use number::{Number, NumberKind, Party};
pub use report::{Report, Status};
pub use submit::{Submit, submit};

use octets::Octets;

/// TP-MTI, the last two bits of the first octet.
const MESSAGE_TYPE: u8 = 0b11;

/// What a modem holds for us.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Incoming {
    /// Somebody's message, SMS-DELIVER.
    Deliver(Deliver),
    /// What became of one of ours, SMS-STATUS-REPORT.
    Report(Report),
}

/// Why octets are not what they should be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PduError {
    /// The line is not whole: it may be when it is read again.
    #[error("the line is broken")]
    Broken,
    /// It ends too early.
    #[error("it ends too early")]
    Short,
    /// It carries no text.
    #[error("it carries no text")]
    NoText,
    /// Its header is none.
    #[error("its user data header is none")]
    Header,
    /// It is of another kind.
    #[error("it is of a kind that does not come in")]
    Kind,
    /// An address is none.
    #[error("an address in it is none")]
    Address,
}

/// The octets of a line in hexadecimal digits, if they are as many as the modem said, which does
/// not count the service centre's.
///
/// # Errors
/// [`PduError::Broken`] where they are not.
pub fn octets(line: &str, length: usize) -> Result<Vec<u8>, PduError> {
    let octets = from_hex(line).ok_or(PduError::Broken)?;
    let centre = octets.first().copied().ok_or(PduError::Broken)?;
    if octets.len() == length + usize::from(centre) + 1 {
        Ok(octets)
    } else {
        Err(PduError::Broken)
    }
}

/// The octets of a line, whatever the modem said of them.
///
/// # Errors
/// [`PduError::Broken`] where it is no line of octets.
pub fn octets_of_any_length(line: &str) -> Result<Vec<u8>, PduError> {
    from_hex(line).ok_or(PduError::Broken)
}

/// Whether a line can be octets.
#[must_use]
pub fn is_hex(line: &str) -> bool {
    !line.is_empty() && line.bytes().all(|byte| byte.is_ascii_hexdigit())
}

/// Reads the service centre and the message behind it.
///
/// # Errors
/// [`PduError`] when it cannot be read.
pub fn read(octets: &[u8]) -> Result<Incoming, PduError> {
    let mut octets = Octets::new(octets);
    let centre = number::centre(&mut octets)?;
    let first = octets.next()?;
    match first & MESSAGE_TYPE {
        0b00 => deliver::read(first, centre, octets).map(Incoming::Deliver),
        0b10 => report::read(centre, octets).map(Incoming::Report),
        _ => Err(PduError::Kind),
    }
}

fn from_hex(line: &str) -> Option<Vec<u8>> {
    if !line.len().is_multiple_of(2) {
        return None;
    }
    line.as_bytes()
        .chunks_exact(2)
        .map(|pair| {
            let digits = std::str::from_utf8(pair).ok()?;
            // A sign before a digit is a number to the standard library.
            if !is_hex(digits) {
                return None;
            }
            u8::from_str_radix(digits, 16).ok()
        })
        .collect()
}
