//! Before and after a change of practice.

use super::watched;
use crate::fleet::statistics::{Interval, TwoByTwo, wilson};
use crate::fleet::{Filter, Fleet};

/// Systems commissioned on one side of the change.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Side {
    /// Systems watched over the whole time.
    pub systems: usize,
    /// Of these, with a callback in that time.
    pub called: usize,
    /// Interval of the share.
    pub interval: Option<Interval>,
}

/// What a change of practice came with.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Practice {
    /// Commissioned before the day.
    pub before: Side,
    /// Commissioned on the day or after.
    pub after: Side,
    /// Share after over share before; none when it is no finite number.
    pub ratio: Option<f64>,
    /// Its interval.
    pub interval: Option<Interval>,
    /// p of the exact test; none when a side is too small to say anything.
    pub p: Option<f64>,
}

/// Fewest systems on either side (judgement).
const FEWEST: usize = 10;

/// Compares systems commissioned before a day with those after, each over the
/// first `watch` days; those not yet watched so long are left out. With a cause
/// in the filter only callbacks with that cause count.
#[must_use]
pub fn practice(fleet: &Fleet, filter: &Filter, changed: i32, watch: i32) -> Practice {
    let mut counts = [(0_usize, 0_usize); 2];
    for (_, started, called) in watched(fleet, filter, watch) {
        let side = &mut counts[usize::from(started >= changed)];
        side.0 += 1;
        side.1 += usize::from(called);
    }
    let [before, after] = counts.map(|(systems, called)| Side {
        systems,
        called,
        interval: wilson(called, systems),
    });
    let table = TwoByTwo {
        with: after.called,
        without: after.systems - after.called,
        other_with: before.called,
        other_without: before.systems - before.called,
    };
    let enough = before.systems >= FEWEST && after.systems >= FEWEST;
    Practice {
        before,
        after,
        ratio: table
            .risk_ratio()
            .filter(|ratio| enough && ratio.is_finite()),
        interval: table.risk_interval().filter(|_| enough),
        p: enough.then(|| table.fisher()),
    }
}
