//! Durable storage of records in SQLite.
//!
//! The path is passed in; so is the time. Every change is one transaction in a
//! write-ahead log with full synchronisation: when a call returns `Ok`, the
//! entry survives a kill of the process and a loss of power.

mod attachments;
pub mod backup;
mod board;
mod demo;
mod drafts;
mod error;
mod exchange;
mod follow_ups;
mod learning;
mod row;
mod settings;
mod signed;
mod sites;
mod visits;

pub use board::BoardFacts;
pub use demo::Demo;
pub use drafts::Drafted;
pub use error::StoreError;
pub use exchange::{Conflict, Exported, Imported, Side};
pub use follow_ups::EarlierFix;
pub use learning::Confirmed;
pub use sites::SiteVisited;
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
    include_str!("../../data/schema/0002_attachments.sql"),
    include_str!("../../data/schema/0003_settings.sql"),
    include_str!("../../data/schema/0004_learning.sql"),
    include_str!("../../data/schema/0005_fleet.sql"),
    include_str!("../../data/schema/0006_demo.sql"),
    include_str!("../../data/schema/0007_drafts.sql"),
    include_str!("../../data/schema/0008_signed.sql"),
    include_str!("../../data/schema/0009_setting_drafts.sql"),
];

/// How long a call waits for another process that holds the database.
const BUSY_WAIT: Duration = Duration::from_secs(5);

/// Up to this size in bytes the whole database is checked when it is opened; a
/// larger one is checked by its backups, so that opening stays quick.
const CHECKED_SIZE: u64 = 32 * 1024 * 1024;

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
        backup::finish_restore(path)?;
        let size = std::fs::metadata(path).map_or(0, |metadata| metadata.len());
        let connection = Connection::open(path).map_err(|error| StoreError::CannotOpen {
            path: path.to_owned(),
            source: error,
        })?;
        connection.busy_timeout(BUSY_WAIT)?;
        let version = known_version(&connection)?;
        if size > 0 && size <= CHECKED_SIZE {
            check_whole(&connection, path)?;
        }
        let store = Self { connection };
        if version > 0 && version < newest_version() {
            // The way back, should the new schema prove wrong.
            backup::write(&store, &backup::beside(path, &format!(".schema-{version}")))?;
        }
        store.prepare()
    }

    /// A database that lives in memory only, for one-off use.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn in_memory() -> Result<Self, StoreError> {
        let connection = Connection::open_in_memory()?;
        Self { connection }.prepare()
    }

    /// What the database holds, in short.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn content(&self) -> Result<backup::Content, StoreError> {
        Ok(backup::content(&self.connection)?)
    }

    fn prepare(mut self) -> Result<Self, StoreError> {
        let migrations = Migrations::new(MIGRATIONS.iter().map(|sql| M::up(sql)).collect());
        let connection = &mut self.connection;
        connection.pragma_update(None, "journal_mode", "WAL")?;
        connection.pragma_update(None, "synchronous", "FULL")?;
        connection.pragma_update(None, "foreign_keys", true)?;
        migrations.to_latest(connection)?;
        Ok(self)
    }
}

/// Version of the schema that this program writes.
fn newest_version() -> i64 {
    i64::try_from(MIGRATIONS.len()).unwrap_or(i64::MAX)
}

/// The schema's version. A newer database must not be touched, not even its
/// journal mode.
fn known_version(connection: &Connection) -> Result<i64, StoreError> {
    let found: i64 = connection.pragma_query_value(None, "user_version", |row| row.get(0))?;
    let newest = newest_version();
    if found > newest {
        return Err(StoreError::NewerDatabase { found, newest });
    }
    Ok(found)
}

/// Finds a damaged page before work goes into it.
fn check_whole(connection: &Connection, path: &Path) -> Result<(), StoreError> {
    let found: String = connection.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
    if found == "ok" {
        return Ok(());
    }
    Err(StoreError::Damaged {
        kind: "database",
        id: path.display().to_string(),
        detail: found,
    })
}

/// Times are stored in UTC to the millisecond, so that they sort as text.
fn stamp(now: DateTime<Utc>) -> String {
    now.to_rfc3339_opts(chrono::SecondsFormat::Millis, true)
}

#[cfg(test)]
mod tests;
