//! The reference networks, read from their table.

use returnline_core::hydraulics::component::{FluidState, LossCurve};
use returnline_core::hydraulics::friction::FrictionLaw;
use returnline_core::hydraulics::network::{Link, LinkId, Network, NodeId, PumpState};
use returnline_core::hydraulics::pipe::Pipe;
use returnline_core::hydraulics::pump::PumpCurve;
use returnline_core::units::{
    Density, DynamicViscosity, Length, Number, PressureDifference, Quantity, STANDARD_GRAVITY,
    VolumeFlow,
};
use serde::Deserialize;

/// EPANET reckons with 32.2 ft/s². Its flows are those of standard gravity with every head
/// this much higher.
const HEAVIER: f64 = 32.2 * 0.3048 / STANDARD_GRAVITY;

#[derive(Deserialize)]
struct File {
    networks: Vec<Spec>,
}

#[derive(Deserialize)]
struct Spec {
    name: String,
    viscosity: f64,
    nodes: usize,
    links: Vec<LinkSpec>,
    #[serde(default)]
    flows: Vec<f64>,
    #[serde(default)]
    heads: Vec<f64>,
    #[serde(default)]
    in_transition: usize,
}

#[derive(Deserialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
enum LinkSpec {
    Pipe {
        from: usize,
        to: usize,
        bore: f64,
        length: f64,
        k: f64,
        state: String,
    },
    Pump {
        from: usize,
        to: usize,
        curve: Vec<(f64, f64)>,
        speed: f64,
        /// Whether a check valve stands behind it, as EPANET has in every pump.
        #[serde(default)]
        check: bool,
    },
}

/// A reference network and what EPANET found in it.
pub struct ReadNetwork {
    /// Its name.
    pub name: String,
    /// The network; the first node is held at zero.
    pub network: Network,
    /// Its nodes.
    pub nodes: Vec<NodeId>,
    /// Its links.
    pub links: Vec<LinkId>,
    /// Flow of each link by EPANET.
    pub flows: Vec<VolumeFlow>,
    /// Head of each node by EPANET, against the first, carried over to standard gravity.
    pub heads: Vec<Length>,
    /// Number of pipes in transition.
    pub in_transition: usize,
}

/// Every network of `reference/tables/networks.json`.
///
/// # Panics
/// If the committed table is broken.
pub fn read_networks() -> Vec<ReadNetwork> {
    let text = include_str!("../reference/tables/networks.json");
    let file: Result<File, _> = serde_json::from_str(text);
    #[allow(clippy::expect_used)] // a broken table is a broken test
    let file = file.expect("the committed table of networks");
    file.networks.into_iter().map(build).collect()
}

/// One network, written as in the table; the answer may be left out.
///
/// # Errors
/// When it is not written so.
pub fn read_network(spec: serde_json::Value) -> serde_json::Result<ReadNetwork> {
    serde_json::from_value(spec).map(build)
}

/// A check valve without a loss to speak of in its direction.
fn check_valve(fluid: FluidState) -> Link {
    let wide = Pipe::new(
        Length::from_si(0.24),
        Length::from_si(0.2),
        Length::from_si(1.5e-6),
    );
    #[allow(clippy::expect_used)] // a bore of the table of pipes
    let curve = LossCurve::of_loss_coefficient(
        Number::from_si(0.01),
        wide.expect("a bore in range"),
        fluid,
    );
    Link::Part {
        curve,
        one_way: true,
    }
}

#[allow(clippy::expect_used)] // a broken table is a broken test
fn build(spec: Spec) -> ReadNetwork {
    let fluid = FluidState {
        density: Density::from_si(1_000.0),
        viscosity: DynamicViscosity::from_si(1_000.0 * spec.viscosity),
    };
    let mut network = Network::new(fluid, FrictionLaw::default());
    let nodes: Vec<NodeId> = (0..spec.nodes).map(|_| network.node()).collect();
    network.hold(nodes[0], PressureDifference::from_si(0.0));
    let links = spec
        .links
        .into_iter()
        .map(|link| match link {
            LinkSpec::Pipe {
                from,
                to,
                bore,
                length,
                k,
                state,
            } => {
                let bore = Length::from_si(bore * 1e-3);
                let pipe = Pipe::new(bore * 1.2, bore, Length::from_si(1.5e-6));
                let made = Link::Pipe {
                    pipe: pipe.expect("a bore in range"),
                    length: Length::from_si(length),
                    fittings: Number::from_si(k),
                };
                let id = network.link(nodes[from], nodes[to], made);
                network.set_open(id, state != "shut");
                id
            }
            LinkSpec::Pump {
                from,
                to,
                curve,
                speed,
                check,
            } => {
                let points: Vec<_> = curve
                    .into_iter()
                    .map(|(q, h)| (VolumeFlow::from_si(q * 1e-3), Length::from_si(h * HEAVIER)))
                    .collect();
                let made = Link::Pump {
                    curve: PumpCurve::through(&points).expect("a falling curve"),
                    state: PumpState::Running(Number::from_si(speed)),
                };
                let outlet = if check { network.node() } else { nodes[to] };
                let pump = network.link(nodes[from], outlet, made);
                if check {
                    network.link(outlet, nodes[to], check_valve(fluid));
                }
                pump
            }
        })
        .collect();
    ReadNetwork {
        name: spec.name,
        network,
        nodes,
        links,
        flows: spec
            .flows
            .into_iter()
            .map(|q| VolumeFlow::from_si(q * 1e-3))
            .collect(),
        heads: spec
            .heads
            .into_iter()
            .map(|head| Length::from_si(head * HEAVIER))
            .collect(),
        in_transition: spec.in_transition,
    }
}
