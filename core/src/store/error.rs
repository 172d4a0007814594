//! What can go wrong with the store.

use crate::exchange::ExchangeError;
use crate::records::attachment::limits;
use std::io::ErrorKind;
use std::path::PathBuf;
use thiserror::Error;

/// A failure of the store.
#[derive(Debug, Error)]
pub enum StoreError {
    /// The file cannot be opened or created.
    #[error("cannot open the database {}: {source}", path.display())]
    CannotOpen {
        /// The file.
        path: PathBuf,
        /// Why.
        source: rusqlite::Error,
    },
    /// Written by a newer program.
    #[error("the database is of version {found}; this program knows versions up to {newest}")]
    NewerDatabase {
        /// Version found.
        found: i64,
        /// Newest version known.
        newest: i64,
    },
    /// Migrating failed; the database is as before.
    #[error("the database could not be brought to the current version: {0}")]
    Migration(#[from] rusqlite_migration::Error),
    /// No record of this kind has this identifier.
    #[error("there is no {kind} with the identifier {id}")]
    NotFound {
        /// Kind of record.
        kind: &'static str,
        /// Identifier asked for.
        id: String,
    },
    /// A stored value is not what was written.
    #[error("the {kind} {id} is damaged: {detail}")]
    Damaged {
        /// Kind of record.
        kind: &'static str,
        /// Its identifier.
        id: String,
        /// What is wrong.
        detail: String,
    },
    /// An exchange file cannot be written or taken.
    #[error(transparent)]
    Exchange(#[from] ExchangeError),
    /// The visit has as many photos as it may.
    #[error("a visit has at most {} photos", limits::PHOTOS)]
    TooManyPhotos,
    /// A file beside the database could not be read or written.
    #[error("{}: {source}", path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// SQLite failed.
    #[error("the database failed: {0}")]
    Sqlite(#[from] rusqlite::Error),
}

impl StoreError {
    pub(super) fn file(path: &std::path::Path, source: std::io::Error) -> Self {
        Self::File {
            path: path.to_owned(),
            source,
        }
    }

    /// Stable code, the key of its message.
    pub fn code(&self) -> &'static str {
        use rusqlite::ErrorCode as E;
        match self {
            Self::CannotOpen { .. } => "store-cannot-open",
            Self::NewerDatabase { .. } => "store-newer",
            Self::Migration(_) => "store-migration",
            Self::NotFound { .. } => "not-found",
            Self::Damaged { .. } => "store-damaged",
            Self::Exchange(error) => error.code(),
            Self::TooManyPhotos => "too-many-photos",
            Self::File { source, .. } => match source.kind() {
                ErrorKind::StorageFull | ErrorKind::QuotaExceeded => "store-disk-full",
                ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => "store-read-only",
                _ => "store-file",
            },
            Self::Sqlite(error) => match error.sqlite_error_code() {
                Some(E::DiskFull) => "store-disk-full",
                Some(E::ReadOnly | E::PermissionDenied) => "store-read-only",
                Some(E::DatabaseBusy | E::DatabaseLocked) => "store-busy",
                Some(E::DatabaseCorrupt | E::NotADatabase) => "store-damaged",
                Some(E::CannotOpen) => "store-cannot-open",
                _ => "store-failed",
            },
        }
    }

    /// What its message is filled with. `detail` is what the system or the
    /// database said, in its own words; a message stands without it.
    pub fn context(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::NewerDatabase { found, newest } => {
                vec![("found", found.to_string()), ("newest", newest.to_string())]
            }
            Self::NotFound { kind, id } => vec![("kind", (*kind).to_owned()), ("id", id.clone())],
            Self::Exchange(error) => error.context(),
            Self::TooManyPhotos => vec![("most", limits::PHOTOS.to_string())],
            Self::Sqlite(error) => vec![("detail", error.to_string())],
            Self::CannotOpen { .. }
            | Self::Migration(_)
            | Self::Damaged { .. }
            | Self::File { .. } => {
                vec![("detail", self.to_string())]
            }
        }
    }
}
