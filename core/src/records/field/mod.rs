//! The facts of a call as single fields, so that a screen can show and change
//! them one at a time without knowing the shape of the records.
//!
//! [`TABLE`] names every field once, with its kind and its place.

mod place;
mod table;

pub use table::{FieldGroup, TABLE};

use super::PlainMeasure;
use super::visit_file::{Fault, VisitFile, check_limits};
use crate::units::{Dimension, Unit, parse};
use chrono::NaiveDate;
use thiserror::Error;

/// What a field holds.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum FieldKind {
    /// Free text.
    Text,
    /// Yes or no.
    Flag,
    /// A day.
    Date,
    /// A whole number from 1 up.
    Count,
    /// A number with a unit.
    Measure(Dimension),
    /// One of some names; their labels are `choice-<name>` in the catalog.
    Choice(&'static [&'static str]),
}

/// The value of a field.
#[derive(Clone, PartialEq, Debug)]
#[allow(missing_docs)] // one for each kind
pub enum FieldValue {
    Text(String),
    Flag(bool),
    Date(NaiveDate),
    Count(u32),
    Measure(PlainMeasure),
    Choice(String),
}

/// One fact of a call.
pub struct Field {
    /// Stable identifier; its label is `field-<id>` in the catalog, dots as hyphens.
    pub id: &'static str,
    /// Where it belongs.
    pub group: FieldGroup,
    /// Whether it belongs to the short form that a first visit needs.
    pub quick: bool,
    /// What it holds.
    pub kind: FieldKind,
    place: place::Place,
}

/// Longest free text of a field, in bytes.
pub const LONGEST_TEXT: usize = 64 * 1024;

/// Why a field cannot be changed as asked.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum FieldError {
    /// There is no such field.
    #[error("there is no field `{0}`")]
    NoSuchField(String),
    /// The text is no number with unit.
    #[error("{field}: {error}")]
    Unreadable {
        /// The field.
        field: &'static str,
        /// Why.
        error: parse::ParseError,
    },
    /// The value is not one of those accepted.
    #[error("{field}: `{found}` is not accepted; write one of: {accepted}")]
    NotAccepted {
        /// The field.
        field: &'static str,
        /// What was written.
        found: String,
        /// What would be accepted.
        accepted: String,
    },
    /// More words than are kept.
    #[error("{field}: at most {LONGEST_TEXT} bytes are kept")]
    TooLong {
        /// The field.
        field: &'static str,
    },
    /// The number cannot be.
    #[error("{field}: {found} cannot be; it must be {accepted}")]
    OutOfRange {
        /// The field.
        field: &'static str,
        /// What was written.
        found: String,
        /// What would be accepted.
        accepted: String,
    },
}

/// Catalog key of the label of a choice.
pub fn choice_key(name: &str) -> String {
    let plain = |c: char| {
        if c.is_ascii_alphanumeric() {
            c.to_ascii_lowercase()
        } else {
            '-'
        }
    };
    format!("choice-{}", name.chars().map(plain).collect::<String>())
}

/// The field with this identifier.
pub fn field(id: &str) -> Option<&'static Field> {
    TABLE.iter().find(|field| field.id == id)
}

impl Field {
    /// The value in a call; none when unknown.
    pub fn read(&self, file: &VisitFile) -> Option<FieldValue> {
        // Places are written once, as mutable ones; reading works on a copy.
        self.place.read(&mut file.clone())
    }

    /// Changes the value; `None` makes it unknown. The file is unchanged on error.
    ///
    /// # Errors
    /// [`FieldError`].
    pub fn write(&self, file: &mut VisitFile, value: Option<FieldValue>) -> Result<(), FieldError> {
        let mut changed = file.clone();
        let shown = match &value {
            Some(FieldValue::Choice(name)) => name.clone(),
            other => format!("{other:?}"),
        };
        if !self.place.write(&mut changed, value) {
            let accepted = match self.kind {
                FieldKind::Choice(names) => names.join(", "),
                kind => format!("{kind:?}"),
            };
            return Err(FieldError::NotAccepted {
                field: self.id,
                found: shown,
                accepted,
            });
        }
        let before = check_limits(file);
        let fresh = check_limits(&changed)
            .into_iter()
            .find(|fault| !before.contains(fault));
        if let Some(Fault {
            found, accepted, ..
        }) = fresh
        {
            return Err(FieldError::OutOfRange {
                field: self.id,
                found,
                accepted,
            });
        }
        *file = changed;
        Ok(())
    }

    /// What a person typed, as a value of this field; empty text is unknown.
    /// `unit` is the unit beside the field.
    ///
    /// # Errors
    /// [`FieldError`].
    pub fn parse(&self, text: &str, unit: Option<Unit>) -> Result<Option<FieldValue>, FieldError> {
        let text = text.trim();
        if text.is_empty() {
            return Ok(None);
        }
        let not_accepted = |accepted: &str| FieldError::NotAccepted {
            field: self.id,
            found: text.to_owned(),
            accepted: accepted.to_owned(),
        };
        let value = match self.kind {
            FieldKind::Text if text.len() > LONGEST_TEXT => {
                return Err(FieldError::TooLong { field: self.id });
            }
            // A null character ends a text for some readers of the database.
            FieldKind::Text => FieldValue::Text(text.replace('\0', "")),
            FieldKind::Flag => match text {
                "yes" => FieldValue::Flag(true),
                "no" => FieldValue::Flag(false),
                _ => return Err(not_accepted("yes, no")),
            },
            FieldKind::Date => {
                FieldValue::Date(text.parse().map_err(|_| not_accepted("YYYY-MM-DD"))?)
            }
            FieldKind::Count => {
                let count = text
                    .parse::<u32>()
                    .ok()
                    .filter(|count| (1..=400).contains(count));
                FieldValue::Count(count.ok_or_else(|| not_accepted("1 … 400"))?)
            }
            FieldKind::Measure(dimension) => {
                let measure = parse::plain(text, dimension, unit).map_err(|error| {
                    FieldError::Unreadable {
                        field: self.id,
                        error,
                    }
                })?;
                FieldValue::Measure(PlainMeasure {
                    value: measure.0,
                    unit: measure.1,
                })
            }
            FieldKind::Choice(names) if names.contains(&text) => {
                FieldValue::Choice(text.to_owned())
            }
            FieldKind::Choice(names) => return Err(not_accepted(&names.join(", "))),
        };
        Ok(Some(value))
    }
}

#[cfg(test)]
mod tests;
