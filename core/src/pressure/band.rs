//! What the gauge should read, as a band, and what a reading outside it means.

use super::PressureError;
use super::belief::{Belief, MODEL_DOUBT, Moment, Reading, Unknown};
use super::sampling::{Sorted, points, weighted_moments};
use super::unknowns::SHARED;
use crate::uncertainty::Uncertain;
use crate::units::{GaugePressure, Quantity, Volume};

/// Share of the distribution that a band covers.
pub const COVERAGE: f64 = 0.90;

/// The pressure to expect. Never a single number.
#[derive(Clone, PartialEq, Debug)]
pub struct Band {
    /// Below it with 5 %.
    pub low: GaugePressure,
    /// As often below as above.
    pub median: GaugePressure,
    /// Above it with 5 %.
    pub high: GaugePressure,
    /// Standard deviation, Pa.
    pub standard: f64,
    /// Part of the variance that would go if one unknown were known, in falling order, to
    /// first order.
    pub causes: Vec<(Unknown, f64)>,
}

impl Band {
    /// The unknown that makes the band wide.
    pub fn widest(&self) -> Option<Unknown> {
        self.causes.first().map(|(unknown, _)| *unknown)
    }
    /// High less low, Pa.
    pub fn width(&self) -> f64 {
        self.high.si() - self.low.si()
    }
}

/// Where a reading lies.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Place {
    /// Lower than the band, the gauge's accuracy allowed for.
    Below,
    /// In it.
    Inside,
    /// Higher than the band.
    Above,
}

/// What a reading means.
#[derive(Clone, PartialEq, Debug)]
pub struct Assessment {
    /// Pressure to expect.
    pub band: Band,
    /// Where the reading lies.
    pub place: Place,
    /// Probability that the loop holds less than it was charged with.
    pub probability_missing: f64,
    /// Fluid missing; negative if there is too much.
    pub missing: Uncertain<Volume>,
}

impl Belief {
    /// Pressures at the fixed points of the distribution, Pa, with the fluid missing for a
    /// reading if one is given.
    fn samples(
        &self,
        moment: &Moment,
        reading: Option<Uncertain<GaugePressure>>,
    ) -> Result<(Vec<f64>, Vec<f64>), PressureError> {
        let root = self.now.root();
        let (mut pressures, mut missing) = (Vec::new(), Vec::new());
        for point in points() {
            let z = self.now.carry(&root, point);
            let balance = self.at(&z, moment, point[SHARED])?;
            let doubt = MODEL_DOUBT * point[SHARED + 1];
            let expected = balance.pressure();
            pressures.push(expected.si() + doubt);
            if let Some(reading) = reading {
                // The gauge's error is independent of all else: its points are those of the
                // model's doubt in reverse order, scaled so that both add in squares.
                let both = MODEL_DOUBT.hypot(reading.standard());
                let shown = reading.value().si() - both * point[SHARED + 1];
                missing.push(balance.missing(GaugePressure::from_si(shown)).si());
            }
        }
        Ok((pressures, missing))
    }

    /// The band at a moment.
    ///
    /// # Errors
    /// As [`balance`](super::balance::balance).
    pub fn band(&self, moment: &Moment) -> Result<Band, PressureError> {
        let (pressures, _) = self.samples(moment, None)?;
        self.band_of(&pressures, moment)
    }

    /// The band of pressures at the fixed points.
    pub(super) fn band_of(
        &self,
        pressures: &[f64],
        moment: &Moment,
    ) -> Result<Band, PressureError> {
        let (_, standard) = weighted_moments(pressures, &self.weights);
        let sorted = Sorted::new(pressures, &self.weights);
        let at = |share| GaugePressure::from_si(sorted.quantile(share));
        Ok(Band {
            low: at(0.5 * (1.0 - COVERAGE)),
            median: at(0.5),
            high: at(0.5 * (1.0 + COVERAGE)),
            standard,
            causes: self.causes(moment)?,
        })
    }

    /// To first order: for an unknown of variance s² that moves with the pressure by c, a
    /// part c²/s² of the pressure's variance goes when it becomes known.
    fn causes(&self, moment: &Moment) -> Result<Vec<(Unknown, f64)>, PressureError> {
        let (slopes, by_temperature) = self.gradient(self.now.mean.as_slice(), moment)?;
        let common = &self.now.covariance * &slopes;
        let variance = slopes.dot(&common) + by_temperature.powi(2) + MODEL_DOUBT.powi(2);
        let shared =
            (0..SHARED).map(|i| common[i].powi(2) / self.now.covariance[(i, i)].max(1e-12));
        let parts = shared.chain([by_temperature.powi(2), MODEL_DOUBT.powi(2)]);
        let mut causes: Vec<(Unknown, f64)> = Unknown::ALL
            .into_iter()
            .zip(parts.map(|part| part / variance))
            .collect();
        causes.sort_by(|a, b| b.1.total_cmp(&a.1));
        Ok(causes)
    }

    /// Whether a reading lies inside the band, and the fluid missing if not.
    ///
    /// # Errors
    /// As [`balance`](super::balance::balance).
    pub fn assess(&self, reading: &Reading) -> Result<Assessment, PressureError> {
        let band = self.band(&reading.moment)?;
        let (_, missing) = self.samples(&reading.moment, Some(reading.pressure))?;
        let (mean, standard) = weighted_moments(&missing, &self.weights);
        let weighted = missing.iter().zip(&self.weights);
        let short: f64 = weighted.filter(|(v, _)| **v > 0.0).map(|(_, w)| w).sum();
        let shown = reading.pressure.value().si();
        let slack = reading.pressure.standard();
        let place = if shown + slack < band.low.si() {
            Place::Below
        } else if shown - slack > band.high.si() {
            Place::Above
        } else {
            Place::Inside
        };
        Ok(Assessment {
            band,
            place,
            probability_missing: short,
            missing: Uncertain::new(Volume::from_si(mean), standard),
        })
    }
}
