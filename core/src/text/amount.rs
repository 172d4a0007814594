//! Fixed amounts that a text names, in the units of its reader.
//!
//! A text writes `{ AMOUNT("3 bar") }` in the unit of its source. A reader of that
//! unit reads it as it is written, any other reads it worked out.

use crate::units::{Dimension, Unit, UnitSystem, format, parse};
use fluent_bundle::{FluentArgs, FluentValue};

/// What a text may name. A temperature in a text is always a difference: one on a
/// scale would need its own form.
const NAMED: [Dimension; 6] = [
    Dimension::Pressure,
    Dimension::VolumeFlow,
    Dimension::Volume,
    Dimension::Velocity,
    Dimension::TemperatureDifference,
    Dimension::Length,
];

/// Digits that tell, where a text does not say how many its amount has.
const DIGITS: usize = 3;

/// The Fluent function of a catalog for readers of these units.
pub(super) fn filled_in(
    units: UnitSystem,
) -> impl for<'a> Fn(&[FluentValue<'a>], &FluentArgs<'_>) -> FluentValue<'a> + Send + Sync {
    move |given, named| {
        let digits = match named.get("digits") {
            Some(FluentValue::Number(number)) => number.value as usize,
            _ => DIGITS,
        };
        match given {
            [FluentValue::String(written)] => match shown(written, units, digits) {
                Some(text) => FluentValue::String(text.into()),
                None => FluentValue::Error,
            },
            _ => FluentValue::Error,
        }
    }
}

/// An amount as its reader reads it; none where it is no amount of a known kind.
fn shown(written: &str, units: UnitSystem, digits: usize) -> Option<String> {
    let known = |dimension| parse::plain(written, dimension, None).ok();
    let (value, unit) = NAMED.into_iter().find_map(known)?;
    let to = reads(unit, units);
    if to == unit {
        return Some(written.to_owned());
    }
    let value = to.from_si(unit.to_si(value));
    let whole = value.abs().log10().floor() as i32 + 1;
    let decimals = usize::try_from(digits as i32 - whole).unwrap_or(0);
    let number = format::number(value, decimals);
    let number = match number.contains('.') {
        true => number.trim_end_matches('0').trim_end_matches('.'),
        false => &number,
    };
    Some(format!("{number} {to}"))
}

/// The unit in which a reader reads an amount that is written in another: bores and
/// levels stay small units.
fn reads(unit: Unit, units: UnitSystem) -> Unit {
    match (unit, units) {
        (Unit::Inch, UnitSystem::Us) | (Unit::Millimetre, UnitSystem::Si) => unit,
        (Unit::Inch, UnitSystem::Si) => Unit::Millimetre,
        (Unit::Millimetre, UnitSystem::Us) => Unit::Inch,
        _ => units.unit(unit.dimension()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Factors: NIST SP 811, app. B.8 (from memory): psi 6.894757 kPa, US gallon
    /// 3.785412 L, foot 0.3048 m, inch 25.4 mm, °F 1/1.8 K.
    #[test]
    fn an_amount_is_read_in_the_units_of_its_reader() {
        let cases = [
            ("3 bar", "43.5 psi", "3 bar"),
            ("100 psi", "100 psi", "6.89 bar"),
            ("21 gal", "21 gal", "79.5 L"),
            ("3 gpm", "3 gpm", "0.189 L/s"),
            ("2 ft/s", "2 ft/s", "0.61 m/s"),
            ("10 °F", "10 °F", "5.56 K"),
            ("10 ft", "10 ft", "3.05 m"),
            ("2 in", "2 in", "50.8 mm"),
        ];
        for (written, us, si) in cases {
            let read = |units| shown(written, units, DIGITS);
            assert_eq!(read(UnitSystem::Us).as_deref(), Some(us));
            assert_eq!(read(UnitSystem::Si).as_deref(), Some(si));
        }
        assert_eq!(shown("3 bar", UnitSystem::Us, 2).as_deref(), Some("44 psi"));
        assert_eq!(shown("some", UnitSystem::Us, DIGITS), None);
    }
}
