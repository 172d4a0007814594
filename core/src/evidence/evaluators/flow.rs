//! Flow through the heat pump against the flow it needs.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::{Fluid, FluidKind};
use crate::hydraulics::component::{CurveTrust, FluidState, LossCurve, flow_from_drop};
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, Number, PressureDifference, Quantity, Temperature, VolumeFlow};

/// Flow over the flow needed: low below it by more than 15 %, high above it by
/// more than 35 %. Units are rated down to 2.25 gpm per ton where 3 are usual
/// (common practice, no source). The overlaps are judgement.
const FLOW: Levels = Levels::graded(
    &[(0.55, 0.85), (0.0, 0.89)],
    &[(0.87, 1.3), (0.8, 1.42)],
    &[(1.35, 1.8), (1.3, 2.8)],
);

/// The evaluation of one determination of the flow.
fn judged(
    call: &Call<'_>,
    taken: &Taken,
    flow: Uncertain<VolumeFlow>,
    reasoning: Reasoning,
) -> Evaluation {
    let needed = call.model.demand.flow;
    Evaluation::of(
        &FLOW,
        Compared::ratio(flow, needed),
        taken,
        Figure::uncertain(flow),
        Figure::uncertain(needed),
        reasoning,
    )
}

pub(super) const LOOP_FLOW: Evaluator = Evaluator {
    name: "loop-flow",
    graded: true,
    reads: &[
        ReadingPoint::Flow,
        ReadingPoint::ExchangerDrop,
        ReadingPoint::CirculatorRise,
        ReadingPoint::ShutOffRise,
    ],
    evaluate: loop_flow,
};

/// One independent way to the flow.
pub(super) struct Way {
    /// What was read, with the instrument that it stands or falls with.
    pub taken: Taken,
    /// The flow.
    pub flow: Uncertain<VolumeFlow>,
    /// How.
    pub reasoning: Reasoning,
    /// It rests on the exchanger's drop, and so on a clean exchanger.
    pub is_by_drop: bool,
}

/// The drop of an exchanger tells its flow only if the exchanger is clean. Where the
/// flow is known otherwise, the drop tells of the exchanger instead
/// (`exchanger-drop-for-flow`), and not of the flow a second time.
fn loop_flow(call: &Call<'_>) -> Vec<Evaluation> {
    let ways = ways(call);
    let known_otherwise = ways.iter().any(|way| !way.is_by_drop);
    ways.into_iter()
        .filter(|way| !(way.is_by_drop && known_otherwise))
        .map(|way| judged(call, &way.taken, way.flow, way.reasoning))
        .collect()
}

/// Every independent way to the flow that the readings allow: a meter, the
/// exchanger's drop, the circulators' proven curve. Each is an observation of
/// its own, so that one that contradicts the rest lowers the trust in its
/// instrument instead of moving a mean. The heat balance is not among them: the
/// change of the water is a finding by itself and must not count twice.
pub(super) fn ways(call: &Call<'_>) -> Vec<Way> {
    ways_but_curve(call)
        .chain(super::pump::flow_by_curve(call))
        .collect()
}

/// The ways that need no circulator curve.
pub(super) fn ways_but_curve(call: &Call<'_>) -> impl Iterator<Item = Way> {
    let metered = call
        .by_instrument(ReadingPoint::Flow, State::Running)
        .into_iter()
        .map(|taken| Way {
            flow: taken.uncertain(),
            reasoning: Reasoning::new("flow-by-meter", Authority::CommonPractice),
            taken,
            is_by_drop: false,
        });
    let dropped = call
        .by_instrument(ReadingPoint::ExchangerDrop, State::Running)
        .into_iter()
        .filter_map(|taken| by_exchanger(call, taken));
    metered.chain(dropped)
}

/// The sharpest flow known otherwise than by the circulators.
pub(super) fn known_flow(call: &Call<'_>) -> Option<Way> {
    ways_but_curve(call)
        .filter(|way| way.flow.value().si() > 0.0)
        .min_by(|a, b| a.flow.standard().total_cmp(&b.flow.standard()))
}

fn by_exchanger(call: &Call<'_>, taken: Taken) -> Option<Way> {
    let flow = by_drop(call, &taken)?;
    let (temperature, companions) = call.loop_temperature();
    let reasoning = Reasoning::new("flow-by-drop", Authority::CommonPractice)
        .with(
            "exchanger-drop",
            Figure::uncertain(taken.uncertain::<PressureDifference>()),
        )
        .with("fluid-temperature", Figure::uncertain(temperature))
        .with(
            "antifreeze-by-volume",
            Figure::uncertain(call.model.fluid.volume_fraction),
        );
    let readings = [taken.readings.clone(), companions].concat();
    Some(Way {
        taken: Taken { readings, ..taken },
        flow,
        reasoning,
        is_by_drop: true,
    })
}

/// The exchanger's curve, if the unit's data hold one.
pub(super) fn exchanger_curve(call: &Call<'_>) -> Option<LossCurve> {
    let exchanger = call.file.system.heat_pump.as_ref()?.exchanger.as_ref()?;
    let points: Vec<(VolumeFlow, PressureDifference)> = exchanger
        .curve
        .iter()
        .map(|point| (point.flow.get(), point.drop.get()))
        .collect();
    // Curves are printed for cool water where nothing else is said; common
    // practice, no source.
    let printed = exchanger
        .curve_temperature
        .map_or(Temperature::from_celsius(15.0), |t| t.get());
    let printed = Temperature::from_celsius(printed.celsius().clamp(0.5, 95.0));
    LossCurve::through(&points, FluidState::of(Fluid::WATER, printed).ok()?).ok()
}

/// Kinds and strengths that the fluid may be: the recorded one, or plain water
/// and a usual glycol where nobody knows.
pub(super) fn possible_fluids(call: &Call<'_>) -> Vec<(FluidKind, Uncertain<Fraction>)> {
    let belief = &call.model.fluid;
    let strength = |kind| {
        let by_volume = belief.volume_fraction;
        let solution = Fluid::from_volume_fraction(
            kind,
            Fraction::from_si(by_volume.value().si().clamp(0.0, 0.5)),
        );
        // Near loop strength the two fractions differ by a constant factor.
        solution
            .ok()
            .map(|solution| Uncertain::new(solution.mass_fraction(), by_volume.standard()))
    };
    let kinds: &[FluidKind] = match &belief.kind {
        Some(FluidKind::Water) => {
            return vec![(FluidKind::Water, Uncertain::exact(Fraction::ZERO))];
        }
        Some(kind) => std::slice::from_ref(kind),
        None => {
            let plain = (FluidKind::Water, Uncertain::exact(Fraction::ZERO));
            let glycol = strength(FluidKind::PropyleneGlycol);
            return std::iter::once(plain)
                .chain(glycol.map(|w| (FluidKind::PropyleneGlycol, w)))
                .collect();
        }
    };
    kinds
        .iter()
        .filter_map(|&kind| strength(kind).map(|w| (kind, w)))
        .collect()
}

/// Flow from the exchanger's drop on its own curve, over the fluids it may be.
pub(super) fn by_drop(call: &Call<'_>, taken: &Taken) -> Option<Uncertain<VolumeFlow>> {
    let curve = exchanger_curve(call)?;
    // A gauge that shows nothing shows almost no flow, but not quite none.
    let drop = Uncertain::new(
        PressureDifference::from_si(taken.si.max(0.5 * taken.standard).max(1.0)),
        taken.standard,
    );
    let (temperature, _) = call.loop_temperature();
    let flows: Vec<Uncertain<VolumeFlow>> = possible_fluids(call)
        .into_iter()
        .filter_map(|(kind, w)| {
            let solution = Fluid::new(kind, w.value()).ok()?;
            let liquid = liquid(solution, temperature);
            flow_from_drop(&curve, CurveTrust::default(), drop, kind, w, liquid).ok()
        })
        .map(|propagated| propagated.result)
        .collect();
    across(&flows)
}

/// A temperature at which a solution is liquid, with a spread that keeps it so.
pub(super) fn liquid(solution: Fluid, t: Uncertain<Temperature>) -> Uncertain<Temperature> {
    let range = solution.kind().temperatures();
    let lowest = solution.freezing_point().si().max(range.min().si()) + 0.2;
    let highest = (range.max().si() - 0.2).max(lowest);
    Uncertain::new(
        Temperature::from_si(t.value().si().clamp(lowest, highest)),
        t.standard(),
    )
}

/// One value for several that are equally possible: the mean, with their
/// spread added. None if there is none.
pub(super) fn across<Q: Quantity>(values: &[Uncertain<Q>]) -> Option<Uncertain<Q>> {
    if values.is_empty() {
        return None;
    }
    let n = values.len() as f64;
    let mean = values.iter().map(|v| v.value().si()).sum::<f64>() / n;
    let variance = values
        .iter()
        .map(|v| v.standard().powi(2) + (v.value().si() - mean).powi(2))
        .sum::<f64>()
        / n;
    let value = Uncertain::new(Q::from_si(mean), variance.sqrt());
    (mean.is_finite() && value.standard().is_finite()).then_some(value)
}

/// Volumetric heat capacity of the fluid at a temperature, J/(m³·K), over the
/// fluids it may be.
pub(super) fn heat_capacity(call: &Call<'_>, t: Uncertain<Temperature>) -> Option<(f64, f64)> {
    let capacities: Vec<Uncertain<Number>> = possible_fluids(call)
        .into_iter()
        .filter_map(|(kind, w)| {
            let solution = Fluid::new(kind, w.value()).ok()?;
            let at = liquid(solution, t).value();
            let capacity = solution.density(at).ok()?.si() * solution.specific_heat(at).ok()?.si();
            let spread = solution.spread();
            let relative = spread.density.hypot(spread.specific_heat);
            Some(Uncertain::relative(Number::from_si(capacity), relative))
        })
        .collect();
    let mean = across(&capacities)?;
    Some((mean.value().si(), mean.standard()))
}
