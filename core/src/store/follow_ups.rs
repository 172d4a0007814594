//! Whether earlier fixes held.

use super::visits::parse_id;
use super::{Store, StoreError, stamp};
use crate::exchange::FollowUp;
use crate::records::VisitId;
use chrono::{DateTime, NaiveDate, Utc};
use rusqlite::{Connection, OptionalExtension, params};
use uuid::Uuid;

/// A fix made at an earlier visit to the same system.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct EarlierFix {
    /// The earlier visit.
    pub visit: VisitId,
    /// Its day.
    pub day: NaiveDate,
    /// The cause that was confirmed there.
    pub cause: String,
    /// What was last found out about it: whether it held, and on which day.
    pub known: Option<(bool, NaiveDate)>,
}

impl Store {
    /// The visit to the same system before this one, by its day.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn visit_before(&self, visit: VisitId) -> Result<Option<VisitId>, StoreError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT earlier.id FROM visit AS this \
             JOIN visit AS earlier ON earlier.system_id = this.system_id AND earlier.id <> this.id \
             WHERE this.id = ?1 AND earlier.date IS NOT NULL \
             AND (this.date IS NULL OR earlier.date < this.date \
              OR (earlier.date = this.date AND earlier.started_at < this.started_at)) \
             ORDER BY earlier.date DESC, earlier.started_at DESC, earlier.id DESC LIMIT 1",
        )?;
        let found = statement.query_row([visit.to_string()], |row| row.get::<_, String>(0));
        let found = found.optional()?;
        found
            .map(|id| Ok(VisitId(parse_id("visit", &id)?)))
            .transpose()
    }

    /// Causes confirmed at earlier visits to the system of this visit, the
    /// latest first.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn earlier_fixes(&self, visit: VisitId) -> Result<Vec<EarlierFix>, StoreError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT earlier.id, earlier.date, verdict.cause, \
             (SELECT held || ' ' || day FROM follow_up WHERE visit_id = earlier.id \
              AND cause = verdict.cause ORDER BY day DESC, id DESC LIMIT 1) \
             FROM visit AS this JOIN visit AS earlier ON earlier.system_id = this.system_id \
             AND earlier.id <> this.id JOIN verdict ON verdict.visit_id = earlier.id \
             WHERE this.id = ?1 AND verdict.confirmed = 1 AND earlier.date IS NOT NULL \
             AND (this.date IS NULL OR earlier.date < this.date \
              OR (earlier.date = this.date AND earlier.started_at < this.started_at)) \
             ORDER BY earlier.date DESC, earlier.id, verdict.cause",
        )?;
        let mut rows = statement.query([visit.to_string()])?;
        let mut fixes = Vec::new();
        while let Some(row) = rows.next()? {
            let id: String = row.get(0)?;
            let day: String = row.get(1)?;
            let known: Option<String> = row.get(3)?;
            let known = known.and_then(|text| {
                let (held, day) = text.split_once(' ')?;
                Some((held == "1", day.parse().ok()?))
            });
            fixes.push(EarlierFix {
                visit: VisitId(parse_id("visit", &id)?),
                day: day_of(&id, &day)?,
                cause: row.get(2)?,
                known,
            });
        }
        Ok(fixes)
    }

    /// Keeps what was found out about a fix.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_follow_up(
        &self,
        id: Uuid,
        follow_up: &FollowUp,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        put_follow_up(&self.connection, id, follow_up, now)
    }
}

pub(super) fn day_of(id: &str, text: &str) -> Result<NaiveDate, StoreError> {
    text.parse()
        .map_err(|_| super::row::damaged("visit", id, text))
}

pub(super) fn put_follow_up(
    connection: &Connection,
    id: Uuid,
    follow_up: &FollowUp,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    connection
        .prepare_cached(
            "INSERT INTO follow_up (id, visit_id, cause, held, day, changed_at) \
             VALUES (?1, ?2, ?3, ?4, ?5, ?6) ON CONFLICT (id) DO UPDATE \
             SET visit_id = ?2, cause = ?3, held = ?4, day = ?5, changed_at = ?6",
        )?
        .execute(params![
            id.to_string(),
            follow_up.visit.to_string(),
            follow_up.cause,
            follow_up.held,
            follow_up.day.to_string(),
            stamp(now),
        ])?;
    Ok(())
}

pub(super) fn follow_up(connection: &Connection, id: Uuid) -> Result<Option<FollowUp>, StoreError> {
    let key = id.to_string();
    let found: Option<(String, String, bool, String)> = connection
        .prepare_cached("SELECT visit_id, cause, held, day FROM follow_up WHERE id = ?1")?
        .query_row([&key], |row| {
            Ok((row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?))
        })
        .optional()?;
    let Some((visit, cause, held, day)) = found else {
        return Ok(None);
    };
    Ok(Some(FollowUp {
        visit: VisitId(parse_id("visit", &visit)?),
        cause,
        held,
        day: day_of(&key, &day)?,
    }))
}
