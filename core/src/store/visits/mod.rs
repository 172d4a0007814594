//! Visits and everything entered during them.

mod rows;

pub(super) use rows::put_facts;

use super::follow_ups::put_follow_up;
use super::row::{READING_COLUMNS, named, reading};
use super::signed::signed;
use super::sites::{
    commissioning, not_found, put_commissioning, put_site, put_system, site, system,
};
use super::{Store, StoreError, stamp};
use crate::exchange::FollowUp;
use crate::records::visit_file::VisitFile;
use crate::records::{
    Action, Answer, Level, Reading, ReadingId, SiteId, SystemId, Verdict, Visit, VisitId,
};
use chrono::{DateTime, NaiveDate, Utc};
use rows::{
    actions, answers, facts, put_actions, put_answer, put_reading, put_verdict, readings, verdicts,
};
use rusqlite::{Connection, params};
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

/// One line of the list of visits.
#[derive(Clone, PartialEq, Debug)]
pub struct VisitSummary {
    /// Identifier of the visit.
    pub id: VisitId,
    /// Identifier of the system.
    pub system_id: SystemId,
    /// Name of the site.
    pub site_name: String,
    /// Day of the visit.
    pub date: Option<NaiveDate>,
    /// The complaint.
    pub complaint: Option<String>,
    /// How it ended.
    pub outcome: Option<crate::records::Outcome>,
    /// Last change, UTC.
    pub changed_at: String,
    /// Whether it belongs to the invented demonstration company.
    pub demo: bool,
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

    /// All visits, last changed first.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn visits(&self) -> Result<Vec<VisitSummary>, StoreError> {
        let mut statement = self.connection.prepare_cached(
            "SELECT visit.id, visit.system_id, site.name, visit.date, visit.complaint, \
             visit.outcome, visit.changed_at, \
             EXISTS (SELECT 1 FROM demo_visit WHERE visit_id = visit.id) FROM visit \
             JOIN system ON system.id = visit.system_id JOIN site ON site.id = system.site_id \
             ORDER BY visit.changed_at DESC, visit.id DESC",
        )?;
        let mut rows = statement.query([])?;
        let mut summaries = Vec::new();
        while let Some(row) = rows.next()? {
            let id: String = row.get(0)?;
            let system: String = row.get(1)?;
            let date: Option<String> = row.get(3)?;
            let outcome: Option<String> = row.get(5)?;
            summaries.push(VisitSummary {
                id: VisitId(parse_id("visit", &id)?),
                system_id: SystemId(parse_id("system", &system)?),
                site_name: row.get(2)?,
                date: date.map(|text| named("visit", &id, &text)).transpose()?,
                complaint: row.get(4)?,
                outcome: outcome.map(|text| named("visit", &id, &text)).transpose()?,
                changed_at: row.get(6)?,
                demo: row.get(7)?,
            });
        }
        Ok(summaries)
    }

    /// Readings of other visits at a system, last first, each with the day of
    /// its visit.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn earlier_readings(
        &self,
        system: SystemId,
        except: VisitId,
    ) -> Result<Vec<(Option<NaiveDate>, Reading)>, StoreError> {
        let sql = format!(
            "SELECT {READING_COLUMNS}, (SELECT date FROM visit WHERE visit.id = visit_id) AS visited_on \
             FROM reading WHERE visit_id IN \
             (SELECT visit.id FROM visit WHERE system_id = ?1 AND visit.id <> ?2) \
             ORDER BY rowid DESC"
        );
        let mut statement = self.connection.prepare_cached(&sql)?;
        let mut rows = statement.query([system.to_string(), except.to_string()])?;
        let mut readings = Vec::new();
        while let Some(row) = rows.next()? {
            let date: Option<String> = row.get("visited_on")?;
            let date = date.map(|text| named("visit", "date", &text)).transpose()?;
            readings.push((date, reading(row)?));
        }
        Ok(readings)
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
    pub(super) fn change(
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

pub(super) fn put_record(
    connection: &Connection,
    record: &VisitRecord,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let file = &record.file;
    if signed(connection, record.id)?.is_some() {
        // Site and system are those of the day of the signature; others may have
        // changed them since.
        return put_visit(connection, record.id, record.system_id, &file.visit, now);
    }
    put_site(connection, record.site_id, &file.site, now)?;
    put_system(
        connection,
        record.system_id,
        record.site_id,
        &file.system,
        now,
    )?;
    put_commissioning(connection, record.system_id, &file.commissioning, now)?;
    put_visit(connection, record.id, record.system_id, &file.visit, now)
}

/// A visit with its site and its system as they are now.
pub(super) fn around(
    connection: &Connection,
    system_id: SystemId,
    visit: Visit,
) -> Result<(SiteId, VisitFile), StoreError> {
    let (site_id, system) = system(connection, system_id)?;
    let file = VisitFile {
        site: site(connection, site_id)?,
        system,
        commissioning: commissioning(connection, system_id)?,
        visit,
    };
    Ok((site_id, file))
}

/// A visit with everything entered during it, brought to the state given.
pub(super) fn put_visit(
    connection: &Connection,
    id: VisitId,
    system: SystemId,
    visit: &Visit,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    put_facts(connection, id, system, visit, now)?;
    let key = id.to_string();
    for sql in [
        "DELETE FROM answer WHERE visit_id = ?1",
        "DELETE FROM reading WHERE visit_id = ?1",
        "DELETE FROM verdict WHERE visit_id = ?1",
    ] {
        connection.prepare_cached(sql)?.execute([&key])?;
    }
    for answer in &visit.answers {
        put_answer(connection, id, answer)?;
    }
    for (index, reading) in visit.readings.iter().enumerate() {
        // Only a reading that came without identifier gets one made from
        // the visit's, so that storing twice stores once.
        let reading_id = reading.id.unwrap_or_else(|| derived_id(id, index));
        put_reading(connection, id, reading_id, reading)?;
    }
    for verdict in &visit.verdicts {
        put_verdict(connection, id, verdict)?;
    }
    put_actions(connection, id, &visit.actions)
}

/// A visit with everything entered during it, and its system.
pub(super) fn visit(connection: &Connection, id: VisitId) -> Result<(SystemId, Visit), StoreError> {
    let (system, mut visit) = facts(connection, id)?;
    visit.answers = answers(connection, id)?;
    visit.readings = readings(connection, id)?;
    visit.verdicts = verdicts(connection, id)?;
    visit.actions = actions(connection, id)?;
    Ok((system, visit))
}

pub(super) fn parse_id(kind: &'static str, text: &str) -> Result<Uuid, StoreError> {
    Uuid::parse_str(text).map_err(|error| StoreError::Damaged {
        kind,
        id: text.to_owned(),
        detail: error.to_string(),
    })
}

/// An identifier that follows from the visit and the place in its list.
fn derived_id(visit: VisitId, index: usize) -> ReadingId {
    let mut bytes = *visit.0.as_bytes();
    for (byte, part) in bytes[8..].iter_mut().zip((index as u64 + 1).to_be_bytes()) {
        *byte ^= part;
    }
    ReadingId(uuid::Builder::from_custom_bytes(bytes).into_uuid())
}
