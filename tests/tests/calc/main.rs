//! `returnline calc` from outside: every topic answers its own example, lines
//! come back in order whatever stands in them, and published values come out of
//! the program as they come out of the engine.

mod accuracies;
mod any_question;
mod lines;
mod published;

use returnline_core::calc::TOPICS;
use returnline_tests::program::{path, run};
use serde_json::{Value, json};
use std::io::Write;
use std::process::{Child, Command, Stdio};

fn start(words: &[&str]) -> Child {
    Command::new(path())
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("the program starts")
}

/// What the program answers to these bytes.
fn answers(topic: &str, input: Vec<u8>) -> Vec<Value> {
    let mut child = start(&["calc", topic]);
    let mut stdin = child.stdin.take().expect("piped");
    let writer = std::thread::spawn(move || stdin.write_all(&input));
    let output = child.wait_with_output().expect("it ends");
    writer.join().expect("no panic").expect("written");
    assert!(output.status.success());
    let said = String::from_utf8(output.stdout).expect("UTF-8");
    assert!(!said.contains('«'), "a text is missing: {said}");
    said.lines()
        .map(|line| serde_json::from_str(line).expect("JSON"))
        .collect()
}

fn ask(topic: &str, question: &Value) -> Value {
    let mut found = answers(topic, format!("{question}\n").into_bytes());
    assert_eq!(found.len(), 1);
    found.remove(0)
}

/// The answers to several questions of one topic, none of them refused.
fn ask_all(topic: &str, questions: &[Value]) -> Vec<Value> {
    let lines: String = questions.iter().map(|q| format!("{q}\n")).collect();
    let found = answers(topic, lines.into_bytes());
    assert_eq!(found.len(), questions.len());
    for answer in &found {
        assert!(answer.get("error").is_none(), "{topic}: {answer}");
    }
    found
}

fn measure(value: f64, unit: &str) -> Value {
    json!({ "value": value, "unit": unit })
}

/// The number of a field, which must be in this unit.
fn number(answer: &Value, field: &str, unit: &str) -> f64 {
    let found = &answer[field];
    assert_eq!(found["unit"], unit, "{field} in {answer}");
    assert!(found["source"].is_string(), "{field} names its source");
    found["value"].as_f64().expect("a number")
}

fn near(found: f64, expected: f64, within: f64) {
    assert!(
        (found - expected).abs() <= within,
        "{found} is not {expected} within {within}"
    );
}

#[test]
fn every_topic_lists_describes_itself_and_answers_its_example() {
    let list = String::from_utf8(run(&["calc", "--list"]).stdout).expect("UTF-8");
    assert_eq!(list.lines().count(), TOPICS.len());
    for topic in TOPICS {
        let name = topic.name();
        let mut words = list.lines().filter_map(|line| line.split_once("  "));
        let sentence = words.find(|(listed, _)| *listed == name);
        let sentence = sentence.unwrap_or_else(|| panic!("{name} is not listed")).1;
        assert!(
            sentence.trim().ends_with('.') && !sentence.contains('«'),
            "{name}"
        );

        let described = run(&["calc", name, "--schema"]).stdout;
        let described: Value = serde_json::from_slice(&described).expect("JSON");
        assert!(
            !described.to_string().contains('«'),
            "{name}: a text is missing"
        );
        let sources = described["sources"].as_object().expect("sources");
        assert!(
            !sources.is_empty() || name == "fill-water",
            "{name} names a source"
        );
        let valid = |schema: &str| {
            jsonschema::meta::validate(&described[schema]).expect("a valid schema");
            jsonschema::validator_for(&described[schema]).expect("a schema")
        };
        let (input, output) = (valid("input"), valid("output"));

        let example = run(&["calc", name, "--example"]).stdout;
        let question: Value = serde_json::from_slice(&example).expect("JSON");
        assert_eq!(question, described["example"], "{name}");
        assert!(input.is_valid(&question), "{name}");
        for units in ["us", "si"] {
            let mut question = question.clone();
            question["units"] = json!(units);
            let answer = ask(name, &question);
            assert!(answer.get("error").is_none(), "{name}: {answer}");
            let faults: Vec<String> = output.iter_errors(&answer).map(|e| e.to_string()).collect();
            assert!(faults.is_empty(), "{name}: {faults:?}");
        }
    }
}

#[test]
fn an_unknown_topic_is_met_with_those_near_to_it() {
    let output = run(&["calc", "hed-loss"]);
    assert_eq!(output.status.code(), Some(3));
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(said.contains("head-loss"), "{said}");
}

#[test]
fn errors_name_field_value_unit_and_remedy() {
    let question = json!({
        "fluid": { "kind": "propylene_glycol", "mass_fraction": measure(25.0, "%") },
        "temperature": measure(-40.0, "degF")
    });
    let error = &ask("fluid-properties", &question)["error"];
    assert_eq!(error["field"], "temperature.value");
    assert_eq!(error["value"], -40.0);
    assert_eq!(error["unit"], "degF");
    assert_eq!(error["code"], "below-freezing");

    let mut question = question.clone();
    question["fluid"]["mass_fracton"] = measure(25.0, "%");
    question["temperatur"] = measure(10.0, "degC");
    let answer = ask("fluid-properties", &question);
    let all: Vec<&Value> = std::iter::once(&answer["error"])
        .chain(answer["more"].as_array().expect("two faults"))
        .collect();
    for (field, nearest) in [
        ("temperatur", "temperature"),
        ("fluid.mass_fracton", "fraction"),
    ] {
        let error = all
            .iter()
            .find(|error| error["field"] == field)
            .expect("named");
        let remedy = error["remedy"].as_str().expect("text");
        assert!(remedy.contains(nearest), "{remedy}");
    }
}

#[test]
fn every_alcohol_carries_its_cautions() {
    for kind in ["methanol", "ethanol"] {
        let answer = ask(
            "antifreeze-dose",
            &json!({ "volume": measure(60.0, "gal"), "kind": kind,
            "lowest_leaving": measure(28.0, "degF") }),
        );
        let codes: Vec<&str> = answer["cautions"]
            .as_array()
            .expect("cautions")
            .iter()
            .filter_map(|caution| caution["code"].as_str())
            .collect();
        for code in [
            "flammable-product",
            "use-premixed-alcohol",
            "local-permission",
        ] {
            assert!(codes.contains(&code), "{kind}: {codes:?}");
        }
    }
}

#[test]
fn a_network_that_cannot_be_solved_says_why() {
    let pipe = json!({ "kind": "pipe", "run": {
        "pipe": { "standard": "ips_pe", "size": "1", "sdr": "11" }, "length": measure(100.0, "ft") } });
    let answer = ask(
        "network",
        &json!({ "fluid": { "kind": "water" },
        "temperature": measure(50.0, "degF"),
        "nodes": [{ "name": "b", "outflow": measure(5.0, "gpm") }],
        "links": [{ "name": "one", "from": "a", "to": "b", "is": pipe }] }),
    );
    assert_eq!(answer["error"]["code"], "unreachable-node");
}
