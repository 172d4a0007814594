//! The manager's board, the exchange of records, and what became of fixes.

mod board;
mod conflict;
mod csv;
mod exchange;
mod facts;
mod filter;
mod fixes;
mod pictures;
mod report;
mod trial;
mod why;

pub use trial::{Trial, trial};

use super::types::{BoardView, FleetFilter, FleetQuery, FleetTable, FleetVisits, VisitLine};
use super::{ApiError, Engine};
use crate::fleet::invented::InventedSystem;
use crate::fleet::{self, Fleet};
use crate::records::visit_file::VisitFile;
use crate::records::{Outcome, field, name_of};
use crate::store::VisitRecord;
use crate::text::Args;

/// The rows of the board as they stood at a version of the database.
pub(super) struct Kept {
    version: i64,
    fleet: Fleet,
}

impl Engine {
    /// The board.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn board(&mut self, query: &FleetQuery) -> Result<BoardView, ApiError> {
        self.count_fleet()?;
        let mut view = board::view(self.counted()?, query, self.wording)?;
        let demo = self.demo()?;
        if demo.visits > 0 {
            let args = Args::new().count("visits", demo.visits);
            let note = self.wording.catalog().fill("fleet-note-demo", &args);
            view.notes.insert(0, note);
        }
        Ok(view)
    }

    /// Everything the board shows, as tables for a spreadsheet.
    #[must_use]
    pub fn board_tables(&self, board: &BoardView) -> Vec<FleetTable> {
        csv::tables(board, self.wording)
    }

    /// The visits behind a figure, `take` of them after the first `skip`.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn fleet_visits(
        &mut self,
        filter: &FleetFilter,
        skip: usize,
        take: usize,
    ) -> Result<FleetVisits, ApiError> {
        self.count_fleet()?;
        let fleet = self.counted()?;
        let numbers = filter::read(fleet, filter, self.wording)?.visits(fleet);
        let asked: Vec<i64> = numbers.iter().copied().skip(skip).take(take).collect();
        let ids = self.store.board_visits(&asked);
        let ids = ids.map_err(|error| self.failed(&error))?;
        let lines = ids.into_iter().map(|id| {
            let record = self.record(&id.to_string())?;
            let visit = record.file.visit;
            Ok(VisitLine {
                id: id.to_string(),
                site: self.site_title(&record.file.site.name),
                date: visit.date.map(|date| date.to_string()),
                complaint: visit.complaint,
                outcome: visit.outcome.and_then(|outcome| self.outcome(outcome)),
                system: record.system_id.to_string(),
                demo: self
                    .store
                    .is_demo(id)
                    .map_err(|error| self.failed(&error))?,
            })
        });
        Ok(FleetVisits {
            total: numbers.len(),
            lines: lines.collect::<Result<_, ApiError>>()?,
        })
    }

    fn outcome(&self, outcome: Outcome) -> Option<String> {
        let key = field::choice_key(&name_of(&outcome)?);
        Some(self.wording.catalog().text(&key))
    }

    /// Brings the rows up to date with the database, if they are not.
    fn count_fleet(&mut self) -> Result<(), ApiError> {
        let refreshed = self.store.refresh_board(&facts::board_facts);
        let refreshed = refreshed.map_err(|error| self.failed(&error))?;
        let version = self.store.version();
        let version = version.map_err(|error| self.failed(&error))?;
        let current = |kept: &Kept| kept.version == version && !refreshed;
        if !self.fleet.as_ref().is_some_and(current) {
            let fleet = self.store.fleet().map_err(|error| self.failed(&error))?;
            self.fleet = Some(Kept { version, fleet });
        }
        Ok(())
    }

    /// The rows are counted anew when they are next asked for.
    pub(super) fn forget_board(&mut self) {
        self.fleet = None;
    }

    fn counted(&self) -> Result<&Fleet, ApiError> {
        let kept = self.fleet.as_ref();
        // Counted just before; an empty board is an answer all the same.
        kept.map(|kept| &kept.fleet)
            .ok_or_else(|| ApiError::new("not-found", &[], self.wording))
    }

    /// Fills the database with an invented fleet of at least so many visits, all
    /// of it or nothing, and says how many visits and systems it has.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn invent_fleet(&mut self, visits: usize, seed: u64) -> Result<(usize, usize), ApiError> {
        let now = self.surroundings.now();
        let invented = invented(visits, seed);
        let counts = (
            invented.iter().map(|system| system.visits.len()).sum(),
            invented.len(),
        );
        let follow_ups: Vec<_> = invented
            .iter()
            .flat_map(|system| system.follow_ups.iter().cloned())
            .collect();
        let kept = self.store.put_many(records(invented), &follow_ups, now);
        kept.map_err(|error| self.failed(&error))?;
        self.count_fleet()?;
        Ok(counts)
    }
}

/// Every visit of invented systems with what is around it.
pub(super) fn records(invented: Vec<InventedSystem>) -> impl Iterator<Item = VisitRecord> {
    invented.into_iter().flat_map(|system| {
        let InventedSystem {
            site_id,
            system_id,
            site,
            system,
            commissioning,
            visits,
            ..
        } = system;
        visits.into_iter().map(move |(id, visit)| VisitRecord {
            id,
            system_id,
            site_id,
            file: VisitFile {
                site: site.clone(),
                system: system.clone(),
                commissioning: commissioning.clone(),
                visit,
            },
        })
    })
}

/// An invented fleet of at least so many visits.
pub(super) fn invented(visits: usize, seed: u64) -> Vec<InventedSystem> {
    let mut count = 0;
    fleet::invented::Fleet::new(seed)
        .take_while(|system| {
            let wanted = count < visits;
            count += system.visits.len();
            wanted
        })
        .collect()
}
