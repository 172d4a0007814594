//! Visits and everything entered during them.

mod entries;
mod list;
mod rows;
mod whole;

pub use list::VisitSummary;
pub(super) use rows::put_facts;
pub(super) use whole::{around, parse_id, put_record, put_visit, visit};

use super::follow_ups::put_follow_up;
use super::signed::signed;
use super::{Store, StoreError};
use crate::exchange::FollowUp;
use crate::records::visit_file::VisitFile;
use crate::records::{SiteId, SystemId, Visit, VisitId};
use chrono::{DateTime, Utc};
use rusqlite::params;
use uuid::Uuid;

/// A visit with everything around it.
#[derive(Clone, PartialEq, Debug)]
pub struct VisitRecord {
    /// Identifier of the visit.
    pub id: VisitId,
    /// Identifier of the system.
    pub system_id: SystemId,
    /// Identifier of the site.
    pub site_id: SiteId,
    /// Site, system, commissioning and visit.
    pub file: VisitFile,
}

impl Store {
    /// Keeps a new visit with its site and system in one transaction: all or nothing.
    /// Records that exist already are brought to the state given.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_record(
        &mut self,
        record: &VisitRecord,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let transaction = self.connection.transaction()?;
        put_record(&transaction, record, now)?;
        transaction.commit()?;
        Ok(())
    }

    /// Keeps many visits and what was found out about fixes, all or nothing.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_many(
        &mut self,
        records: impl IntoIterator<Item = VisitRecord>,
        follow_ups: &[(Uuid, FollowUp)],
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let transaction = self.connection.transaction()?;
        for record in records {
            put_record(&transaction, &record, now)?;
        }
        for (id, follow_up) in follow_ups {
            put_follow_up(&transaction, *id, follow_up, now)?;
        }
        transaction.commit()?;
        Ok(())
    }

    /// A visit with everything around it.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] among others.
    pub fn record(&self, id: VisitId) -> Result<VisitRecord, StoreError> {
        let connection = &self.connection;
        let (system_id, visit) = visit(connection, id)?;
        let (site_id, now) = around(connection, system_id, visit)?;
        // What was signed stays what was signed.
        let file = match signed(connection, id)? {
            Some(signed) => signed.file(now.visit),
            None => now,
        };
        Ok(VisitRecord {
            id,
            system_id,
            site_id,
            file,
        })
    }

    /// Moves a visit to another system. Its own system and site go when no other
    /// visit is at them.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn move_visit(
        &mut self,
        record: &VisitRecord,
        to: SystemId,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let [from, site] = [record.system_id.to_string(), record.site_id.to_string()];
        self.change(record.id, now, |connection| {
            let sql = "UPDATE visit SET system_id = ?2 WHERE id = ?1";
            connection.execute(sql, params![record.id.to_string(), to.to_string()])?;
            let unused = "?1 NOT IN (SELECT system_id FROM visit)";
            for table in ["commissioning WHERE system_id", "system WHERE id"] {
                let sql = format!("DELETE FROM {table} = ?1 AND {unused}");
                connection.execute(&sql, [&from])?;
            }
            let sql = "DELETE FROM site WHERE id = ?1 AND ?1 NOT IN (SELECT site_id FROM system)";
            connection.execute(sql, [&site])?;
            Ok(())
        })
    }

    /// Keeps the plain facts of a visit: date, technician, complaint, means,
    /// outcome, notes. What is kept singly (answers, readings, ...) stays.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_visit_facts(
        &self,
        id: VisitId,
        system: SystemId,
        visit: &Visit,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        put_facts(&self.connection, id, system, visit, now)
    }
}
