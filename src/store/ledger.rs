//! What the service asks of a store: changes that hold together, and a few readings.
//!
//! A second engine beside SQLite is one more type with these two traits. Everything a step changes
//! is one [`Change`]; the changes of one [`Ledger::apply`] are committed together, before it
//! returns.

use jiff::Timestamp;

use crate::dialogue::{Person, Reminder};
use crate::message::{ChannelName, OutboxId, PartOf, Receipt};

use super::StoreError;

/// The writing side. There is one writer.
pub trait Ledger: Send {
    /// Makes the changes, all of them or none, and has them on the disk before it returns.
    ///
    /// # Errors
    /// [`StoreError`] when one cannot be made; then none is.
    fn apply(&mut self, changes: &[Change]) -> Result<Vec<Effect>, StoreError>;
}

/// The reading side; sees what is committed.
pub trait LedgerReader: Send {
    /// The person as remembered; a new one if there is none.
    ///
    /// # Errors
    /// [`StoreError`] when the store cannot be read.
    fn person(&self, id: &str) -> Result<Person, StoreError>;

    /// Messages that wait for an answer, the oldest first.
    ///
    /// # Errors
    /// As [`LedgerReader::person`].
    fn waiting(&self, most: usize) -> Result<Vec<Waiting>, StoreError>;

    /// How many messages wait for an answer.
    ///
    /// # Errors
    /// As [`LedgerReader::person`].
    fn waiting_count(&self) -> Result<usize, StoreError>;

    /// Reminders whose wait is over, the oldest first.
    ///
    /// # Errors
    /// As [`LedgerReader::person`].
    fn due_reminders(&self, now: Timestamp, most: usize) -> Result<Vec<Due>, StoreError>;
}

/// The store's number of a message that came in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct InboxId(pub i64);

/// One change.
#[derive(Debug, Clone, PartialEq)]
pub enum Change {
    /// Hands out messages that are due on a channel, each for the time of a lease.
    Claim {
        /// The channel.
        channel: ChannelName,
        /// Now.
        now: Timestamp,
        /// Until when nobody else may have them.
        lease: Timestamp,
        /// How many.
        most: usize,
    },
    /// Puts long messages whose other parts did not come into the inbox: whoever wrote hears that.
    GatherLate {
        /// Those whose first part came before this.
        before: Timestamp,
    },
    /// Proves that the store can be written.
    Heartbeat(Timestamp),
    /// Clears away what is kept for a while only.
    Purge(Purge),
    /// A message came in.
    Receive(Received),
    /// What became of a message behind the network's acceptance.
    Receipt {
        /// The channel.
        channel: ChannelName,
        /// The network's name of it.
        carrier_id: String,
        /// What became of it.
        receipt: Receipt,
    },
    /// What was being sent when the program ended is due again.
    Resume,
    /// A message is settled: the person, the question and the reply.
    Settle(Box<Settled>),
    /// A reminder goes out.
    Remind(Box<Reminded>),
    /// How sending went.
    Sent {
        /// Which.
        id: OutboxId,
        /// The channel.
        channel: ChannelName,
        /// How.
        fate: Fate,
        /// When.
        at: Timestamp,
    },
}

/// What a change led to.
#[derive(Debug, Clone, PartialEq)]
pub enum Effect {
    /// To a [`Change::Claim`].
    Claimed(Vec<Claimed>),
    /// To a [`Change::Receive`].
    Received(Taken),
    /// To any other.
    Done,
}

/// Whether a delivery is new.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Taken {
    /// It came before.
    Again,
    /// It is in the inbox.
    New,
    /// It is kept, and other parts of its message are still to come.
    Part,
}

/// A message that came in, sealed.
#[derive(Debug, Clone, PartialEq)]
pub struct Received {
    /// The channel.
    pub channel: ChannelName,
    /// Keyed hash of what it is known by.
    pub delivery: Vec<u8>,
    /// How far that goes.
    pub known: Known,
    /// Which part it is, where it is not all.
    pub part: Option<PartOf>,
    /// Keyed hash of the sender.
    pub person: String,
    /// Sealed.
    pub address: Vec<u8>,
    /// Sealed.
    pub body: Vec<u8>,
    /// When.
    pub at: Timestamp,
}

/// How far a delivery's name goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Known {
    /// For ever.
    ByName,
    /// For a while: the network may repeat itself, and so may a person.
    ByLikeness {
        /// When the session began, milliseconds since 1970.
        session: i64,
        /// The same in the same session is a repetition from here on.
        same_session_since: Timestamp,
        /// The same in another session is a repetition from here on.
        other_session_since: Timestamp,
    },
}

/// A message that waits for an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Waiting {
    /// Its number.
    pub id: InboxId,
    /// The channel.
    pub channel: ChannelName,
    /// Keyed hash of the sender.
    pub person: String,
    /// Sealed.
    pub address: Vec<u8>,
    /// Its parts in their order, each sealed; none where parts of it never came.
    pub bodies: Vec<Vec<u8>>,
    /// When it came.
    pub at: Timestamp,
}

/// A message is settled.
#[derive(Debug, Clone, PartialEq)]
pub struct Settled {
    /// Which.
    pub id: InboxId,
    /// Keyed hash of the sender.
    pub person: String,
    /// When.
    pub at: Timestamp,
    /// How.
    pub how: Settlement,
}

/// How a message was settled.
#[expect(
    clippy::large_enum_variant,
    reason = "nearly every message is answered"
)]
#[derive(Debug, Clone, PartialEq)]
pub enum Settlement {
    /// Answered.
    Answered {
        /// The person as to be remembered, or nothing to forget all that is kept.
        person: Option<Box<Person>>,
        /// Where a reminder would go.
        reach: Reach,
        /// What was asked.
        question: Question,
        /// The reply.
        reply: Outgoing,
    },
    /// The program failed over it.
    Failed,
    /// Deliberately not answered.
    SetAside,
}

/// Where somebody is reached unasked.
#[derive(Debug, Clone, PartialEq)]
pub struct Reach {
    /// The channel.
    pub channel: ChannelName,
    /// Sealed.
    pub address: Vec<u8>,
}

/// A message that goes out, sealed.
#[derive(Debug, Clone, PartialEq)]
pub struct Outgoing {
    /// The channel.
    pub channel: ChannelName,
    /// Sealed.
    pub address: Vec<u8>,
    /// Sealed.
    pub body: Vec<u8>,
    /// For networks that can show them.
    pub next_words: Vec<String>,
}

/// What was asked, without its words.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// BCP 47.
    pub language: String,
    /// The contract's topic.
    pub topic: String,
    /// The contract's request, JSON.
    pub request: String,
    /// What came of it.
    pub outcome: Outcome,
    /// The field asked for, or the reason of a refusal.
    pub detail: String,
    /// Segments of the reply.
    pub segments: usize,
    /// The text with telephone numbers blanked, where it was not understood.
    pub unread: Option<String>,
}

/// What came of a question.
#[derive(Debug, Clone, Copy, PartialEq, Eq, strum::EnumString, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Outcome {
    /// Answered.
    Answered,
    /// Asked back.
    Asked,
    /// Not understood.
    NotUnderstood,
    /// Refused.
    Refused,
}

/// A reminder that is due.
#[derive(Debug, Clone, PartialEq)]
pub struct Due {
    /// Keyed hash of the person.
    pub person: String,
    /// Where they are reached; nothing where that is not known.
    pub reach: Option<Reach>,
    /// The language that they wrote last, or set.
    pub language: Option<String>,
    /// Its place in the person's list.
    pub place: i64,
    /// What was waited for; nothing if another program wrote it in a way not known here.
    pub reminder: Option<Reminder>,
}

/// A reminder goes out.
#[derive(Debug, Clone, PartialEq)]
pub struct Reminded {
    /// Keyed hash of the person.
    pub person: String,
    /// Its place in the person's list.
    pub place: i64,
    /// When.
    pub at: Timestamp,
    /// The message; nothing where none can be sent.
    pub message: Option<Outgoing>,
}

/// A message handed out to be sent.
#[derive(Debug, Clone, PartialEq)]
pub struct Claimed {
    /// Its number.
    pub id: OutboxId,
    /// Sealed.
    pub address: Vec<u8>,
    /// Sealed.
    pub body: Vec<u8>,
    /// For networks that can show them.
    pub next_words: Vec<String>,
    /// Segments that were accepted in an earlier attempt.
    pub parts_accepted: u32,
    /// Which attempt this is.
    pub attempt: u32,
    /// When it was written.
    pub made_at: Timestamp,
}

/// What is recorded of a message that was being sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fate {
    /// The network has it; its names for the segments.
    Accepted(Vec<String>),
    /// Never again.
    GivenUp,
    /// The network has so many segments of it.
    PartAccepted(u32),
    /// Again, then.
    Again(Timestamp),
}

/// What is cleared away.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Purge {
    /// Texts that were not understood and came before this.
    pub unread_before: Timestamp,
    /// Messages that went out and were settled before this.
    pub sent_before: Timestamp,
}
