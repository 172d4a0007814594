//! Verified copies of the database, and the way back from one.
//!
//! A copy is written beside its final name, read back and checked, forced to
//! the disk and only then given its name: a backup that is there is whole.

use super::{Store, StoreError, newest_version};
use chrono::{DateTime, TimeDelta, Utc};
use rusqlite::{Connection, OpenFlags};
use std::fs::{self, File};
use std::path::{Path, PathBuf};

/// Automatic copies that are kept; the oldest go first.
pub const KEPT: usize = 7;

/// An automatic copy is made when the newest is older than this.
const EVERY: TimeDelta = TimeDelta::hours(20);

/// Tail of the name of a copy that is still being written.
const PART: &str = ".part";

/// Tail of the name of a copy that is about to take the database's place.
const RESTORING: &str = ".restoring";

/// A copy of the database.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Backup {
    /// The file.
    pub path: PathBuf,
    /// Running number; a later copy has a higher one, whatever the clock said.
    pub number: u32,
    /// When it was made, by the clock of that day; `None` if its name was changed.
    pub made_at: Option<DateTime<Utc>>,
    /// Size in bytes.
    pub bytes: u64,
}

/// Tails of the files that SQLite keeps beside a database.
const LOGS: [&str; 2] = ["-wal", "-shm"];

/// What a database holds, to tell two apart and to show before restoring.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Content {
    /// Number of visits.
    pub visits: u64,
    /// The latest change of a visit, as stored.
    pub last_change: Option<String>,
}

/// The folder of automatic copies.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Backups {
    folder: PathBuf,
}

impl Backups {
    /// The copies in a folder, which need not exist yet.
    pub fn in_folder(folder: PathBuf) -> Self {
        Self { folder }
    }

    /// The copies that are there, newest first.
    pub fn list(&self) -> Vec<Backup> {
        let entries = fs::read_dir(&self.folder).into_iter().flatten().flatten();
        let mut found: Vec<Backup> = entries
            .filter_map(|entry| {
                let path = entry.path();
                let stem = path.file_name()?.to_str()?.strip_suffix(".db")?;
                let (number, made) = stem.split_once('-')?;
                Some(Backup {
                    number: number.parse().ok()?,
                    made_at: made_at(made),
                    bytes: entry.metadata().ok()?.len(),
                    path,
                })
            })
            .collect();
        found.sort_by_key(|backup| std::cmp::Reverse(backup.number));
        found
    }

    /// Makes a copy if one is due: the newest is old (or from a clock that was
    /// ahead) and the database has changed since.
    ///
    /// # Errors
    /// [`StoreError`]; the database and the earlier copies are as before.
    pub fn keep(&self, store: &Store, now: DateTime<Utc>) -> Result<Option<Backup>, StoreError> {
        let content = store.content()?;
        if content.visits == 0 {
            return Ok(None);
        }
        if let Some(newest) = self.list().first() {
            let fresh = newest
                .made_at
                .is_some_and(|made| made <= now && now - made < EVERY);
            let same = || verify(&newest.path).is_ok_and(|found| found == content);
            if fresh || same() {
                return Ok(None);
            }
        }
        self.add(store, now).map(Some)
    }

    /// Makes a copy now and drops the oldest beyond [`KEPT`].
    ///
    /// # Errors
    /// [`StoreError`]; the database and the earlier copies are as before.
    pub fn add(&self, store: &Store, now: DateTime<Utc>) -> Result<Backup, StoreError> {
        fs::create_dir_all(&self.folder).map_err(|error| StoreError::file(&self.folder, error))?;
        let number = self.list().first().map_or(1, |last| last.number + 1);
        let name = format!("{number:06}-{}.db", now.format(STAMP));
        let path = self.folder.join(name);
        write(store, &path)?;
        let bytes = fs::metadata(&path).map_or(0, |metadata| metadata.len());
        for old in self.list().into_iter().skip(KEPT) {
            // One copy too many is no failure of the one just made.
            let _ = fs::remove_file(old.path);
        }
        Ok(Backup {
            path,
            number,
            made_at: Some(now),
            bytes,
        })
    }
}

const STAMP: &str = "%Y%m%dT%H%M%SZ";

fn made_at(stamp: &str) -> Option<DateTime<Utc>> {
    let time = chrono::NaiveDateTime::parse_from_str(stamp, STAMP).ok()?;
    Some(time.and_utc())
}

/// Writes a checked copy of the database to `path`, whole or not at all; an
/// existing file is replaced.
///
/// # Errors
/// [`StoreError`]; what stood at `path` is as before.
pub fn write(store: &Store, path: &Path) -> Result<(), StoreError> {
    let part = beside(path, PART);
    let written = copy_checked(store, &part).and_then(|()| {
        fs::rename(&part, path).map_err(|error| StoreError::file(path, error))?;
        sync_folder(path);
        Ok(())
    });
    if written.is_err() {
        let _ = fs::remove_file(&part);
    }
    written
}

fn copy_checked(store: &Store, part: &Path) -> Result<(), StoreError> {
    // Left by a process that died while writing.
    let _ = fs::remove_file(part);
    let name = part
        .to_str()
        .ok_or_else(|| StoreError::file(part, std::io::ErrorKind::InvalidFilename.into()))?;
    store.connection.execute("VACUUM INTO ?1", [name])?;
    let copied = verify(part)?;
    let content = store.content()?;
    if copied != content {
        return Err(StoreError::Damaged {
            kind: "backup",
            id: name.to_owned(),
            detail: "it does not hold what the database holds".to_owned(),
        });
    }
    File::open(part)
        .and_then(|file| file.sync_all())
        .map_err(|error| StoreError::file(part, error))
}

/// Reads a database file from end to end and tells what it holds. The file is
/// not changed.
///
/// # Errors
/// [`StoreError::Damaged`] if it is not whole, [`StoreError::NewerDatabase`]
/// if a newer program wrote it.
pub fn verify(path: &Path) -> Result<Content, StoreError> {
    let damaged = |detail: String| StoreError::Damaged {
        kind: "backup",
        id: path.display().to_string(),
        detail,
    };
    // SQLite knows no constraints of a file that it opens for reading alone.
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection =
        Connection::open_with_flags(path, flags).map_err(|source| StoreError::CannotOpen {
            path: path.to_owned(),
            source,
        })?;
    connection.pragma_update(None, "query_only", true)?;
    let found: String = connection.query_row("PRAGMA integrity_check(1)", [], |row| row.get(0))?;
    if found != "ok" {
        return Err(damaged(found));
    }
    // A file cut within its last page passes the check if what is missing was zero.
    let pages: u64 = connection.query_row(
        "SELECT page_count * page_size FROM pragma_page_count(), pragma_page_size()",
        [],
        |row| row.get::<_, i64>(0).map(i64::unsigned_abs),
    )?;
    let bytes = fs::metadata(path).map_err(|error| StoreError::file(path, error))?;
    if bytes.len() < pages {
        return Err(damaged(format!("{} of {pages} bytes", bytes.len())));
    }
    let version: i64 = connection.pragma_query_value(None, "user_version", |row| row.get(0))?;
    let newest = newest_version();
    if version > newest {
        return Err(StoreError::NewerDatabase {
            found: version,
            newest,
        });
    }
    content(&connection).map_err(|error| damaged(error.to_string()))
}

pub(super) fn content(connection: &Connection) -> Result<Content, rusqlite::Error> {
    connection.query_row("SELECT count(*), max(changed_at) FROM visit", [], |row| {
        let visits: i64 = row.get(0)?;
        Ok(Content {
            visits: u64::try_from(visits).unwrap_or(0),
            last_change: row.get(1)?,
        })
    })
}

/// Puts a copy in the place of the database at `path`. What stood there is kept
/// beside it, with a name ending in `.aside-<n>`, and that name is returned.
///
/// The database must not be open. A process that dies on the way leaves either
/// the old database or the new one; [`finish_restore`] completes the step.
///
/// # Errors
/// [`StoreError`] if the copy is not whole or cannot be written; the database is
/// as before.
pub fn restore(from: &Path, path: &Path) -> Result<Option<PathBuf>, StoreError> {
    verify(from)?;
    let ready = beside(path, RESTORING);
    let part = beside(path, PART);
    let failed = |error| StoreError::file(path, error);
    fs::copy(from, &part)
        .and_then(|_| File::open(&part)?.sync_all())
        .map_err(failed)?;
    verify(&part)?;
    fs::rename(&part, &ready).map_err(failed)?;
    sync_folder(path);
    let aside = path.exists().then(|| free_aside(path));
    if let Some(aside) = &aside {
        fs::rename(path, aside).map_err(failed)?;
        // Its log belongs to it, and would be played into the new database.
        for tail in LOGS {
            let log = beside(path, tail);
            if log.exists() {
                fs::rename(&log, beside(aside, tail)).map_err(failed)?;
            }
        }
    }
    finish_restore(path)?;
    Ok(aside)
}

/// Completes a [`restore`] that was cut short; does nothing otherwise.
///
/// # Errors
/// [`StoreError`].
pub fn finish_restore(path: &Path) -> Result<(), StoreError> {
    let ready = beside(path, RESTORING);
    if !ready.exists() {
        return Ok(());
    }
    let failed = |error| StoreError::file(path, error);
    if path.exists() {
        // Cut short before the old database was put aside: it stays.
        return fs::remove_file(&ready).map_err(failed);
    }
    for tail in LOGS {
        let log = beside(path, tail);
        if log.exists() {
            fs::rename(&log, beside(&free_aside(path), tail)).map_err(failed)?;
        }
    }
    fs::rename(&ready, path).map_err(failed)?;
    sync_folder(path);
    Ok(())
}

/// `path` with something added to its name.
pub(super) fn beside(path: &Path, tail: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(tail);
    PathBuf::from(name)
}

fn free_aside(path: &Path) -> PathBuf {
    (1..=u32::MAX)
        .map(|number| beside(path, &format!(".aside-{number}")))
        .find(|aside| !aside.exists())
        .unwrap_or_else(|| beside(path, ".aside"))
}

/// Makes a rename last through a loss of power, where folders can be synced.
fn sync_folder(path: &Path) {
    if let Some(folder) = path.parent()
        && let Ok(folder) = File::open(folder)
    {
        let _ = folder.sync_all();
    }
}

#[cfg(test)]
mod tests;
