//! The rows of which a visit consists.

use super::parse_id;
use crate::records::{
    Action, Answer, Instrument, Reading, ReadingId, SystemId, Verdict, Visit, VisitId, name_of,
};
use crate::store::row::{READING_COLUMNS, document, measure, named, reading, to_document};
use crate::store::sites::not_found;
use crate::store::{StoreError, stamp};
use crate::units::{Dimension, Measure, Unit};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, params};

pub(in crate::store) fn put_facts(
    connection: &Connection,
    id: VisitId,
    system: SystemId,
    visit: &Visit,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let key = id.to_string();
    connection
        .prepare_cached(
            "INSERT INTO visit (id, system_id, date, technician, complaint, means, outcome, notes, \
             started_at, changed_at, time_spent_value, time_spent_unit, cost) \
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?9, ?10, ?11, ?12) \
             ON CONFLICT (id) DO UPDATE SET system_id = ?2, date = ?3, technician = ?4, \
             complaint = ?5, means = ?6, outcome = ?7, notes = ?8, changed_at = ?9, \
             time_spent_value = ?10, time_spent_unit = ?11, cost = ?12",
        )?
        .execute(params![
            key,
            system.to_string(),
            visit.date.map(|date| date.to_string()),
            visit.technician,
            visit.complaint,
            to_document("visit", &key, &visit.means)?,
            visit.outcome.as_ref().and_then(name_of),
            visit.notes,
            stamp(now),
            visit.time_spent.map(Measure::value),
            visit.time_spent.map(|time| time.unit().symbol()),
            visit.cost.map(Measure::value),
        ])?;
    Ok(())
}

pub(super) fn facts(connection: &Connection, id: VisitId) -> Result<(SystemId, Visit), StoreError> {
    let key = id.to_string();
    let mut statement = connection.prepare_cached(
        "SELECT system_id, date, technician, complaint, means, outcome, notes, \
         time_spent_value, time_spent_unit, cost FROM visit WHERE id = ?1",
    )?;
    let mut rows = statement.query([&key])?;
    let row = rows.next()?.ok_or_else(|| not_found("visit", &key))?;
    let system: String = row.get(0)?;
    let date: Option<String> = row.get(1)?;
    let means: String = row.get(4)?;
    let outcome: Option<String> = row.get(5)?;
    let visit = Visit {
        date: date.map(|text| named("visit", &key, &text)).transpose()?,
        technician: row.get(2)?,
        complaint: row.get(3)?,
        means: document("visit", &key, &means)?,
        outcome: outcome
            .map(|text| named("visit", &key, &text))
            .transpose()?,
        notes: row.get(6)?,
        time_spent: measure(row, 7, Dimension::Duration, &key)?
            .map(|written| Measure::new(written.value, written.unit)),
        cost: row
            .get::<_, Option<f64>>(9)?
            .map(|cost| Measure::new(cost, Unit::Plain)),
        ..Visit::default()
    };
    Ok((SystemId(parse_id("system", &system)?), visit))
}

pub(super) fn put_answer(
    connection: &Connection,
    visit: VisitId,
    answer: &Answer,
) -> Result<(), StoreError> {
    connection
        .prepare_cached(
            "INSERT INTO answer (visit_id, finding, level) VALUES (?1, ?2, ?3) \
             ON CONFLICT (visit_id, finding) DO UPDATE SET level = ?3",
        )?
        .execute(params![
            visit.to_string(),
            answer.finding,
            name_of(&answer.is)
        ])?;
    Ok(())
}

pub(super) fn answers(connection: &Connection, visit: VisitId) -> Result<Vec<Answer>, StoreError> {
    let key = visit.to_string();
    let rows: Vec<(String, String)> = connection
        .prepare_cached("SELECT finding, level FROM answer WHERE visit_id = ?1 ORDER BY finding")?
        .query_map([&key], |row| Ok((row.get(0)?, row.get(1)?)))?
        .collect::<Result<_, _>>()?;
    rows.into_iter()
        .map(|(finding, level)| {
            Ok(Answer {
                finding,
                is: named("answer", &key, &level)?,
            })
        })
        .collect()
}

pub(super) fn put_reading(
    connection: &Connection,
    visit: VisitId,
    id: ReadingId,
    reading: &Reading,
) -> Result<(), StoreError> {
    let accuracy = reading.accuracy();
    connection
        .prepare_cached(
            "INSERT INTO reading (id, visit_id, point, value, unit, accuracy_value, accuracy_unit, \
             instrument, mode, taken_at, phase, circuit, note) \
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13) \
             ON CONFLICT (id) DO UPDATE SET point = ?3, value = ?4, unit = ?5, \
             accuracy_value = ?6, accuracy_unit = ?7, instrument = ?8, mode = ?9, taken_at = ?10, \
             phase = ?11, circuit = ?12, note = ?13",
        )?
        .execute(params![
            id.to_string(),
            visit.to_string(),
            reading.point().id(),
            reading.value().value,
            reading.value().unit.symbol(),
            accuracy.map(|accuracy| accuracy.value),
            accuracy.map(|accuracy| accuracy.unit.symbol()),
            reading.instrument.map(Instrument::id),
            reading.mode.as_ref().and_then(name_of),
            reading.taken_at.map(|at| at.to_rfc3339()),
            name_of(&reading.phase),
            reading.circuit,
            reading.note,
        ])?;
    Ok(())
}

pub(super) fn readings(
    connection: &Connection,
    visit: VisitId,
) -> Result<Vec<Reading>, StoreError> {
    let sql = format!("SELECT {READING_COLUMNS} FROM reading WHERE visit_id = ?1 ORDER BY rowid");
    let mut statement = connection.prepare_cached(&sql)?;
    let mut rows = statement.query([visit.to_string()])?;
    let mut readings = Vec::new();
    while let Some(row) = rows.next()? {
        readings.push(reading(row)?);
    }
    Ok(readings)
}

pub(super) fn put_verdict(
    connection: &Connection,
    visit: VisitId,
    verdict: &Verdict,
) -> Result<(), StoreError> {
    connection
        .prepare_cached(
            "INSERT INTO verdict (visit_id, cause, confirmed, by_check) VALUES (?1, ?2, ?3, ?4) \
             ON CONFLICT (visit_id, cause) DO UPDATE SET confirmed = ?3, by_check = ?4",
        )?
        .execute(params![
            visit.to_string(),
            verdict.cause,
            verdict.confirmed,
            verdict.by_check
        ])?;
    Ok(())
}

pub(super) fn verdicts(
    connection: &Connection,
    visit: VisitId,
) -> Result<Vec<Verdict>, StoreError> {
    let sql = "SELECT cause, confirmed, by_check FROM verdict WHERE visit_id = ?1 ORDER BY cause";
    let verdicts = connection
        .prepare_cached(sql)?
        .query_map([visit.to_string()], |row| {
            Ok(Verdict {
                cause: row.get(0)?,
                confirmed: row.get(1)?,
                by_check: row.get(2)?,
            })
        })?
        .collect::<Result<_, _>>()?;
    Ok(verdicts)
}

pub(super) fn put_actions(
    connection: &Connection,
    visit: VisitId,
    actions: &[Action],
) -> Result<(), StoreError> {
    let key = visit.to_string();
    connection
        .prepare_cached("DELETE FROM action WHERE visit_id = ?1")?
        .execute([&key])?;
    for (position, action) in actions.iter().enumerate() {
        connection
            .prepare_cached(
                "INSERT INTO action (visit_id, position, document) VALUES (?1, ?2, ?3)",
            )?
            .execute(params![
                key,
                position as i64,
                to_document("action", &key, action)?
            ])?;
    }
    Ok(())
}

pub(super) fn actions(connection: &Connection, visit: VisitId) -> Result<Vec<Action>, StoreError> {
    let key = visit.to_string();
    let texts: Vec<String> = connection
        .prepare_cached("SELECT document FROM action WHERE visit_id = ?1 ORDER BY position")?
        .query_map([&key], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    texts
        .iter()
        .map(|text| document("action", &key, text))
        .collect()
}
