//! The two systems in which people think.

use super::{Dimension, Unit};

/// US customary or SI, chosen once.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default, Hash)]
pub enum UnitSystem {
    /// psi, gpm, °F, gal, ft, in.
    #[default]
    Us,
    /// bar, L/s, °C, L, m, mm.
    Si,
}

impl UnitSystem {
    /// Stable identifier.
    pub fn id(self) -> &'static str {
        match self {
            Self::Us => "us",
            Self::Si => "si",
        }
    }
    /// The system with this identifier.
    pub fn from_id(id: &str) -> Option<Self> {
        [Self::Us, Self::Si]
            .into_iter()
            .find(|system| system.id() == id)
    }

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
