//! Writing a file whole or not at all, and names a person can file.

use std::{
    ffi::OsString,
    fs::{self, File, OpenOptions},
    io::{self, ErrorKind, Write},
    path::{Path, PathBuf},
};

use super::error::WriteError;

/// Longest file name made by [`safe_name`], in bytes, ending included. Fits
/// every usual file system, also under folders with long names.
pub const LONGEST_NAME: usize = 100;

/// Attempts to find a free name for the temporary file.
const ATTEMPTS: u32 = 64;

/// Writes bytes to a path so that the path holds either what it held before or
/// all of the bytes, also when the power fails.
///
/// The bytes go to a temporary file in the same folder, are forced to the disk,
/// and the file is renamed. An existing file is replaced.
///
/// # Errors
/// [`WriteError`] says what to do about it; nothing is left behind.
pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), WriteError> {
    let folder = folder_of(path)?;
    let (draft, mut file) = create_draft(path, &folder)?;
    let written = fill(&mut file, bytes).and_then(|()| {
        drop(file);
        fs::rename(&draft, path)
    });
    if let Err(source) = written {
        // The draft may be gone already; what counts is the first error.
        let _ = fs::remove_file(&draft);
        return Err(explain(source, path, &folder));
    }
    sync_folder(&folder);
    Ok(())
}

fn folder_of(path: &Path) -> Result<PathBuf, WriteError> {
    if path.file_name().is_none() {
        return Err(WriteError::NoFileName {
            path: path.to_owned(),
        });
    }
    let folder = match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent.to_owned(),
        _ => PathBuf::from("."),
    };
    match fs::metadata(&folder) {
        Ok(found) if !found.is_dir() => return Err(WriteError::NotAFolder { folder }),
        Ok(_) => {}
        Err(source) => return Err(explain(source, path, &folder)),
    }
    let path = path.to_owned();
    match fs::metadata(&path) {
        Ok(found) if found.is_dir() => Err(WriteError::IsAFolder { path }),
        Ok(found) if !found.is_file() => Err(WriteError::NotAFile { path }),
        _ => Ok(folder),
    }
}

fn create_draft(path: &Path, folder: &Path) -> Result<(PathBuf, File), WriteError> {
    for attempt in 0..ATTEMPTS {
        let mut name = OsString::from(".");
        // Not the whole target name: the draft's must not become too long.
        name.push(format!("returnline-{}-{attempt}.part", std::process::id()));
        let draft = folder.join(name);
        match OpenOptions::new().write(true).create_new(true).open(&draft) {
            Ok(file) => return Ok((draft, file)),
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {}
            Err(source) => return Err(explain(source, path, folder)),
        }
    }
    let source = ErrorKind::AlreadyExists.into();
    Err(WriteError::Other {
        path: path.to_owned(),
        source,
    })
}

/// What a draft is written to; a trait so that failures can be tested.
trait Draft: Write {
    fn force(&mut self) -> io::Result<()>;
}

impl Draft for File {
    fn force(&mut self) -> io::Result<()> {
        self.sync_all()
    }
}

fn fill(draft: &mut impl Draft, bytes: &[u8]) -> io::Result<()> {
    draft.write_all(bytes)?;
    draft.force()
}

/// Makes the new name last. Not every system can; the file itself is safe.
fn sync_folder(folder: &Path) {
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
}

fn explain(source: io::Error, path: &Path, folder: &Path) -> WriteError {
    let (path, folder) = (path.to_owned(), folder.to_owned());
    match source.kind() {
        ErrorKind::NotFound => WriteError::FolderMissing { folder },
        ErrorKind::NotADirectory => WriteError::NotAFolder { folder },
        ErrorKind::IsADirectory => WriteError::IsAFolder { path },
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => {
            WriteError::NotWritable { folder, source }
        }
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::FileTooLarge => {
            WriteError::NoRoom { folder, source }
        }
        _ => WriteError::Other { path, source },
    }
}

/// A file name from free text: no path in it, nothing a file system refuses,
/// not longer than [`LONGEST_NAME`].
///
/// `extension` comes without the dot. `fallback` is used where nothing of the
/// text is left.
#[must_use]
pub fn safe_name(text: &str, extension: &str, fallback: &str) -> String {
    let extension: String = extension
        .chars()
        .filter(char::is_ascii_alphanumeric)
        .take(8)
        .collect();
    let room = LONGEST_NAME - extension.len() - 1;
    let mut stem = tidy(text, room);
    if stem.is_empty() {
        stem = tidy(fallback, room);
    }
    if stem.is_empty() {
        stem.push('_');
    }
    if reserved(&stem) {
        stem.insert(0, '_');
    }
    if extension.is_empty() {
        stem
    } else {
        format!("{stem}.{extension}")
    }
}

/// Forbidden characters become a hyphen, white space one space; trimmed of
/// what must not stand at either end; cut between characters.
fn tidy(text: &str, room: usize) -> String {
    let mut out = String::new();
    let mut hyphen = false;
    for character in text.chars() {
        let kept = match character {
            '/' | '\\' | ':' | '*' | '?' | '"' | '<' | '>' | '|' => '-',
            _ if character.is_whitespace() => ' ',
            _ if character.is_control() || formatting(character) => continue,
            _ => character,
        };
        let repeated = (kept == ' ' && out.ends_with(' ')) || (kept == '-' && hyphen);
        if repeated || (out.is_empty() && matches!(kept, ' ' | '.' | '-' | '~')) {
            continue;
        }
        // One byte stays free for the mark before a reserved name.
        if out.len() + kept.len_utf8() >= room {
            break;
        }
        hyphen = kept == '-';
        out.push(kept);
    }
    out.truncate(out.trim_end_matches([' ', '.', '-']).len());
    out
}

/// Invisible characters that could make a name look like another.
fn formatting(character: char) -> bool {
    matches!(character,
        '\u{ad}' | '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
        | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{e0000}'..='\u{e0fff}')
}

/// Names of devices on Windows, with or without an ending.
fn reserved(stem: &str) -> bool {
    let base = stem
        .split('.')
        .next()
        .unwrap_or("")
        .trim_end()
        .to_uppercase();
    if matches!(
        base.as_str(),
        "CON" | "PRN" | "AUX" | "NUL" | "CONIN$" | "CONOUT$"
    ) {
        return true;
    }
    let Some(rest) = base
        .strip_prefix("COM")
        .or_else(|| base.strip_prefix("LPT"))
    else {
        return false;
    };
    matches!(
        rest,
        "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "¹" | "²" | "³"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    struct Full {
        room: usize,
    }

    impl Write for Full {
        fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
            if self.room == 0 {
                return Err(ErrorKind::StorageFull.into());
            }
            let count = bytes.len().min(self.room);
            self.room -= count;
            Ok(count)
        }

        fn flush(&mut self) -> io::Result<()> {
            Ok(())
        }
    }

    impl Draft for Full {
        fn force(&mut self) -> io::Result<()> {
            Ok(())
        }
    }

    #[test]
    fn a_full_disk_is_told_as_such() {
        let error = fill(&mut Full { room: 10 }, &[0; 100]).unwrap_err();
        let told = explain(error, Path::new("a/b.pdf"), Path::new("a"));
        assert!(matches!(told, WriteError::NoRoom { .. }), "{told:?}");
    }

    #[test]
    fn names_keep_letters_and_lose_paths() {
        for (text, name) in [
            (
                "Service report 2026-03-04 Müller",
                "Service report 2026-03-04 Müller.pdf",
            ),
            ("../../etc/passwd", "etc-passwd.pdf"),
            ("..\\..\\C:\\boot", "C-boot.pdf"),
            ("a/b\\c:d*e?f\"g<h>i|j", "a-b-c-d-e-f-g-h-i-j.pdf"),
            ("  .hidden. ", "hidden.pdf"),
            ("line\r\nbreak\0\u{202e}fdp", "line breakfdp.pdf"),
            ("", "report.pdf"),
            ("...", "report.pdf"),
            ("CON", "_CON.pdf"),
            ("nul.tar", "_nul.tar.pdf"),
            ("com1", "_com1.pdf"),
            ("Complaint", "Complaint.pdf"),
        ] {
            assert_eq!(safe_name(text, "pdf", "report"), name, "{text:?}");
        }
        assert_eq!(safe_name("", "", ""), "_");
    }

    #[test]
    fn long_names_are_cut_between_characters() {
        let name = safe_name(&"ü".repeat(500), "pdf", "report");
        assert!(name.len() <= LONGEST_NAME && name.ends_with(".pdf"));
        assert!(name.trim_end_matches(".pdf").chars().all(|c| c == 'ü'));
    }
}
