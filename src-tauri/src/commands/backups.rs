//! Backups of the database.

use returnline_core::api::{self, ApiError, types::BackupLine};
use serde::Serialize;
use tauri::{AppHandle, State};

use super::Answer;
use super::report::Saved;
use crate::{
    saving::{self, Place, Proposal},
    state::{Shell, Trouble},
};

/// Whether the database is sound and backed up.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Keeping {
    /// Why the database cannot be opened. Nothing is kept until a backup is restored.
    pub closed: Option<ApiError>,
    /// Why the automatic backup failed.
    pub not_backed_up: Option<ApiError>,
    /// The automatic backups, newest first.
    pub backups: Vec<BackupLine>,
    /// The folder they lie in.
    pub folder: String,
}

/// Tells whether the database is sound, and which backups there are.
#[tauri::command(async)]
pub fn keeping(shell: State<'_, Shell>) -> Answer<Keeping> {
    let (closed, not_backed_up) = match shell.trouble() {
        None => (None, None),
        Some(Trouble::Closed(error)) => (Some(error), None),
        Some(Trouble::NotBackedUp(error)) => (None, Some(error)),
    };
    let folder = shell.backups();
    Ok(Keeping {
        closed,
        not_backed_up,
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
    match saving::ask(&app, &proposal) {
        None => Ok(Saved::default()),
        Some(Place::Path(path)) => {
            shell.engine().back_up(&path)?;
            Ok(Saved {
                place: Some(path.display().to_string()),
                can_open: false,
            })
        }
        Some(Place::Address(address)) => {
            let draft = shell.data.join(&name);
            shell.engine().back_up(&draft)?;
            let filled = std::fs::read(&draft)
                .and_then(|bytes| saving::fill(&app, address, &bytes))
                .map_err(|error| not_written(&shell, &error));
            // The copy in the app's own folder was only on its way.
            let _ = std::fs::remove_file(&draft);
            filled.map(|()| Saved {
                place: Some(name),
                can_open: false,
            })
        }
    }
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
    let wording = shell.wording();
    let draft = shell.data.join("chosen-backup.db");
    let taken = saving::take(&app, title, "SQLite", "db", &draft)
        .map_err(|error| not_written(&shell, &error))?;
    if !taken {
        return Ok(false);
    }
    let database = shell.database();
    let restored = shell.with_database_closed(|| api::restore(&draft, &database, wording));
    let _ = std::fs::remove_file(&draft);
    restored.map(|()| true)
}

fn not_written(shell: &Shell, error: &std::io::Error) -> ApiError {
    let detail = error.to_string();
    ApiError::new("store-file", &[("detail", &detail)], shell.wording())
}
