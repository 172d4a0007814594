//! Why a pressure cannot be told.

use crate::fluids::FluidError;
use crate::units::OutOfRange;
use thiserror::Error;

/// Why a pressure cannot be told.
#[derive(Copy, Clone, PartialEq, Debug, Error)]
pub enum PressureError {
    /// An input lies outside its range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The fluid has no properties there.
    #[error(transparent)]
    Fluid(#[from] FluidError),
    /// There is no pipe volume.
    #[error("the loop holds no plastic pipe")]
    NoPipe,
    /// The moment asked for lies before the charge pressure was read.
    #[error("the moment lies before the charge was read")]
    BeforeCharge,
    /// A judgement needs more readings.
    #[error("{given} readings given, {needed} needed")]
    TooFewReadings {
        /// Readings given.
        given: usize,
        /// Readings needed.
        needed: usize,
    },
    /// The readings are not in order of time.
    #[error("the readings are not in order of time")]
    NotInOrder,
    /// The lowest pressure to keep lies above the highest.
    #[error("the lowest pressure lies above the highest")]
    EmptyBand,
}

impl PressureError {
    /// Stable code of the error.
    pub fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange(_) => "out-of-range",
            Self::Fluid(error) => error.code(),
            Self::NoPipe => "no-pipe",
            Self::BeforeCharge => "before-charge",
            Self::TooFewReadings { .. } => "too-few-readings",
            Self::NotInOrder => "not-in-order",
            Self::EmptyBand => "empty-band",
        }
    }
}
