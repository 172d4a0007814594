//! Carrying records between devices without a network: what a record is on the
//! way, how its states are ordered, and the file.
//!
//! The format is described in `core/docs/exchange.md`. Nothing here knows the
//! database; merging is a union of states from which those that a later one has
//! seen are dropped, so order and repetition of files cannot matter.

mod content;
mod error;
mod file;
mod revision;
mod signed;

pub use content::{FollowUp, Household, SiteContent, SystemContent, VisitContent, Words};
pub(crate) use content::{check_text, read, text};
pub use error::ExchangeError;
pub use file::{Header, Record, Source, Writer};
pub use revision::{Digest, Kind, Revision, merge, shown};
pub use signed::{CountsSigned, Signed};

/// What the header says.
pub const FORMAT: &str = "returnline-exchange";
/// The version written, and the newest read. It goes up whenever a record gains a field
/// or a value with a name: a program that does not know it then refuses the file by its
/// version and says so, and not by a field that tells its reader nothing.
pub const VERSION: u64 = 2;
/// The oldest version read.
pub const OLDEST: u64 = 1;

/// Longest line, in bytes; a photo is one line.
pub const LONGEST_LINE: usize = 32 * 1024 * 1024;
/// Most bytes that a file may hold when unpacked.
pub const LARGEST: u64 = 4 * 1024 * 1024 * 1024;
/// Most records in a file.
pub const MOST_RECORDS: u64 = 4_000_000;
/// Most states of one record.
pub const MOST_REVISIONS: usize = 64;
/// Most earlier states that a state names.
pub const LONGEST_PAST: usize = 4_096;
