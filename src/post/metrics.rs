//! What Prometheus is told: counts and times, no person and no text.

use std::fmt::{self, Write};

use prometheus_client::encoding::text::encode;
use prometheus_client::encoding::{EncodeLabelSet, EncodeLabelValue, LabelValueEncoder};
use prometheus_client::metrics::counter::Counter;
use prometheus_client::metrics::family::Family;
use prometheus_client::metrics::gauge::Gauge;
use prometheus_client::metrics::histogram::{Histogram, exponential_buckets};
use prometheus_client::registry::{Registry, Unit};

use crate::message::{ChannelName, Receipt, Sending};
use crate::store::Fate;

use super::link::{Link, Links};

/// Which channel.
#[derive(Debug, Clone, PartialEq, Eq, Hash, EncodeLabelSet)]
struct OfChannel {
    channel: String,
}

/// Which channel, and why not answered.
#[derive(Debug, Clone, PartialEq, Eq, Hash, EncodeLabelSet)]
struct SetAside {
    channel: String,
    reason: Aside,
}

/// Which channel, and why not sent.
#[derive(Debug, Clone, PartialEq, Eq, Hash, EncodeLabelSet)]
struct NotSent {
    channel: String,
    reason: Unsent,
}

/// Why a message was not answered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Aside {
    /// It came before.
    Duplicate,
    /// The program failed over it.
    Failed,
    /// It answers our answers.
    Loop,
    /// A short code or a name in letters wrote it.
    Machine,
    /// More than one person is answered in a minute.
    Rate,
    /// It holds no text that can be read.
    Unreadable,
}

/// How sending went wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
enum Unsent {
    Again,
    GivenUp,
    Undelivered,
}

impl EncodeLabelValue for Aside {
    fn encode(&self, encoder: &mut LabelValueEncoder<'_>) -> fmt::Result {
        encoder.write_str(self.into())
    }
}

impl EncodeLabelValue for Unsent {
    fn encode(&self, encoder: &mut LabelValueEncoder<'_>) -> fmt::Result {
        encoder.write_str(self.into())
    }
}

/// All figures.
#[derive(Debug)]
pub struct Metrics {
    registry: Registry,
    received: Family<OfChannel, Counter>,
    sent: Family<OfChannel, Counter>,
    delivered: Family<OfChannel, Counter>,
    not_understood: Family<OfChannel, Counter>,
    aside: Family<SetAside, Counter>,
    unsent: Family<NotSent, Counter>,
    up: Family<OfChannel, Gauge>,
    /// Messages that wait for an answer.
    pub(crate) waiting: Gauge,
    /// Time from a message's arrival to its answer in the outbox.
    pub(crate) answer_seconds: Histogram,
    /// Time of a commit.
    pub(super) commit_seconds: Histogram,
}

impl Default for Metrics {
    fn default() -> Self {
        let mut registry = Registry::with_prefix("matone");
        let metrics = Self {
            received: Family::default(),
            sent: Family::default(),
            delivered: Family::default(),
            not_understood: Family::default(),
            aside: Family::default(),
            unsent: Family::default(),
            up: Family::default(),
            waiting: Gauge::default(),
            answer_seconds: Histogram::new(exponential_buckets(0.001, 2.0, 16)),
            commit_seconds: Histogram::new(exponential_buckets(0.0005, 2.0, 14)),
            registry: Registry::default(),
        };
        let per_channel = [
            (
                "messages_received",
                "Messages that came in and are in the inbox",
                &metrics.received,
            ),
            (
                "replies_sent",
                "Replies that the network accepted",
                &metrics.sent,
            ),
            (
                "replies_delivered",
                "Replies whose delivery the network confirmed",
                &metrics.delivered,
            ),
            (
                "messages_not_understood",
                "Messages that were not understood",
                &metrics.not_understood,
            ),
        ];
        for (name, help, family) in per_channel {
            registry.register(name, help, family.clone());
        }
        registry.register(
            "messages_set_aside",
            "Messages that were not answered, by reason",
            metrics.aside.clone(),
        );
        registry.register(
            "replies_unsent",
            "Attempts to send that failed, by what follows",
            metrics.unsent.clone(),
        );
        registry.register(
            "channel_up",
            "Whether the channel's link works",
            metrics.up.clone(),
        );
        registry.register(
            "inbox_waiting",
            "Messages that wait for an answer",
            metrics.waiting.clone(),
        );
        registry.register_with_unit(
            "answer",
            "From a message's arrival to its answer in the outbox",
            Unit::Seconds,
            metrics.answer_seconds.clone(),
        );
        registry.register_with_unit(
            "commit",
            "Commits of the store",
            Unit::Seconds,
            metrics.commit_seconds.clone(),
        );
        Self {
            registry,
            ..metrics
        }
    }
}

impl Metrics {
    pub(crate) fn received(&self, channel: &ChannelName) {
        self.received.get_or_create(&of(channel)).inc();
    }

    pub(crate) fn not_understood(&self, channel: &ChannelName) {
        self.not_understood.get_or_create(&of(channel)).inc();
    }

    pub(crate) fn aside(&self, channel: &ChannelName, reason: Aside) {
        let label = SetAside {
            channel: channel.to_string(),
            reason,
        };
        self.aside.get_or_create(&label).inc();
    }

    pub(super) fn receipt(&self, channel: &ChannelName, receipt: Receipt) {
        match receipt {
            Receipt::Delivered => {
                self.delivered.get_or_create(&of(channel)).inc();
            }
            Receipt::Undelivered => self.unsent(channel, Unsent::Undelivered),
        }
    }

    pub(super) fn sending(&self, channel: &ChannelName, sending: &Sending, fate: &Fate) {
        match (sending, fate) {
            (Sending::Accepted(_), _) => {
                self.sent.get_or_create(&of(channel)).inc();
            }
            (Sending::PartAccepted(_), _) => {}
            (_, Fate::GivenUp) => self.unsent(channel, Unsent::GivenUp),
            (Sending::Failed(_) | Sending::TryAgain { .. }, _) => {
                self.unsent(channel, Unsent::Again);
            }
        }
    }

    fn unsent(&self, channel: &ChannelName, reason: Unsent) {
        let label = NotSent {
            channel: channel.to_string(),
            reason,
        };
        self.unsent.get_or_create(&label).inc();
    }

    /// Has every channel's counts stand at nought before anything happens.
    pub(super) fn introduce(&self, channel: &ChannelName) {
        for family in [
            &self.received,
            &self.sent,
            &self.delivered,
            &self.not_understood,
        ] {
            let _ = family.get_or_create(&of(channel));
        }
    }

    /// The page.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn page(&self, links: &Links) -> Result<String, fmt::Error> {
        for (channel, link) in links.all() {
            let up = match link {
                Link::Up => 1,
                Link::Down(_) | Link::Retrying(_) | Link::Starting => 0,
            };
            self.up.get_or_create(&of(&channel)).set(up);
        }
        let mut page = String::new();
        encode(&mut page, &self.registry)?;
        Ok(page)
    }
}

fn of(channel: &ChannelName) -> OfChannel {
    OfChannel {
        channel: channel.to_string(),
    }
}
