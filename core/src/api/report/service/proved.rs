//! What the work came to, in short: how far it is, and what is not proved.

use crate::api::Call;
use crate::api::report::content::written;
use crate::api::types::{PlanView, ProofView, StepView};
use crate::text::Args;

impl Call {
    /// How the visit ended, how far its steps are and what was proved; none before
    /// any step was taken up.
    pub(super) fn work_in_short(&self, plan: Option<&PlanView>) -> Option<String> {
        let plan = plan.filter(|plan| begun(plan))?;
        let mut said = vec![match self.file.visit.outcome {
            Some(outcome) => {
                let outcome = self.say(&crate::records::field::choice_key(&written(&outcome)));
                self.fill("service-ended", &[("outcome", &outcome)])
            }
            None => self.say("service-not-ended"),
        }];
        said.push(self.fill("service-work-count", &[("count", &plan.count)]));
        let held = || now(plan).filter(|proof| proof.verdict != "open");
        let all = held().count();
        if all > 0 {
            let met = held().filter(|proof| proof.verdict == "met").count();
            let args = Args::new().count("met", met).text("all", all.to_string());
            said.push(self.wording.catalog().fill("service-proof-count", &args));
        }
        Some(said.join(" "))
    }

    /// What is not proved: steps whose gate or timer is not met, readings that are
    /// not as they should be or were not taken.
    pub(super) fn unproved(&self, plan: Option<&PlanView>) -> Vec<String> {
        let Some(plan) = plan.filter(|plan| begun(plan)) else {
            return Vec::new();
        };
        let steps = (1..).zip(&plan.steps);
        let steps = steps.filter(|(_, step)| !step.wanting.is_empty());
        let steps = steps.map(|(number, step)| self.unmet_step(number, step));
        let missed = plan.proof.iter();
        let missed = missed.filter(|proof| proof.verdict == "missed");
        let missed = missed.map(|proof| self.unmet_proof("service-unproved-missed", proof));
        let unread = now(plan).filter(|proof| proof.verdict == "unread");
        let unread = unread.map(|proof| self.unmet_proof("service-unproved-unread", proof));
        steps.chain(missed).chain(unread).collect()
    }

    fn unmet_step(&self, number: usize, step: &StepView) -> String {
        let wanting = step.wanting.join(" ");
        let number = number.to_string();
        let mut named = vec![("number", number.as_str()), ("wanting", &wanting)];
        match &step.without {
            Some(reason) => {
                named.push(("reason", reason));
                self.fill("service-unproved-excused", &named)
            }
            None => self.fill("service-unproved-unmet", &named),
        }
    }

    fn unmet_proof(&self, key: &str, proof: &ProofView) -> String {
        let named = [
            ("label", proof.label.as_str()),
            ("after", proof.after.as_deref().unwrap_or_default()),
            ("expected", proof.expected.as_deref().unwrap_or_default()),
        ];
        self.fill(key, &named)
    }
}

/// Whether any step was taken up.
pub(super) fn begun(plan: &PlanView) -> bool {
    plan.steps.iter().any(|step| step.done.is_some())
}

/// The readings that prove the work before leaving.
pub(super) fn now(plan: &PlanView) -> impl Iterator<Item = &ProofView> {
    plan.proof.iter().filter(|proof| !proof.later)
}
