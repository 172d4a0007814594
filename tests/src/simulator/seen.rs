//! What of a simulated call reaches the inference, for outside programs: how much
//! of the fault it still holds is measured by a classifier that knows nothing of
//! the graph (`tests/reference/ceiling.py`).

use super::trial::{case, graph};
use returnline_core::diagnosis::Inference;
use returnline_core::records::visit_file::VisitFile;
use serde_json::{Map, Value, json};

/// The fault, the likelihood of each finding, the facts, and the probability that
/// the engine gives each cause.
///
/// # Panics
/// If its evidence is impossible: a fault of who wrote the call.
#[must_use]
pub fn seen(visit: &VisitFile, fault: &str) -> Value {
    let case = case(visit);
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
    json!({"fault": fault, "findings": findings, "facts": facts, "engine": engine})
}
