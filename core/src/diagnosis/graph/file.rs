//! The graph files as written: plain TOML tables, nothing resolved yet.
//!
//! The format is described for authors in `core/data/graph/README.md`.

use serde::Deserialize;

/// One file of the rule graph.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GraphFile {
    /// How a call comes about; in one file only.
    #[serde(default, rename = "call")]
    pub calls: Vec<CallEntry>,
    /// Causes.
    #[serde(default, rename = "cause")]
    pub causes: Vec<CauseEntry>,
    /// Mechanisms.
    #[serde(default, rename = "mechanism")]
    pub mechanisms: Vec<MechanismEntry>,
    /// Findings.
    #[serde(default, rename = "finding")]
    pub findings: Vec<FindingEntry>,
    /// Links from causes and mechanisms to mechanisms and findings.
    #[serde(default, rename = "link")]
    pub links: Vec<LinkEntry>,
    /// Checks.
    #[serde(default, rename = "check")]
    pub checks: Vec<CheckEntry>,
    /// Cautions.
    #[serde(default, rename = "caution")]
    pub cautions: Vec<CautionEntry>,
    /// Procedures.
    #[serde(default, rename = "procedure")]
    pub procedures: Vec<ProcedureEntry>,
    /// Facts about system and commissioning.
    #[serde(default, rename = "fact")]
    pub facts: Vec<NamedEntry>,
    /// Tools.
    #[serde(default, rename = "tool")]
    pub tools: Vec<NamedEntry>,
    /// Hazards.
    #[serde(default, rename = "hazard")]
    pub hazards: Vec<NamedEntry>,
    /// Families.
    #[serde(default, rename = "family")]
    pub families: Vec<NamedEntry>,
    /// Published sources.
    #[serde(default, rename = "source")]
    pub sources: Vec<SourceEntry>,
}

/// An entry that has nothing but an id; its words are in the catalogs.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct NamedEntry {
    /// Id.
    pub id: String,
}

/// How a call comes about.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CallEntry {
    /// Probability that somebody calls though nothing of the graph is so.
    pub leak: f64,
    /// Probability that a cause of each kind, alone, makes somebody call, where
    /// the cause does not say otherwise.
    #[serde(rename = "loop")]
    pub by_loop: f64,
    /// See `by_loop`.
    pub unit: f64,
    /// See `by_loop`.
    pub normal: f64,
    /// See `by_loop`.
    pub instrument: f64,
    /// Source mark of all of them.
    pub source: String,
}

impl CallEntry {
    /// The probability that a cause of this kind, alone, makes somebody call.
    #[must_use]
    pub fn of(&self, kind: CauseKind) -> f64 {
        match kind {
            CauseKind::Loop => self.by_loop,
            CauseKind::Unit => self.unit,
            CauseKind::Normal => self.normal,
            CauseKind::Instrument => self.instrument,
        }
    }
}

/// What kind of thing a cause is, which decides what is said about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum CauseKind {
    /// A fault of the loop, its fluid or its circulators: ours to correct.
    Loop,
    /// A fault of the unit, its air side or its controls: hand over to whoever is licensed.
    Unit,
    /// Ordinary behaviour, nothing to correct.
    Normal,
    /// An instrument that does not tell the truth.
    Instrument,
}

/// How far an entry has been reviewed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Status {
    /// Still being worked on.
    Draft,
    /// Reviewed, and held by a regression case.
    Stable,
}

/// A cause.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CauseEntry {
    /// Id.
    pub id: String,
    /// Family id.
    pub family: String,
    /// Kind.
    pub kind: CauseKind,
    /// Review status.
    pub status: Status,
    /// Share of callbacks in which this is so, before anything else is known.
    pub prior: f64,
    /// Source mark of the prior and of `calls`.
    pub source: String,
    /// Probability that it alone makes somebody call; that of its kind if left out.
    pub calls: Option<f64>,
    /// The only complaints it makes somebody call with; any if empty.
    #[serde(default)]
    pub calls_with: Vec<String>,
    /// Procedure that corrects it.
    pub procedure: Option<String>,
    /// Facts that raise or lower the odds.
    #[serde(default)]
    pub context: Vec<ContextEntry>,
    /// Facts without which the cause is impossible (ruled out only when the fact is known false).
    #[serde(default)]
    pub only_if: Vec<String>,
    /// Facts with which the cause is impossible (ruled out only when the fact is known true).
    #[serde(default)]
    pub not_if: Vec<String>,
}

/// A fact that changes the odds of a cause.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ContextEntry {
    /// Fact id.
    pub fact: String,
    /// Factor on the odds when the fact is known to be true.
    #[serde(default = "one")]
    pub odds: f64,
    /// Factor on the odds when the fact is known to be false.
    #[serde(default = "one")]
    pub odds_if_false: f64,
    /// Source mark.
    pub source: String,
}

fn one() -> f64 {
    1.0
}

/// A mechanism.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MechanismEntry {
    /// Id.
    pub id: String,
    /// Probability that it is at work through nothing in this graph.
    pub leak: f64,
    /// Source mark of the leak.
    pub source: String,
}

/// What a finding can show.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LevelsEntry {
    /// Absent or present.
    Presence,
    /// Low, normal or high.
    Graded,
}

/// Which of absent and present is as it should be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum NormalEntry {
    /// Absent is as it should be.
    #[default]
    Absent,
    /// Present is as it should be.
    Present,
}

/// How a finding becomes known.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum EvidenceEntry {
    /// The customer or the unit's display tells it.
    Symptom,
    /// The technician looks, listens or feels.
    Observation,
    /// A named evaluator turns readings into a likelihood.
    Evaluator(String),
}

/// A finding.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FindingEntry {
    /// Id.
    pub id: String,
    /// Scale.
    pub levels: LevelsEntry,
    /// For presence: the level that is as it should be. A graded finding's is always `normal`.
    pub normal: Option<NormalEntry>,
    /// For presence: probability of the abnormal level through nothing in this graph.
    pub leak: Option<f64>,
    /// For graded: probability of a push to low through nothing in this graph.
    pub leak_low: Option<f64>,
    /// For graded: probability of a push to high through nothing in this graph.
    pub leak_high: Option<f64>,
    /// How it becomes known.
    pub evidence: EvidenceEntry,
    /// The cause of kind `instrument` whose reading it is, if any.
    pub instrument: Option<String>,
    /// Probability that the level reported is the level that is so, with a sound instrument.
    #[serde(default = "one")]
    pub reliability: f64,
    /// Source mark of leak and reliability.
    pub source: String,
}

/// A link.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LinkEntry {
    /// Id of a cause or mechanism.
    pub from: String,
    /// Id of a mechanism or finding.
    pub to: String,
    /// For a mechanism or a presence finding: probability that `from` alone brings `to` about.
    pub strength: Option<f64>,
    /// For a graded finding: probability that `from` alone pushes it low.
    pub low: Option<f64>,
    /// For a graded finding: probability that `from` alone pushes it high.
    pub high: Option<f64>,
    /// Source mark.
    pub source: String,
}

/// The licence without which a check may not be done.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Deserialize, serde::Serialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Licence {
    /// None beyond the trade itself.
    #[default]
    None,
    /// Refrigerant handling.
    Refrigerant,
    /// Electrical work beyond isolation.
    Electrical,
}

/// A check.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CheckEntry {
    /// Id.
    pub id: String,
    /// Minutes it takes with the tools at hand.
    pub minutes: f64,
    /// Tool ids.
    #[serde(default)]
    pub tools: Vec<String>,
    /// Licence needed.
    #[serde(default)]
    pub licence: Licence,
    /// Hazards of doing it.
    #[serde(default)]
    pub hazards: Vec<String>,
    /// Cautions shown at it.
    #[serde(default)]
    pub cautions: Vec<String>,
    /// Findings it reveals.
    pub reveals: Vec<String>,
    /// Facts without which it cannot be done (left out only when the fact is known false).
    #[serde(default)]
    pub only_if: Vec<String>,
    /// Facts with which it cannot be done (left out only when the fact is known true).
    #[serde(default)]
    pub not_if: Vec<String>,
    /// Source mark of the minutes.
    pub source: String,
}

/// A caution.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CautionEntry {
    /// Id.
    pub id: String,
    /// Hazards it answers.
    pub hazards: Vec<String>,
}

/// A procedure. Its steps may still be empty.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProcedureEntry {
    /// Id.
    pub id: String,
    /// Steps in order.
    #[serde(default, rename = "step")]
    pub steps: Vec<StepEntry>,
}

/// A step of a procedure.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepEntry {
    /// Id, unique within its procedure.
    pub id: String,
    /// Hazards of doing it.
    #[serde(default)]
    pub hazards: Vec<String>,
    /// Cautions shown at it.
    #[serde(default)]
    pub cautions: Vec<String>,
}

/// A published source.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SourceEntry {
    /// Id.
    pub id: String,
    /// Citation as printed in a list of references.
    pub citation: String,
}
