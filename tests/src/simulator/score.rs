//! How good the answers were.

use super::trial::Outcome;
use std::collections::BTreeMap;

/// Causes that are put right by the same work, so that a technician who treats
/// the one treats the other. The headline figures do not use it.
pub const SAME_CORRECTION: &[&[&str]] = &[
    &[
        "air-left-in-circuit",
        "flush-too-weak",
        "circuit-air-locked",
    ],
    &["exchanger-loaded", "unit-not-isolated-in-flush"],
    &[
        "charge-left-too-low",
        "charged-cold-without-allowance",
        "pipe-never-relaxed",
    ],
    &["loop-too-short", "ground-conducts-poorly"],
    &["reservoir-low", "reservoir-draws-air"],
    &["three-way-valve-mis-set", "isolation-valve-part-closed"],
    &[
        "refrigerant-undercharge",
        "expansion-device-fault",
        "compressor-or-reversing-valve-weak",
    ],
    &["control-fault", "flow-switch-or-sensor-fault"],
];

/// Figures of a set of faulty calls.
#[derive(Copy, Clone, PartialEq, Debug, Default)]
pub struct Score {
    /// Calls.
    pub calls: usize,
    /// Share whose fault stands first.
    pub first: f64,
    /// Share whose fault, or one of the same correction, stands first.
    pub same_correction: f64,
    /// Share whose fault is the most probable fault, ordinary behaviours left out.
    pub first_fault: f64,
    /// Share whose fault is among the first three.
    pub among_three: f64,
    /// Brier score of the probability of the first against its being right.
    pub brier: f64,
    /// Expected calibration error of the same, ten bins of equal width.
    pub calibration: f64,
    /// Mean probability of the first.
    pub confidence: f64,
    /// Share called healthy.
    pub called_healthy: f64,
    /// Share in which one cause reached 90 %.
    pub reached: f64,
    /// Of those, share in which it was the right one.
    pub reached_right: f64,
    /// Mean number of checks until then.
    pub checks: f64,
}

fn place(outcome: &Outcome) -> usize {
    outcome
        .ranked
        .iter()
        .position(|(cause, _)| cause == outcome.fault)
        .unwrap_or(usize::MAX)
}

/// Whether the two are put right by the same work.
#[must_use]
pub fn alike(a: &str, b: &str) -> bool {
    a == b
        || SAME_CORRECTION
            .iter()
            .any(|group| group.contains(&a) && group.contains(&b))
}

impl Score {
    /// Of faulty calls.
    #[must_use]
    pub fn of<'a>(outcomes: impl IntoIterator<Item = &'a Outcome>) -> Self {
        let all: Vec<&Outcome> = outcomes.into_iter().collect();
        if all.is_empty() {
            return Self::default();
        }
        let share = |is: &dyn Fn(&Outcome) -> bool| {
            all.iter().filter(|outcome| is(outcome)).count() as f64 / all.len() as f64
        };
        let top = |outcome: &Outcome| outcome.ranked.first().map_or(0.0, |(_, p)| *p);
        let mean = |f: &dyn Fn(&Outcome) -> f64| {
            all.iter().map(|outcome| f(outcome)).sum::<f64>() / all.len() as f64
        };
        let right = |outcome: &Outcome| f64::from(u8::from(place(outcome) == 0));
        let arrived: Vec<(usize, bool)> = all.iter().filter_map(|o| o.reached).collect();
        let of_arrived = |f: &dyn Fn(&(usize, bool)) -> f64| {
            arrived.iter().map(f).sum::<f64>() / arrived.len().max(1) as f64
        };
        Self {
            calls: all.len(),
            first: share(&|outcome| place(outcome) == 0),
            same_correction: share(&|outcome| {
                let first = outcome.ranked.first();
                first.is_some_and(|(cause, _)| alike(cause, outcome.fault))
            }),
            first_fault: share(&|outcome| outcome.first_fault.as_deref() == Some(outcome.fault)),
            among_three: share(&|outcome| place(outcome) < 3),
            brier: mean(&|outcome| (top(outcome) - right(outcome)).powi(2)),
            calibration: calibration_error(
                all.iter()
                    .map(|outcome| (top(outcome), place(outcome) == 0)),
            ),
            confidence: mean(&top),
            called_healthy: share(&|outcome| outcome.called_healthy),
            reached: arrived.len() as f64 / all.len() as f64,
            reached_right: of_arrived(&|(_, right)| f64::from(u8::from(*right))),
            checks: of_arrived(&|(checks, _)| *checks as f64),
        }
    }
}

/// Expected calibration error: ten bins of equal width, the distance of mean
/// probability and share right in each, weighted by how many fall into it.
#[must_use]
pub fn calibration_error(pairs: impl IntoIterator<Item = (f64, bool)>) -> f64 {
    let mut bins = [(0.0, 0.0, 0.0_f64); 10];
    for (probability, right) in pairs {
        let bin = &mut bins[((probability * 10.0) as usize).min(9)];
        bin.0 += probability;
        bin.1 += f64::from(u8::from(right));
        bin.2 += 1.0;
    }
    let all: f64 = bins.iter().map(|bin| bin.2).sum();
    bins.iter().map(|bin| (bin.0 - bin.1).abs()).sum::<f64>() / all.max(1.0)
}

/// The calibration table: bin, calls, mean probability, share right.
#[must_use]
pub fn reliability(outcomes: &[Outcome]) -> Vec<(usize, usize, f64, f64)> {
    let mut bins = [(0.0, 0.0, 0_usize); 10];
    for outcome in outcomes {
        let top = outcome.ranked.first().map_or(0.0, |(_, p)| *p);
        let bin = &mut bins[((top * 10.0) as usize).min(9)];
        bin.0 += top;
        bin.1 += f64::from(u8::from(place(outcome) == 0));
        bin.2 += 1;
    }
    (0..10)
        .filter(|&at| bins[at].2 > 0)
        .map(|at| {
            let n = bins[at].2 as f64;
            (at, bins[at].2, bins[at].0 / n, bins[at].1 / n)
        })
        .collect()
}

/// Scores fault by fault, with what was taken for it most often.
#[must_use]
pub fn by_fault(outcomes: &[Outcome]) -> Vec<(&'static str, Score, String)> {
    let mut groups: BTreeMap<&'static str, Vec<&Outcome>> = BTreeMap::new();
    for outcome in outcomes {
        groups.entry(outcome.fault).or_default().push(outcome);
    }
    groups
        .into_iter()
        .map(|(fault, group)| {
            let mut taken: BTreeMap<&str, usize> = BTreeMap::new();
            for outcome in &group {
                if let Some((cause, _)) = outcome.ranked.first()
                    && cause != fault
                {
                    *taken.entry(cause).or_default() += 1;
                }
            }
            let mut taken: Vec<_> = taken.into_iter().collect();
            taken.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
            let words: Vec<String> = taken
                .iter()
                .take(2)
                .map(|(cause, count)| format!("{cause} {count}"))
                .collect();
            (fault, Score::of(group), words.join(", "))
        })
        .collect()
}
