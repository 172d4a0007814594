//! The invented demonstration company: put in and taken out as a whole.

use super::follow_ups::put_follow_up;
use super::visits::{VisitRecord, put_record};
use super::{Store, StoreError};
use crate::exchange::FollowUp;
use crate::records::VisitId;
use chrono::{DateTime, Utc};
use rusqlite::Connection;
use uuid::Uuid;

/// What there is of the demonstration company.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct Demo {
    /// Invented visits.
    pub visits: usize,
    /// Invented systems.
    pub systems: usize,
    /// Visits made by the person at an invented system: they stay, and their
    /// system with them.
    pub own: usize,
}

/// Own visits at invented systems.
const OWN: &str = "FROM visit WHERE system_id IN (SELECT system_id FROM demo_system) \
     AND id NOT IN (SELECT visit_id FROM demo_visit)";

impl Store {
    /// Keeps invented visits, each as changed at its own time, all of them or none.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_demo(
        &mut self,
        records: impl IntoIterator<Item = (VisitRecord, DateTime<Utc>)>,
        follow_ups: &[(Uuid, FollowUp)],
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let transaction = self.connection.transaction()?;
        for (record, changed) in records {
            put_record(&transaction, &record, changed)?;
            transaction
                .prepare_cached("INSERT INTO demo_visit VALUES (?1)")?
                .execute([record.id.to_string()])?;
            transaction
                .prepare_cached("INSERT INTO demo_system VALUES (?1) ON CONFLICT DO NOTHING")?
                .execute([record.system_id.to_string()])?;
        }
        for (id, follow_up) in follow_ups {
            put_follow_up(&transaction, *id, follow_up, now)?;
        }
        transaction.commit()?;
        Ok(())
    }

    /// What there is of it.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn demo(&self) -> Result<Demo, StoreError> {
        let count = |from: &str| -> Result<usize, StoreError> {
            let sql = format!("SELECT COUNT(*) {from}");
            let count: i64 = self.connection.query_row(&sql, [], |row| row.get(0))?;
            Ok(usize::try_from(count).unwrap_or_default())
        };
        Ok(Demo {
            visits: count("FROM demo_visit")?,
            systems: count("FROM demo_system")?,
            own: count(OWN)?,
        })
    }

    /// Whether a visit is invented.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn is_demo(&self, visit: VisitId) -> Result<bool, StoreError> {
        let sql = "SELECT 1 FROM demo_visit WHERE visit_id = ?1";
        let mut statement = self.connection.prepare_cached(sql)?;
        Ok(statement.exists([visit.to_string()])?)
    }

    /// Takes every invented record away, all of them or none, and nothing else:
    /// a system at which the person made a visit stays as one of the person's.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn remove_demo(&mut self) -> Result<(), StoreError> {
        let transaction = self.connection.transaction()?;
        take_away(&transaction)?;
        transaction.commit()?;
        Ok(())
    }
}

fn take_away(connection: &Connection) -> Result<(), StoreError> {
    connection.execute_batch(
        "CREATE TEMP TABLE gone (id TEXT PRIMARY KEY);
         INSERT INTO gone SELECT photo.id FROM photo
             JOIN demo_visit ON demo_visit.visit_id = photo.visit_id;
         CREATE TEMP TABLE gone_site AS SELECT DISTINCT site_id FROM system
             JOIN demo_system ON demo_system.system_id = system.id;

         DELETE FROM follow_up WHERE visit_id IN (SELECT visit_id FROM demo_visit);
         DELETE FROM visit WHERE id IN (SELECT visit_id FROM demo_visit);
         DELETE FROM demo_system WHERE system_id IN (SELECT system_id FROM visit);
         DELETE FROM commissioning WHERE system_id IN (SELECT system_id FROM demo_system);
         DELETE FROM system WHERE id IN (SELECT system_id FROM demo_system);
         DELETE FROM site WHERE id IN (SELECT site_id FROM gone_site)
             AND id NOT IN (SELECT site_id FROM system);

         -- A photo that was taken away is told to other devices; these never went there.
         DELETE FROM unnoted WHERE kind = 'photo' AND record_id IN (SELECT id FROM gone);
         DELETE FROM revision WHERE kind = 'photo' AND record_id IN (SELECT id FROM gone);
         DROP TABLE gone;
         DROP TABLE gone_site;

         -- The board knows names of the invented still; it is counted anew without them.
         DELETE FROM board_visit;
         DELETE FROM board_system;
         DELETE FROM board_word;
         INSERT INTO uncounted SELECT 'system', id FROM system WHERE true ON CONFLICT DO NOTHING;
         INSERT INTO uncounted SELECT 'visit', id FROM visit WHERE true ON CONFLICT DO NOTHING;",
    )?;
    Ok(())
}
