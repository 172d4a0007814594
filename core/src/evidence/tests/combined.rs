//! Readings that say more together than each by itself.

use super::*;
use crate::units::Unit;

fn visit(list: Value) -> Value {
    json!({ "date": "2026-01-20", "readings": list })
}

fn rich_with(list: Value) -> VisitFile {
    file(rich(), json!({}), visit(list))
}

fn read(point: &str, amount: f64, unit: &str) -> Value {
    json!({ "point": point, "value": value(amount, unit), "mode": "heating" })
}

fn shown(name: &str, file: &VisitFile) -> Likelihood {
    let model = LoopModel::of(file);
    let call = Call::new(file, &model, today());
    let sign = Evaluator::showing(name).expect("a sign that readings show");
    let evaluations = sign.evaluate(&call);
    assert_eq!(evaluations.len(), 1, "{name}");
    evaluations[0].likelihood
}

/// A heating unit cools the water. By the heat balance (the trade's 485) full flow
/// gives this one 4.5 °F; crossed pipes turn it round and leave its size.
#[test]
fn crossed_pipes_turn_the_split_round_and_leave_its_size() {
    let reversed = rich_with(json!([
        read("entering_water", 35.0, "degF"),
        read("leaving_water", 39.5, "degF")
    ]));
    favours(shown("split-sign-reversed", &reversed), 1, 0.95);
    favours(only("temperature-split", &reversed), 1, 0.7);
    let usual = rich_with(json!([
        read("entering_water", 39.5, "degF"),
        read("leaving_water", 35.0, "degF")
    ]));
    favours(shown("split-sign-reversed", &usual), 0, 0.95);
    // Next to no change is a small one, and no turned one.
    let small = rich_with(json!([
        read("entering_water", 39.5, "degF"),
        read("leaving_water", 39.4, "degF")
    ]));
    favours(only("temperature-split", &small), 0, 0.9);
    assert!(share(shown("split-sign-reversed", &small), 1) < 0.5);
}

#[test]
fn a_sign_that_was_answered_is_not_read_a_second_time() {
    let readings = json!([
        read("entering_water", 35.0, "degF"),
        read("leaving_water", 39.5, "degF")
    ]);
    let mut answered = visit(readings.clone());
    answered["answers"] = json!([{ "finding": "split-sign-reversed", "is": "yes" }]);
    let graph = crate::diagnosis::shipped::load().expect("the shipped graph");
    let observed = |visit| {
        let file = file(rich(), json!({}), visit);
        let gathered = gather(&file, &LoopModel::of(&file), &graph, today());
        let all = gathered.case.observations;
        let same = all
            .iter()
            .filter(|seen| seen.finding.as_str() == "split-sign-reversed");
        same.count()
    };
    assert_eq!(observed(visit(readings)), 1);
    assert_eq!(observed(answered), 1);
}

#[test]
fn two_gauges_on_one_loop() {
    let two = |dial: f64, digital: f64| {
        let gauge = |psi: f64, instrument: &str| {
            json!({
                "point": "static_pressure", "value": value(psi, "psi"),
                "mode": "idle", "instrument": instrument
            })
        };
        rich_with(json!([
            gauge(dial, "dial_gauge"),
            gauge(digital, "digital_gauge")
        ]))
    };
    favours(shown("second-gauge-disagrees", &two(30.0, 30.5)), 0, 0.9);
    favours(shown("second-gauge-disagrees", &two(27.0, 3.0)), 1, 0.95);
}

#[test]
fn the_display_against_a_thermometer() {
    let both = |display: f64| {
        let entering = |f: f64, instrument: &str| {
            json!({
                "point": "entering_water", "value": value(f, "degF"),
                "mode": "heating", "instrument": instrument
            })
        };
        rich_with(json!([
            entering(40.0, "port_thermometer"),
            entering(display, "unit_display")
        ]))
    };
    favours(shown("display-thermometer-disagree", &both(40.5)), 0, 0.8);
    favours(shown("display-thermometer-disagree", &both(54.0)), 1, 0.95);
}

/// Where a meter tells the flow, the drop tells of the exchanger: 4.6 psi belong to
/// 12 gpm of water, so 14 psi at 8 gpm are a blocked exchanger and no large flow.
#[test]
fn a_drop_is_used_once() {
    let file = rich_with(json!([
        read("flow", 8.0, "gpm"),
        read("exchanger_drop", 14.0, "psi")
    ]));
    favours(only("loop-flow", &file), 0, 0.9);
    favours(only("exchanger-drop-for-flow", &file), 2, 0.95);
}

/// Without any curve: an exchanger takes a quarter to a half of the rise.
#[test]
fn an_exchanger_that_takes_nearly_all() {
    let taking = |drop: f64| {
        let mut system = rich();
        system["heat_pump"]["exchanger"] = json!({ "kind": "coaxial" });
        let list = json!([
            read("circulator_rise", 11.0, "psi"),
            read("exchanger_drop", drop, "psi")
        ]);
        only(
            "exchanger-takes-the-head",
            &file(system, json!({}), visit(list)),
        )
    };
    favours(taking(4.0), 0, 0.95);
    favours(taking(10.0), 1, 0.9);
}

/// 12 gpm in four circuits of 500 ft of 3/4 in pipe (3 gpm each, bore 21.8 mm) with
/// 25 % propylene glycol at 40 °F: v = 0.507 m/s, Re about 4 000, Blasius
/// f = 0.3164/Re^0.25 = 0.040, h = f L/D v²/2g = 3.7 m, 5.3 psi; the exchanger takes
/// some 5, the strainer half a psi. A rise of 11 psi is accounted for, one of 24 is not.
#[test]
fn head_that_nothing_on_record_takes() {
    let with_rise = |psi: f64| {
        rich_with(json!([
            read("flow", 12.0, "gpm"),
            read("circulator_rise", psi, "psi"),
            read("entering_water", 42.0, "degF"),
            read("leaving_water", 38.0, "degF")
        ]))
    };
    favours(only("head-unaccounted", &with_rise(11.0)), 0, 0.8);
    favours(only("head-unaccounted", &with_rise(24.0)), 1, 0.95);
    let left = evaluate("head-unaccounted", &with_rise(24.0));
    let psi = Unit::Psi.from_si(left[0].measured.si);
    assert!((10.0..16.0).contains(&psi), "{psi} psi left of 24");
}

/// Returns of an even field lie within 3 °F; one that stands takes the temperature of
/// ground or room. Common practice, no source.
#[test]
fn a_return_that_stands() {
    let fields = |other: f64| {
        let list: Vec<Value> = [27.0, 27.4, 26.8, other]
            .iter()
            .enumerate()
            .map(|(at, f)| {
                let mut reading = read("circuit_return", *f, "degF");
                reading["circuit"] = json!(at + 1);
                reading
            })
            .collect();
        rich_with(Value::Array(list))
    };
    favours(only("circuit-return-stands", &fields(31.5)), 0, 0.9);
    favours(only("circuit-return-stands", &fields(46.0)), 1, 0.95);
}

#[test]
fn an_entry_of_last_week_is_not_the_pressure_of_today() {
    let log = |psi: f64, day: u32| {
        json!({
            "point": "static_pressure", "value": value(psi, "psi"), "mode": "idle",
            "taken_at": format!("2026-01-{day:02}T09:00:00+00:00")
        })
    };
    let file = rich_with(json!([log(28.0, 12), log(24.0, 15), log(9.0, 20)]));
    let judged = &evaluate("static-pressure", &file)[0];
    assert!((Unit::Psi.from_si(judged.measured.si) - 9.0).abs() < 1e-6);
    assert_eq!(judged.used, [2]);
    // With fewer than four the course says nothing, and the earlier ones say why.
    let graph = crate::diagnosis::shipped::load().expect("the shipped graph");
    let unused = gather(&file, &LoopModel::of(&file), &graph, today()).unused;
    let earlier = unused.iter().filter(|unused| {
        matches!(
            unused,
            Unused::Reading {
                why: WhyUnused::Earlier,
                ..
            }
        )
    });
    assert_eq!(earlier.count(), 2);
}

/// A steady fall of 2 psi a day, whatever the flow centre: a tank of unknown size does
/// not silence the log.
#[test]
fn a_log_speaks_with_a_tank_that_nobody_measured() {
    let list: Vec<Value> = (0..6)
        .map(|day| {
            json!({
                "point": "static_pressure", "value": value(30.0 - 2.5 * f64::from(day), "psi"),
                "mode": "idle", "taken_at": format!("2026-01-{:02}T09:00:00+00:00", 14 + day)
            })
        })
        .collect();
    let mut system = rich();
    system["flow_centre"] = json!({ "kind": "sealed_with_tank" });
    let file = file(system, json!({}), visit(Value::Array(list)));
    favours(only("static-pressure-trend", &file), 1, 0.8);
}

/// Relaxation takes a share of the charge: in a cool loop nothing left means that
/// fluid is gone. In a warm one it may be the season.
#[test]
fn nothing_left_in_a_cool_loop() {
    let at = |psi: f64, loop_f: f64| {
        rich_with(json!([
            { "point": "static_pressure", "value": value(psi, "psi"), "mode": "idle" },
            { "point": "loop_temperature", "value": value(loop_f, "degF"), "mode": "idle" }
        ]))
    };
    favours(only("pressure-gone", &at(-3.0, 45.0)), 1, 0.95);
    favours(only("pressure-gone", &at(9.0, 45.0)), 0, 0.95);
    assert!(evaluate("pressure-gone", &at(-3.0, 80.0)).is_empty());
}
