//! The demonstration company: invented sites to look around in, loaded when asked
//! and taken away again as a whole. No person, company or place in it exists.

use super::fleet::{invented, records};
use super::types::DemoView;
use super::{ApiError, Engine};
use crate::records::visit_file::VisitFile;
use crate::records::{
    Outcome, PlainMeasure, Reading, ReadingId, ReadingPoint, SiteId, SystemId, Visit, VisitId,
};
use crate::store::{Demo, VisitRecord};
use crate::text::Args;
use crate::units::Unit;
use chrono::{DateTime, NaiveDate, NaiveTime, TimeDelta, Utc};

/// Calls that wait to be worked on, and whether the gauge was read there before.
const CALLS: [(&[u8], bool); 3] = [
    (
        include_bytes!("../../data/samples/air-in-one-circuit.json"),
        false,
    ),
    (
        include_bytes!("../../data/samples/pressure-lost-over-summer.json"),
        true,
    ),
    (
        include_bytes!("../../data/samples/freeze-guard-trips.json"),
        false,
    ),
];
/// Visits of the past, at least; the board needs some.
const PAST: usize = 120;
/// Which past.
const SEED: u64 = 20_260_814;
/// Where the invented sites lie.
const STREETS: [&str; 12] = [
    "Alder Lane",
    "Birch Hollow",
    "Cedar Rise",
    "Dune Road",
    "Elm Terrace",
    "Fern Bank",
    "Gorse Hill",
    "Hazel Court",
    "Ivy Mews",
    "Juniper Way",
    "Kelp Wharf",
    "Larch Meadow",
];
/// The gauge of the call that lost its pressure, on visits before: day, psi, °F. Invented.
const GAUGE_BEFORE: [(i32, u32, u32, f64, f64); 2] =
    [(2026, 4, 14, 38.0, 46.0), (2026, 6, 9, 21.0, 63.0)];

impl Engine {
    /// What there is of the demonstration company.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn demo(&self) -> Result<DemoView, ApiError> {
        let demo = self.store.demo().map_err(|error| self.failed(&error))?;
        Ok(self.demo_view(demo))
    }

    /// Loads it, unless it is there.
    ///
    /// # Errors
    /// [`ApiError`]; nothing is loaded then.
    pub fn load_demo(&mut self) -> Result<DemoView, ApiError> {
        if self.demo()?.visits > 0 {
            return self.demo();
        }
        let now = self.surroundings.now();
        let mut made = invented(PAST, SEED);
        for (number, system) in (0..).zip(&mut made) {
            let street = STREETS[number % STREETS.len()];
            system.site.name = format!("{street} {} (invented)", 1 + number / STREETS.len());
        }
        let follow_ups: Vec<_> = made
            .iter()
            .flat_map(|system| system.follow_ups.iter().cloned())
            .collect();
        let past = records(made).map(|record| {
            let day = record.file.visit.date;
            (record, day.map_or(now, noon).min(now))
        });
        let mut all: Vec<_> = past.collect();
        all.extend(self.demo_calls(now)?);
        let kept = self.store.put_demo(all, &follow_ups, now);
        kept.map_err(|error| self.failed(&error))?;
        self.forget_board();
        self.demo()
    }

    /// Takes all of it away and leaves everything else as it is.
    ///
    /// # Errors
    /// [`ApiError`]; it is all there then.
    pub fn remove_demo(&mut self) -> Result<DemoView, ApiError> {
        let removed = self.store.remove_demo();
        removed.map_err(|error| self.failed(&error))?;
        self.forget_board();
        self.demo()
    }

    /// The calls that wait, each at a system of its own, the first one on top.
    fn demo_calls(
        &self,
        now: DateTime<Utc>,
    ) -> Result<Vec<(VisitRecord, DateTime<Utc>)>, ApiError> {
        let mut calls = Vec::new();
        for ((bytes, gauge_before), ago) in CALLS.into_iter().zip(1..) {
            let file = super::read_visit_file(bytes, self.wording)?;
            let (system_id, site_id) = (
                SystemId(self.surroundings.new_id()),
                SiteId(self.surroundings.new_id()),
            );
            let record = |file: VisitFile| VisitRecord {
                id: VisitId(self.surroundings.new_id()),
                system_id,
                site_id,
                file,
            };
            for (visit, day) in self.gauge_visits().filter(|_| gauge_before) {
                let file = VisitFile {
                    visit,
                    ..file.clone()
                };
                calls.push((record(file), noon(day).min(now)));
            }
            calls.push((record(file), now - TimeDelta::seconds(ago)));
        }
        Ok(calls)
    }

    /// Visits at which nothing but the gauge was read.
    fn gauge_visits(&self) -> impl Iterator<Item = (Visit, NaiveDate)> + '_ {
        GAUGE_BEFORE
            .into_iter()
            .filter_map(|(year, month, day, psi, fahrenheit)| {
                let day = NaiveDate::from_ymd_opt(year, month, day)?;
                let read = |point, value, unit| {
                    let mut reading = Reading::new(point, PlainMeasure { value, unit }).ok()?;
                    reading.id = Some(ReadingId(self.surroundings.new_id()));
                    Some(reading)
                };
                let visit = Visit {
                    date: Some(day),
                    readings: vec![
                        read(ReadingPoint::StaticPressure, psi, Unit::Psi)?,
                        read(ReadingPoint::LoopTemperature, fahrenheit, Unit::Fahrenheit)?,
                    ],
                    outcome: Some(Outcome::NothingWrong),
                    ..Visit::default()
                };
                Some((visit, day))
            })
    }

    fn demo_view(&self, demo: Demo) -> DemoView {
        let key = match demo.visits {
            0 => "demo-none",
            _ => "demo-there",
        };
        let args = Args::new()
            .count("visits", demo.visits)
            .count("systems", demo.systems)
            .count("own", demo.own);
        DemoView {
            visits: demo.visits,
            systems: demo.systems,
            own: demo.own,
            shown: self.wording.catalog().fill(key, &args),
        }
    }
}

fn noon(day: NaiveDate) -> DateTime<Utc> {
    let noon = NaiveTime::from_hms_opt(12, 0, 0).unwrap_or_default();
    day.and_time(noon).and_utc()
}

#[cfg(test)]
mod tests;
