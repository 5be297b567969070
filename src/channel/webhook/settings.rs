//! The settings of a webhook channel, checked.
//!
//! In: what the configuration says, and the secret.
//! Out: what inbound and outbound work with, or what is wrong and what to do.

use std::collections::BTreeMap;

use axum::http::{HeaderName, HeaderValue};
use reqwest::{Client, Url};
use secrecy::{ExposeSecret, SecretString};

use crate::channel::{ChannelError, calling, secret};
use crate::config::WebhookSettings;

use super::body::{FieldName, write};
use super::outbound::client;
use super::proof::{Kind, Proof, Stamp};

const SECRET_HEADER: &str = "X-Secret";

/// Fields of a message that comes in.
#[derive(Debug)]
pub(super) struct Fields {
    pub(super) id: FieldName,
    pub(super) from: FieldName,
    pub(super) text: FieldName,
}

/// Fields of a reply.
#[derive(Debug)]
pub(super) struct ReplyFields {
    pub(super) to: FieldName,
    pub(super) text: FieldName,
    pub(super) id: FieldName,
    /// Those that always say the same.
    pub(super) extra: Vec<(FieldName, String)>,
}

/// How delivery receipts are read.
#[derive(Debug)]
pub(super) struct Receipts {
    pub(super) id: FieldName,
    pub(super) status: FieldName,
    pub(super) delivered: Vec<String>,
    pub(super) undelivered: Vec<String>,
}

/// What is wrong in the settings of one channel.
pub(super) struct Wrong<'a>(&'a str);

impl<'a> Wrong<'a> {
    pub(super) const fn of(settings: &'a WebhookSettings) -> Self {
        Self(settings.name.as_str())
    }

    fn says(&self, reason: String) -> ChannelError {
        ChannelError::Setting {
            channel: self.0.to_owned(),
            reason,
        }
    }

    /// The name of a channel stands in a path.
    pub(super) fn check_name(&self) -> Result<(), ChannelError> {
        let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.');
        if self.0.is_empty() || !self.0.chars().all(plain) {
            return Err(self.says(
                "its name stands in its address: letters, digits, `-`, `_` and `.` only".to_owned(),
            ));
        }
        Ok(())
    }

    /// Our names of fields to the gateway's; `ours` are all that there are.
    fn fields<const N: usize>(
        &self,
        setting: &str,
        ours: [&str; N],
        theirs: &BTreeMap<String, String>,
    ) -> Result<[FieldName; N], ChannelError> {
        for (our, their) in theirs {
            if !ours.contains(&our.as_str()) {
                let known = ours.join("`, `");
                return Err(self.says(format!("{setting}: there is no `{our}`, only `{known}`")));
            }
            if their.is_empty() {
                return Err(self.says(format!("{setting}: the name for `{our}` is empty")));
            }
        }
        let named = |our: &str| FieldName::from(theirs.get(our).map_or(our, String::as_str));
        Ok(ours.map(named))
    }

    pub(super) fn inbound(&self, settings: &WebhookSettings) -> Result<Fields, ChannelError> {
        let [id, from, text] = self.fields("fields", ["id", "from", "text"], &settings.fields)?;
        Ok(Fields { id, from, text })
    }

    pub(super) fn replies(
        &self,
        settings: &WebhookSettings,
        proof: &Proof,
    ) -> Result<ReplyFields, ChannelError> {
        let ours = ["to", "text", "id"];
        let [to, text, id] = self.fields("reply_fields", ours, &settings.reply_fields)?;
        let extra = settings
            .reply_extra
            .iter()
            .map(|(name, text)| (FieldName::from(name.as_str()), text.clone()))
            .collect();
        let fields = ReplyFields {
            to,
            text,
            id,
            extra,
        };
        // What cannot be written now never can be.
        write(settings.format, fields.with("", "", "", proof))
            .map_err(|crossed| self.says(format!("reply_fields: {crossed}")))?;
        Ok(fields)
    }

    pub(super) fn receipts(
        &self,
        settings: &WebhookSettings,
    ) -> Result<Option<Receipts>, ChannelError> {
        let Some(theirs) = &settings.receipt_fields else {
            return Ok(None);
        };
        let [id, status] = self.fields("receipt_fields", ["id", "status"], theirs)?;
        Ok(Some(Receipts {
            id,
            status,
            delivered: settings.receipt_delivered.clone(),
            undelivered: settings.receipt_undelivered.clone(),
        }))
    }

    pub(super) fn reply_url(&self, settings: &WebhookSettings) -> Result<Url, ChannelError> {
        let Some(written) = &settings.reply_url else {
            return Err(self.says(
                "reply_url is missing: it says where replies go (they are not in the answer to \
                 the gateway's request)"
                    .to_owned(),
            ));
        };
        let url = calling::address(written).map_err(|why| self.says(format!("reply_url {why}")))?;
        if url.password().is_some() {
            return Err(self.says(
                "reply_url holds a password, and no secret is kept in this file; name its header \
                 as secret_header and what goes there as secret_env or secret_file"
                    .to_owned(),
            ));
        }
        Ok(url)
    }

    pub(super) fn client(&self, url: &Url) -> Result<Client, ChannelError> {
        calling::client(client(), url).map_err(|why| self.says(format!("reply_url {why}")))
    }

    fn header(&self, setting: &str, name: &str) -> Result<HeaderName, ChannelError> {
        name.parse()
            .map_err(|_| self.says(format!("{setting}: `{name}` is no name of a header")))
    }

    /// How requests are proved: anybody could ask in anybody's name without.
    pub(super) fn proof(&self, settings: &WebhookSettings) -> Result<Proof, ChannelError> {
        let kind = self.kind(settings)?;
        let shown = secret(
            self.0,
            "secret",
            settings.secret_env.as_deref(),
            settings.secret_file.as_deref(),
        )?;
        let shown = shown.ok_or_else(|| ChannelError::NoSecret {
            channel: self.0.to_owned(),
            name: "secret",
        })?;
        if matches!(kind, Kind::Header(_)) && !fits_header(&shown) {
            return Err(self.says("its secret has characters that no header carries".to_owned()));
        }
        Proof::new(shown, kind).ok_or_else(|| self.says("its secret is empty".to_owned()))
    }

    fn kind(&self, settings: &WebhookSettings) -> Result<Kind, ChannelError> {
        let one_of = "signature_header, secret_header and secret_field: only one of them";
        match (
            &settings.signature_header,
            &settings.secret_header,
            &settings.secret_field,
        ) {
            (Some(name), None, None) => Ok(Kind::Signature {
                header: self.header("signature_header", name)?,
                stamp: self.stamp(settings)?,
            }),
            (None, ..) if settings.timestamp_header.is_some() => Err(self.says(
                "timestamp_header: only a signature holds it; signature_header is missing"
                    .to_owned(),
            )),
            (None, None, Some(name)) => Ok(Kind::Field(name.as_str().into())),
            (None, name, None) => {
                let name = name.as_deref().unwrap_or(SECRET_HEADER);
                Ok(Kind::Header(self.header("secret_header", name)?))
            }
            (Some(_), ..) | (None, Some(_), Some(_)) => Err(self.says(one_of.to_owned())),
        }
    }

    fn stamp(&self, settings: &WebhookSettings) -> Result<Option<Stamp>, ChannelError> {
        let Some(name) = &settings.timestamp_header else {
            return Ok(None);
        };
        if settings.replay_seconds == 0 {
            return Err(self.says("replay_seconds: nothing arrives within 0 seconds".to_owned()));
        }
        Ok(Some(Stamp {
            header: self.header("timestamp_header", name)?,
            window_seconds: settings.replay_seconds,
        }))
    }
}

fn fits_header(secret: &SecretString) -> bool {
    HeaderValue::from_str(secret.expose_secret()).is_ok()
}

impl ReplyFields {
    /// A reply's fields, each with what it says.
    pub(super) fn with<'a>(
        &'a self,
        to: &'a str,
        text: &'a str,
        id: &'a str,
        proof: &'a Proof,
    ) -> impl Iterator<Item = (&'a FieldName, &'a str)> {
        let extra = self.extra.iter().map(|(name, text)| (name, text.as_str()));
        [(&self.to, to), (&self.text, text), (&self.id, id)]
            .into_iter()
            .chain(extra)
            .chain(proof.field())
    }
}
