//! Strength from a hydrometer.

use super::concentration::bisect;
use super::{Fluid, FluidError, FluidKind, Suitability, water};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{Bound, Fraction, Number, Quantity, Temperature, TemperatureDifference};

/// Readings that a hydrometer for these fluids can show.
pub const SPECIFIC_GRAVITY: Bound<Number> = Bound::si("specific gravity", 0.85, 1.15);

/// Cubic expansion of hydrometer glass, 1/K. From memory of ISO 649-1 (25e-6 per °C).
const GLASS_EXPANSION: f64 = 25e-6;

/// The temperature for which a hydrometer is made: it reads the density of the
/// sample at that temperature over that of water at the same.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct HydrometerScale {
    /// For example 60 °F (the usual one in North America) or 20 °C.
    pub reference: Temperature,
}

impl Default for HydrometerScale {
    /// 60/60 °F.
    fn default() -> Self {
        Self {
            reference: Temperature::from_fahrenheit(60.0),
        }
    }
}

impl FluidKind {
    /// How well a hydrometer tells the strength. Density falls with alcohol and
    /// rises with glycol; propylene glycol adds so little that a scale division
    /// of 0.001 is more than one percent. Ethanol hardly changes the density
    /// of cold water at small strength, so the sample should be warm.
    pub fn hydrometer_suitability(self) -> Suitability {
        match self {
            Self::Water => Suitability::Useless,
            Self::PropyleneGlycol => Suitability::Coarse,
            Self::EthyleneGlycol | Self::Methanol | Self::Ethanol => Suitability::Good,
        }
    }
}

/// Mass fraction from a specific gravity read at the sample's temperature.
///
/// ρ = SG · ρ_w(T_ref) · (1 - γ (T - T_ref)), γ the expansion of the glass (a
/// warm hydrometer displaces more); then the strength at which the solution has
/// that density at T. Sample from 0 °C (and above freezing) to 40 °C. The
/// correlation's own uncertainty of density is part of the result.
///
/// # Errors
/// [`FluidError::NoSuchReading`] where no strength gives this density;
/// [`FluidError::OutOfRange`]; [`FluidError::NoConcentration`] for water.
pub fn hydrometer(
    kind: FluidKind,
    scale: HydrometerScale,
    reading: Uncertain<Number>,
    sample: Uncertain<Temperature>,
) -> Result<Uncertain<Fraction>, FluidError> {
    if kind == FluidKind::Water {
        return Err(FluidError::NoConcentration);
    }
    SPECIFIC_GRAVITY.check(reading.value())?;
    SAMPLE_TEMPERATURE.check(sample.value())?;
    let reference = SAMPLE_TEMPERATURE.check(scale.reference)?;
    let unit = water::density(reference.si());
    // The difference between the sources at the strength of a loop fluid is
    // smaller than over the whole range: a tenth of a percent, one standard uncertainty.
    let model = Uncertain::new(Number::from_si(1.0), MODEL_UNCERTAINTY);
    let mass_fraction = |(reading, t, model): (Number, Temperature, Number)| {
        let warmer: TemperatureDifference = t - reference;
        let density = reading.si() * unit * (1.0 - GLASS_EXPANSION * warmer.si()) * model.si();
        let range = monotone(kind, t);
        Fluid::from_density(kind, range, density, t).map(Fluid::mass_fraction)
    };
    Ok(propagate((reading, sample, model), mass_fraction)?.result)
}

/// Relative standard uncertainty of the density correlation near loop strength.
const MODEL_UNCERTAINTY: f64 = 5e-4;

/// Temperature of a sample on which a reading is taken.
pub(super) const SAMPLE_TEMPERATURE: Bound<Temperature> =
    Bound::si("temperature of the sample", 273.15, 313.15);

/// Strengths over which the density of the solution only rises, or only falls.
fn monotone(kind: FluidKind, t: Temperature) -> Bound<Fraction> {
    let density = |w: f64| {
        let fluid = Fluid::new(kind, Fraction::from_si(w)).ok()?;
        fluid.density(t).ok().map(Quantity::si)
    };
    let sign = if kind.is_flammable() { -1.0 } else { 1.0 };
    let steps = |w: f64| match (density(w), density(w + 0.01)) {
        (Some(here), Some(next)) => sign * (next - here) > 0.0,
        _ => false,
    };
    // Weak solutions of alcohol in cold water can be flat: start where it falls.
    let start = (1..20).map(|i| 0.01 * f64::from(i)).find(|w| steps(*w));
    let range = Bound::si("mass fraction of antifreeze", start.unwrap_or(0.01), 0.55);
    let end = bisect(range, |w| {
        // Sampled, so that one turning point anywhere below is seen.
        let from = range.min().si();
        (0..=20).all(|i| steps(from + (w - from) * f64::from(i) / 20.0))
    });
    Bound::si("mass fraction of antifreeze", range.min().si(), end.si())
}
