//! Accuracies carried through topics that compute with plain values.
//!
//! As [`propagate`](crate::uncertainty::propagate): every measure of the
//! question that states an accuracy is moved a little to both sides, and what
//! the numbers of the answer do adds up in squares.

use super::amount::{COVERAGE, beside, span};
use super::error::CalcError;
use crate::units::Unit;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// Step as a part of the standard uncertainty.
const STEP: f64 = 1e-2;
/// Accuracies that one question may state: each costs two more computations.
const MOST: usize = 200;

/// A measure of the question: where, and its standard uncertainty in its own unit.
struct Moved {
    pointer: String,
    value: f64,
    standard: f64,
}

fn any_unit(symbol: &str) -> Option<Unit> {
    Unit::all().find(|unit| unit.symbol() == symbol)
}

fn measures(value: &Value, pointer: &str, found: &mut Vec<Moved>) {
    match value {
        Value::Object(map) => {
            let accuracy = map.get("accuracy");
            let number = |v: Option<&Value>| v.and_then(|v| v.get("value")).and_then(Value::as_f64);
            let unit = |v: Option<&Value>| any_unit(v?.get("unit")?.as_str()?);
            if let (Some(centre), Some(half), Some(own), Some(its)) = (
                number(Some(value)),
                number(accuracy),
                unit(Some(value)),
                unit(accuracy),
            ) && half > 0.0
            {
                found.push(Moved {
                    pointer: format!("{pointer}/value"),
                    value: centre,
                    standard: half / COVERAGE * span(its) / span(own),
                });
            }
            for (name, inner) in map {
                measures(inner, &format!("{pointer}/{name}"), found);
            }
        }
        Value::Array(items) => {
            for (i, inner) in items.iter().enumerate() {
                measures(inner, &format!("{pointer}/{i}"), found);
            }
        }
        _ => {}
    }
}

/// The numbers of an answer that state no accuracy, by where they stand.
fn plain(value: &Value, pointer: &str, found: &mut BTreeMap<String, f64>) {
    match value {
        Value::Object(map) => {
            if let (Some(number), true, false) = (
                map.get("value").and_then(Value::as_f64),
                map.contains_key("unit"),
                map.contains_key("accuracy"),
            ) {
                found.insert(pointer.to_owned(), number);
            }
            for (name, inner) in map.iter().filter(|(name, _)| *name != "accuracy") {
                plain(inner, &format!("{pointer}/{name}"), found);
            }
        }
        Value::Array(items) => {
            for (i, inner) in items.iter().enumerate() {
                plain(inner, &format!("{pointer}/{i}"), found);
            }
        }
        _ => {}
    }
}

/// Adds to the numbers of an answer the accuracies that follow from those of the question.
pub(super) fn carry(
    question: &Value,
    answer: &mut Value,
    compute: impl Fn(Value) -> Result<Value, CalcError>,
) -> Result<(), CalcError> {
    let mut moved = Vec::new();
    measures(question, "", &mut moved);
    if moved.len() > MOST {
        return Err(CalcError::new("too-many-accuracies", "", moved.len()).accepting(MOST));
    }
    let mut best = BTreeMap::new();
    plain(answer, "", &mut best);
    let mut variances: BTreeMap<String, f64> = BTreeMap::new();
    for input in &moved {
        let step = STEP * input.standard;
        let at = |by: f64| {
            let mut shifted = question.clone();
            *shifted.pointer_mut(&input.pointer)? = json!(input.value + by);
            let mut numbers = BTreeMap::new();
            plain(&compute(shifted).ok()?, "", &mut numbers);
            Some(numbers)
        };
        let (up, down) = (at(step), at(-step));
        for (place, centre) in &best {
            let beside = |side: &Option<BTreeMap<String, f64>>| side.as_ref()?.get(place).copied();
            let slope = match (beside(&up), beside(&down)) {
                (Some(up), Some(down)) => (up - down) / (2.0 * step),
                (Some(up), None) => (up - centre) / step,
                (None, Some(down)) => (centre - down) / step,
                (None, None) => continue,
            };
            *variances.entry(place.clone()).or_default() += (slope * input.standard).powi(2);
        }
    }
    for (place, variance) in variances {
        let Some(Value::Object(number)) = answer.pointer_mut(&place) else {
            continue;
        };
        let unit = number
            .get("unit")
            .and_then(Value::as_str)
            .and_then(any_unit);
        if let Some(unit) = unit.filter(|_| variance > 0.0 && variance.is_finite()) {
            let accuracy = json!({
                "value": COVERAGE * variance.sqrt(),
                "unit": beside(unit).symbol()
            });
            number.insert("accuracy".to_owned(), accuracy);
        }
    }
    Ok(())
}
