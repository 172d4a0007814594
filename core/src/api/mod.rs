//! Use cases: the one typed boundary that the shell and the headless program
//! call.
//!
//! What crosses is data for showing ([`types`]): texts already in the person's
//! language and units, identifiers to come back with, and what was typed, as
//! it was typed. Nothing outside needs engineering or unit arithmetic.

mod assess;
mod attachments;
mod backups;
mod call;
mod demo;
mod drafts;
mod error;
mod fleet;
mod forms;
mod graph;
mod knowledge;
mod last_visit;
mod learning;
mod loop_year;
mod mind;
mod pictures;
mod plan;
mod questions;
mod readings;
mod report;
mod schematic;
mod settings;
mod sites;
mod steps;
mod templates;
pub mod types;
mod undo;
mod verdicts;
mod visits;
mod why;
mod work;

pub use crate::report::file::write_whole;
pub use attachments::{read_picture, read_picture_text};
pub use backups::{backups, restore, restore_kept};
pub use call::{Answer, Call, NetworkFormat, graph_network, read_visit_file};
pub use drafts::LONGEST_DRAFT;
pub use error::ApiError;
pub use fleet::{Trial, trial};
pub use graph::{
    CauseSheet, ContextSheet, FilesReport, LinkSheet, cause_names, cause_sheet, check_files,
    check_shipped_files,
};
pub use knowledge::{Knowledge, knowledge};
pub use learning::{LARGEST_LEARNED_FILE, LearnedFile};
pub use report::{Issue, Reader, not_written, photo_part};
pub use settings::LARGEST_LOGO_FILE;
pub use work::OpenCall;

use crate::records::Settings;
use crate::store::Store;
use crate::text::{Catalog, Language, catalog_in};
use crate::units::UnitSystem;
use chrono::{DateTime, FixedOffset, NaiveDate, Utc};
use std::path::Path;
use uuid::Uuid;

/// What the engine needs from around it: the time, and identifiers that no
/// other device makes.
pub trait Surroundings: Send + Sync {
    /// Now.
    fn now(&self) -> DateTime<Utc>;
    /// Now, by the clock where the person stands.
    fn here(&self) -> DateTime<FixedOffset> {
        self.now().fixed_offset()
    }
    /// The day where the person stands.
    fn today(&self) -> NaiveDate;
    /// A new identifier.
    fn new_id(&self) -> Uuid;
}

/// The clock and the random numbers of this machine.
pub struct ThisMachine;

impl Surroundings for ThisMachine {
    fn now(&self) -> DateTime<Utc> {
        Utc::now()
    }
    fn here(&self) -> DateTime<FixedOffset> {
        chrono::Local::now().fixed_offset()
    }
    fn today(&self) -> NaiveDate {
        chrono::Local::now().date_naive()
    }
    fn new_id(&self) -> Uuid {
        Uuid::now_v7()
    }
}

/// How answers are worded.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Wording {
    /// The language.
    pub language: Language,
    /// US customary or SI.
    pub units: UnitSystem,
}

impl Default for Wording {
    fn default() -> Self {
        Self {
            language: Language::English,
            units: UnitSystem::Us,
        }
    }
}

impl Wording {
    pub(crate) fn catalog(self) -> &'static Catalog {
        catalog_in(self.language, self.units)
    }
}

/// The engine with an open store.
pub struct Engine {
    store: Store,
    surroundings: Box<dyn Surroundings>,
    wording: Wording,
    fleet: Option<fleet::Kept>,
    settings: Settings,
    undo: undo::Entries,
}

impl Engine {
    /// Opens the store at a path.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn open(path: &Path, surroundings: Box<dyn Surroundings>) -> Result<Self, ApiError> {
        let store = Store::open(path)
            .map_err(|error| ApiError::store(&error, settings::wording_beside(path)))?;
        Self::over(store, surroundings)
    }

    /// The engine over an open store, worded as its settings say.
    fn over(store: Store, surroundings: Box<dyn Surroundings>) -> Result<Self, ApiError> {
        let settings = store
            .settings()
            .map_err(|error| ApiError::store(&error, Wording::default()))?;
        Ok(Self {
            store,
            surroundings,
            fleet: None,
            wording: settings::wording_of(&settings),
            settings,
            undo: undo::Entries::default(),
        })
    }

    /// How answers are worded.
    pub fn wording(&self) -> Wording {
        self.wording
    }
}

#[cfg(test)]
mod tests;
