//! Readings of a visit.

use returnline_core::api::types::{ReadingEntry, VisitView};
use tauri::State;

use super::Answer;
use crate::state::Shell;

/// Keeps a reading, new or changed.
#[tauri::command(async)]
pub fn put_reading(shell: State<'_, Shell>, visit: &str, entry: ReadingEntry) -> Answer<VisitView> {
    shell.engine().put_reading(visit, &entry)
}

/// Takes a reading away.
#[tauri::command(async)]
pub fn remove_reading(shell: State<'_, Shell>, visit: &str, reading: &str) -> Answer<VisitView> {
    shell.engine().remove_reading(visit, reading)
}
