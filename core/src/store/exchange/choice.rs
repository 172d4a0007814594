//! Which records are carried out.

use crate::exchange::Kind;
use crate::records::{SystemId, VisitId};
use crate::store::visits::parse_id;
use crate::store::{StoreError, sites, visits as stored};
use rusqlite::Connection;
use std::collections::BTreeSet;
use uuid::Uuid;

/// Photos that are there, or were.
const PHOTOS: &str = "SELECT id FROM photo UNION SELECT record_id FROM revision \
     WHERE kind = 'photo'";
/// Photos that were there and were carried to others.
const GONE_PHOTOS: &str = "SELECT record_id FROM revision WHERE kind = 'photo' \
     AND record_id NOT IN (SELECT id FROM photo)";

/// What to carry out.
type Chosen = BTreeSet<(Kind, Uuid)>;

/// Records that belong to what was asked for, in the order in which they need
/// each other.
pub(super) fn choose(
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
        sites::system(connection, *system)?;
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
        let (system, _) = stored::visit(connection, visit)?;
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
