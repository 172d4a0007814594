//! What a signature was given for.

use super::{Digest, Household, SiteContent};
use crate::records::visit_file::{VisitFile, check_limits};
use crate::records::{Commissioning, Site, System, Visit};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A call as it was signed. The system is shared by all visits to it, and what was
/// learned by all visits at all: they are kept with the signature, so that neither
/// changes under it. Of the visit itself a digest tells whether it changed since.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Signed {
    /// Facts of the site that name nobody.
    pub site: SiteContent,
    /// Name, address and contact at the site.
    pub household: Household,
    /// The system.
    pub system: System,
    /// How it was commissioned.
    pub commissioning: Commissioning,
    /// Confirmed causes that had been counted by then; none if that was not kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub learned: Option<CountsSigned>,
    /// Digest of the visit; none if that was not kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub visit: Option<String>,
}

/// What had been learned.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CountsSigned {
    /// Callbacks that counted.
    pub callbacks: u32,
    /// In how many of them each cause was confirmed.
    pub confirmed: BTreeMap<String, u32>,
}

impl Signed {
    /// A call as it is now.
    #[must_use]
    pub fn of(file: &VisitFile, learned: Option<CountsSigned>, visit: Digest) -> Self {
        Self {
            site: SiteContent {
                elevation: file.site.elevation,
            },
            household: Household::of(&file.site),
            system: file.system.clone(),
            commissioning: file.commissioning.clone(),
            learned,
            visit: Some(visit.to_string()),
        }
    }

    /// The call with the visit as it is now.
    #[must_use]
    pub fn file(&self, visit: Visit) -> VisitFile {
        let household = &self.household;
        VisitFile {
            site: Site {
                name: household.name.clone(),
                address: household.address.clone(),
                contact: household.contact.clone(),
                notes: household.notes.clone(),
                elevation: self.site.elevation,
            },
            system: self.system.clone(),
            commissioning: self.commissioning.clone(),
            visit,
        }
    }

    /// Whether its numbers can be.
    ///
    /// # Errors
    /// The first thing wrong.
    pub fn check(&self) -> Result<(), String> {
        match check_limits(&self.file(Visit::default())).first() {
            Some(fault) => Err(format!("{}: {}", fault.path, fault.found)),
            None => Ok(()),
        }
    }
}
