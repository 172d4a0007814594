//! What this installation is.

use super::Answer;
use serde::Serialize;
use tauri::State;

use crate::state::Shell;

/// Facts about this installation.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct About {
    /// Version of the app.
    pub version: String,
    /// Where the data lies.
    pub data_folder: String,
}

/// Tells the version and where the data lies.
#[tauri::command(async)]
pub fn about(shell: State<'_, Shell>) -> Answer<About> {
    Ok(About {
        version: env!("CARGO_PKG_VERSION").to_owned(),
        data_folder: shell.data.display().to_string(),
    })
}
