//! How each channel's link with its network stands.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use crate::message::ChannelName;

/// A link.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Link {
    /// It ended and nobody tries again.
    Down(String),
    /// It is broken and is being tried again.
    Retrying(String),
    /// It is being made.
    Starting,
    /// It works.
    Up,
}

/// All links.
#[derive(Debug, Clone, Default)]
pub struct Links(Arc<Mutex<BTreeMap<ChannelName, Link>>>);

impl Links {
    /// Notes how a link stands now, and logs it if that is new.
    pub fn set(&self, channel: &ChannelName, link: Link) {
        let before = self.locked().insert(channel.clone(), link.clone());
        if before.as_ref() == Some(&link) {
            return;
        }
        match link {
            Link::Down(reason) => tracing::error!(%channel, reason, "channel is down"),
            Link::Retrying(reason) => tracing::warn!(%channel, reason, "channel is retrying"),
            Link::Starting => tracing::info!(%channel, "channel is starting"),
            Link::Up => tracing::info!(%channel, "channel is up"),
        }
    }

    /// How all links stand.
    #[must_use]
    pub fn all(&self) -> Vec<(ChannelName, Link)> {
        let links = self.locked();
        links
            .iter()
            .map(|(channel, link)| (channel.clone(), link.clone()))
            .collect()
    }

    fn locked(&self) -> std::sync::MutexGuard<'_, BTreeMap<ChannelName, Link>> {
        // A map of words is whole whatever happened to who held it.
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
