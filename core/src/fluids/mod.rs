//! The fluid in the loop: water, or water with one of four antifreezes.
//!
//! Properties of water come from the IAPWS formulations, those of solutions
//! from Melinder's correlations ([`melinder_table`]), inhibitors ignored. All
//! hold for the liquid near atmospheric pressure.
//!
//! How far other published sources differ from these correlations at -10 to
//! 40 °C: [`Fluid::spread`].

mod atmosphere;
mod concentration;
mod error;
mod hydrometer;
mod melinder;
mod melinder_table;
mod refractometer;
mod vapour;
mod water;

pub use atmosphere::{ALTITUDE, atmospheric_pressure};
pub use error::FluidError;
pub use hydrometer::{HydrometerScale, hydrometer};
pub use refractometer::{RefractometerScale, refractive_index, refractometer};

use crate::units::{
    Bound, Compressibility, Density, DynamicViscosity, Fraction, Quantity, SpecificHeat,
    Temperature, ThermalConductivity, ThermalExpansion, ZERO_CELSIUS_K,
};
use melinder::Correlation;

/// What is dissolved in the water.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash, PartialOrd, Ord)]
pub enum FluidKind {
    /// Nothing.
    Water,
    /// Propane-1,2-diol.
    PropyleneGlycol,
    /// Ethane-1,2-diol.
    EthyleneGlycol,
    /// Methyl alcohol.
    Methanol,
    /// Ethyl alcohol.
    Ethanol,
}

/// How well an instrument tells the strength of a fluid.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Suitability {
    /// The reading rises or falls steadily with strength, and well above its accuracy.
    Good,
    /// It does, but the reading moves so little that the strength is only coarse.
    Coarse,
    /// The same reading can mean another strength, or another fluid.
    Ambiguous,
    /// The reading hardly moves with strength.
    Useless,
}

/// Mass fraction of antifreeze for which the correlations are used. They were
/// fitted from a freezing point of about -5 °C to one of -45 °C; below that
/// they are carried on to zero, where the viscosity is up to 1.5 % off.
pub const MASS_FRACTION: Bound<Fraction> = Bound::si("mass fraction of antifreeze", 0.0, 0.6);
/// Temperatures for which the glycol correlations hold, never below freezing.
pub const GLYCOL_TEMPERATURE: Bound<Temperature> = Bound::si(
    "temperature of a glycol solution",
    ZERO_CELSIUS_K - 50.0,
    ZERO_CELSIUS_K + 100.0,
);
/// Temperatures for which the alcohol correlations hold, never below freezing.
pub const ALCOHOL_TEMPERATURE: Bound<Temperature> = Bound::si(
    "temperature of an alcohol solution",
    ZERO_CELSIUS_K - 50.0,
    ZERO_CELSIUS_K + 40.0,
);
/// Temperatures for which the formulation of liquid water is used.
pub const WATER_TEMPERATURE: Bound<Temperature> = Bound::si(
    "temperature of water",
    ZERO_CELSIUS_K,
    ZERO_CELSIUS_K + 100.0,
);

impl FluidKind {
    /// Every kind, water first.
    pub const ALL: [Self; 5] = [
        Self::Water,
        Self::PropyleneGlycol,
        Self::EthyleneGlycol,
        Self::Methanol,
        Self::Ethanol,
    ];
    /// Whether it is an alcohol that burns: flash-point cautions belong beside it.
    pub fn is_flammable(self) -> bool {
        matches!(self, Self::Methanol | Self::Ethanol)
    }
    /// Temperatures for which its correlations hold.
    pub fn temperatures(self) -> Bound<Temperature> {
        match self {
            Self::Water => WATER_TEMPERATURE,
            Self::PropyleneGlycol | Self::EthyleneGlycol => GLYCOL_TEMPERATURE,
            Self::Methanol | Self::Ethanol => ALCOHOL_TEMPERATURE,
        }
    }
    fn correlation(self) -> Option<&'static Correlation> {
        match self {
            Self::Water => None,
            Self::PropyleneGlycol => Some(&melinder_table::PROPYLENE_GLYCOL),
            Self::EthyleneGlycol => Some(&melinder_table::ETHYLENE_GLYCOL),
            Self::Methanol => Some(&melinder_table::METHANOL),
            Self::Ethanol => Some(&melinder_table::ETHANOL),
        }
    }
}

/// Relative standard uncertainty of the correlations, from how far published
/// sources lie apart (the whole distance taken as two standard uncertainties).
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Spread {
    /// Of the density.
    pub density: f64,
    /// Of the specific heat.
    pub specific_heat: f64,
    /// Of the thermal conductivity.
    pub conductivity: f64,
    /// Of the dynamic viscosity.
    pub viscosity: f64,
}

/// A fluid of known composition.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Fluid {
    kind: FluidKind,
    mass_fraction: f64,
}

impl Fluid {
    /// Plain water.
    pub const WATER: Self = Self {
        kind: FluidKind::Water,
        mass_fraction: 0.0,
    };

    /// A solution with a mass fraction of antifreeze in [`MASS_FRACTION`]. For
    /// water the fraction must be zero; a solution of strength zero is water.
    ///
    /// # Errors
    /// [`FluidError::OutOfRange`], [`FluidError::NoConcentration`].
    pub fn new(kind: FluidKind, mass_fraction: Fraction) -> Result<Self, FluidError> {
        let mass_fraction = MASS_FRACTION.check(mass_fraction)?.si();
        match kind {
            _ if mass_fraction == 0.0 => Ok(Self::WATER),
            FluidKind::Water => Err(FluidError::NoConcentration),
            _ => Ok(Self {
                kind,
                mass_fraction,
            }),
        }
    }
    /// What is dissolved.
    pub fn kind(self) -> FluidKind {
        self.kind
    }
    /// Mass of antifreeze in the mass of the solution.
    pub fn mass_fraction(self) -> Fraction {
        Fraction::from_si(self.mass_fraction)
    }

    fn percent(self) -> f64 {
        100.0 * self.mass_fraction
    }

    /// Checks a temperature: within the correlation and not below freezing.
    fn liquid(self, t: Temperature) -> Result<f64, FluidError> {
        let freezing = self.freezing_point();
        if t < freezing {
            return Err(FluidError::BelowFreezing {
                kind: self.kind,
                temperature: t,
                freezing,
            });
        }
        Ok(self.kind.temperatures().check(t)?.si())
    }

    fn property(
        self,
        t: Temperature,
        water: fn(f64) -> f64,
        solution: fn(&Correlation, f64, f64) -> f64,
    ) -> Result<f64, FluidError> {
        let kelvin = self.liquid(t)?;
        Ok(match self.kind.correlation() {
            None => water(kelvin),
            Some(c) => solution(c, self.percent(), t.celsius()),
        })
    }

    /// Density ρ, kg/m³.
    ///
    /// # Errors
    /// [`FluidError::BelowFreezing`]; [`FluidError::OutOfRange`] outside
    /// [`FluidKind::temperatures`].
    pub fn density(self, t: Temperature) -> Result<Density, FluidError> {
        self.property(t, water::density, |c, x, t| c.at(&c.density, x, t))
            .map(Density::from_si)
    }
    /// Isobaric specific heat c_p, J/(kg·K). Errors as [`Fluid::density`].
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn specific_heat(self, t: Temperature) -> Result<SpecificHeat, FluidError> {
        self.property(t, water::specific_heat, |c, x, t| {
            c.at(&c.specific_heat, x, t)
        })
        .map(SpecificHeat::from_si)
    }
    /// Thermal conductivity λ, W/(m·K).
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn conductivity(self, t: Temperature) -> Result<ThermalConductivity, FluidError> {
        self.property(t, water::conductivity, |c, x, t| {
            c.at(&c.conductivity, x, t)
        })
        .map(ThermalConductivity::from_si)
    }
    /// Dynamic viscosity μ, Pa·s.
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn viscosity(self, t: Temperature) -> Result<DynamicViscosity, FluidError> {
        self.property(t, water::viscosity, |c, x, t| {
            1e-3 * c.at(&c.log_viscosity, x, t).exp()
        })
        .map(DynamicViscosity::from_si)
    }
    /// Volumetric thermal expansion β = -(∂ρ/∂T)/ρ, 1/K, the derivative of the
    /// same correlation as [`Fluid::density`]. Negative for water below 4 °C.
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn expansion(self, t: Temperature) -> Result<ThermalExpansion, FluidError> {
        self.property(t, water::expansion, |c, x, t| {
            -c.slope(&c.density, x, t) / c.at(&c.density, x, t)
        })
        .map(ThermalExpansion::from_si)
    }
    /// Isothermal compressibility κ, 1/Pa: that of water at the same
    /// temperature (of water at 0 °C below that). For solutions at loop strength
    /// this is right to about 15 %, the glycols lying below and ethanol about
    /// level (from memory of speed-of-sound data; no source read); the pipe of
    /// a loop yields ten times as much.
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn compressibility(self, t: Temperature) -> Result<Compressibility, FluidError> {
        let kelvin = self.liquid(t)?;
        let kelvin = kelvin.max(ZERO_CELSIUS_K);
        Ok(Compressibility::from_si(water::compressibility(kelvin)))
    }
    /// Temperature at which the first ice forms.
    pub fn freezing_point(self) -> Temperature {
        let celsius = self
            .kind
            .correlation()
            .map_or(0.0, |c| c.freezing(self.percent()));
        Temperature::from_celsius(celsius)
    }
    /// How well the property correlations are known.
    pub fn spread(self) -> Spread {
        // Whole distances between sources: density 0.7 %, specific heat 4 %,
        // conductivity 3 %, viscosity 10 % (ethylene glycol 13 %), found by
        // running CoolProp's other fits side by side; water by its releases.
        match self.kind {
            FluidKind::Water => Spread {
                density: 1e-5,
                specific_heat: 5e-4,
                conductivity: 4e-3,
                viscosity: 2e-3,
            },
            kind => Spread {
                density: 0.003_5,
                specific_heat: 0.02,
                conductivity: 0.015,
                viscosity: if kind == FluidKind::EthyleneGlycol {
                    0.065
                } else {
                    0.05
                },
            },
        }
    }
}

#[cfg(test)]
mod tests;
