//! What the shell keeps while it runs.

use std::{env, fs, path::PathBuf};

use tauri::{AppHandle, Manager, Runtime};

/// Names the folder to keep data in, instead of the one the system proposes.
const DATA_FOLDER: &str = "RETURNLINE_DATA";

/// The open data folder.
pub struct Shell {
    /// Folder that holds the database.
    pub data: PathBuf,
}

impl Shell {
    /// Finds or makes the data folder.
    pub fn open<R: Runtime>(app: &AppHandle<R>) -> Result<Self, Box<dyn std::error::Error>> {
        let data = match env::var_os(DATA_FOLDER) {
            Some(folder) if !folder.is_empty() => PathBuf::from(folder),
            _ => app.path().app_data_dir()?,
        };
        fs::create_dir_all(&data)?;
        Ok(Self { data })
    }
}
