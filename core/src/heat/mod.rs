//! Heat exchange, flow from independent readings, refrigerant saturation.

pub mod saturation;
