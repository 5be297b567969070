//! The service: channels, desk and store, joined and run until the program is told to end.
//!
//! In: a configuration.
//! Out: answered messages, for months.
//! Promises that it ends within ten seconds of being told, with nothing lost: what is in the inbox
//! is answered by the next start, what is in the outbox is sent by it.

mod clerk;
mod guard;

use std::collections::BTreeMap;
use std::future::Future;
use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use jiff::{SignedDuration, Timestamp};
use tokio::net::TcpListener;
use tokio::sync::{Notify, Semaphore};
use tokio::task::JoinSet;
use tokio_util::sync::CancellationToken;

use crate::channel::{self, ChannelError};
use crate::config::Config;
use crate::desk::Desk;
use crate::http::{self, Vitals};
use crate::locale::{LocaleErrors, Locales};
use crate::message::ChannelName;
use crate::post::{Keeper, KeeperError, Links, Metrics, PostOffice};
use crate::privacy::{Seal, SealError};
use crate::store::{Change, LedgerReader, Purge, Store, StoreError};

use clerk::Clerk;
use guard::Guard;

pub use guard::{Admission, Guard as LoopGuard};

/// Everything has to have ended by then.
const END_WITHIN: Duration = Duration::from_secs(8);
/// How often what is kept for a while only is looked through.
const PURGE_EVERY: Duration = Duration::from_secs(60 * 60);
/// The parts of a long message come within minutes of each other, or not.
const PARTS_WITHIN: SignedDuration = SignedDuration::from_mins(15);
const GATHER_EVERY: Duration = Duration::from_secs(60);
/// Receipts come within days.
const SENT_KEPT: SignedDuration = SignedDuration::from_hours(7 * 24);

/// Why the service cannot start, or had to end.
#[derive(Debug, thiserror::Error)]
pub enum ServiceError {
    /// A channel's settings.
    #[error("{0}")]
    Channel(#[from] ChannelError),
    /// The languages.
    #[error("{} (matone check tells all that is wrong)", .0.first())]
    Locale(LocaleErrors),
    /// The key file.
    #[error("{0}")]
    Seal(#[from] SealError),
    /// The store.
    #[error("{0}")]
    Store(#[from] StoreError),
    /// The writer.
    #[error("{0}")]
    Keeper(#[from] KeeperError),
    /// The listener.
    #[error("[http] listen: {address} cannot be listened on: {error}")]
    Listen {
        /// Where.
        address: std::net::SocketAddr,
        /// Why.
        error: std::io::Error,
    },
    /// The system gives no thread.
    #[error("the system gives no thread: {0}")]
    Thread(std::io::Error),
    /// The configuration says what cannot be.
    #[error("{0}")]
    Contradiction(String),
    /// There is nothing to do.
    #[error("the configuration names no [[channel]] and no [http] listener")]
    Idle,
}

/// Runs until `ended` is.
///
/// # Errors
/// [`ServiceError`] when it cannot start.
pub async fn run(config: Config, ended: impl Future<Output = ()>) -> Result<(), ServiceError> {
    if config.channel.is_empty() && config.http.is_none() {
        return Err(ServiceError::Idle);
    }
    if let Some(contradiction) = config.contradictions().into_iter().next() {
        return Err(ServiceError::Contradiction(contradiction));
    }
    let locales = Locales::load(config.answers.locales.as_deref(), &config.answers.words)
        .map_err(ServiceError::Locale)?;
    let desk = Desk::new(
        Arc::new(locales),
        config.answers.units.into(),
        &config.answers.language,
    )
    .with_help_line(config.answers.help_line.clone());
    let channels = config
        .channel
        .iter()
        .map(channel::open)
        .collect::<Result<Vec<_>, _>>()?;
    let seal = Arc::new(Seal::open_or_make(&config.privacy.key_file)?);
    let listener =
        match &config.http {
            None => None,
            Some(http) => Some(TcpListener::bind(http.listen).await.map_err(|error| {
                ServiceError::Listen {
                    address: http.listen,
                    error,
                }
            })?),
        };

    let store = Store::open(&config.store.path)?;
    let reader = Store::open(&config.store.path)?;
    let waiting = LedgerReader::waiting_count(&reader)?;
    let metrics = Arc::new(Metrics::default());
    let (keeper, keeper_thread) =
        Keeper::start(Box::new(store), Arc::clone(&metrics)).map_err(ServiceError::Thread)?;
    keeper.change(Change::Resume).await?;

    let ending = CancellationToken::new();
    let office = PostOffice {
        keeper: keeper.clone(),
        seal,
        metrics: Arc::clone(&metrics),
        links: Links::default(),
        room: Arc::new(Semaphore::new(config.limits.queue.saturating_sub(waiting))),
        arrived: Arc::new(Notify::new()),
        ending: ending.clone(),
    };
    let mut routes = http::routes(Vitals {
        keeper,
        links: office.links.clone(),
        metrics,
    });
    let mut posted = BTreeMap::new();
    let mut work = JoinSet::new();
    for channel in channels {
        let name: ChannelName = channel.name().clone();
        let told = Arc::new(Notify::new());
        posted.insert(name.clone(), Arc::clone(&told));
        if let Some(more) = channel.routes(&office.intake(&name)) {
            routes = routes.merge(more);
        }
        let port = office.port(&name, channel.places(), told);
        work.spawn(channel.run(port));
    }
    let clerk = Clerk {
        desk,
        reader: Box::new(reader),
        office: office.clone(),
        guard: Guard::new(config.limits.per_person_per_minute),
        posted,
    };
    let clerk = start_clerk(clerk)?;
    if let Some(listener) = listener {
        work.spawn(listen(listener, routes, ending.clone()));
    }
    work.spawn(gather_late(office.clone()));
    work.spawn(purge(office.clone(), config.privacy.keep_unread_days));
    tracing::info!(channels = config.channel.len(), "serving");

    ended.await;
    tracing::info!("ending");
    ending.cancel();
    let all = async {
        while work.join_next().await.is_some() {}
        // The clerk answers what came in last.
        let _ = clerk.await;
    };
    if tokio::time::timeout(END_WITHIN, all).await.is_err() {
        tracing::warn!("something did not end in time; what is in the store is safe");
        work.abort_all();
    }
    drop(work);
    drop(office);
    // Every way to the writer is gone, or will be when its holder is: it has nothing to do then.
    let _ = tokio::time::timeout(
        Duration::from_secs(1),
        tokio::task::spawn_blocking(move || keeper_thread.join()),
    )
    .await;
    Ok(())
}

/// The clerk computes: it has a thread of its own.
fn start_clerk(clerk: Clerk) -> Result<tokio::sync::oneshot::Receiver<()>, ServiceError> {
    let (done, ended) = tokio::sync::oneshot::channel();
    let runtime = tokio::runtime::Handle::current();
    std::thread::Builder::new()
        .name("clerk".to_owned())
        .spawn(move || {
            runtime.block_on(clerk.work());
            // Nobody waits for it any more when the time is over.
            let _ = done.send(());
        })
        .map_err(ServiceError::Thread)?;
    Ok(ended)
}

async fn listen(listener: TcpListener, routes: Router, ending: CancellationToken) {
    let served = axum::serve(listener, routes).with_graceful_shutdown(ending.cancelled_owned());
    if let Err(error) = served.await {
        tracing::error!(%error, "the listener failed");
    }
}

/// Looks for long messages whose parts do not come.
async fn gather_late(office: PostOffice) {
    loop {
        tokio::select! {
            () = tokio::time::sleep(GATHER_EVERY) => {}
            () = office.ending.cancelled() => return,
        }
        let before = Timestamp::now()
            .checked_sub(PARTS_WITHIN)
            .unwrap_or(Timestamp::MIN);
        if let Err(error) = office.keeper.change(Change::GatherLate { before }).await {
            tracing::error!(%error, "late parts could not be looked for");
        }
        office.arrived.notify_one();
    }
}

async fn purge(office: PostOffice, keep_unread_days: u32) {
    let unread = SignedDuration::from_hours(24 * i64::from(keep_unread_days));
    loop {
        let now = Timestamp::now();
        let since = |span| now.checked_sub(span).unwrap_or(Timestamp::MIN);
        let purge = Change::Purge(Purge {
            unread_before: since(unread),
            sent_before: since(SENT_KEPT),
        });
        if let Err(error) = office.keeper.change(purge).await {
            tracing::error!(%error, "old texts could not be cleared away");
        }
        tokio::select! {
            () = tokio::time::sleep(PURGE_EVERY) => {}
            () = office.ending.cancelled() => return,
        }
    }
}
