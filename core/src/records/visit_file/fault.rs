//! What can be wrong with a visit file, and how the schema's findings become that.

use jsonschema::ValidationError;
use jsonschema::error::ValidationErrorKind as Kind;
use serde_json::Value;
use std::fmt;

/// One thing wrong with a visit file.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Fault {
    /// Where, for example `visit.readings[2].value.unit`; empty for the whole file.
    pub path: String,
    /// What.
    pub code: FaultCode,
    /// The value found there, shortened.
    pub found: String,
    /// What would be accepted.
    pub accepted: String,
}

/// The kinds of fault. [`FaultCode::id`] is the key of its message.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
#[allow(missing_docs)] // the messages say what each means
pub enum FaultCode {
    TooLarge,
    Empty,
    Truncated,
    NotJson,
    NotAVisitFile,
    NewerVersion,
    Missing,
    Unknown,
    WrongType,
    NotAccepted,
    OutOfRange,
    Malformed,
    Internal,
}

impl FaultCode {
    /// Stable identifier.
    pub fn id(self) -> &'static str {
        match self {
            Self::TooLarge => "too-large",
            Self::Empty => "empty",
            Self::Truncated => "truncated",
            Self::NotJson => "not-json",
            Self::NotAVisitFile => "not-a-visit-file",
            Self::NewerVersion => "newer-version",
            Self::Missing => "missing",
            Self::Unknown => "unknown",
            Self::WrongType => "wrong-type",
            Self::NotAccepted => "not-accepted",
            Self::OutOfRange => "out-of-range",
            Self::Malformed => "malformed",
            Self::Internal => "internal",
        }
    }
}

/// Longest piece of a found value that a message repeats.
const MAX_FOUND: usize = 60;

impl Fault {
    /// A fault at a place.
    pub fn at(path: &str, code: FaultCode, found: &str, accepted: &str) -> Self {
        let mut shown: String = found
            .chars()
            .filter(|c| !c.is_control())
            .take(MAX_FOUND)
            .collect();
        if shown.len() < found.len() {
            shown.push('…');
        }
        Self {
            path: path.to_owned(),
            code,
            found: shown,
            accepted: accepted.to_owned(),
        }
    }
    /// A fault of the program, not of the file.
    pub fn internal(error: &str) -> Self {
        Self::at("", FaultCode::Internal, error, "")
    }
    /// The message of this fault.
    pub fn message(&self, catalog: &crate::text::Catalog) -> String {
        let args = crate::text::Args::new()
            .text("path", self.path.as_str())
            .text("found", self.found.as_str())
            .text("accepted", self.accepted.as_str());
        let alone = self.code == FaultCode::NotAccepted && self.accepted.is_empty();
        let tail = if alone { "-alone" } else { "" };
        catalog.fill(&format!("fault-{}{tail}", self.code.id()), &args)
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} `{}`", self.path, self.code.id(), self.found)?;
        if self.accepted.is_empty() {
            Ok(())
        } else {
            write!(f, " ({})", self.accepted)
        }
    }
}

/// The faults behind one finding of the schema.
pub(super) fn translate(error: &ValidationError<'_>) -> Vec<Fault> {
    let path = dotted(error.instance_path().as_str());
    let found = shown(error.instance());
    let one = |code, accepted: &str| vec![Fault::at(&path, code, &found, accepted)];
    match error.kind() {
        Kind::Required { property } => {
            let name = property.as_str().unwrap_or_default();
            vec![Fault::at(&join(&path, name), FaultCode::Missing, "", "")]
        }
        Kind::AdditionalProperties { unexpected } | Kind::UnevaluatedProperties { unexpected } => {
            unexpected
                .iter()
                .map(|name| Fault::at(&join(&path, name), FaultCode::Unknown, name, ""))
                .collect()
        }
        Kind::Type { kind } => one(FaultCode::WrongType, &type_words(kind)),
        Kind::Enum { options } => one(FaultCode::NotAccepted, &choices(options)),
        Kind::Constant { expected_value } => one(FaultCode::NotAccepted, &shown(expected_value)),
        Kind::Minimum { limit } => one(FaultCode::OutOfRange, &format!("≥ {limit}")),
        Kind::ExclusiveMinimum { limit } => one(FaultCode::OutOfRange, &format!("> {limit}")),
        Kind::Maximum { limit } => one(FaultCode::OutOfRange, &format!("≤ {limit}")),
        Kind::ExclusiveMaximum { limit } => one(FaultCode::OutOfRange, &format!("< {limit}")),
        Kind::MaxLength { limit } | Kind::MaxItems { limit } => {
            one(FaultCode::OutOfRange, &format!("≤ {limit}"))
        }
        Kind::MinLength { limit } | Kind::MinItems { limit } => {
            one(FaultCode::OutOfRange, &format!("≥ {limit}"))
        }
        Kind::Format { format } => one(FaultCode::Malformed, format),
        Kind::AnyOf { context }
        | Kind::OneOfNotValid { context }
        | Kind::OneOfMultipleValid { context } => best_branch(&path, &found, context),
        other => one(FaultCode::Malformed, other.keyword()),
    }
}

/// Of the ways in which a tagged choice does not fit, the one that was meant:
/// the branch whose tag fits, or, when none does, the list of tags.
fn best_branch(path: &str, found: &str, branches: &[Vec<ValidationError<'static>>]) -> Vec<Fault> {
    let is_tag = |error: &ValidationError<'_>| matches!(error.kind(), Kind::Constant { .. });
    let meant = branches
        .iter()
        .filter(|branch| !branch.iter().any(is_tag))
        .filter(|branch| !branch.iter().any(|error| lacks_tag(error)))
        .min_by_key(|branch| branch.len());
    if let Some(branch) = meant {
        return branch.iter().flat_map(translate).collect();
    }
    let tags: Vec<&ValidationError<'_>> = branches
        .iter()
        .flatten()
        .filter(|error| is_tag(error))
        .collect();
    let accepted = tags
        .iter()
        .filter_map(|error| match error.kind() {
            Kind::Constant { expected_value } => Some(shown(expected_value)),
            _ => None,
        })
        .collect::<Vec<_>>()
        .join(", ");
    match tags.first() {
        Some(tag) => {
            let place = dotted(tag.instance_path().as_str());
            vec![Fault::at(
                &place,
                FaultCode::NotAccepted,
                &shown(tag.instance()),
                &accepted,
            )]
        }
        None => match branches.first().and_then(|branch| branch.first()) {
            Some(error) => translate(error),
            None => vec![Fault::at(path, FaultCode::Malformed, found, "")],
        },
    }
}

/// A missing `kind` or `standard` means that no branch was chosen at all.
fn lacks_tag(error: &ValidationError<'_>) -> bool {
    matches!(error.kind(), Kind::Required { property }
        if matches!(property.as_str(), Some("kind" | "standard")))
}

/// Drops repeats: two rules of the schema may find the same thing.
pub(super) fn tidy(mut faults: Vec<Fault>) -> Vec<Fault> {
    let mut seen = std::collections::HashSet::new();
    faults.retain(|fault| seen.insert((fault.path.clone(), fault.code)));
    faults
}

fn type_words(kind: &jsonschema::error::TypeKind) -> String {
    match kind {
        jsonschema::error::TypeKind::Single(kind) => kind.to_string(),
        jsonschema::error::TypeKind::Multiple(kinds) => kinds
            .iter()
            .map(|kind| kind.to_string())
            .collect::<Vec<_>>()
            .join(" / "),
    }
}

fn choices(options: &Value) -> String {
    let items = options.as_array().map(Vec::as_slice).unwrap_or_default();
    items.iter().map(shown).collect::<Vec<_>>().join(", ")
}

/// A value as a message repeats it: text bare, the rest as JSON, shortened.
fn shown(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Object(_) => "{…}".to_owned(),
        Value::Array(_) => "[…]".to_owned(),
        other => other.to_string(),
    }
}

/// `/visit/readings/2/value` as `visit.readings[2].value`.
fn dotted(pointer: &str) -> String {
    let mut path = String::new();
    for part in pointer.split('/').skip(1) {
        let part = part.replace("~1", "/").replace("~0", "~");
        if part.chars().all(|c| c.is_ascii_digit()) && !part.is_empty() {
            path.push_str(&format!("[{part}]"));
        } else {
            path = join(&path, &part);
        }
    }
    path
}

fn join(path: &str, name: &str) -> String {
    if path.is_empty() {
        name.to_owned()
    } else {
        format!("{path}.{name}")
    }
}
