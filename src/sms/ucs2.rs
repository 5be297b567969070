//! UCS-2 as SMS carries it: UTF-16, big-endian. Telephones send and show surrogate pairs.

/// A text in octets.
#[must_use]
pub fn encode(text: &str) -> Vec<u8> {
    text.encode_utf16().flat_map(u16::to_be_bytes).collect()
}

/// Octets as text; what is no character becomes U+FFFD.
#[must_use]
pub fn decode(octets: &[u8]) -> String {
    let units: Vec<u16> = octets
        .chunks_exact(2)
        .map(|pair| {
            pair.iter()
                .fold(0, |unit, octet| unit << 8 | u16::from(*octet))
        })
        .collect();
    String::from_utf16_lossy(&units)
}
