//! What was chosen once, as it is shown.

use super::{ChoiceView, DraftView, UnitView};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Everything that holds for every visit.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct SettingsView {
    /// Name of the company.
    pub company: Option<String>,
    /// Number to call.
    pub phone: Option<String>,
    /// The company's logo as a data address; none when there is none.
    pub logo: Option<String>,
    /// Who goes.
    pub technician: Option<String>,
    /// Unit systems offered.
    pub unit_systems: Vec<ChoiceView>,
    /// The one in use.
    pub units: String,
    /// Whether it was chosen by a person and not only assumed.
    pub units_chosen: bool,
    /// Papers offered.
    pub papers: Vec<ChoiceView>,
    /// The one in use.
    pub paper: String,
    /// Languages offered, each in its own words.
    pub languages: Vec<ChoiceView>,
    /// The one in use.
    pub language: String,
    /// Colours offered.
    pub themes: Vec<ChoiceView>,
    /// The ones in use.
    pub theme: String,
    /// Instruments of the trade, with what is owned.
    pub instruments: Vec<InstrumentView>,
    /// What was typed on this device and not kept yet.
    pub drafts: Vec<DraftView>,
}

/// One kind of instrument.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct InstrumentView {
    /// Identifier.
    pub id: String,
    /// Label.
    pub label: String,
    /// Whether it is on the van.
    pub owned: bool,
    /// Its accuracy as written, if it is stated.
    pub accuracy: Option<String>,
    /// Unit of the accuracy.
    pub unit: String,
    /// Units offered.
    pub units: Vec<UnitView>,
    /// What such an instrument usually has, in words.
    pub usual: String,
}

/// A change of one setting.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
#[serde(tag = "setting", rename_all = "snake_case")]
pub enum SettingChange {
    /// Name of the company; empty for none.
    Company {
        /// As typed.
        text: String,
    },
    /// Number to call; empty for none.
    Phone {
        /// As typed.
        text: String,
    },
    /// Who goes; empty for nobody in particular.
    Technician {
        /// As typed.
        text: String,
    },
    /// The unit system.
    Units {
        /// Its identifier.
        id: String,
    },
    /// The paper.
    Paper {
        /// Its identifier.
        id: String,
    },
    /// The language.
    Language {
        /// Its tag.
        id: String,
    },
    /// The colours.
    Theme {
        /// Their identifier.
        id: String,
    },
    /// An instrument owned or not, with its accuracy.
    Instrument {
        /// Its identifier.
        id: String,
        /// Whether it is on the van.
        owned: bool,
        /// Its accuracy as typed; empty for the usual one.
        accuracy: String,
        /// Unit beside the accuracy.
        unit: String,
    },
    /// Takes the logo away.
    NoLogo,
}

/// What there is of the invented demonstration company.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct DemoView {
    /// Invented visits; none when it is not loaded.
    pub visits: usize,
    /// Invented systems.
    pub systems: usize,
    /// Own visits at invented systems: they stay when it is removed.
    pub own: usize,
    /// The same in words.
    pub shown: String,
}
