//! Fluids against the same correlation, other sources, IAPWS and a handbook
//! (tables and their generator under `reference/`).

use proptest::prelude::*;
use returnline_core::fluids::{Fluid, FluidError, FluidKind};
use returnline_core::units::{Fraction, Quantity, Temperature};
use returnline_tests::rows;

fn kind(name: &str) -> FluidKind {
    match name {
        "propylene-glycol" => FluidKind::PropyleneGlycol,
        "ethylene-glycol" => FluidKind::EthyleneGlycol,
        "methanol" => FluidKind::Methanol,
        "ethanol" => FluidKind::Ethanol,
        other => panic!("unknown fluid {other}"),
    }
}
fn number(cell: &str) -> f64 {
    cell.parse().unwrap()
}
fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t)
}
/// Density, specific heat, conductivity, viscosity.
fn properties(fluid: Fluid, t: Temperature) -> [f64; 4] {
    [
        fluid.density(t).unwrap().si(),
        fluid.specific_heat(t).unwrap().si(),
        fluid.conductivity(t).unwrap().si(),
        fluid.viscosity(t).unwrap().si(),
    ]
}
#[track_caller]
fn within(value: f64, reference: f64, relative: f64, what: &str) {
    let off = value / reference - 1.0;
    assert!(
        off.abs() <= relative,
        "{what}: {value} against {reference}, off by {:.3} %",
        100.0 * off
    );
}

#[test]
fn the_same_correlation_gives_the_same_numbers() {
    let mut seen = 0;
    for row in rows(include_str!("../reference/tables/solutions.csv")) {
        let fluid = Fluid::new(kind(row[0]), Fraction::from_si(number(row[1]))).unwrap();
        let values = properties(fluid, celsius(number(row[2])));
        for (i, value) in values.into_iter().enumerate() {
            within(
                value,
                number(row[3 + i]),
                5e-4,
                &format!("{row:?} column {i}"),
            );
        }
        // The two libraries differ by up to 0.006 K here; see `fluids::melinder`.
        let freezing = fluid.freezing_point().celsius();
        assert!(
            (freezing - number(row[7])).abs() < 5e-4,
            "{row:?} {freezing}"
        );
        assert!(
            (freezing - number(row[8])).abs() < 0.01,
            "{row:?} {freezing}"
        );
        seen += 1;
    }
    assert!(seen > 150);
}

#[test]
fn other_sources_lie_within_their_bands() {
    let mut seen = 0;
    for row in rows(include_str!("../reference/tables/solutions_other.csv")) {
        let (kind, x) = (kind(row[0]), Fraction::from_si(number(row[3])));
        let fluid = match row[2] {
            "volume" => Fluid::from_volume_fraction(kind, x),
            _ => Fluid::new(kind, x),
        }
        .unwrap();
        let freezing = fluid.freezing_point().celsius();
        let ethylene = kind == FluidKind::EthyleneGlycol;
        let band = if ethylene { 1.1 } else { 0.5 };
        assert!(
            (freezing - number(row[5])).abs() <= band,
            "{row:?} {freezing}"
        );
        // Cold ethylene glycol, unexplained: two families of data part smoothly. Melinder's
        // viscosity (his other fit agrees within 2 %) lies above ASHRAE's by 0 to 4 % at
        // 30 °C, 7 to 12 % at 0 °C and up to 14 % at the freezing point, the conductivity by
        // 0.3, 2 and 3.3 %. It is no matter of strength: ASHRAE's table is for inhibited
        // glycol, and its density lies 0.4 % higher, which would make it the thicker one.
        let cold = ethylene && number(row[4]) < 0.0;
        let bands = match (ethylene, cold) {
            (true, true) => [0.007, 0.04, 0.035, 0.14],
            (true, false) => [0.007, 0.04, 0.03, 0.13],
            _ => [0.007, 0.04, 0.03, 0.10],
        };
        let values = properties(fluid, celsius(number(row[4])));
        for (i, value) in values.into_iter().enumerate() {
            within(
                value,
                number(row[6 + i]),
                bands[i],
                &format!("{row:?} column {i}"),
            );
        }
        seen += 1;
    }
    assert!(seen > 120);
}

#[test]
fn water_follows_iapws() {
    for row in rows(include_str!("../reference/tables/water.csv")) {
        let t = celsius(number(row[0]));
        let bands = [2e-4, 1e-3, 8e-3, 3e-3];
        for (i, value) in properties(Fluid::WATER, t).into_iter().enumerate() {
            within(
                value,
                number(row[1 + i]),
                bands[i],
                &format!("{row:?} column {i}"),
            );
        }
        // Near 4 °C the expansion passes zero: absolute there.
        let beta = Fluid::WATER.expansion(t).unwrap().si();
        assert!((beta - number(row[5])).abs() < 2e-7, "{row:?} {beta}");
        within(
            Fluid::WATER.compressibility(t).unwrap().si(),
            number(row[6]),
            2e-3,
            "squeeze",
        );
        let vapour = Fluid::WATER.vapour_pressure(t).unwrap().si();
        within(vapour, number(row[7]), 5e-4, "vapour, IAPWS-95");
        within(vapour, number(row[8]), 5e-4, "vapour, IF97");
    }
}

/// The handbook rounds to a whole °F (0.3 K) and its rows scatter by as much
/// again; propylene glycol lies 1.2 K off at the most, methanol 0.3 K.
#[test]
fn freezing_points_of_the_handbook() {
    for row in rows(include_str!("../reference/tables/freezing_handbook.csv")) {
        let x = Fraction::from_si(number(row[1]) / 100.0);
        let fluid = Fluid::from_volume_fraction(kind(row[0]), x).unwrap();
        let freezing = fluid.freezing_point().celsius();
        assert!(
            (freezing - number(row[2])).abs() <= 1.3,
            "{row:?} {freezing}"
        );
        let at = if row[0] == "ethanol" { 68.0 } else { 60.0 };
        let at = Temperature::from_fahrenheit(at);
        let density = fluid.density(at).unwrap().si();
        let gravity = density / Fluid::WATER.density(at).unwrap().si();
        assert!(
            (gravity - number(row[3])).abs() <= 0.005,
            "{row:?} {gravity}"
        );
    }
}

#[test]
fn pure_alcohols_of_the_reference_equations() {
    for row in rows(include_str!("../reference/tables/alcohols.csv")) {
        within(
            kind(row[0]).pure_density().si(),
            number(row[1]),
            1e-3,
            "density",
        );
        // The vapour pressure of a solution is an upper bound: never above that of
        // the pure alcohol at loop strength, never below that of water.
        let fluid = Fluid::new(kind(row[0]), Fraction::from_si(0.25)).unwrap();
        let vapour = fluid.vapour_pressure(celsius(30.0)).unwrap().si();
        assert!(
            vapour < number(row[2]) && vapour > 4_200.0,
            "{row:?} {vapour}"
        );
    }
}

fn any_kind() -> impl Strategy<Value = FluidKind> {
    prop::sample::select(&FluidKind::ALL[1..])
}

proptest! {
    #[test]
    fn in_range_every_property_is_a_positive_number(
        kind in any_kind(), w in 0.0..0.6f64, t in -50.0..100.0f64,
    ) {
        let fluid = Fluid::new(kind, Fraction::from_si(w)).unwrap();
        let t = celsius(t);
        match fluid.density(t) {
            Ok(_) => for value in properties(fluid, t) {
                prop_assert!(value.is_finite() && value > 0.0);
            },
            Err(FluidError::BelowFreezing { .. }) => prop_assert!(t < fluid.freezing_point()),
            Err(FluidError::OutOfRange(range)) => prop_assert!(t.si() > range.max || t.si() < range.min),
            Err(other) => prop_assert!(false, "{other}"),
        }
    }

    #[test]
    fn colder_and_stronger_is_more_viscous(
        kind in any_kind(), w in 0.1..0.3f64, t in 0.0..38.0f64,
    ) {
        let mu = |w, t| Fluid::new(kind, Fraction::from_si(w)).unwrap().viscosity(celsius(t)).unwrap();
        prop_assert!(mu(w, t) > mu(w, t + 1.0));
        prop_assert!(mu(w + 0.01, t) > mu(w, t));
    }

    #[test]
    fn strength_comes_back_from_its_freezing_point(kind in any_kind(), w in 0.02..0.6f64) {
        let fluid = Fluid::new(kind, Fraction::from_si(w)).unwrap();
        let back = Fluid::from_freezing_point(kind, fluid.freezing_point()).unwrap();
        prop_assert!((back.mass_fraction().si() - w).abs() < 1e-9);
    }

    #[test]
    fn nonsense_is_refused(kind in any_kind(), w in prop::sample::select(vec![f64::NAN, f64::INFINITY, -0.1, 0.61, 1e300])) {
        prop_assert!(Fluid::new(kind, Fraction::from_si(w)).is_err());
        prop_assert!(Fluid::from_freezing_point(kind, celsius(w)).is_err() || w == -0.1);
        let fluid = Fluid::new(kind, Fraction::from_si(0.2)).unwrap();
        prop_assert!(fluid.density(celsius(w * 1e3)).is_err());
    }
}
