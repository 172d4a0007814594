//! Working a stored call out, and marking the work as it is done.

use super::{Answer, ApiError, Call, Engine, Wording};
use crate::diagnosis::Learned;
use crate::records::Action;
use crate::records::visit_file::VisitFile;
use chrono::NaiveDate;

/// A call as it stood in the store, still to be worked out.
///
/// Working it out needs no store, so that entries made meanwhile do not wait.
pub struct OpenCall {
    file: VisitFile,
    learned: Learned,
    today: NaiveDate,
    wording: Wording,
}

impl OpenCall {
    /// What the engine makes of it.
    pub fn answer(&self) -> Answer {
        Call::assess_after(self.learned.clone(), &self.file, self.today, self.wording)
            .answer()
            .clone()
    }
}

impl Engine {
    /// Takes a visit from the store to work it out.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn open_call(&self, visit: &str) -> Result<OpenCall, ApiError> {
        let record = self.record(visit)?;
        Ok(OpenCall {
            learned: self.learned_for(Some(record.id))?,
            file: record.file,
            today: self.surroundings.today(),
            wording: self.wording,
        })
    }

    /// Marks a step of the work plan as done or not; it is kept when this
    /// returns.
    ///
    /// # Errors
    /// [`ApiError`]; the visit is unchanged.
    pub fn mark_step(&mut self, visit: &str, step: &str, done: bool) -> Result<(), ApiError> {
        let record = self.record(visit)?;
        let mut actions = record.file.visit.actions;
        match actions
            .iter_mut()
            .find(|action| action.step.as_deref() == Some(step))
        {
            Some(action) => action.done = done,
            None => actions.push(Action {
                step: Some(step.to_owned()),
                text: None,
                done,
                duration: None,
            }),
        }
        let now = self.surroundings.now();
        self.store
            .put_actions(record.id, &actions, now)
            .map_err(|error| self.failed(&error))
    }
}
