//! First-order propagation through any function.

use super::Uncertain;
use crate::units::Quantity;

/// Steps of the central differences, as a part of the standard uncertainty:
/// small enough that the curvature of the function does not count, large enough
/// that the rounding and the stopping error of an iterative function do not.
const STEP: f64 = 1e-2;
/// Smallest step relative to the value, against rounding.
const LEAST_RELATIVE_STEP: f64 = 1e-6;

/// A list of uncertain inputs of different kinds: a tuple of [`Uncertain`], or
/// a slice of them when all are of one kind.
pub trait Inputs: Copy {
    /// The plain values that the function takes.
    type Values;
    /// Standard uncertainty of each input, in order.
    fn standards(&self) -> Vec<f64>;
    /// Best value of each input in SI, in order.
    fn centres(&self) -> Vec<f64>;
    /// The values, input number `moved` shifted by `by` (SI).
    fn shifted(&self, moved: usize, by: f64) -> Self::Values;
}

fn shift<Q: Quantity>(input: Uncertain<Q>, by: f64) -> Q {
    if by == 0.0 {
        input.value
    } else {
        Q::from_si(input.value.si() + by)
    }
}

impl<Q: Quantity> Inputs for &[Uncertain<Q>] {
    type Values = Vec<Q>;
    fn standards(&self) -> Vec<f64> {
        self.iter().map(|input| input.standard).collect()
    }
    fn centres(&self) -> Vec<f64> {
        self.iter().map(|input| input.value.si()).collect()
    }
    fn shifted(&self, moved: usize, by: f64) -> Vec<Q> {
        self.iter()
            .enumerate()
            .map(|(i, input)| shift(*input, if i == moved { by } else { 0.0 }))
            .collect()
    }
}

macro_rules! tuple_inputs {
    ($($kind:ident $index:tt),+) => {
        impl<$($kind: Quantity),+> Inputs for ($(Uncertain<$kind>,)+) {
            type Values = ($($kind,)+);
            fn standards(&self) -> Vec<f64> {
                vec![$(self.$index.standard),+]
            }
            fn centres(&self) -> Vec<f64> {
                vec![$(self.$index.value.si()),+]
            }
            fn shifted(&self, moved: usize, by: f64) -> Self::Values {
                ($(shift(self.$index, if moved == $index { by } else { 0.0 }),)+)
            }
        }
    };
}
tuple_inputs!(A 0);
tuple_inputs!(A 0, B 1);
tuple_inputs!(A 0, B 1, C 2);
tuple_inputs!(A 0, B 1, C 2, D 3);
tuple_inputs!(A 0, B 1, C 2, D 3, E 4);
tuple_inputs!(A 0, B 1, C 2, D 3, E 4, F 5);
tuple_inputs!(A 0, B 1, C 2, D 3, E 4, F 5, G 6);
tuple_inputs!(A 0, B 1, C 2, D 3, E 4, F 5, G 6, H 7);
tuple_inputs!(A 0, B 1, C 2, D 3, E 4, F 5, G 6, H 7, I 8);
tuple_inputs!(A 0, B 1, C 2, D 3, E 4, F 5, G 6, H 7, I 8, J 9);

/// A result with its uncertainty and where that comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Propagated<Q> {
    /// The result.
    pub result: Uncertain<Q>,
    /// Contribution of each input to the standard uncertainty, SI, with its
    /// sign: sensitivity times standard uncertainty.
    pub contributions: Vec<f64>,
}

impl<Q: Quantity> Propagated<Q> {
    /// Part of the variance that comes from each input; all zero if nothing is uncertain.
    pub fn shares(&self) -> Vec<f64> {
        let variance: f64 = self.contributions.iter().map(|c| c * c).sum();
        self.contributions
            .iter()
            .map(|c| {
                if variance > 0.0 {
                    c * c / variance
                } else {
                    0.0
                }
            })
            .collect()
    }
    /// Number of the input that makes the result most uncertain; none if nothing is.
    pub fn widest(&self) -> Option<usize> {
        (0..self.contributions.len())
            .filter(|&i| self.contributions[i] != 0.0)
            .max_by(|&a, &b| {
                self.contributions[a]
                    .abs()
                    .total_cmp(&self.contributions[b].abs())
            })
    }
}

/// The value of a function at the best values of its inputs, with
/// u² = Σ (∂f/∂xᵢ · uᵢ)² and ∂f/∂xᵢ by central differences. GUM 5.1.2, inputs
/// independent. Where the function has no value on one side of an input, the
/// difference to the other side is used.
///
/// # Errors
/// Whatever the function returns at the best values.
pub fn propagate<I: Inputs, Q: Quantity, E>(
    inputs: I,
    function: impl Fn(I::Values) -> Result<Q, E>,
) -> Result<Propagated<Q>, E> {
    let (standards, centres) = (inputs.standards(), inputs.centres());
    let best = function(inputs.shifted(0, 0.0))?;
    let contributions = (0..standards.len())
        .map(|i| {
            let standard = standards[i];
            if standard == 0.0 {
                return 0.0;
            }
            if !standard.is_finite() {
                return f64::INFINITY;
            }
            let step = (STEP * standard).max(LEAST_RELATIVE_STEP * centres[i].abs());
            let at = |by| function(inputs.shifted(i, by)).ok().map(Quantity::si);
            let slope = match (at(step), at(-step)) {
                (Some(up), Some(down)) => (up - down) / (2.0 * step),
                (Some(up), None) => (up - best.si()) / step,
                (None, Some(down)) => (best.si() - down) / step,
                (None, None) => f64::INFINITY,
            };
            slope * standard
        })
        .collect::<Vec<f64>>();
    let standard = contributions.iter().map(|c| c * c).sum::<f64>().sqrt();
    Ok(Propagated {
        result: Uncertain::new(best, standard),
        contributions,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Area, Length, Volume};
    use std::convert::Infallible;

    /// u(xy)/(xy) = √((u_x/x)² + (u_y/y)²), GUM 5.1.6.
    #[test]
    fn a_product_adds_relative_uncertainties_in_squares() {
        let drop = Uncertain::new(Length::from_si(0.05), 0.002);
        let tank = Uncertain::new(Area::from_si(0.3), 0.03);
        let volume = propagate((drop, tank), |(drop, tank)| {
            Ok::<Volume, Infallible>(tank * drop)
        })
        .unwrap();
        let expected: f64 = 0.015 * (0.04f64.powi(2) + 0.1f64.powi(2)).sqrt();
        assert!((volume.result.standard() - expected).abs() < 1e-12);
        assert_eq!(volume.widest(), Some(1));
        assert!((volume.shares()[1] - 0.01 / 0.011_6).abs() < 1e-9);
    }

    #[test]
    fn the_edge_of_a_range_costs_nothing() {
        let at_edge = Uncertain::new(Length::from_si(0.0), 0.1);
        let linear = |(x,): (Length,)| if x.si() < 0.0 { Err(()) } else { Ok(x * 3.0) };
        let result = propagate((at_edge,), linear).unwrap().result;
        assert!((result.standard() - 0.3).abs() < 1e-12);
    }

    #[test]
    fn a_list_of_one_kind_adds_in_squares() {
        let parts = [
            Uncertain::new(Length::from_si(10.0), 3.0),
            Uncertain::new(Length::from_si(20.0), 4.0),
        ];
        let sum = propagate(&parts[..], |parts| {
            Ok::<Length, Infallible>(parts.into_iter().sum())
        });
        assert!((sum.unwrap().result.standard() - 5.0).abs() < 1e-9);
    }
}
