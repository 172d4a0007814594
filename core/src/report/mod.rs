//! Report content as data, and the pages made from it.
//!
//! The way of a report: [`document`] (what it says, plain data) -> [`layout`]
//! (a display list of positioned glyphs, lines and pictures) -> [`pdf`] (bytes)
//! -> [`file`] (written whole or not at all). Charts are [`chart::Drawing`]s,
//! which a screen can show as well. Nothing here reads the store or asks for the
//! time; what the three kinds of report say is [`service`], [`homeowner`] and
//! [`fleet`].

pub mod chart;
pub mod document;
pub mod error;
pub mod file;
pub mod fleet;
pub mod fonts;
pub mod homeowner;
pub mod layout;
pub mod parts;
pub mod pdf;
pub mod photo;
pub mod service;
pub mod words;

pub use document::Document;
pub use error::{PhotoError, ReportError, WriteError};
pub use pdf::to_pdf;
pub use words::Words;
