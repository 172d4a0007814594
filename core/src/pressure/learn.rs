//! What earlier readings of a loop teach: Bayes' theorem by the mode of the posterior
//! (Gauss-Newton with damping) and the curvature there (Laplace's approximation); the
//! fixed points of the band are then weighted by how far the true posterior departs from
//! that.

use super::PressureError;
use super::belief::{Belief, MODEL_DOUBT, Reading};
use super::sampling::{POINTS, points};
use super::unknowns::SHARED;
use crate::units::Quantity;
use nalgebra::{DMatrix, DVector};

/// A normal distribution of the coordinates.
#[derive(Clone, Debug)]
pub(super) struct Normal {
    pub mean: DVector<f64>,
    pub covariance: DMatrix<f64>,
}

impl Normal {
    /// The fixed point of a set carried into this distribution.
    pub fn carry(&self, root: &DMatrix<f64>, point: &[f64]) -> Vec<f64> {
        (0..SHARED)
            .map(|i| self.mean[i] + (0..=i).map(|j| root[(i, j)] * point[j]).sum::<f64>())
            .collect()
    }
    /// Lower triangular square root of the covariance.
    pub fn root(&self) -> DMatrix<f64> {
        self.covariance.clone().cholesky().map_or_else(
            || DMatrix::from_diagonal(&self.covariance.diagonal().map(|c| c.max(0.0).sqrt())),
            |c| c.l(),
        )
    }
}

/// The same weight for every fixed point.
pub(super) fn even() -> Vec<f64> {
    vec![1.0 / POINTS as f64; POINTS]
}

/// Weights whose effective number falls below this share of the points are not used.
const LEAST_EFFECTIVE: f64 = 0.1;

impl Belief {
    /// The belief after further readings of the same loop since the same charge. A reading
    /// counts with the gauge's accuracy, the uncertainty of the temperature and
    /// [`MODEL_DOUBT`]. The order of readings does not matter.
    ///
    /// # Errors
    /// As [`balance`].
    pub fn after(&self, readings: &[Reading]) -> Result<Self, PressureError> {
        let mut next = self.clone();
        next.taken.extend_from_slice(readings);
        let Some(prior) = self.root.covariance.clone().try_inverse() else {
            return Ok(next);
        };
        let mut z = self.now.mean.clone();
        let mut damping = 0.0;
        let mut cost = next.cost(&z, &prior)?;
        for _ in 0..30 {
            let (gradient, information) = next.normal_equations(&z, &prior)?;
            let Some(inverse) = (information * (1.0 + damping)).try_inverse() else {
                break;
            };
            let step = inverse * gradient;
            let moved = &z + &step;
            let moved_cost = next.cost(&moved, &prior)?;
            if moved_cost <= cost {
                z = moved;
                cost = moved_cost;
                damping *= 0.3;
                if step.norm() < 1e-6 {
                    break;
                }
            } else {
                damping = (damping * 4.0_f64).max(0.5);
                if damping > 1e6 {
                    break;
                }
            }
        }
        let (_, information) = next.normal_equations(&z, &prior)?;
        next.now = Normal {
            mean: z,
            covariance: information
                .try_inverse()
                .unwrap_or_else(|| self.root.covariance.clone()),
        };
        next.weights = next.importance(&prior)?;
        Ok(next)
    }

    /// Gradient and curvature of minus the cost at a point.
    fn normal_equations(
        &self,
        z: &DVector<f64>,
        prior: &DMatrix<f64>,
    ) -> Result<(DVector<f64>, DMatrix<f64>), PressureError> {
        let mut gradient = prior * (&self.root.mean - z);
        let mut information = prior.clone();
        for reading in &self.taken {
            let (slopes, by_temperature) = self.gradient(z.as_slice(), &reading.moment)?;
            let expected = self.at(z.as_slice(), &reading.moment, 0.0)?.pressure();
            let weight = 1.0 / variance(reading, by_temperature);
            let residual = reading.pressure.value().difference(expected).si();
            gradient += &slopes * (residual * weight);
            information += &slopes * slopes.transpose() * weight;
        }
        Ok((gradient, information))
    }

    /// Half the squared distance from prior and readings.
    fn cost(&self, z: &DVector<f64>, prior: &DMatrix<f64>) -> Result<f64, PressureError> {
        let away = z - &self.root.mean;
        let mut sum = away.dot(&(prior * &away));
        for reading in &self.taken {
            let expected = self.at(z.as_slice(), &reading.moment, 0.0)?.pressure();
            let residual = reading.pressure.value().difference(expected).si();
            let up = self.at(z.as_slice(), &reading.moment, 0.5)?.pressure();
            let down = self.at(z.as_slice(), &reading.moment, -0.5)?.pressure();
            sum += residual * residual / variance(reading, up.difference(down).si());
        }
        Ok(0.5 * sum)
    }

    /// Weight of every fixed point: true posterior over its normal approximation.
    fn importance(&self, prior: &DMatrix<f64>) -> Result<Vec<f64>, PressureError> {
        let root = self.now.root();
        let mut logs = Vec::with_capacity(POINTS);
        for point in points() {
            let z = DVector::from_vec(self.now.carry(&root, point));
            let square: f64 = point[..SHARED].iter().map(|x| x * x).sum();
            logs.push(0.5 * square - self.cost(&z, prior)?);
        }
        let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let raw: Vec<f64> = logs.iter().map(|log| (log - most).exp()).collect();
        let sum: f64 = raw.iter().sum();
        let weights: Vec<f64> = raw.iter().map(|w| w / sum).collect();
        let effective = 1.0 / weights.iter().map(|w| w * w).sum::<f64>();
        Ok(if effective > LEAST_EFFECTIVE * POINTS as f64 {
            weights
        } else {
            even()
        })
    }
}

fn variance(reading: &Reading, by_temperature: f64) -> f64 {
    reading.pressure.standard().powi(2) + by_temperature.powi(2) + MODEL_DOUBT.powi(2)
}
