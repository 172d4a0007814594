//! The procedures, read and validated.

use super::id::{CautionId, MaterialId, OpeningId, ProcedureId, SourceId, StepId, ToolId};
use super::quantity::QuantityKind;
use super::terms::{
    FlowCentreKind, Hazard, Observation, ProofTime, Rule, Section, Side, Stage, TimerKind,
};
use super::validate::{self, Problem};
use crate::figures::Figure;
use crate::records::{OperatingMode, ReadingPoint};
use crate::units::Duration;
use std::collections::{BTreeMap, BTreeSet};

pub use crate::authored::SourceText;

/// Where a number comes from.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Origin {
    /// A published source that was read.
    Published(SourceId),
    /// A published source quoted from memory.
    FromMemory(SourceId),
    /// Practice of the trade without a publication.
    CommonPractice,
    /// The authors' own estimate.
    Judgement,
}

impl Origin {
    /// The origin written like this, if it is well formed.
    pub fn parse(text: &str) -> Option<Self> {
        match text {
            "common-practice" => Some(Self::CommonPractice),
            "judgement" => Some(Self::Judgement),
            _ => match text.strip_prefix("from-memory:") {
                Some(id) => {
                    super::id::is_well_formed(id).then(|| Self::FromMemory(SourceId::new(id)))
                }
                None => {
                    super::id::is_well_formed(text).then(|| Self::Published(SourceId::new(text)))
                }
            },
        }
    }
    /// The published source, if there is one.
    pub fn source(&self) -> Option<&SourceId> {
        match self {
            Self::Published(id) | Self::FromMemory(id) => Some(id),
            Self::CommonPractice | Self::Judgement => None,
        }
    }
}

/// A caution and the hazards that it answers.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Caution {
    /// Id.
    pub id: CautionId,
    /// Hazards.
    pub hazards: Vec<Hazard>,
}

/// Something that is opened and closed.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Opening {
    /// Id.
    pub id: OpeningId,
    /// Section that it opens; none for what holds no fluid.
    pub section: Option<Section>,
    /// Whether a hose sits on it, so that it may be under pressure while open.
    pub connection: bool,
}

/// A timer with its least time.
#[derive(Clone, PartialEq, Debug)]
pub struct Timer {
    /// What it runs for.
    pub kind: TimerKind,
    /// Least time.
    pub least: Duration,
    /// Computed time, which counts if it is longer.
    pub quantity: Option<QuantityKind>,
    /// Source of the least time.
    pub origin: Origin,
}

/// What a gate looks at.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Looked {
    /// A reading point.
    Reading(ReadingPoint),
    /// An observation.
    Observation(Observation),
}

/// One criterion of a gate.
#[derive(Clone, PartialEq, Debug)]
pub struct Criterion {
    /// What is looked at.
    pub looked: Looked,
    /// How it is judged.
    pub rule: Rule,
    /// Pass value where nothing better can be computed.
    pub fallback: Figure,
    /// Its source.
    pub origin: Origin,
    /// Computed pass value.
    pub quantity: Option<QuantityKind>,
    /// Steps to go back to on fail: the first that is in the plan.
    pub return_to: Vec<StepId>,
}

/// For which systems an entry has a meaning.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Only {
    /// Kinds of flow centre; empty for all.
    pub flow_centres: Vec<FlowCentreKind>,
    /// Not for plain water.
    pub with_antifreeze: bool,
}

/// A step of work.
#[derive(Clone, PartialEq, Debug)]
#[allow(missing_docs)] // as the fields of the file entry
pub struct Step {
    pub id: StepId,
    pub stage: Stage,
    pub side: Side,
    pub hazards: Vec<Hazard>,
    pub cautions: Vec<CautionId>,
    pub acknowledge: bool,
    pub tools: Vec<ToolId>,
    pub materials: Vec<MaterialId>,
    pub needs: Vec<StepId>,
    pub after: Vec<StepId>,
    pub supersedes: Vec<StepId>,
    pub excludes: Vec<StepId>,
    pub only: Only,
    pub refills: bool,
    pub running: bool,
    pub adds: bool,
    pub draws_off: bool,
    pub shuts: Vec<Section>,
    pub joins: Vec<Section>,
    pub opens: Vec<OpeningId>,
    pub closes: Vec<OpeningId>,
    pub relieves: Vec<Section>,
    pub pressurises: Vec<Section>,
    pub at_zero: Vec<Section>,
    pub timers: Vec<Timer>,
    pub quantities: Vec<QuantityKind>,
    pub gate: Vec<Criterion>,
}

/// One end of the band of a proof.
#[derive(Clone, PartialEq, Debug)]
pub struct ProofLimit {
    /// Computed value.
    pub quantity: Option<QuantityKind>,
    /// Value where none can be computed, with its source.
    pub fallback: Option<(Figure, Origin)>,
}

/// A reading that shows that the work was good.
#[derive(Clone, PartialEq, Debug)]
#[allow(missing_docs)] // as the fields of the file entry
pub struct Proof {
    pub id: String,
    pub reading: ReadingPoint,
    pub mode: OperatingMode,
    pub when: ProofTime,
    pub at_least: Option<ProofLimit>,
    pub at_most: Option<ProofLimit>,
    pub only: Only,
}

/// A procedure.
#[derive(Clone, PartialEq, Debug)]
pub struct Procedure {
    /// Id.
    pub id: ProcedureId,
    /// Its steps, beside those which they need.
    pub steps: Vec<StepId>,
    /// Ids of its proofs.
    pub proofs: Vec<String>,
}

/// All procedures with their steps. Every reference in it is known to lead
/// somewhere.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Library {
    pub(super) sources: BTreeSet<SourceId>,
    pub(super) cautions: BTreeMap<CautionId, Caution>,
    pub(super) openings: BTreeMap<OpeningId, Opening>,
    pub(super) tools: Vec<ToolId>,
    pub(super) materials: BTreeMap<MaterialId, Vec<QuantityKind>>,
    pub(super) steps: BTreeMap<StepId, Step>,
    pub(super) proofs: BTreeMap<String, Proof>,
    pub(super) procedures: BTreeMap<ProcedureId, Procedure>,
}

impl Library {
    /// Reads and validates files.
    ///
    /// # Errors
    /// Every problem of every file.
    pub fn load(texts: &[SourceText<'_>]) -> Result<Self, Vec<Problem>> {
        let (parsed, mut problems) = validate::parse(texts);
        problems.extend(validate::structure(&parsed));
        if !problems.is_empty() {
            return Err(problems);
        }
        // `None` only if building and validating read the files differently.
        super::build::library(&parsed).ok_or_else(|| vec![Problem::unbuildable()])
    }
    /// The step with this id.
    pub fn step(&self, id: &StepId) -> Option<&Step> {
        self.steps.get(id)
    }
    /// All steps, in order of id.
    pub fn steps(&self) -> impl Iterator<Item = &Step> {
        self.steps.values()
    }
    /// The procedure with this id.
    pub fn procedure(&self, id: &ProcedureId) -> Option<&Procedure> {
        self.procedures.get(id)
    }
    /// All procedures, in order of id.
    pub fn procedures(&self) -> impl Iterator<Item = &Procedure> {
        self.procedures.values()
    }
    /// The caution with this id.
    pub fn caution(&self, id: &CautionId) -> Option<&Caution> {
        self.cautions.get(id)
    }
    /// The quantities that say how much or which of a material to bring.
    pub fn amounts(&self, id: &MaterialId) -> &[QuantityKind] {
        self.materials.get(id).map_or(&[], Vec::as_slice)
    }
    /// The opening with this id.
    pub fn opening(&self, id: &OpeningId) -> Option<&Opening> {
        self.openings.get(id)
    }
    /// The published sources, in order of id.
    pub fn sources(&self) -> impl Iterator<Item = &SourceId> {
        self.sources.iter()
    }
    /// The proof with this id.
    pub fn proof(&self, id: &str) -> Option<&Proof> {
        self.proofs.get(id)
    }
}
