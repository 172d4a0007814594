//! What is typed and not kept yet, so that a dead battery takes nothing along.

use super::types::DraftView;
use super::{ApiError, Engine};
use crate::records::VisitId;

/// Longest text of a draft, bytes: a signature that is drawn and not kept is the longest.
pub const LONGEST_DRAFT: usize = 256 * 1024;
/// Longest name of a place, bytes.
const LONGEST_PLACE: usize = 200;

impl Engine {
    /// Keeps what is typed at a place of the interface, as it stands there and
    /// whether or not it could be accepted; none when nothing is typed there any
    /// more. It is kept when this returns, and the visit is as it was.
    ///
    /// # Errors
    /// [`ApiError`], for what is too long too.
    pub fn put_draft(
        &mut self,
        visit: &str,
        place: &str,
        text: Option<&str>,
    ) -> Result<(), ApiError> {
        let id = self.record(visit)?.id;
        let long = place.len() > LONGEST_PLACE;
        if long || text.is_some_and(|text| text.len() > LONGEST_DRAFT) {
            let most = LONGEST_DRAFT.to_string();
            let context = [("field", place), ("most", most.as_str())];
            return Err(ApiError::new("text-too-long", &context, self.wording));
        }
        self.store
            .put_draft(id, place, text)
            .map_err(|error| self.failed(&error))
    }

    pub(super) fn drafts(&self, visit: VisitId) -> Result<Vec<DraftView>, ApiError> {
        let drafts = self.store.drafts(visit);
        let drafts = drafts.map_err(|error| self.failed(&error))?;
        Ok(drafts
            .into_iter()
            .map(|(place, text)| DraftView { place, text })
            .collect())
    }
}
