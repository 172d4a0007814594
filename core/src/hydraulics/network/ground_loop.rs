//! Networks that ground loops are.
//!
//! ```text
//!            supply 0      supply 1      supply 2
//!  plant ──────┬─────────────┬─────────────┐
//!    │      circuit 0     circuit 1     circuit 2
//!    └─────────┴─────────────┴─────────────┘
//!            return 0      return 1      return 2        (direct)
//! ```
//!
//! In a reverse return, return section i leads from circuit i to circuit i + 1
//! and the last one back to the plant.

use super::{Link, LinkId, Network, NodeId, PumpState};
use crate::hydraulics::component::{FluidState, LossCurve};
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::pipe::Pipe;
use crate::hydraulics::pump::PumpCurve;
use crate::units::{Fraction, Length, Number, Quantity, Volume};

/// A run of pipe.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Run {
    /// The pipe.
    pub pipe: Pipe,
    /// Its length; zero for two take-offs at one place.
    pub length: Length,
    /// Loss coefficients of its fittings, summed.
    pub fittings: Number,
}

impl Run {
    /// Volume in it.
    pub fn volume(&self) -> Volume {
        self.pipe.volume(self.length)
    }
    /// As a part of a network.
    pub fn link(&self) -> Link {
        Link::Pipe {
            pipe: self.pipe,
            length: self.length,
            fittings: self.fittings,
        }
    }
    fn is_nothing(&self) -> bool {
        self.length.si() == 0.0 && self.fittings.si() == 0.0
    }
}

/// One circuit, out and back.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Circuit {
    /// Pipe and whole length, out and back.
    pub run: Run,
    /// Part of the bore that is blocked, 0 to 1; 1 lets nothing through.
    pub blocked: Fraction,
    /// Whether its valve is open.
    pub open: bool,
}

/// How the return header runs.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum ReturnPath {
    /// First circuit on, first circuit back.
    Direct,
    /// First circuit on, last circuit back.
    Reverse,
}

/// Circuits on a pair of headers. Section i of the supply leads to circuit i;
/// sections may each have their own size (stepped headers). Circuits without a
/// section hang on the last node.
#[derive(Clone, PartialEq, Debug)]
pub struct LoopField {
    /// The circuits, in the order of the supply header.
    pub circuits: Vec<Circuit>,
    /// Sections of the supply header.
    pub supply: Vec<Run>,
    /// Sections of the return header.
    pub returns: Vec<Run>,
    /// How the return runs.
    pub path: ReturnPath,
}

/// A pump of the flow centre.
#[derive(Clone, PartialEq, Debug)]
pub struct FlowPump {
    /// Its curve.
    pub curve: PumpCurve,
    /// Whether it runs, and how.
    pub state: PumpState,
    /// Its check valve, if it has one.
    pub check_valve: Option<LossCurve>,
}

/// How the pumps stand.
#[derive(Clone, PartialEq, Debug)]
pub enum PumpSet {
    /// One after the other: heads add.
    Series(Vec<FlowPump>),
    /// Side by side: flows add.
    Parallel(Vec<FlowPump>),
}

/// A valve that should separate supply and return, left part open.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Bypass {
    /// Pipe of the valve.
    pub pipe: Pipe,
    /// Part of its bore that is open, 0 to 1.
    pub opening: Fraction,
}

/// What stands in the building.
#[derive(Clone, PartialEq, Debug)]
pub struct Plant {
    /// The circulators.
    pub pumps: PumpSet,
    /// Exchanger, strainer and whatever has a curve of its own, in series.
    pub parts: Vec<LossCurve>,
    /// Indoor pipe, in series.
    pub pipes: Vec<Run>,
    /// Bypass between the supply and the return of the field.
    pub bypass: Option<Bypass>,
}

/// Where the parts of a field lie in a network. A section of nothing has no link.
#[derive(Clone, PartialEq, Debug)]
pub struct FieldLinks {
    /// Circuits.
    pub circuits: Vec<LinkId>,
    /// Sections of the supply header.
    pub supply: Vec<Option<LinkId>>,
    /// Sections of the return header.
    pub returns: Vec<Option<LinkId>>,
}

/// A whole loop.
#[derive(Clone, PartialEq, Debug)]
pub struct GroundLoop {
    /// The network.
    pub network: Network,
    /// The field in it.
    pub field: FieldLinks,
    /// The pumps in it.
    pub pumps: Vec<LinkId>,
    /// The parts in it.
    pub parts: Vec<LinkId>,
    /// The bypass in it.
    pub bypass: Option<LinkId>,
    /// Where the supply leaves the plant.
    pub supply: NodeId,
    /// Where the return comes back.
    pub back: NodeId,
}

/// Loss coefficient, in the full bore, of an opening that leaves the part σ of
/// the area: (1/(C σ) - 1)², contraction C = 0.62 + 0.38 σ³ (Weisbach's
/// sharp edge, from memory of White, *Fluid Mechanics*).
pub fn opening_loss(open: Fraction) -> Number {
    let sigma = open.si().clamp(0.0, 1.0);
    let contraction = 0.62 + 0.38 * sigma.powi(3);
    Number::from_si((1.0 / (contraction * sigma) - 1.0).powi(2))
}

/// Below this part of the bore nothing passes.
const SHUT: f64 = 1e-3;

impl LoopField {
    /// Volume of circuits and headers.
    pub fn volume(&self) -> Volume {
        let circuits = self.circuits.iter().map(|c| c.run.volume());
        let headers = self.supply.iter().chain(&self.returns).map(Run::volume);
        circuits.chain(headers).sum()
    }
    /// Lays the field between two nodes of a network.
    pub fn lay(&self, network: &mut Network, from: NodeId, to: NodeId) -> FieldLinks {
        let step = |network: &mut Network, at: NodeId, run: Option<&Run>, outward: bool| match run {
            Some(run) if !run.is_nothing() => {
                let next = network.node();
                let (a, b) = if outward { (at, next) } else { (next, at) };
                (next, Some(network.link(a, b, run.link())))
            }
            _ => (at, None),
        };
        let count = self.circuits.len();
        let (mut node, mut take_offs, mut supply) = (from, Vec::new(), Vec::new());
        for i in 0..count {
            let (next, link) = step(network, node, self.supply.get(i), true);
            node = next;
            take_offs.push(node);
            supply.push(link);
        }
        let (mut collects, mut returns) = (vec![to; count], vec![None; count]);
        node = to;
        // Laid from the plant outwards, whichever end that is.
        let outwards: Vec<usize> = match self.path {
            ReturnPath::Direct => (0..count).collect(),
            ReturnPath::Reverse => (0..count).rev().collect(),
        };
        for i in outwards {
            (node, returns[i]) = step(network, node, self.returns.get(i), false);
            collects[i] = node;
        }
        let circuits = self
            .circuits
            .iter()
            .enumerate()
            .map(|(i, circuit)| {
                let free = 1.0 - circuit.blocked.si();
                let extra = opening_loss(Fraction::from_si(free.max(SHUT)));
                let run = Run {
                    fittings: Number::from_si(circuit.run.fittings.si() + extra.si()),
                    ..circuit.run
                };
                let link = network.link(take_offs[i], collects[i], run.link());
                network.set_open(link, circuit.open && free > SHUT);
                link
            })
            .collect();
        FieldLinks {
            circuits,
            supply,
            returns,
        }
    }
}

impl GroundLoop {
    /// Field and plant as one closed loop.
    pub fn build(field: &LoopField, plant: &Plant, fluid: FluidState, law: FrictionLaw) -> Self {
        let mut network = Network::new(fluid, law);
        let back = network.node();
        let (mut node, pumps) = lay_pumps(&mut network, &plant.pumps, back);
        let mut parts = Vec::new();
        for curve in &plant.parts {
            let next = network.node();
            let (curve, one_way) = (*curve, false);
            parts.push(network.link(node, next, Link::Part { curve, one_way }));
            node = next;
        }
        for run in plant.pipes.iter().filter(|run| !run.is_nothing()) {
            let next = network.node();
            network.link(node, next, run.link());
            node = next;
        }
        let supply = node;
        let links = field.lay(&mut network, supply, back);
        let bypass = plant.bypass.filter(|b| b.opening.si() > SHUT).map(|b| {
            let k = Number::from_si(1.0 + opening_loss(b.opening).si());
            let curve = LossCurve::of_loss_coefficient(k, b.pipe, fluid);
            let one_way = false;
            network.link(supply, back, Link::Part { curve, one_way })
        });
        Self {
            network,
            field: links,
            pumps,
            parts,
            bypass,
            supply,
            back,
        }
    }
}

fn lay_pumps(network: &mut Network, pumps: &PumpSet, from: NodeId) -> (NodeId, Vec<LinkId>) {
    let with_check = |network: &mut Network, pump: &FlowPump, from: NodeId, to: NodeId| {
        let inlet = match pump.check_valve {
            Some(curve) => {
                let between = network.node();
                let one_way = true;
                network.link(from, between, Link::Part { curve, one_way });
                between
            }
            None => from,
        };
        let (curve, state) = (pump.curve.clone(), pump.state);
        network.link(inlet, to, Link::Pump { curve, state })
    };
    match pumps {
        PumpSet::Series(pumps) => {
            let mut node = from;
            let mut links = Vec::new();
            for pump in pumps {
                let next = network.node();
                links.push(with_check(network, pump, node, next));
                node = next;
            }
            (node, links)
        }
        PumpSet::Parallel(pumps) => {
            let to = network.node();
            let links = pumps
                .iter()
                .map(|pump| with_check(network, pump, from, to))
                .collect();
            (to, links)
        }
    }
}
