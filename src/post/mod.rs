//! The post: what every channel hands in and takes out, through the one writer of the store.
//!
//! In: arrivals from channels, settlements from the service.
//! Out: letters to channels.
//! Promises that what is acknowledged is on the disk, that nothing is answered twice, and that
//! everything that waits waits in a bounded place.
//! Knows no network and no wording.

mod intake;
mod keeper;
mod link;
mod metrics;
mod outlet;
mod retry;

use std::sync::Arc;

use tokio::sync::{Notify, Semaphore};
use tokio_util::sync::CancellationToken;

use crate::message::ChannelName;
use crate::privacy::Seal;

pub use intake::{Intake, IntakeError};
pub use keeper::{Keeper, KeeperError};
pub use link::{Link, Links};
pub use metrics::{Aside, Metrics};
pub use outlet::{Lent, Outlet};
pub use retry::{GIVE_UP_AFTER, LEASE, Spread, fate, is_stale};

/// What a channel works with.
#[derive(Debug)]
pub struct Port {
    /// The way in.
    pub intake: Intake,
    /// The way out.
    pub outlet: Outlet,
    /// How its link stands.
    pub state: LinkState,
    /// Told when the program is ending.
    pub ending: CancellationToken,
}

/// Where a channel says how its link stands.
#[derive(Debug, Clone)]
pub struct LinkState {
    channel: ChannelName,
    links: Links,
}

impl LinkState {
    /// Notes how it stands now.
    pub fn set(&self, link: Link) {
        self.links.set(&self.channel, link);
    }
}

/// What all ports share.
#[derive(Debug, Clone)]
pub struct PostOffice {
    /// The writer.
    pub keeper: Keeper,
    /// The keys.
    pub seal: Arc<Seal>,
    /// The figures.
    pub metrics: Arc<Metrics>,
    /// The links.
    pub links: Links,
    /// Places in the inbox that are free.
    pub room: Arc<Semaphore>,
    /// Told when a message is in the inbox.
    pub arrived: Arc<Notify>,
    /// Told when the program is ending.
    pub ending: CancellationToken,
}

impl PostOffice {
    /// A channel's way in.
    #[must_use]
    pub fn intake(&self, channel: &ChannelName) -> Intake {
        Intake {
            channel: channel.clone(),
            keeper: self.keeper.clone(),
            seal: Arc::clone(&self.seal),
            metrics: Arc::clone(&self.metrics),
            room: Arc::clone(&self.room),
            arrived: Arc::clone(&self.arrived),
        }
    }

    /// A channel's port with so many places for messages in flight; `posted` is told when there
    /// is one for it.
    #[must_use]
    pub fn port(&self, channel: &ChannelName, places: usize, posted: Arc<Notify>) -> Port {
        self.metrics.introduce(channel);
        self.links.set(channel, Link::Starting);
        let lender = outlet::Lender {
            channel: channel.clone(),
            keeper: self.keeper.clone(),
            seal: Arc::clone(&self.seal),
            metrics: Arc::clone(&self.metrics),
            posted,
            ending: self.ending.clone(),
        };
        Port {
            intake: self.intake(channel),
            outlet: lender.start(places),
            state: LinkState {
                channel: channel.clone(),
                links: self.links.clone(),
            },
            ending: self.ending.clone(),
        }
    }
}
