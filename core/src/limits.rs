//! Limits of everything that comes from outside, in one place to read.
//!
//! Each stands where it is enforced; this list only points there, so that the
//! compiler keeps it true. Beyond these: JSON and TOML are nested at most 128
//! deep (`serde_json`, `toml`), every number of a visit has its range in
//! `records::visit_file`, every reading in `records::point`.

/// Largest visit file, bytes.
pub use crate::records::visit_file::MAX_BYTES as VISIT_FILE_BYTES;

/// Longest question of `returnline calc`, bytes; a longer line is answered by an error.
pub use crate::calc::MAX_LINE as QUESTION_BYTES;

/// Longest text of a number with its unit, characters.
pub use crate::units::parse::MAX_TEXT as NUMBER_CHARACTERS;

/// Bytes, pixels and counts of photos, strokes and points of signatures.
pub use crate::records::attachment::limits as attachments;

/// Longest line of an exchange file, bytes.
pub use crate::exchange::LONGEST_LINE as EXCHANGE_LINE_BYTES;

/// Largest exchange file once unpacked, bytes.
pub use crate::exchange::LARGEST as EXCHANGE_BYTES;

/// Most records of an exchange file.
pub use crate::exchange::MOST_RECORDS as EXCHANGE_RECORDS;

/// Most states of one record that no other one is over.
pub use crate::exchange::MOST_REVISIONS as EXCHANGE_STATES;

/// Most names in the past of a state.
pub use crate::exchange::LONGEST_PAST as EXCHANGE_PAST;

/// Largest file of the rule graph or the procedures, bytes.
pub use crate::authored::LARGEST_FILE as GRAPH_FILE_BYTES;

/// Largest file of learned counts, bytes.
pub use crate::api::LARGEST_LEARNED_FILE as LEARNED_FILE_BYTES;

/// Largest file of a company's logo, bytes.
pub use crate::api::LARGEST_LOGO_FILE as LOGO_FILE_BYTES;

/// Longest free text of a field, bytes.
pub use crate::records::field::LONGEST_TEXT as TEXT_BYTES;

/// Longest text that is typed and not kept yet, bytes.
pub use crate::api::LONGEST_DRAFT as DRAFT_BYTES;

/// Longest name of a file that is made, bytes.
pub use crate::report::file::LONGEST_NAME as FILE_NAME_BYTES;
