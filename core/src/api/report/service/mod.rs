//! What the technician's service report says.

mod causes;
mod proved;
mod readings;
mod work;

use super::content::written;
use super::{Issue, signature_parts};
use crate::api::Call;
use crate::api::attachments::moment;
use crate::api::knowledge::knowledge;
use crate::api::types::{AssessmentView, DoubtView, PlanView};
use crate::records::Signature;
use crate::report::parts::ChartPart;
use crate::report::service::{ServiceReport, VerdictLine};
use crate::text::Catalog;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Causes that the report names.
const CAUSES: usize = 5;

impl Call {
    /// What the service report says.
    pub fn service_content(&self, issue: &Issue) -> ServiceReport {
        let answer = self.answer();
        let view = &answer.assessment;
        let plan = answer.plan.as_ref();
        let worked = self.work_plan();
        let season = self.season_told(worked);
        let site = self.site_title();
        let title = self.fill("report-title", &[("site", &site)]);
        let subject = self.fill("report-subject", &[("date", &self.today.to_string())]);
        let of_plan = |of: fn(&PlanView) -> &Vec<String>| plan.map(of).cloned().unwrap_or_default();
        let actions = self.file.visit.actions.iter();
        let others = actions.filter(|action| action.step.is_none());
        ServiceReport {
            meta: self.meta(issue, title, subject),
            page: issue.page,
            issuer: issue.issuer.clone(),
            site,
            about: self.about(issue),
            complaint: self.file.visit.complaint.clone(),
            facts: self.fact_groups(),
            answers: self.answer_lines(),
            readings: self.reading_lines(),
            work: self.work_in_short(plan),
            unproved: self.unproved(plan),
            headline: view.headline.clone(),
            picture: Some(self.system_part()),
            verdicts: self.verdict_lines(),
            causes: causes::causes(view, self.wording.catalog()),
            unexplained: view.unexplained.clone(),
            doubted: view.doubted.iter().map(|one| self.doubt(one)).collect(),
            checks: causes::check_lines(view),
            treats: of_plan(|plan| &plan.treats),
            tools: of_plan(|plan| &plan.tools),
            materials: plan.map(work::material_lines).unwrap_or_default(),
            count: plan.map(|plan| plan.count.clone()).unwrap_or_default(),
            steps: plan
                .map(|plan| self.step_parts(plan, issue))
                .unwrap_or_default(),
            others: others
                .filter_map(|action| Some((action.text.clone()?, action.done)))
                .collect(),
            remarks: plan
                .map(|plan| plan.remarks.iter().map(|remark| remark.words.clone()))
                .into_iter()
                .flatten()
                .collect(),
            used: self.used(plan),
            proof: plan.map(work::proof_lines).unwrap_or_default(),
            charts: self
                .charts(view, worked, season.as_ref(), super::charts::WIDTH)
                .into_iter()
                .map(|chart| chart.part)
                .collect(),
            gauge: season
                .as_ref()
                .map(|season| self.gauge_by_temperature(season))
                .unwrap_or_default(),
            photos: issue.photos.clone(),
            recommendations: self.recommendations(view, plan, worked, issue),
            notes: self.file.visit.notes.clone(),
            signatures: signature_parts(&issue.signatures, self.wording.catalog()),
            outdated: self.outdated(issue),
            assumptions: view.assumptions.clone(),
            unused: view.unused.clone(),
            sources: sources(view, plan, self.wording.catalog()),
        }
    }

    /// The first lines: day, company, technician, system, fluid, outcome.
    fn about(&self, issue: &Issue) -> Vec<(String, String)> {
        let visit = &self.file.visit;
        let choice = |name: String| self.say(&crate::records::field::choice_key(&name));
        let fluid = self
            .file
            .system
            .fluid
            .map(|fluid| choice(written(&fluid.kind)));
        let company = match (&issue.issuer.company, &issue.issuer.phone) {
            (Some(company), Some(phone)) => Some(format!("{company}, {phone}")),
            (company, phone) => company.clone().or_else(|| phone.clone()),
        };
        [
            ("service-day", Some(self.today.to_string())),
            ("service-company", company),
            ("service-technician", visit.technician.clone()),
            ("service-unit", self.file.system.label.clone()),
            ("service-fluid", fluid),
            (
                "service-outcome",
                visit.outcome.map(|outcome| choice(written(&outcome))),
            ),
        ]
        .into_iter()
        .filter_map(|(key, value)| Some((self.say(key), value?)))
        .collect()
    }

    /// Signatures that were given before the visit was changed.
    fn outdated(&self, issue: &Issue) -> Vec<String> {
        let given = issue.signatures.iter();
        let given = given.filter(|given| issue.outdated.contains(&given.role()));
        let line = |given: &Signature| {
            let role = self.say(&format!("signature-{}", given.role().id()));
            let signed = moment(given.signed_at());
            self.fill(
                "service-signed-before",
                &[("role", &role), ("signed", &signed)],
            )
        };
        given.map(line).collect()
    }

    /// The system with its readings, and where a cause is suspected.
    fn system_part(&self) -> ChartPart {
        let (drawing, marks) = self.system_with_readings();
        let mut caption = vec![self.say("service-picture")];
        caption.extend(marks.iter().map(|mark| {
            let named = [
                ("letter", mark.view.letter.as_str()),
                ("sign", mark.view.sign.as_str()),
                ("cause", mark.view.text.as_str()),
                ("probability", mark.view.shown.as_str()),
            ];
            self.fill("service-picture-mark", &named)
        }));
        ChartPart {
            title: self.say("service-system"),
            drawing: Arc::new(drawing),
            caption: caption.join(" "),
        }
    }

    fn doubt(&self, doubt: &DoubtView) -> String {
        let values = [
            ("instrument", &*doubt.title),
            ("probability", &*doubt.shown),
        ];
        self.fill("doubted", &values)
    }

    fn verdict_lines(&self) -> Vec<VerdictLine> {
        let verdicts = self.file.visit.verdicts.iter();
        verdicts
            .map(|verdict| VerdictLine {
                cause: self.say(&format!("cause-{}", verdict.cause)),
                confirmed: verdict.confirmed,
                check: verdict
                    .by_check
                    .as_ref()
                    .map(|check| self.say(&format!("check-{check}"))),
            })
            .collect()
    }
}

/// Every source that a figure of the report or the rule graph names, once: one that a
/// figure quotes from memory is not named a second time as if it had been read.
fn sources(view: &AssessmentView, plan: Option<&PlanView>, catalog: &Catalog) -> Vec<String> {
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
    let mut named: BTreeSet<String> = found
        .chain(planned)
        .map(|figure| figure.source.clone())
        .collect();
    for source in knowledge().graph.sources() {
        let id = source.id.as_str();
        if !named.contains(&catalog.cited_from_memory(id)) {
            named.insert(catalog.cited(id));
        }
    }
    named.into_iter().collect()
}
