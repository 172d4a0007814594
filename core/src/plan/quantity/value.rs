//! A quantity of any kind, with its uncertainty.

use crate::records::ReadingKind;
use crate::uncertainty::Uncertain;
use crate::units::Duration;
use crate::units::{
    Current, Dimension, ElectricalConductivity, Fraction, GaugePressure, Length, MassConcentration,
    Number, Power, PressureDifference, Quantity, Temperature, TemperatureDifference, Unit,
    Velocity, Volume, VolumeFlow,
};
use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

macro_rules! values {
    ($($kind:ident $id:literal,)*) => {
        /// Kinds of quantity that a plan speaks of.
        #[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
        #[allow(missing_docs)] // the names are those of the typed quantities
        pub enum ValueKind { $($kind),* }

        /// A typed quantity with its standard uncertainty. It has no unit: the
        /// edge prints it in the unit the reader wants.
        #[derive(Copy, Clone, PartialEq, Debug)]
        #[allow(missing_docs)]
        pub enum Value { $($kind(Uncertain<$kind>)),* }

        impl ValueKind {
            /// Stable identifier.
            pub fn id(self) -> &'static str {
                match self { $(Self::$kind => $id),* }
            }
            /// The dimension whose units may be written.
            pub fn dimension(self) -> Dimension {
                match self { $(Self::$kind => <$kind as Quantity>::DIMENSION),* }
            }
            /// A value of this kind from SI numbers.
            pub fn value(self, si: f64, standard: f64) -> Value {
                match self {
                    $(Self::$kind => Value::$kind(Uncertain::new($kind::from_si(si), standard))),*
                }
            }
        }
        impl Value {
            /// Its kind.
            pub fn kind(self) -> ValueKind {
                match self { $(Self::$kind(_) => ValueKind::$kind),* }
            }
            /// Best value in the coherent SI unit.
            pub fn si(self) -> f64 {
                match self { $(Self::$kind(value) => value.value().si()),* }
            }
            /// Standard uncertainty in the coherent SI unit.
            pub fn standard(self) -> f64 {
                match self { $(Self::$kind(value) => value.standard()),* }
            }
        }
        $(impl From<Uncertain<$kind>> for Value {
            fn from(value: Uncertain<$kind>) -> Self { Self::$kind(value) }
        }
        impl From<$kind> for Value {
            fn from(value: $kind) -> Self { Self::$kind(Uncertain::exact(value)) }
        })*
    };
}

values! {
    GaugePressure "gauge-pressure",
    PressureDifference "pressure-difference",
    Temperature "temperature",
    TemperatureDifference "temperature-difference",
    VolumeFlow "volume-flow",
    Velocity "velocity",
    Volume "volume",
    Length "length",
    Duration "duration",
    Power "power",
    Current "current",
    Fraction "fraction",
    Number "number",
    ElectricalConductivity "electrical-conductivity",
    MassConcentration "mass-concentration",
}

impl ValueKind {
    /// A value of this kind as somebody wrote it, if the unit fits the kind.
    pub fn written(self, value: f64, unit: &str) -> Option<Value> {
        let unit = Unit::of(self.dimension()).find(|known| known.symbol() == unit)?;
        value
            .is_finite()
            .then(|| self.value(unit.to_si(value), 0.0))
    }
}

impl From<ReadingKind> for ValueKind {
    fn from(kind: ReadingKind) -> Self {
        match kind {
            ReadingKind::GaugePressure => Self::GaugePressure,
            ReadingKind::PressureDifference => Self::PressureDifference,
            ReadingKind::Temperature => Self::Temperature,
            ReadingKind::TemperatureDifference => Self::TemperatureDifference,
            ReadingKind::VolumeFlow => Self::VolumeFlow,
            ReadingKind::Volume => Self::Volume,
            ReadingKind::Length => Self::Length,
            ReadingKind::Power => Self::Power,
            ReadingKind::Current => Self::Current,
            ReadingKind::Fraction => Self::Fraction,
            ReadingKind::Number => Self::Number,
            ReadingKind::ElectricalConductivity => Self::ElectricalConductivity,
            ReadingKind::MassConcentration => Self::MassConcentration,
        }
    }
}

impl Serialize for Value {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Value", 3)?;
        out.serialize_field("kind", self.kind().id())?;
        out.serialize_field("si", &self.si())?;
        out.serialize_field("standard", &self.standard())?;
        out.end()
    }
}
