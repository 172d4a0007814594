//! What a step still wants, in words, and what the steps of a plan come to.

use crate::api::steps::looked_key;
use crate::api::{ApiError, Call};
use crate::plan::{Gate, PlannedStep, Progress, Run, Want, WorkPlan};
use crate::records::Action;
use crate::text::{Args, first_sentence};
use crate::units::{Duration, Quantity, Unit, format};
use chrono::{DateTime, Utc};

/// From here on a time is told in hours, minutes.
const IN_HOURS: f64 = 120.0;
/// So many steps that come first are named where one is refused.
const EARLIER: usize = 2;

impl Call {
    /// Why a step may not count as done; none if it may. A step that is not in the
    /// plan, or not any more, has nothing to hold it.
    pub(in crate::api) fn refusal(
        &self,
        step: &str,
        action: &Action,
        now: DateTime<Utc>,
    ) -> Option<ApiError> {
        if let Some(refusal) = self.unread_caution(step, action) {
            return Some(refusal);
        }
        let plan = self.work_plan()?;
        let step = planned(plan, step)?;
        if let Some(refusal) = self.earlier_step(plan, step) {
            return Some(refusal);
        }
        // A timer of a step that is done already does not run on.
        let now = (!action.done).then_some(now);
        let mut wants = step.wants(action, now);
        wants.retain(|want| !matches!(want, Want::Earlier(_)));
        let failed = wants.iter().find_map(|want| match want {
            Want::Gate { gate, found } => found.map(|_| *gate),
            Want::Timer { .. } | Want::Earlier(_) => None,
        });
        let number = step.number.to_string();
        // Only what was read and does not pass sends anybody back.
        if let Some(gate) = failed {
            let words: Vec<String> = wants.iter().map(|want| self.want(want)).collect();
            let wanting = words.join(" ");
            let back = self.way_back(plan, gate).unwrap_or_default();
            let context = [
                ("step", number.as_str()),
                ("wanting", &wanting),
                ("back", &back),
            ];
            return Some(ApiError::new("gate-not-met", &context, self.wording));
        }
        let unread = self.unread(&step.gate, action);
        let code = match &unread {
            Some(_) => "gate-not-read",
            None => "timer-not-run",
        };
        let timers = wants
            .iter()
            .filter(|want| matches!(want, Want::Timer { .. }));
        let timers = timers.map(|want| self.want(want));
        let words: Vec<String> = unread.into_iter().chain(timers).collect();
        let wanting = words.join(" ");
        let context = [("step", number.as_str()), ("wanting", &wanting)];
        (!words.is_empty()).then(|| ApiError::new(code, &context, self.wording))
    }

    /// Why a step may not count as done as long as cautions of it are not acknowledged;
    /// none if they are.
    pub(in crate::api) fn unread_caution(&self, step: &str, action: &Action) -> Option<ApiError> {
        let step = planned(self.work_plan()?, step)?;
        let unread = step.unacknowledged(action);
        let words = unread
            .iter()
            .map(|id| self.words(&format!("plan-caution-{}", id.as_str())));
        let caution = words.collect::<Vec<_>>().join(" ");
        let number = step.number.to_string();
        let context = [("step", number.as_str()), ("caution", &caution)];
        (!unread.is_empty())
            .then(|| ApiError::new("caution-not-acknowledged", &context, self.wording))
    }

    /// Why the tick of a caution cannot be taken back: its step is done.
    pub(in crate::api) fn held_caution(&self, step: &str, caution: &str) -> ApiError {
        let planned = self.work_plan().and_then(|plan| planned(plan, step));
        let number = planned.map_or_else(String::new, |step| step.number.to_string());
        let caution = self.words(&format!("plan-caution-{caution}"));
        let context = [("step", number.as_str()), ("caution", &caution)];
        ApiError::new("caution-of-done-step", &context, self.wording)
    }

    /// Why a step may not count as done before one that it rests on; none if it may.
    fn earlier_step(&self, plan: &WorkPlan, step: &PlannedStep) -> Option<ApiError> {
        let earlier = self.unsettled_before(plan, step);
        let named = earlier
            .iter()
            .take(EARLIER)
            .map(|step| self.step_in_short(step));
        let mut named: Vec<String> = named.collect();
        if earlier.len() > EARLIER {
            let more = Args::new().count("count", earlier.len() - EARLIER);
            named.push(self.wording.catalog().fill("plan-earlier-more", &more));
        }
        let (number, earlier) = (step.number.to_string(), named.join(" "));
        let context = [("step", number.as_str()), ("earlier", &earlier)];
        (!named.is_empty()).then(|| ApiError::new("earlier-step-open", &context, self.wording))
    }

    /// The steps that this one rests on and that are not settled.
    pub(super) fn unsettled_before<'a>(
        &self,
        plan: &'a WorkPlan,
        step: &PlannedStep,
    ) -> Vec<&'a PlannedStep> {
        plan.unsettled_before(step, |known| self.progress(known).0)
    }

    /// Their identifiers, as they are kept with a step that is done before them.
    pub(in crate::api) fn ahead_of(&self, step: &str) -> Vec<String> {
        let plan = self.work_plan();
        let found = plan.and_then(|plan| Some((plan, planned(plan, step)?)));
        let Some((plan, step)) = found else {
            return Vec::new();
        };
        let earlier = self.unsettled_before(plan, step).into_iter();
        earlier.map(|step| step.id.as_str().to_owned()).collect()
    }

    /// What is still to be read at a gate, with what each must be; none once all of it
    /// was. What is worked out of other entries is not read itself.
    pub(super) fn unread(&self, gates: &[Gate], action: &Action) -> Option<String> {
        let empty = gates.iter().filter(|gate| gate.found(action).is_none());
        let empty: Vec<&Gate> = empty.collect();
        let by_itself = empty.iter().any(|gate| !gate.is_worked_out());
        let shown = empty
            .iter()
            .filter(|gate| !by_itself || !gate.is_worked_out());
        let named = shown.map(|gate| {
            let label = self.words(&looked_key(gate.looked));
            format!("{label} ({})", self.gate_rule(gate))
        });
        let named = named.collect::<Vec<_>>().join(", ");
        let args = Args::new().text("list", named);
        (!empty.is_empty()).then(|| self.wording.catalog().fill("plan-gate-unread", &args))
    }

    /// A step by its number and the first sentence of its text.
    pub(super) fn step_in_short(&self, step: &PlannedStep) -> String {
        let text = self.words(&format!("plan-step-{}", step.id.as_str()));
        let args = Args::new()
            .text("number", step.number.to_string())
            .text("step", first_sentence(&text));
        self.wording.catalog().fill("plan-step-in-short", &args)
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

    /// What a step wanted that was marked as done or left out; several steps that it
    /// rests on are one sentence, by number.
    pub(super) fn wanting(&self, wants: &[Want<'_>]) -> Vec<String> {
        let plan = self.work_plan();
        let number = |want: &Want<'_>| match want {
            Want::Earlier(id) => plan.and_then(|plan| Some(planned(plan, id)?.number)),
            Want::Gate { .. } | Want::Timer { .. } => None,
        };
        let mut numbers: Vec<usize> = wants.iter().filter_map(number).collect();
        if numbers.len() < 2 {
            return wants.iter().map(|want| self.want(want)).collect();
        }
        numbers.sort_unstable();
        let args = Args::new().text("numbers", self.runs(&numbers));
        let earlier = self
            .wording
            .catalog()
            .fill("plan-want-earlier-steps", &args);
        let others = wants.iter().filter(|want| number(want).is_none());
        let others = others.map(|want| self.want(want));
        std::iter::once(earlier).chain(others).collect()
    }

    /// What the gate, timer or order asks for, and what there is instead.
    pub(super) fn want(&self, want: &Want<'_>) -> String {
        let (key, args) = match want {
            Want::Gate { gate, found } => {
                let args = Args::new()
                    .text("label", self.words(&looked_key(gate.looked)))
                    .text("rule", self.gate_rule(gate));
                match found {
                    None => ("plan-want-gate-empty", args),
                    Some(found) => ("plan-want-gate-failed", args.text("found", found.text())),
                }
            }
            Want::Earlier(id) => {
                let step = self.work_plan().and_then(|plan| planned(plan, id));
                match step {
                    Some(step) => (
                        "plan-want-earlier",
                        Args::new().text("step", self.step_in_short(step)),
                    ),
                    // The plan changed since.
                    None => ("plan-want-earlier-gone", Args::new()),
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

/// The step of a plan that has this identifier.
fn planned<'a>(plan: &'a WorkPlan, id: &str) -> Option<&'a PlannedStep> {
    plan.steps.iter().find(|known| known.id.as_str() == id)
}

/// A time that ran. One that was too short is never rounded up to what was asked
/// for, and one that was long enough not down.
pub(in crate::api) fn ran_words(ran: Duration, met: bool) -> String {
    let round = if met { f64::round } else { f64::floor };
    let minutes = round(Unit::Minute.from_si(ran.si()));
    if minutes < IN_HOURS {
        return format::plus_minus(minutes, 0.0, Unit::Minute);
    }
    let hours = round(Unit::Hour.from_si(ran.si()) * 10.0) / 10.0;
    format::plus_minus(hours, 0.0, Unit::Hour)
}
