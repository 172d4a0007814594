//! What was signed stays what was signed.

use super::{engine, entry, started};
use crate::api::Engine;
use crate::api::types::{FieldEntry, NewVisit, SignatureEntry, StepChange};

fn sign(engine: &mut Engine, visit: &str, role: &str) {
    let entry = SignatureEntry {
        role: role.to_owned(),
        name: "An invented name".to_owned(),
        aspect: 2.5,
        strokes: vec![vec![[0.1, 0.5], [0.9, 0.5]]],
    };
    engine.set_signature(visit, &entry).expect("signed");
}

fn circuits(text: &str) -> FieldEntry {
    FieldEntry {
        id: "ground.circuits".to_owned(),
        text: Some(text.to_owned()),
        unit: None,
    }
}

fn changed(engine: &Engine, visit: &str) -> Vec<bool> {
    let kept = engine.attachments(visit).expect("there");
    let signatures = kept.signatures.iter();
    signatures.map(|given| given.changed.is_some()).collect()
}

/// A signed visit, and a second one at the same system.
fn two(engine: &mut Engine) -> (String, String) {
    let first = started(engine);
    engine.set_field(&first, &circuits("3")).expect("kept");
    for role in ["technician", "customer"] {
        sign(engine, &first, role);
    }
    let new = NewVisit {
        site: String::new(),
        complaint: None,
        same_system_as: Some(first.clone()),
    };
    let second = engine.start_visit(&new).expect("started").id;
    (first, second)
}

#[test]
fn a_second_visit_that_changes_the_system_changes_nothing_under_the_signatures_of_the_first() {
    let mut engine = engine();
    let (first, second) = two(&mut engine);
    let before = engine.record(&first).expect("there").file;
    let answer = format!("{:?}", engine.answer(&first).expect("worked out"));
    engine.set_field(&second, &circuits("5")).expect("kept");
    let name = FieldEntry {
        id: "site.name".to_owned(),
        text: Some("Invented mill".to_owned()),
        unit: None,
    };
    engine.set_field(&second, &name).expect("kept");
    // A cause confirmed elsewhere teaches the priors, but not what was signed.
    let verdict = crate::api::types::VerdictEntry {
        cause: "air-left-in-circuit".to_owned(),
        confirmed: Some(true),
        by_check: None,
    };
    engine.set_verdict(&second, &verdict).expect("kept");

    assert_eq!(engine.record(&first).expect("there").file, before);
    let now = format!("{:?}", engine.answer(&first).expect("worked out"));
    assert_eq!(now, answer);
    assert_eq!(changed(&engine, &first), [false, false]);
    let there = engine.record(&second).expect("there").file;
    assert_ne!(there.system, before.system);
    assert_eq!(there.site.name, "Invented mill");

    // A third visit knows the system as it is now, not as it was signed.
    let new = NewVisit {
        site: String::new(),
        complaint: None,
        same_system_as: Some(first.clone()),
    };
    let third = engine.start_visit(&new).expect("started").id;
    assert_eq!(
        engine.record(&third).expect("there").file.system,
        there.system
    );
    assert_eq!(
        engine.record(&second).expect("there").file.system,
        there.system
    );
}

#[test]
fn the_system_of_a_signed_visit_is_changed_only_after_its_signatures_are_taken_away() {
    let mut engine = engine();
    let (first, second) = two(&mut engine);
    let refusal = engine
        .set_field(&first, &circuits("4"))
        .expect_err("signed");
    assert_eq!(refusal.code, "visit-signed");
    let refusal = engine.copy_system(&first, &second).expect_err("signed");
    assert_eq!(refusal.code, "visit-signed");
    let refusal = engine.join_site(&first, &second).expect_err("signed");
    assert_eq!(refusal.code, "visit-signed");
    assert!(engine.visit(&first).expect("there").signed.is_some());
    for role in ["technician", "customer"] {
        engine.clear_signature(&first, role).expect("cleared");
    }
    engine.set_field(&first, &circuits("4")).expect("kept");
    assert!(engine.visit(&first).expect("there").signed.is_none());
}

#[test]
fn what_is_entered_after_a_signature_is_kept_and_said_beside_it() {
    let mut engine = engine();
    let first = started(&mut engine);
    sign(&mut engine, &first, "technician");
    assert_eq!(changed(&engine, &first), [false]);
    let read = entry("static_pressure", "20", "psi");
    engine.put_reading(&first, &read).expect("kept");
    assert_eq!(changed(&engine, &first), [true]);
    // The second signature is given for the visit as it is now.
    sign(&mut engine, &first, "customer");
    assert_eq!(changed(&engine, &first), [true, false]);
    // Taken back, the visit is again what the first was given for.
    engine
        .undo_last(&first)
        .expect_err("a signature begins anew");
    let change = StepChange::Parts {
        text: "two tags".to_owned(),
    };
    engine.change_step(&first, "a-step", &change).expect("kept");
    assert_eq!(changed(&engine, &first), [true, true]);
    engine.undo_last(&first).expect("taken back");
    assert_eq!(changed(&engine, &first), [true, false]);
}
