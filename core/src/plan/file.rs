//! The procedure files as written. Every reference and number is still text
//! here, so that validation can report every error of every file at once.

use serde::Deserialize;

/// One file.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ProcedureFile {
    /// Published sources.
    pub source: Vec<IdEntry>,
    /// Cautions.
    pub caution: Vec<CautionEntry>,
    /// Tools.
    pub tool: Vec<IdEntry>,
    /// Materials.
    pub material: Vec<MaterialEntry>,
    /// Things that are opened and closed.
    pub opening: Vec<OpeningEntry>,
    /// Steps.
    pub step: Vec<StepEntry>,
    /// Proof readings.
    pub proof: Vec<ProofEntry>,
    /// Procedures.
    pub procedure: Vec<ProcedureEntry>,
}

/// An entry that is only an id.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(missing_docs)]
pub struct IdEntry {
    pub id: String,
}

/// A material, and which quantities say how much or which.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(missing_docs)]
pub struct MaterialEntry {
    pub id: String,
    /// Told with it where a step that needs it shows them.
    #[serde(default)]
    pub amounts: Vec<String>,
}

/// A caution and the hazards that it answers.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(missing_docs)]
pub struct CautionEntry {
    pub id: String,
    pub hazards: Vec<String>,
}

/// Something that one step opens and another closes.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(missing_docs)]
pub struct OpeningEntry {
    pub id: String,
    /// Section it opens; none for what holds no fluid.
    pub section: Option<String>,
    /// Whether a hose sits on it, so that it may be under pressure while open.
    #[serde(default)]
    pub connection: bool,
}

/// A step.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct StepEntry {
    /// Id.
    pub id: String,
    /// Stage it belongs to.
    pub stage: String,
    /// Side of the isolation valves; any if left out.
    pub side: Option<String>,
    /// Ways it can hurt someone.
    pub hazards: Vec<String>,
    /// Cautions shown at it.
    pub cautions: Vec<String>,
    /// Whether the technician confirms it before going on.
    pub acknowledge: bool,
    /// Tools.
    pub tools: Vec<String>,
    /// Materials.
    pub materials: Vec<String>,
    /// Steps that come along with it, before or after by their stages.
    pub needs: Vec<String>,
    /// Steps of the same stage and side that come first where both are there.
    pub after: Vec<String>,
    /// Steps that this one makes needless.
    pub supersedes: Vec<String>,
    /// Steps that undo this one: the better ranked cause keeps its own.
    pub excludes: Vec<String>,
    /// Kinds of flow centre it is for; all if left out.
    pub only_flow_centres: Vec<String>,
    /// Whether it has no meaning for plain water.
    pub only_with_antifreeze: bool,
    /// Whether the loop holds plain water afterwards.
    pub refills: bool,
    /// Whether it is read or done with the circulators running.
    pub running: bool,
    /// Whether it puts so much into the loop that room must be made first.
    pub adds: bool,
    /// Whether it takes fluid out of the loop to make room.
    pub draws_off: bool,
    /// Sections whose valves it shuts.
    pub shuts: Vec<String>,
    /// Sections whose valves it opens.
    pub joins: Vec<String>,
    /// What it opens.
    pub opens: Vec<String>,
    /// What it closes.
    pub closes: Vec<String>,
    /// Sections whose pressure it lets off to zero.
    pub relieves: Vec<String>,
    /// Sections it puts under pressure.
    pub pressurises: Vec<String>,
    /// Sections that must be at zero when it is done.
    pub at_zero: Vec<String>,
    /// Timers.
    pub timers: Vec<TimerEntry>,
    /// Quantities shown at it.
    pub quantities: Vec<String>,
    /// Criteria that all must pass before going on.
    pub gate: Vec<CriterionEntry>,
}

/// A timer: the least time, or the computed one if that is longer.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(missing_docs)]
pub struct TimerEntry {
    pub kind: String,
    pub minutes: f64,
    pub quantity: Option<String>,
    pub source: String,
}

/// One criterion of a gate.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct CriterionEntry {
    /// Reading point looked at.
    pub reading: Option<String>,
    /// Or an observation that has no reading point.
    pub observe: Option<String>,
    /// `at-most` or `at-least`.
    pub rule: String,
    /// Pass value where nothing better can be computed.
    pub value: Option<f64>,
    /// Its unit.
    pub unit: String,
    /// Computed pass value.
    pub quantity: Option<String>,
    /// Source of the value.
    pub source: String,
    /// Steps to go back to on fail: the first that is in the plan.
    pub return_to: Vec<String>,
}

/// A reading that shows that the work was good.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ProofEntry {
    /// Id.
    pub id: String,
    /// Reading point.
    pub reading: String,
    /// Mode of operation.
    pub mode: String,
    /// Now or at the rechecks.
    pub when: String,
    /// Lower end.
    pub at_least: Option<LimitEntry>,
    /// Upper end.
    pub at_most: Option<LimitEntry>,
    /// Kinds of flow centre it is for; all if left out.
    pub only_flow_centres: Vec<String>,
    /// Whether it has no meaning for plain water.
    pub only_with_antifreeze: bool,
}

/// One end of the band of a proof.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct LimitEntry {
    /// Computed value.
    pub quantity: Option<String>,
    /// Value where none can be computed.
    pub value: Option<f64>,
    /// Its unit.
    pub unit: String,
    /// Its source.
    pub source: String,
}

/// A procedure.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ProcedureEntry {
    /// Id.
    pub id: String,
    /// Its steps, beside those which they need.
    pub steps: Vec<String>,
    /// Proof readings.
    pub proofs: Vec<String>,
}
