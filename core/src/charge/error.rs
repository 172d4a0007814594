//! Why a charge cannot be planned.

use crate::fluids::{FluidError, FluidKind};
use crate::units::OutOfRange;
use thiserror::Error;

/// Why a charge cannot be planned.
#[derive(Copy, Clone, PartialEq, Debug, Error)]
pub enum ChargeError {
    /// An input lies outside its range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The fluid has no properties there.
    #[error(transparent)]
    Fluid(#[from] FluidError),
    /// No amount of this product brings the loop to the target.
    #[error("the product cannot bring the loop to the target strength")]
    ProductCannotReach,
    /// The loop holds one antifreeze and the product another.
    #[error("{in_loop:?} is in the loop and {product:?} is to be added: drain and flush")]
    OtherFluid {
        /// In the loop.
        in_loop: FluidKind,
        /// In the product.
        product: FluidKind,
    },
    /// The target asks for antifreeze and the kind is water.
    #[error("water cannot protect below its freezing point")]
    WaterCannotProtect,
}

impl ChargeError {
    /// Stable code of the error.
    pub fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange(_) => "out-of-range",
            Self::Fluid(error) => error.code(),
            Self::ProductCannotReach => "product-cannot-reach",
            Self::OtherFluid { .. } => "other-fluid",
            Self::WaterCannotProtect => "water-cannot-protect",
        }
    }
}
