//! What the shell keeps while it runs.

use std::{
    env, fs,
    path::PathBuf,
    sync::{Mutex, MutexGuard, PoisonError},
};

use returnline_core::api::{ApiError, Engine, ThisMachine, Wording};
use tauri::{AppHandle, Manager, Runtime};

/// Names the folder to keep data in, instead of the one the system proposes.
const DATA_FOLDER: &str = "RETURNLINE_DATA";

/// The database inside the data folder.
const DATABASE: &str = "returnline.db";

/// The folder of automatic backups inside the data folder.
const BACKUPS: &str = "backups";

/// The open engine and where its data lies.
pub struct Shell {
    /// Folder that holds the database.
    pub data: PathBuf,
    engine: Mutex<Engine>,
    trouble: Mutex<Option<Trouble>>,
    saved: Mutex<Option<PathBuf>>,
}

/// Why the app does not stand on a sound database and a fresh backup.
#[derive(Clone)]
pub enum Trouble {
    /// The database cannot be opened: the engine keeps nothing.
    Closed(ApiError),
    /// The database is open, and its automatic backup failed.
    NotBackedUp(ApiError),
}

impl Shell {
    /// Finds or makes the data folder and opens the engine on it. A database
    /// that cannot be opened is told in the window, where a backup can be restored.
    pub fn open<R: Runtime>(app: &AppHandle<R>) -> Result<Self, Box<dyn std::error::Error>> {
        let data = match env::var_os(DATA_FOLDER) {
            Some(folder) if !folder.is_empty() => PathBuf::from(folder),
            _ => app.path().app_data_dir()?,
        };
        fs::create_dir_all(&data)?;
        let shell = Self {
            engine: Mutex::new(Engine::while_closed(
                &data.join(DATABASE),
                Box::new(ThisMachine),
            )?),
            data,
            trouble: Mutex::default(),
            saved: Mutex::default(),
        };
        shell.open_database();
        Ok(shell)
    }

    fn open_database(&self) {
        let (database, backups) = (self.database(), self.backups());
        let trouble = match Engine::open_kept(&database, backups, Box::new(ThisMachine)) {
            Ok((engine, failed)) => {
                *self.engine() = engine;
                failed.map(Trouble::NotBackedUp)
            }
            Err(error) => Some(Trouble::Closed(error)),
        };
        *self.trouble.lock().unwrap_or_else(PoisonError::into_inner) = trouble;
    }

    /// Closes the database, lets `change` work on the closed file, and opens it again.
    pub fn with_database_closed(
        &self,
        change: impl FnOnce() -> Result<(), ApiError>,
    ) -> Result<(), ApiError> {
        *self.engine() = Engine::while_closed(&self.database(), Box::new(ThisMachine))?;
        let changed = change();
        self.open_database();
        changed
    }

    /// The database file.
    pub fn database(&self) -> PathBuf {
        self.data.join(DATABASE)
    }

    /// The folder of automatic backups.
    pub fn backups(&self) -> PathBuf {
        self.data.join(BACKUPS)
    }

    /// What is wrong with the database or its backups.
    pub fn trouble(&self) -> Option<Trouble> {
        self.trouble
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }

    /// The engine, one command at a time.
    pub fn engine(&self) -> MutexGuard<'_, Engine> {
        // Every change is a transaction, so a command that died on the way
        // left the engine as it was before.
        self.engine.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How the interface's texts are worded.
    pub fn wording(&self) -> Wording {
        self.engine().wording()
    }

    /// Keeps in mind where a report was saved, to show it when asked.
    pub fn remember_saved(&self, path: PathBuf) {
        *self.saved.lock().unwrap_or_else(PoisonError::into_inner) = Some(path);
    }

    /// Where the last report was saved.
    pub fn last_saved(&self) -> Option<PathBuf> {
        self.saved
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }
}
