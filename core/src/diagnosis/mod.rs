//! The rule graph and its inference: from findings to causes.

mod answer;
mod evidence;
mod export;
mod graph;
mod id;
mod inference;
mod learning;
pub mod shipped;
pub mod validate;

pub use answer::{
    Carrier, CheckOutlook, ContextStep, Contradiction, Diagnosis, Doubted, Explanation,
    Explanations, Health, Means, NextStep, Obstacle, Outcome, Policy, RankedCause, Trace,
    TraceStep, Unexplained, Verdict, diagnose,
};
pub use evidence::{Case, Found, Likelihood, LikelihoodError, Observation, ReadWith};
pub use export::{to_bif, to_xmlbif};
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
pub use learning::{Counts, Learned, LearnedPrior, LearningError, PRIOR_WEIGHT};
