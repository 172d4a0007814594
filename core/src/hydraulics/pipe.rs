//! Pipe dimensions as published, and what follows from them.

use crate::units::{Area, Bound, Length, Number, OutOfRange, Quantity, Volume};
use thiserror::Error;

const INCH: f64 = 0.025_4;
const MM: f64 = 1e-3;

/// Family of pipe, with its published dimensions.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum PipeSeries {
    /// Polyethylene, iron-pipe-size outside diameters, wall OD/SDR: ASTM D3035
    /// (½ to 3 in) and F714 (3 in and up); diameters as ASME B36.10M. Least
    /// wall 0.062 in (from memory of D3035).
    IpsPolyethylene,
    /// PE100 metric, EN 12201-2 / ISO 4427-2 (walls from memory).
    MetricPolyethylene,
    /// Copper water tube, type L: ASTM B88 (from memory).
    CopperL,
    /// Hose, bore as its name.
    Hose,
}

/// Why a pipe is not in the tables.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum PipeError {
    /// The series has no such size.
    #[error("no size `{nominal}` in {series:?}")]
    NoSuchSize {
        /// The series.
        series: PipeSeries,
        /// The size asked for.
        nominal: String,
    },
    /// The size exists, but not with this wall.
    #[error("size `{nominal}` of {series:?} has no SDR {sdr}")]
    NoSuchRatio {
        /// The series.
        series: PipeSeries,
        /// The size.
        nominal: String,
        /// The ratio asked for.
        sdr: f64,
    },
    /// A dimension makes no pipe.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
}

/// Name and outside diameter in inches.
const IPS: [(&str, f64); 10] = [
    ("1/2", 0.840),
    ("3/4", 1.050),
    ("1", 1.315),
    ("1 1/4", 1.660),
    ("1 1/2", 1.900),
    ("2", 2.375),
    ("3", 3.500),
    ("4", 4.500),
    ("6", 6.625),
    ("8", 8.625),
];
/// Ratios for which the IPS sizes are made for ground loops.
pub const IPS_RATIOS: [f64; 5] = [9.0, 11.0, 13.5, 15.5, 17.0];
const IPS_LEAST_WALL: f64 = 0.062;

/// Outside diameter in mm; wall in mm at SDR 11 and SDR 17.
const METRIC: [(&str, f64, Option<f64>, Option<f64>); 11] = [
    ("25", 25.0, Some(2.3), None),
    ("32", 32.0, Some(3.0), Some(2.0)),
    ("40", 40.0, Some(3.7), Some(2.4)),
    ("50", 50.0, Some(4.6), Some(3.0)),
    ("63", 63.0, Some(5.8), Some(3.8)),
    ("75", 75.0, Some(6.8), Some(4.5)),
    ("90", 90.0, Some(8.2), Some(5.4)),
    ("110", 110.0, Some(10.0), Some(6.6)),
    ("125", 125.0, Some(11.4), Some(7.4)),
    ("140", 140.0, Some(12.7), Some(8.3)),
    ("160", 160.0, Some(14.6), Some(9.5)),
];
/// Name, outside diameter and wall in inches.
const COPPER_L: [(&str, f64, f64); 5] = [
    ("3/4", 0.875, 0.045),
    ("1", 1.125, 0.050),
    ("1 1/4", 1.375, 0.055),
    ("1 1/2", 1.625, 0.060),
    ("2", 2.125, 0.070),
];
/// Name and bore in inches.
const HOSE: [(&str, f64); 6] = [
    ("5/8", 0.625),
    ("3/4", 0.75),
    ("1", 1.0),
    ("1 1/4", 1.25),
    ("1 1/2", 1.5),
    ("2", 2.0),
];

/// Bores that a pipe can have.
pub const BORE: Bound<Length> = Bound::si("inside diameter", 0.004, 1.0);
/// Lengths that a section can have.
pub const LENGTH: Bound<Length> = Bound::si("length of a pipe", 0.0, 1e5);
/// Roughness of the bore.
pub const ROUGHNESS: Bound<Length> = Bound::si("roughness", 0.0, 0.005);

/// A pipe's section.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Pipe {
    outside: f64,
    bore: f64,
    roughness: f64,
}

impl PipeSeries {
    /// Names of the sizes, smallest first.
    pub fn sizes(self) -> Vec<&'static str> {
        match self {
            Self::IpsPolyethylene => IPS.iter().map(|row| row.0).collect(),
            Self::MetricPolyethylene => METRIC.iter().map(|row| row.0).collect(),
            Self::CopperL => COPPER_L.iter().map(|row| row.0).collect(),
            Self::Hose => HOSE.iter().map(|row| row.0).collect(),
        }
    }
    /// Roughness of a clean bore: drawn tube and polyethylene 0.001 5 mm (from
    /// memory of the PPI handbook and of Moody's chart); hose 0.01 mm (common
    /// practice, no source).
    fn roughness(self) -> f64 {
        match self {
            Self::Hose => 0.01 * MM,
            _ => 0.001_5 * MM,
        }
    }
    /// A pipe of this series; the ratio counts for polyethylene only.
    ///
    /// # Errors
    /// [`PipeError::NoSuchSize`], [`PipeError::NoSuchRatio`].
    pub fn pipe(self, nominal: &str, sdr: f64) -> Result<Pipe, PipeError> {
        let no_size = || PipeError::NoSuchSize {
            series: self,
            nominal: nominal.to_owned(),
        };
        let no_ratio = || PipeError::NoSuchRatio {
            series: self,
            nominal: nominal.to_owned(),
            sdr,
        };
        let is = |ratio: f64| (sdr - ratio).abs() < 1e-9;
        let (outside, wall) = match self {
            Self::IpsPolyethylene => {
                let (_, od) = IPS
                    .iter()
                    .find(|row| row.0 == nominal)
                    .ok_or_else(no_size)?;
                let ratio = IPS_RATIOS
                    .into_iter()
                    .find(|r| is(*r))
                    .ok_or_else(no_ratio)?;
                (od * INCH, (od / ratio).max(IPS_LEAST_WALL) * INCH)
            }
            Self::MetricPolyethylene => {
                let row = METRIC
                    .iter()
                    .find(|row| row.0 == nominal)
                    .ok_or_else(no_size)?;
                let wall = if is(11.0) {
                    row.2
                } else if is(17.0) {
                    row.3
                } else {
                    None
                };
                (row.1 * MM, wall.ok_or_else(no_ratio)? * MM)
            }
            Self::CopperL => {
                let row = COPPER_L
                    .iter()
                    .find(|row| row.0 == nominal)
                    .ok_or_else(no_size)?;
                (row.1 * INCH, row.2 * INCH)
            }
            Self::Hose => {
                let (_, bore) = HOSE
                    .iter()
                    .find(|row| row.0 == nominal)
                    .ok_or_else(no_size)?;
                (bore * INCH * 1.3, bore * INCH * 0.15)
            }
        };
        Ok(Pipe {
            outside,
            bore: outside - 2.0 * wall,
            roughness: self.roughness(),
        })
    }
}

impl Pipe {
    /// A pipe of known dimensions.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`BORE`] or [`ROUGHNESS`], or a wall below zero.
    pub fn new(outside: Length, bore: Length, roughness: Length) -> Result<Self, OutOfRange> {
        let bore = BORE.check(bore)?;
        Bound::si("outside diameter", bore.si(), 2.0).check(outside)?;
        Ok(Self {
            outside: outside.si(),
            bore: bore.si(),
            roughness: ROUGHNESS.check(roughness)?.si(),
        })
    }
    /// Outside diameter.
    pub fn outside(self) -> Length {
        Length::from_si(self.outside)
    }
    /// Inside diameter: outside less twice the least wall. Average walls are
    /// about 6 % thicker, so the real volume is 2 to 3 % smaller.
    pub fn bore(self) -> Length {
        Length::from_si(self.bore)
    }
    /// Least wall.
    pub fn wall(self) -> Length {
        Length::from_si(0.5 * (self.outside - self.bore))
    }
    /// Outside diameter over wall.
    pub fn diameter_ratio(self) -> Number {
        Number::from_si(self.outside / self.wall().si())
    }
    /// Roughness of the bore.
    pub fn roughness(self) -> Length {
        Length::from_si(self.roughness)
    }
    /// Free area.
    pub fn area(self) -> Area {
        self.bore().circle()
    }
    /// Volume of a length of it.
    pub fn volume(self, length: Length) -> Volume {
        self.area() * length
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_listed_size_is_a_pipe_and_others_are_refused() {
        for series in [
            PipeSeries::IpsPolyethylene,
            PipeSeries::CopperL,
            PipeSeries::Hose,
        ] {
            for size in series.sizes() {
                let pipe = series.pipe(size, 11.0).unwrap();
                assert!(pipe.bore() < pipe.outside() && pipe.bore().si() > 0.0);
            }
        }
        let ips = PipeSeries::IpsPolyethylene;
        assert!(matches!(
            ips.pipe("5", 11.0),
            Err(PipeError::NoSuchSize { .. })
        ));
        assert!(matches!(
            ips.pipe("1", 12.0),
            Err(PipeError::NoSuchRatio { .. })
        ));
        let metric = PipeSeries::MetricPolyethylene;
        assert!(matches!(
            metric.pipe("25", 17.0),
            Err(PipeError::NoSuchRatio { .. })
        ));
        assert!((PipeSeries::Hose.pipe("1", 0.0).unwrap().bore().si() - 0.0254).abs() < 1e-12);
    }
}
