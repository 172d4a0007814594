//! What each kind of record says on the way.

use crate::records::field::LONGEST_TEXT;
use crate::records::{Site, SiteId, System, SystemId, Visit, VisitId, visit_file};
use crate::units::{Length, Measure};
use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};
use serde_json::Value;

/// Facts of a site that name nobody.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct SiteContent {
    /// Height above sea level.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Measure<Length>>,
}

/// Name, address and contact at a site.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Household {
    /// Name of the site.
    pub name: String,
    /// Postal address.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub address: Option<String>,
    /// The person to talk to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub contact: Option<String>,
    /// Anything else.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub notes: Option<String>,
}

impl Household {
    /// The personal part of a site.
    #[must_use]
    pub fn of(site: &Site) -> Self {
        Self {
            name: site.name.clone(),
            address: site.address.clone(),
            contact: site.contact.clone(),
            notes: site.notes.clone(),
        }
    }
}

/// A system and the site it stands at.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SystemContent {
    /// The site.
    pub site: SiteId,
    /// The system.
    pub system: System,
}

/// A visit without its free words.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct VisitContent {
    /// The system visited.
    pub system: SystemId,
    /// When the record was begun.
    pub started_at: DateTime<Utc>,
    /// The visit as in a visit file.
    visit: Value,
}

/// What the customer said and what was noted about the call: it may name anybody.
/// Notes beside readings and lines of work are about the system and stay with the visit.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Words {
    /// The complaint in the customer's words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub complaint: Option<String>,
    /// Notes of the visit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub notes: Option<String>,
}

impl VisitContent {
    /// A visit without its free words.
    #[must_use]
    pub fn of(system: SystemId, started_at: DateTime<Utc>, visit: &Visit) -> Self {
        let mut plain = visit.clone();
        plain.complaint = None;
        plain.notes = None;
        Self {
            system,
            started_at,
            visit: visit_file::write_visit(&plain),
        }
    }

    /// The visit, its free words put back.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn visit(&self, words: Words) -> Result<Visit, String> {
        let mut visit = visit_file::read_visit(self.visit.clone())?;
        if visit.complaint.is_some() || visit.notes.is_some() {
            return Err("free words stand in the visit".to_owned());
        }
        if visit.readings.iter().any(|reading| reading.id.is_none()) {
            return Err("a reading has no identifier".to_owned());
        }
        visit.complaint = words.complaint;
        visit.notes = words.notes;
        Ok(visit)
    }
}

impl Words {
    /// The free words of a visit.
    #[must_use]
    pub fn of(visit: &Visit) -> Self {
        Self {
            complaint: visit.complaint.clone(),
            notes: visit.notes.clone(),
        }
    }
}

/// Whether the fix of a cause, made at a visit, was found to hold.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FollowUp {
    /// The visit of the fix.
    pub visit: VisitId,
    /// Identifier of the cause that was put right.
    pub cause: String,
    /// Whether it was still right.
    pub held: bool,
    /// The day on which that was seen or told.
    pub day: NaiveDate,
}

/// A content as one compact text, the same for the same content.
pub(crate) fn text(content: &impl Serialize) -> Result<String, String> {
    serde_json::to_string(content).map_err(|error| error.to_string())
}

/// Reads a content and holds it to the one way of writing it.
pub(crate) fn read<T: Serialize + serde::de::DeserializeOwned>(written: &str) -> Result<T, String> {
    let content: T = serde_json::from_str(written).map_err(|error| error.to_string())?;
    if text(&content)? == written {
        Ok(content)
    } else {
        Err("the content is not written in the one way there is".to_owned())
    }
}

/// Refuses what the database would not keep as it is.
pub(crate) fn check_text(text: &str) -> Result<(), String> {
    if text.len() > LONGEST_TEXT || text.contains('\0') {
        return Err("a text is too long or holds a null character".to_owned());
    }
    Ok(())
}
