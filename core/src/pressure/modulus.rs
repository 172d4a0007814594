//! Apparent modulus of polyethylene by load time and temperature.
//!
//! The same values describe strain growing under constant load and stress
//! relaxing at constant strain (PPI *Handbook of PE Pipe*, 2nd ed., chapter 3,
//! appendix B), which is what the wall of a charged loop does.

use crate::hydraulics::elastic::{MODULUS_TEMPERATURE, modulus_multiplier};
use crate::units::{
    Bound, Duration, Modulus, OutOfRange, Quantity, Temperature, TemperatureDifference,
    ZERO_CELSIUS_K,
};

/// Load times for which the modulus is given: 10 s to 50 years.
pub const LOAD_TIME: Bound<Duration> = Bound::si("load time", 10.0, 50.0 * YEAR);
/// Pipe temperatures for which the modulus is given.
pub const PIPE_TEMPERATURE: Bound<Temperature> = Bound::si(
    "pipe temperature",
    ZERO_CELSIUS_K - 10.0,
    ZERO_CELSIUS_K + 60.0,
);

const HOUR: f64 = 3_600.0;
/// 365.25 days.
const YEAR: f64 = 8_766.0 * HOUR;
const KSI: f64 = 6_894_757.293_168;

/// Cell class of the resin, as printed on the pipe.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Resin {
    /// PE3408, PE3608.
    Pe3xxx,
    /// PE4710; PE100 is taken as this.
    Pe4xxx,
}

/// Load time in h; modulus at 73 °F in ksi of PE3xxx and PE4xxx. PPI *Handbook of PE
/// Pipe*, chapter 3, table B.1.1.
const BY_TIME: [(f64, f64, f64); 6] = [
    (0.5, 78.0, 82.0),
    (2.0, 71.0, 74.0),
    (12.0, 60.0, 63.0),
    (100.0, 52.0, 55.0),
    (8_766.0, 38.0, 40.0),
    (50.0 * 8_766.0, 28.0, 29.0),
];

/// Through the points in order of x, ends carried on by their last segment.
fn interpolate<const N: usize>(points: [(f64, f64); N], x: f64) -> f64 {
    let after = points
        .iter()
        .position(|(at, _)| *at >= x)
        .unwrap_or(N - 1)
        .clamp(1, N - 1);
    let ((x0, y0), (x1, y1)) = (points[after - 1], points[after]);
    y0 + (y1 - y0) * (x - x0) / (x1 - x0)
}

/// Multiplier of the modulus at a pipe temperature, 1 at 73.4 °F: that of
/// [`modulus_multiplier`], carried on below 20 °F by the slope of its first step.
///
/// # Errors
/// [`OutOfRange`] outside [`PIPE_TEMPERATURE`].
pub fn temperature_factor(pipe: Temperature) -> Result<f64, OutOfRange> {
    let pipe = PIPE_TEMPERATURE.check(pipe)?;
    let coldest = MODULUS_TEMPERATURE.min();
    let at = |t: Temperature| modulus_multiplier(t).map(Quantity::si);
    if pipe >= coldest {
        return at(pipe);
    }
    let step = TemperatureDifference::from_si(1.0);
    let slope = at(coldest)? - at(coldest + step)?;
    Ok(at(coldest)? + slope * (coldest - pipe).si())
}

/// Apparent modulus E(t, T) of the wall: table by load time, straight between its points in
/// log E over log t, times the temperature factor. From 10 s (the first slope carried back,
/// which gives 120 ksi, inside the 110 to 130 ksi usually quoted for seconds to minutes,
/// from memory) to 50 years; −10 to 60 °C.
///
/// Worked example: PE4xxx, 100 h, 73.4 °F gives 55 ksi = 379 MPa.
///
/// # Errors
/// [`OutOfRange`].
pub fn apparent(resin: Resin, load: Duration, pipe: Temperature) -> Result<Modulus, OutOfRange> {
    let hours = LOAD_TIME.check(load)?.si() / HOUR;
    let logs = BY_TIME.map(|(time, pe3, pe4)| {
        let ksi: f64 = match resin {
            Resin::Pe3xxx => pe3,
            Resin::Pe4xxx => pe4,
        };
        (time.ln(), ksi.ln())
    });
    let ksi = interpolate(logs, hours.ln()).exp();
    Ok(Modulus::from_si(ksi * KSI * temperature_factor(pipe)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Unit;

    fn ksi(resin: Resin, hours: f64, fahrenheit: f64) -> f64 {
        let e = apparent(
            resin,
            Duration::from_si(hours * HOUR),
            Temperature::from_fahrenheit(fahrenheit),
        );
        Unit::Ksi.from_si(e.unwrap().si())
    }

    #[test]
    fn it_only_falls_with_time_and_with_temperature() {
        let mut last = f64::INFINITY;
        for step in 0..200 {
            let now = ksi(Resin::Pe4xxx, 0.003 * 1.09f64.powi(step), 60.0);
            assert!(now < last);
            last = now;
        }
        last = f64::INFINITY;
        for step in 0..120 {
            let now = ksi(Resin::Pe3xxx, 10.0, 15.0 + f64::from(step));
            assert!(now < last);
            last = now;
        }
    }

    /// 110 to 130 ksi for seconds to minutes: from memory of the PPI handbook.
    #[test]
    fn the_short_end_meets_the_short_term_modulus() {
        let short = ksi(Resin::Pe4xxx, 20.0 / 3_600.0, 73.4);
        assert!((110.0..130.0).contains(&short), "{short}");
    }
}
