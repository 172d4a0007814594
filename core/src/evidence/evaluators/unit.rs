//! The heat pump itself: entering water, refrigerant, electric input, capacity, air.

use super::Evaluator;
use super::split::{by_entering_water, rated_capacity, rated_input};
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::records::{OperatingMode, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Power, Quantity, Temperature, TemperatureDifference};

/// Entering water, °F: heating 30 to 50, cooling 50 to 90. Common practice, no
/// source; the overlaps are judgement.
const HEATING_WATER: Levels =
    Levels::presence(&[(30.0, 50.0), (28.0, 75.0)], &[(20.0, 30.0), (5.0, 32.0)]);
const COOLING_WATER: Levels = Levels::presence(
    &[(50.0, 90.0), (40.0, 94.0)],
    &[(90.0, 106.0), (86.0, 135.0)],
);

/// Superheat 6 to 14 °F, subcooling 4 to 14 °F. Common practice, no source;
/// unit data go before it. The widths are judgement.
const SUPERHEAT: Levels = Levels::graded(
    &[(-3.0, 6.0), (-15.0, 6.8)],
    &[(5.2, 15.0)],
    &[(14.0, 30.0), (13.0, 60.0)],
);
const SUBCOOLING: Levels = Levels::graded(
    &[(-2.0, 4.0), (-10.0, 4.7)],
    &[(3.3, 15.0)],
    &[(14.0, 25.0), (13.0, 50.0)],
);

/// Electric input and capacity over the rated ones, within 15 %. Judgement.
const INPUT: Levels = Levels::graded(
    &[(0.6, 0.85), (0.1, 0.89)],
    &[(0.9, 1.1), (0.81, 1.2)],
    &[(1.15, 1.4), (1.1, 2.5)],
);
const CAPACITY: Levels = Levels::graded(
    &[(0.6, 0.85), (0.0, 0.89)],
    &[(0.9, 1.12), (0.81, 1.22)],
    &[(1.1, 2.2)],
);

/// Change of the air across the unit, °F: 20 to 35 heating, 15 to 22 cooling.
/// Common practice, no source; the widths are judgement.
const AIR_HEATING: Levels = Levels::graded(
    &[(12.0, 20.0), (0.0, 21.5)],
    &[(18.5, 37.0)],
    &[(35.0, 46.0), (33.0, 75.0)],
);
const AIR_COOLING: Levels = Levels::graded(
    &[(8.0, 15.0), (0.0, 16.0)],
    &[(14.0, 23.5)],
    &[(22.0, 31.0), (20.5, 50.0)],
);

pub(super) const MODES: [OperatingMode; 2] = [OperatingMode::Heating, OperatingMode::Cooling];

pub(super) const ENTERING_WATER: Evaluator = Evaluator {
    name: "entering-water",
    graded: false,
    reads: &[
        ReadingPoint::EnteringWater,
        ReadingPoint::LowestEnteringWater,
    ],
    evaluate: entering,
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
        let (levels, edge, beside, formula) = if mode == OperatingMode::Cooling {
            (
                &COOLING_WATER,
                90.0,
                Beside::AtMost,
                "entering-water-cooling",
            )
        } else {
            (
                &HEATING_WATER,
                30.0,
                Beside::AtLeast,
                "entering-water-heating",
            )
        };
        Evaluation::of(
            levels,
            fahrenheit(taken),
            taken,
            Figure::uncertain(taken.uncertain::<Temperature>()),
            Figure::exact(Temperature::from_fahrenheit(edge)),
            Reasoning::new(formula, Authority::CommonPractice),
        )
        .against(beside)
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
