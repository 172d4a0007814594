//! Working a stored call out.

use super::report::GaugeOn;
use super::{Answer, ApiError, Call, Engine, Wording};
use crate::diagnosis::Learned;
use crate::records::visit_file::VisitFile;
use chrono::NaiveDate;

/// A call as it stood in the store, still to be worked out.
///
/// Working it out needs no store, so that entries made meanwhile do not wait.
pub struct OpenCall {
    file: VisitFile,
    learned: Learned,
    today: NaiveDate,
    gauge_before: Vec<GaugeOn>,
    wording: Wording,
}

impl OpenCall {
    /// What the engine makes of it.
    pub fn answer(&self) -> Answer {
        self.assessed().answer().clone()
    }

    pub(super) fn assessed(&self) -> Call {
        Call::assess_after(self.learned.clone(), &self.file, self.today, self.wording)
            .with_gauge_before(self.gauge_before.clone())
    }
}

impl Engine {
    /// Takes a visit from the store to work it out.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn open_call(&self, visit: &str) -> Result<OpenCall, ApiError> {
        let record = self.record(visit)?;
        let gauge_before = self.gauge_before(&record)?;
        Ok(OpenCall {
            gauge_before,
            learned: self.learned_for(Some(record.id))?,
            file: record.file,
            today: self.surroundings.today(),
            wording: self.wording,
        })
    }
}
