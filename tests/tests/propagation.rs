//! Propagation of uncertainty against the package `uncertainties`.

use returnline_core::uncertainty::{Uncertain, propagate};
use returnline_core::units::{Number, Quantity};
use returnline_tests::rows;
use std::convert::Infallible;

fn function(case: &str, a: f64, b: f64, c: f64) -> f64 {
    match case {
        "product" => a * b * c,
        "quotient" => a / (1.0 - b / c),
        "root" => b * a.sqrt() + c,
        "power" => (a / b).powf(1.0 / c),
        "logarithm" => a * b.ln() * (-c).exp(),
        "difference" => (a - b) * c,
        other => panic!("unknown case {other}"),
    }
}

#[test]
fn first_order_propagation_agrees() {
    let mut seen = 0;
    for row in rows(include_str!("../reference/tables/propagation.csv")) {
        let cells: Vec<f64> = row[1..].iter().map(|c| c.parse().unwrap()).collect();
        let input = |i: usize| Uncertain::new(Number::from_si(cells[2 * i]), cells[2 * i + 1]);
        let result = propagate((input(0), input(1), input(2)), |(a, b, c)| {
            Ok::<_, Infallible>(Number::from_si(function(row[0], a.si(), b.si(), c.si())))
        })
        .unwrap()
        .result;
        assert!(
            (result.value().si() / cells[6] - 1.0).abs() < 1e-12,
            "{row:?}"
        );
        assert!(
            (result.standard() / cells[7] - 1.0).abs() < 1e-6,
            "{row:?} {result:?}"
        );
        seen += 1;
    }
    assert_eq!(seen, 6);
}
