//! What this installation is.

use serde::Serialize;
use tauri::State;

use crate::{error::ApiError, state::Shell};

/// Facts about this installation.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct About {
    /// Version of the app.
    pub version: String,
    /// Where the data lies.
    pub data_folder: String,
}

/// Tells the version and where the data lies.
#[tauri::command(async)]
pub fn about(shell: State<'_, Shell>) -> Result<About, ApiError> {
    Ok(About {
        version: env!("CARGO_PKG_VERSION").to_owned(),
        data_folder: shell.data.display().to_string(),
    })
}
