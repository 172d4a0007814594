//! The balance of volumes in a sealed loop.
//!
//! The mass of fluid is constant. From the charge (0) to a moment (1)
//!
//! growth of the pipe by heat + stretch(p₁) + squeeze(p₁) + tank(p₁) − air(p₁)
//!   = growth of the fluid by heat + stretch(p₀) + squeeze(p₀) + tank(p₀) − air(p₀)
//!
//! with stretch = Σ Vᵢ f Cᵢ(E) p, growth of the pipe = Σ Vᵢ f m α ΔT,
//! squeeze = V κ p and f = 1 − restraint. Without gas this is
//! dp/dT = (β − f m α)/(f C + κ). C is taken at the modulus for the time since
//! the charge: one modulus for the charge and for the season, which is right to
//! a few per cent because it goes by the logarithm of time.

use super::PressureError;
use super::gas::{GAS_CONSTANT, Uptake, Vessel};
use super::modulus::{Resin, apparent};
use crate::fluids::Fluid;
use crate::hydraulics::elastic::{Axial, compliance, thermal_growth};
use crate::units::{
    AbsolutePressure, Bound, Compressibility, Duration, Fraction, GaugePressure, Number,
    PressureSlope, Quantity, Temperature, ThermalExpansion, Volume, VolumeGive,
};

/// Gauge pressures of a loop.
pub const LOOP_PRESSURE: Bound<GaugePressure> = Bound::si("loop pressure", -1e5, 1.6e6);
/// Linear expansion of polyethylene, 1/K.
pub const PIPE_EXPANSION: Bound<ThermalExpansion> =
    Bound::si("linear expansion of the pipe", 5e-5, 3e-4);
/// Share of the pipe's movement that its surround takes away.
pub const RESTRAINT: Bound<Fraction> = Bound::si("restraint", 0.0, 0.98);
/// Poisson ratio of polyethylene under sustained load. PPI handbook, from memory.
pub const SUSTAINED_POISSON: f64 = 0.45;
/// Volumetric expansion of the copper and brass that is not plastic pipe, 1/K: three times
/// 16.8·10⁻⁶, from memory of the *Copper Tube Handbook*.
const METAL_EXPANSION: f64 = 5.0e-5;
/// Lowest absolute pressure of a liquid in a loop, Pa: about its vapour pressure.
const VACUUM: f64 = 1e3;
const HIGHEST: f64 = 1e7;
/// Pressures are found to within this, Pa.
const CLOSE: f64 = 1e-3;

/// Plastic pipe of one dimension ratio.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct PlasticPart {
    /// Fluid in it.
    pub volume: Volume,
    /// Outside diameter over wall, SDR.
    pub ratio: Number,
}

/// A sealed loop: what holds the fluid.
#[derive(Clone, PartialEq, Debug)]
pub struct SealedLoop {
    /// Polyethylene pipe.
    pub plastic: Vec<PlasticPart>,
    /// Fluid in metal: heat pump, indoor copper, flow centre.
    pub rigid: Volume,
    /// Resin of the pipe.
    pub resin: Resin,
    /// Whether the pipe can move lengthwise. Buried pipe is held.
    pub axial: Axial,
    /// What is in it.
    pub fluid: Fluid,
    /// Air pressure at the site.
    pub atmosphere: AbsolutePressure,
    /// Expansion tank, if there is one that works.
    pub vessel: Option<Vessel>,
}

impl SealedLoop {
    /// Fluid in the loop without the tank.
    pub fn volume(&self) -> Volume {
        self.plastic.iter().map(|part| part.volume).sum::<Volume>() + self.rigid
    }
}

/// Properties of pipe and surround that no one measures.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Properties {
    /// The real modulus over that of the table.
    pub modulus_scale: f64,
    /// Linear expansion α of the pipe.
    pub expansion: ThermalExpansion,
    /// Share of stretch and growth that soil or grout takes away, 0 to below 1.
    pub restraint: Fraction,
    /// Thermal volume growth of the fluid over that of the correlation.
    pub fluid_scale: f64,
}

/// Air left in the loop at charging.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct TrappedAir {
    /// Its volume at charge pressure.
    pub volume: Volume,
    /// Whether time and flow have let it dissolve as far as the fluid can take it.
    pub dissolves: bool,
    /// Share of what it holds at one atmosphere that the fluid brought along; 1 for water
    /// that stood in an open tank.
    pub saturation: Fraction,
}

/// Pressure that was already in the loop when the charge was made, and relaxes more slowly.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Earlier {
    /// Pressure before the charge.
    pub pressure: GaugePressure,
    /// How long it had been held.
    pub held: Duration,
}

/// How the loop was left.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct ChargeState {
    /// Gauge pressure that was read.
    pub pressure: GaugePressure,
    /// Mean temperature of fluid and pipe then.
    pub temperature: Temperature,
    /// How long the pipe had been under pressure when it was read.
    pub held: Duration,
    /// Air left in.
    pub air: Option<TrappedAir>,
    /// What was in before.
    pub earlier: Option<Earlier>,
}

/// The balance at one moment after the charge, ready to be solved.
#[derive(Copy, Clone, Debug)]
pub struct Balance {
    /// Stretch and squeeze per Pa, m³/Pa.
    elastic: f64,
    /// Stretch at zero pressure that the earlier charge left, m³.
    offset: f64,
    /// What stretch, squeeze, tank and air must add up to, m³.
    target: f64,
    vessel: Option<Vessel>,
    /// Moles of air at charge, temperature now, uptake if it dissolves.
    air: Option<(f64, f64, Option<Uptake>)>,
    atmosphere: f64,
}

/// Relative compliance of pipe walls by part, m³/Pa.
fn stretch(
    system: &SealedLoop,
    properties: &Properties,
    load: Duration,
    t: Temperature,
) -> Result<f64, PressureError> {
    let modulus = apparent(system.resin, load, t)? * properties.modulus_scale;
    let freedom = 1.0 - properties.restraint.si();
    let mut sum = 0.0;
    for part in &system.plastic {
        let poisson = Number::from_si(SUSTAINED_POISSON);
        let c = compliance(part.ratio, modulus, poisson, system.axial)?.si();
        sum += part.volume.si() * freedom * c;
    }
    Ok(sum)
}

/// A loop between its charge and a later moment: all that goes into the balance but the
/// pressure it was charged to, so that many pressures cost little more than one.
#[derive(Copy, Clone, Debug)]
pub(super) struct Span {
    /// Stretch per Pa of the charge, and fluid squeezed per Pa then, m³/Pa.
    young: f64,
    squeezed: f64,
    /// Pressure put on earlier, Pa; its stretch at the charge and what is left of it now, m³.
    earlier: (f64, f64, f64),
    /// Stretch and squeeze per Pa now, m³/Pa.
    elastic: f64,
    /// Growth of the fluid by heat less that of the pipe, m³.
    growth: f64,
    vessel: Option<Vessel>,
    /// Volume at the charge, uptake if it dissolves.
    air: Option<(f64, Option<Uptake>)>,
    /// Temperatures of the charge and of the moment, K.
    temperatures: (f64, f64),
    atmosphere: f64,
}

/// Sets the balance up for a moment `elapsed` after the charge at temperature `now`.
///
/// # Errors
/// [`PressureError`]: an input out of range, no pipe, a moment before the charge.
pub fn balance(
    system: &SealedLoop,
    properties: &Properties,
    charge: &ChargeState,
    elapsed: Duration,
    now: Temperature,
) -> Result<Balance, PressureError> {
    let pressure = LOOP_PRESSURE.check(charge.pressure)?;
    Ok(Span::new(system, properties, charge, elapsed, now)?.charged(pressure))
}

impl Span {
    /// Does not look at the pressure of the charge.
    pub fn new(
        system: &SealedLoop,
        properties: &Properties,
        charge: &ChargeState,
        elapsed: Duration,
        now: Temperature,
    ) -> Result<Self, PressureError> {
        if !system.plastic.iter().any(|part| part.volume.si() > 0.0) {
            return Err(PressureError::NoPipe);
        }
        if elapsed.si() < 0.0 {
            return Err(PressureError::BeforeCharge);
        }
        let alpha = PIPE_EXPANSION.check(properties.expansion)?;
        RESTRAINT.check(properties.restraint)?;
        let (t0, atmosphere) = (charge.temperature, system.atmosphere.si());
        let load = charge.held + elapsed;
        let volume = system.volume().si();
        let fluid = system.fluid;
        let squeeze =
            |t| -> Result<f64, PressureError> { Ok(volume * fluid.compressibility(t)?.si()) };

        // The earlier pressure sits at its own, longer load time.
        let earlier = match charge.earlier {
            None => (0.0, 0.0, 0.0),
            Some(earlier) => {
                let old = stretch(system, properties, earlier.held, t0)?;
                let later = stretch(system, properties, earlier.held + load, now)?;
                let p = LOOP_PRESSURE.check(earlier.pressure)?.si();
                (p, old * p, p * old / later)
            }
        };
        let walls = stretch(system, properties, load, now)?;

        let difference = (now - t0).si();
        let poisson = Number::from_si(SUSTAINED_POISSON);
        let by_heat = thermal_growth(alpha, poisson, system.axial)?.si() * difference;
        let freedom = 1.0 - properties.restraint.si();
        let plastic = volume - system.rigid.si();
        let pipe = plastic * freedom * by_heat + system.rigid.si() * METAL_EXPANSION * difference;
        let ratio = fluid.density(t0)?.si() / fluid.density(now)?.si();
        let swell = volume * (ratio - 1.0) * properties.fluid_scale;

        let air = match charge.air {
            None => None,
            Some(air) => {
                let uptake = if air.dissolves {
                    let saturation = air.saturation;
                    Some(Uptake::new(fluid, volume, now, saturation, atmosphere)?)
                } else {
                    None
                };
                Some((air.volume.si(), uptake))
            }
        };
        Ok(Self {
            young: stretch(system, properties, charge.held, t0)?,
            squeezed: squeeze(t0)?,
            earlier: (earlier.0, earlier.1, walls * earlier.2),
            elastic: walls + squeeze(now)?,
            growth: swell - pipe,
            vessel: system.vessel,
            air,
            temperatures: (t0.si(), now.si()),
            atmosphere,
        })
    }

    /// The balance for a charge to a gauge pressure.
    pub fn charged(&self, pressure: GaugePressure) -> Balance {
        let p0 = pressure.si();
        let (old_pressure, old_stretch, old_now) = self.earlier;
        let stretched = self.young * (p0 - old_pressure) + old_stretch;
        let absolute = (p0 + self.atmosphere).max(VACUUM);
        let tank = self
            .vessel
            .map_or(0.0, |v| v.accepted(absolute, self.atmosphere));
        let (warm0, warm1) = self.temperatures;
        let bubble = self.air.map_or(0.0, |(volume, _)| volume);
        Balance {
            elastic: self.elastic,
            offset: old_stretch - old_now,
            target: self.growth + stretched + self.squeezed * p0 + tank - bubble,
            vessel: self.vessel,
            air: self.air.map(|(volume, uptake)| {
                let moles = absolute * volume / (GAS_CONSTANT * warm0);
                (moles, warm1, uptake)
            }),
            atmosphere: self.atmosphere,
        }
    }
}

impl Balance {
    /// Stretch + squeeze + tank − air at a gauge pressure, m³, and its slope by pressure.
    /// Rises with pressure.
    fn stored(&self, gauge: f64) -> (f64, f64) {
        let absolute = (gauge + self.atmosphere).max(VACUUM);
        let (mut volume, mut slope) = (self.elastic * gauge + self.offset, self.elastic);
        if let Some(vessel) = self.vessel {
            let (held, by_pressure) = vessel.acceptance_and_slope(absolute, self.atmosphere);
            volume += held;
            slope += by_pressure;
        }
        if let Some((moles, t, uptake)) = self.air {
            let (taken, by_pressure) = uptake.map_or((0.0, 0.0), |u| u.taken(absolute));
            let left = moles - taken;
            if left > 0.0 {
                let bubble = left * GAS_CONSTANT * t / absolute;
                volume -= bubble;
                slope += (bubble + by_pressure * GAS_CONSTANT * t) / absolute;
            }
        }
        (volume, slope)
    }
    fn stored_at(&self, gauge: f64) -> f64 {
        self.stored(gauge).0
    }

    /// The gauge pressure at which the volumes balance; never below a full vacuum, where
    /// the fluid parts and the balance no longer holds. Without gas in closed form, else by
    /// Newton's method kept in a bracket.
    pub fn pressure(&self) -> GaugePressure {
        let floor = VACUUM - self.atmosphere;
        let stiff = ((self.target - self.offset) / self.elastic).clamp(floor, HIGHEST);
        if self.vessel.is_none() && self.air.is_none() {
            return GaugePressure::from_si(stiff);
        }
        let (mut low, mut high) = (floor, HIGHEST);
        let mut at = stiff.clamp(floor, 0.5 * HIGHEST);
        for _ in 0..80 {
            let (stored, slope) = self.stored(at);
            let off = stored - self.target;
            if off < 0.0 {
                low = at;
            } else {
                high = at;
            }
            let newton = at - off / slope;
            let next = if newton > low && newton < high {
                newton
            } else {
                0.5 * (low + high)
            };
            if (next - at).abs() < CLOSE {
                return GaugePressure::from_si(next);
            }
            at = next;
        }
        GaugePressure::from_si(at)
    }

    /// Fluid that is missing if the gauge reads `reading` where this balance expects
    /// another pressure; negative if there is too much.
    pub fn missing(&self, reading: GaugePressure) -> Volume {
        let expected = self.pressure().si();
        Volume::from_si(self.stored_at(expected) - self.stored_at(reading.si()))
    }

    /// Volume that the loop takes per pressure at a gauge pressure.
    pub fn give(&self, at: GaugePressure) -> VolumeGive {
        VolumeGive::from_si(self.stored(at.si()).1)
    }
}

/// Slope dp/dT of a loop without gas in closed form for one dimension ratio:
/// (β − f m α)/(f C + κ).
pub fn slope(
    fluid_expansion: ThermalExpansion,
    pipe_growth: ThermalExpansion,
    compliance: Compressibility,
    squeeze: Compressibility,
    restraint: Fraction,
) -> PressureSlope {
    let freedom = 1.0 - restraint.si();
    let growth = fluid_expansion.si() - freedom * pipe_growth.si();
    PressureSlope::from_si(growth / (freedom * compliance.si() + squeeze.si()))
}

#[cfg(test)]
#[path = "balance_tests.rs"]
mod tests;
