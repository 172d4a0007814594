//! A non-pressurised flow centre: the level is the gauge.

use super::PressureError;
use super::balance::{PIPE_EXPANSION, SUSTAINED_POISSON};
use crate::fluids::Fluid;
use crate::hydraulics::elastic::{Axial, thermal_growth};
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    Area, Bound, Fraction, Length, Number, Quantity, Temperature, ThermalExpansion, Volume,
};

/// Free surface of the reservoir.
pub const SURFACE: Bound<Area> = Bound::si("free surface of the reservoir", 1e-3, 10.0);

/// A loop whose fluid stands open to the air.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct OpenLoop {
    /// Fluid in plastic pipe.
    pub plastic: Uncertain<Volume>,
    /// Fluid elsewhere.
    pub rigid: Volume,
    /// What is in it.
    pub fluid: Fluid,
    /// Whether the pipe can move lengthwise.
    pub axial: Axial,
    /// Linear expansion of the pipe.
    pub expansion: Uncertain<ThermalExpansion>,
    /// Share of the pipe's growth that soil or grout takes away.
    pub restraint: Uncertain<Fraction>,
    /// Free surface of the reservoir.
    pub surface: Area,
}

/// Change of level from one mean temperature to another, upwards positive:
/// Δh = [V (ρ₀/ρ₁ − 1) − V_pipe (1 − r) m α ΔT] / A, with no pressure to stretch the pipe.
/// The contributions of the result are, in order: volume, expansion, restraint, first
/// temperature, second temperature.
///
/// # Errors
/// [`PressureError`].
pub fn level_change(
    system: &OpenLoop,
    from: Uncertain<Temperature>,
    to: Uncertain<Temperature>,
) -> Result<Propagated<Length>, PressureError> {
    SURFACE.check(system.surface)?;
    PIPE_EXPANSION.check(system.expansion.value())?;
    let inputs = (system.plastic, system.expansion, system.restraint, from, to);
    propagate(inputs, |(plastic, alpha, restraint, from, to)| {
        let fluid = system.fluid;
        let ratio = fluid.density(from)?.si() / fluid.density(to)?.si();
        let swell = (plastic + system.rigid).si() * (ratio - 1.0);
        let poisson = Number::from_si(SUSTAINED_POISSON);
        let growth = thermal_growth(alpha, poisson, system.axial)?.si() * (to - from).si();
        let pipe = plastic.si() * (1.0 - restraint.si()) * growth;
        Ok(Length::from_si((swell - pipe) / system.surface.si()))
    })
}

/// Fluid missing when the level stands lower than the season explains.
///
/// # Errors
/// [`PressureError`].
pub fn missing(
    system: &OpenLoop,
    from: Uncertain<Temperature>,
    to: Uncertain<Temperature>,
    fall: Uncertain<Length>,
) -> Result<Uncertain<Volume>, PressureError> {
    let expected = level_change(system, from, to)?.result;
    let unexplained = expected.value() + fall.value();
    let standard = expected.standard().hypot(fall.standard());
    let volume = unexplained.si() * system.surface.si();
    Ok(Uncertain::new(
        Volume::from_si(volume),
        standard * system.surface.si(),
    ))
}
