//! A reading: what was read, where, with what, in which state of operation.

use super::{Instrument, ReadingId, ReadingKind, ReadingPoint};
use crate::units::{Dimension, Measure, Quantity, Unit, UnitSystem, format};
use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// What the system was doing.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum OperatingMode {
    /// Everything at rest.
    Idle,
    /// Circulators on, compressor off.
    PumpsOnly,
    /// Compressor on, heating.
    Heating,
    /// Compressor on, cooling.
    Cooling,
}

/// Whether a reading shows the system as it was met or as it is left.
#[derive(
    Copy, Clone, PartialEq, Eq, Debug, Default, Hash, Serialize, Deserialize, schemars::JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Phase {
    /// As met, before any work.
    #[default]
    Found,
    /// As left, after the work.
    Left,
}

/// A number in a unit whose kind is said by the point it belongs to.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct PlainMeasure {
    /// The number as written.
    pub value: f64,
    /// The unit as written.
    pub unit: Unit,
}

impl PlainMeasure {
    /// The value in the coherent SI unit.
    pub fn si(self) -> f64 {
        self.unit.to_si(self.value)
    }
    /// As a width of the same kind: a temperature scale loses its offset.
    pub fn width_si(self) -> f64 {
        self.unit.to_si(self.value) - self.unit.to_si(0.0)
    }
    /// As it was written: `900 ft`.
    pub fn text(self) -> String {
        format::as_written(self.value, 0.0, self.unit)
    }
}

/// One reading. Its value always fits its point: see [`Reading::new`].
#[derive(Clone, PartialEq, Debug)]
pub struct Reading {
    /// Identifier, if it is stored.
    pub id: Option<ReadingId>,
    point: ReadingPoint,
    value: PlainMeasure,
    accuracy: Option<PlainMeasure>,
    /// What it was taken with; unknown means the usual instrument of the point.
    pub instrument: Option<Instrument>,
    /// What the system was doing.
    pub mode: Option<OperatingMode>,
    /// When it was taken, if not simply during the visit.
    pub taken_at: Option<DateTime<FixedOffset>>,
    /// As found or as left.
    pub phase: Phase,
    /// Which circuit, counted from 1 at the manifold, for circuit readings.
    pub circuit: Option<u32>,
    /// Anything else.
    pub note: Option<String>,
}

/// Why a value cannot be a reading at a point. Values are in the unit written.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum ReadingError {
    /// The unit measures something else.
    #[error("{} is read as {:?}, not in {}", point.id(), point.kind(), unit.symbol())]
    WrongUnit {
        /// The point.
        point: ReadingPoint,
        /// The unit written.
        unit: Unit,
    },
    /// No instrument can show this.
    #[error("{} cannot be {value} {}: it lies between {low} and {high}", point.id(), unit.symbol())]
    Impossible {
        /// The point.
        point: ReadingPoint,
        /// The value written.
        value: f64,
        /// The unit written.
        unit: Unit,
        /// Lowest possible value in that unit.
        low: f64,
        /// Highest possible value in that unit.
        high: f64,
    },
    /// An accuracy must be positive, finite, and in a unit of the value's kind.
    #[error("the accuracy of {} cannot be {value} {}", point.id(), unit.symbol())]
    BadAccuracy {
        /// The point.
        point: ReadingPoint,
        /// The value written.
        value: f64,
        /// The unit written.
        unit: Unit,
    },
}

impl Reading {
    /// A reading whose value fits its point.
    ///
    /// # Errors
    /// [`ReadingError`] when the unit is of another kind or the value is outside
    /// the point's possible range.
    pub fn new(point: ReadingPoint, value: PlainMeasure) -> Result<Self, ReadingError> {
        if value.unit.dimension() != point.kind().dimension() {
            return Err(ReadingError::WrongUnit {
                point,
                unit: value.unit,
            });
        }
        let bounds = point.bounds();
        let [low, high] = [bounds.possible.0, bounds.possible.1]
            .map(|bound| value.unit.from_si(bounds.unit.to_si(bound)));
        // `contains` is false for NaN. A hair of tolerance keeps the bound
        // itself inside after a conversion.
        let hair = 1e-9 * (high - low);
        if !(low - hair..=high + hair).contains(&value.value) {
            return Err(ReadingError::Impossible {
                point,
                value: value.value,
                unit: value.unit,
                low,
                high,
            });
        }
        Ok(Self {
            id: None,
            point,
            value,
            accuracy: None,
            instrument: None,
            mode: None,
            taken_at: None,
            phase: Phase::Found,
            circuit: None,
            note: None,
        })
    }

    /// The same reading with a stated accuracy: the bound either side of the
    /// value that holds in 19 of 20 readings.
    ///
    /// # Errors
    /// [`ReadingError::BadAccuracy`].
    pub fn with_accuracy(mut self, accuracy: PlainMeasure) -> Result<Self, ReadingError> {
        let fits = accuracy.unit.dimension() == self.accuracy_dimension();
        if !(fits && accuracy.value > 0.0 && accuracy.value.is_finite()) {
            return Err(ReadingError::BadAccuracy {
                point: self.point,
                value: accuracy.value,
                unit: accuracy.unit,
            });
        }
        self.accuracy = Some(accuracy);
        Ok(self)
    }

    /// The dimension in which an accuracy of this reading is written.
    pub fn accuracy_dimension(&self) -> Dimension {
        match self.point.kind() {
            ReadingKind::Temperature => Dimension::TemperatureDifference,
            kind => kind.dimension(),
        }
    }

    /// The point.
    pub fn point(&self) -> ReadingPoint {
        self.point
    }
    /// The value as written.
    pub fn value(&self) -> PlainMeasure {
        self.value
    }
    /// The accuracy as written, if it was.
    pub fn accuracy(&self) -> Option<PlainMeasure> {
        self.accuracy
    }
    /// What it was taken with, or the usual instrument of the point.
    pub fn instrument_or_usual(&self) -> Instrument {
        self.instrument.unwrap_or(self.point.usual_instrument())
    }
    /// The value as a typed quantity; none if `Q` is not of the point's dimension.
    pub fn quantity<Q: Quantity>(&self) -> Option<Q> {
        (self.value.unit.dimension() == Q::DIMENSION).then(|| Q::from_si(self.value.si()))
    }
    /// The value as a typed measure; none if `Q` is not of the point's dimension.
    pub fn measure<Q: Quantity>(&self) -> Option<Measure<Q>> {
        (self.value.unit.dimension() == Q::DIMENSION)
            .then(|| Measure::new(self.value.value, self.value.unit))
    }
    /// Whether the value is possible but surprising.
    pub fn is_unlikely(&self) -> bool {
        let bounds = self.point.bounds();
        let value = bounds.unit.from_si(self.value.si());
        !(bounds.likely.0..=bounds.likely.1).contains(&value)
    }

    /// The value as written with its accuracy beside it: `12.5 ± 2.0 psi`.
    pub fn text(&self) -> String {
        let unit = self.value.unit;
        let width = unit.to_si(1.0) - unit.to_si(0.0);
        format::as_written(
            self.value.value,
            2.0 * self.standard_uncertainty() / width,
            unit,
        )
    }

    /// The value alone for a reader of these units; what was written stands in
    /// brackets where that is another unit: `1.9 bar (27.0 psi)`.
    pub fn text_for(&self, system: UnitSystem) -> String {
        let PlainMeasure { value, unit } = self.value;
        let written = self.value.text();
        let own = self.point.usual_unit(system);
        if own == unit {
            return written;
        }
        let shown = format::plus_minus(own.from_si(unit.to_si(value)), 0.0, own);
        format!("{shown} ({written})")
    }

    /// Standard uncertainty in SI: half the stated accuracy, or half the usual
    /// accuracy of the instrument.
    pub fn standard_uncertainty(&self) -> f64 {
        let half_width = match self.accuracy {
            Some(stated) => stated.width_si(),
            None => usual_accuracy(
                self.point.kind(),
                self.instrument_or_usual(),
                self.value.si(),
            ),
        };
        half_width / 2.0
    }
}

/// The accuracy (19 of 20 readings) that an instrument in ordinary repair has,
/// in SI. Common practice, no source; a stated accuracy always wins.
pub fn usual_accuracy(kind: ReadingKind, instrument: Instrument, value_si: f64) -> f64 {
    use Instrument as I;
    use ReadingKind as K;
    let psi = |x: f64| Unit::Psi.to_si(x);
    let share = |part: f64, floor: f64| (part * value_si.abs()).max(floor);
    match (kind, instrument) {
        (K::GaugePressure, I::DigitalGauge | I::UnitDisplay) => psi(0.7),
        (K::GaugePressure, _) => psi(2.0),
        (K::PressureDifference, I::DifferentialGauge | I::DigitalGauge) => psi(0.3),
        (K::PressureDifference, _) => psi(1.0),
        (K::Temperature, I::Refractometer) => 1.0,
        (K::Temperature, I::PortThermometer) => 0.5,
        (K::Temperature, I::Hydrometer) => 1.5,
        (K::Temperature, I::Laboratory) => 0.3,
        (K::Temperature, _) => 1.2,
        (K::TemperatureDifference, I::RefrigerantGauges) => 1.5,
        (K::TemperatureDifference, _) => 1.0,
        (K::VolumeFlow, I::FlowMeter) => share(0.04, 6e-6),
        (K::VolumeFlow, _) => share(0.08, 2e-5),
        (K::Volume, _) => share(0.05, 2e-4),
        (K::Length, _) => share(0.02, 3e-3),
        (K::Power, I::PowerMeter) => share(0.03, 1.0),
        (K::Power, _) => share(0.08, 5.0),
        (K::Current, _) => share(0.05, 0.03),
        (K::Fraction, _) => 0.02,
        (K::Number, I::Hydrometer) => 0.002,
        (K::Number, I::Laboratory) => 0.05,
        (K::Number, _) => 0.5,
        (K::ElectricalConductivity, _) => share(0.05, 5e-4),
        (K::MassConcentration, I::Laboratory) => share(0.05, 1e-5),
        (K::MassConcentration, _) => share(0.25, 5e-5),
    }
}
