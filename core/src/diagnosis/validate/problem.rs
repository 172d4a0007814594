//! What a check of the graph can find.

use std::fmt;

/// Kinds of entries, for messages.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NodeKind {
    /// Cause.
    Cause,
    /// Mechanism.
    Mechanism,
    /// Finding.
    Finding,
    /// Check.
    Check,
    /// Caution.
    Caution,
    /// Procedure.
    Procedure,
    /// Fact.
    Fact,
    /// Tool.
    Tool,
    /// Hazard.
    Hazard,
    /// Family.
    Family,
    /// Published source.
    Source,
}

impl fmt::Display for NodeKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Cause => "cause",
            Self::Mechanism => "mechanism",
            Self::Finding => "finding",
            Self::Check => "check",
            Self::Caution => "caution",
            Self::Procedure => "procedure",
            Self::Fact => "fact",
            Self::Tool => "tool",
            Self::Hazard => "hazard",
            Self::Family => "family",
            Self::Source => "source",
        })
    }
}

/// A problem of the graph files.
pub type Problem = crate::authored::Problem<Fault>;

/// What is wrong with an entry.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Fault {
    /// The file is not TOML of the right shape.
    #[error("cannot be read: {message}")]
    Unreadable {
        /// The reader's message with line and column.
        message: String,
    },
    /// An id is not lower-case words joined by single hyphens.
    #[error("is not an id (lower-case words joined by single hyphens)")]
    BadId,
    /// The same id is given twice.
    #[error("is already the id of a {first} in {first_file}")]
    DuplicateId {
        /// Kind of the first bearer.
        first: NodeKind,
        /// File of the first bearer.
        first_file: String,
    },
    /// A field names something that does not exist.
    #[error("{field} names the {expected} `{id}`, which does not exist")]
    UnknownId {
        /// Field with the reference.
        field: &'static str,
        /// What it should name.
        expected: NodeKind,
        /// What it names.
        id: String,
    },
    /// The instrument of a finding is a cause of another kind.
    #[error("instrument `{id}` is not a cause of kind instrument")]
    NotAnInstrument {
        /// The cause.
        id: String,
    },
    /// A link joins things that links do not join.
    #[error("a link goes from a cause or mechanism to a mechanism or finding")]
    WrongEnds,
    /// What a graph says once is said again.
    #[error("is said a second time")]
    SaidTwice,
    /// A link is given twice.
    #[error("is given more than once")]
    DuplicateLink,
    /// Mechanisms bring each other about in a circle.
    #[error("is part of a circle: {path}")]
    Cycle {
        /// The ids around the circle.
        path: String,
    },
    /// A cause or mechanism reaches no finding.
    #[error("reaches no finding")]
    ReachesNoFinding,
    /// A mechanism or finding is reached by no cause.
    #[error("is reached by no cause")]
    ReachedByNoCause,
    /// A finding that must be looked for is revealed by no check.
    #[error("is revealed by no check")]
    NoCheck,
    /// A check reveals nothing.
    #[error("reveals no finding")]
    RevealsNothing,
    /// An entry is used by nothing.
    #[error("is used by nothing")]
    Unused,
    /// A hazard is not answered at the entry that bears it.
    #[error("bears the hazard `{hazard}`, but none of its cautions answers it")]
    HazardWithoutCaution {
        /// The hazard.
        hazard: String,
    },
    /// A field is missing.
    #[error("needs the field {field}")]
    MissingField {
        /// The field.
        field: &'static str,
    },
    /// A field has no meaning for this entry.
    #[error("has the field {field}, which has no meaning here")]
    UselessField {
        /// The field.
        field: &'static str,
    },
    /// A number is out of its range.
    #[error("{field} is {value}, outside {range}")]
    OutOfRange {
        /// The field.
        field: &'static str,
        /// Its value.
        value: f64,
        /// The range in interval notation.
        range: &'static str,
    },
    /// A number has no source mark.
    #[error("has no source mark")]
    NoSource,
    /// A catalog has no text under a key.
    #[error("has no text `{key}` in `{language}`")]
    MissingText {
        /// The language.
        language: String,
        /// The key.
        key: String,
    },
    /// An evaluator is not known.
    #[error("names the evaluator `{name}`, which does not exist")]
    UnknownEvaluator {
        /// The name.
        name: String,
    },
}
