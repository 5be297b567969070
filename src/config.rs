//! The configuration file of a deployment.
//!
//! In: TOML.
//! Out: what it says, with a default for everything left out.
//! Promises that an unknown key is an error that names it, and that paths are meant from the
//! file's own folder. Holds no secret: it names where each is.

use std::collections::{BTreeMap, BTreeSet};
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
    Webhook(Box<WebhookSettings>),
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
    /// What kind of system we are, if the operator wants to know.
    #[serde(default)]
    pub system_type: String,
    /// Type of number of `source`; by its looks where it is left out.
    pub source_ton: Option<u8>,
    /// Numbering plan of `source`; by its looks where it is left out.
    pub source_npi: Option<u8>,
    /// Type of number of people's numbers; by their looks where it is left out.
    pub dest_ton: Option<u8>,
    /// Numbering plan of people's numbers; by their looks where it is left out.
    pub dest_npi: Option<u8>,
    /// Put before numbers that come in national form, so that a person is the same on every
    /// channel.
    pub country_code: Option<String>,
    /// Silence after which the other side is asked whether it is there.
    #[serde(default = "smpp_enquire_link_seconds")]
    pub enquire_link_seconds: u32,
    /// Whether the connection is encrypted.
    #[serde(default)]
    pub tls: bool,
    /// The file with the certificates that the other side's is judged by; the public ones where
    /// it is left out.
    pub tls_ca_file: Option<PathBuf>,
}

const fn smpp_window() -> u32 {
    32
}

const fn smpp_enquire_link_seconds() -> u32 {
    30
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
    /// The file that notes that the SIM refused the PIN; beside the store where it is left out.
    pub refused_pin_file: Option<PathBuf>,
}

impl ModemSettings {
    fn note_refused_pin_in(&mut self, folder: &Path) {
        // A name may hold what no file name can.
        let name: String = self
            .name
            .chars()
            .map(|c| if c.is_alphanumeric() { c } else { '-' })
            .collect();
        self.refused_pin_file
            .get_or_insert_with(|| folder.join(format!("{name}.refused-pin")));
    }
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
    /// The header with the signature; left out, the secret itself is shown.
    pub signature_header: Option<String>,
    /// The header with the time of signing, in seconds since 1970, which is signed too.
    pub timestamp_header: Option<String>,
    /// How far the time of signing may be from ours.
    #[serde(default = "replay_seconds")]
    pub replay_seconds: u32,
    /// The header with the secret itself.
    pub secret_header: Option<String>,
    /// The field with the secret itself, for gateways that set no header.
    pub secret_field: Option<String>,
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
    /// Fields that go out with the same words always.
    #[serde(default)]
    pub reply_extra: BTreeMap<String, String>,
    /// The field with the gateway's own name for a reply, in its answer.
    pub reply_id_field: Option<String>,
    /// Our names of fields to the gateway's in delivery receipts; left out, none are taken.
    pub receipt_fields: Option<BTreeMap<String, String>>,
    /// What a receipt calls delivered.
    #[serde(default = "receipt_delivered")]
    pub receipt_delivered: Vec<String>,
    /// What a receipt calls not delivered, nor to be.
    #[serde(default = "receipt_undelivered")]
    pub receipt_undelivered: Vec<String>,
}

const fn replay_seconds() -> u32 {
    300
}

fn receipt_delivered() -> Vec<String> {
    vec!["delivered".to_owned()]
}

fn receipt_undelivered() -> Vec<String> {
    ["undelivered", "failed", "rejected", "expired"]
        .map(str::to_owned)
        .to_vec()
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

    /// What cannot be, each in a line that says where.
    #[must_use]
    pub fn contradictions(&self) -> Vec<String> {
        let mut wrong = Vec::new();
        if self.answers.regime == Regime::Household {
            wrong.push(
                "[answers] regime: `household` is not answered yet; only `emergency` is".to_owned(),
            );
        }
        let mut names = BTreeSet::new();
        for channel in &self.channel {
            let name = channel.name();
            if !names.insert(name) {
                wrong.push(format!(
                    "[[channel]] name: two channels are called `{name}`"
                ));
            }
            if matches!(channel, ChannelSettings::Webhook(_)) && self.http.is_none() {
                wrong.push(format!(
                    "[[channel]] {name}: a webhook needs [http] listen, where the gateway calls"
                ));
            }
        }
        wrong
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
                ChannelSettings::Smpp(smpp) => {
                    smpp.password_file.iter_mut().for_each(root);
                    smpp.tls_ca_file.iter_mut().for_each(root);
                }
                ChannelSettings::Telegram(chat) => chat.token_file.iter_mut().for_each(root),
                ChannelSettings::Modem(modem) => {
                    modem.pin_file.iter_mut().for_each(root);
                    modem.refused_pin_file.iter_mut().for_each(root);
                    modem.note_refused_pin_in(self.store.path.parent().unwrap_or(folder));
                }
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
