use super::sites::{put_commissioning, put_site, put_system};
use super::visits::put_visit;
use super::*;
use crate::records::visit_file::VisitFile;
use crate::records::{
    Answer, Commissioning, Level, PlainMeasure, Reading, ReadingId, ReadingPoint, Site, SiteId,
    System, SystemId, Verdict, Visit, VisitId,
};
use crate::units::{Length, Measure, Unit};
use uuid::Uuid;

pub(super) fn now() -> DateTime<Utc> {
    DateTime::from_timestamp(1_788_000_000, 0).expect("a valid time")
}

fn reading(psi: f64) -> Reading {
    let value = PlainMeasure {
        value: psi,
        unit: Unit::Psi,
    };
    Reading::new(ReadingPoint::StaticPressure, value).expect("possible")
}

pub(super) fn record() -> VisitRecord {
    let mut first = reading(8.0);
    first.id = Some(ReadingId(Uuid::from_u128(77)));
    VisitRecord {
        id: VisitId(Uuid::from_u128(3)),
        system_id: SystemId(Uuid::from_u128(2)),
        site_id: SiteId(Uuid::from_u128(1)),
        file: VisitFile {
            site: Site {
                name: "Invented farm".to_owned(),
                elevation: Some(Measure::<Length>::new(1200.0, Unit::Foot)),
                ..Site::default()
            },
            system: System {
                strainer: Some(true),
                ..System::default()
            },
            commissioning: Commissioning {
                flushed: Some(true),
                ..Commissioning::default()
            },
            visit: Visit {
                date: chrono::NaiveDate::from_ymd_opt(2026, 8, 14),
                answers: vec![Answer {
                    finding: "gurgling".to_owned(),
                    is: Level::Yes,
                }],
                readings: vec![first],
                verdicts: vec![Verdict {
                    cause: "air_in_circuit".to_owned(),
                    confirmed: true,
                    by_check: None,
                }],
                ..Visit::default()
            },
        },
    }
}

#[test]
fn a_record_comes_back_as_it_was_kept() {
    let mut store = Store::in_memory().expect("opens");
    let record = record();
    store.put_record(&record, now()).expect("kept");
    store
        .put_record(&record, now())
        .expect("kept once more, as one");
    assert_eq!(store.record(record.id).expect("found"), record);
    assert_eq!(store.visits().expect("listed").len(), 1);
}

#[test]
fn single_entries_are_kept_changed_and_taken_away() {
    let mut store = Store::in_memory().expect("opens");
    let record = record();
    store.put_record(&record, now()).expect("kept");
    let id = ReadingId(Uuid::from_u128(78));
    store
        .put_reading(record.id, id, &reading(9.0), now())
        .expect("kept");
    store
        .put_reading(record.id, id, &reading(10.0), now())
        .expect("changed");
    store
        .put_answer(record.id, "gurgling", None, now())
        .expect("unknown again");
    let visit = store.record(record.id).expect("found").file.visit;
    let values: Vec<f64> = visit.readings.iter().map(|r| r.value().value).collect();
    assert_eq!(values, [8.0, 10.0]);
    assert!(visit.answers.is_empty());
    store
        .remove_reading(record.id, id, now())
        .expect("taken away");
    assert_eq!(
        store
            .record(record.id)
            .expect("found")
            .file
            .visit
            .readings
            .len(),
        1
    );
}

#[test]
fn entries_of_a_visit_that_does_not_exist_are_refused() {
    let mut store = Store::in_memory().expect("opens");
    let error = store.put_answer(VisitId(Uuid::nil()), "gurgling", Some(Level::Yes), now());
    assert_eq!(error.expect_err("refused").code(), "not-found");
}

#[test]
fn a_system_without_its_site_is_refused() {
    let store = Store::in_memory().expect("opens");
    let orphan = store.put_system(
        SystemId(Uuid::from_u128(2)),
        SiteId(Uuid::from_u128(1)),
        &System::default(),
        now(),
    );
    assert!(orphan.is_err(), "foreign keys must hold");
}

#[test]
fn migrations_are_valid_and_a_newer_database_is_refused_untouched() {
    let folder = std::env::temp_dir().join(format!("returnline-store-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    let path = folder.join("newer.db");
    drop(Store::open(&path).expect("opens"));
    let raw = Connection::open(&path).expect("opens");
    raw.pragma_update(None, "user_version", 99).expect("set");
    drop(raw);
    let before = std::fs::read(&path).expect("readable");
    let error = Store::open(&path).map(|_| ()).expect_err("refused");
    assert_eq!(error.code(), "store-newer");
    assert_eq!(std::fs::read(&path).expect("readable"), before);
    std::fs::remove_dir_all(&folder).expect("removable");
}

#[test]
fn a_signature_of_an_older_database_keeps_what_was_recorded_when_it_is_migrated() {
    // The seventh schema knew nothing of what a signature was given for.
    let mut connection = Connection::open_in_memory().expect("opens");
    Migrations::new(MIGRATIONS[..7].iter().map(|sql| M::up(sql)).collect())
        .to_latest(&mut connection)
        .expect("migrated");
    let written = record();
    put_site(&connection, written.site_id, &written.file.site, now()).expect("kept");
    put_system(
        &connection,
        written.system_id,
        written.site_id,
        &written.file.system,
        now(),
    )
    .expect("kept");
    put_commissioning(
        &connection,
        written.system_id,
        &written.file.commissioning,
        now(),
    )
    .expect("kept");
    put_visit(
        &connection,
        written.id,
        written.system_id,
        &written.file.visit,
        now(),
    )
    .expect("kept");
    connection
        .execute(
            "INSERT INTO signature VALUES (?1, 'customer', 'An invented name', 2.5, \
             '[[[0.1,0.5],[0.9,0.5]]]', '2026-08-14T12:40:00-05:00')",
            [written.id.to_string()],
        )
        .expect("kept");

    let store = Store { connection }.prepare().expect("migrated");
    let other = System {
        strainer: Some(false),
        ..System::default()
    };
    store
        .put_system(written.system_id, written.site_id, &other, now())
        .expect("kept");
    let signed = store.record(written.id).expect("there").file;
    assert_eq!(
        (signed.site, signed.system, signed.commissioning),
        (
            written.file.site,
            written.file.system,
            written.file.commissioning
        )
    );
    // Whether the visit changed before the migration is not known, and not said.
    let changed = store.signed_before_a_change(written.id).expect("there");
    assert_eq!(changed, []);
}
