//! The rule graph and its inference: from findings to causes.

mod graph;
mod id;
pub mod shipped;
pub mod validate;

pub use graph::{
    Cause, CauseIx, CauseKind, Caution, Check, ContextShift, EvidenceKind, Finding, FindingIx,
    Graph, Level, Licence, Link, Mechanism, MechanismIx, Parent, Procedure, Push, Scale, Source,
    SourceMark, SourceText, Status, Step,
};
pub use id::{
    CauseId, CautionId, CheckId, FactId, FamilyId, FindingId, HazardId, MechanismId, ProcedureId,
    SourceId, StepId, ToolId,
};
