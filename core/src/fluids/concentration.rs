//! Ways of saying how strong a solution is.

use super::{Fluid, FluidError, FluidKind, MASS_FRACTION};
use crate::units::{Bound, Density, Fraction, Quantity, Temperature};

/// Volume fraction of antifreeze that is looked at before its mass fraction is.
pub const VOLUME_FRACTION: Bound<Fraction> = Bound::si("volume fraction of antifreeze", 0.0, 0.7);

/// Density of water at 20 °C, kg/m³. IAPWS SR6-08.
const WATER_20: f64 = 998.207;

/// Largest number of halvings; sixty exhaust the digits of a double.
const HALVINGS: usize = 60;

impl FluidKind {
    /// Density of the pure antifreeze at 20 °C. From memory of the *CRC
    /// Handbook of Chemistry and Physics*; the alcohols agree with the reference
    /// equations of state in CoolProp to 0.05 %.
    pub fn pure_density(self) -> Density {
        Density::from_si(match self {
            Self::Water => WATER_20,
            Self::PropyleneGlycol => 1_036.1,
            Self::EthyleneGlycol => 1_113.5,
            Self::Methanol => 791.4,
            Self::Ethanol => 789.3,
        })
    }
}

impl Fluid {
    /// From the volume fraction φ of antifreeze: volume of the pure antifreeze in
    /// that of the finished solution, both at 20 °C. A loop of volume V so needs φV
    /// of antifreeze; the water takes a little more than the rest, because the
    /// mixture contracts. Solves φ = w ρ(w)/ρ_a for w. Of the ways to count by
    /// volume, this is the one that agrees best with handbook tables.
    ///
    /// # Errors
    /// [`FluidError::OutOfRange`], [`FluidError::NoConcentration`].
    pub fn from_volume_fraction(
        kind: FluidKind,
        volume_fraction: Fraction,
    ) -> Result<Self, FluidError> {
        let phi = VOLUME_FRACTION.check(volume_fraction)?;
        if phi.si() == 0.0 {
            return Ok(Self::WATER);
        }
        let strongest = Self::new(kind, MASS_FRACTION.max())?.volume_fraction();
        Bound::si(VOLUME_FRACTION.label(), 0.0, strongest.si()).check(phi)?;
        let fraction = bisect(MASS_FRACTION, |w| {
            by_volume(kind, w).is_some_and(|x| x < phi.si())
        });
        Self::new(kind, fraction)
    }
    /// Volume fraction of antifreeze, as in [`Fluid::from_volume_fraction`].
    pub fn volume_fraction(self) -> Fraction {
        Fraction::from_si(by_volume(self.kind, self.mass_fraction).unwrap_or(0.0))
    }
    /// The solution that freezes at a temperature. From 0 °C down to the
    /// freezing point of the strongest solution in [`MASS_FRACTION`].
    ///
    /// # Errors
    /// [`FluidError::OutOfRange`], [`FluidError::NoConcentration`].
    pub fn from_freezing_point(kind: FluidKind, freezing: Temperature) -> Result<Self, FluidError> {
        let correlation = kind.correlation().ok_or(FluidError::NoConcentration)?;
        let strongest = Self::new(kind, MASS_FRACTION.max())?.freezing_point();
        let water = Temperature::from_celsius(0.0);
        Bound::si("freezing point", strongest.si(), water.si()).check(freezing)?;
        // The correlations fall all the way; a test walks along them.
        let fraction = bisect(MASS_FRACTION, |w| {
            correlation.freezing(100.0 * w) > freezing.celsius()
        });
        Self::new(kind, fraction)
    }
    /// The weaker solution that has a density at a temperature, within a range
    /// of strength over which the density only rises or only falls.
    pub(super) fn from_density(
        kind: FluidKind,
        within: Bound<Fraction>,
        density: f64,
        t: Temperature,
    ) -> Result<Self, FluidError> {
        let at = |w: f64| -> Result<f64, FluidError> {
            Ok(Self::new(kind, Fraction::from_si(w))?.density(t)?.si())
        };
        let (weak, strong) = (at(within.min().si())?, at(within.max().si())?);
        let (low, high) = (weak.min(strong), weak.max(strong));
        if !(low..=high).contains(&density) {
            return Err(FluidError::NoSuchReading { kind });
        }
        let rising = strong > weak;
        let fraction = bisect(within, |w| at(w).is_ok_and(|rho| (rho < density) == rising));
        Self::new(kind, fraction)
    }
}

/// Volume fraction at 20 °C by mass fraction; none for water.
fn by_volume(kind: FluidKind, w: f64) -> Option<f64> {
    let correlation = kind.correlation()?;
    let density = correlation.at(&correlation.density, 100.0 * w, 20.0);
    Some(w * density / kind.pure_density().si())
}

/// Where a condition that holds at the lower end stops to hold.
pub(super) fn bisect(within: Bound<Fraction>, holds: impl Fn(f64) -> bool) -> Fraction {
    let (mut low, mut high) = (within.min().si(), within.max().si());
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if holds(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    Fraction::from_si(high)
}
