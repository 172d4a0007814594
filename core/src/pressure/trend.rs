//! Relaxation, dissolving air or leak, from a log of readings and top-ups over days.
//!
//! Three explanations of the log are compared by Bayes' theorem:
//! tight,     p(t) = a − b log₁₀(t/t₁) + c (T − T₁) + what top-ups put back,
//! with air,  the same less g (1 − exp(−(t − t₁)/τ)): air left at the charge goes into
//!            the fluid, and the fall ends when it is gone, and
//! leaking,   the same as tight less d (t − t₁).
//! b is the pipe's fall per decade of time, c its answer to temperature, both
//! with the spread that pipe and surround leave before the log is seen; a is
//! free within the gauge. For each leak rate d, and each g and τ of the air, of fixed
//! logarithmic grids the evidence is that of a straight model with normal noise, in closed form
//! (D. MacKay, *Information Theory, Inference, and Learning Algorithms*, ch. 28;
//! C. Bishop, *Pattern Recognition and Machine Learning*, § 3.5). A steady fall
//! per decade is the pipe, a steady fall per day a leak, a fall that ends is air. A log
//! shorter than τ cannot tell air from a leak, and the probabilities say so.

use super::PressureError;
use super::balance::LOOP_PRESSURE;
use crate::uncertainty::Uncertain;
use crate::units::{
    Bound, Duration, Fraction, GaugePressure, PressureDifference, PressureSlope, Quantity,
    Temperature, Volume, VolumeFlow, VolumeGive,
};
use nalgebra::{DMatrix, DVector};

/// Readings needed: with fewer, level, decade and day cannot be told apart.
pub const FEWEST: usize = 4;
/// Volume that a loop takes per pressure, m³/Pa. From a small tight loop to a field with tank.
const GIVE: (f64, f64) = (1e-11, 1e-3);
/// Probability of a leak before the log is seen.
pub const PRIOR_LEAK: Bound<Fraction> = Bound::si("prior probability of a leak", 1e-6, 0.999_999);

const DAY: f64 = 86_400.0;
/// Leak rates looked at, Pa per day: 0.02 psi to 30 psi a day, even in the logarithm. A
/// slower one is a year's topping up and cannot be seen in days.
const SLOWEST: f64 = 140.0;
const FASTEST: f64 = 2.1e5;
const RATES: usize = 160;
/// Pressure that dissolving air can take, Pa: 0.5 to 22 psi, even in the logarithm. At the
/// upper end that is 0.2 % of a plastic loop's volume. Judgement.
const AIR_FALL: (f64, f64) = (3.5e3, 1.5e5);
const AIR_FALLS: usize = 16;
/// Days in which it does: hours under a running pump, a week at rest. Judgement.
const AIR_DAYS: (f64, f64) = (0.3, 7.0);
const AIR_TIMES: usize = 8;
/// Part of the logs of a tight loop in which air takes a pressure that can be seen. Judgement.
const AIR_SHARE: f64 = 0.25;

/// One entry of the log.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct LogEntry {
    /// Load time: since the loop was charged.
    pub since_charge: Duration,
    /// Gauge reading, before any top-up now.
    pub pressure: Uncertain<GaugePressure>,
    /// Mean temperature of the loop.
    pub temperature: Uncertain<Temperature>,
    /// Fluid added right after the reading.
    pub added: Volume,
}

/// What is believed of the loop before the log is seen.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct TrendPrior {
    /// Fall per decade of time of a tight loop. From the modulus table about 12 % of the
    /// charge pressure.
    pub per_decade: Uncertain<PressureDifference>,
    /// Pressure change by temperature (negative for plastic pipe).
    pub per_kelvin: Uncertain<PressureSlope>,
    /// Volume the loop takes by pressure.
    pub give: Uncertain<VolumeGive>,
    /// Probability of a leak.
    pub leak: Fraction,
}

/// What the log says.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Trend {
    /// Probability that relaxation (and temperature) explain the log.
    pub relaxation: f64,
    /// Probability that dissolving air takes pressure as well, in a tight loop.
    pub air: f64,
    /// Probability that there is a leak as well.
    pub leak: f64,
    /// log₂ of how much more likely the log is with a leak than in a tight loop with or
    /// without air: bits for a leak.
    pub bits: f64,
    /// Leak rate at the pressure of the log, if there is a leak.
    pub rate: Uncertain<VolumeFlow>,
    /// Fall per decade of time, if there is none.
    pub per_decade: Uncertain<PressureDifference>,
    /// Root of the mean square of what the best explanation leaves, in units of the
    /// uncertainty of the readings: well above 1, none fits.
    pub misfit: f64,
}

/// A straight model with normal noise and a normal prior: y = X w + e.
struct Straight {
    covariance: DMatrix<f64>,
    design: DMatrix<f64>,
    prior: DVector<f64>,
    weights: DVector<f64>,
}

impl Straight {
    /// Mean of the posterior, and minus twice the logarithm of the evidence up to a constant
    /// that is the same for every leak rate.
    fn fit(&self, y: &DVector<f64>) -> (DVector<f64>, f64) {
        let residual = y - &self.design * &self.prior;
        let weighted = residual.component_mul(&self.weights);
        let pull = self.design.transpose() * &weighted;
        let shift = &self.covariance * &pull;
        let badness = residual.dot(&weighted) - pull.dot(&shift);
        (&self.prior + shift, badness)
    }
    /// Mean square of the weighted residuals at a point.
    fn misfit(&self, y: &DVector<f64>, at: &DVector<f64>) -> f64 {
        let r = y - &self.design * at;
        r.dot(&r.component_mul(&self.weights)) / y.len() as f64
    }
}

/// `count` values from one end of a range to the other, even in the logarithm.
fn even_logs((from, to): (f64, f64), count: usize) -> impl Iterator<Item = f64> {
    let step = (to / from).ln() / (count - 1) as f64;
    (0..count).map(move |k| from * (step * k as f64).exp())
}

/// Compares relaxation, dissolving air and leak on a log.
///
/// Top-ups are turned into the pressure they put back by the loop's give, whose uncertainty
/// widens the later readings.
///
/// # Errors
/// [`PressureError::TooFewReadings`] below [`FEWEST`], [`PressureError::NotInOrder`] for times
/// that do not rise from above zero, [`PressureError::OutOfRange`].
pub fn compare(log: &[LogEntry], prior: &TrendPrior) -> Result<Trend, PressureError> {
    if log.len() < FEWEST {
        return Err(PressureError::TooFewReadings {
            given: log.len(),
            needed: FEWEST,
        });
    }
    if log[0].since_charge.si() <= 0.0
        || log
            .windows(2)
            .any(|p| p[1].since_charge <= p[0].since_charge)
    {
        return Err(PressureError::NotInOrder);
    }
    for entry in log {
        LOOP_PRESSURE.check(entry.pressure.value())?;
    }
    let leak_prior = PRIOR_LEAK.check(prior.leak)?.si();
    let give = prior.give.value().si().clamp(GIVE.0, GIVE.1);

    let (first, n) = (log[0], log.len());
    let (mut y, mut weights) = (DVector::zeros(n), DVector::zeros(n));
    let mut design = DMatrix::zeros(n, 3);
    let mut days = DVector::zeros(n);
    let mut added = 0.0;
    for (i, entry) in log.iter().enumerate() {
        let put_back = added / give;
        y[i] = entry.pressure.value().si() - put_back;
        let by_give = put_back * prior.give.standard() / give;
        let by_temperature = prior.per_kelvin.value().si() * entry.temperature.standard();
        let doubt = entry
            .pressure
            .standard()
            .hypot(by_temperature)
            .hypot(by_give);
        // A gauge that is said to be perfect still has a last digit.
        weights[i] = doubt.max(100.0).powi(-2);
        design[(i, 0)] = 1.0;
        design[(i, 1)] = -(entry.since_charge.si() / first.since_charge.si()).log10();
        design[(i, 2)] = (entry.temperature.value() - first.temperature.value()).si();
        days[i] = (entry.since_charge - first.since_charge).si() / DAY;
        added += entry.added.si();
    }
    let doubts = DVector::from_vec(vec![
        1e6,
        prior.per_decade.standard().max(1.0),
        prior.per_kelvin.standard().max(1.0),
    ]);
    let mean = DVector::from_vec(vec![
        first.pressure.value().si(),
        prior.per_decade.value().si(),
        prior.per_kelvin.value().si(),
    ]);
    let scaled = DMatrix::from_fn(n, 3, |i, j| design[(i, j)] * weights[i]);
    let precision =
        DMatrix::from_diagonal(&doubts.map(|d| d.powi(-2))) + design.transpose() * scaled;
    let Some(covariance) = precision.try_inverse() else {
        return Err(PressureError::NotInOrder);
    };
    let model = Straight {
        covariance,
        design,
        prior: mean,
        weights,
    };

    let (tight, tight_badness) = model.fit(&y);
    let fits: Vec<(f64, f64)> = even_logs((SLOWEST, FASTEST), RATES)
        .map(|rate| (rate, model.fit(&(&y + &days * rate)).1))
        .collect();
    let mut airy = Vec::with_capacity(AIR_TIMES * AIR_FALLS);
    let mut nearest = (f64::INFINITY, f64::INFINITY);
    for time in even_logs(AIR_DAYS, AIR_TIMES) {
        let taken = days.map(|day| 1.0 - (-day / time).exp());
        for fall in even_logs(AIR_FALL, AIR_FALLS) {
            let lost = &y + &taken * fall;
            let (with, badness) = model.fit(&lost);
            if badness < nearest.0 {
                nearest = (badness, model.misfit(&lost, &with));
            }
            airy.push(badness);
        }
    }
    let best = fits
        .iter()
        .map(|f| f.1)
        .chain(airy.iter().copied())
        .fold(tight_badness, f64::min);
    let likelihood = |badness: f64| (-0.5 * (badness - best)).exp();
    let leaking = fits.iter().map(|f| likelihood(f.1)).sum::<f64>() / RATES as f64;
    let with_air = airy.iter().map(|b| likelihood(*b)).sum::<f64>() / airy.len() as f64;
    let without_leak = (1.0 - AIR_SHARE) * likelihood(tight_badness) + AIR_SHARE * with_air;
    let total = leak_prior * leaking + (1.0 - leak_prior) * without_leak;
    let leak = leak_prior * leaking / total;
    let air = (1.0 - leak_prior) * AIR_SHARE * with_air / total;
    let mass: f64 = fits.iter().map(|f| likelihood(f.1)).sum();
    let (rate, spread) = if mass > 0.0 {
        let mean = fits.iter().map(|f| f.0 * likelihood(f.1)).sum::<f64>() / mass;
        let square = fits
            .iter()
            .map(|f| (f.0 - mean).powi(2) * likelihood(f.1))
            .sum::<f64>()
            / mass;
        (mean, square.sqrt())
    } else {
        (SLOWEST, FASTEST)
    };
    let by_give = prior.give.standard() / give;
    let relative = (spread / rate).hypot(by_give);
    let flow = rate / DAY * give;
    let misfit = {
        let lost = &y + &days * rate;
        let (with, _) = model.fit(&lost);
        model
            .misfit(&y, &tight)
            .min(model.misfit(&lost, &with))
            .min(nearest.1)
            .sqrt()
    };
    let decade = model.covariance[(1, 1)].max(0.0).sqrt();
    Ok(Trend {
        relaxation: (1.0 - leak - air).max(0.0),
        air,
        leak,
        // Evidence can underflow on either side; a thousand bits are certainty.
        bits: (leaking.max(1e-300) / without_leak.max(1e-300)).log2(),
        rate: Uncertain::relative(VolumeFlow::from_si(flow), relative),
        per_decade: Uncertain::new(PressureDifference::from_si(tight[1]), decade),
        misfit,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const PSI: f64 = 6_894.757_293_168;
    const GALLON: f64 = 3.785_411_784e-3;
    /// 100 gal at 7·10⁻⁵ per psi.
    const LOOP_GIVE: f64 = 100.0 * GALLON * 7e-5 / PSI;

    fn prior() -> TrendPrior {
        TrendPrior {
            per_decade: Uncertain::new(PressureDifference::from_si(6.0 * PSI), 2.0 * PSI),
            per_kelvin: Uncertain::new(PressureSlope::from_si(-2.0 * PSI), 0.8 * PSI),
            give: Uncertain::relative(VolumeGive::from_si(LOOP_GIVE), 0.15),
            leak: Fraction::from_si(0.2),
        }
    }
    /// A log of a loop that relaxes by 6 psi a decade and leaks `per_day` psi, with a fixed
    /// pattern of reading errors of 0.3 psi.
    fn log(per_day: f64) -> Vec<LogEntry> {
        [0.1f64, 0.5, 1.0, 2.0, 4.0, 7.0, 10.0, 14.0]
            .iter()
            .zip([0.3, -0.2, 0.1, -0.3, 0.2, 0.0, -0.3, 0.2])
            .map(|(days, error)| {
                let p = 50.0 - 6.0 * (days / 0.1).log10() - per_day * (days - 0.1) + error;
                LogEntry {
                    since_charge: Duration::from_si(days * DAY),
                    pressure: Uncertain::new(GaugePressure::from_si(p * PSI), 0.3 * PSI),
                    temperature: Uncertain::new(Temperature::from_celsius(10.0), 0.1),
                    added: Volume::ZERO,
                }
            })
            .collect()
    }

    #[test]
    fn a_fall_per_decade_is_the_pipe_and_a_fall_per_day_a_leak() {
        let tight = compare(&log(0.0), &prior()).unwrap();
        assert!(tight.leak < 0.1, "{tight:?}");
        let leaking = compare(&log(1.5), &prior()).unwrap();
        assert!(leaking.leak > 0.99, "{leaking:?}");
        for trend in [tight, leaking] {
            assert!((trend.relaxation + trend.air + trend.leak - 1.0).abs() < 1e-12);
        }
        assert!(tight.misfit < 1.5 && leaking.misfit < 1.5);
    }

    /// 12 psi go within two days and then no more: that is neither a decade's steady fall nor a
    /// day's. On the first four readings alone, two days, air and leak look more alike.
    #[test]
    fn a_fall_that_ends_is_dissolving_air() {
        let mut readings = log(0.0);
        for entry in &mut readings {
            let days = entry.since_charge.si() / DAY - 0.1;
            let p = entry.pressure.value().si() - 12.0 * PSI * (1.0 - (-days / 1.0).exp());
            entry.pressure = Uncertain::new(GaugePressure::from_si(p), 0.3 * PSI);
        }
        let airy = compare(&readings, &prior()).unwrap();
        assert!(airy.air > 0.8 && airy.leak < 0.1, "{airy:?}");
        let early = compare(&readings[..4], &prior()).unwrap();
        assert!(early.air < airy.air && early.leak > airy.leak, "{early:?}");
        let leaking = compare(&log(1.5), &prior()).unwrap();
        assert!(leaking.air < 0.01, "{leaking:?}");
        assert!(compare(&log(0.0), &prior()).unwrap().air < 0.25);
    }

    /// By hand: 1.5 psi a day over a give of 0.007 gal/psi is 0.0105 gal a day.
    #[test]
    fn the_rate_is_found_with_its_uncertainty() {
        let rate = compare(&log(1.5), &prior()).unwrap().rate;
        let day = rate.value().si() * DAY / GALLON;
        assert!(
            (day - 0.010_5).abs() < 2.0 * rate.standard() * DAY / GALLON,
            "{day}"
        );
        assert!(rate.standard() / rate.value().si() < 0.4);
    }

    #[test]
    fn top_ups_stand_for_the_pressure_they_put_back() {
        let mut readings = log(1.5);
        // Topped up by 10 psi after the fifth reading: the later readings stand 10 psi higher.
        readings[4].added = Volume::from_si(10.0 * PSI * LOOP_GIVE);
        for entry in &mut readings[5..] {
            let p = entry.pressure.value().si() + 10.0 * PSI;
            entry.pressure = Uncertain::new(GaugePressure::from_si(p), 0.3 * PSI);
        }
        let trend = compare(&readings, &prior()).unwrap();
        assert!(trend.leak > 0.9, "{trend:?}");
    }

    #[test]
    fn a_warming_loop_is_not_a_leaking_one() {
        let mut readings = log(0.0);
        for (i, entry) in readings.iter_mut().enumerate() {
            let warmer = 0.5 * i as f64;
            let p = entry.pressure.value().si() - 2.0 * PSI * warmer;
            entry.pressure = Uncertain::new(GaugePressure::from_si(p), 0.3 * PSI);
            entry.temperature = Uncertain::new(Temperature::from_celsius(10.0 + warmer), 0.1);
        }
        assert!(compare(&readings, &prior()).unwrap().leak < 0.3);
    }

    #[test]
    fn more_leak_never_looks_less_like_one() {
        let mut last = 0.0;
        for step in 0..10 {
            let now = compare(&log(0.2 * f64::from(step)), &prior()).unwrap().bits;
            assert!(now >= last || step == 0, "{step}");
            last = now;
        }
    }

    #[test]
    fn three_readings_are_not_enough() {
        assert!(compare(&log(0.0)[..3], &prior()).is_err());
        let mut back = log(0.0);
        back.swap(1, 2);
        assert_eq!(compare(&back, &prior()), Err(PressureError::NotInOrder));
    }
}
