//! Static pressure of a closed loop over time and season.
//!
//! A sealed loop is a fixed mass of fluid in a pipe that yields. The pressure
//! follows from the balance of volumes ([`balance`]); what is not known of the
//! pipe and its surround makes it a band ([`band`]), and earlier readings of
//! the same loop narrow that band ([`belief`]). A loop of polyethylene reads
//! **lower when warm**: the pipe outgrows the fluid.

pub mod balance;
pub mod band;
pub mod belief;
mod error;
pub mod gas;
pub mod hold_test;
mod learn;
pub mod leave;
pub mod level;
pub mod modulus;
mod sampling;
pub mod trend;
mod unknowns;
pub mod year;

pub use error::PressureError;

#[cfg(test)]
mod tests;
