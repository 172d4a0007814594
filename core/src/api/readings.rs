//! Readings: entering, changing, showing.

use super::types::{ChoiceView, PointView, ReadingEntry, ReadingView, VisitView};
use super::{ApiError, Engine};
use crate::records::{
    Instrument, OperatingMode, Phase, PlainMeasure, PointGroup, Reading, ReadingId, ReadingPoint,
};
use crate::text::Args;
use crate::units::{Dimension, Unit, format, parse};
use serde::Serialize;
use serde::de::DeserializeOwned;

impl Engine {
    /// Keeps a reading, new or changed; it is kept when this returns.
    ///
    /// # Errors
    /// [`ApiError`], which names what was typed and what would be accepted; the
    /// visit is unchanged.
    pub fn put_reading(
        &mut self,
        visit: &str,
        entry: &ReadingEntry,
    ) -> Result<VisitView, ApiError> {
        let visit_id = self.visit_id(visit)?;
        let reading = self.read_entry(entry)?;
        let id = match &entry.id {
            Some(id) => id.parse::<ReadingId>().map_err(|_| {
                ApiError::new("not-found", &[("detail", id.as_str())], self.wording)
            })?,
            None => ReadingId(self.surroundings.new_id()),
        };
        let now = self.surroundings.now();
        self.store
            .put_reading(visit_id, id, &reading, now)
            .map_err(|error| self.failed(&error))?;
        self.visit(visit)
    }

    /// Takes a reading away.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn remove_reading(&mut self, visit: &str, reading: &str) -> Result<VisitView, ApiError> {
        let visit_id = self.visit_id(visit)?;
        let id = reading
            .parse::<ReadingId>()
            .map_err(|_| ApiError::new("not-found", &[("detail", reading)], self.wording))?;
        let now = self.surroundings.now();
        self.store
            .remove_reading(visit_id, id, now)
            .map_err(|error| self.failed(&error))?;
        self.visit(visit)
    }

    /// What was typed, as a reading that fits its point.
    fn read_entry(&self, entry: &ReadingEntry) -> Result<Reading, ApiError> {
        let unknown = |what: &str, found: &str| {
            ApiError::new(
                "no-such-name",
                &[("field", what), ("found", found)],
                self.wording,
            )
        };
        let point =
            ReadingPoint::from_id(&entry.point).ok_or_else(|| unknown("point", &entry.point))?;
        let label = self.point_label(point);
        let measure = |text: &str, dimension: Dimension, symbol: &str| {
            let beside = Unit::of(dimension).find(|unit| unit.symbol() == symbol);
            parse::plain(text, dimension, beside)
                .map(|(value, unit)| PlainMeasure { value, unit })
                .map_err(|error| ApiError::typed(&label, &error, self.wording))
        };
        let refused = |error| ApiError::reading(&label, &error, self.wording);
        let value = measure(&entry.text, point.kind().dimension(), &entry.unit)?;
        let mut reading = Reading::new(point, value).map_err(refused)?;
        if let Some(text) = entry
            .accuracy
            .as_deref()
            .filter(|text| !text.trim().is_empty())
        {
            let accuracy = measure(text, reading.accuracy_dimension(), &entry.unit)?;
            reading = reading.with_accuracy(accuracy).map_err(refused)?;
        }
        if let Some(id) = &entry.instrument {
            let instrument = Instrument::from_id(id);
            reading.instrument = Some(instrument.ok_or_else(|| unknown("instrument", id))?);
        }
        if let Some(id) = &entry.mode {
            let mode = named::<OperatingMode>(id);
            reading.mode = Some(mode.ok_or_else(|| unknown("mode", id))?);
        }
        reading.phase =
            named::<Phase>(&entry.phase).ok_or_else(|| unknown("phase", &entry.phase))?;
        reading.circuit = entry.circuit;
        Ok(reading)
    }

    pub(super) fn point_label(&self, point: ReadingPoint) -> String {
        self.wording
            .catalog()
            .text(&format!("point-{}", point.id()))
    }

    pub(super) fn reading_view(&self, reading: &Reading) -> ReadingView {
        let catalog = self.wording.catalog();
        let value = reading.value();
        let instrument = reading.instrument_or_usual();
        let mode = reading.mode.and_then(|mode| name(&mode));
        ReadingView {
            id: reading.id.map(|id| id.to_string()).unwrap_or_default(),
            point: reading.point().id().to_owned(),
            label: self.point_label(reading.point()),
            value: value.value.to_string(),
            unit: value.unit.symbol().to_owned(),
            shown: reading.text(),
            instrument: instrument.id().to_owned(),
            instrument_label: catalog.text(&format!("instrument-{}", instrument.id())),
            mode_label: mode
                .as_ref()
                .map(|mode| catalog.text(&format!("mode-{mode}"))),
            mode,
            phase: name(&reading.phase).unwrap_or_default(),
            circuit: reading.circuit,
            warning: reading.is_unlikely().then(|| {
                let shown = format::plus_minus(value.value, 0.0, value.unit);
                catalog.fill("unlikely-value", &Args::new().text("value", shown))
            }),
        }
    }

    pub(super) fn points(&self) -> Vec<PointView> {
        let catalog = self.wording.catalog();
        ReadingPoint::ALL
            .iter()
            .map(|point| {
                let usual = point.usual_instrument();
                let others = Instrument::ALL.into_iter().filter(|other| *other != usual);
                let choice = |kind: &str, id: &str| ChoiceView {
                    value: id.to_owned(),
                    label: catalog.text(&format!("{kind}-{id}")),
                };
                PointView {
                    id: point.id().to_owned(),
                    label: self.point_label(*point),
                    group: group_id(point.group()).to_owned(),
                    group_label: catalog.text(&format!("proof-{}", group_id(point.group()))),
                    units: self.units_offered(point.kind().dimension()),
                    instruments: std::iter::once(usual)
                        .chain(others)
                        .map(|instrument| choice("instrument", instrument.id()))
                        .collect(),
                    modes: ["idle", "pumps_only", "heating", "cooling"]
                        .map(|mode| choice("mode", mode))
                        .into(),
                    per_circuit: *point == ReadingPoint::CircuitReturn,
                }
            })
            .collect()
    }
}

/// Identifier of a group in the order of proof; its label is `proof-<id>`.
fn group_id(group: PointGroup) -> &'static str {
    match group {
        PointGroup::Pressure => "pressure",
        PointGroup::Flow => "flow",
        PointGroup::Pump => "pump",
        PointGroup::Fluid => "fluid",
        PointGroup::Temperature => "temperature",
        PointGroup::Water => "water",
        PointGroup::Electric => "electric",
        PointGroup::Refrigerant => "refrigerant",
    }
}

/// The written name of an enumeration value.
fn name<T: Serialize>(value: &T) -> Option<String> {
    serde_json::to_value(value)
        .ok()?
        .as_str()
        .map(str::to_owned)
}

/// The enumeration value of a written name.
fn named<T: DeserializeOwned>(text: &str) -> Option<T> {
    serde_json::from_value(serde_json::Value::String(text.to_owned())).ok()
}
