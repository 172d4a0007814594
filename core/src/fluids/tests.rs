use super::*;
use crate::uncertainty::Uncertain;
use crate::units::{Length, Number};

fn at(kind: FluidKind, percent: f64) -> Fluid {
    Fluid::new(kind, Fraction::from_si(percent / 100.0)).unwrap()
}
const SOLUTIONS: [FluidKind; 4] = [
    FluidKind::PropyleneGlycol,
    FluidKind::EthyleneGlycol,
    FluidKind::Methanol,
    FluidKind::Ethanol,
];

#[test]
fn freezing_falls_with_strength_and_inverts() {
    for kind in SOLUTIONS {
        let mut last = f64::INFINITY;
        for tenth in 3..=600 {
            let fluid = at(kind, f64::from(tenth) / 10.0);
            let freezing = fluid.freezing_point();
            assert!(freezing.si() < last, "{kind:?} {tenth}");
            last = freezing.si();
            let back = Fluid::from_freezing_point(kind, freezing).unwrap();
            assert!((back.mass_fraction - fluid.mass_fraction).abs() < 1e-9);
        }
    }
}

#[test]
fn volume_and_mass_fraction_go_round() {
    for kind in SOLUTIONS {
        for percent in [1.0, 20.0, 45.0] {
            let fluid = at(kind, percent);
            let back = Fluid::from_volume_fraction(kind, fluid.volume_fraction()).unwrap();
            assert!((back.mass_fraction - fluid.mass_fraction).abs() < 1e-12);
        }
    }
}

#[test]
fn expansion_is_the_slope_of_the_density() {
    for kind in FluidKind::ALL {
        let fluid = if kind == FluidKind::Water {
            Fluid::WATER
        } else {
            at(kind, 25.0)
        };
        for celsius in [1.0, 10.0, 25.0, 39.0] {
            let rho = |d: f64| {
                fluid
                    .density(Temperature::from_celsius(celsius + d))
                    .unwrap()
                    .si()
            };
            let slope = -(rho(0.01) - rho(-0.01)) / 0.02 / rho(0.0);
            let beta = fluid
                .expansion(Temperature::from_celsius(celsius))
                .unwrap()
                .si();
            assert!(
                (beta - slope).abs() < 1e-8,
                "{kind:?} {celsius}: {beta} {slope}"
            );
        }
    }
}

#[test]
fn ice_and_heat_are_refused_with_a_reason() {
    let cold = Temperature::from_celsius(-0.1);
    assert!(matches!(
        Fluid::WATER.density(cold),
        Err(FluidError::BelowFreezing { .. })
    ));
    let hot = Temperature::from_celsius(40.1);
    assert!(matches!(
        at(FluidKind::Ethanol, 20.0).viscosity(hot),
        Err(FluidError::OutOfRange(_))
    ));
    assert!(Fluid::new(FluidKind::Methanol, Fraction::from_si(f64::NAN)).is_err());
    assert_eq!(
        Fluid::new(FluidKind::Water, Fraction::from_si(0.2)),
        Err(FluidError::NoConcentration)
    );
}

#[test]
fn a_reading_gives_back_the_strength_that_made_it() {
    let (warm, cool) = (
        Temperature::from_celsius(25.0),
        Temperature::from_celsius(12.0),
    );
    for kind in SOLUTIONS {
        let fluid = at(kind, 22.0);
        for t in [warm, cool] {
            let scale = HydrometerScale::default();
            let glass = 1.0 - 25e-6 * (t.si() - scale.reference.si());
            let gravity =
                fluid.density(t).unwrap().si() / (water::density(scale.reference.si()) * glass);
            let reading = Uncertain::within(Number::from_si(gravity), 0.001);
            let strength = hydrometer(kind, scale, reading, Uncertain::within(t, 0.5)).unwrap();
            assert!(
                (strength.value().si() - 0.22).abs() < 1e-6,
                "{kind:?} {strength:?}"
            );
            assert!(
                (0.001..0.03).contains(&strength.standard()),
                "{kind:?} {strength:?}"
            );
            if kind != FluidKind::Methanol {
                let index = Uncertain::within(refractive_index(fluid, t).unwrap(), 0.0003);
                let scale = RefractometerScale::RefractiveIndex;
                let strength =
                    refractometer(kind, scale, index, Some(Uncertain::exact(t))).unwrap();
                assert!((strength.value().si() - 0.22).abs() < 1e-6);
            }
        }
    }
}

#[test]
fn the_wrong_scale_still_tells_the_strength_and_methanol_does_not() {
    let scale = RefractometerScale::FreezingPoint(FluidKind::EthyleneGlycol);
    let reading = Uncertain::within(Number::from_si(-12.0), 1.0);
    let strength = refractometer(FluidKind::PropyleneGlycol, scale, reading, None).unwrap();
    // Ethylene glycol that freezes at -12 °C is 26.5 % strong; its index belongs
    // to a propylene glycol a little weaker, which freezes about 3 K warmer.
    assert!(
        (0.22..0.265).contains(&strength.value().si()),
        "{strength:?}"
    );
    let methanol = refractometer(FluidKind::Methanol, scale, reading, None);
    assert_eq!(
        methanol,
        Err(FluidError::WrongInstrument {
            kind: FluidKind::Methanol
        })
    );
}

/// From memory of the CRC Handbook, concentrative properties at 20 °C.
#[test]
fn index_of_the_printed_tables() {
    let t = Temperature::from_celsius(20.0);
    for (kind, percent, index) in [
        (FluidKind::Ethanol, 10.0, 1.3395),
        (FluidKind::Ethanol, 20.0, 1.3469),
        (FluidKind::Methanol, 10.0, 1.3354),
        (FluidKind::Methanol, 30.0, 1.3407),
        (FluidKind::EthyleneGlycol, 20.0, 1.3523),
        (FluidKind::EthyleneGlycol, 40.0, 1.3730),
        (FluidKind::PropyleneGlycol, 20.0, 1.3551),
    ] {
        let n = refractive_index(at(kind, percent), t).unwrap().si();
        assert!((n - index).abs() < 1.5e-3, "{kind:?} {percent}: {n}");
    }
}

#[test]
fn the_standard_atmosphere() {
    // ISO 2533 table: 89 874.6 Pa at 1 000 m, 79 495.2 Pa at 2 000 m (geopotential).
    for (metres, pascal) in [(0.0, 101_325.0), (1_000.0, 89_874.6), (2_000.0, 79_495.2)] {
        let p = atmospheric_pressure(Length::from_si(metres)).unwrap().si();
        assert!((p / pascal - 1.0).abs() < 1e-4);
    }
}

#[test]
fn vapour_pressure_of_alcohol_lies_above_water() {
    let t = Temperature::from_celsius(30.0);
    let water = Fluid::WATER.vapour_pressure(t).unwrap();
    assert!(at(FluidKind::Methanol, 20.0).vapour_pressure(t).unwrap() > water);
    assert!(at(FluidKind::Ethanol, 20.0).vapour_pressure(t).unwrap() > water);
}
