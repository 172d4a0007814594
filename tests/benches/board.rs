//! The board over an invented fleet of 100 000 visits, and taking 1 000 visits in.

use criterion::{Criterion, criterion_group, criterion_main};
use returnline_core::api::types::{ExchangeChoice, FleetFilter, FleetGroup, FleetQuery};
use returnline_core::api::{Engine, ThisMachine};
use rusqlite::Connection;
use std::hint::black_box;
use std::path::Path;

const VISITS: usize = 100_000;

fn open(path: &Path) -> Engine {
    Engine::open(path, Box::new(ThisMachine)).expect("opens")
}

fn queries() -> Vec<(&'static str, FleetQuery)> {
    let with = |change: fn(&mut FleetQuery)| {
        let mut query = FleetQuery::default();
        change(&mut query);
        query
    };
    vec![
        ("everything", FleetQuery::default()),
        (
            "one crew",
            with(|query| {
                query.filter.groups = vec![FleetGroup {
                    dimension: "crew".to_owned(),
                    group: "Crew Hazel".to_owned(),
                }];
            }),
        ),
        (
            "one cause",
            with(|query| {
                query.filter.cause = Some("debris-left-in-loop".to_owned());
            }),
        ),
        (
            "one year of visits",
            with(|query| {
                query.filter.from = Some("2024-01-01".to_owned());
                query.filter.to = Some("2024-12-31".to_owned());
            }),
        ),
        (
            "change of practice",
            with(|query| query.changed_on = Some("2021-01-01".to_owned())),
        ),
    ]
}

fn board(c: &mut Criterion) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("invented.db");
    open(&path).invent_fleet(VISITS, 1).expect("made");

    let mut group = c.benchmark_group("board of 100 000 visits");
    group.sample_size(10);
    group.bench_function("first picture, database closed", |b| {
        b.iter(|| open(&path).board(&FleetQuery::default()).expect("a board"));
    });
    let mut engine = open(&path);
    for (name, query) in queries() {
        group.bench_function(name, |b| b.iter(|| engine.board(&query).expect("a board")));
    }
    let filter = FleetFilter {
        cause: Some("debris-left-in-loop".to_owned()),
        ..FleetFilter::default()
    };
    group.bench_function("visits behind a figure", |b| {
        b.iter(|| engine.fleet_visits(&filter, 0, 50).expect("visits"));
    });
    // What the prepared rows are worth: one part of the board straight from the records.
    let plain = Connection::open(&path).expect("opens");
    group.bench_function("plain SQL, rate by crew only", |b| {
        b.iter(|| {
            let mut statement = plain
                .prepare_cached(
                    "SELECT json_extract(commissioning.document, '$.crew'), count(*) \
                     FROM visit JOIN commissioning ON commissioning.system_id = visit.system_id \
                     WHERE complaint IS NOT NULL GROUP BY 1",
                )
                .expect("prepared");
            let rows = statement
                .query_map([], |row| row.get::<_, i64>(1))
                .expect("rows");
            black_box(rows.map(|row| row.expect("a row")).sum::<i64>())
        });
    });
    group.finish();

    let phone = folder.path().join("phone.db");
    let carried = folder.path().join("phone.rlx");
    let mut engine = open(&phone);
    engine.invent_fleet(1_000, 2).expect("made");
    engine
        .export_records(&ExchangeChoice::default(), &carried)
        .expect("written");
    let mut group = c.benchmark_group("exchange");
    group.sample_size(10);
    group.bench_function("import of 1 000 visits into an empty database", |b| {
        b.iter_with_setup(
            || tempfile::tempdir().expect("a folder"),
            |folder| {
                let mut office = open(&folder.path().join("office.db"));
                office.import_records(&carried).expect("taken");
            },
        );
    });
    group.bench_function("the same 1 000 visits again", |b| {
        let mut office = open(&folder.path().join("office.db"));
        office.import_records(&carried).expect("taken");
        b.iter(|| office.import_records(&carried).expect("taken"));
    });
    group.bench_function("export of 1 000 visits", |b| {
        let to = folder.path().join("again.rlx");
        b.iter(|| {
            engine
                .export_records(&ExchangeChoice::default(), &to)
                .expect("written")
        });
    });
    group.finish();
}

criterion_group!(benches, board);
criterion_main!(benches);
