//! Time from commissioning to the first callback.

use crate::fleet::statistics::{Curve, Waiting};
use crate::fleet::{Filter, Fleet, SystemRow, VisitRow};

/// The first callback of a system after its commissioning, of the filter's
/// cause if it has one.
#[must_use]
pub fn first_callback<'a>(
    filter: &Filter,
    fleet: &Fleet,
    system: &SystemRow,
    visits: &'a [VisitRow],
) -> Option<&'a VisitRow> {
    let started = system.started?;
    visits.iter().find(|visit| {
        visit.callback
            && visit.day.is_some_and(|day| day >= started)
            && filter
                .to
                .is_none_or(|to| visit.day.is_some_and(|day| day <= to))
            && filter
                .cause
                .is_none_or(|cause| fleet.causes(visit).contains(&cause))
    })
}

/// The curve of days without callback, and how many systems are left out for
/// want of a day of commissioning. A system without callback has waited until the
/// end of the period. The beginning of the period plays no part: waiting begins
/// at commissioning.
#[must_use]
pub fn waiting(fleet: &Fleet, filter: &Filter) -> (Curve, usize) {
    let mut times = Vec::new();
    let mut left_out = 0;
    let Some(last) = filter.to.or(fleet.last_day) else {
        return (Curve::default(), 0);
    };
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        let Some(started) = system.started else {
            left_out += 1;
            continue;
        };
        if started > last {
            continue;
        }
        let called = first_callback(filter, fleet, system, visits).and_then(|visit| visit.day);
        times.push(Waiting {
            time: f64::from(called.unwrap_or(last) - started),
            happened: called.is_some(),
        });
    }
    (Curve::of(&times), left_out)
}
