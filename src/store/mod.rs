//! What is remembered, in SQLite.
//!
//! In: a person to keep or to forget.
//! Out: the person as kept.
//! Promises one transaction a message, that a committed step survives a power cut
//! (`synchronous = FULL`), and that forgetting overwrites the bytes (`secure_delete`).
//! Knows no parsing, no dosing and no wording.

mod record;

use std::path::Path;
use std::time::Duration;

use jiff::Timestamp;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior, params};
use rusqlite_migration::{M, Migrations};

use crate::dialogue::{Bottle, Person};

/// Numbered steps, never changed once released; a new column is a new step.
const STEPS: &[M<'static>] = &[M::up(include_str!("migrations/0001_person.sql"))];

/// Another process may hold the file for a moment.
const BUSY_TIMEOUT: Duration = Duration::from_secs(5);

/// The store.
#[derive(Debug)]
pub struct Store {
    connection: Connection,
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
            "SELECT language, units, listening, talk, product, strength_percent, tablet_mg, opened,
                    told_at
             FROM person LEFT JOIN bottle ON bottle.person_id = person.id
             WHERE person.id = ?1",
        )?;
        let person = statement.query_row([id], record::person).optional()?;
        Ok(person.unwrap_or_default())
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
                transaction
                    .prepare_cached(
                        "INSERT INTO person (id, language, units, listening, talk, seen_at)
                         VALUES (?1, ?2, ?3, ?4, ?5, ?6)
                         ON CONFLICT (id) DO UPDATE SET language = excluded.language,
                             units = excluded.units, listening = excluded.listening,
                             talk = excluded.talk, seen_at = excluded.seen_at",
                    )?
                    .execute(params![
                        id,
                        person.language,
                        person.units.map(<&str>::from),
                        <&str>::from(person.listening),
                        record::talk(&person.talk)?,
                        now.as_second(),
                    ])?;
                keep_bottle(&transaction, id, person.bottle.as_ref())?;
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

fn keep_bottle(
    transaction: &rusqlite::Transaction<'_>,
    id: &str,
    bottle: Option<&Bottle>,
) -> Result<(), StoreError> {
    match bottle {
        None => {
            transaction.execute("DELETE FROM bottle WHERE person_id = ?1", [id])?;
        }
        Some(bottle) => {
            transaction
                .prepare_cached(
                    "INSERT INTO bottle
                         (person_id, product, strength_percent, tablet_mg, opened, told_at)
                     VALUES (?1, ?2, ?3, ?4, ?5, ?6)
                     ON CONFLICT (person_id) DO UPDATE SET product = excluded.product,
                         strength_percent = excluded.strength_percent,
                         tablet_mg = excluded.tablet_mg, opened = excluded.opened,
                         told_at = excluded.told_at",
                )?
                .execute(params![
                    id,
                    bottle.product.map(<&str>::from),
                    bottle.strength_percent,
                    bottle.tablet_mg,
                    bottle.opened.map(|date| date.to_string()),
                    bottle.told_at.as_second(),
                ])?;
        }
    }
    Ok(())
}
