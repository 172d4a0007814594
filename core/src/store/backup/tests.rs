use super::*;
use crate::store::tests::{now, record};
use rusqlite::ffi::ErrorCode;
use std::io::{Seek, SeekFrom, Write};

fn filled(path: &Path) -> Store {
    let mut store = Store::open(path).expect("opens");
    store.put_record(&record(), now()).expect("kept");
    store
}

#[test]
fn a_backup_holds_what_the_database_holds_and_comes_back() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    let copy = folder.path().join("copy.db");
    let store = filled(&path);
    write(&store, &copy).expect("written");
    assert_eq!(
        verify(&copy).expect("whole"),
        store.content().expect("read")
    );
    drop(store);

    fs::write(
        &path,
        "not a database at all, and long enough to be read as one",
    )
    .expect("spoilt");
    let error = Store::open(&path).map(|_| ()).expect_err("refused");
    assert_eq!(error.code(), "store-damaged");

    let aside = restore(&copy, &path)
        .expect("restored")
        .expect("something was there");
    assert!(
        fs::read_to_string(aside)
            .expect("kept")
            .starts_with("not a database")
    );
    let store = Store::open(&path).expect("opens again");
    assert_eq!(store.record(record().id).expect("found"), record());
}

#[test]
fn a_flipped_page_is_found_when_the_database_is_opened() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    drop(filled(&path));
    let mut file = fs::OpenOptions::new()
        .write(true)
        .open(&path)
        .expect("opened");
    for page in 2..8 {
        file.seek(SeekFrom::Start(page * 4096)).expect("sought");
        file.write_all(&[0xA5; 512]).expect("spoilt");
    }
    let error = Store::open(&path).map(|_| ()).expect_err("refused");
    assert_eq!(error.code(), "store-damaged");
    assert_eq!(
        verify(&path).map_err(|error| error.code()),
        Err("store-damaged")
    );
}

#[test]
fn a_truncated_database_is_refused_and_a_truncated_backup_restores_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    let copy = folder.path().join("copy.db");
    let store = filled(&path);
    write(&store, &copy).expect("written");
    drop(store);
    let before = fs::read(&path).expect("read");
    let bytes = fs::read(&copy).expect("read");
    for keep in [0, 1, 100, 4096, bytes.len() / 2, bytes.len() - 1] {
        fs::write(&copy, &bytes[..keep]).expect("cut");
        restore(&copy, &path).expect_err("refused");
        assert_eq!(
            fs::read(&path).expect("read"),
            before,
            "cut to {keep} bytes"
        );
    }
    fs::write(&path, &before[..before.len() / 2]).expect("cut");
    assert_eq!(
        Store::open(&path).map(|_| ()).map_err(|error| error.code()),
        Err("store-damaged")
    );
}

#[test]
fn a_backup_with_a_spoilt_document_is_not_whole() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    let copy = folder.path().join("copy.db");
    write(&filled(&path), &copy).expect("written");
    let before = fs::read(&path).expect("read");
    let connection = Connection::open(&copy).expect("opened");
    connection
        .execute_batch(
            "PRAGMA ignore_check_constraints = true; UPDATE system SET document = '{;}';",
        )
        .expect("spoilt");
    drop(connection);
    let spoilt = fs::read(&copy).expect("read");
    let error = restore(&copy, &path).expect_err("refused");
    assert_eq!(error.code(), "store-damaged");
    assert_eq!(fs::read(&path).expect("read"), before);
    assert_eq!(
        fs::read(&copy).expect("read"),
        spoilt,
        "looking changes nothing"
    );
}

#[test]
fn automatic_copies_are_made_when_due_and_the_oldest_go() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut store = filled(&folder.path().join("calls.db"));
    let backups = Backups::in_folder(folder.path().join("backups"));
    assert!(backups.keep(&store, now()).expect("kept").is_some());
    let hour = now() + TimeDelta::hours(1);
    assert_eq!(backups.keep(&store, hour).expect("looked"), None, "fresh");
    let week = now() + TimeDelta::days(7);
    assert_eq!(
        backups.keep(&store, week).expect("looked"),
        None,
        "unchanged"
    );
    for day in 1..12 {
        let now = now() + TimeDelta::days(day);
        store.put_record(&record(), now).expect("kept");
        assert!(
            backups.keep(&store, now).expect("kept").is_some(),
            "day {day}"
        );
    }
    let numbers: Vec<u32> = backups.list().iter().map(|backup| backup.number).collect();
    assert_eq!(numbers, (6..=12).rev().collect::<Vec<_>>());
}

#[test]
fn a_clock_set_back_neither_stops_nor_loses_backups() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut store = filled(&folder.path().join("calls.db"));
    let backups = Backups::in_folder(folder.path().join("backups"));
    backups.keep(&store, now()).expect("kept");
    let earlier = now() - TimeDelta::days(400);
    store.put_record(&record(), earlier).expect("kept");
    let second = backups.keep(&store, earlier).expect("kept").expect("due");
    assert_eq!(second.number, 2);
    assert_eq!(backups.list()[0], second, "the later copy is the newest");
}

#[test]
fn a_restore_cut_short_leaves_the_old_or_the_new_database() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    let copy = folder.path().join("copy.db");
    write(&filled(&path), &copy).expect("written");

    // Before the old one is put aside.
    fs::copy(&copy, beside(&path, RESTORING)).expect("copied");
    Store::open(&path).expect("the old one opens");
    assert!(!beside(&path, RESTORING).exists());

    // After it was put aside, its log still there.
    fs::rename(&path, folder.path().join("gone.db")).expect("moved");
    fs::write(beside(&path, "-wal"), [7; 4096]).expect("written");
    fs::copy(&copy, beside(&path, RESTORING)).expect("copied");
    let store = Store::open(&path).expect("the new one opens");
    assert_eq!(store.content().expect("read").visits, 1);
}

#[test]
fn a_full_disk_is_said_and_changes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut store = filled(&folder.path().join("calls.db"));
    let before = store.content().expect("read");
    let pages: i64 = store
        .connection
        .pragma_query_value(None, "page_count", |row| row.get(0))
        .expect("counted");
    store
        .connection
        .pragma_update(None, "max_page_count", pages)
        .expect("limited");
    let mut large = record();
    large.id = crate::records::VisitId(uuid::Uuid::from_u128(99));
    large.file.visit.notes = Some("a long note ".repeat(20_000));
    let error = store.put_record(&large, now()).expect_err("full");
    assert_eq!(error.code(), "store-disk-full");
    assert_eq!(store.content().expect("read"), before);
}

#[test]
fn a_database_held_by_another_is_said_to_be_busy() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    let mut store = filled(&path);
    store
        .connection
        .busy_timeout(std::time::Duration::from_millis(20))
        .expect("set");
    let other = Connection::open(&path).expect("opened");
    other.execute_batch("BEGIN EXCLUSIVE").expect("held");
    let error = store.put_record(&record(), now()).expect_err("busy");
    assert_eq!(error.code(), "store-busy");
    other.execute_batch("ROLLBACK").expect("let go");
    store.put_record(&record(), now()).expect("kept");
}

#[test]
fn a_folder_that_cannot_be_written_is_said() {
    let folder = tempfile::tempdir().expect("a folder");
    let store = filled(&folder.path().join("calls.db"));
    let file = folder.path().join("a-file");
    fs::write(&file, "x").expect("written");
    let backups = Backups::in_folder(file.join("backups"));
    let error = backups.add(&store, now()).expect_err("no folder");
    assert_eq!(error.code(), "store-file");
    let read_only = rusqlite::Error::SqliteFailure(
        rusqlite::ffi::Error {
            code: ErrorCode::ReadOnly,
            extended_code: 8,
        },
        None,
    );
    assert_eq!(StoreError::from(read_only).code(), "store-read-only");
}

#[test]
fn a_backup_of_a_newer_program_is_not_restored() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("calls.db");
    let copy = folder.path().join("copy.db");
    write(&filled(&path), &copy).expect("written");
    Connection::open(&copy)
        .and_then(|connection| connection.pragma_update(None, "user_version", 4_000))
        .expect("changed");
    let error = restore(&copy, &path).expect_err("refused");
    assert_eq!(error.code(), "store-newer");
    assert_eq!(verify(&path).expect("whole").visits, 1);
}
