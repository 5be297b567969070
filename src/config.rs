//! The configuration file of a deployment.
//!
//! In: TOML.
//! Out: what it says, with a default for everything left out.
//! Promises that an unknown key is an error that names it, and that paths are meant from the
//! file's own folder. Holds no secret: it names where each is.

use std::collections::BTreeMap;
use std::net::SocketAddr;
use std::path::{Path, PathBuf};

use serde::Deserialize;

use crate::locale::FALLBACK;
use crate::quantity::UnitSystem;

/// A deployment's settings.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Config {
    /// Where what is remembered is kept.
    pub store: StoreSettings,
    /// What is kept of people's messages.
    pub privacy: PrivacySettings,
    /// The listener for webhooks and supervisors; none where it is left out.
    pub http: Option<HttpSettings>,
    /// How questions are answered.
    pub answers: AnswerSettings,
    /// How much is taken.
    pub limits: LimitSettings,
    /// How messages come and go.
    pub channel: Vec<ChannelSettings>,
    /// The supervisors' page.
    pub review: ReviewSettings,
}

/// `[store]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct StoreSettings {
    /// The file.
    pub path: PathBuf,
}

/// `[privacy]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct PrivacySettings {
    /// Makes senders unrecognisable; made on first start.
    pub key_file: PathBuf,
    /// How long the text of a message that was not understood is kept.
    pub keep_unread_days: u32,
}

/// `[http]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HttpSettings {
    /// Address and port.
    pub listen: SocketAddr,
}

/// `[answers]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct AnswerSettings {
    /// Which doses are told.
    pub regime: Regime,
    /// The language when none can be told, BCP 47.
    pub language: String,
    /// Whose gallons.
    pub units: Units,
    /// Files of local words.
    pub words: Vec<PathBuf>,
    /// A folder with languages of the deployer's own, or other texts for those of the program.
    pub locales: Option<PathBuf>,
    /// A number to call, shown with first aid.
    pub help_line: Option<String>,
}

/// Which published doses are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Regime {
    /// Those for emergencies.
    #[default]
    Emergency,
    /// Those of routine household programmes.
    Household,
}

/// Whose litres and gallons.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Units {
    /// British gallons.
    Imperial,
    /// Litres.
    #[default]
    Metric,
    /// US gallons.
    Us,
}

impl From<Units> for UnitSystem {
    fn from(units: Units) -> Self {
        match units {
            Units::Imperial => Self::Imperial,
            Units::Metric => Self::Metric,
            Units::Us => Self::Us,
        }
    }
}

/// `[limits]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct LimitSettings {
    /// Messages of one person that are answered in a minute.
    pub per_person_per_minute: u32,
    /// Messages that may wait.
    pub queue: usize,
}

/// `[review]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ReviewSettings {
    /// How long a supervisor stays signed in.
    pub session_hours: u32,
    /// Figures of fewer persons are not shown.
    pub suppress_below: u32,
}

/// `[[channel]]`.
#[derive(Debug, Clone, Deserialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub enum ChannelSettings {
    /// A carrier's SMPP link.
    Smpp(SmppSettings),
    /// A chat service's bot.
    Telegram(TelegramSettings),
    /// A modem on a serial line.
    Modem(ModemSettings),
    /// An SMS gateway that calls and is called over HTTP.
    Webhook(WebhookSettings),
}

impl ChannelSettings {
    /// What the deployment calls it.
    #[must_use]
    pub fn name(&self) -> &str {
        match self {
            Self::Smpp(smpp) => &smpp.name,
            Self::Telegram(telegram) => &telegram.name,
            Self::Modem(modem) => &modem.name,
            Self::Webhook(webhook) => &webhook.name,
        }
    }
}

/// A channel of kind `smpp`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SmppSettings {
    /// What the deployment calls it.
    pub name: String,
    /// Host and port.
    pub host: String,
    /// Who we are.
    pub system_id: String,
    /// The environment variable with the password.
    pub password_env: Option<String>,
    /// The file with the password.
    pub password_file: Option<PathBuf>,
    /// The number that people write to.
    pub source: String,
    /// Messages in flight.
    #[serde(default = "smpp_window")]
    pub window: u32,
    /// What data coding 0 means on this link.
    #[serde(default)]
    pub default_alphabet: Alphabet,
}

const fn smpp_window() -> u32 {
    32
}

/// The alphabet of a link where it does not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Alphabet {
    /// US-ASCII.
    Ascii,
    /// GSM 7-bit.
    #[default]
    Gsm7,
    /// ISO 8859-1.
    Latin1,
}

/// A channel of kind `telegram`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TelegramSettings {
    /// What the deployment calls it.
    pub name: String,
    /// The environment variable with the token.
    pub token_env: Option<String>,
    /// The file with the token.
    pub token_file: Option<PathBuf>,
    /// The service; the public one where it is left out.
    pub api_url: Option<String>,
}

/// A channel of kind `modem`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ModemSettings {
    /// What the deployment calls it.
    pub name: String,
    /// The serial device.
    pub device: PathBuf,
    /// Bits a second.
    #[serde(default = "modem_baud")]
    pub baud: u32,
    /// The environment variable with the SIM's PIN.
    pub pin_env: Option<String>,
    /// The file with the SIM's PIN.
    pub pin_file: Option<PathBuf>,
}

const fn modem_baud() -> u32 {
    115_200
}

/// A channel of kind `webhook`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WebhookSettings {
    /// What the deployment calls it.
    pub name: String,
    /// The environment variable with the shared secret.
    pub secret_env: Option<String>,
    /// The file with the shared secret.
    pub secret_file: Option<PathBuf>,
    /// The header with the signature.
    pub signature_header: Option<String>,
    /// Our names of fields to the gateway's, coming in.
    #[serde(default)]
    pub fields: BTreeMap<String, String>,
    /// How bodies are written, both ways.
    #[serde(default)]
    pub format: BodyFormat,
    /// Where replies go.
    pub reply_url: Option<String>,
    /// Our names of fields to the gateway's, going out.
    #[serde(default)]
    pub reply_fields: BTreeMap<String, String>,
}

/// How a body is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum BodyFormat {
    /// Like a web form.
    Form,
    /// JSON.
    #[default]
    Json,
}

impl Default for StoreSettings {
    fn default() -> Self {
        Self {
            path: PathBuf::from("matone.db"),
        }
    }
}

impl Default for PrivacySettings {
    fn default() -> Self {
        Self {
            key_file: PathBuf::from("matone.key"),
            keep_unread_days: 30,
        }
    }
}

impl Default for AnswerSettings {
    fn default() -> Self {
        Self {
            regime: Regime::default(),
            language: FALLBACK.to_owned(),
            units: Units::default(),
            words: Vec::new(),
            locales: None,
            help_line: None,
        }
    }
}

impl Default for LimitSettings {
    fn default() -> Self {
        Self {
            per_person_per_minute: 12,
            queue: 10_000,
        }
    }
}

impl Default for ReviewSettings {
    fn default() -> Self {
        Self {
            session_hours: 12,
            suppress_below: 5,
        }
    }
}

/// What is wrong with a configuration file.
#[derive(Debug, thiserror::Error)]
pub enum ConfigError {
    /// It cannot be read.
    #[error("{path} cannot be read: {error}")]
    Read {
        /// The file.
        path: String,
        /// Why.
        error: std::io::Error,
    },
    /// It does not say what is expected.
    #[error("{path}, {reason}")]
    Toml {
        /// The file.
        path: String,
        /// Where and what, in one line.
        reason: String,
    },
}

impl Config {
    /// Reads a file; its paths are then meant from where the program was started.
    ///
    /// # Errors
    /// [`ConfigError`] when it cannot be read or does not say what is expected.
    pub fn read(path: &Path) -> Result<Self, ConfigError> {
        let shown = path.display().to_string();
        let text = std::fs::read_to_string(path).map_err(|error| ConfigError::Read {
            path: shown.clone(),
            error,
        })?;
        let mut config: Self = toml::from_str(&text).map_err(|error| ConfigError::Toml {
            path: shown,
            reason: in_one_line(&text, &error),
        })?;
        config.root_at(path.parent().unwrap_or(Path::new("")));
        Ok(config)
    }

    /// Relative paths start at the file's folder.
    fn root_at(&mut self, folder: &Path) {
        let root = |path: &mut PathBuf| *path = folder.join(&*path);
        root(&mut self.store.path);
        root(&mut self.privacy.key_file);
        self.answers.words.iter_mut().for_each(root);
        self.answers.locales.iter_mut().for_each(root);
        for channel in &mut self.channel {
            match channel {
                ChannelSettings::Smpp(smpp) => smpp.password_file.iter_mut().for_each(root),
                ChannelSettings::Telegram(chat) => chat.token_file.iter_mut().for_each(root),
                ChannelSettings::Modem(modem) => modem.pin_file.iter_mut().for_each(root),
                ChannelSettings::Webhook(hook) => hook.secret_file.iter_mut().for_each(root),
            }
        }
    }
}

/// "line 3: unknown field `colour`, expected one of …".
fn in_one_line(text: &str, error: &toml::de::Error) -> String {
    let line = error
        .span()
        .and_then(|span| text.get(..span.start))
        .map_or(1, |before| before.matches('\n').count() + 1);
    let message = error.message().lines().collect::<Vec<_>>().join(" ");
    format!("line {line}: {message}")
}
