//! The correction: from ranked causes to the work of one visit, with
//! quantities for this loop.
//!
//! Procedures are data (`core/data/procedures/`): each names its steps, and a
//! step names its stage, hazards, cautions, gate and what else it needs.
//! [`assemble`] merges the procedures of several causes into one plan;
//! [`rules`] says what must hold of every plan.

pub mod assemble;
mod build;
pub mod file;
mod for_system;
mod id;
mod library;
mod progress;
pub mod quantity;
pub mod rules;
mod shipped;
mod terms;
pub mod validate;
mod work;

pub use assemble::{AssembleError, KnownCentre, Situation, Treatment, assemble};
pub use for_system::work_plan;
pub use id::{CautionId, MaterialId, OpeningId, ProcedureId, SourceId, StepId, ToolId};
pub use library::{
    Caution, Criterion, Library, Looked, Only, Opening, Origin, Procedure, Proof, ProofLimit,
    SourceText, Step, Timer,
};
pub use progress::{Progress, Run, Want};
pub use shipped::{FILES, load};
pub use terms::{
    FlowCentreKind, Hazard, Observation, ProofTime, Rule, Section, Side, Stage, TimerKind,
};
pub use work::{
    Basis, Condition, Correction, Gate, Limit, PlanNote, PlannedProof, PlannedStep, PlannedTimer,
    WorkPlan,
};

#[cfg(test)]
mod tests;
