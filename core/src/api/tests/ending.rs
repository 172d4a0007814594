//! How a visit ends: put right and proven only by somebody who knows what is open.

use super::{engine, entry};
use crate::api::types::{FieldEntry, ReadingEntry, ReportRequest};
use crate::api::{ApiError, Engine};
use crate::records::Outcome;

/// A sealed loop in which air was found.
fn visit(engine: &mut Engine) -> String {
    let file = br#"{"format":"returnline-visit","version":1,
        "system":{"flow_centre":{"kind":"sealed"}},
        "visit":{"verdicts":[{"cause":"air-left-in-circuit","confirmed":true}],
        "date":"2026-08-14"}}"#;
    engine.take_visit_file(file).expect("taken").id
}

fn end(engine: &mut Engine, visit: &str, outcome: &str) -> Result<(), ApiError> {
    let entry = FieldEntry {
        id: "visit.outcome".to_owned(),
        text: Some(outcome.to_owned()),
        unit: None,
    };
    engine.set_field(visit, &entry).map(drop)
}

fn outcome(engine: &Engine, visit: &str) -> Option<Outcome> {
    engine.record(visit).expect("there").file.visit.outcome
}

#[test]
fn put_right_and_proven_is_refused_while_steps_and_proofs_are_open_and_says_which() {
    let mut engine = engine();
    let id = visit(&mut engine);
    // No band of a loop at rest reaches down to 1 psi.
    let left = ReadingEntry {
        phase: "left".to_owned(),
        mode: Some("idle".to_owned()),
        ..entry("static_pressure", "1", "psi")
    };
    engine.put_reading(&id, &left).expect("kept");
    let refusal = end(&mut engine, &id, "fixed").expect_err("refused");
    assert_eq!(refusal.code, "not-proven");
    assert_eq!(outcome(&engine, &id), None);
    let plan = engine
        .answer(&id)
        .expect("worked out")
        .plan
        .expect("a plan");
    let open: Vec<&str> = refusal.context["open"].lines().collect();
    assert_eq!(open, plan.unproved);
    let steps = format!("These steps are still to do: 1 to {}.", plan.steps.len());
    assert_eq!(open[0], steps);
    let told = |words: &str| open.iter().any(|line| line.contains(words));
    assert!(told(" 1 psi, not as it should be"), "{open:?}");
    for unread in plan
        .proof
        .iter()
        .filter(|proof| !proof.later && proof.after.is_none())
    {
        assert!(told(&format!("{}: not read", unread.label)), "{open:?}");
    }
    // Any other outcome may be chosen, and this one by who knows.
    for other in ["partly", "handed_over", "open"] {
        end(&mut engine, &id, other).expect("kept");
    }
    end(&mut engine, &id, "fixed").expect_err("refused");
    let view = engine.end_as_proven(&id).expect("kept");
    assert_eq!(outcome(&engine, &id), Some(Outcome::Fixed));
    assert!(view.undo.is_some());
}

#[test]
fn reports_of_a_visit_that_was_ended_with_proofs_open_do_not_say_that_it_was_checked() {
    let mut engine = engine();
    let id = visit(&mut engine);
    engine.end_as_proven(&id).expect("kept");
    let request = ReportRequest::default();
    let technician = ReportRequest {
        reader: "technician".to_owned(),
        ..request.clone()
    };
    let (call, _) = engine.call_for(&id, &technician).expect("read");
    let issue = engine.issue(&id, &request, call.wording).expect("gathered");
    let service = call.service_content(&issue);
    assert!(service.work.is_some());
    let plan = engine
        .answer(&id)
        .expect("worked out")
        .plan
        .expect("a plan");
    assert!(!service.unproved.is_empty());
    assert_eq!(service.unproved, plan.unproved);
    let page = call.homeowner_content(&issue);
    assert!(page.short.contains("Not everything"), "{}", page.short);
    assert!(!page.short.contains("we checked"), "{}", page.short);
}

#[test]
fn a_visit_without_anything_to_treat_is_ended_as_the_technician_says() {
    let mut engine = engine();
    let id = super::started(&mut engine);
    let plan = engine.answer(&id).expect("worked out").plan;
    assert_eq!(plan, None);
    end(&mut engine, &id, "fixed").expect("kept");
    assert_eq!(outcome(&engine, &id), Some(Outcome::Fixed));
}
