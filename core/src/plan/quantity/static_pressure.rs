//! The pressure to leave, what the gauge should read later, the fluid that is
//! missing, and the hold test.

use super::sheet::has_tank;
use super::{Known, Lack, QuantityKind as Q, Remark, Sheet, hold, recheck};
use crate::figures::{Authority, Figure, Reasoning};
use crate::pressure::PressureError;
use crate::pressure::balance::{ChargeState, Earlier, Properties, SealedLoop, balance};
use crate::pressure::band::Band;
use crate::pressure::belief::{Belief, Charge, Moment, Unknown, Unknowns};
use crate::pressure::leave::{Demand, Leave, Outcome, Today};
use crate::records::visit_file::VisitFile;
use crate::records::{FlowCentre, ReadingPoint};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Duration, Fraction, GaugePressure, Number, PressureDifference, Quantity, Temperature, Unit,
    Volume,
};

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
/// Mean loop temperatures of the seasons, °C, with their standard uncertainty:
/// the middle of the usual entering water, common practice, no source.
pub const SEASONS: [(f64, f64); 2] = [(4.0, 4.0), (23.0, 7.0)];
/// Days after today at which the seasons are looked at: half a year and five
/// years. In between the pipe relaxes steadily, so the ends are enough.
pub const SEASON_DAYS: [f64; 2] = [182.0, 1_826.0];
/// How long a loop has stood as it reads at the least, and where nobody knows when it was
/// charged, days. Judgement.
pub(super) const STOOD_DAYS: f64 = 1.0;
const UNKNOWN_DAYS: f64 = 30.0;
/// Time the pipe is held stretched, min: 20 to 30, common practice, no source.
const STRETCHED_MINUTES: f64 = 30.0;
/// How far above the pressure to leave the pipe is stretched, psi; the step
/// by which ASTM F2164 lowers the pressure before the watch (from memory).
const STRETCH_PSI: f64 = 10.0;
/// Standard uncertainty of the gauge, psi: a dial gauge in ordinary repair.
const GAUGE_PSI: f64 = 1.0;
/// How near a pressure can be set by a valve and a dial gauge, psi. Judgement.
const SETTING_PSI: f64 = 3.0;

/// A full vacuum on a gauge, Pa.
const VACUUM: f64 = -1e5;

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

fn psi(value: f64) -> f64 {
    Unit::Psi.to_si(value)
}
fn minutes(value: f64) -> Duration {
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
    leaving(&leave, &demand, now, &today, sheet);
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

/// What the pipe has stood under, by what the gauge reads before anything is changed, and
/// how long. It keeps the stretch of that time: only what is put on or let off today
/// relaxes, or comes back, afresh. (The strains of earlier loads add up: Boltzmann's
/// superposition, as in `pressure::balance`.)
pub fn stood_under(file: &VisitFile, read: GaugePressure) -> Earlier {
    let record = &file.commissioning;
    let charged = record.charge_date.or(record.date);
    let mut readings = file.visit.readings.iter();
    let topped_up = readings
        .any(|reading| reading.point() == ReadingPoint::TopUpVolume && reading.value().si() > 0.0);
    let since = || {
        let day = charged.or(file.system.installed_on)?;
        Some((file.visit.date? - day).num_days() as f64)
    };
    let held = match topped_up {
        true => STOOD_DAYS,
        false => since().unwrap_or(UNKNOWN_DAYS).max(STOOD_DAYS),
    };
    Earlier {
        pressure: read,
        held: days(held),
    }
}

fn ends(bands: &[Band]) -> (GaugePressure, GaugePressure) {
    // The belief's tails may lie below a full vacuum, a gauge may not.
    let low = bands.iter().map(|band| band.low.si().max(VACUUM));
    let high = bands.iter().map(|band| band.high.si());
    (
        GaugePressure::from_si(low.fold(f64::INFINITY, f64::min)),
        GaugePressure::from_si(high.fold(f64::NEG_INFINITY, f64::max)),
    )
}

/// What makes the widest of some bands wide.
fn widest(bands: &[Band]) -> Option<Unknown> {
    let wider = |a: &&Band, b: &&Band| a.width().total_cmp(&b.width());
    bands.iter().max_by(wider)?.widest()
}

/// Around the pressure to leave: half of what does, for it is set more exactly than that,
/// and what is read later is held against all that may be left; but never so little that
/// it cannot be set.
fn within(
    from: GaugePressure,
    to: GaugePressure,
    pressure: GaugePressure,
    setting: PressureDifference,
) -> (GaugePressure, GaugePressure) {
    let half = (0.25 * (to.si() - from.si())).max(setting.si());
    let end = |off: f64| GaugePressure::from_si(pressure.si() + off);
    (end(-half), end(half))
}

fn leaving(
    leave: &Leave,
    demand: &Demand,
    now: Uncertain<Temperature>,
    today: &Today,
    sheet: &mut Sheet,
) {
    let why = || {
        Reasoning::new("plan-leave-pressure", Authority::Published("ppi-handbook"))
            .with("plan-least-pressure", Figure::exact(demand.least))
            .with("plan-most-pressure", Figure::exact(demand.most))
            .with("plan-lowest-rating", Figure::exact(demand.ceiling))
            .with("plan-loop-temperature", Figure::uncertain(now))
    };
    let inside =
        Figure::exact(Fraction::from_si(leave.inside)).shown_in(Unit::Percent, Unit::Percent);
    let setting = PressureDifference::from_si(psi(SETTING_PSI));
    let difference = |pressure: PressureDifference| Figure::exact(pressure);
    let near = (leave.pressure - setting, leave.pressure + setting);
    let (from, to) = match leave.outcome {
        Outcome::Possible { from, to } => within(from, to, leave.pressure, setting),
        Outcome::Bare { .. } => {
            sheet.remarks.push(Remark::BareLeast { inside });
            near
        }
        Outcome::Kept => {
            sheet.remarks.push(Remark::PressureKept { inside });
            near
        }
        Outcome::Impossible { short, over } => {
            sheet.remarks.push(Remark::NoPressureServes {
                inside,
                short: difference(short),
                over: difference(over),
                widest: widest(&leave.bands),
            });
            near
        }
        Outcome::LimitedToday { short } => {
            sheet.remarks.push(Remark::LimitedByRating {
                inside,
                short: difference(short),
            });
            near
        }
    };
    let capped = |pressure: GaugePressure, limit| if pressure > limit { limit } else { pressure };
    let today_most = |pressure| capped(pressure, demand.limit_today);
    sheet.add(
        Q::LeavePressure,
        Figure::uncertain(Uncertain::new(today_most(leave.pressure), today.gauge)),
        why().with("plan-inside-limits", inside),
    );
    sheet.add(Q::LeavePressureLow, Figure::exact(today_most(from)), why());
    sheet.add(Q::LeavePressureHigh, Figure::exact(today_most(to)), why());
    let (low, high) = ends(&leave.bands);
    if high > demand.ceiling {
        sheet.remarks.push(Remark::MayPassRating {
            high: Figure::exact(high),
            rating: Figure::exact(demand.ceiling),
        });
    }
    if demand.stands.is_none() {
        sheet.remarks.push(Remark::ReadGaugeFirst);
    }
    let season = || Reasoning {
        formula: "plan-season-band",
        ..why()
    };
    if low.si() <= VACUUM {
        sheet.lack(&[Q::SeasonLow, Q::SeasonHigh], Lack::TooLittleKnown);
    } else {
        sheet.add(Q::SeasonLow, Figure::exact(low), season());
        sheet.add(Q::SeasonHigh, Figure::exact(high), season());
    }
    let higher = leave.pressure + PressureDifference::from_si(psi(STRETCH_PSI));
    // The gauge may be off: what it shows stays below the rating by as much, unless the
    // pressure to leave is itself as high.
    let doubt = PressureDifference::from_si(2.0 * today.gauge);
    let stretch = capped(higher, demand.ceiling - doubt);
    let base = capped(leave.pressure, demand.ceiling);
    let stretch = if stretch > base { stretch } else { base };
    sheet.add(
        Q::StretchPressure,
        Figure::exact(stretch),
        Reasoning::new("plan-stretch-pressure", Authority::FromMemory("astm-f2164"))
            .with("plan-leave-pressure", Figure::exact(leave.pressure))
            .with("plan-lowest-rating", Figure::exact(demand.ceiling)),
    );
}

/// Fluid to bring the loop from what it reads now to the pressure to leave.
fn volumes(
    known: &Known<'_>,
    system: &SealedLoop,
    unknowns: Unknowns,
    leave: &Leave,
    now: Uncertain<Temperature>,
    sheet: &mut Sheet,
) {
    let both = [Q::MissingVolume, Q::ReleaseVolume];
    let Some(reading) = known.read::<GaugePressure>(ReadingPoint::StaticPressure) else {
        sheet.lack(&both, Lack::StaticReading);
        return;
    };
    let missing = |(shown, scale, restraint): (GaugePressure, Number, Fraction)| {
        let properties = Properties {
            modulus_scale: scale.si(),
            restraint: Fraction::from_si(restraint.si().clamp(0.0, 0.98)),
            ..unknowns.middle()
        };
        let state = ChargeState {
            pressure: leave.pressure,
            temperature: now.value(),
            held: minutes(STRETCHED_MINUTES),
            air: None,
            earlier: None,
        };
        let at = balance(system, &properties, &state, Duration::ZERO, now.value())?;
        Ok::<Volume, PressureError>(at.missing(shown))
    };
    let scale = Uncertain::new(Number::from_si(1.0), unknowns.modulus.si());
    let Ok(volume) = propagate((reading, scale, unknowns.restraint), missing) else {
        sheet.lack(&both, Lack::OutsideModel);
        return;
    };
    let volume = volume.result;
    let size = Uncertain::new(
        Volume::from_si(volume.value().si().abs()),
        volume.standard(),
    );
    let why = Reasoning::new("plan-missing-volume", Authority::Published("ppi-handbook"))
        .with("plan-static-pressure", Figure::uncertain(reading))
        .with("plan-leave-pressure", Figure::exact(leave.pressure))
        .with(
            "plan-loop-volume",
            Figure::uncertain(known.model.piping.volume),
        );
    let (kind, other) = if volume.value().si() >= 0.0 {
        (Q::MissingVolume, Q::ReleaseVolume)
    } else {
        (Q::ReleaseVolume, Q::MissingVolume)
    };
    sheet.add(kind, Figure::uncertain(size), why);
    sheet.lack(&[other], Lack::NothingToDo);
}
