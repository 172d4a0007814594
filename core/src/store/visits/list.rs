//! The list of visits, and what was read on earlier ones.

use super::parse_id;
use crate::records::{Outcome, Reading, SystemId, VisitId};
use crate::store::row::{READING_COLUMNS, named, reading};
use crate::store::{Store, StoreError};
use chrono::NaiveDate;

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
    pub outcome: Option<Outcome>,
    /// Last change, UTC.
    pub changed_at: String,
    /// Whether it belongs to the invented demonstration company.
    pub demo: bool,
}

impl Store {
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
}
