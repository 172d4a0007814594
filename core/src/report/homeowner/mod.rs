//! The homeowner's page: what was wrong, what was done, what to watch, when to
//! call. [`HomeownerReport`] is data in plain words; [`document`] arranges it.

mod document;

pub use document::document;

use super::document::{Meta, PageSize};
use super::parts::{ChartPart, Issuer, PhotoPart};

/// Everything the homeowner's page says.
#[derive(Clone, Debug)]
pub struct HomeownerReport {
    /// Title, date, identity.
    pub meta: Meta,
    /// Paper.
    pub page: PageSize,
    /// Who issues it.
    pub issuer: Issuer,
    /// Name of the site.
    pub site: String,
    /// The complaint in the customer's own words.
    pub told: Option<String>,
    /// How it ended, in one sentence.
    pub short: String,
    /// What was wrong: a sentence for each cause.
    pub wrong: Vec<String>,
    /// How sure that is.
    pub sure: Option<String>,
    /// What was done.
    pub done: Vec<String>,
    /// What still has to be done.
    pub open: Vec<String>,
    /// The system as a picture.
    pub picture: Option<ChartPart>,
    /// Readings that a layperson can follow: what, before, after, what it should be.
    pub readings: Vec<PlainReading>,
    /// What may be noticed and is normal.
    pub notice: Vec<String>,
    /// What the gauge should read over the seasons.
    pub season: Option<ChartPart>,
    /// What to look at, and how often.
    pub watch: Vec<String>,
    /// When to call.
    pub call: Vec<String>,
    /// The next visit.
    pub next_visit: String,
    /// Antifreeze and safety.
    pub safety: Vec<String>,
    /// One photo before and one after, if there are any.
    pub photos: Vec<PhotoPart>,
}

/// A reading in plain words.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PlainReading {
    /// What it is.
    pub label: String,
    /// As found.
    pub before: Option<String>,
    /// As left.
    pub after: Option<String>,
    /// What it should be.
    pub expected: Option<String>,
    /// Whether it is, in words.
    pub verdict: Option<String>,
}

#[cfg(test)]
mod tests;
