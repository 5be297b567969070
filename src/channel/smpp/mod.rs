//! An SMSC by SMPP 3.4: one transceiver session, made again whenever it breaks.
//!
//! In: a link's settings.
//! Out: messages and receipts into the intake, letters out of the outlet.
//! Promises that `deliver_sm` is answered only when the inbox has the message, that no PDU can end
//! the channel, and that a letter is sent again only where the SMSC's answer was lost.
//! Knows nothing of what a text means.
//!
//! Names, fields and encoding of PDUs are those of `rusmpp`. Reading is our own, because the
//! library takes a PDU that is not quite right for the end of the session (`frame`, `fields`), and
//! so is the session, because its client has an unbounded queue, writes whole PDUs to the log, and
//! runs out of sequence numbers in a session of months.
//!
//! - [`frame`], [`fields`], [`delivery`]: octets and PDUs.
//! - [`coding`], [`address`], [`receipt`], [`arrival`]: what comes in.
//! - [`submission`], [`status`], [`queue`]: what goes out.
//! - [`bind`], [`session`], [`back_off`]: the states of a link.
//! - `line`, `traffic`, `connect`: the part with I/O and clock.

pub mod address;
pub mod arrival;
pub mod back_off;
pub mod bind;
pub mod coding;
mod connect;
pub mod delivery;
pub mod fields;
pub mod frame;
mod line;
pub mod queue;
pub mod receipt;
pub mod session;
pub mod status;
pub mod submission;
mod traffic;

use std::pin::Pin;
use std::time::Duration;

use secrecy::ExposeSecret;

use super::{Channel, ChannelError, secret};
use crate::config::SmppSettings;
use crate::message::ChannelName;
use crate::post::Port;

use arrival::Writing;
use bind::Credentials;
use connect::Host;

use submission::Numbering;

/// More than any operator allows.
const WINDOW_MAX: u32 = 10_000;
/// A field of the bind that is longer is a mistake; the standard allows fewer.
const FIELD_OCTETS_MAX: usize = 64;
/// `source_addr` without its zero.
const SOURCE_OCTETS_MAX: usize = 20;

/// A link that is ready to run.
pub struct Smpp {
    name: ChannelName,
    terms: Terms,
}

/// What a link's settings say.
struct Terms {
    host: Host,
    credentials: Credentials,
    writing: Writing,
    numbering: Numbering,
    window: usize,
    enquire_every: Duration,
}

impl Smpp {
    /// From its settings.
    ///
    /// # Errors
    /// [`ChannelError`] when the password is not there or a setting says what cannot be.
    pub fn open(settings: &SmppSettings) -> Result<Self, ChannelError> {
        let wrong = |reason: String| ChannelError::Setting {
            channel: settings.name.clone(),
            reason,
        };
        let password = secret(
            &settings.name,
            "password",
            settings.password_env.as_deref(),
            settings.password_file.as_deref(),
        )?
        .ok_or_else(|| ChannelError::NoSecret {
            channel: settings.name.clone(),
            name: "password",
        })?;
        let credentials = Credentials {
            system_id: settings.system_id.clone(),
            password,
            system_type: settings.system_type.clone(),
        };
        for (key, value) in [
            ("system_id", credentials.system_id.as_str()),
            ("the password", credentials.password.expose_secret()),
            ("system_type", credentials.system_type.as_str()),
        ] {
            if !is_field(value, FIELD_OCTETS_MAX) {
                return Err(wrong(format!(
                    "{key} must be ASCII, of {FIELD_OCTETS_MAX} characters at most"
                )));
            }
        }
        if settings.source.is_empty() || !is_field(&settings.source, SOURCE_OCTETS_MAX) {
            return Err(wrong(format!(
                "source must be ASCII, of 1 to {SOURCE_OCTETS_MAX} characters"
            )));
        }
        if !(1..=WINDOW_MAX).contains(&settings.window) {
            return Err(wrong(format!("window must be from 1 to {WINDOW_MAX}")));
        }
        if settings.enquire_link_seconds == 0 {
            return Err(wrong("enquire_link_seconds must be 1 or more".to_owned()));
        }
        let country = settings.country_code.as_deref();
        if country.is_some_and(|code| code.is_empty() || !code.bytes().all(|b| b.is_ascii_digit()))
        {
            return Err(wrong("country_code must be digits, without a +".to_owned()));
        }
        let host = Host::read(&settings.host)
            .ok_or_else(|| wrong("host must be a name or an address, and a port".to_owned()))?;
        let host = if settings.tls {
            host.with_tls(settings.tls_ca_file.as_deref())
                .map_err(wrong)?
        } else {
            host
        };
        Ok(Self {
            name: settings.name.as_str().into(),
            terms: Terms {
                host,
                credentials,
                writing: Writing {
                    default_alphabet: settings.default_alphabet,
                    country_code: settings.country_code.clone(),
                },
                numbering: Numbering {
                    source_plan: address::plan(
                        &settings.source,
                        settings.source_ton,
                        settings.source_npi,
                    ),
                    source: settings.source.clone(),
                    dest_ton: settings.dest_ton,
                    dest_npi: settings.dest_npi,
                },
                window: usize::try_from(settings.window).unwrap_or(usize::MAX),
                enquire_every: Duration::from_secs(settings.enquire_link_seconds.into()),
            },
        })
    }
}

fn is_field(value: &str, octets_max: usize) -> bool {
    value.len() <= octets_max && value.bytes().all(|b| b.is_ascii() && b != 0)
}

impl Channel for Smpp {
    fn name(&self) -> &ChannelName {
        &self.name
    }

    /// Twice the window: while answers to some are noted on the disk, others are in flight.
    fn places(&self) -> usize {
        self.terms.window.saturating_mul(2)
    }

    fn run(self: Box<Self>, port: Port) -> Pin<Box<dyn Future<Output = ()> + Send>> {
        Box::pin(line::run(self.name, self.terms, port))
    }
}
