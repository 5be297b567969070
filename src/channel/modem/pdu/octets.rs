//! Octets, taken from the front.

use super::PduError;

/// What has not been read yet.
#[derive(Clone, Copy)]
pub(super) struct Octets<'a>(&'a [u8]);

impl<'a> Octets<'a> {
    pub(super) const fn new(octets: &'a [u8]) -> Self {
        Self(octets)
    }

    pub(super) fn next(&mut self) -> Result<u8, PduError> {
        let (first, rest) = self.0.split_first().ok_or(PduError::Short)?;
        self.0 = rest;
        Ok(*first)
    }

    pub(super) fn take(&mut self, count: usize) -> Result<&'a [u8], PduError> {
        let (taken, rest) = self.0.split_at_checked(count).ok_or(PduError::Short)?;
        self.0 = rest;
        Ok(taken)
    }
}
