//! The engine of Returnline: what a closed ground loop should do, what a
//! callback's readings say it does, which commissioning fault explains the
//! difference, and how to put it right.
//!
//! See `DEVELOPERS.md` at the top of the repository for the map of this crate
//! and the directions in which its modules may depend on each other.

pub mod api;
pub mod authored;
pub mod calc;
pub mod charge;
pub mod diagnosis;
pub mod evidence;
pub mod exchange;
pub mod figures;
pub mod fleet;
pub mod fluids;
pub mod heat;
pub mod hydraulics;
pub mod limits;
pub mod model;
mod named;
pub mod plan;
pub mod pressure;
pub mod records;
pub mod report;
pub mod store;
pub mod text;
pub mod uncertainty;
pub mod units;
pub mod water;
