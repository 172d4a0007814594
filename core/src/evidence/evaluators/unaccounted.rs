//! Head that the circulators give and nothing on record takes.

use super::Evaluator;
use super::computed::{HEADERS_UNKNOWN_SPREAD, NETWORK_SPREAD, field, run};
use super::flow::{across, known_flow, liquid, possible_fluids};
use super::solids::expected_drop;
use crate::evidence::call::{Call, State};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::Fluid;
use crate::hydraulics::component::FluidState;
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::network::Network;
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{PressureDifference, Quantity, Unit, VolumeFlow};

/// Rise of the circulators less what exchanger, strainer and pipe take at this
/// flow, psi. Judgement: valves and elbows that nobody counted take one or two.
const UNACCOUNTED: Levels = Levels::presence(&[(-4.0, 2.0)], &[(3.0, 12.0), (6.0, 40.0)]);
/// A clean strainer, psi, and its spread. Common practice, no source.
const STRAINER_PSI: (f64, f64) = (0.6, 0.4);
/// Friction goes with about this power of the flow (Blasius: 1.75).
const FRICTION_POWER: f64 = 1.75;

pub(super) const HEAD_UNACCOUNTED: Evaluator = Evaluator {
    name: "head-unaccounted",
    graded: false,
    reads: &[
        ReadingPoint::CirculatorRise,
        ReadingPoint::Flow,
        ReadingPoint::ExchangerDrop,
        ReadingPoint::StrainerDrop,
    ],
    evaluate: unaccounted,
};

fn unaccounted(call: &Call<'_>) -> Vec<Evaluation> {
    let evaluated = || {
        let rise = call.best(ReadingPoint::CirculatorRise, State::Running)?;
        let way = known_flow(call)?;
        let measured = |point| call.best(point, State::Running);
        let exchanger = match measured(ReadingPoint::ExchangerDrop) {
            Some(taken) => taken.uncertain(),
            None => expected_drop(call, &way)?,
        };
        let strainer = match measured(ReadingPoint::StrainerDrop) {
            Some(taken) => taken.uncertain(),
            None if call.file.system.strainer == Some(false) => {
                Uncertain::exact(PressureDifference::ZERO)
            }
            None => Uncertain::new(
                PressureDifference::from_si(Unit::Psi.to_si(STRAINER_PSI.0)),
                Unit::Psi.to_si(STRAINER_PSI.1),
            ),
        };
        let pipe = pipe_drop(call, way.flow)?;
        let parts = [exchanger, strainer, pipe];
        let taken = parts.iter().map(|part| part.value().si()).sum::<f64>();
        let spread = parts
            .iter()
            .map(|part| part.standard())
            .fold(0.0, f64::hypot);
        let left = Uncertain::new(
            PressureDifference::from_si(rise.si - taken),
            rise.standard.hypot(spread),
        );
        let psi = |pa| Unit::Psi.from_si(pa);
        let reasoning = Reasoning::new("head-account", Authority::CommonPractice)
            .with(
                "circulator-rise",
                Figure::uncertain(rise.uncertain::<PressureDifference>()),
            )
            .with("flow", Figure::uncertain(way.flow))
            .with("exchanger-drop", Figure::uncertain(exchanger))
            .with("pipe-drop", Figure::uncertain(pipe));
        let evaluation = Evaluation::of(
            &UNACCOUNTED,
            Compared::Value(psi(left.value().si()), psi(left.standard())),
            &rise,
            Figure::uncertain(left),
            Figure::exact(PressureDifference::from_si(Unit::Psi.to_si(2.0))),
            reasoning,
        )
        .against(Beside::AtMost);
        left.standard()
            .is_finite()
            .then(|| evaluation.using(&way.taken.readings))
    };
    evaluated().into_iter().collect()
}

/// What circuits, headers and indoor pipe take at a flow, over the fluids it may be.
fn pipe_drop(
    call: &Call<'_>,
    flow: Uncertain<VolumeFlow>,
) -> Option<Uncertain<PressureDifference>> {
    let piping = &call.model.piping;
    let field = field(call)?;
    let (temperature, _) = call.loop_temperature();
    let unknown = if piping.headers.is_empty() && piping.indoor.is_empty() {
        HEADERS_UNKNOWN_SPREAD
    } else {
        0.0
    };
    let by_flow = flow.standard() / flow.value().si();
    let drops: Vec<Uncertain<PressureDifference>> = possible_fluids(call)
        .into_iter()
        .filter_map(|(kind, w)| {
            let solution = Fluid::new(kind, w.value()).ok()?;
            let state = FluidState::of(solution, liquid(solution, temperature).value()).ok()?;
            let mut network = Network::new(state, FrictionLaw::default());
            let (start, back) = (network.node(), network.node());
            let mut at = start;
            for section in piping.headers.iter().chain(&piping.indoor) {
                let next = network.node();
                // Elbows, valves and ports: about 6 heads of velocity a run. Judgement.
                network.link(at, next, run(section, 6.0).link());
                at = next;
            }
            field.lay(&mut network, at, back);
            network.hold(back, Quantity::from_si(0.0));
            network.take(start, -flow.value());
            let drop = network.solve().ok()?.drop(start, back);
            // Head goes with the square of a flow that the same loop would let through.
            let relative = (FRICTION_POWER * by_flow)
                .hypot(2.0 * NETWORK_SPREAD)
                .hypot(2.0 * unknown);
            (drop.si() > 0.0).then(|| Uncertain::relative(drop, relative))
        })
        .collect();
    across(&drops)
}
