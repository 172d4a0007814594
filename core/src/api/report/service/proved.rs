//! What the work came to, in short: how far it is, and what is not proved.

use crate::api::Call;
use crate::api::report::content::written;
use crate::api::types::{PlanView, ProofView};
use crate::records::Outcome;
use crate::text::Args;

impl Call {
    /// How the visit ended, how far its steps are and what was proved; none before
    /// any step was taken up, unless the visit is said to be put right and proven.
    pub(super) fn work_in_short(&self, plan: Option<&PlanView>) -> Option<String> {
        let plan = plan.filter(|plan| self.is_told(plan))?;
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

    /// What of the work is not proved; nothing as long as it is only planned.
    pub(super) fn unproved(&self, plan: Option<&PlanView>) -> Vec<String> {
        let plan = plan.filter(|plan| self.is_told(plan));
        plan.map(|plan| plan.unproved.clone()).unwrap_or_default()
    }

    /// Whether the report tells what came of a plan.
    fn is_told(&self, plan: &PlanView) -> bool {
        begun(plan) || self.file.visit.outcome == Some(Outcome::Fixed)
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
