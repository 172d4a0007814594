//! The work plan as it is shown.

use super::FigureView;
use serde::Serialize;
use ts_rs::TS;

/// What to do, in order.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PlanView {
    /// Causes it treats, in words.
    pub treats: Vec<String>,
    /// Tools to bring.
    pub tools: Vec<String>,
    /// Materials to bring, with quantities.
    pub materials: Vec<String>,
    /// The steps.
    pub steps: Vec<StepView>,
    /// Readings that prove it afterwards.
    pub proof: Vec<ProofView>,
    /// What is to be said beside the steps.
    pub remarks: Vec<String>,
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
    /// Seconds that a timer runs, if the step has one.
    pub timer_seconds: Option<f64>,
    /// Whether it has been done.
    pub done: Option<bool>,
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
    /// What it reads as left.
    pub after: Option<String>,
}
