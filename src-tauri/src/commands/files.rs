//! Files that a person chose a place for.

use std::path::{Path, PathBuf};

use returnline_core::api::ApiError;
use serde::Serialize;
use tauri::AppHandle;

use super::Answer;
use crate::{
    saving::{self, Place, Proposal},
    state::Shell,
};

/// What became of a file that was to be saved.
#[derive(Debug, Clone, Default, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Saved {
    /// Where it was saved, for a person; none when no place was chosen.
    pub place: Option<String>,
    /// Whether this device can show it.
    pub can_open: bool,
}

/// Asks where to save and has `write` write there.
pub fn save_as(
    app: &AppHandle,
    shell: &Shell,
    proposal: &Proposal<'_>,
    write: impl FnOnce(&Path) -> Answer<()>,
) -> Answer<Saved> {
    let place = write_where_asked(app, shell, proposal, write)?.map(|(place, _)| place);
    Ok(Saved {
        place,
        can_open: false,
    })
}

/// The same for a report as PDF, which the device may show afterwards.
pub fn save_pdf(
    app: &AppHandle,
    shell: &Shell,
    (title, name): (&str, &str),
    write: impl FnOnce(&Path) -> Answer<()>,
) -> Answer<Saved> {
    let proposal = Proposal {
        title,
        name,
        kind: "PDF",
        extension: "pdf",
    };
    let Some((place, path)) = write_where_asked(app, shell, &proposal, write)? else {
        return Ok(Saved::default());
    };
    let can_open = path.is_some() && cfg!(desktop);
    if let Some(path) = path {
        shell.remember_saved(path);
    }
    Ok(Saved {
        place: Some(place),
        can_open,
    })
}

/// The place in words, with its path where it has one; nothing when none was
/// chosen. Where the phone's system only gives an address, the file is written
/// beside the data first and copied.
fn write_where_asked(
    app: &AppHandle,
    shell: &Shell,
    proposal: &Proposal<'_>,
    write: impl FnOnce(&Path) -> Answer<()>,
) -> Answer<Option<(String, Option<PathBuf>)>> {
    match saving::ask(app, proposal) {
        None => Ok(None),
        Some(Place::Path(path)) => {
            write(&path)?;
            Ok(Some((path.display().to_string(), Some(path))))
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
            Ok(Some((proposal.name.to_owned(), None)))
        }
    }
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
