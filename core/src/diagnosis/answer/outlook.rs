//! What each check would tell: expected information, and what each outcome would do.

use std::collections::HashMap;
use std::rc::Rc;

use super::super::graph::{CauseIx, FindingIx, Graph, Level};
use super::super::inference::cpt::{Terms, Unpushed};
use super::super::inference::{Factor, Inference, Probe, Run};
use crate::diagnosis::evidence::report_weights;

/// A part of the probability of what a check shows: `weights` of the outcomes
/// times the sum of the joint weighted by `factors`.
#[derive(Debug, Clone)]
struct Component {
    factors: Vec<Factor>,
    weights: Vec<f64>,
}

/// Most parts taken into account for one check; a check that reveals so many
/// findings that it would need more is judged by the first of them.
const MOST_COMPONENTS: usize = 9;
/// Most joint outcomes of one check.
const MOST_OUTCOMES: usize = 9;

/// The joint probabilities of a check's outcomes and the causes.
#[derive(Debug, Clone)]
pub(super) struct Outlook {
    /// The findings taken into account.
    pub(super) findings: Vec<FindingIx>,
    /// P(outcome | evidence); the level of the last finding varies fastest.
    pub(super) outcomes: Vec<f64>,
    /// P(outcome, cause | evidence) for each outcome and cause.
    pub(super) joint: Vec<Vec<f64>>,
}

impl Outlook {
    /// The levels of an outcome.
    pub(super) fn levels(&self, graph: &Graph, outcome: usize) -> Vec<(FindingIx, Level)> {
        let mut left = outcome;
        let mut levels: Vec<_> = self
            .findings
            .iter()
            .rev()
            .map(|&place| {
                let levels = graph.finding(place).scale.levels();
                let level = levels[left % levels.len()];
                left /= levels.len();
                (place, level)
            })
            .collect();
        levels.reverse();
        levels
    }

    /// Mutual information in bits between the outcome and one cause.
    pub(super) fn information(&self, cause: CauseIx, probability: f64) -> f64 {
        let part = |joint: f64, outcome: f64, cause: f64| {
            if joint > 0.0 && outcome > 0.0 && cause > 0.0 {
                joint * (joint / (outcome * cause)).log2()
            } else {
                0.0
            }
        };
        let sum: f64 = self
            .outcomes
            .iter()
            .zip(&self.joint)
            .map(|(&outcome, joint)| {
                let yes = joint[cause.0];
                part(yes, outcome, probability) + part(outcome - yes, outcome, 1.0 - probability)
            })
            .sum();
        sum.max(0.0)
    }
}

/// Works out outlooks, keeping what several of them share.
pub(super) struct Watch<'a> {
    inference: &'a Inference<'a>,
    probe: Probe<'a>,
    known: HashMap<Vec<(usize, [u64; 2])>, Rc<Run>>,
}

impl<'a> Watch<'a> {
    pub(super) fn new(inference: &'a Inference<'a>) -> Self {
        Self {
            inference,
            probe: inference.probe(),
            known: HashMap::new(),
        }
    }

    /// The outlook of learning the true level of a finding.
    pub(super) fn of_level(&mut self, finding: FindingIx) -> Outlook {
        let components = self.components(finding, 1.0, None);
        self.outlook(vec![finding], &components)
    }

    /// The outlook of what a check would report on these findings, their
    /// reliability and instruments considered, all read on the same visit.
    pub(super) fn of_reports(&mut self, findings: &[FindingIx]) -> Outlook {
        let mut taken = Vec::new();
        let mut all = vec![Component {
            factors: Vec::new(),
            weights: vec![1.0],
        }];
        for &place in findings {
            let finding = self.inference.graph().finding(place);
            let next = self.components(place, finding.reliability, finding.instrument);
            let joined = join(&all, &next);
            let outcomes = joined
                .first()
                .map_or(0, |component| component.weights.len());
            let too_many = joined.len() > MOST_COMPONENTS || outcomes > MOST_OUTCOMES;
            if too_many && !taken.is_empty() {
                break;
            }
            all = joined;
            taken.push(place);
        }
        self.outlook(taken, &all)
    }

    fn components(
        &self,
        place: FindingIx,
        reliability: f64,
        instrument: Option<CauseIx>,
    ) -> Vec<Component> {
        let finding = self.inference.graph().finding(place);
        let count = finding.scale.count();
        let leak = Unpushed::by(finding.leak);
        let terms: Vec<Terms> = (0..count)
            .map(|at| Terms::of(finding.scale, &report_weights(count, at, reliability)))
            .collect();
        let sound = instrument.map(|cause| (cause.0, [1.0, 0.0]));
        let mut components = Vec::new();
        let mut add = |mut factors: Vec<Factor>, weights: Vec<f64>| {
            factors.extend(sound);
            put(&mut components, merged(factors), weights);
        };
        add(Vec::new(), terms.iter().map(|term| term.all).collect());
        type Pick = fn(Unpushed) -> f64;
        type Share = fn(&Terms) -> f64;
        let products: [(Pick, Share); 3] = [
            (|unpushed| unpushed.low, |term| term.low),
            (|unpushed| unpushed.high, |term| term.high),
            (|unpushed| unpushed.either, |term| term.either),
        ];
        for (pick, share) in products {
            let weights: Vec<f64> = terms.iter().map(|term| share(term) * pick(leak)).collect();
            if weights.iter().any(|&weight| weight.abs() > 0.0) {
                add(self.probe.parent_factors(&finding.parents, pick), weights);
            }
        }
        if let Some(cause) = instrument {
            let evenly = vec![1.0 / count as f64; count];
            put(&mut components, vec![(cause.0, [0.0, 1.0])], evenly);
        }
        components
    }

    fn outlook(&mut self, findings: Vec<FindingIx>, components: &[Component]) -> Outlook {
        let outcomes = components
            .first()
            .map_or(0, |component| component.weights.len());
        let causes = self.inference.graph().causes().len();
        let mut outlook = Outlook {
            findings,
            outcomes: vec![0.0; outcomes],
            joint: vec![vec![0.0; causes]; outcomes],
        };
        for component in components {
            let run = self.run(&component.factors);
            for (outcome, &weight) in component.weights.iter().enumerate() {
                let part = weight * run.weight;
                outlook.outcomes[outcome] += part;
                for (sum, cause) in outlook.joint[outcome].iter_mut().zip(&run.causes) {
                    *sum += part * cause;
                }
            }
        }
        // Each outcome is a difference of products; rounding may leave it a hair below 0.
        for (outcome, joint) in outlook.outcomes.iter_mut().zip(&mut outlook.joint) {
            *outcome = outcome.max(0.0);
            for sum in joint {
                *sum = sum.clamp(0.0, *outcome);
            }
        }
        outlook
    }

    fn run(&mut self, factors: &[Factor]) -> Rc<Run> {
        let key = factors
            .iter()
            .map(|&(at, weights)| (at, weights.map(f64::to_bits)))
            .collect();
        let probe = &mut self.probe;
        Rc::clone(
            self.known
                .entry(key)
                .or_insert_with(|| Rc::new(probe.run(factors))),
        )
    }
}

/// Adds a component, into an equal one if there is one.
fn put(components: &mut Vec<Component>, factors: Vec<Factor>, weights: Vec<f64>) {
    match components
        .iter_mut()
        .find(|component| component.factors == factors)
    {
        Some(component) => {
            for (sum, weight) in component.weights.iter_mut().zip(weights) {
                *sum += weight;
            }
        }
        None => components.push(Component { factors, weights }),
    }
}

/// One factor a variable, in order.
fn merged(mut factors: Vec<Factor>) -> Vec<Factor> {
    factors.sort_by_key(|&(variable, _)| variable);
    let mut merged: Vec<Factor> = Vec::with_capacity(factors.len());
    for (variable, [no, yes]) in factors {
        match merged.last_mut() {
            Some((last, weights)) if *last == variable => {
                weights[0] *= no;
                weights[1] *= yes;
            }
            _ => merged.push((variable, [no, yes])),
        }
    }
    merged
}

/// The components of two independent reports, given the causes, together.
fn join(first: &[Component], second: &[Component]) -> Vec<Component> {
    let mut joined = Vec::new();
    for a in first {
        for b in second {
            let factors = merged(a.factors.iter().chain(&b.factors).copied().collect());
            if factors
                .iter()
                .any(|(_, [no, yes])| *no <= 0.0 && *yes <= 0.0)
            {
                continue;
            }
            let weights = a
                .weights
                .iter()
                .flat_map(|x| b.weights.iter().map(move |y| x * y))
                .collect();
            put(&mut joined, factors, weights);
        }
    }
    joined
}
