//! What is typed into a visit or the settings and not kept yet.

use super::{Store, StoreError};
use crate::records::VisitId;
use rusqlite::params;

impl Store {
    /// Keeps what is typed at a place of a visit; none when nothing is typed there
    /// any more. The visit itself is as it was.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_draft(
        &mut self,
        visit: VisitId,
        place: &str,
        text: Option<&str>,
    ) -> Result<(), StoreError> {
        let visit = visit.to_string();
        match text {
            Some(text) => {
                let sql = "INSERT INTO draft (visit_id, place, text) VALUES (?1, ?2, ?3) \
                    ON CONFLICT DO UPDATE SET text = excluded.text";
                self.connection.execute(sql, params![visit, place, text])?
            }
            None => {
                let sql = "DELETE FROM draft WHERE visit_id = ?1 AND place = ?2";
                self.connection.execute(sql, params![visit, place])?
            }
        };
        Ok(())
    }

    /// The same for a place of the settings.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_setting_draft(&mut self, place: &str, text: Option<&str>) -> Result<(), StoreError> {
        match text {
            Some(text) => {
                let sql = "INSERT INTO setting_draft (place, text) VALUES (?1, ?2) \
                    ON CONFLICT DO UPDATE SET text = excluded.text";
                self.connection.execute(sql, params![place, text])?
            }
            None => {
                let sql = "DELETE FROM setting_draft WHERE place = ?1";
                self.connection.execute(sql, params![place])?
            }
        };
        Ok(())
    }

    /// What is typed into the settings and not kept yet, each place with its text.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn setting_drafts(&self) -> Result<Vec<(String, String)>, StoreError> {
        let sql = "SELECT place, text FROM setting_draft ORDER BY place";
        let mut statement = self.connection.prepare_cached(sql)?;
        let rows = statement.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// What is typed and not kept yet, each place with its text.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn drafts(&self, visit: VisitId) -> Result<Vec<(String, String)>, StoreError> {
        let sql = "SELECT place, text FROM draft WHERE visit_id = ?1 ORDER BY place";
        let mut statement = self.connection.prepare_cached(sql)?;
        let rows =
            statement.query_map([visit.to_string()], |row| Ok((row.get(0)?, row.get(1)?)))?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}
