//! Readings: entering, changing, showing.

use super::forms::units_offered;
use super::types::{
    ChoiceView, EarlierReading, FigureView, PointView, ReadingEntry, ReadingView, VisitView,
};
use super::{ApiError, Engine, Wording};
use crate::records::{
    Instrument, OperatingMode, Phase, PlainMeasure, PointGroup, Reading, ReadingId, ReadingPoint,
    name_of, of_name,
};
use crate::store::VisitRecord;
use crate::text::Args;
use crate::units::{Dimension, Unit, parse};
use chrono::{DateTime, FixedOffset, NaiveDate};

/// Numbers a circuit can have.
const CIRCUITS: std::ops::RangeInclusive<u32> = 1..=400;

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
        let mut reading = self.read_entry(entry)?;
        let id = match &entry.id {
            Some(id) => id
                .parse::<ReadingId>()
                .map_err(|_| ApiError::new("not-found", &[("id", id.as_str())], self.wording))?,
            None => ReadingId(self.surroundings.new_id()),
        };
        let before = self.record(visit)?;
        let mut known = before.file.visit.readings.iter();
        match known.find(|known| known.id == Some(id)) {
            // What no form asks for stays.
            Some(known) => {
                reading.taken_at = known.taken_at;
                reading.note.clone_from(&known.note);
            }
            None if reading.phase == Phase::Left => {
                reading.taken_at = self.taken_later(before.file.visit.date);
            }
            None => {}
        }
        let now = self.surroundings.now();
        self.store
            .put_reading(visit_id, id, &reading, now)
            .map_err(|error| self.failed(&error))?;
        let what = self.point_label(reading.point());
        self.entered(what, before);
        self.visit(visit)
    }

    /// When a reading is taken that is entered now, if that is after the day of the
    /// visit: a reading of a later day proves something else than one of that day.
    pub(super) fn taken_later(&self, visited: Option<NaiveDate>) -> Option<DateTime<FixedOffset>> {
        let later = visited.is_some_and(|day| self.surroundings.today() > day);
        later.then(|| self.surroundings.here())
    }

    /// Takes a reading away.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn remove_reading(&mut self, visit: &str, reading: &str) -> Result<VisitView, ApiError> {
        let visit_id = self.visit_id(visit)?;
        let id = reading
            .parse::<ReadingId>()
            .map_err(|_| ApiError::new("not-found", &[("id", reading)], self.wording))?;
        let before = self.record(visit)?;
        let mut readings = before.file.visit.readings.iter();
        let removed = readings.find(|known| known.id == Some(id));
        let what = removed.map(|known| self.point_label(known.point()));
        let now = self.surroundings.now();
        self.store
            .remove_reading(visit_id, id, now)
            .map_err(|error| self.failed(&error))?;
        self.entered(what.unwrap_or_default(), before);
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
            let mode = of_name::<OperatingMode>(id).ok();
            reading.mode = Some(mode.ok_or_else(|| unknown("mode", id))?);
        }
        reading.phase =
            of_name::<Phase>(&entry.phase).map_err(|_| unknown("phase", &entry.phase))?;
        reading.circuit = self.circuit(entry)?;
        // The technician's own instrument, where nothing is said of this reading.
        if reading.accuracy().is_none() {
            let instrument = reading.instrument_or_usual();
            if let Some(own) = self.settings.accuracy(instrument, point.kind()) {
                reading = reading.with_accuracy(own).map_err(refused)?;
            }
        }
        Ok(reading)
    }

    /// The number of the circuit; an empty field is none.
    fn circuit(&self, entry: &ReadingEntry) -> Result<Option<u32>, ApiError> {
        let text = entry.circuit.as_deref().unwrap_or_default().trim();
        if text.is_empty() {
            return Ok(None);
        }
        let number = text.parse::<u32>().ok();
        let number = number.filter(|number| CIRCUITS.contains(number));
        number.map(Some).ok_or_else(|| {
            let first = CIRCUITS.start().to_string();
            let last = CIRCUITS.end().to_string();
            let context = [("found", text), ("first", &first), ("last", &last)];
            ApiError::new("not-a-circuit", &context, self.wording)
        })
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
        let mode = reading.mode.and_then(|mode| name_of(&mode));
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
            phase: name_of(&reading.phase).unwrap_or_default(),
            circuit: reading.circuit,
            warning: reading
                .is_unlikely()
                .then(|| catalog.fill("unlikely-value", &Args::new().text("value", value.text()))),
            why: reading_why(reading, self.wording),
        }
    }

    /// What was read at the same system on other visits, last first.
    pub(super) fn earlier_readings(
        &self,
        record: &VisitRecord,
    ) -> Result<Vec<EarlierReading>, ApiError> {
        let earlier = self
            .store
            .earlier_readings(record.system_id, record.id)
            .map_err(|error| self.failed(&error))?;
        Ok(earlier
            .iter()
            .map(|(date, reading)| EarlierReading {
                point: reading.point().id().to_owned(),
                date: date.map(|date| date.to_string()),
                shown: reading.text(),
                phase: name_of(&reading.phase).unwrap_or_default(),
                circuit: reading.circuit,
            })
            .collect())
    }

    pub(super) fn points(&self) -> Vec<PointView> {
        let catalog = self.wording.catalog();
        let owned = |instrument: Instrument| {
            let mut van = self.settings.instruments.iter();
            van.any(|known| known.instrument == instrument)
        };
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
                    units: units_offered(point.usual_unit(self.wording.units)),
                    instruments: std::iter::once(usual)
                        // What is on the van comes before what is not.
                        .chain(others.clone().filter(|other| owned(*other)))
                        .chain(others.filter(|other| !owned(*other)))
                        .map(|instrument| choice("instrument", instrument.id()))
                        .collect(),
                    modes: ["idle", "pumps_only", "heating", "cooling"]
                        .map(|mode| choice("mode", mode))
                        .into(),
                    first: point.is_first(),
                    per_circuit: *point == ReadingPoint::CircuitReturn,
                    signed: point.kind().dimension() == Dimension::Temperature
                        || point.bounds().possible.0 < 0.0,
                }
            })
            .collect()
    }
}

/// Whose word the uncertainty of a reading is.
pub(super) fn reading_why(reading: &Reading, wording: Wording) -> FigureView {
    let catalog = wording.catalog();
    let instrument = reading.instrument_or_usual();
    let label = catalog.text(&format!("instrument-{}", instrument.id()));
    let (input, source) = if reading.accuracy().is_some() {
        ("reading-accuracy-stated", "reading-by-statement")
    } else {
        ("reading-accuracy-usual", "reading-by-practice")
    };
    FigureView {
        measured: Some(reading.text()),
        expected: None,
        formula: catalog.text("reading-formula"),
        inputs: vec![(catalog.text(input), label)],
        source: catalog.text(source),
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
