//! Causes found true or false, and the check that decided it. Outcomes, the
//! board and what is learned rest on these.

use super::knowledge::knowledge;
use super::types::{ChoiceView, VerdictEntry, VerdictView, VisitView};
use super::{ApiError, Engine};
use crate::records::visit_file::Vocabulary;
use crate::records::{Verdict, Visit};

impl Engine {
    /// Keeps that a cause was there or was not, or takes it back.
    ///
    /// # Errors
    /// [`ApiError`] of code `no-such-name` for a cause or check that is not known.
    pub fn set_verdict(
        &mut self,
        visit: &str,
        entry: &VerdictEntry,
    ) -> Result<VisitView, ApiError> {
        let unknown = |field: &str, found: &str| {
            let context = [("field", field), ("found", found)];
            ApiError::new("no-such-name", &context, self.wording)
        };
        if !knowledge().has_cause(&entry.cause) {
            return Err(unknown("cause", &entry.cause));
        }
        let by_check = entry.by_check.clone().filter(|check| !check.is_empty());
        if let Some(check) = by_check.as_deref().filter(|id| !knowledge().has_check(id)) {
            return Err(unknown("check", check));
        }
        let before = self.record(visit)?;
        let mut record = before.clone();
        let verdicts = &mut record.file.visit.verdicts;
        verdicts.retain(|known| known.cause != entry.cause);
        if let Some(confirmed) = entry.confirmed {
            verdicts.push(Verdict {
                cause: entry.cause.clone(),
                confirmed,
                by_check,
            });
        }
        self.keep(&record)?;
        let what = self.wording.catalog().text(&cause_key(&entry.cause));
        self.entered(what, before);
        self.visit(visit)
    }

    /// Every check that may decide a cause, by its title.
    #[must_use]
    pub fn checks(&self) -> Vec<ChoiceView> {
        let catalog = self.wording.catalog();
        let checks = knowledge().graph.checks().iter();
        let mut choices: Vec<ChoiceView> = checks
            .map(|check| ChoiceView {
                value: check.id.as_str().to_owned(),
                label: catalog.text(&check_key(check.id.as_str())),
            })
            .collect();
        choices.sort_by(|a, b| a.label.cmp(&b.label));
        choices
    }

    pub(super) fn verdict_views(&self, visit: &Visit) -> Vec<VerdictView> {
        let catalog = self.wording.catalog();
        let verdicts = visit.verdicts.iter();
        verdicts
            .map(|verdict| VerdictView {
                cause: verdict.cause.clone(),
                title: catalog.text(&cause_key(&verdict.cause)),
                confirmed: verdict.confirmed,
                by_check: verdict.by_check.clone(),
                check: verdict
                    .by_check
                    .as_deref()
                    .map(|check| catalog.text(&check_key(check))),
            })
            .collect()
    }
}

fn cause_key(cause: &str) -> String {
    format!("cause-{cause}")
}

fn check_key(check: &str) -> String {
    format!("check-{check}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::api::tests::{engine, started};

    fn entry(cause: &str, confirmed: Option<bool>, check: Option<&str>) -> VerdictEntry {
        VerdictEntry {
            cause: cause.to_owned(),
            confirmed,
            by_check: check.map(str::to_owned),
        }
    }

    #[test]
    fn a_cause_is_confirmed_by_a_check_ruled_out_and_left_open_again() {
        let mut engine = engine();
        let visit = started(&mut engine);
        let cause = knowledge().graph.causes()[0].id.as_str();
        let check = knowledge().graph.checks()[0].id.as_str();
        let kept = engine.set_verdict(&visit, &entry(cause, Some(true), Some(check)));
        let kept = kept.expect("kept").verdicts;
        assert_eq!(kept.len(), 1);
        assert!(kept[0].confirmed);
        assert_eq!(kept[0].by_check.as_deref(), Some(check));
        assert_eq!(engine.learned().expect("read").own, 1);

        let kept = engine.set_verdict(&visit, &entry(cause, Some(false), None));
        let kept = kept.expect("kept").verdicts;
        assert_eq!((kept.len(), kept[0].confirmed), (1, false));
        assert_eq!(engine.learned().expect("read").own, 0);

        let open = engine.set_verdict(&visit, &entry(cause, None, None));
        assert_eq!(open.expect("kept").verdicts.len(), 0);
        let back = engine.undo_last(&visit).expect("taken back");
        assert_eq!(back.verdicts.len(), 1);
    }

    #[test]
    fn what_nobody_knows_is_refused_and_nothing_is_kept() {
        let mut engine = engine();
        let visit = started(&mut engine);
        let cause = knowledge().graph.causes()[0].id.as_str();
        for wrong in [
            entry("moonlight", Some(true), None),
            entry(cause, Some(true), Some("guess")),
        ] {
            let refused = engine.set_verdict(&visit, &wrong).expect_err("refused");
            assert_eq!(refused.code, "no-such-name");
        }
        assert_eq!(engine.visit(&visit).expect("read").verdicts.len(), 0);
    }
}
