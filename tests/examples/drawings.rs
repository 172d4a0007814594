//! Prints the drawings of an invented call laid out for each width, with `board` those of
//! an invented fleet, or with `calls` what the engine says of calls whose readings
//! contradict each other, as JSON for the pictures of the screens: `make drawings`
//! writes them to `ui/pictures`.

use chrono::NaiveDate;
use returnline_core::api::types::{FleetQuery, PictureView, SettingChange};
use returnline_core::api::{Call, Engine, ThisMachine, Wording, read_visit_file};
use returnline_core::records::Phase;
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};

/// Widths of the charts, points: a narrow phone, a usual one, a desktop window.
const WIDTHS: [f32; 4] = [85.0, 180.0, 220.0, 490.0];
/// The same for the board, where two charts stand side by side in a window.
const BOARD_WIDTHS: [f32; 4] = [85.0, 180.0, 220.0, 400.0];

const SAMPLE: &[u8] = include_bytes!("../../core/data/samples/air-in-one-circuit.json");

fn main() -> Result<(), Box<dyn std::error::Error>> {
    if std::env::args().nth(1).as_deref() == Some("board") {
        let mut engine = Engine::without_database(Box::new(ThisMachine))?;
        engine.invent_fleet(400, 1)?;
        let board = engine.board(&FleetQuery::default())?;
        // The fake board shows these.
        let shown = [
            "causes-count",
            "causes-hours",
            "causes-cost",
            "waiting",
            "rates-crew",
        ];
        let pictures = BOARD_WIDTHS.map(|width| {
            let mut pictures = engine.board_pictures(&board, width);
            pictures.retain(|picture| shown.contains(&picture.id.as_str()));
            (width, pictures)
        });
        println!("{}", serde_json::to_string(&pictures)?);
        return Ok(());
    }
    if std::env::args().nth(1).as_deref() == Some("calls") {
        println!("{}", serde_json::to_string(&calls()?)?);
        return Ok(());
    }
    let wording = Wording::default();
    let mut file = read_visit_file(SAMPLE, wording)?;
    // As if the same readings stood after the work: the charts of before and
    // after need both.
    let left: Vec<_> = file
        .visit
        .readings
        .iter()
        .take(2)
        .cloned()
        .map(|mut reading| {
            reading.id = None;
            reading.phase = Phase::Left;
            reading
        })
        .collect();
    file.visit.readings.extend(left);
    let day = NaiveDate::from_ymd_opt(2026, 8, 14).ok_or("a day")?;
    let call = Call::assess(&file, day, wording);
    let mut laid_out = Vec::new();
    for width in WIDTHS {
        let mut pictures = call.pictures(width);
        pictures.charts.extend(year_with_history(width)?);
        laid_out.push((width, pictures));
    }
    println!("{}", serde_json::to_string(&laid_out)?);
    Ok(())
}

/// The year of a system whose gauge was read on visits before: of the demo company.
fn year_with_history(width: f32) -> Result<Vec<PictureView>, Box<dyn std::error::Error>> {
    let mut engine = Engine::without_database(Box::new(ThisMachine))?;
    engine.load_demo()?;
    let visits = engine.visits()?;
    let mut calls = visits
        .iter()
        .filter(|line| line.site.starts_with("Mill Road"));
    let call = calls
        .find(|line| line.complaint.is_some())
        .ok_or("the call that lost its pressure")?;
    let mut charts = engine.open_call(&call.id)?.pictures(width).charts;
    charts.retain(|chart| chart.title.contains("seasons"));
    for chart in &mut charts {
        chart.id = format!("{}-history", chart.id);
    }
    Ok(charts)
}

/// Causes that a call brings along; a screen shows five.
const CAUSES: usize = 8;
/// The calls that bring their plans along.
const WITH_PLAN: [&str; 2] = ["edge", "unread"];

/// What the engine says of calls with findings that few calls have, by name and
/// language: what stands on screen is then real, and as long as it gets.
fn calls() -> Result<BTreeMap<String, Value>, Box<dyn std::error::Error>> {
    let mut said = BTreeMap::new();
    for (name, changed, languages) in [
        ("odd", odd(), &["en", "es"][..]),
        ("gone", gone(), &["en"]),
        ("warm", warm(), &["en"]),
        ("edge", edge(), &["en", "es"]),
        ("unread", unread(), &["en", "es"]),
    ] {
        let mut file: Value = serde_json::from_slice(SAMPLE)?;
        for (part, value) in changed {
            *file.pointer_mut(part).ok_or(part)? = value;
        }
        for language in languages {
            let mut engine = Engine::without_database(Box::new(ThisMachine))?;
            engine.change_setting(&SettingChange::Language {
                id: (*language).to_owned(),
            })?;
            let mut visit = engine.take_visit_file(&serde_json::to_vec(&file)?)?;
            let answer = engine.answer(&visit.id)?;
            let mut assessment = answer.assessment;
            assessment.causes.truncate(CAUSES);
            // A point that nobody read and no check reads only makes the file longer.
            let reads: BTreeSet<&str> = assessment
                .checks
                .iter()
                .flat_map(|check| check.reads.iter().map(String::as_str))
                .chain(visit.readings.iter().map(|reading| reading.point.as_str()))
                .collect();
            visit
                .points
                .retain(|point| reads.contains(point.id.as_str()));
            let mut spoken = json!({ "visit": visit, "assessment": assessment });
            if WITH_PLAN.contains(&name) {
                spoken["plan"] = json!(answer.plan);
            }
            said.insert(format!("{name}-{language}"), spoken);
        }
    }
    Ok(said)
}

type Changes = Vec<(&'static str, Value)>;

/// Two gauges that disagree, a display that does, a gauge that failed its trial, more
/// rise than one circulator gives and none of it accounted for, an exchanger that takes
/// it, a return that stands; after somebody worked on it.
fn odd() -> Changes {
    let read = |point: &str, value: f64, unit: &str, mode: &str| json!({ "point": point, "value": { "value": value, "unit": unit }, "mode": mode });
    let by = |mut reading: Value, instrument: &str| {
        reading["instrument"] = json!(instrument);
        reading
    };
    let mut readings = vec![
        by(read("static_pressure", 27.0, "psi", "idle"), "dial_gauge"),
        by(read("static_pressure", 3.0, "psi", "idle"), "digital_gauge"),
        by(
            read("entering_water", 40.0, "degF", "heating"),
            "port_thermometer",
        ),
        by(
            read("entering_water", 54.0, "degF", "heating"),
            "unit_display",
        ),
        read("leaving_water", 37.0, "degF", "heating"),
        read("flow", 8.0, "gpm", "heating"),
        read("circulator_rise", 26.0, "psi", "heating"),
        read("shut_off_rise", 26.0, "psi", "pumps_only"),
        read("exchanger_drop", 21.0, "psi", "heating"),
    ];
    for (circuit, value) in [(1, 39.0), (2, 39.4), (3, 38.8), (4, 58.0)] {
        let mut reading = read("circuit_return", value, "degF", "heating");
        reading["circuit"] = json!(circuit);
        readings.push(reading);
    }
    vec![
        ("/visit/date", json!("2026-01-20")),
        (
            "/visit/complaint",
            json!("It stops with a flow fault since the pump was changed in December. (invented)"),
        ),
        (
            "/visit/answers",
            json!([
                { "finding": "low-flow-lockout", "is": "yes" },
                { "finding": "after-work", "is": "yes" },
                { "finding": "digital-gauge-not-zero", "is": "yes" },
                { "finding": "test-kit-control-fails", "is": "yes" }
            ]),
        ),
        // Without a curve the drop is judged against the rise.
        ("/system/heat_pump/exchanger", json!({ "kind": "coaxial" })),
        ("/visit/readings", Value::Array(readings)),
    ]
}

/// Nothing left on the gauge of a cool loop.
fn gone() -> Changes {
    vec![
        ("/visit/date", json!("2026-01-20")),
        (
            "/visit/answers",
            json!([{ "finding": "after-work", "is": "no" }]),
        ),
        (
            "/visit/readings",
            json!([
                { "point": "static_pressure", "value": { "value": -3, "unit": "psi" }, "mode": "idle" },
                { "point": "loop_temperature", "value": { "value": 45, "unit": "degF" }, "mode": "idle" }
            ]),
        ),
    ]
}

/// The sample before anybody read a gauge.
fn unread() -> Changes {
    vec![(
        "/visit/readings",
        json!([
            { "point": "entering_water", "value": { "value": 78, "unit": "degF" }, "mode": "cooling" },
            { "point": "leaving_water", "value": { "value": 94, "unit": "degF" }, "mode": "cooling" }
        ]),
    )]
}

/// The sample itself, whose water is warm, after somebody worked on it.
fn warm() -> Changes {
    vec![(
        "/visit/answers",
        json!([
            { "finding": "freeze-guard-trip", "is": "yes" },
            { "finding": "after-work", "is": "yes" }
        ]),
    )]
}

/// Two circulators that give less than they should and yet more than one alone, warm
/// water that froze nowhere, and readings that lie where two levels meet.
fn edge() -> Changes {
    let read = |point: &str, value: f64, unit: &str, mode: &str| json!({ "point": point, "value": { "value": value, "unit": unit }, "mode": mode });
    vec![
        ("/commissioning/concentration_checked", json!(false)),
        (
            "/visit/complaint",
            json!("It hums, and the house does not cool as it did in June. (invented)"),
        ),
        (
            "/visit/answers",
            json!([
                { "finding": "circulator-hums", "is": "yes" },
                { "finding": "came-on-suddenly", "is": "yes" },
                { "finding": "after-work", "is": "no" },
                { "finding": "low-heat", "is": "yes" }
            ]),
        ),
        (
            "/visit/readings",
            json!([
                read("static_pressure", 22.0, "psi", "idle"),
                read("entering_water", 78.0, "degF", "cooling"),
                read("leaving_water", 92.0, "degF", "cooling"),
                read("exchanger_drop", 2.6, "psi", "cooling"),
                read("circulator_rise", 16.5, "psi", "cooling"),
                read("shut_off_rise", 19.0, "psi", "pumps_only"),
                read("freeze_point_supply", 31.0, "degF", "idle"),
                read("freeze_point_return", 31.0, "degF", "idle")
            ]),
        ),
    ]
}
