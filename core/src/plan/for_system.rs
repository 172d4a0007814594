//! The plan for one system, with its quantities.

use super::assemble::{AssembleError, KnownCentre, Situation, Treatment, assemble, assemble_with};
use super::library::Library;
use super::quantity::{Conditions, Known, QuantityKind, sheet};
use super::terms::FlowCentreKind;
use super::work::WorkPlan;
use crate::fluids::FluidKind;
use crate::model::LoopModel;
use crate::records::FlowCentre;
use crate::records::visit_file::VisitFile;

impl Situation {
    /// What the model knows for certain of a system. A recorded kind of fluid
    /// counts; where the plan replaces the fluid use [`work_plan`], which keeps
    /// the cautions of every fluid.
    pub fn of(model: &LoopModel) -> Self {
        let kind = |centre: &FlowCentre| match centre {
            FlowCentre::Sealed {} => FlowCentreKind::Sealed,
            FlowCentre::SealedWithTank { .. } => FlowCentreKind::SealedWithTank,
            FlowCentre::NonPressurised { .. } => FlowCentreKind::NonPressurised,
        };
        Self {
            flow_centre: match &model.flow_centre {
                Some(centre) => KnownCentre::Kind(kind(centre)),
                None if model.is_pressurised == Some(true) => KnownCentre::Closed,
                None => KnownCentre::Unknown,
            },
            fluid: model.fluid.kind,
        }
    }
}

/// The plan for causes of one system, best ranked first.
///
/// # Errors
/// [`AssembleError`].
pub fn work_plan(
    library: &Library,
    treatments: &[Treatment],
    file: &VisitFile,
    model: &LoopModel,
    conditions: Conditions,
) -> Result<WorkPlan, AssembleError> {
    let mut situation = Situation::of(model);
    let bare = assemble(library, treatments, &situation)?;
    let refilled = bare
        .steps
        .iter()
        .any(|step| library.step(&step.id).is_some_and(|step| step.refills));
    // What is drained is not what was thought, or what is filled is not what
    // was drained: the cautions of every fluid stay.
    if refilled && situation.fluid != Some(FluidKind::Water) {
        situation.fluid = None;
    }
    let asks = |kind| {
        let mut steps = bare.steps.iter();
        steps.any(|step| step.quantities.contains(&kind))
    };
    let known = Known {
        file,
        model,
        conditions,
        refilled,
        charges: asks(QuantityKind::LeavePressure),
        purges: asks(QuantityKind::PurgeFlow),
        seeks_leak: asks(QuantityKind::StandingFallLimit),
    };
    assemble_with(library, treatments, &situation, &sheet(&known))
}
