//! Whatever is wrong with a question, it is answered or refused.

use proptest::prelude::*;
use returnline_core::calc::{Calculator, TOPICS};
use returnline_core::text::{Language, catalog};
use returnline_core::units::UnitSystem;
use serde_json::{Value, json};

/// Whether a null stands anywhere: a number that is none would be written so.
fn holds_null(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::Object(map) => map.values().any(holds_null),
        Value::Array(items) => items.iter().any(holds_null),
        _ => false,
    }
}

/// Numbers that nobody should write.
const WILD: [f64; 9] = [0.0, -1.0, 1e12, -1e12, 1e308, 1e-308, 1e-12, 0.5, 3e5];

/// Changes one place of a question: the value of a number, the name of a field, a field less.
fn spoil(value: &mut Value, steps: &mut impl Iterator<Item = usize>) {
    let step = steps.next().unwrap_or(0);
    match value {
        Value::Object(map) if !map.is_empty() => {
            let name = map
                .keys()
                .nth(step % map.len())
                .cloned()
                .unwrap_or_default();
            match steps.next().unwrap_or(0) % 12 {
                0 => drop(map.remove(&name)),
                1 => {
                    let taken = map.remove(&name).unwrap_or(Value::Null);
                    map.insert(format!("{name}s"), taken);
                }
                2 => drop(map.insert(name, Value::Null)),
                _ => {
                    if let Some(inner) = map.get_mut(&name) {
                        spoil(inner, steps);
                    }
                }
            }
        }
        Value::Array(items) if !items.is_empty() => {
            let place = step % items.len();
            if step.is_multiple_of(5) {
                items.remove(place);
            } else {
                spoil(&mut items[place], steps);
            }
        }
        Value::Number(_) => *value = json!(WILD[step % WILD.len()]),
        _ => *value = json!(step),
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 192, ..ProptestConfig::default() })]

    /// Whatever is wrong with a question, there is one answer or one error with a remedy, and
    /// no number that is none.
    #[test]
    fn a_spoilt_question_is_answered_or_refused(
        topic in 0..TOPICS.len(),
        places in prop::collection::vec(0..1_000usize, 2..24),
        times in 1..3usize,
    ) {
        let entry = TOPICS[topic];
        let calculator = Calculator::new(entry, UnitSystem::Us);
        let mut question: Value = serde_json::from_str(&entry.example()).expect("JSON");
        let mut steps = places.iter().copied().cycle().take(60 * times);
        for _ in 0..times {
            spoil(&mut question, &mut steps);
        }
        let text = question.to_string();
        let answer = calculator.answer(text.as_bytes(), catalog(Language::English));
        prop_assert!(answer.is_object());
        let said = answer.to_string();
        prop_assert!(!holds_null(&answer) && !said.contains('«'), "{} {}: {}", entry.name(), text, said);
        if let Some(error) = answer.get("error") {
            prop_assert!(error["remedy"].as_str().is_some_and(|text| !text.is_empty()));
        }
    }

    /// Bytes that are no question at all.
    #[test]
    fn garbage_is_refused(topic in 0..TOPICS.len(), bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        let calculator = Calculator::new(TOPICS[topic], UnitSystem::Si);
        let answer = calculator.answer(&bytes, catalog(Language::English));
        prop_assert!(answer.get("error").is_some());
    }
}
