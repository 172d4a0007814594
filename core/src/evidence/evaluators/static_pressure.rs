//! Static pressure against what is to be left in the warmest season.
//!
//! The gauge of a sealed loop moves with its temperature, so that today's
//! reading is low or not only with a view to the warmest time of the year. What
//! this very loop loses until then, by warmth and by relaxing, comes from the balance of
//! pipe and fluid, with what is unknown of pipe, surround and year as its spread.

use super::Evaluator;
use super::pressure::{computable, sealed_loop, unknowns};
use crate::evidence::call::{Call, State};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::model::stood_under;
use crate::pressure::belief::{Belief, Charge, Moment};
use crate::pressure::year::{YEAR_DAYS, Year};
use crate::records::{FlowCentre, ReadingPoint};
use crate::uncertainty::{Uncertain, normal_cumulative};
use crate::units::{Duration, GaugePressure, Quantity, Temperature, Unit};
use chrono::Datelike;

/// Pressure at rest, psi. Low: below the 15 psi that a utility's guide to
/// testing ground loops asks for. High: above what is left at start-up (50 to
/// 70 psi, common practice, no source). The overlaps are judgement.
const SEALED: Levels = Levels::graded(&[(-14.7, 17.0)], &[(12.0, 75.0)], &[(68.0, 160.0)]);
/// The same with an expansion tank: 1 to 2.5 bar with a relief valve of 3 bar,
/// common practice, no source.
const WITH_TANK: Levels = Levels::graded(&[(-14.7, 12.0)], &[(8.0, 46.0)], &[(40.0, 120.0)]);
/// Where the kind of flow centre is not known.
const EITHER: Levels = Levels::graded(&[(-14.7, 15.0)], &[(9.0, 70.0)], &[(55.0, 160.0)]);

pub(super) const STATIC_PRESSURE: Evaluator = Evaluator {
    name: "static-pressure",
    graded: true,
    reads: &[ReadingPoint::StaticPressure],
    evaluate: static_pressure,
};

fn static_pressure(call: &Call<'_>) -> Vec<Evaluation> {
    let (levels, least, most) = match call.model.flow_centre {
        // A vented reservoir has no static pressure to speak of: its level is the gauge.
        Some(FlowCentre::NonPressurised { .. }) => return Vec::new(),
        Some(FlowCentre::Sealed {}) => (&SEALED, 15.0, 71.0),
        Some(FlowCentre::SealedWithTank { .. }) => (&WITH_TANK, 10.0, 43.0),
        None => (&EITHER, 14.0, 68.0),
    };
    let psi_of = |pa: f64| Unit::Psi.from_si(pa);
    let middle = 0.5 * (least + most);
    let (rating, rated) = call.model.pressure_limit(call.file);
    call.by_instrument(ReadingPoint::StaticPressure, State::AtRest)
        .iter()
        .map(|taken| {
            let loss = seasonal_loss(call, GaugePressure::from_si(taken.si));
            let (lift, spread) = loss
                .as_ref()
                .map_or((0.0, 0.0), |loss| (loss.pa, loss.spread));
            let today = |psi| {
                let edge = GaugePressure::from_si(Unit::Psi.to_si(psi) + lift);
                Figure::uncertain(Uncertain::new(edge, spread))
            };
            let mut reasoning = Reasoning::new("working-band", Authority::CommonPractice).with(
                "least-pressure",
                Figure::exact(GaugePressure::from_si(Unit::Psi.to_si(least))),
            );
            if let Some(loss) = &loss {
                reasoning = reasoning
                    .with("loop-temperature", Figure::uncertain(loss.now))
                    .with("warmest-temperature", Figure::uncertain(loss.warmest));
            }
            let own = psi_of(taken.si - lift);
            // Above the weakest part's rating is high, wherever the band lies.
            let over = if rated {
                psi_of(taken.si - rating.si()) + most
            } else {
                f64::NEG_INFINITY
            };
            // Told is the edge that the gauge is nearer to.
            let (limit, beside) = if over > own.max(middle) {
                (Figure::exact(rating), Beside::AtMost)
            } else if own > middle {
                (today(most), Beside::AtMost)
            } else {
                (today(least), Beside::AtLeast)
            };
            let figure = Figure::uncertain(taken.uncertain::<GaugePressure>());
            let x = Compared::Value(own.max(over), psi_of(taken.standard.hypot(spread)));
            let evaluation =
                Evaluation::of(levels, x, taken, figure, limit, reasoning).against(beside);
            evaluation.using(loss.as_ref().map_or(&[], |loss| &loss.readings))
        })
        .collect()
}

/// The most that a gauge is taken to lose, Pa: 20 psi. A well charged loop read in winter
/// is left with enough by the trade's experience, which the balance of pipe and fluid alone
/// does not say of a pipe that nothing holds. Judgement.
const MOST_LOSS: f64 = 1.4e5;

/// What a gauge loses until the warmest time of the year.
struct SeasonalLoss {
    /// The loss, and its standard uncertainty, Pa.
    pa: f64,
    spread: f64,
    /// The loop now, and at its warmest.
    now: Uncertain<Temperature>,
    warmest: Uncertain<Temperature>,
    /// The readings that told the loop's temperature.
    readings: Vec<usize>,
}

/// By how much a gauge that shows this today is to fall until the warmest time of the
/// year, relaxation of a year included; none where pipe, fluid or today's temperature are not
/// known. A loop in which the fluid outgrows the pipe loses nothing: it is weakest today.
fn seasonal_loss(call: &Call<'_>, read: GaugePressure) -> Option<SeasonalLoss> {
    let (now, readings) = call.loop_temperature();
    if readings.is_empty() || call.model.piping.circuits.is_empty() {
        return None;
    }
    call.model.fluid.kind?;
    let charge = Charge {
        // The gauge's own error is in the reading already, the thermometer's in the year.
        pressure: Uncertain::exact(read),
        temperature: computable(call.model, Uncertain::exact(now.value())),
        held: stood_under(call.file, read).held,
        air: None,
        earlier: None,
    };
    let belief = Belief::prior(sealed_loop(call)?, unknowns(call), charge).ok()?;
    let day = f64::from(call.day.ordinal());
    let (mut losses, mut warmest) = (Vec::new(), Vec::new());
    for year in Year::all_told_by(day, now) {
        // Of the next year: a loop that was charged yesterday relaxes at its warmest, too,
        // and tomorrow is to be judged as today.
        let turn = year.next_warmest(day) + YEAR_DAYS;
        let temperature = year.at(turn);
        let moment = Moment {
            elapsed: Duration::from_si(Unit::Day.to_si(turn - day)),
            temperature: computable(call.model, temperature),
        };
        let band = belief.band(&moment).ok()?;
        losses.push(held_in((read - band.median).si(), band.standard));
        warmest.push((temperature.value().si(), temperature.standard()));
    }
    let (pa, spread) = one_of(&losses);
    let (kelvin, standard) = one_of(&warmest);
    Some(SeasonalLoss {
        pa,
        spread,
        now,
        warmest: Uncertain::new(Temperature::from_si(kelvin), standard),
        readings,
    })
}

/// Mean and standard deviation of a normal loss of which nothing lies below zero or above
/// [`MOST_LOSS`]: what does is put there.
fn held_in(mean: f64, standard: f64) -> (f64, f64) {
    let s = standard.max(1.0);
    let density = |z: f64| (-0.5 * z * z).exp() / std::f64::consts::TAU.sqrt();
    let (low, high) = (-mean / s, (MOST_LOSS - mean) / s);
    let above = 1.0 - normal_cumulative(high);
    let inside = normal_cumulative(high) - normal_cumulative(low);
    let first = density(low) - density(high);
    let second = low * density(low) - high * density(high);
    let middle = mean * inside + s * first + MOST_LOSS * above;
    let square = (mean * mean + s * s) * inside
        + 2.0 * mean * s * first
        + s * s * second
        + MOST_LOSS * MOST_LOSS * above;
    (middle, (square - middle * middle).max(0.0).sqrt())
}

/// Mean and standard deviation where each of these is as probable.
fn one_of(all: &[(f64, f64)]) -> (f64, f64) {
    let n = all.len() as f64;
    let mean = all.iter().map(|(mean, _)| mean).sum::<f64>() / n;
    let square = |&(m, s): &(f64, f64)| s * s + (m - mean).powi(2);
    (mean, (all.iter().map(square).sum::<f64>() / n).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against a sum over the normal distribution.
    #[test]
    fn a_loss_is_held_between_nothing_and_the_most() {
        for (mean, s) in [(-7e4, 5e4), (0.0, 3e4), (6e4, 2e4), (1.5e5, 8e4)] {
            let (mut sum, mut squares, mut weight) = (0.0, 0.0, 0.0);
            for step in -4_000..=4_000 {
                let z = f64::from(step) / 500.0;
                let p = (-0.5 * z * z).exp();
                let loss = (mean + s * z).clamp(0.0, MOST_LOSS);
                (sum, squares) = (sum + p * loss, squares + p * loss * loss);
                weight += p;
            }
            let (middle, spread) = held_in(mean, s);
            let summed = sum / weight;
            let deviation = (squares / weight - summed * summed).sqrt();
            assert!((middle - summed).abs() < 20.0, "{middle} {summed}");
            assert!((spread - deviation).abs() < 20.0, "{spread} {deviation}");
        }
    }

    #[test]
    fn one_of_two_by_hand() {
        // 2 ± 1 or 6 ± 3: mean 4, variance (1 + 4 + 9 + 4)/2 = 9.
        assert_eq!(one_of(&[(2.0, 1.0), (6.0, 3.0)]), (4.0, 3.0));
    }
}
