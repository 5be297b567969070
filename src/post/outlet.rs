//! The way out: messages that are due on one channel, lent to it one by one.
//!
//! Promises that never more are lent than the channel has places for, and that an attempt is
//! counted on the disk before it is made. Between the network's acceptance and our note of it lies
//! one commit: a power cut in just that moment sends a message twice, and nothing else does.

use std::sync::Arc;
use std::time::Duration;

use jiff::Timestamp;
use tokio::sync::{Notify, OwnedSemaphorePermit, Semaphore, mpsc};
use tokio_util::sync::CancellationToken;

use super::retry::{LEASE, Spread, fate, is_stale};
use crate::message::{ChannelName, Letter, Sending};
use crate::privacy::{Purpose, Seal, SealError};
use crate::store::{Change, Claimed, Effect, Fate};

use super::keeper::{Keeper, KeeperError};
use super::metrics::Metrics;

/// How often the clock is looked at for what has become due.
const TICK: Duration = Duration::from_secs(1);
/// The wait after the store failed.
const STORE_WAIT: Duration = Duration::from_secs(2);

/// A channel's way out.
#[derive(Debug)]
pub struct Outlet {
    letters: mpsc::Receiver<Lent>,
}

impl Outlet {
    /// The next message to send; nothing when the program is ending.
    pub async fn next(&mut self) -> Option<Lent> {
        self.letters.recv().await
    }
}

/// What lends a channel its messages.
#[derive(Debug)]
pub(super) struct Lender {
    pub(super) channel: ChannelName,
    pub(super) keeper: Keeper,
    pub(super) seal: Arc<Seal>,
    pub(super) metrics: Arc<Metrics>,
    /// Told when a message for the channel is in the outbox.
    pub(super) posted: Arc<Notify>,
    pub(super) ending: CancellationToken,
}

/// A message that a channel has to send, or to give back.
#[derive(Debug)]
pub struct Lent {
    letter: Letter,
    made_at: Timestamp,
    channel: ChannelName,
    keeper: Keeper,
    metrics: Arc<Metrics>,
    _place: OwnedSemaphorePermit,
}

impl Lent {
    /// The message.
    #[must_use]
    pub const fn letter(&self) -> &Letter {
        &self.letter
    }

    /// Says that the network has taken so many of its segments, and goes on with the others.
    ///
    /// # Errors
    /// [`KeeperError`] when that could not be written.
    pub async fn part_accepted(&self, parts: u32) -> Result<(), KeeperError> {
        self.record(&Sending::PartAccepted(parts)).await
    }

    /// Says how sending ended. What cannot be written is logged; the message is then sent again
    /// when its lease is over.
    pub async fn settle(self, sending: Sending) {
        if let Err(error) = self.record(&sending).await {
            tracing::error!(channel = %self.channel, %error, "a sent message could not be noted");
        }
    }

    async fn record(&self, sending: &Sending) -> Result<(), KeeperError> {
        let now = Timestamp::now();
        let fate = fate(
            sending,
            self.letter.attempt,
            self.made_at,
            now,
            Spread::from_random(random()),
        );
        self.metrics.sending(&self.channel, sending, &fate);
        match (sending, &fate) {
            (Sending::Failed(reason), _) | (Sending::TryAgain { reason, .. }, Fate::GivenUp) => {
                tracing::error!(
                    channel = %self.channel,
                    message = self.letter.id.0,
                    attempt = self.letter.attempt,
                    reason,
                    "given up: a reply was not sent"
                );
            }
            (Sending::TryAgain { reason, .. }, _) => {
                tracing::warn!(
                    channel = %self.channel,
                    message = self.letter.id.0,
                    attempt = self.letter.attempt,
                    reason,
                    "not sent yet"
                );
            }
            (Sending::Accepted(_) | Sending::PartAccepted(_), _) => {}
        }
        let sent = Change::Sent {
            id: self.letter.id,
            channel: self.channel.clone(),
            fate,
            at: now,
        };
        self.keeper.change(sent).await.map(|_| ())
    }
}

impl Lender {
    /// Starts to lend, up to so many messages at once.
    pub(super) fn start(self, places: usize) -> Outlet {
        let (lend, letters) = mpsc::channel(places.max(1));
        tokio::spawn(self.lend(lend, Arc::new(Semaphore::new(places.max(1))), places.max(1)));
        Outlet { letters }
    }

    async fn lend(self, lend: mpsc::Sender<Lent>, free: Arc<Semaphore>, most: usize) {
        loop {
            // One place at least, and all others that are free.
            let place = tokio::select! {
                place = Arc::clone(&free).acquire_owned() => place,
                () = self.ending.cancelled() => return,
                () = lend.closed() => return,
            };
            let Ok(first) = place else { return };
            let mut places = vec![first];
            while places.len() < most
                && let Ok(more) = Arc::clone(&free).try_acquire_owned()
            {
                places.push(more);
            }
            let claimed = match self.claim(places.len()).await {
                Ok(claimed) => claimed,
                Err(error) => {
                    tracing::error!(channel = %self.channel, %error, "the outbox cannot be read");
                    drop(places);
                    self.pause(STORE_WAIT).await;
                    continue;
                }
            };
            if claimed.is_empty() {
                drop(places);
                self.pause(TICK).await;
                continue;
            }
            for (claimed, place) in claimed.into_iter().zip(places) {
                if let Some(lent) = self.open(claimed, place).await
                    && lend.send(lent).await.is_err()
                {
                    return;
                }
            }
        }
    }

    async fn pause(&self, at_most: Duration) {
        tokio::select! {
            () = self.posted.notified() => {}
            () = tokio::time::sleep(at_most) => {}
            () = self.ending.cancelled() => {}
        }
    }

    async fn claim(&self, most: usize) -> Result<Vec<Claimed>, KeeperError> {
        let now = Timestamp::now();
        let claim = Change::Claim {
            channel: self.channel.clone(),
            now,
            lease: now.saturating_add(LEASE).unwrap_or(Timestamp::MAX),
            most,
        };
        match self.keeper.change(claim).await? {
            Effect::Claimed(claimed) => Ok(claimed),
            Effect::Received(_) | Effect::Done => Ok(Vec::new()),
        }
    }

    /// Opens a message; one that is stale or sealed with another key is given up.
    async fn open(&self, claimed: Claimed, place: OwnedSemaphorePermit) -> Option<Lent> {
        let (id, made_at) = (claimed.id, claimed.made_at);
        let lost = match self.letter(claimed) {
            Ok(letter) if !is_stale(made_at, Timestamp::now()) => {
                return Some(Lent {
                    letter,
                    made_at,
                    channel: self.channel.clone(),
                    keeper: self.keeper.clone(),
                    metrics: Arc::clone(&self.metrics),
                    _place: place,
                });
            }
            Ok(_) => "it is too old".to_owned(),
            Err(error) => error.to_string(),
        };
        tracing::error!(
            channel = %self.channel,
            message = id.0,
            reason = lost,
            "given up: a reply was not sent"
        );
        self.metrics
            .sending(&self.channel, &Sending::Failed(lost), &Fate::GivenUp);
        let given_up = Change::Sent {
            id,
            channel: self.channel.clone(),
            fate: Fate::GivenUp,
            at: Timestamp::now(),
        };
        if let Err(error) = self.keeper.change(given_up).await {
            tracing::error!(channel = %self.channel, %error, "giving up could not be noted");
        }
        None
    }

    fn letter(&self, claimed: Claimed) -> Result<Letter, SealError> {
        Ok(Letter {
            id: claimed.id,
            to: self.seal.open_address(&claimed.address)?,
            text: self.seal.open(&claimed.body, Purpose::Outbox)?,
            next_words: claimed.next_words,
            parts_accepted: claimed.parts_accepted,
            attempt: claimed.attempt,
        })
    }
}

/// Without random bytes attempts are not spread; that is all.
fn random() -> u16 {
    let mut bytes = [0; 2];
    match getrandom::fill(&mut bytes) {
        Ok(()) => u16::from_le_bytes(bytes),
        Err(_) => 0,
    }
}
