//! Saturation pressure and temperature of the refrigerants met on ground loops.
//!
//! `ln(p/Pa) = Σ cᵢ (1000 K / T − 3.6)ⁱ`, i = 0..6, one row per refrigerant and
//! line in `core/data/refrigerants.csv`, fitted to the reference equations of
//! state (the file's header names library, version and equations). The fit is
//! within 0.02 K of its source over −45..65 °C. R-454B is known to that source
//! through mixing parameters only; see [`Refrigerant::by_mixing_parameters_only`].

use crate::units::{AbsolutePressure, Bound, OutOfRange, Quantity, Temperature, ZERO_CELSIUS_K};
use std::sync::LazyLock;

/// Temperatures for which the fit holds.
pub const SATURATION_TEMPERATURE: Bound<Temperature> = Bound::si(
    "saturation temperature",
    ZERO_CELSIUS_K - 45.0,
    ZERO_CELSIUS_K + 65.0,
);

const TERMS: usize = 7;
const CENTRE: f64 = 3.6;

/// A refrigerant of a ground-source heat pump (ASHRAE 34 designation).
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
#[allow(missing_docs)] // the designation is the meaning
pub enum Refrigerant {
    R410A,
    R32,
    R454B,
    R407C,
    R134a,
    R22,
}

/// Which end of boiling: the first bubble or the last drop.
///
/// Subcooling and condensing approach are taken from the bubble line,
/// superheat from the dew line.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
pub enum Line {
    /// Saturated liquid.
    Bubble,
    /// Saturated vapour.
    Dew,
}

/// Why a saturation value cannot be given.
#[derive(Copy, Clone, PartialEq, Debug, thiserror::Error)]
pub enum SaturationError {
    /// Outside the fitted range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
}

impl Refrigerant {
    /// All of them, in the order of the data file.
    pub const ALL: [Self; 6] = [
        Self::R410A,
        Self::R32,
        Self::R454B,
        Self::R407C,
        Self::R134a,
        Self::R22,
    ];

    /// ASHRAE 34 designation as written on a nameplate.
    pub fn designation(self) -> &'static str {
        match self {
            Self::R410A => "R-410A",
            Self::R32 => "R-32",
            Self::R454B => "R-454B",
            Self::R407C => "R-407C",
            Self::R134a => "R-134a",
            Self::R22 => "R-22",
        }
    }

    /// True where the source knows the blend only through mixing parameters, so that no
    /// independent formulation stands behind the figures.
    pub fn by_mixing_parameters_only(self) -> bool {
        self == Self::R454B
    }

    /// ASHRAE 34 safety class A2L (mildly flammable), which asks for its own precautions.
    pub fn mildly_flammable(self) -> bool {
        matches!(self, Self::R32 | Self::R454B)
    }
}

type Row = [f64; TERMS];

/// Bubble and dew coefficients in the order of [`Refrigerant::ALL`]. A row that does not
/// read is NaN, which the test of the file would show; the file is compiled in.
static COEFFICIENTS: LazyLock<[[Row; 2]; 6]> = LazyLock::new(|| {
    let mut table = [[[f64::NAN; TERMS]; 2]; 6];
    for line in include_str!("../../data/refrigerants.csv").lines() {
        let mut cells = line.split(',');
        let (Some(name), Some(side)) = (cells.next(), cells.next()) else {
            continue;
        };
        let Some(which) = Refrigerant::ALL
            .iter()
            .position(|r| r.designation() == name)
        else {
            continue;
        };
        let row = &mut table[which][usize::from(side == "dew")];
        for (slot, cell) in row.iter_mut().zip(cells) {
            *slot = cell.parse().unwrap_or(f64::NAN);
        }
    }
    table
});

/// ln p and its derivative by x = 1000 K / T − 3.6.
fn logarithm(row: &Row, x: f64) -> (f64, f64) {
    row.iter().rev().fold((0.0, 0.0), |(value, slope), c| {
        (value * x + c, slope * x + value)
    })
}

fn row(refrigerant: Refrigerant, line: Line) -> &'static Row {
    &COEFFICIENTS[refrigerant as usize][usize::from(line == Line::Dew)]
}

/// Saturation pressure p at temperature T.
///
/// Valid −45..65 °C; within 0.1 K (as temperature) of the reference equations of state.
///
/// # Errors
/// [`SaturationError::OutOfRange`] outside [`SATURATION_TEMPERATURE`].
pub fn pressure(
    refrigerant: Refrigerant,
    line: Line,
    temperature: Temperature,
) -> Result<AbsolutePressure, SaturationError> {
    let t = SATURATION_TEMPERATURE.check(temperature)?.si();
    let (ln_p, _) = logarithm(row(refrigerant, line), 1e3 / t - CENTRE);
    Ok(AbsolutePressure::from_si(ln_p.exp()))
}

/// The pressures for which a saturation temperature is given.
pub fn pressure_range(refrigerant: Refrigerant, line: Line) -> Bound<AbsolutePressure> {
    let at = |t: f64| logarithm(row(refrigerant, line), 1e3 / t - CENTRE).0.exp();
    Bound::si(
        "saturation pressure",
        at(SATURATION_TEMPERATURE.min().si()),
        at(SATURATION_TEMPERATURE.max().si()),
    )
}

/// Saturation temperature T at absolute pressure p: Newton's method on the fit of ln p,
/// which is nearly linear in 1/T.
///
/// # Errors
/// [`SaturationError::OutOfRange`] for pressures whose temperature is outside −45..65 °C.
pub fn temperature(
    refrigerant: Refrigerant,
    line: Line,
    pressure: AbsolutePressure,
) -> Result<Temperature, SaturationError> {
    let p = pressure_range(refrigerant, line).check(pressure)?.si();
    let row = row(refrigerant, line);
    let mut x = 0.0;
    for _ in 0..12 {
        let (ln_p, slope) = logarithm(row, x);
        x -= (ln_p - p.ln()) / slope;
    }
    Ok(Temperature::from_si(1e3 / (x + CENTRE)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_of_the_data_file_is_there() {
        for refrigerant in Refrigerant::ALL {
            for line in [Line::Bubble, Line::Dew] {
                assert!(row(refrigerant, line).iter().all(|c| c.is_finite()));
            }
        }
    }

    #[test]
    fn temperature_undoes_pressure() {
        for refrigerant in Refrigerant::ALL {
            for line in [Line::Bubble, Line::Dew] {
                for celsius in -45..=65 {
                    let t = Temperature::from_celsius(f64::from(celsius));
                    let p = pressure(refrigerant, line, t).unwrap();
                    let back = temperature(refrigerant, line, p).unwrap();
                    assert!((back - t).si().abs() < 1e-6, "{refrigerant:?} {celsius}");
                }
            }
        }
    }

    #[test]
    fn refuses_what_it_was_not_fitted_for() {
        let hot = Temperature::from_celsius(80.0);
        assert!(pressure(Refrigerant::R22, Line::Dew, hot).is_err());
        let vacuum = AbsolutePressure::from_si(0.0);
        assert!(temperature(Refrigerant::R22, Line::Dew, vacuum).is_err());
    }
}
