//! What was chosen once.

use returnline_core::api::ApiError;
use returnline_core::api::types::{DemoView, SettingChange, SettingsView};
use tauri::State;
use tauri::ipc::{InvokeBody, Request};

use super::Answer;
use crate::state::Shell;

/// What was chosen.
#[tauri::command(async)]
pub fn settings(shell: State<'_, Shell>) -> Answer<SettingsView> {
    shell.engine().settings()
}

/// Changes one setting.
#[tauri::command(async)]
pub fn change_setting(shell: State<'_, Shell>, change: SettingChange) -> Answer<SettingsView> {
    shell.engine().change_setting(&change)
}

/// Keeps a picture file, sent as the raw body, as the company's logo.
#[tauri::command(async)]
pub fn put_logo(shell: State<'_, Shell>, request: Request<'_>) -> Answer<SettingsView> {
    let mut engine = shell.engine();
    match request.body() {
        InvokeBody::Raw(file) => engine.put_logo(file),
        InvokeBody::Json(_) => {
            let context = [("detail", "no bytes")];
            Err(ApiError::new("logo-unreadable", &context, engine.wording()))
        }
    }
}

/// What there is of the invented demonstration company.
#[tauri::command(async)]
pub fn demo(shell: State<'_, Shell>) -> Answer<DemoView> {
    shell.engine().demo()
}

/// Loads it.
#[tauri::command(async)]
pub fn load_demo(shell: State<'_, Shell>) -> Answer<DemoView> {
    shell.engine().load_demo()
}

/// Takes all of it away again.
#[tauri::command(async)]
pub fn remove_demo(shell: State<'_, Shell>) -> Answer<DemoView> {
    shell.engine().remove_demo()
}
