use super::*;

fn readings(list: Value) -> VisitFile {
    file(
        rich(),
        json!({}),
        json!({ "date": "2026-01-20", "readings": list }),
    )
}

fn water(entering: f64, leaving: f64) -> [Value; 2] {
    [
        json!({ "point": "entering_water", "value": value(entering, "degF"), "mode": "heating" }),
        json!({ "point": "leaving_water", "value": value(leaving, "degF"), "mode": "heating" }),
    ]
}

#[test]
fn a_metered_flow_against_the_rated_one() {
    let metered = |gpm| {
        let file = readings(json!([{ "point": "flow", "value": value(gpm, "gpm") }]));
        only("loop-flow", &file)
    };
    favours(metered(7.0), 0, 0.95);
    favours(metered(12.0), 1, 0.95);
    favours(metered(20.0), 2, 0.9);
    let mut before = 0.0;
    for gpm in 0..40 {
        let high = share(metered(f64::from(gpm)), 2);
        assert!(high >= before - 1e-12, "{gpm} gpm");
        before = high;
    }
}

#[test]
fn the_drop_of_a_viscous_fluid_is_not_over_read() {
    // The curve gives 4.6 psi at 12 gpm of water. 25 % propylene glycol at
    // 30 °F is some four times as viscous, so the same drop is less flow: with
    // n = 1.8 and the law Δp ~ Q^n ρ^(n-1) μ^(2-n), a factor 0.86.
    let mut list = vec![json!({
        "point": "exchanger_drop", "value": value(4.6, "psi"), "mode": "heating"
    })];
    list.extend(water(32.0, 27.0));
    let file = readings(Value::Array(list));
    let ways = evaluate("loop-flow", &file);
    assert_eq!(ways.len(), 1);
    let gpm = crate::units::Unit::GallonPerMinute.from_si(ways[0].measured.si);
    assert!((9.8..11.3).contains(&gpm), "{gpm}");
    // Some 13 % short: close to the edge of 15 %, so that neither level is favoured much.
    let likelihood = ways[0].likelihood;
    assert!((0.35..0.75).contains(&share(likelihood, 1)));
    assert!(share(likelihood, 2) < 0.05);
}

#[test]
fn an_unknown_system_says_next_to_nothing() {
    let visit = json!({ "readings": [{ "point": "flow", "value": value(9.0, "gpm") }] });
    let unknown = only("loop-flow", &file(json!({}), json!({}), visit.clone()));
    let known = only("loop-flow", &file(rich(), json!({}), visit));
    let spread = |l: Likelihood| {
        l.weights().iter().copied().fold(0.0, f64::max)
            / l.weights().iter().copied().fold(1.0, f64::min)
    };
    assert!(spread(unknown) < 5.0, "{:?}", unknown.weights());
    assert!(spread(known) > 10.0);
}

#[test]
fn the_split_of_a_heating_unit_by_the_trade_factor() {
    // Heat of extraction 36,000 (1 - 1/3.6) = 26,000 Btu/h at 32 °F. With 12 gpm
    // and the trade's 485: 26,000/(12 · 485) = 4.5 °F.
    let file = readings(Value::Array(water(32.0, 27.5).to_vec()));
    let judged = &evaluate("temperature-split", &file)[0];
    let expected = judged.expected.si * 1.8;
    assert!((expected - 4.5).abs() < 0.25, "{expected} °F");
    favours(judged.likelihood, 1, 0.7);
    let file = readings(Value::Array(water(32.0, 22.0).to_vec()));
    favours(only("temperature-split", &file), 2, 0.95);
    let file = readings(Value::Array(water(32.0, 30.2).to_vec()));
    favours(only("temperature-split", &file), 0, 0.8);
}

#[test]
fn the_split_of_circulating_fluid_says_nothing() {
    let list = json!([
        { "point": "entering_water", "value": value(50.0, "degF"), "mode": "pumps_only" },
        { "point": "leaving_water", "value": value(50.0, "degF"), "mode": "pumps_only" }
    ]);
    assert!(evaluate("temperature-split", &readings(list)).is_empty());
}

#[test]
fn shut_off_against_the_curve() {
    // 32 ft of a fluid of about 1.03: 32 · 0.4335 · 1.03 = 14.3 psi.
    let shut = |psi| {
        only(
            "shut-off-rise",
            &readings(json!([{ "point": "shut_off_rise", "value": value(psi, "psi") }])),
        )
    };
    favours(shut(14.3), 1, 0.8);
    favours(shut(9.0), 0, 0.9);
}

#[test]
fn a_restriction_lifts_the_rise_and_a_weak_circulator_lowers_it() {
    // 24 ft at the needed 12 gpm: 10.7 psi; 32 ft at shut-off: 14.3 psi.
    let rise = |psi| {
        only(
            "circulator-rise",
            &readings(json!([{ "point": "circulator_rise", "value": value(psi, "psi") }])),
        )
    };
    favours(rise(10.7), 1, 0.9);
    favours(rise(14.2), 2, 0.5);
    favours(rise(5.0), 0, 0.9);
}

#[test]
fn a_curve_gives_a_flow_only_once_it_is_proven() {
    let rise = json!({ "point": "circulator_rise", "value": value(10.7, "psi") });
    let shut = json!({ "point": "shut_off_rise", "value": value(14.3, "psi") });
    assert!(evaluate("loop-flow", &readings(json!([rise]))).is_empty());
    let proven = evaluate("loop-flow", &readings(json!([rise, shut])));
    assert_eq!(proven.len(), 1);
    let gpm = crate::units::Unit::GallonPerMinute.from_si(proven[0].measured.si);
    assert!((gpm - 12.0).abs() < 0.5, "{gpm}");
}

#[test]
fn electric_input_and_body() {
    let watts = |w| {
        only(
            "circulator-power",
            &readings(json!([{ "point": "circulator_power", "value": value(w, "W") }])),
        )
    };
    favours(watts(80.0), 0, 0.9);
    favours(watts(230.0), 1, 0.85);
    let body = |f| {
        only(
            "circulator-body-hot",
            &readings(json!([
                { "point": "circulator_body_temperature", "value": value(f, "degF") },
                { "point": "loop_temperature", "value": value(40.0, "degF") }
            ])),
        )
    };
    favours(body(75.0), 0, 0.95);
    favours(body(150.0), 1, 0.95);
}

#[test]
fn a_rise_on_the_curve_at_a_known_flow_is_not_weak() {
    // 18 ft lie on the curve at 16 gpm (straight between 24 ft at 12 and 12 ft at
    // 20 gpm would be 18): 8 psi of this fluid, three quarters of the 10.7 psi at
    // the needed 12 gpm.
    let rise = json!({ "point": "circulator_rise", "value": value(8.1, "psi") });
    let flow = json!({ "point": "flow", "value": value(16.0, "gpm") });
    let alone = only("circulator-rise", &readings(json!([rise])));
    let known = only("circulator-rise", &readings(json!([rise, flow])));
    assert!(share(alone, 0) > 0.5);
    favours(known, 1, 0.6);
}

#[test]
fn the_split_of_a_unit_of_unknown_size_still_speaks() {
    // 6 to 8 °F heating whatever the size: common practice, no source.
    let visit = |leaving| json!({ "date": "2026-01-20", "readings": water(40.0, leaving) });
    let judged = |leaving| {
        only(
            "temperature-split",
            &file(json!({}), json!({}), visit(leaving)),
        )
    };
    favours(judged(33.0), 1, 0.6);
    favours(judged(24.0), 2, 0.9);
}
