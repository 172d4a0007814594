//! The electric input of the circulators against their nameplates.

use super::Evaluator;
use crate::diagnosis::Likelihood;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{Current, Power, Quantity};

/// Electric input over that of the nameplates: low by more than 25 %, high by
/// more than 15 %. It falls towards no flow. Judgement.
const POWER: Levels = Levels::graded(
    &[(0.45, 0.75), (0.0, 0.8)],
    &[(0.82, 1.12), (0.69, 1.2)],
    &[(1.15, 1.5), (1.1, 2.5)],
);

pub(super) const CIRCULATOR_POWER: Evaluator = Evaluator {
    name: "circulator-power",
    graded: true,
    reads: &[
        ReadingPoint::CirculatorPower,
        ReadingPoint::CirculatorCurrent,
    ],
    evaluate: power,
};

fn power(call: &Call<'_>) -> Vec<Evaluation> {
    let circulators = &call.file.system.circulators;
    let rated: Option<f64> = circulators
        .iter()
        .map(|circulator| circulator.rated_power.map(|power| power.get().si()))
        .sum();
    let Some(rated) = rated.filter(|rated| *rated > 0.0) else {
        return Vec::new();
    };
    // Plates are rounded and voltage varies. Judgement.
    let rated = Uncertain::relative(Power::from_si(rated), 0.07);
    let metered = call.by_instrument(ReadingPoint::CirculatorPower, State::Running);
    // Current says the same once more, and less sharply.
    if metered.is_empty() {
        return by_current(call, rated);
    }
    metered
        .iter()
        .map(|taken| {
            Evaluation::of(
                &POWER,
                Compared::ratio(taken.uncertain(), rated),
                taken,
                super::watts(taken.uncertain()),
                super::watts(rated),
                Reasoning::new("power-by-plate", Authority::Judgement),
            )
        })
        .collect()
}

/// Mains that a circulator may be wired to, V. Common practice, no source.
const MAINS: [f64; 2] = [115.0, 230.0];
/// Power factor of small wet-rotor circulators, and its spread. Judgement.
const POWER_FACTOR: (f64, f64) = (0.9, 0.08);

/// Electric input from the current, P = U I cos φ. Nobody notes the voltage, so
/// that both are possible: only a current that is too small or too large at
/// either says much.
fn by_current(call: &Call<'_>, rated: Uncertain<Power>) -> Vec<Evaluation> {
    let (factor, spread) = POWER_FACTOR;
    let over = |taken: &Taken, volts: f64| {
        let watts = volts * factor * taken.si;
        let standard = (volts * factor * taken.standard).hypot(volts * spread * taken.si);
        Uncertain::new(Power::from_si(watts), standard)
    };
    call.by_instrument(ReadingPoint::CirculatorCurrent, State::Running)
        .iter()
        .filter_map(|taken| {
            let mut weights = [0.0; 3];
            for volts in MAINS {
                let likelihood = Compared::ratio(over(taken, volts), rated).over(&POWER);
                for (sum, weight) in weights.iter_mut().zip(likelihood.weights()) {
                    *sum += weight / MAINS.len() as f64;
                }
            }
            let [low, normal, high] = weights;
            let evaluation = Evaluation::of(
                &POWER,
                Compared::ratio(over(taken, MAINS[0]), rated),
                taken,
                Figure::uncertain(taken.uncertain::<Current>()),
                super::watts(rated),
                Reasoning::new("power-by-current", Authority::Judgement),
            );
            let likelihood = Likelihood::graded(low, normal, high).ok()?;
            Some(Evaluation {
                likelihood,
                ..evaluation
            })
        })
        .collect()
}
