//! The change of the water across the heat pump.

use super::Evaluator;
use super::flow::heat_capacity;
use crate::evidence::call::{Call, Taken};
use crate::evidence::evaluation::{Compared, Evaluation, ratio};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::model::Assumption;
use crate::records::{OperatingMode, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Power, Quantity, Temperature, TemperatureDifference};

/// Change of the water over that of a unit at its rated heat and needed flow,
/// within a quarter. Judgement; the rated change itself follows from the heat balance.
const SPLIT: Levels = Levels::graded(
    &[(0.5, 0.75), (0.0, 0.8)],
    &[(0.82, 1.18), (0.7, 1.3)],
    &[(1.25, 1.85), (1.2, 3.5)],
);
/// Heat of extraction rises with entering water: per kelvin above the 0 °C of
/// the ground-loop rating (ISO 13256-1, from memory), and its uncertainty. Judgement.
const EXTRACTION_PER_KELVIN: (f64, f64) = (0.022, 0.008);
/// Heat of rejection falls a little, from the 25 °C of the rating. Judgement.
const REJECTION_PER_KELVIN: (f64, f64) = (-0.004, 0.004);

/// Spread of heat, and of flow, per ton between units. Judgement.
const KNOWN_SIZE_SPREAD: f64 = 0.12;

pub(super) const TEMPERATURE_SPLIT: Evaluator = Evaluator {
    name: "temperature-split",
    graded: true,
    reads: &[ReadingPoint::EnteringWater, ReadingPoint::LeavingWater],
    evaluate: split,
};

/// Change of the water in the direction of the mode, K: as it should be, or the
/// other way round. A unit that does little changes it little; none turns it
/// round. Judgement.
const DIRECTION: Levels = Levels::presence(&[(-0.4, 25.0)], &[(-25.0, -0.8)]);

/// That what is marked as entering leaves, by the two temperatures.
pub(super) const SPLIT_REVERSED: Evaluator = Evaluator {
    name: "split-sign-reversed",
    graded: false,
    reads: &[ReadingPoint::EnteringWater, ReadingPoint::LeavingWater],
    evaluate: reversed,
};

fn reversed(call: &Call<'_>) -> Vec<Evaluation> {
    each_mode(call)
        .filter_map(|(mode, entering, leaving)| {
            let measured = water_change(mode, &entering, &leaving);
            let expected = expected_change(call, mode, entering.uncertain())?;
            let reasoning = Reasoning::new("split-direction", Authority::CommonPractice);
            let evaluation = Evaluation::of(
                &DIRECTION,
                Compared::Value(measured.0, measured.1),
                doubted(&entering, &leaving).0,
                change(measured),
                change(expected),
                reasoning,
            )
            .using(&entering.readings)
            .using(&leaving.readings);
            // One thermometer held to both is off alike at both.
            Some(if entering.instrument == leaving.instrument {
                evaluation.of_one_instrument()
            } else {
                evaluation
            })
        })
        .collect()
}

/// What enters and leaves with the compressor on, for each mode that both were read in.
fn each_mode(call: &Call<'_>) -> impl Iterator<Item = (OperatingMode, Taken, Taken)> {
    [OperatingMode::Heating, OperatingMode::Cooling]
        .into_iter()
        .filter_map(|mode| {
            let entering = call.best_with_compressor(ReadingPoint::EnteringWater, mode)?;
            let leaving = call.best_with_compressor(ReadingPoint::LeavingWater, mode)?;
            Some((mode, entering, leaving))
        })
}

/// The less certain thermometer, which is the one to doubt, and the other.
fn doubted<'a>(entering: &'a Taken, leaving: &'a Taken) -> (&'a Taken, &'a Taken) {
    if leaving.standard > entering.standard {
        (leaving, entering)
    } else {
        (entering, leaving)
    }
}

fn change((value, standard): (f64, f64)) -> Figure {
    Figure::uncertain(Uncertain::new(
        TemperatureDifference::from_si(value),
        standard,
    ))
}

fn split(call: &Call<'_>) -> Vec<Evaluation> {
    each_mode(call)
        .filter_map(|(mode, entering, leaving)| {
            let measured = water_change(mode, &entering, &leaving);
            let expected = expected_change(call, mode, entering.uncertain())?;
            let heat = rated_heat(call, mode, entering.uncertain());
            let reasoning = Reasoning::new("rated-split", Authority::CommonPractice)
                .with(
                    "heat-moved",
                    Figure::uncertain(Uncertain::new(Power::from_si(heat.0), heat.1)),
                )
                .with("needed-flow", Figure::uncertain(call.model.demand.flow))
                .with(
                    "entering-water",
                    Figure::uncertain(entering.uncertain::<Temperature>()),
                )
                .with(
                    "leaving-water",
                    Figure::uncertain(leaving.uncertain::<Temperature>()),
                );
            let (doubted, other) = doubted(&entering, &leaving);
            // Pipes that are crossed turn the change round and leave its size; that
            // they are is another finding. A small change is no turned one.
            let size = if measured.0 < -2.0 * measured.1 {
                (-measured.0, measured.1)
            } else {
                measured
            };
            let evaluation = Evaluation::of(
                &SPLIT,
                Compared::Ratio(size, expected),
                doubted,
                change(measured),
                change(expected),
                reasoning,
            );
            Some(evaluation.using(&other.readings))
        })
        .collect()
}

/// Change of the water in the direction of the mode, K, positive as it should
/// be, with its standard uncertainty.
pub(super) fn water_change(mode: OperatingMode, entering: &Taken, leaving: &Taken) -> (f64, f64) {
    let fall = entering.si - leaving.si;
    let change = if mode == OperatingMode::Cooling {
        -fall
    } else {
        fall
    };
    (change, entering.standard.hypot(leaving.standard))
}

/// Heat between unit and loop at full load and this entering water, W.
pub(super) fn rated_heat(
    call: &Call<'_>,
    mode: OperatingMode,
    entering: Uncertain<Temperature>,
) -> (f64, f64) {
    let demand = &call.model.demand;
    let rated = if mode == OperatingMode::Cooling {
        demand.rejection
    } else {
        demand.extraction
    };
    let factor = by_entering_water(mode, entering);
    let value = rated.value().si() * factor.0;
    let standard = (rated.standard() * factor.0).hypot(rated.value().si() * factor.1);
    (value, standard)
}

/// Full load at this entering water over that at the rating, with its standard
/// uncertainty.
pub(super) fn by_entering_water(
    mode: OperatingMode,
    entering: Uncertain<Temperature>,
) -> (f64, f64) {
    let ((per_kelvin, spread), rating) = if mode == OperatingMode::Cooling {
        (REJECTION_PER_KELVIN, 25.0)
    } else {
        (EXTRACTION_PER_KELVIN, 0.0)
    };
    // Far from the rating the straight line is not believed any further.
    let away = (entering.value().celsius() - rating).clamp(-15.0, 25.0);
    (1.0 + per_kelvin * away, (spread * away).abs())
}

/// Change of the water at needed flow and rated heat: ΔT = Q / (V̇ ρ c_p), K.
pub(super) fn expected_change(
    call: &Call<'_>,
    mode: OperatingMode,
    entering: Uncertain<Temperature>,
) -> Option<(f64, f64)> {
    let demand = &call.model.demand;
    let mut flow = demand.flow;
    let mut heat = rated_heat(call, mode, entering);
    // Where the size is unknown both stand on the same guess, which cancels:
    // a ton is a ton, and what is left is how units differ.
    if call
        .model
        .assumptions
        .contains(&Assumption::CapacityUnknown)
    {
        heat.1 = KNOWN_SIZE_SPREAD * heat.0;
        if call.model.assumptions.contains(&Assumption::FlowByCapacity) {
            flow = Uncertain::relative(flow.value(), KNOWN_SIZE_SPREAD);
        } else {
            heat.1 = heat
                .1
                .hypot(demand.capacity.standard() / demand.capacity.value().si() * heat.0);
        }
    }
    let per_volume = heat_capacity(call, entering)?;
    let by_flow = ratio(heat, (flow.value().si(), flow.standard()));
    let expected = ratio(by_flow, per_volume);
    (expected.0 > 0.0 && expected.1.is_finite()).then_some(expected)
}

/// Rated capacity of a mode, or the one that sizes the loop.
pub(super) fn rated_capacity(call: &Call<'_>, mode: OperatingMode) -> Power {
    let unit = call.file.system.heat_pump.as_ref();
    let own = unit.and_then(|unit| match mode {
        OperatingMode::Cooling => unit.cooling_capacity,
        _ => unit.heating_capacity,
    });
    own.map_or(call.model.demand.capacity.value(), |own| own.get())
}

/// Rated electric input of a mode: what rejection adds to the capacity, or
/// extraction lacks from it.
pub(super) fn rated_input(call: &Call<'_>, mode: OperatingMode) -> Power {
    let demand = &call.model.demand;
    let heat = match mode {
        OperatingMode::Cooling => demand.rejection,
        _ => demand.extraction,
    };
    Power::from_si((heat.value() - rated_capacity(call, mode)).si().abs())
}
