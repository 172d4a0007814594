//! The plan of one visit.

use super::id::{CautionId, MaterialId, ProcedureId, StepId, ToolId};
use super::library::{Library, Looked, Only, Origin};
use super::quantity::{QuantityKind, Sheet};
use super::terms::{FlowCentreKind, Hazard, ProofTime, Rule, Side, Stage, TimerKind};
use crate::figures::Figure;
use crate::records::{OperatingMode, ReadingPoint};

/// Everything to be done on one visit, each step once, in order.
#[derive(Clone, PartialEq, Debug)]
pub struct WorkPlan {
    /// The corrections that it holds, in the order of the causes.
    pub corrections: Vec<Correction>,
    /// The steps in working order.
    pub steps: Vec<PlannedStep>,
    /// Tools to carry in, each once, in the order of use.
    pub tools: Vec<ToolId>,
    /// Materials, each once, in the order of use.
    pub materials: Vec<MaterialId>,
    /// Readings that prove it afterwards.
    pub proofs: Vec<PlannedProof>,
    /// What the reader should know about how the plan came about.
    pub notes: Vec<PlanNote>,
    /// The quantities that its steps ask for.
    pub sheet: Sheet,
}

impl WorkPlan {
    /// The quantities that say how much or which of a material to bring, of those
    /// that a step shows that needs it.
    pub fn amounts(&self, library: &Library, material: &MaterialId) -> Vec<QuantityKind> {
        let shown = |kind: &QuantityKind| {
            let mut needing = self.steps.iter();
            needing.any(|step| step.materials.contains(material) && step.quantities.contains(kind))
        };
        let amounts = library.amounts(material).iter().copied();
        amounts.filter(shown).collect()
    }
}

/// A correction and the causes that it answers.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Correction {
    /// The procedure.
    pub procedure: ProcedureId,
    /// Ids of the causes, best ranked first; none for what is done whatever the cause.
    pub causes: Vec<String>,
}

/// A step of a plan.
#[derive(Clone, PartialEq, Debug)]
pub struct PlannedStep {
    /// Number in the plan, from 1.
    pub number: usize,
    /// The step.
    pub id: StepId,
    /// Its stage.
    pub stage: Stage,
    /// Its side.
    pub side: Side,
    /// The procedures that need it.
    pub serves: Vec<ProcedureId>,
    /// Hazards, without those that the fluid rules out.
    pub hazards: Vec<Hazard>,
    /// Cautions that answer them.
    pub cautions: Vec<CautionId>,
    /// Whether the technician confirms it before going on.
    pub acknowledge: bool,
    /// Set where the step is only for some systems and it is not known whether
    /// this is one of them.
    pub condition: Option<Condition>,
    /// Tools.
    pub tools: Vec<ToolId>,
    /// Materials.
    pub materials: Vec<MaterialId>,
    /// Timers.
    pub timers: Vec<PlannedTimer>,
    /// Quantities to show.
    pub quantities: Vec<QuantityKind>,
    /// Criteria that must all pass before going on; empty where there is no gate.
    pub gate: Vec<Gate>,
}

impl PlannedStep {
    /// The usual figure to which the step holds the work, because this quantity of it
    /// could not be worked out; none where it could, or there is no such figure.
    pub fn usual(&self, kind: QuantityKind) -> Option<&Limit> {
        let times = self.timers.iter().map(|timer| &timer.time);
        let mut limits = times.chain(self.gate.iter().map(|gate| &gate.limit));
        limits.find(|limit| matches!(&limit.basis, Basis::Usual(_, of) if *of == kind))
    }
}

/// A timer of a step.
#[derive(Clone, PartialEq, Debug)]
pub struct PlannedTimer {
    /// What it runs for.
    pub kind: TimerKind,
    /// The least time.
    pub time: Limit,
}

/// For which systems a step is, where that is not known.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Condition {
    /// Kinds of flow centre; empty where any.
    pub flow_centres: Vec<FlowCentreKind>,
    /// Not for plain water.
    pub with_antifreeze: bool,
}

/// A criterion of a gate in a plan.
#[derive(Clone, PartialEq, Debug)]
pub struct Gate {
    /// What is looked at.
    pub looked: Looked,
    /// How it is judged.
    pub rule: Rule,
    /// The pass value.
    pub limit: Limit,
    /// Number of the step to go back to on fail.
    pub return_to: usize,
}

/// A value that something is held to.
#[derive(Clone, PartialEq, Debug)]
pub struct Limit {
    /// The value.
    pub value: Figure,
    /// Computed for this system, or from where.
    pub basis: Basis,
}

/// What a limit rests on.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Basis {
    /// Computed for this system: see the quantity of this kind in the sheet.
    Computed(QuantityKind),
    /// The same for every system.
    Fixed(Origin),
    /// The usual figure, which stands in for a quantity that cannot be worked out.
    Usual(Origin, QuantityKind),
}

/// A reading that proves the work, with the band it should lie in.
#[derive(Clone, PartialEq, Debug)]
pub struct PlannedProof {
    /// Reading point.
    pub reading: ReadingPoint,
    /// Mode of operation.
    pub mode: OperatingMode,
    /// When it is taken.
    pub when: ProofTime,
    /// Lower end; none where none is known.
    pub at_least: Option<Limit>,
    /// Upper end; none where none is known.
    pub at_most: Option<Limit>,
    /// Quantities that give, or would give, its ends.
    pub wanted: Vec<QuantityKind>,
}

/// What the reader should know about how the plan came about.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum PlanNote {
    /// Two steps undo each other; the one of the better ranked cause is kept.
    Excluded {
        /// The step kept.
        kept: StepId,
        /// The step left out.
        dropped: StepId,
    },
    /// A larger step makes a smaller one needless.
    Superseded {
        /// The step kept.
        kept: StepId,
        /// The step left out.
        dropped: StepId,
    },
    /// A procedure has nothing to do on this kind of system.
    NotForThisSystem {
        /// The procedure.
        procedure: ProcedureId,
    },
}

impl Only {
    /// Whether the entry has a meaning: `None` if that is not known.
    pub(super) fn applies(&self, situation: &super::Situation) -> Option<bool> {
        let centre = match self.flow_centres.as_slice() {
            [] => Some(true),
            kinds => situation.flow_centre.is_among(kinds),
        };
        let fluid = match situation.fluid {
            _ if !self.with_antifreeze => Some(true),
            Some(fluid) => Some(fluid != crate::fluids::FluidKind::Water),
            None => None,
        };
        match (centre, fluid) {
            (Some(false), _) | (_, Some(false)) => Some(false),
            (Some(true), Some(true)) => Some(true),
            _ => None,
        }
    }
}
