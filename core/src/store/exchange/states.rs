//! The states of a record: made of what was changed, taken in, put in its place.

use super::{Conflict, Side, records};
use crate::exchange::{self, Digest, ExchangeError, Kind, Record, Revision, merge, shown};
use crate::store::row::damaged;
use crate::store::visits::parse_id;
use crate::store::{StoreError, stamp};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, OptionalExtension, params};
use std::collections::BTreeSet;
use uuid::Uuid;

/// What came of a record that was taken in.
pub(super) enum Taken {
    Same,
    New,
    Changed,
}

/// Makes a state of what was changed here since the last one.
pub(super) fn note(
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
pub(super) fn revisions(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
) -> Result<Vec<Revision>, StoreError> {
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

pub(super) fn take(
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
pub(super) fn replace(
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
            return Err(damaged("record", &id.to_string(), detail));
        }
    }
    Ok(())
}

pub(super) fn conflicts(connection: &Connection) -> Result<Vec<Conflict>, StoreError> {
    let mut statement = connection.prepare_cached(
        "SELECT DISTINCT kind, record_id FROM revision WHERE content IS NOT NULL \
         ORDER BY kind, record_id",
    )?;
    let rows: Vec<(String, String)> = statement
        .query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?
        .collect::<Result<_, _>>()?;
    let mut conflicts = Vec::new();
    for (kind, id) in rows {
        let damaged = |detail: &str| damaged("revision", &id, detail);
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
