//! Taking back the last entries of a visit.

use super::types::VisitView;
use super::{ApiError, Engine};
use crate::records::VisitId;
use crate::store::VisitRecord;

/// So many entries can be taken back.
const DEPTH: usize = 50;

/// What stood before each of the last entries, the last one at the end. They
/// are of one visit: an entry in another visit may touch the same system, and
/// an older state of it must not come back.
#[derive(Default)]
pub(super) struct Entries(Vec<Entry>);

struct Entry {
    /// What was entered, in words.
    what: String,
    before: VisitRecord,
}

impl Entries {
    /// What would be taken back in a visit, in words.
    pub(super) fn last(&self, visit: VisitId) -> Option<&str> {
        let last = self.0.last()?;
        (last.before.id == visit).then_some(last.what.as_str())
    }

    fn push(&mut self, what: String, before: VisitRecord) {
        self.0.retain(|entry| entry.before.id == before.id);
        if self.0.len() == DEPTH {
            self.0.remove(0);
        }
        self.0.push(Entry { what, before });
    }
}

impl Engine {
    /// Keeps in mind what stood before an entry that was kept.
    pub(super) fn entered(&mut self, what: String, before: VisitRecord) {
        self.undo.push(what, before);
    }

    /// As [`Engine::entered`], for a text that is kept while it is written: only
    /// what stood before all of the writing counts.
    pub(super) fn written(&mut self, what: String, before: VisitRecord) {
        if self.undo.last(before.id) != Some(what.as_str()) {
            self.undo.push(what, before);
        }
    }

    /// Takes the last entry back; the state before it is kept when this returns.
    ///
    /// # Errors
    /// [`ApiError`] of code `nothing-to-undo` when there is none.
    pub fn undo_last(&mut self, visit: &str) -> Result<VisitView, ApiError> {
        let id = self.visit_id(visit)?;
        if self.undo.last(id).is_none() {
            return Err(ApiError::new("nothing-to-undo", &[], self.wording));
        }
        if let Some(entry) = self.undo.0.last() {
            let before = entry.before.clone();
            self.keep(&before)?;
            self.undo.0.pop();
        }
        self.visit(visit)
    }
}
