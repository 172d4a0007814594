//! A service visit.

use super::Reading;
use crate::units::{Duration, GaugePressure, Length, Measure, Number, Temperature};
use chrono::{DateTime, NaiveDate, Utc};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Everything met, measured and done on one call.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Visit {
    /// Day of the visit.
    pub date: Option<NaiveDate>,
    /// Who went.
    pub technician: Option<String>,
    /// The complaint in the customer's own words.
    pub complaint: Option<String>,
    /// What is seen, heard, told or tried: answers to findings that need no number.
    pub answers: Vec<Answer>,
    /// The numbers.
    pub readings: Vec<Reading>,
    /// What the technician carries and may do.
    pub means: Means,
    /// Causes found true or false by a check that decides it.
    pub verdicts: Vec<Verdict>,
    /// What was done.
    pub actions: Vec<Action>,
    /// How it ended.
    pub outcome: Option<Outcome>,
    /// Working time of the call, travel included if the company counts it.
    pub time_spent: Option<Measure<Duration>>,
    /// What the call cost the company, in its own currency.
    pub cost: Option<Measure<Number>>,
    /// Anything else.
    pub notes: Option<String>,
}

/// The answer to one finding.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// Identifier of the finding in the rule graph.
    pub finding: String,
    /// What was found.
    pub is: Level,
}

/// What was found. `yes` and `no` for findings that are there or not; `low`,
/// `normal`, `high` for graded ones.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    Yes,
    No,
    Low,
    Normal,
    High,
}

/// What the technician carries and may do.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Means {
    /// The flush cart on the van, if any.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cart: Option<FlushCart>,
    /// Instruments at hand; unknown means all.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instruments: Option<Vec<super::Instrument>>,
    /// Whether the technician is certified for refrigerant work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refrigerant_certified: Option<bool>,
    /// Whether the technician may do electrical work beyond isolation.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub electrical_licence: Option<bool>,
    /// The freeze point wanted, if the company or the unit's instructions set one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wanted_freeze_point: Option<Measure<Temperature>>,
}

/// The flush cart.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct FlushCart {
    /// Head against flow of its pump, with water.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub curve: Vec<super::HeadPoint>,
    /// Inside diameter of its round reservoir.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reservoir_diameter: Option<Measure<Length>>,
    /// Hoses between cart and flush ports, there and back.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hose: Option<super::PipeRun>,
    /// Pressure at which its relief or weakest part stands.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub maximum_pressure: Option<Measure<GaugePressure>>,
}

/// A cause found true or false.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Verdict {
    /// Identifier of the cause in the rule graph.
    pub cause: String,
    /// Whether it was there.
    pub confirmed: bool,
    /// Identifier of the check that decided it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by_check: Option<String>,
}

/// Something that was done, or a step of the plan that was taken up.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Action {
    /// Identifier of the plan step, when it was one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<String>,
    /// What was done, in the technician's words; at a step what was noted there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub text: Option<String>,
    /// Whether it was finished.
    pub done: bool,
    /// How long it took.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub duration: Option<Measure<Duration>>,
    /// Why it was left out, when it was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub skipped: Option<String>,
    /// Why it was marked as done all the same, although a gate of it was not passed, a
    /// timer had not run to its end or a step that it rests on was not done.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub without: Option<String>,
    /// Identifiers of the steps that it rests on and that were not done when it was.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub ahead_of: Vec<String>,
    /// Parts and materials used.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub parts: Option<String>,
    /// Identifiers of the cautions that were acknowledged.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub acknowledged: Vec<String>,
    /// Timers that were started, with the moment of their start.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub timers: Vec<StartedTimer>,
    /// What was found at the gate of the step.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub gates: Vec<GateEntry>,
}

/// A timer that was started.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StartedTimer {
    /// What it runs for.
    pub kind: String,
    /// When it was started.
    pub started_at: DateTime<Utc>,
    /// When it was stopped, or its step was done; none while it runs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stopped_at: Option<DateTime<Utc>>,
}

/// What was found at a gate: the number and its unit, as written.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GateEntry {
    /// Identifier of the point or observation that was looked at.
    pub looked: String,
    /// The number.
    pub value: f64,
    /// Symbol of its unit.
    pub unit: String,
}

/// How a visit ended.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Put right and proven.
    Fixed,
    /// Put right in part; another visit follows.
    Partly,
    /// Nothing was wrong.
    NothingWrong,
    /// Handed to a licensed refrigerant or electrical technician, or another trade.
    HandedOver,
    /// Still open.
    Open,
}
