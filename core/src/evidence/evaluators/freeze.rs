//! Freeze protection and mixing.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::{Fluid, FluidKind, HydrometerScale, Suitability, hydrometer};
use crate::records::{Instrument, OperatingMode, ReadingPoint};
use crate::uncertainty::{Uncertain, propagate, weighted_mean};
use crate::units::{Fraction, Number, Quantity, Temperature, TemperatureDifference};

/// How far the fluid freezes below what is needed, K. The needed point itself
/// already lies the trade's margin below the coldest leaving water. Judgement.
const PROTECTION: Levels = Levels::graded(
    &[(-9.0, 0.0), (-18.0, 0.8)],
    &[(-0.8, 12.0)],
    &[(11.0, 20.0), (10.0, 35.0)],
);
/// Margin below the lowest leaving water, K: 10 °F. Common practice, no source.
const MARGIN: f64 = 5.5;
/// Lowest entering water of a season that nobody logged: 25 to 35 °F in a loop
/// of usual size. Common practice, no source.
const USUAL_LOWEST_ENTERING: (f64, f64) = (-1.0, 2.5);
/// What the rest of a season takes off the leaving water of a heating day. Judgement.
const COLDER_LATER: (f64, f64) = (2.0, 2.0);
/// How far the strength on record freezes below what the site needs, K: whoever chose it
/// knew its winters, and rounded up. Judgement.
const CHOSEN_BELOW_NEED: (f64, f64) = (1.0, 2.5);

/// Difference of two samples, K: a mixed loop gives the same twice, within 4 °F.
/// Common practice, no source.
const MIXING: Levels = Levels::presence(&[(-2.2, 2.2)], &[(-9.0, -1.8), (1.8, 9.0)]);

/// Specific gravity less that of the recorded kind at the measured freeze
/// point. The propane and ethane diols and the alcohols lie 0.01 to 0.08 apart
/// at loop strength (Lange's Handbook, 15th ed., table 5.13).
const GRAVITY: Levels = Levels::presence(&[(-0.004, 0.004)], &[(-0.08, -0.003), (0.003, 0.08)]);

pub(super) const FREEZE_PROTECTION: Evaluator = Evaluator {
    name: "freeze-protection",
    graded: true,
    reads: &[
        ReadingPoint::FreezePointSupply,
        ReadingPoint::FreezePointReturn,
        ReadingPoint::SpecificGravity,
    ],
    evaluate: protection,
};
pub(super) const FREEZE_SAMPLES_DIFFER: Evaluator = Evaluator {
    name: "freeze-samples-differ",
    graded: false,
    reads: &[
        ReadingPoint::FreezePointSupply,
        ReadingPoint::FreezePointReturn,
    ],
    evaluate: samples,
};
pub(super) const GRAVITY_DISAGREES: Evaluator = Evaluator {
    name: "gravity-and-freeze-point-disagree",
    graded: false,
    reads: &[
        ReadingPoint::SpecificGravity,
        ReadingPoint::FreezePointSupply,
        ReadingPoint::FreezePointReturn,
    ],
    evaluate: disagree,
};

/// Added standard uncertainty, K, of a freeze point read with an instrument on
/// a fluid; none where the instrument cannot tell its strength. Judgement, after
/// how well index and density tell the strength.
pub(in crate::evidence) fn doubt(kind: Option<FluidKind>, instrument: Instrument) -> Option<f64> {
    match (instrument, kind) {
        (Instrument::Refractometer, Some(FluidKind::Methanol)) => None,
        // Plain water shows as plain water.
        (Instrument::Refractometer, Some(FluidKind::Water)) => Some(0.0),
        (Instrument::Refractometer, Some(kind)) => Some(match kind.refractometer_suitability() {
            Suitability::Good => 0.0,
            Suitability::Coarse => 1.5,
            Suitability::Ambiguous | Suitability::Useless => 6.0,
        }),
        (Instrument::Refractometer, None) => Some(6.0),
        (Instrument::Hydrometer, Some(kind)) => Some(match kind.hydrometer_suitability() {
            Suitability::Good => 0.0,
            Suitability::Coarse => 2.0,
            Suitability::Ambiguous | Suitability::Useless => 4.0,
        }),
        (Instrument::Hydrometer, None) => Some(6.0),
        (_, _) => Some(0.0),
    }
}

/// Freeze points by instrument, samples of both sides together.
fn freeze_points(call: &Call<'_>) -> Vec<Taken> {
    let points = [
        ReadingPoint::FreezePointSupply,
        ReadingPoint::FreezePointReturn,
    ];
    let mut all: Vec<Taken> = Vec::new();
    for taken in points
        .into_iter()
        .flat_map(|point| call.by_instrument(point, State::Any))
    {
        let Some(doubt) = doubt(call.model.fluid.kind, taken.instrument) else {
            continue;
        };
        let standard = taken.standard.hypot(doubt);
        match all
            .iter_mut()
            .find(|other| other.instrument == taken.instrument)
        {
            // The mean of both sides, with half their difference as scatter.
            Some(other) => {
                let half = 0.5 * (taken.si - other.si);
                other.si += half;
                other.standard = standard.max(other.standard).hypot(half);
                other.readings.extend(taken.readings);
            }
            None => all.push(Taken { standard, ..taken }),
        }
    }
    all
}

/// The freeze point needed, what it stands on, and the readings it was told from.
fn needed(call: &Call<'_>) -> (Uncertain<Temperature>, Reasoning, Vec<usize>) {
    if let Some(wanted) = call.file.visit.means.wanted_freeze_point {
        let reasoning = Reasoning::new("wanted-freeze-point", Authority::CommonPractice);
        return (Uncertain::exact(wanted.get()), reasoning, Vec::new());
    }
    let mode = OperatingMode::Heating;
    let logged = call.best(ReadingPoint::LowestEnteringWater, State::Any);
    let leaving = call.best_with_compressor(ReadingPoint::LeavingWater, mode);
    let is_logged = logged.is_some();
    let (lowest, readings) = match (logged, leaving) {
        (Some(logged), _) => (below_entering(call, logged.uncertain()), logged.readings),
        (None, Some(leaving)) if leaving.si < Temperature::from_celsius(8.0).si() => {
            let later = Temperature::from_si(leaving.si - COLDER_LATER.0);
            let spread = leaving.standard.hypot(COLDER_LATER.1);
            (Uncertain::new(later, spread), leaving.readings)
        }
        _ => {
            let (celsius, spread) = USUAL_LOWEST_ENTERING;
            let usual = Uncertain::new(Temperature::from_celsius(celsius), spread);
            (below_entering(call, usual), Vec::new())
        }
    };
    let below = lowest.value() - TemperatureDifference::from_si(MARGIN);
    let needed = Uncertain::new(below, lowest.standard());
    let reasoning = Reasoning::new("freeze-margin", Authority::CommonPractice)
        .with("lowest-leaving-water", Figure::uncertain(lowest))
        .with(
            "freeze-margin",
            Figure::exact(TemperatureDifference::from_si(MARGIN)),
        );
    // A season that was logged needs no guess at what somebody else expected of it.
    match chosen(call).filter(|_| !is_logged) {
        Some(chosen) => (
            weighted_mean(&[needed, above(chosen)]).map_or(needed, |both| both.mean),
            reasoning.with("recorded-freeze-point", Figure::exact(chosen)),
            readings,
        ),
        None => (needed, reasoning, readings),
    }
}

/// Where the antifreeze freezes that the record says was put in.
fn chosen(call: &Call<'_>) -> Option<Temperature> {
    let kind = call.model.fluid.kind?;
    let written = call.file.system.fluid?.volume_fraction?;
    let solution = Fluid::from_volume_fraction(kind, written.get()).ok()?;
    (kind != FluidKind::Water).then(|| solution.freezing_point())
}

/// What was needed where this was chosen.
fn above(chosen: Temperature) -> Uncertain<Temperature> {
    let needed = chosen + TemperatureDifference::from_si(CHOSEN_BELOW_NEED.0);
    Uncertain::new(needed, CHOSEN_BELOW_NEED.1)
}

/// Leaving water under an entering water, by the rated change at needed flow.
fn below_entering(call: &Call<'_>, entering: Uncertain<Temperature>) -> Uncertain<Temperature> {
    let (change, spread) =
        super::split::expected_change(call, OperatingMode::Heating, entering).unwrap_or((3.5, 1.0));
    Uncertain::new(
        entering.value() - TemperatureDifference::from_si(change),
        entering.standard().hypot(spread),
    )
}

fn protection(call: &Call<'_>) -> Vec<Evaluation> {
    let (needed, reasoning, beside) = needed(call);
    let mut taken = freeze_points(call);
    taken.extend(by_gravity(call));
    taken
        .iter()
        .map(|taken| {
            let surplus = needed.value().si() - taken.si;
            let spread = taken.standard.hypot(needed.standard());
            Evaluation::of(
                &PROTECTION,
                Compared::Value(surplus, spread),
                taken,
                Figure::uncertain(taken.uncertain::<Temperature>()),
                Figure::uncertain(needed),
                reasoning.clone(),
            )
            .against(Beside::AtMost)
            .using(&beside)
        })
        .collect()
}

/// Sample temperature for the hydrometer: read, or a room's.
fn sample_temperature(call: &Call<'_>) -> (Uncertain<Temperature>, Vec<usize>) {
    match call.best(ReadingPoint::SampleTemperature, State::Any) {
        Some(read) => (read.uncertain(), read.readings),
        None => (
            Uncertain::new(Temperature::from_celsius(16.0), 5.0),
            Vec::new(),
        ),
    }
}

/// Freeze point by specific gravity, for a known kind that has no freeze point
/// by hydrometer already.
fn by_gravity(call: &Call<'_>) -> Option<Taken> {
    let kind = call.model.fluid.kind?;
    let gravity = call.best(ReadingPoint::SpecificGravity, State::Any)?;
    let (sample, companions) = sample_temperature(call);
    let strength = hydrometer(
        kind,
        HydrometerScale::default(),
        gravity.uncertain::<Number>(),
        sample,
    )
    .ok()?;
    let freezing = propagate((strength,), |(w,)| {
        Fluid::new(kind, w).map(Fluid::freezing_point)
    })
    .ok()?
    .result;
    Some(Taken {
        si: freezing.value().si(),
        standard: freezing.standard(),
        instrument: gravity.instrument,
        readings: [gravity.readings, companions].concat(),
    })
}

fn samples(call: &Call<'_>) -> Vec<Evaluation> {
    let Some(supply) = call.best(ReadingPoint::FreezePointSupply, State::Any) else {
        return Vec::new();
    };
    let same = call
        .by_instrument(ReadingPoint::FreezePointReturn, State::Any)
        .into_iter()
        .find(|taken| taken.instrument == supply.instrument);
    let Some(back) = same else {
        return Vec::new();
    };
    if doubt(call.model.fluid.kind, supply.instrument).is_none() {
        return Vec::new();
    }
    // Most of one instrument's error is the same in both samples: each counts
    // with 0.7 of it. Judgement.
    let spread = 0.7 * supply.standard.hypot(back.standard);
    let evaluation = Evaluation::of(
        &MIXING,
        Compared::Value(supply.si - back.si, spread),
        &supply,
        Figure::uncertain(supply.uncertain::<Temperature>()),
        Figure::uncertain(back.uncertain::<Temperature>()),
        Reasoning::new("two-samples", Authority::CommonPractice),
    );
    vec![
        evaluation
            .against(Beside::Other)
            .using(&back.readings)
            .of_one_instrument(),
    ]
}

fn disagree(call: &Call<'_>) -> Vec<Evaluation> {
    evaluate_disagreement(call).into_iter().collect()
}

fn evaluate_disagreement(call: &Call<'_>) -> Option<Evaluation> {
    let kind = call.model.fluid.kind?;
    let gravity = call.best(ReadingPoint::SpecificGravity, State::Any)?;
    let (sample, companions) = sample_temperature(call);
    let freezing = freeze_points(call)
        .into_iter()
        .filter(|taken| taken.instrument != Instrument::Hydrometer)
        .min_by(|a, b| a.standard.total_cmp(&b.standard));
    let Some(freezing) = freezing else {
        let evaluation = beyond_every_strength(kind, &gravity, sample)?;
        return Some(evaluation.using(&companions));
    };
    let reference = Fluid::WATER
        .density(Temperature::from_fahrenheit(60.0))
        .ok()?;
    let expected = propagate(
        (freezing.uncertain::<Temperature>(), sample),
        |(freezing, sample)| {
            let freezing = Temperature::from_celsius(freezing.celsius().min(-1e-3));
            let solution = match kind {
                FluidKind::Water => Fluid::WATER,
                kind => Fluid::from_freezing_point(kind, freezing)?,
            };
            let density = solution.density(sample)?;
            Ok::<_, crate::fluids::FluidError>(Number::from_si(density.si() / reference.si()))
        },
    )
    .ok()?
    .result;
    // The correlation's own doubt near loop strength, relative.
    let expected = Uncertain::new(expected.value(), expected.standard().hypot(1e-3));
    let difference = gravity.si - expected.value().si();
    let evaluation = Evaluation::of(
        &GRAVITY,
        Compared::Value(difference, gravity.standard.hypot(expected.standard())),
        &gravity,
        Figure::uncertain(gravity.uncertain::<Number>()),
        Figure::uncertain(expected),
        Reasoning::new("gravity-of-kind", Authority::Published("langes-handbook")).with(
            "freeze-point",
            Figure::uncertain(freezing.uncertain::<Temperature>()),
        ),
    );
    let evaluation = evaluation.against(Beside::Other);
    Some(evaluation.using(&freezing.readings).using(&companions))
}

/// The strongest mixture that stands in loops, by volume. Common practice, no source.
const STRONGEST: f64 = 0.5;

/// A gravity with no freeze point beside it: no strength of the recorded kind, from
/// water up, weighs that. One within their range tells nothing of the kind.
fn beyond_every_strength(
    kind: FluidKind,
    gravity: &Taken,
    sample: Uncertain<Temperature>,
) -> Option<Evaluation> {
    let reference = Fluid::WATER
        .density(Temperature::from_fahrenheit(60.0))
        .ok()?;
    let at = |strength: f64| {
        let weighed = propagate((sample,), |(sample,)| {
            let fluid = match kind {
                FluidKind::Water => Fluid::WATER,
                kind => Fluid::new(kind, Fraction::from_si(strength))?,
            };
            let density = fluid.density(sample)?;
            Ok::<_, crate::fluids::FluidError>(Number::from_si(density.si() / reference.si()))
        });
        weighed.ok().map(|weighed| weighed.result)
    };
    let (water, strong) = (at(0.0)?, at(STRONGEST)?);
    let (lightest, heaviest) = if water.value().si() < strong.value().si() {
        (water, strong)
    } else {
        (strong, water)
    };
    let (edge, beside) = if gravity.si > heaviest.value().si() {
        (heaviest, Beside::AtMost)
    } else if gravity.si < lightest.value().si() {
        (lightest, Beside::AtLeast)
    } else {
        return None;
    };
    // The correlation's own doubt, relative.
    let edge = Uncertain::new(edge.value(), edge.standard().hypot(1e-3));
    let spread = gravity.standard.hypot(edge.standard());
    let evaluation = Evaluation::of(
        &GRAVITY,
        Compared::Value(gravity.si - edge.value().si(), spread),
        gravity,
        Figure::uncertain(gravity.uncertain::<Number>()),
        Figure::uncertain(edge),
        Reasoning::new(
            "gravity-of-any-strength",
            Authority::Published("langes-handbook"),
        ),
    );
    Some(evaluation.against(beside))
}
