//! A log of the gauge over days: relaxation or leak.

use super::Evaluator;
use super::pressure::unknowns;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Evaluation};
use crate::evidence::levels::{Levels, SLIP, with_slip};
use crate::figures::{Authority, Figure, Reasoning};
use crate::pressure::balance::{Balance, ChargeState, SealedLoop, balance};
use crate::pressure::trend::{FEWEST, LogEntry, Trend, TrendPrior, compare};
use crate::records::{Reading, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{
    Duration, Fraction, GaugePressure, Number, PressureDifference, PressureSlope, Quantity,
    Temperature, Unit, Volume, VolumeFlow,
};
use chrono::{DateTime, FixedOffset, NaiveDate};

/// Fall per decade of time of a tight loop over its pressure: about 12 % by the
/// moduli of the PPI handbook, table B.1.1; half of that either way is judgement.
const PER_DECADE: (f64, f64) = (0.12, 0.06);
/// The same before anything is believed, for what the log alone says of it.
const PER_DECADE_OPEN: (f64, f64) = (0.0, 0.3);
/// Fall per decade over the pressure, without and with a pipe that gives way. Judgement.
const GIVES_WAY: Levels = Levels::presence(&[(-0.06, 0.035)], &[(0.02, 0.3)]);
/// Age of a charge that nobody dated, days. Judgement.
const OLD_CHARGE_DAYS: f64 = 365.0;
/// Temperature of a loop at rest over the days of a log, K. Judgement.
const DRIFT: f64 = 0.7;
/// The strongest a log can speak, bits: no log is better than its gauge. Judgement.
const MOST_BITS: f64 = 8.0;

const READS: &[ReadingPoint] = &[ReadingPoint::StaticPressure, ReadingPoint::TopUpVolume];

pub(super) const STATIC_PRESSURE_TREND: Evaluator = Evaluator {
    name: "static-pressure-trend",
    graded: false,
    reads: READS,
    evaluate: falls_daily,
};
pub(super) const FALL_SHRINKS: Evaluator = Evaluator {
    name: "fall-shrinks-each-day",
    graded: false,
    reads: READS,
    evaluate: fall_shrinks,
};

/// Readings of the gauge at rest with their times, oldest first.
struct Log {
    entries: Vec<LogEntry>,
    taken: Taken,
    temperature: Uncertain<Temperature>,
}

fn log(call: &Call<'_>) -> Option<Log> {
    let timed = |point| {
        let mut all: Vec<(DateTime<FixedOffset>, usize, &Reading)> = call
            .readings(point, State::AtRest)
            .filter_map(|(place, reading)| Some((reading.taken_at?, place, reading)))
            .collect();
        all.sort_by_key(|(at, ..)| *at);
        all
    };
    let mut gauge = timed(ReadingPoint::StaticPressure);
    gauge.dedup_by_key(|(at, ..)| *at);
    if gauge.len() < FEWEST {
        return None;
    }
    let (first, _, opening) = *gauge.first()?;
    let record = &call.file.commissioning;
    let charged = record.charged_on();
    let days_before = |day: NaiveDate| (first.date_naive() - day).num_days() as f64;
    let age = charged.map(days_before).filter(|days| *days >= 0.0);
    // A charge of the same day is some hours old.
    let age = 86_400.0 * age.unwrap_or(OLD_CHARGE_DAYS).max(0.2);
    let (temperature, _) = call.loop_temperature();
    let temperature = Uncertain::new(call.model.fluid.computable(temperature.value()), DRIFT);
    let added = timed(ReadingPoint::TopUpVolume);
    let entries = gauge
        .iter()
        .enumerate()
        .map(|(number, (at, _, reading))| {
            let next = gauge.get(number + 1).map(|(at, ..)| *at);
            let here = added
                .iter()
                .filter(|(when, ..)| when >= at && next.is_none_or(|next| *when < next));
            LogEntry {
                since_charge: Duration::from_si(age + (*at - first).num_seconds() as f64),
                // The gauge's own error is the same in all of them; what scatters
                // is how well it is read. Judgement: half of it.
                pressure: Uncertain::new(
                    GaugePressure::from_si(reading.value().si()),
                    0.5 * reading.standard_uncertainty(),
                ),
                temperature,
                added: Volume::from_si(here.map(|(_, _, top_up)| top_up.value().si()).sum()),
            }
        })
        .collect();
    let taken = Taken {
        si: gauge.last()?.2.value().si(),
        standard: opening.standard_uncertainty(),
        instrument: opening.instrument_or_usual(),
        readings: gauge
            .iter()
            .chain(&added)
            .map(|(_, place, _)| *place)
            .collect(),
    };
    Some(Log {
        entries,
        taken,
        temperature,
    })
}

/// The sealed loop; a tank that nobody measured is taken as a usual one, for of its
/// size only the answer to temperature and top-ups depends, and both are held wide.
fn roughly_sealed(call: &Call<'_>) -> Option<SealedLoop> {
    let usual = || call.model.sealed_loop_with_usual_tank();
    call.model.sealed_loop().or_else(usual)
}

/// The balance of the loop at the pressure of the log.
fn at(call: &Call<'_>, log: &Log, now: Temperature) -> Option<Balance> {
    let unknowns = unknowns(call);
    let properties = unknowns.middle();
    let first = log.entries.first()?;
    let charge = ChargeState {
        pressure: first.pressure.value(),
        temperature: log.temperature.value(),
        held: first.since_charge,
        air: None,
        earlier: None,
    };
    let moment = Duration::from_si(60.0);
    balance(&roughly_sealed(call)?, &properties, &charge, moment, now).ok()
}

fn judged(call: &Call<'_>, log: &Log, decade: (f64, f64)) -> Option<Trend> {
    let opening = log.entries.first()?.pressure.value();
    let here = at(call, log, log.temperature.value())?;
    let give = here.give(opening);
    let step = 0.5;
    let beside = |by: f64| {
        let t = Temperature::from_si(log.temperature.value().si() + by);
        Some(
            at(call, log, call.model.fluid.computable(t))?
                .pressure()
                .si(),
        )
    };
    let per_kelvin = (beside(step)? - beside(-step)?) / (2.0 * step);
    let base = opening.si().abs().max(Unit::Psi.to_si(5.0));
    let prior = TrendPrior {
        per_decade: Uncertain::new(
            PressureDifference::from_si(decade.0 * base),
            decade.1 * base,
        ),
        per_kelvin: Uncertain::relative(PressureSlope::from_si(per_kelvin), 0.5),
        give: Uncertain::relative(give, 0.4),
        leak: Fraction::from_si(0.5),
    };
    let trend = compare(&log.entries, &prior).ok()?;
    (trend.bits.is_finite() && trend.per_decade.standard().is_finite()).then_some(trend)
}

fn reasoning(formula: &'static str, log: &Log) -> Reasoning {
    let span = match (log.entries.first(), log.entries.last()) {
        (Some(first), Some(last)) => last.since_charge - first.since_charge,
        _ => Duration::ZERO,
    };
    Reasoning::new(formula, Authority::Published("ppi-handbook"))
        .with(
            "log-readings",
            Figure::exact(Number::from_si(log.entries.len() as f64)),
        )
        .with(
            "log-span",
            Figure::exact(span).shown_in(Unit::Day, Unit::Day),
        )
}

fn falls_daily(call: &Call<'_>) -> Vec<Evaluation> {
    let evaluated = || {
        let log = log(call)?;
        let trend = judged(call, &log, PER_DECADE)?;
        let weight = trend.bits.clamp(-MOST_BITS, MOST_BITS).exp2();
        let daily = |figure: Figure| figure.shown_in(Unit::GallonPerDay, Unit::LitrePerDay);
        Some(Evaluation {
            likelihood: with_slip(&[1.0, weight], SLIP)?,
            read_with: Some(log.taken.instrument),
            used: log.taken.readings.clone(),
            measured: daily(Figure::uncertain(trend.rate)),
            expected: daily(Figure::exact(VolumeFlow::ZERO)),
            beside: Beside::Expected,
            reasoning: reasoning("relaxation-or-leak", &log),
        })
    };
    evaluated().into_iter().collect()
}

fn fall_shrinks(call: &Call<'_>) -> Vec<Evaluation> {
    let evaluated = || {
        let log = log(call)?;
        let trend = judged(call, &log, PER_DECADE_OPEN)?;
        let base = log.entries.first()?.pressure.value().si().abs();
        let base = base.max(Unit::Psi.to_si(5.0));
        let share = trend.per_decade.value().si() / base;
        let own = GIVES_WAY.likelihood(share, trend.per_decade.standard() / base);
        // As far as a leak explains the log, it says nothing of the pipe.
        let leak = 1.0 / (1.0 + (-trend.bits.clamp(-MOST_BITS, MOST_BITS)).exp2());
        let usual = PressureDifference::from_si(PER_DECADE.0 * base);
        Some(Evaluation {
            likelihood: with_slip(own.weights(), leak)?,
            read_with: Some(log.taken.instrument),
            used: log.taken.readings.clone(),
            measured: Figure::uncertain(trend.per_decade),
            expected: Figure::uncertain(Uncertain::new(usual, PER_DECADE.1 * base)),
            beside: Beside::Expected,
            reasoning: reasoning("fall-per-decade", &log),
        })
    };
    evaluated().into_iter().collect()
}
