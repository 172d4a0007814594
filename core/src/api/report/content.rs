//! What every report of a call takes from it.

use super::super::Call;
use super::super::knowledge::answer_key;
use super::Issue;
use crate::plan::ProofTime;
use crate::records::field::{FieldGroup, FieldValue, TABLE};
use crate::records::{Phase, Reading, ReadingPoint, name_of};
use crate::report::document::Meta;
use crate::text::Args;
use serde::Serialize;

impl Call {
    pub(super) fn site_title(&self) -> String {
        match self.file.site.name.trim() {
            "" => self.wording.catalog().text("site-without-name"),
            name => name.to_owned(),
        }
    }

    pub(super) fn say(&self, key: &str) -> String {
        self.wording.catalog().text(key)
    }

    pub(super) fn fill(&self, key: &str, values: &[(&'static str, &str)]) -> String {
        let args = values
            .iter()
            .fold(Args::new(), |args, (name, value)| args.text(name, *value));
        self.wording.catalog().fill(key, &args)
    }

    /// What a report says about itself.
    pub(super) fn meta(&self, issue: &Issue, title: String, subject: String) -> Meta {
        let site = self.site_title();
        let day = self.today.to_string();
        let author = issue.issuer.company.clone();
        Meta {
            title,
            author: author
                .or_else(|| self.file.visit.technician.clone())
                .unwrap_or_default(),
            subject,
            language: self.wording.language.tag().to_owned(),
            date: issue.issued,
            id: issue.id.clone().unwrap_or_else(|| format!("{site} {day}")),
            running_foot: self.fill("report-foot", &[("site", &site), ("date", &day)]),
            running_head: site,
        }
    }

    /// The latest reading of a point: by its time where it has one, else the one
    /// that was entered last. One of the whole loop goes before one of a circuit.
    pub(in crate::api) fn latest(
        &self,
        point: ReadingPoint,
        phase: Option<Phase>,
    ) -> Option<&Reading> {
        let wanted =
            |r: &&Reading| r.point() == point && phase.is_none_or(|phase| r.phase == phase);
        latest_of(self.file.visit.readings.iter().filter(wanted))
    }

    /// The latest reading of a point as it was left, of those that prove the work
    /// or of those that were taken on a later day.
    pub(in crate::api) fn as_left(&self, point: ReadingPoint, when: ProofTime) -> Option<&Reading> {
        let readings = self.file.visit.readings.iter();
        let left = readings.filter(|r| r.point() == point && r.phase == Phase::Left);
        let left: Vec<&Reading> = left.collect();
        latest_of(when.of(&left, self.today).into_iter())
    }

    pub(super) fn fact_groups(&self) -> Vec<(String, Vec<(String, String)>)> {
        let catalog = self.wording.catalog();
        FieldGroup::ALL
            .into_iter()
            .filter(|group| !matches!(group, FieldGroup::Means))
            .map(|group| {
                let facts = TABLE.iter().filter(|field| field.group == group);
                // What stands elsewhere in the report.
                let known = facts.filter(|field| {
                    !matches!(field.id, "site.name" | "visit.complaint" | "visit.notes")
                });
                let lines = known.filter_map(|field| {
                    let label = catalog.text(&format!("field-{}", field.id.replace('.', "-")));
                    Some((label, self.fact_text(&field.read(&self.file)?)))
                });
                (
                    catalog.text(&format!("group-{}", group.id())),
                    lines.collect(),
                )
            })
            .collect()
    }

    fn fact_text(&self, value: &FieldValue) -> String {
        super::super::forms::value_text(value, self.wording.catalog())
    }

    pub(super) fn answer_lines(&self) -> Vec<(String, String)> {
        let line = |answer: &crate::records::Answer| {
            let finding = self.say(&answer_key(&answer.finding));
            (
                finding,
                self.say(&format!("answer-{}", written(&answer.is))),
            )
        };
        self.file.visit.answers.iter().map(line).collect()
    }
}

fn latest_of<'a>(readings: impl Iterator<Item = &'a Reading> + Clone) -> Option<&'a Reading> {
    let whole = readings.clone().filter(|r| r.circuit.is_none());
    whole.reduce(later).or_else(|| readings.reduce(later))
}

fn later<'a>(before: &'a Reading, next: &'a Reading) -> &'a Reading {
    match (before.taken_at, next.taken_at) {
        (Some(was), Some(is)) if is < was => before,
        _ => next,
    }
}

/// The written name of an enumeration value.
pub(super) fn written<T: Serialize>(value: &T) -> String {
    name_of(value).unwrap_or_default()
}
