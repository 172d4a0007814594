//! A file is written whole or not at all, and errors say what to do.

use std::{fs, path::Path};

use returnline_core::report::{WriteError, file::write_whole};

fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).unwrap();
    entries
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect()
}

#[test]
fn a_file_is_written_and_replaced_without_leftovers() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("report.pdf");
    write_whole(&path, b"first").unwrap();
    write_whole(&path, b"second, longer").unwrap();
    assert_eq!(fs::read(&path).unwrap(), b"second, longer");
    assert_eq!(names(folder.path()), ["report.pdf"]);
}

#[test]
fn a_missing_folder_and_a_file_for_a_folder_are_told_apart() {
    let folder = tempfile::tempdir().unwrap();
    let missing = write_whole(&folder.path().join("no/report.pdf"), b"x").unwrap_err();
    assert!(
        matches!(missing, WriteError::FolderMissing { .. }),
        "{missing:?}"
    );
    let file = folder.path().join("file");
    fs::write(&file, b"kept").unwrap();
    let below = write_whole(&file.join("report.pdf"), b"x").unwrap_err();
    assert!(matches!(below, WriteError::NotAFolder { .. }), "{below:?}");
    fs::create_dir(folder.path().join("report.pdf")).unwrap();
    let taken = write_whole(&folder.path().join("report.pdf"), b"x").unwrap_err();
    assert!(matches!(taken, WriteError::IsAFolder { .. }), "{taken:?}");
    let nameless = write_whole(Path::new("/"), b"x").unwrap_err();
    assert!(
        matches!(nameless, WriteError::NoFileName { .. }),
        "{nameless:?}"
    );
    assert_eq!(fs::read(&file).unwrap(), b"kept");
    assert_eq!(names(folder.path()).len(), 2);
}

/// The kernel's own folder takes no files, not even from the superuser.
#[cfg(target_os = "linux")]
#[test]
fn a_folder_that_cannot_be_written_is_told() {
    let error = write_whole(Path::new("/sys/report.pdf"), b"x").unwrap_err();
    assert!(matches!(error, WriteError::NotWritable { .. }), "{error:?}");
}
