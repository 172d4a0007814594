//! Export for general-purpose Bayesian network libraries.

mod bif;
mod network;
mod xmlbif;

pub use bif::to_bif;
pub use xmlbif::to_xmlbif;
