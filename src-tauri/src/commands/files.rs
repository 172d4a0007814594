//! Files that a person chose a place for.

use std::path::Path;

use returnline_core::api::ApiError;
use tauri::AppHandle;

use super::Answer;
use super::report::Saved;
use crate::{
    saving::{self, Place, Proposal},
    state::Shell,
};

/// Asks where to save and has `write` write there. Where the phone's system only
/// gives an address, the file is written beside the data first and copied.
pub fn save_as(
    app: &AppHandle,
    shell: &Shell,
    proposal: &Proposal<'_>,
    write: impl FnOnce(&Path) -> Answer<()>,
) -> Answer<Saved> {
    let place = match saving::ask(app, proposal) {
        None => return Ok(Saved::default()),
        Some(Place::Path(path)) => {
            write(&path)?;
            path.display().to_string()
        }
        Some(Place::Address(address)) => {
            let draft = shell.data.join(proposal.name);
            write(&draft)?;
            let filled = std::fs::read(&draft)
                .and_then(|bytes| saving::fill(app, address, &bytes))
                .map_err(|error| not_moved(shell, &error));
            // The copy in the app's own folder was only on its way.
            let _ = std::fs::remove_file(&draft);
            filled?;
            proposal.name.to_owned()
        }
    };
    Ok(Saved {
        place: Some(place),
        can_open: false,
    })
}

/// Asks for a file and lets `read` work on a copy of it beside the data; nothing
/// when none was chosen.
pub fn take<T>(
    app: &AppHandle,
    shell: &Shell,
    title: &str,
    (kind, extension): (&str, &str),
    read: impl FnOnce(&Path) -> Answer<T>,
) -> Answer<Option<T>> {
    let draft = shell.data.join(format!("chosen.{extension}"));
    let taken = saving::take(app, title, kind, extension, &draft)
        .map_err(|error| not_moved(shell, &error))?;
    if !taken {
        return Ok(None);
    }
    let outcome = read(&draft);
    let _ = std::fs::remove_file(&draft);
    outcome.map(Some)
}

/// The file system refused.
pub fn not_moved(shell: &Shell, error: &impl std::fmt::Display) -> ApiError {
    let detail = error.to_string();
    ApiError::new("store-file", &[("detail", &detail)], shell.wording())
}
