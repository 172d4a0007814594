use super::{engine, started};
use crate::api::types::{DraftView, NewVisit};
use crate::api::{Engine, LONGEST_DRAFT};

fn draft(place: &str, text: &str) -> DraftView {
    DraftView {
        place: place.to_owned(),
        text: text.to_owned(),
    }
}

fn drafts(engine: &Engine, visit: &str) -> Vec<DraftView> {
    engine.visit(visit).expect("there").drafts
}

#[test]
fn what_is_typed_stays_as_it_was_typed_and_changes_nothing_else() {
    let mut engine = engine();
    let id = started(&mut engine);
    let before = engine.visit(&id).expect("there");
    for text in ["4", "4 no number"] {
        let place = "field/ground.length";
        engine
            .put_draft(Some(&id), place, Some(text))
            .expect("kept");
    }
    engine
        .put_draft(Some(&id), "skip/purge", Some(""))
        .expect("kept");
    let after = engine.visit(&id).expect("there");
    let typed = [
        draft("field/ground.length", "4 no number"),
        draft("skip/purge", ""),
    ];
    assert_eq!(after.drafts, typed);
    assert_eq!(
        (after.groups, after.undo),
        (before.groups, before.undo),
        "a draft is no entry"
    );
    for place in ["field/ground.length", "skip/purge"] {
        engine.put_draft(Some(&id), place, None).expect("forgotten");
    }
    assert_eq!(drafts(&engine, &id), []);
}

#[test]
fn what_is_typed_into_the_settings_waits_there_and_changes_none_of_them() {
    let mut engine = engine();
    let before = engine.settings().expect("there");
    assert_eq!(before.drafts, []);
    let place = "instrument/dial_gauge";
    for text in ["1", "1."] {
        engine.put_draft(None, place, Some(text)).expect("kept");
    }
    let typed = engine.settings().expect("there");
    assert_eq!(typed.drafts, [draft(place, "1.")]);
    assert_eq!(typed.instruments, before.instruments);
    // It is no draft of a visit.
    let visit = started(&mut engine);
    assert_eq!(drafts(&engine, &visit), []);
    let long = "x".repeat(LONGEST_DRAFT + 1);
    let error = engine
        .put_draft(None, place, Some(&long))
        .expect_err("long");
    assert_eq!(error.code, "text-too-long");
    engine.put_draft(None, place, None).expect("forgotten");
    assert_eq!(engine.settings().expect("there").drafts, []);
}

#[test]
fn a_draft_belongs_to_its_visit_and_is_bounded() {
    let mut engine = engine();
    let id = started(&mut engine);
    let other = NewVisit {
        site: "Invented mill".to_owned(),
        complaint: None,
        same_system_as: None,
    };
    let other = engine.start_visit(&other).expect("started").id;
    engine.put_draft(Some(&id), "a", Some("1")).expect("kept");
    assert_eq!(drafts(&engine, &other), []);

    let long = "x".repeat(LONGEST_DRAFT + 1);
    for (place, text) in [("a", long.as_str()), (&long[..300], "1")] {
        let error = engine
            .put_draft(Some(&id), place, Some(text))
            .expect_err("long");
        assert_eq!(error.code, "text-too-long");
    }
    let nowhere = "00000000-0000-7000-8000-000000000000";
    let error = engine
        .put_draft(Some(nowhere), "a", Some("1"))
        .expect_err("none");
    assert_eq!(error.code, "not-found");
    assert_eq!(drafts(&engine, &id), [draft("a", "1")]);
}
