//! Report content as data, and the pages made from it.
//!
//! The way of a report: [`document`] (what it says, plain data) -> [`layout`]
//! (a display list of positioned glyphs, lines and pictures) -> [`pdf`] (bytes)
//! -> [`file`] (written whole or not at all). Charts are [`chart::Drawing`]s,
//! which a screen can show as well. Nothing here knows heat pumps, reads the
//! store, or asks for the time.

pub mod chart;
pub mod document;
pub mod error;
pub mod file;
pub mod fonts;
pub mod layout;
pub mod pdf;
pub mod photo;
pub mod service;
pub mod words;

pub use document::Document;
pub use error::{PhotoError, ReportError, WriteError};
pub use pdf::to_pdf;
pub use words::Words;
