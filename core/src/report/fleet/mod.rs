//! The manager's report: which causes keep coming back, where, and which first
//! fix did not hold. [`FleetPicture`] is plain numbers; [`document`] words and
//! arranges them.

mod charts;
mod document;

pub use charts::{CurveFrame, CurveStep, waiting_curve};
pub use document::document;

use chrono::NaiveDate;

use super::document::{Meta, PageSize};
use super::parts::Issuer;

/// The picture with what a document needs.
#[derive(Clone, Debug)]
pub struct FleetReport {
    /// Title, date, identity.
    pub meta: Meta,
    /// Paper.
    pub page: PageSize,
    /// Who issues it.
    pub issuer: Issuer,
    /// What it says.
    pub picture: FleetPicture,
}

/// The repeat failures of a period.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct FleetPicture {
    /// First day of the period.
    pub from: NaiveDate,
    /// Last day of the period.
    pub to: NaiveDate,
    /// Systems in the records.
    pub systems: usize,
    /// Visits in the period.
    pub visits: usize,
    /// Callbacks in the period.
    pub callbacks: usize,
    /// Systems called back within the watched months from commissioning, out of
    /// those watched so long.
    pub called_back: Share,
    /// Months from commissioning over which systems are compared.
    pub watched_months: usize,
    /// Days within which the same cause at the same system counts as come back.
    pub repeat_days: usize,
    /// What all visits cost, where costs were written.
    pub cost: Option<f64>,
    /// Sign or code of the currency that costs were written in.
    pub currency: Option<String>,
    /// Causes, most frequent first.
    pub causes: Vec<FleetCause>,
    /// Fixes put to the test by time, and those after which the cause came back.
    pub first_fixes: Share,
    /// First fixes by the cause that was treated.
    pub fixes_by_cause: Vec<GroupRow>,
    /// Systems visited more than once for the same trouble.
    pub repeats: Vec<RepeatLine>,
    /// What stands out among groups, a sentence each.
    pub differences: Vec<String>,
    /// How that was looked for, in words; empty leaves the part out.
    pub differences_how: String,
    /// Callbacks by crew, season, fluid, flow centre, commissioning habit.
    pub groups: Vec<FleetGroup>,
    /// Share of systems still without a callback over the months since start-up.
    pub first_callback: Vec<SurvivalPoint>,
    /// Systems to visit again.
    pub revisit: Vec<RevisitLine>,
    /// What is to be said beside the numbers.
    pub remarks: Vec<String>,
}

/// So many out of so many, with the interval of the rate.
#[derive(Copy, Clone, PartialEq, Debug, Default)]
pub struct Share {
    /// How many.
    pub count: usize,
    /// Out of how many.
    pub of: usize,
    /// Lower end of the 95 % interval of the rate, 0 to 1.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Share {
    /// The rate, 0 to 1; none out of none.
    #[must_use]
    pub fn rate(self) -> Option<f64> {
        #[allow(clippy::cast_precision_loss)]
        (self.of > 0).then(|| self.count as f64 / self.of as f64)
    }
}

/// A cause over the period.
#[derive(Clone, PartialEq, Debug)]
pub struct FleetCause {
    /// Title.
    pub title: String,
    /// Visits that confirmed it, out of all callbacks.
    pub share: Share,
    /// What these visits cost, where costs were written.
    pub cost: Option<f64>,
}

/// Systems told apart by one thing.
#[derive(Clone, PartialEq, Debug)]
pub struct FleetGroup {
    /// What tells them apart.
    pub title: String,
    /// Its values.
    pub rows: Vec<GroupRow>,
}

/// One value of what tells systems apart.
#[derive(Clone, PartialEq, Debug)]
pub struct GroupRow {
    /// Name.
    pub name: String,
    /// Systems called back, or fixes after which the cause came back.
    pub share: Share,
    /// Probability of a difference as large by chance alone, corrected for the
    /// number of comparisons; none where it was not compared.
    pub chance: Option<f64>,
}

/// A system visited more than once.
#[derive(Clone, PartialEq, Debug)]
pub struct RepeatLine {
    /// Site and system.
    pub system: String,
    /// Visits in the period.
    pub visits: usize,
    /// What was found, visit by visit.
    pub causes: String,
    /// Day of the last visit.
    pub last: Option<NaiveDate>,
}

/// A point of the curve of time to first callback.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct SurvivalPoint {
    /// Months since start-up.
    pub months: f64,
    /// Share without a callback from here to the next point, 0 to 1.
    pub without: f64,
    /// Lower end of the 95 % interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// A system to visit again.
#[derive(Clone, PartialEq, Debug)]
pub struct RevisitLine {
    /// Site and system.
    pub system: String,
    /// Why.
    pub reason: String,
    /// Day of the last visit.
    pub last: Option<NaiveDate>,
}

#[cfg(test)]
mod tests;
