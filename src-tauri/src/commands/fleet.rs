//! The board, the visits behind its figures, and what became of fixes.

use returnline_core::api::types::{
    BoardView, EarlierFixView, FigureView, FleetFilter, FleetQuery, FleetReportRequest,
    FleetVisits, PictureView,
};
use returnline_core::api::{ApiError, write_whole};
use serde::Serialize;
use tauri::{AppHandle, State};

use super::Answer;
use super::files::{self, Saved};
use crate::{saving::Proposal, state::Shell};

/// The board with its pictures.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct BoardShown {
    /// The board.
    pub board: BoardView,
    /// Its pictures, by identifier.
    pub pictures: Vec<PictureView>,
    /// Names of the tables it can be saved as.
    pub tables: Vec<String>,
}

/// The board, its pictures so many points wide.
#[tauri::command(async)]
pub fn board(shell: State<'_, Shell>, query: FleetQuery, width: f32) -> Answer<BoardShown> {
    let mut engine = shell.engine();
    let board = engine.board(&query)?;
    let tables = engine.board_tables(&board).into_iter();
    Ok(BoardShown {
        pictures: engine.board_pictures(&board, width),
        tables: tables.map(|table| table.name).collect(),
        board,
    })
}

/// How a part of the board is counted.
#[tauri::command(async)]
pub fn explain_board(shell: State<'_, Shell>, part: &str) -> Answer<FigureView> {
    shell.engine().explain_board(part)
}

/// The visits behind a figure, `take` of them after the first `skip`.
#[tauri::command(async)]
pub fn fleet_visits(
    shell: State<'_, Shell>,
    filter: FleetFilter,
    skip: usize,
    take: usize,
) -> Answer<FleetVisits> {
    shell.engine().fleet_visits(&filter, skip, take)
}

/// Asks where to save a table of the board and writes it there.
#[tauri::command(async)]
pub fn save_board_table(
    app: AppHandle,
    shell: State<'_, Shell>,
    title: &str,
    query: FleetQuery,
    table: &str,
) -> Answer<Saved> {
    let found = {
        let mut engine = shell.engine();
        let board = engine.board(&query)?;
        let mut tables = engine.board_tables(&board).into_iter();
        let context = [("field", "table"), ("found", table)];
        tables
            .find(|known| known.name == table)
            .ok_or_else(|| ApiError::new("no-such-name", &context, engine.wording()))?
    };
    let proposal = Proposal {
        title,
        name: &found.name,
        kind: "CSV",
        extension: "csv",
    };
    files::save_as(&app, &shell, &proposal, |path| {
        write_whole(path, found.csv.as_bytes()).map_err(|error| files::not_moved(&shell, &error))
    })
}

/// Asks where to save the manager's report and writes it there.
#[tauri::command(async)]
pub fn save_fleet_report(
    app: AppHandle,
    shell: State<'_, Shell>,
    title: &str,
    request: FleetReportRequest,
) -> Answer<Saved> {
    let name = shell.engine().fleet_report_name(&request)?;
    files::save_pdf(&app, &shell, (title, &name), |path| {
        shell.engine().save_fleet_report(&request, path)
    })
}

/// Fixes of earlier visits to this system, to ask about.
#[tauri::command(async)]
pub fn earlier_fixes(shell: State<'_, Shell>, visit: &str) -> Answer<Vec<EarlierFixView>> {
    shell.engine().earlier_fixes(visit)
}

/// Keeps whether an earlier fix held.
#[tauri::command(async)]
pub fn answer_earlier_fix(
    shell: State<'_, Shell>,
    visit: &str,
    earlier: &str,
    cause: &str,
    held: bool,
) -> Answer<Vec<EarlierFixView>> {
    shell
        .engine()
        .answer_earlier_fix(visit, earlier, cause, held)
}
