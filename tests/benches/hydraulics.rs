//! Times of the network solver, of the purge plan and of the pressure to leave.
//!
//! After the benchmarks the same networks are solved by EPANET, if a Python with
//! the packages of `reference/requirements.txt` is named in `RETURNLINE_PYTHON`,
//! and the ratios of the medians are printed: above one, EPANET takes longer. What
//! of EPANET is timed stands in `reference/epanet_time.py`.

use criterion::Criterion;
use returnline_core::fluids::{Fluid, FluidKind};
use returnline_core::hydraulics::component::FluidState;
use returnline_core::hydraulics::elastic::Axial;
use returnline_core::hydraulics::friction::FrictionLaw;
use returnline_core::hydraulics::network::ground_loop::{Circuit, LoopField, ReturnPath, Run};
use returnline_core::hydraulics::pipe::PipeSeries;
use returnline_core::hydraulics::pump::PumpCurve;
use returnline_core::hydraulics::purge::{Cart, PurgeRules, plan};
use returnline_core::pressure::balance::{PlasticPart, SealedLoop};
use returnline_core::pressure::belief::{Belief, Charge, Moment, Surround, Unknowns};
use returnline_core::pressure::leave::{Demand, Today};
use returnline_core::pressure::modulus::Resin;
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{
    AbsolutePressure, Duration, Fraction, GaugePressure, Length, Number, Quantity, Temperature,
    Volume, VolumeFlow,
};
use returnline_tests::networks::{ReadNetwork, read_networks};
use std::hint::black_box;
use std::time::Instant;

fn run(series: PipeSeries, nominal: &str, metres: f64) -> Run {
    Run {
        pipe: series.pipe(nominal, 11.0).expect("a listed size"),
        length: Length::from_si(metres),
        fittings: Number::from_si(1.5),
    }
}

/// Forty unequal circuits on stepped headers, and a cart too small for all at once.
fn forty_circuits() -> (LoopField, Cart, FluidState) {
    let header = |i: u32| if i < 20 { "3" } else { "2" };
    let headers = || {
        (0..40)
            .map(|i| run(PipeSeries::IpsPolyethylene, header(i), 4.0))
            .collect()
    };
    let field = LoopField {
        circuits: (0..40)
            .map(|i| Circuit {
                run: run(
                    PipeSeries::IpsPolyethylene,
                    "3/4",
                    90.0 + 7.0 * f64::from(i * 17 % 40),
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
fn charge() -> (Belief, Demand, Today) {
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
        most: psi(70.0),
        limit_today: psi(100.0),
        moments: seasons
            .map(|(days, c)| Moment {
                elapsed: Duration::from_si(86_400.0 * days),
                temperature: warm(c, 5.0),
            })
            .to_vec(),
    };
    (belief.expect("a sealed loop"), demand, today)
}

fn median(mut samples: Vec<f64>) -> f64 {
    samples.sort_by(f64::total_cmp);
    samples[samples.len() / 2]
}

/// Seconds of a solution of a network that has been solved before.
fn again(network: &ReadNetwork) -> f64 {
    let sample = || {
        let start = Instant::now();
        for _ in 0..20 {
            black_box(black_box(&network.network).solve().expect("a solution"));
        }
        start.elapsed().as_secs_f64() / 20.0
    };
    median((0..30).map(|_| sample()).collect())
}

/// Seconds of the first solution of every network, its pattern still to be found.
fn first() -> Vec<f64> {
    let mut samples: Vec<Vec<f64>> = Vec::new();
    for _ in 0..60 {
        let fresh = read_networks();
        samples.resize(fresh.len(), Vec::new());
        for (taken, network) in samples.iter_mut().zip(&fresh) {
            let start = Instant::now();
            black_box(black_box(&network.network).solve().expect("a solution"));
            taken.push(start.elapsed().as_secs_f64());
        }
    }
    samples.into_iter().map(median).collect()
}

fn ratios(networks: &[ReadNetwork]) {
    let Ok(python) = std::env::var("RETURNLINE_PYTHON") else {
        println!("RETURNLINE_PYTHON is not set: no ratios to EPANET");
        return;
    };
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/reference");
    let output = std::process::Command::new(python)
        .arg("epanet_time.py")
        .current_dir(folder)
        .output()
        .expect("Python starts");
    let times: serde_json::Value =
        serde_json::from_slice(&output.stdout).expect("one JSON object of times");
    println!("Medians, us. again: a network solved before, against ENinitH and ENrunH.");
    println!("first: pattern and all, against ENsolveH on a loaded model, at 1e-8 and at 1e-3.");
    println!("wntr: EpanetSimulator.run_sim whole, files and all, over our first.");
    println!(
        "{:<20} {:>7} {:>7} {:>6} {:>8} {:>7} {:>6} {:>7} {:>6} {:>8}",
        "network", "again", "EPANET", "ratio", "first", "1e-8", "ratio", "1e-3", "ratio", "wntr"
    );
    for (network, first) in networks.iter().zip(first()) {
        let epanet = |kind: &str| times[&network.name][kind].as_f64().expect("a time");
        let again = again(network);
        println!(
            "{:<20} {:>7.1} {:>7.1} {:>6.2} {:>8.1} {:>7.1} {:>6.2} {:>7.1} {:>6.2} {:>8.0}",
            network.name,
            1e6 * again,
            1e6 * epanet("again"),
            epanet("again") / again,
            1e6 * first,
            1e6 * epanet("solve"),
            epanet("solve") / first,
            1e6 * epanet("default"),
            epanet("default") / first,
            epanet("wntr") / first,
        );
    }
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args();
    let networks = read_networks();
    let mut group = criterion.benchmark_group("network");
    for network in &networks {
        group.bench_function(&network.name, |b| b.iter(|| network.network.solve()));
    }
    group.finish();
    let (field, cart, water) = forty_circuits();
    let rules = PurgeRules::default();
    criterion.bench_function("purge plan of 40 circuits", |b| {
        b.iter(|| plan(&field, &cart, rules, water, FrictionLaw::default()));
    });
    let (belief, demand, today) = charge();
    criterion.bench_function("pressure to leave", |b| {
        b.iter(|| belief.leave(&demand, &today));
    });
    criterion.final_summary();
    ratios(&networks);
}
