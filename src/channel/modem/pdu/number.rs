//! Addresses: numbers in semi-octets, names in letters (TS 23.040 section 9.1.2.5).

use crate::sms::alphabet;

use super::PduError;
use super::octets::Octets;

/// Digits of the longest number.
const DIGITS_MAX: usize = 20;
/// International, by the telephone numbering plan.
const INTERNATIONAL: u8 = 0x91;
/// As it is dialled, by the telephone numbering plan.
const UNKNOWN: u8 = 0x81;
/// Fills the last octet of an odd number of digits.
const FILLER: u8 = 0xf;
/// What semi-octets stand for.
const SEMI_OCTETS: [char; 15] = [
    '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '*', '#', 'a', 'b', 'c',
];

/// Who sent something.
#[derive(Clone, PartialEq, Eq)]
pub enum Party {
    /// A name in letters.
    Name(String),
    /// A number.
    Number(Number),
}

/// A telephone's number.
#[derive(Clone, PartialEq, Eq)]
pub struct Number {
    /// How it is meant.
    pub kind: NumberKind,
    /// Its digits.
    pub digits: String,
}

/// How a number is meant: TON.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NumberKind {
    /// With the country's code.
    International,
    /// Without it and without the digit that is dialled before it at home.
    National,
    /// As it is dialled, or by a rule of the network's own.
    Unknown,
}

impl Number {
    /// With the country's code.
    #[must_use]
    pub fn international(digits: &str) -> Self {
        Self {
            kind: NumberKind::International,
            digits: digits.to_owned(),
        }
    }

    /// As it is dialled.
    #[must_use]
    pub fn dialled(digits: &str) -> Self {
        Self {
            kind: NumberKind::Unknown,
            digits: digits.to_owned(),
        }
    }

    /// As TP-DA has it; nothing for what is no number.
    #[must_use]
    pub fn to_octets(&self) -> Option<Vec<u8>> {
        let digits = self
            .digits
            .chars()
            .map(|c| SEMI_OCTETS.iter().position(|ours| *ours == c))
            .map(|digit| u8::try_from(digit?).ok())
            .collect::<Option<Vec<u8>>>()?;
        if digits.is_empty() || digits.len() > DIGITS_MAX {
            return None;
        }
        let kind = match self.kind {
            NumberKind::International => INTERNATIONAL,
            // National numbers without more are dialled so as well.
            NumberKind::National | NumberKind::Unknown => UNKNOWN,
        };
        let mut octets = vec![u8::try_from(digits.len()).ok()?, kind];
        octets.extend(digits.chunks(2).map(|pair| match pair {
            [low, high] => high << 4 | low,
            [low] => FILLER << 4 | low,
            _ => u8::MAX,
        }));
        Some(octets)
    }
}

/// TP-OA or TP-RA: how many semi-octets, the kind, the semi-octets.
pub(super) fn party(octets: &mut Octets<'_>) -> Result<Party, PduError> {
    let semi_octets = usize::from(octets.next()?);
    let kind = octets.next()?;
    if semi_octets > DIGITS_MAX {
        return Err(PduError::Address);
    }
    let value = octets.take(semi_octets.div_ceil(2))?;
    if kind >> 4 & 0b111 == 0b101 {
        let septets = alphabet::unpack(value, semi_octets * 4 / 7, 0);
        return Ok(Party::Name(alphabet::decode(&septets)));
    }
    let mut number = number(kind, value);
    number.digits.truncate(semi_octets);
    Ok(Party::Number(number))
}

/// The service centre: how many octets, the kind, the semi-octets; nothing where it is left out.
pub(super) fn centre(octets: &mut Octets<'_>) -> Result<Option<Number>, PduError> {
    let length = usize::from(octets.next()?);
    let centre = octets.take(length)?;
    Ok(centre
        .split_first()
        .map(|(kind, value)| number(*kind, value)))
}

fn number(kind: u8, value: &[u8]) -> Number {
    let digits = value
        .iter()
        .flat_map(|octet| [octet & 0xf, octet >> 4])
        .map_while(|digit| SEMI_OCTETS.get(usize::from(digit)));
    Number {
        kind: match kind >> 4 & 0b111 {
            0b001 => NumberKind::International,
            0b010 => NumberKind::National,
            _ => NumberKind::Unknown,
        },
        digits: digits.collect(),
    }
}

impl std::fmt::Debug for Number {
    /// A number names a person.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Number({:?}, …)", self.kind)
    }
}

impl std::fmt::Debug for Party {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Name(_) => f.write_str("Name(…)"),
            Self::Number(number) => number.fmt(f),
        }
    }
}
