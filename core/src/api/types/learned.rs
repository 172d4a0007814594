//! What was learned from confirmed causes.

use serde::Serialize;
use ts_rs::TS;

/// What was learned.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct LearnedView {
    /// Own callbacks that were settled: a cause was confirmed, or nothing was wrong.
    pub own: u32,
    /// The same, counted by other devices.
    pub elsewhere: u32,
    /// How many callbacks the shipped prior is worth.
    pub weight: f64,
    /// Since when callbacks count, UTC; none if all do.
    pub since: Option<String>,
    /// The above in a sentence.
    pub shown: String,
    /// Every cause, the most often confirmed first; none before the first callback.
    pub causes: Vec<LearnedCauseView>,
}

/// What was learned about one cause.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct LearnedCauseView {
    /// Identifier.
    pub id: String,
    /// Title.
    pub title: String,
    /// Callbacks in which it was confirmed.
    pub confirmed: u32,
    /// The shipped prior.
    pub before: f64,
    /// The prior after learning.
    pub after: f64,
    /// Its standard deviation.
    pub spread: f64,
    /// The shipped prior as it is shown.
    pub before_shown: String,
    /// The prior after learning as it is shown.
    pub after_shown: String,
}
