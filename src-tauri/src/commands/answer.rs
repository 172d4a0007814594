//! What the engine makes of a visit.

use returnline_core::api::Answer as CallAnswer;
use tauri::State;

use super::Answer;
use crate::state::Shell;

/// The causes with their reasons, the checks worth making, and the work plan.
#[tauri::command(async)]
pub fn answer_call(shell: State<'_, Shell>, visit: &str) -> Answer<CallAnswer> {
    // Entries go on while this is worked out.
    let call = shell.engine().open_call(visit)?;
    Ok(call.answer())
}

/// Marks a step of the work plan as done or not.
#[tauri::command(async)]
pub fn mark_step(
    shell: State<'_, Shell>,
    visit: &str,
    step: &str,
    done: bool,
) -> Answer<CallAnswer> {
    shell.engine().mark_step(visit, step, done)?;
    answer_call(shell, visit)
}
