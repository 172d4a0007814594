//! Durable storage of records in SQLite.
//!
//! The path is passed in; so is the time. Every change is one transaction in a
//! write-ahead log with full synchronisation: when a call returns `Ok`, the
//! entry survives a kill of the process and a loss of power.

mod board;
mod error;
mod exchange;
mod follow_ups;
mod row;
mod sites;
mod visits;

pub use board::BoardFacts;
pub use error::StoreError;
pub use exchange::{Conflict, Exported, Imported, Side};
pub use follow_ups::EarlierFix;
pub use visits::{VisitRecord, VisitSummary};

use chrono::{DateTime, Utc};
use rusqlite::Connection;
use rusqlite_migration::{M, Migrations};
use std::path::Path;
use std::time::Duration;

/// Shipped migrations, in order. A shipped file is never edited: a change of
/// the schema is one more file.
const MIGRATIONS: &[&str] = &[
    include_str!("../../data/schema/0001_records.sql"),
    include_str!("../../data/schema/0004_fleet.sql"),
];

/// How long a call waits for another process that holds the database.
const BUSY_WAIT: Duration = Duration::from_secs(5);

/// An open database.
pub struct Store {
    connection: Connection,
}

impl Store {
    /// Opens the database, creating or migrating it as needed.
    ///
    /// # Errors
    /// [`StoreError`]; a database written by a newer program is refused and left
    /// as it is.
    pub fn open(path: &Path) -> Result<Self, StoreError> {
        let connection = Connection::open(path).map_err(|error| StoreError::CannotOpen {
            path: path.to_owned(),
            source: error,
        })?;
        Self::prepare(connection)
    }

    /// A database that lives in memory only, for one-off use.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn in_memory() -> Result<Self, StoreError> {
        Self::prepare(Connection::open_in_memory()?)
    }

    fn prepare(mut connection: Connection) -> Result<Self, StoreError> {
        connection.busy_timeout(BUSY_WAIT)?;
        let migrations = Migrations::new(MIGRATIONS.iter().map(|sql| M::up(sql)).collect());
        // A newer database must not be touched, not even its journal mode.
        let version: i64 = connection.pragma_query_value(None, "user_version", |row| row.get(0))?;
        let newest = i64::try_from(MIGRATIONS.len()).unwrap_or(i64::MAX);
        if version > newest {
            return Err(StoreError::NewerDatabase {
                found: version,
                newest,
            });
        }
        connection.pragma_update(None, "journal_mode", "WAL")?;
        connection.pragma_update(None, "synchronous", "FULL")?;
        connection.pragma_update(None, "foreign_keys", true)?;
        migrations.to_latest(&mut connection)?;
        Ok(Self { connection })
    }
}

/// Times are stored in UTC to the millisecond, so that they sort as text.
fn stamp(now: DateTime<Utc>) -> String {
    now.to_rfc3339_opts(chrono::SecondsFormat::Millis, true)
}

#[cfg(test)]
mod tests;
