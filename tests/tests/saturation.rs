//! Refrigerant saturation against CoolProp (table and generator under `reference/`) and
//! against normal boiling points.

use returnline_core::heat::saturation::{Line, Refrigerant, pressure, temperature};
use returnline_core::units::{AbsolutePressure, Quantity, Temperature};
use returnline_tests::rows;

/// The demand: 0.1 K. The fit keeps far inside it.
const BAND: f64 = 0.1;

fn named(name: &str) -> Refrigerant {
    *Refrigerant::ALL
        .iter()
        .find(|r| r.designation() == name)
        .unwrap()
}

#[test]
fn saturation_temperature_is_within_a_tenth_of_a_kelvin_of_the_reference() {
    let mut seen = 0;
    for row in rows(include_str!("../reference/tables/saturation.csv")) {
        let line = if row[2] == "dew" {
            Line::Dew
        } else {
            Line::Bubble
        };
        let celsius: f64 = row[3].parse().unwrap();
        let p: f64 = row[4].parse().unwrap();
        let t = temperature(named(row[0]), line, AbsolutePressure::from_si(p)).unwrap();
        assert!(
            (t.celsius() - celsius).abs() < BAND,
            "{row:?}: {}",
            t.celsius()
        );
        seen += 1;
    }
    assert!(seen > 450, "only {seen} points");
}

#[test]
fn boiling_points_at_one_atmosphere() {
    // ASHRAE Handbook - Fundamentals, refrigerant tables, from memory: normal boiling points
    // R-134a -26.07 degC, R-22 -40.81 degC; R-407C bubble -43.6 and dew -36.6 degC.
    let atmosphere = AbsolutePressure::standard_atmosphere();
    for (refrigerant, line, celsius) in [
        (Refrigerant::R134a, Line::Dew, -26.07),
        (Refrigerant::R22, Line::Dew, -40.81),
        (Refrigerant::R407C, Line::Bubble, -43.6),
        (Refrigerant::R407C, Line::Dew, -36.6),
    ] {
        let t = temperature(refrigerant, line, atmosphere).unwrap();
        assert!(
            (t.celsius() - celsius).abs() < 0.15,
            "{refrigerant:?}: {}",
            t.celsius()
        );
    }
}

#[test]
fn dew_pressure_never_exceeds_bubble_pressure_and_both_rise() {
    for refrigerant in Refrigerant::ALL {
        let mut last = [0.0; 2];
        for step in 0..=220 {
            let t = Temperature::from_celsius(-45.0 + 0.5 * f64::from(step));
            let bubble = pressure(refrigerant, Line::Bubble, t).unwrap().si();
            let dew = pressure(refrigerant, Line::Dew, t).unwrap().si();
            assert!(dew <= bubble * (1.0 + 1e-9), "{refrigerant:?} at {t:?}");
            assert!(bubble > last[0] && dew > last[1]);
            last = [bubble, dew];
        }
    }
}
