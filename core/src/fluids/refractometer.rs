//! Strength from a refractometer.
//!
//! Every scale is turned into a refractive index first, so that a reading on
//! the wrong scale (a propylene-glycol scale in ethylene glycol) can still be used.

use super::concentration::bisect;
use super::hydrometer::SAMPLE_TEMPERATURE;
use super::{Fluid, FluidError, FluidKind, MASS_FRACTION, Suitability};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{Bound, Fraction, Number, Quantity, Temperature};

/// Refractive indices (sodium D line) that a loop fluid can show.
pub const REFRACTIVE_INDEX: Bound<Number> = Bound::si("refractive index", 1.32, 1.45);

/// Temperature to which scales and automatic compensation refer.
const REFERENCE_CELSIUS: f64 = 20.0;
/// Standard uncertainty of the mixing rule as an index; see [`refractive_index`].
const MODEL_UNCERTAINTY: f64 = 5e-4;

/// What a refractometer's scale shows.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum RefractometerScale {
    /// The refractive index itself.
    RefractiveIndex,
    /// Degrees Brix: mass percent of sucrose that would have this index.
    Brix,
    /// The freezing point of a solution of this kind, in °C.
    FreezingPoint(FluidKind),
}

/// Index n_D at 20 °C and density at 20 °C of the pure liquids. From memory of
/// the *CRC Handbook of Chemistry and Physics*.
fn pure_index(kind: FluidKind) -> f64 {
    match kind {
        FluidKind::Water => 1.332_99,
        FluidKind::PropyleneGlycol => 1.432_4,
        FluidKind::EthyleneGlycol => 1.431_8,
        FluidKind::Methanol => 1.328_8,
        FluidKind::Ethanol => 1.361_1,
    }
}

fn lorentz_lorenz(n: f64) -> f64 {
    (n * n - 1.0) / (n * n + 2.0)
}

/// Refractive index of a fluid (sodium D line).
///
/// Lorentz-Lorenz mixing: specific refractions r = (n²-1)/((n²+2) ρ) of the
/// pure liquids add by mass, and the density of the solution gives the index
/// back. Within 0.001 of the tables for glycols up to 50 % by mass and for
/// ethanol, 0.001 for methanol up to 40 %; temperature enters through the density.
///
/// # Errors
/// As [`Fluid::density`].
pub fn refractive_index(fluid: Fluid, t: Temperature) -> Result<Number, FluidError> {
    let specific = |kind| lorentz_lorenz(pure_index(kind)) / FluidKind::pure_density(kind).si();
    let w = fluid.mass_fraction().si();
    let refraction = (1.0 - w) * specific(FluidKind::Water) + w * specific(fluid.kind());
    let l = refraction * fluid.density(t)?.si();
    Ok(Number::from_si(((1.0 + 2.0 * l) / (1.0 - l)).sqrt()))
}

/// Index of a sucrose solution at 20 °C by mass percent, 0 to 50 °Brix. A fit
/// of our own, within 0.000 1 of the ICUMSA scale of 1974 (1.332 99, 1.347 82,
/// 1.363 84, 1.381 15, 1.399 86, 1.420 09 at 0, 10, 20, 30, 40, 50: from memory).
fn brix_index(brix: f64) -> f64 {
    1.332_99 + brix * (1.427_1e-3 + brix * (5.35e-6 + brix * 1.9e-8))
}

impl FluidKind {
    /// How well a refractometer tells the strength. The index of methanol in
    /// water hardly rises and falls again; that of ethanol rises, but its
    /// readings look like those of a weaker glycol, and it bends over.
    pub fn refractometer_suitability(self) -> Suitability {
        match self {
            Self::PropyleneGlycol | Self::EthyleneGlycol => Suitability::Good,
            Self::Ethanol => Suitability::Ambiguous,
            Self::Water | Self::Methanol => Suitability::Useless,
        }
    }
}

/// Mass fraction from a refractometer reading.
///
/// `reading` in the unit of the scale: an index, degrees Brix, or °C of
/// freezing point as a plain number. `sample`: the sample's temperature if the
/// instrument does not compensate; none if it does, or if the sample was at
/// 20 °C. Index to strength by [`refractive_index`]; its own uncertainty is
/// part of the result.
///
/// # Errors
/// [`FluidError::WrongInstrument`] for methanol, [`FluidError::NoConcentration`]
/// for water, [`FluidError::NoSuchReading`], [`FluidError::OutOfRange`].
pub fn refractometer(
    kind: FluidKind,
    scale: RefractometerScale,
    reading: Uncertain<Number>,
    sample: Option<Uncertain<Temperature>>,
) -> Result<Uncertain<Fraction>, FluidError> {
    match kind {
        FluidKind::Water => return Err(FluidError::NoConcentration),
        FluidKind::Methanol => return Err(FluidError::WrongInstrument { kind }),
        _ => {}
    }
    let reference = Temperature::from_celsius(REFERENCE_CELSIUS);
    let sample = sample.unwrap_or(Uncertain::exact(reference));
    SAMPLE_TEMPERATURE.check(sample.value())?;
    let model = Uncertain::new(Number::from_si(0.0), MODEL_UNCERTAINTY);
    let mass_fraction = |(reading, t, model): (Number, Temperature, Number)| {
        let index = scale_index(scale, reading.si())? + model.si();
        from_index(kind, index, t)
    };
    Ok(propagate((reading, sample, model), mass_fraction)?.result)
}

/// The index that a scale means, at 20 °C.
fn scale_index(scale: RefractometerScale, reading: f64) -> Result<f64, FluidError> {
    Ok(match scale {
        RefractometerScale::RefractiveIndex => {
            REFRACTIVE_INDEX.check(Number::from_si(reading))?.si()
        }
        RefractometerScale::Brix => {
            const BRIX: Bound<Number> = Bound::si("degrees Brix", 0.0, 50.0);
            brix_index(BRIX.check(Number::from_si(reading))?.si())
        }
        RefractometerScale::FreezingPoint(kind) => {
            let freezing = Temperature::from_celsius(reading);
            let fluid = Fluid::from_freezing_point(kind, freezing)?;
            let t = Temperature::from_celsius(REFERENCE_CELSIUS);
            refractive_index(fluid, t)?.si()
        }
    })
}

fn from_index(kind: FluidKind, index: f64, t: Temperature) -> Result<Fraction, FluidError> {
    let at = |w: f64| {
        let fluid = Fluid::new(kind, Fraction::from_si(w)).ok()?;
        refractive_index(fluid, t).ok().map(Quantity::si)
    };
    // Above 55 % the index of ethanol is nearly flat.
    let within: Bound<Fraction> = Bound::si(MASS_FRACTION.label(), 1e-6, 0.55);
    match (at(within.min().si()), at(within.max().si())) {
        (Some(low), Some(high)) if (low..=high).contains(&index) => {}
        _ => return Err(FluidError::NoSuchReading { kind }),
    }
    Ok(bisect(within, |w| at(w).is_some_and(|n| n < index)))
}
