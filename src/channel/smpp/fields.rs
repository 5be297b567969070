//! The fields of a PDU's body, one behind the other.
//!
//! In: a body's octets.
//! Out: fields, or nothing where the body ends before the field does.
//! Promises to be as lenient as it can be without guessing: a TLV ends where its length says,
//! whatever its tag would lead one to expect. `receipted_message_id` comes with and without its
//! zero, `sar_msg_ref_num` with one octet and with two.
//! Follows SMPP 3.4, sections 3.1 and 5.3.

/// A body, or what is left of one.
#[derive(Debug, Clone, Copy)]
pub struct Fields<'a> {
    rest: &'a [u8],
}

/// An optional parameter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tlv<'a> {
    /// Which.
    pub tag: u16,
    /// What it says.
    pub value: &'a [u8],
}

impl<'a> Fields<'a> {
    /// All of a body.
    #[must_use]
    pub const fn of(body: &'a [u8]) -> Self {
        Self { rest: body }
    }

    /// One octet.
    pub fn octet(&mut self) -> Option<u8> {
        let (octet, rest) = self.rest.split_first()?;
        self.rest = rest;
        Some(*octet)
    }

    /// So many octets.
    pub fn octets(&mut self, count: usize) -> Option<&'a [u8]> {
        let (octets, rest) = self.rest.split_at_checked(count)?;
        self.rest = rest;
        Some(octets)
    }

    /// Octets up to a zero, without it.
    pub fn c_octets(&mut self) -> Option<&'a [u8]> {
        let end = self.rest.iter().position(|octet| *octet == 0)?;
        let octets = self.octets(end)?;
        self.octet()?;
        Some(octets)
    }

    /// Optional parameters up to the end, or to where they are none.
    pub fn tlvs(mut self) -> impl Iterator<Item = Tlv<'a>> {
        std::iter::from_fn(move || {
            let (tag, rest) = self.rest.split_first_chunk::<2>()?;
            let (length, rest) = rest.split_first_chunk::<2>()?;
            let length = usize::from(u16::from_be_bytes(*length));
            let (value, rest) = rest.split_at_checked(length)?;
            self.rest = rest;
            Some(Tlv {
                tag: u16::from_be_bytes(*tag),
                value,
            })
        })
    }
}

/// A text field: its octets as far as a zero. What is not ASCII is read as Latin-1.
#[must_use]
pub fn text(octets: &[u8]) -> String {
    octets
        .iter()
        .take_while(|octet| **octet != 0)
        .map(|octet| char::from(*octet))
        .collect()
}

/// A number in as many octets as there are, up to eight.
#[must_use]
pub fn number(octets: &[u8]) -> u64 {
    octets
        .iter()
        .fold(0, |number, octet| number << 8 | u64::from(*octet))
}
