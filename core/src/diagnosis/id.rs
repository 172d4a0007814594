//! Names of the things in the rule graph, one type for each kind of thing.

pub use crate::authored::is_well_formed;

crate::authored::ids! {
    /// A cause: a commissioning fault, an imitator, ordinary behaviour, or an instrument that lies.
    CauseId;
    /// A family that causes are grouped under for display and statistics.
    FamilyId;
    /// A mechanism between causes and findings.
    MechanismId;
    /// Something that can be seen, asked or measured.
    FindingId;
    /// What a technician does to learn findings.
    CheckId;
    /// A tool or instrument a check needs at hand.
    ToolId;
    /// A fact about the system or its commissioning that shifts a prior.
    FactId;
    /// A caution shown at the step it belongs to.
    CautionId;
    /// A way that work can hurt someone; cautions answer to it.
    HazardId;
    /// A correction.
    ProcedureId;
    /// A step of a correction.
    StepId;
    /// A published source.
    SourceId;
}
