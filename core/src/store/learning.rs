//! Settled callbacks and their confirmed causes, counted.

use super::board::TROUBLE;
use super::row::{document, to_document};
use super::{Store, StoreError, stamp};
use crate::records::VisitId;
use chrono::{DateTime, Utc};
use rusqlite::{OptionalExtension, params};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Settled callbacks, and in how many of them which cause was confirmed.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Confirmed {
    /// Callbacks that were settled: at least one cause was confirmed, or nothing was wrong.
    pub callbacks: u32,
    /// Of these, how many each cause was confirmed in.
    pub by_cause: BTreeMap<String, u32>,
}

impl Store {
    /// Since when own callbacks count; none if all do.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn counts_from(&self) -> Result<Option<String>, StoreError> {
        let sql = "SELECT counts_from FROM learning WHERE id = 1";
        let row = self.connection.query_row(sql, [], |row| row.get(0));
        Ok(row.optional()?.flatten())
    }

    /// The name under which this database's counts go elsewhere; `new` becomes
    /// it if it has none yet.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn learning_origin(&mut self, new: Uuid) -> Result<String, StoreError> {
        let sql = "INSERT INTO learning (id, origin) VALUES (1, ?1) ON CONFLICT DO NOTHING";
        self.connection.execute(sql, params![new.to_string()])?;
        let sql = "SELECT origin FROM learning WHERE id = 1";
        Ok(self.connection.query_row(sql, [], |row| row.get(0))?)
    }

    /// What was confirmed on own visits begun since [`Store::counts_from`]. A callback that
    /// ended as "nothing wrong" counts without a cause: left out, every callback would have a
    /// fault, and healthy loops would no longer be recognised. What is invented teaches
    /// nothing. The visit `except` is left out: a call must not be its own precedent.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn confirmed(&self, except: Option<VisitId>) -> Result<Confirmed, StoreError> {
        let except = except.map(|id| id.to_string()).unwrap_or_default();
        let from = self.counts_from()?.unwrap_or_default();
        let among = "FROM visit LEFT JOIN verdict \
            ON verdict.visit_id = visit.id AND verdict.confirmed = 1 \
            WHERE visit.started_at >= ?1 AND visit.id <> ?2 \
            AND visit.id NOT IN (SELECT visit_id FROM demo_visit)";
        // A service by the calendar at which all was well is no callback, as on the board.
        let sql = format!(
            "SELECT COUNT(DISTINCT visit.id) {among} AND (verdict.cause IS NOT NULL \
             OR (visit.outcome = 'nothing_wrong' AND {TROUBLE}))"
        );
        let callbacks = self
            .connection
            .query_row(&sql, params![from, except], |row| row.get(0))?;
        let sql = format!(
            "SELECT verdict.cause, COUNT(*) {among} AND verdict.cause IS NOT NULL \
             GROUP BY verdict.cause"
        );
        let by_cause = self
            .connection
            .prepare(&sql)?
            .query_map(params![from, except], |row| Ok((row.get(0)?, row.get(1)?)))?
            .collect::<Result<_, _>>()?;
        Ok(Confirmed {
            callbacks,
            by_cause,
        })
    }

    /// What other devices counted, by origin, as far as it counts here.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn confirmed_elsewhere(&self) -> Result<BTreeMap<String, Confirmed>, StoreError> {
        let from = self.counts_from()?.unwrap_or_default();
        let sql = "SELECT origin, callbacks, confirmed FROM learned_elsewhere \
            WHERE imported_at >= ?1";
        let rows = self
            .connection
            .prepare(sql)?
            .query_map(params![from], |row| {
                Ok((row.get(0)?, row.get(1)?, row.get(2)?))
            })?
            .collect::<Result<Vec<(String, u32, String)>, _>>()?;
        rows.into_iter()
            .map(|(origin, callbacks, text)| {
                let by_cause = document("learned counts", &origin, &text)?;
                let confirmed = Confirmed {
                    callbacks,
                    by_cause,
                };
                Ok((origin, confirmed))
            })
            .collect()
    }

    /// Keeps what another device counted, in place of what it counted before.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_confirmed_elsewhere(
        &mut self,
        origin: &str,
        confirmed: &Confirmed,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let text = to_document("learned counts", origin, &confirmed.by_cause)?;
        let sql = "INSERT INTO learned_elsewhere (origin, callbacks, confirmed, imported_at) \
            VALUES (?1, ?2, ?3, ?4) ON CONFLICT (origin) DO UPDATE SET callbacks = ?2, \
            confirmed = ?3, imported_at = ?4";
        let values = params![origin, confirmed.callbacks, text, stamp(now)];
        self.connection.execute(sql, values)?;
        Ok(())
    }

    /// Counts anew from now on. Nothing is deleted: verdicts stay on record.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn count_anew(&mut self, origin: Uuid, now: DateTime<Utc>) -> Result<(), StoreError> {
        let sql = "INSERT INTO learning (id, origin, counts_from) VALUES (1, ?1, ?2) \
            ON CONFLICT (id) DO UPDATE SET counts_from = ?2";
        self.connection
            .execute(sql, params![origin.to_string(), stamp(now)])?;
        Ok(())
    }
}
