//! What was chosen once: showing and changing it.

use super::forms::units_offered;
use super::types::{ChoiceView, InstrumentView, SettingChange, SettingsView};
use super::{ApiError, Engine, Wording};
use crate::records::{
    Instrument, OwnedInstrument, Paper, ReadingKind, Settings, Theme, WrittenAccuracy,
    accuracy_dimension, main_kind, usual_accuracy,
};
use crate::report::document::PageSize;
use crate::report::photo::logo;
use crate::store::{Drafted, Store};
use crate::text::{Args, Language};
use crate::units::{Unit, UnitSystem, format, parse};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use std::path::Path;

/// A file larger than this is no logo, bytes.
pub const LARGEST_LOGO_FILE: usize = 8 * 1024 * 1024;

impl Engine {
    /// What was chosen.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn settings(&self) -> Result<SettingsView, ApiError> {
        let logo = self.store.logo().map_err(|error| self.failed(&error))?;
        let settings = &self.settings;
        Ok(SettingsView {
            company: settings.company.clone(),
            phone: settings.phone.clone(),
            logo: logo.map(|png| format!("data:image/png;base64,{}", STANDARD.encode(png))),
            technician: settings.technician.clone(),
            unit_systems: self.choices(
                "units",
                [UnitSystem::Us, UnitSystem::Si].map(UnitSystem::id),
            ),
            units: self.wording.units.id().to_owned(),
            units_chosen: settings.units.is_some(),
            papers: self.choices("paper", Paper::ALL.map(Paper::id)),
            paper: settings.paper.id().to_owned(),
            languages: Language::ALL
                .into_iter()
                .map(|language| ChoiceView {
                    value: language.tag().to_owned(),
                    label: crate::text::catalog(language).text("language-own-name"),
                })
                .collect(),
            language: self.wording.language.tag().to_owned(),
            themes: self.choices("theme", Theme::ALL.map(Theme::id)),
            theme: settings.theme.id().to_owned(),
            instruments: Instrument::ALL
                .into_iter()
                .map(|instrument| self.instrument_view(instrument))
                .collect(),
            drafts: self.drafts(Drafted::Settings)?,
        })
    }

    /// Changes one setting; it is kept when this returns.
    ///
    /// # Errors
    /// [`ApiError`]; the settings are unchanged.
    pub fn change_setting(&mut self, change: &SettingChange) -> Result<SettingsView, ApiError> {
        let mut settings = self.settings.clone();
        let written = |text: &str| Some(text.trim().to_owned()).filter(|text| !text.is_empty());
        match change {
            SettingChange::Company { text } => settings.company = written(text),
            SettingChange::Phone { text } => settings.phone = written(text),
            SettingChange::Technician { text } => settings.technician = written(text),
            SettingChange::Units { id } => {
                let units = UnitSystem::from_id(id).ok_or_else(|| self.no_choice("units", id))?;
                settings.units = Some(units.id().to_owned());
            }
            SettingChange::Paper { id } => {
                settings.paper = Paper::from_id(id).ok_or_else(|| self.no_choice("paper", id))?;
            }
            SettingChange::Language { id } => {
                let known = Language::from_tag(id).ok_or_else(|| self.no_choice("language", id))?;
                settings.language = Some(known.tag().to_owned());
            }
            SettingChange::Theme { id } => {
                settings.theme = Theme::from_id(id).ok_or_else(|| self.no_choice("theme", id))?;
            }
            SettingChange::Instrument {
                id,
                owned,
                accuracy,
                unit,
            } => {
                let instrument =
                    Instrument::from_id(id).ok_or_else(|| self.no_choice("instrument", id))?;
                settings
                    .instruments
                    .retain(|known| known.instrument != instrument);
                if *owned {
                    let accuracy = self.typed_accuracy(instrument, accuracy, unit)?;
                    settings.instruments.push(OwnedInstrument {
                        instrument,
                        accuracy,
                    });
                }
            }
            SettingChange::NoLogo => {
                let now = self.surroundings.now();
                self.store
                    .put_logo(None, now)
                    .map_err(|error| self.failed(&error))?;
            }
        }
        let now = self.surroundings.now();
        self.store
            .put_settings(&settings, now)
            .map_err(|error| self.failed(&error))?;
        self.wording = wording_of(&settings);
        self.settings = settings;
        self.settings()
    }

    /// Keeps a PNG or JPEG file as the company's logo, written anew and small.
    ///
    /// # Errors
    /// [`ApiError`] of code `logo-too-large` or `logo-unreadable`.
    pub fn put_logo(&mut self, file: &[u8]) -> Result<SettingsView, ApiError> {
        if file.len() > LARGEST_LOGO_FILE {
            return Err(ApiError::new("logo-too-large", &[], self.wording));
        }
        let png = logo(file).map_err(|error| {
            let detail = error.to_string();
            ApiError::new("logo-unreadable", &[("detail", &detail)], self.wording)
        })?;
        let now = self.surroundings.now();
        self.store
            .put_logo(Some(&png), now)
            .map_err(|error| self.failed(&error))?;
        self.settings()
    }

    /// Paper of the reports.
    pub(super) fn page(&self) -> PageSize {
        match self.settings.paper {
            Paper::Letter => PageSize::Letter,
            Paper::A4 => PageSize::A4,
        }
    }

    fn choices<const N: usize>(&self, family: &str, ids: [&str; N]) -> Vec<ChoiceView> {
        let catalog = self.wording.catalog();
        ids.into_iter()
            .map(|id| ChoiceView {
                value: id.to_owned(),
                label: catalog.text(&format!("{family}-{id}")),
            })
            .collect()
    }

    fn no_choice(&self, what: &str, found: &str) -> ApiError {
        let context = [("field", what), ("found", found)];
        ApiError::new("no-such-name", &context, self.wording)
    }

    fn typed_accuracy(
        &self,
        instrument: Instrument,
        text: &str,
        unit: &str,
    ) -> Result<Option<WrittenAccuracy>, ApiError> {
        if text.trim().is_empty() {
            return Ok(None);
        }
        let label = self
            .wording
            .catalog()
            .text(&format!("instrument-{}", instrument.id()));
        let dimension = accuracy_dimension(main_kind(instrument));
        let beside = Unit::of(dimension).find(|known| known.symbol() == unit);
        let (value, unit) = parse::plain(text, dimension, beside)
            .map_err(|error| ApiError::typed(&label, &error, self.wording))?;
        if value > 0.0 && value.is_finite() {
            return Ok(Some(WrittenAccuracy {
                value,
                unit: unit.symbol().to_owned(),
            }));
        }
        let found = format::as_written(value, 0.0, unit);
        let context = [
            ("field", label.as_str()),
            ("found", found.as_str()),
            ("accepted", "> 0"),
        ];
        Err(ApiError::new("bad-accuracy", &context, self.wording))
    }

    fn instrument_view(&self, instrument: Instrument) -> InstrumentView {
        let catalog = self.wording.catalog();
        let kind = main_kind(instrument);
        let own = match (kind, self.wording.units) {
            (ReadingKind::Length, UnitSystem::Us) => Unit::Inch,
            (ReadingKind::Length, UnitSystem::Si) => Unit::Millimetre,
            (ReadingKind::Power, _) => Unit::Watt,
            (_, system) => system.unit(accuracy_dimension(kind)),
        };
        let owned = self
            .settings
            .instruments
            .iter()
            .find(|owned| owned.instrument == instrument);
        let stated = owned.and_then(|owned| owned.accuracy.as_ref());
        // Some accuracies grow with the value; at zero only their floor shows,
        // and the words say so.
        let usual = usual_accuracy(kind, instrument, 0.0);
        let shown = format::plus_minus(own.from_si(usual) - own.from_si(0.0), 0.0, own);
        InstrumentView {
            id: instrument.id().to_owned(),
            label: catalog.text(&format!("instrument-{}", instrument.id())),
            owned: owned.is_some(),
            accuracy: stated.map(|stated| stated.value.to_string()),
            unit: stated.map_or_else(|| own.symbol().to_owned(), |stated| stated.unit.clone()),
            units: units_offered(own),
            usual: catalog.fill("instrument-usual", &Args::new().text("accuracy", shown)),
        }
    }
}

/// How the troubles of a database are worded that cannot be opened.
pub(super) fn wording_beside(database: &Path) -> Wording {
    wording_of(&settings_beside(database))
}

/// What is known of the settings of a database that cannot be opened.
pub(super) fn settings_beside(database: &Path) -> Settings {
    Settings {
        language: Store::language_beside(database),
        ..Settings::default()
    }
}

/// How answers are worded under these settings.
pub(super) fn wording_of(settings: &Settings) -> Wording {
    let usual = Wording::default();
    Wording {
        language: settings
            .language
            .as_deref()
            .and_then(Language::from_tag)
            .unwrap_or(usual.language),
        units: settings
            .units
            .as_deref()
            .and_then(UnitSystem::from_id)
            .unwrap_or(usual.units),
    }
}
