//! Times of the exact inference on an invented graph of the size of the real one.

use criterion::{Criterion, criterion_group, criterion_main};
use returnline_core::diagnosis::{
    Case, FindingId, Graph, Inference, Likelihood, Observation, SourceText,
};
use returnline_tests::invented::{Dice, Invented, Size};

fn case(invented: &Invented, seed: u64, share: f64) -> Case {
    let mut dice = Dice::new(seed);
    let mut case = Case::default();
    for (at, finding) in invented.findings.iter().enumerate() {
        if dice.chance(share) {
            let mut weight = || dice.between(0.01, 1.0);
            let likelihood = if finding.graded {
                Likelihood::graded(weight(), weight(), weight())
            } else {
                Likelihood::presence(weight(), weight())
            };
            if let Ok(likelihood) = likelihood {
                case.observations.push(Observation::new(
                    FindingId::new(&format!("f{at}")),
                    likelihood,
                ));
            }
        }
    }
    case
}

fn inference(c: &mut Criterion) {
    for seed in [1, 2, 3] {
        let invented = Invented::new(seed, Size::FULL);
        let text = invented.to_toml();
        let Ok(graph) = Graph::load(&[SourceText {
            name: "invented",
            text: &text,
        }]) else {
            continue;
        };
        for share in [0.15, 0.3, 0.5] {
            let case = case(&invented, seed, share);
            let observed = case.observations.len();
            if let Ok(inference) = Inference::new(&graph, &case) {
                println!(
                    "graph {seed}, {observed} findings: cells {:?}",
                    inference.cost()
                );
            }
            c.bench_function(&format!("graph {seed}, {observed} soft findings"), |b| {
                b.iter(|| Inference::new(&graph, &case));
            });
        }
    }
}

criterion_group!(benches, inference);
criterion_main!(benches);
