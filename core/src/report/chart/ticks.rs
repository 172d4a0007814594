//! Round numbers along an axis.

/// The marks of an axis.
#[derive(Debug, Clone, PartialEq)]
pub struct Ticks {
    /// Values, rising.
    pub values: Vec<f64>,
    /// Decimals that tell neighbouring marks apart.
    pub decimals: usize,
}

impl Ticks {
    /// Lowest mark.
    #[must_use]
    pub fn low(&self) -> f64 {
        self.values.first().copied().unwrap_or(0.0)
    }

    /// Highest mark.
    #[must_use]
    pub fn high(&self) -> f64 {
        self.values.last().copied().unwrap_or(1.0)
    }

    /// The mark as text, with the true minus sign.
    #[must_use]
    pub fn label(&self, value: f64) -> String {
        let text = format!("{value:.*}", self.decimals);
        match text.strip_prefix('-') {
            Some(digits) if digits.chars().any(|c| ('1'..='9').contains(&c)) => {
                format!("\u{2212}{digits}")
            }
            Some(digits) => digits.to_owned(),
            None => text,
        }
    }
}

/// Marks at steps of 1, 2 or 5 times a power of ten that enclose `low..high`,
/// about `count` of them. Anything that is no range gives marks around zero or
/// around the single value.
#[must_use]
pub fn nice_ticks(low: f64, high: f64, count: usize) -> Ticks {
    let (mut low, mut high) = if low <= high {
        (low, high)
    } else {
        (high, low)
    };
    if !low.is_finite() || !high.is_finite() || low.abs() > 1e12 || high.abs() > 1e12 {
        (low, high) = (0.0, 1.0);
    }
    let least = (low.abs().max(high.abs()) * 1e-9).max(1e-9);
    if high - low < least {
        let around = (low.abs() * 0.05).max(0.5);
        (low, high) = (low - around, high + around);
    }
    #[allow(clippy::cast_precision_loss)]
    let rough = (high - low) / count.clamp(2, 20) as f64;
    let power = 10f64.powf(rough.log10().floor());
    let step = [1.0, 2.0, 5.0, 10.0]
        .into_iter()
        .map(|factor| factor * power)
        .find(|step| *step >= rough * 0.999)
        .unwrap_or(10.0 * power);
    let first = (low / step + 1e-9).floor();
    let last = (high / step - 1e-9).ceil();
    let mut values = Vec::new();
    let mut at = first;
    while at <= last + 0.5 && values.len() < 64 {
        values.push(at * step);
        at += 1.0;
    }
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let decimals = (-step.log10().floor()).clamp(0.0, 9.0) as usize;
    Ticks { values, decimals }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_enclose_the_range_and_are_round() {
        let ticks = nice_ticks(3.0, 47.0, 5);
        assert_eq!(ticks.values, [0.0, 10.0, 20.0, 30.0, 40.0, 50.0]);
        let ticks = nice_ticks(-0.3, 0.25, 5);
        assert!(ticks.low() <= -0.3 && ticks.high() >= 0.25);
        assert_eq!(ticks.label(-0.2), "\u{2212}0.2");
        assert_eq!(ticks.label(-0.0), "0.0");
    }

    #[test]
    fn odd_ranges_still_give_marks() {
        for (low, high) in [
            (0.0, 0.0),
            (5.0, 5.0),
            (9.0, -9.0),
            (f64::NAN, 1.0),
            (0.0, f64::INFINITY),
            (1e300, -1e300),
            (1e-12, 2e-12),
            (1e11, 1e11 + 1.0),
        ] {
            let ticks = nice_ticks(low, high, 5);
            assert!(
                (2..=64).contains(&ticks.values.len()),
                "{low} {high}: {ticks:?}"
            );
            assert!(ticks.values.iter().all(|value| value.is_finite()));
            assert!(ticks.low() < ticks.high());
        }
    }
}
