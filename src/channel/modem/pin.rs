//! The SIM's PIN, and the note that a card refused it.
//!
//! In: the PIN from its secret, the folder of the store.
//! Out: whether it may be given to a card.
//! Promises that a refused PIN is not tried again, not even by the next start of the program: the
//! third wrong one locks the card, and a power cut starts the program. The note does not tell the
//! PIN: one octet of a digest stands for it.

use std::io::Write;
use std::path::PathBuf;

use secrecy::{ExposeSecret, SecretString};
use sha2::{Digest, Sha256};

/// 3GPP TS 31.101 section 9.5.1.
const DIGITS: std::ops::RangeInclusive<usize> = 4..=8;

/// A PIN that may be one.
#[derive(Debug, Clone)]
pub struct Pin(SecretString);

impl Pin {
    /// Takes four to eight digits and nothing else.
    #[must_use]
    pub fn new(secret: SecretString) -> Option<Self> {
        let pin = secret.expose_secret();
        let is_pin = DIGITS.contains(&pin.len()) && pin.bytes().all(|byte| byte.is_ascii_digit());
        is_pin.then_some(Self(secret))
    }

    /// The command that gives it to the card.
    #[must_use]
    pub fn command(&self) -> String {
        format!("AT+CPIN=\"{}\"", self.0.expose_secret())
    }

    fn mark(&self) -> String {
        let digest = Sha256::digest(self.0.expose_secret().as_bytes());
        format!("{:02x}\n", digest.first().copied().unwrap_or_default())
    }
}

/// Where the note is.
#[derive(Debug, Clone)]
pub(super) struct Note(pub(super) PathBuf);

impl Note {
    /// Whether a card refused this PIN before.
    pub(super) fn is_of(&self, pin: &Pin) -> bool {
        std::fs::read_to_string(&self.0).is_ok_and(|mark| mark == pin.mark())
    }

    /// Notes that a card refused it.
    pub(super) fn write(&self, pin: &Pin) -> std::io::Result<()> {
        let mut options = std::fs::OpenOptions::new();
        options.write(true).create(true).truncate(true);
        #[cfg(unix)]
        {
            use std::os::unix::fs::OpenOptionsExt;
            options.mode(0o600);
        }
        let mut file = options.open(&self.0)?;
        file.write_all(pin.mark().as_bytes())?;
        file.sync_all()
    }
}
