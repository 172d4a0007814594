//! What is typed into a visit or the settings and not kept yet.

use super::{Store, StoreError};
use crate::records::VisitId;
use rusqlite::params_from_iter;

/// Where a draft is typed. Each has a table of its own: those of a visit go with it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Drafted {
    /// In a visit.
    Visit(VisitId),
    /// In the settings.
    Settings,
}

impl Drafted {
    fn visit(self) -> Option<String> {
        match self {
            Self::Visit(visit) => Some(visit.to_string()),
            Self::Settings => None,
        }
    }
}

impl Store {
    /// Keeps what is typed at a place; none when nothing is typed there any more. The
    /// visit or the settings are as they were.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_draft(
        &mut self,
        of: Drafted,
        place: &str,
        text: Option<&str>,
    ) -> Result<(), StoreError> {
        let sql = match (of, text) {
            (Drafted::Visit(_), Some(_)) => {
                "INSERT INTO draft (place, visit_id, text) VALUES (?1, ?2, ?3) \
                 ON CONFLICT DO UPDATE SET text = excluded.text"
            }
            (Drafted::Visit(_), None) => "DELETE FROM draft WHERE place = ?1 AND visit_id = ?2",
            (Drafted::Settings, Some(_)) => {
                "INSERT INTO setting_draft (place, text) VALUES (?1, ?2) \
                 ON CONFLICT DO UPDATE SET text = excluded.text"
            }
            (Drafted::Settings, None) => "DELETE FROM setting_draft WHERE place = ?1",
        };
        let visit = of.visit();
        let values = [Some(place), visit.as_deref(), text];
        let values = params_from_iter(values.into_iter().flatten());
        self.connection.execute(sql, values)?;
        Ok(())
    }

    /// What is typed and not kept yet, each place with its text, in order of place.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn drafts(&self, of: Drafted) -> Result<Vec<(String, String)>, StoreError> {
        let sql = match of {
            Drafted::Visit(_) => "SELECT place, text FROM draft WHERE visit_id = ?1 ORDER BY place",
            Drafted::Settings => "SELECT place, text FROM setting_draft ORDER BY place",
        };
        let mut statement = self.connection.prepare_cached(sql)?;
        let rows = statement.query_map(params_from_iter(of.visit()), |row| {
            Ok((row.get(0)?, row.get(1)?))
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}
