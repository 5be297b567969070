//! Channels: one network each, behind one small trait.
//!
//! In: a channel's settings and its secret.
//! Out: arrivals into the intake, letters out of the outlet.
//! Promises that a network hears "received" only when the inbox has it.
//! Knows nothing of what a text means.

mod backoff;
mod calling;
mod dispatch;
mod lanes;
pub mod modem;
pub mod smpp;
mod telegram;
mod webhook;

use std::future::Future;
use std::path::Path;
use std::pin::Pin;

use axum::Router;
use secrecy::SecretString;

use crate::config::ChannelSettings;
use crate::message::ChannelName;
use crate::post::{Intake, Port};

/// A channel that is ready to run.
pub trait Channel: Send {
    /// What the deployment calls it.
    fn name(&self) -> &ChannelName;

    /// How many messages it can have in flight.
    fn places(&self) -> usize;

    /// What the program's listener answers for it.
    fn routes(&self, intake: &Intake) -> Option<Router> {
        let _ = intake;
        None
    }

    /// Carries messages until the program is ending.
    fn run(self: Box<Self>, port: Port) -> Pin<Box<dyn Future<Output = ()> + Send>>;
}

/// Why a channel cannot be made from its settings.
#[derive(Debug, thiserror::Error)]
pub enum ChannelError {
    /// Neither the environment variable nor the file of a secret is named.
    #[error("[[channel]] {channel}: neither {name}_env nor {name}_file says where its {name} is")]
    NoSecret {
        /// The channel.
        channel: String,
        /// Which secret.
        name: &'static str,
    },
    /// The environment variable is not set.
    #[error("[[channel]] {channel}: the environment variable {variable} is not set")]
    NoVariable {
        /// The channel.
        channel: String,
        /// The variable.
        variable: String,
    },
    /// The file cannot be read.
    #[error("[[channel]] {channel}: {path} cannot be read: {error}")]
    SecretFile {
        /// The channel.
        channel: String,
        /// The file.
        path: String,
        /// Why.
        error: std::io::Error,
    },
    /// A setting says what cannot be.
    #[error("[[channel]] {channel}: {reason}")]
    Setting {
        /// The channel.
        channel: String,
        /// What is wrong and what to do.
        reason: String,
    },
}

/// Makes a channel from its settings.
///
/// # Errors
/// [`ChannelError`] when a secret is not there or a setting says what cannot be.
pub fn open(settings: &ChannelSettings) -> Result<Box<dyn Channel>, ChannelError> {
    match settings {
        ChannelSettings::Modem(settings) => Ok(Box::new(modem::Modem::open(settings)?)),
        ChannelSettings::Smpp(smpp) => Ok(Box::new(smpp::Smpp::open(smpp)?)),
        ChannelSettings::Telegram(settings) => Ok(Box::new(telegram::open(settings)?)),
        ChannelSettings::Webhook(settings) => Ok(Box::new(webhook::open(settings)?)),
    }
}

/// A secret from the environment or a file, whichever is named.
fn secret(
    channel: &str,
    name: &'static str,
    variable: Option<&str>,
    file: Option<&Path>,
) -> Result<Option<SecretString>, ChannelError> {
    if let Some(variable) = variable {
        return match std::env::var(variable) {
            Ok(value) if !value.is_empty() => Ok(Some(value.into())),
            _ => Err(ChannelError::NoVariable {
                channel: channel.to_owned(),
                variable: variable.to_owned(),
            }),
        };
    }
    let Some(path) = file else {
        return Ok(None);
    };
    let text = std::fs::read_to_string(path).map_err(|error| ChannelError::SecretFile {
        channel: channel.to_owned(),
        path: path.display().to_string(),
        error,
    })?;
    let _ = name;
    Ok(Some(text.trim_end_matches(['\r', '\n']).to_owned().into()))
}
