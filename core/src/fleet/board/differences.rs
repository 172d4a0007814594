//! Which groups of systems had a cause more often than the others.
//!
//! Counted are systems, not visits, and each only over the same number of days
//! from its commissioning, so that older systems do not seem worse. Each group is
//! held against all others of its dimension together; one bad crew makes every
//! other look better than the rest, so only the worse side is ever told, and a
//! better one enters the control of false discoveries as if nothing had been seen.
//!
//! The comparisons depend on each other, and not only positively: what one group
//! has too many, the others of its dimension have too few. The control is therefore
//! the one that holds for any dependence.

use crate::fleet::statistics::{Interval, TwoByTwo, adjusted_dependent};
use crate::fleet::{Dimension, Filter, Fleet};
use std::collections::BTreeMap;

/// Fewest systems on either side of a comparison (judgement).
pub(super) const FEWEST_SYSTEMS: usize = 10;
/// Fewest systems with the cause, both sides together (judgement).
const FEWEST_CASES: usize = 5;
/// Expected share of false ones among the differences told.
const FALSE_SHARE: f64 = 0.05;
/// The least ratio worth telling: its whole interval must lie above (judgement;
/// in a large fleet a ratio of 1.03 can be certain and still be of no use).
pub const MINIMUM_RATIO: f64 = 1.2;

/// A group with a cause more often than the others.
#[derive(Clone, PartialEq, Debug)]
pub struct Difference {
    /// By what systems are grouped.
    pub dimension: Dimension,
    /// The group.
    pub group: u32,
    /// The cause.
    pub cause: u32,
    /// Systems of the group with and without, of the others with and without.
    pub table: TwoByTwo,
    /// Share of the group over share of the others; may be infinite.
    pub ratio: f64,
    /// Its interval, if every part of it exists.
    pub interval: Option<Interval>,
    /// p of the exact test.
    pub p: f64,
    /// p after control of false discoveries.
    pub adjusted: f64,
}

impl Difference {
    fn is_told(&self) -> bool {
        self.is_discovered() && self.interval.is_none_or(|ends| ends.low >= MINIMUM_RATIO)
    }
    fn is_discovered(&self) -> bool {
        self.adjusted <= FALSE_SHARE
    }
}

/// What was compared and what came of it.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Compared {
    /// Systems that could be compared.
    pub systems: usize,
    /// Systems commissioned too lately, or on an unknown day.
    pub left_out: usize,
    /// Comparisons made.
    pub tests: usize,
    /// Comparisons for which the numbers were too few.
    pub too_few: usize,
    /// Comparisons that pass the control of false discoveries.
    pub discovered: usize,
    /// Those of them that are large enough to tell, the surest first.
    pub told: Vec<Difference>,
}

#[derive(Default)]
struct Count {
    systems: usize,
    cases: BTreeMap<u32, usize>,
}

impl Count {
    fn add(&mut self, causes: &[u32]) {
        self.systems += 1;
        for cause in causes {
            *self.cases.entry(*cause).or_default() += 1;
        }
    }
    fn with(&self, cause: u32) -> usize {
        self.cases.get(&cause).copied().unwrap_or(0)
    }
}

/// What systems are compared by: all that is decided at commissioning. The year
/// is no practice.
fn dimensions() -> Vec<Dimension> {
    Dimension::all()
        .filter(|dimension| *dimension != Dimension::Year)
        .collect()
}

/// Compares every group of every dimension for every cause, over the first
/// `watch` days from commissioning.
#[must_use]
pub fn differences(fleet: &Fleet, filter: &Filter, watch: i32) -> Compared {
    let dimensions = dimensions();
    let mut groups: Vec<BTreeMap<u32, Count>> =
        dimensions.iter().map(|_| BTreeMap::new()).collect();
    let mut compared = Compared::default();
    let Some(last) = fleet.last_day else {
        return compared;
    };
    let mut causes = Vec::new();
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        let Some(started) = system.started.filter(|day| last - day >= watch) else {
            compared.left_out += 1;
            continue;
        };
        compared.systems += 1;
        causes.clear();
        for visit in visits {
            let early = |day: i32| (0..=watch).contains(&(day - started));
            if visit.day.is_some_and(early) {
                causes.extend_from_slice(fleet.causes(visit));
            }
        }
        causes.sort_unstable();
        causes.dedup();
        for (dimension, groups) in dimensions.iter().zip(&mut groups) {
            if let Some(group) = dimension.group(system) {
                groups.entry(group).or_default().add(&causes);
            }
        }
    }
    let mut found = Vec::new();
    for (dimension, groups) in dimensions.iter().zip(&groups) {
        compare(*dimension, groups, filter.cause, &mut found, &mut compared);
    }
    let p: Vec<f64> = found.iter().map(|one| one.p).collect();
    for (one, adjusted) in found.iter_mut().zip(adjusted_dependent(&p)) {
        one.adjusted = adjusted;
    }
    compared.tests = found.len();
    compared.discovered = found.iter().filter(|one| one.is_discovered()).count();
    found.retain(Difference::is_told);
    found.sort_by(|a, b| a.p.total_cmp(&b.p));
    compared.told = found;
    compared
}

fn compare(
    dimension: Dimension,
    groups: &BTreeMap<u32, Count>,
    only: Option<u32>,
    found: &mut Vec<Difference>,
    compared: &mut Compared,
) {
    let mut all = Count::default();
    for count in groups.values() {
        all.systems += count.systems;
        for (cause, cases) in &count.cases {
            *all.cases.entry(*cause).or_default() += cases;
        }
    }
    // Of two groups one is the mirror of the other: one test.
    let mirrored = groups.len() == 2;
    for (cause, cases) in &all.cases {
        if only.is_some_and(|only| only != *cause) {
            continue;
        }
        let mut tests: Vec<Difference> = Vec::new();
        for (group, count) in groups {
            let others = all.systems - count.systems;
            if count.systems < FEWEST_SYSTEMS || others < FEWEST_SYSTEMS || *cases < FEWEST_CASES {
                compared.too_few += 1;
                continue;
            }
            let with = count.with(*cause);
            let table = TwoByTwo {
                with,
                without: count.systems - with,
                other_with: cases - with,
                other_without: others - (cases - with),
            };
            let ratio = table.risk_ratio().unwrap_or(1.0);
            tests.push(Difference {
                dimension,
                group: *group,
                cause: *cause,
                table,
                ratio,
                interval: table.risk_interval(),
                p: if ratio > 1.0 { table.fisher() } else { 1.0 },
                adjusted: 1.0,
            });
        }
        if mirrored {
            tests.sort_by(|a, b| b.ratio.total_cmp(&a.ratio));
            tests.truncate(1);
        }
        found.append(&mut tests);
    }
}
