//! Photos and signatures of a visit.

use returnline_core::api::read_picture_text;
use returnline_core::api::types::{AttachmentsView, NewPhoto, PhotoEntry, SignatureEntry};
use tauri::State;

use super::Answer;
use crate::state::Shell;

/// Photos and signatures of a visit.
#[tauri::command(async)]
pub fn attachments(shell: State<'_, Shell>, visit: &str) -> Answer<AttachmentsView> {
    shell.engine().attachments(visit)
}

/// Keeps a photo.
#[tauri::command(async)]
pub fn add_photo(shell: State<'_, Shell>, visit: &str, photo: NewPhoto) -> Answer<AttachmentsView> {
    let wording = shell.engine().wording();
    // The engine is free while the picture is read.
    let picture = read_picture_text(&photo.data, wording)?;
    shell.engine().add_photo(visit, &photo, &picture)
}

/// Changes what is said of a photo.
#[tauri::command(async)]
pub fn describe_photo(
    shell: State<'_, Shell>,
    visit: &str,
    entry: PhotoEntry,
) -> Answer<AttachmentsView> {
    shell.engine().describe_photo(visit, &entry)
}

/// Takes a photo away.
#[tauri::command(async)]
pub fn remove_photo(shell: State<'_, Shell>, visit: &str, photo: &str) -> Answer<AttachmentsView> {
    shell.engine().remove_photo(visit, photo)
}

/// A photo in full, as a `data:` address.
#[tauri::command(async)]
pub fn show_photo(shell: State<'_, Shell>, photo: &str) -> Answer<String> {
    shell.engine().photo(photo)
}

/// Keeps a signature.
#[tauri::command(async)]
pub fn set_signature(
    shell: State<'_, Shell>,
    visit: &str,
    entry: SignatureEntry,
) -> Answer<AttachmentsView> {
    shell.engine().set_signature(visit, &entry)
}

/// Takes a signature away.
#[tauri::command(async)]
pub fn clear_signature(
    shell: State<'_, Shell>,
    visit: &str,
    role: &str,
) -> Answer<AttachmentsView> {
    shell.engine().clear_signature(visit, role)
}
