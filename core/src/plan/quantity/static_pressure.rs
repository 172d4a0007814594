//! The pressure to leave, what the gauge should read later, the fluid that is
//! missing, and the hold test.

use super::leaving::{leaving, volumes};
use super::sheet::has_tank;
use super::{Known, Lack, QuantityKind as Q, Sheet, Stood, hold, recheck};
use crate::figures::{Authority, Figure, Reasoning};
use crate::model::{charged_or_installed, stood_under, topped_up};
use crate::pressure::PressureError;
use crate::pressure::balance::SealedLoop;
use crate::pressure::belief::{Belief, Charge, Moment};
use crate::pressure::leave::{Demand, Today};
use crate::pressure::year::{SEASONS, YEAR_DAYS};
use crate::records::visit_file::VisitFile;
use crate::records::{FlowCentre, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, GaugePressure, Quantity, Temperature, Unit};

/// Least pressure at any time, psi: a utility's guide to testing loops.
pub const LEAST_PSI: f64 = 15.0;
/// Highest pressure once the loop is left, psi: the upper end of what is left
/// at start-up, common practice, no source.
pub const MOST_PSI: f64 = 70.0;
/// Least with an expansion tank, bar: common practice, no source.
pub const TANK_LEAST_BAR: f64 = 1.0;
/// Highest with an expansion tank, bar: common practice, no source.
pub const TANK_MOST_BAR: f64 = 2.5;
/// How far the tank's air lies below the least pressure, bar. Judgement.
const BELOW_LEAST_BAR: f64 = 0.2;
/// Days after today at which the seasons are looked at: half a year and five
/// years. In between the pipe relaxes steadily, so the ends are enough.
pub const SEASON_DAYS: [f64; 2] = [182.0, 1_826.0];
/// Time the pipe is held stretched, min: 20 to 30, common practice, no source.
pub(super) const STRETCHED_MINUTES: f64 = 30.0;
/// Standard uncertainty of the gauge, psi: a dial gauge in ordinary repair.
const GAUGE_PSI: f64 = 1.0;

/// All quantities of this file.
const ALL: [Q; 19] = [
    Q::StretchPressure,
    Q::LeavePressure,
    Q::LeavePressureLow,
    Q::LeavePressureHigh,
    Q::RecheckDayLow,
    Q::RecheckDayHigh,
    Q::RecheckWeekLow,
    Q::RecheckWeekHigh,
    Q::RecheckMonthLow,
    Q::RecheckMonthHigh,
    Q::SeasonLow,
    Q::SeasonHigh,
    Q::MissingVolume,
    Q::ReleaseVolume,
    Q::HoldTime,
    Q::HoldFallLimit,
    Q::StandingHoldTime,
    Q::StandingFallLimit,
    Q::TankPreCharge,
];
/// Those that need the balance of the loop: all but the last.
const BALANCED: usize = ALL.len() - 1;

pub(super) fn psi(value: f64) -> f64 {
    Unit::Psi.to_si(value)
}
pub(super) fn minutes(value: f64) -> Duration {
    Duration::from_si(Unit::Minute.to_si(value))
}
pub(super) fn days(value: f64) -> Duration {
    Duration::from_si(Unit::Day.to_si(value))
}

pub(super) fn compute(known: &Known<'_>, sheet: &mut Sheet) {
    if matches!(
        known.model.flow_centre,
        Some(FlowCentre::NonPressurised { .. })
    ) {
        sheet.lack(&ALL, Lack::FlowCentre);
        return;
    }
    tank(known, sheet);
    let Some(system) = known.model.sealed_loop() else {
        sheet.lack(&ALL[..BALANCED], Lack::TankData);
        return;
    };
    if charge(known, system, sheet).is_err() {
        let lacks = |kind: &Q| sheet.lacking.iter().any(|lacking| lacking.kind == *kind);
        let missing: Vec<Q> = ALL[..BALANCED]
            .iter()
            .copied()
            .filter(|kind| sheet.get(*kind).is_none() && !lacks(kind))
            .collect();
        sheet.lack(&missing, Lack::OutsideModel);
    }
}

fn tank(known: &Known<'_>, sheet: &mut Sheet) {
    let Some(FlowCentre::SealedWithTank { pre_charge, .. }) = &known.model.flow_centre else {
        sheet.lack(&[Q::TankPreCharge], Lack::FlowCentre);
        return;
    };
    let usual = Unit::Bar.to_si(TANK_LEAST_BAR - BELOW_LEAST_BAR);
    let value = pre_charge
        .as_ref()
        .map_or(GaugePressure::from_si(usual), |written| written.get());
    sheet.add(
        Q::TankPreCharge,
        Figure::exact(value),
        Reasoning::new("plan-tank-pre-charge", Authority::CommonPractice),
    );
}

/// Limits of the pressure over the seasons, Pa.
fn limits(known: &Known<'_>, rating: f64) -> (f64, f64) {
    let (least, most) = if has_tank(known) {
        (
            Unit::Bar.to_si(TANK_LEAST_BAR),
            Unit::Bar.to_si(TANK_MOST_BAR),
        )
    } else {
        (psi(LEAST_PSI), psi(MOST_PSI))
    };
    let most = most.min(rating);
    // A rating so low that nothing is left between the two: keep half of it.
    (least.min(0.5 * most), most)
}

fn charge(known: &Known<'_>, system: SealedLoop, sheet: &mut Sheet) -> Result<(), PressureError> {
    let rating = sheet.si(Q::LowestRating).unwrap_or(psi(MOST_PSI));
    let (least, most) = limits(known, rating);
    let now = known.computable();
    let ground = known.file.system.ground.as_ref();
    let unknowns = known.model.unknowns(ground.and_then(|ground| ground.kind));
    let today = Today {
        temperature: now,
        held: minutes(STRETCHED_MINUTES),
        gauge: psi(GAUGE_PSI),
        earlier: known
            .read::<GaugePressure>(ReadingPoint::StaticPressure)
            .map(|read| stood_under(known.file, read.value())),
    };
    let start = Charge {
        pressure: Uncertain::new(GaugePressure::from_si(0.5 * (least + most)), today.gauge),
        temperature: now,
        held: today.held,
        air: None,
        earlier: today.earlier,
    };
    let belief = match &known.conditions.learned {
        Some(learned) => learned.recharged(start.pressure.value(), &today),
        None => Belief::prior(system.clone(), unknowns, start)?,
    };
    let moments = seasons(known);
    let demand = Demand {
        least: GaugePressure::from_si(least),
        bare: Some(GaugePressure::from_si(
            sheet.si(Q::SuctionFloor).unwrap_or(0.0).min(least),
        )),
        stands: today.earlier.map(|earlier| earlier.pressure),
        keep: !known.treats_pressure,
        most: GaugePressure::from_si(most),
        limit_today: GaugePressure::from_si(most),
        ceiling: GaugePressure::from_si(rating),
        moments,
    };
    let leave = belief.leave(&demand, &today)?;
    leaving(known, &leave, &demand, &today, sheet);
    // What is read soon after is held against today's temperature, whatever it is,
    // and for the hold against what the same gauge read.
    let same_day = Today {
        temperature: Uncertain::exact(now.value()),
        ..today
    };
    let same_gauge = Today {
        gauge: 0.0,
        ..same_day
    };
    let left = belief.recharged(leave.pressure, &same_gauge);
    let gauge = known
        .read::<GaugePressure>(ReadingPoint::StaticPressure)
        .map_or(psi(GAUGE_PSI), |read| read.standard());
    hold::charged(known, &left, leave.pressure, now.value(), gauge, sheet)?;
    hold::standing(known, &belief, now.value(), sheet)?;
    recheck::rechecks(known, &belief, &leave, &same_day, sheet)?;
    volumes(known, &system, unknowns, &leave, now, sheet);
    Ok(())
}

/// Both seasons, soon and in five years: of the year that today's reading tells,
/// else the usual ones.
fn seasons(known: &Known<'_>) -> Vec<Moment> {
    let moment = |day: f64, temperature: Uncertain<Temperature>| Moment {
        elapsed: days(day),
        temperature: Uncertain::new(
            known.model.fluid.computable(temperature.value()),
            temperature.standard(),
        ),
    };
    let Some((year, today)) = &known.conditions.year else {
        let usual = SEASONS.iter().flat_map(|(celsius, spread)| {
            let temperature = Uncertain::new(Temperature::from_celsius(*celsius), *spread);
            SEASON_DAYS.map(|day| moment(day, temperature))
        });
        return usual.collect();
    };
    let turns = [year.next_coldest(*today), year.next_warmest(*today)];
    let [_, later] = SEASON_DAYS;
    turns
        .into_iter()
        .flat_map(|turn| {
            let temperature = year.at(turn);
            [turn - today, turn - today + later].map(|day| moment(day, temperature))
        })
        .collect()
}

/// How long the loop has stood on the charge that it holds.
pub(super) fn stood(file: &VisitFile) -> Stood {
    match charged_or_installed(file) {
        Some((day, ago)) if ago >= 0.0 && !topped_up(file) => match ago < YEAR_DAYS {
            true => Stood::Since(day),
            false => Stood::EverySeason(day),
        },
        _ => Stood::Unknown,
    }
}
