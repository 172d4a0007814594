//! What is believed of a loop's unknowns.
//!
//! Every unknown is a function of its own standard normal coordinate, so that
//! a belief is a normal distribution in seven coordinates: a modulus stays
//! positive and a restraint stays between 0 and 1. What readings teach stands in
//! `learn`.

use super::PressureError;
use super::balance::{
    Balance, ChargeState, Earlier, LOOP_PRESSURE, PIPE_EXPANSION, Properties, RESTRAINT,
    SealedLoop, Span, TrappedAir,
};
use super::learn::{Normal, even};
use super::modulus::PIPE_TEMPERATURE;
use super::unknowns::{SHARED, log_normal};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, GaugePressure, Quantity, Temperature, Volume};
use nalgebra::{DMatrix, DVector};

pub use super::unknowns::{Surround, Unknown, Unknowns};

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
    pub(super) root: Normal,
    /// With them, as a normal distribution.
    pub(super) now: Normal,
    pub(super) taken: Vec<Reading>,
    /// Weight of every fixed point; they add up to one.
    pub(super) weights: Vec<f64>,
}

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
        let pressure = self.put_on(self.charge.pressure.value(), z);
        Ok(self.span(z, moment, shift)?.charged(pressure))
    }

    /// What the loop was really charged to if a pressure was meant.
    pub(super) fn put_on(&self, meant: GaugePressure, z: &[f64]) -> GaugePressure {
        let real = meant.si() + self.charge.pressure.standard() * z[4];
        GaugePressure::from_si(real.clamp(LOOP_PRESSURE.min().si(), LOOP_PRESSURE.max().si()))
    }

    /// As [`Belief::at`], for any pressure of the charge.
    pub(super) fn span(
        &self,
        z: &[f64],
        moment: &Moment,
        shift: f64,
    ) -> Result<Span, PressureError> {
        let properties = self.unknowns.properties(z);
        let charge = ChargeState {
            pressure: self.charge.pressure.value(),
            temperature: self.warm(self.charge.temperature, z[5]),
            held: self.charge.held,
            air: self.charge.air.map(|(volume, air)| TrappedAir {
                volume: log_normal(volume, z[6], Volume::ZERO, self.system.volume()),
                ..air
            }),
            earlier: self.charge.earlier,
        };
        let now = self.warm(moment.temperature, shift);
        Span::new(&self.system, &properties, &charge, moment.elapsed, now)
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
    /// As [`balance`](super::balance::balance).
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
            // The points keep their places in what was learnt, and so their weights.
            weights: self.weights.clone(),
        }
    }

    /// This belief with some air left in at the charge, which dissolves and takes pressure
    /// with it.
    #[must_use]
    pub fn with_air(mut self, volume: Uncertain<Volume>, air: TrappedAir) -> Self {
        self.charge.air = Some((volume, air));
        self
    }

    /// Median of what is believed of the modulus (against the table), the expansion and the
    /// restraint, each with the standard uncertainty of its coordinate (1 before any reading).
    pub fn properties(&self) -> (Properties, [f64; 3]) {
        let properties = self.unknowns.properties(self.now.mean.as_slice());
        let left = [0, 1, 2].map(|i| self.now.covariance[(i, i)].max(0.0).sqrt());
        (properties, left)
    }
}
