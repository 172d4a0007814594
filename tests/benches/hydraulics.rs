//! Times of the network solver and of the purge plan.
//!
//! After the benchmarks the same networks are solved by EPANET, if a Python with
//! the packages of `reference/requirements.txt` is named in `RETURNLINE_PYTHON`,
//! and the ratio of the medians is printed.

use criterion::Criterion;
use returnline_core::fluids::Fluid;
use returnline_core::hydraulics::component::FluidState;
use returnline_core::hydraulics::friction::FrictionLaw;
use returnline_core::hydraulics::network::ground_loop::{Circuit, LoopField, ReturnPath, Run};
use returnline_core::hydraulics::pipe::PipeSeries;
use returnline_core::hydraulics::pump::PumpCurve;
use returnline_core::hydraulics::purge::{Cart, PurgeRules, plan};
use returnline_core::units::{Fraction, Length, Number, Quantity, Temperature, VolumeFlow};
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

fn median_seconds(network: &ReadNetwork) -> f64 {
    let mut samples: Vec<f64> = (0..30)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..20 {
                black_box(black_box(&network.network).solve().expect("a solution"));
            }
            start.elapsed().as_secs_f64() / 20.0
        })
        .collect();
    samples.sort_by(f64::total_cmp);
    samples[samples.len() / 2]
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
    println!(
        "{:<22} {:>10} {:>10} {:>7}",
        "network", "own, us", "EPANET, us", "ratio"
    );
    for network in networks {
        let own = 1e6 * median_seconds(network);
        let epanet = 1e6 * times[&network.name].as_f64().expect("a time");
        println!(
            "{:<22} {own:>10.1} {epanet:>10.1} {:>7.2}",
            network.name,
            epanet / own
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
    criterion.final_summary();
    ratios(&networks);
}
