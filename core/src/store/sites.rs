//! Sites, systems and their commissioning.

use super::row::{document, measure, to_document};
use super::{Store, StoreError, stamp};
use crate::records::{Commissioning, Site, SiteId, System, SystemId, VisitId};
use crate::units::{Dimension, Measure};
use chrono::{DateTime, NaiveDate, Utc};
use rusqlite::{Connection, OptionalExtension, params};

/// A site with its last visit.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteVisited {
    /// Identifier of the site.
    pub id: SiteId,
    /// Its name.
    pub name: String,
    /// Its address.
    pub address: Option<String>,
    /// The visit that was started last.
    pub last_visit: VisitId,
    /// Day of that visit.
    pub last_date: Option<NaiveDate>,
}

impl Store {
    /// Keeps a site, new or changed.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_site(&self, id: SiteId, site: &Site, now: DateTime<Utc>) -> Result<(), StoreError> {
        put_site(&self.connection, id, site, now)
    }

    /// A site.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] among others.
    pub fn site(&self, id: SiteId) -> Result<Site, StoreError> {
        site(&self.connection, id)
    }

    /// Every site with its identifier, by name.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn sites(&self) -> Result<Vec<(SiteId, Site)>, StoreError> {
        let ids: Vec<String> = self
            .connection
            .prepare_cached("SELECT id FROM site ORDER BY name COLLATE NOCASE, id")?
            .query_map([], |row| row.get(0))?
            .collect::<Result<_, _>>()?;
        ids.iter()
            .map(|text| {
                let id = super::visits::parse_id("site", text)?;
                Ok((SiteId(id), self.site(SiteId(id))?))
            })
            .collect()
    }

    /// Every site that was visited, with its last visit.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn sites_visited(&self) -> Result<Vec<SiteVisited>, StoreError> {
        // With max(), SQLite takes the other columns from the row that holds it.
        let mut statement = self.connection.prepare_cached(
            "SELECT site.id, site.name, site.address, visit.id, visit.date, \
             max(visit.started_at) FROM visit \
             JOIN system ON system.id = visit.system_id JOIN site ON site.id = system.site_id \
             GROUP BY site.id ORDER BY site.name COLLATE NOCASE, site.id",
        )?;
        let mut rows = statement.query([])?;
        let mut sites = Vec::new();
        while let Some(row) = rows.next()? {
            let id: String = row.get(0)?;
            let visit: String = row.get(3)?;
            let date: Option<String> = row.get(4)?;
            sites.push(SiteVisited {
                id: SiteId(super::visits::parse_id("site", &id)?),
                name: row.get(1)?,
                address: row.get(2)?,
                last_visit: VisitId(super::visits::parse_id("visit", &visit)?),
                last_date: date
                    .map(|text| super::row::named("visit", &visit, &text))
                    .transpose()?,
            });
        }
        Ok(sites)
    }

    /// Keeps a system, new or changed.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_system(
        &self,
        id: SystemId,
        site: SiteId,
        system: &System,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        put_system(&self.connection, id, site, system, now)
    }

    /// A system and the site it belongs to.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] among others.
    pub fn system(&self, id: SystemId) -> Result<(SiteId, System), StoreError> {
        system(&self.connection, id)
    }

    /// Keeps how a system was commissioned.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_commissioning(
        &self,
        system: SystemId,
        record: &Commissioning,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        put_commissioning(&self.connection, system, record, now)
    }

    /// How a system was commissioned; all unknown when nothing was kept.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn commissioning(&self, system: SystemId) -> Result<Commissioning, StoreError> {
        commissioning(&self.connection, system)
    }
}

pub(super) fn put_site(
    connection: &Connection,
    id: SiteId,
    site: &Site,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    connection
        .prepare_cached(
            "INSERT INTO site (id, name, address, contact, elevation_value, elevation_unit, notes, \
             changed_at) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8) \
             ON CONFLICT (id) DO UPDATE SET name = ?2, address = ?3, contact = ?4, \
             elevation_value = ?5, elevation_unit = ?6, notes = ?7, changed_at = ?8",
        )?
        .execute(params![
            id.to_string(),
            site.name,
            site.address,
            site.contact,
            site.elevation.map(Measure::value),
            site.elevation.map(|elevation| elevation.unit().symbol()),
            site.notes,
            stamp(now),
        ])?;
    Ok(())
}

pub(super) fn site(connection: &Connection, id: SiteId) -> Result<Site, StoreError> {
    let key = id.to_string();
    let mut statement = connection.prepare_cached(
        "SELECT elevation_value, elevation_unit, name, address, contact, notes FROM site \
         WHERE id = ?1",
    )?;
    let mut rows = statement.query([&key])?;
    let row = rows.next()?.ok_or_else(|| not_found("site", &key))?;
    let elevation = measure(row, 0, Dimension::Length, &key)?;
    Ok(Site {
        elevation: elevation.map(|written| Measure::new(written.value, written.unit)),
        name: row.get(2)?,
        address: row.get(3)?,
        contact: row.get(4)?,
        notes: row.get(5)?,
    })
}

pub(super) fn put_system(
    connection: &Connection,
    id: SystemId,
    site: SiteId,
    system: &System,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let key = id.to_string();
    let text = to_document("system", &key, system)?;
    connection
        .prepare_cached(
            "INSERT INTO system (id, site_id, document, changed_at) VALUES (?1, ?2, ?3, ?4) \
             ON CONFLICT (id) DO UPDATE SET site_id = ?2, document = ?3, changed_at = ?4",
        )?
        .execute(params![key, site.to_string(), text, stamp(now)])?;
    Ok(())
}

pub(super) fn system(
    connection: &Connection,
    id: SystemId,
) -> Result<(SiteId, System), StoreError> {
    let key = id.to_string();
    let found: Option<(String, String)> = connection
        .prepare_cached("SELECT site_id, document FROM system WHERE id = ?1")?
        .query_row([&key], |row| Ok((row.get(0)?, row.get(1)?)))
        .optional()?;
    let (site, text) = found.ok_or_else(|| not_found("system", &key))?;
    Ok((
        SiteId(super::visits::parse_id("site", &site)?),
        document("system", &key, &text)?,
    ))
}

pub(super) fn put_commissioning(
    connection: &Connection,
    system: SystemId,
    record: &Commissioning,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let key = system.to_string();
    let text = to_document("commissioning", &key, record)?;
    connection
        .prepare_cached(
            "INSERT INTO commissioning (system_id, document, changed_at) VALUES (?1, ?2, ?3) \
             ON CONFLICT (system_id) DO UPDATE SET document = ?2, changed_at = ?3",
        )?
        .execute(params![key, text, stamp(now)])?;
    Ok(())
}

pub(super) fn commissioning(
    connection: &Connection,
    system: SystemId,
) -> Result<Commissioning, StoreError> {
    let key = system.to_string();
    let found: Option<String> = connection
        .prepare_cached("SELECT document FROM commissioning WHERE system_id = ?1")?
        .query_row([&key], |row| row.get(0))
        .optional()?;
    match found {
        Some(text) => document("commissioning", &key, &text),
        None => Ok(Commissioning::default()),
    }
}

pub(super) fn not_found(kind: &'static str, id: &str) -> StoreError {
    StoreError::NotFound {
        kind,
        id: id.to_owned(),
    }
}
