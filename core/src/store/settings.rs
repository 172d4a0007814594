//! What was chosen once.

use super::backup::beside;
use super::row::{document, to_document};
use super::{Store, StoreError, stamp};
use crate::records::Settings;
use chrono::{DateTime, Utc};
use rusqlite::{OptionalExtension, params};
use std::fs;
use std::path::Path;

/// Tail of the name of the file that repeats the language beside the database:
/// what is wrong with a database that cannot be read must be said in it.
const LANGUAGE: &str = ".language";

impl Store {
    /// The language last chosen, as noted beside the database at `path`.
    pub fn language_beside(path: &Path) -> Option<String> {
        let tag = fs::read_to_string(beside(path, LANGUAGE)).ok()?;
        Some(tag.trim().to_owned()).filter(|tag| !tag.is_empty())
    }

    /// Notes the language beside the database. It is a repetition, so a failure
    /// costs nothing that was entered.
    fn note_language(&self, settings: &Settings) {
        let path = self.connection.path().filter(|path| !path.is_empty());
        if let (Some(path), Some(tag)) = (path, &settings.language) {
            let _ = fs::write(beside(Path::new(path), LANGUAGE), tag);
        }
    }

    /// What was chosen; the defaults when nothing was.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn settings(&self) -> Result<Settings, StoreError> {
        let found: Option<String> = self
            .connection
            .prepare_cached("SELECT document FROM setting WHERE id = 1")?
            .query_row([], |row| row.get(0))
            .optional()?;
        match found {
            Some(text) => document("settings", "1", &text),
            None => Ok(Settings::default()),
        }
    }

    /// Keeps what was chosen.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_settings(&self, settings: &Settings, now: DateTime<Utc>) -> Result<(), StoreError> {
        let text = to_document("settings", "1", settings)?;
        self.connection
            .prepare_cached(
                "INSERT INTO setting (id, document, changed_at) VALUES (1, ?1, ?2) \
                 ON CONFLICT (id) DO UPDATE SET document = ?1, changed_at = ?2",
            )?
            .execute(params![text, stamp(now)])?;
        self.note_language(settings);
        Ok(())
    }

    /// The company's logo, as PNG.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn logo(&self) -> Result<Option<Vec<u8>>, StoreError> {
        let found: Option<Option<Vec<u8>>> = self
            .connection
            .prepare_cached("SELECT logo FROM setting WHERE id = 1")?
            .query_row([], |row| row.get(0))
            .optional()?;
        Ok(found.flatten())
    }

    /// Keeps the company's logo, or takes it away.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_logo(&self, logo: Option<&[u8]>, now: DateTime<Utc>) -> Result<(), StoreError> {
        // The row is there once the settings were written.
        self.put_settings(&self.settings()?, now)?;
        self.connection
            .prepare_cached("UPDATE setting SET logo = ?1 WHERE id = 1")?
            .execute(params![logo])?;
        Ok(())
    }
}
