//! One call as the evaluators see it: readings as found, sorted by point, mode
//! and instrument.

use super::season::{Season, SeasonBasis, season};
use crate::fluids::Fluid;
use crate::model::LoopModel;
use crate::records::visit_file::VisitFile;
use crate::records::{Instrument, OperatingMode, Phase, Reading, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Quantity, Temperature};
use chrono::{NaiveDate, TimeDelta};

/// What the evaluators are given.
#[derive(Copy, Clone, Debug)]
pub struct Call<'a> {
    /// Everything recorded.
    pub file: &'a VisitFile,
    /// What is believed of the system.
    pub model: &'a LoopModel,
    /// The day of the visit, or today where the file does not say.
    pub day: NaiveDate,
}

/// In which state a reading has to be taken to count.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum State {
    /// Everything off.
    AtRest,
    /// Circulators on.
    Running,
    /// Compressor on, heating or cooling as given.
    Compressor(OperatingMode),
    /// It does not matter.
    Any,
}

impl State {
    /// Whether a reading in this mode counts; a reading without a mode does.
    pub fn admits(self, mode: Option<OperatingMode>) -> bool {
        use OperatingMode as M;
        match (self, mode) {
            (_, None) | (Self::Any, _) => true,
            (Self::AtRest, Some(mode)) => mode == M::Idle,
            (Self::Running, Some(mode)) => mode != M::Idle,
            (Self::Compressor(wanted), Some(mode)) => mode == wanted,
        }
    }
}

/// What one instrument said at one point, all its readings together.
#[derive(Clone, PartialEq, Debug)]
pub struct Taken {
    /// Value, SI.
    pub si: f64,
    /// Standard uncertainty, SI.
    pub standard: f64,
    /// With what.
    pub instrument: Instrument,
    /// Places of its readings in the visit.
    pub readings: Vec<usize>,
}

impl Taken {
    /// As a typed quantity.
    pub fn uncertain<Q: Quantity>(&self) -> Uncertain<Q> {
        Uncertain::new(Q::from_si(self.si), self.standard)
    }
}

impl<'a> Call<'a> {
    /// A call; `today` stands in for a visit without date.
    pub fn new(file: &'a VisitFile, model: &'a LoopModel, today: NaiveDate) -> Self {
        Self {
            file,
            model,
            day: file.visit.date.unwrap_or(today),
        }
    }

    /// Readings of a point as found, taken in a state, with their places.
    pub fn readings(
        &self,
        point: ReadingPoint,
        state: State,
    ) -> impl Iterator<Item = (usize, &'a Reading)> {
        self.file
            .visit
            .readings
            .iter()
            .enumerate()
            .filter(move |(_, reading)| {
                reading.point() == point
                    && reading.phase == Phase::Found
                    && state.admits(reading.mode)
            })
    }

    /// Of [`Call::readings`] those of now: without a time, or taken within
    /// [`NOW_HOURS`] of the last.
    fn latest(
        &self,
        point: ReadingPoint,
        state: State,
    ) -> impl Iterator<Item = (usize, &'a Reading)> {
        let last = self
            .readings(point, state)
            .filter_map(|(_, reading)| reading.taken_at)
            .max();
        self.readings(point, state).filter(move |(_, reading)| {
            let since = last.zip(reading.taken_at).map(|(last, at)| last - at);
            since.is_none_or(|since| since <= TimeDelta::hours(NOW_HOURS))
        })
    }

    /// Whether a reading as found is an earlier entry of a log, and not one of now.
    pub fn is_earlier(&self, reading: &Reading) -> bool {
        let mut now = self.latest(reading.point(), State::Any);
        !now.any(|(_, other)| std::ptr::eq(other, reading))
    }

    /// What each instrument said at a point, in the order first read.
    ///
    /// Several readings with one instrument are averaged. Its error is the same
    /// in all of them, so the mean is no better than one reading, and worse by
    /// what they scatter. Earlier entries of a log are no readings of now: they
    /// say how it came, which is asked elsewhere.
    pub fn by_instrument(&self, point: ReadingPoint, state: State) -> Vec<Taken> {
        let mut all: Vec<(Instrument, Vec<(usize, &Reading)>)> = Vec::new();
        for (place, reading) in self.latest(point, state) {
            let instrument = reading.instrument_or_usual();
            match all.iter_mut().find(|(with, _)| *with == instrument) {
                Some((_, readings)) => readings.push((place, reading)),
                None => all.push((instrument, vec![(place, reading)])),
            }
        }
        all.into_iter()
            .map(|(instrument, readings)| {
                let n = readings.len() as f64;
                let mean = readings.iter().map(|(_, r)| r.value().si()).sum::<f64>() / n;
                let scatter = readings
                    .iter()
                    .map(|(_, r)| (r.value().si() - mean).powi(2))
                    .sum::<f64>()
                    / n;
                let own = readings
                    .iter()
                    .map(|(_, r)| r.standard_uncertainty())
                    .fold(f64::INFINITY, f64::min);
                Taken {
                    si: mean,
                    standard: own.hypot(scatter.sqrt()),
                    instrument,
                    readings: readings.into_iter().map(|(place, _)| place).collect(),
                }
            })
            .collect()
    }

    /// The sharpest of [`Call::by_instrument`].
    pub fn best(&self, point: ReadingPoint, state: State) -> Option<Taken> {
        self.by_instrument(point, state)
            .into_iter()
            .min_by(|a, b| a.standard.total_cmp(&b.standard))
    }

    /// Whether the compressor heats or cools in readings that do not say so:
    /// as the other readings say, else as the water changes, else by season.
    pub fn usual_mode(&self) -> Option<OperatingMode> {
        use OperatingMode as M;
        let stated = self
            .file
            .visit
            .readings
            .iter()
            .filter(|reading| reading.phase == Phase::Found)
            .find_map(|reading| {
                reading
                    .mode
                    .filter(|mode| matches!(mode, M::Heating | M::Cooling))
            });
        let by_water = || {
            let entering = self.best(ReadingPoint::EnteringWater, State::Running)?;
            let leaving = self.best(ReadingPoint::LeavingWater, State::Running)?;
            let fall = entering.si - leaving.si;
            (fall.abs() > 2.0 * entering.standard.hypot(leaving.standard))
                .then_some(if fall > 0.0 { M::Heating } else { M::Cooling })
        };
        let by_season = || match self.season()?.0 {
            Season::Heating => Some(M::Heating),
            Season::Cooling => Some(M::Cooling),
        };
        stated.or_else(by_water).or_else(by_season)
    }

    /// What one instrument each said with the compressor on, by mode: readings
    /// that state it, and those that do not where it is the usual one.
    pub fn with_compressor(&self, point: ReadingPoint, mode: OperatingMode) -> Vec<Taken> {
        let stated = self
            .readings(point, State::Compressor(mode))
            .any(|(_, reading)| reading.mode.is_some());
        if stated || self.usual_mode() == Some(mode) {
            self.by_instrument(point, State::Compressor(mode))
        } else {
            Vec::new()
        }
    }

    /// The sharpest of [`Call::with_compressor`].
    pub fn best_with_compressor(&self, point: ReadingPoint, mode: OperatingMode) -> Option<Taken> {
        self.with_compressor(point, mode)
            .into_iter()
            .min_by(|a, b| a.standard.total_cmp(&b.standard))
    }

    /// The season, and how it is known.
    pub fn season(&self) -> Option<(Season, SeasonBasis)> {
        season(self.file, self.day)
    }

    /// The fluid to compute with.
    pub fn fluid(&self) -> Fluid {
        self.model.fluid.solution()
    }

    /// Mean temperature of the loop now, with the readings it comes from: the
    /// loop reading, else the mean of what enters and leaves, else a wide guess
    /// by season.
    pub fn loop_temperature(&self) -> (Uncertain<Temperature>, Vec<usize>) {
        if let Some(read) = self.best(ReadingPoint::LoopTemperature, State::Any) {
            let standard = read.standard.hypot(LOOP_READING_SPREAD);
            let value = Temperature::from_si(read.si);
            return (Uncertain::new(value, standard), read.readings);
        }
        let points = [ReadingPoint::EnteringWater, ReadingPoint::LeavingWater];
        let read: Vec<Taken> = points
            .into_iter()
            .filter_map(|point| self.best(point, State::Any))
            .collect();
        if !read.is_empty() {
            let mean = read.iter().map(|taken| taken.si).sum::<f64>() / read.len() as f64;
            let own = read.iter().map(|taken| taken.standard).fold(0.0, f64::max);
            let places = read.into_iter().flat_map(|taken| taken.readings).collect();
            let value = Temperature::from_si(mean);
            return (
                Uncertain::new(value, own.hypot(WATER_TO_LOOP_SPREAD)),
                places,
            );
        }
        (guess(self.season().map(|(season, _)| season)), Vec::new())
    }
}

/// A visit is over within so many hours. Judgement.
const NOW_HOURS: i64 = 12;
/// A loop is not of one temperature: what one thermometer says of it. Judgement.
const LOOP_READING_SPREAD: f64 = 1.0;
/// The same for what enters and leaves the heat pump. Judgement.
const WATER_TO_LOOP_SPREAD: f64 = 1.5;

/// Temperature of a loop that nobody measured, by season: 40 °F in heating and
/// 75 °F in cooling, the middle of the usual 25 to 50 and 50 to 100 °F of
/// entering water (common practice, no source), and ground between.
pub fn guess(season: Option<Season>) -> Uncertain<Temperature> {
    let (celsius, spread) = match season {
        Some(Season::Heating) => (4.0, 4.0),
        Some(Season::Cooling) => (23.0, 7.0),
        None => (12.0, 9.0),
    };
    Uncertain::new(Temperature::from_celsius(celsius), spread)
}
