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

/// As [`plus_minus`], for a number that somebody wrote: none of its decimals is lost.
pub fn as_written(value: f64, spread: f64, unit: Unit) -> String {
    let text = value.to_string();
    let written = text
        .split_once('.')
        .map_or(0, |(_, decimals)| decimals.len().min(6));
    let decimals = decimals_for(spread).unwrap_or(unit.decimals()).max(written);
    let number = number(value, decimals);
    if spread > 0.0 && spread.is_finite() {
        join(&format!("{number} ± {spread:.decimals$}"), unit)
    } else {
        join(&number, unit)
    }
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
