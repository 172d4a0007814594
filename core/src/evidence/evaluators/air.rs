//! Air by the dead-head test.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::hydraulics::elastic;
use crate::hydraulics::purge::{ALLOWED_AIR, DeadHeadTest, PipeVolume, TankStep, dead_head};
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{Area, Fraction, GaugePressure, Length, Number, Quantity, Unit, Volume};

/// Air over what the loop holds. What may stay is a judgement and dissolves in
/// the next hours; the overlap is one too.
const AIR: Levels = Levels::presence(&[(-0.001, 0.002_5)], &[(0.001_5, 0.012), (0.008, 0.08)]);

/// Reservoir of a cart that nobody measured: 10 to 18 in across, as inches and
/// their standard uncertainty. Common practice, no source.
const USUAL_RESERVOIR_IN: (f64, f64) = (14.0, 2.5);
/// Pressures of a test in which nobody noted them, psi. Common practice, no source.
const USUAL_BEFORE_PSI: (f64, f64) = (15.0, 8.0);
const USUAL_AFTER_PSI: (f64, f64) = (50.0, 12.0);

pub(super) const DEAD_HEAD_AIR: Evaluator = Evaluator {
    name: "dead-head-air",
    graded: false,
    reads: &[
        ReadingPoint::DeadHeadDrop,
        ReadingPoint::DeadHeadPressureBefore,
        ReadingPoint::DeadHeadPressureAfter,
    ],
    evaluate: air,
};

fn air(call: &Call<'_>) -> Vec<Evaluation> {
    evaluate_air(call).into_iter().collect()
}

fn evaluate_air(call: &Call<'_>) -> Option<Evaluation> {
    let drop = call.best(ReadingPoint::DeadHeadDrop, State::Any)?;
    let before = call.best(ReadingPoint::DeadHeadPressureBefore, State::Any);
    let after = call.best(ReadingPoint::DeadHeadPressureAfter, State::Any);
    let test = test(call, &drop, before.as_ref(), after.as_ref())?;
    let result = dead_head(&test).ok()?;
    let holds = call.model.piping.volume;
    let inches = |figure: Figure| figure.shown_in(Unit::Inch, Unit::Millimetre);
    let reasoning = Reasoning::new("dead-head-air", Authority::CommonPractice)
        .with("pressure-before", Figure::uncertain(test.before))
        .with("pressure-after", Figure::uncertain(test.after))
        .with("loop-volume", Figure::uncertain(holds))
        .with("air-left", Figure::uncertain(result.air));
    // The gauge is what is doubted; a ruler does not lie.
    let gauge = after.as_ref().or(before.as_ref());
    let doubted = Taken {
        instrument: gauge.map_or(drop.instrument, |gauge| gauge.instrument),
        ..drop.clone()
    };
    let evaluation = Evaluation::of(
        &AIR,
        Compared::ratio::<Volume>(result.air, holds),
        &doubted,
        inches(Figure::uncertain(drop.uncertain::<Length>())),
        inches(Figure::uncertain(result.pass_limit)),
        reasoning,
    );
    let gauges = before.into_iter().chain(after);
    let readings: Vec<usize> = gauges.flat_map(|taken| taken.readings).collect();
    Some(evaluation.against(Beside::AtMost).using(&readings))
}

fn test(
    call: &Call<'_>,
    drop: &Taken,
    before: Option<&Taken>,
    after: Option<&Taken>,
) -> Option<DeadHeadTest> {
    let (across, spread) = USUAL_RESERVOIR_IN;
    let cart = call.file.visit.means.cart.as_ref();
    let area = match cart.and_then(|cart| cart.reservoir_diameter) {
        Some(diameter) => Uncertain::relative(diameter.get().circle(), 0.02),
        None => Uncertain::<Area>::relative(
            Length::from_si(Unit::Inch.to_si(across)).circle(),
            2.0 * spread / across,
        ),
    };
    let usual = |(value, spread): (f64, f64)| {
        Uncertain::new(
            GaugePressure::from_si(Unit::Psi.to_si(value)),
            Unit::Psi.to_si(spread),
        )
    };
    let piping = &call.model.piping;
    let volume = piping.volume;
    let relative = volume.standard() / volume.value().si();
    let rigid = (volume.value() - piping.plastic_volume).si().max(0.0);
    let unknowns = super::pressure::unknowns(call);
    let temperature = call
        .model
        .fluid
        .computable(call.loop_temperature().0.value());
    let wall = elastic::MODULUS_TEMPERATURE;
    let wall_temperature = temperature.si().clamp(wall.min().si(), wall.max().si());
    let restraint = unknowns.restraint;
    Some(DeadHeadTest {
        tank: TankStep {
            drop: drop.uncertain(),
            area,
        },
        pipes: vec![
            PipeVolume {
                volume: Uncertain::relative(piping.plastic_volume, relative),
                diameter_ratio: Some(Number::from_si(piping.diameter_ratio)),
            },
            PipeVolume {
                volume: Uncertain::exact(Volume::from_si(rigid)),
                diameter_ratio: None,
            },
        ],
        before: before.map_or(usual(USUAL_BEFORE_PSI), Taken::uncertain),
        after: after.map_or(usual(USUAL_AFTER_PSI), Taken::uncertain),
        atmosphere: call.model.atmosphere,
        fluid: call.fluid(),
        temperature,
        modulus: elastic::short_term_modulus(Quantity::from_si(wall_temperature)).ok()?,
        poisson: elastic::poisson_ratio(),
        freedom: Uncertain::new(
            Fraction::from_si(1.0 - restraint.value().si()),
            restraint.standard(),
        ),
        allowed_air: Fraction::from_si(ALLOWED_AIR),
    })
}
