use super::*;
use crate::diagnosis::{Graph, Inference, ReadWith, SourceText};
use crate::text::{Language, catalog};
use crate::units::UnitSystem;

/// A small graph with invented numbers.
const GRAPH: &str = r#"
[[family]]
id = "any"
[[fact]]
id = "no-flush-record"
[[cause]]
id = "air-left"
family = "any"
kind = "loop"
status = "draft"
prior = 0.1
source = "judgement"
context = [{ fact = "no-flush-record", odds = 2.0, source = "judgement" }]
[[cause]]
id = "flow-meter-lies"
family = "any"
kind = "instrument"
status = "draft"
prior = 0.03
source = "judgement"
[[mechanism]]
id = "low-flow"
leak = 0.01
source = "judgement"
[[finding]]
id = "gurgling"
levels = "presence"
leak = 0.02
evidence = "symptom"
reliability = 0.95
source = "judgement"
[[finding]]
id = "loop-flow"
levels = "graded"
leak_low = 0.02
leak_high = 0.02
evidence = { evaluator = "loop-flow" }
instrument = "flow-meter-lies"
source = "judgement"
[[link]]
from = "air-left"
to = "low-flow"
strength = 0.7
source = "judgement"
[[link]]
from = "air-left"
to = "gurgling"
strength = 0.7
source = "judgement"
[[link]]
from = "low-flow"
to = "loop-flow"
low = 0.9
source = "judgement"
[[check]]
id = "read-flow"
minutes = 2.0
reveals = ["loop-flow"]
source = "judgement"
"#;

fn graph() -> Graph {
    Graph::load(&[SourceText {
        name: "invented",
        text: GRAPH,
    }])
    .expect("a sound graph")
}

fn gathered(visit: Value) -> Gathered {
    let file = file(rich(), json!({ "flush_recorded": false }), visit);
    gather(&file, &LoopModel::of(&file), &graph(), today())
}

#[test]
fn readings_answers_and_facts_reach_the_inference() {
    let call = gathered(json!({
        "answers": [{ "finding": "gurgling", "is": "yes" }, { "finding": "no-such", "is": "yes" }],
        "readings": [{ "point": "flow", "value": value(6.0, "gpm") }]
    }));
    assert_eq!(call.case.observations.len(), 2);
    assert_eq!(call.case.facts.len(), 1);
    let ReadWith::Other(lies) = &call.case.observations[0].read_with else {
        panic!("a meter can lie");
    };
    assert_eq!(lies.as_str(), "flow-meter-lies");
    let told = call.case.observations[1].likelihood;
    assert!((told.weights()[0] - 0.05 / 0.95).abs() < 1e-12);
    assert!(matches!(&call.unused[..], [Unused::Answer { finding, .. }] if finding == "no-such"));
    assert!(Inference::new(&graph(), &call.case).is_ok());
}

#[test]
fn what_was_not_used_says_why() {
    let call = gathered(json!({ "readings": [
        { "point": "flow", "value": value(12.0, "gpm"), "phase": "left" },
        { "point": "flow", "value": value(6.0, "gpm"), "mode": "idle" },
        { "point": "fluid_ph", "value": value(8.0, "1") },
        { "point": "loop_temperature", "value": value(40.0, "degF") }
    ]}));
    let codes: Vec<&str> = call
        .unused
        .iter()
        .map(|unused| match unused {
            Unused::Reading { why, .. }
            | Unused::Answer { why, .. }
            | Unused::Verdict { why, .. } => why.code(),
        })
        .collect();
    assert_eq!(
        codes,
        ["as-left", "wrong-mode", "not-asked", "needs-companion"]
    );
    assert!(call.case.observations.is_empty());
}

#[test]
fn what_was_found_is_so() {
    let found = |confirmed| {
        let call = gathered(json!({
            "verdicts": [{ "cause": "air-left", "confirmed": confirmed }],
            "readings": [{ "point": "flow", "value": value(12.0, "gpm") }]
        }));
        let graph = graph();
        let place = graph.find_cause(&crate::diagnosis::CauseId::new("air-left"));
        let inference = Inference::new(&graph, &call.case).expect("possible");
        inference.cause(place.expect("known"))
    };
    assert!((found(true) - 1.0).abs() < 1e-15);
    assert!(found(false).abs() < 1e-15);
}

#[test]
fn every_reason_has_its_words() {
    let call = gathered(json!({ "readings": [{ "point": "flow", "value": value(6.0, "gpm") }] }));
    let words = catalog(Language::English);
    let reason = &call.explained[0];
    assert!(words.has(&format!("why-{}", reason.reasoning.formula)));
    assert_eq!(reason.measured.text(UnitSystem::Us), "6.0 ± 0.2 gpm");
    assert_eq!(reason.expected.text(UnitSystem::Us), "12.0 ± 0.7 gpm");
}
