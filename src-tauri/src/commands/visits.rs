//! Visits, their facts and their answers.

use returnline_core::api::types::{FieldEntry, NewVisit, VisitLine, VisitView};
use tauri::State;

use super::Answer;
use crate::state::Shell;

/// All visits, last changed first.
#[tauri::command(async)]
pub fn list_visits(shell: State<'_, Shell>) -> Answer<Vec<VisitLine>> {
    shell.engine().visits()
}

/// Starts a visit.
#[tauri::command(async)]
pub fn start_visit(shell: State<'_, Shell>, new: NewVisit) -> Answer<VisitView> {
    shell.engine().start_visit(&new)
}

/// A visit with everything entered so far.
#[tauri::command(async)]
pub fn open_visit(shell: State<'_, Shell>, visit: &str) -> Answer<VisitView> {
    shell.engine().visit(visit)
}

/// Changes one fact.
#[tauri::command(async)]
pub fn set_field(shell: State<'_, Shell>, visit: &str, entry: FieldEntry) -> Answer<VisitView> {
    shell.engine().set_field(visit, &entry)
}

/// Ends a visit as put right and proven, though something of it is open.
#[tauri::command(async)]
pub fn end_as_proven(shell: State<'_, Shell>, visit: &str) -> Answer<VisitView> {
    shell.engine().end_as_proven(visit)
}

/// Answers a finding, or makes it unknown again.
#[tauri::command(async)]
pub fn set_answer(
    shell: State<'_, Shell>,
    visit: &str,
    finding: &str,
    answer: Option<&str>,
) -> Answer<VisitView> {
    shell.engine().set_answer(visit, finding, answer)
}

/// Keeps what is typed at a place of a visit and not kept yet, or forgets it; without a
/// visit at one of the settings.
#[tauri::command(async)]
pub fn put_draft(
    shell: State<'_, Shell>,
    visit: Option<&str>,
    place: &str,
    text: Option<&str>,
) -> Answer<()> {
    shell.engine().put_draft(visit, place, text)
}

/// Takes the last entry of a visit back.
#[tauri::command(async)]
pub fn undo_last(shell: State<'_, Shell>, visit: &str) -> Answer<VisitView> {
    shell.engine().undo_last(visit)
}
