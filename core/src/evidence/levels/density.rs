//! How likely a reading is while the true value lies anywhere in a range: with an
//! error that adds, and with one that multiplies as well.

use super::Range;
use crate::uncertainty::normal_cumulative;

/// Density of a reading r = x + e with x anywhere in a range and e normal:
/// [Φ((b - r)/s) - Φ((a - r)/s)] / (b - a).
pub(super) fn density(reading: f64, standard: f64, (low, high): Range) -> f64 {
    let width = high - low;
    if standard == 0.0 {
        let inside = (low..=high).contains(&reading);
        return if inside { 1.0 / width } else { 0.0 };
    }
    let (from, to) = ((low - reading) / standard, (high - reading) / standard);
    between(from, to) / width
}

/// Φ(to) - Φ(from); in the upper tail the complement keeps the digits.
fn between(from: f64, to: f64) -> f64 {
    if from > 0.0 {
        normal_cumulative(-from) - normal_cumulative(-to)
    } else {
        normal_cumulative(to) - normal_cumulative(from)
    }
}

/// Largest relative uncertainty that is told from a larger one: three times
/// more or less is everything.
const MOST_RELATIVE: f64 = 3.0;

/// An error that adds and one that multiplies, both in units of x.
#[derive(Copy, Clone, Debug)]
pub(super) struct TwoPart {
    adding: f64,
    multiplying: f64,
}

impl TwoPart {
    /// Of the standard uncertainties of both parts, in units of x.
    pub(super) fn of(adding: f64, multiplying: f64) -> Self {
        Self {
            // A hair of each, so that neither is divided by nothing.
            adding: adding.abs().max(1e-9),
            multiplying: multiplying.abs().clamp(1e-6, MOST_RELATIVE),
        }
    }

    fn stretched(self, x: f64) -> f64 {
        (self.multiplying * x / self.adding).asinh() / self.multiplying
    }

    /// Density of a reading with x anywhere in a range, up to a factor that is
    /// the same for every range.
    pub(super) fn density(self, reading: f64, (low, high): Range) -> f64 {
        let (rho, y) = (self.multiplying, self.stretched(reading));
        let (from, to) = (self.stretched(low), self.stretched(high));
        let part = |sign: f64| {
            let weight = (sign * rho * y + 0.5 * rho * rho).exp();
            weight * between(from - y - sign * rho, to - y - sign * rho)
        };
        0.5 * self.adding * (part(1.0) + part(-1.0)) / (high - low)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Simpson's rule over the range, against the closed form.
    fn simpson(reading: f64, standard: f64, (low, high): Range) -> f64 {
        let panels = 4000;
        let step = (high - low) / f64::from(panels);
        let at = |i: i32| {
            let z = (low + f64::from(i) * step - reading) / standard;
            (-0.5 * z * z).exp() / (standard * (2.0 * std::f64::consts::PI).sqrt())
        };
        let inner: f64 = (1..panels)
            .map(|i| if i % 2 == 1 { 4.0 } else { 2.0 } * at(i))
            .sum();
        (at(0) + inner + at(panels)) * step / 3.0 / (high - low)
    }

    #[test]
    fn the_closed_form_is_the_integral() {
        for reading in [-0.5, 0.0, 0.4, 0.82, 1.0, 2.0, 3.5] {
            for standard in [0.02, 0.1, 0.7, 5.0] {
                for range in [(0.0, 0.85), (0.78, 1.3)] {
                    let (closed, summed) = (
                        density(reading, standard, range),
                        simpson(reading, standard, range),
                    );
                    assert!(
                        (closed - summed).abs() < 1e-9 * closed.max(1e-3),
                        "{reading} {standard} {range:?}: {closed} {summed}"
                    );
                }
            }
        }
    }

    #[test]
    fn a_reading_without_error_is_the_plain_density() {
        assert!((density(0.5, 0.0, (0.0, 2.0)) - 0.5).abs() < 1e-15);
        assert!(density(2.5, 0.0, (0.0, 2.0)).abs() < 1e-15);
    }

    #[test]
    fn the_ratio_form_is_the_integral_in_the_stretched_scale() {
        for (adding, multiplying) in [(0.05, 0.1), (0.01, 0.45), (0.3, 0.02), (0.001, 0.2)] {
            let error = TwoPart {
                adding,
                multiplying,
            };
            for reading in [-0.1, 0.0, 0.3, 0.8, 1.4] {
                for (low, high) in [(0.0, 0.85), (0.78, 1.3)] {
                    let panels = 200_000;
                    let step = (high - low) / f64::from(panels);
                    let y = error.stretched(reading);
                    let at = |i: i32| {
                        let z = y - error.stretched(low + (f64::from(i) + 0.5) * step);
                        (-0.5 * z * z).exp() / (2.0 * std::f64::consts::PI).sqrt()
                    };
                    let summed: f64 = (0..panels).map(at).sum::<f64>() * step / (high - low);
                    let closed = error.density(reading, (low, high));
                    assert!(
                        (closed - summed).abs() < 1e-5 * summed.max(1e-4),
                        "{adding} {multiplying} {reading} {low}: {closed} {summed}"
                    );
                }
            }
        }
    }
}
