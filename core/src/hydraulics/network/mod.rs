//! Flow in a network of pipes, parts and pumps.
//!
//! [`Network`] holds nodes and links; [`Network::solve`] finds the flows. A
//! closed loop needs no fixed pressure: heads are told against one node.
//! [`ground_loop`] builds the networks that ground loops are.

mod elimination;
pub mod ground_loop;
mod link;
mod pipe_flow;
mod solve;

pub use link::{Link, PumpState};
pub use pipe_flow::PipeFlow;
use solve::Pattern;
pub use solve::{DENSITY, OUTFLOW, Solution, SolveError, VISCOSITY};

use super::component::FluidState;
use super::friction::FrictionLaw;
use crate::units::{PressureDifference, Quantity, VolumeFlow};

/// A junction in a [`Network`].
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash, PartialOrd, Ord)]
pub struct NodeId(pub(super) usize);

/// A pipe, part or pump in a [`Network`].
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash, PartialOrd, Ord)]
pub struct LinkId(pub(super) usize);

#[derive(Copy, Clone, PartialEq, Debug, Default)]
struct Node {
    /// Taken out of the network here, m³/s.
    outflow: f64,
    /// Pressure held here, Pa.
    held: Option<f64>,
}

#[derive(Clone, PartialEq, Debug)]
struct Placed {
    from: usize,
    to: usize,
    link: Link,
    open: bool,
}

/// Nodes joined by links, filled with one fluid at one temperature.
#[derive(Clone, PartialEq, Debug)]
pub struct Network {
    fluid: FluidState,
    law: FrictionLaw,
    nodes: Vec<Node>,
    links: Vec<Placed>,
    pattern: Pattern,
}

impl Network {
    /// An empty network.
    pub fn new(fluid: FluidState, law: FrictionLaw) -> Self {
        Self {
            fluid,
            law,
            nodes: Vec::new(),
            links: Vec::new(),
            pattern: Pattern::default(),
        }
    }
    /// Adds a junction.
    pub fn node(&mut self) -> NodeId {
        self.pattern = Pattern::default();
        self.nodes.push(Node::default());
        NodeId(self.nodes.len() - 1)
    }
    /// Holds the pressure at a node, as an open tank does.
    pub fn hold(&mut self, node: NodeId, pressure: PressureDifference) {
        if let Some(node) = self.nodes.get_mut(node.0) {
            node.held = Some(pressure.si());
        }
    }
    /// Takes a flow out of the network at a node (negative: puts it in).
    pub fn take(&mut self, node: NodeId, flow: VolumeFlow) {
        if let Some(node) = self.nodes.get_mut(node.0) {
            node.outflow = flow.si();
        }
    }
    /// Joins two nodes; flow counts positive from the first to the second.
    pub fn link(&mut self, from: NodeId, to: NodeId, link: Link) -> LinkId {
        self.pattern = Pattern::default();
        self.links.push(Placed {
            from: from.0,
            to: to.0,
            link,
            open: true,
        });
        LinkId(self.links.len() - 1)
    }
    /// Opens or shuts a link.
    pub fn set_open(&mut self, link: LinkId, open: bool) {
        if let Some(link) = self.links.get_mut(link.0) {
            link.open = open;
        }
    }
    /// A link.
    pub fn link_at(&self, link: LinkId) -> Option<&Link> {
        self.links.get(link.0).map(|placed| &placed.link)
    }
    /// The fluid.
    pub fn fluid(&self) -> FluidState {
        self.fluid
    }
    /// The law of friction.
    pub fn law(&self) -> FrictionLaw {
        self.law
    }
    /// Takes another law of friction.
    pub fn set_law(&mut self, law: FrictionLaw) {
        self.law = law;
    }
    /// Ends of a link.
    pub fn ends(&self, link: LinkId) -> Option<(NodeId, NodeId)> {
        let placed = self.links.get(link.0)?;
        Some((NodeId(placed.from), NodeId(placed.to)))
    }
    /// Every node.
    pub fn nodes(&self) -> impl Iterator<Item = NodeId> + use<> {
        (0..self.nodes.len()).map(NodeId)
    }
    /// Every link.
    pub fn links(&self) -> impl Iterator<Item = LinkId> + use<> {
        (0..self.links.len()).map(LinkId)
    }
}
