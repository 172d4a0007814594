//! Pipes, pumps and what flows in them.

pub mod elastic;
