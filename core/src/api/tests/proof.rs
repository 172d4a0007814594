//! The readings that prove the work, held to what they should be.

use super::{engine, entry};
use crate::api::Engine;
use crate::api::types::{ProofView, ReadingEntry, ReportRequest, StepChange};

/// A sealed loop in which air was found.
fn visit(engine: &mut Engine, date: &str) -> String {
    let file = format!(
        r#"{{"format":"returnline-visit","version":1,
        "system":{{"flow_centre":{{"kind":"sealed"}}}},
        "visit":{{"verdicts":[{{"cause":"air-left-in-circuit","confirmed":true}}],
        "date":"{date}"}}}}"#
    );
    engine.take_visit_file(file.as_bytes()).expect("taken").id
}

fn proof(engine: &Engine, visit: &str, later: bool) -> ProofView {
    let plan = engine.answer(visit).expect("worked out").plan;
    let mut proof = plan.expect("a plan").proof.into_iter();
    proof
        .find(|proof| proof.point == "static_pressure" && proof.later == later)
        .expect("the gauge proves it")
}

fn left(text: &str) -> ReadingEntry {
    ReadingEntry {
        phase: "left".to_owned(),
        mode: Some("idle".to_owned()),
        ..entry("static_pressure", text, "psi")
    }
}

#[test]
fn a_reading_that_proves_the_work_gets_its_verdict_in_words() {
    let mut engine = engine();
    // The clock of the tests stands on this day.
    let id = visit(&mut engine, "2026-08-14");
    let unread = proof(&engine, &id, false);
    assert_eq!((unread.verdict.as_str(), unread.after), ("unread", None));
    // No band of a loop at rest reaches down to 1 psi.
    engine.put_reading(&id, &left("1")).expect("kept");
    let missed = proof(&engine, &id, false);
    assert_eq!(missed.verdict, "missed");
    assert_eq!(missed.verdict_words, "not as it should be");
    // What was read before leaving says nothing of a later day.
    let later = proof(&engine, &id, true);
    assert_eq!((later.verdict.as_str(), later.after), ("unread", None));
    assert_eq!(later.verdict_words, "to be read later");
}

#[test]
fn what_is_read_days_after_the_visit_is_a_later_reading() {
    let mut engine = engine();
    let id = visit(&mut engine, "2026-08-07");
    // Read on the day of the visit, as the paper of that day has it.
    let file = engine.record(&id).expect("there").file;
    let mut on_the_day = crate::records::Reading::new(
        crate::records::ReadingPoint::StaticPressure,
        crate::records::PlainMeasure {
            value: 60.0,
            unit: crate::units::Unit::Psi,
        },
    )
    .expect("a reading");
    on_the_day.phase = crate::records::Phase::Left;
    let mut record = engine.record(&id).expect("there");
    record.file = file;
    record.file.visit.readings.push(on_the_day);
    engine.keep(&record).expect("kept");
    engine.put_reading(&id, &left("1")).expect("kept");
    let now = proof(&engine, &id, false);
    // Seven days after: the recheck after a week, not those after a day and a month.
    let plan = engine
        .answer(&id)
        .expect("worked out")
        .plan
        .expect("a plan");
    let gauge = |proof: &ProofView| proof.point == "static_pressure" && proof.later;
    let (mut read, unread): (Vec<ProofView>, Vec<ProofView>) = (plan.proof.into_iter())
        .filter(gauge)
        .partition(|proof| proof.after.is_some());
    assert_eq!((read.len(), unread.len()), (1, 2));
    let later = read.remove(0);
    assert!(later.label.contains("after a week"), "{}", later.label);
    assert!(now.after.is_some_and(|read| read.starts_with("60")));
    assert!(later.after.is_some_and(|read| read.starts_with('1')));
    assert_eq!(later.verdict, "missed");
}

#[test]
fn both_reports_say_what_is_not_proved() {
    let mut engine = engine();
    let id = visit(&mut engine, "2026-08-14");
    engine.put_reading(&id, &left("1")).expect("kept");
    let read = StepChange::Acknowledged {
        caution: "lock-and-prove-dead".to_owned(),
        yes: true,
    };
    for change in [read, StepChange::Done { done: true }] {
        engine
            .change_step(&id, "lock-power-off", &change)
            .expect("kept");
    }
    let request = ReportRequest::default();
    let (call, _) = engine
        .call_for(
            &id,
            &ReportRequest {
                reader: "technician".to_owned(),
                ..request.clone()
            },
        )
        .expect("read");
    let issue = engine.issue(&id, &request, call.wording).expect("gathered");
    let service = call.service_content(&issue);
    let expected = proof(&engine, &id, false).expected.expect("a band");
    let told = service.unproved.iter().find(|line| line.contains(" 1 psi"));
    let told = told.expect("the reading that missed its band is told");
    assert!(told.contains(&expected), "{told}");
    assert!(service.proof.iter().any(|line| line.missed));
    let page = call.homeowner_content(&issue);
    let verdicts = page.readings.iter().map(|line| line.verdict.as_deref());
    let verdicts: Vec<_> = verdicts.collect();
    assert!(
        verdicts.contains(&Some("not as it should be")),
        "{verdicts:?}"
    );
}
