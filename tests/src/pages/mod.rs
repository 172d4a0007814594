//! Sample documents for the page maker. All content is invented.

mod hard;
mod photos;
mod reports;
mod texts;
mod usual;

pub use hard::{empty, hard};
pub use photos::{jpeg_bytes, photos, png_bytes};
pub use reports::{bare, call, crowded, fleet, issue};
pub use texts::texts_of;
pub use usual::usual;

use chrono::{DateTime, FixedOffset};
use returnline_core::report::{
    Words,
    document::{Meta, Text},
};

/// English words, written out here so that the tests do not lean on the
/// catalogues.
#[must_use]
pub fn words() -> Words {
    Words {
        page_of: "Page {page} of {pages}".into(),
        caution: "Caution".into(),
        note: "Note".into(),
        done: "done".into(),
        not_done: "not done".into(),
        not_applied: "did not apply".into(),
        left_out: "left out".into(),
        unmet: "done but not met".into(),
        excused: "done all the same".into(),
        continued: "continued".into(),
        no_rows: "No entries.".into(),
        date: "Date".into(),
    }
}

/// Properties of an invented report.
#[must_use]
pub fn meta(title: &str) -> Meta {
    Meta {
        title: title.into(),
        author: "Example Heating Company (invented)".into(),
        subject: "Invented example of a report".into(),
        language: "en-US".into(),
        date: date(),
        id: "example-0001".into(),
        running_head: format!("{title} \u{b7} invented example"),
        running_foot: "Example Heating Company (invented) \u{b7} 14 October 2026".into(),
    }
}

fn date() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-10-14T15:30:00-05:00").unwrap_or_default()
}

fn texts(cells: &[&str]) -> Vec<Text> {
    cells.iter().map(|cell| Text::plain(*cell)).collect()
}
