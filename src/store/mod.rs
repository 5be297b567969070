//! What is remembered, in SQLite.
//!
//! In: a person to keep or to forget.
//! Out: the person as kept.
//! Promises one transaction a message, that a committed step survives a power cut
//! (`synchronous = FULL`), and that forgetting overwrites the bytes (`secure_delete`).
//! Knows no parsing, no dosing and no wording.

mod boxes;
mod ledger;
mod record;

use std::path::Path;
use std::time::Duration;

use jiff::Timestamp;
use rusqlite::backup::Backup;
use rusqlite::{Connection, OpenFlags, OptionalExtension, TransactionBehavior, params};
use rusqlite_migration::{M, Migrations};

use crate::dialogue::{Bottle, Person, Reminder};

/// Numbered steps, never changed once released; a new column is a new step.
const STEPS: &[M<'static>] = &[
    M::up(include_str!("migrations/0001_person.sql")),
    M::up(include_str!("migrations/0002_bottles_and_reminders.sql")),
    M::up(include_str!("migrations/0003_language_written.sql")),
    M::up(include_str!("migrations/0004_inbox_and_outbox.sql")),
];

/// Another process may hold the file for a moment.
const BUSY_TIMEOUT: Duration = Duration::from_secs(5);

pub use ledger::{
    Change, Claimed, Due, Effect, Fate, InboxId, Known, Ledger, LedgerReader, Outcome, Outgoing,
    Purge, Question, Reach, Received, Reminded, Settled, Settlement, Taken, Waiting,
};

/// The store.
#[derive(Debug)]
pub struct Store {
    connection: Connection,
}

/// A reminder whose wait is over.
#[derive(Debug, Clone, PartialEq)]
pub struct DueReminder {
    /// Whom to write to.
    pub person: String,
    /// The language that they set, or wrote last.
    pub language: Option<String>,
    /// What was waited for; nothing if another program wrote it in a way not known here.
    pub reminder: Option<Reminder>,
}

/// Whose reminders.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whose<'a> {
    /// Everybody's.
    Anybody,
    /// One person's.
    One(&'a str),
}

impl Whose<'_> {
    const fn id(&self) -> Option<&str> {
        match self {
            Self::Anybody => None,
            Self::One(id) => Some(id),
        }
    }
}

/// What can go wrong with the store.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    /// The folder of the file cannot be made.
    #[error("the folder of {path} cannot be made: {error}")]
    Folder {
        /// The file.
        path: String,
        /// Why.
        error: std::io::Error,
    },
    /// The file cannot be opened or is no store.
    #[error("{path} cannot be used as a store: {error}")]
    Open {
        /// The file.
        path: String,
        /// Why.
        error: String,
    },
    /// A statement failed.
    #[error("the store failed: {0}")]
    Sqlite(#[from] rusqlite::Error),
    /// The conversation could not be written down.
    #[error("the conversation cannot be written down: {0}")]
    Talk(#[from] serde_json::Error),
}

impl StoreError {
    /// Whether nothing can be written just now, whatever it is: the disk is full, or somebody
    /// holds the file.
    #[must_use]
    pub fn is_of_all_writing(&self) -> bool {
        use rusqlite::ErrorCode;
        match self {
            Self::Sqlite(error) => matches!(
                error.sqlite_error_code(),
                Some(
                    ErrorCode::CannotOpen
                        | ErrorCode::DatabaseBusy
                        | ErrorCode::DatabaseCorrupt
                        | ErrorCode::DatabaseLocked
                        | ErrorCode::DiskFull
                        | ErrorCode::ReadOnly
                        | ErrorCode::SystemIoFailure
                )
            ),
            Self::Folder { .. } | Self::Open { .. } | Self::Talk(_) => false,
        }
    }
}

impl Store {
    /// Opens the store in a file, which is made if it is not there.
    ///
    /// # Errors
    /// [`StoreError`] when the folder or the file cannot be made, or the file is no store.
    pub fn open(path: &Path) -> Result<Self, StoreError> {
        let shown = || path.display().to_string();
        if let Some(folder) = path
            .parent()
            .filter(|folder| !folder.as_os_str().is_empty())
        {
            std::fs::create_dir_all(folder).map_err(|error| StoreError::Folder {
                path: shown(),
                error,
            })?;
        }
        let open = |error: String| StoreError::Open {
            path: shown(),
            error,
        };
        let connection = Connection::open(path).map_err(|error| open(error.to_string()))?;
        Self::prepare(connection).map_err(|error| open(error.to_string()))
    }

    /// A store in memory, gone at exit.
    ///
    /// # Errors
    /// [`StoreError`] when SQLite cannot start.
    pub fn in_memory() -> Result<Self, StoreError> {
        let connection = Connection::open_in_memory()?;
        Self::prepare(connection).map_err(|error| StoreError::Open {
            path: ":memory:".to_owned(),
            error: error.to_string(),
        })
    }

    fn prepare(mut connection: Connection) -> Result<Self, rusqlite_migration::Error> {
        connection.busy_timeout(BUSY_TIMEOUT)?;
        connection.pragma_update(None, "journal_mode", "WAL")?;
        connection.pragma_update(None, "synchronous", "FULL")?;
        connection.pragma_update(None, "foreign_keys", true)?;
        connection.pragma_update(None, "secure_delete", true)?;
        Migrations::from_slice(STEPS).to_latest(&mut connection)?;
        Ok(Self { connection })
    }

    /// The person as remembered; a new one if there is none.
    ///
    /// # Errors
    /// [`StoreError::Sqlite`] when the file cannot be read.
    pub fn person(&self, id: &str) -> Result<Person, StoreError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT language, wrote, units, listening, talk FROM person WHERE id = ?1",
        )?;
        let Some(mut person) = statement.query_row([id], record::person).optional()? else {
            return Ok(Person::default());
        };
        let mut statement = self.connection.prepare_cached(
            "SELECT product, strength_percent, tablet_mg, opened, told_at, left_over
             FROM bottle WHERE person_id = ?1 ORDER BY place",
        )?;
        for bottle in statement.query_map([id], record::bottle)? {
            person.bottles.extend(bottle?);
        }
        let mut statement = self.connection.prepare_cached(
            "SELECT due_at, kind, wait_min FROM reminder WHERE person_id = ?1 ORDER BY place",
        )?;
        for reminder in statement.query_map([id], record::reminder)? {
            person.reminders.extend(reminder?);
        }
        Ok(person)
    }

    /// Reads a store through, and changes nothing in it.
    ///
    /// # Errors
    /// [`StoreError`] when the file is no store or its pages do not hang together.
    pub fn verify(path: &Path) -> Result<(), StoreError> {
        let wrong = |error: String| StoreError::Open {
            path: path.display().to_string(),
            error,
        };
        let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY)
            .map_err(|error| wrong(error.to_string()))?;
        let found: String = connection
            .query_row("PRAGMA quick_check", [], |row| row.get(0))
            .map_err(|error| wrong(error.to_string()))?;
        if found != "ok" {
            return Err(wrong(found));
        }
        let steps: i64 = connection
            .query_row("PRAGMA user_version", [], |row| row.get(0))
            .map_err(|error| wrong(error.to_string()))?;
        if !(1..=STEPS.len() as i64).contains(&steps) {
            return Err(wrong(format!(
                "its version is {steps}; this program knows versions up to {}",
                STEPS.len()
            )));
        }
        Ok(())
    }

    /// Copies a store, whoever works in it meanwhile, as it is at one moment. The copy stands under
    /// its name when it is whole, and not before.
    ///
    /// # Errors
    /// [`StoreError`] when the store cannot be read or the copy cannot be written.
    pub fn copy(from: &Path, to: &Path) -> Result<(), StoreError> {
        let wrong = |path: &Path, error: String| StoreError::Open {
            path: path.display().to_string(),
            error,
        };
        let half = to.with_extension("half");
        let source = Connection::open_with_flags(from, OpenFlags::SQLITE_OPEN_READ_WRITE)
            .map_err(|error| wrong(from, error.to_string()))?;
        source.busy_timeout(BUSY_TIMEOUT)?;
        // What a run before left half done.
        let _ = std::fs::remove_file(&half);
        let mut target =
            Connection::open(&half).map_err(|error| wrong(&half, error.to_string()))?;
        // All pages in one step: in between, a writer would have it start again and again.
        Backup::new(&source, &mut target)?.step(-1)?;
        target.close().map_err(|(_, error)| error)?;
        Self::verify(&half)?;
        let moved = std::fs::File::open(&half)
            .and_then(|file| file.sync_all())
            .and_then(|()| std::fs::rename(&half, to));
        moved.map_err(|error| wrong(to, error.to_string()))
    }

    /// Takes out the reminders that are due, the oldest first, each with its person. Each is handed
    /// out once: who takes it has to send it.
    ///
    /// # Errors
    /// [`StoreError::Sqlite`] when the file cannot be read or written; then none is taken.
    pub fn take_due(
        &mut self,
        whose: Whose<'_>,
        now: Timestamp,
    ) -> Result<Vec<DueReminder>, StoreError> {
        let transaction = self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let due = {
            let mut statement = transaction.prepare_cached(
                "SELECT person_id, COALESCE(wrote, language) AS language, due_at, kind, wait_min
                 FROM reminder JOIN person ON person.id = reminder.person_id
                 WHERE due_at <= ?1 AND (?2 IS NULL OR person_id = ?2) ORDER BY due_at",
            )?;
            let rows = statement.query_map(params![now.as_second(), whose.id()], |row| {
                Ok(DueReminder {
                    person: row.get("person_id")?,
                    language: row.get("language")?,
                    reminder: record::reminder(row)?,
                })
            })?;
            rows.collect::<Result<Vec<_>, _>>()?
        };
        transaction
            .prepare_cached(
                "DELETE FROM reminder WHERE due_at <= ?1 AND (?2 IS NULL OR person_id = ?2)",
            )?
            .execute(params![now.as_second(), whose.id()])?;
        transaction.commit()?;
        Ok(due)
    }

    /// Remembers the person, or forgets all that is kept of them.
    ///
    /// # Errors
    /// [`StoreError`] when it cannot be written; then nothing of it is.
    pub fn keep(
        &mut self,
        id: &str,
        person: Option<&Person>,
        now: Timestamp,
    ) -> Result<(), StoreError> {
        let transaction = self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        match person {
            None => {
                transaction.execute("DELETE FROM person WHERE id = ?1", [id])?;
            }
            Some(person) => {
                keep_person(&transaction, id, person, now)?;
                keep_bottles(&transaction, id, &person.bottles)?;
                keep_reminders(&transaction, id, &person.reminders)?;
            }
        }
        transaction.commit()?;
        if person.is_none() {
            // What was deleted still stands in the log until it is folded in and cut.
            self.connection
                .query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
        }
        Ok(())
    }
}

fn keep_person(
    transaction: &rusqlite::Transaction<'_>,
    id: &str,
    person: &Person,
    now: Timestamp,
) -> Result<(), StoreError> {
    transaction
        .prepare_cached(
            "INSERT INTO person (id, language, wrote, units, listening, talk, seen_at)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
             ON CONFLICT (id) DO UPDATE SET language = excluded.language,
                 wrote = excluded.wrote, units = excluded.units, listening = excluded.listening,
                 talk = excluded.talk, seen_at = excluded.seen_at",
        )?
        .execute(params![
            id,
            person.language,
            person.wrote,
            person.units.map(<&str>::from),
            <&str>::from(person.listening),
            record::talk(&person.talk)?,
            now.as_second(),
        ])?;
    Ok(())
}

fn keep_bottles(
    transaction: &rusqlite::Transaction<'_>,
    id: &str,
    bottles: &[Bottle],
) -> Result<(), StoreError> {
    transaction
        .prepare_cached("DELETE FROM bottle WHERE person_id = ?1")?
        .execute([id])?;
    let mut insert = transaction.prepare_cached(
        "INSERT INTO bottle (person_id, place, product, strength_percent, tablet_mg, opened,
                             told_at, left_over)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
    )?;
    for (place, bottle) in (0_i64..).zip(bottles) {
        insert.execute(params![
            id,
            place,
            bottle.product.map(<&str>::from),
            bottle.strength_percent,
            bottle.tablet_mg,
            bottle.opened.map(|date| date.to_string()),
            bottle.told_at.as_second(),
            bottle
                .left
                .as_ref()
                .map(serde_json::to_string)
                .transpose()?,
        ])?;
    }
    Ok(())
}

fn keep_reminders(
    transaction: &rusqlite::Transaction<'_>,
    id: &str,
    reminders: &[Reminder],
) -> Result<(), StoreError> {
    transaction
        .prepare_cached("DELETE FROM reminder WHERE person_id = ?1")?
        .execute([id])?;
    let mut insert = transaction.prepare_cached(
        "INSERT INTO reminder (person_id, place, due_at, kind, wait_min)
         VALUES (?1, ?2, ?3, ?4, ?5)",
    )?;
    for (place, reminder) in (0_i64..).zip(reminders) {
        insert.execute(params![
            id,
            place,
            reminder.due.as_second(),
            <&str>::from(reminder.kind),
            i64::try_from(reminder.wait_min).unwrap_or(i64::MAX),
        ])?;
    }
    Ok(())
}
