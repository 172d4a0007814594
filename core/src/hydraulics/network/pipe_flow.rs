//! What one pipe does in a solution.

use super::link::Law;
use super::{Link, LinkId, Network, Solution};
use crate::hydraulics::friction::{POOR_HEAT_BELOW, Regime};
use crate::units::{Length, Number, PressureDifference, Quantity, Velocity};

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
