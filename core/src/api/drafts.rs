//! What is typed and not kept yet, so that a dead battery takes nothing along.

use super::types::DraftView;
use super::{ApiError, Engine};
use crate::store::Drafted;

/// Longest text of a draft, bytes: a signature that is drawn and not kept is the longest.
pub const LONGEST_DRAFT: usize = 256 * 1024;
/// Longest name of a place, bytes.
const LONGEST_PLACE: usize = 200;

impl Engine {
    /// Keeps what is typed at a place of a visit, or without one of the settings, as it
    /// stands there and whether or not it could be accepted; none when nothing is typed
    /// there any more. It is kept when this returns, and visit and settings are as they
    /// were.
    ///
    /// # Errors
    /// [`ApiError`], for what is too long too.
    pub fn put_draft(
        &mut self,
        visit: Option<&str>,
        place: &str,
        text: Option<&str>,
    ) -> Result<(), ApiError> {
        let of = match visit {
            Some(visit) => Drafted::Visit(self.record(visit)?.id),
            None => Drafted::Settings,
        };
        let long = place.len() > LONGEST_PLACE;
        if long || text.is_some_and(|text| text.len() > LONGEST_DRAFT) {
            let most = LONGEST_DRAFT.to_string();
            let context = [("field", place), ("most", most.as_str())];
            return Err(ApiError::new("text-too-long", &context, self.wording));
        }
        self.store
            .put_draft(of, place, text)
            .map_err(|error| self.failed(&error))
    }

    pub(super) fn drafts(&self, of: Drafted) -> Result<Vec<DraftView>, ApiError> {
        let drafts = self.store.drafts(of).map_err(|error| self.failed(&error))?;
        let view = |(place, text)| DraftView { place, text };
        Ok(drafts.into_iter().map(view).collect())
    }
}
