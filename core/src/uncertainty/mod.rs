//! Values with their standard uncertainty, and what follows from them.
//!
//! Law of propagation of uncertainty to first order, sensitivities by central
//! differences, inputs independent of each other: JCGM 100:2008 (GUM), 5.1.2.
//! An unknown fact (the length of a pipe nobody measured) is a wide
//! distribution here, not an error.

mod combine;
mod normal;
mod propagate;

pub use combine::{Combined, weighted_mean};
pub use normal::cumulative as normal_cumulative;
pub use propagate::{Inputs, Propagated, propagate};

use crate::units::Quantity;

/// Best value of a quantity and its standard uncertainty (one standard deviation).
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Uncertain<Q> {
    value: Q,
    standard: f64,
}

impl<Q: Quantity> Uncertain<Q> {
    /// A value with its standard uncertainty in the coherent SI unit (for a
    /// temperature: in kelvin). The sign of the uncertainty is dropped; one that
    /// is not a number counts as infinite.
    pub fn new(value: Q, standard: f64) -> Self {
        let standard = if standard.is_nan() {
            f64::INFINITY
        } else {
            standard.abs()
        };
        Self { value, standard }
    }
    /// A value that is known, or whose uncertainty does not matter.
    pub fn exact(value: Q) -> Self {
        Self::new(value, 0.0)
    }
    /// A value known to a relative standard uncertainty.
    pub fn relative(value: Q, relative: f64) -> Self {
        Self::new(value, value.si() * relative)
    }
    /// A value that lies within ± `half_width` (SI), every place alike: an
    /// instrument's stated accuracy. Standard uncertainty a/√3 (GUM 4.3.7).
    pub fn within(value: Q, half_width: f64) -> Self {
        Self::new(value, half_width / 3f64.sqrt())
    }
    /// A fact known only to lie between two values, every place alike (GUM 4.3.7).
    pub fn between(low: Q, high: Q) -> Self {
        let (low, high) = (low.si(), high.si());
        Self::within(Q::from_si(0.5 * (low + high)), 0.5 * (high - low))
    }
    /// The best value.
    pub fn value(self) -> Q {
        self.value
    }
    /// The standard uncertainty in the coherent SI unit.
    pub fn standard(self) -> f64 {
        self.standard
    }
    /// Lower and upper end of the interval of ± `factor` standard
    /// uncertainties; a factor of 2 covers about 95 % of a normal distribution.
    pub fn interval(self, factor: f64) -> (Q, Q) {
        let half = factor * self.standard;
        (
            Q::from_si(self.value.si() - half),
            Q::from_si(self.value.si() + half),
        )
    }
    /// Probability that the true value lies above a limit, the distribution
    /// taken as normal. For a value without uncertainty: 0, 1, or ½ at the limit.
    pub fn probability_above(self, limit: Q) -> f64 {
        let distance = self.value.si() - limit.si();
        if distance == 0.0 {
            0.5
        } else {
            normal::cumulative(distance / self.standard)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{PressureDifference, Temperature};

    #[test]
    fn an_instrument_of_known_accuracy_has_the_uncertainty_of_the_rectangle() {
        let reading = Uncertain::within(Temperature::from_celsius(5.0), 0.3);
        assert!((reading.standard() - 0.173_205_080_756_887_7).abs() < 1e-15);
        let band = Uncertain::between(
            Temperature::from_celsius(4.7),
            Temperature::from_celsius(5.3),
        );
        assert!((band.value().celsius() - 5.0).abs() < 1e-12);
        assert!((band.standard() - reading.standard()).abs() < 1e-12);
    }

    #[test]
    fn a_limit_gives_a_probability_and_never_no_number() {
        let p = |standard, limit| {
            Uncertain::new(PressureDifference::from_si(10.0), standard)
                .probability_above(PressureDifference::from_si(limit))
        };
        assert!((p(2.0, 10.0) - 0.5).abs() < 1e-15);
        // Normal table: 0.977 25 at two standard deviations.
        assert!((p(2.0, 6.0) - 0.977_249_868_051_820_8).abs() < 1e-12);
        assert!((p(0.0, 9.0), p(0.0, 11.0)) == (1.0, 0.0));
        assert!((p(f64::NAN, 0.0) - 0.5).abs() < 1e-15);
    }
}
