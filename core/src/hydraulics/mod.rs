//! Pipes, pumps and what flows in them.

pub mod circulator;
pub mod component;
pub mod elastic;
pub mod friction;
pub mod network;
pub mod pipe;
pub mod pump;
pub mod purge;
pub mod suction;
