//! Langelier and Ryznar indices against published examples and against PHREEQC.

use returnline_core::units::{MassConcentration, Number, Quantity, Temperature};
use returnline_core::water::{SaturationIndices, ScaleTendency, WaterSample, indices};
use returnline_tests::rows;

fn at(ph: f64, celsius: f64, solids: f64, calcium: f64, alkalinity: f64) -> SaturationIndices {
    let mg = |c: f64| MassConcentration::from_si(c * 1e-3);
    indices(&WaterSample {
        ph: Number::from_si(ph),
        temperature: Temperature::from_celsius(celsius),
        dissolved_solids: mg(solids),
        calcium: mg(calcium),
        alkalinity: mg(alkalinity),
    })
    .unwrap()
}

/// A widely reprinted worked example, from memory; its arithmetic was done again by hand.
#[test]
fn the_reprinted_example() {
    let cool = at(7.5, 25.0, 320.0, 150.0, 34.0);
    assert!((cool.saturation_ph.si() - 8.23).abs() < 0.02);
    assert!((cool.langelier.si() + 0.73).abs() < 0.02);
    assert!((cool.ryznar.si() - 8.96).abs() < 0.02);
    assert_eq!(cool.tendency, ScaleTendency::Dissolving);
    let hot = at(7.5, 82.0, 320.0, 150.0, 34.0);
    assert!((hot.saturation_ph.si() - 7.23).abs() < 0.02);
    assert!((hot.langelier.si() - 0.27).abs() < 0.02);
    assert_eq!(hot.tendency, ScaleTendency::CannotTell);
    assert!((at(7.5, 5.0, 320.0, 150.0, 34.0).langelier.si() + 1.13).abs() < 0.02);
}

/// The short form LSI = pH + TF + CF + AF − 12.1 of a published course for pool operators,
/// whose factors are rounded to a tenth and which leaves the dissolved solids at 12.1, that is
/// below 1 000 mg/L: hence the wider band of 0.2.
#[test]
fn the_short_form_of_the_trade() {
    for (ph, fahrenheit, calcium, alkalinity, expected) in [
        (7.0, 76.0, 200.0, 50.0, -0.9),
        (7.6, 84.0, 300.0, 75.0, 0.2),
        (8.0, 94.0, 400.0, 150.0, 1.1),
    ] {
        let celsius = (fahrenheit - 32.0) / 1.8;
        let index = at(ph, celsius, 500.0, calcium, alkalinity).langelier.si();
        assert!((index - expected).abs() < 0.2, "{index} for {expected}");
    }
}

/// The closed form knows no ion pairs and no activity but by total solids: it reads lower than
/// PHREEQC, by up to a third of a unit in cold water. So it is held to 0.35 and, where it gives
/// a verdict, to the sign.
#[test]
fn the_sign_agrees_with_phreeqc_wherever_a_verdict_is_given() {
    let (mut verdicts, mut sum, mut count) = (0, 0.0, 0.0);
    for row in rows(include_str!("../reference/tables/calcite.csv")) {
        let v: Vec<f64> = row.iter().map(|cell| cell.parse().unwrap()).collect();
        let ours = at(v[0], v[1], v[2], v[3], v[4]);
        let difference = ours.langelier.si() - v[5];
        assert!(difference.abs() < 0.35, "{row:?}: {difference}");
        match ours.tendency {
            ScaleTendency::Scaling => assert!(v[5] > 0.0, "{row:?}"),
            ScaleTendency::Dissolving => assert!(v[5] < 0.0, "{row:?}"),
            ScaleTendency::CannotTell => continue,
        }
        verdicts += 1;
        sum += difference;
        count += 1.0;
    }
    assert!(verdicts > 60);
    assert!((-0.3..-0.1).contains(&(sum / count)));
}
