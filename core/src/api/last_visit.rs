//! What the visit before this one left behind, in short.

use super::types::LastVisit;
use super::{ApiError, Engine};
use crate::records::field;
use crate::records::{Outcome, Phase, ReadingPoint, Visit, VisitId, name_of};

impl Engine {
    /// The visit to the same system before this one.
    pub(super) fn last_visit(&self, visit: VisitId) -> Result<Option<LastVisit>, ApiError> {
        let before = self.store.visit_before(visit);
        let Some(id) = before.map_err(|error| self.failed(&error))? else {
            return Ok(None);
        };
        let there = self.store.record(id);
        let there = there.map_err(|error| self.failed(&error))?.file.visit;
        let verdicts = self.verdict_views(&there).into_iter();
        Ok(Some(LastVisit {
            visit: id.to_string(),
            date: there.date.map(|date| date.to_string()),
            found: verdicts
                .filter(|verdict| verdict.confirmed)
                .map(|verdict| verdict.title)
                .collect(),
            outcome: there
                .outcome
                .and_then(|outcome| self.outcome_words(outcome)),
            pressure: gauge_left(&there),
        }))
    }

    /// How a visit ended, in words; none for one that is still open.
    pub(super) fn outcome_words(&self, outcome: Outcome) -> Option<String> {
        let ended = Some(outcome).filter(|outcome| *outcome != Outcome::Open);
        let name = name_of(&ended?)?;
        Some(self.wording.catalog().text(&field::choice_key(&name)))
    }
}

/// The gauge at rest as it was left; as it was found where that was not read again.
fn gauge_left(visit: &Visit) -> Option<String> {
    let readings = visit.readings.iter().rev();
    let mut gauge = readings.filter(|reading| reading.point() == ReadingPoint::StaticPressure);
    let last = gauge.clone().find(|reading| reading.phase == Phase::Left);
    Some(last.or_else(|| gauge.next())?.text())
}
