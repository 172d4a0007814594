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
        self.bounded(place, text)?;
        self.store
            .put_draft(id, place, text)
            .map_err(|error| self.failed(&error))
    }

    /// The same for a place of the settings; they are as they were.
    ///
    /// # Errors
    /// [`ApiError`], for what is too long too.
    pub fn put_setting_draft(&mut self, place: &str, text: Option<&str>) -> Result<(), ApiError> {
        self.bounded(place, text)?;
        self.store
            .put_setting_draft(place, text)
            .map_err(|error| self.failed(&error))
    }

    fn bounded(&self, place: &str, text: Option<&str>) -> Result<(), ApiError> {
        let long = place.len() > LONGEST_PLACE;
        if long || text.is_some_and(|text| text.len() > LONGEST_DRAFT) {
            let most = LONGEST_DRAFT.to_string();
            let context = [("field", place), ("most", most.as_str())];
            return Err(ApiError::new("text-too-long", &context, self.wording));
        }
        Ok(())
    }

    pub(super) fn drafts(&self, visit: VisitId) -> Result<Vec<DraftView>, ApiError> {
        let drafts = self.store.drafts(visit);
        Ok(shown(drafts.map_err(|error| self.failed(&error))?))
    }

    pub(super) fn setting_drafts(&self) -> Result<Vec<DraftView>, ApiError> {
        let drafts = self.store.setting_drafts();
        Ok(shown(drafts.map_err(|error| self.failed(&error))?))
    }
}

fn shown(drafts: Vec<(String, String)>) -> Vec<DraftView> {
    drafts
        .into_iter()
        .map(|(place, text)| DraftView { place, text })
        .collect()
}
