//! How near the refrigerant comes to the water: what fouls an exchanger keeps them apart.

use super::Evaluator;
use super::flow::{Way, heat_capacity, ways};
use super::split::water_change;
use super::unit::MODES;
use crate::evidence::call::{Call, Taken};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::{Levels, with_slip};
use crate::figures::{Authority, Figure, Reasoning};
use crate::heat::exchange::effectiveness;
use crate::records::{ExchangerKind, OperatingMode, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, Number, Quantity, TemperatureDifference, VolumeFlow};

/// Leaving water above evaporating temperature (heating), °F: 5 to 12 in a
/// plate, 8 to 15 in a coaxial exchanger. Common practice, no source; unit data
/// go before it.
const HEATING_PLATE: Levels = Levels::graded(
    &[(-10.0, 3.5)],
    &[(2.5, 13.5)],
    &[(12.0, 22.0), (11.0, 45.0)],
);
const HEATING_COAXIAL: Levels = Levels::graded(
    &[(-10.0, 5.0)],
    &[(4.0, 16.5)],
    &[(15.0, 26.0), (14.0, 45.0)],
);
const HEATING_ANY: Levels = Levels::graded(
    &[(-10.0, 4.5)],
    &[(3.0, 16.5)],
    &[(13.0, 26.0), (12.0, 45.0)],
);
/// Condensing temperature above leaving water (cooling), °F: 3 to 8 in a plate,
/// 5 to 12 in a coaxial exchanger. As above.
const COOLING_PLATE: Levels =
    Levels::graded(&[(-10.0, 2.0)], &[(1.2, 9.5)], &[(8.0, 18.0), (7.5, 45.0)]);
const COOLING_COAXIAL: Levels = Levels::graded(
    &[(-10.0, 3.2)],
    &[(2.2, 13.5)],
    &[(12.0, 22.0), (11.0, 45.0)],
);
const COOLING_ANY: Levels = Levels::graded(
    &[(-10.0, 3.0)],
    &[(1.8, 13.5)],
    &[(10.0, 22.0), (9.0, 45.0)],
);
/// Approach over that of the clean exchanger at this flow and heat. Judgement.
const OVER_CLEAN: Levels = Levels::graded(
    &[(-0.5, 0.56)],
    &[(0.7, 1.3), (0.45, 1.5)],
    &[(1.4, 2.5), (1.3, 6.0)],
);

pub(super) const APPROACH: Evaluator = Evaluator {
    name: "approach",
    graded: true,
    reads: &[
        ReadingPoint::EvaporatingTemperature,
        ReadingPoint::CondensingTemperature,
        ReadingPoint::LeavingWater,
    ],
    evaluate: approach,
};

fn approach(call: &Call<'_>) -> Vec<Evaluation> {
    MODES
        .into_iter()
        .filter_map(|mode| approach_in(call, mode))
        .collect()
}

fn approach_in(call: &Call<'_>, mode: OperatingMode) -> Option<Evaluation> {
    let cooling = mode == OperatingMode::Cooling;
    let point = if cooling {
        ReadingPoint::CondensingTemperature
    } else {
        ReadingPoint::EvaporatingTemperature
    };
    let saturation = call.best_with_compressor(point, mode)?;
    let leaving = call.best_with_compressor(ReadingPoint::LeavingWater, mode)?;
    let sign = if cooling { -1.0 } else { 1.0 };
    let value = sign * (leaving.si - saturation.si);
    let standard = leaving.standard.hypot(saturation.standard);
    let measured = Uncertain::new(TemperatureDifference::from_si(value), standard);
    let figure = Figure::uncertain(measured);
    let evaluation = match clean_approach(call, mode, &leaving) {
        Some((expected, flow, readings)) => Evaluation::of(
            &OVER_CLEAN,
            Compared::ratio(measured, expected),
            &saturation,
            figure,
            Figure::uncertain(expected),
            Reasoning::new("clean-approach", Authority::CommonPractice)
                .with("flow", Figure::uncertain(flow)),
        )
        .using(&readings),
        None => {
            let kind = call.file.system.heat_pump.as_ref();
            let kind = kind.and_then(|unit| unit.exchanger.as_ref()?.kind);
            let (levels, middle) = match (cooling, kind) {
                (false, Some(ExchangerKind::BrazedPlate)) => (&HEATING_PLATE, 8.5),
                (false, Some(ExchangerKind::Coaxial)) => (&HEATING_COAXIAL, 11.5),
                (false, None) => (&HEATING_ANY, 10.0),
                (true, Some(ExchangerKind::BrazedPlate)) => (&COOLING_PLATE, 5.5),
                (true, Some(ExchangerKind::Coaxial)) => (&COOLING_COAXIAL, 8.5),
                (true, None) => (&COOLING_ANY, 7.5),
            };
            let usual = TemperatureDifference::from_si(middle / 1.8);
            Evaluation::of(
                levels,
                Compared::Value(1.8 * value, 1.8 * standard),
                &saturation,
                figure,
                Figure::uncertain(Uncertain::new(usual, 1.0)),
                Reasoning::new("usual-approach", Authority::CommonPractice),
            )
        }
    };
    // An approach is to be judged at the right flow only: as far as the flow is
    // known to be short, it says nothing.
    let likelihood = flow_short(call)
        .and_then(|short| with_slip(evaluation.likelihood.weights(), short))
        .unwrap_or(evaluation.likelihood);
    let evaluation = Evaluation {
        likelihood,
        ..evaluation
    };
    Some(evaluation.using(&leaving.readings))
}

/// Share of the flow needed under which an approach is no sign of the exchanger.
const ENOUGH_FLOW: f64 = 0.85;

/// Probability that the flow is short, if a flow was read.
fn flow_short(call: &Call<'_>) -> Option<f64> {
    let needed = call.model.demand.flow;
    let sharpest = sharpest_flow(call)?;
    let least = needed.value() * ENOUGH_FLOW;
    let spread = sharpest
        .flow
        .standard()
        .hypot(ENOUGH_FLOW * needed.standard());
    Some(1.0 - Uncertain::new(sharpest.flow.value(), spread).probability_above(least))
}

/// The sharpest of the ways to the flow.
fn sharpest_flow(call: &Call<'_>) -> Option<Way> {
    ways(call)
        .into_iter()
        .filter(|way| way.flow.value().si() > 0.0)
        .min_by(|a, b| {
            let relative = |way: &Way| way.flow.standard() / way.flow.value().si();
            relative(a).total_cmp(&relative(b))
        })
}

/// Approach of the clean exchanger at the flow and change of the water met:
/// split · (1/ε - 1) with ε of the clean conductance. Needs that conductance.
fn clean_approach(
    call: &Call<'_>,
    mode: OperatingMode,
    leaving: &Taken,
) -> Option<(
    Uncertain<TemperatureDifference>,
    Uncertain<VolumeFlow>,
    Vec<usize>,
)> {
    let exchanger = call.file.system.heat_pump.as_ref()?.exchanger.as_ref()?;
    let clean = exchanger.clean_conductance?.get();
    let entering = call.best_with_compressor(ReadingPoint::EnteringWater, mode)?;
    let (split, doubt) = water_change(mode, &entering, leaving);
    if split <= doubt {
        return None;
    }
    let (flow, mut readings) = match sharpest_flow(call) {
        Some(way) => (way.flow, way.taken.readings),
        None => (call.model.demand.flow, Vec::new()),
    };
    let (per_volume, capacity_doubt) = heat_capacity(call, entering.uncertain())?;
    let rate = flow.value().si() * per_volume;
    let units = clean.si() / rate;
    let at = |units: f64| {
        let effectiveness = effectiveness(Number::from_si(units), Fraction::ZERO).ok()?;
        Some(1.0 / effectiveness.si().max(1e-6) - 1.0)
    };
    let factor = at(units)?;
    // A clean conductance holds to a tenth at another flow and fluid. Judgement.
    let relative = (flow.standard() / flow.value().si())
        .hypot(capacity_doubt / per_volume)
        .hypot(0.1);
    let slope = 0.5 * (at(units * (1.0 - relative).max(0.1))? - at(units * (1.0 + relative))?);
    let expected = split * factor;
    let standard = (doubt * factor).hypot(split * slope);
    readings.extend(entering.readings);
    (expected > 0.0 && standard.is_finite()).then_some((
        Uncertain::new(TemperatureDifference::from_si(expected), standard),
        flow,
        readings,
    ))
}
