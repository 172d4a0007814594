//! Backups of the database.

use returnline_core::api::{self, ApiError, types::BackupLine};
use serde::Serialize;
use tauri::{AppHandle, State};

use super::Answer;
use super::files::{self, Saved};
use crate::{
    saving::Proposal,
    state::{Shell, Trouble},
};

/// Whether the database is sound and backed up.
#[derive(Debug, Clone, Default, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Soundness {
    /// Why the database cannot be opened. Nothing is kept until a backup is restored.
    pub closed: Option<ApiError>,
    /// Why the automatic backup failed.
    pub not_backed_up: Option<ApiError>,
    /// That the clock stands before the last entry.
    pub clock_behind: Option<ApiError>,
}

/// The automatic backups.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Keeping {
    /// The automatic backups, newest first.
    pub backups: Vec<BackupLine>,
    /// The folder they lie in.
    pub folder: String,
}

/// Tells whether the database is sound; asked at every start.
#[tauri::command(async)]
pub fn soundness(shell: State<'_, Shell>) -> Answer<Soundness> {
    let mut sound = Soundness {
        clock_behind: shell.engine().clock_behind()?,
        ..Soundness::default()
    };
    match shell.trouble() {
        None => {}
        Some(Trouble::Closed(error)) => sound.closed = Some(error),
        Some(Trouble::NotBackedUp(error)) => sound.not_backed_up = Some(error),
    }
    Ok(sound)
}

/// Tells which backups there are. Each is read from end to end, to say what it
/// holds and whether it is whole.
#[tauri::command(async)]
pub fn keeping(shell: State<'_, Shell>) -> Answer<Keeping> {
    let folder = shell.backups();
    Ok(Keeping {
        backups: api::backups(&folder, shell.wording()),
        folder: folder.display().to_string(),
    })
}

/// Asks where to save a backup of everything and writes it there.
#[tauri::command(async)]
pub fn save_backup(app: AppHandle, shell: State<'_, Shell>, title: &str) -> Answer<Saved> {
    let name = shell.engine().backup_name();
    let proposal = Proposal {
        title,
        name: &name,
        kind: "SQLite",
        extension: "db",
    };
    files::save_as(&app, &shell, &proposal, |path| shell.engine().back_up(path))
}

/// Restores the automatic backup with this number.
#[tauri::command(async)]
pub fn restore_backup(shell: State<'_, Shell>, number: u32) -> Answer<()> {
    let (folder, database) = (shell.backups(), shell.database());
    let wording = shell.wording();
    shell.with_database_closed(|| api::restore_kept(&folder, number, &database, wording))
}

/// Asks for a backup file and restores it; answers false when none was chosen.
#[tauri::command(async)]
pub fn restore_backup_file(app: AppHandle, shell: State<'_, Shell>, title: &str) -> Answer<bool> {
    let (database, wording) = (shell.database(), shell.wording());
    let restored = files::take(&app, &shell, title, ("SQLite", "db"), |path| {
        shell.with_database_closed(|| api::restore(path, &database, wording))
    });
    Ok(restored?.is_some())
}
