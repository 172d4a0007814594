//! What a tight loop reads at the rechecks.

use super::static_pressure::days;
use super::{Known, Lack, QuantityKind as Q, Remark, Sheet};
use crate::figures::{Authority, Figure, Reasoning};
use crate::model::STOOD_DAYS;
use crate::pressure::PressureError;
use crate::pressure::belief::{Belief, Moment};
use crate::pressure::leave::{Leave, Today};
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{GaugePressure, Quantity, Unit};

/// The rechecks: days after, and the ends of what the gauge should read.
const RECHECKS: [(f64, Q, Q); 3] = [
    (1.0, Q::RecheckDayLow, Q::RecheckDayHigh),
    (7.0, Q::RecheckWeekLow, Q::RecheckWeekHigh),
    (30.0, Q::RecheckMonthLow, Q::RecheckMonthHigh),
];
/// A rise that is worth a word, psi. Judgement.
const NOTED_PSI: f64 = 3.0;
/// How far the loop's temperature may move from one recheck to the next, K. Judgement.
const RECHECK_SPREAD: f64 = 2.0;

/// What a tight loop reads later, on its own after each time. A loop that is charged on
/// this visit goes on from what it is left at, any other from what it reads.
pub(super) fn rechecks(
    known: &Known<'_>,
    belief: &Belief,
    leave: &Leave,
    today: &Today,
    sheet: &mut Sheet,
) -> Result<(), PressureError> {
    let now = today.temperature.value();
    let (from, ends) = if known.charges {
        let end = |kind| sheet.si(kind).map(GaugePressure::from_si);
        let usual = |kind| end(kind).unwrap_or(leave.pressure);
        // Before it is read, it may be left at anything that the plan lets be left.
        let left = known.left_at();
        let from = left.unwrap_or(leave.pressure);
        let ends = [Q::LeavePressureLow, Q::LeavePressureHigh]
            .map(|kind| left.unwrap_or_else(|| usual(kind)));
        let charged = |pressure: GaugePressure| {
            let left = belief.recharged(pressure, today);
            // In a loop that is only topped up, what air there was has long dissolved.
            match known.purges {
                true => {
                    let (volume, air) = known.model.trapped_air();
                    left.with_air(volume, air)
                }
                false => left,
            }
        };
        (
            from,
            ends.map(|pressure| (pressure.si(), charged(pressure))),
        )
    } else {
        let Some(read) = known.read::<GaugePressure>(ReadingPoint::StaticPressure) else {
            let all: Vec<Q> = RECHECKS
                .iter()
                .flat_map(|(_, low, high)| [*low, *high])
                .collect();
            sheet.lack(&all, Lack::StaticReading);
            return Ok(());
        };
        let stood = Today {
            gauge: read.standard(),
            held: days(STOOD_DAYS),
            earlier: None,
            ..*today
        };
        let read = read.value();
        let stood = belief.recharged(read, &stood);
        (read, [(read.si(), stood.clone()), (read.si(), stood)])
    };
    let [(least, lowest), (most, highest)] = ends;
    // Below this the circulators starve: no loop is left to go there, tight or not.
    let floor = sheet.si(Q::SuctionFloor).unwrap_or(0.0);
    for (day, low, high) in RECHECKS {
        let moment = Moment {
            elapsed: days(day),
            temperature: Uncertain::new(now, RECHECK_SPREAD),
        };
        let (mut lower, mut upper) = (
            lowest.band(&moment)?.low.si(),
            highest.band(&moment)?.high.si(),
        );
        if day <= 1.0 {
            // What was left may not have relaxed yet: it is no fault.
            (lower, upper) = (lower.min(least), upper.max(most));
        }
        let lower = lower.max(floor);
        if known.charges && low == Q::RecheckMonthLow {
            let later = belief.recharged(from, today).band(&moment)?.median;
            if later.si() - from.si() > Unit::Psi.to_si(NOTED_PSI) {
                sheet.remarks.push(Remark::ComesBack {
                    after: Figure::exact(later),
                });
            }
        }
        let why = || {
            Reasoning::new("plan-recheck-band", Authority::Published("ppi-handbook"))
                .with("plan-pressure-at-start", Figure::exact(from))
                .with("plan-loop-temperature", Figure::exact(now))
        };
        let shown = |si: f64| Figure::exact(GaugePressure::from_si(si));
        sheet.add(low, shown(lower), why());
        sheet.add(high, shown(upper.max(lower)), why());
    }
    Ok(())
}
