//! The heat pump itself: entering water, approach, refrigerant, electric input,
//! capacity, air.

use super::Evaluator;
use super::flow::{Way, heat_capacity, ways};
use super::split::{by_entering_water, rated_capacity, rated_input, water_change};
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::{Levels, with_slip};
use crate::figures::{Authority, Figure, Reasoning};
use crate::heat::exchange::effectiveness;
use crate::records::{ExchangerKind, OperatingMode, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, Number, Power, Quantity, Temperature, TemperatureDifference};

/// Entering water, °F: heating 30 to 50, cooling 50 to 90. Common practice, no
/// source; the overlaps are judgement.
const HEATING_WATER: Levels = Levels::presence(&[(28.0, 75.0)], &[(5.0, 32.0)]);
const COOLING_WATER: Levels = Levels::presence(&[(40.0, 94.0)], &[(86.0, 135.0)]);

/// Leaving water above evaporating temperature (heating), °F: 5 to 12 in a
/// plate, 8 to 15 in a coaxial exchanger. Common practice, no source; unit data
/// go before it.
const HEATING_PLATE: Levels = Levels::graded(&[(-10.0, 3.5)], &[(2.5, 13.5)], &[(11.0, 45.0)]);
const HEATING_COAXIAL: Levels = Levels::graded(&[(-10.0, 5.0)], &[(4.0, 16.5)], &[(14.0, 45.0)]);
const HEATING_ANY: Levels = Levels::graded(&[(-10.0, 4.5)], &[(3.0, 16.5)], &[(12.0, 45.0)]);
/// Condensing temperature above leaving water (cooling), °F: 3 to 8 in a plate,
/// 5 to 12 in a coaxial exchanger. As above.
const COOLING_PLATE: Levels = Levels::graded(&[(-10.0, 2.0)], &[(1.2, 9.5)], &[(7.5, 45.0)]);
const COOLING_COAXIAL: Levels = Levels::graded(&[(-10.0, 3.2)], &[(2.2, 13.5)], &[(11.0, 45.0)]);
const COOLING_ANY: Levels = Levels::graded(&[(-10.0, 3.0)], &[(1.8, 13.5)], &[(9.0, 45.0)]);
/// Approach over that of the clean exchanger at this flow and heat. Judgement.
const OVER_CLEAN: Levels = Levels::graded(&[(-0.5, 0.56)], &[(0.45, 1.5)], &[(1.3, 6.0)]);

/// Superheat 6 to 14 °F, subcooling 4 to 14 °F. Common practice, no source;
/// unit data go before it. The widths are judgement.
const SUPERHEAT: Levels = Levels::graded(&[(-15.0, 6.8)], &[(5.2, 15.0)], &[(13.0, 60.0)]);
const SUBCOOLING: Levels = Levels::graded(&[(-10.0, 4.7)], &[(3.3, 15.0)], &[(13.0, 50.0)]);

/// Electric input and capacity over the rated ones, within 15 %. Judgement.
const INPUT: Levels = Levels::graded(&[(0.1, 0.89)], &[(0.81, 1.2)], &[(1.1, 2.5)]);
const CAPACITY: Levels = Levels::graded(&[(0.0, 0.89)], &[(0.81, 1.22)], &[(1.1, 2.2)]);

/// Change of the air across the unit, °F: 20 to 35 heating, 15 to 22 cooling.
/// Common practice, no source; the widths are judgement.
const AIR_HEATING: Levels = Levels::graded(&[(0.0, 21.5)], &[(18.5, 37.0)], &[(33.0, 75.0)]);
const AIR_COOLING: Levels = Levels::graded(&[(0.0, 16.0)], &[(14.0, 23.5)], &[(20.5, 50.0)]);

const MODES: [OperatingMode; 2] = [OperatingMode::Heating, OperatingMode::Cooling];

pub(super) const ENTERING_WATER: Evaluator = Evaluator {
    name: "entering-water",
    graded: false,
    reads: &[
        ReadingPoint::EnteringWater,
        ReadingPoint::LowestEnteringWater,
    ],
    evaluate: entering,
};
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
pub(super) const SUPERHEAT_GRADED: Evaluator = Evaluator {
    name: "superheat",
    graded: true,
    reads: &[ReadingPoint::Superheat],
    evaluate: superheat,
};
pub(super) const SUBCOOLING_GRADED: Evaluator = Evaluator {
    name: "subcooling",
    graded: true,
    reads: &[ReadingPoint::Subcooling],
    evaluate: subcooling,
};
pub(super) const UNIT_POWER: Evaluator = Evaluator {
    name: "unit-power",
    graded: true,
    reads: &[ReadingPoint::UnitPower],
    evaluate: power,
};
pub(super) const UNIT_CAPACITY: Evaluator = Evaluator {
    name: "unit-capacity",
    graded: true,
    reads: &[ReadingPoint::UnitCapacity],
    evaluate: capacity,
};
pub(super) const AIR_CHANGE: Evaluator = Evaluator {
    name: "air-temperature-change",
    graded: true,
    reads: &[ReadingPoint::AirTemperatureChange],
    evaluate: air,
};

fn fahrenheit(taken: &Taken) -> Compared {
    let value = Temperature::from_si(taken.si).fahrenheit();
    Compared::Value(value, 1.8 * taken.standard)
}

fn entering(call: &Call<'_>) -> Vec<Evaluation> {
    let judged = |taken: &Taken, mode| {
        let (levels, edge, formula) = if mode == OperatingMode::Cooling {
            (&COOLING_WATER, 90.0, "entering-water-cooling")
        } else {
            (&HEATING_WATER, 30.0, "entering-water-heating")
        };
        Evaluation::of(
            levels,
            fahrenheit(taken),
            taken,
            Figure::uncertain(taken.uncertain::<Temperature>()),
            Figure::exact(Temperature::from_fahrenheit(edge)),
            Reasoning::new(formula, Authority::CommonPractice),
        )
    };
    let mut all = Vec::new();
    for mode in MODES {
        let read = call.with_compressor(ReadingPoint::EnteringWater, mode);
        all.extend(read.iter().map(|taken| judged(taken, mode)));
    }
    let logged = call.by_instrument(ReadingPoint::LowestEnteringWater, State::Any);
    all.extend(
        logged
            .iter()
            .map(|taken| judged(taken, OperatingMode::Heating)),
    );
    all
}

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
    Uncertain<crate::units::VolumeFlow>,
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

fn difference(
    call: &Call<'_>,
    point: ReadingPoint,
    levels: &Levels,
    usual_fahrenheit: (f64, f64),
    formula: &'static str,
) -> Vec<Evaluation> {
    let (middle, half) = usual_fahrenheit;
    let usual = Uncertain::new(
        TemperatureDifference::from_si(middle / 1.8),
        half / 2.0 / 1.8,
    );
    call.by_instrument(point, State::Running)
        .iter()
        .map(|taken| {
            Evaluation::of(
                levels,
                Compared::Value(1.8 * taken.si, 1.8 * taken.standard),
                taken,
                Figure::uncertain(taken.uncertain::<TemperatureDifference>()),
                Figure::uncertain(usual),
                Reasoning::new(formula, Authority::CommonPractice),
            )
        })
        .collect()
}

fn superheat(call: &Call<'_>) -> Vec<Evaluation> {
    let point = ReadingPoint::Superheat;
    difference(call, point, &SUPERHEAT, (10.0, 4.0), "usual-superheat")
}

fn subcooling(call: &Call<'_>) -> Vec<Evaluation> {
    let point = ReadingPoint::Subcooling;
    difference(call, point, &SUBCOOLING, (9.0, 5.0), "usual-subcooling")
}

/// Readings of a point by mode.
fn by_mode(call: &Call<'_>, point: ReadingPoint) -> Vec<(OperatingMode, Taken)> {
    MODES
        .into_iter()
        .flat_map(|mode| {
            call.with_compressor(point, mode)
                .into_iter()
                .map(move |taken| (mode, taken))
        })
        .collect()
}

/// Entering water of a mode as far as it is known, for what the unit should do.
fn entering_or_guess(call: &Call<'_>, mode: OperatingMode) -> Uncertain<Temperature> {
    call.best_with_compressor(ReadingPoint::EnteringWater, mode)
        .map_or_else(|| call.loop_temperature().0, |taken| taken.uncertain())
}

/// Rated capacity of a mode at this entering water, which it follows as the
/// heat from the loop does.
fn capacity_today(call: &Call<'_>, mode: OperatingMode) -> (f64, f64) {
    let demand = &call.model.demand;
    let (factor, doubt) = by_entering_water(mode, entering_or_guess(call, mode));
    let rated = rated_capacity(call, mode).si();
    let relative = demand.capacity.standard() / demand.capacity.value().si();
    (rated * factor, rated * (relative * factor).hypot(doubt))
}

fn power(call: &Call<'_>) -> Vec<Evaluation> {
    let demand = &call.model.demand;
    by_mode(call, ReadingPoint::UnitPower)
        .iter()
        .filter_map(|(mode, taken)| {
            let rated = rated_input(call, *mode).si();
            let relative = demand.capacity.standard() / demand.capacity.value().si();
            let expected = Uncertain::new(Power::from_si(rated), rated * relative.hypot(0.1));
            (rated > 0.0).then(|| {
                Evaluation::of(
                    &INPUT,
                    Compared::ratio(taken.uncertain(), expected),
                    taken,
                    super::watts(taken.uncertain()),
                    super::watts(expected),
                    Reasoning::new("rated-input", Authority::CommonPractice),
                )
            })
        })
        .collect()
}

fn capacity(call: &Call<'_>) -> Vec<Evaluation> {
    by_mode(call, ReadingPoint::UnitCapacity)
        .iter()
        .map(|(mode, taken)| {
            let (value, standard) = capacity_today(call, *mode);
            let expected = Uncertain::new(Power::from_si(value), standard);
            let entering = entering_or_guess(call, *mode);
            Evaluation::of(
                &CAPACITY,
                Compared::ratio(taken.uncertain(), expected),
                taken,
                Figure::uncertain(taken.uncertain::<Power>()),
                Figure::uncertain(expected),
                Reasoning::new("rated-capacity", Authority::CommonPractice)
                    .with("entering-water", Figure::uncertain(entering)),
            )
        })
        .collect()
}

fn air(call: &Call<'_>) -> Vec<Evaluation> {
    by_mode(call, ReadingPoint::AirTemperatureChange)
        .iter()
        .map(|(mode, taken)| {
            let (levels, middle, half) = if *mode == OperatingMode::Cooling {
                (&AIR_COOLING, 18.5, 3.5)
            } else {
                (&AIR_HEATING, 27.5, 7.5)
            };
            // People write a drop with or without its sign.
            let size = 1.8 * taken.si.abs();
            let usual = Uncertain::new(TemperatureDifference::from_si(middle / 1.8), half / 3.6);
            Evaluation::of(
                levels,
                Compared::Value(size, 1.8 * taken.standard),
                taken,
                Figure::uncertain(taken.uncertain::<TemperatureDifference>()),
                Figure::uncertain(usual),
                Reasoning::new("usual-air-change", Authority::CommonPractice),
            )
        })
        .collect()
}
