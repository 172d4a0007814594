//! Names of the things in the procedure files.

pub use crate::authored::is_well_formed;

crate::authored::ids! {
    /// A correction: the steps that put one kind of fault right.
    ProcedureId;
    /// A step of work, shared by every procedure that needs it.
    StepId;
    /// A caution shown at the step it belongs to.
    CautionId;
    /// Something brought along and taken home again.
    ToolId;
    /// Something used up or left in the system.
    MaterialId;
    /// Something opened by one step and closed by another.
    OpeningId;
    /// A published source.
    SourceId;
}
