//! One call as a technician writes it down: complaint, what is known of the
//! system and its commissioning, some of the readings, some of the signs.

use super::meters::{Lie, POINTS, Shown, TESTS, read};
use super::signs::{Complaint, LOOKED_AT, TOLD, complaints, sign};
use super::truth::Truth;
use crate::invented::Dice;
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;

/// How much of what could be read and seen is there.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Effort {
    /// Share of the readings that are taken.
    pub readings: f64,
    /// Share of the signs that are looked for.
    pub signs: f64,
}

impl Effort {
    /// Half of everything.
    pub const HALF: Self = Self {
        readings: 0.5,
        signs: 0.5,
    };
    /// Everything an ordinary visit has.
    pub const FULL: Self = Self {
        readings: 1.0,
        signs: 1.0,
    };
    /// A few readings and glances.
    pub const SPARSE: Self = Self {
        readings: 0.15,
        signs: 0.12,
    };
}

/// A call.
#[derive(Clone, Debug)]
pub struct SimulatedCall {
    /// What is really so.
    pub truth: Truth,
    /// The instrument that lies, if one does.
    pub lie: Option<Lie>,
    answers: BTreeMap<String, bool>,
    readings: Vec<Shown>,
    records: Value,
    certified: bool,
    dice: Dice,
}

/// What a technician overlooks, and what is believed seen that is not there.
const MISSED: f64 = 0.04;
const IMAGINED: f64 = 0.004;
/// The same of what a customer tells.
const UNTOLD: f64 = 0.15;
const MISTOLD: f64 = 0.02;

impl SimulatedCall {
    /// Visits a system.
    #[must_use]
    pub fn new(truth: Truth, effort: Effort, lying: bool, seed: u64) -> Self {
        let mut dice = Dice::new(seed);
        let certified = dice.chance(0.5);
        let records = super::written::records(&truth, &mut dice);
        let mut call = Self {
            truth,
            lie: None,
            answers: BTreeMap::new(),
            readings: Vec::new(),
            records,
            certified,
            dice,
        };
        call.take_readings(effort, lying);
        call.hear_the_complaint(effort);
        let about_pressure = [
            "gauge-reads-low",
            "gauge-lower-than-before",
            "gauge-reads-high",
        ]
        .iter()
        .any(|finding| call.answers.get(*finding) == Some(&true));
        for finding in LOOKED_AT {
            // It takes a gauge read warm and cold: done where pressure is the complaint.
            let worth = *finding != "pressure-follows-temperature" || about_pressure;
            if worth && call.dice.chance(effort.signs) {
                call.look(finding);
            }
        }
        call.hear_how_it_began();
        call
    }

    /// The technician answers for one sign that was asked for.
    pub fn look(&mut self, finding: &str) {
        if self.answers.contains_key(finding) {
            return;
        }
        let Some(probability) = sign(&self.truth, finding) else {
            return;
        };
        let told = TOLD.contains(&finding);
        let (missed, imagined) = if told {
            (UNTOLD, MISTOLD)
        } else {
            (MISSED, IMAGINED)
        };
        let there = self.dice.chance(probability.clamp(0.0, 0.98));
        let said = if there {
            !self.dice.chance(missed)
        } else {
            self.dice.chance(imagined)
        };
        self.answers.insert(finding.to_owned(), said);
    }

    /// The technician takes the readings of a point.
    pub fn measure(&mut self, point: &str) {
        let point = match point {
            "dead_head_pressure_before" | "dead_head_pressure_after" => "dead_head_drop",
            "water_alkalinity" | "water_chloride" | "water_calcium" => "water_hardness",
            other => other,
        };
        if self
            .readings
            .iter()
            .any(|shown| shown.point == point && shown.at.is_none())
        {
            return;
        }
        let shown = read(&self.truth, point, self.lie, &mut self.dice);
        self.readings.extend(shown);
    }

    /// The technician asks for the log of the gauge.
    pub fn ask_for_log(&mut self) {
        if self.readings.iter().all(|shown| shown.at.is_none()) {
            self.measure("pressure_log");
        }
    }

    /// Does what a check of the graph asks for: an answer to each sign it
    /// reveals, the readings of each point. Trials of instruments come out as
    /// the instrument is.
    pub fn check(&mut self, findings: &[&str], points: &[&str], log: bool) {
        for finding in findings {
            self.look(finding);
            if let Some(instrument) = super::written::trial_of(finding) {
                let lies = self.lie.is_some_and(|lie| lie.instrument == instrument);
                let said = self.dice.chance(if lies { 0.9 } else { 0.01 });
                self.answers.insert((*finding).to_owned(), said);
            }
        }
        for point in points {
            self.measure(point);
        }
        if log {
            self.ask_for_log();
        }
    }

    fn take_readings(&mut self, effort: Effort, lying: bool) {
        let refrigerant = [
            "evaporating_temperature",
            "condensing_temperature",
            "superheat",
            "subcooling",
        ];
        let mut points: Vec<&str> = Vec::new();
        for point in POINTS {
            let allowed = self.certified || !refrigerant.contains(point);
            if allowed && self.dice.chance(effort.readings) {
                points.push(point);
            }
        }
        // A cart is on the van now and then, and some owners keep a log.
        for test in TESTS {
            if self.dice.chance(0.5 * effort.readings) {
                points.push(test);
            }
        }
        if lying {
            self.choose_liar(&points);
        }
        for point in points {
            self.measure(point);
        }
    }

    /// One of the instruments that were used lies.
    fn choose_liar(&mut self, points: &[&str]) {
        let mut used: Vec<&'static str> = points
            .iter()
            .flat_map(|point| read(&self.truth, point, None, &mut self.dice))
            .map(|shown| shown.instrument)
            .filter(|instrument| *instrument != "ruler")
            .collect();
        used.sort_unstable();
        used.dedup();
        if used.is_empty() {
            return;
        }
        let instrument = used[self.dice.below(used.len())];
        let size = self.dice.between(0.5, 1.0) * if self.dice.chance(0.5) { 1.0 } else { -1.0 };
        self.lie = Some(Lie { instrument, size });
    }

    /// Somebody calls because of something: the complaint is drawn among what
    /// the customer notices; the rest is told when asked. What would have been
    /// noticed on the sound system too makes nobody call while a fault can.
    fn hear_the_complaint(&mut self, effort: Effort) {
        let complaints = complaints(&self.truth);
        for turn in 0..40 {
            let mut heard: Vec<&str> = Vec::new();
            let mut by_the_fault = false;
            for complaint in &complaints {
                if self.dice.chance(complaint.chance) {
                    heard.push(complaint.finding);
                    let without = complaint.anyway / complaint.chance;
                    by_the_fault |= !self.dice.chance(without);
                }
            }
            if heard.is_empty() || !(by_the_fault || turn > 30) {
                continue;
            }
            for &Complaint { finding, .. } in &complaints {
                let noticed = heard.contains(&finding);
                if noticed && !self.dice.chance(UNTOLD) {
                    self.answers.insert(finding.to_owned(), true);
                } else if !noticed && self.dice.chance(effort.signs) {
                    let said = self.dice.chance(MISTOLD);
                    self.answers.insert(finding.to_owned(), said);
                }
            }
            break;
        }
        for finding in TOLD {
            if self.dice.chance(effort.signs) {
                self.look(finding);
            }
        }
    }

    fn hear_how_it_began(&mut self) {
        let began = super::written::began(self.truth.fault, &mut self.dice);
        if let Some(began) = began.filter(|_| self.dice.chance(0.55)) {
            self.answers.insert(began.to_owned(), true);
        }
    }

    /// The visit file.
    #[must_use]
    pub fn file(&self) -> Value {
        let answers: Vec<Value> = self
            .answers
            .iter()
            .map(|(finding, said)| json!({"finding": finding, "is": if *said { "yes" } else { "no" }}))
            .collect();
        let readings: Vec<Value> = self.readings.iter().map(written).collect();
        let mut file = self.records.clone();
        let visit = json!({
            "date": self.truth.dates.visit.to_string(),
            "answers": answers,
            "readings": readings,
            "means": {"refrigerant_certified": self.certified, "electrical_licence": true},
        });
        if let Some(map) = file.as_object_mut() {
            map.insert("visit".to_owned(), visit);
        }
        file
    }
}

fn written(shown: &Shown) -> Value {
    let mut map = Map::new();
    map.insert("point".into(), json!(shown.point));
    map.insert(
        "value".into(),
        json!({"value": shown.value, "unit": shown.unit}),
    );
    map.insert("instrument".into(), json!(shown.instrument));
    map.insert("mode".into(), json!(shown.mode));
    if let Some(circuit) = shown.circuit {
        map.insert("circuit".into(), json!(circuit));
    }
    if let Some(at) = &shown.at {
        map.insert("taken_at".into(), json!(at));
    }
    Value::Object(map)
}
