//! What the shell keeps while it runs.

use std::{
    env, fs,
    path::PathBuf,
    sync::{Mutex, MutexGuard, PoisonError},
};

use returnline_core::api::{Engine, ThisMachine};
use tauri::{AppHandle, Manager, Runtime};

/// Names the folder to keep data in, instead of the one the system proposes.
const DATA_FOLDER: &str = "RETURNLINE_DATA";

/// The database inside the data folder.
const DATABASE: &str = "returnline.db";

/// The open engine and where its data lies.
pub struct Shell {
    /// Folder that holds the database.
    pub data: PathBuf,
    engine: Mutex<Engine>,
    saved: Mutex<Option<PathBuf>>,
}

impl Shell {
    /// Finds or makes the data folder and opens the engine on it.
    pub fn open<R: Runtime>(app: &AppHandle<R>) -> Result<Self, Box<dyn std::error::Error>> {
        let data = match env::var_os(DATA_FOLDER) {
            Some(folder) if !folder.is_empty() => PathBuf::from(folder),
            _ => app.path().app_data_dir()?,
        };
        fs::create_dir_all(&data)?;
        let engine = Engine::open(&data.join(DATABASE), Box::new(ThisMachine))?;
        Ok(Self {
            data,
            engine: Mutex::new(engine),
            saved: Mutex::default(),
        })
    }

    /// The engine, one command at a time.
    pub fn engine(&self) -> MutexGuard<'_, Engine> {
        // Every change is a transaction, so a command that died on the way
        // left the engine as it was before.
        self.engine.lock().unwrap_or_else(PoisonError::into_inner)
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
