//! The service report.

use returnline_core::api::ApiError;
use serde::Serialize;
use tauri::{AppHandle, State};
use tauri_plugin_opener::OpenerExt;

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

/// Asks where to save the service report and writes it there.
#[tauri::command(async)]
pub fn save_report(
    app: AppHandle,
    shell: State<'_, Shell>,
    visit: &str,
    title: &str,
) -> Answer<Saved> {
    let name = shell.engine().service_report_name(visit)?;
    let proposal = Proposal {
        title,
        name: &name,
        kind: "PDF",
        extension: "pdf",
    };
    // The engine is free while the person chooses.
    match saving::ask(&app, &proposal) {
        None => Ok(Saved::default()),
        Some(Place::Path(path)) => {
            shell.engine().save_service_report(visit, &path)?;
            let place = path.display().to_string();
            shell.remember_saved(path);
            Ok(Saved {
                place: Some(place),
                can_open: cfg!(desktop),
            })
        }
        Some(Place::Address(address)) => {
            let engine = shell.engine();
            let bytes = engine.service_report(visit)?;
            saving::fill(&app, address, &bytes).map_err(|error| {
                let context = [("detail", error.to_string())];
                let context = context
                    .each_ref()
                    .map(|(name, value)| (*name, value.as_str()));
                ApiError::new("report-not-written", &context, engine.wording())
            })?;
            Ok(Saved {
                place: Some(name),
                can_open: false,
            })
        }
    }
}

/// Shows the report saved last, in whatever program the device has for it.
#[tauri::command(async)]
pub fn open_report(app: AppHandle, shell: State<'_, Shell>) -> Answer<()> {
    let Some(path) = shell.last_saved() else {
        return Ok(());
    };
    let path = path.display().to_string();
    app.opener()
        .open_path(&path, None::<&str>)
        .map_err(|error| {
            let context = [("detail", error.to_string())];
            let context = context
                .each_ref()
                .map(|(name, value)| (*name, value.as_str()));
            ApiError::new("report-not-opened", &context, shell.engine().wording())
        })
}
