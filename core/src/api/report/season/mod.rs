//! What the gauge should read over the year to come, from what is left today.
//!
//! The band starts at a reading: gauge and loop temperature of one day fix how
//! much fluid is in, so only the way from there is uncertain. It widens with the
//! time (the pipe relaxes) and with the temperature (pipe and fluid grow). The
//! loop's temperature through the year is the usual one, narrowed by what was
//! read today.

mod shown;

use crate::api::Call;
use crate::model::stood_under;
use crate::plan::WorkPlan;
use crate::plan::quantity::{LEAST_PSI, MOST_PSI, QuantityKind, TANK_LEAST_BAR, TANK_MOST_BAR};
use crate::pressure::balance::LOOP_PRESSURE;
use crate::pressure::band::Band as Expected;
use crate::pressure::belief::{Belief, Charge, Moment};
use crate::pressure::leave::Today;
use crate::pressure::year::{SEASONS, YEAR_DAYS};
use crate::records::{FlowCentre, Phase, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Dimension, Duration, GaugePressure, Quantity, Temperature, Unit, UnitSystem};
use chrono::NaiveDate;

/// How long a pipe has been under pressure when it is read at a call, days.
/// Judgement: relaxing goes with the logarithm of time, so half a year or two
/// make little difference.
const STANDING_DAYS: f64 = 182.0;
/// How long a pipe is held when it is charged anew, minutes: 20 to 30, common
/// practice, no source.
const CHARGED_MINUTES: f64 = 30.0;
/// Standard uncertainty of the gauge, psi: a dial gauge in ordinary repair.
const GAUGE_PSI: f64 = 1.0;
/// Days after which a pipe charged anew has done most of its settling. Judgement.
const SETTLED: f64 = 60.0;
/// Months of the band.
const MONTHS: u8 = 12;
/// Half the share that the band covers, as standard uncertainties.
const BAND_SIGMA: f64 = 1.645;
/// Standard uncertainty of a thermometer held to the loop, K. Judgement.
const THERMOMETER: f64 = 1.0;
/// Loop temperatures of the table of gauge readings, °F and °C.
const FAHRENHEIT: [f64; 5] = [40.0, 50.0, 60.0, 70.0, 80.0];
const CELSIUS: [f64; 5] = [5.0, 10.0, 15.0, 20.0, 25.0];

/// What the band starts from.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(in crate::api) enum Start {
    /// Read as left.
    Left,
    /// What the plan leaves.
    Planned,
    /// Read as found.
    Found,
}

/// Ends and middle of what is to be expected.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(in crate::api) struct Range {
    pub low: GaugePressure,
    pub middle: GaugePressure,
    pub high: GaugePressure,
}

impl Range {
    fn of(band: &Expected) -> Self {
        Self {
            low: band.low,
            middle: band.median,
            high: band.high,
        }
    }

    /// The part between two limits; none where nothing is left.
    fn between(self, least: f64, most: f64) -> Option<Self> {
        let cut =
            |pressure: GaugePressure| GaugePressure::from_si(pressure.si().clamp(least, most));
        (self.low.si() < most && self.high.si() > least).then(|| Self {
            low: cut(self.low),
            middle: cut(self.middle),
            high: cut(self.high),
        })
    }
}

/// The band over the year to come.
pub(in crate::api) struct Season {
    /// What it starts from.
    pub left: GaugePressure,
    pub start: Start,
    /// Months from today, and what is to be expected then.
    pub points: Vec<(f64, Range)>,
    /// At the coldest and the warmest time of that year.
    pub winter: Range,
    pub summer: Range,
    /// Loop temperatures taken for both, and whether a reading narrowed them.
    pub temperatures: [Temperature; 2],
    pub read: bool,
    /// Day of the charge on record, where it and today's reading narrowed the band.
    pub since: Option<NaiveDate>,
    /// Months from today at which a season is in its middle, with its name.
    marks: Vec<(f64, &'static str)>,
    /// What is to be expected in half a year, by the loop's temperature then.
    pub by_temperature: Vec<(Temperature, Range)>,
    /// Least and most that the loop should read.
    pub limits: [GaugePressure; 2],
    /// Lowest and highest by the model alone, where the limits cut the band.
    pub beyond: Option<(GaugePressure, GaugePressure)>,
    /// Whether its likeliest course leaves the limits: no band to hold a gauge to.
    pub vague: bool,
}

impl Season {
    /// The part of the band between two limits; none where nothing is left.
    fn between(self, least: f64, most: f64) -> Option<Self> {
        let ends = self.ends();
        let cut = ends.0.si() < least || ends.1.si() > most;
        let points = self.points.into_iter();
        let points: Option<Vec<_>> = points
            .map(|(at, range)| Some((at, range.between(least, most)?)))
            .collect();
        let table = self.by_temperature.into_iter();
        let table = table.filter_map(|(at, range)| Some((at, range.between(least, most)?)));
        Some(Self {
            points: points?,
            winter: self.winter.between(least, most)?,
            summer: self.summer.between(least, most)?,
            by_temperature: table.collect(),
            beyond: cut.then_some(ends),
            ..self
        })
    }

    /// Whether its likeliest course stays between two limits.
    fn stays_between(&self, least: f64, most: f64) -> bool {
        let turns = [&self.winter, &self.summer].into_iter();
        let mut all = turns.chain(self.points.iter().map(|(_, range)| range));
        all.all(|range| (least..=most).contains(&range.middle.si()))
    }

    /// Lowest and highest of the year.
    pub fn ends(&self) -> (GaugePressure, GaugePressure) {
        let low = self.points.iter().map(|(_, range)| range.low.si());
        let high = self.points.iter().map(|(_, range)| range.high.si());
        (
            GaugePressure::from_si(low.fold(f64::INFINITY, f64::min)),
            GaugePressure::from_si(high.fold(f64::NEG_INFINITY, f64::max)),
        )
    }

    /// Whether it reads lower when warm, as most loops of plastic pipe do.
    pub fn falls_when_warm(&self) -> bool {
        self.summer.middle < self.winter.middle
    }
}

fn days(days: f64) -> Duration {
    Duration::from_si(Unit::Day.to_si(days))
}

impl Call {
    /// The band over a year for the pressure as left, else as the plan leaves
    /// it, else as found. None for a vented loop, without any pressure, or
    /// outside the model.
    pub(in crate::api) fn season(&self, plan: Option<&WorkPlan>) -> Option<Season> {
        let (charge, start) = self.start(plan)?;
        let today = self.day_of_year();
        let phase = if start == Start::Left {
            Phase::Left
        } else {
            Phase::Found
        };
        let read = self
            .read_loop_temperature(phase)
            .or_else(|| self.read_loop_temperature(Phase::Found));
        let year = self.year(read);
        let computable = |temperature: Uncertain<Temperature>| {
            Uncertain::new(
                self.model.fluid.computable(temperature.value()),
                temperature.standard(),
            )
        };
        let ground = self.file.system.ground.as_ref();
        let unknowns = self.model.unknowns(ground.and_then(|ground| ground.kind));
        let charge = Charge {
            temperature: computable(read.unwrap_or_else(|| year.at(today))),
            ..charge
        };
        let learned = self.learned_since_charge();
        let since = learned.is_some().then(|| self.charge_day()).flatten();
        let belief = match learned {
            Some(learned) => learned.recharged(
                charge.pressure.value(),
                &Today {
                    temperature: charge.temperature,
                    held: charge.held,
                    gauge: charge.pressure.standard(),
                    earlier: charge.earlier,
                },
            ),
            None => Belief::prior(self.model.sealed_loop()?, unknowns, charge).ok()?,
        };
        let expected = |elapsed: f64, temperature: Uncertain<Temperature>| {
            let moment = Moment {
                elapsed: days(elapsed),
                temperature: computable(temperature),
            };
            Some(Range::of(&belief.band(&moment).ok()?))
        };
        let on = |day: f64| expected(day - today, year.at(day));
        // Today the gauge itself says what it reads.
        let half = BAND_SIGMA * charge.pressure.standard();
        let left = charge.pressure.value();
        let now = Range {
            low: GaugePressure::from_si(left.si() - half),
            middle: left,
            high: GaugePressure::from_si(left.si() + half),
        };
        let month = YEAR_DAYS / f64::from(MONTHS);
        let mut points = vec![(0.0, now)];
        for count in 1..=MONTHS {
            let months = f64::from(count);
            points.push((months, on(today + months * month)?));
        }
        // A turn of the year that is at hand tells nothing of the next one: the pipe
        // has not settled by then.
        let later = |turn: f64| {
            turn + if turn < today + SETTLED {
                YEAR_DAYS
            } else {
                0.0
            }
        };
        let [coldest, warmest] = [year.next_coldest(today), year.next_warmest(today)].map(later);
        let table: &[f64] = match self.wording.units {
            UnitSystem::Us => &FAHRENHEIT,
            UnitSystem::Si => &CELSIUS,
        };
        let unit = self.wording.units.unit(Dimension::Temperature);
        let by_temperature = table.iter().filter_map(|shown| {
            let exact = Temperature::from_si(unit.to_si(*shown));
            // Where the loop would freeze there is nothing to expect.
            let held = self.model.fluid.computable(exact);
            if (held.si() - exact.si()).abs() > 0.1 {
                return None;
            }
            let range = expected(STANDING_DAYS, Uncertain::new(exact, THERMOMETER))?;
            Some((exact, range))
        });
        let by_temperature = by_temperature.collect();
        let mut marks: Vec<(f64, &'static str)> = ["winter", "spring", "summer", "autumn"]
            .into_iter()
            .zip(0_u8..)
            .map(|(name, quarter)| {
                let later = (coldest - today + 0.25 * YEAR_DAYS * f64::from(quarter)) / month;
                (later.rem_euclid(f64::from(MONTHS)), name)
            })
            .collect();
        marks.sort_by(|a, b| a.0.total_cmp(&b.0));
        Some(Season {
            left,
            start,
            points,
            winter: on(coldest)?,
            summer: on(warmest)?,
            temperatures: [year.at(coldest).value(), year.at(warmest).value()],
            read: read.is_some(),
            since,
            marks,
            by_temperature,
            limits: self.pressure_limits().map(GaugePressure::from_si),
            beyond: None,
            vague: false,
        })
    }

    /// The charge that the band starts from; its temperature is still to be set.
    fn start(&self, plan: Option<&WorkPlan>) -> Option<(Charge, Start)> {
        let read = |phase: Phase| {
            let found = self.latest(ReadingPoint::StaticPressure, Some(phase))?;
            let pressure = found.quantity::<GaugePressure>()?;
            Some(Uncertain::new(pressure, found.standard_uncertainty()))
        };
        let planned = || {
            let pressure = plan?.sheet.get(QuantityKind::LeavePressure)?.figure.si;
            let pressure = GaugePressure::from_si(pressure);
            Some(Uncertain::new(pressure, Unit::Psi.to_si(GAUGE_PSI)))
        };
        let charged = Duration::from_si(Unit::Minute.to_si(CHARGED_MINUTES));
        let (pressure, held, start) = if let Some(left) = read(Phase::Left) {
            (left, charged, Start::Left)
        } else if let Some(planned) = planned() {
            (planned, charged, Start::Planned)
        } else {
            (read(Phase::Found)?, days(STANDING_DAYS), Start::Found)
        };
        // What is put on today comes on top of what the pipe has stood under.
        let earlier = match start {
            Start::Found => None,
            Start::Left | Start::Planned => {
                read(Phase::Found).map(|found| stood_under(&self.file, found.value()))
            }
        };
        let charge = Charge {
            pressure,
            temperature: Uncertain::exact(Temperature::from_celsius(SEASONS[0].0)),
            held,
            air: None,
            earlier,
        };
        Some((charge, start))
    }

    /// Least and most that the loop should read at any time, Pa.
    fn pressure_limits(&self) -> [f64; 2] {
        let tank = matches!(
            self.file.system.flow_centre,
            Some(FlowCentre::SealedWithTank { .. })
        );
        let (least, most) = if tank {
            let [least, most] = [TANK_LEAST_BAR, TANK_MOST_BAR];
            (Unit::Bar.to_si(least), Unit::Bar.to_si(most))
        } else {
            (Unit::Psi.to_si(LEAST_PSI), Unit::Psi.to_si(MOST_PSI))
        };
        let (rating, _) = self.model.pressure_limit(&self.file);
        [least, most.min(rating.si())]
    }

    /// The part of the band that may stay as it is: what the loop may do by the
    /// model and what it should not do whatever the model says are two things,
    /// and a layperson shall call at the nearer of both. Every reader is told the
    /// same part; none where nothing is left of the band, or where its likeliest course
    /// leaves the limits: what is cut off there is no forecast.
    pub(super) fn season_to_keep(&self, plan: Option<&WorkPlan>) -> Option<Season> {
        let [least, most] = self.pressure_limits();
        if least >= most {
            return None;
        }
        let season = self.season(plan)?;
        if !season.stays_between(least, most) {
            return None;
        }
        season.between(least, most)
    }

    /// What a technician is told: that part, or the band of the model itself where there is
    /// none, above a full vacuum.
    pub(in crate::api) fn season_told(&self, plan: Option<&WorkPlan>) -> Option<Season> {
        let all = || {
            let vacuum = LOOP_PRESSURE.min().si();
            let season = self.season(plan)?.between(vacuum, f64::INFINITY)?;
            Some(Season {
                beyond: None,
                vague: true,
                ..season
            })
        };
        self.season_to_keep(plan).or_else(all)
    }
}
