//! What a person reads of a trouble with the store: what it is, and the way on.

use crate::api::{ApiError, Wording};
use crate::store::StoreError;
use crate::text::Language;
use rusqlite::ffi::{Error as Code, ErrorCode};
use std::io::ErrorKind;

fn sqlite(code: ErrorCode) -> StoreError {
    let error = Code {
        code,
        extended_code: 0,
    };
    rusqlite::Error::SqliteFailure(error, None).into()
}

fn file(kind: ErrorKind) -> StoreError {
    StoreError::File {
        path: "/kept/calls.db".into(),
        source: kind.into(),
    }
}

#[test]
fn every_trouble_is_said_with_its_way_on_in_both_languages() {
    let full = ["Make room", "Libere espacio"];
    let read_only = ["Choose another folder", "Elija otra carpeta"];
    let cases = [
        (sqlite(ErrorCode::DiskFull), "store-disk-full", full),
        (file(ErrorKind::StorageFull), "store-disk-full", full),
        (sqlite(ErrorCode::ReadOnly), "store-read-only", read_only),
        (
            file(ErrorKind::ReadOnlyFilesystem),
            "store-read-only",
            read_only,
        ),
        (
            sqlite(ErrorCode::DatabaseBusy),
            "store-busy",
            ["Close it and try again", "Ciérrelo e inténtelo de nuevo"],
        ),
        (
            sqlite(ErrorCode::DatabaseCorrupt),
            "store-damaged",
            ["Restore a backup", "Restaure una copia de seguridad"],
        ),
        (
            sqlite(ErrorCode::CannotOpen),
            "store-cannot-open",
            ["can be written", "se puede escribir"],
        ),
        (
            StoreError::NewerDatabase {
                found: 4_000,
                newest: 6,
            },
            "store-newer",
            ["Update the program", "Actualice el programa"],
        ),
        (
            sqlite(ErrorCode::SystemIoFailure),
            "store-failed",
            ["Enter it again", "Introdúzcalo de nuevo"],
        ),
        (
            file(ErrorKind::NotFound),
            "store-file",
            ["Check that it is there", "Compruebe que está ahí"],
        ),
        (
            StoreError::TooManyPhotos,
            "too-many-photos",
            ["Take one away first", "Quite antes una"],
        ),
    ];
    for (error, code, [english, spanish]) in cases {
        for (language, way_on) in [(Language::English, english), (Language::Spanish, spanish)] {
            let wording = Wording {
                language,
                ..Wording::default()
            };
            let said = ApiError::store(&error, wording);
            assert_eq!(said.code, code, "{error}");
            assert!(said.message.contains(way_on), "{language:?}: {said}");
            assert!(!said.message.contains('«'), "{language:?}: {said}");
            assert!(!said.message.contains("{$"), "{language:?}: {said}");
        }
    }
}
