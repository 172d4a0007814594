use super::*;
use crate::fluids::Fluid;
use crate::hydraulics::component::LossCurve;
use crate::hydraulics::elastic;
use crate::hydraulics::network::ground_loop::{Circuit, ReturnPath, Run};
use crate::hydraulics::pipe::PipeSeries;
use crate::hydraulics::pump::PumpCurve;
use crate::uncertainty::Uncertain;
use crate::units::{
    AbsolutePressure, Area, Fraction, GaugePressure, Modulus, PressureDifference, Temperature,
};

const GALLON: f64 = 3.785_411_784e-3;
const PSI: f64 = 6_894.757_293_168;

fn water() -> FluidState {
    FluidState::of(Fluid::WATER, Temperature::from_celsius(12.0)).unwrap()
}
fn run(series: PipeSeries, nominal: &str, metres: f64) -> Run {
    Run {
        pipe: series.pipe(nominal, 11.0).unwrap(),
        length: Length::from_si(metres),
        fittings: Number::from_si(1.5),
    }
}
fn field(lengths: &[f64], header: &str) -> LoopField {
    let headers = || {
        lengths
            .iter()
            .map(|_| run(PipeSeries::IpsPolyethylene, header, 3.0))
            .collect()
    };
    LoopField {
        circuits: lengths
            .iter()
            .map(|metres| Circuit {
                run: run(PipeSeries::IpsPolyethylene, "3/4", *metres),
                blocked: Fraction::from_si(0.0),
                open: true,
            })
            .collect(),
        supply: headers(),
        returns: headers(),
        path: ReturnPath::Direct,
    }
}
fn cart(scale: f64) -> Cart {
    let points = [(0.0, 40.0), (2e-3, 30.0), (4e-3, 10.0)]
        .map(|(q, h)| (VolumeFlow::from_si(q * scale), Length::from_si(h)));
    let filter = [(VolumeFlow::from_si(2e-3), PressureDifference::from_si(1e4))];
    Cart {
        pump: PumpCurve::through(&points).unwrap(),
        speed: Number::ONE,
        hoses: [run(PipeSeries::Hose, "1 1/2", 6.0); 2],
        filter: Some(LossCurve::through(&filter, water()).unwrap()),
    }
}
fn make(field: &LoopField, cart: &Cart) -> PurgePlan {
    plan(
        field,
        cart,
        PurgeRules::default(),
        water(),
        FrictionLaw::default(),
    )
    .unwrap()
}

#[test]
fn a_large_cart_does_it_at_once_and_a_small_one_in_groups() {
    let field = field(&[120.0, 150.0, 180.0, 140.0], "1 1/4");
    let large = make(&field, &cart(1.0));
    assert_eq!(large.stages.len(), 1);
    assert!(large.all_open.ratio.si() >= 1.0);
    // The last header section sees one circuit's flow in a 1 1/4 in pipe and decides.
    assert!(matches!(
        large.controlling,
        Section::Supply(3) | Section::Return(3)
    ));
    let small = make(&field, &cart(0.2));
    assert!(small.stages.len() > 1 && small.stages.len() <= 4);
    assert_eq!(small.fewest_possible, small.stages.len());
    let mut open: Vec<usize> = small.stages.iter().flat_map(|s| s.open.clone()).collect();
    open.sort_unstable();
    assert_eq!(open, [0, 1, 2, 3]);
    for stage in &small.stages {
        assert!(stage.ratio.si() >= 1.0 - 1e-9);
        assert!(stage.duration.si() >= 900.0);
    }
    let whole: f64 = small.stages.iter().map(|s| s.duration.si()).sum();
    assert!(whole >= 7_200.0 - 1e-6);
}

#[test]
fn the_needed_flow_makes_the_deciding_section_just_pass() {
    let field = field(&[120.0, 150.0, 180.0], "1");
    let plan = make(&field, &cart(1.0));
    let decides = plan
        .sections
        .iter()
        .find(|s| s.section == plan.controlling)
        .unwrap();
    // A cart whose operating point is that flow reaches just the velocity.
    let exact = PumpCurve::through(&[
        (VolumeFlow::from_si(0.0), plan.needed_head * 2.0),
        (plan.needed_flow, plan.needed_head),
        (plan.needed_flow * 2.0, Length::from_si(0.0)),
    ]);
    let mut fitting = cart(1.0);
    fitting.pump = exact.unwrap();
    let again = make(&field, &fitting);
    let reached = again
        .sections
        .iter()
        .find(|s| s.section == plan.controlling)
        .unwrap();
    assert!(
        (reached.all_open.si() / 0.6096 - 1.0).abs() < 1e-6,
        "{reached:?} {decides:?}"
    );
}

#[test]
fn large_headers_warn_and_hopeless_circuits_are_named() {
    let field = field(&[100.0, 110.0, 3_000.0], "3");
    let plan = make(&field, &cart(0.4));
    assert!(
        plan.sections
            .iter()
            .any(|s| s.froude.is_some_and(|v| v.si() > 0.7))
    );
    assert!(plan.short.contains(&Section::Circuit(2)));
    assert!(plan.short.contains(&Section::Supply(0)));
}

#[test]
fn forty_unequal_circuits_have_a_plan_near_the_bound() {
    let lengths: Vec<f64> = (0..40)
        .map(|i| 90.0 + 7.0 * f64::from(i * 17 % 40))
        .collect();
    let field = field(&lengths, "2");
    let plan = make(&field, &cart(0.8));
    let open: usize = plan.stages.iter().map(|s| s.open.len()).sum();
    assert_eq!(open, 40);
    assert!(plan.stages.iter().all(|s| s.ratio.si() >= 1.0 - 1e-9));
    assert!(
        plan.stages.len() <= plan.fewest_possible + 1,
        "{} {}",
        plan.stages.len(),
        plan.fewest_possible
    );
}

fn example() -> DeadHeadTest {
    let exact = |gallons: f64| Uncertain::exact(Volume::from_si(gallons * GALLON));
    DeadHeadTest {
        tank: TankStep {
            drop: Uncertain::within(Length::from_si(2.0 * 0.0254), 0.003),
            area: Uncertain::exact(Area::from_si(0.34 * GALLON / 0.0254)),
        },
        pipes: vec![PipeVolume {
            volume: exact(100.0),
            diameter_ratio: Some(Number::from_si(11.0)),
        }],
        before: Uncertain::exact(GaugePressure::from_si(10.0 * PSI)),
        after: Uncertain::exact(GaugePressure::from_si(50.0 * PSI)),
        atmosphere: AbsolutePressure::standard_atmosphere(),
        fluid: Fluid::WATER,
        temperature: Temperature::from_celsius(23.0),
        modulus: Uncertain::exact(Modulus::from_si(110e3 * PSI)),
        poisson: Uncertain::exact(Number::from_si(0.45)),
        freedom: Uncertain::exact(Fraction::from_si(1.0)),
        allowed_air: Fraction::from_si(ALLOWED_AIR),
    }
}

/// By hand: k² = (11/9)² = 1.493 8; growth per pressure 9.380/E free and
/// 9.360/E held, 9.370/110 000 psi = 8.518e-5 /psi; over 40 psi and 100 gal
/// 0.341 gal. Water: 4.53e-10 /Pa over 275.8 kPa, 0.012 gal. Air
/// (0.68 - 0.353)/(1 - 24.696/64.696) = 0.529 gal. The thin-wall rule
/// 0.80 (SDR - 1)/E would give 0.29 gal of stretch, a seventh too little.
#[test]
fn the_worked_example_of_the_dead_head_test() {
    let result = dead_head(&example()).unwrap();
    let gallons = |v: Uncertain<Volume>| v.value().si() / GALLON;
    assert!((gallons(result.displaced) - 0.68).abs() < 1e-9);
    assert!((gallons(result.stretch) - 0.353_2).abs() < 5e-4);
    assert!((gallons(result.air) - 0.528_6).abs() < 1e-3, "{result:?}");
    assert!(result.air.standard() > 0.0 && result.probability_of_air > 0.99);
    assert!(result.pass_limit.value() > result.drop_without_air.value());
    let thin = 0.80 * 10.0 / 110e3 * 40.0 * 100.0;
    assert!((thin / gallons(result.stretch) - 0.83).abs() < 0.02);
}

#[test]
fn no_air_gives_the_stretch_alone_and_no_rise_gives_no_answer() {
    let mut test = example();
    let stretch_only = dead_head(&test).unwrap().drop_without_air.value();
    test.tank.drop = Uncertain::exact(stretch_only);
    assert!(dead_head(&test).unwrap().air.value().si().abs() < 1e-9);
    test.after = test.before;
    assert_eq!(dead_head(&test), Err(DeadHeadError::NoRise));
    test = example();
    test.modulus = elastic::short_term_modulus(Temperature::from_celsius(10.0)).unwrap();
    assert!(
        dead_head(&test).unwrap().air.standard() > dead_head(&example()).unwrap().air.standard()
    );
}
