//! Writes a graph as BIF, random cases and what the engine says about them, for
//! `tests/reference/inference.py`.
//!
//!     cargo run -p returnline-tests --example export_cases -- DIR [invented]
//!
//! Exports the shipped graph, or an invented one of its size, to an existing folder.

use std::error::Error;
use std::fs;
use std::time::Instant;

use returnline_core::diagnosis::{
    Case, FindingId, Graph, Inference, Likelihood, Observation, Scale, SourceText, shipped, to_bif,
};
use returnline_tests::invented::{Dice, Invented, Size};
use serde_json::{Value, json};

const CASES: u64 = 200;

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let folder = arguments.next().ok_or("which folder?")?;
    let graph = if arguments.next().as_deref() == Some("invented") {
        let text = Invented::new(1, Size::FULL).to_toml();
        Graph::load(&[SourceText {
            name: "invented",
            text: &text,
        }])
    } else {
        shipped::load()
    }
    .map_err(|problems| format!("{problems:?}"))?;

    fs::write(
        format!("{folder}/graph.bif"),
        to_bif(&graph, &Case::default())?,
    )?;
    let mut cases = Vec::new();
    for seed in 0..CASES {
        let (case, described) = random_case(&graph, seed)?;
        if seed == 0 {
            time_visit(&graph, &case)?;
            fs::write(format!("{folder}/visit.bif"), to_bif(&graph, &case)?)?;
        }
        cases.push(json!({ "observations": described }));
    }
    let causes = graph.causes().iter().map(|cause| cause.id.as_str());
    let mechanisms = graph
        .mechanisms()
        .iter()
        .map(|mechanism| mechanism.id.as_str());
    let nodes: Vec<&str> = causes.chain(mechanisms).collect();
    let exported = json!({ "nodes": nodes, "cases": cases });
    fs::write(format!("{folder}/cases.json"), exported.to_string())?;
    Ok(())
}

/// Prints what working the visit out takes, for comparison with another library.
/// Like the other side, it asks for the probabilities of findings too.
fn time_visit(graph: &Graph, case: &Case) -> Result<(), Box<dyn Error>> {
    let mut causes = Vec::new();
    let mut findings = Vec::new();
    for _ in 0..31 {
        let start = Instant::now();
        let inference = Inference::new(graph, case)?;
        causes.push(start.elapsed().as_secs_f64());
        for place in graph.finding_places() {
            std::hint::black_box(inference.finding(place));
        }
        findings.push(start.elapsed().as_secs_f64());
    }
    causes.sort_by(f64::total_cmp);
    findings.sort_by(f64::total_cmp);
    println!(
        "returnline, {} readings: median {:.3} ms causes and mechanisms, {:.3} ms with all findings",
        case.observations.len(),
        1000.0 * causes[causes.len() / 2],
        1000.0 * findings[findings.len() / 2],
    );
    Ok(())
}

/// A case with about a quarter of the findings seen, by soft likelihoods.
fn random_case(graph: &Graph, seed: u64) -> Result<(Case, Vec<Value>), Box<dyn Error>> {
    let mut dice = Dice::new(seed);
    let mut case = Case::default();
    let mut described = Vec::new();
    for finding in graph.findings() {
        if !dice.chance(0.25) {
            continue;
        }
        let mut weight = || dice.between(0.02, 1.0);
        let likelihood = match finding.scale {
            Scale::Graded => Likelihood::graded(weight(), weight(), weight())?,
            Scale::NormallyAbsent | Scale::NormallyPresent => {
                Likelihood::presence(weight(), weight())?
            }
        };
        described.push(json!({
            "finding": finding.id,
            "weights": likelihood.weights(),
            "instrument": finding.instrument.map(|place| graph.cause(place).id.clone()),
            "if_lying": likelihood.mean(),
        }));
        let id = FindingId::new(finding.id.as_str());
        case.observations.push(Observation::new(id, likelihood));
    }
    Ok((case, described))
}
