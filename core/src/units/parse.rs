//! Reading what a person types: `55 psi`, `1,5 bar`, `1 1/4 in`, `12' 6"`, `−3 °F`.

use super::{Dimension, Measure, Quantity, Unit};
use thiserror::Error;

/// Longest text that is looked at; anything longer is no number a person typed.
pub const MAX_TEXT: usize = 64;

/// Why a text is not a quantity.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ParseError {
    /// Nothing was written.
    #[error("no value was written")]
    Empty,
    /// No number stands at the start.
    #[error("`{0}` does not start with a number")]
    NotANumber(String),
    /// `1,500` may be one and a half or fifteen hundred.
    #[error("`{0}` can be read in two ways; write it without the comma")]
    Ambiguous(String),
    /// The number is too large to hold, or longer than any reading.
    #[error("`{0}` is not a number that a reading can have")]
    OutOfRange(String),
    /// No unit was written and none was assumed.
    #[error("`{text}` has no unit; write one of: {accepted}")]
    NoUnit {
        /// What was written.
        text: String,
        /// The units that would be accepted.
        accepted: String,
    },
    /// The unit does not belong to this kind of quantity.
    #[error("`{unit}` is not accepted here; write one of: {accepted}")]
    WrongUnit {
        /// What was written.
        unit: String,
        /// What should have been measured.
        dimension: Dimension,
        /// The units that would be accepted.
        accepted: String,
    },
}

/// The symbols accepted for a dimension, for messages.
pub fn accepted(dimension: Dimension) -> String {
    Unit::of(dimension)
        .map(Unit::symbol)
        .collect::<Vec<_>>()
        .join(", ")
}

/// Reads a quantity. `default` is the unit beside the field, used when none is typed.
///
/// Accepts a decimal point or comma, thousands groups where they cannot be
/// mistaken, vulgar fractions of an inch or foot, feet with inches, and the
/// typographic minus.
///
/// # Errors
/// [`ParseError`], which names what was written and what would be accepted.
pub fn measure<Q: Quantity>(text: &str, default: Option<Unit>) -> Result<Measure<Q>, ParseError> {
    let (value, unit) = plain(text, Q::DIMENSION, default)?;
    Ok(Measure::new(value, unit))
}

/// As [`measure`], for a dimension known only at run time.
///
/// # Errors
/// [`ParseError`].
pub fn plain(
    text: &str,
    dimension: Dimension,
    default: Option<Unit>,
) -> Result<(f64, Unit), ParseError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(ParseError::Empty);
    }
    if text.chars().count() > MAX_TEXT {
        return Err(ParseError::OutOfRange(
            text.chars().take(MAX_TEXT).collect::<String>() + "…",
        ));
    }
    if dimension == Dimension::Length
        && let Some(feet) = feet_and_inches(text)
    {
        return Ok((feet, Unit::Foot));
    }
    let (value, rest) = number(text)?;
    let unit = match (rest.trim(), default) {
        ("", Some(unit)) if unit.dimension() == dimension => unit,
        ("", _) => match dimension {
            Dimension::Number => Unit::Plain,
            Dimension::Fraction => Unit::One,
            dimension => {
                return Err(ParseError::NoUnit {
                    text: text.to_owned(),
                    accepted: accepted(dimension),
                });
            }
        },
        (written, _) => Unit::named(dimension, written).ok_or_else(|| ParseError::WrongUnit {
            unit: written.to_owned(),
            dimension,
            accepted: accepted(dimension),
        })?,
    };
    Ok((value, unit))
}

/// Splits the number off the front: its value and the rest of the text.
fn number(text: &str) -> Result<(f64, &str), ParseError> {
    let bad = || ParseError::NotANumber(text.to_owned());
    let is_part = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+' | '−');
    let end = text.find(|c| !is_part(c)).unwrap_or(text.len());
    let (head, mut rest) = text.split_at(end);
    let plain = decimal(&head.replace('−', "-"), text)?;
    let mut value: f64 = plain.parse().map_err(|_| bad())?;
    // `1 1/4` and `3/4`
    if let Some(after) = rest.strip_prefix('/') {
        let (denominator, tail) = digits(after).ok_or_else(bad)?;
        value /= denominator;
        rest = tail;
    } else if let Some((fraction, tail)) = vulgar(rest) {
        value += fraction.copysign(if value.is_sign_negative() { -1.0 } else { 1.0 });
        rest = tail;
    }
    if value.is_finite() && value.abs() < 1e12 {
        Ok((value, rest))
    } else {
        Err(ParseError::OutOfRange(text.to_owned()))
    }
}

/// A decimal number with the point as its only separator.
fn decimal(head: &str, text: &str) -> Result<String, ParseError> {
    let commas = head.matches(',').count();
    let points = head.matches('.').count();
    match (commas, points) {
        (0, 0..=1) => Ok(head.to_owned()),
        (1, 0) => {
            let (whole, after) = head.split_once(',').unwrap_or((head, ""));
            // `0,125` cannot be a thousands group; `1,500` can.
            if after.len() == 3 && !matches!(whole.trim_start_matches(['-', '+']), "" | "0") {
                Err(ParseError::Ambiguous(text.to_owned()))
            } else {
                Ok(head.replace(',', "."))
            }
        }
        (_, 0..=1) => {
            let (groups, tail) = head.split_once('.').unwrap_or((head, ""));
            let well_grouped = !tail.contains(',')
                && groups.split(',').skip(1).all(|group| group.len() == 3)
                && groups
                    .split(',')
                    .next()
                    .is_some_and(|first| !first.is_empty());
            if well_grouped {
                Ok(head.replace(',', ""))
            } else {
                Err(ParseError::NotANumber(text.to_owned()))
            }
        }
        _ => Err(ParseError::NotANumber(text.to_owned())),
    }
}

/// Whole number at the front, not zero.
fn digits(text: &str) -> Option<(f64, &str)> {
    let end = text
        .find(|c: char| !c.is_ascii_digit())
        .unwrap_or(text.len());
    let value: f64 = text[..end].parse().ok()?;
    (value > 0.0).then_some((value, &text[end..]))
}

/// ` 1/4` or a single fraction sign at the front.
fn vulgar(text: &str) -> Option<(f64, &str)> {
    let text = text.trim_start_matches([' ', '-']);
    let signs = [
        ('¼', 0.25),
        ('½', 0.5),
        ('¾', 0.75),
        ('⅛', 0.125),
        ('⅜', 0.375),
    ];
    for (sign, value) in signs {
        if let Some(rest) = text.strip_prefix(sign) {
            return Some((value, rest));
        }
    }
    let (numerator, rest) = digits(text)?;
    let (denominator, rest) = digits(rest.strip_prefix('/')?)?;
    Some((numerator / denominator, rest))
}

/// `12' 6"` or `12 ft 6 in`, in feet.
fn feet_and_inches(text: &str) -> Option<f64> {
    let (feet, rest) = number(text).ok()?;
    let rest = rest.trim_start();
    let rest = rest
        .strip_prefix("ft")
        .or_else(|| rest.strip_prefix('\''))?;
    let (inches, rest) = number(rest.trim_start()).ok()?;
    matches!(rest.trim(), "in" | "\"" | "").then_some(feet + inches / 12.0)
}
