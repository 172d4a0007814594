//! The rule graph and its inference: from findings to causes.

mod evidence;
mod graph;
mod id;
mod inference;
pub mod shipped;
pub mod validate;

pub use evidence::{Case, Evaluator, Likelihood, LikelihoodError, Observation, ReadWith};
pub use graph::{
    Cause, CauseIx, CauseKind, Caution, Check, ContextShift, EvidenceKind, Finding, FindingIx,
    Graph, Level, Licence, Link, Mechanism, MechanismIx, Parent, Procedure, Push, Scale, Source,
    SourceMark, SourceText, Status, Step,
};
pub use id::{
    CauseId, CautionId, CheckId, FactId, FamilyId, FindingId, HazardId, MechanismId, ProcedureId,
    SourceId, StepId, ToolId,
};
pub use inference::{CaseError, Inference};
