//! Callbacks per system and year, by group.

use super::DAYS_IN_YEAR;
use crate::fleet::statistics::{Interval, poisson_rate};
use crate::fleet::{Dimension, Filter, Fleet};
use std::collections::BTreeMap;

/// Callbacks of a group of systems.
#[derive(Clone, PartialEq, Debug)]
pub struct RateFigure {
    /// The group.
    pub group: u32,
    /// Its systems with a day of commissioning.
    pub systems: usize,
    /// Years that these were in service, together, within the period.
    pub years: f64,
    /// Their callbacks in that time.
    pub callbacks: usize,
    /// Callbacks per system and year; none without time in service.
    pub rate: Option<f64>,
    /// Its exact interval, callbacks taken as independent.
    pub interval: Option<Interval>,
}

#[derive(Default)]
struct Sum {
    systems: usize,
    days: i64,
    callbacks: usize,
}

/// Rates of every group of every dimension, in one pass.
#[must_use]
pub fn rates(fleet: &Fleet, filter: &Filter) -> Vec<(Dimension, Vec<RateFigure>)> {
    let dimensions: Vec<Dimension> = Dimension::all().collect();
    let mut sums: Vec<BTreeMap<u32, Sum>> = dimensions.iter().map(|_| BTreeMap::new()).collect();
    if let Some(last) = filter.to.or(fleet.last_day) {
        for (system, visits) in fleet.by_system() {
            let Some(started) = system.started.filter(|_| filter.system(system)) else {
                continue;
            };
            let begin = filter.from.map_or(started, |from| from.max(started));
            let days = i64::from((last - begin).max(0));
            let counts = visits.iter().filter(|visit| {
                let day = visit.day.is_some_and(|day| (begin..=last).contains(&day));
                visit.callback && day && filter.visit(fleet, visit)
            });
            let callbacks = counts.count();
            for (dimension, sums) in dimensions.iter().zip(&mut sums) {
                if let Some(group) = dimension.group(system) {
                    let sum = sums.entry(group).or_default();
                    sum.systems += 1;
                    sum.days += days;
                    sum.callbacks += callbacks;
                }
            }
        }
    }
    let figures = sums.into_iter().map(|sums| {
        sums.into_iter()
            .map(|(group, sum)| {
                let years = sum.days as f64 / DAYS_IN_YEAR;
                RateFigure {
                    group,
                    systems: sum.systems,
                    years,
                    callbacks: sum.callbacks,
                    rate: (sum.days > 0).then(|| sum.callbacks as f64 / years),
                    interval: poisson_rate(sum.callbacks, years),
                }
            })
            .collect()
    });
    dimensions.into_iter().zip(figures).collect()
}
