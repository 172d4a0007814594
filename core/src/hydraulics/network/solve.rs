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
use super::{Link, LinkId, Network, NodeId};
use crate::hydraulics::friction::{POOR_HEAT_BELOW, Regime};
use crate::units::{
    Bound, Density, DynamicViscosity, Length, Number, OutOfRange, PressureDifference, Quantity,
    Velocity, VolumeFlow,
};
use thiserror::Error;

/// Flows that can be taken out at a node.
pub const OUTFLOW: Bound<VolumeFlow> = Bound::si("flow taken out at a node", -1.0, 1.0);
/// Densities of what can be in a loop.
pub const DENSITY: Bound<Density> = Bound::si("density", 500.0, 2_000.0);
/// Viscosities of what can be in a loop.
pub const VISCOSITY: Bound<DynamicViscosity> = Bound::si("dynamic viscosity", 1e-5, 10.0);

const MAX_STEPS: usize = 200;
/// Error of energy in a link, relative to the largest loss, at which it is solved.
const TOLERANCE: f64 = 1e-11;
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

/// What one pipe does in a solution.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct PipeFlow {
    /// Mean velocity.
    pub velocity: Velocity,
    /// Reynolds number.
    pub reynolds: Number,
    /// Regime.
    pub regime: Regime,
    /// Lowest and highest head loss that fit the regime; alike outside transition.
    pub head: (Length, Length),
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
        Solver::new(self)?.solve(self, None)
    }
    /// As [`Network::solve`], starting from the flows of a similar network.
    ///
    /// # Errors
    /// [`SolveError`].
    pub fn solve_from(&self, near: &Solution) -> Result<Solution, SolveError> {
        Solver::new(self)?.solve(self, Some(near))
    }
    /// Velocity, regime and head loss band of a pipe; none for other links.
    pub fn pipe_flow(&self, solution: &Solution, id: LinkId) -> Option<PipeFlow> {
        let placed = self.links.get(id.0)?;
        let Link::Pipe { pipe, .. } = &placed.link else {
            return None;
        };
        let flow = solution.flow(id);
        let velocity = Velocity::from_si(flow.si() / pipe.area().si());
        let reynolds = self.fluid.reynolds(*pipe, flow);
        let regime = Regime::at(reynolds.si());
        let Law::Pipe {
            friction, minor, ..
        } = placed.link.law(self.fluid, self.law)
        else {
            return None;
        };
        let roughness = pipe.roughness().si() / pipe.bore().si();
        let head = |f: f64| {
            let drop = (friction * f + minor) * flow.si() * flow.si();
            PressureDifference::from_si(drop).head(self.fluid.density)
        };
        let band = if flow.si() == 0.0 {
            (0.0, 0.0)
        } else if regime == Regime::Transition {
            crate::hydraulics::friction::band(reynolds, Number::from_si(roughness))
                .map(|(low, high)| (low.si(), high.si()))
                .ok()?
        } else {
            let f = self.law.factor(reynolds.si(), roughness).0;
            (f, f)
        };
        Some(PipeFlow {
            velocity,
            reynolds,
            regime,
            head: (head(band.0), head(band.1)),
        })
    }
}

impl PipeFlow {
    /// Whether heat passes badly because the flow is not safely turbulent.
    pub fn is_poor_for_heat(&self) -> bool {
        self.reynolds.si() < POOR_HEAT_BELOW
    }
}

/// The pattern of a network, to be used again while only valves and parts change.
#[derive(Clone, Debug)]
pub struct Solver {
    elimination: Elimination,
}

impl Solver {
    /// For a network; it stays right while nothing is added.
    ///
    /// # Errors
    /// [`SolveError::Empty`].
    pub fn new(network: &Network) -> Result<Self, SolveError> {
        if network.links.is_empty() {
            return Err(SolveError::Empty);
        }
        let edges: Vec<_> = network.links.iter().map(|l| (l.from, l.to)).collect();
        Ok(Self {
            elimination: Elimination::new(network.nodes.len(), &edges),
        })
    }

    /// Flows and pressures, from the flows of a similar network if there are any.
    ///
    /// # Errors
    /// [`SolveError`].
    pub fn solve(
        &self,
        network: &Network,
        near: Option<&Solution>,
    ) -> Result<Solution, SolveError> {
        network.check()?;
        let links = &network.links;
        let laws: Vec<Law<'_>> = links
            .iter()
            .map(|l| l.link.law(network.fluid, network.law))
            .collect();
        let held = hold_every_part(network)?;
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
        let mut losses: Vec<(f64, f64)> = vec![(0.0, 0.0); links.len()];
        let mut pressures = vec![0.0; network.nodes.len()];
        let mut coupling = vec![0.0; links.len()];
        let mut worst = (LinkId(0), f64::INFINITY);
        for step in 0..MAX_STEPS {
            for (loss, (law, flow)) in losses.iter_mut().zip(laws.iter().zip(&flows)) {
                *loss = law.loss(*flow);
                loss.1 = loss.1.max(LEAST_SLOPE);
            }
            let mut diagonal: Vec<f64> = held
                .iter()
                .map(|held| if held.is_some() { 1.0 } else { 0.0 })
                .collect();
            for (node, pressure) in pressures.iter_mut().enumerate() {
                *pressure = held[node].unwrap_or(-network.nodes[node].outflow);
            }
            for (i, link) in links.iter().enumerate() {
                coupling[i] = 0.0;
                if !link.open || link.from == link.to {
                    continue;
                }
                let conductance = 1.0 / losses[i].1;
                let carried = flows[i] - losses[i].0 * conductance;
                let (from, to) = (link.from, link.to);
                match (held[from], held[to]) {
                    (None, None) => {
                        coupling[i] = conductance;
                        diagonal[from] += conductance;
                        diagonal[to] += conductance;
                        pressures[from] -= carried;
                        pressures[to] += carried;
                    }
                    (None, Some(fixed)) => {
                        diagonal[from] += conductance;
                        pressures[from] += conductance * fixed - carried;
                    }
                    (Some(fixed), None) => {
                        diagonal[to] += conductance;
                        pressures[to] += conductance * fixed + carried;
                    }
                    (Some(_), Some(_)) => {}
                }
            }
            if !self
                .elimination
                .solve(&mut diagonal, &coupling, &mut pressures)
            {
                return Err(SolveError::Singular);
            }
            let mut change = vec![0.0; links.len()];
            let (mut largest_flow, mut largest_loss) = (0f64, 0f64);
            worst.1 = 0.0;
            for (i, link) in links.iter().enumerate() {
                if !link.open {
                    continue;
                }
                let error = pressures[link.from] - pressures[link.to] - losses[i].0;
                change[i] = error / losses[i].1;
                largest_flow = largest_flow.max(flows[i].abs());
                largest_loss = largest_loss.max(losses[i].0.abs());
                if error.abs() > worst.1 {
                    worst = (LinkId(i), error.abs());
                }
            }
            // The first step makes the flows balance at the nodes; the line
            // search holds only between flows that do.
            let length = if step == 0 {
                1.0
            } else {
                search(&laws, &flows, &change, links, &pressures)
            };
            for (flow, change) in flows.iter_mut().zip(&change) {
                *flow += length * change;
            }
            let settled = losses.iter().zip(&change).all(|(loss, change)| {
                (change * loss.1).abs() <= TOLERANCE * largest_loss.max(1e-3)
                    || change.abs() <= STILL * largest_flow.max(1e-6)
            });
            if step > 0 && settled {
                return Ok(Solution {
                    flows,
                    pressures,
                    steps: step + 1,
                });
            }
        }
        Err(SolveError::NotConverged {
            steps: MAX_STEPS,
            worst: worst.0,
            error: worst.1,
        })
    }
}

/// How far to go along a change of balanced flows: the whole way, unless that
/// passes the minimum by more than a little.
fn search(
    laws: &[Law<'_>],
    flows: &[f64],
    change: &[f64],
    links: &[super::Placed],
    pressures: &[f64],
) -> f64 {
    let slope = |length: f64| -> f64 {
        let mut sum = 0.0;
        for (i, link) in links.iter().enumerate() {
            if link.open && change[i] != 0.0 {
                let loss = laws[i].loss(flows[i] + length * change[i]).0;
                sum += change[i] * (loss - pressures[link.from] + pressures[link.to]);
            }
        }
        sum
    };
    let start = slope(0.0);
    let whole = slope(1.0);
    if whole <= 0.5 * start.abs() {
        return 1.0;
    }
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..30 {
        let middle = 0.5 * (low + high);
        let at = slope(middle);
        if at.abs() <= 0.3 * start.abs() {
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
