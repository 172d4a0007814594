//! The board, the exchange of records, and what became of fixes.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What a figure counts. Every figure carries one that opens its visits.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize, TS)]
#[ts(export)]
#[serde(default, deny_unknown_fields)]
pub struct FleetFilter {
    /// First day of visits, `YYYY-MM-DD`.
    pub from: Option<String>,
    /// Last day of visits.
    pub to: Option<String>,
    /// Systems commissioned on this day or later.
    pub started_from: Option<String>,
    /// Systems commissioned on this day or earlier.
    pub started_to: Option<String>,
    /// Groups that systems must be in.
    pub groups: Vec<FleetGroup>,
    /// Identifier of the confirmed cause.
    pub cause: Option<String>,
    /// Which visits: `callbacks`, `first-callbacks`, `repeats:DAYS`,
    /// `not-held:DAYS` or `early:DAYS`; all when none.
    pub aspect: Option<String>,
}

/// A group of systems.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, TS)]
#[ts(export)]
#[serde(deny_unknown_fields)]
pub struct FleetGroup {
    /// Identifier of what systems are grouped by.
    pub dimension: String,
    /// The group: a name, a year, a season, or `kept` or `not-kept` of a habit.
    pub group: String,
}

/// What to work out.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, TS)]
#[ts(export)]
#[serde(default, deny_unknown_fields)]
pub struct FleetQuery {
    /// What is counted.
    pub filter: FleetFilter,
    /// Days within which the same cause counts as come back.
    pub repeat_days: i32,
    /// Days from commissioning over which systems are compared.
    pub watch_days: i32,
    /// Day of a change of practice, `YYYY-MM-DD`.
    pub changed_on: Option<String>,
}

impl Default for FleetQuery {
    fn default() -> Self {
        Self {
            filter: FleetFilter::default(),
            repeat_days: 365,
            watch_days: 730,
            changed_on: None,
        }
    }
}

/// The manager's report: what it counts, and how it is written.
#[derive(Clone, PartialEq, Eq, Debug, Default, Deserialize, TS)]
#[ts(export)]
#[serde(default, deny_unknown_fields)]
pub struct FleetReportRequest {
    /// What it counts.
    pub query: FleetQuery,
    /// Tag of the language; the language of the screen if not given.
    pub language: Option<String>,
    /// `letter` or `a4`; as the settings have it if not given.
    pub paper: Option<String>,
}

/// The board.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct BoardView {
    /// What it rests on, in a sentence.
    pub headline: String,
    /// What limits it, one sentence each.
    pub notes: Vec<String>,
    /// What can be filtered by.
    pub choices: Vec<FleetChoices>,
    /// Causes, most frequent first.
    pub causes: Vec<FleetCauseLine>,
    /// Causes that come back, most often first.
    pub repeats: Vec<FleetShareLine>,
    /// Time from commissioning to the first callback.
    pub waiting: FleetCurve,
    /// Callbacks per system and year, by group.
    pub rates: Vec<FleetRates>,
    /// What differs between systems with and without a cause.
    pub differences: FleetDifferences,
    /// Whether fixes held.
    pub fixes: Vec<FleetHeldLine>,
    /// Before and after a change of practice, if one was named.
    pub practice: Option<FleetPractice>,
}

/// The groups there are of one sort.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetChoices {
    /// Identifier; `cause` for causes.
    pub dimension: String,
    /// Label.
    pub label: String,
    /// The groups.
    pub groups: Vec<super::ChoiceView>,
}

/// A number with the interval that holds it in 19 of 20 cases.
#[derive(Copy, Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetRange {
    /// The number.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// A cause over the period.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetCauseLine {
    /// Identifier.
    pub cause: String,
    /// Title.
    pub title: String,
    /// Visits at which it was confirmed.
    pub count: usize,
    /// Share of callbacks.
    pub share: FleetRange,
    /// The share to read.
    pub shown: String,
    /// Working time, h.
    pub hours: f64,
    /// Cost, in the company's currency.
    pub cost: f64,
    /// Opens the visits.
    pub open: FleetFilter,
}

/// A share of something, by cause.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetShareLine {
    /// Identifier of the cause.
    pub cause: String,
    /// Its title.
    pub title: String,
    /// Of how many.
    pub of: usize,
    /// How many.
    pub count: usize,
    /// The share.
    pub share: FleetRange,
    /// The share to read.
    pub shown: String,
    /// Opens the visits.
    pub open: FleetFilter,
}

/// Share of systems without callback over the days since commissioning.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetCurve {
    /// Points in order of days.
    pub points: Vec<FleetCurvePoint>,
    /// Systems that count.
    pub systems: usize,
    /// Day by which half had a callback; none while fewer had.
    pub median_days: Option<f64>,
    /// What it says, in a sentence.
    pub words: String,
    /// Opens the first callbacks.
    pub open: FleetFilter,
}

/// A point of the curve.
#[derive(Copy, Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetCurvePoint {
    /// Days since commissioning.
    pub days: f64,
    /// Share still without callback, after this day.
    pub share: FleetRange,
    /// Systems still waiting until just before.
    pub at_risk: usize,
}

/// Callbacks per system and year of every group of one sort.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetRates {
    /// Identifier.
    pub dimension: String,
    /// Label.
    pub label: String,
    /// The groups.
    pub rows: Vec<FleetRateLine>,
}

/// Callbacks of a group.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetRateLine {
    /// The group.
    pub group: String,
    /// Its label.
    pub label: String,
    /// Systems.
    pub systems: usize,
    /// Years in service, together.
    pub years: f64,
    /// Callbacks.
    pub callbacks: usize,
    /// Callbacks per 100 systems and year.
    pub rate: Option<FleetRange>,
    /// The rate to read.
    pub shown: String,
    /// Opens the callbacks.
    pub open: FleetFilter,
}

/// What differs between systems with and without a cause.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetDifferences {
    /// What was compared and how, in sentences.
    pub words: String,
    /// What differs, the surest first; empty when the numbers say nothing.
    pub lines: Vec<FleetDifferenceLine>,
}

/// One difference.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetDifferenceLine {
    /// What it says, in plain words.
    pub words: String,
    /// By what systems are grouped.
    pub dimension: String,
    /// The group that had the cause more often.
    pub group: String,
    /// Identifier of the cause.
    pub cause: String,
    /// Systems of the group with the cause, and all of the group.
    pub here: [usize; 2],
    /// The same of all others.
    pub others: [usize; 2],
    /// Share of the group over share of the others; none when no other had it.
    pub ratio: Option<f64>,
    /// Ends of its interval.
    pub ratio_ends: Option<[f64; 2]>,
    /// Odds ratio; none when no other had it.
    pub odds_ratio: Option<f64>,
    /// Ends of its interval.
    pub odds_ends: Option<[f64; 2]>,
    /// p of the exact test.
    pub p: f64,
    /// p after control of false discoveries.
    pub adjusted: f64,
    /// Opens the visits of the group with the cause.
    pub open: FleetFilter,
}

/// Fixes after so many days.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetHeldLine {
    /// Days.
    pub days: i32,
    /// Label.
    pub label: String,
    /// Fixes of which it is known.
    pub known: usize,
    /// Of these, how many held.
    pub held: usize,
    /// The share; none when nothing is known.
    pub share: Option<FleetRange>,
    /// The share to read.
    pub shown: String,
    /// Long enough ago, but nobody has said.
    pub unasked: usize,
    /// Not yet that long ago.
    pub too_early: usize,
    /// Opens the fixes that did not hold.
    pub open: FleetFilter,
}

/// Before and after a change of practice.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetPractice {
    /// What it says, in plain words.
    pub words: String,
    /// Commissioned before: with a callback, and all.
    pub before: [usize; 2],
    /// Commissioned after: with a callback, and all.
    pub after: [usize; 2],
    /// Share before.
    pub before_share: Option<FleetRange>,
    /// Share after.
    pub after_share: Option<FleetRange>,
    /// p of the exact test.
    pub p: Option<f64>,
    /// Opens the early callbacks before.
    pub open_before: FleetFilter,
    /// Opens the early callbacks after.
    pub open_after: FleetFilter,
}

/// Visits behind a figure.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FleetVisits {
    /// How many there are in all.
    pub total: usize,
    /// Those asked for, latest day first.
    pub lines: Vec<super::VisitLine>,
}

/// A table for a spreadsheet.
#[derive(Clone, PartialEq, Eq, Debug, Serialize)]
pub struct FleetTable {
    /// File name.
    pub name: String,
    /// Comma-separated values (RFC 4180).
    pub csv: String,
}

/// A fix of an earlier visit, to ask about.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct EarlierFixView {
    /// Identifier of the earlier visit.
    pub visit: String,
    /// Its day.
    pub date: String,
    /// Identifier of the cause.
    pub cause: String,
    /// The question, in words.
    pub question: String,
    /// What was last said, in words.
    pub known: Option<String>,
    /// What was last said: whether it held.
    pub held: Option<bool>,
}

/// What to carry out to other devices.
#[derive(Clone, PartialEq, Eq, Debug, Default, Deserialize, TS)]
#[ts(export)]
#[serde(default, deny_unknown_fields)]
pub struct ExchangeChoice {
    /// Visits; none of either is everything.
    pub visits: Vec<String>,
    /// Systems with all their visits.
    pub systems: Vec<String>,
    /// Leave out names, addresses, complaints and notes.
    pub without_personal: bool,
}

/// What was carried out or taken in.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ExchangeDone {
    /// What happened, in a sentence.
    pub words: String,
    /// Records in the file.
    pub records: usize,
    /// Records that were not here.
    pub new: usize,
    /// Records that are different now.
    pub changed: usize,
    /// Records that still want a decision.
    pub to_decide: usize,
}

/// A record on which devices disagree.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ConflictView {
    /// Kind of record.
    pub kind: String,
    /// Its identifier.
    pub id: String,
    /// What it is, in words.
    pub title: String,
    /// Its states, the one that stands first.
    pub sides: Vec<ConflictSide>,
}

/// A state to choose.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ConflictSide {
    /// Its name, to choose it by.
    pub state: String,
    /// When it was noted and whether here, in words.
    pub noted: String,
    /// When it was noted, UTC.
    pub made_at: String,
    /// The device that noted it.
    pub device: String,
    /// Whether it stands now.
    pub stands: bool,
    /// What it says where the sides differ: name and value.
    pub differs: Vec<[String; 2]>,
}
