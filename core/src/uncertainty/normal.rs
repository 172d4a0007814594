//! The normal distribution.

use std::f64::consts::{FRAC_1_SQRT_2, PI};

/// Φ(z), the probability that a standard normal variable is below `z`.
///
/// Series of the error function below |z| = 3 (Abramowitz and Stegun 7.1.6),
/// continued fraction of its complement above (7.1.14). Error below 1e-14.
/// Any `z`; one that is not a number gives ½, which says nothing.
pub fn cumulative(z: f64) -> f64 {
    if z.is_nan() {
        return 0.5;
    }
    let x = z.abs() * FRAC_1_SQRT_2;
    let upper = if z.abs() < 3.0 {
        0.5 - 0.5 * erf_series(x)
    } else {
        0.5 * erfc_fraction(x)
    };
    if z > 0.0 { 1.0 - upper } else { upper }
}

fn erf_series(x: f64) -> f64 {
    let (mut term, mut sum, mut n) = (x, x, 0.0);
    while term > 1e-17 * sum {
        n += 1.0;
        term *= 2.0 * x * x / (2.0 * n + 1.0);
        sum += term;
    }
    2.0 / PI.sqrt() * (-x * x).exp() * sum
}

fn erfc_fraction(x: f64) -> f64 {
    if x > 27.0 {
        return 0.0; // below the smallest double
    }
    let tail = (1..=80)
        .rev()
        .fold(x, |tail, k| x + 0.5 * f64::from(k) / tail);
    (-x * x).exp() / (PI.sqrt() * tail)
}

#[cfg(test)]
mod tests {
    use super::cumulative;

    /// Abramowitz and Stegun, table 26.1.
    #[test]
    fn values_of_the_printed_table() {
        for (z, p) in [
            (0.0, 0.5),
            (1.0, 0.841_344_746_068_543),
            (1.96, 0.975_002_104_851_780),
            (2.9, 0.998_134_186_699_616),
            (3.0, 0.998_650_101_968_370),
            (4.0, 0.999_968_328_758_167),
        ] {
            assert!((cumulative(z) - p).abs() < 2e-14, "{z}");
            assert!((cumulative(-z) - (1.0 - p)).abs() < 2e-14, "-{z}");
        }
    }

    #[test]
    fn the_two_branches_meet_and_the_ends_are_reached() {
        assert!((cumulative(3.0 - 1e-12) - cumulative(3.0)).abs() < 1e-13);
        assert!((cumulative(f64::INFINITY) - 1.0).abs() < 1e-16);
        assert!(cumulative(f64::NEG_INFINITY).abs() < 1e-16);
    }
}
