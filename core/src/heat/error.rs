//! Why a flow or a heat cannot be told.

use super::saturation::SaturationError;
use crate::fluids::FluidError;
use crate::units::OutOfRange;
use thiserror::Error;

/// Why a flow or a heat cannot be told.
#[derive(Copy, Clone, PartialEq, Debug, Error)]
pub enum HeatError {
    /// An input lies outside its range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The fluid has no properties there.
    #[error(transparent)]
    Fluid(#[from] FluidError),
    /// The refrigerant has no saturation there.
    #[error(transparent)]
    Saturation(#[from] SaturationError),
    /// The pressure rise is above what the pump makes at no flow.
    #[error("the pressure rise is above the pump's shut-off head")]
    AboveShutOff,
    /// The pressure rise is below zero: the pump does not drive the flow.
    #[error("the pressure falls across the pump")]
    NoRise,
    /// The temperature difference has the wrong sign or is too small to divide by.
    #[error("the temperature difference does not fit the heat")]
    NoDifference,
    /// The temperatures cross: the fluid leaves beyond the refrigerant's.
    #[error("the fluid leaves beyond the saturation temperature")]
    TemperaturesCross,
    /// A reconciliation needs at least one determination with finite uncertainty.
    #[error("no determination of the flow")]
    NoDetermination,
}

impl HeatError {
    /// Stable code of the error.
    pub fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange(_) | Self::Saturation(_) => "out-of-range",
            Self::Fluid(error) => error.code(),
            Self::AboveShutOff => "above-shut-off",
            Self::NoRise => "no-rise",
            Self::NoDifference => "no-difference",
            Self::TemperaturesCross => "temperatures-cross",
            Self::NoDetermination => "no-determination",
        }
    }
}
