use super::*;

fn of(kind: &str, readings: Value) -> VisitFile {
    let mut system = rich();
    system["fluid"] = json!({ "kind": kind });
    let visit = json!({
        "date": "2026-01-20",
        "means": { "wanted_freeze_point": value(15.0, "degF") },
        "readings": readings
    });
    file(system, json!({}), visit)
}

fn supply(fahrenheit: f64, instrument: &str) -> Value {
    json!([{
        "point": "freeze_point_supply", "value": value(fahrenheit, "degF"),
        "instrument": instrument
    }])
}

#[test]
fn protection_against_what_is_wanted() {
    let judged = |f| {
        only(
            "freeze-protection",
            &of("propylene_glycol", supply(f, "refractometer")),
        )
    };
    favours(judged(27.0), 0, 0.95);
    favours(judged(10.0), 1, 0.85);
    favours(judged(-15.0), 2, 0.9);
}

#[test]
fn a_refractometer_says_nothing_of_methanol() {
    let index = of("methanol", supply(27.0, "refractometer"));
    assert!(evaluate("freeze-protection", &index).is_empty());
    let density = of("methanol", supply(27.0, "hydrometer"));
    favours(only("freeze-protection", &density), 0, 0.9);
}

#[test]
fn an_unknown_fluid_widens_the_refractometer() {
    let visit = json!({
        "means": { "wanted_freeze_point": value(15.0, "degF") },
        "readings": supply(27.0, "refractometer")
    });
    let unknown = only("freeze-protection", &file(json!({}), json!({}), visit));
    let known = only(
        "freeze-protection",
        &of("propylene_glycol", supply(27.0, "refractometer")),
    );
    assert!(share(unknown, 0) < share(known, 0));
    assert!(share(unknown, 2) > share(known, 2));
}

#[test]
fn what_is_needed_lies_below_the_coldest_leaving_water() {
    // Lowest entering water logged 32 °F; 26,000 Btu/h on 12 gpm take off 4.5 °F;
    // 10 °F of margin (common practice, no source): 17.5 °F.
    let mut visit = json!({ "date": "2026-01-20", "readings": supply(20.0, "refractometer") });
    visit["readings"]
        .as_array_mut()
        .expect("readings")
        .push(json!({ "point": "lowest_entering_water", "value": value(32.0, "degF") }));
    let judged = &evaluate("freeze-protection", &file(rich(), json!({}), visit))[0];
    let needed = (judged.expected.si - 273.15) * 1.8 + 32.0;
    assert!((needed - 17.5).abs() < 0.6, "{needed} °F");
}

#[test]
fn a_fluid_weaker_than_its_record_is_low_where_no_season_was_logged() {
    // Lange's Handbook, 15th ed., table 5.13: propylene glycol of 25 % by volume freezes
    // near 14 °F, of 10 % near 26 °F. In summer nothing read tells what winter needs.
    let with = |recorded: Option<f64>, lowest: Option<f64>| {
        let mut system = rich();
        let mut fluid = json!({ "kind": "propylene_glycol" });
        if let Some(percent) = recorded {
            fluid["volume_fraction"] = value(percent, "%");
        }
        system["fluid"] = fluid;
        let mut visit = json!({ "date": "2026-07-20", "readings": supply(26.0, "refractometer") });
        if let Some(lowest) = lowest {
            let list = visit["readings"].as_array_mut().expect("readings");
            list.push(json!({ "point": "lowest_entering_water", "value": value(lowest, "degF") }));
        }
        only("freeze-protection", &file(system, json!({}), visit))
    };
    let low = |recorded, lowest| share(with(recorded, lowest), 0);
    assert!(low(Some(25.0), None) > low(None, None));
    assert!(low(Some(10.0), None) < low(None, None), "a mild climate");
    // What was logged is the better witness: the record no longer counts.
    let apart = low(Some(25.0), Some(45.0)) - low(None, Some(45.0));
    assert!(apart.abs() < 1e-9, "{apart}");
}

#[test]
fn two_samples_that_differ() {
    let two = |back| {
        let list = json!([
            { "point": "freeze_point_supply", "value": value(15.0, "degF") },
            { "point": "freeze_point_return", "value": value(back, "degF") }
        ]);
        only("freeze-samples-differ", &of("propylene_glycol", list))
    };
    favours(two(15.0), 0, 0.9);
    favours(two(24.0), 1, 0.95);
}

#[test]
fn gravity_of_another_kind() {
    // Lange's Handbook, 15th ed., table 5.13: propylene glycol that freezes at
    // 20 °F has 1.017; methanol that freezes at 23 °F has 0.986 (both at 60 °F).
    let with = |gravity| {
        let list = json!([
            { "point": "freeze_point_supply", "value": value(20.0, "degF"), "instrument": "laboratory" },
            { "point": "specific_gravity", "value": value(gravity, "1") },
            { "point": "sample_temperature", "value": value(60.0, "degF") }
        ]);
        only(
            "gravity-and-freeze-point-disagree",
            &of("propylene_glycol", list),
        )
    };
    favours(with(1.017), 0, 0.8);
    favours(with(0.986), 1, 0.95);
}

#[test]
fn gravity_that_no_strength_of_the_kind_has() {
    // Lange's Handbook, 15th ed., table 5.13: methanol is lighter than water at every
    // strength, propylene glycol heavier (1.017 where it freezes at 20 °F).
    let with = |kind, gravity| {
        let list = json!([
            { "point": "specific_gravity", "value": value(gravity, "1") },
            { "point": "sample_temperature", "value": value(60.0, "degF") }
        ]);
        evaluate("gravity-and-freeze-point-disagree", &of(kind, list))
    };
    for (kind, gravity) in [("methanol", 1.017), ("propylene_glycol", 0.986)] {
        let all = with(kind, gravity);
        assert_eq!(all.len(), 1, "{kind}");
        favours(all[0].likelihood, 1, 0.95);
    }
    // Within the range of the kind a gravity alone tells nothing of the kind.
    assert!(with("methanol", 0.975).is_empty());
    assert!(with("propylene_glycol", 1.017).is_empty());
}
