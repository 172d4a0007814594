//! How long the gauge is watched, and how far it may fall in that time.
//!
//! A tight loop falls too: its pipe relaxes, its temperature moves a little, and a gauge
//! is read only so well. The limit is what these explain, and no more; what a leak must
//! take to show above it follows, and with it the time.

use super::static_pressure::days;
use super::{Known, Lack, QuantityKind as Q, Remark, Sheet};
use crate::figures::{Authority, Figure, Reasoning};
use crate::model::STOOD_DAYS;
use crate::pressure::PressureError;
use crate::pressure::belief::{Belief, MODEL_DOUBT, Moment};
use crate::pressure::leave::Today;
use crate::records::visit_file::VisitFile;
use crate::records::{OperatingMode, Phase, Reading, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, GaugePressure, PressureDifference, Quantity, Temperature, Unit};

/// Times of watching, h. An hour is that of the published test; overnight and a day are
/// what a second visit allows. Common practice, no source.
const HOURS: [f64; 6] = [1.0, 2.0, 4.0, 8.0, 12.0, 24.0];
/// Overnight, h.
const NIGHT: f64 = 12.0;
/// How far the loop's temperature moves at rest within the hour, and within days, K:
/// standard uncertainty. Judgement; the latter as for a log of the gauge.
const DRIFT: [f64; 2] = [0.3, 0.7];
/// Share of a gauge's standard uncertainty by which two readings of the same gauge
/// scatter: its own error is in both. Judgement.
const SCATTER: f64 = 0.5;
/// 95 % of a normal distribution lie below so many standard uncertainties.
const ONE_SIDED: f64 = 1.645;
/// Readings nearer to each other than this tell no rate, days. Judgement.
const LEAST_SPAN_DAYS: f64 = 0.5;
/// Of what stands on the gauge a hold may not pass more than this share.
const MOST_SHARE: f64 = 0.5;

/// Fall of the gauge at rest per day that the readings as found tell, Pa: what it fell
/// from the first to the last, over the time between them. None without two readings with
/// their times half a day apart, with a top-up among them, or where it did not fall.
pub(super) fn seen(file: &VisitFile) -> Option<f64> {
    let timed = |point| {
        let readings = file.visit.readings.iter();
        let found = readings.filter(move |r: &&Reading| {
            r.point() == point
                && r.phase == Phase::Found
                && !matches!(
                    r.mode,
                    Some(
                        OperatingMode::Heating | OperatingMode::Cooling | OperatingMode::PumpsOnly
                    )
                )
        });
        found.filter_map(|reading| Some((reading.taken_at?, reading)))
    };
    let first = timed(ReadingPoint::StaticPressure).min_by_key(|(at, _)| *at)?;
    let last = timed(ReadingPoint::StaticPressure).max_by_key(|(at, _)| *at)?;
    let days = (last.0 - first.0).num_seconds() as f64 / Unit::Day.to_si(1.0);
    let topped = timed(ReadingPoint::TopUpVolume).any(|(at, _)| at > first.0 && at < last.0);
    if days < LEAST_SPAN_DAYS || topped {
        return None;
    }
    let si = |reading: &Reading| Some(reading.quantity::<GaugePressure>()?.si());
    let fall = (si(first.1)? - si(last.1)?) / days;
    (fall > 0.0).then_some(fall)
}

/// What a tight loop does while it is watched.
struct Watched {
    hours: f64,
    /// Fall that relaxing makes most likely, Pa.
    relaxing: f64,
    /// Standard uncertainty of the fall that is read, Pa.
    spread: f64,
}

impl Watched {
    fn over(
        belief: &Belief,
        pressure: GaugePressure,
        now: Temperature,
        gauge: f64,
        hours: f64,
    ) -> Result<Self, PressureError> {
        let [hour, longer] = DRIFT;
        let drift = if hours > 1.0 { longer } else { hour };
        let band = belief.band(&Moment {
            elapsed: Duration::from_si(Unit::Hour.to_si(hours)),
            temperature: Uncertain::new(now, drift),
        })?;
        // The model's doubt is about charge and season; the same gauge on the same loop
        // starts at what it reads.
        let model = (band.standard.powi(2) - MODEL_DOUBT.powi(2)).max(0.0);
        let read = 2.0 * (SCATTER * gauge).powi(2);
        Ok(Self {
            hours,
            relaxing: (pressure.si() - band.median.si()).max(0.0),
            spread: (model + read).sqrt(),
        })
    }
    /// Greatest fall of a tight loop, in 95 of 100.
    fn limit(&self) -> f64 {
        self.relaxing + ONE_SIDED * self.spread
    }
    /// Fall per day of a leak that goes beyond the limit in 95 of 100, Pa.
    fn shows(&self) -> f64 {
        2.0 * ONE_SIDED * self.spread * 24.0 / self.hours
    }
    fn time(&self) -> Figure {
        let time = Figure::exact(Duration::from_si(Unit::Hour.to_si(self.hours)));
        match self.hours > 1.0 {
            true => time.shown_in(Unit::Hour, Unit::Hour),
            false => time,
        }
    }
}

fn fall(pa: f64) -> Figure {
    Figure::exact(PressureDifference::from_si(pa))
}

/// The shortest watch that shows the leak; without one seen, overnight.
fn long_enough(watches: &[Watched], leak: Option<f64>) -> Option<&Watched> {
    match leak {
        Some(leak) => watches.iter().find(|watched| watched.shows() <= leak),
        None => watches.iter().find(|watched| watched.hours >= NIGHT),
    }
}

fn watches(
    belief: &Belief,
    pressure: GaugePressure,
    now: Temperature,
    gauge: f64,
) -> Result<Vec<Watched>, PressureError> {
    let each = HOURS.map(|hours| Watched::over(belief, pressure, now, gauge, hours));
    each.into_iter().collect()
}

fn reasoning(pressure: GaugePressure, watched: &Watched, leak: Option<f64>) -> Reasoning {
    let why = Reasoning::new("plan-hold-fall-limit", Authority::Published("ppi-handbook"))
        .with("plan-pressure-at-start", Figure::exact(pressure))
        .with("plan-fall-by-relaxing", fall(watched.relaxing))
        .with("plan-fall-unsure", fall(ONE_SIDED * watched.spread))
        .with("plan-hold-shows", fall(watched.shows()));
    match leak {
        Some(leak) => why.with("plan-leak-seen", fall(leak)),
        None => why,
    }
}

/// The hold of a loop just charged to a pressure. It lasts an hour: over a night the
/// pipe relaxes by more than any leak worth looking for takes, and a limit that passes
/// it would pass the leak.
pub(super) fn charged(
    known: &Known<'_>,
    left: &Belief,
    pressure: GaugePressure,
    now: Temperature,
    gauge: f64,
    sheet: &mut Sheet,
) -> Result<(), PressureError> {
    let hour = Watched::over(left, pressure, now, gauge, HOURS[0])?;
    let leak = seen(known.file);
    if known.seeks_leak {
        let shows = fall(hour.shows());
        sheet.remarks.push(match leak {
            Some(leak) if leak < hour.shows() => Remark::HoldCannotShow {
                leak: fall(leak),
                shows,
            },
            _ => Remark::HoldShows { shows },
        });
    }
    let why = || reasoning(pressure, &hour, leak);
    let time = Reasoning {
        formula: "plan-hold-time",
        ..why()
    };
    sheet.add(Q::HoldTime, hour.time(), time);
    sheet.add(Q::HoldFallLimit, fall(hour.limit()), why());
    Ok(())
}

/// The watch of a loop as it is met, that has stood.
pub(super) fn standing(
    known: &Known<'_>,
    belief: &Belief,
    now: Temperature,
    sheet: &mut Sheet,
) -> Result<(), PressureError> {
    let both = [Q::StandingHoldTime, Q::StandingFallLimit];
    let Some(reading) = known.read::<GaugePressure>(ReadingPoint::StaticPressure) else {
        sheet.lack(&both, Lack::StaticReading);
        return Ok(());
    };
    let pressure = reading.value();
    let stood = belief.recharged(
        pressure,
        &Today {
            gauge: 0.0,
            held: days(STOOD_DAYS),
            temperature: Uncertain::exact(now),
            earlier: None,
        },
    );
    let watches = watches(&stood, pressure, now, reading.standard())?;
    let leak = seen(known.file);
    let enough = long_enough(&watches, leak).or(watches.last());
    let Some(watched) = enough else { return Ok(()) };
    if watched.limit() > MOST_SHARE * pressure.si() {
        sheet.lack(&both, Lack::GaugeTooLow);
        return Ok(());
    }
    let why = || reasoning(pressure, watched, leak);
    let time = Reasoning {
        formula: "plan-standing-hold-time",
        ..why()
    };
    sheet.add(Q::StandingHoldTime, watched.time(), time);
    sheet.add(Q::StandingFallLimit, fall(watched.limit()), why());
    Ok(())
}
