use super::*;

fn readings(list: Value) -> VisitFile {
    file(
        rich(),
        json!({}),
        json!({ "date": "2026-01-20", "readings": list }),
    )
}

fn one(name: &str, point: &str, at: f64, unit: &str) -> Likelihood {
    only(
        name,
        &readings(json!([{ "point": point, "value": value(at, unit) }])),
    )
}

#[test]
fn strainer_and_exchanger() {
    favours(one("strainer-drop", "strainer_drop", 0.8, "psi"), 1, 0.9);
    favours(one("strainer-drop", "strainer_drop", 6.0, "psi"), 2, 0.95);
    // 12 gpm of 25 % propylene glycol at 40 °F: the curve's 4.6 psi times
    // (ρ/ρ₁)^0.8 (μ/μ₁)^0.2 with μ/μ₁ of about 3.5 is 6 psi.
    let at = |psi| {
        let list = json!([
            { "point": "exchanger_drop", "value": value(psi, "psi") },
            { "point": "flow", "value": value(12.0, "gpm") },
            { "point": "loop_temperature", "value": value(40.0, "degF") }
        ]);
        evaluate("exchanger-drop-for-flow", &readings(list))
    };
    let clean = &at(6.0)[0];
    let expected = crate::units::Unit::Psi.from_si(clean.expected.si);
    assert!((5.5..6.6).contains(&expected), "{expected}");
    favours(clean.likelihood, 1, 0.8);
    favours(at(14.0)[0].likelihood, 2, 0.9);
}

#[test]
fn the_drop_alone_cannot_judge_the_exchanger() {
    let list = json!([{ "point": "exchanger_drop", "value": value(14.0, "psi") }]);
    assert!(evaluate("exchanger-drop-for-flow", &readings(list)).is_empty());
}

#[test]
fn air_by_the_dead_head_test() {
    // 100 gal SDR 11, 10 to 50 psi, a tank of 0.34 gal/in (10.0 in across): about
    // 0.35 gal of stretch. 1.2 in are stretch and next to no air; 5 in are 1.7 gal,
    // so (1.7 - 0.35)/(1 - 24.7/64.7) = 2.2 gal of air in 100.
    let mut system = rich();
    system["ground"] = json!({ "circuits": [{ "count": 1, "length": value(2100.0, "ft"),
        "pipe": { "standard": "ips_pe", "size": "1", "sdr": "11" } }] });
    let fell = |inches| {
        let visit = json!({
            "date": "2026-01-20",
            "means": { "cart": { "reservoir_diameter": value(10.0, "in") } },
            "readings": [
                { "point": "dead_head_drop", "value": value(inches, "in") },
                { "point": "dead_head_pressure_before", "value": value(10.0, "psi") },
                { "point": "dead_head_pressure_after", "value": value(50.0, "psi") },
                { "point": "loop_temperature", "value": value(60.0, "degF") }
            ]
        });
        only("dead-head-air", &file(system.clone(), json!({}), visit))
    };
    favours(fell(1.2), 0, 0.7);
    favours(fell(5.0), 1, 0.95);
}

#[test]
fn a_leak_falls_daily_and_a_pipe_by_the_decade() {
    let log = |pressures: [f64; 6]| {
        let list: Vec<Value> = pressures
            .iter()
            .zip([2, 3, 5, 8, 13, 20])
            .map(|(psi, day)| {
                json!({
                    "point": "static_pressure", "value": value(*psi, "psi"), "mode": "idle",
                    "accuracy": value(0.5, "psi"), "instrument": "digital_gauge",
                    "taken_at": format!("2026-01-{day:02}T09:00:00-05:00")
                })
            })
            .collect();
        let commissioning = json!({
            "date": "2026-01-01", "charge_pressure": value(55.0, "psi"),
            "charge_temperature": value(50.0, "degF")
        });
        file(
            rich(),
            commissioning,
            json!({ "date": "2026-01-20", "readings": list }),
        )
    };
    // 1.5 psi a day, against 6 psi for every tenfold of days (about 12 % of 50
    // psi, from the moduli of the PPI handbook).
    let leak = log([50.0, 48.5, 45.5, 41.0, 33.5, 23.0]);
    let tight = log([50.0, 48.2, 46.4, 44.9, 43.5, 42.3]);
    favours(only("static-pressure-trend", &leak), 1, 0.9);
    favours(only("static-pressure-trend", &tight), 0, 0.6);
    favours(only("fall-shrinks-each-day", &tight), 1, 0.6);
}

#[test]
fn tank_reservoir_and_top_up() {
    let mut system = rich();
    system["flow_centre"] = json!({ "kind": "sealed_with_tank", "pre_charge": value(20.0, "psi") });
    let tank = |psi| {
        let visit =
            json!({ "readings": [{ "point": "tank_pre_charge", "value": value(psi, "psi") }] });
        only("tank-pre-charge", &file(system.clone(), json!({}), visit))
    };
    favours(tank(20.0), 1, 0.85);
    favours(tank(2.0), 0, 0.95);
    let mut open = rich();
    open["flow_centre"] =
        json!({ "kind": "non_pressurised", "reservoir_diameter": value(6.0, "in") });
    let level = |inches| {
        let visit = json!({ "date": "2026-01-20", "readings": [
            { "point": "reservoir_level_change", "value": value(inches, "in") },
            { "point": "loop_temperature", "value": value(50.0, "degF") }
        ]});
        let fill = json!({ "date": "2025-10-01", "charge_temperature": value(50.0, "degF") });
        only("reservoir-level", &file(open.clone(), fill, visit))
    };
    favours(level(0.0), 1, 0.6);
    favours(level(-15.0), 0, 0.9);
    favours(one("fluid-lost", "top_up_volume", 0.3, "gal"), 0, 0.8);
    favours(one("fluid-lost", "top_up_volume", 6.0, "gal"), 1, 0.95);
}

#[test]
fn water_against_its_guides() {
    favours(one("iron-in-water", "water_iron", 0.1, "mg/L"), 0, 0.8);
    favours(one("iron-in-water", "water_iron", 2.0, "mg/L"), 1, 0.95);
    favours(
        one("corrosive-water", "water_chloride", 400.0, "mg/L"),
        1,
        0.9,
    );
    favours(
        one("scaling-water", "water_hardness", 400.0, "mg/L"),
        1,
        0.9,
    );
    favours(one("fluid-ph", "fluid_ph", 5.5, "1"), 0, 0.9);
    favours(one("fluid-ph", "fluid_ph", 8.7, "1"), 1, 0.85);
    // Worked example of the closed form, widely reprinted: pH 7.5, TDS 320,
    // calcium 150, alkalinity 34 mg/L at 25 °C give an index of -0.73.
    let list = json!([
        { "point": "water_ph", "value": value(7.5, "1"), "instrument": "laboratory" },
        { "point": "water_dissolved_solids", "value": value(320.0, "mg/L") },
        { "point": "water_calcium", "value": value(150.0, "mg/L"), "instrument": "laboratory" },
        { "point": "water_alkalinity", "value": value(34.0, "mg/L"), "instrument": "laboratory" }
    ]);
    let judged = &evaluate("scaling-water", &readings(list))[0];
    assert!(
        (judged.measured.si + 0.73).abs() < 0.01,
        "{}",
        judged.measured.si
    );
    favours(judged.likelihood, 0, 0.9);
}

#[test]
fn the_refrigerant_side() {
    // Superheat 6 to 14 °F, subcooling 4 to 14 °F: common practice, no source.
    favours(one("superheat", "superheat", 10.0, "degF"), 1, 0.9);
    favours(one("superheat", "superheat", 35.0, "degF"), 2, 0.9);
    favours(one("subcooling", "subcooling", 1.0, "degF"), 0, 0.8);
    // Coaxial, heating: 8 to 15 °F of approach.
    let approach = |evaporating| {
        let list = json!([
            { "point": "leaving_water", "value": value(34.0, "degF"), "mode": "heating" },
            { "point": "evaporating_temperature", "value": value(evaporating, "degF"), "mode": "heating" }
        ]);
        only("approach", &readings(list))
    };
    favours(approach(22.5), 1, 0.9);
    favours(approach(8.0), 2, 0.95);
}

#[test]
fn the_clean_exchanger_goes_before_the_usual_one() {
    // 12 gpm = 0.757 L/s of 25 % propylene glycol at 3.94 MJ/(m³·K) or so carry
    // 3.0 kW/K; UA 3.0 kW/K is one transfer unit: ε = 0.632, so that the approach
    // is 0.58 of the split of 4.5 °F: 2.6 °F.
    let mut system = rich();
    system["heat_pump"]["exchanger"]["clean_conductance"] = value(3.0, "kW/K");
    let list = json!([
        { "point": "flow", "value": value(12.0, "gpm"), "mode": "heating" },
        { "point": "entering_water", "value": value(38.5, "degF"), "mode": "heating" },
        { "point": "leaving_water", "value": value(34.0, "degF"), "mode": "heating" },
        { "point": "evaporating_temperature", "value": value(31.4, "degF"), "mode": "heating" }
    ]);
    let file = file(
        system,
        json!({}),
        json!({ "date": "2026-01-20", "readings": list }),
    );
    let judged = &evaluate("approach", &file)[0];
    let expected = 1.8 * judged.expected.si;
    assert!((expected - 2.6).abs() < 0.2, "{expected}");
    favours(judged.likelihood, 1, 0.5);
}

#[test]
fn entering_water_by_the_season_it_is_for() {
    let at = |f, mode: &str| {
        let list = json!([{ "point": "entering_water", "value": value(f, "degF"), "mode": mode }]);
        only("entering-water", &readings(list))
    };
    favours(at(40.0, "heating"), 0, 0.9);
    favours(at(18.0, "heating"), 1, 0.95);
    favours(at(80.0, "cooling"), 0, 0.9);
    favours(at(112.0, "cooling"), 1, 0.95);
}

#[test]
fn input_capacity_and_air() {
    // Heating 36,000 Btu/h at a COP of 3.6: 10,000 Btu/h, 2,930 W.
    let list = |w| json!([{ "point": "unit_power", "value": value(w, "W"), "mode": "heating" }]);
    let judged = &evaluate("unit-power", &readings(list(2_930.0)))[0];
    assert!((judged.expected.si - 2_930.7).abs() < 1.0);
    favours(judged.likelihood, 1, 0.8);
    favours(only("unit-power", &readings(list(1_500.0))), 0, 0.9);
    let list = json!([
        { "point": "unit_capacity", "value": value(18_000.0, "Btu/h"), "mode": "heating" },
        { "point": "entering_water", "value": value(32.0, "degF"), "mode": "heating" }
    ]);
    favours(only("unit-capacity", &readings(list)), 0, 0.9);
    let list = json!([{ "point": "air_temperature_change", "value": value(-18.0, "degF"), "mode": "cooling" }]);
    favours(only("air-temperature-change", &readings(list)), 1, 0.9);
}

#[test]
fn returns_of_the_circuits() {
    let at = |list: [f64; 4]| {
        let list: Vec<Value> = list
            .iter()
            .enumerate()
            .map(|(i, f)| json!({ "point": "circuit_return", "value": value(*f, "degF"), "circuit": i + 1 }))
            .collect();
        readings(Value::Array(list))
    };
    favours(
        only("circuit-returns-differ", &at([38.0, 38.5, 37.8, 38.2])),
        0,
        0.8,
    );
    favours(
        only("circuit-returns-differ", &at([38.0, 38.5, 47.0, 38.2])),
        1,
        0.95,
    );
    let single = json!([{ "point": "circuit_return", "value": value(38.0, "degF") }]);
    assert!(evaluate("circuit-returns-differ", &readings(single)).is_empty());
}

#[test]
fn what_the_records_foretell() {
    let cold = json!([{ "point": "loop_temperature", "value": value(30.0, "degF") }]);
    let rich_cold = readings(cold.clone());
    // 3 gpm a circuit of 3/4 in SDR 11 (21.8 mm): v = 0.507 m/s. 25 % propylene
    // glycol by volume at 30 °F: about 5.6 mPa·s and 1,035 kg/m³, so Re about 2,050.
    let film = &evaluate("cold-film", &rich_cold)[0];
    assert!(
        (1_700.0..2_500.0).contains(&film.measured.si),
        "{}",
        film.measured.si
    );
    favours(film.likelihood, 1, 0.6);
    let water = {
        let mut system = rich();
        system["fluid"] = json!({ "kind": "water" });
        let warm = json!([{ "point": "loop_temperature", "value": value(60.0, "degF") }]);
        file(system, json!({}), json!({ "readings": warm }))
    };
    favours(only("cold-film", &water), 0, 0.9);
    // 2,000 ft for 4 tons in bores where 1,360 ft are usual.
    favours(only("loop-length-short", &rich_cold), 0, 0.6);
    // Equal circuits take equal flows.
    favours(only("computed-circuits-uneven", &rich_cold), 0, 0.7);
    let mut uneven = rich();
    uneven["ground"]["circuits"] = json!([
        { "count": 1, "length": value(300.0, "ft"), "pipe": { "standard": "ips_pe", "size": "3/4", "sdr": "11" } },
        { "count": 3, "length": value(900.0, "ft"), "pipe": { "standard": "ips_pe", "size": "3/4", "sdr": "11" } }
    ]);
    let visit = json!({ "readings": cold });
    favours(
        only("computed-circuits-uneven", &file(uneven, json!({}), visit)),
        1,
        0.8,
    );
    // Four circuits of 500 ft take 3 gpm each at laminar flow: 64/Re with Re 1,900 and
    // 0.51 m/s make 31 kPa; the exchanger some 44 kPa at 12 gpm; together 25 ft of the
    // fluid where the circulator has 24 ft: it just falls short of 12 gpm.
    let flow = &evaluate("computed-flow-short", &rich_cold)[0];
    let gpm = crate::units::Unit::GallonPerMinute.from_si(flow.measured.si);
    assert!((11.0..12.5).contains(&gpm), "{gpm}");
}
