//! Visits, facts and readings as they are shown and entered.

use super::FigureView;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// One line of the list of visits.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct VisitLine {
    /// Identifier of the visit.
    pub id: String,
    /// Name of the site.
    pub site: String,
    /// Day of the visit, `YYYY-MM-DD`.
    pub date: Option<String>,
    /// The complaint.
    pub complaint: Option<String>,
    /// How it ended, in words; none while open.
    pub outcome: Option<String>,
    /// Identifier of its system.
    pub system: String,
    /// Whether it belongs to the invented demonstration company.
    pub demo: bool,
}

/// A new visit.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
pub struct NewVisit {
    /// Name of the site.
    pub site: String,
    /// The complaint, if already known.
    pub complaint: Option<String>,
    /// An earlier visit whose site and system this one is at.
    pub same_system_as: Option<String>,
}

/// A visit with everything entered so far.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct VisitView {
    /// Identifier.
    pub id: String,
    /// Name of the site, or a stand-in.
    pub title: String,
    /// Day of the visit, `YYYY-MM-DD`.
    pub date: Option<String>,
    /// The complaint.
    pub complaint: Option<String>,
    /// Facts of site, system, commissioning and visit.
    pub groups: Vec<FieldGroupView>,
    /// What can be answered without a number, in groups.
    pub questions: Vec<QuestionGroupView>,
    /// What has been read.
    pub readings: Vec<ReadingView>,
    /// Where something can be read.
    pub points: Vec<PointView>,
    /// What was read at the same system on other visits, last first.
    pub earlier: Vec<EarlierReading>,
    /// The visit to the same system before this one.
    pub last: Option<LastVisit>,
    /// Whether a step of the work plan was taken up.
    pub work_begun: bool,
    /// The last entry in words, if it can be taken back.
    pub undo: Option<String>,
    /// Sites already kept under a name or address like this one's.
    pub similar: Vec<SimilarSite>,
    /// Causes found true or false.
    pub verdicts: Vec<VerdictView>,
    /// That it is signed, and what that holds, in words; none while nobody signed.
    pub signed: Option<String>,
    /// What is typed and not kept yet.
    pub drafts: Vec<DraftView>,
}

/// The visit to the same system before this one, in short.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct LastVisit {
    /// Identifier.
    pub visit: String,
    /// Its day, `YYYY-MM-DD`.
    pub date: Option<String>,
    /// Causes that were confirmed, in words.
    pub found: Vec<String>,
    /// How it ended, in words; none while open.
    pub outcome: Option<String>,
    /// The last reading of the gauge at rest.
    pub pressure: Option<String>,
}

/// What is typed at one place and not kept yet.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct DraftView {
    /// Where, by the interface's own name.
    pub place: String,
    /// As the interface wrote it.
    pub text: String,
}

/// A cause found true or false.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct VerdictView {
    /// Identifier of the cause.
    pub cause: String,
    /// Its title.
    pub title: String,
    /// Whether it was there.
    pub confirmed: bool,
    /// Identifier of the check that decided it.
    pub by_check: Option<String>,
    /// Title of that check.
    pub check: Option<String>,
}

/// What is to be kept of a cause.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize, TS)]
#[ts(export)]
#[serde(deny_unknown_fields)]
pub struct VerdictEntry {
    /// Identifier of the cause.
    pub cause: String,
    /// Whether it was there; none to leave it open again.
    pub confirmed: Option<bool>,
    /// Identifier of the check that decided it.
    pub by_check: Option<String>,
}

/// A reading of another visit at the same system.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct EarlierReading {
    /// Identifier of the point.
    pub point: String,
    /// Day of that visit, `YYYY-MM-DD`.
    pub date: Option<String>,
    /// The value to read, with unit and what it is uncertain by.
    pub shown: String,
    /// `found` or `left`.
    pub phase: String,
    /// Which circuit, from 1.
    pub circuit: Option<u32>,
}

/// A site kept before under a like name or address.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct SimilarSite {
    /// Its last visit.
    pub visit: String,
    /// Its name.
    pub site: String,
    /// Its address.
    pub address: Option<String>,
    /// Day of that visit, `YYYY-MM-DD`.
    pub date: Option<String>,
}

/// A usual system to start from.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct TemplateView {
    /// Identifier.
    pub id: String,
    /// What it is.
    pub label: String,
    /// What it holds, in a sentence.
    pub note: String,
}

/// Questions that belong together.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct QuestionGroupView {
    /// Identifier.
    pub id: String,
    /// Label.
    pub label: String,
    /// `symptom` (told by the customer) or `observation` (seen, heard, felt).
    pub sort: String,
    /// Whether its questions show at once.
    pub open: bool,
    /// The questions.
    pub questions: Vec<QuestionView>,
}

/// A group of fields.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FieldGroupView {
    /// Identifier.
    pub id: String,
    /// Label.
    pub label: String,
    /// Its fields.
    pub fields: Vec<FieldView>,
}

/// What a field holds.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum FieldKindView {
    /// Free text.
    Text,
    /// `yes` or `no`.
    Flag,
    /// `YYYY-MM-DD`.
    Date,
    /// A whole number.
    Count,
    /// A number with a unit.
    Measure {
        /// Units offered, the usual one first.
        units: Vec<UnitView>,
        /// Whether it can be below zero.
        signed: bool,
    },
    /// One of these.
    Choice {
        /// The choices.
        choices: Vec<ChoiceView>,
    },
}

/// A unit offered beside a field.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct UnitView {
    /// What to send back.
    pub symbol: String,
    /// What to show.
    pub label: String,
}

/// One choice.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ChoiceView {
    /// What to send back.
    pub value: String,
    /// What to show.
    pub label: String,
}

/// A fact as it stands.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FieldView {
    /// Identifier.
    pub id: String,
    /// Label.
    pub label: String,
    /// Whether it belongs to the short form.
    pub quick: bool,
    /// What it holds.
    pub kind: FieldKindView,
    /// The value to edit: text, number without unit, choice, `yes`/`no`, date.
    pub value: Option<String>,
    /// The unit of the value.
    pub unit: Option<String>,
    /// The value to read, with unit.
    pub shown: Option<String>,
}

/// A change of one fact. No text makes it unknown.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
pub struct FieldEntry {
    /// Identifier of the field.
    pub id: String,
    /// What was typed or chosen.
    pub text: Option<String>,
    /// The unit beside the field.
    pub unit: Option<String>,
}

/// Something to be answered without a number: a symptom or an observation.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct QuestionView {
    /// Identifier of the finding.
    pub finding: String,
    /// Title.
    pub label: String,
    /// `symptom` (told by the customer) or `observation` (seen, heard, felt).
    pub sort: String,
    /// The answers there are, with labels.
    pub answers: Vec<ChoiceView>,
    /// The answer given.
    pub answer: Option<String>,
}

/// A place where something can be read.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PointView {
    /// Identifier.
    pub id: String,
    /// Label.
    pub label: String,
    /// Identifier of its group in the order of proof.
    pub group: String,
    /// Label of the group.
    pub group_label: String,
    /// Units offered, the usual one first.
    pub units: Vec<UnitView>,
    /// Instruments offered, the usual one first.
    pub instruments: Vec<ChoiceView>,
    /// States of operation offered.
    pub modes: Vec<ChoiceView>,
    /// Whether it is among the few that are read first at every call.
    pub first: bool,
    /// Whether the reading belongs to one circuit.
    pub per_circuit: bool,
    /// Whether it can be below zero.
    pub signed: bool,
}

/// A reading as it stands.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ReadingView {
    /// Identifier.
    pub id: String,
    /// Identifier of the point.
    pub point: String,
    /// Label of the point.
    pub label: String,
    /// The value to edit.
    pub value: String,
    /// Symbol of its unit.
    pub unit: String,
    /// The value to read, with unit and what it is uncertain by.
    pub shown: String,
    /// Identifier of the instrument.
    pub instrument: String,
    /// Label of the instrument.
    pub instrument_label: String,
    /// Identifier of the state of operation.
    pub mode: Option<String>,
    /// Label of the state of operation.
    pub mode_label: Option<String>,
    /// `found` or `left`.
    pub phase: String,
    /// Which circuit, from 1.
    pub circuit: Option<u32>,
    /// A word of warning when the value is possible but surprising.
    pub warning: Option<String>,
    /// Whose accuracy stands behind it.
    pub why: FigureView,
}

/// A reading as it is entered.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
pub struct ReadingEntry {
    /// Identifier of the reading to change; none for a new one.
    pub id: Option<String>,
    /// Identifier of the point.
    pub point: String,
    /// What was typed.
    pub text: String,
    /// The unit beside the field.
    pub unit: String,
    /// Accuracy as typed, if stated.
    pub accuracy: Option<String>,
    /// Identifier of the instrument, if not the usual one.
    pub instrument: Option<String>,
    /// Identifier of the state of operation.
    pub mode: Option<String>,
    /// `found` or `left`.
    pub phase: String,
    /// Which circuit, from 1, as typed.
    pub circuit: Option<String>,
}

/// Which report, and how.
#[derive(Clone, PartialEq, Debug, Default, Deserialize, TS)]
#[ts(export)]
pub struct ReportRequest {
    /// `technician` or `homeowner`.
    pub reader: String,
    /// Tag of the language; the language of the screen if not given.
    pub language: Option<String>,
    /// `letter` or `a4`.
    pub paper: Option<String>,
    /// Day of the next visit, `YYYY-MM-DD`, if one is agreed.
    pub next_visit: Option<String>,
}
