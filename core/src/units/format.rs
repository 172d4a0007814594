//! Printing quantities for people.

use super::Unit;

/// A number with what it is uncertain by, in one unit and rounded alike:
/// `7.4 ± 0.8 gpm`. Without uncertainty, the decimals of a field reading.
pub fn plus_minus(value: f64, spread: f64, unit: Unit) -> String {
    match decimals_for(spread) {
        Some(decimals) => join(
            &format!("{} ± {spread:.decimals$}", number(value, decimals)),
            unit,
        ),
        None => join(&number(value, unit.decimals()), unit),
    }
}

/// As [`plus_minus`], for a number that somebody wrote: none of its decimals is lost,
/// and without uncertainty none is added: `900 ft`.
pub fn as_written(value: f64, spread: f64, unit: Unit) -> String {
    let decimals = decimals_for(spread).unwrap_or(0).max(own_decimals(value));
    let number = number(value, decimals);
    if spread > 0.0 && spread.is_finite() {
        join(&format!("{number} ± {spread:.decimals$}"), unit)
    } else {
        join(&number, unit)
    }
}

/// Decimals that a number has of itself, up to six.
fn own_decimals(value: f64) -> usize {
    let text = format!("{value:.6}");
    let decimals = text.split_once('.').map_or("", |(_, decimals)| decimals);
    decimals.trim_end_matches('0').len()
}

/// Decimals at which an uncertainty shows two significant digits when its
/// leading digit is 1 and one otherwise; none for zero.
fn decimals_for(spread: f64) -> Option<usize> {
    if !(spread > 0.0 && spread.is_finite()) {
        return None;
    }
    let exponent = spread.log10().floor();
    let leading = spread / 10f64.powf(exponent);
    let wanted = if leading < 2.0 {
        1.0 - exponent
    } else {
        -exponent
    };
    Some(wanted.clamp(0.0, 6.0) as usize)
}

/// A bare number with a typographic minus and no `-0.0`.
pub fn number(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    match text.strip_prefix('-') {
        Some(rest) if rest.chars().all(|c| matches!(c, '0' | '.')) => rest.to_owned(),
        Some(rest) => format!("−{rest}"),
        None => text,
    }
}

fn join(number: &str, unit: Unit) -> String {
    match unit {
        Unit::Percent => format!("{number} %"),
        _ if unit.display().is_empty() => number.to_owned(),
        _ => format!("{number} {unit}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_written_neither_gains_nor_loses_decimals() {
        for (value, unit, text) in [
            (900.0, Unit::Foot, "900 ft"),
            (-3.5, Unit::Celsius, "−3.5 °C"),
            (0.025, Unit::Metre, "0.025 m"),
            (0.0, Unit::Psi, "0 psi"),
            (40.0, Unit::Percent, "40 %"),
            // One seventh has no end: six decimals are enough for any gauge.
            (1.0 / 7.0, Unit::Bar, "0.142857 bar"),
            // A third of a unit in the last place is no decimal.
            (1.700_000_000_000_000_2, Unit::Bar, "1.7 bar"),
        ] {
            assert_eq!(as_written(value, 0.0, unit), text);
        }
    }

    #[test]
    fn beside_an_uncertainty_both_have_the_same_decimals() {
        assert_eq!(as_written(12.0, 0.5, Unit::Psi), "12.0 ± 0.5 psi");
        assert_eq!(as_written(12.25, 0.5, Unit::Psi), "12.25 ± 0.50 psi");
        assert_eq!(as_written(41.0, 2.0, Unit::Psi), "41 ± 2 psi");
    }
}
