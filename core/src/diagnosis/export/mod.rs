//! Export for general-purpose Bayesian network libraries.

mod bif;

pub use bif::to_bif;
