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
mod steps;

use super::id::{ProcedureId, StepId};
use super::library::Library;
use super::quantity::{QuantityKind, Sheet};
use super::terms::FlowCentreKind;
use super::work::{Correction, PlanNote, PlannedStep, WorkPlan};
use crate::fluids::FluidKind;
use crate::records::Instrument;
use gather::{order, reduce};
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
            steps::planned(library, gathered, number, &numbers, situation, sheet)
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
