//! The GSM 7-bit default alphabet with its extension table (3GPP TS 23.038, section 6.2.1).

/// The basic table, without the escape to the extension table.
const BASIC: &str = "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?\
¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";

/// The extension table: an escape and one more septet each.
const EXTENSION: [(char, u8); 10] = [
    ('\u{c}', 0x0a),
    ('^', 0x14),
    ('{', 0x28),
    ('}', 0x29),
    ('\\', 0x2f),
    ('[', 0x3c),
    ('~', 0x3d),
    (']', 0x3e),
    ('|', 0x40),
    ('€', 0x65),
];

const ESCAPE: u8 = 0x1b;
const SEPTET: u8 = 0x7f;

/// Septets that a character takes, if the alphabet has it.
#[must_use]
pub fn septets(c: char) -> Option<usize> {
    match c {
        '\n' | '\r' | ' '..='Z' | '_' | 'a'..='z' => Some(1),
        c if EXTENSION.iter().any(|(ours, _)| *ours == c) => Some(2),
        c if c.is_ascii() => None,
        c => BASIC.contains(c).then_some(1),
    }
}

/// A text in septets, one an octet; nothing if the alphabet lacks a character.
#[must_use]
pub fn encode(text: &str) -> Option<Vec<u8>> {
    let mut out = Vec::with_capacity(text.len());
    for c in text.chars() {
        if let Some((_, code)) = EXTENSION.iter().find(|(ours, _)| *ours == c) {
            out.extend([ESCAPE, *code]);
            continue;
        }
        let place = BASIC.chars().position(|ours| ours == c)?;
        // The escape has a place of its own in the table.
        let place = if place < usize::from(ESCAPE) {
            place
        } else {
            place + 1
        };
        out.push(u8::try_from(place).ok()?);
    }
    Some(out)
}

/// Septets, one an octet, as text. An escape before a code that the extension lacks shows the
/// character of the basic table, as the standard says.
#[must_use]
pub fn decode(septets: &[u8]) -> String {
    let mut text = String::with_capacity(septets.len());
    let mut escaped = false;
    for septet in septets {
        let septet = septet & SEPTET;
        if septet == ESCAPE && !escaped {
            escaped = true;
            continue;
        }
        let extended = escaped
            .then(|| EXTENSION.iter().find(|(_, code)| *code == septet))
            .flatten();
        escaped = false;
        text.push(match extended {
            Some((c, _)) => *c,
            None => basic(septet),
        });
    }
    text
}

fn basic(septet: u8) -> char {
    let place = usize::from(septet);
    let place = match septet {
        // Two escapes are kept for another table, which nobody has made: a space.
        ESCAPE => return ' ',
        0..ESCAPE => place,
        _ => place - 1,
    };
    BASIC.chars().nth(place).unwrap_or(' ')
}

/// Septets packed into octets, behind so many bits of fill.
#[must_use]
pub fn pack(septets: &[u8], fill_bits: usize) -> Vec<u8> {
    let bits = fill_bits + septets.len() * 7;
    let mut octets = vec![0_u8; bits.div_ceil(8)];
    for (i, septet) in septets.iter().enumerate() {
        let bit = fill_bits + i * 7;
        let shifted = u16::from(septet & SEPTET) << (bit % 8);
        let [low, high] = shifted.to_le_bytes();
        if let Some(octet) = octets.get_mut(bit / 8) {
            *octet |= low;
        }
        if let Some(octet) = octets.get_mut(bit / 8 + 1) {
            *octet |= high;
        }
    }
    octets
}

/// So many septets out of octets, behind so many bits of fill; fewer where the octets end.
#[must_use]
pub fn unpack(octets: &[u8], count: usize, fill_bits: usize) -> Vec<u8> {
    let held = (octets.len() * 8).saturating_sub(fill_bits) / 7;
    (0..count.min(held))
        .map(|i| {
            let bit = fill_bits + i * 7;
            let octet = |at: usize| octets.get(at).copied().unwrap_or(0);
            let pair = u16::from_le_bytes([octet(bit / 8), octet(bit / 8 + 1)]);
            let [septet, _] = (pair >> (bit % 8)).to_le_bytes();
            septet & SEPTET
        })
        .collect()
}
