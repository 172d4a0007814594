//! A database of every schema that was shipped opens, migrates and keeps its content.

use returnline_core::api::{Engine, ThisMachine, Wording, read_visit_file};
use returnline_core::records::visit_file::VisitFile;
use returnline_core::store::{Store, backup};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

fn shipped() -> Vec<(u32, PathBuf)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("databases");
    let mut found: Vec<(u32, PathBuf)> = fs::read_dir(folder)
        .expect("listed")
        .filter_map(|entry| {
            let path = entry.expect("an entry").path();
            let number = path
                .file_stem()?
                .to_str()?
                .strip_prefix("schema-")?
                .parse()
                .ok()?;
            Some((number, path))
        })
        .collect();
    found.sort();
    found
}

/// What was answered; the order does not matter.
fn answers(file: &VisitFile) -> BTreeSet<String> {
    let each = file.visit.answers.iter();
    each.map(|answer| format!("{answer:?}")).collect()
}

/// Number of migrations, which is the number of the newest schema.
fn migrations() -> usize {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/data/schema");
    fs::read_dir(folder).expect("listed").count()
}

#[test]
fn every_schema_that_was_shipped_has_its_database() {
    let numbers: Vec<u32> = shipped().into_iter().map(|(number, _)| number).collect();
    let wanted: Vec<u32> = (1..).take(migrations()).collect();
    assert_eq!(
        numbers, wanted,
        "add tests/databases/schema-N.db for the new migration"
    );
}

#[test]
fn an_older_database_is_backed_up_migrated_and_whole() {
    let newest = u32::try_from(migrations()).expect("few");
    for (number, path) in shipped() {
        let folder = tempfile::tempdir().expect("a folder");
        let copy = folder.path().join("calls.db");
        fs::copy(&path, &copy).expect("copied");
        let before = backup::verify(&copy).expect("whole");
        assert!(before.visits > 0);

        let engine = Engine::open(&copy, Box::new(ThisMachine)).expect("opens");
        let listed = engine.visits().expect("listed");
        assert_eq!(
            u64::try_from(listed.len()).expect("few"),
            before.visits,
            "schema {number}"
        );
        drop(engine);

        let kept = folder.path().join(format!("calls.db.schema-{number}"));
        assert_eq!(
            kept.exists(),
            number < newest,
            "backup before migrating from {number}"
        );
        if kept.exists() {
            assert_eq!(backup::verify(&kept).expect("whole"), before);
        }

        // Every call is there as it was written.
        let store = Store::open(&copy).expect("opens");
        let calls = Path::new(env!("CARGO_MANIFEST_DIR")).join("databases/calls");
        for line in store.visits().expect("listed") {
            let record = store.record(line.id).expect("readable");
            let same = fs::read_dir(&calls).expect("listed").any(|sample| {
                let bytes = fs::read(sample.expect("an entry").path()).expect("read");
                let file = read_visit_file(&bytes, Wording::default()).expect("good");
                file.site == record.file.site
                    && file.system == record.file.system
                    && file.commissioning == record.file.commissioning
                    && file.visit.readings.len() == record.file.visit.readings.len()
                    && answers(&file) == answers(&record.file)
            });
            assert!(
                same,
                "schema {number}: {} is not as it was written",
                line.site_name
            );
        }
    }
}
