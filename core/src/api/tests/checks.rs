//! The checks that are offered.

use super::*;

/// The samples, and a call of which next to nothing is known.
fn calls() -> Vec<Call> {
    let bare = br#"{"format": "returnline-visit", "version": 1, "system": {}, "commissioning": {},
        "visit": {"answers": [{"finding": "low-flow-lockout", "is": "yes"}]}}"#;
    let samples: [&[u8]; 4] = [
        include_bytes!("../../../data/samples/air-in-one-circuit.json"),
        include_bytes!("../../../data/samples/freeze-guard-trips.json"),
        include_bytes!("../../../data/samples/pressure-lost-over-summer.json"),
        bare,
    ];
    let assess = |bytes: &&[u8]| {
        let file = read_visit_file(bytes, Wording::default()).expect("a visit file");
        Call::assess(&file, Fixed.today(), Wording::default())
    };
    samples.iter().map(assess).collect()
}

#[test]
fn a_check_that_is_offered_leaves_something_to_enter() {
    for call in calls() {
        let answer = &call.answer().assessment;
        assert!(!answer.checks.is_empty());
        for check in &answer.checks {
            let enters = check.asks.len() + check.reads.len();
            assert!(enters > 0, "{}: the program works it out", check.id);
        }
    }
}

#[test]
fn what_the_program_could_work_out_from_a_fuller_record_is_asked_of_the_record() {
    let calls = calls();
    let bare = &calls.last().expect("the bare one").answer().assessment;
    // Low flow, and nothing on record to compute a flow from: pipe, fluid, curve.
    assert!(
        bare.records
            .iter()
            .any(|wanted| wanted.contains("pump curve")),
        "{:?}",
        bare.records
    );
}
