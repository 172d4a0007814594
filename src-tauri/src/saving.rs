//! Saving a file to a place the person chooses.
//!
//! The interface never names a path: the system's own dialog does, so that the
//! web page needs no right to write anywhere.

use std::{
    fs::{self, File},
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

/// Asks where to save and writes `bytes` there, whole or not at all.
///
/// Answers where it was saved, or nothing when the person chose no place. Must
/// not be called on the main thread, which draws the dialog.
///
/// # Errors
/// What the file system said.
pub fn save<R: Runtime>(
    app: &AppHandle<R>,
    proposal: &Proposal<'_>,
    bytes: &[u8],
) -> io::Result<Option<String>> {
    let chosen = app
        .dialog()
        .file()
        .set_title(proposal.title)
        .set_file_name(proposal.name)
        .add_filter(proposal.kind, &[proposal.extension])
        .blocking_save_file();
    match chosen {
        None => Ok(None),
        Some(FilePath::Path(path)) => {
            let path = with_extension(path, proposal.extension);
            write_whole(&path, bytes)?;
            Ok(Some(path.display().to_string()))
        }
        // A phone answers with an address that only the system can open; the
        // system made the file already, so it is filled in place.
        Some(address) => {
            let mut options = OpenOptions::new();
            options.write(true).create(true).truncate(true);
            let mut file = app.fs().open(address, options)?;
            file.write_all(bytes)?;
            file.sync_all()?;
            Ok(Some(proposal.name.to_owned()))
        }
    }
}

/// The path as chosen, with the extension if the person left it out.
fn with_extension(path: PathBuf, extension: &str) -> PathBuf {
    if path
        .extension()
        .is_some_and(|given| given.eq_ignore_ascii_case(extension))
    {
        return path;
    }
    let mut name = path.into_os_string();
    name.push(".");
    name.push(extension);
    PathBuf::from(name)
}

/// Writes beside the target and moves into place, so that a failure on the way
/// leaves what was there before.
fn write_whole(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let mut name = std::ffi::OsString::from(".");
    name.push(path.file_name().ok_or(io::ErrorKind::InvalidFilename)?);
    name.push(format!(".{}.part", std::process::id()));
    let part = path.with_file_name(name);
    let written = File::create(&part)
        .and_then(|mut file| file.write_all(bytes).and_then(|()| file.sync_all()))
        .and_then(|()| fs::rename(&part, path));
    if written.is_err() {
        // The first failure is the one to tell.
        let _ = fs::remove_file(&part);
    }
    written
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
            assert_eq!(
                with_extension(PathBuf::from(chosen), "pdf"),
                PathBuf::from(kept)
            );
        }
    }

    #[test]
    fn a_failed_write_leaves_what_was_there() {
        let folder = std::env::temp_dir().join(format!("returnline-saving-{}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let file = folder.join("report.pdf");
        write_whole(&file, b"first").unwrap();
        write_whole(&file, b"second").unwrap();
        assert_eq!(fs::read(&file).unwrap(), b"second");

        // A folder in the way cannot be replaced by a file.
        let taken = folder.join("taken.pdf");
        fs::create_dir(&taken).unwrap();
        assert!(write_whole(&taken, b"third").is_err());
        let mut names: Vec<_> = fs::read_dir(&folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        assert_eq!(names, ["report.pdf", "taken.pdf"]);
        fs::remove_dir_all(&folder).unwrap();
    }
}
