//! The causes and the checks that the report names.

use super::CAUSES;
use crate::api::types::{AssessmentView, CauseView, ContextView};
use crate::report::service::{CausePart, ReasonLine};
use crate::text::Catalog;

/// A cause behind the first is argued from this probability on. Judgement; the
/// words of the report name it.
const ARGUED: f64 = 0.05;
/// What the records say of it is told by so many sentences.
const CONTEXT: usize = 3;
/// Checks that the report names.
const CHECKS: usize = 3;

/// The leading cause with everything that speaks for and against it, the others
/// with what says most, the improbable ones by name.
pub(super) fn causes(view: &AssessmentView, catalog: &Catalog) -> Vec<CausePart> {
    let causes = view.causes.iter().take(CAUSES).enumerate();
    causes
        .map(|(place, cause)| {
            let mut part = cause_part(cause, catalog);
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

fn cause_part(cause: &CauseView, catalog: &Catalog) -> CausePart {
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
                figures: reason
                    .figures
                    .as_ref()
                    .map(|figures| figures.said(catalog).join("; ")),
            })
            .collect(),
        context: cause.context.iter().map(ContextView::whole).collect(),
    }
}

pub(super) fn check_lines(view: &AssessmentView) -> Vec<(String, String)> {
    let checks = view.checks.iter().take(CHECKS);
    checks
        .map(|check| {
            // A check can hurt as a step of the work can.
            let licence = check.licence.iter().map(|licence| format!("; {licence}"));
            let licence: String = licence.collect();
            let mut words = vec![format!("{} ({}{licence})", check.how, check.shown)];
            words.extend(check.cautions.iter().cloned());
            (check.title.clone(), words.join(" "))
        })
        .collect()
}
