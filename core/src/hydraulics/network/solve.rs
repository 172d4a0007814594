//! The flows: global gradient method with a line search.
//!
//! E. Todini and S. Pilati, *A gradient method for the analysis of pipe
//! networks* (1987): Newton's method on the energy equations of all links and
//! the mass balances of all nodes at once. Every loss here rises with flow, so
//! the flows are the minimum of a convex function; a step along the Newton
//! direction is shortened until it does not pass that minimum, which makes the
//! method find it from any start.

use super::elimination::Elimination;
use super::link::Law;
use super::{LinkId, Network, NodeId, Placed};
use crate::units::{
    Bound, Density, DynamicViscosity, OutOfRange, PressureDifference, Quantity, VolumeFlow,
};
use std::sync::OnceLock;
use thiserror::Error;

/// Flows that can be taken out at a node.
pub const OUTFLOW: Bound<VolumeFlow> = Bound::si("flow taken out at a node", -1.0, 1.0);
/// Densities of what can be in a loop.
pub const DENSITY: Bound<Density> = Bound::si("density", 500.0, 2_000.0);
/// Viscosities of what can be in a loop.
pub const VISCOSITY: Bound<DynamicViscosity> = Bound::si("dynamic viscosity", 1e-5, 10.0);

const MAX_STEPS: usize = 200;
/// Error of energy in a link, relative to the largest loss, from which one more step is
/// the last: Newton's method squares what is left of it.
const TOLERANCE: f64 = 1e-9;
/// Change of a link's flow, relative to the largest flow, at which it is solved
/// too: in a shut check valve rounding makes an error of energy, but no flow.
const STILL: f64 = 1e-12;
/// Least slope of a loss that is reckoned with, Pa/(m³/s): a square law is flat
/// at rest, and a conductance far above those of the pipes (1e-8 to 1e-6) would
/// drown theirs in rounding. The answer does not depend on it, only the steps.
const LEAST_SLOPE: f64 = 1e3;

/// Why a network has no flows.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum SolveError {
    /// Nothing is joined to anything.
    #[error("the network has no links")]
    Empty,
    /// Flow is taken out or put in where no held pressure is in reach and the
    /// flows do not cancel.
    #[error("no way for the flow taken out at node {0}", node.0)]
    Unreachable {
        /// A node of the part that is cut off.
        node: NodeId,
    },
    /// The method did not come to rest.
    #[error("not solved after {steps} steps; worst link {link}, off by {error} Pa", link = worst.0)]
    NotConverged {
        /// Steps taken.
        steps: usize,
        /// Link with the largest error.
        worst: LinkId,
        /// Its error of energy, Pa.
        error: f64,
    },
    /// A length, fitting, speed, flow or fluid is out of range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The equations lost their answer to rounding.
    #[error("the resistances differ too much to be solved together")]
    Singular,
}

/// Flows and pressures of a network.
#[derive(Clone, Debug, PartialEq)]
pub struct Solution {
    flows: Vec<f64>,
    pressures: Vec<f64>,
    /// Steps that were taken.
    pub steps: usize,
}

impl Solution {
    /// Flow of a link, positive from its first node to its second.
    pub fn flow(&self, link: LinkId) -> VolumeFlow {
        VolumeFlow::from_si(self.flows.get(link.0).copied().unwrap_or(0.0))
    }
    /// Pressure of a node against the held node (or the first of its part).
    pub fn pressure(&self, node: NodeId) -> PressureDifference {
        PressureDifference::from_si(self.pressures.get(node.0).copied().unwrap_or(0.0))
    }
    /// Pressure at one node less that at another.
    pub fn drop(&self, from: NodeId, to: NodeId) -> PressureDifference {
        self.pressure(from) - self.pressure(to)
    }
}

impl Network {
    fn check(&self) -> Result<(), OutOfRange> {
        DENSITY.check(self.fluid.density)?;
        VISCOSITY.check(self.fluid.viscosity)?;
        for node in &self.nodes {
            OUTFLOW.check(VolumeFlow::from_si(node.outflow))?;
        }
        self.links.iter().try_for_each(|placed| placed.link.check())
    }
    /// Flows and pressures.
    ///
    /// # Errors
    /// [`SolveError`], which says what stood in the way.
    pub fn solve(&self) -> Result<Solution, SolveError> {
        self.find(None)
    }
    /// As [`Network::solve`], starting from the flows of a similar network.
    ///
    /// # Errors
    /// [`SolveError`].
    pub fn solve_from(&self, near: &Solution) -> Result<Solution, SolveError> {
        self.find(Some(near))
    }
}

/// The pattern of a network's equations, found when it is first solved and kept while
/// nothing is added. Two networks are alike whether or not it has been found.
#[derive(Clone, Debug, Default)]
pub(super) struct Pattern(OnceLock<Elimination>);

impl PartialEq for Pattern {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

impl Pattern {
    fn of(&self, network: &Network) -> &Elimination {
        self.0.get_or_init(|| {
            let edges: Vec<_> = network.links.iter().map(|l| (l.from, l.to)).collect();
            Elimination::new(network.nodes.len(), &edges)
        })
    }
}

/// A solution on its way.
struct Search<'a> {
    links: &'a [Placed],
    laws: Vec<Law<'a>>,
    flows: Vec<f64>,
    /// Loss and slope of every link at its flow.
    losses: Vec<(f64, f64)>,
    pressures: Vec<f64>,
    /// Change of every flow that Newton's method asks for.
    change: Vec<f64>,
    /// Losses and slopes a whole step ahead.
    ahead: Vec<(f64, f64)>,
}

impl<'a> Search<'a> {
    fn new(network: &'a Network, near: Option<&Solution>) -> Self {
        let links = &network.links;
        let mut flows: Vec<f64> = match near {
            Some(near) if near.flows.len() == links.len() => near.flows.clone(),
            _ => links.iter().map(|l| l.link.first_guess()).collect(),
        };
        for (flow, link) in flows.iter_mut().zip(links) {
            if !link.open {
                *flow = 0.0;
            } else if *flow == 0.0 {
                *flow = 0.1 * link.link.first_guess();
            }
        }
        let laws: Vec<Law<'a>> = links
            .iter()
            .map(|l| l.link.law(network.fluid, network.law))
            .collect();
        let losses = laws
            .iter()
            .zip(&flows)
            .map(|(law, q)| bounded(law.loss(*q)));
        Self {
            losses: losses.collect(),
            ahead: vec![(0.0, 0.0); links.len()],
            change: vec![0.0; links.len()],
            pressures: vec![0.0; network.nodes.len()],
            links,
            laws,
            flows,
        }
    }

    /// Changes of the flows by the pressures just found; the link that is furthest from
    /// balance, and whether all are close enough that this change is the last.
    fn changes(&mut self) -> ((LinkId, f64), bool) {
        let (mut largest_flow, mut largest_loss) = (1e-6f64, 1e-3f64);
        let mut worst = (LinkId(0), 0.0);
        for (i, link) in self.links.iter().enumerate().filter(|(_, l)| l.open) {
            let (loss, slope) = self.losses[i];
            let error = self.pressures[link.from] - self.pressures[link.to] - loss;
            self.change[i] = error / slope;
            largest_flow = largest_flow.max(self.flows[i].abs());
            largest_loss = largest_loss.max(loss.abs());
            if error.abs() > worst.1 {
                worst = (LinkId(i), error.abs());
            }
        }
        let settled = self.losses.iter().zip(&self.change).all(|(loss, change)| {
            (change * loss.1).abs() <= TOLERANCE * largest_loss
                || change.abs() <= STILL * largest_flow
        });
        (worst, settled)
    }

    /// Slope of the energy along the change, a whole step ahead, whose losses are kept.
    fn look_ahead(&mut self) -> f64 {
        let mut sum = 0.0;
        for (i, link) in self.links.iter().enumerate() {
            if !link.open {
                continue;
            }
            self.ahead[i] = bounded(self.laws[i].loss(self.flows[i] + self.change[i]));
            let drop = self.pressures[link.from] - self.pressures[link.to];
            sum += self.change[i] * (self.ahead[i].0 - drop);
        }
        sum
    }

    fn slope_at(&self, length: f64) -> f64 {
        let mut sum = 0.0;
        for (i, link) in self.links.iter().enumerate() {
            if link.open && self.change[i] != 0.0 {
                let loss = self.laws[i].loss(self.flows[i] + length * self.change[i]).0;
                let drop = self.pressures[link.from] - self.pressures[link.to];
                sum += self.change[i] * (loss - drop);
            }
        }
        sum
    }

    /// How far to go along a change of balanced flows: the whole way, unless that
    /// passes the minimum by more than a little.
    fn length(&self, whole: f64) -> f64 {
        // At the start every link's part is minus its error times its change.
        let start: f64 = self
            .losses
            .iter()
            .zip(&self.change)
            .map(|(loss, change)| change * change * loss.1)
            .sum();
        if whole <= 0.5 * start {
            return 1.0;
        }
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..30 {
            let middle = 0.5 * (low + high);
            let at = self.slope_at(middle);
            if at.abs() <= 0.3 * start {
                return middle;
            }
            if at > 0.0 {
                high = middle;
            } else {
                low = middle;
            }
        }
        0.5 * (low + high)
    }

    fn go(&mut self, length: f64) {
        for (flow, change) in self.flows.iter_mut().zip(&self.change) {
            *flow += length * change;
        }
    }
}

/// A loss with a slope that can be divided by.
fn bounded((loss, slope): (f64, f64)) -> (f64, f64) {
    (loss, slope.max(LEAST_SLOPE))
}

impl Network {
    fn find(&self, near: Option<&Solution>) -> Result<Solution, SolveError> {
        if self.links.is_empty() {
            return Err(SolveError::Empty);
        }
        self.check()?;
        let held = hold_every_part(self)?;
        let elimination = self.pattern.of(self);
        let mut search = Search::new(self, near);
        let mut diagonal = vec![0.0; self.nodes.len()];
        let mut coupling = vec![0.0; self.links.len()];
        let mut factor = Vec::new();
        let mut worst = (LinkId(0), f64::INFINITY);
        for step in 0..MAX_STEPS {
            for (node, held) in held.iter().enumerate() {
                diagonal[node] = if held.is_some() { 1.0 } else { 0.0 };
                search.pressures[node] = held.unwrap_or(-self.nodes[node].outflow);
            }
            for (i, link) in self.links.iter().enumerate() {
                coupling[i] = 0.0;
                if !link.open || link.from == link.to {
                    continue;
                }
                let conductance = 1.0 / search.losses[i].1;
                let carried = search.flows[i] - search.losses[i].0 * conductance;
                let (from, to) = (link.from, link.to);
                let right = &mut search.pressures;
                match (held[from], held[to]) {
                    (None, None) => {
                        coupling[i] = conductance;
                        diagonal[from] += conductance;
                        diagonal[to] += conductance;
                        right[from] -= carried;
                        right[to] += carried;
                    }
                    (None, Some(fixed)) => {
                        diagonal[from] += conductance;
                        right[from] += conductance * fixed - carried;
                    }
                    (Some(fixed), None) => {
                        diagonal[to] += conductance;
                        right[to] += conductance * fixed + carried;
                    }
                    (Some(_), Some(_)) => {}
                }
            }
            let solved =
                elimination.solve(&mut diagonal, &coupling, &mut search.pressures, &mut factor);
            if !solved {
                return Err(SolveError::Singular);
            }
            let settled;
            (worst, settled) = search.changes();
            let whole = if step > 0 && settled {
                search.go(1.0);
                return Ok(Solution {
                    flows: search.flows,
                    pressures: search.pressures,
                    steps: step + 1,
                });
            } else {
                search.look_ahead()
            };
            // The first step makes the flows balance at the nodes; the line
            // search holds only between flows that do.
            let length = if step == 0 { 1.0 } else { search.length(whole) };
            search.go(length);
            if length >= 1.0 {
                std::mem::swap(&mut search.losses, &mut search.ahead);
            } else {
                for (loss, (law, flow)) in search
                    .losses
                    .iter_mut()
                    .zip(search.laws.iter().zip(&search.flows))
                {
                    *loss = bounded(law.loss(*flow));
                }
            }
        }
        Err(SolveError::NotConverged {
            steps: MAX_STEPS,
            worst: worst.0,
            error: worst.1,
        })
    }
}

/// Held pressure of each node; a part of the network without one is held at
/// zero at its first node, if what is taken out of it cancels.
fn hold_every_part(network: &Network) -> Result<Vec<Option<f64>>, SolveError> {
    let mut part: Vec<usize> = (0..network.nodes.len()).collect();
    fn root(part: &mut [usize], mut node: usize) -> usize {
        while part[node] != node {
            part[node] = part[part[node]];
            node = part[node];
        }
        node
    }
    for link in network.links.iter().filter(|l| l.open) {
        let (a, b) = (root(&mut part, link.from), root(&mut part, link.to));
        part[a.max(b)] = a.min(b);
    }
    let mut held: Vec<Option<f64>> = network.nodes.iter().map(|n| n.held).collect();
    let roots: Vec<usize> = (0..part.len()).map(|n| root(&mut part, n)).collect();
    let mut is_held = vec![false; part.len()];
    let mut balance = vec![(0.0, 0.0); part.len()];
    for (node, &root) in network.nodes.iter().zip(&roots) {
        is_held[root] |= node.held.is_some();
        balance[root].0 += node.outflow;
        balance[root].1 += node.outflow.abs();
    }
    for (node, &root) in roots.iter().enumerate() {
        if node == root && !is_held[root] {
            if balance[root].0.abs() > 1e-9 * balance[root].1 {
                return Err(SolveError::Unreachable { node: NodeId(node) });
            }
            held[node] = Some(0.0);
        }
    }
    Ok(held)
}

#[cfg(test)]
mod tests;
