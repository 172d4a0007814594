//! Carrying records between devices.

use crate::api::types::{ConflictView, ExchangeChoice, ExchangeDone};
use crate::api::{ApiError, Engine};
use crate::exchange::Kind;
use crate::records::SystemId;
use crate::report::file::write_whole;
use crate::store::StoreError;
use crate::text::Args;
use std::fs::File;
use std::io::BufReader;
use std::path::Path;

impl Engine {
    /// Writes an exchange file, whole or not at all.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn export_records(
        &mut self,
        choice: &ExchangeChoice,
        path: &Path,
    ) -> Result<ExchangeDone, ApiError> {
        let visits = choice.visits.iter().map(|id| self.visit_id(id));
        let visits = visits.collect::<Result<Vec<_>, _>>()?;
        let systems = choice.systems.iter().map(|text| {
            text.parse().map(SystemId).map_err(|_| {
                self.failed(&StoreError::NotFound {
                    kind: "system",
                    id: text.clone(),
                })
            })
        });
        let systems = systems.collect::<Result<Vec<_>, _>>()?;
        let now = self.surroundings.now();
        let mut bytes = Vec::new();
        let personal = !choice.without_personal;
        let exported = self
            .store
            .export(&visits, &systems, personal, now, &mut bytes);
        let exported = exported.map_err(|error| self.failed(&error))?;
        write_whole(path, &bytes).map_err(|error| {
            let context = [("detail", &*error.to_string())];
            ApiError::new("exchange-not-written", &context, self.wording)
        })?;
        let args = Args::new()
            .count("visits", exported.visits)
            .count("records", exported.records)
            .text("path", path.display().to_string());
        Ok(ExchangeDone {
            words: self.wording.catalog().fill("exchange-written", &args),
            records: exported.records,
            new: 0,
            changed: 0,
            to_decide: 0,
        })
    }

    /// A name for an exchange file that a person can file.
    pub fn exchange_name(&self) -> String {
        format!("returnline-{}.rlx", self.surroundings.today())
    }

    /// Takes in an exchange file, all of it or nothing.
    ///
    /// # Errors
    /// [`ApiError`]; the database is as before.
    pub fn import_records(&mut self, path: &Path) -> Result<ExchangeDone, ApiError> {
        let now = self.surroundings.now();
        let imported = self
            .store
            .import(|| File::open(path).map(BufReader::new), now);
        let imported = imported.map_err(|error| self.failed(&error))?;
        let args = Args::new()
            .count("records", imported.records)
            .count("new", imported.new)
            .count("changed", imported.changed)
            .count("decide", imported.to_decide);
        Ok(ExchangeDone {
            words: self.wording.catalog().fill("exchange-taken", &args),
            records: imported.records,
            new: imported.new,
            changed: imported.changed,
            to_decide: imported.to_decide,
        })
    }

    /// Records on which devices disagree.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn record_conflicts(&self) -> Result<Vec<ConflictView>, ApiError> {
        let conflicts = self.store.conflicts();
        let conflicts = conflicts.map_err(|error| self.failed(&error))?;
        Ok(conflicts.iter().map(|one| self.conflict(one)).collect())
    }

    /// Decides on a record: this state stands.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn settle_record(
        &mut self,
        kind: &str,
        id: &str,
        state: &str,
    ) -> Result<Vec<ConflictView>, ApiError> {
        let unknown = |field: &str, found: &str| {
            let context = [("field", field), ("found", found)];
            ApiError::new("no-such-name", &context, self.wording)
        };
        let known = Kind::from_id(kind).ok_or_else(|| unknown("kind", kind))?;
        let record = id.parse().map_err(|_| unknown("record", id))?;
        let keep = state.parse().map_err(|()| unknown("state", state))?;
        let now = self.surroundings.now();
        let settled = self.store.settle(known, record, keep, now);
        settled.map_err(|error| self.failed(&error))?;
        self.record_conflicts()
    }
}
