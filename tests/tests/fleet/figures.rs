//! Statistics against lifelines, statsmodels and SciPy.

use returnline_core::fleet::statistics::{
    Curve, TwoByTwo, Waiting, adjusted, adjusted_dependent, poisson_rate, wilson,
};
use serde_json::Value;

fn table() -> Value {
    serde_json::from_str(include_str!("../../reference/tables/fleet.json")).expect("JSON")
}

fn numbers(value: &Value) -> Vec<f64> {
    let list = value.as_array().expect("a list").iter();
    list.map(|one| one.as_f64().expect("a number")).collect()
}

#[track_caller]
fn close(got: f64, expected: f64) {
    let apart = (got - expected).abs();
    assert!(
        apart <= 1e-8 * expected.abs().max(1e-300),
        "{got} for {expected}"
    );
}

#[test]
fn waiting_curves_agree_with_two_packages() {
    let mut steps = 0;
    for (name, curve) in table()["curves"].as_object().expect("curves") {
        let (times, events) = (numbers(&curve["times"]), numbers(&curve["events"]));
        let waiting: Vec<Waiting> = times
            .iter()
            .zip(&events)
            .map(|(time, event)| Waiting {
                time: *time,
                happened: *event > 0.5,
            })
            .collect();
        let got = Curve::of(&waiting);
        let expected = curve["steps"].as_array().expect("steps");
        assert_eq!(got.steps.len(), expected.len(), "{name}");
        assert_eq!(got.median(), curve["median"].as_f64(), "{name}");
        for (got, expected) in got.steps.iter().zip(expected) {
            close(got.time, expected["time"].as_f64().expect("a time"));
            assert_eq!(Some(got.at_risk as u64), expected["at_risk"].as_u64());
            assert_eq!(Some(got.events as u64), expected["events"].as_u64());
            let survival = expected["survival"].as_f64().expect("a share");
            if survival > 0.0 {
                close(got.survival, survival);
                let ends = numbers(&expected["log_log"]);
                close(got.log_log().low, ends[0]);
                close(got.log_log().high, ends[1]);
                let half = expected["plain_half"].as_f64().expect("a width");
                close(got.plain().low, (survival - half).max(0.0));
                close(got.plain().high, (survival + half).min(1.0));
            } else {
                assert!(got.survival.abs() < 1e-12);
            }
            steps += 1;
        }
    }
    assert!(steps > 100, "{steps}");
}

#[test]
fn intervals_of_shares_and_rates_agree() {
    for row in table()["wilson"].as_array().expect("rows") {
        let row = numbers(row);
        let got = wilson(row[0] as usize, row[1] as usize).expect("counts");
        assert!((got.low - row[2]).abs() < 1e-12, "{row:?} {got:?}");
        assert!((got.high - row[3]).abs() < 1e-12, "{row:?} {got:?}");
    }
    for row in table()["poisson"].as_array().expect("rows") {
        let row = numbers(row);
        let got = poisson_rate(row[0] as usize, row[1]).expect("exposure");
        close(got.low, row[2]);
        close(got.high, row[3]);
    }
}

#[test]
fn the_exact_test_and_ratios_agree() {
    let table = table();
    let rows = table["tables"].as_array().expect("tables");
    for row in rows {
        let cells = numbers(&row["cells"]);
        let [with, without, other_with, other_without] = [0, 1, 2, 3].map(|at| cells[at] as usize);
        let got = TwoByTwo {
            with,
            without,
            other_with,
            other_without,
        };
        let number = |key: &str| row[key].as_f64().expect("a number");
        close(got.fisher(), number("fisher"));
        close(got.odds_ratio().expect("a ratio"), number("odds"));
        close(got.risk_ratio().expect("a ratio"), number("risk"));
        for (ends, key) in [
            (got.odds_interval(), "odds_interval"),
            (got.risk_interval(), "risk_interval"),
        ] {
            let (ends, expected) = (ends.expect("ends"), numbers(&row[key]));
            close(ends.low, expected[0]);
            close(ends.high, expected[1]);
        }
    }
    assert!(rows.len() > 10);
}

#[test]
fn control_of_false_discoveries_agrees() {
    let table = table();
    let lists = table["adjusted"].as_array().expect("lists");
    let p = numbers(&lists[0]);
    for (got, expected) in [
        (adjusted(&p), &lists[1]),
        (adjusted_dependent(&p), &lists[2]),
    ] {
        let expected = numbers(expected);
        assert_eq!(got.len(), expected.len());
        for (got, expected) in got.into_iter().zip(expected) {
            close(got, expected);
        }
    }
}
