//! Why a modem or its network refuses, and whether that is for good.
//!
//! In: the code behind `+CMS ERROR` or `+CME ERROR`.
//! Out: what follows from it.
//! Follows 3GPP TS 27.005 section 3.2.5 (with TS 24.011 annex E and TS 23.040 section 9.2.3.22
//! behind it) and TS 27.007 section 9.2.

/// A refusal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refusal {
    /// The modem's, or the card's; its code, where it gave one.
    Equipment(Option<u16>),
    /// About a message; its code, where it gave one.
    Message(Option<u16>),
    /// Without a reason.
    Plain,
}

/// Whether sending the same message again can help.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Prospect {
    /// It may be taken later.
    Later,
    /// It never will.
    Never,
}

impl Refusal {
    /// What becomes of a message that was refused so. Only what speaks of the message or of its
    /// receiver is for good: bars on our own card are lifted by a payment, and codes that nobody
    /// has written down are the maker's own.
    #[must_use]
    pub const fn prospect(self) -> Prospect {
        match self {
            Self::Message(Some(code)) => match code {
                // The number is not assigned, its owner not known.
                1 | 28 | 30 => Prospect::Never,
                // Not implemented, or a message that is no message.
                69 | 95 | 96 | 97 | 99 => Prospect::Never,
                // The service centre takes no such message.
                128..=130 | 143..=145 | 159..=161 | 175 | 176 => Prospect::Never,
                // The receiver's address is invalid or barred, or the period we ask for is not
                // offered.
                195 | 196 | 198 | 199 => Prospect::Never,
                _ => Prospect::Later,
            },
            Self::Equipment(_) | Self::Message(None) | Self::Plain => Prospect::Later,
        }
    }

    /// Whether the card is the cause: it is out or locked. One that is busy is neither.
    #[must_use]
    pub const fn is_of_card(self) -> bool {
        match self {
            Self::Equipment(Some(code)) => matches!(code, 5 | 10..=13 | 15),
            Self::Message(Some(code)) => matches!(code, 310..=313 | 315 | 316),
            Self::Equipment(None) | Self::Message(None) | Self::Plain => false,
        }
    }

    /// Whether the card had no time for it.
    #[must_use]
    pub const fn is_busy(self) -> bool {
        matches!(self, Self::Equipment(Some(14)) | Self::Message(Some(314)))
    }

    /// Whether the card is locked for good, but for the carrier's code.
    #[must_use]
    pub const fn wants_puk(self) -> bool {
        matches!(self, Self::Equipment(Some(12)) | Self::Message(Some(316)))
    }

    /// Whether the card wants its PIN.
    #[must_use]
    pub const fn wants_pin(self) -> bool {
        matches!(self, Self::Equipment(Some(11)) | Self::Message(Some(311)))
    }
}

impl std::fmt::Display for Refusal {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Equipment(Some(code)) => write!(f, "+CME ERROR: {code}"),
            Self::Message(Some(code)) => write!(f, "+CMS ERROR: {code}"),
            Self::Equipment(None) => f.write_str("+CME ERROR"),
            Self::Message(None) => f.write_str("+CMS ERROR"),
            Self::Plain => f.write_str("ERROR"),
        }
    }
}
