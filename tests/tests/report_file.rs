//! A file is written whole or not at all, and errors say what to do.

#![allow(clippy::unwrap_used, clippy::panic)]

use std::{fs, path::Path};

use returnline_core::report::{WriteError, file::write_whole};
use returnline_tests::program;

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

/// Replacing a device would break the machine of whoever runs as superuser.
#[cfg(target_os = "linux")]
#[test]
fn a_device_is_not_replaced() {
    let error = write_whole(Path::new("/dev/full"), b"x").unwrap_err();
    assert!(matches!(error, WriteError::NotAFile { .. }), "{error:?}");
}

/// A limit on the size of files stands in for a full disk: the kernel refuses
/// in the middle of writing, as it does when no room is left.
#[cfg(target_os = "linux")]
#[test]
fn no_room_leaves_the_old_report_and_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let out = folder.path().join("report.pdf");
    fs::write(&out, b"the report of last year").unwrap();
    let run = |blocks: &str| {
        let words = format!(
            "trap '' XFSZ; ulimit -f {blocks}; exec '{}' report '{}' --for homeowner --out '{}'",
            program::path().display(),
            program::sample("pressure-lost-over-summer").display(),
            out.display()
        );
        let shell = std::process::Command::new("sh")
            .arg("-c")
            .arg(words)
            .output();
        shell.unwrap()
    };
    let refused = run("8");
    let said = String::from_utf8_lossy(&refused.stderr);
    assert_eq!(refused.status.code(), Some(1), "{said}");
    assert!(said.contains("no room left"), "{said}");
    assert_eq!(fs::read(&out).unwrap(), b"the report of last year");
    assert_eq!(names(folder.path()), ["report.pdf"]);
    // The same words with room enough: the limit alone made the difference.
    let written = run("unlimited");
    assert_eq!(written.status.code(), Some(0));
    assert!(fs::read(&out).unwrap().starts_with(b"%PDF-1.7"));
    assert_eq!(names(folder.path()), ["report.pdf"]);
}

#[test]
fn the_program_writes_both_reports_and_the_same_words_give_the_same_bytes() {
    let folder = tempfile::tempdir().unwrap();
    let photo = folder.path().join("gauge before.jpg");
    fs::write(&photo, returnline_tests::pages::jpeg_bytes(320, 240, 6)).unwrap();
    let sample = program::sample("air-in-one-circuit");
    let run = |reader: &str, name: &str| {
        let out = folder.path().join(name);
        let words = [
            "report",
            sample.to_str().unwrap(),
            "--for",
            reader,
            "--out",
            out.to_str().unwrap(),
            "--units",
            "si",
            "--paper",
            "a4",
            "--photo",
            photo.to_str().unwrap(),
            "--phone",
            "+1 555 010 0199",
            "--issued",
            "2026-10-14T15:30:00-05:00",
        ];
        let done = program::run(&words);
        let said = String::from_utf8_lossy(&done.stderr).into_owned();
        assert_eq!(done.status.code(), Some(0), "{said}");
        fs::read(out).unwrap()
    };
    for reader in ["technician", "homeowner"] {
        let first = run(reader, "first.pdf");
        assert!(first == run(reader, "second.pdf"), "{reader}");
        let pdf = lopdf::Document::load_mem(&first).unwrap();
        let pages = pdf.get_pages();
        let page = pdf.get_dictionary(*pages.get(&1).unwrap()).unwrap();
        let media = page.get(b"MediaBox").and_then(lopdf::Object::as_array);
        // A4 is 297 mm high: 841.9 points (ISO 216).
        let height = media.unwrap()[3].as_float().unwrap();
        assert!((height - 841.9).abs() < 0.1, "{height}");
        assert!(
            reader == "technician" || pages.len() <= 2,
            "the homeowner's page has {} pages",
            pages.len()
        );
    }
    let text = folder.path().join("text.jpg");
    fs::write(&text, "no picture").unwrap();
    let out = folder.path().join("third.pdf");
    let refused = program::run(&[
        "report",
        sample.to_str().unwrap(),
        "--for",
        "technician",
        "--out",
        out.to_str().unwrap(),
        "--photo",
        text.to_str().unwrap(),
    ]);
    let said = String::from_utf8_lossy(&refused.stderr);
    assert_eq!(refused.status.code(), Some(3), "{said}");
    assert!(said.contains("text.jpg") && said.contains("JPEG"), "{said}");
    assert!(!out.exists());
}
