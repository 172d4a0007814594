use super::*;
use crate::diagnosis::FactId;
use crate::evidence::facts;

fn known(commissioning: Value, visit: Value) -> std::collections::BTreeMap<FactId, bool> {
    let file = file(rich(), commissioning, visit);
    facts(&file, &LoopModel::of(&file), today())
}

fn get(facts: &std::collections::BTreeMap<FactId, bool>, fact: &str) -> Option<bool> {
    facts.get(&FactId::new(fact)).copied()
}

#[test]
fn nothing_known_is_nothing_said() {
    let file = VisitFile::default();
    let spring = NaiveDate::from_ymd_opt(2026, 4, 20).expect("a day");
    let facts = facts(&file, &LoopModel::of(&file), spring);
    assert!(facts.is_empty(), "{facts:?}");
}

#[test]
fn velocity_follows_from_flow_and_pipe() {
    // 2 ft/s in 3/4 in SDR 11 (bore 0.859 in, ASTM D3035): 3.6 gpm a circuit,
    // so 14.4 gpm for four.
    let slow = |gpm| {
        get(
            &known(json!({ "flush_flow": value(gpm, "gpm") }), json!({})),
            "flush-too-slow",
        )
    };
    assert_eq!(slow(12.0), Some(true));
    assert_eq!(slow(16.0), Some(false));
    let singly = json!({ "flush_flow": value(4.0, "gpm"), "circuits_flushed_singly": true });
    assert_eq!(
        get(&known(singly, json!({})), "flush-too-slow"),
        Some(false)
    );
}

#[test]
fn the_season_comes_from_the_unit_before_the_calendar() {
    let cooling = json!({ "date": "2026-01-20", "readings": [
        { "point": "entering_water", "value": value(90.0, "degF"), "mode": "cooling" }
    ]});
    let facts = known(json!({}), cooling);
    assert_eq!(get(&facts, "cooling-season"), Some(true));
    assert_eq!(get(&facts, "heating-season"), Some(false));
    let facts = known(json!({}), json!({ "date": "2026-01-20" }));
    assert_eq!(get(&facts, "heating-season"), Some(true));
}

#[test]
fn habits_and_age() {
    let facts = known(
        json!({
            "flush_recorded": false, "heat_pump_isolated": false, "filtered": true,
            "circulators_bled": false, "charge_pressure": value(20.0, "psi"),
            "charge_date": "2025-12-20", "mix_duration": value(60.0, "min"),
            "water_source": "well"
        }),
        json!({
            "date": "2026-01-20",
            "answers": [{ "finding": "came-on-slowly", "is": "yes" }]
        }),
    );
    for (fact, expected) in [
        ("no-flush-record", Some(true)),
        ("heat-pump-not-isolated-in-flush", Some(true)),
        ("no-filter", Some(false)),
        ("circulators-not-bled", Some(true)),
        ("charged-low", Some(true)),
        ("charged-in-winter", Some(true)),
        ("mixed-too-short", Some(true)),
        ("well-water", Some(true)),
        ("surface-water", Some(false)),
        ("water-not-tested", None),
        ("first-month", Some(false)),
        ("first-year", Some(true)),
        ("older-than-five-years", Some(false)),
        ("glycol-fluid", Some(true)),
        ("several-circuits", Some(true)),
        ("two-circulators", Some(false)),
        ("sealed-flow-centre", Some(true)),
        ("vertical-loop", Some(true)),
        ("since-start-up", Some(false)),
        ("came-on-slowly", Some(true)),
        ("came-on-suddenly", Some(false)),
    ] {
        assert_eq!(get(&facts, fact), expected, "{fact}");
    }
}

fn fact_of(system: Value, commissioning: Value, visit: Value, fact: &str) -> Option<bool> {
    let file = file(system, commissioning, visit);
    let known = facts(&file, &LoopModel::of(&file), today());
    get(&known, fact)
}

/// At least 40 psi at start-up (a utility's guide to testing ground loops), with a tank
/// 15 psi (common practice, no source); a gauge cannot tell 38 from 40.
#[test]
fn a_charge_just_under_the_least_is_neither() {
    let low = |kind: &str, psi: f64| {
        let mut system = rich();
        system["flow_centre"] = json!({ "kind": kind });
        let record = json!({ "charge_pressure": value(psi, "psi") });
        fact_of(
            system,
            record,
            json!({ "date": "2026-01-20" }),
            "charged-low",
        )
    };
    assert_eq!(low("sealed", 30.0), Some(true));
    assert_eq!(low("sealed", 38.0), None);
    assert_eq!(low("sealed", 45.0), Some(false));
    assert_eq!(low("sealed_with_tank", 10.0), Some(true));
    assert_eq!(low("sealed_with_tank", 25.0), Some(false));
    assert_eq!(low("non_pressurised", 10.0), None);
}

/// 32 ft of head are 13.9 psi of water (0.433 psi a foot): two such circulators in
/// series may give 20 psi, one cannot.
#[test]
fn a_rise_that_takes_two_circulators() {
    let mut system = rich();
    let one = system["circulators"][0].clone();
    system["circulators"] = json!([one.clone(), one]);
    let fact = |psi: f64| {
        let rise =
            json!({ "point": "shut_off_rise", "value": value(psi, "psi"), "mode": "pumps_only" });
        let visit = json!({ "date": "2026-01-20", "readings": [rise] });
        fact_of(system.clone(), json!({}), visit, "more-rise-than-one-gives")
    };
    assert_eq!(fact(20.0), Some(true));
    assert_eq!(fact(12.0), None);
}

#[test]
fn warm_water_and_what_was_touched_last() {
    let visit = |f: f64| {
        json!({
            "date": "2026-07-20",
            "answers": [{ "finding": "after-work", "is": "yes" }],
            "readings": [{ "point": "entering_water", "value": value(f, "degF"), "mode": "cooling" }]
        })
    };
    assert_eq!(
        fact_of(rich(), json!({}), visit(74.0), "warm-loop"),
        Some(true)
    );
    assert_eq!(
        fact_of(rich(), json!({}), visit(41.0), "warm-loop"),
        Some(false)
    );
    assert_eq!(
        fact_of(rich(), json!({}), visit(74.0), "after-work"),
        Some(true)
    );
}
