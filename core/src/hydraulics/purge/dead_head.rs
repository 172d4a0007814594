//! The dead-head test: how much air is still in there.
//!
//! With the return valve shut and the cart pushing, the tank's level falls by
//! the volume that goes into the loop: the pipe stretches, the liquid is
//! squeezed a little, and the air is squeezed much.

use crate::fluids::{Fluid, FluidError};
use crate::hydraulics::elastic::{self, Axial};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    AbsolutePressure, Area, Bound, Fraction, GaugePressure, Length, Modulus, Number, OutOfRange,
    Quantity, Temperature, Volume,
};
use thiserror::Error;

/// Pressures between which the test can be made.
pub const TEST_PRESSURE: Bound<GaugePressure> = Bound::si("test pressure", -5e4, 1.2e6);
/// Least rise of pressure that tells anything: 0.2 bar.
const LEAST_RISE: f64 = 2e4;

/// Volume of pipe of one kind in the loop.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct PipeVolume {
    /// Volume inside.
    pub volume: Uncertain<Volume>,
    /// Outside diameter over wall; none for copper, steel and what does not give.
    pub diameter_ratio: Option<Number>,
}

/// What the level of the tank did.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct TankStep {
    /// Fall of the level.
    pub drop: Uncertain<Length>,
    /// Area of the tank at the level.
    pub area: Uncertain<Area>,
}

/// A dead-head test.
#[derive(Clone, PartialEq, Debug)]
pub struct DeadHeadTest {
    /// The tank.
    pub tank: TankStep,
    /// Pipe of the loop (polyethylene where a ratio is given).
    pub pipes: Vec<PipeVolume>,
    /// Pressure before, at the middle of the loop.
    pub before: Uncertain<GaugePressure>,
    /// Pressure with the return shut.
    pub after: Uncertain<GaugePressure>,
    /// Pressure of the air outside.
    pub atmosphere: AbsolutePressure,
    /// Fluid.
    pub fluid: Fluid,
    /// Temperature of pipe and fluid.
    pub temperature: Temperature,
    /// Modulus of the pipe under a short load; see [`elastic::short_term_modulus`].
    pub modulus: Uncertain<Modulus>,
    /// Poisson ratio of the pipe; see [`elastic::poisson_ratio`].
    pub poisson: Uncertain<Number>,
    /// Part of its free stretch that the ground leaves the pipe: 1 in the open,
    /// less in grout.
    pub freedom: Uncertain<Fraction>,
    /// Air that may stay, as a part of the loop's volume.
    pub allowed_air: Fraction,
}

/// Air that may stay unless something else is asked for: 0.2 % of the volume.
/// A judgement, no source; the next hours of running dissolve about as much.
pub const ALLOWED_AIR: f64 = 0.002;

/// What the test says.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct DeadHead {
    /// Volume that left the tank.
    pub displaced: Uncertain<Volume>,
    /// Of that, stretch of the pipe and squeeze of the liquid.
    pub stretch: Uncertain<Volume>,
    /// Air left, as it is at the pressure before. Negative within its
    /// uncertainty means none.
    pub air: Uncertain<Volume>,
    /// Fall of the level with no air at all.
    pub drop_without_air: Uncertain<Length>,
    /// Largest fall of the level with which the loop passes.
    pub pass_limit: Uncertain<Length>,
    /// Probability that more air is in there than may stay.
    pub probability_of_air: f64,
}

/// Why the test says nothing.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum DeadHeadError {
    /// The pressure has not risen enough.
    #[error("the pressure must rise by at least 20 kPa to tell anything")]
    NoRise,
    /// The tank has no area.
    #[error("the tank has no area")]
    NoTank,
    /// A value is out of range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The fluid has no properties there.
    #[error(transparent)]
    Fluid(#[from] FluidError),
}

/// Evaluates a dead-head test.
///
/// ΔV = drop · area; stretch = (Σ φ C V + κ V) (p₂ - p₁); air at p₁ by Boyle's
/// law on absolute pressures = (ΔV - stretch)/(1 - p₁/p₂). C is the compliance
/// [`elastic::compliance`] halfway between axially free and held (they differ
/// by less than the modulus is known), κ the compressibility of the liquid, φ
/// the freedom. Pass limit: (stretch + allowed air · (1 - p₁/p₂))/area.
/// Worked example: 100 gal of SDR 11, 10 to 50 psi, E = 110 ksi, ν = 0.45, 2 in
/// in a tank of 0.34 gal/in: stretch 0.353 gal, air 0.529 gal.
///
/// # Errors
/// [`DeadHeadError`].
pub fn dead_head(test: &DeadHeadTest) -> Result<DeadHead, DeadHeadError> {
    TEST_PRESSURE.check(test.before.value())?;
    TEST_PRESSURE.check(test.after.value())?;
    let area = test.tank.area.value().si();
    if !(area.is_finite() && area > 0.0) {
        return Err(DeadHeadError::NoTank);
    }
    let absolute = |p: GaugePressure| p.absolute(test.atmosphere).si();
    let (p1, p2) = (absolute(test.before.value()), absolute(test.after.value()));
    if !(p1 > 0.0 && p2 - p1 >= LEAST_RISE) {
        return Err(DeadHeadError::NoRise);
    }
    let squeeze = test.fluid.compressibility(test.temperature)?.si();
    let poisson = test.poisson;
    // Checked once at the best values, so that the propagation cannot fail on them.
    give(
        test.pipes
            .iter()
            .map(|p| (p.volume.value(), p.diameter_ratio)),
        test.modulus.value(),
        poisson.value(),
        1.0,
    )?;
    let volumes: Vec<Uncertain<Volume>> = test.pipes.iter().map(|p| p.volume).collect();
    let loop_volume: f64 = volumes.iter().map(|v| v.value().si()).sum();
    // Volume errors of the kinds of pipe are independent; together they act as one factor.
    let variance: f64 = volumes.iter().map(|v| v.standard().powi(2)).sum();
    let scale = Uncertain::new(Number::ONE, variance.sqrt() / loop_volume.max(1e-9));
    let stretch_by_pressure = |modulus, poisson, freedom: Fraction, scale: Number| {
        let pipes = test
            .pipes
            .iter()
            .map(|p| (p.volume.value(), p.diameter_ratio));
        give(pipes, modulus, poisson, freedom.si())
            .map(|give| scale.si() * (give + squeeze * loop_volume))
    };
    let causes = (
        test.tank.drop,
        test.tank.area,
        test.before,
        test.after,
        test.modulus,
        poisson,
        test.freedom,
        scale,
    );
    type Values = (
        Length,
        Area,
        GaugePressure,
        GaugePressure,
        Modulus,
        Number,
        Fraction,
        Number,
    );
    let stretch_of = |(_, _, before, after, e, nu, freedom, scale): Values| {
        let rise = absolute(after) - absolute(before);
        Ok::<f64, OutOfRange>(rise * stretch_by_pressure(e, nu, freedom, scale)?)
    };
    let squeezed = |v: &Values| 1.0 - absolute(v.2) / absolute(v.3);
    let allowed = test.allowed_air.si() * loop_volume;
    let stretch = propagate(causes, |v| stretch_of(v).map(Volume::from_si))?.result;
    let air = propagate(causes, |v| {
        let air = ((v.1 * v.0).si() - stretch_of(v)?) / squeezed(&v);
        Ok::<_, OutOfRange>(Volume::from_si(air))
    })?
    .result;
    let drop_without_air = propagate(causes, |v| {
        Ok::<_, OutOfRange>(Length::from_si(stretch_of(v)? / v.1.si()))
    })?
    .result;
    let pass_limit = propagate(causes, |v| {
        let most = stretch_of(v)? + allowed * v.7.si() * squeezed(&v);
        Ok::<_, OutOfRange>(Length::from_si(most / v.1.si()))
    })?
    .result;
    let displaced = propagate((test.tank.drop, test.tank.area), |(drop, area)| {
        Ok::<Volume, OutOfRange>(area * drop)
    })?
    .result;
    Ok(DeadHead {
        displaced,
        stretch,
        air,
        drop_without_air,
        pass_limit,
        probability_of_air: air.probability_above(Volume::from_si(allowed)),
    })
}

/// Growth of the pipes by pressure, m³/Pa.
fn give(
    pipes: impl Iterator<Item = (Volume, Option<Number>)>,
    modulus: Modulus,
    poisson: Number,
    freedom: f64,
) -> Result<f64, OutOfRange> {
    let mut sum = 0.0;
    for (volume, ratio) in pipes {
        let Some(ratio) = ratio else { continue };
        let free = elastic::compliance(ratio, modulus, poisson, Axial::Free)?.si();
        let held = elastic::compliance(ratio, modulus, poisson, Axial::Held)?.si();
        sum += 0.5 * (free + held) * volume.si();
    }
    Ok(freedom * sum)
}
