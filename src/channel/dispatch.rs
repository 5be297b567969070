//! Letters out of the outlet, sent side by side: those to one address one behind the other.
//!
//! In: letters, and what sends one.
//! Out: each sent, or given back for later.
//! Promises that no letter is held so long that its lease could end before its sending does.

use std::future::Future;
use std::time::Duration;

use tokio::task::JoinSet;
use tokio::time::Instant;
use tokio_util::sync::CancellationToken;

use crate::message::{Address, Sending};
use crate::post::{Lent, Outlet};

use super::lanes::Lanes;

/// A letter that waited longer goes back. With the longest rest before it and the longest sending
/// behind it (half a minute each), that is under a lease.
const HELD_MAX: Duration = Duration::from_secs(30);
/// A network that asks for time gets it, up to this; then one letter tries.
const REST_MAX: Duration = Duration::from_secs(30);
/// When the program is ending, what is under way has so long.
const END_WITHIN: Duration = Duration::from_secs(3);

/// What sending one letter means for others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum After {
    /// Those behind it go.
    Go,
    /// Those behind it go back, to come again after it.
    Back(Option<Duration>),
    /// Those behind it go back, and nothing is sent to anybody for so long.
    Rest(Duration),
}

/// A letter in hand.
struct Held {
    lent: Lent,
    since: Instant,
}

struct Dispatch<S> {
    send: S,
    lanes: Lanes<Address, Held>,
    under_way: JoinSet<(Address, After)>,
    rest_until: Option<Instant>,
}

/// Sends what the outlet lends, by `send`, until the program is ending.
pub(super) async fn dispatch<S, F>(mut outlet: Outlet, ending: CancellationToken, send: S)
where
    S: Fn(Lent) -> F,
    F: Future<Output = After> + Send + 'static,
{
    let mut dispatch = Dispatch {
        send,
        lanes: Lanes::default(),
        under_way: JoinSet::new(),
        rest_until: None,
    };
    loop {
        let rest_until = dispatch.rest_until;
        tokio::select! {
            () = ending.cancelled() => break,
            () = tokio::time::sleep_until(rest_until.unwrap_or_else(Instant::now)),
                if rest_until.is_some() => dispatch.rest_until = None,
            Some(ended) = dispatch.under_way.join_next(),
                if !dispatch.under_way.is_empty() => match ended {
                Ok((to, after)) => dispatch.ended(&to, after).await,
                // A panic: whose lane it was is not known any more. What waits in any of them
                // comes again when its lease is over.
                Err(_) => dispatch.lanes = Lanes::default(),
            },
            lent = outlet.next(), if rest_until.is_none() => match lent {
                Some(lent) => dispatch.take(lent),
                None => break,
            },
        }
    }
    dispatch.end().await;
}

impl<S, F> Dispatch<S>
where
    S: Fn(Lent) -> F,
    F: Future<Output = After> + Send + 'static,
{
    fn take(&mut self, lent: Lent) {
        let to = lent.letter().to.clone();
        let held = Held {
            lent,
            since: Instant::now(),
        };
        if let Some(held) = self.lanes.enter(to.clone(), held) {
            self.start(to, held.lent);
        }
    }

    fn start(&mut self, to: Address, lent: Lent) {
        let sending = (self.send)(lent);
        self.under_way.spawn(async move { (to, sending.await) });
    }

    async fn ended(&mut self, to: &Address, after: After) {
        if let After::Rest(rest) = after {
            let until = Instant::now() + rest.min(REST_MAX);
            self.rest_until = self.rest_until.max(Some(until));
        }
        while let Some(held) = self.lanes.leave(to) {
            let back = match after {
                After::Back(later) => Some(later),
                After::Rest(rest) => Some(Some(rest)),
                After::Go if held.since.elapsed() > HELD_MAX => Some(Some(Duration::ZERO)),
                After::Go => None,
            };
            match back {
                Some(later) => give_back(held, "the one before it was not sent", later).await,
                None => {
                    self.start(to.clone(), held.lent);
                    return;
                }
            }
        }
    }

    async fn end(mut self) {
        for held in self.lanes.drain() {
            give_back(held, "the program is ending", Some(Duration::ZERO)).await;
        }
        let all = async { while self.under_way.join_next().await.is_some() {} };
        // What is not over by then has no note, and is sent again at the next start.
        let _ = tokio::time::timeout(END_WITHIN, all).await;
    }
}

async fn give_back(held: Held, reason: &str, after: Option<Duration>) {
    let again = Sending::TryAgain {
        reason: reason.to_owned(),
        after,
    };
    held.lent.settle(again).await;
}
