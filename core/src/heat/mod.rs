//! Heat exchange, flow from independent readings, refrigerant saturation.
