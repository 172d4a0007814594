//! Pipes, pumps and what flows in them.

pub mod elastic;
pub mod friction;
pub mod pipe;
