//! Gas in a loop: the cushion of an expansion tank, and air that was left.

use super::PressureError;
use crate::fluids::Fluid;
use crate::units::{
    AbsolutePressure, Bound, Compressibility, Fraction, GaugePressure, Quantity, Temperature,
    Volume, ZERO_CELSIUS_K,
};

/// Molar gas constant, J/(mol·K). CODATA 2018, exact.
pub const GAS_CONSTANT: f64 = 8.314_462_618;
/// Molar mass of water, kg/mol. IAPWS.
const WATER_MOLAR_MASS: f64 = 0.018_015_268;

/// Temperatures at which the solubility of air is given.
pub const SOLUBILITY_TEMPERATURE: Bound<Temperature> = Bound::si(
    "solubility temperature",
    ZERO_CELSIUS_K - 10.0,
    ZERO_CELSIUS_K + 40.0,
);

/// °C and mole fraction of air per bar, 10⁻⁶. *J. Res. NBS* 77A (1973), table 3. Below 0 °C
/// carried on by the slope of the first step.
const AIR: [(f64, f64); 8] = [
    (0.0, 23.25),
    (5.0, 20.45),
    (10.0, 18.26),
    (15.0, 16.49),
    (20.0, 14.93),
    (25.0, 13.84),
    (30.0, 12.83),
    (40.0, 11.34),
];

/// A diaphragm expansion tank. One that is waterlogged is no tank: leave it out.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Vessel {
    /// Volume of the gas at pre-charge, that is of the empty tank.
    pub volume: Volume,
    /// Gas pressure with the fluid side at zero.
    pub precharge: GaugePressure,
    /// Temperature of the gas when that was set.
    pub set_at: Temperature,
    /// Temperature of the gas in service.
    pub gas: Temperature,
}

impl Vessel {
    /// Fluid the tank holds at an absolute pressure: V (1 − p₀/p), p₀ the pre-charge at the
    /// temperature of the gas; nothing below p₀. Ideal gas at constant temperature.
    pub(super) fn accepted(&self, pressure: f64, atmosphere: f64) -> f64 {
        self.acceptance_and_slope(pressure, atmosphere).0
    }
    /// The same with its slope by pressure, m³/Pa.
    pub(super) fn acceptance_and_slope(&self, pressure: f64, atmosphere: f64) -> (f64, f64) {
        let precharge = (self.precharge.si() + atmosphere) * self.gas.si() / self.set_at.si();
        if pressure <= precharge {
            return (0.0, 0.0);
        }
        let gas = self.volume.si() * precharge / pressure;
        (self.volume.si() - gas, gas / pressure)
    }
}

/// Volume of fluid in an expansion tank at a pressure.
pub fn acceptance(
    vessel: &Vessel,
    pressure: GaugePressure,
    atmosphere: AbsolutePressure,
) -> Volume {
    let absolute = pressure.absolute(atmosphere).si();
    Volume::from_si(vessel.accepted(absolute, atmosphere.si()))
}

/// Mole fraction of air dissolved in water at equilibrium, by absolute pressure (1/Pa).
/// −10 to 40 °C. Solutions take up less or more by some tens of per cent; no source read.
///
/// # Errors
/// [`PressureError::OutOfRange`].
pub fn air_solubility(t: Temperature) -> Result<Compressibility, PressureError> {
    let celsius = SOLUBILITY_TEMPERATURE.check(t)?.celsius();
    let after = AIR
        .iter()
        .position(|(at, _)| *at >= celsius)
        .unwrap_or(AIR.len() - 1)
        .max(1);
    let ((t0, k0), (t1, k1)) = (AIR[after - 1], AIR[after]);
    let per_bar = k0 + (k1 - k0) * (celsius - t0) / (t1 - t0);
    Ok(Compressibility::from_si(per_bar * 1e-6 / 1e5))
}

/// Moles of air that a volume of fluid can take up above what it brought along, per its
/// pressure: capacity at p is `slope · p − brought`.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(super) struct Uptake {
    pub slope: f64,
    pub brought: f64,
}

impl Uptake {
    /// For a fluid that came with a share of what it holds at one atmosphere.
    pub fn new(
        fluid: Fluid,
        volume: f64,
        at: Temperature,
        saturation: Fraction,
        atmosphere: f64,
    ) -> Result<Self, PressureError> {
        // The solubility ends at 40 °C; warmer fluid holds no more than that.
        let at = Temperature::from_si(at.si().clamp(
            SOLUBILITY_TEMPERATURE.min().si(),
            SOLUBILITY_TEMPERATURE.max().si(),
        ));
        let moles = fluid.density(at)?.si() * volume / WATER_MOLAR_MASS;
        let slope = moles * air_solubility(at)?.si();
        Ok(Self {
            slope,
            brought: saturation.si() * slope * atmosphere,
        })
    }
    /// Moles taken up at an absolute pressure, and their slope by pressure.
    pub fn taken(self, pressure: f64) -> (f64, f64) {
        let moles = self.slope * pressure - self.brought;
        if moles > 0.0 {
            (moles, self.slope)
        } else {
            (0.0, 0.0)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// From the same table, re-derived: 29 mL of air (at 0 °C and 1 atm) in a litre of water
    /// at 0 °C, 19 mL at 20 °C and 14 mL at 40 °C.
    #[test]
    fn millilitres_in_a_litre_of_water() {
        for (celsius, millilitres) in [(0.0, 29.0), (20.0, 19.0), (40.0, 14.0)] {
            let fraction = air_solubility(Temperature::from_celsius(celsius))
                .unwrap()
                .si()
                * 101_325.0;
            let ml = fraction / WATER_MOLAR_MASS * GAS_CONSTANT * 273.15 / 101_325.0 * 1e6;
            assert!((ml - millilitres).abs() < 0.6, "{celsius}: {ml}");
        }
    }

    /// By hand: 8 L tank, pre-charge 1 bar, at 3 bar gauge: 8 (1 − 2.01325/4.01325) = 3.987 L.
    #[test]
    fn the_tank_takes_what_boyle_says() {
        let t = Temperature::from_celsius(20.0);
        let vessel = Vessel {
            volume: Volume::from_si(8e-3),
            precharge: GaugePressure::from_si(1e5),
            set_at: t,
            gas: t,
        };
        let at = |p: f64| {
            acceptance(
                &vessel,
                GaugePressure::from_si(p),
                AbsolutePressure::standard_atmosphere(),
            )
            .si()
        };
        assert!((at(3e5) - 3.986_794e-3).abs() < 1e-8);
        assert!(at(0.9e5) == 0.0);
    }
}
