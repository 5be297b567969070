//! Proof that a request comes from the gateway, and ours to it.
//!
//! In: headers, the raw body, the time.
//! Out: whether they are proved, or the headers that prove ours.
//! Promises that comparing takes as long whatever is wrong. Pure: the time comes in as an argument.
//!
//! Signatures are HMAC-SHA-256 (RFC 2104) in hexadecimal digits.

use std::fmt;

use axum::http::{HeaderMap, HeaderName, HeaderValue};
use hmac::{Hmac, KeyInit, Mac};
use jiff::Timestamp;
use secrecy::{ExposeSecret, SecretString};
use sha2::{Digest, Sha256};
use subtle::ConstantTimeEq;

use crate::privacy::hex;

use super::body::{Body, FieldName};

/// Some gateways write the name of the hash before it.
const PREFIX: &str = "sha256=";

/// How requests are proved, both ways.
pub(super) struct Proof {
    secret: SecretString,
    key: Hmac<Sha256>,
    kind: Kind,
}

/// What proves a request.
#[derive(Debug)]
pub(super) enum Kind {
    /// The secret in a field of the body.
    Field(FieldName),
    /// The secret in a header.
    Header(HeaderName),
    /// A signature over the body.
    Signature {
        header: HeaderName,
        stamp: Option<Stamp>,
    },
}

/// A time of signing that is signed too.
#[derive(Debug)]
pub(super) struct Stamp {
    pub(super) header: HeaderName,
    /// How far it may be from ours.
    pub(super) window_seconds: u32,
}

/// Why a request is not the gateway's.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub(super) enum Unproven {
    #[error("the signature or the secret is missing")]
    Missing,
    #[error("the time of signing is too far from ours")]
    Stale,
    #[error("the signature or the secret is wrong")]
    Wrong,
}

impl fmt::Debug for Proof {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Proof({:?}, …)", self.kind)
    }
}

impl Proof {
    /// Proof by a secret; nothing where the secret is empty, which proves nothing.
    pub(super) fn new(secret: SecretString, kind: Kind) -> Option<Self> {
        let octets = secret.expose_secret().as_bytes();
        if octets.is_empty() {
            return None;
        }
        let key = Hmac::new_from_slice(octets).ok()?;
        Some(Self { secret, key, kind })
    }

    /// Whether the headers prove the body. Where the proof is a field of it, see
    /// [`Proof::verify_field`].
    pub(super) fn verify(
        &self,
        headers: &HeaderMap,
        body: &[u8],
        now: Timestamp,
    ) -> Result<(), Unproven> {
        match &self.kind {
            Kind::Field(_) => Ok(()),
            Kind::Header(header) => self.verify_secret(only(headers, header)?.as_bytes()),
            Kind::Signature { header, stamp } => {
                let signature = only(headers, header)?.to_str().unwrap_or_default();
                let stamp = match stamp {
                    Some(stamp) => Some((only(headers, &stamp.header)?, stamp.window_seconds)),
                    None => None,
                };
                let mac = self.mac(stamp.map(|(time, _)| time.as_bytes()), body);
                let octets = from_hex(signature).ok_or(Unproven::Wrong)?;
                mac.verify_slice(&octets).map_err(|_| Unproven::Wrong)?;
                match stamp {
                    Some((time, window)) if !is_near(time, window, now) => Err(Unproven::Stale),
                    Some(_) | None => Ok(()),
                }
            }
        }
    }

    /// Whether the body proves itself; it does where the headers have to.
    pub(super) fn verify_field(&self, body: &Body) -> Result<(), Unproven> {
        match &self.kind {
            Kind::Field(name) => {
                let shown = body.text(name).map_err(|_| Unproven::Missing)?;
                self.verify_secret(shown.as_bytes())
            }
            Kind::Header(_) | Kind::Signature { .. } => Ok(()),
        }
    }

    /// The field that proves a body of ours.
    pub(super) fn field(&self) -> Option<(&FieldName, &str)> {
        match &self.kind {
            Kind::Field(name) => Some((name, self.secret.expose_secret())),
            Kind::Header(_) | Kind::Signature { .. } => None,
        }
    }

    /// The headers that prove a body of ours.
    pub(super) fn headers(&self, body: &[u8], now: Timestamp) -> Vec<(HeaderName, HeaderValue)> {
        let hidden = |octets: &[u8]| {
            let mut value = HeaderValue::from_bytes(octets).ok()?;
            value.set_sensitive(true);
            Some(value)
        };
        match &self.kind {
            Kind::Field(_) => Vec::new(),
            Kind::Header(header) => hidden(self.secret.expose_secret().as_bytes())
                .map(|value| (header.clone(), value))
                .into_iter()
                .collect(),
            Kind::Signature { header, stamp } => {
                let time = now.as_second().to_string();
                let stamp = stamp.as_ref().map(|stamp| &stamp.header);
                let mac = self.mac(stamp.map(|_| time.as_bytes()), body);
                let signature = hex(&mac.finalize().into_bytes());
                let signature = hidden(signature.as_bytes()).map(|value| (header.clone(), value));
                let time = stamp.zip(HeaderValue::from_str(&time).ok());
                let time = time.map(|(header, value)| (header.clone(), value));
                signature.into_iter().chain(time).collect()
            }
        }
    }

    /// A name for something that nobody else has, whatever store it was numbered in.
    pub(super) fn name(&self, parts: &[&str]) -> String {
        let mut mac = self.key.clone();
        for part in parts {
            mac.update(&(part.len() as u64).to_be_bytes());
            mac.update(part.as_bytes());
        }
        let octets = mac.finalize().into_bytes();
        hex(octets.get(..8).unwrap_or(&octets))
    }

    fn mac(&self, time: Option<&[u8]>, body: &[u8]) -> Hmac<Sha256> {
        let mut mac = self.key.clone();
        if let Some(time) = time {
            mac.update(time);
            mac.update(b".");
        }
        mac.update(body);
        mac
    }

    fn verify_secret(&self, shown: &[u8]) -> Result<(), Unproven> {
        // Digests are of one length, so that not even the secret's can be measured.
        let ours = Sha256::digest(self.secret.expose_secret().as_bytes());
        let theirs = Sha256::digest(shown);
        if bool::from(ours.ct_eq(&theirs)) {
            Ok(())
        } else {
            Err(Unproven::Wrong)
        }
    }
}

/// A header's value; one that is there twice says nothing.
fn only<'a>(headers: &'a HeaderMap, name: &HeaderName) -> Result<&'a HeaderValue, Unproven> {
    let mut values = headers.get_all(name).iter();
    let first = values.next().ok_or(Unproven::Missing)?;
    match values.next() {
        None => Ok(first),
        Some(_) => Err(Unproven::Wrong),
    }
}

fn is_near(time: &HeaderValue, window_seconds: u32, now: Timestamp) -> bool {
    let seconds = time.to_str().ok().and_then(|text| text.parse::<i64>().ok());
    seconds.is_some_and(|seconds| now.as_second().abs_diff(seconds) <= u64::from(window_seconds))
}

fn from_hex(written: &str) -> Option<Vec<u8>> {
    let digits = written.strip_prefix(PREFIX).unwrap_or(written).as_bytes();
    if !digits.len().is_multiple_of(2) || !digits.iter().all(u8::is_ascii_hexdigit) {
        return None;
    }
    digits
        .chunks_exact(2)
        .map(|pair| u8::from_str_radix(std::str::from_utf8(pair).ok()?, 16).ok())
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{HeaderMap, HeaderName, HeaderValue, Kind, Proof, Stamp, Timestamp, Unproven};

    /// RFC 4231, section 4.3.
    const KEY: &str = "Jefe";
    const BODY: &[u8] = b"what do ya want for nothing?";
    const MAC: &str = "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843";

    const SIGNATURE: HeaderName = HeaderName::from_static("x-signature");
    const TIME: HeaderName = HeaderName::from_static("x-time");
    const SECRET: HeaderName = HeaderName::from_static("x-secret");

    fn signed(stamp: Option<u32>) -> Proof {
        let stamp = stamp.map(|window_seconds| Stamp {
            header: TIME,
            window_seconds,
        });
        let kind = Kind::Signature {
            header: SIGNATURE,
            stamp,
        };
        Proof::new(KEY.into(), kind).expect("a proof")
    }

    fn at(second: i64) -> Timestamp {
        Timestamp::from_second(second).expect("a time")
    }

    fn headers(pairs: &[(HeaderName, &str)]) -> HeaderMap {
        pairs
            .iter()
            .map(|(name, value)| (name.clone(), HeaderValue::from_str(value).expect("a value")))
            .collect()
    }

    fn check(shown: &[&str], expected: Result<(), Unproven>) {
        let mut headers = HeaderMap::new();
        for value in shown {
            headers.append(SIGNATURE, HeaderValue::from_str(value).expect("a value"));
        }
        let verified = signed(None).verify(&headers, BODY, at(0));
        assert_eq!(verified, expected, "{shown:?}");
    }

    #[test]
    fn signatures() {
        check(&[MAC], Ok(()));
        check(&[&MAC.to_uppercase()], Ok(()));
        check(&[&format!("sha256={MAC}")], Ok(()));
        check(&[], Err(Unproven::Missing));
        check(&[MAC, MAC], Err(Unproven::Wrong));
        check(&[&MAC.replace('5', "6")], Err(Unproven::Wrong));
        for wrong in [
            "",
            "sha256=",
            "5b",
            "5bd",
            "zz",
            "+5+b",
            "é",
            MAC.split_at(62).0,
        ] {
            check(&[wrong], Err(Unproven::Wrong));
        }
        check(&[&format!("{MAC}00")], Err(Unproven::Wrong));
        check(&[&format!("sha1={MAC}")], Err(Unproven::Wrong));
    }

    #[test]
    fn what_is_signed_here_is_proved_here_while_it_is_fresh() {
        let proof = signed(Some(300));
        let ours: HeaderMap = proof.headers(BODY, at(1_000_000)).into_iter().collect();
        assert_eq!(ours.get(TIME).expect("a time"), "1000000");
        let verify = |now| proof.verify(&ours, BODY, at(now));
        for near in [1_000_000, 1_000_300, 999_700] {
            assert_eq!(verify(near), Ok(()), "{near}");
        }
        for far in [1_000_301, 999_699, 0, 9_000_000_000] {
            assert_eq!(verify(far), Err(Unproven::Stale), "{far}");
        }
    }

    #[test]
    fn a_time_that_was_not_signed_is_no_time() {
        let proof = signed(Some(300));
        let ours: HeaderMap = proof.headers(BODY, at(1_000_000)).into_iter().collect();
        let mut moved = ours.clone();
        moved.insert(TIME, HeaderValue::from_static("1000001"));
        let verify = |headers: &HeaderMap| proof.verify(headers, BODY, at(1_000_001));
        assert_eq!(verify(&moved), Err(Unproven::Wrong));
        moved.remove(TIME);
        assert_eq!(verify(&moved), Err(Unproven::Missing));
        // Without a time over it, a signature of the body alone proves nothing here.
        let bare = headers(&[(SIGNATURE, MAC), (TIME, "")]);
        assert_eq!(verify(&bare), Err(Unproven::Wrong));
    }

    #[test]
    fn a_signed_time_that_is_no_number_is_stale() {
        let proof = signed(Some(300));
        for time in ["", "1e6", "99999999999999999999", "-1"] {
            let mac = proof.mac(Some(time.as_bytes()), BODY);
            let mac = crate::privacy::hex(&hmac::Mac::finalize(mac).into_bytes());
            let shown = headers(&[(SIGNATURE, &mac), (TIME, time)]);
            let verified = proof.verify(&shown, BODY, at(1_000_000));
            assert_eq!(verified, Err(Unproven::Stale), "{time}");
        }
    }

    #[test]
    fn a_secret_shown_is_the_secret_or_not() {
        let proof = Proof::new("opensesame".into(), Kind::Header(SECRET)).expect("a proof");
        let verify = |shown: &[(HeaderName, &str)]| proof.verify(&headers(shown), BODY, at(0));
        assert_eq!(verify(&[(SECRET, "opensesame")]), Ok(()));
        assert_eq!(verify(&[]), Err(Unproven::Missing));
        for wrong in ["", "opensesam", "opensesame2", "OPENSESAME"] {
            assert_eq!(verify(&[(SECRET, wrong)]), Err(Unproven::Wrong), "{wrong}");
        }
        assert!(Proof::new("".into(), Kind::Header(SECRET)).is_none());
    }
}
