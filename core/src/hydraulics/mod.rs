//! Pipes, pumps and what flows in them.

pub mod circulator;
pub mod elastic;
pub mod friction;
pub mod pipe;
pub mod pump;
pub mod suction;
