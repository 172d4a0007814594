//! What readings could tell with what is on record: the column "needs" of
//! `core/data/graph/evaluators.md`.

use super::*;
use crate::diagnosis::shipped;

/// Whether a finding of the shipped graph is out of reach.
fn is_out_of_reach(finding: &str, file: &VisitFile) -> bool {
    let graph = shipped::load().expect("the shipped graph");
    let gathered = gather(file, &LoopModel::of(file), &graph, today());
    let mut ids = gathered.out_of_reach.iter();
    ids.any(|id| id.as_str() == finding)
}

#[test]
fn a_reading_that_needs_no_record_is_in_reach_of_an_empty_call() {
    let empty = file(json!({}), json!({}), json!({}));
    for finding in [
        "static-pressure",
        "static-pressure-trend",
        "circuit-returns-differ",
    ] {
        assert!(!is_out_of_reach(finding, &empty), "{finding}");
    }
}

#[test]
fn what_rests_on_a_record_is_in_reach_once_that_is_there() {
    let empty = file(json!({}), json!({}), json!({}));
    assert!(
        is_out_of_reach("pressure-unexplained", &empty),
        "no charge on record"
    );
    assert!(
        is_out_of_reach("computed-flow-short", &empty),
        "no curve on record"
    );

    let charged = file(
        json!({}),
        json!({
            "date": "2025-10-01",
            "charge_pressure": value(50.0, "psi"),
            "charge_temperature": value(60.0, "degF"),
        }),
        json!({}),
    );
    assert!(!is_out_of_reach("pressure-unexplained", &charged));
}

#[test]
fn a_reading_that_is_there_and_tells_nothing_does_not_open_what_needs_a_record() {
    let read = json!([{ "point": "static_pressure", "value": value(12.0, "psi") }]);
    let call = file(json!({}), json!({}), json!({ "readings": read }));
    assert!(is_out_of_reach("pressure-unexplained", &call));
    assert!(!is_out_of_reach("static-pressure", &call));
}
