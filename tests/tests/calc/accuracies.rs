//! Accuracies go in with a question and come out with its answer.

use super::{ask, measure, near, number};
use serde_json::json;

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
