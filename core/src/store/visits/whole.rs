//! A visit as a whole: with everything entered during it and everything around it.

use super::VisitRecord;
use super::rows::{
    actions, answers, facts, put_actions, put_answer, put_facts, put_reading, put_verdict,
    readings, verdicts,
};
use crate::records::visit_file::VisitFile;
use crate::records::{ReadingId, SiteId, SystemId, Visit, VisitId};
use crate::store::StoreError;
use crate::store::signed::signed;
use crate::store::sites::{commissioning, put_commissioning, put_site, put_system, site, system};
use chrono::{DateTime, Utc};
use rusqlite::Connection;
use uuid::Uuid;

pub(in crate::store) fn put_record(
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
pub(in crate::store) fn around(
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
pub(in crate::store) fn put_visit(
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
pub(in crate::store) fn visit(
    connection: &Connection,
    id: VisitId,
) -> Result<(SystemId, Visit), StoreError> {
    let (system, mut visit) = facts(connection, id)?;
    visit.answers = answers(connection, id)?;
    visit.readings = readings(connection, id)?;
    visit.verdicts = verdicts(connection, id)?;
    visit.actions = actions(connection, id)?;
    Ok((system, visit))
}

pub(in crate::store) fn parse_id(kind: &'static str, text: &str) -> Result<Uuid, StoreError> {
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
