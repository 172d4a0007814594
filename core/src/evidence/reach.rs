//! What readings could still tell, with what is on record.
//!
//! An evaluator says nothing when it lacks what it needs. Where that is a reading, a
//! check can bring it. Where it is a record (a pump curve, the pressure at start-up),
//! no check can, however often it is made.

use super::call::Call;
use super::evaluators::Evaluator;
use crate::diagnosis::{EvidenceKind, FindingId, Graph};
use crate::model::LoopModel;
use crate::records::visit_file::VisitFile;
use crate::records::{PlainMeasure, Reading, ReadingPoint};
use chrono::{DateTime, FixedOffset, NaiveDate, NaiveTime, TimeDelta};
use std::collections::BTreeSet;

/// Entries of the gauge in a log, one a day: what a trend needs and more.
const LOGGED_DAYS: i64 = 6;
/// Circuits that are compared.
const CIRCUITS: u32 = 2;
/// Where in the likely range of its point a reading is put. Only whether something
/// can be made of it counts, not what.
const AT: f64 = 0.4;

/// Of the findings that nothing tells yet those that no reading could tell, though all of
/// them were taken. `told` are the findings that readings tell now, `used` the places of
/// those readings.
pub(super) fn out_of_reach(
    file: &VisitFile,
    graph: &Graph,
    told: &BTreeSet<&FindingId>,
    used: &BTreeSet<usize>,
    day: NaiveDate,
) -> BTreeSet<FindingId> {
    let whole = with_every_reading(file, used, day);
    let model = LoopModel::of(&whole);
    let call = Call::new(&whole, &model, day);
    let findings = graph.findings().iter();
    let untold = findings.filter(|finding| !told.contains(&finding.id));
    let silent = untold.filter(|finding| match &finding.evidence {
        EvidenceKind::Evaluator(name) => {
            Evaluator::named(name).is_some_and(|evaluator| evaluator.evaluate(&call).is_empty())
        }
        EvidenceKind::Symptom | EvidenceKind::Observation => false,
    });
    silent.map(|finding| finding.id.clone()).collect()
}

/// The visit with a reading at every point of which nothing is known yet.
fn with_every_reading(file: &VisitFile, used: &BTreeSet<usize>, day: NaiveDate) -> VisitFile {
    let read = file.visit.readings.iter().enumerate();
    let read = read.filter(|(place, _)| used.contains(place));
    let known: BTreeSet<ReadingPoint> = read.map(|(_, reading)| reading.point()).collect();
    let points = ReadingPoint::ALL.iter().copied();
    let mut whole = file.clone();
    for point in
        points.filter(|point| *point == ReadingPoint::StaticPressure || !known.contains(point))
    {
        let Some(reading) = likely(point) else {
            continue;
        };
        match point {
            ReadingPoint::StaticPressure => whole.visit.readings.extend(logged(&reading, day)),
            ReadingPoint::CircuitReturn => {
                let circuits = (1..=CIRCUITS).map(|circuit| {
                    let mut one = reading.clone();
                    one.circuit = Some(circuit);
                    one
                });
                whole.visit.readings.extend(circuits);
            }
            _ => whole.visit.readings.push(reading),
        }
    }
    whole
}

fn likely(point: ReadingPoint) -> Option<Reading> {
    let bounds = point.bounds();
    let (low, high) = bounds.likely;
    let value = PlainMeasure {
        value: low + AT * (high - low),
        unit: bounds.unit,
    };
    Reading::new(point, value).ok()
}

/// A log of the gauge that ends on the day.
fn logged(reading: &Reading, day: NaiveDate) -> Vec<Reading> {
    let at = |back: i64| -> Option<DateTime<FixedOffset>> {
        let day = day.checked_sub_signed(TimeDelta::days(back))?;
        Some(day.and_time(NaiveTime::MIN).and_utc().fixed_offset())
    };
    let days = (0..LOGGED_DAYS).rev();
    days.map(|back| {
        let mut entry = reading.clone();
        entry.taken_at = at(back);
        entry
    })
    .collect()
}
