//! Causes by how often and how dear, and how often the same one comes back.

use crate::fleet::statistics::{Interval, wilson};
use crate::fleet::{Filter, Fleet, VisitRow};
use std::collections::BTreeMap;

/// A cause over the period.
#[derive(Clone, PartialEq, Debug)]
pub struct CauseFigure {
    /// The cause.
    pub cause: u32,
    /// Visits at which it was confirmed.
    pub count: usize,
    /// Share of all callbacks that count.
    pub share: f64,
    /// Its interval.
    pub interval: Option<Interval>,
    /// Working time, h; a visit with more causes gives each an equal part.
    pub hours: f64,
    /// Cost, parted likewise.
    pub cost: f64,
}

/// Causes, most frequent first.
#[must_use]
pub fn causes(fleet: &Fleet, filter: &Filter) -> Vec<CauseFigure> {
    let mut found: BTreeMap<u32, (usize, f64, f64)> = BTreeMap::new();
    let mut callbacks = 0;
    // A share is one of all callbacks, also when one cause is looked at.
    let everything = Filter {
        cause: None,
        ..filter.clone()
    };
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        for visit in visits.iter().filter(|visit| visit.callback) {
            callbacks += usize::from(everything.visit(fleet, visit));
            if !filter.visit(fleet, visit) {
                continue;
            }
            let causes = fleet.causes(visit);
            let part = 1.0 / causes.len() as f64;
            for cause in causes {
                let entry = found.entry(*cause).or_default();
                entry.0 += 1;
                entry.1 += part * visit.minutes / 60.0;
                entry.2 += part * visit.cost;
            }
        }
    }
    let mut figures: Vec<CauseFigure> = found
        .into_iter()
        .filter(|(cause, _)| filter.cause.is_none_or(|only| only == *cause))
        .map(|(cause, (count, hours, cost))| CauseFigure {
            cause,
            count,
            share: count as f64 / callbacks as f64,
            interval: wilson(count, callbacks),
            hours,
            cost,
        })
        .collect();
    figures.sort_by(|a, b| b.count.cmp(&a.count).then(a.cause.cmp(&b.cause)));
    figures
}

/// How often a cause came back at the same system.
#[derive(Clone, PartialEq, Debug)]
pub struct RepeatFigure {
    /// The cause.
    pub cause: u32,
    /// Visits with this cause after which the whole window is on record, or at
    /// which it came back within it.
    pub watched: usize,
    /// Of these, how many were followed by the same cause within the window.
    pub came_back: usize,
    /// Interval of the share.
    pub interval: Option<Interval>,
}

/// Whether a visit repeats a cause: the same system, the same cause, not more
/// than `window` days after an earlier visit.
#[must_use]
pub fn repeats(fleet: &Fleet, visits: &[VisitRow], place: usize, cause: u32, window: i32) -> bool {
    let Some(day) = visits[place].day else {
        return false;
    };
    visits[..place]
        .iter()
        .rev()
        .filter_map(|earlier| Some((earlier, day - earlier.day?)))
        .take_while(|(_, apart)| *apart <= window)
        .any(|(earlier, _)| fleet.causes(earlier).contains(&cause))
}

/// Repeats by cause, those that come back most often first. A visit counts by
/// the day of the first fix.
#[must_use]
pub fn repeated(fleet: &Fleet, filter: &Filter, window: i32) -> Vec<RepeatFigure> {
    let last = filter.to.or(fleet.last_day);
    let mut found: BTreeMap<u32, (usize, usize)> = BTreeMap::new();
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        for (place, visit) in visits.iter().enumerate() {
            let (Some(day), Some(last)) = (visit.day, last) else {
                continue;
            };
            if !filter.visit(fleet, visit) {
                continue;
            }
            for cause in fleet.causes(visit) {
                let again = visits[place + 1..]
                    .iter()
                    .filter_map(|later| Some((later, later.day?)))
                    .take_while(|(_, later)| *later - day <= window && *later <= last)
                    .any(|(later, _)| fleet.causes(later).contains(cause));
                let entry = found.entry(*cause).or_default();
                entry.0 += usize::from(again || day + window <= last);
                entry.1 += usize::from(again);
            }
        }
    }
    let mut figures: Vec<RepeatFigure> = found
        .into_iter()
        .filter(|(cause, (watched, _))| {
            *watched > 0 && filter.cause.is_none_or(|only| only == *cause)
        })
        .map(|(cause, (watched, came_back))| RepeatFigure {
            cause,
            watched,
            came_back,
            interval: wilson(came_back, watched),
        })
        .collect();
    figures.sort_by(|a, b| b.came_back.cmp(&a.came_back).then(a.cause.cmp(&b.cause)));
    figures
}
