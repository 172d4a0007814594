//! Dead-head test against an independent calculation with the package
//! `uncertainties` (table and generator under `reference/`).

use returnline_core::fluids::Fluid;
use returnline_core::hydraulics::purge::{DeadHeadTest, PipeVolume, TankStep, dead_head};
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{
    AbsolutePressure, Area, Fraction, GaugePressure, Length, Modulus, Number, Quantity,
    Temperature, Volume,
};
use returnline_tests::rows;

#[test]
fn air_and_its_uncertainty_agree() {
    let mut seen = 0;
    for row in rows(include_str!("../reference/tables/dead_head.csv")) {
        let c: Vec<f64> = row.iter().map(|cell| cell.parse().unwrap()).collect();
        fn value<Q: Quantity>(c: &[f64], at: usize) -> Uncertain<Q> {
            Uncertain::new(Q::from_si(c[at]), c[at + 1])
        }
        let test = DeadHeadTest {
            tank: TankStep {
                drop: value::<Length>(&c, 0),
                area: value::<Area>(&c, 2),
            },
            pipes: vec![PipeVolume {
                volume: value::<Volume>(&c, 4),
                diameter_ratio: Some(Number::from_si(c[6])),
            }],
            before: value::<GaugePressure>(&c, 7),
            after: value::<GaugePressure>(&c, 9),
            atmosphere: AbsolutePressure::standard_atmosphere(),
            fluid: Fluid::WATER,
            temperature: Temperature::from_celsius(10.0),
            modulus: value::<Modulus>(&c, 11),
            poisson: value::<Number>(&c, 13),
            freedom: value::<Fraction>(&c, 15),
            allowed_air: Fraction::from_si(0.002),
        };
        let result = dead_head(&test).unwrap();
        let off = result.air.value().si() - c[17];
        assert!(off.abs() < 1e-3 * c[18], "{row:?} {result:?}");
        assert!(
            (result.air.standard() / c[18] - 1.0).abs() < 1e-3,
            "{row:?} {result:?}"
        );
        seen += 1;
    }
    assert_eq!(seen, 4);
}

/// Common practice, no source: a level drop of one or two inches on an ordinary
/// residential loop. On 100 gal of SDR 11 with a 10 in tank, 10 to 50 psi, the
/// stretch of the pipe alone is about an inch: most of the rule is pipe.
#[test]
fn the_trades_inch_or_two_is_mostly_pipe() {
    const INCH: f64 = 0.0254;
    const PSI: f64 = 6_894.757_293_168;
    let gallons = |g: f64| g * 3.785_411_784e-3;
    let exact = |p: f64| Uncertain::exact(GaugePressure::from_si(p * PSI));
    let t = Temperature::from_celsius(12.0);
    let test = DeadHeadTest {
        tank: TankStep {
            drop: Uncertain::within(Length::from_si(1.5 * INCH), 0.25 * INCH),
            area: Uncertain::exact(Length::from_si(10.0 * INCH).circle()),
        },
        pipes: vec![PipeVolume {
            volume: Uncertain::relative(Volume::from_si(gallons(100.0)), 0.05),
            diameter_ratio: Some(Number::from_si(11.0)),
        }],
        before: exact(10.0),
        after: exact(50.0),
        atmosphere: AbsolutePressure::standard_atmosphere(),
        fluid: Fluid::WATER,
        temperature: t,
        modulus: returnline_core::hydraulics::elastic::short_term_modulus(t).unwrap(),
        poisson: returnline_core::hydraulics::elastic::poisson_ratio(),
        freedom: Uncertain::between(Fraction::from_si(0.7), Fraction::from_si(1.0)),
        allowed_air: Fraction::from_si(0.002),
    };
    let result = dead_head(&test).unwrap();
    let inches = result.drop_without_air.value().si() / INCH;
    assert!((0.5..1.3).contains(&inches), "{inches}");
    assert!(result.stretch.value().si() > 0.4 * result.displaced.value().si());
}
