//! Prints the drawings of an invented call laid out for each width, or with `board` those of an invented
//! fleet, as JSON for the pictures of the screens: `make drawings` writes them to
//! `ui/pictures`.

use chrono::NaiveDate;
use returnline_core::api::types::{FleetQuery, PictureView};
use returnline_core::api::{Call, Engine, ThisMachine, Wording, read_visit_file};
use returnline_core::records::Phase;

/// Widths of the charts, points: a narrow phone, a usual one, a desktop window.
const WIDTHS: [f32; 3] = [180.0, 220.0, 490.0];
/// The same for the board, where two charts stand side by side in a window.
const BOARD_WIDTHS: [f32; 3] = [180.0, 220.0, 400.0];

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
