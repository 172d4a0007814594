//! Taking records out for other devices and taking theirs in.
//!
//! A change made here becomes a state of its record when it is next carried out
//! or met by another device's: triggers name the records that changed, and a
//! digest tells whether anything is different.

mod attachments;
mod choice;
mod records;
mod states;

use super::visits::parse_id;
use super::{Store, StoreError, stamp};
use crate::exchange::{Digest, ExchangeError, Header, Kind, Record, Revision, Source, Writer};
use crate::records::{SystemId, VisitId};
use choice::choose;
use chrono::{DateTime, Utc};
use rusqlite::{Connection, OptionalExtension};
use states::{Taken, conflicts, note, replace, revisions, take};
use std::io::{BufRead, Write};
use uuid::Uuid;

/// What was carried out.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct Exported {
    /// Visits in the file.
    pub visits: usize,
    /// Records in the file.
    pub records: usize,
}

/// What was taken in.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct Imported {
    /// Records in the file.
    pub records: usize,
    /// Records that were not here.
    pub new: usize,
    /// Records that were here and are different now.
    pub changed: usize,
    /// Records of which there is more than one state now, still to be decided.
    pub to_decide: usize,
}

/// A record of which devices made different states.
#[derive(Clone, PartialEq, Debug)]
pub struct Conflict {
    /// Kind of record.
    pub kind: Kind,
    /// Its identifier.
    pub id: Uuid,
    /// Its states, the one shown first.
    pub sides: Vec<Side>,
}

/// One of the states to choose from.
#[derive(Clone, PartialEq, Debug)]
pub struct Side {
    /// The state.
    pub revision: Revision,
    /// Whether it stands until somebody decides.
    pub shown: bool,
}

impl Store {
    /// This device's name among those that exchange records.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn this_device(&self) -> Result<Uuid, StoreError> {
        device(&self.connection)
    }

    /// Writes visits, with everything that belongs to them, as an exchange file.
    /// `visits` and `systems` add up; none of either is everything.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn export(
        &mut self,
        visits: &[VisitId],
        systems: &[SystemId],
        personal: bool,
        now: DateTime<Utc>,
        out: &mut dyn Write,
    ) -> Result<Exported, StoreError> {
        let transaction = self.connection.transaction()?;
        let device = device(&transaction)?;
        let chosen = choose(&transaction, visits, systems)?;
        let mut writer = Writer::new(out, &Header::new(stamp(now), device, personal))?;
        let mut exported = Exported::default();
        for (kind, id) in chosen {
            if kind.is_personal() && !personal {
                continue;
            }
            note(&transaction, kind, id, now, device)?;
            let revisions = revisions(&transaction, kind, id)?;
            if revisions.is_empty() {
                continue;
            }
            exported.records += 1;
            exported.visits += usize::from(kind == Kind::Visit);
            writer.add(&Record {
                kind,
                id,
                revisions,
            })?;
        }
        writer.finish()?;
        transaction.commit()?;
        Ok(exported)
    }

    /// Takes in an exchange file, all of it or nothing. `open` gives the file
    /// from its beginning; it is read twice, so that a bad file is known before
    /// the database is touched.
    ///
    /// # Errors
    /// [`StoreError`]; the database is as before.
    pub fn import<R: BufRead>(
        &mut self,
        mut open: impl FnMut() -> std::io::Result<R>,
        now: DateTime<Utc>,
    ) -> Result<Imported, StoreError> {
        let mut source = Source::open(open().map_err(ExchangeError::from)?)?;
        let header = source.header.clone();
        while let Some(record) = source.next()? {
            let line = source.line();
            check(&record, header.personal)
                .map_err(|detail| ExchangeError::Malformed { line, detail })?;
        }
        let transaction = self.connection.transaction()?;
        let device = device(&transaction)?;
        let mut imported = Imported::default();
        let mut source = Source::open(open().map_err(ExchangeError::from)?)?;
        if source.header != header {
            return Err(ExchangeError::Altered("it changed while being read".to_owned()).into());
        }
        while let Some(record) = source.next()? {
            let line = source.line();
            imported.records += 1;
            let before = take(&transaction, &record, now, device);
            match before.map_err(|error| at(line, error))? {
                Taken::Same => {}
                Taken::New => imported.new += 1,
                Taken::Changed => imported.changed += 1,
            }
        }
        imported.to_decide = conflicts(&transaction)?.len();
        transaction.commit()?;
        Ok(imported)
    }

    /// Every record on which devices disagree.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn conflicts(&self) -> Result<Vec<Conflict>, StoreError> {
        conflicts(&self.connection)
    }

    /// Decides on a record: this state stands, and the others are seen and left
    /// behind, here and wherever the decision is carried.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] if there is no such state.
    pub fn settle(
        &mut self,
        kind: Kind,
        id: Uuid,
        keep: Digest,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let transaction = self.connection.transaction()?;
        let device = device(&transaction)?;
        note(&transaction, kind, id, now, device)?;
        let sides = revisions(&transaction, kind, id)?;
        let kept = sides.iter().find(|side| side.id == keep);
        let kept = kept.ok_or_else(|| StoreError::NotFound {
            kind: "state",
            id: keep.to_string(),
        })?;
        let past = sides
            .iter()
            .flat_map(|side| side.past.iter().copied().chain([side.id]))
            .collect();
        let content = kept.content.clone();
        let decided = Revision::new(kind, id, past, content, stamp(now), device);
        replace(&transaction, kind, id, &sides, &[decided], now)?;
        transaction.commit()?;
        Ok(())
    }
}

/// A failure while taking in a line, told with the line where it is one of the file.
fn at(line: u64, error: StoreError) -> StoreError {
    match error {
        StoreError::NotFound { kind, id } => ExchangeError::Malformed {
            line,
            detail: format!("the {kind} {id} is missing"),
        }
        .into(),
        StoreError::Damaged { detail, .. } => ExchangeError::Malformed { line, detail }.into(),
        other => other,
    }
}

fn check(record: &Record, personal: bool) -> Result<(), String> {
    if record.kind.is_personal() && !personal {
        return Err("the header says that nobody is named".to_owned());
    }
    record
        .revisions
        .iter()
        .try_for_each(|revision| records::check(record.kind, record.id, &revision.content))
}

/// This device's name, made on first need.
fn device(connection: &Connection) -> Result<Uuid, StoreError> {
    let known: Option<String> = connection
        .query_row("SELECT id FROM device", [], |row| row.get(0))
        .optional()?;
    match known {
        Some(text) => parse_id("device", &text),
        None => {
            // SQLite's own random numbers: the store takes no chance from outside.
            let bytes: [u8; 16] =
                connection.query_row("SELECT randomblob(16)", [], |row| row.get(0))?;
            let id = uuid::Builder::from_random_bytes(bytes).into_uuid();
            connection.execute("INSERT INTO device VALUES (1, ?1)", [id.to_string()])?;
            Ok(id)
        }
    }
}
