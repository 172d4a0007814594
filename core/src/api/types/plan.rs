//! The work plan as it is shown.

use super::{FigureView, UnitView};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What to do, in order.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PlanView {
    /// Causes it treats, in words.
    pub treats: Vec<String>,
    /// Tools to bring.
    pub tools: Vec<String>,
    /// Materials to bring.
    pub materials: Vec<MaterialView>,
    /// The steps.
    pub steps: Vec<StepView>,
    /// How far the steps are, in words.
    pub count: String,
    /// Readings that prove it afterwards.
    pub proof: Vec<ProofView>,
    /// Every step and proof that is open, in words: what stands against calling the
    /// work put right and proven.
    pub unproved: Vec<String>,
    /// What is to be said beside the steps.
    pub remarks: Vec<RemarkView>,
}

/// Something said beside the steps.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct RemarkView {
    /// The words, with their numbers.
    pub words: String,
    /// Where its numbers come from; none where it has none.
    pub why: Option<FigureView>,
}

/// A material to bring.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct MaterialView {
    /// What it is.
    pub label: String,
    /// How much or which, for this system.
    pub amounts: Vec<QuantityView>,
}

/// One step.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct StepView {
    /// Identifier, unique in the plan.
    pub id: String,
    /// Label of the stage it belongs to.
    pub stage: String,
    /// What to do.
    pub text: String,
    /// Cautions that stand at this step.
    pub cautions: Vec<CautionView>,
    /// Quantities for this system.
    pub quantities: Vec<QuantityView>,
    /// A gate that says go on or go back.
    pub gate: Option<GateView>,
    /// Its timers.
    pub timers: Vec<TimerView>,
    /// Whether it has been done.
    pub done: Option<bool>,
    /// `open`, `done`, `unmet`, `excused` or `skipped`.
    pub progress: String,
    /// Steps before it that it rests on and that are not settled.
    pub earlier: Vec<EarlierView>,
    /// What it still wants, in words, once it was marked as done or left out.
    pub wanting: Vec<String>,
    /// Why it was marked as done all the same, when it was.
    pub without: Option<String>,
    /// Why it was left out, when it was.
    pub skipped: Option<String>,
    /// Minutes it took, as written.
    pub minutes: Option<String>,
    /// Parts and materials used at it.
    pub parts: Option<String>,
    /// What was noted at it: ratings read, how much was taken, marks.
    pub note: Option<String>,
}

/// A timer of a step.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct TimerView {
    /// Identifier, unique in the step.
    pub kind: String,
    /// What it runs for.
    pub label: String,
    /// How long it runs at least, in words.
    pub shown: String,
    /// Whether a quantity of the step tells that time already.
    pub told: bool,
    /// The same in seconds.
    pub seconds: f64,
    /// When it was started, RFC 3339; none if it was not.
    pub started_at: Option<String>,
    /// When it was stopped, RFC 3339; none while it runs.
    pub stopped_at: Option<String>,
    /// How long it ran until it was stopped, in words.
    pub ran: Option<String>,
    /// Whether that was long enough; none while it runs or was not started.
    pub met: Option<bool>,
    /// Where the time comes from.
    pub why: FigureView,
}

/// A change at one step of the plan.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
#[serde(tag = "change", rename_all = "snake_case")]
pub enum StepChange {
    /// Done or not.
    Done {
        /// Whether it is done.
        done: bool,
    },
    /// Done all the same, without its gate or timer or before a step that it rests on.
    Without {
        /// The reason.
        reason: String,
    },
    /// Left out for a reason; without one it is not left out.
    Skipped {
        /// The reason.
        reason: Option<String>,
    },
    /// A caution was read and understood, or that is taken back.
    Acknowledged {
        /// Identifier of the caution.
        caution: String,
        /// Whether it is acknowledged.
        yes: bool,
    },
    /// A timer was started now, or stopped.
    Timer {
        /// Identifier of the timer.
        kind: String,
        /// Whether it runs.
        running: bool,
    },
    /// Minutes it took, as typed; empty for none.
    Minutes {
        /// As typed.
        text: String,
    },
    /// Parts and materials used; empty for none.
    Parts {
        /// As typed.
        text: String,
    },
    /// What is noted at it; empty for none.
    Note {
        /// As typed.
        text: String,
    },
    /// What was found at its gate; empty to take it back.
    Gate {
        /// Identifier of what was looked at.
        looked: String,
        /// As typed.
        text: String,
        /// Unit beside the field.
        unit: String,
    },
}

/// A caution.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct CautionView {
    /// Identifier.
    pub id: String,
    /// The words.
    pub text: String,
    /// Whether it has to be acknowledged.
    pub acknowledge: bool,
    /// Whether it was.
    pub acknowledged: bool,
}

/// A quantity with its reasons.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct QuantityView {
    /// What it is.
    pub label: String,
    /// Its value, with unit and uncertainty.
    pub value: String,
    /// Why.
    pub why: Option<FigureView>,
}

/// A gate.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct GateView {
    /// What must be so to go on, with numbers.
    pub pass: String,
    /// What to do otherwise.
    pub otherwise: String,
    /// Identifier of the step to return to.
    pub back_to: Option<String>,
    /// What has to be found, one by one.
    pub criteria: Vec<CriterionView>,
    /// `open`, `passed` or `failed`.
    pub verdict: String,
    /// What is still to be read, in words, while it is open.
    pub unread: Option<String>,
}

/// A step that another one rests on.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct EarlierView {
    /// Its identifier.
    pub id: String,
    /// Its number and what to do, in one sentence.
    pub text: String,
}

/// One thing to be found at a gate.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct CriterionView {
    /// Identifier of the point or observation.
    pub looked: String,
    /// What is looked at.
    pub label: String,
    /// Whether it is worked out of the other entries and not entered itself.
    pub worked_out: bool,
    /// What it must be, with its limit.
    pub rule: String,
    /// Units offered.
    pub units: Vec<UnitView>,
    /// Whether it can be below zero.
    pub signed: bool,
    /// What was found, to edit.
    pub value: Option<String>,
    /// Its unit.
    pub unit: String,
    /// Whether that passes.
    pub passed: Option<bool>,
    /// Where the limit comes from.
    pub why: FigureView,
}

/// A reading that proves the work.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ProofView {
    /// Identifier of the point.
    pub point: String,
    /// Label of the point.
    pub label: String,
    /// What it should read, with unit.
    pub expected: Option<String>,
    /// What it read as found.
    pub before: Option<String>,
    /// What it reads as left; on a later day, where that is when it is read.
    pub after: Option<String>,
    /// `met`, `missed`, `unread`, or `open` where nothing is expected.
    pub verdict: String,
    /// The verdict in words.
    pub verdict_words: String,
    /// Whether it is read on a later day than that of the work.
    pub later: bool,
    /// Where the expectation comes from.
    pub why: Option<FigureView>,
}
