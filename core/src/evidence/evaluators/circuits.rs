//! Circuits against each other.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{Number, Quantity, TemperatureDifference};

/// Difference of the warmest and the coldest return, K: returns of an even
/// field lie within 3 °F. Common practice, no source.
const RETURNS: Levels = Levels::presence(&[(0.0, 1.9)], &[(1.5, 5.0), (3.0, 15.0)]);

pub(super) const RETURNS_DIFFER: Evaluator = Evaluator {
    name: "circuit-returns-differ",
    graded: false,
    reads: &[ReadingPoint::CircuitReturn],
    evaluate: returns,
};

/// How far one return may stand from another while fluid runs in both, K: a circuit
/// that stands takes the temperature of ground or room. Judgement.
const STANDS: Levels = Levels::presence(&[(0.0, 6.5)], &[(6.0, 12.0), (8.0, 25.0)]);

pub(super) const RETURN_STANDS: Evaluator = Evaluator {
    name: "circuit-return-stands",
    graded: false,
    reads: &[ReadingPoint::CircuitReturn],
    evaluate: stands,
};

fn returns(call: &Call<'_>) -> Vec<Evaluation> {
    apart(call, &RETURNS)
}

fn stands(call: &Call<'_>) -> Vec<Evaluation> {
    apart(call, &STANDS)
}

/// How far apart the returns of the circuits are.
fn apart(call: &Call<'_>, levels: &Levels) -> Vec<Evaluation> {
    // One value a circuit; readings without a number are circuits of their own.
    let mut circuits: Vec<(Option<u32>, f64, f64, usize)> = Vec::new();
    let mut places = Vec::new();
    let mut instrument = None;
    for (place, reading) in call.readings(ReadingPoint::CircuitReturn, State::Running) {
        places.push(place);
        instrument.get_or_insert(reading.instrument_or_usual());
        let known = circuits
            .iter_mut()
            .find(|(circuit, ..)| circuit.is_some() && *circuit == reading.circuit);
        let value = reading.value().si();
        match known {
            Some((_, sum, _, count)) => {
                *sum += value;
                *count += 1;
            }
            None => circuits.push((reading.circuit, value, reading.standard_uncertainty(), 1)),
        }
    }
    let means = || {
        circuits
            .iter()
            .map(|(_, sum, _, count)| sum / *count as f64)
    };
    let (Some(instrument), true) = (instrument, circuits.len() >= 2) else {
        return Vec::new();
    };
    let warmest = means().fold(f64::NEG_INFINITY, f64::max);
    let coldest = means().fold(f64::INFINITY, f64::min);
    let own = circuits
        .iter()
        .map(|(_, _, standard, _)| *standard)
        .fold(0.0, f64::max);
    // One clamp carried from pipe to pipe: half of its error differs from pipe
    // to pipe. Judgement. The range of many readings is wide by chance alone.
    let scatter = 0.5 * own * chance_range(circuits.len());
    let range = warmest - coldest;
    let taken = Taken {
        si: range,
        standard: (0.7 * own).hypot(0.5 * scatter),
        instrument,
        readings: places,
    };
    let cleared = (range * range - scatter * scatter).max(0.0).sqrt();
    let measured = Uncertain::new(TemperatureDifference::from_si(range), taken.standard);
    let evaluation = Evaluation::of(
        levels,
        Compared::Value(cleared, taken.standard),
        &taken,
        Figure::uncertain(measured),
        Figure::exact(TemperatureDifference::from_si(1.7)),
        Reasoning::new("returns-alike", Authority::CommonPractice).with(
            "circuits",
            Figure::exact(Number::from_si(circuits.len() as f64)),
        ),
    );
    vec![evaluation.against(Beside::AtMost).of_one_instrument()]
}

/// Expected range of n normal values over their standard deviation, for n from
/// 2 to 12 and no further: the factor d₂ of control charts (ASTM MNL 7, from
/// memory).
fn chance_range(n: usize) -> f64 {
    const D2: [f64; 11] = [
        1.128, 1.693, 2.059, 2.326, 2.534, 2.704, 2.847, 2.970, 3.078, 3.173, 3.258,
    ];
    D2[n.clamp(2, 12) - 2]
}
