//! Exact inference on the rule graph.
//!
//! The graph with its observations is turned into small non-negative tables
//! (`cpt` defines the probabilities, `network` the tables, `joining` how large
//! families are split into small tables) and summed by
//! variable elimination in both directions (`tree`, in the order of `order`).
//! Nothing is sampled, truncated or iterated to convergence: the numbers are
//! those of summing the joint distribution over all its states, up to rounding.

mod case;
pub(super) mod cpt;
mod joining;
mod network;
mod order;
mod probe;
mod sides;
mod tree;

pub use case::CaseError;
pub(super) use network::Observed;
pub(super) use probe::{Factor, Probe, Run};

use super::evidence::Case;
use super::graph::{CauseIx, FindingIx, Graph, MechanismIx, Parent};
use network::Network;
use sides::{Side, Sum};
use tree::{MAX_STATES, Table, Tree, Weights, Workspace};

/// A case as numbers.
pub(super) struct CaseParts {
    /// The prior of each cause, after learning and facts.
    pub(super) priors: Vec<f64>,
    /// If somebody called: the probability that each cause, alone, makes somebody call.
    pub(super) calls: Option<Vec<f64>>,
    /// What was observed, by finding.
    pub(super) observed: Vec<Observed>,
    /// What was found about causes themselves: the likelihood of not so and so.
    pub(super) found: Vec<(CauseIx, [f64; 2])>,
}

impl CaseParts {
    pub(super) fn of(graph: &Graph, case: &Case) -> Result<Self, CaseError> {
        let observed = case::observed(graph, case)?;
        Ok(Self {
            priors: case::priors(graph, case)?,
            calls: case::calls(graph, case, &observed),
            observed,
            found: case::found(graph, case)?,
        })
    }
}

/// A case worked out on a graph: the probability of everything given everything observed.
pub struct Inference<'g> {
    graph: &'g Graph,
    priors: Vec<f64>,
    found: Vec<(CauseIx, [f64; 2])>,
    tree: Tree,
    observed: Vec<Observed>,
    evidence: Vec<Table>,
    sides: Vec<Side>,
    /// The sum of each side, summed in both directions.
    rooms: Vec<Workspace>,
    sum: Sum,
    beliefs: Vec<Weights>,
    finding_levels: Vec<Option<[f64; 3]>>,
}

impl<'g> Inference<'g> {
    /// Works a case out.
    ///
    /// # Errors
    /// If the case names what the graph does not have, gives a likelihood of
    /// the wrong scale or a prior out of range, or is impossible under the
    /// graph (which takes hard evidence against certainties).
    pub fn new(graph: &'g Graph, case: &Case) -> Result<Self, CaseError> {
        let CaseParts {
            priors,
            calls,
            observed,
            found,
        } = CaseParts::of(graph, case)?;
        let Network {
            cards,
            fixed,
            evidence,
            evidence_by_level,
        } = Network::new(graph, &observed);
        let mut unary: Vec<Weights> = vec![[1.0; MAX_STATES]; cards.len()];
        for (weights, &prior) in unary.iter_mut().zip(&priors) {
            *weights = [1.0 - prior, prior, 0.0, 0.0];
        }
        for &(cause, [not_so, so]) in &found {
            unary[cause.0][0] *= not_so;
            unary[cause.0][1] *= so;
        }
        let tree = Tree::compile(cards, &fixed, &evidence);
        let sides = sides::sides(graph, unary, calls.as_deref());
        let (rooms, logs): (Vec<Workspace>, Vec<Option<f64>>) =
            summed(&tree, &evidence, &sides).into_iter().unzip();
        let sum = Sum::of(&sides, &logs).ok_or(CaseError::Impossible)?;

        let nodes = graph.causes().len() + graph.mechanisms().len();
        let beliefs = (0..nodes)
            .map(|at| sum.join(rooms.iter().map(|room| room.beliefs[at])))
            .collect();
        let mut finding_levels = vec![None; graph.findings().len()];
        for (slot, (observation, by_level)) in observed.iter().zip(&evidence_by_level).enumerate() {
            let levels = rooms.iter().map(|room| {
                posterior_levels(
                    tree.evidence_marginal(room, slot),
                    &evidence[slot].values,
                    by_level,
                )
            });
            finding_levels[observation.finding.0] = Some(sum.join(levels));
        }
        Ok(Self {
            graph,
            priors,
            found,
            tree,
            observed,
            evidence,
            sides,
            rooms,
            sum,
            beliefs,
            finding_levels,
        })
    }

    /// The graph.
    #[must_use]
    pub fn graph(&self) -> &'g Graph {
        self.graph
    }

    /// P(cause | evidence).
    #[must_use]
    pub fn cause(&self, cause: CauseIx) -> f64 {
        self.beliefs[cause.0][1]
    }

    /// Binary logarithm of the odds of a cause given the evidence.
    #[must_use]
    pub fn log_odds(&self, cause: CauseIx) -> f64 {
        probe::log_odds(&self.beliefs[cause.0])
    }

    /// P(cause) before evidence, after facts and learned priors.
    #[must_use]
    pub fn prior(&self, cause: CauseIx) -> f64 {
        self.priors[cause.0]
    }

    /// What was found about a cause itself, if anything was: the binary
    /// logarithm of the factor on its odds, infinite if it was beyond doubt.
    #[must_use]
    pub fn found_bits(&self, cause: CauseIx) -> Option<f64> {
        let (_, [not_so, so]) = self.found.iter().find(|(place, _)| *place == cause)?;
        Some((so / not_so).log2())
    }

    /// P(mechanism at work | evidence).
    #[must_use]
    pub fn mechanism(&self, mechanism: MechanismIx) -> f64 {
        self.beliefs[self.graph.causes().len() + mechanism.0][1]
    }

    /// P(level | evidence) of a finding, in the order of its scale's levels.
    /// For a finding that was not observed this is what a check would show.
    #[must_use]
    pub fn finding(&self, finding: FindingIx) -> Vec<f64> {
        let count = self.graph.finding(finding).scale.count();
        let levels = self.finding_levels[finding.0]
            .unwrap_or_else(|| self.probe().finding_levels(finding, &[]));
        levels[..count].to_vec()
    }

    /// [`Inference::finding`] of every finding, in the order of the graph, at
    /// less cost than one by one.
    #[must_use]
    pub fn findings(&self) -> Vec<Vec<f64>> {
        let mut probe = self.probe();
        self.graph
            .finding_places()
            .map(|place| {
                let count = self.graph.finding(place).scale.count();
                let levels = self.finding_levels[place.0]
                    .unwrap_or_else(|| probe.finding_levels(place, &[]));
                levels[..count].to_vec()
            })
            .collect()
    }

    /// Natural logarithm of the probability of the observations (and of the
    /// call, if somebody called), each likelihood taken with its largest weight 1.
    #[must_use]
    pub fn log_evidence(&self) -> f64 {
        self.sum.log
    }

    /// Whether a call is part of the evidence.
    pub(super) fn is_called(&self) -> bool {
        self.sides.len() > 1
    }

    /// What was observed, one entry for each finding.
    pub(super) fn observed(&self) -> &[Observed] {
        &self.observed
    }

    /// Whether a finding was observed.
    #[must_use]
    pub fn is_observed(&self, finding: FindingIx) -> bool {
        self.finding_levels[finding.0].is_some()
    }

    /// Cells of all tables summed in one pass, and of the largest: what a pass costs.
    #[must_use]
    pub fn cost(&self) -> (usize, usize) {
        (self.tree.cells(), self.tree.largest())
    }

    /// A way to ask what would be if.
    pub(super) fn probe(&self) -> Probe<'_> {
        Probe::new(self)
    }

    pub(super) fn variable(&self, parent: Parent) -> usize {
        network::variable(self.graph.causes().len(), parent)
    }
}

/// From so many cells on the sides are summed at the same time: below, a thread
/// costs more than it spares.
const CELLS_WORTH_A_THREAD: usize = 20_000;

/// Sums each side in both directions.
fn summed(tree: &Tree, evidence: &[Table], sides: &[Side]) -> Vec<(Workspace, Option<f64>)> {
    let one = |side: &Side| {
        let mut room = Workspace::default();
        tree.prepare(&mut room);
        for (slot, table) in evidence.iter().enumerate() {
            tree.set_evidence(&mut room, slot, &table.values);
        }
        let log = tree.inward(&mut room, &side.unary);
        if log.is_some() {
            tree.outward(&mut room, true);
        }
        (room, log)
    };
    let Some((first, rest)) = sides.split_first() else {
        return Vec::new();
    };
    if rest.is_empty() || tree.cells() < CELLS_WORTH_A_THREAD {
        return sides.iter().map(one).collect();
    }
    std::thread::scope(|scope| {
        let others: Vec<_> = rest.iter().map(|side| scope.spawn(|| one(side))).collect();
        let mut all = vec![one(first)];
        for (other, side) in others.into_iter().zip(rest) {
            // A thread that could not end is made up for.
            all.push(other.join().unwrap_or_else(|_| one(side)));
        }
        all
    })
}

/// P(level | evidence) of an observed finding: how probable each cell of its
/// table is, shared out as the levels contribute to it.
fn posterior_levels(marginal: &[f64], table: &[f64], by_level: &[Vec<f64>]) -> [f64; 3] {
    let mut levels = [0.0; 3];
    for ((&probability, &whole), cell) in marginal.iter().zip(table).zip(0..) {
        if whole > 0.0 {
            for (level, part) in levels.iter_mut().zip(by_level) {
                *level += probability * (part[cell] / whole);
            }
        }
    }
    let total: f64 = levels.iter().sum();
    levels.map(|level| if total > 0.0 { level / total } else { 0.0 })
}
