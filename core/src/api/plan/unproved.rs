//! What stands against calling the work put right and proven. The screen on which a
//! visit is ended and the first page of the report tell it from here.

use crate::api::Call;
use crate::api::types::{ProofView, StepView};
use crate::plan::{Progress, WorkPlan};
use crate::text::{Args, first_sentence};

/// So many steps that are still to do are named by their words, more by number.
const NAMED: usize = 3;

impl Call {
    /// Every step and every proof that is open, in words; none where all is proved.
    ///
    /// A step that was left out counts where it has a gate or timer that is not met: what
    /// it would have proved is not proved.
    pub(super) fn open_of_plan(
        &self,
        plan: &WorkPlan,
        steps: &[StepView],
        proof: &[ProofView],
    ) -> Vec<String> {
        let numbered = || plan.steps.iter().map(|step| step.number).zip(steps);
        let open = numbered().filter(|(_, step)| step.progress == Progress::Open.id());
        let open: Vec<(usize, &StepView)> = open.collect();
        let held = numbered().filter(|(_, step)| !step.wanting.is_empty());
        let held = held.map(|(number, step)| self.unproved_step(number, step));
        let proof = proof
            .iter()
            .filter_map(|proof| self.unproved_reading(proof));
        let open = self.steps_to_do(&open).into_iter();
        open.chain(held).chain(proof).collect()
    }

    /// The steps that are still to do.
    fn steps_to_do(&self, open: &[(usize, &StepView)]) -> Vec<String> {
        let catalog = self.wording.catalog();
        if open.len() > NAMED {
            let numbers: Vec<usize> = open.iter().map(|(number, _)| *number).collect();
            let args = Args::new().text("numbers", self.runs(&numbers));
            return vec![catalog.fill("plan-unproved-open-steps", &args)];
        }
        let named = open.iter().map(|(number, step)| {
            let args = Args::new()
                .text("number", number.to_string())
                .text("step", first_sentence(&step.text));
            catalog.fill("plan-unproved-open-step", &args)
        });
        named.collect()
    }

    /// Numbers in rising order, those that follow on each other as “4 to 9”.
    pub(super) fn runs(&self, numbers: &[usize]) -> String {
        let runs = numbers.chunk_by(|a, b| a + 1 == *b);
        let runs = runs.map(|run| match run {
            [first, .., last] if run.len() > 2 => {
                let args = Args::new()
                    .text("low", first.to_string())
                    .text("high", last.to_string());
                self.wording.catalog().fill("season-range", &args)
            }
            few => {
                let few: Vec<String> = few.iter().map(usize::to_string).collect();
                few.join(", ")
            }
        });
        runs.collect::<Vec<_>>().join(", ")
    }

    fn unproved_step(&self, number: usize, step: &StepView) -> String {
        let args = Args::new()
            .text("number", number.to_string())
            .text("wanting", step.wanting.join(" "));
        let (key, reason) = match (&step.skipped, &step.without) {
            (Some(reason), _) => ("plan-unproved-left-out", reason.as_str()),
            (None, Some(reason)) => ("plan-unproved-excused", reason.as_str()),
            (None, None) => ("plan-unproved-unmet", ""),
        };
        let args = args.text("reason", reason);
        self.wording.catalog().fill(key, &args)
    }

    /// A reading that is not as it should be, or that was not taken before leaving.
    fn unproved_reading(&self, proof: &ProofView) -> Option<String> {
        let key = match (proof.verdict.as_str(), &proof.after) {
            ("missed", _) => "plan-unproved-missed",
            _ if proof.later => return None,
            ("unread", _) => "plan-unproved-unread",
            (_, None) => "plan-unproved-not-read",
            _ => return None,
        };
        let args = Args::new()
            .text("label", proof.label.as_str())
            .text("after", proof.after.as_deref().unwrap_or_default())
            .text("expected", proof.expected.as_deref().unwrap_or_default());
        Some(self.wording.catalog().fill(key, &args))
    }
}
