//! Questions to a worked-out case: what if this were so, or had not been seen.
//!
//! Every question is the same tree summed again with some variables weighted
//! or some evidence silenced, so it is as exact as the answer itself. Where only
//! the sum is asked for, no more of it is summed again than has changed.

use super::Inference;
use super::cpt::{Terms, Unpushed};
use super::sides::Sum;
use super::tree::{Sounding, Weights, Workspace};
use crate::diagnosis::graph::{FindingIx, Link, Push};

/// A weight for a variable's false and true state.
pub(in crate::diagnosis) type Factor = (usize, [f64; 2]);

/// The outcome of one question.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::diagnosis) struct Run {
    /// Sum of the weighted joint, relative to the probability of the case's evidence.
    pub(in crate::diagnosis) weight: f64,
    /// P(true) of each cause under the question.
    pub(in crate::diagnosis) causes: Vec<f64>,
    /// Binary logarithm of the odds of each cause under the question.
    pub(in crate::diagnosis) log_odds: Vec<f64>,
    /// Natural logarithm of `weight`.
    pub(in crate::diagnosis) log_weight: f64,
}

impl Run {
    fn of(log_weight: f64, beliefs: &[Weights]) -> Self {
        Self {
            weight: log_weight.exp(),
            causes: beliefs.iter().map(|belief| belief[1]).collect(),
            log_odds: beliefs.iter().map(log_odds).collect(),
            log_weight,
        }
    }
}

/// Room for questions.
pub(in crate::diagnosis) struct Probe<'a> {
    inference: &'a Inference<'a>,
    /// For each side of the sum.
    rooms: Vec<Room>,
    soundings: Sounding,
    /// Nothing was ever left out: what is not asked about is as in the case.
    is_whole: bool,
}

/// Room for one side of the sum, and its weights.
struct Room {
    work: Workspace,
    unary: Vec<Weights>,
}

impl<'a> Probe<'a> {
    pub(super) fn new(inference: &'a Inference<'a>) -> Self {
        Self {
            inference,
            rooms: Vec::new(),
            soundings: Sounding::default(),
            is_whole: true,
        }
    }

    /// The rooms, which begin as the case left them. Many questions need none.
    fn rooms(&mut self) -> &mut [Room] {
        if self.rooms.is_empty() {
            let sides = self.inference.rooms.iter().zip(&self.inference.sides);
            self.rooms = sides
                .map(|(settled, side)| Room {
                    work: settled.again(),
                    unary: side.unary.clone(),
                })
                .collect();
        }
        &mut self.rooms
    }

    /// Leaves an observation out until it is restored.
    pub(in crate::diagnosis) fn silence(&mut self, observation: usize) {
        self.is_whole = false;
        let tree = &self.inference.tree;
        for room in self.rooms() {
            tree.silence(&mut room.work, observation);
        }
    }

    /// Takes an observation in again.
    pub(in crate::diagnosis) fn restore(&mut self, observation: usize) {
        let tree = &self.inference.tree;
        let values = &self.inference.evidence[observation].values;
        for room in self.rooms() {
            tree.set_evidence(&mut room.work, observation, values);
        }
    }

    /// Leaves every observation out.
    pub(in crate::diagnosis) fn silence_all(&mut self) {
        for observation in 0..self.inference.evidence.len() {
            self.silence(observation);
        }
    }

    fn weighted<T>(&mut self, factors: &[Factor], ask: impl FnOnce(&mut Self) -> T) -> T {
        let tree = &self.inference.tree;
        for Room { work, unary } in self.rooms() {
            for &(variable, [no, yes]) in factors {
                unary[variable][0] *= no;
                unary[variable][1] *= yes;
                tree.touch(work, variable);
            }
        }
        let answer = ask(self);
        for (Room { work, unary }, side) in self.rooms.iter_mut().zip(&self.inference.sides) {
            for &(variable, _) in factors {
                unary[variable] = side.unary[variable];
                tree.touch(work, variable);
            }
        }
        answer
    }

    /// Sums every side; `None` if the sum is 0.
    fn sum(&mut self) -> Option<Sum> {
        let tree = &self.inference.tree;
        let logs: Vec<Option<f64>> = self
            .rooms
            .iter_mut()
            .map(|Room { work, unary }| tree.inward(work, unary))
            .collect();
        Sum::of(&self.inference.sides, &logs)
    }

    /// The weighted sum alone, as a natural logarithm relative to the evidence;
    /// negative infinity if it is 0.
    pub(in crate::diagnosis) fn log_weight(&mut self, factors: &[Factor]) -> f64 {
        if self.is_whole {
            let Inference {
                tree, rooms, sum, ..
            } = self.inference;
            let ratios = rooms
                .iter()
                .map(|settled| [tree.sound(settled, &mut self.soundings, factors)]);
            let [ratio] = sum.join(ratios);
            return ratio.ln();
        }
        self.weighted(factors, |probe| match probe.sum() {
            Some(sum) => sum.log - probe.inference.sum.log,
            None => f64::NEG_INFINITY,
        })
    }

    /// The weighted sum relative to the evidence.
    pub(in crate::diagnosis) fn weight(&mut self, factors: &[Factor]) -> f64 {
        self.log_weight(factors).exp()
    }

    /// The weighted sum and the causes' probabilities under it.
    pub(in crate::diagnosis) fn run(&mut self, factors: &[Factor]) -> Run {
        let causes = self.inference.graph.causes().len();
        if self.is_whole && factors.is_empty() {
            return Run::of(0.0, &self.inference.beliefs[..causes]);
        }
        self.weighted(factors, |probe| {
            let tree = &probe.inference.tree;
            match probe.sum() {
                Some(sum) => {
                    for room in &mut probe.rooms {
                        tree.outward(&mut room.work, false);
                    }
                    let beliefs: Vec<Weights> = (0..causes)
                        .map(|at| sum.join(probe.rooms.iter().map(|room| room.work.beliefs[at])))
                        .collect();
                    Run::of(sum.log - probe.inference.sum.log, &beliefs)
                }
                None => Run {
                    weight: 0.0,
                    causes: vec![0.0; causes],
                    log_odds: vec![0.0; causes],
                    log_weight: f64::NEG_INFINITY,
                },
            }
        })
    }

    /// The factors by which a product over the parents enters a sum.
    pub(in crate::diagnosis) fn parent_factors(
        &self,
        links: &[Link],
        pick: fn(Unpushed) -> f64,
    ) -> Vec<Factor> {
        links
            .iter()
            .map(|link| {
                (
                    self.inference.variable(link.parent),
                    pick(Unpushed::by(link.push)),
                )
            })
            .filter(|&(_, left)| left < 1.0)
            .map(|(variable, left)| (variable, [1.0, left]))
            .collect()
    }

    /// P(level | what is not silenced, `given`) of a finding, in the order of
    /// its scale's levels.
    pub(in crate::diagnosis) fn finding_levels(
        &mut self,
        place: FindingIx,
        given: &[Factor],
    ) -> [f64; 3] {
        let finding = self.inference.graph.finding(place);
        let is_the_case = self.is_whole && given.is_empty();
        let base = if is_the_case {
            0.0
        } else {
            self.log_weight(given)
        };
        let leak = Unpushed::by(finding.leak);
        let mut expected = |pick: fn(Unpushed) -> f64| {
            let mut factors = self.parent_factors(&finding.parents, pick);
            if factors.is_empty() {
                return 1.0;
            }
            if let (true, &[(variable, [_, left])]) = (is_the_case, factors.as_slice()) {
                let [no, yes, ..] = self.inference.beliefs[variable];
                return no + left * yes;
            }
            factors.extend_from_slice(given);
            (self.log_weight(&factors) - base).exp()
        };
        let neither = expected(|unpushed| unpushed.either);
        let pushes = |way: fn(Push) -> f64| finding.parents.iter().any(|link| way(link.push) > 0.0);
        let (pushes_low, pushes_high) = (pushes(|push| push.low), pushes(|push| push.high));
        // Where all push one way, what is not pushed that way is not pushed at all.
        let mut alone = |is_pushed: bool, pick: fn(Unpushed) -> f64| match is_pushed {
            true if pushes_low && pushes_high => expected(pick),
            true => neither,
            false => 1.0,
        };
        let low = alone(pushes_low, |unpushed| unpushed.low);
        let high = alone(pushes_high, |unpushed| unpushed.high);
        let (either, low, high) = (leak.either * neither, leak.low * low, leak.high * high);
        let mut levels = [0.0; 3];
        for (at, level) in levels.iter_mut().enumerate().take(finding.scale.count()) {
            let mut report = [0.0; 3];
            report[at] = 1.0;
            let terms = Terms::of(finding.scale, &report);
            let sum = terms.all + terms.low * low + terms.high * high + terms.either * either;
            *level = sum.max(0.0);
        }
        levels
    }
}

/// Largest size of a logarithm of odds; beyond it a cause counts as certain.
const CERTAIN_BITS: f64 = 1000.0;

/// Binary logarithm of the odds of a belief.
pub(super) fn log_odds(belief: &Weights) -> f64 {
    (belief[1].log2() - belief[0].log2()).clamp(-CERTAIN_BITS, CERTAIN_BITS)
}
