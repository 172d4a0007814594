//! What a check of the procedure files can find.

use crate::plan::rules::Violation;
use crate::units::Dimension;
use thiserror::Error;

/// A problem of the procedure files.
pub type Problem = crate::authored::Problem<Fault>;

impl Problem {
    /// Files that pass every check and still cannot be built.
    pub(in crate::plan) fn unbuildable() -> Self {
        Self {
            check: "files-build",
            file: String::new(),
            subject: String::new(),
            fault: Fault::Unbuildable,
        }
    }
}

/// What is wrong with an entry.
#[derive(Clone, PartialEq, Debug, Error)]
pub enum Fault {
    /// The file is not TOML of the right shape.
    #[error("cannot be read: {message}")]
    Unreadable {
        /// The reader's message with line and column.
        message: String,
    },
    /// Reading and checking do not agree.
    #[error("passed every check and cannot be built")]
    Unbuildable,
    /// An id is not lower-case words joined by single hyphens.
    #[error("is not an id (lower-case words joined by single hyphens)")]
    BadId,
    /// The same id is given twice.
    #[error("is already the id of a {kind}")]
    DuplicateId {
        /// Kind of entry.
        kind: &'static str,
    },
    /// A field does not hold one of the known words.
    #[error("{field} is `{found}`, which is none of: {accepted}")]
    UnknownTerm {
        /// The field.
        field: &'static str,
        /// What it holds.
        found: String,
        /// The known words.
        accepted: String,
    },
    /// A field names something that does not exist.
    #[error("{field} names `{id}`, which does not exist")]
    UnknownId {
        /// The field.
        field: &'static str,
        /// What it names.
        id: String,
    },
    /// A number is missing.
    #[error("{field} has no value")]
    NoValue {
        /// The field.
        field: &'static str,
    },
    /// A number cannot be.
    #[error("{field} is {value} {unit}, which is not a value of {dimension:?}")]
    BadValue {
        /// The field.
        field: &'static str,
        /// The number.
        value: f64,
        /// The unit.
        unit: String,
        /// What it should measure.
        dimension: Dimension,
    },
    /// A source mark is missing or malformed.
    #[error("{field} has no source mark")]
    NoSource {
        /// The field.
        field: &'static str,
    },
    /// A computed quantity is of another kind than what it is held against.
    #[error("{field} is compared with `{quantity}`, which is of another kind")]
    WrongKind {
        /// The field.
        field: &'static str,
        /// The quantity.
        quantity: String,
    },
    /// A hazard is not answered at the step that bears it.
    #[error("bears the hazard `{hazard}`, but none of its cautions answers it")]
    HazardWithoutCaution {
        /// The hazard.
        hazard: String,
    },
    /// A caution answers none of the hazards of its step.
    #[error("shows the caution `{caution}`, which answers none of its hazards")]
    CautionWithoutHazard {
        /// The caution.
        caution: String,
    },
    /// A gate looks at nothing, or at two things.
    #[error("a gate looks at one reading or one observation")]
    LooksAtNothing,
    /// A gate has nowhere to go back to.
    #[error("a gate names no step to go back to")]
    NoWayBack,
    /// A gate goes back to a step that is not before it.
    #[error("goes back to `{id}`, which is not before it")]
    ReturnNotBefore {
        /// The step.
        id: String,
    },
    /// `after` names a step of another stage or side.
    #[error("is after `{id}`, which is of another stage or side")]
    AfterElsewhere {
        /// The step.
        id: String,
    },
    /// What a step opens is not closed by a step that comes along with it.
    #[error("opens `{opening}`, and nothing that comes along closes it")]
    NotClosed {
        /// The opening.
        opening: String,
    },
    /// A proof has no end.
    #[error("has neither a lower nor an upper end")]
    NoEnd,
    /// A step belongs to no procedure.
    #[error("is reached by no procedure")]
    Unreachable,
    /// An entry is used by nothing.
    #[error("is used by nothing")]
    Unused,
    /// A catalog has no text under a key.
    #[error("has no text `{key}` in `{language}`")]
    MissingText {
        /// The language.
        language: String,
        /// The key.
        key: String,
    },
    /// No plan can be made.
    #[error("makes no plan: {0}")]
    NoPlan(#[from] crate::plan::AssembleError),
    /// A plan breaks a rule.
    #[error("makes a plan in which {0}")]
    BreaksRule(#[from] Violation),
}
