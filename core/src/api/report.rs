//! The reports of a call.

use super::knowledge::{answer_key, knowledge};
use super::types::{AssessmentView, CauseView, PlanView};
use super::{ApiError, Call, Engine};
use crate::records::field::{FieldGroup, FieldValue, TABLE};
use crate::records::{Instrument, Reading};
use crate::report::document::{Meta, PageSize};
use crate::report::service::{
    self, CausePart, ProofLine, ReadingLine, ReasonLine, ServiceReport, StepPart,
};
use crate::report::{ReportError, file, to_pdf};
use crate::text::Args;
use crate::units::format;
use chrono::{DateTime, Utc};
use std::collections::BTreeSet;
use std::path::Path;

/// Causes that the report names.
const CAUSES: usize = 5;
/// Checks that the report names.
const CHECKS: usize = 3;

impl Call {
    /// The service report as PDF. The time is the moment of issue.
    ///
    /// # Errors
    /// [`ReportError`].
    pub fn service_report(
        &self,
        issued: DateTime<Utc>,
        page: PageSize,
    ) -> Result<Vec<u8>, ReportError> {
        let content = self.service_content(issued, page);
        let catalog = self.wording.catalog();
        to_pdf(
            &service::document(&content, catalog),
            &service::words(catalog),
        )
    }

    /// What the service report says.
    pub fn service_content(&self, issued: DateTime<Utc>, page: PageSize) -> ServiceReport {
        let catalog = self.wording.catalog();
        let answer = self.answer();
        let view = &answer.assessment;
        let site = self.site_title();
        let day = self.today.to_string();
        let subject = Args::new().text("date", day.as_str());
        let foot = Args::new()
            .text("site", site.as_str())
            .text("date", day.as_str());
        ServiceReport {
            meta: Meta {
                title: catalog.fill("report-title", &Args::new().text("site", site.as_str())),
                author: self.file.visit.technician.clone().unwrap_or_default(),
                subject: catalog.fill("report-subject", &subject),
                language: self.wording.language.tag().to_owned(),
                date: issued.fixed_offset(),
                id: format!("{site} {day}"),
                running_head: site.clone(),
                running_foot: catalog.fill("report-foot", &foot),
            },
            page,
            site,
            complaint: self.file.visit.complaint.clone(),
            facts: self.fact_groups(),
            answers: self.answer_lines(),
            readings: self
                .file
                .visit
                .readings
                .iter()
                .map(|r| self.reading_line(r))
                .collect(),
            headline: view.headline.clone(),
            causes: view.causes.iter().take(CAUSES).map(cause_part).collect(),
            unexplained: view.unexplained.clone(),
            doubted: view.doubted.clone(),
            checks: check_lines(view),
            treats: answer
                .plan
                .as_ref()
                .map(|plan| plan.treats.clone())
                .unwrap_or_default(),
            tools: answer
                .plan
                .as_ref()
                .map(|plan| plan.tools.clone())
                .unwrap_or_default(),
            materials: answer
                .plan
                .as_ref()
                .map(|plan| plan.materials.clone())
                .unwrap_or_default(),
            steps: answer.plan.as_ref().map(step_parts).unwrap_or_default(),
            remarks: answer
                .plan
                .as_ref()
                .map(|plan| plan.remarks.clone())
                .unwrap_or_default(),
            proof: answer.plan.as_ref().map(proof_lines).unwrap_or_default(),
            assumptions: view.assumptions.clone(),
            sources: sources(view, answer.plan.as_ref()),
        }
    }

    fn site_title(&self) -> String {
        match self.file.site.name.trim() {
            "" => self.wording.catalog().text("site-without-name"),
            name => name.to_owned(),
        }
    }

    fn fact_groups(&self) -> Vec<(String, Vec<(String, String)>)> {
        let catalog = self.wording.catalog();
        FieldGroup::ALL
            .into_iter()
            .filter(|group| !matches!(group, FieldGroup::Means))
            .map(|group| {
                let facts = TABLE.iter().filter(|field| field.group == group);
                let known =
                    facts.filter(|field| !matches!(field.id, "site.name" | "visit.complaint"));
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
        super::forms::value_text(value, self.wording.catalog())
    }

    fn answer_lines(&self) -> Vec<(String, String)> {
        let catalog = self.wording.catalog();
        let line = |answer: &crate::records::Answer| {
            let level = serde_json::to_value(answer.is).ok();
            let level = level
                .as_ref()
                .and_then(|name| name.as_str())
                .unwrap_or_default();
            let finding = catalog.text(&answer_key(&answer.finding));
            (finding, catalog.text(&format!("answer-{level}")))
        };
        self.file.visit.answers.iter().map(line).collect()
    }

    fn reading_line(&self, reading: &Reading) -> ReadingLine {
        let catalog = self.wording.catalog();
        let named = |kind: &str, id: &str| catalog.text(&format!("{kind}-{id}"));
        let value = reading.value();
        let point = named("point", reading.point().id());
        let instrument: Instrument = reading.instrument_or_usual();
        let name = |value: serde_json::Result<serde_json::Value>| {
            value
                .ok()
                .and_then(|value| value.as_str().map(str::to_owned))
                .unwrap_or_default()
        };
        ReadingLine {
            point: match reading.circuit {
                Some(circuit) => {
                    let args = Args::new()
                        .text("point", point)
                        .text("circuit", circuit.to_string());
                    catalog.fill("point-of-circuit", &args)
                }
                None => point,
            },
            value: reading.text(),
            instrument: named("instrument", instrument.id()),
            mode: match reading.mode {
                Some(mode) => named("mode", &name(serde_json::to_value(mode))),
                None => "–".to_owned(),
            },
            phase: named("phase", &name(serde_json::to_value(reading.phase))),
            warning: reading.is_unlikely().then(|| {
                let shown = format::plus_minus(value.value, 0.0, value.unit);
                catalog.fill("unlikely-value", &Args::new().text("value", shown))
            }),
        }
    }
}

impl Engine {
    /// Writes the service report of a visit to a path, whole or not at all.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn save_service_report(&self, visit: &str, path: &Path) -> Result<(), ApiError> {
        let bytes = self.service_report(visit)?;
        file::write_whole(path, &bytes).map_err(|error| {
            ApiError::new(
                "report-not-written",
                &[("detail", &error.to_string())],
                self.wording(),
            )
        })
    }

    /// The service report of a visit as PDF.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn service_report(&self, visit: &str) -> Result<Vec<u8>, ApiError> {
        let call = self.call(visit)?;
        call.service_report(self.surroundings.now(), self.page())
            .map_err(|error| {
                ApiError::new(
                    "report-failed",
                    &[("detail", &error.to_string())],
                    self.wording(),
                )
            })
    }

    /// A file name that a person can file, for the service report of a visit.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn service_report_name(&self, visit: &str) -> Result<String, ApiError> {
        let call = self.call(visit)?;
        let args = Args::new()
            .text("site", call.site_title())
            .text("date", call.today.to_string());
        let catalog = self.wording().catalog();
        let name = catalog.fill("report-file-name", &args);
        Ok(file::safe_name(
            &name,
            "pdf",
            &catalog.text("service-report"),
        ))
    }
}

fn cause_part(cause: &CauseView) -> CausePart {
    CausePart {
        title: cause.title.clone(),
        probability: cause.shown.clone(),
        reasons: cause
            .reasons
            .iter()
            .map(|reason| ReasonLine {
                found: reason.found.clone(),
                weight: reason.shown.clone(),
                path: reason.path.join(" "),
                figures: reason.figures.as_ref().map(|figures| {
                    let parts = figures.measured.iter().chain(&figures.expected);
                    parts.cloned().collect::<Vec<_>>().join("; ")
                }),
            })
            .collect(),
        context: cause.context.clone(),
    }
}

fn check_lines(view: &AssessmentView) -> Vec<(String, String)> {
    let checks = view.checks.iter().take(CHECKS);
    checks
        .map(|check| {
            (
                check.title.clone(),
                format!("{} ({})", check.how, check.shown),
            )
        })
        .collect()
}

fn step_parts(plan: &PlanView) -> Vec<StepPart> {
    plan.steps
        .iter()
        .map(|step| StepPart {
            stage: step.stage.clone(),
            text: step.text.clone(),
            cautions: step
                .cautions
                .iter()
                .map(|caution| caution.text.clone())
                .collect(),
            quantities: step
                .quantities
                .iter()
                .map(|quantity| (quantity.label.clone(), quantity.value.clone()))
                .collect(),
            gate: step
                .gate
                .as_ref()
                .map(|gate| (gate.pass.clone(), gate.otherwise.clone())),
            done: step.done,
        })
        .collect()
}

fn proof_lines(plan: &PlanView) -> Vec<ProofLine> {
    plan.proof
        .iter()
        .map(|proof| ProofLine {
            label: proof.label.clone(),
            expected: proof.expected.clone(),
            before: proof.before.clone(),
            after: proof.after.clone(),
        })
        .collect()
}

/// Every source that a figure of the report names, once.
fn sources(view: &AssessmentView, plan: Option<&PlanView>) -> Vec<String> {
    let reasons = view
        .causes
        .iter()
        .take(CAUSES)
        .flat_map(|cause| &cause.reasons);
    let found = reasons.filter_map(|reason| reason.figures.as_ref());
    let steps = plan.into_iter().flat_map(|plan| &plan.steps);
    let planned = steps
        .flat_map(|step| &step.quantities)
        .filter_map(|quantity| quantity.why.as_ref());
    let graph = knowledge()
        .graph
        .sources()
        .iter()
        .map(|source| source.citation.clone());
    let named: BTreeSet<String> = found
        .chain(planned)
        .map(|figure| figure.source.clone())
        .collect();
    named.into_iter().chain(graph).collect()
}
