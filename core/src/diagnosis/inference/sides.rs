//! The joint probability as a signed sum of products.
//!
//! Without a call the joint is one product of tables. That somebody called is
//! a noisy-OR over all causes at once,
//!
//! `P(call | causes) = 1 - (1 - leak) * product over true i of (1 - calls_i)`,
//!
//! and one table for it would tie every cause to every other. But it is a
//! difference of two products: the joint without the call, less `1 - leak`
//! times the same joint with each cause's true state weighted by `1 - calls_i`.
//! Each is summed on the tree of the case as it is, so a called case costs
//! twice an uncalled one and not more. The difference is well conditioned:
//! wherever it is taken it is at least `leak` times the first product, so
//! rounding grows by at most `1 / leak`.
//!
//! Source: the decomposition of noisy-OR evidence in D. Heckerman, "A tractable
//! inference algorithm for diagnosing multiple diseases" (1989), from memory.

use super::tree::Weights;
use crate::diagnosis::graph::Graph;

/// One product of the sum.
pub(super) struct Side {
    /// What it is multiplied with; below 0 if it is subtracted.
    factor: f64,
    /// The weights of each variable's states.
    pub(super) unary: Vec<Weights>,
}

/// The sides of a case: one, or two if somebody called, with the probability
/// that each cause alone makes somebody call.
pub(super) fn sides(graph: &Graph, unary: Vec<Weights>, calls: Option<&[f64]>) -> Vec<Side> {
    let silent = graph.call().zip(calls).map(|(call, calls)| {
        let mut unary = unary.clone();
        for (weights, calls) in unary.iter_mut().zip(calls) {
            weights[1] *= 1.0 - calls;
        }
        Side {
            factor: call.leak - 1.0,
            unary,
        }
    });
    let whole = Side { factor: 1.0, unary };
    std::iter::once(whole).chain(silent).collect()
}

/// The sum over the sides, and the share of each in it.
pub(super) struct Sum {
    /// Natural logarithm of the sum.
    pub(super) log: f64,
    shares: Vec<f64>,
}

impl Sum {
    /// Of the sides' own sums, as natural logarithms; `None` where a sum is 0.
    pub(super) fn of(sides: &[Side], logs: &[Option<f64>]) -> Option<Self> {
        let whole = (*logs.first()?)?;
        let mut shares: Vec<f64> = sides
            .iter()
            .zip(logs)
            .map(|(side, log)| log.map_or(0.0, |log| side.factor * (log - whole).exp()))
            .collect();
        let total: f64 = shares.iter().sum();
        if total <= 0.0 {
            return None;
        }
        for share in &mut shares {
            *share /= total;
        }
        Some(Self {
            log: whole + total.ln(),
            shares,
        })
    }

    /// Probabilities under the sum from those under each side.
    pub(super) fn join<const N: usize>(&self, by_side: impl Iterator<Item = [f64; N]>) -> [f64; N] {
        let mut joined = [0.0; N];
        for (share, side) in self.shares.iter().zip(by_side) {
            for (sum, value) in joined.iter_mut().zip(side) {
                *sum += share * value;
            }
        }
        // Rounding may leave a difference of probabilities a hair below 0.
        joined.map(|value| value.max(0.0))
    }
}
