//! From ranked causes to one plan: each step once, in the only safe order.
//!
//! The steps of a procedure and those they need, transitively, are brought
//! together for all procedures; steps made needless by a larger one, and steps
//! that undo one of a better ranked cause, are left out; what remains is
//! ordered by stage, within a stage the loop before the unit, within a side by
//! the `after` of the steps and then by rank. [`super::rules`] says what must
//! hold of the result.

mod gather;
mod proofs;

use super::id::{CautionId, ProcedureId, StepId};
use super::library::{Criterion, Library, Looked, Origin, Step, Timer};
use super::quantity::{Lack, Lacking, QuantityKind, Sheet};
use super::terms::{FlowCentreKind, Hazard};
use super::work::{
    Basis, Condition, Correction, Gate, Limit, PlanNote, PlannedStep, PlannedTimer, WorkPlan,
};
use crate::figures::Figure;
use crate::fluids::FluidKind;
use crate::records::{Instrument, ReadingKind, ReadingPoint};
use gather::{Gathered, order, reduce};
use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;

/// A cause with the procedure that corrects it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Treatment {
    /// Id of the cause; empty for what is done whatever the cause.
    pub cause: String,
    /// Its procedure.
    pub procedure: ProcedureId,
}

impl Treatment {
    /// What is done whatever the cause.
    pub(super) fn in_any_case(procedure: &str) -> Self {
        Self {
            cause: String::new(),
            procedure: ProcedureId::new(procedure),
        }
    }
}

/// What is known of the flow centre.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub enum KnownCentre {
    /// Nothing.
    #[default]
    Unknown,
    /// The loop is closed under pressure; with a tank or without is not known.
    Closed,
    /// Its kind.
    Kind(FlowCentreKind),
}

impl KnownCentre {
    /// What may still be so.
    fn may_be(self, kind: FlowCentreKind) -> bool {
        match self {
            Self::Unknown => true,
            Self::Closed => kind != FlowCentreKind::NonPressurised,
            Self::Kind(known) => kind == known,
        }
    }

    /// Those of some kinds that it may be.
    pub(super) fn possible(self, kinds: &[FlowCentreKind]) -> Vec<FlowCentreKind> {
        let kinds = kinds.iter().copied();
        kinds.filter(|kind| self.may_be(*kind)).collect()
    }

    /// Whether it is one of some kinds: `None` if that is not known.
    pub(super) fn is_among(self, kinds: &[FlowCentreKind]) -> Option<bool> {
        let mut possible = FlowCentreKind::ALL
            .into_iter()
            .filter(|kind| self.may_be(*kind));
        let named = self.possible(kinds);
        if named.is_empty() {
            return Some(false);
        }
        possible.all(|kind| named.contains(&kind)).then_some(true)
    }
}

/// What is known for certain of the system and decides which steps apply.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct Situation {
    /// The flow centre.
    pub flow_centre: KnownCentre,
    /// Kind of fluid. Left unknown unless it is certain: the cautions of every
    /// fluid it may be are then kept.
    pub fluid: Option<FluidKind>,
}

/// Why no plan can be made.
#[derive(Clone, PartialEq, Eq, Debug, Error)]
pub enum AssembleError {
    /// No cause was given.
    #[error("no cause was given to treat")]
    NothingToTreat,
    /// A procedure is not in the library.
    #[error("there is no procedure `{procedure}`")]
    UnknownProcedure {
        /// The procedure.
        procedure: ProcedureId,
    },
    /// Steps of one stage wait for each other.
    #[error("the step `{step}` waits for itself")]
    Circle {
        /// One of the steps.
        step: StepId,
    },
    /// A gate has no step to go back to.
    #[error("the gate of `{step}` has no step to go back to")]
    NoWayBack {
        /// The step with the gate.
        step: StepId,
    },
}

impl AssembleError {
    /// Stable code of the error.
    pub fn code(&self) -> &'static str {
        match self {
            Self::NothingToTreat => "nothing-to-treat",
            Self::UnknownProcedure { .. } => "unknown-procedure",
            Self::Circle { .. } => "circle",
            Self::NoWayBack { .. } => "no-way-back",
        }
    }
}

/// The plan for causes, best ranked first, without quantities: limits are those
/// that hold for every system.
///
/// # Errors
/// [`AssembleError`].
pub fn assemble(
    library: &Library,
    treatments: &[Treatment],
    situation: &Situation,
) -> Result<WorkPlan, AssembleError> {
    assemble_with(
        library,
        treatments,
        situation,
        &Sheet::default(),
        &BTreeSet::new(),
    )
}

/// The plan for causes, best ranked first, with the quantities of a sheet, and without a
/// proof by an instrument in doubt where another shows the same.
pub(super) fn assemble_with(
    library: &Library,
    treatments: &[Treatment],
    situation: &Situation,
    sheet: &Sheet,
    doubted: &BTreeSet<Instrument>,
) -> Result<WorkPlan, AssembleError> {
    let corrections = corrections(library, treatments)?;
    let mut notes = Vec::new();
    let gathered = reduce(library, &corrections, situation, &mut notes);
    for correction in &corrections {
        let mut served = gathered.values().flat_map(|gathered| &gathered.serves);
        if !served.any(|procedure| *procedure == correction.procedure) {
            notes.push(PlanNote::NotForThisSystem {
                procedure: correction.procedure.clone(),
            });
        }
    }
    let ordered = order(gathered)?;
    let numbers: BTreeMap<&StepId, usize> = ordered
        .iter()
        .enumerate()
        .map(|(index, gathered)| (&gathered.step.id, index + 1))
        .collect();
    let steps: Vec<PlannedStep> = ordered
        .iter()
        .enumerate()
        .map(|(index, gathered)| {
            let number = index + 1;
            planned(library, gathered, number, &numbers, situation, sheet)
        })
        .collect::<Result<_, _>>()?;
    Ok(WorkPlan {
        tools: once(steps.iter().flat_map(|step| &step.tools)),
        materials: once(steps.iter().flat_map(|step| &step.materials)),
        proofs: proofs::without(
            proofs::proofs(library, &corrections, situation, sheet),
            doubted,
        ),
        sheet: asked(&steps, sheet),
        corrections,
        steps,
        notes,
    })
}

/// Causes grouped by procedure, in the order of the best ranked.
fn corrections(
    library: &Library,
    treatments: &[Treatment],
) -> Result<Vec<Correction>, AssembleError> {
    let mut corrections: Vec<Correction> = Vec::new();
    for treatment in treatments {
        if library.procedure(&treatment.procedure).is_none() {
            return Err(AssembleError::UnknownProcedure {
                procedure: treatment.procedure.clone(),
            });
        }
        match corrections
            .iter_mut()
            .find(|correction| correction.procedure == treatment.procedure)
        {
            Some(correction) => correction.causes.push(treatment.cause.clone()),
            None => corrections.push(Correction {
                procedure: treatment.procedure.clone(),
                causes: vec![treatment.cause.clone()],
            }),
        }
    }
    for correction in &mut corrections {
        correction.causes.retain(|cause| !cause.is_empty());
    }
    if corrections.is_empty() {
        return Err(AssembleError::NothingToTreat);
    }
    Ok(corrections)
}

fn planned(
    library: &Library,
    gathered: &Gathered<'_>,
    number: usize,
    numbers: &BTreeMap<&StepId, usize>,
    situation: &Situation,
    sheet: &Sheet,
) -> Result<PlannedStep, AssembleError> {
    let step = gathered.step;
    let possible = |hazard: &Hazard| {
        situation
            .fluid
            .is_none_or(|fluid| hazard.possible_with(fluid))
    };
    let hazards: Vec<Hazard> = step.hazards.iter().copied().filter(possible).collect();
    let cautions: Vec<CautionId> = step
        .cautions
        .iter()
        .filter(|id| {
            library.caution(id).is_none_or(|caution| {
                caution
                    .hazards
                    .iter()
                    .any(|hazard| hazards.contains(hazard))
            })
        })
        .cloned()
        .collect();
    Ok(PlannedStep {
        number,
        id: step.id.clone(),
        stage: step.stage,
        side: step.side,
        serves: gathered.serves.clone(),
        hazards,
        cautions,
        acknowledge: step.acknowledge,
        condition: match step.only.applies(situation) {
            Some(_) => None,
            None => Some(Condition {
                flow_centres: match situation.flow_centre.is_among(&step.only.flow_centres) {
                    Some(_) => Vec::new(),
                    None => situation.flow_centre.possible(&step.only.flow_centres),
                },
                with_antifreeze: step.only.with_antifreeze && situation.fluid.is_none(),
            }),
        },
        tools: step.tools.clone(),
        materials: step.materials.clone(),
        timers: step
            .timers
            .iter()
            .filter(|timer| can_run(timer, sheet))
            .map(|timer| planned_timer(timer, sheet))
            .collect(),
        quantities: step.quantities.clone(),
        gate: step
            .gate
            .iter()
            .map(|criterion| gate(step, criterion, number, numbers, sheet))
            .collect::<Result<_, _>>()?,
    })
}

fn gate(
    step: &Step,
    criterion: &Criterion,
    number: usize,
    numbers: &BTreeMap<&StepId, usize>,
    sheet: &Sheet,
) -> Result<Gate, AssembleError> {
    let return_to = criterion
        .return_to
        .iter()
        .filter_map(|id| numbers.get(id).copied())
        .find(|back| *back < number)
        .ok_or_else(|| AssembleError::NoWayBack {
            step: step.id.clone(),
        })?;
    let limit = computed(sheet, criterion.quantity)
        .unwrap_or_else(|| usual(criterion.fallback, &criterion.origin, criterion.quantity));
    Ok(Gate {
        looked: criterion.looked,
        rule: criterion.rule,
        limit: match criterion.looked {
            Looked::Reading(point) => borne(point, limit, sheet),
            Looked::Observation(_) => limit,
        },
        return_to,
    })
}

/// The computed limit, if there is one.
fn computed(sheet: &Sheet, quantity: Option<QuantityKind>) -> Option<Limit> {
    let kind = quantity?;
    sheet.get(kind).map(|computed| Limit {
        value: computed.figure,
        basis: Basis::Computed(kind),
    })
}

fn fixed(value: Figure, origin: &Origin) -> Limit {
    Limit {
        value,
        basis: Basis::Fixed(origin.clone()),
    }
}

/// A figure of the trade, in the place of what could not be computed if anything could.
fn usual(value: Figure, origin: &Origin, instead_of: Option<QuantityKind>) -> Limit {
    match instead_of {
        None => fixed(value, origin),
        Some(kind) => Limit {
            value,
            basis: Basis::Usual(origin.clone(), kind),
        },
    }
}

/// The rating of the weakest part, where a limit of the pressure read at this point
/// would be above it.
fn rating(point: ReadingPoint, limit: &Limit, sheet: &Sheet) -> Option<Limit> {
    let rating = computed(sheet, Some(QuantityKind::LowestRating))?;
    let read = point.kind() == ReadingKind::GaugePressure;
    (read && limit.value.si > rating.value.si).then_some(rating)
}

/// A limit that never asks for more pressure than the weakest part bears.
fn borne(point: ReadingPoint, limit: Limit, sheet: &Sheet) -> Limit {
    rating(point, &limit, sheet).unwrap_or(limit)
}

/// Whether a watch would show anything: not where hardly anything stands on the gauge.
fn can_run(timer: &Timer, sheet: &Sheet) -> bool {
    let too_low = |lacking: &Lacking| {
        timer.quantity == Some(lacking.kind) && lacking.lack == Lack::GaugeTooLow
    };
    !sheet.lacking.iter().any(too_low)
}

/// The computed time, unless the least time is longer.
fn planned_timer(timer: &Timer, sheet: &Sheet) -> PlannedTimer {
    let least = Figure::exact(timer.least);
    PlannedTimer {
        kind: timer.kind,
        time: match computed(sheet, timer.quantity) {
            None => usual(least, &timer.origin, timer.quantity),
            Some(limit) if limit.value.si > least.si => limit,
            Some(_) => fixed(least, &timer.origin),
        },
    }
}

/// What of a sheet the steps ask for.
fn asked(steps: &[PlannedStep], sheet: &Sheet) -> Sheet {
    let kinds: BTreeSet<QuantityKind> = steps
        .iter()
        .flat_map(|step| step.quantities.iter().copied())
        .collect();
    let mut asked = sheet.clone();
    asked
        .computed
        .retain(|computed| kinds.contains(&computed.kind));
    asked
        .lacking
        .retain(|lacking| kinds.contains(&lacking.kind));
    asked.remarks.retain(|remark| {
        let about = remark.about();
        about.iter().any(|kind| kinds.contains(kind))
    });
    asked
}

/// Each thing once, in the order in which it first comes.
fn once<'a, T: Clone + Ord + 'a>(items: impl Iterator<Item = &'a T>) -> Vec<T> {
    let mut seen = BTreeSet::new();
    items.filter(|item| seen.insert(*item)).cloned().collect()
}
