//! Timing of our own side.

use std::time::{Duration, Instant};

/// Seconds of one piece of work, over many runs.
pub struct Timing {
    /// Lower quartile.
    pub low: f64,
    /// Median.
    pub median: f64,
    /// Upper quartile.
    pub high: f64,
}

/// The least time of a sample: far above what the clock can tell.
const SAMPLE: Duration = Duration::from_micros(500);
/// Samples that are taken if there is time.
const ENOUGH: usize = 101;
/// Samples that are taken however long it takes.
const LEAST: usize = 5;
/// Time spent on one line.
const PATIENCE: Duration = Duration::from_secs(3);

/// Runs it once to warm up and then again and again.
pub fn time<T>(mut work: impl FnMut() -> T) -> Timing {
    std::hint::black_box(work());
    let mut repeats = 1_u32;
    let mut sample = |repeats: u32| {
        let start = Instant::now();
        for _ in 0..repeats {
            std::hint::black_box(work());
        }
        start.elapsed()
    };
    while repeats < 1 << 20 && sample(repeats) < SAMPLE {
        repeats *= 2;
    }
    let begun = Instant::now();
    let mut samples = Vec::new();
    while samples.len() < LEAST || (samples.len() < ENOUGH && begun.elapsed() < PATIENCE) {
        samples.push(sample(repeats).as_secs_f64() / f64::from(repeats));
    }
    samples.sort_by(f64::total_cmp);
    let at = |part: usize| samples[(samples.len() - 1) * part / 4];
    Timing {
        low: at(1),
        median: at(2),
        high: at(3),
    }
}

/// A time with three digits and its unit.
pub fn shown(seconds: f64) -> String {
    let (value, unit) = match seconds {
        s if s < 1e-6 => (s * 1e9, "ns"),
        s if s < 1e-3 => (s * 1e6, "us"),
        s if s < 1.0 => (s * 1e3, "ms"),
        s => (s, "s"),
    };
    let digits = match value {
        v if v < 9.995 => 2,
        v if v < 99.95 => 1,
        _ => 0,
    };
    format!("{value:.digits$} {unit}")
}
