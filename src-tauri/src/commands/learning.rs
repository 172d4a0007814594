//! Causes found true or false, and what was learned from them.

use returnline_core::api::types::{ChoiceView, FigureView, LearnedView, VerdictEntry, VisitView};
use returnline_core::api::write_whole;
use tauri::{AppHandle, State};

use super::Answer;
use super::files::{self, Saved};
use crate::{saving::Proposal, state::Shell};

const KIND: &str = "JSON";
const EXTENSION: &str = "json";

/// Keeps that a cause was there or was not, or takes it back.
#[tauri::command(async)]
pub fn set_verdict(shell: State<'_, Shell>, visit: &str, entry: VerdictEntry) -> Answer<VisitView> {
    shell.engine().set_verdict(visit, &entry)
}

/// Every check that may decide a cause.
#[tauri::command(async)]
pub fn list_checks(shell: State<'_, Shell>) -> Answer<Vec<ChoiceView>> {
    Ok(shell.engine().checks())
}

/// What was learned from confirmed causes.
#[tauri::command(async)]
pub fn learned(shell: State<'_, Shell>) -> Answer<LearnedView> {
    shell.engine().learned()
}

/// How the callbacks moved what is expected of a cause.
#[tauri::command(async)]
pub fn explain_learned(shell: State<'_, Shell>, cause: &str) -> Answer<FigureView> {
    shell.engine().explain_learned(cause)
}

/// Asks where to save what was counted here and writes it there.
#[tauri::command(async)]
pub fn save_learned(app: AppHandle, shell: State<'_, Shell>, title: &str) -> Answer<Saved> {
    let bytes = shell.engine().learned_bytes()?;
    let proposal = Proposal {
        title,
        name: "learned.json",
        kind: KIND,
        extension: EXTENSION,
    };
    files::save_as(&app, &shell, &proposal, |path| {
        write_whole(path, &bytes).map_err(|error| files::not_moved(&shell, &error))
    })
}

/// Asks for a file of counts and takes it in; none when no file was chosen.
#[tauri::command(async)]
pub fn take_learned(
    app: AppHandle,
    shell: State<'_, Shell>,
    title: &str,
) -> Answer<Option<LearnedView>> {
    files::take(&app, &shell, title, (KIND, EXTENSION), |path| {
        shell.engine().import_learned_file(path)
    })
}

/// Begins to learn anew.
#[tauri::command(async)]
pub fn learn_anew(shell: State<'_, Shell>) -> Answer<LearnedView> {
    shell.engine().learn_anew()
}
