//! Errors at the boundary: a code to act on, a message to show, and context.

use super::Wording;
use crate::records::ReadingError;
use crate::records::field::{FieldError, LONGEST_TEXT};
use crate::records::visit_file::Fault;
use crate::store::StoreError;
use crate::text::Args;
use crate::units::{Unit, format, parse::ParseError};
use serde::Serialize;
use std::collections::BTreeMap;
use std::fmt;
use ts_rs::TS;

/// An error as it crosses the boundary.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ApiError {
    /// Stable code. Act on this, never on the message.
    pub code: String,
    /// What to show, in the person's language; names field, value and remedy.
    pub message: String,
    /// What the message was made from.
    pub context: BTreeMap<String, String>,
}

impl fmt::Display for ApiError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}
impl std::error::Error for ApiError {}

impl ApiError {
    /// An error with its message `error-<code>` from the catalog.
    pub fn new(code: &str, context: &[(&str, &str)], wording: Wording) -> Self {
        let mut args = Args::new();
        for (name, value) in context {
            args = args.text(name, *value);
        }
        Self {
            code: code.to_owned(),
            message: wording.catalog().fill(&format!("error-{code}"), &args),
            context: context
                .iter()
                .map(|(name, value)| ((*name).to_owned(), (*value).to_owned()))
                .collect(),
        }
    }

    pub(super) fn store(error: &StoreError, wording: Wording) -> Self {
        let context = error.context();
        let context: Vec<(&str, &str)> = context
            .iter()
            .map(|(name, value)| (*name, value.as_str()))
            .collect();
        Self::new(error.code(), &context, wording)
    }

    pub(super) fn field(error: &FieldError, wording: Wording) -> Self {
        let catalog = wording.catalog();
        let label = |id: &str| catalog.text(&format!("field-{}", id.replace('.', "-")));
        match error {
            FieldError::NoSuchField(id) => Self::new("no-such-field", &[("field", id)], wording),
            FieldError::Unreadable { field, error } => Self::typed(&label(field), error, wording),
            FieldError::NotAccepted {
                field,
                found,
                accepted,
            } => Self::new(
                "not-accepted",
                &[
                    ("field", &label(field)),
                    ("found", found),
                    ("accepted", accepted),
                ],
                wording,
            ),
            FieldError::TooLong { field } => {
                let most = LONGEST_TEXT.to_string();
                let context = [("field", &*label(field)), ("most", &most)];
                Self::new("text-too-long", &context, wording)
            }
            FieldError::OutOfRange {
                field,
                found,
                accepted,
            } => Self::new(
                "out-of-range",
                &[
                    ("field", &label(field)),
                    ("found", found),
                    ("accepted", accepted),
                ],
                wording,
            ),
        }
    }

    /// What was typed is no number with unit.
    pub(super) fn typed(label: &str, error: &ParseError, wording: Wording) -> Self {
        let one = |code: &str, found: &str, accepted: &str| {
            Self::new(
                code,
                &[("field", label), ("found", found), ("accepted", accepted)],
                wording,
            )
        };
        match error {
            ParseError::Empty => one("no-value", "", ""),
            ParseError::NotANumber(text) => one("not-a-number", text, ""),
            ParseError::Ambiguous(text) => one("ambiguous-number", text, ""),
            ParseError::OutOfRange(text) => one("no-reading", text, ""),
            ParseError::NoUnit { text, accepted } => one("no-unit", text, accepted),
            ParseError::WrongUnit { unit, accepted, .. } => one("wrong-unit", unit, accepted),
        }
    }

    pub(super) fn reading(label: &str, error: &ReadingError, wording: Wording) -> Self {
        let typed = |value: f64, unit: Unit| format::as_written(value, 0.0, unit);
        let bound = |value: f64, unit: Unit| format::plus_minus(value, 0.0, unit);
        match error {
            ReadingError::WrongUnit { point, unit } => Self::new(
                "wrong-unit",
                &[
                    ("field", label),
                    ("found", unit.symbol()),
                    (
                        "accepted",
                        &crate::units::parse::accepted(point.kind().dimension()),
                    ),
                ],
                wording,
            ),
            ReadingError::Impossible {
                value,
                unit,
                low,
                high,
                ..
            } => Self::new(
                "out-of-range",
                &[
                    ("field", label),
                    ("found", &typed(*value, *unit)),
                    (
                        "accepted",
                        &format!("{} … {}", bound(*low, *unit), bound(*high, *unit)),
                    ),
                ],
                wording,
            ),
            ReadingError::BadAccuracy { value, unit, .. } => Self::new(
                "bad-accuracy",
                &[
                    ("field", label),
                    ("found", &typed(*value, *unit)),
                    ("accepted", "> 0"),
                ],
                wording,
            ),
        }
    }

    /// A visit file that cannot be taken: every fault, one a line.
    pub fn faults(faults: &[Fault], wording: Wording) -> Self {
        let catalog = wording.catalog();
        let lines: Vec<String> = faults.iter().map(|fault| fault.message(catalog)).collect();
        Self {
            code: "bad-visit-file".to_owned(),
            message: lines.join("\n"),
            context: faults
                .iter()
                .map(|fault| (fault.path.clone(), fault.code.id().to_owned()))
                .collect(),
        }
    }
}
