//! Cases worked by hand, one topic a file.

mod combined;
mod facts;
mod freeze;
mod gathering;
mod hydraulics;
mod others;
mod pressure;
mod reach;
mod words;

use super::*;
use crate::diagnosis::Likelihood;
use crate::model::LoopModel;
use crate::records::Level;
use crate::records::visit_file::{FORMAT, VisitFile, Vocabulary, read};
use chrono::NaiveDate;
use serde_json::{Value, json};

/// Takes any identifier, so that these tests do not depend on the rule graph.
struct Anything;
impl Vocabulary for Anything {
    fn answers(&self, _: &str) -> Option<&[Level]> {
        Some(&[
            Level::Yes,
            Level::No,
            Level::Low,
            Level::Normal,
            Level::High,
        ])
    }
    fn has_cause(&self, _: &str) -> bool {
        true
    }
    fn has_check(&self, _: &str) -> bool {
        true
    }
    fn close_to(&self, _: &str) -> Vec<String> {
        Vec::new()
    }
}

/// A visit file from its parts.
fn file(system: Value, commissioning: Value, visit: Value) -> VisitFile {
    let document = json!({
        "format": FORMAT, "version": 1,
        "system": system, "commissioning": commissioning, "visit": visit
    });
    read(document.to_string().as_bytes(), &Anything).expect("a readable visit file")
}

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 1, 20).expect("a day")
}

fn value(value: f64, unit: &str) -> Value {
    json!({ "value": value, "unit": unit })
}

/// What one evaluator makes of a file.
fn evaluate(name: &str, file: &VisitFile) -> Vec<Evaluation> {
    let model = LoopModel::of(file);
    let call = Call::new(file, &model, today());
    Evaluator::named(name)
        .expect("an evaluator")
        .evaluate(&call)
}

/// The only likelihood that an evaluator gives.
fn only(name: &str, file: &VisitFile) -> Likelihood {
    let evaluations = evaluate(name, file);
    assert_eq!(evaluations.len(), 1, "{name}");
    evaluations[0].likelihood
}

/// Share of a level among the weights.
fn share(likelihood: Likelihood, level: usize) -> f64 {
    let weights = likelihood.weights();
    weights[level] / weights.iter().sum::<f64>()
}

/// Asserts which level is favoured, and by how much at least.
fn favours(likelihood: Likelihood, level: usize, least: f64) {
    let share = share(likelihood, level);
    assert!(
        share >= least,
        "level {level} has {share:.3} of {:?}",
        likelihood.weights()
    );
}

/// A system with everything on record: 4 ton, 12 gpm, four circuits of 3/4 in.
fn rich() -> Value {
    json!({
        "installed_on": "2025-10-01",
        "heat_pump": {
            "heating_capacity": value(36_000.0, "Btu/h"),
            "cooling_capacity": value(48_000.0, "Btu/h"),
            "heating_cop": value(3.6, "1"),
            "cooling_cop": value(4.8, "1"),
            "rated_flow": value(12.0, "gpm"),
            "exchanger": {
                "kind": "coaxial",
                "curve": [
                    { "flow": value(8.0, "gpm"), "drop": value(2.2, "psi") },
                    { "flow": value(12.0, "gpm"), "drop": value(4.6, "psi") },
                    { "flow": value(16.0, "gpm"), "drop": value(7.7, "psi") }
                ],
                "curve_temperature": value(60.0, "degF")
            }
        },
        "flow_centre": { "kind": "sealed" },
        "circulators": [{
            "curve": [
                { "flow": value(0.0, "gpm"), "head": value(32.0, "ft") },
                { "flow": value(12.0, "gpm"), "head": value(24.0, "ft") },
                { "flow": value(20.0, "gpm"), "head": value(12.0, "ft") }
            ],
            "speed": value(100.0, "%"),
            "rated_power": value(245.0, "W")
        }],
        "ground": {
            "kind": "vertical",
            "circuits": [{
                "count": 4, "length": value(500.0, "ft"),
                "pipe": { "standard": "ips_pe", "size": "3/4", "sdr": "11" }
            }]
        },
        "fluid": { "kind": "propylene_glycol", "volume_fraction": value(25.0, "%") }
    })
}
