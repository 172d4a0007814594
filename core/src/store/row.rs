//! Between rows and records.

use super::StoreError;
use crate::records::{Instrument, PlainMeasure, Reading, ReadingId, ReadingPoint, of_name};
use crate::units::{Dimension, Unit};
use rusqlite::Row;
use serde::Serialize;
use serde::de::DeserializeOwned;

/// A document column as a record.
pub(super) fn document<T: DeserializeOwned>(
    kind: &'static str,
    id: &str,
    text: &str,
) -> Result<T, StoreError> {
    serde_json::from_str(text).map_err(|error| damaged(kind, id, &error.to_string()))
}

/// A record as a document column.
pub(super) fn to_document<T: Serialize>(
    kind: &'static str,
    id: &str,
    record: &T,
) -> Result<String, StoreError> {
    serde_json::to_string(record).map_err(|error| damaged(kind, id, &error.to_string()))
}

/// The enumeration value of a written name.
pub(super) fn named<T: DeserializeOwned>(
    kind: &'static str,
    id: &str,
    text: &str,
) -> Result<T, StoreError> {
    of_name(text).map_err(|error| damaged(kind, id, &error.to_string()))
}

pub(super) fn damaged(kind: &'static str, id: &str, detail: &str) -> StoreError {
    StoreError::Damaged {
        kind,
        id: id.to_owned(),
        detail: detail.to_owned(),
    }
}

/// The columns of a reading, in the order of `reading`.
pub(super) const READING_COLUMNS: &str = "id, point, value, unit, accuracy_value, accuracy_unit, \
     instrument, mode, taken_at, phase, circuit, note";

/// A row of [`READING_COLUMNS`] as a reading.
pub(super) fn reading(row: &Row<'_>) -> Result<Reading, StoreError> {
    const KIND: &str = "reading";
    let id: String = row.get(0)?;
    let bad = |detail: &str| damaged(KIND, &id, detail);
    let point: String = row.get(1)?;
    let point = ReadingPoint::from_id(&point).ok_or_else(|| bad(&point))?;
    let dimension = point.kind().dimension();
    let value = measure(row, 2, dimension, &id)?.ok_or_else(|| bad("no value"))?;
    let mut reading = Reading::new(point, value).map_err(|error| bad(&error.to_string()))?;
    if let Some(accuracy) = measure(row, 4, reading.accuracy_dimension(), &id)? {
        reading = reading
            .with_accuracy(accuracy)
            .map_err(|error| bad(&error.to_string()))?;
    }
    reading.id = Some(
        id.parse::<ReadingId>()
            .map_err(|error| bad(&error.to_string()))?,
    );
    let instrument: Option<String> = row.get(6)?;
    reading.instrument = match instrument {
        Some(text) => Some(Instrument::from_id(&text).ok_or_else(|| bad(&text))?),
        None => None,
    };
    let mode: Option<String> = row.get(7)?;
    reading.mode = mode.map(|text| named(KIND, &id, &text)).transpose()?;
    let taken_at: Option<String> = row.get(8)?;
    reading.taken_at = taken_at.map(|text| named(KIND, &id, &text)).transpose()?;
    let phase: String = row.get(9)?;
    reading.phase = named(KIND, &id, &phase)?;
    reading.circuit = row.get(10)?;
    reading.note = row.get(11)?;
    Ok(reading)
}

/// Two columns, value and unit, as a measure of a dimension.
pub(super) fn measure(
    row: &Row<'_>,
    first: usize,
    dimension: Dimension,
    id: &str,
) -> Result<Option<PlainMeasure>, StoreError> {
    let value: Option<f64> = row.get(first)?;
    let unit: Option<String> = row.get(first + 1)?;
    let (Some(value), Some(unit)) = (value, unit) else {
        return Ok(None);
    };
    let known = Unit::of(dimension).find(|known| known.symbol() == unit);
    let unit = known.ok_or_else(|| damaged("measure", id, &unit))?;
    Ok(Some(PlainMeasure { value, unit }))
}
