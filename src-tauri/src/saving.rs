//! Asking the person where a file shall go.
//!
//! The interface never names a path: the system's own dialog does, so that the
//! web page needs no right to write anywhere.

use std::{
    io::{self, Write},
    path::{Path, PathBuf},
};

use tauri::{AppHandle, Runtime};
use tauri_plugin_dialog::{DialogExt, FilePath};
use tauri_plugin_fs::{FsExt, OpenOptions};

/// What the dialog proposes.
pub struct Proposal<'a> {
    /// Title of the dialog.
    pub title: &'a str,
    /// Name of the file, with its extension.
    pub name: &'a str,
    /// What kind of file it is, for a person.
    pub kind: &'a str,
    /// The extension of that kind.
    pub extension: &'a str,
}

/// Where a file shall go.
pub enum Place {
    /// A path.
    Path(PathBuf),
    /// An address that only the phone's system can open.
    Address(FilePath),
}

/// Asks where to save; nothing when the person chose no place. Must not be
/// called on the main thread, which draws the dialog.
pub fn ask<R: Runtime>(app: &AppHandle<R>, proposal: &Proposal<'_>) -> Option<Place> {
    let chosen = app
        .dialog()
        .file()
        .set_title(proposal.title)
        .set_file_name(proposal.name)
        .add_filter(proposal.kind, &[proposal.extension])
        .blocking_save_file()?;
    Some(match chosen {
        FilePath::Path(path) => Place::Path(with_extension(&path, proposal.extension)),
        address @ FilePath::Url(_) => Place::Address(address),
    })
}

/// Asks for a file and copies it to `target`, which the app may read whatever
/// kind of address was chosen; false when the person chose none. Must not be
/// called on the main thread, which draws the dialog.
///
/// # Errors
/// What the file system said.
pub fn take<R: Runtime>(
    app: &AppHandle<R>,
    title: &str,
    kind: &str,
    extension: &str,
    target: &Path,
) -> io::Result<bool> {
    let chosen = app
        .dialog()
        .file()
        .set_title(title)
        .add_filter(kind, &[extension])
        .blocking_pick_file();
    let Some(chosen) = chosen else {
        return Ok(false);
    };
    let mut options = OpenOptions::new();
    options.read(true);
    let mut from = app.fs().open(chosen, options)?;
    let mut to = std::fs::File::create(target)?;
    io::copy(&mut from, &mut to)?;
    to.sync_all()?;
    Ok(true)
}

/// Fills the file behind an address. The phone's system made it already and
/// knows no renaming, so it is filled in place.
///
/// # Errors
/// What the file system said.
pub fn fill<R: Runtime>(app: &AppHandle<R>, address: FilePath, bytes: &[u8]) -> io::Result<()> {
    let mut options = OpenOptions::new();
    options.write(true).create(true).truncate(true);
    let mut file = app.fs().open(address, options)?;
    file.write_all(bytes)?;
    file.sync_all()
}

/// The path as chosen, with the extension if the person left it out.
fn with_extension(path: &Path, extension: &str) -> PathBuf {
    let given = path.extension();
    if given.is_some_and(|given| given.eq_ignore_ascii_case(extension)) {
        return path.to_owned();
    }
    let mut name = path.as_os_str().to_owned();
    name.push(".");
    name.push(extension);
    PathBuf::from(name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_extension_is_added_only_when_it_is_missing() {
        for (chosen, kept) in [
            ("/a/report", "/a/report.pdf"),
            ("/a/report.pdf", "/a/report.pdf"),
            ("/a/report.PDF", "/a/report.PDF"),
            ("/a/4 Mill St.", "/a/4 Mill St..pdf"),
            ("/a/4.5", "/a/4.5.pdf"),
        ] {
            assert_eq!(with_extension(Path::new(chosen), "pdf"), Path::new(kept));
        }
    }
}
