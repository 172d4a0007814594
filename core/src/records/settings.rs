//! What the company and the technician chose once, for every visit.

use super::{Instrument, PlainMeasure, ReadingKind};
use crate::named::named;
use crate::units::{Dimension, Unit};
use serde::{Deserialize, Serialize};

/// Choices that hold for every visit. What is not written is at its default,
/// so that settings of another version are still read.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// Name of the company, for reports.
    pub company: Option<String>,
    /// Number to call, for reports.
    pub phone: Option<String>,
    /// Who goes, written into every new visit.
    pub technician: Option<String>,
    /// Identifier of the unit system: `us` or `si`; none before it was chosen.
    pub units: Option<String>,
    /// Paper of the reports.
    pub paper: Paper,
    /// Tag of the language; none before it was chosen.
    pub language: Option<String>,
    /// Colours of the screens.
    pub theme: Theme,
    /// Instruments owned, each with its accuracy if it is known better than usual.
    pub instruments: Vec<OwnedInstrument>,
}

named! {
    /// Paper sizes.
    #[derive(Copy, Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
    #[serde(rename_all = "snake_case")]
    pub enum Paper {
        /// 8.5 by 11 inches.
        #[default]
        Letter = "letter",
        /// 210 by 297 mm.
        A4 = "a4",
    }
}

named! {
    /// Colours of the screens.
    #[derive(Copy, Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
    #[serde(rename_all = "snake_case")]
    pub enum Theme {
        /// As the device has it.
        #[default]
        System = "system",
        /// Dark on light.
        Light = "light",
        /// Light on dark.
        Dark = "dark",
        /// Highest contrast, to be read in full sun.
        Sun = "sun",
    }
}

/// An instrument on the van.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct OwnedInstrument {
    /// Which kind.
    pub instrument: Instrument,
    /// Its accuracy as written: the bound that holds in 19 of 20 readings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub accuracy: Option<WrittenAccuracy>,
}

/// An accuracy as written.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct WrittenAccuracy {
    /// The number.
    pub value: f64,
    /// Symbol of its unit.
    pub unit: String,
}

impl WrittenAccuracy {
    /// As a measure of a dimension; none when the unit is of another kind.
    pub fn measure(&self, dimension: Dimension) -> Option<PlainMeasure> {
        let unit = Unit::of(dimension).find(|unit| unit.symbol() == self.unit)?;
        Some(PlainMeasure {
            value: self.value,
            unit,
        })
    }
}

impl Settings {
    /// Accuracy stated for an owned instrument when it reads this kind of
    /// quantity; none when nothing better than the usual is known.
    pub fn accuracy(&self, instrument: Instrument, kind: ReadingKind) -> Option<PlainMeasure> {
        let owned = self
            .instruments
            .iter()
            .find(|owned| owned.instrument == instrument)?;
        if main_kind(instrument) != kind {
            return None;
        }
        owned.accuracy.as_ref()?.measure(accuracy_dimension(kind))
    }
}

/// The quantity that an instrument is bought to read, for which its accuracy is
/// stated. Common practice, no source.
pub fn main_kind(instrument: Instrument) -> ReadingKind {
    use Instrument as I;
    match instrument {
        I::DialGauge | I::DigitalGauge => ReadingKind::GaugePressure,
        I::DifferentialGauge => ReadingKind::PressureDifference,
        I::PortThermometer | I::ClampThermometer | I::Refractometer | I::RefrigerantGauges => {
            ReadingKind::Temperature
        }
        I::UnitDisplay => ReadingKind::Temperature,
        I::FlowMeter | I::ClampFlowMeter => ReadingKind::VolumeFlow,
        I::Hydrometer | I::TestStrip | I::Laboratory => ReadingKind::Number,
        I::PowerMeter => ReadingKind::Power,
        I::ClampAmmeter => ReadingKind::Current,
        I::Ruler => ReadingKind::Length,
    }
}

/// The dimension in which an accuracy of a kind of reading is written.
pub fn accuracy_dimension(kind: ReadingKind) -> Dimension {
    match kind {
        ReadingKind::Temperature => Dimension::TemperatureDifference,
        kind => kind.dimension(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn settings_of_another_version_are_read_with_what_is_known() {
        let text = r#"{"company":"Invented Loops","units":"si","something_new":3}"#;
        let read: Settings = serde_json::from_str(text).expect("read");
        assert_eq!(read.company.as_deref(), Some("Invented Loops"));
        assert_eq!(read.paper, Paper::Letter);
    }

    #[test]
    fn an_accuracy_counts_only_for_what_the_instrument_is_for() {
        let settings = Settings {
            instruments: vec![OwnedInstrument {
                instrument: Instrument::DialGauge,
                accuracy: Some(WrittenAccuracy {
                    value: 1.0,
                    unit: "psi".to_owned(),
                }),
            }],
            ..Settings::default()
        };
        let stated = |kind| settings.accuracy(Instrument::DialGauge, kind);
        assert_eq!(
            stated(ReadingKind::GaugePressure).map(|stated| stated.value),
            Some(1.0)
        );
        assert_eq!(stated(ReadingKind::Temperature), None);
        assert_eq!(
            settings.accuracy(Instrument::DigitalGauge, ReadingKind::GaugePressure),
            None
        );
    }
}
