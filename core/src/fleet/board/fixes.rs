//! Whether fixes held.

use crate::fleet::statistics::{Interval, wilson};
use crate::fleet::{Filter, Fleet, VisitRow};

/// How long a fix is asked to hold, in days: a month, a quarter, and half a year,
/// by which the other season has come.
pub const HORIZONS: [i32; 3] = [30, 90, 183];

/// Fixes after so many days.
#[derive(Clone, PartialEq, Debug)]
pub struct HeldFigure {
    /// The days.
    pub days: i32,
    /// Fixes of which it is known whether they held that long.
    pub known: usize,
    /// Of these, how many did.
    pub held: usize,
    /// Interval of the share.
    pub interval: Option<Interval>,
    /// Fixes long enough ago of which nobody has said.
    pub unasked: usize,
    /// Fixes not yet that long ago.
    pub too_early: usize,
}

/// Whether the fix of a cause at a visit held so many days. It did not when a
/// later visit within that time found the same cause or somebody said so; it did
/// when it was seen to hold on that day or later, or failed only later. None
/// when neither is known.
#[must_use]
pub fn held(
    fleet: &Fleet,
    visits: &[VisitRow],
    place: usize,
    cause: u32,
    horizon: i32,
) -> Option<bool> {
    let visit = &visits[place];
    let day = visit.day?;
    let came_back = visits[place + 1..]
        .iter()
        .filter(|later| fleet.causes(later).contains(&cause))
        .filter_map(|later| later.day);
    let said = fleet
        .follow_ups(visit)
        .iter()
        .filter(|said| said.cause == cause);
    let failed = came_back
        .chain(said.clone().filter(|said| !said.held).map(|said| said.day))
        .map(|failed| failed - day)
        .min();
    match failed {
        Some(after) => Some(after > horizon),
        None => said
            .filter(|said| said.held)
            .any(|said| said.day - day >= horizon)
            .then_some(true),
    }
}

/// Fixes by how long they held.
#[must_use]
pub fn fixes(fleet: &Fleet, filter: &Filter) -> Vec<HeldFigure> {
    let mut figures = HORIZONS.map(|days| HeldFigure {
        days,
        known: 0,
        held: 0,
        interval: None,
        unasked: 0,
        too_early: 0,
    });
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        for (place, visit) in visits.iter().enumerate() {
            if !filter.visit(fleet, visit) {
                continue;
            }
            for cause in fleet.causes(visit) {
                if filter.cause.is_some_and(|only| only != *cause) {
                    continue;
                }
                for figure in &mut figures {
                    let due = visit.day.zip(fleet.last_day);
                    let due = due.is_some_and(|(day, last)| day + figure.days <= last);
                    match held(fleet, visits, place, *cause, figure.days) {
                        Some(held) => {
                            figure.known += 1;
                            figure.held += usize::from(held);
                        }
                        None if due => figure.unasked += 1,
                        None => figure.too_early += 1,
                    }
                }
            }
        }
    }
    for figure in &mut figures {
        figure.interval = wilson(figure.held, figure.known);
    }
    figures.into()
}
