//! What of a simulated call reaches the inference, for outside programs: how much
//! of the fault it still holds is measured by a classifier that knows nothing of
//! the graph (`tests/reference/ceiling.py`).

use super::call::SimulatedCall;
use super::trial::graph;
use chrono::NaiveDate;
use returnline_core::api::{Wording, read_visit_file};
use returnline_core::diagnosis::Inference;
use returnline_core::evidence::gather;
use returnline_core::model::LoopModel;
use serde_json::{Map, Value, json};

/// The fault, the likelihood of each finding, the facts, and the probability that
/// the engine gives each cause.
///
/// # Panics
/// If the call is no visit file, or its evidence impossible: faults of the simulator.
#[must_use]
pub fn seen(call: &SimulatedCall) -> Value {
    let text = call.file().to_string();
    let file = read_visit_file(text.as_bytes(), Wording::default())
        .unwrap_or_else(|error| panic!("{error:?}\n{text}"));
    let today = NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day");
    let case = gather(&file, &LoopModel::of(&file), graph(), today).case;
    let inference = Inference::new(graph(), &case).expect("evidence that can be weighed");
    let findings: Vec<Value> = case
        .observations
        .iter()
        .map(|seen| json!([seen.finding.as_str(), seen.likelihood.weights()]))
        .collect();
    let facts: Map<String, Value> = case
        .facts
        .iter()
        .map(|(fact, known)| (fact.as_str().to_owned(), json!(known)))
        .collect();
    let places = graph().cause_places().zip(graph().causes());
    let engine: Map<String, Value> = places
        .map(|(place, cause)| (cause.id.as_str().to_owned(), json!(inference.cause(place))))
        .collect();
    json!({"fault": call.truth.fault, "findings": findings, "facts": facts, "engine": engine})
}
