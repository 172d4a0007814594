//! The air outside.

use crate::units::{AbsolutePressure, Bound, Length, OutOfRange, Quantity, STANDARD_ATMOSPHERE_PA};

/// Altitudes for which the standard atmosphere is used.
pub const ALTITUDE: Bound<Length> = Bound::si("altitude above sea level", -500.0, 5_000.0);

/// Mean pressure of the air at an altitude h: p = 101 325 Pa (1 - 2.255 77e-5 h)^5.255 88.
///
/// ISO 2533:1975 (same as the US Standard Atmosphere 1976), troposphere. The
/// weather moves the real pressure by about ±3 %.
/// Worked example: 1 500 m gives 84.56 kPa.
///
/// # Errors
/// [`OutOfRange`] outside [`ALTITUDE`].
pub fn atmospheric_pressure(altitude: Length) -> Result<AbsolutePressure, OutOfRange> {
    let altitude = ALTITUDE.check(altitude)?.si();
    let base = 1.0 - 2.255_77e-5 * altitude;
    Ok(AbsolutePressure::from_si(
        STANDARD_ATMOSPHERE_PA * base.powf(5.255_88),
    ))
}
