//! The way in: a message is in the inbox before its network hears that we have it.

use std::sync::Arc;
use std::time::Duration;

use jiff::{SignedDuration, Timestamp};
use tokio::sync::{Notify, Semaphore};

use crate::message::{Arrival, ChannelName, DeliveryKey, Receipt};
use crate::privacy::{Purpose, Seal, SealError, hex};
use crate::store::{Change, Effect, Known, Received, Taken};

use super::keeper::{Keeper, KeeperError};
use super::metrics::{Aside, Metrics};

/// Longer messages are cut here: the parser takes none that is half so long for a question.
const TEXT_BYTES_MAX: usize = 8 * 1024;
/// A delivery waits so long for room in the inbox; then its network is told to come again.
const ROOM_WAIT: Duration = Duration::from_secs(5);
/// The same in one session is one message sent twice by the network; a person who writes the same
/// again has read an answer in between.
const SAME_SESSION: SignedDuration = SignedDuration::from_secs(12);
/// A network that has lost the session sends again what it holds for unacknowledged.
const OTHER_SESSION: SignedDuration = SignedDuration::from_mins(10);

/// A channel's way into the inbox.
#[derive(Debug, Clone)]
pub struct Intake {
    pub(super) channel: ChannelName,
    pub(super) keeper: Keeper,
    pub(super) seal: Arc<Seal>,
    pub(super) metrics: Arc<Metrics>,
    pub(super) room: Arc<Semaphore>,
    pub(super) arrived: Arc<Notify>,
}

/// Why a message is not in the inbox.
#[derive(Debug, thiserror::Error)]
pub enum IntakeError {
    /// It is full.
    #[error("too many messages are waiting")]
    Full,
    /// It could not be written.
    #[error("{0}")]
    Keeper(#[from] KeeperError),
    /// It could not be sealed.
    #[error("{0}")]
    Seal(#[from] SealError),
}

impl Intake {
    /// Puts a message into the inbox; on return it is on the disk, or was there before.
    ///
    /// # Errors
    /// [`IntakeError`] when it is not: the network must not hear that we have it.
    pub async fn deliver(&self, mut arrival: Arrival) -> Result<Taken, IntakeError> {
        let room = tokio::time::timeout(ROOM_WAIT, Arc::clone(&self.room).acquire_owned());
        let Ok(Ok(room)) = room.await else {
            return Err(IntakeError::Full);
        };
        let cut = (0..=TEXT_BYTES_MAX).rev();
        let mut cut = cut.filter(|at| arrival.text.is_char_boundary(*at));
        if arrival.text.len() > TEXT_BYTES_MAX {
            arrival.text.truncate(cut.next().unwrap_or(0));
        }
        let received = self.sealed(&arrival)?;
        let effect = self.keeper.change(Change::Receive(received)).await?;
        Ok(match effect {
            Effect::Received(Taken::Again) => {
                self.metrics.aside(&self.channel, Aside::Duplicate);
                Taken::Again
            }
            // Room is taken by whole messages.
            Effect::Received(Taken::Part) => Taken::Part,
            Effect::Received(Taken::New) | Effect::Claimed(_) | Effect::Done => {
                self.metrics.received(&self.channel);
                // The room is free again when the message is settled.
                room.forget();
                self.arrived.notify_one();
                Taken::New
            }
        })
    }

    /// Notes what became of a message behind the network's acceptance.
    ///
    /// # Errors
    /// [`IntakeError::Keeper`] when it could not be written.
    pub async fn receipt(&self, carrier_id: &str, receipt: Receipt) -> Result<(), IntakeError> {
        let change = Change::Receipt {
            channel: self.channel.clone(),
            carrier_id: carrier_id.to_owned(),
            receipt,
        };
        self.keeper.change(change).await?;
        self.metrics.receipt(&self.channel, receipt);
        Ok(())
    }

    /// A name that is the same whenever it is made of the same, and tells nothing of that.
    #[must_use]
    pub fn alias(&self, parts: &[&str]) -> String {
        let parts: Vec<&str> = [self.channel.as_str(), "alias"]
            .into_iter()
            .chain(parts.iter().copied())
            .collect();
        hex(&self.seal.delivery(&parts))
    }

    /// Counts a message that no person wrote, or that cannot be read, and that is not kept.
    pub fn set_aside(&self, aside: Aside) {
        self.metrics.aside(&self.channel, aside);
    }

    fn sealed(&self, arrival: &Arrival) -> Result<Received, SealError> {
        let since = |span| arrival.at.checked_sub(span).unwrap_or(Timestamp::MIN);
        let (name, known) = match &arrival.delivery {
            DeliveryKey::Named(name) => (name.as_str(), Known::ByName),
            DeliveryKey::Alike { likeness, session } => (
                likeness.as_str(),
                Known::ByLikeness {
                    session: *session,
                    same_session_since: since(SAME_SESSION),
                    other_session_since: since(OTHER_SESSION),
                },
            ),
        };
        Ok(Received {
            channel: self.channel.clone(),
            delivery: self.seal.delivery(&[self.channel.as_str(), name]),
            known,
            part: arrival.part,
            person: self.seal.person(&arrival.from),
            address: self.seal.close_address(&arrival.from)?,
            body: self.seal.close(&arrival.text, Purpose::Inbox)?,
            at: arrival.at,
        })
    }
}
