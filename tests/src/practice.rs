//! Calls written from practitioners' reasoning: what was told, seen and read,
//! and what a senior technician would make of it.
//!
//! The files are under `cases/practice/`. A level is taken as read with
//! [`READ_RIGHT`], or with the reliability the graph states if that is lower.

use returnline_core::diagnosis::{
    Case, CauseKind, Diagnosis, EvidenceKind, FactId, FindingId, Graph, Level, Likelihood, Means,
    Observation, Policy, Verdict, diagnose,
};
use serde::Deserialize;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::path::PathBuf;

/// Probability that a level worked out from readings is the true one: a clear
/// reading with an ordinary instrument.
pub const READ_RIGHT: f64 = 0.97;

/// A call and what is expected of it.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// The call in words.
    pub story: String,
    /// Why the expected answer is the right one.
    pub why: String,
    /// What is known of the system and its commissioning.
    #[serde(default)]
    pub facts: BTreeMap<String, bool>,
    /// What was told, seen and read.
    pub observed: BTreeMap<String, String>,
    /// One of these stands first.
    #[serde(default)]
    pub first: Vec<String>,
    /// All of these are among the first three.
    #[serde(default)]
    pub among_three: Vec<String>,
    /// All of these are among the first three: they are so together.
    #[serde(default)]
    pub together: Vec<String>,
    /// One of these is among the first three too.
    #[serde(default)]
    pub any_of: Vec<String>,
    /// Nothing is to be corrected.
    #[serde(default)]
    pub healthy: bool,
    /// It is not the loop: a cause of the unit stands first.
    #[serde(default)]
    pub elsewhere: bool,
    /// This instrument is doubted most, and no fault is called found.
    #[serde(default)]
    pub instrument: Option<String>,
    /// Nothing is more probable than this: too little is known.
    #[serde(default)]
    pub below: Option<f64>,
}

/// Every call of `cases/practice`, with its name.
///
/// # Panics
/// If a file cannot be read, or is no call.
#[must_use]
pub fn calls() -> Vec<(String, Practice)> {
    cases("practice")
}

/// Every case of a folder under `cases`, with the name of its file.
///
/// # Panics
/// If a file cannot be read, or is no such case.
#[must_use]
pub fn cases<T: DeserializeOwned>(folder: &str) -> Vec<(String, T)> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("cases")
        .join(folder);
    let mut paths: Vec<_> = std::fs::read_dir(&folder)
        .expect("the folder of the cases")
        .map(|entry| entry.expect("an entry").path())
        .collect();
    paths.sort();
    paths
        .into_iter()
        .map(|path| {
            let text = std::fs::read_to_string(&path).expect("a readable case");
            let case = serde_json::from_str(&text)
                .unwrap_or_else(|error| panic!("{}: {error}", path.display()));
            let name = path.file_stem().expect("a name").to_string_lossy();
            (name.into_owned(), case)
        })
        .collect()
}

/// A level by its word.
///
/// # Panics
/// If it is none.
#[must_use]
pub fn level(text: &str) -> Level {
    match text {
        "yes" => Level::Present,
        "no" => Level::Absent,
        "low" => Level::Low,
        "normal" => Level::Normal,
        "high" => Level::High,
        other => panic!("`{other}` is no level"),
    }
}

/// Facts and observed levels as a case of the graph.
///
/// # Panics
/// If the graph does not know a finding or a level does not fit it.
#[must_use]
pub fn case(
    graph: &Graph,
    facts: &BTreeMap<String, bool>,
    observed: &BTreeMap<String, String>,
) -> Case {
    let mut case = Case {
        called: true,
        ..Case::default()
    };
    for (fact, &is) in facts {
        case.facts.insert(FactId::new(fact), is);
    }
    for (id, text) in observed {
        let id = FindingId::new(id);
        let place = graph
            .find_finding(&id)
            .unwrap_or_else(|| panic!("no finding `{id}`"));
        let finding = graph.finding(place);
        let reliability = match finding.evidence {
            EvidenceKind::Evaluator(_) => READ_RIGHT.min(finding.reliability),
            _ => finding.reliability,
        };
        let likelihood = Likelihood::reported(finding.scale, level(text), reliability)
            .unwrap_or_else(|error| panic!("{id}: {error}"));
        case.observations.push(Observation::new(id, likelihood));
    }
    case
}

/// What a graph makes of a call that differs from what is expected; empty if
/// nothing does.
///
/// # Panics
/// If the call cannot be weighed.
#[must_use]
pub fn misses(graph: &Graph, call: &Practice) -> Vec<String> {
    let case = case(graph, &call.facts, &call.observed);
    let diagnosis = diagnose(graph, &case, &Means::default(), &Policy::default(), 0)
        .unwrap_or_else(|error| panic!("{error}"));
    let ranked: Vec<(&str, f64, CauseKind)> = diagnosis
        .causes
        .iter()
        .filter(|cause| cause.kind != CauseKind::Instrument)
        .map(|cause| (cause.cause.as_str(), cause.probability, cause.kind))
        .collect();
    let shown: Vec<String> = ranked
        .iter()
        .take(4)
        .map(|(cause, probability, _)| format!("{cause} {probability:.2}"))
        .collect();
    let three: Vec<&str> = ranked.iter().take(3).map(|(cause, ..)| *cause).collect();
    let mut missed = Vec::new();
    let mut hold = |holds: bool, what: &str| {
        if !holds {
            missed.push(format!("{what}; first are {}", shown.join(", ")));
        }
    };
    let first = ranked.first().map_or("", |(cause, ..)| *cause);
    if !call.first.is_empty() {
        hold(
            call.first.iter().any(|cause| cause == first),
            "another stands first",
        );
    }
    for cause in call.among_three.iter().chain(&call.together) {
        hold(
            three.contains(&cause.as_str()),
            &format!("{cause} is not among three"),
        );
    }
    if !call.any_of.is_empty() {
        let any = call
            .any_of
            .iter()
            .any(|cause| three.contains(&cause.as_str()));
        hold(any, "none of the expected is among three");
    }
    if call.healthy {
        let healthy = matches!(diagnosis.verdict, Verdict::NothingToCorrect { .. });
        hold(
            healthy,
            &format!(
                "not called healthy (no fault {:.2})",
                diagnosis.health.no_fault
            ),
        );
    }
    if call.elsewhere {
        let unit = ranked
            .first()
            .is_some_and(|(_, _, kind)| *kind == CauseKind::Unit);
        hold(unit, "a cause of the loop stands first");
    }
    if let Some(instrument) = &call.instrument {
        hold(
            most_doubted(&diagnosis) == Some(instrument.as_str()),
            "another instrument is doubted",
        );
        let found = ranked.iter().any(|(_, probability, kind)| {
            matches!(kind, CauseKind::Loop | CauseKind::Unit) && *probability > 0.5
        });
        hold(!found, "a fault is called found");
    }
    if let Some(most) = call.below {
        hold(ranked.first().is_none_or(|(_, p, _)| *p < most), "too sure");
    }
    missed
}

fn most_doubted(diagnosis: &Diagnosis) -> Option<&str> {
    diagnosis
        .causes
        .iter()
        .find(|cause| cause.kind == CauseKind::Instrument)
        .filter(|cause| cause.probability >= 0.5)
        .map(|cause| cause.cause.as_str())
}
