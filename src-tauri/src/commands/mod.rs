//! The commands the interface may call, by feature.
//!
//! Each passes on to the engine what was typed and answers what it said.
//! They run off the main thread, so that drawing never waits for them.

pub mod about;
pub mod answer;
pub mod attachments;
pub mod backups;
pub mod exchange;
mod files;
pub mod fleet;
pub mod learning;
pub mod readings;
pub mod report;
pub mod settings;
pub mod systems;
pub mod visits;

use returnline_core::api::ApiError;

/// What every command answers.
pub type Answer<T> = Result<T, ApiError>;
