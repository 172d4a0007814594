//! Carrying records between devices.

use returnline_core::api::types::{ConflictView, ExchangeChoice, ExchangeDone};
use tauri::{AppHandle, State};

use super::Answer;
use super::files::{self, Saved};
use crate::{saving::Proposal, state::Shell};

const KIND: &str = "Returnline";
const EXTENSION: &str = "rlx";

/// Asks where to save and writes the chosen records there.
#[tauri::command(async)]
pub fn export_records(
    app: AppHandle,
    shell: State<'_, Shell>,
    title: &str,
    choice: ExchangeChoice,
) -> Answer<Saved> {
    let name = shell.engine().exchange_name();
    let proposal = Proposal {
        title,
        name: &name,
        kind: KIND,
        extension: EXTENSION,
    };
    files::save_as(&app, &shell, &proposal, |path| {
        shell.engine().export_records(&choice, path).map(|_| ())
    })
}

/// Asks for an exchange file and takes it in, all of it or nothing; none when no
/// file was chosen.
#[tauri::command(async)]
pub fn import_records(
    app: AppHandle,
    shell: State<'_, Shell>,
    title: &str,
) -> Answer<Option<ExchangeDone>> {
    files::take(&app, &shell, title, (KIND, EXTENSION), |path| {
        shell.engine().import_records(path)
    })
}

/// Records on which devices disagree.
#[tauri::command(async)]
pub fn record_conflicts(shell: State<'_, Shell>) -> Answer<Vec<ConflictView>> {
    shell.engine().record_conflicts()
}

/// Decides which state of a record stands.
#[tauri::command(async)]
pub fn settle_record(
    shell: State<'_, Shell>,
    kind: &str,
    record: &str,
    keep: &str,
) -> Answer<Vec<ConflictView>> {
    shell.engine().settle_record(kind, record, keep)
}
