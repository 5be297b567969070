//! TP-DCS: which alphabet a message is in (3GPP TS 23.038 section 4).

/// How user data is coded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Coding {
    /// The GSM 7-bit default alphabet.
    Gsm7,
    /// Octets that are no text, or compressed text, which nobody sends.
    Octets,
    /// UCS-2.
    Ucs2,
}

impl Coding {
    /// What TP-DCS says. Reserved values are the default alphabet, as the standard has it.
    #[must_use]
    pub const fn of(data_coding: u8) -> Self {
        match data_coding >> 4 {
            // General data coding, and the same for messages that delete themselves.
            0x0..=0x7 => match (data_coding >> 5 & 1, data_coding >> 2 & 0b11) {
                (1, _) | (0, 0b01) => Self::Octets,
                (0, 0b10) => Self::Ucs2,
                _ => Self::Gsm7,
            },
            // Message waiting indication with text in UCS-2.
            0xe => Self::Ucs2,
            // Data coding with a message class.
            0xf if data_coding >> 2 & 1 == 1 => Self::Octets,
            _ => Self::Gsm7,
        }
    }
}
