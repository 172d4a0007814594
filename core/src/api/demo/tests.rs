use super::super::tests::{engine, started};
use super::super::types::{
    ExchangeChoice, FieldEntry, FleetQuery, NewVisit, ReadingEntry, VerdictEntry,
};
use super::*;
use crate::report::chart::{Role, Shape};

fn own_visit(engine: &mut Engine, earlier: Option<&str>) -> String {
    let new = NewVisit {
        site: "Own workshop".to_owned(),
        complaint: Some("It hums".to_owned()),
        same_system_as: earlier.map(str::to_owned),
    };
    engine.start_visit(&new).expect("started").id
}

fn confirm(engine: &mut Engine, visit: &str) {
    let entry = VerdictEntry {
        cause: "air-left-in-circuit".to_owned(),
        confirmed: Some(true),
        by_check: None,
    };
    engine.set_verdict(visit, &entry).expect("kept");
}

/// Everything that the engine shows of one's own records.
fn shown(engine: &mut Engine) -> String {
    let visits = engine.visits().expect("listed");
    let each: Vec<_> = visits
        .iter()
        .map(|line| engine.visit(&line.id).expect("opened"))
        .collect();
    let board = engine.board(&FleetQuery::default()).expect("counted");
    let learned = engine.learned().expect("counted");
    format!("{visits:?}\n{each:?}\n{board:?}\n{learned:?}")
}

#[test]
fn nothing_is_invented_until_it_is_asked_for_and_removing_leaves_the_rest_as_it_was() {
    let mut engine = engine();
    assert_eq!(engine.demo().expect("counted").visits, 0);
    let own = own_visit(&mut engine, None);
    confirm(&mut engine, &own);
    let before = shown(&mut engine);

    let demo = engine.load_demo().expect("loaded");
    assert!(demo.visits >= PAST, "{demo:?}");
    assert!(demo.shown.contains("invented"), "{}", demo.shown);
    let lines = engine.visits().expect("listed");
    assert_eq!(lines.len(), demo.visits + 1);
    for line in &lines {
        assert_eq!(line.demo, line.id != own);
        assert_eq!(line.demo, line.site.contains("(invented)"), "{}", line.site);
    }
    assert_ne!(shown(&mut engine), before);
    // Once is enough.
    assert_eq!(engine.load_demo().expect("there"), demo);

    let after = engine.remove_demo().expect("removed");
    assert_eq!((after.visits, after.systems), (0, 0));
    assert_eq!(shown(&mut engine), before);
    // It can come again.
    assert_eq!(engine.load_demo().expect("loaded").visits, demo.visits);
}

#[test]
fn what_was_entered_at_an_invented_visit_goes_and_an_own_visit_there_stays() {
    let mut engine = engine();
    engine.load_demo().expect("loaded");
    let call = engine.visits().expect("listed")[0].id.clone();
    let mine = own_visit(&mut engine, Some(&call));
    let name = FieldEntry {
        id: "site.contact".to_owned(),
        text: Some("Nobody".to_owned()),
        unit: None,
    };
    engine.set_field(&call, &name).expect("kept");
    let reading = ReadingEntry {
        id: None,
        point: "static_pressure".to_owned(),
        text: "12".to_owned(),
        unit: "psi".to_owned(),
        accuracy: None,
        instrument: None,
        mode: None,
        phase: "left".to_owned(),
        circuit: None,
    };
    engine.put_reading(&call, &reading).expect("kept");
    confirm(&mut engine, &call);
    assert_eq!(engine.demo().expect("counted").own, 1);

    engine.remove_demo().expect("removed");
    let left = engine.visits().expect("listed");
    assert_eq!(left.len(), 1);
    assert_eq!((left[0].id.as_str(), left[0].demo), (mine.as_str(), false));
    let board = engine.board(&FleetQuery::default()).expect("counted");
    assert!(board.causes.is_empty(), "{:?}", board.causes);
}

#[test]
fn invented_verdicts_teach_nothing() {
    let mut engine = engine();
    engine.load_demo().expect("loaded");
    let call = engine.visits().expect("listed")[0].id.clone();
    confirm(&mut engine, &call);
    assert_eq!(engine.learned().expect("counted").own, 0);
}

#[test]
fn the_board_says_that_some_of_it_is_invented() {
    let mut engine = engine();
    engine.load_demo().expect("loaded");
    let board = engine.board(&FleetQuery::default()).expect("counted");
    assert!(board.notes[0].contains("invented"), "{:?}", board.notes);
    engine.remove_demo().expect("removed");
    let board = engine.board(&FleetQuery::default()).expect("counted");
    assert!(!board.notes.iter().any(|note| note.contains("invented")));
}

#[test]
fn what_is_invented_never_leaves_the_device() {
    let mut engine = engine();
    engine.load_demo().expect("loaded");
    let own = started(&mut engine);
    let call = engine.visits().expect("listed");
    let call = call.iter().find(|line| line.demo).expect("one").id.clone();
    let mine = own_visit(&mut engine, Some(&call));
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("all.rlx");
    for visits in [vec![], vec![own.clone(), call, mine.clone()]] {
        let choice = ExchangeChoice {
            visits,
            systems: Vec::new(),
            without_personal: false,
        };
        engine.export_records(&choice, &file).expect("written");
        let mut other = super::super::tests::engine();
        other.import_records(&file).expect("taken in");
        let there = other.visits().expect("listed");
        let mut ids: Vec<&str> = there.iter().map(|line| line.id.as_str()).collect();
        ids.sort_unstable();
        let mut wanted = [own.as_str(), mine.as_str()];
        wanted.sort_unstable();
        assert_eq!(ids, wanted);
    }
}

#[test]
fn the_picture_of_the_year_shows_what_the_gauge_read_before() {
    let mut engine = engine();
    engine.load_demo().expect("loaded");
    let visits = engine.visits().expect("listed");
    let call = visits.iter().find(|line| {
        let cottage = line.site.starts_with("Mill Road");
        cottage && line.complaint.is_some()
    });
    let call = call.expect("the call that lost its pressure");
    let pictures = engine.open_call(&call.id).expect("opened").pictures(230.0);
    let mut charts = pictures.charts.iter();
    let chart = charts.rfind(|chart| chart.title.contains("seasons"));
    let chart = chart.expect("a sealed loop has its year");
    // Two visits before, and three readings of the visit itself, two dated earlier.
    for read in [
        "38 psi (2026-04-14)",
        "21 psi (2026-06-09)",
        "9 psi (2026-08-04)",
        "8 psi (2026-08-12)",
        "8 psi (2026-08-20)",
    ] {
        assert!(chart.caption.contains(read), "{read}: {}", chart.caption);
    }
    let open = |shape: &&Shape| {
        matches!(
            shape,
            Shape::Circle {
                fill: Some(Role::Paper),
                ..
            }
        )
    };
    // One more stands in the legend.
    assert_eq!(chart.drawing.items.iter().filter(open).count(), 6);
    // Without its history the picture is as before.
    let own = own_visit(&mut engine, None);
    assert!(
        engine
            .open_call(&own)
            .expect("opened")
            .pictures(230.0)
            .charts
            .iter()
            .all(|chart| !chart.caption.contains("Read before"))
    );
}
