//! What no one knows exactly of a loop, and how well it is known before any reading.

use super::balance::{PIPE_EXPANSION, Properties, RESTRAINT};
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, Quantity, ThermalExpansion};

/// A property or a circumstance of the loop that no one knows exactly.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Unknown {
    /// Modulus of the pipe against the table.
    Modulus,
    /// Linear expansion of the pipe.
    PipeExpansion,
    /// Hold that soil or grout has on the pipe.
    Restraint,
    /// Thermal growth of the fluid, that is its strength.
    FluidExpansion,
    /// Pressure at the charge.
    ChargePressure,
    /// Mean temperature at the charge.
    ChargeTemperature,
    /// Air left at the charge.
    TrappedAir,
    /// Mean temperature at the moment looked at.
    Temperature,
    /// The model itself.
    Model,
}

/// Number of coordinates that a belief has.
pub(super) const SHARED: usize = 7;

impl Unknown {
    /// The unknowns a belief is about, in the order of its coordinates, then the two that
    /// are new at every moment.
    pub const ALL: [Self; SHARED + 2] = [
        Self::Modulus,
        Self::PipeExpansion,
        Self::Restraint,
        Self::FluidExpansion,
        Self::ChargePressure,
        Self::ChargeTemperature,
        Self::TrappedAir,
        Self::Temperature,
        Self::Model,
    ];

    /// Stable identifier.
    pub fn id(self) -> &'static str {
        match self {
            Self::Modulus => "modulus",
            Self::PipeExpansion => "pipe-expansion",
            Self::Restraint => "restraint",
            Self::FluidExpansion => "fluid-expansion",
            Self::ChargePressure => "charge-pressure",
            Self::ChargeTemperature => "charge-temperature",
            Self::TrappedAir => "trapped-air",
            Self::Temperature => "temperature",
            Self::Model => "model",
        }
    }
}

/// What surrounds the pipe.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Surround {
    /// Water of a pond or lake: nothing holds.
    Pond,
    /// Soil of a trench.
    Trench,
    /// Grout of a borehole.
    Grout,
}

/// How well the pipe's and the fluid's properties are known before any reading.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Unknowns {
    /// Relative standard uncertainty of the modulus against the table.
    pub modulus: Fraction,
    /// Linear expansion of the pipe.
    pub expansion: Uncertain<ThermalExpansion>,
    /// Restraint by the surround; a value without uncertainty is taken as known.
    pub restraint: Uncertain<Fraction>,
    /// Relative standard uncertainty of the fluid's thermal growth.
    pub fluid: Fraction,
}

impl Unknowns {
    /// Before anything is known of this loop. Expansion 1.4 to 1.6·10⁻⁴ /K: PPI handbook,
    /// from memory, widened towards the 1.3 to 2.0·10⁻⁴ of European texts, from memory.
    /// Modulus ±15 %: judgement, no source.
    ///
    /// Restraint by surround: judgement about what elasticity gives. A ring of stiffness
    /// K = 2E/(SDR − 1) in ground of stiffness k = E_s/(1 + ν_s) (Lamé's hole in an endless
    /// body) loses the share k/(K + k) of its movement. SDR 11 after a year (E = 280 MPa, PPI
    /// handbook): K = 56 MPa. Soil of a trench, E_s 5 to 20 MPa (from memory of AWWA M55):
    /// 0.06 to 0.22, more in dry clay or gravel. Soft bentonite grout holds as little, cement
    /// grout almost wholly where it keeps its bond: hence the wide doubt about grout.
    pub fn typical(surround: Surround) -> Self {
        let (held, doubt) = match surround {
            Surround::Pond => (0.0, 0.0),
            Surround::Trench => (0.2, 0.12),
            Surround::Grout => (0.35, 0.18),
        };
        Self {
            modulus: Fraction::from_si(0.15),
            expansion: Uncertain::new(ThermalExpansion::from_si(1.55e-4), 0.15e-4),
            restraint: Uncertain::new(Fraction::from_si(held), doubt),
            fluid: Fraction::from_si(0.10),
        }
    }

    /// The properties with every doubt at its middle.
    pub fn middle(&self) -> Properties {
        Properties {
            modulus_scale: 1.0,
            expansion: self.expansion.value(),
            restraint: self.restraint.value(),
            fluid_scale: 1.0,
        }
    }

    /// The properties at a point of the coordinates, in the order of [`Unknown::ALL`].
    pub(super) fn properties(&self, z: &[f64]) -> Properties {
        Properties {
            modulus_scale: (self.modulus.si() * z[0]).exp(),
            expansion: log_normal(
                self.expansion,
                z[1],
                PIPE_EXPANSION.min(),
                PIPE_EXPANSION.max(),
            ),
            restraint: share(self.restraint, z[2]),
            fluid_scale: (self.fluid.si() * z[3]).exp(),
        }
    }
}

/// A positive quantity with median and relative uncertainty of the value given.
pub(super) fn log_normal<Q: Quantity>(value: Uncertain<Q>, z: f64, least: Q, most: Q) -> Q {
    let middle = value.value().si();
    if middle <= 0.0 {
        return value.value();
    }
    let spread = (value.standard() / middle).powi(2).ln_1p().sqrt();
    Q::from_si((middle * (spread * z).exp()).clamp(least.si(), most.si()))
}

/// A share between 0 and 1 with median and, to first order, the uncertainty of the value given.
fn share(value: Uncertain<Fraction>, z: f64) -> Fraction {
    let middle = value.value().si();
    if value.standard() == 0.0 || middle <= 0.0 || middle >= 1.0 {
        return value.value();
    }
    let logit = (middle / (1.0 - middle)).ln();
    let spread = value.standard() / (middle * (1.0 - middle));
    let moved = 1.0 / (1.0 + (-(logit + spread * z)).exp());
    Fraction::from_si(moved.min(RESTRAINT.max().si()))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The estimate of [`Unknowns::typical`], worked out again.
    #[test]
    fn the_restraint_of_a_trench_covers_what_elasticity_gives() {
        let ring = 2.0 * 280.0 / (11.0 - 1.0);
        let prior = Unknowns::typical(Surround::Trench).restraint;
        let at = |z: f64| share(prior, z).si();
        for soil in [5.0, 20.0] {
            let ground = soil / 1.3;
            let held = ground / (ring + ground);
            assert!((at(-2.0)..at(2.0)).contains(&held), "{soil}: {held}");
        }
        // Grout may hold little or nearly all.
        let grout = Unknowns::typical(Surround::Grout).restraint;
        assert!(share(grout, -2.0).si() < 0.12 && share(grout, 2.0).si() > 0.7);
    }
}
