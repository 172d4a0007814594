//! What an office sees of the phones whose files it takes in.

use returnline_core::api::types::{ExchangeChoice, FleetQuery, LearnedView};
use returnline_core::api::{Engine, Issue, ThisMachine, Wording};
use returnline_core::report::document::PageSize;
use returnline_core::text::Language;
use std::path::Path;

fn open(path: &Path) -> Engine {
    Engine::open(path, Box::new(ThisMachine)).expect("opens")
}

fn confirmed(learned: &LearnedView) -> Vec<(String, u32)> {
    let causes = learned.causes.iter();
    let mut causes: Vec<_> = causes.map(|one| (one.id.clone(), one.confirmed)).collect();
    causes.sort();
    causes
}

/// What technicians confirmed on their phones teaches the office's graph, and
/// its board says the same as theirs, with nobody named in the file.
#[test]
fn the_office_learns_from_what_came_on_files() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut phone = open(&folder.path().join("phone.db"));
    let mut office = open(&folder.path().join("office.db"));
    assert_eq!(office.learned().expect("known").own, 0);
    phone.invent_fleet(300, 7).expect("made");
    let theirs = phone.learned().expect("known");
    assert!(theirs.own > 20, "{}", theirs.own);

    let carried = folder.path().join("phone.rlx");
    let choice = ExchangeChoice {
        without_personal: true,
        ..ExchangeChoice::default()
    };
    phone.export_records(&choice, &carried).expect("written");
    for _ in 0..2 {
        office.import_records(&carried).expect("taken");
        let ours = office.learned().expect("known");
        assert_eq!(ours.own, theirs.own);
        assert_eq!(confirmed(&ours), confirmed(&theirs));
    }
    let board = |engine: &mut Engine| {
        let mut board = engine.board(&FleetQuery::default()).expect("a board");
        // Equally frequent causes stand as they came.
        board.causes.sort_by(|a, b| a.cause.cmp(&b.cause));
        (board.headline, board.causes, board.waiting)
    };
    let (said, causes, waiting) = board(&mut phone);
    let (headline, mut ours, curve) = board(&mut office);
    // Without words there is no complaint, so a call that stayed unexplained
    // is a callback only where it was kept.
    assert_ne!(said, headline);
    assert_eq!(curve.systems, waiting.systems);
    for (ours, theirs) in ours.iter_mut().zip(&causes) {
        assert_eq!(
            (&ours.cause, ours.count, ours.hours.round()),
            (&theirs.cause, theirs.count, theirs.hours.round())
        );
    }
    assert_eq!(ours.len(), causes.len());
}

/// The whole file makes the whole board.
#[test]
fn the_office_sees_the_board_of_the_phone() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut phone = open(&folder.path().join("phone.db"));
    let mut office = open(&folder.path().join("office.db"));
    phone.invent_fleet(300, 8).expect("made");
    let carried = folder.path().join("phone.rlx");
    phone
        .export_records(&ExchangeChoice::default(), &carried)
        .expect("written");
    office.import_records(&carried).expect("taken");
    let query = FleetQuery::default();
    let [theirs, ours] = [&mut phone, &mut office].map(|engine| engine.board(&query));
    let (theirs, ours) = (theirs.expect("a board"), ours.expect("a board"));
    assert_eq!(ours.headline, theirs.headline);
    assert_eq!(ours.waiting, theirs.waiting);
    assert_eq!(ours.fixes, theirs.fixes);
    assert_eq!(ours.differences, theirs.differences);
}

#[test]
fn the_managers_report_is_written_in_every_language() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut office = open(&folder.path().join("office.db"));
    let issued = chrono::DateTime::parse_from_rfc3339("2026-08-14T10:00:00Z").expect("a time");
    let issue = || Issue::new(issued, PageSize::A4);
    let empty = office.fleet_pdf(&FleetQuery::default(), Wording::default(), issue());
    assert!(empty.expect("written").starts_with(b"%PDF-"));
    office.invent_fleet(600, 9).expect("made");
    let mut sizes = Vec::new();
    for language in Language::ALL {
        for from in [None, Some("2024-01-01")] {
            let wording = Wording {
                language,
                ..Wording::default()
            };
            let mut query = FleetQuery::default();
            query.filter.from = from.map(str::to_owned);
            let pdf = office.fleet_pdf(&query, wording, issue()).expect("written");
            let again = office.fleet_pdf(&query, wording, issue()).expect("written");
            assert!(pdf == again, "the same records give the same bytes");
            assert!(pdf.starts_with(b"%PDF-"));
            sizes.push(pdf.len());
        }
    }
    assert!(sizes.iter().all(|size| *size > 10_000), "{sizes:?}");
}
