//! The examples of `core/docs/worked-examples.md`: numbers worked out by hand against the program.

use returnline_core::fluids::Fluid;
use returnline_core::hydraulics::elastic::Axial;
use returnline_core::hydraulics::purge::{DeadHeadTest, PipeVolume, TankStep, dead_head};
use returnline_core::pressure::balance::{PlasticPart, SealedLoop};
use returnline_core::pressure::belief::{Belief, Charge, Moment, Unknown, Unknowns};
use returnline_core::pressure::modulus::Resin;
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{
    AbsolutePressure, Area, Duration, Fraction, GaugePressure, Length, Modulus, Number, Quantity,
    Temperature, ThermalExpansion, Volume,
};

const PSI: f64 = 6_894.757_293_168;
const GALLON: f64 = 3.785_411_784e-3;
const INCH: f64 = 0.025_4;
const HOUR: f64 = 3_600.0;

fn psi(value: f64, doubt: f64) -> Uncertain<GaugePressure> {
    Uncertain::new(GaugePressure::from_si(value * PSI), doubt * PSI)
}

#[test]
fn the_dead_head_test_gives_the_numbers_of_the_page() {
    let result = dead_head(&DeadHeadTest {
        tank: TankStep {
            drop: Uncertain::exact(Length::from_si(2.0 * INCH)),
            area: Uncertain::exact(Area::from_si(0.34 * GALLON / INCH)),
        },
        pipes: vec![PipeVolume {
            volume: Uncertain::exact(Volume::from_si(100.0 * GALLON)),
            diameter_ratio: Some(Number::from_si(11.0)),
        }],
        before: psi(10.0, 0.0),
        after: psi(50.0, 0.0),
        atmosphere: AbsolutePressure::standard_atmosphere(),
        fluid: Fluid::WATER,
        temperature: Temperature::from_celsius(20.0),
        modulus: Uncertain::exact(Modulus::from_si(110e3 * PSI)),
        poisson: Uncertain::exact(Number::from_si(0.45)),
        freedom: Uncertain::exact(Fraction::from_si(1.0)),
        allowed_air: Fraction::from_si(0.002),
    })
    .unwrap();
    let gallons = |v: Uncertain<Volume>| v.value().si() / GALLON;
    assert!((gallons(result.displaced) - 0.680).abs() < 5e-4);
    assert!((gallons(result.stretch) - 0.353).abs() < 1e-3);
    assert!((gallons(result.air) - 0.528).abs() < 1e-3);
    assert!((result.drop_without_air.value().si() / INCH - 1.04).abs() < 0.005);
}

fn belief(modulus: f64, expansion: f64, charge: f64) -> Belief {
    let system = SealedLoop {
        plastic: vec![PlasticPart {
            volume: Volume::from_si(100.0 * GALLON),
            ratio: Number::from_si(11.0),
        }],
        rigid: Volume::ZERO,
        resin: Resin::Pe4xxx,
        axial: Axial::Held,
        fluid: Fluid::WATER,
        atmosphere: AbsolutePressure::standard_atmosphere(),
        vessel: None,
    };
    let unknowns = Unknowns {
        modulus: Fraction::from_si(modulus),
        expansion: Uncertain::new(ThermalExpansion::from_si(1.5e-4), expansion),
        restraint: Uncertain::exact(Fraction::ZERO),
        fluid: Fraction::ZERO,
    };
    let charge = Charge {
        pressure: psi(50.0, charge),
        temperature: Uncertain::exact(Temperature::from_celsius(10.0)),
        held: Duration::from_si(0.5 * HOUR),
        air: None,
        earlier: None,
    };
    Belief::prior(system, unknowns, charge).unwrap()
}
fn after(celsius: f64, doubt: f64) -> Moment {
    Moment {
        elapsed: Duration::from_si(99.5 * HOUR),
        temperature: Uncertain::new(Temperature::from_celsius(celsius), doubt),
    }
}

#[test]
fn the_gauge_in_summer_gives_the_numbers_of_the_page() {
    let known = belief(0.0, 0.0, 0.0);
    let at = |celsius| known.expected(&after(celsius, 0.0)).unwrap().si() / PSI;
    assert!((at(20.0) - 10.1).abs() < 0.05, "{}", at(20.0));
    assert!((at(10.0) - 33.9).abs() < 0.06, "{}", at(10.0));
}

/// By hand to first order; the program carries the curvature along, hence 4 % on the spread.
#[test]
fn the_band_gives_the_numbers_of_the_page() {
    let band = belief(0.15, 0.15e-4, 1.0).band(&after(20.0, 1.0)).unwrap();
    assert!((band.median.si() / PSI - 10.1).abs() < 0.3, "{band:?}");
    assert!((band.standard / PSI / 4.19 - 1.0).abs() < 0.04, "{band:?}");
    assert!(
        (band.width() / PSI - 2.0 * 1.645 * 4.19).abs() < 0.7,
        "{band:?}"
    );
    assert_eq!(band.widest(), Some(Unknown::PipeExpansion));
    let by_hand = [
        (Unknown::PipeExpansion, 2.69),
        (Unknown::Modulus, 2.52),
        (Unknown::Temperature, 1.63),
        (Unknown::Model, 1.02),
        (Unknown::ChargePressure, 0.55),
    ];
    for ((unknown, part), (expected, psi)) in band.causes.iter().zip(by_hand) {
        assert_eq!(*unknown, expected);
        let share: f64 = psi * psi / (4.19 * 4.19);
        assert!((part - share).abs() < 0.01, "{unknown:?} {part} {share}");
    }
}
