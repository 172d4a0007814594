//! Why a property or a concentration cannot be told.

use super::FluidKind;
use crate::units::{OutOfRange, Temperature};
use thiserror::Error;

/// Why a property or a concentration cannot be told.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum FluidError {
    /// An input lies outside the range of the correlation.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// At this temperature there would be ice.
    #[error("{kind:?} at {:.2} °C is below its freezing point of {:.2} °C", temperature.celsius(), freezing.celsius())]
    BelowFreezing {
        /// The fluid.
        kind: FluidKind,
        /// The temperature asked for.
        temperature: Temperature,
        /// Its freezing point.
        freezing: Temperature,
    },
    /// Plain water holds no antifreeze.
    #[error("water has no concentration")]
    NoConcentration,
    /// No strength of this antifreeze gives this reading.
    #[error("no concentration of {kind:?} gives this reading")]
    NoSuchReading {
        /// The fluid.
        kind: FluidKind,
    },
    /// This instrument cannot tell this fluid's strength.
    #[error("this instrument cannot tell the strength of {kind:?}")]
    WrongInstrument {
        /// The fluid.
        kind: FluidKind,
    },
}

impl FluidError {
    /// Stable code of the error.
    pub fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange(_) => "out-of-range",
            Self::BelowFreezing { .. } => "below-freezing",
            Self::NoConcentration => "no-concentration",
            Self::NoSuchReading { .. } => "no-such-reading",
            Self::WrongInstrument { .. } => "wrong-instrument",
        }
    }
}
