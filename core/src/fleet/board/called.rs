//! How many systems were called back soon after commissioning, by group.

use super::differences::FEWEST_SYSTEMS;
use super::watched;
use crate::fleet::statistics::{Interval, TwoByTwo, adjusted_dependent, wilson};
use crate::fleet::{Dimension, Filter, Fleet};
use std::collections::BTreeMap;

/// Systems of a group that were called back within the watched days.
#[derive(Clone, PartialEq, Debug)]
pub struct CalledFigure {
    /// The group.
    pub group: u32,
    /// Its systems that were watched over the whole time.
    pub systems: usize,
    /// Of these, with a callback in that time.
    pub called: usize,
    /// Interval of the share.
    pub interval: Option<Interval>,
    /// p of the exact test against all other groups of the dimension, adjusted
    /// for all groups of all dimensions; none where the numbers are too few.
    pub adjusted: Option<f64>,
}

/// Systems called back within the first `watch` days from commissioning, by
/// every group of every dimension. Systems commissioned later are left out, so
/// that older groups do not seem worse. With a cause in the filter only callbacks
/// with that cause count.
#[must_use]
pub fn called(fleet: &Fleet, filter: &Filter, watch: i32) -> Vec<(Dimension, Vec<CalledFigure>)> {
    let dimensions: Vec<Dimension> = Dimension::all().collect();
    let mut counts: Vec<BTreeMap<u32, (usize, usize)>> =
        dimensions.iter().map(|_| BTreeMap::new()).collect();
    for (system, _, called) in watched(fleet, filter, watch) {
        for (dimension, counts) in dimensions.iter().zip(&mut counts) {
            if let Some(group) = dimension.group(system) {
                let count = counts.entry(group).or_default();
                count.0 += 1;
                count.1 += usize::from(called);
            }
        }
    }
    let mut figures: Vec<(Dimension, Vec<CalledFigure>)> = dimensions
        .into_iter()
        .zip(counts)
        .map(|(dimension, counts)| (dimension, compared(&counts)))
        .collect();
    let tested = || figures.iter().flat_map(|(_, rows)| rows);
    let p: Vec<f64> = tested().filter_map(|row| row.adjusted).collect();
    let mut adjusted = adjusted_dependent(&p).into_iter();
    for row in figures.iter_mut().flat_map(|(_, rows)| rows) {
        if row.adjusted.is_some() {
            row.adjusted = adjusted.next();
        }
    }
    figures
}

/// The groups of a dimension, each with its p as yet unadjusted.
fn compared(counts: &BTreeMap<u32, (usize, usize)>) -> Vec<CalledFigure> {
    let (all, all_called) = counts
        .values()
        .fold((0, 0), |sum, count| (sum.0 + count.0, sum.1 + count.1));
    counts
        .iter()
        .map(|(group, (systems, called))| {
            let others = all - systems;
            let table = TwoByTwo {
                with: *called,
                without: systems - called,
                other_with: all_called - called,
                other_without: others - (all_called - called),
            };
            let enough = *systems >= FEWEST_SYSTEMS && others >= FEWEST_SYSTEMS;
            CalledFigure {
                group: *group,
                systems: *systems,
                called: *called,
                interval: wilson(*called, *systems),
                adjusted: enough.then(|| table.fisher()),
            }
        })
        .collect()
}
