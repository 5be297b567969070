//! Messages in: asks the service for updates, and for the next only when it has those.
//!
//! In: updates.
//! Out: arrivals into the intake.
//! Promises that an update is in the inbox before the service hears so, which is when the next ones
//! are asked for: the library's own loop tells it before.

use std::time::Duration;

use jiff::Timestamp;
use teloxide::Bot;
use teloxide::payloads::GetUpdatesSetters as _;
use teloxide::requests::Requester as _;
use teloxide::types::{AllowedUpdate, Update};
use tokio::time::Instant;
use tokio_util::sync::CancellationToken;

use crate::channel::backoff::{Backoff, random};
use crate::message::{Address, Arrival, ChannelName, DeliveryKey};
use crate::post::{Aside, Intake, IntakeError, Link, LinkState};

use super::trouble::Trouble;
use super::update::{Brought, Letter, read};

/// The service answers when there is something, or after this.
pub(super) const POLL_SECONDS: u32 = 25;
/// A service that answers at once with nothing is not asked more often.
const IDLE_WAIT: Duration = Duration::from_millis(300);
/// A refused token may be mended on the other side.
const TOKEN_WAIT: Duration = Duration::from_secs(60);
/// The longest that the service can ask for.
const WAIT_MAX: Duration = Duration::from_secs(15 * 60);
/// The store waits for another program for five seconds; who asks waits longer.
const COMMIT_WITHIN: Duration = Duration::from_secs(20);
const NAME_WITHIN: Duration = Duration::from_secs(5);

/// What asks for one channel.
pub(super) struct Poll {
    pub(super) channel: ChannelName,
    pub(super) bot: Bot,
    pub(super) intake: Intake,
    pub(super) state: LinkState,
    pub(super) ending: CancellationToken,
}

/// What has been asked for, and what is known of the bot.
#[derive(Debug, Default)]
struct Progress {
    /// The first update that is not in the inbox.
    offset: Option<i32>,
    /// The bot's own name, once it was needed.
    name: Option<String>,
}

/// Why an update is not in the inbox.
#[derive(Debug, thiserror::Error)]
enum Untaken {
    #[error("{0}")]
    Intake(#[from] IntakeError),
    #[error("the store did not write in time")]
    TooSlow,
}

impl Poll {
    /// Asks until the program is ending.
    pub(super) async fn run(self) {
        let mut progress = Progress::default();
        let mut backoff = Backoff::default();
        loop {
            let wait = tokio::select! {
                () = self.ending.cancelled() => return,
                wait = self.round(&mut progress, &mut backoff) => wait,
            };
            tokio::select! {
                () = self.ending.cancelled() => return,
                () = tokio::time::sleep(wait) => {}
            }
        }
    }

    /// Asks once, and takes what comes; how long to wait before the next time.
    async fn round(&self, progress: &mut Progress, backoff: &mut Backoff) -> Duration {
        let asked = Instant::now();
        let updates = match self.updates(progress.offset).await {
            Ok(updates) => updates,
            Err(trouble) => {
                self.state.set(trouble.link());
                return match trouble {
                    Trouble::TokenRefused => TOKEN_WAIT,
                    Trouble::Wait(wait) => wait.clamp(IDLE_WAIT, WAIT_MAX),
                    Trouble::Gone(_)
                    | Trouble::Moved(_)
                    | Trouble::Nonsense
                    | Trouble::OtherPoller(_)
                    | Trouble::Rejected
                    | Trouble::Unreachable(_) => backoff.wait(random()),
                };
            }
        };
        self.state.set(Link::Up);
        let before = progress.offset;
        for update in updates {
            if let Err(untaken) = self.take(&update, progress).await {
                let reason = untaken.to_string();
                tracing::warn!(channel = %self.channel, reason, "updates are asked for again");
                return backoff.wait(random());
            }
        }
        backoff.reset();
        if progress.offset == before && asked.elapsed() < IDLE_WAIT {
            IDLE_WAIT
        } else {
            Duration::ZERO
        }
    }

    async fn updates(&self, offset: Option<i32>) -> Result<Vec<Update>, Trouble> {
        let mut request = self
            .bot
            .get_updates()
            .timeout(POLL_SECONDS)
            .allowed_updates([AllowedUpdate::Message]);
        if let Some(offset) = offset {
            request = request.offset(offset);
        }
        request.await.map_err(|error| Trouble::of(&error))
    }

    /// Takes an update and, once it is in the inbox or is nothing for it, goes behind it.
    async fn take(&self, update: &Update, progress: &mut Progress) -> Result<(), Untaken> {
        let id = update.id.0;
        let Some(behind) = i32::try_from(id).ok().and_then(|id| id.checked_add(1)) else {
            tracing::warn!(channel = %self.channel, "an update's number is none");
            return Ok(());
        };
        // A service that does not count sends again what it was told that we have.
        if progress.offset.is_some_and(|offset| behind <= offset) {
            return Ok(());
        }
        match read(update) {
            Brought::Letter(letter) => {
                if self.is_for_us(&letter, progress).await {
                    self.deliver(id, letter).await?;
                }
            }
            Brought::ByMachine => self.intake.set_aside(Aside::Machine),
            Brought::NoText => self.intake.set_aside(Aside::Unreadable),
            Brought::Other => {}
            Brought::Unknown => {
                self.intake.set_aside(Aside::Unreadable);
                tracing::warn!(channel = %self.channel, update = id, "an update cannot be read");
            }
        }
        progress.offset = Some(behind);
        Ok(())
    }

    async fn deliver(&self, id: u32, letter: Letter) -> Result<(), Untaken> {
        let arrival = Arrival {
            from: Address::chat(letter.chat),
            text: letter.text,
            part: None,
            // After a quiet week the service counts its updates from anywhere.
            delivery: DeliveryKey::Named(format!("update:{id}:{}", letter.number)),
            at: Timestamp::now(),
        };
        tokio::time::timeout(COMMIT_WITHIN, self.intake.deliver(arrival))
            .await
            .map_err(|_| Untaken::TooSlow)??;
        Ok(())
    }

    /// Whether a command in a group is not another bot's. Where our own name cannot be told, it is
    /// taken for ours.
    async fn is_for_us(&self, letter: &Letter, progress: &mut Progress) -> bool {
        let Some(addressee) = &letter.addressee else {
            return true;
        };
        if progress.name.is_none() {
            let asked = async { self.bot.get_me().await };
            if let Ok(Ok(me)) = tokio::time::timeout(NAME_WITHIN, asked).await {
                progress.name.clone_from(&me.user.username);
            }
        }
        match &progress.name {
            Some(name) => name.eq_ignore_ascii_case(addressee),
            None => true,
        }
    }
}
