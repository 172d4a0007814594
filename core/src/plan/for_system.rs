//! The plan for one system, with its quantities.

use super::assemble::{AssembleError, KnownCentre, Situation, Treatment, assemble, assemble_with};
use super::library::{Library, Step};
use super::quantity::{Conditions, Known, QuantityKind, may_freeze, sheet};
use super::terms::FlowCentreKind;
use super::work::WorkPlan;
use crate::fluids::FluidKind;
use crate::model::LoopModel;
use crate::records::FlowCentre;
use crate::records::visit_file::VisitFile;

/// The procedures that come first where the fluid may freeze, and that which the first
/// of them holds.
const FIRST: &str = "strengthen-first";
const WAIT: &str = "wait-for-fluid";
/// The procedure that comes first where a loop is charged that nobody read.
const READ: &str = "read-gauge-first";
const STRENGTHEN: &str = "correct-freeze-point-dose";

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
    let mut known = Known {
        file,
        model,
        conditions,
        refilled: false,
        charges: false,
        purges: false,
        treats_pressure: false,
        seeks_leak: false,
    };
    let mut treatments = safe_first(library, treatments, &known);
    let mut situation = Situation::of(model);
    let bare = assemble(library, &treatments, &situation)?;
    let asks = |kind| plans(library, &bare, |step| step.quantities.contains(&kind));
    known.refilled = plans(library, &bare, |step| step.refills);
    // What is drained is not what was thought, or what is filled is not what
    // was drained: the cautions of every fluid stay.
    if known.refilled && situation.fluid != Some(FluidKind::Water) {
        situation.fluid = None;
    }
    known.charges = asks(QuantityKind::LeavePressure);
    known.purges = asks(QuantityKind::PurgeFlow) || asks(QuantityKind::CircuitPurgeFlow);
    known.seeks_leak = asks(QuantityKind::StandingFallLimit);
    let sets_pressure = |step: &Step| step.quantities.contains(&QuantityKind::LeavePressure);
    let mut own = treatments.iter();
    known.treats_pressure =
        known.seeks_leak || own.any(|treatment| holds(library, treatment, sets_pressure));
    let doubted = &known.conditions.doubted;
    if known.charges && known.gauge_unread() {
        // What keeps the exchanger from freezing is named first.
        let named = |treatment: &Treatment| [FIRST, WAIT].contains(&treatment.procedure.as_str());
        let at = treatments.iter().take_while(|first| named(first)).count();
        treatments.insert(at, Treatment::in_any_case(READ));
    }
    assemble_with(library, &treatments, &situation, &sheet(&known), doubted)
}

/// Whether a plan holds such a step.
fn plans(library: &Library, plan: &WorkPlan, such: impl Fn(&Step) -> bool) -> bool {
    let steps = plan.steps.iter().map(|step| &step.id);
    steps.filter_map(|id| library.step(id)).any(such)
}

/// Whether a procedure names such a step itself.
fn holds(library: &Library, treatment: &Treatment, such: impl Fn(&Step) -> bool) -> bool {
    let procedure = library.procedure(&treatment.procedure);
    let steps = procedure.into_iter().flat_map(|procedure| &procedure.steps);
    steps.filter_map(|id| library.step(id)).any(such)
}

/// The treatments, before them whatever the causes what keeps the exchanger from freezing:
/// a fluid that may freeze where the water leaves is strengthened before the unit runs.
/// Where the loop is filled afresh it is dosed anyway, and the unit only waits for it.
fn safe_first(library: &Library, treatments: &[Treatment], known: &Known<'_>) -> Vec<Treatment> {
    if may_freeze(known).is_none() || treatments.is_empty() {
        return treatments.to_vec();
    }
    let refills = |treatment: &Treatment| {
        let alone = assemble(
            library,
            std::slice::from_ref(treatment),
            &Situation::default(),
        );
        alone.is_ok_and(|plan| plans(library, &plan, |step| step.refills))
    };
    if treatments.iter().any(refills) {
        let wait = Treatment::in_any_case(WAIT);
        return [wait]
            .into_iter()
            .chain(treatments.iter().cloned())
            .collect();
    }
    // What was to be strengthened anyway keeps its causes.
    let (weak, others): (Vec<_>, Vec<_>) =
        (treatments.iter().cloned()).partition(|known| known.procedure.as_str() == STRENGTHEN);
    let mut firsts: Vec<Treatment> = weak
        .into_iter()
        .map(|known| Treatment {
            cause: known.cause,
            ..Treatment::in_any_case(FIRST)
        })
        .collect();
    if firsts.is_empty() {
        firsts.push(Treatment::in_any_case(FIRST));
    }
    firsts.into_iter().chain(others).collect()
}
