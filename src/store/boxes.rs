//! The inbox and the outbox in SQLite.
//!
//! In: changes.
//! Out: their effects.
//! Promises that the changes of one call are one transaction.

use jiff::Timestamp;
use rusqlite::{OptionalExtension, Row, Transaction, TransactionBehavior, params};

use crate::dialogue::{Listening, Person};
use crate::message::{ChannelName, OutboxId, PartOf, Receipt};

use super::ledger::{
    Change, Claimed, Due, Effect, Fate, InboxId, Known, Ledger, LedgerReader, Outgoing, Purge,
    Question, Reach, Received, Reminded, Settled, Settlement, Taken, Waiting,
};
use super::{Store, StoreError, keep_bottles, keep_person, keep_reminders, record};

/// States of the inbox, never used for anything else. Where a statement is to use an index that
/// holds rows of one state only, the state stands in it as a figure.
mod inbox_state {
    pub(super) const WAITING: i64 = 0;
    pub(super) const ANSWERED: i64 = 1;
    pub(super) const SET_ASIDE: i64 = 2;
    pub(super) const FAILED: i64 = 3;
    /// Part of a long message whose other parts are still to come.
    pub(super) const PART: i64 = 4;
    /// Part of a long message that another row stands for.
    pub(super) const GATHERED: i64 = 5;
}

/// States of the outbox, never used for anything else; those below `ACCEPTED` are still to go.
mod outbox_state {
    pub(super) const WAITING: i64 = 0;
    pub(super) const BEING_SENT: i64 = 1;
    pub(super) const ACCEPTED: i64 = 2;
    pub(super) const DELIVERED: i64 = 3;
    pub(super) const UNDELIVERED: i64 = 4;
    pub(super) const GIVEN_UP: i64 = 5;
}

impl Ledger for Store {
    fn apply(&mut self, changes: &[Change]) -> Result<Vec<Effect>, StoreError> {
        let transaction = self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let effects = changes
            .iter()
            .map(|change| apply(&transaction, change))
            .collect::<Result<Vec<_>, _>>()?;
        transaction.commit()?;
        let forgets = |change: &Change| {
            matches!(change, Change::Settle(settled)
                if matches!(settled.how, Settlement::Answered { person: None, .. }))
        };
        if changes.iter().any(forgets) {
            // What was deleted still stands in the log until it is folded in and cut. Somebody who
            // reads keeps it from that for a moment; then the next one does it.
            let _ = self
                .connection
                .query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()));
        }
        Ok(effects)
    }
}

fn apply(transaction: &Transaction<'_>, change: &Change) -> Result<Effect, StoreError> {
    match change {
        Change::Claim {
            channel,
            now,
            lease,
            most,
        } => claim(transaction, channel, *now, *lease, *most).map(Effect::Claimed),
        Change::Heartbeat(at) => {
            transaction
                .prepare_cached(
                    "INSERT INTO heartbeat (only, at) VALUES (1, ?1)
                     ON CONFLICT (only) DO UPDATE SET at = excluded.at",
                )?
                .execute([at.as_millisecond()])?;
            Ok(Effect::Done)
        }
        Change::GatherLate { before } => gather_late(transaction, *before),
        Change::Purge(purge) => clear(transaction, *purge),
        Change::Receive(received) => receive(transaction, received).map(Effect::Received),
        Change::Receipt {
            channel,
            carrier_id,
            receipt,
        } => {
            let state = match receipt {
                Receipt::Delivered => outbox_state::DELIVERED,
                Receipt::Undelivered => outbox_state::UNDELIVERED,
            };
            transaction
                .prepare_cached(
                    "UPDATE outbox SET state = ?3 WHERE state >= ?4 AND id =
                         (SELECT outbox_id FROM carried WHERE channel = ?1 AND carrier_id = ?2)",
                )?
                .execute(params![
                    channel.as_str(),
                    carrier_id,
                    state,
                    outbox_state::ACCEPTED
                ])?;
            Ok(Effect::Done)
        }
        Change::Resume => {
            transaction.execute(
                "UPDATE outbox SET state = ?1, due_at = 0 WHERE state = ?2",
                [outbox_state::WAITING, outbox_state::BEING_SENT],
            )?;
            Ok(Effect::Done)
        }
        Change::Settle(settled) => settle(transaction, settled),
        Change::Remind(reminded) => remind(transaction, reminded),
        Change::Sent {
            id,
            channel,
            fate,
            at,
            ..
        } => sent(transaction, *id, channel, fate, *at),
    }
}

fn receive(transaction: &Transaction<'_>, received: &Received) -> Result<Taken, StoreError> {
    let channel = received.channel.as_str();
    let session = match received.known {
        Known::ByName => {
            let before = transaction
                .prepare_cached("SELECT 1 FROM inbox WHERE delivery = ?1 AND channel = ?2 LIMIT 1")?
                .query_row(params![received.delivery, channel], |_| Ok(()))
                .optional()?;
            if before.is_some() {
                return Ok(Taken::Again);
            }
            0
        }
        Known::ByLikeness {
            session,
            same_session_since,
            other_session_since,
        } => {
            let before = transaction
                .prepare_cached(
                    "SELECT 1 FROM inbox WHERE delivery = ?1 AND channel = ?2
                         AND received_at >= CASE session WHEN ?3 THEN ?4 ELSE ?5 END LIMIT 1",
                )?
                .query_row(
                    params![
                        received.delivery,
                        channel,
                        session,
                        same_session_since.as_millisecond(),
                        other_session_since.as_millisecond(),
                    ],
                    |_| Ok(()),
                )
                .optional()?;
            if before.is_some() {
                return Ok(Taken::Again);
            }
            session
        }
    };
    let state = match received.part {
        Some(_) => inbox_state::PART,
        None => inbox_state::WAITING,
    };
    let part = received.part.unwrap_or(PartOf {
        reference: 0,
        total: 1,
        number: 1,
    });
    transaction
        .prepare_cached(
            "INSERT INTO inbox (channel, delivery, session, person_id, address, body, received_at,
                                state, reference, total, number)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)",
        )?
        .execute(params![
            channel,
            received.delivery,
            session,
            received.person,
            received.address,
            received.body,
            received.at.as_millisecond(),
            state,
            part.reference,
            part.total,
            part.number,
        ])?;
    match received.part {
        Some(part) => gather(transaction, received, part),
        None => Ok(Taken::New),
    }
}

/// Has a long message wait for its answer once all its parts are there: in the row of its last
/// part, with the others behind it.
fn gather(
    transaction: &Transaction<'_>,
    received: &Received,
    part: PartOf,
) -> Result<Taken, StoreError> {
    let last = transaction.last_insert_rowid();
    let here: u32 = transaction
        .prepare_cached(
            "SELECT count(DISTINCT number) FROM inbox WHERE state = 4 AND person_id = ?1
                 AND channel = ?2 AND reference = ?3 AND total = ?4",
        )?
        .query_row(
            params![
                received.person,
                received.channel.as_str(),
                part.reference,
                part.total,
            ],
            |row| row.get(0),
        )?;
    if here < u32::from(part.total) {
        return Ok(Taken::Part);
    }
    transaction
        .prepare_cached(
            "UPDATE inbox SET state = CASE id WHEN ?5 THEN ?6 ELSE ?7 END, whole_id = ?5
             WHERE state = 4 AND person_id = ?1 AND channel = ?2 AND reference = ?3
                 AND total = ?4",
        )?
        .execute(params![
            received.person,
            received.channel.as_str(),
            part.reference,
            part.total,
            last,
            inbox_state::WAITING,
            inbox_state::GATHERED,
        ])?;
    Ok(Taken::New)
}

/// Parts whose others never came: the first stands for the message, without a text.
fn gather_late(transaction: &Transaction<'_>, before: Timestamp) -> Result<Effect, StoreError> {
    let mut late = transaction.prepare_cached(
        "SELECT min(id) FROM inbox WHERE state = ?1
         GROUP BY person_id, channel, reference, total HAVING min(received_at) < ?2",
    )?;
    let rows = late.query_map(params![inbox_state::PART, before.as_millisecond()], |row| {
        row.get::<_, i64>(0)
    })?;
    for first in rows.collect::<Result<Vec<_>, _>>()? {
        transaction
            .prepare_cached(
                "UPDATE inbox SET body = x'', whole_id = ?1,
                     state = CASE id WHEN ?1 THEN ?2 ELSE ?3 END
                 WHERE state = ?4 AND (person_id, channel, reference, total) =
                     (SELECT person_id, channel, reference, total FROM inbox WHERE id = ?1)",
            )?
            .execute([
                first,
                inbox_state::WAITING,
                inbox_state::GATHERED,
                inbox_state::PART,
            ])?;
    }
    Ok(Effect::Done)
}

fn settle(transaction: &Transaction<'_>, settled: &Settled) -> Result<Effect, StoreError> {
    let state = match &settled.how {
        Settlement::Answered { .. } => inbox_state::ANSWERED,
        Settlement::Failed => inbox_state::FAILED,
        Settlement::SetAside => inbox_state::SET_ASIDE,
    };
    let was_waiting = transaction
        .prepare_cached(
            "UPDATE inbox SET state = ?2, address = x'', body = x'' WHERE id = ?1 AND state = ?3",
        )?
        .execute([settled.id.0, state, inbox_state::WAITING])?;
    transaction
        .prepare_cached(
            "UPDATE inbox SET address = x'', body = x'' WHERE whole_id = ?1
                 AND whole_id > 0",
        )?
        .execute([settled.id.0])?;
    let Settlement::Answered {
        person,
        reach,
        question,
        reply,
    } = &settled.how
    else {
        return Ok(Effect::Done);
    };
    // Settled before, by whoever was here before a crash: one answer is enough.
    if was_waiting == 0 {
        return Ok(Effect::Done);
    }
    ask(
        transaction,
        settled,
        &reply.channel,
        question,
        person.is_none(),
    )?;
    match person {
        None => {
            transaction
                .prepare_cached("DELETE FROM person WHERE id = ?1")?
                .execute([&settled.person])?;
            transaction
                .prepare_cached("DELETE FROM question WHERE person_id = ?1")?
                .execute([&settled.person])?;
        }
        Some(person) => keep(transaction, settled, person, reach)?,
    }
    post(transaction, reply, settled.at)?;
    Ok(Effect::Done)
}

fn keep(
    transaction: &Transaction<'_>,
    settled: &Settled,
    person: &Person,
    reach: &Reach,
) -> Result<(), StoreError> {
    let id = &settled.person;
    keep_person(transaction, id, person, settled.at)?;
    keep_bottles(transaction, id, &person.bottles)?;
    keep_reminders(transaction, id, &person.reminders)?;
    let (channel, address): (&str, &[u8]) = if person.reminders.is_empty() {
        ("", &[])
    } else {
        (reach.channel.as_str(), &reach.address)
    };
    transaction
        .prepare_cached("UPDATE person SET channel = ?2, address = ?3 WHERE id = ?1")?
        .execute(params![id, channel, address])?;
    Ok(())
}

/// Notes the question; of somebody who is forgotten, only that there was one.
fn ask(
    transaction: &Transaction<'_>,
    settled: &Settled,
    channel: &ChannelName,
    question: &Question,
    forgotten: bool,
) -> Result<(), StoreError> {
    if forgotten {
        return Ok(());
    }
    transaction
        .prepare_cached(
            "INSERT INTO question (channel, person_id, at, language, topic, request, outcome,
                                   detail, segments)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)",
        )?
        .execute(params![
            channel.as_str(),
            settled.person,
            settled.at.as_millisecond(),
            question.language,
            question.topic,
            question.request,
            <&str>::from(question.outcome),
            question.detail,
            i64::try_from(question.segments).unwrap_or(i64::MAX),
        ])?;
    if let Some(text) = &question.unread {
        transaction
            .prepare_cached(
                "INSERT INTO unread (question_id, at, language, body)
                 VALUES (last_insert_rowid(), ?1, ?2, ?3)",
            )?
            .execute(params![
                settled.at.as_millisecond(),
                question.language,
                text
            ])?;
    }
    Ok(())
}

fn post(
    transaction: &Transaction<'_>,
    outgoing: &Outgoing,
    at: Timestamp,
) -> Result<(), StoreError> {
    transaction
        .prepare_cached(
            "INSERT INTO outbox (channel, address, body, next_words, state, made_at, due_at)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?6)",
        )?
        .execute(params![
            outgoing.channel.as_str(),
            outgoing.address,
            outgoing.body,
            serde_json::to_string(&outgoing.next_words)?,
            outbox_state::WAITING,
            at.as_millisecond(),
        ])?;
    Ok(())
}

fn remind(transaction: &Transaction<'_>, reminded: &Reminded) -> Result<Effect, StoreError> {
    let taken = transaction
        .prepare_cached("DELETE FROM reminder WHERE person_id = ?1 AND place = ?2")?
        .execute(params![reminded.person, reminded.place])?;
    if let (1, Some(message)) = (taken, &reminded.message) {
        post(transaction, message, reminded.at)?;
    }
    transaction
        .prepare_cached(
            "UPDATE person SET channel = '', address = x'' WHERE id = ?1
                 AND NOT EXISTS (SELECT 1 FROM reminder WHERE person_id = ?1)",
        )?
        .execute([&reminded.person])?;
    Ok(Effect::Done)
}

fn claim(
    transaction: &Transaction<'_>,
    channel: &ChannelName,
    now: Timestamp,
    lease: Timestamp,
    most: usize,
) -> Result<Vec<Claimed>, StoreError> {
    let mut claimed = {
        let mut statement = transaction.prepare_cached(
            "SELECT id, address, body, next_words, parts_accepted, attempts + 1 AS attempt, made_at
             FROM outbox WHERE channel = ?1 AND state < 2 AND due_at <= ?2
             ORDER BY due_at, id LIMIT ?3",
        )?;
        let most = i64::try_from(most).unwrap_or(i64::MAX);
        let rows = statement.query_map(
            params![channel.as_str(), now.as_millisecond(), most],
            claimed_row,
        )?;
        rows.collect::<Result<Vec<_>, _>>()?
    };
    // Oldest first among those that are due, whatever their attempts.
    claimed.sort_by_key(|row| row.id);
    let mut lend = transaction.prepare_cached(
        "UPDATE outbox SET state = ?2, attempts = attempts + 1, due_at = ?3 WHERE id = ?1",
    )?;
    for row in &claimed {
        lend.execute(params![
            row.id.0,
            outbox_state::BEING_SENT,
            lease.as_millisecond()
        ])?;
    }
    Ok(claimed)
}

fn claimed_row(row: &Row<'_>) -> rusqlite::Result<Claimed> {
    let words: String = row.get("next_words")?;
    Ok(Claimed {
        id: OutboxId(row.get("id")?),
        address: row.get("address")?,
        body: row.get("body")?,
        next_words: serde_json::from_str(&words).unwrap_or_default(),
        parts_accepted: row.get("parts_accepted")?,
        attempt: row.get("attempt")?,
        made_at: millisecond(row, "made_at")?,
    })
}

fn sent(
    transaction: &Transaction<'_>,
    id: OutboxId,
    channel: &ChannelName,
    fate: &Fate,
    at: Timestamp,
) -> Result<Effect, StoreError> {
    let done = |state: i64| -> Result<(), StoreError> {
        transaction
            .prepare_cached(
                "UPDATE outbox SET state = ?2, address = x'', body = x'', next_words = '[]',
                                   settled_at = ?3
                 WHERE id = ?1",
            )?
            .execute([id.0, state, at.as_millisecond()])?;
        Ok(())
    };
    match fate {
        Fate::Accepted(carrier_ids) => {
            done(outbox_state::ACCEPTED)?;
            let mut carry = transaction.prepare_cached(
                "INSERT OR REPLACE INTO carried (channel, carrier_id, outbox_id)
                 VALUES (?1, ?2, ?3)",
            )?;
            for carrier_id in carrier_ids {
                carry.execute(params![channel.as_str(), carrier_id, id.0])?;
            }
        }
        Fate::GivenUp => done(outbox_state::GIVEN_UP)?,
        Fate::PartAccepted(parts) => {
            transaction
                .prepare_cached("UPDATE outbox SET parts_accepted = ?2 WHERE id = ?1")?
                .execute(params![id.0, parts])?;
        }
        Fate::Again(due) => {
            transaction
                .prepare_cached("UPDATE outbox SET state = ?2, due_at = ?3 WHERE id = ?1")?
                .execute([id.0, outbox_state::WAITING, due.as_millisecond()])?;
        }
    }
    Ok(Effect::Done)
}

fn clear(transaction: &Transaction<'_>, purge: Purge) -> Result<Effect, StoreError> {
    transaction.execute(
        "DELETE FROM unread WHERE at < ?1",
        [purge.unread_before.as_millisecond()],
    )?;
    transaction.execute(
        "DELETE FROM outbox WHERE state >= 2 AND settled_at < ?1",
        [purge.sent_before.as_millisecond()],
    )?;
    Ok(Effect::Done)
}

impl LedgerReader for Store {
    fn person(&self, id: &str) -> Result<Person, StoreError> {
        Self::person(self, id)
    }

    fn waiting(&self, most: usize) -> Result<Vec<Waiting>, StoreError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT id, channel, person_id, address, body, received_at, total
             FROM inbox WHERE state = 0 ORDER BY id LIMIT ?1",
        )?;
        let most = i64::try_from(most).unwrap_or(i64::MAX);
        let rows = statement.query_map([most], |row| {
            let total: u8 = row.get("total")?;
            let bodies = if total > 1 {
                self.parts(row.get("id")?)?
            } else {
                vec![row.get("body")?]
            };
            Ok(Waiting {
                id: InboxId(row.get("id")?),
                channel: row.get::<_, String>("channel")?.as_str().into(),
                person: row.get("person_id")?,
                address: row.get("address")?,
                bodies,
                at: millisecond(row, "received_at")?,
            })
        })?;
        Ok(rows.collect::<Result<Vec<_>, _>>()?)
    }

    fn waiting_count(&self) -> Result<usize, StoreError> {
        let count: i64 = self
            .connection
            .prepare_cached("SELECT count(*) FROM inbox WHERE state = 0")?
            .query_row([], |row| row.get(0))?;
        Ok(usize::try_from(count).unwrap_or(0))
    }

    fn due_reminders(&self, now: Timestamp, most: usize) -> Result<Vec<Due>, StoreError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT person_id, person.channel AS channel, person.address AS address, listening,
                    COALESCE(wrote, language) AS language, place, due_at, kind, wait_min
             FROM reminder JOIN person ON person.id = reminder.person_id
             WHERE due_at <= ?1 ORDER BY due_at LIMIT ?2",
        )?;
        let most = i64::try_from(most).unwrap_or(i64::MAX);
        let rows = statement.query_map([now.as_second(), most], |row| {
            let channel: String = row.get("channel")?;
            let address: Vec<u8> = row.get("address")?;
            let stopped = row.get::<_, String>("listening")? == <&str>::from(Listening::Stopped);
            let reach = (!channel.is_empty() && !address.is_empty() && !stopped).then(|| Reach {
                channel: channel.as_str().into(),
                address,
            });
            Ok(Due {
                person: row.get("person_id")?,
                reach,
                language: row.get("language")?,
                place: row.get("place")?,
                reminder: record::reminder(row)?,
            })
        })?;
        Ok(rows.collect::<Result<Vec<_>, _>>()?)
    }
}

fn millisecond(row: &Row<'_>, column: &str) -> rusqlite::Result<Timestamp> {
    let at: i64 = row.get(column)?;
    Ok(Timestamp::from_millisecond(at).unwrap_or(Timestamp::UNIX_EPOCH))
}

impl Store {
    /// The parts of a long message in their order; none where it is not whole.
    fn parts(&self, whole: i64) -> rusqlite::Result<Vec<Vec<u8>>> {
        let mut statement = self.connection.prepare_cached(
            "SELECT min(body) FROM inbox WHERE whole_id = ?1 AND whole_id > 0 AND body <> x''
             GROUP BY number ORDER BY number",
        )?;
        statement.query_map([whole], |row| row.get(0))?.collect()
    }
}
