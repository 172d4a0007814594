//! The mean temperature of a loop through the year, and what a reading on one
//! day teaches of the others.
//!
//! T(d) = (1 − w) C + w W with the warmth w(d) = ½ − ½ cos 2π(d − d₀)/365.25:
//! C is the mean temperature at the coldest time of the year, W at the warmest,
//! d₀ the coldest day. Before any reading C and W are normal and independent. A
//! reading on day d is a linear observation of both, so what follows is exact
//! (conditioning of a normal distribution).

use crate::uncertainty::Uncertain;
use crate::units::{Quantity, Temperature};
use std::f64::consts::TAU;

/// Days of a year.
pub const YEAR_DAYS: f64 = 365.25;
/// Day of the year on which a loop on the northern hemisphere is coldest: mid
/// February, some weeks after the air, since it follows what was drawn from the
/// ground. Judgement.
pub const COLDEST_NORTH: f64 = 46.0;
/// The same on the southern hemisphere.
pub const COLDEST_SOUTH: f64 = COLDEST_NORTH + 0.5 * YEAR_DAYS;
/// Mean loop temperatures of the seasons, °C, with their standard uncertainty:
/// the middle of the usual entering water, common practice, no source.
pub const SEASONS: [(f64, f64); 2] = [(4.0, 4.0), (23.0, 7.0)];
/// A temperature that lies this many standard uncertainties off the year of one half of
/// the Earth, and twice as near to that of the other, tells on which the site lies. Judgement.
const OTHER_HALF: f64 = 2.5;
/// How far a loop strays from its year on a given day, K. Judgement.
const STRAYS: f64 = 2.0;

/// What is believed of a loop's temperature over a year.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Year {
    /// The coldest day of the year.
    coldest: f64,
    /// Means of C and W, K.
    mean: [f64; 2],
    /// Variances of C and W, and their covariance, K².
    variance: [f64; 2],
    covariance: f64,
}

impl Year {
    /// Before any reading.
    pub fn prior(coldest: f64, cold: Uncertain<Temperature>, warm: Uncertain<Temperature>) -> Self {
        Self {
            coldest,
            mean: [cold.value().si(), warm.value().si()],
            variance: [cold.standard().powi(2), warm.standard().powi(2)],
            covariance: 0.0,
        }
    }

    /// The usual year of a loop whose coldest day is this.
    pub fn usual(coldest: f64) -> Self {
        let [cold, warm] = SEASONS
            .map(|(celsius, spread)| Uncertain::new(Temperature::from_celsius(celsius), spread));
        Self::prior(coldest, cold, warm)
    }

    /// The usual year, narrowed by what was read on a day. It is taken for one of the
    /// northern half of the Earth unless the reading is far off that and near to the southern.
    pub fn told_by(day: f64, read: Option<Uncertain<Temperature>>) -> Self {
        let Some(read) = read else {
            return Self::usual(COLDEST_NORTH);
        };
        let [north, south] = Self::halves(day, read);
        let (year, _) = if north.1 > OTHER_HALF && south.1 < 0.5 * north.1 {
            south
        } else {
            north
        };
        year.after(day, read)
    }

    /// As [`Year::told_by`], and both halves of the Earth where a reading is nearer to the
    /// southern and does not rule the northern out.
    pub fn all_told_by(day: f64, read: Uncertain<Temperature>) -> Vec<Self> {
        let told = Self::told_by(day, Some(read));
        let [north, south] = Self::halves(day, read);
        let in_doubt = (1.0..=OTHER_HALF).contains(&north.1) && south.1 < 0.5 * north.1;
        let other = in_doubt.then(|| south.0.after(day, read));
        std::iter::once(told).chain(other).collect()
    }

    /// The usual year of the northern and of the southern half of the Earth, each with how
    /// many standard uncertainties a reading lies off it.
    fn halves(day: f64, read: Uncertain<Temperature>) -> [(Self, f64); 2] {
        [COLDEST_NORTH, COLDEST_SOUTH].map(|coldest| {
            let year = Self::usual(coldest);
            (year, year.surprise(day, read).abs())
        })
    }

    /// Warmth of a day: 0 on the coldest, 1 on the warmest.
    fn warmth(&self, day: f64) -> f64 {
        0.5 - 0.5 * (TAU * (day - self.coldest) / YEAR_DAYS).cos()
    }

    /// Mean and variance on a day, without the straying.
    fn smooth(&self, day: f64) -> (f64, f64) {
        let warm = self.warmth(day);
        let cold = 1.0 - warm;
        let mean = cold * self.mean[0] + warm * self.mean[1];
        let variance = cold * cold * self.variance[0]
            + warm * warm * self.variance[1]
            + 2.0 * cold * warm * self.covariance;
        (mean, variance)
    }

    /// Temperature on a day of the year; days beyond it go on into the next.
    pub fn at(&self, day: f64) -> Uncertain<Temperature> {
        let (mean, variance) = self.smooth(day);
        let standard = (variance + STRAYS * STRAYS).sqrt();
        Uncertain::new(Temperature::from_si(mean), standard)
    }

    /// How many standard uncertainties a reading lies off what was to be expected.
    pub fn surprise(&self, day: f64, read: Uncertain<Temperature>) -> f64 {
        let expected = self.at(day);
        let spread = expected.standard().hypot(read.standard());
        (read.value().si() - expected.value().si()) / spread
    }

    /// After a reading on a day.
    #[must_use]
    pub fn after(&self, day: f64, read: Uncertain<Temperature>) -> Self {
        let warm = self.warmth(day);
        let cold = 1.0 - warm;
        let (mean, variance) = self.smooth(day);
        let total = variance + STRAYS * STRAYS + read.standard().powi(2);
        if !total.is_finite() {
            return *self;
        }
        let with_cold = cold * self.variance[0] + warm * self.covariance;
        let with_warm = cold * self.covariance + warm * self.variance[1];
        let off = read.value().si() - mean;
        Self {
            coldest: self.coldest,
            mean: [
                self.mean[0] + with_cold / total * off,
                self.mean[1] + with_warm / total * off,
            ],
            variance: [
                self.variance[0] - with_cold * with_cold / total,
                self.variance[1] - with_warm * with_warm / total,
            ],
            covariance: self.covariance - with_cold * with_warm / total,
        }
    }

    /// The first day after `day` that is the coldest of its year.
    pub fn next_coldest(&self, day: f64) -> f64 {
        day + (self.coldest - day).rem_euclid(YEAR_DAYS)
    }

    /// The first day after `day` that is the warmest of its year.
    pub fn next_warmest(&self, day: f64) -> f64 {
        day + (self.coldest + 0.5 * YEAR_DAYS - day).rem_euclid(YEAR_DAYS)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(value: f64, standard: f64) -> Uncertain<Temperature> {
        Uncertain::new(Temperature::from_celsius(value), standard)
    }

    fn year() -> Year {
        Year::prior(COLDEST_NORTH, celsius(4.0, 4.0), celsius(23.0, 7.0))
    }

    #[test]
    fn a_cold_loop_in_july_may_lie_on_the_southern_half() {
        let middle_of_july = 196.0;
        let coldest = |read: f64| -> Vec<f64> {
            let years = Year::all_told_by(middle_of_july, celsius(read, 1.5));
            years.iter().map(|year| year.coldest).collect()
        };
        // By the usual means of 4 and 23 degC: warm, in between, cold as no northern loop is.
        assert_eq!(coldest(20.0), [COLDEST_NORTH]);
        assert_eq!(coldest(7.0), [COLDEST_NORTH, COLDEST_SOUTH]);
        assert_eq!(coldest(2.0), [COLDEST_SOUTH]);
    }

    /// Two independent values of variance a and s² have the mean weighted by the
    /// inverse variances and the variance 1/(1/a + 1/s²): on the warmest day only W
    /// counts. Prior 23 ± 7; reading 26 ± 1 with 2 K of straying, s² = 5: weight
    /// 49/(49 + 5) = 0.907 41, mean 23 + 0.907 41·3 = 25.722, variance
    /// 49·5/54 = 4.537.
    #[test]
    fn a_reading_on_the_warmest_day_is_the_weighted_mean() {
        let day = COLDEST_NORTH + 0.5 * YEAR_DAYS;
        let known = year().after(day, celsius(26.0, 1.0));
        let warmest = known.at(day);
        assert!((warmest.value().celsius() - 25.722).abs() < 1e-3);
        let smooth = warmest.standard().powi(2) - STRAYS * STRAYS;
        assert!((smooth - 4.537).abs() < 1e-3, "{smooth}");
        // It says nothing of the winter.
        let coldest = known.at(COLDEST_NORTH);
        assert!((coldest.value().celsius() - 4.0).abs() < 1e-9);
        assert!((coldest.standard().powi(2) - 16.0 - 4.0).abs() < 1e-9);
    }

    /// Bayes' theorem worked out on a grid of C and W, which knows nothing of the
    /// closed form.
    #[test]
    fn a_reading_in_autumn_teaches_what_a_grid_says() {
        let day = COLDEST_NORTH + 0.7 * YEAR_DAYS;
        let warm = 0.5 - 0.5 * (TAU * 0.7).cos();
        let (mut sum, mut means, mut squares) = (0.0, [0.0; 2], [0.0; 2]);
        for i in 0..400 {
            for j in 0..400 {
                let c = 4.0 + 4.0 * (f64::from(i) - 199.5) / 33.0;
                let w = 23.0 + 7.0 * (f64::from(j) - 199.5) / 33.0;
                let here = (1.0 - warm) * c + warm * w;
                let off = [(c - 4.0) / 4.0, (w - 23.0) / 7.0];
                let misfit = (12.0 - here).powi(2) / (1.5_f64.powi(2) + 4.0);
                let weight = (-0.5 * (off[0].powi(2) + off[1].powi(2) + misfit)).exp();
                sum += weight;
                for (k, value) in [c, w].into_iter().enumerate() {
                    means[k] += weight * value;
                    squares[k] += weight * value * value;
                }
            }
        }
        let known = year().after(day, celsius(12.0, 1.5));
        for (k, at) in [COLDEST_NORTH, COLDEST_NORTH + 0.5 * YEAR_DAYS]
            .iter()
            .enumerate()
        {
            let mean = means[k] / sum;
            let variance = squares[k] / sum - mean * mean;
            let ours = known.at(*at);
            assert!((ours.value().celsius() - mean).abs() < 0.01, "{k}: {mean}");
            let smooth = ours.standard().powi(2) - STRAYS * STRAYS;
            assert!((smooth - variance).abs() < 0.03, "{k}: {smooth} {variance}");
        }
    }

    #[test]
    fn the_seasons_follow_each_other() {
        let year = year();
        for day in [1.0, 46.0, 200.0, 365.0] {
            let (cold, warm) = (year.next_coldest(day), year.next_warmest(day));
            assert!((day..day + YEAR_DAYS).contains(&cold));
            assert!((day..day + YEAR_DAYS).contains(&warm));
            assert!(((warm - cold).abs() - 0.5 * YEAR_DAYS).abs() < 1e-9);
            assert!(year.at(warm).value() > year.at(cold).value());
        }
    }
}
