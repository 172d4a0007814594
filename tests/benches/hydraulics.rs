//! Times of the network solver, of the purge plan and of the pressure to leave.
//!
//! After the benchmarks the same networks are solved by EPANET, if a Python with
//! the packages of `reference/requirements.txt` is named in `RETURNLINE_PYTHON`,
//! and the ratios of the medians are printed: above one, EPANET takes longer. What
//! of EPANET is timed stands in `reference/epanet_time.py`.

use criterion::Criterion;
use returnline_core::hydraulics::friction::FrictionLaw;
use returnline_core::hydraulics::purge::{PurgeRules, plan};
use returnline_tests::loops::{charge, field_of};
use returnline_tests::networks::{ReadNetwork, read_networks};
use std::hint::black_box;
use std::time::Instant;

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
    let (field, cart, water) = field_of(40);
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
