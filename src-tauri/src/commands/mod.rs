//! The commands the interface may call, by feature.

pub mod about;
