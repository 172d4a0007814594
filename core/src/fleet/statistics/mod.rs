//! Statistics of counts and waiting times. Pure; every interval is of 95 %.

mod discovery;
mod interval;
mod survival;
mod table;

pub use discovery::{adjusted, adjusted_dependent};
pub use interval::{Interval, poisson_rate, wilson};
pub use survival::{Curve, Step, Waiting};
pub use table::TwoByTwo;

/// Quantile of the standard normal distribution at 0.975, to double precision.
/// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 prints 1.96; the
/// further digits are checked against `scipy.stats.norm.ppf` with the intervals.
pub(crate) const Z: f64 = 1.959_963_984_540_054;
