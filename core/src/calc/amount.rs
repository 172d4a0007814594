//! A number with its unit and accuracy, in questions and answers alike.

use crate::uncertainty::Uncertain;
use crate::units::{Dimension, Measure, Quantity, Unit, UnitSystem, parse};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::ser::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::borrow::Cow;

/// Standard uncertainties in an accuracy: ± 2 holds in 19 of 20 cases.
pub(super) const COVERAGE: f64 = 2.0;

/// A quantity as it was asked with or as it is answered: a [`Measure`] with the
/// bound either side that holds in 19 of 20 cases, as accuracies of readings are
/// written in the visit file. An answer names its source; a question may
/// repeat it, so that answers can be asked with as they are.
#[derive(Copy, Clone, Debug)]
pub(super) struct Amount<Q: Quantity> {
    measure: Measure<Q>,
    /// The accuracy and its unit; none when exact or not stated.
    accuracy: Option<(f64, Unit)>,
    source: Option<&'static str>,
}

/// The dimension of a difference of two values of a dimension.
fn width(dimension: Dimension) -> Dimension {
    match dimension {
        Dimension::Temperature => Dimension::TemperatureDifference,
        other => other,
    }
}

/// How much of the coherent SI unit one unit is, offsets left out.
pub(super) fn span(unit: Unit) -> f64 {
    unit.to_si(1.0) - unit.to_si(0.0)
}

/// The unit of a difference of two values in a unit.
pub(super) fn beside(unit: Unit) -> Unit {
    match unit.dimension() {
        Dimension::Temperature if unit == Unit::Fahrenheit => Unit::DifferenceFahrenheit,
        Dimension::Temperature => Unit::DifferenceKelvin,
        _ => unit,
    }
}

/// A number to twelve digits, so that the rounding of conversions does not show.
fn tidy(value: f64) -> f64 {
    format!("{value:.11e}").parse().unwrap_or(value)
}

impl<Q: Quantity> Amount<Q> {
    /// The quantity.
    pub fn get(self) -> Q {
        self.measure.get()
    }
    /// The quantity with its standard uncertainty, half the accuracy.
    pub fn uncertain(self) -> Uncertain<Q> {
        let standard = self.accuracy.map_or(0.0, |(a, unit)| a * span(unit));
        Uncertain::new(self.get(), standard / COVERAGE)
    }
    /// With a standard uncertainty (SI) where no accuracy was stated.
    pub fn or_standard(self, standard: f64) -> Uncertain<Q> {
        match self.accuracy {
            Some(_) => self.uncertain(),
            None => Uncertain::new(self.get(), standard),
        }
    }
}

/// How an answer is written: the units asked for and the source of what follows.
#[derive(Copy, Clone)]
pub(super) struct Show {
    pub units: UnitSystem,
    pub source: &'static str,
}

impl Show {
    /// The same, by another source.
    pub fn by(self, source: &'static str) -> Self {
        Self { source, ..self }
    }
    /// A quantity without uncertainty.
    pub fn exact<Q: Quantity>(self, quantity: Q) -> Amount<Q> {
        self.with(Uncertain::exact(quantity))
    }
    /// A quantity with its uncertainty.
    pub fn with<Q: Quantity>(self, uncertain: Uncertain<Q>) -> Amount<Q> {
        self.within(uncertain, self.units.unit(Q::DIMENSION))
    }
    /// A quantity in units other than the usual ones (US and SI).
    pub fn small<Q: Quantity>(self, uncertain: Uncertain<Q>, us: Unit, si: Unit) -> Amount<Q> {
        let unit = match self.units {
            UnitSystem::Us => us,
            UnitSystem::Si => si,
        };
        self.within(uncertain, unit)
    }
    /// A plain number.
    pub fn number(self, value: f64) -> Amount<crate::units::Number> {
        self.exact(crate::units::Number::from_si(value))
    }
    /// A share or probability.
    pub fn share(self, value: f64) -> Amount<crate::units::Fraction> {
        self.exact(crate::units::Fraction::from_si(value))
    }
    fn within<Q: Quantity>(self, uncertain: Uncertain<Q>, unit: Unit) -> Amount<Q> {
        let beside = beside(unit);
        let accuracy = COVERAGE * uncertain.standard() / span(beside);
        Amount {
            measure: Measure::of(uncertain.value(), unit),
            accuracy: (accuracy != 0.0).then_some((accuracy, beside)),
            source: Some(self.source),
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Plain<'a> {
    value: f64,
    #[serde(borrow)]
    unit: Cow<'a, str>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Wire<'a> {
    value: f64,
    #[serde(borrow)]
    unit: Cow<'a, str>,
    #[serde(borrow, default, skip_serializing_if = "Option::is_none")]
    accuracy: Option<Plain<'a>>,
    #[serde(borrow, default, skip_serializing_if = "Option::is_none")]
    source: Option<Cow<'a, str>>,
}

impl<Q: Quantity> Serialize for Amount<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let value = self.measure.value();
        if !(value.is_finite() && self.accuracy.is_none_or(|(a, _)| a.is_finite())) {
            return Err(S::Error::custom(Q::NAME));
        }
        Wire {
            value: tidy(value),
            unit: Cow::Borrowed(self.measure.unit().symbol()),
            accuracy: self.accuracy.map(|(value, unit)| Plain {
                value: tidy(value),
                unit: Cow::Borrowed(unit.symbol()),
            }),
            source: self.source.map(Cow::Borrowed),
        }
        .serialize(serializer)
    }
}

fn unit_of<E: de::Error>(dimension: Dimension, symbol: &str) -> Result<Unit, E> {
    let unit = Unit::of(dimension).find(|unit| unit.symbol() == symbol);
    unit.ok_or_else(|| E::custom(parse::accepted(dimension)))
}

impl<'de, Q: Quantity> Deserialize<'de> for Amount<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let wire = Wire::deserialize(deserializer)?;
        let accuracy = match wire.accuracy {
            Some(a) => Some((a.value, unit_of(width(Q::DIMENSION), &a.unit)?)),
            None => None,
        };
        Ok(Self {
            measure: Measure::new(wire.value, unit_of(Q::DIMENSION, &wire.unit)?),
            accuracy,
            source: None,
        })
    }
}

impl<Q: Quantity> JsonSchema for Amount<Q> {
    fn schema_name() -> Cow<'static, str> {
        Cow::Owned(format!("{}_with_accuracy", Q::NAME.replace(' ', "_")))
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let symbols = |d| -> Vec<&str> { Unit::of(d).map(Unit::symbol).collect() };
        json_schema!({
            "type": "object",
            "description": format!("A {} with its unit.", Q::NAME),
            "properties": {
                "value": { "type": "number", "minimum": -1e12, "maximum": 1e12 },
                "unit": { "type": "string", "enum": symbols(Q::DIMENSION) },
                "accuracy": {
                    "type": "object",
                    "description": "Bound either side of the value that holds in 19 of 20 cases: \
                        twice the standard uncertainty. Left out: exact, or not stated.",
                    "properties": {
                        "value": { "type": "number", "minimum": 0, "maximum": 1e12 },
                        "unit": { "type": "string", "enum": symbols(width(Q::DIMENSION)) }
                    },
                    "required": ["value", "unit"],
                    "additionalProperties": false
                },
                "source": { "type": "string", "description": "What an answer rests on." }
            },
            "required": ["value", "unit"],
            "additionalProperties": false
        })
    }
}
