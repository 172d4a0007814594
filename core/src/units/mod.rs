//! Quantities, units, and what people write for them.
//!
//! Inside the engine every number is SI and carries its kind in its type: a
//! temperature is not a temperature difference, a gauge pressure is not an
//! absolute one, so that mixing them does not compile. Units exist only at the
//! edge: [`Measure`] keeps a number as it was written, [`parse`] reads what a
//! person types and [`format`] prints it.

mod bound;
pub mod format;
mod measure;
pub mod parse;
mod quantity;
mod system;
mod unit;

pub use bound::{Bound, OutOfRange};
pub use measure::Measure;
pub use quantity::*;
pub use system::UnitSystem;
pub use unit::{Dimension, Unit};
