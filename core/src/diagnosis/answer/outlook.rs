//! What each check would tell: expected information, and what each outcome would do.

use std::collections::HashMap;
use std::rc::Rc;

use super::super::graph::{CauseIx, FindingIx, Graph, Level};
use super::super::inference::cpt::{Terms, Unpushed, levels};
use super::super::inference::{Factor, Inference, Probe};
use super::products::{Component, join, merged, put};
use crate::diagnosis::evidence::report_weights;

/// Up to so many parents and instruments a check may be worked out from the joint
/// probabilities of their states, whose sums many checks share, where that takes
/// fewer new sums than the products over the parents.
const MOST_STATE_VARIABLES: usize = 5;
/// Most products taken into account for one check; a check that reveals so
/// many findings that it would need more is judged by the first of them.
const MOST_COMPONENTS: usize = 64;
/// Most joint outcomes of one check.
const MOST_OUTCOMES: usize = 64;

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

/// Factors, equal to the last bit or not equal.
type Key = Vec<(usize, [u64; 2])>;

/// Works out outlooks, keeping what several of them share.
pub(super) struct Watch<'a> {
    inference: &'a Inference<'a>,
    probe: Probe<'a>,
    /// The weighted sums worked out so far, by their factors: the first number of
    /// each row is the sum, the others are it with each cause true.
    sums: HashMap<Key, Rc<[f64]>>,
}

/// A finding as it would be learned.
#[derive(Clone, Copy)]
struct Learned {
    finding: FindingIx,
    reliability: f64,
    instrument: Option<CauseIx>,
}

impl<'a> Watch<'a> {
    pub(super) fn new(inference: &'a Inference<'a>) -> Self {
        Self {
            inference,
            probe: inference.probe(),
            sums: HashMap::new(),
        }
    }

    /// The outlook of learning the true level of a finding.
    pub(super) fn of_level(&mut self, finding: FindingIx) -> Outlook {
        self.of(&[Learned {
            finding,
            reliability: 1.0,
            instrument: None,
        }])
    }

    /// The outlook of what a check would report on these findings, their
    /// reliability and instruments considered, all read on the same visit.
    pub(super) fn of_reports(&mut self, findings: &[FindingIx]) -> Outlook {
        let learned: Vec<Learned> = findings
            .iter()
            .map(|&place| {
                let finding = self.inference.graph().finding(place);
                Learned {
                    finding: place,
                    reliability: finding.reliability,
                    instrument: finding.instrument,
                }
            })
            .collect();
        self.of(&learned)
    }

    fn of(&mut self, learned: &[Learned]) -> Outlook {
        let graph = self.inference.graph();
        let mut variables: Vec<usize> = Vec::new();
        let mut outcomes = 1;
        for one in learned {
            let finding = graph.finding(one.finding);
            let parents = finding.parents.iter();
            variables.extend(parents.map(|link| self.inference.variable(link.parent)));
            variables.extend(one.instrument.map(|cause| cause.0));
            outcomes *= finding.scale.count();
        }
        variables.sort_unstable();
        variables.dedup();
        let (taken, all) = self.products(learned);
        let few = variables.len() <= MOST_STATE_VARIABLES && outcomes <= MOST_OUTCOMES;
        if few && (taken.len() < learned.len() || self.unknown_states(&variables) < all.len()) {
            return self.by_states(learned, &variables);
        }
        self.by_components(taken, &all)
    }

    /// The products by which the check can be worked out, and the findings that
    /// could be taken in.
    fn products(&self, learned: &[Learned]) -> (Vec<FindingIx>, Vec<Component>) {
        let mut taken = Vec::new();
        let mut all = vec![Component {
            factors: Vec::new(),
            weights: vec![1.0],
        }];
        for one in learned {
            let next = self.components(one.finding, one.reliability, one.instrument);
            let joined = join(&all, &next);
            let outcomes = joined
                .first()
                .map_or(0, |component| component.weights.len());
            let too_many = joined.len() > MOST_COMPONENTS || outcomes > MOST_OUTCOMES;
            if too_many && !taken.is_empty() {
                break;
            }
            all = joined;
            taken.push(one.finding);
        }
        (taken, all)
    }

    /// How many of the sums over the states of these variables are still to be worked out.
    fn unknown_states(&self, variables: &[usize]) -> usize {
        (0..1_usize << variables.len())
            .filter(|&set| !self.sums.contains_key(&key(&all_so(variables, set))))
            .count()
    }

    /// Sums over the states of the parents and instruments: given those,
    /// what is reported says nothing about the causes.
    fn by_states(&mut self, learned: &[Learned], variables: &[usize]) -> Outlook {
        let states = self.states(variables);
        let mut outlook = self.empty(
            learned.iter().map(|one| one.finding).collect(),
            learned
                .iter()
                .map(|one| self.inference.graph().finding(one.finding).scale.count())
                .product(),
        );
        for (state, row) in states.iter().enumerate() {
            let [probability, causes @ ..] = &row[..] else {
                continue;
            };
            if *probability <= 0.0 {
                continue;
            }
            let is_so = |variable: usize| {
                variables
                    .iter()
                    .position(|&other| other == variable)
                    .is_some_and(|at| state >> at & 1 == 1)
            };
            let mut reports = vec![1.0];
            for one in learned {
                let report = self.report(*one, is_so);
                reports = reports
                    .iter()
                    .flat_map(|so_far| report.iter().map(move |p| so_far * p))
                    .collect();
            }
            for (outcome, report) in reports.into_iter().enumerate() {
                outlook.outcomes[outcome] += probability * report;
                for (sum, cause) in outlook.joint[outcome].iter_mut().zip(causes) {
                    *sum += cause * report;
                }
            }
        }
        outlook
    }

    /// P(each level is reported | which variables are so).
    fn report(&self, learned: Learned, is_so: impl Fn(usize) -> bool) -> Vec<f64> {
        let finding = self.inference.graph().finding(learned.finding);
        let count = finding.scale.count();
        if learned.instrument.is_some_and(|cause| is_so(cause.0)) {
            return vec![1.0 / count as f64; count];
        }
        let active = finding
            .parents
            .iter()
            .filter(|link| is_so(self.inference.variable(link.parent)))
            .map(|link| link.push);
        let levels = levels(finding, active);
        (0..count)
            .map(|at| {
                let weights = report_weights(count, at, learned.reliability);
                levels.iter().zip(weights).map(|(p, w)| p * w).sum()
            })
            .collect()
    }

    /// P(state of the variables, each cause | evidence): bit `n` of a state
    /// tells whether variable `n` is so.
    fn states(&mut self, variables: &[usize]) -> Vec<Vec<f64>> {
        let mut rows: Vec<Vec<f64>> = (0..1_usize << variables.len())
            .map(|set| {
                let row = self.sum(&all_so(variables, set));
                row.to_vec()
            })
            .collect();
        // From "these are so, whatever the others" to "these and no others".
        // Rounding may leave a difference of probabilities a hair below 0.
        for bit in 0..variables.len() {
            for set in (0..rows.len()).filter(|set| set >> bit & 1 == 0) {
                let (without, with) = rows.split_at_mut(set | 1 << bit);
                for (sum, part) in without[set].iter_mut().zip(&with[0]) {
                    *sum = (*sum - part).max(0.0);
                }
            }
        }
        rows
    }

    fn sum(&mut self, factors: &[Factor]) -> Rc<[f64]> {
        let key = key(factors);
        if let Some(known) = self.sums.get(&key) {
            return Rc::clone(known);
        }
        let row: Rc<[f64]> = match factors {
            // That an instrument is sound is the case less that it lies: many
            // checks ask for both, and the case costs nothing.
            &[(variable, [1.0, 0.0])] => {
                let whole = self.sum(&[]);
                let less = self.sum(&[(variable, [0.0, 1.0])]);
                let parts = whole.iter().zip(&*less);
                // Rounding may leave a difference of probabilities a hair below 0.
                parts.map(|(whole, less)| (whole - less).max(0.0)).collect()
            }
            _ => {
                let run = self.probe.run(factors);
                let causes = run.causes.iter().map(|cause| run.weight * cause);
                std::iter::once(run.weight).chain(causes).collect()
            }
        };
        self.sums.insert(key, Rc::clone(&row));
        row
    }

    fn empty(&self, findings: Vec<FindingIx>, outcomes: usize) -> Outlook {
        let causes = self.inference.graph().causes().len();
        Outlook {
            findings,
            outcomes: vec![0.0; outcomes],
            joint: vec![vec![0.0; causes]; outcomes],
        }
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

    fn by_components(&mut self, findings: Vec<FindingIx>, components: &[Component]) -> Outlook {
        let outcomes = components
            .first()
            .map_or(0, |component| component.weights.len());
        let mut outlook = self.empty(findings, outcomes);
        for component in components {
            let row = self.sum(&component.factors);
            let [whole, causes @ ..] = &row[..] else {
                continue;
            };
            for (outcome, &weight) in component.weights.iter().enumerate() {
                outlook.outcomes[outcome] += weight * whole;
                for (sum, cause) in outlook.joint[outcome].iter_mut().zip(causes) {
                    *sum += weight * cause;
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
}

/// The factors that make these of the variables so, and say nothing of the others.
fn all_so(variables: &[usize], set: usize) -> Vec<Factor> {
    variables
        .iter()
        .enumerate()
        .filter(|(at, _)| set >> at & 1 == 1)
        .map(|(_, &variable)| (variable, [0.0, 1.0]))
        .collect()
}

fn key(factors: &[Factor]) -> Key {
    factors
        .iter()
        .map(|&(variable, weights)| (variable, weights.map(f64::to_bits)))
        .collect()
}
