//! A chat service's bot, by its HTTP interface.
//!
//! In: settings and the bot's token.
//! Out: a channel that asks for messages and sends replies.
//! Promises that the service hears that we have a message only when it is in the inbox, and that
//! the token is in no log.

mod pace;
mod poll;
mod send;
mod text;
mod trouble;
mod update;

use std::future::Future;
use std::pin::Pin;
use std::sync::{Arc, Mutex};
use std::time::Duration;

use reqwest::Url;
use secrecy::ExposeSecret;
use teloxide::Bot;
use teloxide::net::{TELEGRAM_API_URL, default_reqwest_settings};

use crate::config::TelegramSettings;
use crate::message::ChannelName;
use crate::post::Port;

use super::dispatch::dispatch;
use super::{Channel, ChannelError, calling, secret};
use pace::Pace;
use poll::{POLL_SECONDS, Poll};
use send::{PLACES, Sender};

/// Longer than the service waits for something to tell.
const POLL_WITHIN: Duration = Duration::from_secs(POLL_SECONDS as u64 + 15);
const SEND_WITHIN: Duration = Duration::from_secs(17);

/// A chat channel. Not shown in logs: the bots know the token.
pub(super) struct Telegram {
    name: ChannelName,
    url: Url,
    polling: Bot,
    sending: Bot,
}

/// Makes a channel from its settings.
pub(super) fn open(settings: &TelegramSettings) -> Result<Telegram, ChannelError> {
    let channel = settings.name.as_str();
    let wrong = |reason: String| ChannelError::Setting {
        channel: channel.to_owned(),
        reason,
    };
    let written = settings.api_url.as_deref().unwrap_or(TELEGRAM_API_URL);
    let url = api_url(written).map_err(|why| wrong(format!("api_url {why}")))?;
    let token = secret(
        channel,
        "token",
        settings.token_env.as_deref(),
        settings.token_file.as_deref(),
    )?;
    let token = token.ok_or_else(|| ChannelError::NoSecret {
        channel: channel.to_owned(),
        name: "token",
    })?;
    let token = token.expose_secret().trim();
    if token.is_empty() || token.contains(|c: char| c.is_whitespace() || c.is_control()) {
        return Err(wrong("its token is empty, or is none".to_owned()));
    }
    let bot = |within: Duration| {
        let client = calling::client(default_reqwest_settings().timeout(within), &url)
            .map_err(|why| wrong(format!("api_url {why}")))?;
        Ok(Bot::with_client(token, client).set_api_url(url.clone()))
    };
    Ok(Telegram {
        name: channel.into(),
        polling: bot(POLL_WITHIN)?,
        sending: bot(SEND_WITHIN)?,
        url,
    })
}

/// The service's address; a path before the methods is kept.
fn api_url(written: &str) -> Result<Url, String> {
    let url = calling::address(written.trim_end_matches('/'))?;
    if url.query().is_some() || url.fragment().is_some() {
        return Err("has more behind its path".to_owned());
    }
    Ok(url)
}

impl Channel for Telegram {
    fn name(&self) -> &ChannelName {
        &self.name
    }

    fn places(&self) -> usize {
        PLACES
    }

    fn run(self: Box<Self>, port: Port) -> Pin<Box<dyn Future<Output = ()> + Send>> {
        if calling::is_open_to_others(&self.url) {
            tracing::warn!(
                channel = %self.name,
                "the token and the messages go unencrypted: api_url begins with http://"
            );
        }
        let Port {
            intake,
            outlet,
            state,
            ending,
        } = port;
        let poll = Poll {
            channel: self.name,
            bot: self.polling,
            intake,
            state,
            ending: ending.clone(),
        };
        let sender = Arc::new(Sender {
            bot: self.sending,
            pace: Mutex::new(Pace::default()),
            ending: ending.clone(),
        });
        let send = move |lent| {
            let sender = Arc::clone(&sender);
            async move { sender.send(lent).await }
        };
        Box::pin(async move {
            tokio::join!(poll.run(), dispatch(outlet, ending, send));
        })
    }
}
