//! The clerk: takes what waits in the inbox, has the desk answer it, and settles it.
//!
//! In: waiting messages, reminders that are due.
//! Out: settlements, each with the person, the question and the reply in one.
//! Promises that a message on which the program fails costs only itself. Works in one thread, so
//! that a person's messages are answered one behind the other.

use std::collections::{BTreeMap, HashMap};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;
use std::time::Duration;

use jiff::Timestamp;
use tokio::sync::Notify;

use crate::contract::{RequestJson, verdict};
use crate::desk::{Answered, Desk, DeskError};
use crate::dialogue::{Person, Say};
use crate::message::ChannelName;
use crate::post::{Aside, KeeperError, PostOffice};
use crate::privacy::{Purpose, SealError, without_numbers};
use crate::reply::{next_words, reminder, render, segment};
use crate::request::Topic;
use crate::store::{
    Change, Due, LedgerReader, Outcome, Outgoing, Question, Reach, Reminded, Settled, Settlement,
    StoreError, Waiting,
};

use super::guard::{Admission, Guard};

/// Messages settled in one transaction.
const BATCH: usize = 128;
/// How often the clock is looked at for reminders.
const TICK: Duration = Duration::from_secs(1);
/// The wait after the store failed.
const STORE_WAIT: Duration = Duration::from_secs(1);

/// The clerk.
pub(super) struct Clerk {
    pub(super) desk: Desk,
    pub(super) reader: Box<dyn LedgerReader>,
    pub(super) office: PostOffice,
    pub(super) guard: Guard,
    /// Who is told that there is something to send.
    pub(super) posted: BTreeMap<ChannelName, Arc<Notify>>,
}

/// Why nothing could be settled.
#[derive(Debug, thiserror::Error)]
enum ClerkError {
    #[error("{0}")]
    Keeper(#[from] KeeperError),
    #[error("{0}")]
    Seal(#[from] SealError),
    #[error("{0}")]
    Store(#[from] StoreError),
}

impl Clerk {
    /// Works until the program is ending and nothing waits any more.
    pub(super) async fn work(mut self) {
        loop {
            match self.round().await {
                // There may be more.
                Ok(BATCH..) => {}
                Ok(_) if self.office.ending.is_cancelled() => return,
                Ok(_) => self.rest(TICK).await,
                Err(error) => {
                    tracing::error!(%error, "messages wait: they could not be settled");
                    if self.office.ending.is_cancelled() {
                        return;
                    }
                    tokio::time::sleep(STORE_WAIT).await;
                }
            }
        }
    }

    async fn rest(&self, at_most: Duration) {
        tokio::select! {
            () = self.office.arrived.notified() => {}
            () = tokio::time::sleep(at_most) => {}
            () = self.office.ending.cancelled() => {}
        }
    }

    /// Settles what waits, at most a batch of it; how many those were.
    async fn round(&mut self) -> Result<usize, ClerkError> {
        let waiting = self.reader.waiting(BATCH)?;
        let settled = waiting.len();
        self.answer(waiting).await?;
        self.remind().await?;
        Ok(settled)
    }

    async fn answer(&mut self, waiting: Vec<Waiting>) -> Result<(), ClerkError> {
        if waiting.is_empty() {
            self.office.metrics.waiting.set(0);
            return Ok(());
        }
        let settled = waiting.len();
        // People as they are after the messages before, which are not on the disk yet.
        let mut people: HashMap<String, Person> = HashMap::new();
        let mut changes = Vec::with_capacity(waiting.len());
        let mut told = Vec::new();
        for message in &waiting {
            let (how, aside) = self.settlement(message, &mut people)?;
            told.push((message.channel.clone(), aside, message.at));
            changes.push(Change::Settle(Box::new(Settled {
                id: message.id,
                person: message.person.clone(),
                at: message.at,
                how,
            })));
        }
        self.office.keeper.apply(changes).await?;
        self.office.room.add_permits(settled);
        let now = Timestamp::now();
        for (channel, aside, at) in told {
            match aside {
                Some(aside) => self.office.metrics.aside(&channel, aside),
                None => {
                    let seconds = now.duration_since(at).as_secs_f64();
                    self.office.metrics.answer_seconds.observe(seconds);
                }
            }
            self.tell(&channel);
        }
        let still = self.reader.waiting_count()?;
        self.office
            .metrics
            .waiting
            .set(i64::try_from(still).unwrap_or(i64::MAX));
        Ok(())
    }

    fn tell(&self, channel: &ChannelName) {
        if let Some(posted) = self.posted.get(channel) {
            posted.notify_one();
        }
    }

    fn settlement(
        &mut self,
        message: &Waiting,
        people: &mut HashMap<String, Person>,
    ) -> Result<(Settlement, Option<Aside>), ClerkError> {
        let opened = message
            .bodies
            .iter()
            .map(|body| self.office.seal.open(body, Purpose::Inbox))
            .collect::<Result<String, _>>();
        let Ok(text) = opened else {
            tracing::error!(
                channel = %message.channel,
                message = message.id.0,
                "a message does not open with this key file and stays unanswered"
            );
            return Ok((Settlement::Failed, Some(Aside::Failed)));
        };
        match self
            .guard
            .admit(message.id, &message.person, &text, message.at)
        {
            Admission::Admitted => {}
            Admission::Looping => {
                tracing::warn!(channel = %message.channel, "a loop is broken: no answer");
                return Ok((Settlement::SetAside, Some(Aside::Loop)));
            }
            Admission::OverRate => return Ok((Settlement::SetAside, Some(Aside::Rate))),
        }
        let person = match people.get(&message.person) {
            Some(person) => person.clone(),
            None => self.reader.person(&message.person)?,
        };
        let answered = catch_unwind(AssertUnwindSafe(|| {
            self.desk.answer(&person, &text, message.at)
        }));
        let answer = match answered {
            Ok(Ok(answered)) => Answer::of(answered, &self.desk, &text),
            Ok(Err(error)) => {
                tracing::error!(channel = %message.channel, %error, "the desk failed");
                Answer::helpless(&self.desk, &person, &text)
            }
            Err(_) => {
                tracing::error!(channel = %message.channel, "the desk failed over a message");
                Answer::helpless(&self.desk, &person, &text)
            }
        };
        let Some(answer) = answer else {
            return Ok((Settlement::Failed, Some(Aside::Failed)));
        };
        people.insert(
            message.person.clone(),
            answer.person.clone().unwrap_or_default(),
        );
        self.guard.replied(&message.person, &answer.reply);
        if answer.question.outcome == Outcome::NotUnderstood {
            self.office.metrics.not_understood(&message.channel);
        }
        let reply = Outgoing {
            channel: message.channel.clone(),
            address: message.address.clone(),
            body: self.office.seal.close(&answer.reply, Purpose::Outbox)?,
            next_words: answer.next_words,
        };
        let how = Settlement::Answered {
            person: answer.person.map(Box::new),
            reach: Reach {
                channel: message.channel.clone(),
                address: message.address.clone(),
            },
            question: answer.question,
            reply,
        };
        Ok((how, None))
    }

    async fn remind(&mut self) -> Result<(), ClerkError> {
        let now = Timestamp::now();
        let due = self.reader.due_reminders(now, BATCH)?;
        if due.is_empty() {
            return Ok(());
        }
        let mut changes = Vec::with_capacity(due.len());
        let mut channels = Vec::new();
        for due in due {
            let message = self.reminder(&due)?;
            channels.extend(message.as_ref().map(|message| message.channel.clone()));
            changes.push(Change::Remind(Box::new(Reminded {
                person: due.person,
                place: due.place,
                at: now,
                message,
            })));
        }
        self.office.keeper.apply(changes).await?;
        for channel in channels {
            self.tell(&channel);
        }
        Ok(())
    }

    /// The message of a reminder; nothing where nobody can be reached or it cannot be worded.
    fn reminder(&self, due: &Due) -> Result<Option<Outgoing>, ClerkError> {
        let (Some(reach), Some(of)) = (&due.reach, &due.reminder) else {
            return Ok(None);
        };
        let worded = self
            .desk
            .locale(due.language.as_deref())
            .and_then(|locale| reminder(of, locale).map_err(DeskError::from));
        match worded {
            Ok(text) => Ok(Some(Outgoing {
                channel: reach.channel.clone(),
                address: reach.address.clone(),
                body: self.office.seal.close(&text, Purpose::Outbox)?,
                next_words: Vec::new(),
            })),
            Err(error) => {
                tracing::error!(%error, "a reminder could not be worded");
                Ok(None)
            }
        }
    }
}

/// What is settled of an answer.
struct Answer {
    person: Option<Person>,
    reply: String,
    question: Question,
    next_words: Vec<String>,
}

impl Answer {
    fn of(answered: Answered, desk: &Desk, text: &str) -> Option<Self> {
        let (_, missing, refused) = verdict(&answered.step.say);
        let topic = RequestJson::from(&answered.step.request);
        let not_understood = answered.step.request.topic == Topic::Unclear;
        let (outcome, detail) = match (refused, missing.first()) {
            (Some(reason), _) => (Outcome::Refused, reason),
            (None, Some(field)) => (Outcome::Asked, *field),
            (None, None) if not_understood => (Outcome::NotUnderstood, ""),
            (None, None) => (Outcome::Answered, ""),
        };
        let next_words = desk
            .locale(Some(&answered.language))
            .ok()
            .and_then(|locale| next_words(&answered.step.say, locale).ok())
            .unwrap_or_default();
        Some(Self {
            question: Question {
                language: answered.language,
                topic: topic.topic.to_owned(),
                request: serde_json::to_string(&topic).ok()?,
                outcome,
                detail: detail.to_owned(),
                segments: answered.segments.parts.len(),
                unread: (outcome == Outcome::NotUnderstood).then(|| without_numbers(text)),
            },
            person: answered.step.person,
            reply: answered.reply,
            next_words,
        })
    }

    /// Where the program failed: that the message was not understood, and the person as before.
    fn helpless(desk: &Desk, person: &Person, text: &str) -> Option<Self> {
        let language = person.language.as_deref().or(person.wrote.as_deref());
        let locale = desk.locale(language).ok()?;
        let reply = render(&Say::NotUnderstood, locale).ok()?;
        Some(Self {
            person: Some(person.clone()),
            question: Question {
                language: locale.lexicon.tag().to_owned(),
                topic: "unclear".to_owned(),
                request: r#"{"topic":"unclear"}"#.to_owned(),
                outcome: Outcome::NotUnderstood,
                detail: "failed".to_owned(),
                segments: segment(&reply).parts.len(),
                unread: Some(without_numbers(text)),
            },
            reply,
            next_words: Vec::new(),
        })
    }
}
