//! SMS-STATUS-REPORT: what became of a message of ours (TS 23.040 section 9.2.2.3).

use super::octets::Octets;
use super::{Number, Party, PduError, number, time};

/// A receipt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Report {
    /// The service centre it came through.
    pub centre: Option<Number>,
    /// The modem's number of the message.
    pub reference: u8,
    /// Whom it was for.
    pub to: Party,
    /// What became of it.
    pub status: Status,
}

/// What became of a message: TP-ST (TS 23.040 section 9.2.3.15).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// The telephone has it, or another took its place.
    Delivered,
    /// It will never have it.
    Failed,
    /// The service centre still tries.
    Pending,
}

impl Status {
    const fn of(status: u8) -> Self {
        match status {
            0x00..=0x1f => Self::Delivered,
            0x20..=0x3f => Self::Pending,
            // For good, or no longer tried; the rest is reserved and means a service centre's
            // failure.
            _ => Self::Failed,
        }
    }
}

pub(super) fn read(centre: Option<Number>, mut octets: Octets<'_>) -> Result<Report, PduError> {
    let reference = octets.next()?;
    let to = number::party(&mut octets)?;
    let _sent_at = time::timestamp(&mut octets)?;
    let _discharged_at = time::timestamp(&mut octets)?;
    let status = Status::of(octets.next()?);
    Ok(Report {
        centre,
        reference,
        to,
        status,
    })
}
