//! What a modem holds for us, handed in.
//!
//! In: messages and receipts as the session finds them.
//! Out: arrivals for the intake, in the order in which they were found; what became of each.
//! Promises that nothing is said to be taken that is not on the disk.

use std::time::Duration;

use jiff::Timestamp;
use tokio::sync::mpsc;
use tokio_util::sync::CancellationToken;

use crate::message::{Address, Arrival, ChannelName, DeliveryKey, Receipt};
use crate::post::{Aside, Intake};
use crate::privacy::hex;

use super::address;
use super::pdu::{Deliver, Incoming, PduError, Report, Status};
use super::session::{Found, Taken, Ticket};

/// The wait before a message that the modem does not keep is offered again; it doubles.
const FIRST_WAIT: Duration = Duration::from_secs(1);
const LONGEST_WAIT: Duration = Duration::from_secs(30);

/// What was found, and in which session.
#[derive(Debug)]
pub(super) struct FoundIn {
    pub(super) session: u64,
    pub(super) began: Timestamp,
    pub(super) found: Found,
}

/// What became of it.
#[derive(Debug)]
pub(super) struct SettledIn {
    pub(super) session: u64,
    pub(super) ticket: Ticket,
    pub(super) taken: Taken,
}

/// A receipt for a message of ours.
#[derive(Debug)]
pub(super) struct Received {
    /// The name under which the message went out.
    pub(super) carrier_id: String,
    pub(super) receipt: Receipt,
}

/// The way in.
#[derive(Debug)]
pub(super) struct Inbox {
    pub(super) name: ChannelName,
    pub(super) intake: Intake,
    pub(super) ending: CancellationToken,
    pub(super) found: mpsc::Receiver<FoundIn>,
    pub(super) settled: mpsc::Sender<SettledIn>,
    pub(super) receipts: mpsc::Sender<Received>,
}

impl Inbox {
    /// Hands in until the line is closed for good.
    pub(super) async fn carry(mut self) {
        while let Some(FoundIn {
            session,
            began,
            found,
        }) = self.found.recv().await
        {
            let taken = match found.content {
                Ok(Incoming::Deliver(deliver)) => self.deliver(&deliver, found.ticket, began).await,
                Ok(Incoming::Report(report)) => self.report(&report),
                Err(error) => self.unreadable(error),
            };
            if let Some(ticket) = found.ticket {
                let settled = SettledIn {
                    session,
                    ticket,
                    taken,
                };
                // A line that is closed reads it again, and it is known again.
                let _ = self.settled.send(settled).await;
            }
        }
    }

    async fn deliver(&self, deliver: &Deliver, ticket: Option<Ticket>, began: Timestamp) -> Taken {
        let Some(from) = address::sender(&deliver.from, deliver.centre.as_ref()) else {
            self.intake.set_aside(Aside::Machine);
            return Taken::Yes;
        };
        let arrival = arrival(deliver, from, began);
        let mut wait = FIRST_WAIT;
        loop {
            match self.intake.deliver(arrival.clone()).await {
                Ok(_) => return Taken::Yes,
                Err(error) => {
                    tracing::warn!(channel = %self.name, %error, "a message stays in the modem");
                }
            }
            // What the modem keeps is found again. What it does not keep is in our hands alone.
            if ticket.is_some() {
                return Taken::No;
            }
            if self.ending.is_cancelled() {
                tracing::error!(channel = %self.name, "a message that nobody keeps is lost");
                return Taken::No;
            }
            tokio::select! {
                () = tokio::time::sleep(wait) => {}
                () = self.ending.cancelled() => {}
            }
            wait = wait.saturating_mul(2).min(LONGEST_WAIT);
        }
    }

    /// A receipt is a figure and no more: one that has no place to wait is let go.
    fn report(&self, report: &Report) -> Taken {
        let receipt = match report.status {
            Status::Delivered => Receipt::Delivered,
            Status::Failed => Receipt::Undelivered,
            Status::Pending => return Taken::Yes,
        };
        if let Some(to) = address::sender(&report.to, report.centre.as_ref()) {
            let carrier_id = carrier_id(&self.intake, report.reference, &to);
            let received = Received {
                carrier_id,
                receipt,
            };
            if self.receipts.try_send(received).is_err() {
                tracing::debug!(channel = %self.name, "a receipt is not counted");
            }
        }
        Taken::Yes
    }

    fn unreadable(&self, error: PduError) -> Taken {
        tracing::warn!(channel = %self.name, %error, "a message cannot be read");
        self.intake.set_aside(Aside::Unreadable);
        Taken::Yes
    }
}

/// What a message of ours is called for its receipt: the modem's number of it comes again after
/// 256 messages, so the receiver is in the name; nobody can read it out of it.
pub(super) fn carrier_id(intake: &Intake, reference: u8, to: &Address) -> String {
    intake.alias(&[&reference.to_string(), to.number()])
}

/// The time of arrival is ours: the clocks of service centres are not to be relied on, and a
/// message that lay on the card is answered from when it was read.
fn arrival(deliver: &Deliver, from: Address, began: Timestamp) -> Arrival {
    let octets = hex(&deliver.user_data);
    let delivery = match deliver.sent_at {
        // The same from the same in the same second is the same: read again after a crash before
        // it was deleted, or sent again by the network.
        Some(sent_at) => DeliveryKey::Named(format!(
            "{} {} {octets}",
            sent_at.as_second(),
            from.number()
        )),
        None => DeliveryKey::Alike {
            likeness: format!("{} {octets}", from.number()),
            session: began.as_millisecond(),
        },
    };
    Arrival {
        from,
        text: deliver.text.clone(),
        part: deliver.part,
        delivery,
        at: Timestamp::now(),
    }
}
