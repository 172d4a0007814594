//! Intervals of a share and of a rate.

use super::Z;
use libm::lgamma;

/// Two ends of an interval of 95 %.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Interval {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// Wilson's score interval of a share, `hits` of `all`.
///
/// Centre (p + z²/2n) / (1 + z²/n), half width
/// z √(p (1 - p)/n + z²/4n²) / (1 + z²/n), with p = hits/all and n = all.
/// Source: E. B. Wilson, *Probable inference, the law of succession, and
/// statistical inference*, J. Am. Stat. Assoc. 22 (1927) 209-212.
///
/// None when there is nothing to count or more hits than all.
#[must_use]
pub fn wilson(hits: usize, all: usize) -> Option<Interval> {
    if all == 0 || hits > all {
        return None;
    }
    let n = all as f64;
    let p = hits as f64 / n;
    let spread = Z * Z / n;
    let centre = (p + spread / 2.0) / (1.0 + spread);
    let half = Z * (p * (1.0 - p) / n + spread / (4.0 * n)).sqrt() / (1.0 + spread);
    Some(Interval {
        low: if hits == 0 { 0.0 } else { centre - half },
        high: if hits == all { 1.0 } else { centre + half },
    })
}

/// Exact interval of a rate: `events` over an exposure, for example callbacks
/// over system-years. The unit of the result is one over that of the exposure.
///
/// Lower end χ²(0.025; 2k)/2, upper end χ²(0.975; 2k + 2)/2, both over the
/// exposure; χ²(p; 2a)/2 is the inverse of the incomplete gamma function P(a, x).
/// Source: F. Garwood, *Fiducial limits for the Poisson distribution*,
/// Biometrika 28 (1936) 437-442.
///
/// None when the exposure is not above zero.
#[must_use]
pub fn poisson_rate(events: usize, exposure: f64) -> Option<Interval> {
    if !(exposure > 0.0 && exposure.is_finite()) {
        return None;
    }
    let count = events as f64;
    let low = if events == 0 {
        0.0
    } else {
        inverse_gamma(0.025, count)
    };
    Some(Interval {
        low: low / exposure,
        high: inverse_gamma(0.975, count + 1.0) / exposure,
    })
}

/// The x at which P(a, x), the regularised incomplete gamma function, is p; a at
/// least 1.
///
/// Newton's steps from the estimate of Wilson and Hilferty (1931), kept inside a
/// bracket that each evaluation narrows.
fn inverse_gamma(p: f64, a: f64) -> f64 {
    let log_gamma = lgamma(a);
    let (mut low, mut high) = (0.0, a + 20.0 * (a.sqrt() + 1.0));
    let z = if p < 0.5 { -Z } else { Z };
    let mut x = a * (1.0 - 1.0 / (9.0 * a) + z / (3.0 * a.sqrt())).powi(3);
    for _ in 0..200 {
        if !(x > low && x < high) {
            x = 0.5 * (low + high);
        }
        let density = ((a - 1.0) * x.ln() - x - log_gamma).exp();
        let missing = p - lower_gamma(a, x, log_gamma);
        if missing > 0.0 {
            low = x;
        } else {
            high = x;
        }
        let step = missing / density;
        if step.abs() <= 1e-14 * x || high - low <= 1e-15 * high {
            return x + step;
        }
        x += step;
    }
    x
}

/// P(a, x): by the series of DLMF 8.11.4 below the mean, by the continued fraction
/// of 8.9.2 (Lentz's way) above it.
fn lower_gamma(a: f64, x: f64, log_gamma: f64) -> f64 {
    let front = (a * x.ln() - x - log_gamma).exp();
    if x < a + 1.0 {
        let (mut term, mut sum, mut n) = (1.0 / a, 1.0 / a, a);
        while term > 1e-17 * sum {
            n += 1.0;
            term *= x / n;
            sum += term;
        }
        return front * sum;
    }
    let mut b = x + 1.0 - a;
    let mut c = 1e300;
    let mut d = 1.0 / b;
    let mut fraction = d;
    let mut n = 0.0;
    loop {
        n += 1.0;
        let part = n * (a - n);
        b += 2.0;
        d = 1.0 / (part * d + b);
        c = b + part / c;
        let factor = c * d;
        fraction *= factor;
        // Far out the factor is 1; a fraction that is no number ends the loop too.
        if (factor - 1.0).abs() < 1e-16 || !factor.is_finite() || n > 1e6 {
            return 1.0 - front * fraction;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_seen_still_has_an_upper_end() {
        // The rule of three in its exact form: -ln(0.025) for no event.
        let rate = poisson_rate(0, 1.0).expect("exposure");
        assert!(rate.low.abs() < 1e-15);
        assert!((rate.high + 0.025_f64.ln()).abs() < 1e-10);
        assert_eq!(wilson(0, 0), None);
        assert_eq!(wilson(3, 2), None);
        assert_eq!(poisson_rate(1, 0.0), None);
        assert_eq!(poisson_rate(1, f64::NAN), None);
    }
}
