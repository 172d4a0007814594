//! The reports of a visit.

use returnline_core::api::{ApiError, types::ReportRequest};
use tauri::{AppHandle, State};
use tauri_plugin_opener::OpenerExt;

use super::Answer;
use super::files::{self, Saved};
use crate::state::Shell;

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
    // The engine is free while the person chooses.
    files::save_pdf(&app, &shell, (title, &name), |path| {
        shell.engine().save_report(visit, &request, path)
    })
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
