//! Records as the exchange carries them, out of the tables and into them.

use super::attachments;
use crate::exchange::{
    FollowUp, Household, Kind, SiteContent, SystemContent, VisitContent, Words, check_text, read,
    text,
};
use crate::records::visit_file::{VisitFile, check_limits};
use crate::records::{Commissioning, SiteId, SystemId, VisitId};
use crate::store::follow_ups::{follow_up, put_follow_up};
use crate::store::row::damaged;
use crate::store::sites::{commissioning, put_commissioning, put_site, put_system, site, system};
use crate::store::visits::{put_facts, put_visit, visit};
use crate::store::{StoreError, stamp};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, OptionalExtension, params};
use uuid::Uuid;

/// What a record says, in the one way of writing it; none if there is no such record.
pub(super) fn content(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
) -> Result<Option<String>, StoreError> {
    match write(connection, kind, id) {
        Ok(written) => Ok(written),
        Err(StoreError::NotFound { .. }) => Ok(None),
        Err(error) => Err(error),
    }
}

fn write(connection: &Connection, kind: Kind, id: Uuid) -> Result<Option<String>, StoreError> {
    let written = match kind {
        Kind::Site => text(&SiteContent {
            elevation: site(connection, SiteId(id))?.elevation,
        }),
        Kind::Household => text(&Household::of(&site(connection, SiteId(id))?)),
        Kind::System => {
            let (site, system) = system(connection, SystemId(id))?;
            text(&SystemContent { site, system })
        }
        Kind::Commissioning => {
            let sql = "SELECT 1 FROM commissioning WHERE system_id = ?1";
            let there = connection.prepare_cached(sql)?.exists([id.to_string()])?;
            if !there {
                return Ok(None);
            }
            text(&commissioning(connection, SystemId(id))?)
        }
        Kind::Visit => {
            let (system, visit) = visit(connection, VisitId(id))?;
            let started_at = started_at(connection, id)?;
            text(&VisitContent::of(system, started_at, &visit))
        }
        Kind::Words => text(&Words::of(&visit(connection, VisitId(id))?.1)),
        Kind::FollowUp => match follow_up(connection, id)? {
            Some(found) => text(&found),
            None => return Ok(None),
        },
        Kind::Photo => return attachments::photo(connection, id).map(Some),
        Kind::Signatures => return attachments::signatures(connection, id).map(Some),
    };
    written
        .map(Some)
        .map_err(|detail| damaged("record", &id.to_string(), &detail))
}

fn started_at(connection: &Connection, visit: Uuid) -> Result<DateTime<Utc>, StoreError> {
    let key = visit.to_string();
    let text: String = connection
        .prepare_cached("SELECT started_at FROM visit WHERE id = ?1")?
        .query_row([&key], |row| row.get(0))?;
    let time = DateTime::parse_from_rfc3339(&text);
    time.map(|time| time.with_timezone(&Utc))
        .map_err(|_| damaged("visit", &key, &text))
}

/// Whether a content can be what such a record says. Touches no database.
pub(super) fn check(kind: Kind, id: Uuid, written: &str) -> Result<(), String> {
    check_text_of(written)?;
    let mut file = VisitFile::default();
    match kind {
        Kind::Site => file.site.elevation = read::<SiteContent>(written)?.elevation,
        Kind::Household => {
            read::<Household>(written)?;
        }
        Kind::System => file.system = read::<SystemContent>(written)?.system,
        Kind::Commissioning => file.commissioning = read::<Commissioning>(written)?,
        Kind::Visit => {
            let content: VisitContent = read(written)?;
            let visit = content.visit(Words::default())?;
            if text(&VisitContent::of(
                content.system,
                content.started_at,
                &visit,
            ))? != written
            {
                return Err("the visit is not written in the one way there is".to_owned());
            }
            let mut readings: Vec<_> = visit.readings.iter().map(|reading| reading.id).collect();
            readings.sort_unstable();
            readings.dedup();
            if readings.len() != visit.readings.len() {
                return Err(format!("readings of visit {id} share an identifier"));
            }
        }
        Kind::Words => {
            read::<Words>(written)?;
        }
        Kind::FollowUp => check_text(&read::<FollowUp>(written)?.cause)?,
        Kind::Photo => attachments::check_photo(written)?,
        Kind::Signatures => attachments::check_signatures(written)?,
    }
    match check_limits(&file).first() {
        Some(fault) => Err(format!("{}: {}", fault.path, fault.found)),
        None => Ok(()),
    }
}

/// A null character ends a text for some readers of the database.
fn check_text_of(written: &str) -> Result<(), String> {
    if written.contains("\\u0000") {
        return check_text("\0");
    }
    Ok(())
}

/// Brings a record to what is written.
fn put(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
    written: &str,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let key = id.to_string();
    let bad = |detail: String| damaged("record", &key, &detail);
    match kind {
        Kind::Site => {
            let content: SiteContent = read(written).map_err(bad)?;
            let mut there = or_new(site(connection, SiteId(id)))?;
            there.elevation = content.elevation;
            put_site(connection, SiteId(id), &there, now)
        }
        Kind::Household => {
            let content: Household = read(written).map_err(bad)?;
            let mut there = or_new(site(connection, SiteId(id)))?;
            there.name = content.name;
            there.address = content.address;
            there.contact = content.contact;
            there.notes = content.notes;
            put_site(connection, SiteId(id), &there, now)
        }
        Kind::System => {
            let content: SystemContent = read(written).map_err(bad)?;
            site(connection, content.site)?;
            put_system(connection, SystemId(id), content.site, &content.system, now)
        }
        Kind::Commissioning => {
            let content: Commissioning = read(written).map_err(bad)?;
            system(connection, SystemId(id))?;
            put_commissioning(connection, SystemId(id), &content, now)
        }
        Kind::Visit => {
            let content: VisitContent = read(written).map_err(bad)?;
            system(connection, content.system)?;
            let words = match visit(connection, VisitId(id)) {
                Ok((_, there)) => Words::of(&there),
                Err(StoreError::NotFound { .. }) => Words::default(),
                Err(error) => return Err(error),
            };
            let visit = content.visit(words).map_err(bad)?;
            for reading in &visit.readings {
                if let Some(reading) = reading.id {
                    own_reading(connection, reading.0, &key)?;
                }
            }
            put_visit(connection, VisitId(id), content.system, &visit, now)?;
            connection
                .prepare_cached("UPDATE visit SET started_at = ?2 WHERE id = ?1")?
                .execute(params![key, stamp(content.started_at)])?;
            Ok(())
        }
        Kind::Words => {
            let content: Words = read(written).map_err(bad)?;
            let (of, mut there) = visit(connection, VisitId(id))?;
            there.complaint = content.complaint;
            there.notes = content.notes;
            put_facts(connection, VisitId(id), of, &there, now)
        }
        Kind::FollowUp => {
            let content: FollowUp = read(written).map_err(bad)?;
            visit(connection, content.visit)?;
            put_follow_up(connection, id, &content, now)
        }
        Kind::Photo => attachments::put_photo(connection, id, written),
        Kind::Signatures => attachments::put_signatures(connection, id, written),
    }
}

fn or_new<T: Default>(found: Result<T, StoreError>) -> Result<T, StoreError> {
    match found {
        Err(StoreError::NotFound { .. }) => Ok(T::default()),
        other => other,
    }
}

/// A reading belongs to one visit for good.
fn own_reading(connection: &Connection, reading: Uuid, visit: &str) -> Result<(), StoreError> {
    let owner: Option<String> = connection
        .prepare_cached("SELECT visit_id FROM reading WHERE id = ?1")?
        .query_row([reading.to_string()], |row| row.get(0))
        .optional()?;
    match owner {
        Some(owner) if owner != visit => Err(damaged(
            "reading",
            &reading.to_string(),
            "the reading belongs to another visit",
        )),
        _ => Ok(()),
    }
}

/// Whether a content of such a record is that of one which was never made.
pub(super) fn says_nothing(kind: Kind, written: &str) -> bool {
    match kind {
        Kind::Household => written == "{\"name\":\"\"}",
        Kind::Words => written == "{}",
        Kind::Photo => written == "null",
        Kind::Signatures => written == "[]",
        Kind::Site | Kind::System | Kind::Commissioning | Kind::Visit | Kind::FollowUp => false,
    }
}

/// The kind that shares its row with another.
fn beside(kind: Kind) -> Option<Kind> {
    match kind {
        Kind::Site => Some(Kind::Household),
        Kind::Household => Some(Kind::Site),
        Kind::Visit => Some(Kind::Words),
        Kind::Words => Some(Kind::Visit),
        Kind::System | Kind::Commissioning | Kind::FollowUp | Kind::Photo | Kind::Signatures => {
            None
        }
    }
}

/// Puts a record that came from elsewhere: that is no change made here. What
/// shares its row may have a change of its own waiting; only then it keeps its
/// mark.
pub(super) fn put_as_known(
    connection: &Connection,
    kind: Kind,
    id: Uuid,
    written: &str,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let key = id.to_string();
    let beside = beside(kind);
    let waiting = match beside {
        Some(kind) => connection
            .prepare_cached("SELECT 1 FROM unnoted WHERE kind = ?1 AND record_id = ?2")?
            .exists([kind.id(), key.as_str()])?,
        None => false,
    };
    put(connection, kind, id, written, now)?;
    for marked in [Some(kind), beside.filter(|_| !waiting)]
        .into_iter()
        .flatten()
    {
        connection
            .prepare_cached("DELETE FROM unnoted WHERE kind = ?1 AND record_id = ?2")?
            .execute([marked.id(), key.as_str()])?;
    }
    Ok(())
}
