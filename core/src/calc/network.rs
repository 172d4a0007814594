//! Any network of pipes, parts and pumps.

use super::amount::Amount;
use super::error::CalcError;
use super::given::{FluidGiven, Law, PartGiven, RunGiven, law, pump_curve, speed, state, topic};
use super::pipes::Regime;
use crate::hydraulics::network::{Link, LinkId, Network, NodeId, PumpState, Solution, SolveError};
use crate::records::HeadPoint;
use crate::units::{
    Fraction, Length, Number, PressureDifference, Temperature, Velocity, VolumeFlow,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// How a pump stands in the loop.
#[derive(Copy, Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(super) enum Stands {
    Running,
    Dead,
    TurnedRound,
}

/// How a pump stands, as the engine takes it.
pub(super) fn pump_state(stands: Option<Stands>, at: Option<Amount<Fraction>>) -> PumpState {
    match stands.unwrap_or(Stands::Running) {
        Stands::Running => PumpState::Running(speed(at)),
        Stands::Dead => PumpState::Dead,
        Stands::TurnedRound => PumpState::TurnedRound(speed(at)),
    }
}

/// What lies between two nodes.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, tag = "kind", rename_all = "snake_case")]
pub(super) enum Between {
    /// A run of pipe or hose with its fittings.
    Pipe { run: RunGiven },
    /// An exchanger, strainer, valve or filter by its curve.
    Part {
        part: PartGiven,
        /// With a check valve: flow only from the first node to the second.
        #[serde(default)]
        one_way: bool,
    },
    /// A pump that pushes from the first node to the second.
    Pump {
        #[schemars(length(min = 1, max = 100))]
        curve: Vec<HeadPoint>,
        /// Running when left out.
        stands: Option<Stands>,
        /// Relative to the curve; full when left out.
        speed: Option<Amount<Fraction>>,
    },
}

/// A link of the network.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct LinkGiven {
    #[schemars(length(min = 1, max = 60))]
    name: String,
    #[schemars(length(min = 1, max = 60))]
    from: String,
    #[schemars(length(min = 1, max = 60))]
    to: String,
    is: Between,
    /// A valve in it that is shut.
    #[serde(default)]
    shut: bool,
}

/// A node with something of its own; others need not be listed.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct NodeGiven {
    #[schemars(length(min = 1, max = 60))]
    name: String,
    /// Pressure held there, as an open tank does; only differences count.
    held: Option<Amount<PressureDifference>>,
    /// Flow taken out there; negative puts it in.
    outflow: Option<Amount<VolumeFlow>>,
}

/// A link of the answer.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct LinkFlow {
    name: String,
    /// From the first node to the second.
    flow: Amount<VolumeFlow>,
    /// Pressure at the first node less that at the second.
    pressure_drop: Amount<PressureDifference>,
    head_loss: Amount<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pipe: Option<PipeState>,
}

/// What a pipe does.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct PipeState {
    velocity: Amount<Velocity>,
    reynolds: Amount<Number>,
    regime: Regime,
    /// Laminar or nearly so.
    poor_for_heat: bool,
    least_head_loss: Amount<Length>,
    most_head_loss: Amount<Length>,
}

/// A node of the answer.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct NodePressure {
    name: String,
    pressure: Amount<PressureDifference>,
}

/// What a pipe of a solved network does; none for other links.
pub(super) fn pipe_state(
    network: &Network,
    solution: &Solution,
    link: LinkId,
    show: super::amount::Show,
) -> Option<PipeState> {
    let flow = network.pipe_flow(solution, link)?;
    Some(PipeState {
        velocity: show.exact(flow.velocity),
        reynolds: show.exact(flow.reynolds),
        regime: flow.regime.into(),
        poor_for_heat: flow.is_poor_for_heat(),
        least_head_loss: show.exact(flow.head.0),
        most_head_loss: show.exact(flow.head.1),
    })
}

topic! {
    /// Flows and pressures of any network.
    PipeNetwork "network" by "gradient-method" and spreads;
    example r#"{"fluid": {"kind": "water"}, "temperature": {"value": 50, "unit": "degF"}, "links": [{"name": "pump", "from": "back", "to": "supply", "is": {"kind": "pump", "curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}]}}, {"name": "circuit 1", "from": "supply", "to": "back", "is": {"kind": "pipe", "run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}}}}, {"name": "circuit 2", "from": "supply", "to": "back", "is": {"kind": "pipe", "run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 650, "unit": "ft"}}}}, {"name": "circuit 3", "from": "supply", "to": "back", "shut": true, "is": {"kind": "pipe", "run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}}}}]}"#;
    asks NetworkQuestion {
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
        law: Option<Law>,
        #[serde(default)]
        #[schemars(length(max = 2000))]
        nodes: Vec<NodeGiven>,
        #[schemars(length(min = 1, max = 2000))]
        links: Vec<LinkGiven>,
    }
    tells NetworkAnswer {
        links: Vec<LinkFlow>,
        /// Against the held pressure, or the first node.
        nodes: Vec<NodePressure>,
        /// That the method took.
        steps: usize,
    }
    |q, show| {
        let fluid = state(q.fluid, q.temperature)?;
        let mut network = Network::new(fluid, law(q.law));
        let mut nodes: BTreeMap<&str, NodeId> = BTreeMap::new();
        let mut order: Vec<(&str, NodeId)> = Vec::new();
        let mut node = |network: &mut Network, name| {
            *nodes.entry(name).or_insert_with(|| {
                let id = network.node();
                order.push((name, id));
                id
            })
        };
        let mut links = Vec::new();
        for (i, given) in q.links.iter().enumerate() {
            let (from, to) = (node(&mut network, given.from.as_str()), node(&mut network, given.to.as_str()));
            if from == to {
                return Err(CalcError::new("same-node", &format!("links[{i}].to"), &given.to));
            }
            let link = match &given.is {
                Between::Pipe { run } => {
                    let run = run.run()?;
                    Link::Pipe { pipe: run.pipe, length: run.length, fittings: run.fittings }
                }
                Between::Part { part, one_way } => Link::Part { curve: part.loss_curve()?, one_way: *one_way },
                Between::Pump { curve, stands, speed } => Link::Pump {
                    curve: pump_curve(curve)?,
                    state: pump_state(*stands, *speed),
                },
            };
            let id = network.link(from, to, link);
            network.set_open(id, !given.shut);
            links.push((given, from, to, id));
        }
        for (i, given) in q.nodes.iter().enumerate() {
            let Some(id) = links.iter().find_map(|(link, from, to, _)| match &given.name {
                name if *name == link.from => Some(*from),
                name if *name == link.to => Some(*to),
                _ => None,
            }) else {
                return Err(CalcError::new("no-such-node", &format!("nodes[{i}].name"), &given.name));
            };
            if let Some(held) = given.held {
                network.hold(id, held.get());
            }
            if let Some(flow) = given.outflow {
                network.take(id, flow.get());
            }
        }
        let solution = network.solve().map_err(|error| match &error {
            SolveError::Unreachable { node } => {
                let name = order.iter().find(|(_, id)| id == node).map_or("", |(name, _)| name);
                CalcError::new("unreachable-node", "nodes", name)
            }
            SolveError::NotConverged { worst, .. } => {
                let name = links.iter().find(|(.., id)| id == worst).map_or("", |(given, ..)| given.name.as_str());
                CalcError::new("not-converged", "links", name).accepting(error)
            }
            _ => error.into(),
        })?;
        Ok(NetworkAnswer {
            links: links.iter().map(|(given, from, to, id)| {
                let drop = solution.drop(*from, *to);
                LinkFlow {
                    name: given.name.clone(),
                    flow: show.exact(solution.flow(*id)),
                    pressure_drop: show.exact(drop),
                    head_loss: show.exact(drop.head(fluid.density)),
                    pipe: pipe_state(&network, &solution, *id, show),
                }
            }).collect(),
            nodes: order.iter().map(|(name, id)| NodePressure {
                name: (*name).to_owned(),
                pressure: show.exact(solution.pressure(*id)),
            }).collect(),
            steps: solution.steps,
        })
    }
}
