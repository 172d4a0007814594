//! Quantities of a correction: what they are, their values, and why.

mod kind;
mod value;

pub use kind::QuantityKind;
pub use value::{Value, ValueKind};
