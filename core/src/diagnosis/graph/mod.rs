//! The rule graph after validation: every reference resolved, every number in range.

mod build;
mod file;
mod source;

use std::collections::HashMap;

use serde::Serialize;

pub use file::{CauseKind, GraphFile, Licence, Status};
pub(super) use file::{EvidenceEntry, LevelsEntry, LinkEntry};
pub use source::SourceMark;

use super::id::{
    CauseId, CautionId, CheckId, FactId, FamilyId, FindingId, HazardId, MechanismId, ProcedureId,
    SourceId, StepId, ToolId,
};
use super::validate::{self, Problem};

pub use crate::authored::SourceText;

/// Place of a cause in [`Graph::causes`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct CauseIx(pub(super) usize);

/// Place of a mechanism in [`Graph::mechanisms`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MechanismIx(pub(super) usize);

/// Place of a finding in [`Graph::findings`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FindingIx(pub(super) usize);

/// Where a link comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Parent {
    /// A cause.
    Cause(CauseIx),
    /// A mechanism.
    Mechanism(MechanismIx),
}

/// What one active parent, or the leak, does alone to its target.
///
/// With probability `low` it pushes low, with probability `high` it pushes
/// high, otherwise it does nothing. For a mechanism, and for a finding that is
/// absent or present, there is one direction only, kept in `high`: away from
/// the normal level.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Push {
    /// Probability of a push to low, in [0, 1).
    pub low: f64,
    /// Probability of a push to high (or to the abnormal level), in [0, 1); `low + high < 1`.
    pub high: f64,
}

/// A link into a mechanism or finding.
#[derive(Debug, Clone, PartialEq)]
pub struct Link {
    /// Where it comes from.
    pub parent: Parent,
    /// What the parent does when it is active.
    pub push: Push,
    /// Where the strength comes from.
    pub source: SourceMark,
}

/// A cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Cause {
    /// Id.
    pub id: CauseId,
    /// Family.
    pub family: FamilyId,
    /// Kind.
    pub kind: CauseKind,
    /// Review status.
    pub status: Status,
    /// Probability before anything is known, in (0, 1).
    pub prior: f64,
    /// Where the prior and `calls` come from.
    pub source: SourceMark,
    /// Probability that it alone makes somebody call, in [0, 1); 0 in a graph
    /// that does not say how calls come about.
    pub calls: f64,
    /// The only complaints it makes somebody call with; any if empty.
    pub calls_with: Vec<FindingIx>,
    /// Procedure that corrects it.
    pub procedure: Option<ProcedureId>,
    /// Facts that shift its odds.
    pub context: Vec<ContextShift>,
    /// Facts without which it is impossible.
    pub only_if: Vec<FactId>,
    /// Facts with which it is impossible.
    pub not_if: Vec<FactId>,
}

/// How a call comes about: a noisy-OR over all causes, each with its own
/// [`Cause::calls`].
#[derive(Debug, Clone, PartialEq)]
pub struct CallModel {
    /// Probability that somebody calls though nothing of the graph is so, in (0, 1).
    pub leak: f64,
    /// Where leak and the usual strengths come from.
    pub source: SourceMark,
}

/// How one fact shifts the odds of a cause.
#[derive(Debug, Clone, PartialEq)]
pub struct ContextShift {
    /// The fact.
    pub fact: FactId,
    /// Factor on the odds when it is known to be true, above 0.
    pub odds: f64,
    /// Factor on the odds when it is known to be false, above 0.
    pub odds_if_false: f64,
    /// Where the factors come from.
    pub source: SourceMark,
}

/// A mechanism: a hidden yes-or-no state between causes and findings.
#[derive(Debug, Clone, PartialEq)]
pub struct Mechanism {
    /// Id.
    pub id: MechanismId,
    /// Probability that it is at work through nothing in the graph, in [0, 1).
    pub leak: f64,
    /// Where the leak comes from.
    pub source: SourceMark,
    /// What brings it about.
    pub parents: Vec<Link>,
}

/// The levels of a finding.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
pub enum Scale {
    /// Absent or present, where absent is normal.
    NormallyAbsent,
    /// Absent or present, where present is normal.
    NormallyPresent,
    /// Low, normal or high.
    Graded,
}

impl Scale {
    /// Number of levels.
    #[must_use]
    pub const fn count(self) -> usize {
        match self {
            Self::NormallyAbsent | Self::NormallyPresent => 2,
            Self::Graded => 3,
        }
    }

    /// The levels in the order in which likelihoods and probabilities are listed.
    #[must_use]
    pub const fn levels(self) -> &'static [Level] {
        match self {
            Self::NormallyAbsent | Self::NormallyPresent => &[Level::Absent, Level::Present],
            Self::Graded => &[Level::Low, Level::Normal, Level::High],
        }
    }

    /// The level that is as it should be.
    #[must_use]
    pub const fn normal(self) -> Level {
        match self {
            Self::NormallyAbsent => Level::Absent,
            Self::NormallyPresent => Level::Present,
            Self::Graded => Level::Normal,
        }
    }

    /// Place of a level in [`Scale::levels`], or `None` if it is of another scale.
    #[must_use]
    pub fn index(self, level: Level) -> Option<usize> {
        self.levels().iter().position(|&other| other == level)
    }
}

/// A level of a finding.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// Not there.
    Absent,
    /// There.
    Present,
    /// Below what it should be.
    Low,
    /// As it should be.
    Normal,
    /// Above what it should be.
    High,
}

/// How a finding becomes known.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum EvidenceKind {
    /// The customer or the unit's display tells it.
    Symptom,
    /// The technician looks, listens or feels.
    Observation,
    /// The evaluator of this name turns readings into a likelihood.
    Evaluator(String),
}

/// A finding.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// Id.
    pub id: FindingId,
    /// Levels.
    pub scale: Scale,
    /// What happens through nothing in the graph.
    pub leak: Push,
    /// How it becomes known.
    pub evidence: EvidenceKind,
    /// The instrument cause whose reading it is.
    pub instrument: Option<CauseIx>,
    /// Probability that the reported level is the true one with a sound instrument, in (0, 1].
    pub reliability: f64,
    /// Where leak and reliability come from.
    pub source: SourceMark,
    /// What brings it about.
    pub parents: Vec<Link>,
}

/// A check.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// Id.
    pub id: CheckId,
    /// Minutes it takes, above 0.
    pub minutes: f64,
    /// Tools it needs.
    pub tools: Vec<ToolId>,
    /// Licence it needs.
    pub licence: Licence,
    /// Hazards of doing it.
    pub hazards: Vec<HazardId>,
    /// Cautions shown at it.
    pub cautions: Vec<CautionId>,
    /// Findings it reveals.
    pub reveals: Vec<FindingIx>,
    /// Facts without which it cannot be done.
    pub only_if: Vec<FactId>,
    /// Facts with which it cannot be done.
    pub not_if: Vec<FactId>,
    /// Where the minutes come from.
    pub source: SourceMark,
}

/// A caution and the hazards it answers.
#[derive(Debug, Clone, PartialEq)]
pub struct Caution {
    /// Id.
    pub id: CautionId,
    /// Hazards it answers.
    pub hazards: Vec<HazardId>,
}

/// A procedure.
#[derive(Debug, Clone, PartialEq)]
pub struct Procedure {
    /// Id.
    pub id: ProcedureId,
    /// Steps in order; none until its content is written.
    pub steps: Vec<Step>,
}

/// A step of a procedure.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// Id within the procedure.
    pub id: StepId,
    /// Hazards of doing it.
    pub hazards: Vec<HazardId>,
    /// Cautions shown at it.
    pub cautions: Vec<CautionId>,
}

/// A published source.
#[derive(Debug, Clone, PartialEq)]
pub struct Source {
    /// Id.
    pub id: SourceId,
    /// Citation.
    pub citation: String,
}

/// The rule graph. It can only be had through [`Graph::load`], so a graph in
/// hand has passed every structural check of [`validate`].
#[derive(Debug, Clone, Default)]
pub struct Graph {
    pub(super) call: Option<CallModel>,
    pub(super) causes: Vec<Cause>,
    pub(super) mechanisms: Vec<Mechanism>,
    pub(super) findings: Vec<Finding>,
    pub(super) checks: Vec<Check>,
    pub(super) cautions: Vec<Caution>,
    pub(super) procedures: Vec<Procedure>,
    pub(super) sources: Vec<Source>,
    pub(super) facts: Vec<FactId>,
    pub(super) tools: Vec<ToolId>,
    pub(super) hazards: Vec<HazardId>,
    pub(super) families: Vec<FamilyId>,
    cause_places: HashMap<CauseId, CauseIx>,
    finding_places: HashMap<FindingId, FindingIx>,
}

impl Graph {
    /// Reads, validates and resolves the files.
    ///
    /// # Errors
    /// Every [`Problem`] of every file and every check, not only the first.
    pub fn load(files: &[SourceText<'_>]) -> Result<Self, Vec<Problem>> {
        let (parsed, mut problems) = validate::parse(files);
        problems.extend(validate::structure(&parsed));
        if problems.is_empty() {
            Ok(build::resolve(&parsed))
        } else {
            Err(problems)
        }
    }

    /// How a call comes about; `None` in a graph that does not say, where a
    /// call is no evidence.
    #[must_use]
    pub fn call(&self) -> Option<&CallModel> {
        self.call.as_ref()
    }

    /// The place of a cause.
    #[must_use]
    pub fn find_cause(&self, id: &CauseId) -> Option<CauseIx> {
        self.cause_places.get(id).copied()
    }

    /// The place of a finding.
    #[must_use]
    pub fn find_finding(&self, id: &FindingId) -> Option<FindingIx> {
        self.finding_places.get(id).copied()
    }

    /// Places of all causes.
    pub fn cause_places(&self) -> impl Iterator<Item = CauseIx> + use<> {
        (0..self.causes.len()).map(CauseIx)
    }

    /// Places of all mechanisms.
    pub fn mechanism_places(&self) -> impl Iterator<Item = MechanismIx> + use<> {
        (0..self.mechanisms.len()).map(MechanismIx)
    }

    /// Places of all findings.
    pub fn finding_places(&self) -> impl Iterator<Item = FindingIx> + use<> {
        (0..self.findings.len()).map(FindingIx)
    }

    /// The cause at a place.
    #[must_use]
    pub fn cause(&self, place: CauseIx) -> &Cause {
        &self.causes[place.0]
    }

    /// The mechanism at a place.
    #[must_use]
    pub fn mechanism(&self, place: MechanismIx) -> &Mechanism {
        &self.mechanisms[place.0]
    }

    /// The finding at a place.
    #[must_use]
    pub fn finding(&self, place: FindingIx) -> &Finding {
        &self.findings[place.0]
    }

    /// The id text of a link's origin.
    #[must_use]
    pub fn parent_id(&self, parent: Parent) -> &str {
        match parent {
            Parent::Cause(place) => self.cause(place).id.as_str(),
            Parent::Mechanism(place) => self.mechanism(place).id.as_str(),
        }
    }
}

macro_rules! slices {
    ($($(#[$doc:meta])* $name:ident: $item:ty;)*) => {
        impl Graph {
            $($(#[$doc])* #[must_use] pub fn $name(&self) -> &[$item] { &self.$name })*
        }
    };
}

slices! {
    /// Causes, in the order of the files.
    causes: Cause;
    /// Mechanisms, in the order of the files.
    mechanisms: Mechanism;
    /// Findings, in the order of the files.
    findings: Finding;
    /// Checks, in the order of the files.
    checks: Check;
    /// Cautions.
    cautions: Caution;
    /// Procedures.
    procedures: Procedure;
    /// Published sources.
    sources: Source;
    /// Facts.
    facts: FactId;
    /// Tools.
    tools: ToolId;
    /// Hazards.
    hazards: HazardId;
    /// Families.
    families: FamilyId;
}
