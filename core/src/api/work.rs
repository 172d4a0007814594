//! Marking the work as it is done.

use super::{Answer, ApiError, Engine};
use crate::records::Action;

impl Engine {
    /// Marks a step of the work plan as done or not; it is kept when this
    /// returns.
    ///
    /// # Errors
    /// [`ApiError`]; the visit is unchanged.
    pub fn mark_step(&mut self, visit: &str, step: &str, done: bool) -> Result<Answer, ApiError> {
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
            .map_err(|error| self.failed(&error))?;
        self.answer(visit)
    }
}
