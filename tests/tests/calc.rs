//! `returnline calc` from outside: every topic answers its own example, lines
//! come back in order whatever stands in them, and published values come out of
//! the program as they come out of the engine.

use proptest::prelude::*;
use returnline_core::calc::{Calculator, MAX_LINE, TOPICS};
use returnline_core::text::{Language, catalog};
use returnline_core::units::UnitSystem;
use returnline_tests::program::{path, run};
use returnline_tests::rows;
use serde_json::{Value, json};
use std::io::{BufRead, BufReader, Read, Write};
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

const GOOD: &str =
    r#"{"pipe":{"standard":"ips_pe","size":"1","sdr":"11"},"length":{"value":LENGTH,"unit":"ft"}}"#;

/// A line of the mixture, and the code of its error if it is a bad one.
fn mixed(i: usize) -> (String, Option<&'static str>) {
    match i % 9 {
        0 => (GOOD.replace("LENGTH", "-5"), Some("out-of-range")),
        1 => (GOOD.replace("LENGTH", "1e999"), Some("not-json-line")),
        2 => (GOOD.replace("LENGTH", "\"NaN\""), Some("wrong-type")),
        3 => (GOOD.replace("\"length\"", "\"lenght\""), Some("unknown")),
        4 => (GOOD.replace("\"ft\"", "\"furlong\""), Some("not-accepted")),
        5 => ("[[[[[".repeat(50), Some("not-json-line")),
        6 => (
            GOOD.replace('{', "{\"units\":\"si\",\"units\":\"us\","),
            Some("duplicate-field"),
        ),
        _ => (GOOD.replace("LENGTH", &i.to_string()), None),
    }
}

/// Most memory that a run of so many lines took, KiB; the answers are checked
/// on the way.
#[cfg(target_os = "linux")]
fn peak_of(lines: usize) -> u64 {
    let mut child = start(&["calc", "pipe-size"]);
    let mut stdin = child.stdin.take().expect("piped");
    let writer = std::thread::spawn(move || {
        for i in 0..lines {
            // Blank lines have no answer.
            let blank = if i % 50 == 0 { "\n  \n" } else { "" };
            writeln!(stdin, "{}{blank}", mixed(i).0.replace("LENGTH", "7")).expect("written");
        }
        stdin
    });
    let mut out = BufReader::new(child.stdout.take().expect("piped"));
    for i in 0..lines {
        let mut line = String::new();
        out.read_line(&mut line).expect("an answer");
        let answer: Value = serde_json::from_str(&line).expect("JSON");
        match mixed(i).1 {
            Some(code) => {
                let error = &answer["error"];
                assert_eq!(error["code"], code, "line {i}: {answer}");
                assert!(error["remedy"].as_str().is_some_and(|text| text.len() > 10));
            }
            None => {
                // 1 in SDR 11: inside 1.315 in less 2/11 (ASTM D3035): 1.0759 in, by hand
                // 0.047 23 gal a foot.
                let gallons = number(&answer, "volume", "gal");
                near(gallons / i as f64, 0.047_23, 2e-5);
            }
        }
    }
    let stdin = writer.join().expect("no panic");
    // Everything is answered and the program still waits: its peak can be read.
    let status = std::fs::read_to_string(format!("/proc/{}/status", child.id())).expect("Linux");
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let peak = peak.and_then(|text| text.trim().strip_suffix(" kB"));
    let peak = peak
        .and_then(|text| text.trim().parse().ok())
        .expect("a number");
    drop(stdin);
    let mut rest = String::new();
    out.read_to_string(&mut rest).expect("read");
    assert!(rest.is_empty(), "more answers than lines: {rest}");
    assert!(child.wait().expect("it ends").success());
    peak
}

/// Ten thousand lines take no more memory than a hundred (4 MiB allowed for the
/// allocator).
#[cfg(target_os = "linux")]
#[test]
fn ten_thousand_mixed_lines_come_back_in_order_in_constant_memory() {
    let (few, many) = (peak_of(100), peak_of(10_000));
    assert!(many <= few + 4 * 1024, "{few} KiB, then {many} KiB");
}

#[test]
fn a_line_too_long_costs_only_its_own_answer() {
    let good = GOOD.replace("LENGTH", "100");
    let mut input = format!("{good}\n{}\n{good}\n", "x".repeat(3 * MAX_LINE)).into_bytes();
    input.extend(b"\xff\xfe\x00 not text\n");
    input.extend(good.as_bytes());
    let found = answers("pipe-size", input);
    assert_eq!(found.len(), 5);
    assert_eq!(found[1]["error"]["code"], "line-too-long");
    assert_eq!(found[3]["error"]["code"], "not-json-line");
    assert!(
        found[0] == found[2] && found[2] == found[4],
        "the last line needs no line feed"
    );
    assert!(answers("pipe-size", Vec::new()).is_empty());
}

#[test]
fn a_reader_that_goes_away_is_no_error() {
    let mut child = start(&["calc", "pipe-size"]);
    drop(child.stdout.take());
    let mut stdin = child.stdin.take().expect("piped");
    let line = GOOD.replace("LENGTH", "100");
    for _ in 0..2_000 {
        if writeln!(stdin, "{line}").is_err() {
            break;
        }
    }
    drop(stdin);
    assert!(child.wait().expect("it ends").success());
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

/// Lange's Handbook of Chemistry, 15th ed., table 5.13, typed in by hand; the band is that
/// of the engine's own check: other sources lie as far from Melinder.
#[test]
fn freeze_points_of_the_handbook() {
    let table: Vec<_> = rows(include_str!("../reference/tables/freezing_handbook.csv")).collect();
    let questions: Vec<Value> = table
        .iter()
        .map(|row| {
            let percent = row[1].parse().expect("a number");
            json!({ "units": "si", "fluid": {
                "kind": row[0].replace('-', "_"), "volume_fraction": measure(percent, "%") } })
        })
        .collect();
    for (row, answer) in table.iter().zip(ask_all("freeze-point", &questions)) {
        let expected = row[2].parse().expect("a number");
        near(number(&answer, "freeze_point", "degC"), expected, 1.3);
    }
}

/// Plastics Pipe Institute, Handbook of PE Pipe, chapter 3, table B.1.1, ksi at 73 degF.
#[test]
fn modulus_of_the_table() {
    for (resin, hours, ksi) in [
        ("pe3xxx", 0.5, 78.0),
        ("pe4xxx", 0.5, 82.0),
        ("pe4xxx", 12.0, 63.0),
        ("pe4xxx", 100.0, 55.0),
        ("pe3xxx", 8_766.0, 38.0),
    ] {
        let question = json!({ "resin": resin, "temperature": measure(73.4, "degF"),
            "load_time": measure(hours, "h") });
        let answer = ask("pipe-modulus", &question);
        near(number(&answer, "apparent", "ksi"), ksi, 0.05);
    }
}

/// A widely reprinted worked example, from memory; its arithmetic was done again by hand:
/// pHs 8.23, Langelier -0.73, Ryznar 8.96.
#[test]
fn langelier_of_the_reprinted_example() {
    let answer = ask(
        "water-indices",
        &json!({ "sample": {
        "ph": measure(7.5, "1"), "temperature": measure(25.0, "degC"),
        "dissolved_solids": measure(320.0, "mg/L"), "calcium": measure(150.0, "mg/L"),
        "alkalinity": measure(34.0, "mg/L") } }),
    );
    near(number(&answer, "saturation_ph", "1"), 8.23, 0.02);
    near(number(&answer, "langelier", "1"), -0.73, 0.02);
    near(number(&answer, "ryznar", "1"), 8.96, 0.02);
    assert_eq!(answer["tendency"], "dissolving");
}

#[test]
fn standards_of_water_air_pipe_and_alcohol() {
    // IAPWS-IF97, table 35: saturation pressure at 300 K, 0.353 658 941e-2 MPa.
    let water =
        json!({ "units": "si", "fluid": { "kind": "water" }, "temperature": measure(300.0, "K") });
    let vapour = ask("vapour-pressure", &water);
    near(
        number(&vapour, "vapour_pressure", "bar"),
        0.035_365_894_1,
        4e-6,
    );
    // IAPWS SR6-08, table of the liquid at 0.1 MPa: 998.2 kg/m3 at 293.15 K (998.207).
    let properties = ask(
        "fluid-properties",
        &json!({ "units": "si", "fluid": { "kind": "water" },
        "temperature": measure(20.0, "degC") }),
    );
    near(number(&properties, "density", "kg/m3"), 998.207, 0.05);
    // ISO 2533: 84.556 kPa at 1 500 m.
    let air = ask(
        "air-pressure",
        &json!({ "units": "si", "altitude": measure(1_500.0, "m") }),
    );
    near(number(&air, "air_pressure", "bar"), 0.845_56, 1e-4);
    // ASTM D3035: 3/4 in is 1.050 in outside; SDR 11 has a least wall of 0.095 in.
    let pipe = ask(
        "pipe-size",
        &json!({ "pipe": { "standard": "ips_pe", "size": "3/4", "sdr": "11" } }),
    );
    near(number(&pipe, "outside_diameter", "in"), 1.050, 1e-9);
    near(number(&pipe, "wall", "in"), 0.095, 1e-3);
    // OIML R 22, alcoholometric tables: 50 % by volume at 20 degC is 42.43 % by mass and
    // 930.14 kg/m3 (from memory). Counted by unmixed volumes it would be 44.2 %.
    let ethanol = ask(
        "concentrate",
        &json!({ "product": { "kind": "ethanol",
        "volume_fraction": measure(50.0, "%") }, "volume": measure(100.0, "gal") }),
    );
    near(number(&ethanol, "mass_fraction", "%"), 42.43, 0.2);
    near(number(&ethanol, "density", "kg/m3"), 930.14, 4.0);
    near(number(&ethanol, "antifreeze", "gal"), 50.0, 1e-6);
    assert_eq!(ethanol["cautions"][0]["code"], "flammable-product");
    // Incropera and DeWitt, table 11.3: one transfer unit against boiling, 1 - 1/e.
    let exchanger = ask(
        "effectiveness",
        &json!({ "transfer_units": measure(1.0, "1"),
        "capacity_ratio": measure(0.0, "1") }),
    );
    near(number(&exchanger, "effectiveness", "%"), 63.212, 1e-3);
}

/// GUM 5.1.6: relative uncertainties of a product add in squares. 2 % of the flow and
/// 0.5 degF on each of two temperatures 10 degF apart: √(2² + (√2·5)²) = 7.35 %. The
/// accuracies of density and specific heat add a little.
#[test]
fn accuracies_go_in_and_come_out() {
    let with = |value: f64, unit: &str, accuracy: f64| json!({ "value": value, "unit": unit, "accuracy": measure(accuracy, unit) });
    let answer = ask(
        "carried-heat",
        &json!({
        "flow": with(10.0, "gpm", 0.2), "fluid": { "kind": "water" },
        "entering": with(60.0, "degF", 0.5), "leaving": with(50.0, "degF", 0.5) }),
    );
    let heat = number(&answer, "heat", "Btu/h");
    let accuracy = answer["heat"]["accuracy"]["value"]
        .as_f64()
        .expect("an accuracy");
    near(accuracy / heat, 0.073_5, 0.001);
    // Common practice: 500 Btu/h per gpm and degF.
    near(number(&answer, "by_500", "Btu/h"), 50_000.0, 1.0);
    near(heat, 50_000.0, 400.0);
    // An answer can be asked with as it is.
    let again = ask(
        "unit-heat",
        &json!({ "mode": "cooling", "capacity": answer["heat"],
        "input": measure(1.0, "kW") }),
    );
    assert_eq!(again["loop_heat"]["accuracy"]["unit"], "Btu/h");
    // 50 000 Btu/h and 1 kW = 3 412.14 Btu/h.
    near(number(&again, "loop_heat", "Btu/h"), heat + 3_412.14, 0.1);
}

/// Through fittings alone the head goes
/// with the square of the flow, so that 3 % of the flow is 6 % of the head; what the physics
/// takes as plain values carries accuracies too. By hand: K 50 in 3/4 in SDR 11 (bore
/// 0.8591 in) at 2 ft/s is 50 · 4/64.35 = 3.108 ft.
#[test]
fn accuracies_go_through_what_takes_plain_values() {
    let bore = 0.859_09 / 12.0_f64;
    let flow = 2.0 * std::f64::consts::FRAC_PI_4 * bore * bore * 448.831;
    let run = json!({ "pipe": { "standard": "ips_pe", "size": "3/4", "sdr": "11" },
        "length": measure(0.0, "ft"), "loss_coefficient": measure(50.0, "1") });
    let flow = json!({ "value": flow, "unit": "gpm", "accuracy": measure(0.03 * flow, "gpm") });
    let answer = ask(
        "network",
        &json!({ "fluid": { "kind": "water" },
        "temperature": measure(50.0, "degF"),
        "nodes": [{ "name": "a", "held": measure(0.0, "psi") }, { "name": "b", "outflow": flow }],
        "links": [{ "name": "one", "from": "a", "to": "b", "is": { "kind": "pipe", "run": run } }] }),
    );
    let link = &answer["links"][0];
    let head = number(link, "head_loss", "ft");
    near(head, 3.108, 0.01);
    let accuracy = link["head_loss"]["accuracy"]["value"]
        .as_f64()
        .expect("an accuracy");
    near(accuracy / head, 0.06, 0.001);
    near(
        link["flow"]["accuracy"]["value"]
            .as_f64()
            .expect("an accuracy")
            / number(link, "flow", "gpm"),
        0.03,
        1e-4,
    );
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
