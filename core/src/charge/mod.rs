//! Antifreeze dose, dilution, and whether a charge is mixed.
//!
//! Strengths come from freeze points ([`crate::fluids`]); volumes are of the
//! liquids at 20 °C. Every plan carries its [`Caution`]s.

mod adjust;
mod caution;
mod error;
mod flash;
mod mixing;

pub use adjust::{
    Adjustment, FREEZE_MARGIN, LOOP_VOLUME, MARGIN, Measured, Premix, Product, adjust,
    adjust_measured, premix, target,
};
pub use caution::{Caution, cautions};
pub use error::ChargeError;
pub use flash::{PURE_FLASH_DOUBT, flash_point};
pub use mixing::{FEWEST_TURNOVERS, LEAST_APART, Mixing, MixingJudged, Sample, judge};
