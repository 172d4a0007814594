//! Taking records out for other devices and taking theirs in.
//!
//! A change made here becomes a state of its record when it is next carried out
//! or met by another device's: triggers name the records that changed, and a
//! digest tells whether anything is different.

mod attachments;
mod records;

use super::visits::parse_id;
use super::{Store, StoreError, stamp};
use crate::exchange::{
    self, Digest, ExchangeError, Header, Kind, Record, Revision, Source, Writer, merge, shown,
};
use crate::records::{SystemId, VisitId};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, OptionalExtension, params};
use std::collections::BTreeSet;
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

/// Photos that are there, or were.
const PHOTOS: &str = "SELECT id FROM photo UNION SELECT record_id FROM revision \
     WHERE kind = 'photo'";
/// Photos that were there and were carried to others.
const GONE_PHOTOS: &str = "SELECT record_id FROM revision WHERE kind = 'photo' \
     AND record_id NOT IN (SELECT id FROM photo)";

/// What to carry out.
type Chosen = BTreeSet<(Kind, Uuid)>;

impl Store {
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

enum Taken {
    Same,
    New,
    Changed,
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

/// Records that belong to what was asked for, in the order in which they need
/// each other.
fn choose(
    connection: &Connection,
    visits: &[VisitId],
    systems: &[SystemId],
) -> Result<Chosen, StoreError> {
    let mut chosen = Chosen::new();
    let everything = visits.is_empty() && systems.is_empty();
    if everything {
        for (sql, kinds) in [
            ("SELECT id FROM site", &[Kind::Site, Kind::Household][..]),
            ("SELECT id FROM system", &[Kind::System]),
            (
                "SELECT system_id FROM commissioning",
                &[Kind::Commissioning],
            ),
            ("SELECT id FROM visit", &[Kind::Visit, Kind::Words]),
            ("SELECT id FROM follow_up", &[Kind::FollowUp]),
            (PHOTOS, &[Kind::Photo]),
            (
                "SELECT DISTINCT visit_id FROM signature",
                &[Kind::Signatures],
            ),
        ] {
            add(connection, sql, None, kinds, &mut chosen)?;
        }
        return without_demo(connection, chosen);
    }
    let mut wanted: BTreeSet<VisitId> = visits.iter().copied().collect();
    for system in systems {
        super::sites::system(connection, *system)?;
        add_system(connection, &system.to_string(), &mut chosen)?;
        let sql = "SELECT id FROM visit WHERE system_id = ?1";
        let mut found = Chosen::new();
        add(
            connection,
            sql,
            Some(&system.to_string()),
            &[Kind::Visit],
            &mut found,
        )?;
        wanted.extend(found.into_iter().map(|(_, id)| VisitId(id)));
    }
    for visit in wanted {
        let key = visit.to_string();
        let (system, _) = super::visits::visit(connection, visit)?;
        add_system(connection, &system.to_string(), &mut chosen)?;
        let kinds = [Kind::Visit, Kind::Words, Kind::Signatures];
        chosen.extend(kinds.map(|kind| (kind, visit.0)));
        let sql = "SELECT id FROM follow_up WHERE visit_id = ?1";
        add(connection, sql, Some(&key), &[Kind::FollowUp], &mut chosen)?;
        let sql = "SELECT id FROM photo WHERE visit_id = ?1";
        add(connection, sql, Some(&key), &[Kind::Photo], &mut chosen)?;
    }
    // A photo that was taken away is of no visit any more.
    add(connection, GONE_PHOTOS, None, &[Kind::Photo], &mut chosen)?;
    without_demo(connection, chosen)
}

/// What is invented never leaves this device: elsewhere nobody could tell it from
/// what is so. A system stays that has a visit of one's own.
fn without_demo(connection: &Connection, mut chosen: Chosen) -> Result<Chosen, StoreError> {
    let mut invented = Chosen::new();
    for (sql, kinds) in [
        (
            "SELECT visit_id FROM demo_visit",
            &[Kind::Visit, Kind::Words, Kind::Signatures][..],
        ),
        (
            "SELECT id FROM photo WHERE visit_id IN (SELECT visit_id FROM demo_visit)",
            &[Kind::Photo],
        ),
        (
            "SELECT id FROM follow_up WHERE visit_id IN (SELECT visit_id FROM demo_visit)",
            &[Kind::FollowUp],
        ),
        (
            "SELECT system_id FROM demo_system WHERE system_id NOT IN \
             (SELECT system_id FROM visit WHERE id NOT IN (SELECT visit_id FROM demo_visit))",
            &[Kind::System, Kind::Commissioning],
        ),
        (
            "SELECT DISTINCT site_id FROM system WHERE id IN (SELECT system_id FROM demo_system) \
             AND site_id NOT IN (SELECT site_id FROM system WHERE id NOT IN \
             (SELECT system_id FROM demo_system) OR id IN (SELECT system_id FROM visit \
             WHERE id NOT IN (SELECT visit_id FROM demo_visit)))",
            &[Kind::Site, Kind::Household],
        ),
    ] {
        add(connection, sql, None, kinds, &mut invented)?;
    }
    chosen.retain(|record| !invented.contains(record));
    Ok(chosen)
}

fn add_system(connection: &Connection, key: &str, chosen: &mut Chosen) -> Result<(), StoreError> {
    let site = "SELECT site_id FROM system WHERE id = ?1";
    add(
        connection,
        site,
        Some(key),
        &[Kind::Site, Kind::Household],
        chosen,
    )?;
    chosen.insert((Kind::System, parse_id("system", key)?));
    let sql = "SELECT system_id FROM commissioning WHERE system_id = ?1";
    add(connection, sql, Some(key), &[Kind::Commissioning], chosen)
}

fn add(
    connection: &Connection,
    sql: &str,
    key: Option<&str>,
    kinds: &[Kind],
    chosen: &mut Chosen,
) -> Result<(), StoreError> {
    let mut statement = connection.prepare_cached(sql)?;
    let mut rows = match key {
        Some(key) => statement.query([key])?,
        None => statement.query([])?,
    };
    while let Some(row) = rows.next()? {
        let id = parse_id("record", &row.get::<_, String>(0)?)?;
        chosen.extend(kinds.iter().map(|kind| (*kind, id)));
    }
    Ok(())
}

/// Makes a state of what was changed here since the last one.
fn note(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
    now: DateTime<Utc>,
    device: Uuid,
) -> Result<(), StoreError> {
    let key = params![kind.id(), id.to_string()];
    let unnoted = connection
        .prepare_cached("DELETE FROM unnoted WHERE kind = ?1 AND record_id = ?2")?
        .execute(key)?;
    if unnoted == 0 {
        return Ok(());
    }
    let Some(content) = records::content(connection, kind, id)? else {
        return Ok(());
    };
    let last = connection
        .prepare_cached(
            "SELECT id, past, digest FROM revision WHERE kind = ?1 AND record_id = ?2 \
             AND content IS NULL",
        )?
        .query_row(key, |row| {
            Ok((row.get(0)?, row.get::<_, Vec<u8>>(1)?, row.get(2)?))
        })
        .optional()?;
    let mut past = BTreeSet::new();
    // Nothing said is no state: otherwise a visit that came without its words
    // would seem to have lost them here.
    if last.is_none() && records::says_nothing(kind, &content) {
        return Ok(());
    }
    if let Some((last, earlier, digest)) = last {
        if Digest(digest) == Digest::of(content.as_bytes()) {
            return Ok(());
        }
        past = unpack(&earlier);
        past.insert(Digest(last));
        connection
            .prepare_cached(
                "DELETE FROM revision WHERE kind = ?1 AND record_id = ?2 AND content IS NULL",
            )?
            .execute(key)?;
    }
    let revision = Revision::new(kind, id, past, content, stamp(now), device);
    keep(connection, kind, id, &revision, true)
}

fn keep(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
    revision: &Revision,
    shown: bool,
) -> Result<(), StoreError> {
    connection
        .prepare_cached(
            "INSERT OR REPLACE INTO revision (kind, record_id, id, past, digest, content, \
             made_at, device) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
        )?
        .execute(params![
            kind.id(),
            id.to_string(),
            revision.id.0,
            pack(&revision.past),
            Digest::of(revision.content.as_bytes()).0,
            (!shown).then_some(revision.content.as_str()),
            revision.made_at,
            revision.device.to_string(),
        ])?;
    Ok(())
}

fn pack(past: &BTreeSet<Digest>) -> Vec<u8> {
    past.iter().flat_map(|digest| digest.0).collect()
}

fn unpack(bytes: &[u8]) -> BTreeSet<Digest> {
    let (chunks, _) = bytes.as_chunks::<16>();
    chunks.iter().map(|chunk| Digest(*chunk)).collect()
}

/// Every state of a record that stands; nothing must be unnoted.
fn revisions(connection: &Connection, kind: Kind, id: Uuid) -> Result<Vec<Revision>, StoreError> {
    let mut statement = connection.prepare_cached(
        "SELECT id, past, content, made_at, device FROM revision \
         WHERE kind = ?1 AND record_id = ?2",
    )?;
    let mut rows = statement.query(params![kind.id(), id.to_string()])?;
    let mut revisions = Vec::new();
    while let Some(row) = rows.next()? {
        let content: Option<String> = row.get(2)?;
        let content = match content {
            Some(content) => content,
            None => {
                records::content(connection, kind, id)?.ok_or_else(|| StoreError::NotFound {
                    kind: "record",
                    id: id.to_string(),
                })?
            }
        };
        revisions.push(Revision {
            id: Digest(row.get(0)?),
            past: unpack(&row.get::<_, Vec<u8>>(1)?),
            content,
            made_at: row.get(3)?,
            device: parse_id("device", &row.get::<_, String>(4)?)?,
        });
    }
    Ok(revisions)
}

fn take(
    connection: &Connection,
    record: &Record,
    now: DateTime<Utc>,
    device: Uuid,
) -> Result<Taken, StoreError> {
    note(connection, record.kind, record.id, now, device)?;
    let before = revisions(connection, record.kind, record.id)?;
    let after = merge(before.clone(), record.revisions.clone());
    if after.len() > exchange::MOST_REVISIONS {
        return Err(ExchangeError::TooLarge("the states of a record").into());
    }
    let same = before.len() == after.len() && before.iter().all(|one| after.contains(one));
    if same {
        return Ok(Taken::Same);
    }
    replace(connection, record.kind, record.id, &before, &after, now)?;
    Ok(if before.is_empty() {
        Taken::New
    } else {
        Taken::Changed
    })
}

/// Brings a record from some states to others; the one shown goes into the tables.
fn replace(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
    before: &[Revision],
    after: &[Revision],
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let Some(top) = shown(after) else {
        return Ok(());
    };
    connection
        .prepare_cached("DELETE FROM revision WHERE kind = ?1 AND record_id = ?2")?
        .execute(params![kind.id(), id.to_string()])?;
    for revision in after {
        keep(connection, kind, id, revision, revision.id == top.id)?;
    }
    let stands = shown(before).is_some_and(|stood| stood.content == top.content);
    if !stands {
        records::put_as_known(connection, kind, id, &top.content, now)?;
        // What was put must be what was written, or the next change here would
        // be told as one that nobody made.
        let kept = records::content(connection, kind, id)?;
        if kept.as_deref() != Some(top.content.as_str()) {
            let detail = "the record cannot be kept as it is written";
            return Err(super::row::damaged("record", &id.to_string(), detail));
        }
    }
    Ok(())
}

fn conflicts(connection: &Connection) -> Result<Vec<Conflict>, StoreError> {
    let mut statement = connection.prepare_cached(
        "SELECT DISTINCT kind, record_id FROM revision WHERE content IS NOT NULL \
         ORDER BY kind, record_id",
    )?;
    let rows: Vec<(String, String)> = statement
        .query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?
        .collect::<Result<_, _>>()?;
    let mut conflicts = Vec::new();
    for (kind, id) in rows {
        let damaged = |detail: &str| super::row::damaged("revision", &id, detail);
        let kind = Kind::from_id(&kind).ok_or_else(|| damaged(&kind))?;
        let id = parse_id("record", &id)?;
        let revisions = revisions(connection, kind, id)?;
        let contents: BTreeSet<&str> = revisions.iter().map(|one| one.content.as_str()).collect();
        if contents.len() < 2 {
            continue;
        }
        let top = shown(&revisions).map(|top| top.id);
        let mut sides: Vec<Side> = revisions
            .iter()
            .map(|revision| Side {
                revision: revision.clone(),
                shown: Some(revision.id) == top,
            })
            .collect();
        sides.sort_by_key(|side| !side.shown);
        conflicts.push(Conflict { kind, id, sides });
    }
    Ok(conflicts)
}
