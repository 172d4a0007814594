//! Valid ranges, each declared once.

use super::{Dimension, Quantity};
use std::marker::PhantomData;
use thiserror::Error;

/// The valid range of an input, both ends included.
///
/// A model declares each of its ranges once as a constant and checks every
/// input against it; messages and documentation read the same constant.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Bound<Q> {
    label: &'static str,
    min: f64,
    max: f64,
    kind: PhantomData<Q>,
}

/// A value outside the range for which a model holds.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
#[error("{label} is {value} (SI), outside {min} to {max}")]
pub struct OutOfRange {
    /// What the value is, as declared with the range.
    pub label: &'static str,
    /// Dimension in which the three numbers are SI values.
    pub dimension: Dimension,
    /// The value given, in the coherent SI unit.
    pub value: f64,
    /// Lower end, in the coherent SI unit.
    pub min: f64,
    /// Upper end, in the coherent SI unit.
    pub max: f64,
}

impl<Q: Quantity> Bound<Q> {
    /// A range from `min` to `max` in the coherent SI unit.
    pub const fn si(label: &'static str, min: f64, max: f64) -> Self {
        Self {
            label,
            min,
            max,
            kind: PhantomData,
        }
    }
    /// Lower end.
    pub fn min(self) -> Q {
        Q::from_si(self.min)
    }
    /// Upper end.
    pub fn max(self) -> Q {
        Q::from_si(self.max)
    }
    /// What the value is.
    pub fn label(self) -> &'static str {
        self.label
    }
    /// Whether a value lies inside. A value that is not a number does not.
    pub fn contains(self, value: Q) -> bool {
        (self.min..=self.max).contains(&value.si())
    }
    /// Hands the value back if it lies inside.
    ///
    /// # Errors
    /// [`OutOfRange`] otherwise, also for a value that is not a number.
    pub fn check(self, value: Q) -> Result<Q, OutOfRange> {
        if self.contains(value) {
            Ok(value)
        } else {
            Err(OutOfRange {
                label: self.label,
                dimension: Q::DIMENSION,
                value: value.si(),
                min: self.min,
                max: self.max,
            })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Length;

    #[test]
    fn a_bound_takes_its_ends_and_refuses_what_is_no_number() {
        const RUN: Bound<Length> = Bound::si("run length", 1.0, 2.0);
        assert!(RUN.check(Length::from_si(1.0)).is_ok());
        assert!(RUN.check(Length::from_si(2.0)).is_ok());
        let error = RUN.check(Length::from_si(2.5)).unwrap_err();
        assert_eq!(
            (error.label, error.value, error.max),
            ("run length", 2.5, 2.0)
        );
        assert!(RUN.check(Length::from_si(f64::NAN)).is_err());
    }
}
