//! The reports of a visit.

use returnline_core::api::{ApiError, types::ReportRequest};
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

/// Asks where to save a report and writes it there. Without a request it is the
/// service report.
#[tauri::command(async)]
pub fn save_report(
    app: AppHandle,
    shell: State<'_, Shell>,
    visit: &str,
    title: &str,
    request: Option<ReportRequest>,
) -> Answer<Saved> {
    let request = request.unwrap_or_else(|| ReportRequest {
        reader: "technician".to_owned(),
        ..ReportRequest::default()
    });
    let name = shell.engine().report_name(visit, &request)?;
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
            shell.engine().save_report(visit, &request, &path)?;
            let place = path.display().to_string();
            shell.remember_saved(path);
            Ok(Saved {
                place: Some(place),
                can_open: cfg!(desktop),
            })
        }
        Some(Place::Address(address)) => {
            let engine = shell.engine();
            let bytes = engine.report(visit, &request)?;
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
