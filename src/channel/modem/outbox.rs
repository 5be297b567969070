//! Letters for a modem, cut into segments and passed on one by one; receipts for them.
//!
//! In: letters from the outlet, receipts that were found.
//! Out: orders for the line, settled letters.
//! Promises that a segment that the network has is not sent again, and that a receipt waits until
//! the letter that it may be for is settled.

use std::time::Instant;

use tokio::sync::{mpsc, oneshot};
use tokio_util::sync::CancellationToken;

use crate::message::{ChannelName, OutboxId, Sending};
use crate::post::{Intake, Lent, Outlet};
use crate::sms;

use super::address;
use super::inbox::{Received, carrier_id};
use super::pdu::{Number, Submit, submit};
use super::session::NotSent;

/// A segment for the line.
#[derive(Debug)]
pub(super) struct Order {
    pub(super) submit: Submit,
    pub(super) made: Instant,
    /// The modem's number of it, or why it was not sent.
    pub(super) done: oneshot::Sender<Result<u8, NotSent>>,
}

/// The way out.
#[derive(Debug)]
pub(super) struct Outbox {
    pub(super) name: ChannelName,
    pub(super) intake: Intake,
    pub(super) outlet: Outlet,
    pub(super) ending: CancellationToken,
    pub(super) orders: mpsc::Sender<Order>,
    pub(super) receipts: mpsc::Receiver<Received>,
}

impl Outbox {
    /// Sends until the program is ending.
    pub(super) async fn carry(mut self) {
        loop {
            // A letter that is lent while there is no network waits here with its place, so that
            // nobody lends it a second time.
            tokio::select! {
                Some(received) = self.receipts.recv() => self.receive(received).await,
                lent = self.outlet.next() => match lent {
                    Some(lent) if self.ending.is_cancelled() => drop(lent),
                    Some(lent) => self.send(lent).await,
                    None => return,
                },
            }
        }
    }

    async fn send(&self, lent: Lent) {
        let sending = match address::receiver(&lent.letter().to) {
            Some(to) => self.send_segments(&lent, &to).await,
            None => Sending::Failed("the address is no telephone's".to_owned()),
        };
        lent.settle(sending).await;
    }

    async fn send_segments(&self, lent: &Lent, to: &Number) -> Sending {
        let letter = lent.letter();
        let segments = sms::segments(&letter.text, reference(letter.id));
        let last = segments.len();
        let mut carrier_ids = Vec::new();
        for (number, segment) in (1_u32..).zip(&segments) {
            if number <= letter.parts_accepted {
                continue;
            }
            let Some(submit) = submit(to, segment) else {
                return Sending::Failed("it does not fit into a message".to_owned());
            };
            match self.order(submit).await {
                Ok(reference) => {
                    carrier_ids.push(carrier_id(&self.intake, reference, &letter.to));
                }
                Err(NotSent::Later(reason)) => {
                    return Sending::TryAgain {
                        reason,
                        after: None,
                    };
                }
                Err(NotSent::Never(reason)) => return Sending::Failed(reason),
            }
            let is_last = usize::try_from(number).is_ok_and(|number| number >= last);
            if !is_last && let Err(error) = lent.part_accepted(number).await {
                tracing::error!(channel = %self.name, %error, "a sent segment could not be noted");
            }
        }
        Sending::Accepted(carrier_ids)
    }

    async fn order(&self, submit: Submit) -> Result<u8, NotSent> {
        let lost = || NotSent::Later("there was no line for it".to_owned());
        let (done, sent) = oneshot::channel();
        let made = Instant::now();
        let order = Order { submit, made, done };
        self.orders.send(order).await.map_err(|_| lost())?;
        sent.await.map_err(|_| lost())?
    }

    async fn receive(&self, received: Received) {
        let Received {
            carrier_id,
            receipt,
        } = received;
        if let Err(error) = self.intake.receipt(&carrier_id, receipt).await {
            tracing::warn!(channel = %self.name, %error, "a receipt could not be noted");
        }
    }
}

/// What tells the segments of one letter from those of others; the same for each attempt.
fn reference(id: OutboxId) -> u8 {
    let [low, ..] = id.0.to_le_bytes();
    low
}
