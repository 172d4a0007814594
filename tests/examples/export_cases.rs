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
    Case, CauseKind, EvidenceKind, FindingId, FindingIx, Found, Graph, Inference, Likelihood,
    Observation, Scale, SourceText, shipped, to_bif,
};
use returnline_tests::invented::{Dice, Invented, Size};
use serde_json::{Value, json};

/// The case that is timed: soft evidence on almost half of the findings.
const TIMED: u64 = 14;
const CASES: usize = 220;

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let folder = arguments.next().ok_or("which folder?")?;
    let text = if arguments.next().as_deref() == Some("invented") {
        Invented::new(1, Size::FULL).to_toml()
    } else {
        // The files hold nothing but arrays of tables, so they may be joined.
        let files = shipped::FILES.iter().map(|file| file.text);
        bare(&files.collect::<Vec<_>>().join("\n"))
    };
    let graph = Graph::load(&[SourceText {
        name: "exported",
        text: &text,
    }])
    .map_err(|problems| format!("{problems:?}"))?;

    fs::write(
        format!("{folder}/graph.bif"),
        to_bif(&graph, &Case::default())?,
    )?;
    let mut cases = Vec::new();
    for seed in 0.. {
        if cases.len() == CASES {
            break;
        }
        let (case, described) = random_case(&graph, seed)?;
        if seed == TIMED {
            time_visit(&graph, &case)?;
            fs::write(format!("{folder}/visit.bif"), to_bif(&graph, &case)?)?;
        }
        // Hard evidence may contradict itself; such a case has no answer.
        if Inference::new(&graph, &case).is_ok() {
            cases.push(described);
        }
    }
    let causes = graph.causes().iter().map(|cause| cause.id.as_str());
    let mechanisms = graph
        .mechanisms()
        .iter()
        .map(|mechanism| mechanism.id.as_str());
    let nodes: Vec<&str> = causes.chain(mechanisms).collect();
    let call = graph
        .call()
        .ok_or("a graph that says how calls come about")?;
    let call = json!({ "leak": call.leak });
    let exported = json!({ "nodes": nodes, "call": call, "causes": graph.causes().len(), "graph": text, "cases": cases });
    fs::write(format!("{folder}/cases.json"), exported.to_string())?;
    Ok(())
}

/// The text without comments and empty lines.
fn bare(text: &str) -> String {
    let lines = text.lines().map(str::trim);
    let lines = lines.filter(|line| !line.is_empty() && !line.starts_with('#'));
    lines.collect::<Vec<_>>().join("\n")
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
        std::hint::black_box(inference.findings());
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

/// The probability that each cause alone makes somebody call, by the rule of the
/// format: a complaint that was made, and is none of those of the cause, rules it out.
fn calls(graph: &Graph, case: &Case) -> Vec<f64> {
    let complaints: Vec<FindingIx> = case
        .observations
        .iter()
        .filter_map(|seen| {
            let place = graph.find_finding(&seen.finding)?;
            let finding = graph.finding(place);
            let normal = finding.scale.index(finding.scale.normal())?;
            let weights = seen.likelihood.weights();
            let is_off = weights.iter().any(|&weight| weight > weights[normal]);
            (finding.evidence == EvidenceKind::Symptom && is_off).then_some(place)
        })
        .collect();
    graph
        .causes()
        .iter()
        .map(|cause| {
            let with = &cause.calls_with;
            let ruled_out = !with.is_empty()
                && !complaints.is_empty()
                && complaints.iter().all(|made| !with.contains(made));
            if ruled_out { 0.0 } else { cause.calls }
        })
        .collect()
}

/// A case with some of the findings seen. Every fourth has hard evidence, every
/// fourth likelihoods of many decades; in every third an instrument is known to
/// lie, and in every fifth a cause was found or ruled out.
fn random_case(graph: &Graph, seed: u64) -> Result<(Case, Value), Box<dyn Error>> {
    let mut dice = Dice::new(seed);
    let mut case = Case::default();
    let mut described = Vec::new();
    let share = [0.1, 0.2, 0.3, 0.45][(seed / 4 % 4) as usize];
    let places: Vec<usize> = (0..graph.causes().len()).collect();
    let (instruments, others): (Vec<usize>, Vec<usize>) = places
        .iter()
        .partition(|&&at| graph.causes()[at].kind == CauseKind::Instrument);
    let mut found = |from: &[usize], is_so: bool, dice: &mut Dice| {
        if let Some(&at) = from.get(dice.below(from.len().max(1))) {
            let id = graph.causes()[at].id.clone();
            case.found.insert(id, Found::certainly(is_so));
        }
    };
    if seed.is_multiple_of(3) {
        found(&instruments, true, &mut dice);
    }
    if seed.is_multiple_of(5) {
        let is_so = dice.chance(0.5);
        found(&others, is_so, &mut dice);
    }
    for finding in graph.findings() {
        if !dice.chance(share) {
            continue;
        }
        let favoured = dice.below(finding.scale.count());
        let mut level = 0;
        let mut weight = || {
            level += 1;
            match seed % 4 {
                0 => f64::from(u8::from(level == favoured + 1)),
                1 => 10_f64.powf(dice.between(-9.0, 0.0)),
                _ => dice.between(0.02, 1.0),
            }
        };
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
    let unseen = |at: &usize| {
        let id = &graph.findings()[*at].id;
        case.observations.iter().all(|seen| seen.finding != *id)
    };
    let hidden: Vec<usize> = (0..graph.findings().len()).filter(unseen).collect();
    let asked = hidden.get(dice.below(hidden.len().max(1)));
    let asked = asked.map(|&at| {
        let finding = &graph.findings()[at];
        json!({
            "finding": finding.id,
            "levels": finding.scale.count(),
            "reliability": finding.reliability,
            "instrument": finding.instrument.map(|place| graph.cause(place).id.clone()),
        })
    });
    let found: Vec<Value> = case
        .found
        .iter()
        .map(|(cause, found)| json!({ "cause": cause, "is_so": found.is_so }))
        .collect();
    case.called = seed.is_multiple_of(2);
    let described = json!({
        "observations": described,
        "found": found,
        "asked": asked,
        "called": case.called.then(|| calls(graph, &case)),
    });
    Ok((case, described))
}
