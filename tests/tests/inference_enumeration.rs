//! Posteriors against summing the joint distribution state by state.
//!
//! The enumeration below shares nothing with the engine: it goes through every
//! state of causes and mechanisms of small invented graphs and multiplies the
//! probabilities as `core/data/graph/README.md` defines them.

#![allow(clippy::expect_used, clippy::panic)] // Functions beside the tests may fail as tests do.

use returnline_core::diagnosis::{
    Case, FindingId, Graph, Inference, Likelihood, Observation, SourceText,
};
use returnline_tests::invented::{Arrow, Dice, Invented, InventedFinding, Size};

struct Seen {
    finding: usize,
    weights: Vec<f64>,
}

fn level_probabilities(finding: &InventedFinding, on: &[bool]) -> Vec<f64> {
    let active = || finding.parents.iter().filter(|arrow| on[arrow.parent]);
    let product = |leak: f64, pick: fn(&Arrow) -> f64| {
        active().map(|arrow| 1.0 - pick(arrow)).product::<f64>() * (1.0 - leak)
    };
    let no_high = product(finding.leak_high, |arrow| arrow.high);
    if !finding.graded {
        return if finding.normally_present {
            vec![1.0 - no_high, no_high]
        } else {
            vec![no_high, 1.0 - no_high]
        };
    }
    let no_low = product(finding.leak_low, |arrow| arrow.low);
    let none = product(finding.leak_low + finding.leak_high, |arrow| {
        arrow.low + arrow.high
    });
    let both = 1.0 - no_low - no_high + none;
    vec![
        no_high - none + both / 3.0,
        none + both / 3.0,
        no_low - none + both / 3.0,
    ]
}

struct Summed {
    evidence: f64,
    nodes: Vec<f64>,
    findings: Vec<Vec<f64>>,
}

fn enumerate(graph: &Invented, seen: &[Seen], called: bool) -> Summed {
    let causes = graph.priors.len();
    let nodes = causes + graph.mechanisms.len();
    let mut summed = Summed {
        evidence: 0.0,
        nodes: vec![0.0; nodes],
        findings: graph
            .findings
            .iter()
            .map(|finding| vec![0.0; finding.levels()])
            .collect(),
    };
    for state in 0..1_u64 << nodes {
        let on: Vec<bool> = (0..nodes).map(|node| state >> node & 1 == 1).collect();
        let mut joint = 1.0;
        for (at, prior) in graph.priors.iter().enumerate() {
            joint *= if on[at] { *prior } else { 1.0 - prior };
        }
        for (at, (leak, parents)) in graph.mechanisms.iter().enumerate() {
            let off: f64 = parents
                .iter()
                .filter(|arrow| on[arrow.parent])
                .map(|arrow| 1.0 - arrow.high)
                .product::<f64>()
                * (1.0 - leak);
            joint *= if on[causes + at] { 1.0 - off } else { off };
        }
        if called {
            let silent: f64 = graph
                .calls
                .iter()
                .zip(&on)
                .filter(|(_, on)| **on)
                .map(|(calls, _)| 1.0 - calls)
                .product();
            joint *= 1.0 - (1.0 - graph.call_leak) * silent;
        }
        let levels: Vec<Vec<f64>> = graph
            .findings
            .iter()
            .map(|finding| level_probabilities(finding, &on))
            .collect();
        let reading = |seen: &Seen, level: usize| {
            let lies = graph.findings[seen.finding]
                .instrument
                .is_some_and(|cause| on[cause]);
            let mean = seen.weights.iter().sum::<f64>() / seen.weights.len() as f64;
            if lies { mean } else { seen.weights[level] }
        };
        for one in seen {
            joint *= levels[one.finding]
                .iter()
                .enumerate()
                .map(|(level, p)| p * reading(one, level))
                .sum::<f64>();
        }
        if joint == 0.0 {
            continue;
        }
        summed.evidence += joint;
        for (sum, &on) in summed.nodes.iter_mut().zip(&on) {
            *sum += if on { joint } else { 0.0 };
        }
        for (at, sums) in summed.findings.iter_mut().enumerate() {
            let weight = |level: usize| {
                seen.iter()
                    .filter(|one| one.finding == at)
                    .map(|one| reading(one, level))
                    .product::<f64>()
                    * levels[at][level]
            };
            let total: f64 = (0..sums.len()).map(weight).sum();
            for (level, sum) in sums.iter_mut().enumerate() {
                *sum += joint * weight(level) / total;
            }
        }
    }
    summed
        .nodes
        .iter_mut()
        .for_each(|sum| *sum /= summed.evidence);
    summed
        .findings
        .iter_mut()
        .flatten()
        .for_each(|sum| *sum /= summed.evidence);
    summed
}

fn compare(seed: u64, size: Size, hard: bool, extreme: bool) {
    for called in [false, true] {
        compare_one(seed, size, hard, extreme, called);
    }
}

fn compare_one(seed: u64, size: Size, hard: bool, extreme: bool, called: bool) {
    let invented = Invented::new(seed, size);
    let text = invented.to_toml();
    let graph = Graph::load(&[SourceText {
        name: "invented",
        text: &text,
    }])
    .unwrap_or_else(|problems| panic!("{problems:?}"));
    let mut dice = Dice::new(seed ^ 0xabcd);
    let mut seen = Vec::new();
    for (finding, entry) in invented.findings.iter().enumerate() {
        if dice.chance(0.6) {
            let levels = entry.levels();
            let favoured = dice.below(levels);
            let weights: Vec<f64> = (0..levels)
                .map(|level| match (level == favoured, hard) {
                    (true, _) => 1.0,
                    (false, true) => 0.0,
                    (false, false) if extreme => 10_f64.powf(dice.between(-12.0, 0.0)),
                    (false, false) => dice.between(0.0, 1.0),
                })
                .collect();
            seen.push(Seen { finding, weights });
        }
    }
    let case = Case {
        observations: seen
            .iter()
            .map(|one| {
                let likelihood = match one.weights[..] {
                    [low, normal, high] => Likelihood::graded(low, normal, high),
                    [absent, present] => Likelihood::presence(absent, present),
                    _ => unreachable!("two or three levels"),
                };
                let id = FindingId::new(&format!("f{}", one.finding));
                Observation::new(id, likelihood.expect("valid"))
            })
            .collect(),
        called,
        ..Case::default()
    };
    let expected = enumerate(&invented, &seen, called);
    let inference = Inference::new(&graph, &case).expect("possible");
    let close = |what: &str, got: f64, want: f64| {
        assert!(
            (got - want).abs() < 1e-11,
            "seed {seed} {what}: {got} is not {want}"
        );
    };
    close("evidence", inference.log_evidence(), expected.evidence.ln());
    for (at, cause) in graph.causes().iter().enumerate() {
        let place = graph.find_cause(&cause.id).expect("known");
        close(
            cause.id.as_str(),
            inference.cause(place),
            expected.nodes[at],
        );
    }
    for (at, place) in graph.mechanism_places().enumerate() {
        let want = expected.nodes[invented.priors.len() + at];
        close(&format!("m{at}"), inference.mechanism(place), want);
    }
    for (at, finding) in graph.findings().iter().enumerate() {
        let place = graph.find_finding(&finding.id).expect("known");
        for (got, want) in inference.finding(place).iter().zip(&expected.findings[at]) {
            close(finding.id.as_str(), *got, *want);
        }
    }
}

const SMALL: Size = Size {
    causes: 6,
    instruments: 2,
    mechanisms: 5,
    findings: 9,
    finding_parents: 4,
    neighbourly: 0.5,
};

/// Many parents for each finding and mechanism, so that chains are used.
const DENSE: Size = Size {
    causes: 9,
    instruments: 1,
    mechanisms: 3,
    findings: 7,
    finding_parents: 12,
    neighbourly: 0.0,
};

#[test]
fn soft_evidence() {
    for seed in 0..40 {
        compare(seed, SMALL, false, false);
        compare(seed, DENSE, false, false);
    }
}

#[test]
fn hard_evidence() {
    for seed in 100..140 {
        compare(seed, SMALL, true, false);
        compare(seed, DENSE, true, false);
    }
}

#[test]
fn likelihood_ratios_of_many_decades() {
    for seed in 200..240 {
        compare(seed, SMALL, false, true);
        compare(seed, DENSE, false, true);
    }
}
