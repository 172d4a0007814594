//! The document behind the published schema.

use super::fault::{Fault, FaultCode};
use super::{VisitFile, limits};
use crate::records::{
    Action, Answer, Commissioning, Instrument, Means, OperatingMode, Outcome, Phase, PlainMeasure,
    Reading, ReadingId, ReadingPoint, Site, System, Verdict, Visit,
};
use crate::units::{Dimension, Duration, Measure, Number, Unit, parse};
use chrono::{DateTime, FixedOffset, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value, json};

/// What the `format` field says.
pub const FORMAT: &str = "returnline-visit";
/// The version written, and the newest read.
pub const VERSION: u64 = 1;

/// A call at one system. Unknown facts are left out; every number states its unit.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(title = "Returnline visit file")]
pub(super) struct Wire {
    /// Always `returnline-visit`.
    format: String,
    /// Format version, 1.
    version: u64,
    /// Where the system stands.
    #[serde(default)]
    site: Site,
    /// The installed system.
    #[serde(default)]
    system: System,
    /// How it was flushed, filled and charged.
    #[serde(default)]
    commissioning: Commissioning,
    /// The visit.
    visit: WireVisit,
}

#[derive(Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
#[schemars(rename = "Visit")]
pub(super) struct WireVisit {
    /// Day of the visit.
    #[serde(skip_serializing_if = "Option::is_none")]
    date: Option<NaiveDate>,
    /// Who went.
    #[serde(skip_serializing_if = "Option::is_none")]
    technician: Option<String>,
    /// The complaint in the customer's own words.
    #[serde(skip_serializing_if = "Option::is_none")]
    complaint: Option<String>,
    /// Answers to findings that need no number.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 500))]
    answers: Vec<Answer>,
    /// The numbers.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 2000))]
    readings: Vec<WireReading>,
    /// What the technician carries and may do.
    means: Means,
    /// Causes found true or false by a check that decides it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    verdicts: Vec<Verdict>,
    /// What was done.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    actions: Vec<Action>,
    /// How it ended.
    #[serde(skip_serializing_if = "Option::is_none")]
    outcome: Option<Outcome>,
    /// Working time of the call.
    #[serde(skip_serializing_if = "Option::is_none")]
    time_spent: Option<Measure<Duration>>,
    /// What the call cost the company, in its own currency.
    #[serde(skip_serializing_if = "Option::is_none")]
    cost: Option<Measure<Number>>,
    /// Anything else.
    #[serde(skip_serializing_if = "Option::is_none")]
    notes: Option<String>,
}

/// One reading. The point decides which units are accepted.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(rename = "Reading", transform = units_by_point)]
struct WireReading {
    /// Identifier, if it is stored.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    id: Option<ReadingId>,
    /// Where it was taken.
    point: ReadingPoint,
    /// The value.
    value: WireMeasure,
    /// Bound either side of the value that holds in 19 of 20 readings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    accuracy: Option<WireMeasure>,
    /// What it was taken with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    instrument: Option<Instrument>,
    /// What the system was doing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    mode: Option<OperatingMode>,
    /// When, with offset from UTC.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    taken_at: Option<DateTime<FixedOffset>>,
    /// As found or as left.
    #[serde(default)]
    phase: Phase,
    /// Which circuit, counted from 1 at the manifold.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 1, max = 400))]
    circuit: Option<u32>,
    /// Anything else.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    note: Option<String>,
}

#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(rename = "Measure")]
struct WireMeasure {
    #[schemars(range(min = -1e12, max = 1e12))]
    value: f64,
    unit: String,
}

/// Adds to the schema of a reading which units each point accepts.
fn units_by_point(schema: &mut schemars::Schema) {
    let symbols =
        |dimension: Dimension| -> Vec<&str> { Unit::of(dimension).map(Unit::symbol).collect() };
    let unit = |units: Vec<&str>| json!({ "properties": { "unit": { "enum": units } } });
    let mut rules = Vec::new();
    for point in ReadingPoint::ALL {
        let dimension = point.kind().dimension();
        rules.push(json!({
            "if": { "properties": { "point": { "const": point.id() } }, "required": ["point"] },
            "then": { "properties": {
                "value": unit(symbols(dimension)),
                "accuracy": unit(symbols(width(dimension)))
            } }
        }));
    }
    schema.insert("allOf".to_owned(), Value::Array(rules));
}

/// The dimension of a difference of two values of a dimension.
fn width(dimension: Dimension) -> Dimension {
    match dimension {
        Dimension::Temperature => Dimension::TemperatureDifference,
        other => other,
    }
}

/// The published JSON Schema (draft 2020-12) of the visit file.
pub fn schema() -> Value {
    let mut schema = schemars::schema_for!(Wire).to_value();
    strip_null(&mut schema);
    if let Some(properties) = schema.get_mut("properties").and_then(Value::as_object_mut) {
        properties.insert("format".to_owned(), json!({ "const": FORMAT }));
        properties.insert("version".to_owned(), json!({ "const": VERSION }));
    }
    schema
}

/// "Unknown" is written by leaving a field out, never as null: one way, so
/// that messages can say what is accepted without mentioning null each time.
pub(crate) fn strip_null(value: &mut Value) {
    match value {
        Value::Object(map) => strip_null_in(map),
        Value::Array(items) => items.iter_mut().for_each(strip_null),
        _ => {}
    }
}

fn strip_null_in(map: &mut Map<String, Value>) {
    if let Some(Value::Array(types)) = map.get_mut("type") {
        types.retain(|kind| kind != "null");
        if let [single] = types.as_slice() {
            let single = single.clone();
            map.insert("type".to_owned(), single);
        }
    }
    if let Some(Value::Array(branches)) = map.get_mut("anyOf") {
        branches.retain(|branch| branch.get("type") != Some(&json!("null")));
        if let [single] = branches.as_slice() {
            let single = single.clone();
            map.remove("anyOf");
            if let Value::Object(fields) = single {
                map.extend(fields);
            }
        }
    }
    if map.get("default") == Some(&Value::Null) {
        map.remove("default");
    }
    map.values_mut().for_each(strip_null);
}

/// Whether this is a visit file of a version that can be read.
pub(super) fn check_envelope(document: &Value) -> Result<(), Fault> {
    if document.get("format").and_then(Value::as_str) != Some(FORMAT) {
        let found = document
            .get("format")
            .map(Value::to_string)
            .unwrap_or_default();
        return Err(Fault::at(
            "format",
            FaultCode::NotAVisitFile,
            &found,
            FORMAT,
        ));
    }
    match document.get("version").and_then(Value::as_u64) {
        Some(version) if version > VERSION => Err(Fault::at(
            "version",
            FaultCode::NewerVersion,
            &version.to_string(),
            &VERSION.to_string(),
        )),
        _ => Ok(()),
    }
}

impl Wire {
    pub(super) fn into_file(self, faults: &mut Vec<Fault>) -> VisitFile {
        VisitFile {
            site: self.site,
            system: self.system,
            commissioning: self.commissioning,
            visit: self.visit.into_visit(faults),
        }
    }

    pub(super) fn from_file(file: &VisitFile) -> Self {
        Self {
            format: FORMAT.to_owned(),
            version: VERSION,
            site: file.site.clone(),
            system: file.system.clone(),
            commissioning: file.commissioning.clone(),
            visit: WireVisit::from_visit(&file.visit),
        }
    }
}

impl WireVisit {
    pub(super) fn into_visit(self, faults: &mut Vec<Fault>) -> Visit {
        let readings = self
            .readings
            .into_iter()
            .enumerate()
            .filter_map(|(index, reading)| {
                reading.into_reading(&format!("visit.readings[{index}]"), faults)
            })
            .collect();
        Visit {
            date: self.date,
            technician: self.technician,
            complaint: self.complaint,
            answers: self.answers,
            readings,
            means: self.means,
            verdicts: self.verdicts,
            actions: self.actions,
            outcome: self.outcome,
            time_spent: self.time_spent,
            cost: self.cost,
            notes: self.notes,
        }
    }

    pub(super) fn from_visit(visit: &Visit) -> Self {
        let visit = visit.clone();
        Self {
            date: visit.date,
            technician: visit.technician,
            complaint: visit.complaint,
            answers: visit.answers,
            readings: visit
                .readings
                .iter()
                .map(WireReading::from_reading)
                .collect(),
            means: visit.means,
            verdicts: visit.verdicts,
            actions: visit.actions,
            outcome: visit.outcome,
            time_spent: visit.time_spent,
            cost: visit.cost,
            notes: visit.notes,
        }
    }
}

impl WireMeasure {
    fn into_measure(
        self,
        path: &str,
        dimension: Dimension,
        faults: &mut Vec<Fault>,
    ) -> Option<PlainMeasure> {
        let unit = Unit::of(dimension).find(|unit| unit.symbol() == self.unit);
        if unit.is_none() {
            let accepted = parse::accepted(dimension);
            let path = format!("{path}.unit");
            faults.push(Fault::at(
                &path,
                FaultCode::NotAccepted,
                &self.unit,
                &accepted,
            ));
        }
        Some(PlainMeasure {
            value: self.value,
            unit: unit?,
        })
    }

    fn from_measure(measure: PlainMeasure) -> Self {
        Self {
            value: measure.value,
            unit: measure.unit.symbol().to_owned(),
        }
    }
}

impl WireReading {
    fn into_reading(self, path: &str, faults: &mut Vec<Fault>) -> Option<Reading> {
        let dimension = self.point.kind().dimension();
        let value = self
            .value
            .into_measure(&format!("{path}.value"), dimension, faults)?;
        let accuracy = match self.accuracy {
            Some(written) => {
                let path = format!("{path}.accuracy");
                Some(written.into_measure(&path, width(dimension), faults)?)
            }
            None => None,
        };
        let reading = Reading::new(self.point, value).and_then(|reading| match accuracy {
            Some(accuracy) => reading.with_accuracy(accuracy),
            None => Ok(reading),
        });
        match reading {
            Ok(mut reading) => {
                reading.id = self.id;
                reading.instrument = self.instrument;
                reading.mode = self.mode;
                reading.taken_at = self.taken_at;
                reading.phase = self.phase;
                reading.circuit = self.circuit;
                reading.note = self.note;
                Some(reading)
            }
            Err(error) => {
                faults.push(limits::reading_fault(path, &error));
                None
            }
        }
    }

    fn from_reading(reading: &Reading) -> Self {
        Self {
            id: reading.id,
            point: reading.point(),
            value: WireMeasure::from_measure(reading.value()),
            accuracy: reading.accuracy().map(WireMeasure::from_measure),
            instrument: reading.instrument,
            mode: reading.mode,
            taken_at: reading.taken_at,
            phase: reading.phase,
            circuit: reading.circuit,
            note: reading.note.clone(),
        }
    }
}
