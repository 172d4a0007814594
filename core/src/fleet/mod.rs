//! What a fleet of systems and the calls at them say together: which causes come
//! back, on which installs, and which habits go with them.
//!
//! Pure: rows come in, figures go out. Every figure says which visits it counts
//! by the [`Filter`] that opens them.

pub mod board;
mod filter;
pub mod invented;
mod rows;
pub mod statistics;

pub use filter::{Aspect, Dimension, Filter, Season};
pub use rows::{Builder, Fleet, FollowUpRow, Habit, SystemRow, VisitRow, WordSort};
