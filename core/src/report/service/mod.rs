//! The technician's service report: what it says, and in which order.
//!
//! [`ServiceReport`] is data in the reader's words and units; whoever makes it
//! has the store and the engine. [`document`] only arranges it.

mod document;
mod proof;
mod steps;

pub use document::document;

use crate::text::Catalog;

use super::document::{Mark, Meta, PageSize};
use super::parts::{ChartPart, Issuer, PhotoPart, SignaturePart};
use super::words::Words;

/// Everything a service report says.
#[derive(Clone, Debug)]
pub struct ServiceReport {
    /// Title, date, identity.
    pub meta: Meta,
    /// Paper.
    pub page: PageSize,
    /// Who issues it.
    pub issuer: Issuer,
    /// Name of the site.
    pub site: String,
    /// Day, technician, system, outcome: label and value.
    pub about: Vec<(String, String)>,
    /// The complaint in the customer's words.
    pub complaint: Option<String>,
    /// Groups of known facts: label of the group, then label and value of each.
    pub facts: Vec<(String, Vec<(String, String)>)>,
    /// Answers to findings: finding and answer.
    pub answers: Vec<(String, String)>,
    /// Readings.
    pub readings: Vec<ReadingLine>,
    /// How the visit ended and how far the work is; none before it was begun.
    pub work: Option<String>,
    /// What of the work is not proved.
    pub unproved: Vec<String>,
    /// The answer in one sentence.
    pub headline: String,
    /// The system as a picture, with its readings.
    pub picture: Option<ChartPart>,
    /// What was decided by a check: sentences.
    pub verdicts: Vec<VerdictLine>,
    /// Causes worth naming, most probable first.
    pub causes: Vec<CausePart>,
    /// What the causes leave unexplained.
    pub unexplained: Vec<String>,
    /// Instruments that may not tell the truth.
    pub doubted: Vec<String>,
    /// Checks still worth making: title, and what it brings.
    pub checks: Vec<(String, String)>,
    /// What the plan treats.
    pub treats: Vec<String>,
    /// Tools.
    pub tools: Vec<String>,
    /// Materials.
    pub materials: Vec<String>,
    /// How far the steps are.
    pub count: String,
    /// The steps of the correction.
    pub steps: Vec<StepPart>,
    /// What was done besides the plan, and whether it was finished.
    pub others: Vec<(String, bool)>,
    /// What is to be said beside the steps.
    pub remarks: Vec<String>,
    /// Parts, materials and time used: label and value.
    pub used: Vec<(String, String)>,
    /// Readings that prove the work: label, expected, before, after.
    pub proof: Vec<ProofLine>,
    /// Charts.
    pub charts: Vec<ChartPart>,
    /// Loop temperatures, and what the gauge should read at each in half a year.
    pub gauge: Vec<(String, String)>,
    /// Photos.
    pub photos: Vec<PhotoPart>,
    /// What should follow.
    pub recommendations: Vec<String>,
    /// Notes of the technician.
    pub notes: Option<String>,
    /// Signatures, and places for those not given.
    pub signatures: Vec<SignaturePart>,
    /// Signatures that were given before the record was changed.
    pub outdated: Vec<String>,
    /// What was assumed for want of a record.
    pub assumptions: Vec<String>,
    /// Readings that could not be used, and why.
    pub unused: Vec<String>,
    /// Sources that the figures rest on.
    pub sources: Vec<String>,
}

/// One reading, as found and as left.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ReadingLine {
    /// Label of the point, with the circuit if it has one.
    pub point: String,
    /// Value as found, with unit and uncertainty.
    pub found: Option<String>,
    /// Value as left, with unit and uncertainty.
    pub left: Option<String>,
    /// Instrument.
    pub instrument: String,
    /// State of operation, and the time where it was written.
    pub mode: String,
    /// Words of warning, where a value is surprising, and notes.
    pub remarks: Vec<String>,
}

/// A cause decided by a check.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct VerdictLine {
    /// The cause.
    pub cause: String,
    /// Whether it was there.
    pub confirmed: bool,
    /// The check that decided it.
    pub check: Option<String>,
}

/// A cause with its reasons.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct CausePart {
    /// Title.
    pub title: String,
    /// Probability as shown.
    pub probability: String,
    /// Reasons, strongest first.
    pub reasons: Vec<ReasonLine>,
    /// What of system and commissioning raises or lowers it.
    pub context: Vec<String>,
}

/// A reason for or against a cause.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ReasonLine {
    /// What was found.
    pub found: String,
    /// Weight as shown.
    pub weight: String,
    /// How the cause leads to it, in words.
    pub path: String,
    /// What was measured and what was to be expected, in words.
    pub figures: Option<String>,
}

/// A step of the correction.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct StepPart {
    /// Label of its stage.
    pub stage: String,
    /// What to do.
    pub text: String,
    /// Cautions that stand at it.
    pub cautions: Vec<String>,
    /// Quantities: label and value.
    pub quantities: Vec<(String, String)>,
    /// When to go on, and what to do otherwise.
    pub gate: Option<(String, String)>,
    /// Whether it was done; none while it is only planned.
    pub mark: Option<Mark>,
    /// What was noted at it: results of its gate, why it was left out.
    pub noted: Vec<String>,
}

/// A reading that proves the work.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ProofLine {
    /// Label of the point.
    pub label: String,
    /// What it should read.
    pub expected: Option<String>,
    /// What it read as found.
    pub before: Option<String>,
    /// What it reads as left.
    pub after: Option<String>,
    /// Whether that is as it should be, in words.
    pub verdict: String,
    /// Whether it is told with emphasis.
    pub missed: bool,
}

/// The few words that the page maker sets, from a catalog.
pub fn words(catalog: &Catalog) -> Words {
    Words {
        page_of: catalog.text("page-of"),
        caution: catalog.text("page-caution"),
        note: catalog.text("page-note"),
        done: catalog.text("page-done"),
        not_done: catalog.text("page-not-done"),
        not_applied: catalog.text("page-not-applied"),
        left_out: catalog.text("page-left-out"),
        unmet: catalog.text("page-unmet"),
        excused: catalog.text("page-excused"),
        continued: catalog.text("page-continued"),
        no_rows: catalog.text("page-no-rows"),
        date: catalog.text("page-date"),
    }
}

/// What a file says about itself, for the tests of all kinds of report.
#[cfg(test)]
pub(super) fn test_meta() -> Meta {
    Meta {
        title: "Report".to_owned(),
        author: "Invented company".to_owned(),
        subject: "Invented call".to_owned(),
        language: "en".to_owned(),
        date: chrono::DateTime::from_timestamp(1_788_000_000, 0)
            .unwrap_or_default()
            .fixed_offset(),
        id: "test".to_owned(),
        running_head: String::new(),
        running_foot: String::new(),
    }
}

#[cfg(test)]
mod tests;
