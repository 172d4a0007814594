//! What is believed of a loop's unknowns, and what earlier readings teach.
//!
//! Every unknown is a function of its own standard normal coordinate, so that
//! a belief is a normal distribution in seven coordinates: a modulus stays
//! positive and a restraint stays between 0 and 1. Readings are taken in by
//! the mode of the posterior (Gauss-Newton with damping) and the curvature
//! there (Laplace's approximation); the fixed points of [`super::band`] are then
//! weighted by how far the true posterior departs from that.

use super::PressureError;
use super::balance::{
    Balance, ChargeState, Earlier, LOOP_PRESSURE, PIPE_EXPANSION, Properties, RESTRAINT,
    SealedLoop, TrappedAir, balance,
};
use super::modulus::PIPE_TEMPERATURE;
use super::sampling::{POINTS, points};
use crate::uncertainty::Uncertain;
use crate::units::{
    Duration, Fraction, GaugePressure, Quantity, Temperature, ThermalExpansion, Volume,
};
use nalgebra::{DMatrix, DVector};

/// A property or a circumstance of the loop that no one knows exactly.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Unknown {
    /// Modulus of the pipe against the table.
    Modulus,
    /// Linear expansion of the pipe.
    PipeExpansion,
    /// Hold that soil or grout has on the pipe.
    Restraint,
    /// Thermal growth of the fluid, that is its strength.
    FluidExpansion,
    /// Pressure at the charge.
    ChargePressure,
    /// Mean temperature at the charge.
    ChargeTemperature,
    /// Air left at the charge.
    TrappedAir,
    /// Mean temperature at the moment looked at.
    Temperature,
    /// The model itself.
    Model,
}

/// Number of coordinates that a belief has.
pub(super) const SHARED: usize = 7;

impl Unknown {
    /// The unknowns a belief is about, in the order of its coordinates, then the two that
    /// are new at every moment.
    pub const ALL: [Self; SHARED + 2] = [
        Self::Modulus,
        Self::PipeExpansion,
        Self::Restraint,
        Self::FluidExpansion,
        Self::ChargePressure,
        Self::ChargeTemperature,
        Self::TrappedAir,
        Self::Temperature,
        Self::Model,
    ];
}

/// What surrounds the pipe.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Surround {
    /// Water of a pond or lake: nothing holds.
    Pond,
    /// Soil of a trench.
    Trench,
    /// Grout of a borehole.
    Grout,
}

/// How well the pipe's and the fluid's properties are known before any reading.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Unknowns {
    /// Relative standard uncertainty of the modulus against the table.
    pub modulus: Fraction,
    /// Linear expansion of the pipe.
    pub expansion: Uncertain<ThermalExpansion>,
    /// Restraint by the surround; a value without uncertainty is taken as known.
    pub restraint: Uncertain<Fraction>,
    /// Relative standard uncertainty of the fluid's thermal growth.
    pub fluid: Fraction,
}

impl Unknowns {
    /// Before anything is known of this loop. Expansion 1.4 to 1.6·10⁻⁴ /K: PPI handbook,
    /// from memory, widened towards the 1.3 to 2.0·10⁻⁴ of European texts, from memory.
    /// Modulus ±15 % and restraint by surround: judgement, no source.
    pub fn typical(surround: Surround) -> Self {
        let (held, doubt) = match surround {
            Surround::Pond => (0.0, 0.0),
            Surround::Trench => (0.2, 0.12),
            Surround::Grout => (0.35, 0.18),
        };
        Self {
            modulus: Fraction::from_si(0.15),
            expansion: Uncertain::new(ThermalExpansion::from_si(1.55e-4), 0.15e-4),
            restraint: Uncertain::new(Fraction::from_si(held), doubt),
            fluid: Fraction::from_si(0.10),
        }
    }
}

/// How the loop was left, as well as it is known.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Charge {
    /// Gauge pressure that was read.
    pub pressure: Uncertain<GaugePressure>,
    /// Mean temperature of fluid and pipe then.
    pub temperature: Uncertain<Temperature>,
    /// How long the pipe had been under pressure when it was read.
    pub held: Duration,
    /// Air left in (volume at charge pressure), and the saturation of the fluid.
    pub air: Option<(Uncertain<Volume>, TrappedAir)>,
    /// What was in before.
    pub earlier: Option<Earlier>,
}

/// A moment after the charge.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Moment {
    /// Time since the charge was read.
    pub elapsed: Duration,
    /// Mean temperature of fluid and pipe.
    pub temperature: Uncertain<Temperature>,
}

/// A reading of the gauge at a moment.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Reading {
    /// When, and how warm.
    pub moment: Moment,
    /// What the gauge showed.
    pub pressure: Uncertain<GaugePressure>,
}

/// Standard uncertainty of the model itself, Pa (about 1 psi): one modulus for charge and
/// season, and a loop of one temperature. Judgement.
pub const MODEL_DOUBT: f64 = 7e3;

/// What is believed of a loop: how it was charged, and the distribution of its unknowns.
#[derive(Clone, Debug)]
pub struct Belief {
    pub(super) system: SealedLoop,
    pub(super) unknowns: Unknowns,
    pub(super) charge: Charge,
    /// Before the readings taken in.
    root: Normal,
    /// With them, as a normal distribution.
    pub(super) now: Normal,
    taken: Vec<Reading>,
    /// Weight of every fixed point; they add up to one.
    pub(super) weights: Vec<f64>,
}

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
    /// Before any reading.
    ///
    /// # Errors
    /// [`PressureError`] for an input out of range or a loop without pipe.
    pub fn prior(
        system: SealedLoop,
        unknowns: Unknowns,
        charge: Charge,
    ) -> Result<Self, PressureError> {
        PIPE_EXPANSION.check(unknowns.expansion.value())?;
        RESTRAINT.check(unknowns.restraint.value())?;
        LOOP_PRESSURE.check(charge.pressure.value())?;
        let root = Normal {
            mean: DVector::zeros(SHARED),
            covariance: DMatrix::identity(SHARED, SHARED),
        };
        let belief = Self {
            system,
            unknowns,
            charge,
            now: root.clone(),
            root,
            taken: Vec::new(),
            weights: even(),
        };
        // Whatever the balance refuses at the middle is refused here.
        belief.expected(&Moment {
            elapsed: Duration::ZERO,
            temperature: charge.temperature,
        })?;
        Ok(belief)
    }

    /// The loop as belief has it at a point of the coordinates, at a temperature that lies
    /// `shift` standard uncertainties off.
    pub(super) fn at(
        &self,
        z: &[f64],
        moment: &Moment,
        shift: f64,
    ) -> Result<Balance, PressureError> {
        let u = &self.unknowns;
        let properties = Properties {
            modulus_scale: (u.modulus.si() * z[0]).exp(),
            expansion: log_normal(
                u.expansion,
                z[1],
                PIPE_EXPANSION.min(),
                PIPE_EXPANSION.max(),
            ),
            restraint: share(u.restraint, z[2]),
            fluid_scale: (u.fluid.si() * z[3]).exp(),
        };
        let charge = ChargeState {
            pressure: bounded(
                self.charge.pressure.value().si() + self.charge.pressure.standard() * z[4],
            ),
            temperature: self.warm(self.charge.temperature, z[5]),
            held: self.charge.held,
            air: self.charge.air.map(|(volume, air)| TrappedAir {
                volume: log_normal(volume, z[6], Volume::ZERO, self.system.volume()),
                ..air
            }),
            earlier: self.charge.earlier,
        };
        let now = self.warm(moment.temperature, shift);
        balance(&self.system, &properties, &charge, moment.elapsed, now)
    }

    /// A temperature moved by its uncertainty, held inside what fluid and pipe allow so that
    /// a far sample neither freezes the loop nor leaves the table of moduli.
    fn warm(&self, temperature: Uncertain<Temperature>, z: f64) -> Temperature {
        let middle = temperature.value();
        let fluid = self.system.fluid;
        let least = (fluid.freezing_point().si() + 0.01).max(PIPE_TEMPERATURE.min().si());
        let most = fluid.kind().temperatures().max();
        let most = most.si().min(PIPE_TEMPERATURE.max().si());
        let moved = middle.si() + temperature.standard() * z;
        if z == 0.0 || !(least..=most).contains(&middle.si()) {
            middle
        } else {
            Temperature::from_si(moved.clamp(least, most))
        }
    }

    /// Expected pressure at the middle of the belief.
    ///
    /// # Errors
    /// As [`balance`].
    pub fn expected(&self, moment: &Moment) -> Result<GaugePressure, PressureError> {
        Ok(self.at(self.now.mean.as_slice(), moment, 0.0)?.pressure())
    }

    /// Slopes of the pressure by the shared coordinates and by the temperature's.
    pub(super) fn gradient(
        &self,
        z: &[f64],
        moment: &Moment,
    ) -> Result<(DVector<f64>, f64), PressureError> {
        let step = 0.05;
        let mut slopes = DVector::zeros(SHARED);
        let mut moved = z.to_vec();
        for i in 0..SHARED {
            moved[i] = z[i] + step;
            let up = self.at(&moved, moment, 0.0)?.pressure().si();
            moved[i] = z[i] - step;
            let down = self.at(&moved, moment, 0.0)?.pressure().si();
            moved[i] = z[i];
            slopes[i] = (up - down) / (2.0 * step);
        }
        let up = self.at(z, moment, step)?.pressure().si();
        let down = self.at(z, moment, -step)?.pressure().si();
        Ok((slopes, (up - down) / (2.0 * step)))
    }

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

    /// This belief for a new charge: what was learnt of pipe and surround stays, the charge is
    /// new and known as well as today's gauge and thermometer.
    pub(super) fn with_charge(&self, charge: Charge) -> Self {
        let mut root = self.now.clone();
        for i in Unknown::ChargePressure as usize..SHARED {
            root.mean[i] = 0.0;
            for j in 0..SHARED {
                root.covariance[(i, j)] = 0.0;
                root.covariance[(j, i)] = 0.0;
            }
            root.covariance[(i, i)] = 1.0;
        }
        Self {
            system: self.system.clone(),
            unknowns: self.unknowns,
            charge,
            now: root.clone(),
            root,
            taken: Vec::new(),
            weights: even(),
        }
    }

    /// Median of what is believed of the modulus (against the table), the expansion and the
    /// restraint, each with the standard uncertainty of its coordinate (1 before any reading).
    pub fn properties(&self) -> (Properties, [f64; 3]) {
        let (u, z) = (&self.unknowns, &self.now.mean);
        let properties = Properties {
            modulus_scale: (u.modulus.si() * z[0]).exp(),
            expansion: log_normal(
                u.expansion,
                z[1],
                PIPE_EXPANSION.min(),
                PIPE_EXPANSION.max(),
            ),
            restraint: share(u.restraint, z[2]),
            fluid_scale: (u.fluid.si() * z[3]).exp(),
        };
        let left = [0, 1, 2].map(|i| self.now.covariance[(i, i)].max(0.0).sqrt());
        (properties, left)
    }
}

fn variance(reading: &Reading, by_temperature: f64) -> f64 {
    reading.pressure.standard().powi(2) + by_temperature.powi(2) + MODEL_DOUBT.powi(2)
}

fn bounded(pressure: f64) -> GaugePressure {
    GaugePressure::from_si(pressure.clamp(LOOP_PRESSURE.min().si(), LOOP_PRESSURE.max().si()))
}

/// A positive quantity with median and relative uncertainty of the value given.
fn log_normal<Q: Quantity>(value: Uncertain<Q>, z: f64, least: Q, most: Q) -> Q {
    let middle = value.value().si();
    if middle <= 0.0 {
        return value.value();
    }
    let spread = (value.standard() / middle).powi(2).ln_1p().sqrt();
    Q::from_si((middle * (spread * z).exp()).clamp(least.si(), most.si()))
}

/// A share between 0 and 1 with median and, to first order, the uncertainty of the value given.
fn share(value: Uncertain<Fraction>, z: f64) -> Fraction {
    let middle = value.value().si();
    if value.standard() == 0.0 || middle <= 0.0 || middle >= 1.0 {
        return value.value();
    }
    let logit = (middle / (1.0 - middle)).ln();
    let spread = value.standard() / (middle * (1.0 - middle));
    let moved = 1.0 / (1.0 + (-(logit + spread * z)).exp());
    Fraction::from_si(moved.min(RESTRAINT.max().si()))
}
