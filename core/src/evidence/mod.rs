//! From a call to what the inference takes.
//!
//! Readings become likelihoods through the physics ([`evaluators`]), records
//! become facts ([`facts`]), answers become reports with the reliability of
//! their finding, and [`gather`] puts them together, with the reasons for every
//! number and with what could not be used.

mod call;
mod evaluation;
pub mod evaluators;
mod facts;
mod gather;
mod levels;
mod reach;
mod season;

pub use call::{Call, State, Taken};
pub use evaluation::{Beside, Evaluation, Explained};
pub use evaluators::{Believed, Evaluator, believed, names};
pub use facts::{TOLD, facts};
pub use gather::{Gathered, Unused, WhyUnused, gather, lies};
pub use levels::{Levels, Range, SLIP};
pub use season::{Season, SeasonBasis, season};

#[cfg(test)]
mod tests;
