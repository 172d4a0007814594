//! The figures of the board.

mod called;
mod causes;
mod differences;
mod fixes;
mod practice;
mod rates;
mod systems;
mod waiting;

pub use called::{CalledFigure, called};
pub use causes::{CauseFigure, RepeatFigure, causes, repeated, repeats};
pub use differences::{Compared, Difference, MINIMUM_RATIO, differences};
pub use fixes::{HORIZONS, HeldFigure, fixes, held};
pub use practice::{Practice, Side, practice};
pub use rates::{RateFigure, rates};
pub use systems::{RepeatSystem, Unsettled, UnsettledSystem, repeat_systems, unsettled};
pub use waiting::{first_callback, waiting};

use super::{Filter, Fleet, SystemRow};

/// Days in a year, the mean of the Gregorian calendar.
pub const DAYS_IN_YEAR: f64 = 365.2425;

/// Whole counts of what the filter lets through.
#[derive(Copy, Clone, PartialEq, Debug, Default)]
pub struct Totals {
    /// Systems with at least one visit on record.
    pub systems: usize,
    /// Of these, with the day of commissioning.
    pub dated: usize,
    /// Of these, without any callback.
    pub quiet: usize,
    /// Visits.
    pub visits: usize,
    /// Visits because of trouble.
    pub callbacks: usize,
    /// Callbacks with a confirmed cause.
    pub explained: usize,
    /// Working time of callbacks, h.
    pub hours: f64,
    /// Cost of callbacks.
    pub cost: f64,
    /// Callbacks of which the cost is written down.
    pub priced: usize,
}

/// Counts of what the filter lets through.
#[must_use]
pub fn totals(fleet: &Fleet, filter: &Filter) -> Totals {
    let mut totals = Totals::default();
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        totals.systems += 1;
        totals.dated += usize::from(system.started.is_some());
        let mut called = false;
        for visit in visits.iter().filter(|visit| filter.visit(fleet, visit)) {
            totals.visits += 1;
            if visit.callback {
                called = true;
                totals.callbacks += 1;
                totals.explained += usize::from(!fleet.causes(visit).is_empty());
                totals.hours += visit.minutes / 60.0;
                totals.cost += visit.cost;
                totals.priced += usize::from(visit.cost > 0.0);
            }
        }
        totals.quiet += usize::from(system.started.is_some() && !called);
    }
    totals
}

/// Systems watched over the whole of their first `watch` days, each with the day
/// it was commissioned and whether it was called back in that time. With a cause
/// in the filter only callbacks with that cause count.
fn watched<'a>(
    fleet: &'a Fleet,
    filter: &'a Filter,
    watch: i32,
) -> impl Iterator<Item = (&'a SystemRow, i32, bool)> {
    fleet.by_system().filter_map(move |(system, visits)| {
        let (started, last) = (system.started?, fleet.last_day?);
        if !filter.system(system) || last - started < watch {
            return None;
        }
        let called = visits.iter().any(|visit| {
            let early = |day: i32| (0..=watch).contains(&(day - started));
            visit.callback
                && visit.day.is_some_and(early)
                && filter
                    .cause
                    .is_none_or(|cause| fleet.causes(visit).contains(&cause))
        });
        Some((system, started, called))
    })
}
