//! Messages as a network and a modem write them, for the modem that is none.

use matone::message::PartOf;
use matone::sms::{alphabet, header, ucs2};

/// A message that somebody sends to us.
pub(crate) struct Sms<'a> {
    /// `+255700000001`, `0700000001`, or a name in letters.
    pub(crate) from: &'a str,
    pub(crate) text: &'a str,
    pub(crate) part: Option<PartOf>,
    /// Of 1 March 2026, 08:00 in Dar es Salaam.
    pub(crate) second: u8,
}

/// The service centre of the tests.
const CENTRE: &str = "+255700000099";

pub(crate) fn sms<'a>(from: &'a str, text: &'a str) -> Sms<'a> {
    Sms {
        from,
        text,
        part: None,
        second: 0,
    }
}

impl Sms<'_> {
    /// The line that a modem gives for it.
    pub(crate) fn line(&self) -> String {
        let first = if self.part.is_some() { 0x44 } else { 0x04 };
        let header = self.part.map(header::write);
        let header = header.as_ref().map_or(&[][..], |header| &header[..]);
        let (coding, length, body) = match alphabet::encode(self.text) {
            Some(septets) => {
                let before = (header.len() * 8).div_ceil(7);
                let packed = alphabet::pack(&septets, before * 7 - header.len() * 8);
                (0x00, before + septets.len(), packed)
            }
            None => {
                let body = ucs2::encode(self.text);
                (0x08, header.len() + body.len(), body)
            }
        };
        let mut octets = centre();
        octets.push(first);
        octets.extend(party(self.from));
        octets.extend([0x00, coding]);
        octets.extend(stamp(self.second));
        octets.push(u8::try_from(length).unwrap());
        octets.extend(header);
        octets.extend(body);
        hex(&octets)
    }
}

/// A message of eight octets that are no text.
pub(crate) fn binary(from: &str) -> String {
    let mut octets = centre();
    octets.push(0x04);
    octets.extend(party(from));
    octets.extend([0x00, 0x04]);
    octets.extend(stamp(0));
    octets.extend([8, 1, 2, 3, 4, 5, 6, 7, 8]);
    hex(&octets)
}

/// A receipt.
pub(crate) fn report(reference: u8, to: &str, status: u8) -> String {
    let mut octets = centre();
    octets.extend([0x06, reference]);
    octets.extend(party(to));
    octets.extend(stamp(0));
    octets.extend(stamp(9));
    octets.push(status);
    hex(&octets)
}

/// Octets of a line, the service centre's left out.
pub(crate) fn length(line: &str) -> usize {
    let octets = octets(line);
    octets.len() - 1 - usize::from(octets[0])
}

/// A message that we sent.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Submitted {
    pub(crate) to: String,
    pub(crate) text: String,
    pub(crate) part: Option<PartOf>,
    pub(crate) wants_receipt: bool,
}

/// Reads what a modem was given to send.
pub(crate) fn submitted(line: &str) -> Submitted {
    let octets = octets(line);
    assert_eq!(octets[0], 0, "the service centre is the card's");
    let first = octets[1];
    assert_eq!(first & 0b11, 0b01, "SMS-SUBMIT");
    assert_eq!(first >> 3 & 0b11, 0b10, "a relative validity period");
    let digits = usize::from(octets[3]);
    let number = &octets[5..5 + digits.div_ceil(2)];
    let mut to: String = number
        .iter()
        .flat_map(|octet| [octet & 0xf, octet >> 4])
        .take(digits)
        .map(|digit| char::from_digit(digit.into(), 10).unwrap())
        .collect();
    if octets[4] == 0x91 {
        to.insert(0, '+');
    }
    let rest = &octets[5 + digits.div_ceil(2)..];
    let [_protocol, coding, _validity, length, user_data @ ..] = rest else {
        panic!("a message that ends early");
    };
    let (part, body) = if first & 0x40 == 0 {
        (None, user_data)
    } else {
        header::read(user_data).unwrap()
    };
    let before = user_data.len() - body.len();
    let text = if *coding == 0x08 {
        assert_eq!(usize::from(*length), user_data.len());
        ucs2::decode(body)
    } else {
        let septets_before = (before * 8).div_ceil(7);
        let count = usize::from(*length) - septets_before;
        let fill = septets_before * 7 - before * 8;
        alphabet::decode(&alphabet::unpack(body, count, fill))
    };
    Submitted {
        to,
        text,
        part,
        wants_receipt: first & 0x20 != 0,
    }
}

fn centre() -> Vec<u8> {
    let number = semi_octets(CENTRE);
    let mut octets = vec![u8::try_from(number.len() + 1).unwrap(), 0x91];
    octets.extend(number);
    octets
}

fn party(who: &str) -> Vec<u8> {
    let digits = who.trim_start_matches('+');
    if digits.bytes().all(|byte| byte.is_ascii_digit()) {
        let kind = if who.starts_with('+') { 0x91 } else { 0x81 };
        let mut octets = vec![u8::try_from(digits.len()).unwrap(), kind];
        octets.extend(semi_octets(digits));
        octets
    } else {
        let septets = alphabet::encode(who).unwrap();
        let packed = alphabet::pack(&septets, 0);
        let semi_octets = (septets.len() * 7).div_ceil(4);
        let mut octets = vec![u8::try_from(semi_octets).unwrap(), 0xd0];
        octets.extend(packed);
        octets
    }
}

fn semi_octets(number: &str) -> Vec<u8> {
    let digits: Vec<u8> = number
        .bytes()
        .filter(u8::is_ascii_digit)
        .map(|byte| byte - b'0')
        .collect();
    digits
        .chunks(2)
        .map(|pair| pair.get(1).unwrap_or(&0xf) << 4 | pair[0])
        .collect()
}

fn stamp(second: u8) -> [u8; 7] {
    [
        0x62,
        0x30,
        0x10,
        0x80,
        0x00,
        ((second % 10) << 4) | (second / 10),
        0x21,
    ]
}

fn octets(line: &str) -> Vec<u8> {
    let pairs = line.as_bytes().chunks(2);
    pairs
        .map(|pair| u8::from_str_radix(std::str::from_utf8(pair).unwrap(), 16).unwrap())
        .collect()
}

fn hex(octets: &[u8]) -> String {
    octets.iter().map(|octet| format!("{octet:02X}")).collect()
}
