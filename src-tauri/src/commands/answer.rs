//! What the engine makes of a visit.

use returnline_core::api::Answer as CallAnswer;
use returnline_core::api::types::{FigureView, PicturesView, StepChange, VisitView, WhyQuestion};
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

/// Changes what is known of a step of the work plan. What the engine makes of it
/// is asked for apart, so that marking a step does not wait for it.
#[tauri::command(async)]
pub fn change_step(
    shell: State<'_, Shell>,
    visit: &str,
    step: &str,
    change: StepChange,
) -> Answer<VisitView> {
    let mut engine = shell.engine();
    engine.change_step(visit, step, &change)?;
    engine.visit(visit)
}

/// The drawing of the system and the charts, these so many points wide.
#[tauri::command(async)]
pub fn pictures(shell: State<'_, Shell>, visit: &str, width: f32) -> Answer<PicturesView> {
    let call = shell.engine().open_call(visit)?;
    Ok(call.pictures(width))
}

/// Where a number of the answer comes from.
#[tauri::command(async)]
pub fn explain(shell: State<'_, Shell>, visit: &str, question: WhyQuestion) -> Answer<FigureView> {
    let call = shell.engine().open_call(visit)?;
    call.explain(&question)
}
