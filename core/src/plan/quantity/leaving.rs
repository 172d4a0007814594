//! The pressure to leave and what goes with it: how near it is to be set, the seasons, the
//! stretch before it, the fluid that is missing for it.

use super::static_pressure::{STRETCHED_MINUTES, minutes, psi, stood};
use super::{Known, Lack, QuantityKind as Q, Remark, Sheet};
use crate::figures::{Authority, Figure, Reasoning};
use crate::pressure::PressureError;
use crate::pressure::balance::{ChargeState, LOOP_PRESSURE, Properties, SealedLoop, balance};
use crate::pressure::band::Band;
use crate::pressure::belief::Unknowns;
use crate::pressure::leave::{Demand, Leave, Outcome, Today};
use crate::records::ReadingPoint;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Duration, Fraction, GaugePressure, Number, PressureDifference, Quantity, Temperature, Unit,
    Volume,
};

/// How far above the pressure to leave the pipe is stretched, psi; the step
/// by which ASTM F2164 lowers the pressure before the watch (from memory).
const STRETCH_PSI: f64 = 10.0;
/// How near a pressure can be set by a valve and a dial gauge, psi. Judgement.
const SETTING_PSI: f64 = 3.0;
/// From this probability on it is told how probably a pressure that is kept stays inside the
/// limits: below it the reckoning tells less than that the loop has stood so. Judgement.
const TELLING: f64 = 0.5;
/// A band at one moment as wide as this is said to be wide for what is not known, psi: more
/// than half of what lies between the usual limits. Judgement.
const WIDE_PSI: f64 = 30.0;
/// Pressures nearer to each other than this are the same on any gauge, psi. Judgement.
const SAME_PSI: f64 = 0.1;
/// No loop that runs reads below this, Pa: a season that may come there only tells how little
/// is known. Judgement.
const NEVER: f64 = -0.5e5;

fn ends(bands: &[Band]) -> (GaugePressure, GaugePressure) {
    // The belief's tails may lie below a full vacuum, a gauge may not.
    let vacuum = LOOP_PRESSURE.min().si();
    let low = bands.iter().map(|band| band.low.si().max(vacuum));
    let high = bands.iter().map(|band| band.high.si());
    (
        GaugePressure::from_si(low.fold(f64::INFINITY, f64::min)),
        GaugePressure::from_si(high.fold(f64::NEG_INFINITY, f64::max)),
    )
}

/// The widest of some bands.
fn widest(bands: &[Band]) -> Option<&Band> {
    let wider = |a: &&Band, b: &&Band| a.width().total_cmp(&b.width());
    bands.iter().max_by(wider)
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

pub(super) fn leaving(
    known: &Known<'_>,
    leave: &Leave,
    demand: &Demand,
    today: &Today,
    sheet: &mut Sheet,
) {
    let now = today.temperature;
    if demand.stands.is_none() {
        sheet.remarks.push(Remark::ReadGaugeFirst);
    }
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
            sheet.remarks.push(Remark::PressureKept {
                inside: (leave.inside >= TELLING).then_some(inside),
                stood: stood(known.file),
            });
            near
        }
        Outcome::Impossible { short, over } => {
            sheet.remarks.push(Remark::NoPressureServes {
                inside,
                short: difference(short),
                over: difference(over),
                widest: widest(&leave.bands).and_then(Band::widest),
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
    let wide = widest(&leave.bands).filter(|band| band.width() >= psi(WIDE_PSI));
    // Where no pressure serves that is said already.
    if let (Some(band), false) = (wide, matches!(leave.outcome, Outcome::Impossible { .. })) {
        sheet.remarks.push(Remark::SeasonsUnsure {
            width: Figure::exact(PressureDifference::from_si(band.width())),
            widest: band.widest(),
        });
    }
    let season = || Reasoning {
        formula: "plan-season-band",
        ..why()
    };
    if low.si() <= NEVER {
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
pub(super) fn volumes(
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
    if (leave.pressure.si() - reading.value().si()).abs() < psi(SAME_PSI) {
        sheet.lack(&both, Lack::NothingToDo);
        return;
    }
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
