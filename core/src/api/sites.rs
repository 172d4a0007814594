//! Sites met before: the warning of a double, and systems taken from elsewhere.

use super::types::{SimilarSite, VisitView};
use super::{ApiError, Engine};
use crate::store::{StoreError, VisitRecord};
use crate::text::alike;

impl Engine {
    /// Sites already kept under a name or address like this visit's, each with
    /// its last visit.
    ///
    /// # Errors
    /// [`StoreError`].
    pub(super) fn similar_sites(
        &self,
        record: &VisitRecord,
    ) -> Result<Vec<SimilarSite>, StoreError> {
        let own = &record.file.site;
        let address = own.address.as_deref().unwrap_or_default();
        if own.name.trim().is_empty() && address.trim().is_empty() {
            return Ok(Vec::new());
        }
        let visited = self.store.sites_visited()?;
        let others = visited.into_iter().filter(|site| site.id != record.site_id);
        Ok(others
            .filter(|site| {
                let there = site.address.as_deref().unwrap_or_default();
                alike(&own.name, &site.name) || alike(address, there)
            })
            .map(|site| SimilarSite {
                visit: site.last_visit.to_string(),
                site: self.site_title(&site.name),
                address: site.address,
                date: site.last_date.map(|date| date.to_string()),
            })
            .collect())
    }

    /// Moves a visit to the site and system of another visit; what was entered
    /// of readings and answers stays, and a site left without a visit goes.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn join_site(&mut self, visit: &str, earlier: &str) -> Result<VisitView, ApiError> {
        let own = self.record(visit)?;
        self.not_signed(&own)?;
        let there = self.record(earlier)?;
        let now = self.surroundings.now();
        self.store
            .move_visit(&own, there.system_id, now)
            .map_err(|error| self.failed(&error))?;
        self.undo = super::undo::Entries::default();
        self.visit(visit)
    }

    /// Copies what is known of the system of another visit into this one's;
    /// where it stands and how it was commissioned is not copied.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn copy_system(&mut self, visit: &str, from: &str) -> Result<VisitView, ApiError> {
        let system = self.record(from)?.file.system;
        self.replace_system(visit, system)
    }

    pub(super) fn replace_system(
        &mut self,
        visit: &str,
        system: crate::records::System,
    ) -> Result<VisitView, ApiError> {
        let before = self.record(visit)?;
        self.not_signed(&before)?;
        let now = self.surroundings.now();
        self.store
            .put_system(before.system_id, before.site_id, &system, now)
            .map_err(|error| self.failed(&error))?;
        let what = self.wording.catalog().text("undo-system");
        self.entered(what, before);
        self.visit(visit)
    }
}
