//! The shell of Returnline: opens the window, holds the engine, and passes
//! each command of the interface on to it.
//!
//! It knows nothing about ground loops. Engineering, texts of findings and
//! storage are the engine's; the shell adds only what belongs to the device:
//! the window, the data folder and the dialog that asks where to save.

#![cfg_attr(mobile, allow(unsafe_code))]

pub mod commands;
mod saving;
mod state;

use commands::{
    about, answer, attachments, backups, exchange, fleet, learning, readings, report, settings,
    systems, visits,
};
use mimalloc::MiMalloc;
use tauri::Manager;

/// An answer takes and gives back a megabyte in small and large pieces; the
/// system's allocator hands the large ones back to the system every time.
#[global_allocator]
static ALLOCATOR: MiMalloc = MiMalloc;

/// Builds the app and runs it until its window is closed.
///
/// Exits the process with a message on standard error when the window or the
/// data folder cannot be opened, since there is no window yet to say it in.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let outcome = tauri::Builder::default()
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_fs::init())
        .plugin(tauri_plugin_opener::init())
        .setup(|app| {
            let state = state::Shell::open(app.handle())?;
            app.manage(state);
            Ok(())
        })
        .invoke_handler(tauri::generate_handler![
            about::about,
            visits::list_visits,
            visits::start_visit,
            visits::open_visit,
            visits::set_field,
            visits::end_as_proven,
            visits::set_answer,
            visits::put_draft,
            visits::undo_last,
            systems::list_templates,
            systems::use_template,
            systems::copy_system,
            systems::join_site,
            settings::settings,
            settings::change_setting,
            settings::put_logo,
            settings::demo,
            settings::load_demo,
            settings::remove_demo,
            readings::put_reading,
            readings::remove_reading,
            answer::answer_call,
            answer::change_step,
            answer::pictures,
            answer::explain,
            attachments::attachments,
            attachments::add_photo,
            attachments::describe_photo,
            attachments::remove_photo,
            attachments::show_photo,
            attachments::set_signature,
            attachments::clear_signature,
            report::save_report,
            report::open_report,
            backups::soundness,
            backups::keeping,
            backups::save_backup,
            backups::restore_backup,
            backups::restore_backup_file,
            exchange::export_records,
            exchange::import_records,
            exchange::record_conflicts,
            exchange::settle_record,
            fleet::board,
            fleet::explain_board,
            fleet::fleet_visits,
            fleet::save_board_table,
            fleet::save_fleet_report,
            fleet::earlier_fixes,
            fleet::answer_earlier_fix,
            learning::set_verdict,
            learning::list_checks,
            learning::learned,
            learning::explain_learned,
            learning::save_learned,
            learning::take_learned,
            learning::learn_anew,
        ])
        .run(tauri::generate_context!());
    if let Err(error) = outcome {
        eprintln!("returnline: {error}");
        std::process::exit(1);
    }
}
