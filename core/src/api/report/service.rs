//! What the technician's service report says.

use super::super::Call;
use super::super::knowledge::knowledge;
use super::super::types::{AssessmentView, CauseView, PlanView, StepView};
use super::content::written;
use super::{Issue, signature_parts};
use crate::plan::WorkPlan;
use crate::plan::quantity::QuantityKind;
use crate::records::{Phase, Reading};
use crate::report::parts::ChartPart;
use crate::report::service::{
    CausePart, ProofLine, ReadingLine, ReasonLine, ServiceReport, StepPart, VerdictLine,
};
use crate::text::Args;
use crate::units::{Quantity, Unit, format};
use std::collections::BTreeSet;
use std::sync::Arc;

/// Causes that the report names.
const CAUSES: usize = 5;
/// A cause behind the first is argued from this probability on. Judgement; the
/// words of the report name it.
const ARGUED: f64 = 0.05;
/// What the records say of it is told by so many sentences.
const CONTEXT: usize = 3;
/// Checks that the report names.
const CHECKS: usize = 3;

impl Call {
    /// What the service report says.
    pub fn service_content(&self, issue: &Issue) -> ServiceReport {
        let answer = self.answer();
        let view = &answer.assessment;
        let plan = answer.plan.as_ref();
        let worked = self.work_plan();
        let season = self.season(worked);
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
            headline: view.headline.clone(),
            picture: Some(self.system_part()),
            verdicts: self.verdict_lines(),
            causes: causes(view),
            unexplained: view.unexplained.clone(),
            doubted: view.doubted.clone(),
            checks: check_lines(view),
            treats: of_plan(|plan| &plan.treats),
            tools: of_plan(|plan| &plan.tools),
            materials: of_plan(|plan| &plan.materials),
            steps: plan.map(|plan| self.step_parts(plan)).unwrap_or_default(),
            others: others
                .filter_map(|action| Some((action.text.clone()?, action.done)))
                .collect(),
            remarks: of_plan(|plan| &plan.remarks),
            used: self.used(plan),
            proof: plan.map(proof_lines).unwrap_or_default(),
            charts: self.charts(view, worked, season.as_ref(), super::charts::WIDTH),
            gauge: season
                .as_ref()
                .map(|season| self.gauge_by_temperature(season))
                .unwrap_or_default(),
            photos: issue.photos.clone(),
            recommendations: self.recommendations(view, plan, worked, issue),
            notes: self.file.visit.notes.clone(),
            signatures: signature_parts(&issue.signatures, self.wording.catalog()),
            assumptions: view.assumptions.clone(),
            unused: view.unused.clone(),
            sources: sources(view, plan),
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

    /// The system with its readings, and where a cause is suspected.
    fn system_part(&self) -> ChartPart {
        let (drawing, marks) = self.system_with_readings();
        let mut caption = vec![self.say("service-picture")];
        caption.extend(marks.iter().map(|mark| {
            let named = [
                ("letter", mark.view.letter.as_str()),
                ("sign", mark.view.sign.as_str()),
                ("cause", mark.view.text.as_str()),
            ];
            self.fill("service-picture-mark", &named)
        }));
        ChartPart {
            title: self.say("service-system"),
            drawing: Arc::new(drawing),
            caption: caption.join(" "),
        }
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

    /// The readings in the order taken; one as left joins the one as found at
    /// the same point, circuit and state of operation.
    fn reading_lines(&self) -> Vec<ReadingLine> {
        let alike = |a: &Reading, b: &Reading| {
            a.point() == b.point() && a.circuit == b.circuit && a.mode == b.mode
        };
        let mut pairs: Vec<(Option<&Reading>, Option<&Reading>)> = Vec::new();
        for reading in &self.file.visit.readings {
            if reading.phase == Phase::Found {
                pairs.push((Some(reading), None));
                continue;
            }
            let mut open = pairs.iter_mut().rev();
            let partner = open.find(|(found, left)| {
                left.is_none() && found.is_some_and(|found| alike(found, reading))
            });
            match partner {
                Some((_, left)) => *left = Some(reading),
                None => pairs.push((None, Some(reading))),
            }
        }
        let line = |(found, left): (Option<&Reading>, Option<&Reading>)| {
            Some(self.reading_line(found.or(left)?, found, left))
        };
        pairs.into_iter().filter_map(line).collect()
    }

    fn reading_line(
        &self,
        first: &Reading,
        found: Option<&Reading>,
        left: Option<&Reading>,
    ) -> ReadingLine {
        let named = |kind: &str, id: &str| self.say(&format!("{kind}-{id}"));
        let point = named("point", first.point().id());
        let mut instruments: Vec<String> = Vec::new();
        let mut remarks = Vec::new();
        for reading in found.into_iter().chain(left) {
            let instrument = named("instrument", reading.instrument_or_usual().id());
            if !instruments.contains(&instrument) {
                instruments.push(instrument);
            }
            if reading.is_unlikely() {
                let value = reading.value();
                let shown = format::plus_minus(value.value, 0.0, value.unit);
                remarks.push(self.fill("unlikely-value", &[("value", &shown)]));
            }
            let note = reading.note.as_ref();
            remarks.extend(note.filter(|note| !note.trim().is_empty()).cloned());
        }
        let mode = match first.mode {
            Some(mode) => named("mode", &written(&mode)),
            None => "–".to_owned(),
        };
        ReadingLine {
            point: match first.circuit {
                Some(circuit) => self.fill(
                    "point-of-circuit",
                    &[("point", &point), ("circuit", &circuit.to_string())],
                ),
                None => point,
            },
            found: found.map(Reading::text),
            left: left.map(Reading::text),
            instrument: instruments.join(", "),
            mode: match first.taken_at {
                Some(at) => format!("{mode}, {}", super::super::attachments::moment(at)),
                None => mode,
            },
            remarks,
        }
    }

    fn step_parts(&self, plan: &PlanView) -> Vec<StepPart> {
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
                noted: self.noted(step),
            })
            .collect()
    }

    /// What was found at the gate of a step, why it was left out, what it took.
    fn noted(&self, step: &StepView) -> Vec<String> {
        let mut said = Vec::new();
        if let Some(gate) = &step.gate {
            for found in &gate.criteria {
                let Some(value) = &found.value else { continue };
                let key = match found.passed {
                    Some(true) => "service-gate-found-passed",
                    Some(false) => "service-gate-found-failed",
                    None => "service-gate-found",
                };
                let named = [
                    ("label", found.label.as_str()),
                    ("value", value.as_str()),
                    ("unit", unit_label(&found.unit)),
                    ("rule", found.rule.as_str()),
                ];
                said.push(self.fill(key, &named));
            }
            match (gate.verdict.as_str(), step.done) {
                ("passed", _) | ("open", Some(true)) => said.push(self.say("service-gate-passed")),
                ("failed", _) | (_, Some(false)) => {
                    said.push(self.say("service-gate-not-passed"));
                }
                _ => {}
            }
        }
        if let Some(reason) = &step.skipped {
            said.push(self.fill("service-left-out", &[("reason", reason)]));
        }
        if let Some(parts) = &step.parts {
            said.push(self.fill("service-parts-used", &[("parts", parts)]));
        }
        said
    }

    /// Time at each step and in all.
    fn used(&self, plan: Option<&PlanView>) -> Vec<(String, String)> {
        let minutes = |seconds: f64| {
            let minutes = Unit::Minute.from_si(seconds);
            format::plus_minus(minutes, 0.0, Unit::Minute)
        };
        let mut total = 0.0;
        let mut lines = Vec::new();
        for action in &self.file.visit.actions {
            let Some(took) = action.duration else {
                continue;
            };
            let seconds = took.get().si();
            total += seconds;
            let step = action.step.as_deref();
            let of_step = plan.and_then(|plan| {
                let mut steps = plan.steps.iter();
                steps.find(|known| Some(known.id.as_str()) == step)
            });
            let label = action.text.clone();
            let label = label.or_else(|| of_step.map(|step| step.text.clone()));
            lines.push((label.unwrap_or_else(|| "–".to_owned()), minutes(seconds)));
        }
        if !lines.is_empty() {
            lines.push((self.say("service-time-total"), minutes(total)));
        }
        lines
    }

    fn recommendations(
        &self,
        view: &AssessmentView,
        plan: Option<&PlanView>,
        worked: Option<&WorkPlan>,
        issue: &Issue,
    ) -> Vec<String> {
        let mut said = Vec::new();
        let steps = || plan.into_iter().flat_map(|plan| &plan.steps);
        let begun = steps().any(|step| step.done.is_some());
        let open = steps().filter(|step| step.done != Some(true)).count();
        if begun && open > 0 {
            let args = Args::new().text("count", open.to_string());
            let catalog = self.wording.catalog();
            said.push(catalog.fill("service-recommend-open-steps", &args));
        }
        let unproven = plan.is_some_and(|plan| {
            let mut proof = plan.proof.iter();
            proof.any(|proof| proof.after.is_none())
        });
        if begun && unproven {
            said.push(self.say("service-recommend-unproven"));
        }
        if !view.doubted.is_empty() {
            said.push(self.say("service-recommend-instrument"));
        }
        if matches!(view.verdict.as_str(), "open" | "tied") && !view.checks.is_empty() {
            said.push(self.say("service-recommend-check"));
        }
        let recharged =
            worked.is_some_and(|plan| plan.sheet.get(QuantityKind::LeavePressure).is_some());
        if recharged {
            said.push(self.say("service-recommend-recheck"));
        }
        if let Some(day) = issue.next_visit {
            said.push(self.fill("service-next-visit", &[("date", &day.to_string())]));
        }
        said
    }
}

/// The leading cause with everything that speaks for and against it, the others
/// with what says most, the improbable ones by name.
fn causes(view: &AssessmentView) -> Vec<CausePart> {
    let causes = view.causes.iter().take(CAUSES).enumerate();
    causes
        .map(|(place, cause)| {
            let mut part = cause_part(cause);
            if place > 0 {
                part.context.truncate(CONTEXT);
                if cause.probability < ARGUED {
                    part.reasons.clear();
                    part.context.clear();
                }
            }
            part
        })
        .collect()
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
        .chain(graph)
        .collect();
    named.into_iter().collect()
}

/// A unit as it is printed; what is no symbol of a unit stands as it is.
fn unit_label(symbol: &str) -> &str {
    let known = Unit::all().find(|unit| unit.symbol() == symbol);
    match known {
        Some(unit) => unit.display(),
        None => symbol,
    }
}
