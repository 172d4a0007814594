//! Invented loops to be measured.

use returnline_core::fluids::{Fluid, FluidKind};
use returnline_core::hydraulics::component::FluidState;
use returnline_core::hydraulics::elastic::Axial;
use returnline_core::hydraulics::network::ground_loop::{Circuit, LoopField, ReturnPath, Run};
use returnline_core::hydraulics::pipe::PipeSeries;
use returnline_core::hydraulics::pump::PumpCurve;
use returnline_core::hydraulics::purge::Cart;
use returnline_core::pressure::balance::{PlasticPart, SealedLoop};
use returnline_core::pressure::belief::{Belief, Charge, Moment, Surround, Unknowns};
use returnline_core::pressure::leave::{Demand, Today};
use returnline_core::pressure::modulus::Resin;
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{
    AbsolutePressure, Duration, Fraction, GaugePressure, Length, Number, Quantity, Temperature,
    Volume, VolumeFlow,
};

#[allow(clippy::expect_used)] // a size of the table of pipes
fn run(series: PipeSeries, nominal: &str, metres: f64) -> Run {
    Run {
        pipe: series.pipe(nominal, 11.0).expect("a listed size"),
        length: Length::from_si(metres),
        fittings: Number::from_si(1.5),
    }
}

/// Unequal circuits on stepped headers, and a cart too small for many at once.
///
/// # Panics
/// Never: all values are in range.
#[must_use]
#[allow(clippy::expect_used)]
pub fn field_of(circuits: u32) -> (LoopField, Cart, FluidState) {
    let header = |i: u32| if i < circuits / 2 { "3" } else { "2" };
    let headers = || {
        (0..circuits)
            .map(|i| run(PipeSeries::IpsPolyethylene, header(i), 4.0))
            .collect()
    };
    let field = LoopField {
        circuits: (0..circuits)
            .map(|i| Circuit {
                run: run(
                    PipeSeries::IpsPolyethylene,
                    "3/4",
                    90.0 + 7.0 * f64::from(i * 17 % circuits),
                ),
                blocked: Fraction::from_si(0.0),
                open: true,
            })
            .collect(),
        supply: headers(),
        returns: headers(),
        path: ReturnPath::Direct,
    };
    let points = [(0.0, 40.0), (1.6e-3, 30.0), (3.2e-3, 10.0)]
        .map(|(q, h)| (VolumeFlow::from_si(q), Length::from_si(h)));
    let cart = Cart {
        pump: PumpCurve::through(&points).expect("a falling curve"),
        speed: Number::ONE,
        hoses: [run(PipeSeries::Hose, "1 1/2", 6.0); 2],
        filter: None,
    };
    let water = FluidState::of(Fluid::WATER, Temperature::from_celsius(12.0));
    (field, cart, water.expect("water at 12 °C"))
}

/// A glycol loop to be left for four seasons, as a work plan asks.
///
/// # Panics
/// Never: all values are in range.
#[must_use]
#[allow(clippy::expect_used)]
pub fn charge() -> (Belief, Demand, Today) {
    let psi = |p: f64| GaugePressure::from_si(6_894.757 * p);
    let warm = |c, doubt| Uncertain::new(Temperature::from_celsius(c), doubt);
    let system = SealedLoop {
        plastic: vec![PlasticPart {
            volume: Volume::from_si(0.4),
            ratio: Number::from_si(11.0),
        }],
        rigid: Volume::from_si(0.01),
        resin: Resin::Pe4xxx,
        axial: Axial::Held,
        fluid: Fluid::new(FluidKind::PropyleneGlycol, Fraction::from_si(0.22)).expect("a loop"),
        atmosphere: AbsolutePressure::standard_atmosphere(),
        vessel: None,
    };
    let today = Today {
        temperature: warm(10.0, 2.0),
        held: Duration::from_si(1_800.0),
        gauge: 7e3,
        earlier: None,
    };
    let charge = Charge {
        pressure: Uncertain::new(psi(50.0), today.gauge),
        temperature: today.temperature,
        held: today.held,
        air: None,
        earlier: None,
    };
    let belief = Belief::prior(system, Unknowns::typical(Surround::Trench), charge);
    let seasons = [(182.0, 4.0), (182.0, 23.0), (1_826.0, 4.0), (1_826.0, 23.0)];
    let demand = Demand {
        least: psi(15.0),
        bare: None,
        stands: None,
        keep: false,
        most: psi(70.0),
        limit_today: psi(100.0),
        ceiling: psi(100.0),
        moments: seasons
            .map(|(days, c)| Moment {
                elapsed: Duration::from_si(86_400.0 * days),
                temperature: warm(c, 5.0),
            })
            .to_vec(),
    };
    (belief.expect("a sealed loop"), demand, today)
}
