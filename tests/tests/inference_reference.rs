//! Posteriors and mutual information against a general-purpose library.
//!
//! The table was computed by pyAgrum (exact junction-tree inference) on graphs
//! invented and turned into networks by `tests/reference/inference.py`, which
//! knows the engine only through the file format.

#![allow(clippy::expect_used, clippy::panic)] // Functions beside the tests may fail as tests do.

use std::collections::BTreeMap;

use returnline_core::diagnosis::{
    Case, CauseId, CauseKind, Counts, FactId, FindingId, Found, Graph, Inference, LearnedPrior,
    Likelihood, Observation, SourceText, shipped, to_bif,
};
use serde::Deserialize;

/// Both sides are exact, so they may differ by rounding alone.
const TOLERANCE: f64 = 1e-9;

#[derive(Deserialize)]
struct Table {
    header: BTreeMap<String, String>,
    graphs: Vec<Entry>,
}

#[derive(Deserialize)]
struct Entry {
    toml: String,
    cases: Vec<Expected>,
}

#[derive(Deserialize)]
struct Expected {
    kind: String,
    fact: Option<bool>,
    observations: Vec<Reading>,
    nodes: BTreeMap<String, f64>,
    findings: BTreeMap<String, Vec<f64>>,
    information: Vec<(String, String, f64)>,
}

#[derive(Deserialize)]
struct Reading {
    finding: String,
    weights: Vec<f64>,
}

fn likelihood(weights: &[f64]) -> Likelihood {
    match *weights {
        [low, normal, high] => Likelihood::graded(low, normal, high),
        [absent, present] => Likelihood::presence(absent, present),
        _ => unreachable!("two or three levels"),
    }
    .expect("a valid likelihood")
}

#[test]
fn posteriors_and_information_equal_pyagrum() {
    let table: Table =
        serde_json::from_str(include_str!("../reference/tables/inference.json")).expect("a table");
    assert_eq!(table.header["version"], "3.3.1");
    let mut compared = 0;
    let mut worst = 0.0_f64;
    for (number, entry) in table.graphs.iter().enumerate() {
        let graph = Graph::load(&[SourceText {
            name: "invented",
            text: &entry.toml,
        }])
        .unwrap_or_else(|problems| panic!("{problems:#?}"));
        for expected in &entry.cases {
            let mut case = Case {
                observations: expected
                    .observations
                    .iter()
                    .map(|reading| {
                        let id = FindingId::new(&reading.finding);
                        Observation::new(id, likelihood(&reading.weights))
                    })
                    .collect(),
                ..Case::default()
            };
            if let Some(fact) = expected.fact {
                case.facts.insert(FactId::new("fact"), fact);
            }
            let inference = Inference::new(&graph, &case).expect("a possible case");
            let mut close = |what: &str, got: f64, want: f64| {
                let kind = &expected.kind;
                let off = (got - want).abs();
                assert!(
                    off < TOLERANCE,
                    "graph {number} {kind} {what}: {got} is not {want}"
                );
                worst = worst.max(off);
                compared += 1;
            };
            let cause = |id: &str| graph.find_cause(&CauseId::new(id));
            for (id, &want) in &expected.nodes {
                let got = match cause(id) {
                    Some(place) => inference.cause(place),
                    None => graph
                        .mechanism_places()
                        .find(|&place| graph.mechanism(place).id.as_str() == id)
                        .map(|place| inference.mechanism(place))
                        .expect("a cause or mechanism"),
                };
                close(id, got, want);
            }
            let finding = |id: &str| {
                graph
                    .find_finding(&FindingId::new(id))
                    .expect("a known finding")
            };
            for (id, want) in &expected.findings {
                for (got, want) in inference.finding(finding(id)).iter().zip(want) {
                    close(id, *got, *want);
                }
            }
            let mut known: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
            for (of, about, want) in &expected.information {
                let bits = known
                    .entry(of)
                    .or_insert_with(|| match of.strip_prefix("report_") {
                        None => inference.information(finding(of)),
                        Some(id) => inference.report_information(&[finding(id)]),
                    });
                let place = cause(about).expect("a known cause");
                let at = graph
                    .cause_places()
                    .position(|other| other == place)
                    .expect("known");
                let got = bits[at];
                close(&format!("information {of} {about}"), got, *want);
            }
        }
    }
    println!("{compared} numbers compared, largest difference {worst:.1e}");
    assert!(compared > 3000, "only {compared} numbers compared");
}

#[derive(Deserialize)]
struct ShippedTable {
    header: BTreeMap<String, String>,
    /// The graph files it was made from, joined, without comments.
    graph: String,
    /// Causes, then mechanisms.
    nodes: Vec<String>,
    cases: Vec<ShippedCase>,
}

#[derive(Deserialize)]
struct ShippedCase {
    called: bool,
    observations: Vec<Reading>,
    found: Vec<FoundCause>,
    asked: Option<String>,
    nodes: Vec<f64>,
    information: Vec<(String, f64)>,
}

#[derive(Deserialize)]
struct FoundCause {
    cause: String,
    is_so: bool,
}

fn shipped_table() -> ShippedTable {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/reference/tables/inference_shipped.json"
    );
    let text = std::fs::read_to_string(path)
        .unwrap_or_else(|error| panic!("{path}: {error}: run `make reference-inference`"));
    serde_json::from_str(&text).expect("a table")
}

fn load(text: &str) -> Graph {
    Graph::load(&[SourceText {
        name: "table",
        text,
    }])
    .unwrap_or_else(|problems| panic!("{problems:#?}"))
}

/// The graph in the table is the one that ships, number for number.
#[test]
fn the_table_is_of_the_shipped_graph() {
    let graph = load(&shipped_table().graph);
    let shipped = shipped::load().unwrap_or_else(|problems| panic!("{problems:#?}"));
    let case = Case {
        called: true,
        ..Case::default()
    };
    let network = |graph: &Graph| to_bif(graph, &case).expect("exported");
    assert!(
        network(&graph) == network(&shipped),
        "the graph has changed since the reference was made: run `make reference-inference` \
         with the packages of tests/reference/requirements.txt, and commit the table"
    );
}

#[test]
fn the_shipped_graph_answers_as_pyagrum_does() {
    const CLOSE: f64 = 1e-6;
    let table = shipped_table();
    assert_eq!(table.header["version"], "3.3.1");
    assert!(table.cases.len() >= 200, "{} cases", table.cases.len());
    let graph = load(&table.graph);
    let (mut worst, mut compared, mut lying, mut called) = (0.0_f64, 0, 0, 0);
    for (number, expected) in table.cases.iter().enumerate() {
        let mut case = Case {
            called: expected.called,
            ..Case::default()
        };
        for reading in &expected.observations {
            let id = FindingId::new(&reading.finding);
            case.observations
                .push(Observation::new(id, likelihood(&reading.weights)));
        }
        for found in &expected.found {
            let id = CauseId::new(&found.cause);
            case.found.insert(id, Found::certainly(found.is_so));
        }
        let inference = Inference::new(&graph, &case).expect("a possible case");
        let mut close = |what: &str, got: f64, want: f64| {
            let off = (got - want).abs();
            assert!(off < CLOSE, "case {number} {what}: {got} is not {want}");
            worst = worst.max(off);
            compared += 1;
        };
        let causes = graph.cause_places().map(|place| inference.cause(place));
        let mechanisms = graph
            .mechanism_places()
            .map(|place| inference.mechanism(place));
        let nodes = table.nodes.iter().zip(&expected.nodes);
        for ((id, &want), got) in nodes.zip(causes.chain(mechanisms)) {
            close(id, got, want);
        }
        if let Some(asked) = &expected.asked {
            let place = graph.find_finding(&FindingId::new(asked)).expect("known");
            let bits = inference.report_information(&[place]);
            for (cause, got) in graph.causes().iter().zip(bits) {
                let id = cause.id.as_str();
                let listed = expected
                    .information
                    .iter()
                    .find(|(about, _)| about.replace('_', "-") == id);
                close(id, got, listed.map_or(0.0, |(_, bits)| *bits));
            }
        }
        called += usize::from(expected.called);
        lying += usize::from(expected.found.iter().any(|found| {
            let place = graph.find_cause(&CauseId::new(&found.cause));
            found.is_so
                && place.is_some_and(|place| graph.cause(place).kind == CauseKind::Instrument)
        }));
    }
    println!("{compared} numbers compared, largest difference {worst:.1e}");
    assert!(
        compared > 20_000 && lying > 40 && called > 100,
        "{compared} {lying} {called}"
    );
}

/// Noisy-OR in closed form: one finding, n causes, everything absent or present
/// (Pearl 1988, Probabilistic Reasoning in Intelligent Systems, 4.3.2, from memory).
#[test]
fn noisy_or_closed_form() {
    let strengths = [0.3, 0.55, 0.8, 0.15, 0.7, 0.6];
    let (prior, leak) = (0.2, 0.05);
    let mut text = String::from("[[family]]\nid = \"x\"\n");
    for (at, strength) in strengths.iter().enumerate() {
        text += &format!(
            "[[cause]]\nid = \"c{at}\"\nfamily = \"x\"\nkind = \"loop\"\nstatus = \"draft\"\n\
             prior = {prior}\nsource = \"judgement\"\n[[link]]\nfrom = \"c{at}\"\nto = \"f\"\n\
             strength = {strength}\nsource = \"judgement\"\n"
        );
    }
    text += &format!(
        "[[finding]]\nid = \"f\"\nlevels = \"presence\"\nleak = {leak}\nevidence = \"symptom\"\n\
         source = \"judgement\"\n"
    );
    let graph = Graph::load(&[SourceText {
        name: "closed form",
        text: &text,
    }])
    .expect("valid");
    // E[product of (1 - s_i c_i)] = product of (1 - p s_i), the causes being independent.
    let absent: f64 = strengths.iter().map(|s| 1.0 - prior * s).product::<f64>() * (1.0 - leak);
    let with = |weights: &[f64]| {
        let observation = Observation::new(FindingId::new("f"), likelihood(weights));
        let case = Case {
            observations: vec![observation],
            ..Case::default()
        };
        Inference::new(&graph, &case).expect("possible")
    };
    let present = with(&[0.0, 1.0]);
    assert!((present.log_evidence() - (1.0 - absent).ln()).abs() < 1e-13);
    for (place, strength) in graph.cause_places().zip(strengths) {
        let absent_if = absent / (1.0 - prior * strength) * (1.0 - strength);
        let want = prior * (1.0 - absent_if) / (1.0 - absent);
        assert!((present.cause(place) - want).abs() < 1e-13);
        let want = prior * (1.0 - strength) / (1.0 - prior * strength);
        assert!((with(&[1.0, 0.0]).cause(place) - want).abs() < 1e-13);
    }
}

/// Beta-binomial in closed form, and its mean as an integral of the
/// unnormalised density (Gelman et al., Bayesian Data Analysis, 2.4, from memory).
#[test]
fn beta_binomial_closed_form() {
    for (prior, weight, confirmed, callbacks) in [
        (0.06, 50.0, 4, 30),
        (0.3, 20.0, 0, 12),
        (0.02, 100.0, 9, 9),
        (0.5, 8.0, 3, 7),
    ] {
        let counts = Counts::new(confirmed, callbacks).expect("valid");
        let learned = LearnedPrior::new(prior, weight, counts).expect("valid");
        let mean = (weight * prior + f64::from(confirmed)) / (weight + f64::from(callbacks));
        assert!((learned.mean() - mean).abs() < 1e-14);
        let density = |x: f64| {
            let (yes, no) = (f64::from(confirmed), f64::from(callbacks - confirmed));
            // Beta prior times binomial likelihood, by midpoints.
            x.powf(weight * prior - 1.0 + yes) * (1.0 - x).powf(weight * (1.0 - prior) - 1.0 + no)
        };
        let steps = 2_000_000;
        let (mut mass, mut first, mut second) = (0.0, 0.0, 0.0);
        for step in 0..steps {
            let x = (f64::from(step) + 0.5) / f64::from(steps);
            let p = density(x);
            mass += p;
            first += p * x;
            second += p * x * x;
        }
        let mean = first / mass;
        let deviation = (second / mass - mean * mean).sqrt();
        assert!((learned.mean() - mean).abs() < 1e-6, "{prior} {weight}");
        assert!(
            (learned.standard_deviation() - deviation).abs() < 1e-6,
            "{prior} {weight}"
        );
    }
}
