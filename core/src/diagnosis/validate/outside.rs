//! Checks that need something from outside the graph: texts and evaluators.

use super::{Fault, Problem};
use crate::diagnosis::graph::{EvidenceKind, Graph};

/// Every catalog key the graph needs, with the entry that needs it.
#[must_use]
pub fn text_keys(graph: &Graph) -> Vec<(String, String)> {
    let mut keys: Vec<(String, String)> = Vec::new();
    let mut need = |subject: &str, key: String| keys.push((subject.to_owned(), key));
    for cause in graph.causes() {
        let id = cause.id.as_str();
        need(id, format!("cause-{id}"));
        need(id, format!("cause-{id}.homeowner"));
        for shift in &cause.context {
            need(id, format!("context-{id}--{}", shift.fact));
        }
    }
    for mechanism in graph.mechanisms() {
        let id = mechanism.id.as_str();
        need(id, format!("mechanism-{id}"));
        need(id, format!("mechanism-{id}.homeowner"));
    }
    for finding in graph.findings() {
        let id = finding.id.as_str();
        need(id, format!("finding-{id}"));
        need(id, format!("finding-{id}.homeowner"));
    }
    for check in graph.checks() {
        let id = check.id.as_str();
        need(id, format!("check-{id}"));
        need(id, format!("check-{id}.how"));
    }
    let mechanism_links = graph
        .mechanisms()
        .iter()
        .map(|target| (target.id.as_str(), &target.parents));
    let finding_links = graph
        .findings()
        .iter()
        .map(|target| (target.id.as_str(), &target.parents));
    for (to, links) in mechanism_links.chain(finding_links) {
        for link in links {
            let from = graph.parent_id(link.parent);
            need(&format!("{from} -> {to}"), format!("link-{from}--{to}"));
        }
    }
    for procedure in graph.procedures() {
        need(procedure.id.as_str(), format!("procedure-{}", procedure.id));
        for step in &procedure.steps {
            let subject = format!("{}/{}", procedure.id, step.id);
            need(&subject, format!("step-{}--{}", procedure.id, step.id));
        }
    }
    macro_rules! named {
        ($($list:ident: $prefix:literal),* $(,)?) => {$(
            for id in graph.$list() {
                need(id.as_str(), format!(concat!($prefix, "-{}"), id));
            }
        )*};
    }
    for caution in graph.cautions() {
        need(caution.id.as_str(), format!("caution-{}", caution.id));
    }
    named!(facts: "fact", tools: "tool", hazards: "hazard", families: "family");
    keys
}

/// `texts-exist`: every key of [`text_keys`] must have a text in every language.
///
/// `has_text(language, key)` says whether a catalog has it; a key with a full
/// stop names an attribute of a message (`cause-x.homeowner`).
#[must_use]
pub fn texts(
    graph: &Graph,
    languages: &[&str],
    has_text: impl Fn(&str, &str) -> bool,
) -> Vec<Problem> {
    let keys = text_keys(graph);
    let mut problems = Vec::new();
    for &language in languages {
        for (subject, key) in keys.iter().filter(|(_, key)| !has_text(language, key)) {
            problems.push(Problem {
                check: "texts-exist",
                file: String::from("catalogs"),
                subject: subject.clone(),
                fault: Fault::MissingText {
                    language: language.to_owned(),
                    key: key.clone(),
                },
            });
        }
    }
    problems
}

/// `evaluators-known`: every evaluator a finding names must be one of `known`.
#[must_use]
pub fn evaluators(graph: &Graph, known: &[&str]) -> Vec<Problem> {
    graph
        .findings()
        .iter()
        .filter_map(|finding| match &finding.evidence {
            EvidenceKind::Evaluator(name) if !known.contains(&name.as_str()) => Some(Problem {
                check: "evaluators-known",
                file: String::from("findings"),
                subject: finding.id.to_string(),
                fault: Fault::UnknownEvaluator { name: name.clone() },
            }),
            _ => None,
        })
        .collect()
}
