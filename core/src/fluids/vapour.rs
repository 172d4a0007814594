//! Vapour pressure, for the suction side of a circulator.

use super::{Fluid, FluidError, FluidKind, water};
use crate::units::{AbsolutePressure, Quantity, Temperature, ZERO_CELSIUS_K};

/// Molar mass of water, g/mol.
const WATER_MOLAR_MASS: f64 = 18.015_28;

/// An alcohol in water: molar mass in g/mol; Antoine constants for
/// log10(p/bar) = A - B/(T/K + C), NIST Chemistry WebBook (methanol: Ambrose et
/// al. 1975, ethanol: Ambrose and Sprake 1970; from memory); activity
/// coefficient in water at infinite dilution near 25 °C, rounded up (from
/// memory of DECHEMA's collection: methanol 1.7 to 2.2, ethanol 3.7 to 5.5).
struct Alcohol {
    molar_mass: f64,
    antoine: [f64; 3],
    activity: f64,
}
const METHANOL: Alcohol = Alcohol {
    molar_mass: 32.041_9,
    antoine: [5.204_09, 1_581.341, -33.50],
    activity: 2.2,
};
const ETHANOL: Alcohol = Alcohol {
    molar_mass: 46.068_4,
    antoine: [5.246_77, 1_598.673, -46.424],
    activity: 5.5,
};

impl Fluid {
    /// Vapour pressure: of water by IAPWS SR1-86; of a solution an upper
    /// bound, so that a suction margin errs on the safe side. Glycols: that of
    /// water at the same temperature (Raoult's law lowers it). Alcohols:
    /// x_w p_w + x_a γ p_a with the activity coefficient γ at infinite dilution.
    /// Below 0 °C the pressure at 0 °C is given.
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn vapour_pressure(self, t: Temperature) -> Result<AbsolutePressure, FluidError> {
        let kelvin = self.liquid(t)?.max(ZERO_CELSIUS_K);
        let water = water::vapour_pressure(kelvin);
        let alcohol = match self.kind {
            FluidKind::Methanol => &METHANOL,
            FluidKind::Ethanol => &ETHANOL,
            _ => return Ok(AbsolutePressure::from_si(water)),
        };
        let [a, b, c] = alcohol.antoine;
        let pure = 1e5 * 10f64.powf(a - b / (kelvin + c));
        let moles = self.mass_fraction / alcohol.molar_mass;
        let x = moles / (moles + (1.0 - self.mass_fraction) / WATER_MOLAR_MASS);
        let bound = (1.0 - x) * water + x * alcohol.activity * pure;
        Ok(AbsolutePressure::from_si(bound))
    }
}
