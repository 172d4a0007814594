//! Published values come out of the program as they come out of the engine.

use super::{ask, ask_all, measure, near, number};
use returnline_tests::rows;
use serde_json::{Value, json};

/// Lange's Handbook of Chemistry, 15th ed., table 5.13, typed in by hand; the band is that
/// of the engine's own check: other sources lie as far from Melinder.
#[test]
fn freeze_points_of_the_handbook() {
    let table: Vec<_> =
        rows(include_str!("../../reference/tables/freezing_handbook.csv")).collect();
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
