//! Valid ranges, each declared once.

use super::{Dimension, Quantity, Unit};
use std::marker::PhantomData;

/// The closed range in which a quantity is accepted, with the label that errors carry.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Bound<Q> {
    /// What is bounded, stable, for messages and schemas.
    pub label: &'static str,
    /// Smallest accepted value, SI.
    pub min: f64,
    /// Largest accepted value, SI.
    pub max: f64,
    kind: PhantomData<Q>,
}

/// A value outside the range for which a function is valid.
#[derive(Copy, Clone, Debug, PartialEq, thiserror::Error)]
#[error("{label} = {value} is outside {min}..{max} (SI units, {dimension:?})")]
pub struct OutOfRange {
    /// Label of the bound.
    pub label: &'static str,
    /// The refused value, SI; NaN if it was not a number.
    pub value: f64,
    /// Smallest accepted value, SI.
    pub min: f64,
    /// Largest accepted value, SI.
    pub max: f64,
    /// What is measured, which says the units a person may be shown.
    pub dimension: Dimension,
}

impl<Q: Quantity> Bound<Q> {
    /// A bound in SI units.
    pub const fn new(label: &'static str, min: f64, max: f64) -> Self {
        Self {
            label,
            min,
            max,
            kind: PhantomData,
        }
    }
    /// The SI value if it lies in the range; NaN and infinities never do. A limit written in
    /// another unit may round to just outside and is taken as the limit.
    pub fn check(&self, quantity: Q) -> Result<f64, OutOfRange> {
        let value = quantity.si();
        let rounding = 1e-9 * self.min.abs().max(self.max.abs());
        if (self.min - rounding..=self.max + rounding).contains(&value) {
            Ok(value.clamp(self.min, self.max))
        } else {
            Err(OutOfRange {
                label: self.label,
                value,
                min: self.min,
                max: self.max,
                dimension: Q::DIMENSION,
            })
        }
    }
    /// The limits in a unit of the right dimension.
    pub fn limits(&self, unit: Unit) -> (f64, f64) {
        (unit.from_si(self.min), unit.from_si(self.max))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Temperature;

    const FROST: Bound<Temperature> = Bound::new("temperature", 263.15, 313.15);

    #[test]
    fn refuses_what_is_outside_and_what_is_no_number() {
        assert!(FROST.check(Temperature::from_celsius(-10.0)).is_ok());
        assert!(FROST.check(Temperature::from_celsius(40.1)).is_err());
        assert!(FROST.check(Temperature::from_si(f64::NAN)).is_err());
    }
}
