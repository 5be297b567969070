//! The one writer: changes from everywhere, committed in groups.
//!
//! In: changes, each with somebody who waits for its effect.
//! Out: effects, after the commit.
//! Promises that nobody hears of a change before it is on the disk. What comes in while one group
//! is being committed is the next group: the more there is, the fewer commits each costs.

use std::sync::Arc;
use std::thread::JoinHandle;
use std::time::Instant;

use tokio::sync::{mpsc, oneshot};

use crate::store::{Change, Effect, Ledger, StoreError};

use super::metrics::Metrics;

/// Changes in one transaction: what a power cut in the middle can take back.
const GROUP: usize = 512;
/// Jobs that may wait; who has one more waits with it.
const JOBS: usize = 1024;

/// A way to the writer.
#[derive(Debug, Clone)]
pub struct Keeper {
    jobs: mpsc::Sender<Job>,
}

#[derive(Debug)]
struct Job {
    changes: Vec<Change>,
    done: oneshot::Sender<Result<Vec<Effect>, KeeperError>>,
}

/// Why a change was not made.
#[derive(Debug, Clone, thiserror::Error)]
pub enum KeeperError {
    /// The store failed; nothing was changed.
    #[error("{0}")]
    Store(Arc<StoreError>),
    /// The program is ending.
    #[error("the program is ending")]
    Ending,
}

impl Keeper {
    /// Starts the writer; it ends when the last way to it is gone.
    ///
    /// # Errors
    /// When the system gives no thread.
    pub fn start(
        ledger: Box<dyn Ledger>,
        metrics: Arc<Metrics>,
    ) -> std::io::Result<(Self, JoinHandle<()>)> {
        let (jobs, waiting) = mpsc::channel(JOBS);
        let thread = std::thread::Builder::new()
            .name("keeper".to_owned())
            .spawn(move || keep(ledger, waiting, &metrics))?;
        Ok((Self { jobs }, thread))
    }

    /// Makes changes, all or none, and waits until they are on the disk.
    ///
    /// # Errors
    /// [`KeeperError`] when they were not made.
    pub async fn apply(&self, changes: Vec<Change>) -> Result<Vec<Effect>, KeeperError> {
        let (done, effect) = oneshot::channel();
        self.jobs
            .send(Job { changes, done })
            .await
            .map_err(|_| KeeperError::Ending)?;
        effect.await.map_err(|_| KeeperError::Ending)?
    }

    /// Makes one change.
    ///
    /// # Errors
    /// [`KeeperError`] when it was not made.
    pub async fn change(&self, change: Change) -> Result<Effect, KeeperError> {
        let effects = self.apply(vec![change]).await?;
        Ok(effects.into_iter().next().unwrap_or(Effect::Done))
    }
}

fn keep(mut ledger: Box<dyn Ledger>, mut waiting: mpsc::Receiver<Job>, metrics: &Metrics) {
    while let Some(first) = waiting.blocking_recv() {
        let mut size = first.changes.len();
        let mut group = vec![first];
        while size < GROUP
            && let Ok(next) = waiting.try_recv()
        {
            size += next.changes.len();
            group.push(next);
        }
        let began = Instant::now();
        commit(&mut *ledger, group);
        metrics
            .commit_seconds
            .observe(began.elapsed().as_secs_f64());
    }
}

fn commit(ledger: &mut dyn Ledger, mut group: Vec<Job>) {
    let mut changes = Vec::new();
    let mut sizes = Vec::with_capacity(group.len());
    for job in &mut group {
        sizes.push(job.changes.len());
        changes.append(&mut job.changes);
    }
    match ledger.apply(&changes) {
        Ok(effects) => {
            let mut effects = effects.into_iter();
            for (job, size) in group.into_iter().zip(sizes) {
                // Who no longer waits does not need to know.
                let _ = job.done.send(Ok(effects.by_ref().take(size).collect()));
            }
        }
        // To try one by one what nobody can write would only take longer.
        Err(error) if group.len() == 1 || error.is_of_all_writing() => {
            let error = KeeperError::Store(Arc::new(error));
            for job in group {
                let _ = job.done.send(Err(error.clone()));
            }
        }
        // One that cannot be made must not take the others with it.
        Err(_) => {
            let mut changes = changes.into_iter();
            for (job, size) in group.into_iter().zip(sizes) {
                let own: Vec<Change> = changes.by_ref().take(size).collect();
                let done = ledger
                    .apply(&own)
                    .map_err(|error| KeeperError::Store(Arc::new(error)));
                let _ = job.done.send(done);
            }
        }
    }
}
