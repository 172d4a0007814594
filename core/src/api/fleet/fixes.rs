//! What became of earlier fixes at the same system.

use super::filter::cause_title;
use crate::api::types::EarlierFixView;
use crate::api::{ApiError, Engine};
use crate::exchange::FollowUp;
use crate::text::Args;

impl Engine {
    /// Fixes of earlier visits to the system of this visit, to ask about: did
    /// they hold? The latest first.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn earlier_fixes(&self, visit: &str) -> Result<Vec<EarlierFixView>, ApiError> {
        let catalog = self.wording.catalog();
        let fixes = self.store.earlier_fixes(self.visit_id(visit)?);
        let fixes = fixes.map_err(|error| self.failed(&error))?.into_iter();
        Ok(fixes
            .map(|fix| {
                let args = Args::new()
                    .text("cause", cause_title(&fix.cause, self.wording))
                    .text("date", fix.day.to_string());
                let known = fix.known.map(|(held, day)| {
                    let key = if held {
                        "fleet-fix-held"
                    } else {
                        "fleet-fix-failed"
                    };
                    catalog.fill(key, &Args::new().text("date", day.to_string()))
                });
                EarlierFixView {
                    visit: fix.visit.to_string(),
                    date: fix.day.to_string(),
                    cause: fix.cause,
                    question: catalog.fill("fleet-fix-question", &args),
                    known,
                    held: fix.known.map(|(held, _)| held),
                }
            })
            .collect())
    }

    /// Keeps the answer to such a question, as of the day of this visit.
    ///
    /// # Errors
    /// [`ApiError`]; also when there is no such fix.
    pub fn answer_earlier_fix(
        &mut self,
        visit: &str,
        earlier: &str,
        cause: &str,
        held: bool,
    ) -> Result<Vec<EarlierFixView>, ApiError> {
        let id = self.visit_id(visit)?;
        let fixes = self.store.earlier_fixes(id);
        let fixes = fixes.map_err(|error| self.failed(&error))?;
        let asked = self.visit_id(earlier)?;
        if !fixes
            .iter()
            .any(|fix| fix.visit == asked && fix.cause == cause)
        {
            let context = [("field", "cause"), ("found", cause)];
            return Err(ApiError::new("no-such-name", &context, self.wording));
        }
        let day = self.record(visit)?.file.visit.date;
        let follow_up = FollowUp {
            visit: asked,
            cause: cause.to_owned(),
            held,
            day: day.unwrap_or_else(|| self.surroundings.today()),
        };
        // One answer a visit: asked again, it replaces the one before.
        let answer = uuid::Uuid::from_u128(
            id.0.as_u128() ^ asked.0.as_u128().rotate_left(64) ^ digest(cause),
        );
        let now = self.surroundings.now();
        let kept = self.store.put_follow_up(answer, &follow_up, now);
        kept.map_err(|error| self.failed(&error))?;
        self.earlier_fixes(visit)
    }
}

fn digest(cause: &str) -> u128 {
    u128::from_be_bytes(crate::exchange::Digest::of(cause.as_bytes()).0)
}
