//! What a step still wants, in words, and what the steps of a plan come to.

use crate::api::steps::looked_key;
use crate::api::{ApiError, Call};
use crate::plan::{Gate, PlannedStep, Progress, Run, Want, WorkPlan};
use crate::records::Action;
use crate::text::Args;
use crate::units::{Duration, Quantity, Unit, format};
use chrono::{DateTime, Utc};

/// From here on a time is told in hours, minutes.
const IN_HOURS: f64 = 120.0;

impl Call {
    /// Why a step may not count as done; none if it may. A step that is not in the
    /// plan, or not any more, has nothing to hold it.
    pub(in crate::api) fn refusal(
        &self,
        step: &str,
        action: &Action,
        now: DateTime<Utc>,
    ) -> Option<ApiError> {
        let plan = self.work_plan()?;
        let step = plan.steps.iter().find(|known| known.id.as_str() == step)?;
        // A timer of a step that is done already does not run on.
        let now = (!action.done).then_some(now);
        let wants = step.wants(action, now);
        let gate = wants.iter().find_map(|want| match want {
            Want::Gate { gate, .. } => Some(*gate),
            Want::Timer { .. } => None,
        });
        let words: Vec<String> = wants.iter().map(|want| self.want(want)).collect();
        let number = step.number.to_string();
        let wanting = words.join(" ");
        let mut context = vec![("step", number.as_str()), ("wanting", &wanting)];
        if let Some(gate) = gate {
            let back = self.way_back(plan, gate).unwrap_or_default();
            context.push(("back", &back));
            return Some(ApiError::new("gate-not-met", &context, self.wording));
        }
        let short = !wants.is_empty();
        short.then(|| ApiError::new("timer-not-run", &context, self.wording))
    }

    /// Where to go when a gate is not passed.
    pub(super) fn way_back(&self, plan: &WorkPlan, gate: &Gate) -> Option<String> {
        let mut steps = plan.steps.iter();
        let back = steps.find(|step| step.number == gate.return_to)?;
        let args = Args::new().text("number", back.number.to_string()).text(
            "step",
            self.words(&format!("plan-step-{}", back.id.as_str())),
        );
        Some(self.wording.catalog().fill("plan-gate-back", &args))
    }

    /// What the gate or timer asks for, and what there is instead.
    pub(super) fn want(&self, want: &Want<'_>) -> String {
        let (key, args) = match want {
            Want::Gate { gate, found } => {
                let args = Args::new()
                    .text("label", self.words(&looked_key(gate.looked)))
                    .text("rule", self.gate_rule(gate));
                match found {
                    None => ("plan-want-gate-empty", args),
                    Some(found) => {
                        let found = format::as_written(found.value, 0.0, found.unit);
                        ("plan-want-gate-failed", args.text("found", found))
                    }
                }
            }
            Want::Timer { timer, run } => {
                let kind = timer.kind.id();
                let args = Args::new()
                    .text("label", self.words(&format!("plan-timer-{kind}")))
                    .text("time", self.limit(&timer.time));
                match run {
                    Run::NotStarted => ("plan-want-timer-not-started", args),
                    Run::EndUnknown(_) => ("plan-want-timer-end-unknown", args),
                    Run::For(ran) => (
                        "plan-want-timer-short",
                        args.text("ran", ran_words(*ran, false)),
                    ),
                }
            }
        };
        self.wording.catalog().fill(key, &args)
    }

    /// What a gate must find, with its limit.
    pub(super) fn gate_rule(&self, gate: &Gate) -> String {
        let rule = self.words(&format!("plan-rule-{}", gate.rule.id()));
        format!("{rule} {}", self.limit(&gate.limit))
    }

    /// How far a step is, and what was noted of it.
    pub(in crate::api) fn progress(&self, step: &PlannedStep) -> (Progress, Option<&Action>) {
        let actions = self.file.visit.actions.iter().rev();
        let mut actions = actions.filter(|known| known.step.as_deref() == Some(step.id.as_str()));
        let action = actions.next();
        (
            action.map_or(Progress::Open, |action| step.progress(action)),
            action,
        )
    }

    /// How far the steps are, all together: app and report say it in the same words.
    pub(super) fn step_count(&self, plan: &WorkPlan) -> String {
        let catalog = self.wording.catalog();
        let steps = plan.steps.iter().map(|step| self.progress(step).0);
        let steps: Vec<Progress> = steps.collect();
        let count = |wanted| steps.iter().filter(|known| **known == wanted).count();
        let all = steps.len().to_string();
        let said = |(progress, key): (Progress, &str)| {
            let count = count(progress);
            let args = Args::new().count("count", count).text("all", all.as_str());
            // What is done is always told, the rest where there is some.
            let told = count > 0 || progress == Progress::Done;
            told.then(|| catalog.fill(key, &args))
        };
        let said = [
            (Progress::Done, "plan-count-done"),
            (Progress::LeftOut, "plan-count-left-out"),
            (Progress::Excused, "plan-count-excused"),
            (Progress::Unmet, "plan-count-unmet"),
            (Progress::Open, "plan-count-open"),
        ]
        .into_iter()
        .filter_map(said);
        said.collect::<Vec<_>>().join(", ")
    }
}

/// A time that ran. One that was too short is never rounded up to what was asked
/// for, and one that was long enough not down.
pub(in crate::api) fn ran_words(ran: Duration, met: bool) -> String {
    let round = if met { f64::round } else { f64::floor };
    let minutes = round(Unit::Minute.from_si(ran.si()));
    if minutes < IN_HOURS {
        return format::as_written(minutes, 0.0, Unit::Minute);
    }
    let hours = round(Unit::Hour.from_si(ran.si()) * 10.0) / 10.0;
    format::as_written(hours, 0.0, Unit::Hour)
}
