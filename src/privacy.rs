//! What keeps people unrecognisable in the store.
//!
//! In: addresses and texts.
//! Out: keyed hashes for identity, sealed bytes for what must be read again.
//! Promises that without the key file, which is kept outside the store, neither a number nor a
//! text of it can be told.
//!
//! Identity is HMAC-SHA-256 (RFC 2104), sealing XChaCha20-Poly1305; each use has a key of its own,
//! drawn from the file's by HMAC.

use std::fmt;
use std::io::{ErrorKind, Read, Write};
use std::path::Path;

use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use hmac::{Hmac, Mac};
use sha2::Sha256;

use crate::message::{Address, Network};

const KEY_BYTES: usize = 32;
/// SHA-256's block.
const BLOCK_BYTES: usize = 64;
const NONCE_BYTES: usize = 24;
/// Bytes of a keyed hash that are kept: 128 bits.
const HASH_BYTES: usize = 16;

/// The keys of a deployment.
pub struct Seal {
    identity: [u8; KEY_BYTES],
    delivery: [u8; KEY_BYTES],
    cipher: XChaCha20Poly1305,
}

impl fmt::Debug for Seal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Seal(…)")
    }
}

/// What a sealed text is for: sealed for one purpose it does not open for another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Purpose {
    /// Where somebody is reached.
    Address,
    /// A message that came in, until it is answered.
    Inbox,
    /// A message that goes out, until it is sent.
    Outbox,
}

/// What can go wrong with the key.
#[derive(Debug, thiserror::Error)]
pub enum SealError {
    /// The key file cannot be read or made.
    #[error("the key file {path}: {error}")]
    File {
        /// The file.
        path: String,
        /// Why.
        error: std::io::Error,
    },
    /// The key file is no key.
    #[error("the key file {path} does not hold {KEY_BYTES} bytes in hexadecimal digits")]
    NoKey {
        /// The file.
        path: String,
    },
    /// The file lets others read it.
    #[error("the key file {path} can be read by others; run: chmod 600 {path}")]
    Open {
        /// The file.
        path: String,
    },
    /// The system gives no random bytes.
    #[error("the system gives no random bytes: {0}")]
    Random(getrandom::Error),
    /// Bytes that this key did not seal, or that were changed.
    #[error("what was stored does not open with this key file; is it the store's own?")]
    Foreign,
}

impl Seal {
    /// Reads the key file, which is made if it is not there.
    ///
    /// # Errors
    /// [`SealError`] when it cannot be read or made, is no key, or lets others read it.
    pub fn open_or_make(path: &Path) -> Result<Self, SealError> {
        let shown = || path.display().to_string();
        let failed = |error: std::io::Error| SealError::File {
            path: shown(),
            error,
        };
        match std::fs::File::open(path) {
            Ok(mut file) => {
                if is_open_to_others(&file.metadata().map_err(failed)?) {
                    return Err(SealError::Open { path: shown() });
                }
                let mut text = String::new();
                file.read_to_string(&mut text).map_err(failed)?;
                let key =
                    from_hex(text.trim()).ok_or_else(|| SealError::NoKey { path: shown() })?;
                Ok(Self::from_key(&key))
            }
            Err(error) if error.kind() == ErrorKind::NotFound => {
                let mut key = [0; KEY_BYTES];
                getrandom::fill(&mut key).map_err(SealError::Random)?;
                let mut file = private_file(path).map_err(failed)?;
                writeln!(file, "{}", hex(&key)).map_err(failed)?;
                // A key that is lost in a power cut leaves a store that nobody can open.
                file.sync_all().map_err(failed)?;
                Ok(Self::from_key(&key))
            }
            Err(error) => Err(failed(error)),
        }
    }

    /// The keys drawn from one.
    #[must_use]
    pub fn from_key(key: &[u8; KEY_BYTES]) -> Self {
        let sealing = derive(key, b"matone sealing");
        Self {
            identity: derive(key, b"matone identity"),
            delivery: derive(key, b"matone delivery"),
            cipher: XChaCha20Poly1305::new(&sealing.into()),
        }
    }

    /// Who somebody is, without saying it.
    #[must_use]
    pub fn person(&self, address: &Address) -> String {
        let network: &str = address.network().into();
        let mac = keyed(
            &self.identity,
            &[network.as_bytes(), address.number().as_bytes()],
        );
        hex(mac.get(..HASH_BYTES).unwrap_or(&mac))
    }

    /// A delivery's name, without what it is made of.
    #[must_use]
    pub fn delivery(&self, parts: &[&str]) -> Vec<u8> {
        let parts: Vec<&[u8]> = parts.iter().map(|part| part.as_bytes()).collect();
        let mac = keyed(&self.delivery, &parts);
        mac.get(..HASH_BYTES).unwrap_or(&mac).to_vec()
    }

    /// Seals a text.
    ///
    /// # Errors
    /// [`SealError::Random`] when the system gives no random bytes.
    pub fn close(&self, text: &str, purpose: Purpose) -> Result<Vec<u8>, SealError> {
        let mut nonce = [0; NONCE_BYTES];
        getrandom::fill(&mut nonce).map_err(SealError::Random)?;
        let payload = Payload {
            msg: text.as_bytes(),
            aad: <&str>::from(purpose).as_bytes(),
        };
        let sealed = self
            .cipher
            .encrypt(XNonce::from_slice(&nonce), payload)
            .map_err(|_| SealError::Foreign)?;
        Ok([nonce.as_slice(), &sealed].concat())
    }

    /// Opens what was sealed.
    ///
    /// # Errors
    /// [`SealError::Foreign`] when this key did not seal it, or for another purpose.
    pub fn open(&self, sealed: &[u8], purpose: Purpose) -> Result<String, SealError> {
        let (nonce, sealed) = sealed
            .split_at_checked(NONCE_BYTES)
            .ok_or(SealError::Foreign)?;
        let payload = Payload {
            msg: sealed,
            aad: <&str>::from(purpose).as_bytes(),
        };
        let text = self
            .cipher
            .decrypt(XNonce::from_slice(nonce), payload)
            .map_err(|_| SealError::Foreign)?;
        String::from_utf8(text).map_err(|_| SealError::Foreign)
    }

    /// Seals an address with its network.
    ///
    /// # Errors
    /// As [`Seal::close`].
    pub fn close_address(&self, address: &Address) -> Result<Vec<u8>, SealError> {
        let network: &str = address.network().into();
        self.close(
            &format!("{network}:{}", address.written()),
            Purpose::Address,
        )
    }

    /// Opens an address.
    ///
    /// # Errors
    /// As [`Seal::open`].
    pub fn open_address(&self, sealed: &[u8]) -> Result<Address, SealError> {
        let text = self.open(sealed, Purpose::Address)?;
        let (network, written) = text.split_once(':').ok_or(SealError::Foreign)?;
        let network: Network = network.parse().map_err(|_| SealError::Foreign)?;
        Ok(Address::stored(network, written.to_owned()))
    }
}

fn derive(key: &[u8; KEY_BYTES], label: &[u8]) -> [u8; KEY_BYTES] {
    keyed(key, &[label])
}

/// HMAC-SHA-256 over parts, each with its length before it.
fn keyed(key: &[u8; KEY_BYTES], parts: &[&[u8]]) -> [u8; KEY_BYTES] {
    // HMAC fills a key up to its block with noughts (RFC 2104).
    let mut block = [0; BLOCK_BYTES];
    for (slot, byte) in block.iter_mut().zip(key) {
        *slot = *byte;
    }
    let mut mac = <Hmac<Sha256> as hmac::KeyInit>::new(&block.into());
    for part in parts {
        mac.update(&(part.len() as u64).to_be_bytes());
        mac.update(part);
    }
    mac.finalize().into_bytes().into()
}

/// Lower-case hexadecimal digits.
#[must_use]
pub fn hex(bytes: &[u8]) -> String {
    use fmt::Write as _;
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

fn from_hex(text: &str) -> Option<[u8; KEY_BYTES]> {
    let digits = text.as_bytes();
    if digits.len() != 2 * KEY_BYTES {
        return None;
    }
    let mut key = [0; KEY_BYTES];
    for (byte, pair) in key.iter_mut().zip(digits.chunks_exact(2)) {
        let pair = std::str::from_utf8(pair).ok()?;
        *byte = u8::from_str_radix(pair, 16).ok()?;
    }
    Some(key)
}

#[cfg(unix)]
fn is_open_to_others(metadata: &std::fs::Metadata) -> bool {
    use std::os::unix::fs::PermissionsExt;
    metadata.permissions().mode() & 0o077 != 0
}

#[cfg(not(unix))]
fn is_open_to_others(_: &std::fs::Metadata) -> bool {
    false
}

fn private_file(path: &Path) -> std::io::Result<std::fs::File> {
    let mut options = std::fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    {
        use std::os::unix::fs::OpenOptionsExt;
        options.mode(0o600);
    }
    options.open(path)
}

/// A text with the digits of telephone numbers blanked: seven or more in a row, whatever parts
/// them.
#[must_use]
pub fn without_numbers(text: &str) -> String {
    /// Fewer digits are a volume or a date.
    const LEAST: usize = 7;
    let parts = |c: char| matches!(c, ' ' | '-' | '.' | '(' | ')' | '/' | '+');
    let chars: Vec<char> = text.chars().collect();
    let mut out = String::with_capacity(text.len());
    let mut rest = chars.as_slice();
    while let Some((first, behind)) = rest.split_first() {
        if !first.is_numeric() {
            out.push(*first);
            rest = behind;
            continue;
        }
        let run = rest
            .iter()
            .take_while(|c| c.is_numeric() || parts(**c))
            .count();
        let (run, behind) = rest.split_at(run);
        let digits = run.iter().filter(|c| c.is_numeric()).count();
        let shown = run.iter().map(|c| {
            if digits >= LEAST && c.is_numeric() {
                '#'
            } else {
                *c
            }
        });
        out.extend(shown);
        rest = behind;
    }
    out
}
