//! What goes in and out over a link, from one session to the next.
//!
//! In: letters out of the outlet, deliveries and answers out of a session.
//! Out: arrivals into the intake, settlements of letters, answers to deliveries.
//! Promises that an answer to a delivery comes after the inbox has it, and that what is noted of
//! our messages goes to the store before a receipt that came behind it.

use std::collections::HashMap;
use std::time::{Duration, Instant};

use futures_util::future::BoxFuture;
use futures_util::stream::FuturesUnordered;
use futures_util::{FutureExt, StreamExt};
use jiff::Timestamp;
use rusmpp::CommandStatus;

use crate::message::{ChannelName, Receipt, Sending};
use crate::post::{Aside, Intake, IntakeError, Lent, Outlet};

use super::Terms;
use super::arrival::{Meaning, Writing, meaning};
use super::delivery::Delivery;
use super::queue::{Outcome, Place, Queue};
use super::receipt::Names;
use super::submission::{Numbering, submissions};

/// Deliveries on their way to the disk; while there are so many, no more are read.
pub(super) const DELIVERIES_MAX: usize = 256;
/// Nothing waits for longer than that without somebody looking.
const LONG: Duration = Duration::from_secs(3600);

/// A delivery is in the inbox, or is not.
#[derive(Debug, Clone, Copy)]
pub(super) struct TakenIn {
    /// When the session began that brought it.
    pub(super) session: i64,
    /// What the answer carries.
    pub(super) sequence: u32,
    /// What the SMSC is told.
    pub(super) status: CommandStatus,
}

pub(super) struct Traffic {
    channel: ChannelName,
    writing: Writing,
    numbering: Numbering,
    intake: Intake,
    /// Nothing when the program is ending.
    outlet: Option<Outlet>,
    pub(super) queue: Queue,
    lent: HashMap<Place, Lent>,
    /// What is being written down of letters; those that go on come back.
    notes: FuturesUnordered<BoxFuture<'static, Option<(Place, Lent)>>>,
    deliveries: FuturesUnordered<BoxFuture<'static, TakenIn>>,
    names: Names,
}

impl Traffic {
    pub(super) fn new(channel: ChannelName, terms: &Terms, intake: Intake, outlet: Outlet) -> Self {
        Self {
            channel,
            writing: terms.writing.clone(),
            numbering: terms.numbering.clone(),
            intake,
            outlet: Some(outlet),
            queue: Queue::new(terms.window),
            lent: HashMap::new(),
            notes: FuturesUnordered::new(),
            deliveries: FuturesUnordered::new(),
            names: Names::default(),
        }
    }

    /// Waits for the next thing and does it; a delivery that is to be answered comes out.
    pub(super) async fn next(&mut self) -> Option<TakenIn> {
        let now = Instant::now();
        let wake_at = self.queue.wake_at(now).unwrap_or(now + LONG);
        tokio::select! {
            Some(back) = self.notes.next(), if !self.notes.is_empty() => {
                self.noted(back);
                None
            }
            Some(taken) = self.deliveries.next(), if !self.deliveries.is_empty() => Some(taken),
            lent = lend(&mut self.outlet) => {
                match lent {
                    Some(lent) => self.take(lent),
                    None => self.outlet = None,
                }
                None
            }
            () = tokio::time::sleep_until(wake_at.into()) => {
                let outcomes = self.queue.expire(Instant::now());
                self.carry_out(outcomes);
                None
            }
        }
    }

    /// Brings what is to be noted on its way, without waiting for it.
    pub(super) fn begin_notes(&mut self) {
        while let Some(Some(back)) = self.notes.next().now_or_never() {
            self.noted(back);
        }
    }

    fn noted(&mut self, back: Option<(Place, Lent)>) {
        if let Some((place, lent)) = back {
            self.lent.insert(place, lent);
            self.queue.noted(place);
        }
    }

    fn take(&mut self, lent: Lent) {
        let letter = lent.letter();
        let segments = submissions(letter, &self.numbering, self.writing.default_alphabet);
        let accepted = usize::try_from(letter.parts_accepted).unwrap_or(usize::MAX);
        match segments {
            Ok(segments) if accepted < segments.len() => {
                let place = self.queue.push(segments, accepted, Instant::now());
                self.lent.insert(place, lent);
            }
            // The last segment's acceptance was noted, that of the letter was not.
            Ok(_) => self.settle(lent, Sending::Accepted(Vec::new())),
            Err(error) => self.settle(lent, Sending::Failed(error.to_string())),
        }
    }

    /// Does what the queue found out.
    pub(super) fn carry_out(&mut self, outcomes: impl IntoIterator<Item = Outcome>) {
        for outcome in outcomes {
            match outcome {
                Outcome::Ended(place, sending) => {
                    let Some(lent) = self.lent.remove(&place) else {
                        continue;
                    };
                    let sending = match sending {
                        Sending::Accepted(names) => Sending::Accepted(
                            names.iter().map(|name| self.names.given(name)).collect(),
                        ),
                        Sending::Failed(_)
                        | Sending::PartAccepted(_)
                        | Sending::TryAgain { .. } => sending,
                    };
                    self.settle(lent, sending);
                }
                Outcome::Part(place, accepted) => {
                    let Some(lent) = self.lent.remove(&place) else {
                        continue;
                    };
                    let channel = self.channel.clone();
                    self.notes.push(Box::pin(async move {
                        if let Err(error) = lent.part_accepted(accepted).await {
                            tracing::error!(%channel, %error, "a sent segment could not be noted");
                        }
                        Some((place, lent))
                    }));
                }
            }
        }
    }

    fn settle(&self, lent: Lent, sending: Sending) {
        self.notes.push(Box::pin(async move {
            lent.settle(sending).await;
            None
        }));
    }

    /// A delivery came in a session; what is answered at once, if that needs no waiting.
    pub(super) fn deliver(
        &mut self,
        session: i64,
        sequence: u32,
        delivery: Option<&Delivery>,
    ) -> Option<CommandStatus> {
        let at = Timestamp::now();
        let meaning = delivery.map_or(Meaning::Aside(Aside::Unreadable), |delivery| {
            meaning(delivery, &self.writing, session, at)
        });
        let taking: BoxFuture<'static, Result<(), IntakeError>> = match meaning {
            Meaning::Aside(aside) => {
                self.intake.set_aside(aside);
                return Some(CommandStatus::EsmeRok);
            }
            Meaning::Nothing => return Some(CommandStatus::EsmeRok),
            Meaning::Message(_) | Meaning::Receipt(_) if !self.has_room() => {
                return Some(CommandStatus::EsmeRxTAppn);
            }
            Meaning::Message(arrival) => {
                let intake = self.intake.clone();
                Box::pin(async move { intake.deliver(arrival).await.map(|_| ()) })
            }
            Meaning::Receipt(said) => {
                let Some(fate) = said.fate else {
                    return Some(CommandStatus::EsmeRok);
                };
                let name = self.names.meant(&said.name);
                Box::pin(receipt(self.intake.clone(), name, fate))
            }
        };
        let channel = self.channel.clone();
        self.deliveries.push(Box::pin(async move {
            let status = match taking.await {
                Ok(()) => CommandStatus::EsmeRok,
                Err(error) => {
                    tracing::warn!(%channel, %error, "a delivery was not taken: it will come again");
                    CommandStatus::EsmeRxTAppn
                }
            };
            TakenIn {
                session,
                sequence,
                status,
            }
        }));
        None
    }

    /// Whether more deliveries can be on their way to the disk.
    pub(super) fn has_room(&self) -> bool {
        self.deliveries.len() < DELIVERIES_MAX
    }

    /// Takes no more letters, and gives back those that are not in flight.
    pub(super) fn stop(&mut self) {
        // What is still in it is sent after the next start.
        self.outlet = None;
        let given_back = self.queue.give_back();
        self.carry_out(given_back);
    }

    /// Whether nothing is under way.
    pub(super) fn is_idle(&self) -> bool {
        self.queue.in_flight() == 0 && self.notes.is_empty() && self.deliveries.is_empty()
    }
}

async fn receipt(intake: Intake, name: String, fate: Receipt) -> Result<(), IntakeError> {
    intake.receipt(&name, fate).await
}

/// The next letter; never, once there is no outlet.
async fn lend(outlet: &mut Option<Outlet>) -> Option<Lent> {
    match outlet {
        Some(outlet) => outlet.next().await,
        None => std::future::pending().await,
    }
}
