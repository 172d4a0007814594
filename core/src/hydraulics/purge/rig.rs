//! A cart on a field: tank, pump, filter and two hoses.

use super::PurgeError;
use crate::hydraulics::component::{FluidState, LossCurve};
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::network::ground_loop::{FieldLinks, LoopField, Run};
use crate::hydraulics::network::{Link, LinkId, Network, OUTFLOW, PumpState, Solution};
use crate::hydraulics::pump::PumpCurve;
use crate::units::{Length, Number, PressureDifference, Quantity, Volume, VolumeFlow};

/// The cart and what joins it to the loop.
#[derive(Clone, PartialEq, Debug)]
pub struct Cart {
    /// Pump curve.
    pub pump: PumpCurve,
    /// Speed relative to the curve.
    pub speed: Number,
    /// The two hoses, out and back.
    pub hoses: [Run; 2],
    /// The filter, if one is in.
    pub filter: Option<LossCurve>,
}

/// A section of the loop.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash, PartialOrd, Ord)]
pub enum Section {
    /// Section of the supply header, by its number.
    Supply(usize),
    /// Circuit, by its number.
    Circuit(usize),
    /// Section of the return header, by its number.
    Return(usize),
}

/// The network of cart and field, with its valves.
pub(super) struct Rig<'a> {
    field: &'a LoopField,
    cart: &'a Cart,
    network: Network,
    links: FieldLinks,
    pump: LinkId,
    /// Pump, filter and hoses.
    outside: Vec<LinkId>,
    sections: Vec<(Section, Run)>,
    last: Option<Solution>,
}

impl<'a> Rig<'a> {
    pub fn new(
        field: &'a LoopField,
        cart: &'a Cart,
        fluid: FluidState,
        law: FrictionLaw,
    ) -> Result<Self, PurgeError> {
        let mut network = Network::new(fluid, law);
        let tank = network.node();
        network.hold(tank, PressureDifference::ZERO);
        let mut node = network.node();
        let pump = Link::Pump {
            curve: cart.pump.clone(),
            state: PumpState::Running(cart.speed),
        };
        let pump = network.link(tank, node, pump);
        let mut outside = vec![pump];
        if let Some(curve) = cart.filter {
            let next = network.node();
            let one_way = false;
            outside.push(network.link(node, next, Link::Part { curve, one_way }));
            node = next;
        }
        let hose = |run: Run| Link::Pipe {
            pipe: run.pipe,
            length: run.length,
            fittings: run.fittings,
        };
        let (supply, back) = (network.node(), network.node());
        outside.push(network.link(node, supply, hose(cart.hoses[0])));
        outside.push(network.link(back, tank, hose(cart.hoses[1])));
        let links = field.lay(&mut network, supply, back);
        let mut sections = Vec::new();
        for (i, run) in field.supply.iter().enumerate() {
            if links.supply.get(i).is_some_and(Option::is_some) {
                sections.push((Section::Supply(i), *run));
            }
        }
        for (i, circuit) in field.circuits.iter().enumerate() {
            sections.push((Section::Circuit(i), circuit.run));
        }
        for (i, run) in field.returns.iter().enumerate() {
            if links.returns.get(i).is_some_and(Option::is_some) {
                sections.push((Section::Return(i), *run));
            }
        }
        Ok(Self {
            field,
            cart,
            network,
            links,
            pump,
            outside,
            sections,
            last: None,
        })
    }

    pub fn sections(&self) -> &[(Section, Run)] {
        &self.sections
    }
    /// Circuits that can be purged.
    pub fn usable(&self) -> Vec<usize> {
        self.field
            .circuits
            .iter()
            .enumerate()
            .filter(|(_, c)| c.open && c.blocked.si() < 1.0)
            .map(|(i, _)| i)
            .collect()
    }
    fn link(&self, section: Section) -> Option<LinkId> {
        match section {
            Section::Supply(i) => self.links.supply.get(i).copied().flatten(),
            Section::Circuit(i) => self.links.circuits.get(i).copied(),
            Section::Return(i) => self.links.returns.get(i).copied().flatten(),
        }
    }
    /// Velocity in a section, m/s.
    pub fn velocity(&self, solution: &Solution, section: Section) -> f64 {
        let run = self.sections.iter().find(|(s, _)| *s == section);
        match (self.link(section), run) {
            (Some(link), Some((_, run))) => solution.flow(link).si() / run.pipe.area().si(),
            _ => 0.0,
        }
    }
    /// Slowest open circuit over the target.
    pub fn ratio(&self, solution: &Solution, open: &[usize], target: f64) -> f64 {
        open.iter()
            .map(|&i| {
                let area = self.field.circuits[i].run.pipe.area().si();
                solution.flow(self.links.circuits[i]).si() / area / target
            })
            .fold(f64::INFINITY, f64::min)
    }
    /// Flow of one circuit, m³/s.
    pub fn circuit_flow(&self, solution: &Solution, circuit: usize) -> f64 {
        solution.flow(self.links.circuits[circuit]).si()
    }
    pub fn cart_flow(&self, solution: &Solution) -> f64 {
        solution.flow(self.pump).si()
    }
    pub fn cart_head(&self, solution: &Solution) -> Length {
        let rise = self
            .network
            .ends(self.pump)
            .map_or(PressureDifference::ZERO, |(from, to)| {
                solution.drop(to, from)
            });
        rise.head(self.network.fluid().density)
    }
    /// The cart on its own curve with some circuits open.
    pub fn run(&mut self, open: &[usize]) -> Result<Solution, PurgeError> {
        for (i, &link) in self.links.circuits.iter().enumerate() {
            self.network.set_open(link, open.contains(&i));
        }
        let solution = match &self.last {
            Some(near) => self.network.solve_from(near)?,
            None => self.network.solve()?,
        };
        self.last = Some(solution.clone());
        Ok(solution)
    }
    /// Flow into the field at which the slowest section of all reaches the
    /// target, and that section.
    pub fn needed_flow(&mut self, target: f64) -> Result<(VolumeFlow, Section), PurgeError> {
        // The field alone, with a given flow through it.
        let mut network = Network::new(self.network.fluid(), self.network.law());
        let (from, to) = (network.node(), network.node());
        let links = self.field.lay(&mut network, from, to);
        let usable = self.usable();
        let section_link = |section| match section {
            Section::Supply(i) => links.supply.get(i).copied().flatten(),
            Section::Circuit(i) if usable.contains(&i) => links.circuits.get(i).copied(),
            Section::Circuit(_) => None,
            Section::Return(i) => links.returns.get(i).copied().flatten(),
        };
        let sections: Vec<_> = self
            .sections
            .iter()
            .filter_map(|(s, run)| Some((*s, section_link(*s)?, run.pipe.area().si())))
            .collect();
        let mut near: Option<Solution> = None;
        let mut slowest = |flow: f64| -> Result<(f64, Section), PurgeError> {
            network.take(from, VolumeFlow::from_si(-flow));
            network.take(to, VolumeFlow::from_si(flow));
            let solution = match &near {
                Some(near) => network.solve_from(near)?,
                None => network.solve()?,
            };
            let slowest = sections
                .iter()
                .map(|(s, link, area)| (solution.flow(*link).si().abs() / area / target, *s))
                // Dead ends behind the last open circuit carry nothing and decide nothing.
                .filter(|(ratio, _)| *ratio > 1e-9)
                .min_by(|a, b| a.0.total_cmp(&b.0));
            near = Some(solution);
            slowest.ok_or(PurgeError::NoCircuit)
        };
        // The ratio is nearly proportional to the flow: a secant through the
        // origin, then through the last two points, kept in a bracket.
        let areas: f64 = usable
            .iter()
            .map(|&i| self.field.circuits[i].run.pipe.area().si())
            .sum();
        let mut flow = areas * target;
        let most = OUTFLOW.max().si();
        let (mut low, mut high) = ((0.0, 0.0), (f64::INFINITY, f64::INFINITY));
        let mut section = Section::Circuit(usable[0]);
        for _ in 0..60 {
            let (ratio, slow) = slowest(flow)?;
            section = slow;
            if (ratio - 1.0).abs() < 1e-9 {
                break;
            }
            if ratio < 1.0 {
                low = (flow, ratio);
            } else {
                high = (flow, ratio);
            }
            let proportional = flow / ratio;
            let secant = low.0 + (1.0 - low.1) * (high.0 - low.0) / (high.1 - low.1);
            flow = if high.0.is_infinite() {
                // The first steps may shoot far beyond the answer, but not beyond
                // what can be solved: only an answer out there is an error.
                let further = proportional.max(flow * 1.000_001);
                if flow < most {
                    further.min(most)
                } else {
                    further
                }
            } else if proportional > low.0 && proportional < high.0 {
                proportional
            } else {
                secant
            };
            if high.0 - low.0 < 1e-12 * flow {
                break;
            }
        }
        Ok((VolumeFlow::from_si(flow), section))
    }
    /// Head of the cart at a flow with every usable circuit open.
    pub fn head_at(&mut self, flow: VolumeFlow) -> Result<Length, PurgeError> {
        let mut network = Network::new(self.network.fluid(), self.network.law());
        let (out, from, to, end) = (
            network.node(),
            network.node(),
            network.node(),
            network.node(),
        );
        self.field.lay(&mut network, from, to);
        let hose = |run: Run| Link::Pipe {
            pipe: run.pipe,
            length: run.length,
            fittings: run.fittings,
        };
        network.link(out, from, hose(self.cart.hoses[0]));
        network.link(to, end, hose(self.cart.hoses[1]));
        network.take(out, -flow);
        network.take(end, flow);
        let solution = network.solve()?;
        let fluid = self.network.fluid();
        let filter = self
            .cart
            .filter
            .map_or(PressureDifference::ZERO, |f| f.pressure_drop(flow, fluid));
        Ok((solution.drop(out, end) + filter).head(fluid.density))
    }
    /// Pressure drop and flow of a circuit at the target velocity, SI.
    pub fn circuit_need(&self, circuit: usize, target: f64) -> (f64, f64) {
        let flow = self.field.circuits[circuit].run.pipe.area().si() * target;
        let link = self.links.circuits[circuit];
        (self.loss(link, flow), flow)
    }
    fn loss(&self, link: LinkId, flow: f64) -> f64 {
        let (fluid, law) = (self.network.fluid(), self.network.law());
        let flow = VolumeFlow::from_si(flow);
        self.network
            .link_at(link)
            .map_or(0.0, |link| link.loss(flow, fluid, law).si())
    }
    /// Largest flow of cart, filter and hoses against a drop in the field, m³/s.
    pub fn capacity(&self, drop: f64) -> f64 {
        let left = |flow: f64| {
            let losses = self.outside.iter().map(|&link| self.loss(link, flow));
            -losses.sum::<f64>() - drop
        };
        let (mut low, mut high) = (0.0, self.cart.pump.free_flow().si() * self.cart.speed.si());
        if left(low) <= 0.0 {
            return 0.0;
        }
        for _ in 0..50 {
            let middle = 0.5 * (low + high);
            if left(middle) > 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        high
    }
    /// Volume moved with some circuits open.
    pub fn volume(&self, open: &[usize]) -> Volume {
        let headers = self.field.supply.iter().chain(&self.field.returns);
        let circuits = open.iter().map(|&i| self.field.circuits[i].run.volume());
        headers
            .chain(&self.cart.hoses)
            .map(Run::volume)
            .chain(circuits)
            .sum()
    }
}
