//! Intervals of a share and of a rate.

use super::Z;
use puruspe::invgammp;

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
        invgammp(0.025, count)
    };
    Some(Interval {
        low: low / exposure,
        high: invgammp(0.975, count + 1.0) / exposure,
    })
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
