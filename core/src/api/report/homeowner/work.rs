//! The corrections, how far they have come, and what that means in one sentence.

use crate::api::Call;
use crate::api::report::content::written;
use crate::api::types::{AssessmentView, PlanView};
use crate::plan::{Correction, Progress, WorkPlan};
use crate::records::Outcome;

/// The correction that says that nothing has to be repaired.
const NO_REPAIR: &str = "explain-and-record";

/// How far a correction has come.
#[derive(Copy, Clone, PartialEq, Eq)]
pub(super) enum Stand {
    Open,
    Begun,
    Done,
}

/// A correction in plain words.
pub(super) struct Work {
    /// Its procedure.
    pub procedure: String,
    /// What is or was done.
    pub words: String,
    /// How far it has come.
    pub stand: Stand,
    /// Whether a step of it was done all the same, for a reason.
    pub excused: bool,
}

impl Call {
    /// Each correction of the plan.
    pub(super) fn work(&self, plan: Option<&WorkPlan>) -> Vec<Work> {
        let Some(plan) = plan else { return Vec::new() };
        let mut steps = plan.steps.iter();
        let untouched = steps.all(|step| self.progress(step).1.is_none());
        let fixed = self.file.visit.outcome == Some(Outcome::Fixed) && untouched;
        // Beside a repair, “nothing has to be repaired” would contradict it.
        let repairs = plan.corrections.len() > 1;
        let corrections = plan.corrections.iter();
        corrections
            .filter(|correction| !(repairs && correction.procedure.as_str() == NO_REPAIR))
            .map(|correction| self.correction(plan, correction, fixed))
            .collect()
    }

    fn correction(&self, plan: &WorkPlan, correction: &Correction, fixed: bool) -> Work {
        let procedure = correction.procedure.as_str().to_owned();
        let serving = plan.steps.iter();
        let serving = serving.filter(|step| step.serves.contains(&correction.procedure));
        let serving: Vec<_> = serving
            .map(|step| (step.stage.corrects(), self.progress(step).0))
            .collect();
        let worked = |progress| matches!(progress, Progress::Done | Progress::Excused);
        let any = |wanted| serving.iter().any(|(_, progress)| *progress == wanted);
        let settled = !any(Progress::Open) && !any(Progress::Unmet);
        // Made safe and closed again is not corrected: what corrects must have been
        // done, where there is such a step.
        let correcting = serving.iter().any(|(corrects, _)| *corrects);
        let mut mattering = serving
            .iter()
            .filter(|(corrects, _)| *corrects == correcting);
        let corrected = mattering.any(|(_, progress)| worked(*progress));
        let begun = serving
            .iter()
            .any(|(_, progress)| worked(*progress) || *progress == Progress::Unmet);
        let stand = match (fixed || (settled && corrected), begun) {
            (true, _) => Stand::Done,
            (false, true) => Stand::Begun,
            (false, false) => Stand::Open,
        };
        let words = self.say(&format!("homeowner-work-{procedure}"));
        let in_part = stand == Stand::Done && any(Progress::LeftOut);
        Work {
            words: match in_part {
                true => self.fill("homeowner-done-in-part", &[("work", &words)]),
                false => words,
            },
            procedure,
            stand,
            excused: any(Progress::Excused),
        }
    }

    /// What was done: corrections, and what the technician wrote down.
    pub(super) fn done(&self, work: &[Work]) -> Vec<String> {
        let done = work.iter().filter(|work| work.stand == Stand::Done);
        let done = done.map(|work| work.words.clone());
        let actions = self.file.visit.actions.iter();
        let others = actions.filter(|action| action.step.is_none() && action.done);
        done.chain(others.filter_map(|action| action.text.clone()))
            .collect()
    }

    /// The visit in one sentence, or two where a reading contradicts the first.
    pub(super) fn short(
        &self,
        view: &AssessmentView,
        work: &[Work],
        plan: Option<&PlanView>,
    ) -> String {
        let proof = || plan.into_iter().flat_map(|plan| &plan.proof);
        let missed = proof().any(|proof| proof.verdict == "missed");
        let unread = proof().any(|proof| !proof.later && proof.verdict == "unread");
        let read = proof().any(|proof| !proof.later && proof.verdict == "met");
        let unproved = plan.is_some_and(|plan| !plan.unproved.is_empty());
        let finished = !work.is_empty() && work.iter().all(|work| work.stand == Stand::Done);
        let begun = work.iter().any(|work| work.stand != Stand::Open);
        let key = match (self.file.visit.outcome, view.verdict.as_str()) {
            (Some(Outcome::Fixed), _) if missed => "homeowner-short-done-missed",
            (Some(Outcome::Fixed), _) if unproved => "homeowner-short-fixed-unproved",
            (Some(outcome), _) => &format!("homeowner-short-{}", written(&outcome)),
            (None, _) if finished && missed => "homeowner-short-done-missed",
            (None, _) if finished && work.iter().any(|work| work.excused) => {
                "homeowner-short-done-excused"
            }
            (None, _) if finished && (unread || !read) => "homeowner-short-done-unread",
            (None, _) if finished => "homeowner-short-done",
            (None, _) if begun => "homeowner-short-begun",
            (None, "normal") => "homeowner-short-nothing_wrong",
            (None, "normal_so_far") => "homeowner-short-nothing-so-far",
            (None, "not_the_loop") => "homeowner-short-handed_over",
            (None, "likely" | "tied") => "homeowner-short-found",
            (None, _) if !work.is_empty() => "homeowner-short-open",
            (None, _) => "homeowner-short-unknown",
        };
        self.say(key)
    }
}
