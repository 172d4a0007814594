//! From a reading to a likelihood over the levels of a finding.
//!
//! A level is a statement about a true quantity x, such as the flow over the
//! flow that is needed. What x may be at each level is declared once per
//! evaluator, in one or more ranges with every value of a range alike; ranges
//! of neighbouring levels overlap, because the trade's limits are not sharp.
//! A range within another says that its values are met more often: a fault is
//! slight more often than gross, and what is sound lies near the middle.
//! The instrument and what is unknown about the system make of x a reading r
//! with a normal distribution of standard uncertainty s. Then
//!
//! P(r | level) = ∫ p(r | x) p(x | level) dx
//!              = mean over the level's ranges of [Φ((b - r)/s) - Φ((a - r)/s)] / (b - a)
//!
//! in closed form. Where x is what was measured over what is to be expected,
//! and the expectation itself is uncertain, the error has a part that adds and
//! a part that multiplies; see [`Levels::likelihood_of_ratio`]. A wide
//! uncertainty gives every level nearly the same, so that what is not known
//! says nothing, and no threshold is crossed anywhere.

mod density;

use self::density::{TwoPart, density};
use crate::diagnosis::{Likelihood, Scale};

/// Share of readings that are misread, misplaced or written into the wrong
/// line: such a reading says nothing about the level. Judgement; instruments
/// that lie are the graph's own hidden questions and not counted here again. It
/// keeps every level possible, whatever is read: no reading speaks stronger than
/// about 300 to 1.
pub const SLIP: f64 = 0.01;

/// A range in which every value is alike.
pub type Range = (f64, f64);

/// What the true quantity may be at each level of a finding.
#[derive(Copy, Clone, Debug)]
pub struct Levels {
    ranges: [&'static [Range]; 3],
    count: usize,
}

impl Levels {
    /// Of a graded finding.
    pub const fn graded(
        low: &'static [Range],
        normal: &'static [Range],
        high: &'static [Range],
    ) -> Self {
        Self {
            ranges: [low, normal, high],
            count: 3,
        }
    }

    /// Of a finding that is absent or present.
    pub const fn presence(absent: &'static [Range], present: &'static [Range]) -> Self {
        Self {
            ranges: [absent, present, &[]],
            count: 2,
        }
    }

    /// Whether the levels are low, normal and high.
    pub const fn is_graded(&self) -> bool {
        self.count == 3
    }

    /// The ranges, level by level, in the order of a likelihood's weights.
    pub fn ranges(&self) -> &[&'static [Range]] {
        &self.ranges[..self.count]
    }

    /// Lowest and highest value that any level allows.
    pub fn extent(&self) -> Range {
        self.ranges()
            .iter()
            .flat_map(|ranges| ranges.iter())
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), range| {
                (low.min(range.0), high.max(range.1))
            })
    }

    /// Likelihood of a reading of x with its standard uncertainty.
    ///
    /// A reading beyond everything declared counts as one at the edge. An
    /// infinite uncertainty, or a reading that is no number, gives every level
    /// the same.
    pub fn likelihood(&self, reading: f64, standard: f64) -> Likelihood {
        if !reading.is_finite() || !standard.is_finite() {
            return self.flat();
        }
        let (lowest, highest) = self.extent();
        let reading = reading.clamp(lowest, highest);
        let standard = standard.abs();
        self.mixed(|ranges| {
            let share = 1.0 / ranges.len() as f64;
            ranges
                .iter()
                .map(|&range| share * density(reading, standard, range))
                .sum()
        })
    }

    /// Likelihood of a measured value m with its standard uncertainty u, where
    /// x is the true value over an expectation E > 0 of relative standard
    /// uncertainty ρ.
    ///
    /// m = x E eᶻ + e with z normal of width ρ and e normal of width u: an error
    /// that multiplies and one that adds (D. Rocke, S. Lorenzato, Technometrics
    /// 37 (1995) 176, from memory). In y = asinh(ρ m/u)/ρ the error of such a value is
    /// close to normal of width 1 whatever x, about g(x) = asinh(ρ x E/u)/ρ, so
    /// that the mean over a range of x has a closed form:
    ///
    /// ∫ φ(y - g(x)) dx = u/(2E) Σ± e^(±ρy + ρ²/2) [Φ(g - y ∓ ρ)] between the ends.
    ///
    /// For small ρ it is the normal error of [`Levels::likelihood`], for small u
    /// the log-normal one. A larger m is never better explained by a smaller x.
    pub fn likelihood_of_ratio(&self, measured: (f64, f64), expected: (f64, f64)) -> Likelihood {
        let (value, standard) = expected;
        let finite = [measured.0, measured.1, value, standard];
        if !(finite.iter().all(|x| x.is_finite()) && value > 0.0) {
            return self.flat();
        }
        let (lowest, highest) = self.extent();
        let error = TwoPart::of(measured.1 / value, standard / value);
        let reading = (measured.0 / value).clamp(lowest, highest);
        self.mixed(|ranges| {
            let share = 1.0 / ranges.len() as f64;
            ranges
                .iter()
                .map(|&range| share * error.density(reading, range))
                .sum()
        })
    }

    /// Likelihood from densities of the reading at each level, with the slip.
    fn mixed(&self, density: impl Fn(&[Range]) -> f64) -> Likelihood {
        let densities: Vec<f64> = self.ranges().iter().map(|ranges| density(ranges)).collect();
        with_slip(&densities, SLIP).unwrap_or_else(|| self.flat())
    }

    fn flat(&self) -> Likelihood {
        Likelihood::flat(if self.is_graded() {
            Scale::Graded
        } else {
            Scale::NormallyAbsent
        })
    }
}

/// Weights (two or three) as a likelihood in which a share `slip` of readings
/// says nothing: w' = (1 - slip) w + slip · mean(w). None if the weights are
/// no likelihood.
///
/// In terms of the shares wᵢ/Σw the slip is a straight line, so that it turns
/// no order around.
pub fn with_slip(weights: &[f64], slip: f64) -> Option<Likelihood> {
    let largest = weights.iter().copied().fold(0.0, f64::max);
    if !(largest > 0.0 && largest.is_finite()) {
        return None;
    }
    let scaled: Vec<f64> = weights.iter().map(|weight| weight / largest).collect();
    let mean = scaled.iter().sum::<f64>() / scaled.len() as f64;
    let mixed: Vec<f64> = scaled
        .iter()
        .map(|weight| (1.0 - slip) * weight + slip * mean)
        .collect();
    match mixed[..] {
        [absent, present] => Likelihood::presence(absent, present).ok(),
        [low, normal, high] => Likelihood::graded(low, normal, high).ok(),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FLOW: Levels = Levels::graded(&[(0.0, 0.85)], &[(0.78, 1.3)], &[(1.2, 2.5)]);

    #[test]
    fn a_lower_reading_never_makes_high_more_likely_nor_low_less() {
        for standard in [0.0, 0.01, 0.05, 0.3, 2.0] {
            let share = |reading: f64, level: usize| {
                let soft = FLOW.likelihood(reading, standard);
                soft.weights()[level] / soft.weights().iter().sum::<f64>()
            };
            let mut before = (share(-1.0, 0), share(-1.0, 2));
            for step in 1..=500 {
                let reading = -1.0 + 0.01 * f64::from(step);
                let now = (share(reading, 0), share(reading, 2));
                assert!(now.0 <= before.0 + 1e-12, "low at {reading} ± {standard}");
                assert!(now.1 >= before.1 - 1e-12, "high at {reading} ± {standard}");
                before = now;
            }
        }
    }

    #[test]
    fn what_is_not_known_says_nothing() {
        for standard in [50.0, 1e6, f64::INFINITY] {
            for weight in FLOW.likelihood(0.3, standard).weights() {
                assert!(*weight > 0.999, "{weight}");
            }
        }
        assert_eq!(FLOW.likelihood(f64::NAN, 0.1).weights(), &[1.0, 1.0, 1.0]);
    }

    #[test]
    fn no_reading_makes_a_level_impossible() {
        for reading in [-1e9, 0.0, 1.0, 1e9] {
            for standard in [0.0, 1e-9, 0.1] {
                for weight in FLOW.likelihood(reading, standard).weights() {
                    assert!(*weight > 1e-3 && weight.is_finite());
                }
            }
        }
    }

    #[test]
    fn the_ratio_form_goes_over_into_the_normal_one() {
        for reading in [0.0, 0.5, 0.8, 1.1, 1.9] {
            let plain = FLOW.likelihood(reading, 0.08);
            let ratio = FLOW.likelihood_of_ratio((reading * 7.0, 0.08 * 7.0), (7.0, 1e-5));
            for (a, b) in plain.weights().iter().zip(ratio.weights()) {
                assert!((a - b).abs() < 1e-4, "{reading}: {a} {b}");
            }
        }
    }

    #[test]
    fn the_ratio_form_is_close_to_the_two_errors_themselves() {
        // m = x E e^z + e by a double sum over x and z, against the closed form.
        let (adding, rho) = (0.06, 0.2);
        let normal = |z: f64, s: f64| (-0.5 * (z / s).powi(2)).exp() / s;
        let summed = |reading: f64, (low, high): Range| -> f64 {
            let (across, along) = (400, 200);
            let mut sum = 0.0;
            for i in 0..across {
                let x = low + (high - low) * (f64::from(i) + 0.5) / f64::from(across);
                for j in 0..along {
                    let z = rho * 8.0 * ((f64::from(j) + 0.5) / f64::from(along) - 0.5);
                    sum += normal(z, rho) * normal(reading - x * z.exp(), adding);
                }
            }
            sum / f64::from(across * along)
        };
        for reading in [0.3, 0.7, 0.9, 1.2, 1.6] {
            let closed = FLOW.likelihood_of_ratio((reading, adding), (1.0, rho));
            let parts: Vec<f64> = FLOW
                .ranges()
                .iter()
                .map(|ranges| summed(reading, ranges[0]))
                .collect();
            let double = with_slip(&parts, SLIP).expect("a likelihood");
            for (a, b) in closed.weights().iter().zip(double.weights()) {
                assert!((a - b).abs() < 0.1, "{reading}: {a} {b}");
            }
        }
    }

    #[test]
    fn a_larger_measured_value_is_never_better_explained_by_a_smaller_one() {
        for (standard, relative) in [
            (0.0, 0.0),
            (0.05, 0.1),
            (0.02, 0.45),
            (0.3, 1.0),
            (0.0, 0.2),
        ] {
            let shares = |measured: f64| {
                let soft = FLOW.likelihood_of_ratio((measured, standard), (1.0, relative));
                let sum: f64 = soft.weights().iter().sum();
                (soft.weights()[0] / sum, soft.weights()[2] / sum)
            };
            let mut before = shares(-0.5);
            for step in 1..=400 {
                let now = shares(-0.5 + 0.01 * f64::from(step));
                assert!(
                    now.0 <= before.0 + 1e-9 && now.1 >= before.1 - 1e-9,
                    "{step}"
                );
                before = now;
            }
        }
    }

    #[test]
    fn an_unusable_expectation_says_nothing() {
        for expected in [
            (0.0, 1.0),
            (-1.0, 1.0),
            (f64::NAN, 1.0),
            (1.0, f64::INFINITY),
        ] {
            assert_eq!(
                FLOW.likelihood_of_ratio((1.0, 0.1), expected).weights(),
                &[1.0, 1.0, 1.0]
            );
        }
    }

    #[test]
    fn the_slip_by_hand() {
        // (1, 0, 0) with a slip of 0.03: 0.97 + 0.01 = 0.98 against 0.01 each.
        let soft = with_slip(&[1.0, 0.0, 0.0], 0.03).expect("a likelihood");
        assert!((soft.weights()[1] - 0.01 / 0.98).abs() < 1e-15);
        assert!(with_slip(&[0.0, 0.0], 0.01).is_none());
        assert!(with_slip(&[f64::NAN, 1.0], 0.01).is_none_or(|l| l.weights()[0].is_finite()));
    }
}
