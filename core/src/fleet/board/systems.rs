//! Systems that stand out one by one.

use super::repeats;
use crate::fleet::{Filter, Fleet, VisitRow};

/// A system at which a cause came back.
#[derive(Clone, PartialEq, Debug)]
pub struct RepeatSystem {
    /// The row of its last callback.
    pub number: i64,
    /// Its callbacks in the period.
    pub visits: usize,
    /// What was found, callback by callback.
    pub causes: Vec<u32>,
    /// Day of the last callback.
    pub last: Option<i32>,
}

/// Systems at which the same cause came back within the window, those with most
/// callbacks first.
#[must_use]
pub fn repeat_systems(fleet: &Fleet, filter: &Filter, window: i32) -> Vec<RepeatSystem> {
    let mut found = Vec::new();
    for (system, visits) in fleet.by_system() {
        if !filter.system(system) {
            continue;
        }
        let again = |place: usize| {
            let wanted = |cause: &&u32| filter.cause.is_none_or(|only| only == **cause);
            let mut causes = fleet.causes(&visits[place]).iter().filter(wanted);
            filter.visit(fleet, &visits[place])
                && causes.any(|cause| repeats(fleet, visits, place, *cause, window))
        };
        if !(0..visits.len()).any(again) {
            continue;
        }
        let counted = visits
            .iter()
            .filter(|one| one.callback && filter.day(one.day));
        let counted: Vec<&VisitRow> = counted.collect();
        if let Some(last) = counted.last() {
            found.push(RepeatSystem {
                number: last.number,
                visits: counted.len(),
                causes: counted
                    .iter()
                    .flat_map(|one| fleet.causes(one).iter().copied())
                    .collect(),
                last: last.day,
            });
        }
    }
    found.sort_by_key(|line| std::cmp::Reverse((line.visits, line.last, line.number)));
    found
}

/// Why a system should be visited again.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Unsettled {
    /// The fix of this cause was said not to hold, and nobody has been there since.
    Failed(u32),
    /// The last visit was a callback at which no cause was confirmed.
    Unexplained,
}

/// A system left in an unsettled state by its last visit.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct UnsettledSystem {
    /// The row of its last visit.
    pub number: i64,
    /// Why.
    pub why: Unsettled,
    /// Day of the last visit.
    pub last: Option<i32>,
}

/// Systems to visit again: fixes that failed first, then the latest ones. The
/// last visit of a system must lie in the period.
#[must_use]
pub fn unsettled(fleet: &Fleet, filter: &Filter) -> Vec<UnsettledSystem> {
    let mut found = Vec::new();
    for (system, visits) in fleet.by_system() {
        let Some(last) = visits.last().filter(|last| filter.day(last.day)) else {
            continue;
        };
        if !filter.system(system) {
            continue;
        }
        let wanted = |cause: u32| filter.cause.is_none_or(|only| only == cause);
        let said = visits.iter().flat_map(|visit| fleet.follow_ups(visit));
        let said = said.filter(|said| wanted(said.cause) && Some(said.day) >= last.day);
        let latest = said.max_by_key(|said| (said.day, said.held));
        let failed = latest.filter(|said| !said.held);
        let unexplained = last.callback && fleet.causes(last).is_empty() && filter.cause.is_none();
        let why = match failed {
            Some(said) => Unsettled::Failed(said.cause),
            None if unexplained => Unsettled::Unexplained,
            None => continue,
        };
        found.push(UnsettledSystem {
            number: last.number,
            why,
            last: last.day,
        });
    }
    found.sort_by_key(|one| {
        let later = one.last.map(|day| -day);
        (one.why == Unsettled::Unexplained, later, one.number)
    });
    found
}
