//! Shared pieces of the outside checks.

pub mod invented;
