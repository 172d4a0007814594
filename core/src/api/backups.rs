//! Backups: kept by themselves, written where asked, and restored.

use super::settings::{settings_beside, wording_of};
use super::types::BackupLine;
use super::{ApiError, Engine, Surroundings, Wording};
use crate::store::Store;
use crate::store::backup::{self, Backup, Backups};
use chrono::{DateTime, TimeDelta, Utc};
use std::path::{Path, PathBuf};

/// Clocks that are set right by hand or by a network step back by less than this.
const CLOCK_PLAY: TimeDelta = TimeDelta::hours(2);

impl Engine {
    /// Opens the store at a path and, if one is due, makes an automatic backup
    /// in `backups`. Work goes on if that fails: the failure is returned beside
    /// the engine, to be told.
    ///
    /// # Errors
    /// [`ApiError`] if the database cannot be opened; see [`restore`].
    pub fn open_kept(
        path: &Path,
        backups: PathBuf,
        surroundings: Box<dyn Surroundings>,
    ) -> Result<(Self, Option<ApiError>), ApiError> {
        let now = surroundings.now();
        let engine = Self::open(path, surroundings)?;
        let kept = Backups::in_folder(backups).keep(&engine.store, now);
        let failed = kept.err().map(|error| engine.failed(&error));
        Ok((engine, failed))
    }

    /// An engine that keeps nothing, for the time that no database can be opened.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn without_database(surroundings: Box<dyn Surroundings>) -> Result<Self, ApiError> {
        let wording = Wording::default();
        let store = Store::in_memory().map_err(|error| ApiError::store(&error, wording))?;
        Self::over(store, surroundings)
    }

    /// The same, speaking as the database at `path` last did.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn while_closed(
        path: &Path,
        surroundings: Box<dyn Surroundings>,
    ) -> Result<Self, ApiError> {
        let mut engine = Self::without_database(surroundings)?;
        engine.settings = settings_beside(path);
        engine.wording = wording_of(&engine.settings);
        Ok(engine)
    }

    /// Whether the clock stands before the last entry, so that dates, timers and
    /// reports would be wrong. Nothing rests on the clock that is kept.
    ///
    /// # Errors
    /// [`ApiError`] if the database cannot be read.
    pub fn clock_behind(&self) -> Result<Option<ApiError>, ApiError> {
        let content = self.store.content().map_err(|error| self.failed(&error))?;
        let last = content.last_change.and_then(|text| text.parse().ok());
        let now = self.surroundings.now();
        Ok(last
            .filter(|last: &DateTime<Utc>| *last > now + CLOCK_PLAY)
            .map(|last| {
                let say = |moment: DateTime<Utc>| moment.format("%Y-%m-%d %H:%M UTC").to_string();
                let context = [("now", &*say(now)), ("last", &say(last))];
                ApiError::new("clock-behind", &context, self.wording)
            }))
    }

    /// Writes a backup of everything to a file, whole or not at all.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn back_up(&self, path: &Path) -> Result<(), ApiError> {
        backup::write(&self.store, path).map_err(|error| self.failed(&error))
    }

    /// A name for a backup that a person can file.
    pub fn backup_name(&self) -> String {
        format!("returnline-{}.db", self.surroundings.today())
    }
}

/// The automatic backups in a folder, newest first.
pub fn backups(folder: &Path, wording: Wording) -> Vec<BackupLine> {
    let found = Backups::in_folder(folder.to_owned()).list();
    found.iter().map(|backup| line(backup, wording)).collect()
}

fn line(backup: &Backup, wording: Wording) -> BackupLine {
    let content = backup::verify(&backup.path);
    BackupLine {
        number: backup.number,
        made: backup
            .made_at
            .map(|made| made.format("%Y-%m-%d %H:%M UTC").to_string()),
        visits: content
            .as_ref()
            .map(|content| usize::try_from(content.visits).unwrap_or(usize::MAX))
            .ok(),
        trouble: content
            .err()
            .map(|error| ApiError::store(&error, wording).message),
    }
}

/// Puts the automatic backup with this number in the place of the database. No
/// engine may have the database open. What stood there is kept beside it.
///
/// # Errors
/// [`ApiError`]; the database is as before.
pub fn restore_kept(
    folder: &Path,
    number: u32,
    database: &Path,
    wording: Wording,
) -> Result<(), ApiError> {
    let found = Backups::in_folder(folder.to_owned()).list();
    let Some(backup) = found.iter().find(|backup| backup.number == number) else {
        let number = number.to_string();
        return Err(ApiError::new(
            "no-such-backup",
            &[("number", &number)],
            wording,
        ));
    };
    restore(&backup.path, database, wording)
}

/// Puts a backup file in the place of the database. No engine may have the
/// database open. What stood there is kept beside it.
///
/// # Errors
/// [`ApiError`]; the database is as before.
pub fn restore(from: &Path, database: &Path, wording: Wording) -> Result<(), ApiError> {
    backup::restore(from, database)
        .map(|_| ())
        .map_err(|error| ApiError::store(&error, wording))
}
