//! The work: its steps, what was found at their gates, its time, its proof, and
//! what to do next.

use super::proved::{begun, now};
use crate::api::Call;
use crate::api::attachments::moment;
use crate::api::report::Issue;
use crate::api::types::{AssessmentView, PlanView, StepView, TimerView};
use crate::plan::quantity::QuantityKind;
use crate::plan::{Progress, WorkPlan};
use crate::report::document::Mark;
use crate::report::service::{ProofLine, StepPart};
use crate::text::Args;
use crate::units::{Quantity, Unit, format};
use chrono::DateTime;

impl Call {
    pub(super) fn step_parts(&self, plan: &PlanView, issue: &Issue) -> Vec<StepPart> {
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
                    .chain(times(step))
                    .collect(),
                gate: step
                    .gate
                    .as_ref()
                    .map(|gate| (gate.pass.clone(), gate.otherwise.clone())),
                mark: mark(step),
                noted: self.noted(step, issue),
            })
            .collect()
    }

    /// What was found at the gate of a step, why it was left out, what it took.
    fn noted(&self, step: &StepView, issue: &Issue) -> Vec<String> {
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
                ("passed", _) => said.push(self.say("service-gate-passed")),
                ("failed", _) if step.skipped.is_none() => {
                    said.push(self.say("service-gate-not-passed"));
                }
                // What a step wants that was marked as done stands below.
                ("open", Some(false)) if step.skipped.is_none() => {
                    said.extend(gate.unread.clone());
                }
                _ => {}
            }
        }
        let timers = step.timers.iter();
        said.extend(timers.filter_map(|timer| self.timer_ran(timer, issue)));
        let met = step.wanting.is_empty();
        let (key, reason) = match (&step.skipped, &step.without) {
            (Some(reason), _) if met => (Some("service-left-out"), reason.as_str()),
            (Some(reason), _) => (Some("service-step-left-out"), reason.as_str()),
            _ if met => (None, ""),
            (None, Some(reason)) => (Some("service-step-excused"), reason.as_str()),
            (None, None) => (Some("service-step-unmet"), ""),
        };
        if let Some(key) = key {
            let wanting = step.wanting.join(" ");
            said.push(self.fill(key, &[("wanting", &wanting), ("reason", reason)]));
        }
        if let Some(note) = &step.note {
            said.push(self.fill("service-step-note", &[("note", note)]));
        }
        if let Some(parts) = &step.parts {
            said.push(self.fill("service-parts-used", &[("parts", parts)]));
        }
        said
    }

    /// When a timer was started and how long it ran, if it was.
    fn timer_ran(&self, timer: &TimerView, issue: &Issue) -> Option<String> {
        let started = DateTime::parse_from_rfc3339(timer.started_at.as_ref()?).ok()?;
        let started = moment(started.with_timezone(issue.issued.offset()));
        let key = match timer.met {
            Some(true) => "service-timer-ran",
            Some(false) => "service-timer-short",
            None => "service-timer-no-end",
        };
        let named = [
            ("label", timer.label.as_str()),
            ("started", &started),
            ("ran", timer.ran.as_deref().unwrap_or_default()),
            ("time", &timer.shown),
        ];
        Some(self.fill(key, &named))
    }

    /// Time at each step and in all.
    pub(super) fn used(&self, plan: Option<&PlanView>) -> Vec<(String, String)> {
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
            // Of a step the words are a note at it, of other work its name.
            let label = of_step.map(|step| step.text.clone());
            let label = label.or_else(|| action.text.clone());
            lines.push((label.unwrap_or_else(|| "–".to_owned()), minutes(seconds)));
        }
        if !lines.is_empty() {
            lines.push((self.say("service-time-total"), minutes(total)));
        }
        lines
    }

    pub(super) fn recommendations(
        &self,
        view: &AssessmentView,
        plan: Option<&PlanView>,
        worked: Option<&WorkPlan>,
        issue: &Issue,
    ) -> Vec<String> {
        let mut said = Vec::new();
        if let Some(plan) = plan.filter(|plan| begun(plan)) {
            let catalog = self.wording.catalog();
            for (progress, key) in [
                ("open", "service-recommend-open-steps"),
                ("unmet", "service-recommend-unmet-steps"),
            ] {
                let steps = plan.steps.iter();
                let count = steps.filter(|step| step.progress == progress).count();
                if count > 0 {
                    said.push(catalog.fill(key, &Args::new().count("count", count)));
                }
            }
            if plan.proof.iter().any(|proof| proof.verdict == "missed") {
                said.push(self.say("service-recommend-missed"));
            }
            if now(plan).any(|proof| proof.after.is_none()) {
                said.push(self.say("service-recommend-unproven"));
            }
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

/// The mark of a step; none while it is only planned.
fn mark(step: &StepView) -> Option<Mark> {
    match Progress::from_id(&step.progress) {
        Some(Progress::Done) => Some(Mark::Done),
        Some(Progress::Unmet) => Some(Mark::Unmet),
        Some(Progress::Excused) => Some(Mark::Excused),
        Some(Progress::LeftOut) => Some(Mark::LeftOut),
        _ => step.done.map(|_| Mark::NotDone),
    }
}

/// What to bring, with how much of it or which.
pub(super) fn material_lines(plan: &PlanView) -> Vec<String> {
    let lines = plan.materials.iter().map(|material| {
        let amounts = material
            .amounts
            .iter()
            .filter(|amount| amount.why.is_some());
        let amounts: Vec<String> = amounts
            .map(|amount| format!("{}: {}", amount.label, amount.value))
            .collect();
        match amounts.as_slice() {
            [] => material.label.clone(),
            told => format!("{} ({})", material.label, told.join(", ")),
        }
    });
    lines.collect()
}

pub(super) fn proof_lines(plan: &PlanView) -> Vec<ProofLine> {
    plan.proof
        .iter()
        .map(|proof| ProofLine {
            label: proof.label.clone(),
            expected: proof.expected.clone(),
            before: proof.before.clone(),
            after: proof.after.clone(),
            verdict: proof.verdict_words.clone(),
            missed: proof.verdict == "missed",
        })
        .collect()
}

/// The times that a step has to run for and that nothing else of it tells; what was started
/// is told with how long it ran.
fn times(step: &StepView) -> impl Iterator<Item = (String, String)> {
    let waiting = |timer: &&TimerView| !timer.told && timer.started_at.is_none();
    let timers = step.timers.iter().filter(waiting);
    timers.map(|timer| (timer.label.clone(), timer.shown.clone()))
}

/// A unit as it is printed; what is no symbol of a unit stands as it is.
fn unit_label(symbol: &str) -> &str {
    let known = Unit::all().find(|unit| unit.symbol() == symbol);
    match known {
        Some(unit) => unit.display(),
        None => symbol,
    }
}
