//! Systems taken from elsewhere: templates, earlier visits, known sites.

use returnline_core::api::types::{TemplateView, VisitView};
use tauri::State;

use super::Answer;
use crate::state::Shell;

/// Usual systems to start from.
#[tauri::command(async)]
pub fn list_templates(shell: State<'_, Shell>) -> Answer<Vec<TemplateView>> {
    Ok(shell.engine().templates())
}

/// Takes a usual system as this visit's.
#[tauri::command(async)]
pub fn use_template(shell: State<'_, Shell>, visit: &str, template: &str) -> Answer<VisitView> {
    shell.engine().use_template(visit, template)
}

/// Copies the system of another visit.
#[tauri::command(async)]
pub fn copy_system(shell: State<'_, Shell>, visit: &str, from: &str) -> Answer<VisitView> {
    shell.engine().copy_system(visit, from)
}

/// Moves a visit to the site and system of another.
#[tauri::command(async)]
pub fn join_site(shell: State<'_, Shell>, visit: &str, earlier: &str) -> Answer<VisitView> {
    shell.engine().join_site(visit, earlier)
}
