//! The two systems in which people think.

use super::{Dimension, Unit};
use crate::named::named;

named! {
    /// US customary or SI, chosen once.
    #[derive(Copy, Clone, PartialEq, Eq, Debug, Default, Hash)]
    pub enum UnitSystem {
        /// psi, gpm, °F, gal, ft, in.
        #[default]
        Us = "us",
        /// bar, L/s, °C, L, m, mm.
        Si = "si",
    }
}

impl UnitSystem {
    /// The unit in which a value of a dimension is shown.
    pub fn unit(self, dimension: Dimension) -> Unit {
        use Dimension as D;
        let us = self == Self::Us;
        let pick = |us_unit, si_unit| if us { us_unit } else { si_unit };
        match dimension {
            D::Temperature => pick(Unit::Fahrenheit, Unit::Celsius),
            D::TemperatureDifference => pick(Unit::DifferenceFahrenheit, Unit::DifferenceKelvin),
            D::Pressure => pick(Unit::Psi, Unit::Bar),
            D::VolumeFlow => pick(Unit::GallonPerMinute, Unit::LitrePerSecond),
            D::Volume => pick(Unit::Gallon, Unit::Litre),
            D::Length => pick(Unit::Foot, Unit::Metre),
            D::Area => pick(Unit::SquareFoot, Unit::SquareMetre),
            D::Velocity => pick(Unit::FootPerSecond, Unit::MetrePerSecond),
            D::Power => pick(Unit::BtuPerHour, Unit::Kilowatt),
            D::Duration => Unit::Minute,
            D::Conductance => pick(Unit::BtuPerHourFahrenheit, Unit::KilowattPerKelvin),
            D::ThermalResistance => pick(Unit::FahrenheitHourPerBtu, Unit::KelvinPerKilowatt),
            D::PressureSlope => pick(Unit::PsiPerFahrenheit, Unit::BarPerKelvin),
            D::VolumeGive => pick(Unit::GallonPerPsi, Unit::LitrePerBar),
            D::Fraction => Unit::Percent,
            other => Unit::of(other).next().unwrap_or(Unit::Plain),
        }
    }
}
