//! The board's own rows: kept beside the records, brought up to date when the
//! board is next asked for.

use super::row::damaged;
use super::sites::{commissioning, site, system};
use super::visits::parse_id;
use super::{Store, StoreError};
use crate::fleet::{Builder, Fleet, FollowUpRow, SystemRow, VisitRow, WordSort};
use crate::records::visit_file::VisitFile;
use crate::records::{SystemId, VisitId};
use crate::units::{Dimension, Unit};
use chrono::{Datelike, NaiveDate};
use rusqlite::{Connection, OptionalExtension, params};
use std::collections::HashMap;
use std::sync::LazyLock;

/// What the board groups a system by, in words.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct BoardFacts {
    /// Day of commissioning.
    pub started: Option<NaiveDate>,
    /// Day of the last charge.
    pub charged: Option<NaiveDate>,
    /// Who commissioned it.
    pub crew: Option<String>,
    /// Its fluid.
    pub fluid: Option<String>,
    /// Its kind of flow centre.
    pub centre: Option<String>,
    /// The pipe of its circuits.
    pub pipe: Option<String>,
    /// Habits known, as a set of bits.
    pub known: u32,
    /// Habits kept among them.
    pub kept: u32,
}

impl Store {
    /// Brings the board's rows up to date with the records, those that changed
    /// only. `facts` says what a system is grouped by. Says whether anything changed.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn refresh_board(
        &mut self,
        facts: &dyn Fn(&VisitFile) -> BoardFacts,
    ) -> Result<bool, StoreError> {
        let sql = "SELECT EXISTS (SELECT 1 FROM uncounted)";
        let any: bool = self
            .connection
            .prepare_cached(sql)?
            .query_row([], |row| row.get(0))?;
        if !any {
            return Ok(false);
        }
        let transaction = self.connection.transaction()?;
        let mut words = Words::load(&transaction)?;
        for key in stale(&transaction, "system")? {
            let id = SystemId(parse_id("system", &key)?);
            let (site_id, system) = system(&transaction, id)?;
            let file = VisitFile {
                site: site(&transaction, site_id)?,
                system,
                commissioning: commissioning(&transaction, id)?,
                ..VisitFile::default()
            };
            put_system(&transaction, &key, &facts(&file), &mut words)?;
        }
        for key in stale(&transaction, "visit")? {
            put_visit(&transaction, &key, &mut words)?;
        }
        transaction.execute("DELETE FROM uncounted", [])?;
        transaction.commit()?;
        Ok(true)
    }

    /// A number that changes when another connection has changed the database.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn version(&self) -> Result<i64, StoreError> {
        Ok(self
            .connection
            .pragma_query_value(None, "data_version", |row| row.get(0))?)
    }

    /// Every row of the board.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn fleet(&self) -> Result<Fleet, StoreError> {
        let mut builder = Builder::default();
        let mut statement = self
            .connection
            .prepare_cached("SELECT number, sort, word FROM board_word")?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            let sort = row.get_ref(1)?.as_str().unwrap_or_default();
            let sort =
                WordSort::from_id(sort).ok_or_else(|| damaged("board word", "", "no such sort"))?;
            let word = row.get_ref(2)?.as_str().unwrap_or_default();
            builder.word(row.get(0)?, sort, word);
        }
        let mut statement = self.connection.prepare_cached(
            "SELECT number, started, charged, crew, fluid, centre, pipe, known, kept \
             FROM board_system ORDER BY number",
        )?;
        let mut rows = statement.query([])?;
        let mut places: Vec<u32> = Vec::new();
        while let Some(row) = rows.next()? {
            let number = row.get::<_, u32>(0)? as usize;
            let place = builder.system(SystemRow {
                started: row.get(1)?,
                charged: row.get(2)?,
                crew: row.get(3)?,
                fluid: row.get(4)?,
                centre: row.get(5)?,
                pipe: row.get(6)?,
                known: row.get(7)?,
                kept: row.get(8)?,
            });
            if places.len() <= number {
                places.resize(number + 1, u32::MAX);
            }
            places[number] = place;
        }
        let mut statement = self.connection.prepare_cached(
            "SELECT number, system, day, minutes, cost, callback, causes, follow_ups \
             FROM board_visit",
        )?;
        let mut rows = statement.query([])?;
        let (mut causes, mut follow_ups) = (Vec::new(), Vec::new());
        while let Some(row) = rows.next()? {
            let system = row.get::<_, u32>(1)? as usize;
            let Some(system) = places.get(system).filter(|place| **place != u32::MAX) else {
                return Err(damaged("board visit", "", "no such system"));
            };
            unpack(row.get_ref(6)?.as_blob().unwrap_or_default(), &mut causes);
            let mut said = Vec::new();
            unpack(row.get_ref(7)?.as_blob().unwrap_or_default(), &mut said);
            follow_ups.clear();
            follow_ups.extend(said.as_chunks::<3>().0.iter().map(|[cause, held, day]| {
                FollowUpRow {
                    cause: *cause,
                    held: *held != 0,
                    day: day.cast_signed(),
                }
            }));
            builder.visit(
                VisitRow {
                    number: row.get(0)?,
                    system: *system,
                    day: row.get(2)?,
                    minutes: row.get(3)?,
                    cost: row.get(4)?,
                    callback: row.get(5)?,
                    ..VisitRow::default()
                },
                &causes,
                &follow_ups,
            );
        }
        Ok(builder.finish())
    }

    /// The visits of board rows.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn board_visits(&self, numbers: &[i64]) -> Result<Vec<VisitId>, StoreError> {
        let mut statement = self
            .connection
            .prepare_cached("SELECT visit_id FROM board_visit WHERE number = ?1")?;
        numbers
            .iter()
            .map(|number| {
                let id: String = statement.query_row([number], |row| row.get(0))?;
                Ok(VisitId(parse_id("visit", &id)?))
            })
            .collect()
    }
}

fn stale(connection: &Connection, kind: &str) -> Result<Vec<String>, StoreError> {
    Ok(connection
        .prepare_cached("SELECT record_id FROM uncounted WHERE kind = ?1")?
        .query_map([kind], |row| row.get(0))?
        .collect::<Result<_, _>>()?)
}

/// Words already numbered, and numbers for new ones.
struct Words<'a> {
    connection: &'a Connection,
    known: HashMap<(WordSort, String), u32>,
}

impl<'a> Words<'a> {
    fn load(connection: &'a Connection) -> Result<Self, StoreError> {
        let mut known = HashMap::new();
        let mut statement =
            connection.prepare_cached("SELECT number, sort, word FROM board_word")?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            let sort: String = row.get(1)?;
            if let Some(sort) = WordSort::from_id(&sort) {
                known.insert((sort, row.get(2)?), row.get(0)?);
            }
        }
        Ok(Self { connection, known })
    }

    fn number(&mut self, sort: WordSort, word: Option<&str>) -> Result<u32, StoreError> {
        let Some(word) = word.map(str::trim).filter(|word| !word.is_empty()) else {
            return Ok(0);
        };
        let key = (sort, word.to_owned());
        if let Some(number) = self.known.get(&key) {
            return Ok(*number);
        }
        // Written in another case it is the same word to the table.
        self.connection
            .prepare_cached("INSERT OR IGNORE INTO board_word (sort, word) VALUES (?1, ?2)")?
            .execute([sort.id(), word])?;
        let number = self
            .connection
            .prepare_cached("SELECT number FROM board_word WHERE sort = ?1 AND word = ?2")?
            .query_row([sort.id(), word], |row| row.get(0))?;
        self.known.insert(key, number);
        Ok(number)
    }
}

fn put_system(
    connection: &Connection,
    key: &str,
    facts: &BoardFacts,
    words: &mut Words<'_>,
) -> Result<(), StoreError> {
    connection
        .prepare_cached(
            "INSERT INTO board_system (system_id, started, charged, crew, fluid, centre, pipe, \
             known, kept) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9) \
             ON CONFLICT (system_id) DO UPDATE SET started = ?2, charged = ?3, crew = ?4, \
             fluid = ?5, centre = ?6, pipe = ?7, known = ?8, kept = ?9",
        )?
        .execute(params![
            key,
            facts.started.map(|day| day.num_days_from_ce()),
            facts.charged.map(|day| day.num_days_from_ce()),
            words.number(WordSort::Crew, facts.crew.as_deref())?,
            words.number(WordSort::Fluid, facts.fluid.as_deref())?,
            words.number(WordSort::Centre, facts.centre.as_deref())?,
            words.number(WordSort::Pipe, facts.pipe.as_deref())?,
            facts.known,
            facts.kept,
        ])?;
    Ok(())
}

/// Whether a row of `visit` came of some trouble: there is a complaint, or something was asked.
pub(super) const TROUBLE: &str =
    "(visit.complaint IS NOT NULL OR EXISTS (SELECT 1 FROM answer WHERE visit_id = visit.id))";

/// What the board takes from a row of `visit`.
static VISIT_ROW: LazyLock<String> = LazyLock::new(|| {
    format!(
        "SELECT board_system.number, date, time_spent_value, time_spent_unit, cost, {TROUBLE} \
         FROM visit JOIN board_system ON board_system.system_id = visit.system_id \
         WHERE visit.id = ?1"
    )
});

fn put_visit(connection: &Connection, key: &str, words: &mut Words<'_>) -> Result<(), StoreError> {
    let row = connection
        .prepare_cached(&VISIT_ROW)?
        .query_row([key], |row| {
            let day: Option<String> = row.get(1)?;
            let time: Option<f64> = row.get(2)?;
            let unit: Option<String> = row.get(3)?;
            let cost: Option<f64> = row.get(4)?;
            Ok((
                row.get::<_, i64>(0)?,
                day,
                time.zip(unit),
                cost,
                row.get::<_, bool>(5)?,
            ))
        })
        .optional()?;
    let Some((system, day, time, cost, trouble)) = row else {
        return Err(damaged("visit", key, "it has no system"));
    };
    let day = day.and_then(|day| day.parse::<NaiveDate>().ok());
    let minutes = time.and_then(|(value, symbol)| {
        let unit = Unit::of(Dimension::Duration).find(|unit| unit.symbol() == symbol)?;
        Some(Unit::Minute.from_si(unit.to_si(value)))
    });
    let mut causes = Vec::new();
    let mut statement = connection
        .prepare_cached("SELECT cause FROM verdict WHERE visit_id = ?1 AND confirmed = 1")?;
    let mut rows = statement.query([key])?;
    while let Some(row) = rows.next()? {
        let cause: String = row.get(0)?;
        causes.push(words.number(WordSort::Cause, Some(&cause))?);
    }
    let mut said = Vec::new();
    let mut statement = connection.prepare_cached(
        "SELECT cause, held, day FROM follow_up WHERE visit_id = ?1 ORDER BY day, id",
    )?;
    let mut rows = statement.query([key])?;
    while let Some(row) = rows.next()? {
        let (cause, held, day): (String, bool, String) = (row.get(0)?, row.get(1)?, row.get(2)?);
        if let Ok(day) = day.parse::<NaiveDate>() {
            let cause = words.number(WordSort::Cause, Some(&cause))?;
            said.extend([
                cause,
                u32::from(held),
                day.num_days_from_ce().cast_unsigned(),
            ]);
        }
    }
    let callback = trouble || !causes.is_empty();
    connection
        .prepare_cached(
            "INSERT INTO board_visit (visit_id, system, day, minutes, cost, callback, causes, \
             follow_ups) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8) \
             ON CONFLICT (visit_id) DO UPDATE SET system = ?2, day = ?3, minutes = ?4, cost = ?5, \
             callback = ?6, causes = ?7, follow_ups = ?8",
        )?
        .execute(params![
            key,
            system,
            day.map(|day| day.num_days_from_ce()),
            minutes.unwrap_or(0.0),
            cost.unwrap_or(0.0),
            callback,
            pack(&causes),
            pack(&said),
        ])?;
    Ok(())
}

fn pack(numbers: &[u32]) -> Vec<u8> {
    numbers
        .iter()
        .flat_map(|number| number.to_le_bytes())
        .collect()
}

fn unpack(bytes: &[u8], into: &mut Vec<u32>) {
    into.clear();
    let (chunks, _) = bytes.as_chunks::<4>();
    into.extend(chunks.iter().map(|chunk| u32::from_le_bytes(*chunk)));
}
