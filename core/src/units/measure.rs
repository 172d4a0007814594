//! A number as it was written, with its unit.

use super::{Quantity, Unit, parse};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::borrow::Cow;
use std::marker::PhantomData;

/// A value of the kind `Q` in the unit in which somebody wrote it.
///
/// Records keep measures, so that a reading of 55 psi stays 55 psi for ever;
/// the physics sees only [`Measure::get`].
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Measure<Q> {
    value: f64,
    unit: Unit,
    kind: PhantomData<Q>,
}

impl<Q: Quantity> Measure<Q> {
    /// A value in a unit of the right dimension (checked in debug builds; the
    /// public ways in, [`parse::measure`] and deserialisation, always check).
    pub fn new(value: f64, unit: Unit) -> Self {
        debug_assert_eq!(unit.dimension(), Q::DIMENSION);
        Self {
            value,
            unit,
            kind: PhantomData,
        }
    }
    /// A quantity expressed in a unit.
    pub fn of(quantity: Q, unit: Unit) -> Self {
        Self::new(unit.from_si(quantity.si()), unit)
    }
    /// The quantity.
    pub fn get(self) -> Q {
        Q::from_si(self.unit.to_si(self.value))
    }
    /// The number as written.
    pub fn value(self) -> f64 {
        self.value
    }
    /// The unit as written.
    pub fn unit(self) -> Unit {
        self.unit
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Wire<'a> {
    value: f64,
    #[serde(borrow)]
    unit: Cow<'a, str>,
}

impl<Q: Quantity> Serialize for Measure<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Wire {
            value: self.value,
            unit: Cow::Borrowed(self.unit.symbol()),
        }
        .serialize(serializer)
    }
}

impl<'de, Q: Quantity> Deserialize<'de> for Measure<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let wire = Wire::deserialize(deserializer)?;
        let unit = Unit::of(Q::DIMENSION).find(|unit| unit.symbol() == wire.unit);
        let unit = unit.ok_or_else(|| {
            de::Error::custom(format!(
                "`{}` is not a unit of {}; write one of: {}",
                wire.unit,
                Q::NAME,
                parse::accepted(Q::DIMENSION)
            ))
        })?;
        Ok(Self::new(wire.value, unit))
    }
}

impl<Q: Quantity> JsonSchema for Measure<Q> {
    fn schema_name() -> Cow<'static, str> {
        Cow::Owned(Q::NAME.replace(' ', "_"))
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let units: Vec<&str> = Unit::of(Q::DIMENSION).map(Unit::symbol).collect();
        json_schema!({
            "type": "object",
            "description": format!("A {} with its unit.", Q::NAME),
            "properties": {
                "value": { "type": "number", "minimum": -1e12, "maximum": 1e12 },
                "unit": { "type": "string", "enum": units }
            },
            "required": ["value", "unit"],
            "additionalProperties": false
        })
    }
}
