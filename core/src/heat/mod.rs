//! Heat exchange, flow from independent readings, refrigerant saturation.

mod error;
pub mod exchange;
pub mod flow;
pub mod reconcile;
pub mod saturation;

pub use error::HeatError;
