//! What is entered one by one during a visit, each in a transaction of its own.

use super::rows::{put_actions, put_answer, put_reading, put_verdict};
use crate::records::{Action, Answer, Level, Reading, ReadingId, Verdict, VisitId};
use crate::store::sites::not_found;
use crate::store::{Store, StoreError, stamp};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, params};

impl Store {
    /// Keeps the answer to a finding; `None` makes it unknown again.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_answer(
        &mut self,
        visit: VisitId,
        finding: &str,
        level: Option<Level>,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| match level {
            Some(is) => put_answer(
                connection,
                visit,
                &Answer {
                    finding: finding.to_owned(),
                    is,
                },
            ),
            None => {
                let sql = "DELETE FROM answer WHERE visit_id = ?1 AND finding = ?2";
                connection.execute(sql, params![visit.to_string(), finding])?;
                Ok(())
            }
        })
    }

    /// Keeps a reading, new or changed.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_reading(
        &mut self,
        visit: VisitId,
        id: ReadingId,
        reading: &Reading,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            put_reading(connection, visit, id, reading)
        })
    }

    /// Takes a reading away.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn remove_reading(
        &mut self,
        visit: VisitId,
        id: ReadingId,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            let sql = "DELETE FROM reading WHERE visit_id = ?1 AND id = ?2";
            connection.execute(sql, params![visit.to_string(), id.to_string()])?;
            Ok(())
        })
    }

    /// Keeps what was found about a cause.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_verdict(
        &mut self,
        visit: VisitId,
        verdict: &Verdict,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            put_verdict(connection, visit, verdict)
        })
    }

    /// Keeps the list of what was done.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_actions(
        &mut self,
        visit: VisitId,
        actions: &[Action],
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            put_actions(connection, visit, actions)
        })
    }

    /// One change inside a visit, in one transaction with the time of the change.
    pub(in crate::store) fn change(
        &mut self,
        visit: VisitId,
        now: DateTime<Utc>,
        change: impl FnOnce(&Connection) -> Result<(), StoreError>,
    ) -> Result<(), StoreError> {
        let transaction = self.connection.transaction()?;
        let sql = "UPDATE visit SET changed_at = ?2 WHERE id = ?1";
        if transaction.execute(sql, params![visit.to_string(), stamp(now)])? == 0 {
            return Err(not_found("visit", &visit.to_string()));
        }
        change(&transaction)?;
        transaction.commit()?;
        Ok(())
    }
}
