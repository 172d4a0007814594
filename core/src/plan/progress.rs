//! How far a step of the plan is, and what it still wants before it is done.
//!
//! A step is done when its cautions are acknowledged, every step that it rests on is
//! settled, every gate of it has an entry that passes and every timer of it has run
//! to its end. Without the cautions it is never done. Without the rest a person may
//! mark it as done all the same, for a reason that is written down; the step is then
//! not as good as done, and every reader is told.

use super::id::CautionId;
use super::library::Looked;
use super::terms::{Observation, ProofTime, Rule, Stage};
use super::work::{Gate, Limit, PlannedProof, PlannedStep, PlannedTimer, WorkPlan};
use crate::named::named;
use crate::records::{Action, PlainMeasure, Reading, ReadingPoint, StartedTimer};
use crate::units::{Dimension, Duration, Quantity, Temperature, Unit};
use chrono::{DateTime, NaiveDate, Utc};

named! {
    /// How far a step is.
    #[derive(Copy, Clone, PartialEq, Eq, Debug)]
    pub enum Progress {
        /// Still to be done.
        Open = "open",
        /// Done, and everything that it wants is met.
        Done = "done",
        /// Marked as done, though something that it wants is not met, and nobody said why.
        Unmet = "unmet",
        /// Done all the same: something that it wants is not met, for a reason.
        Excused = "excused",
        /// Left out for a reason.
        LeftOut = "skipped",
    }
}

/// What a step wants before it is done.
#[derive(Clone, PartialEq, Debug)]
pub enum Want<'a> {
    /// A gate that is not passed.
    Gate {
        /// The gate.
        gate: &'a Gate,
        /// What was entered; none where nothing was.
        found: Option<PlainMeasure>,
    },
    /// A timer that has not run to its end.
    Timer {
        /// The timer.
        timer: &'a PlannedTimer,
        /// What is known of it.
        run: Run,
    },
    /// A step that it rests on, by its identifier, that was not done before it.
    Earlier(&'a str),
}

impl Progress {
    /// Whether nobody has to come back to the step.
    pub fn is_settled(self) -> bool {
        !matches!(self, Self::Open | Self::Unmet)
    }
}

/// How long a timer has run.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Run {
    /// It was not started.
    NotStarted,
    /// It was started, and when it ended is not known.
    EndUnknown(DateTime<Utc>),
    /// It ran so long.
    For(Duration),
}

impl Looked {
    /// Its identifier, as entries name it.
    pub fn id(self) -> &'static str {
        match self {
            Self::Reading(point) => point.id(),
            Self::Observation(seen) => seen.id(),
        }
    }
}

impl Limit {
    /// Whether a value in SI is on the good side. A hair of tolerance keeps the
    /// limit itself there.
    fn holds(&self, rule: Rule, si: f64) -> bool {
        let limit = self.value.si;
        let hair = 1e-9 * limit.abs().max(1e-9);
        match rule {
            Rule::AtMost => si <= limit + hair,
            Rule::AtLeast => si >= limit - hair,
        }
    }
}

impl Gate {
    /// Whether it is worked out of other entries of its step and not entered itself.
    pub fn is_worked_out(&self) -> bool {
        self.looked == Looked::Observation(Observation::SampleDifference)
    }

    /// What was entered for it, if that measures what it asks for, or worked out of
    /// what was.
    pub fn found(&self, action: &Action) -> Option<PlainMeasure> {
        if self.is_worked_out() {
            let samples = [
                ReadingPoint::FreezePointSupply,
                ReadingPoint::FreezePointReturn,
            ];
            let [supply, back] =
                samples.map(|point| entered(action, point.id(), Temperature::DIMENSION));
            let (supply, back) = (supply?, back?);
            let unit = match supply.unit {
                Unit::Fahrenheit => Unit::DifferenceFahrenheit,
                _ => Unit::DifferenceKelvin,
            };
            let kelvin = supply.unit.to_si(supply.value) - back.unit.to_si(back.value);
            // To the thousandth: what is left beyond comes of changing units.
            let value = (unit.from_si(kelvin.abs()) * 1e3).round() / 1e3;
            return Some(PlainMeasure { value, unit });
        }
        entered(action, self.looked.id(), self.limit.value.dimension)
    }

    /// Whether that passes. The number is judged as it was written; what it is
    /// uncertain by is shown beside it, not counted in.
    pub fn passes(&self, found: &PlainMeasure) -> bool {
        self.limit.holds(self.rule, found.unit.to_si(found.value))
    }
}

/// What was entered for what a gate of the step looks at.
fn entered(action: &Action, looked: &str, dimension: Dimension) -> Option<PlainMeasure> {
    let entry = action.gates.iter().find(|entry| entry.looked == looked)?;
    let unit = Unit::of(dimension).find(|unit| unit.symbol() == entry.unit)?;
    let value = entry.value;
    Some(PlainMeasure { value, unit })
}

impl StartedTimer {
    /// How long it had run at a moment; until its end, once that is known.
    fn ran(&self, now: Option<DateTime<Utc>>) -> Run {
        let Some(end) = self.stopped_at.or(now) else {
            return Run::EndUnknown(self.started_at);
        };
        // A clock that was set back has measured nothing.
        let seconds = (end - self.started_at).as_seconds_f64().max(0.0);
        Run::For(Duration::from_si(seconds))
    }
}

impl PlannedTimer {
    /// How long it has run. A timer that is under way has no end yet: it is
    /// counted up to `now`, if that is given.
    pub fn run(&self, action: &Action, now: Option<DateTime<Utc>>) -> Run {
        let kind = self.kind.id();
        let started = action.timers.iter().find(|timer| timer.kind == kind);
        started.map_or(Run::NotStarted, |started| started.ran(now))
    }

    /// Whether that is long enough.
    pub fn met(&self, run: Run) -> bool {
        match run {
            Run::For(ran) => self.time.holds(Rule::AtLeast, ran.si()),
            Run::NotStarted | Run::EndUnknown(_) => false,
        }
    }
}

impl PlannedStep {
    /// Cautions that have to be acknowledged before it is done, and are not.
    pub fn unacknowledged(&self, action: &Action) -> Vec<&CautionId> {
        let known = |caution: &&CautionId| {
            let mut acknowledged = action.acknowledged.iter();
            acknowledged.any(|known| known == caution.as_str())
        };
        let asked = self.cautions.iter().filter(|_| self.acknowledge);
        asked.filter(|caution| !known(caution)).collect()
    }

    /// Whether a later step rests on this one: it holds the work by a gate, or makes
    /// safe what can hurt somebody at the other. What is told and handed over at the
    /// end is told as it stands, finished or not.
    fn carries(&self, later: &Self) -> bool {
        let gate = !self.gate.is_empty() && later.stage != Stage::HandOver;
        let safe = self.stage.makes_safe() && self.stage < later.stage;
        gate || (safe && !later.hazards.is_empty())
    }

    /// Everything that it still wants: steps before it, gates, timers.
    pub fn wants<'a>(&'a self, action: &'a Action, now: Option<DateTime<Utc>>) -> Vec<Want<'a>> {
        let ahead = action.ahead_of.iter();
        let earlier = ahead.map(|step| Want::Earlier(step));
        let gates = self.gate.iter().filter_map(|gate| {
            let found = gate.found(action);
            let passed = found.is_some_and(|found| gate.passes(&found));
            (!passed).then_some(Want::Gate { gate, found })
        });
        let timers = self.timers.iter().filter_map(|timer| {
            let run = timer.run(action, now);
            (!timer.met(run)).then_some(Want::Timer { timer, run })
        });
        earlier.chain(gates).chain(timers).collect()
    }

    /// How far it is, by what was noted of it.
    pub fn progress(&self, action: &Action) -> Progress {
        if action.skipped.is_some() {
            return Progress::LeftOut;
        }
        if !action.done {
            return Progress::Open;
        }
        match (self.wants(action, None).is_empty(), &action.without) {
            (true, _) => Progress::Done,
            (false, Some(_)) => Progress::Excused,
            (false, None) => Progress::Unmet,
        }
    }
}

impl WorkPlan {
    /// The steps before this one that it rests on and that somebody still has to come
    /// back to.
    pub fn unsettled_before(
        &self,
        step: &PlannedStep,
        progress: impl Fn(&PlannedStep) -> Progress,
    ) -> Vec<&PlannedStep> {
        let before = self.steps.iter();
        let before = before.filter(|known| known.number < step.number && known.carries(step));
        before
            .filter(|known| !progress(known).is_settled())
            .collect()
    }
}

impl PlannedProof {
    /// Whether a reading lies in the band; none where no band is known.
    pub fn proves(&self, reading: &Reading) -> Option<bool> {
        let read = reading.value();
        let si = read.unit.to_si(read.value);
        let low = self.at_least.as_ref();
        let low = low.map(|end| end.holds(Rule::AtLeast, si));
        let high = self.at_most.as_ref();
        let high = high.map(|end| end.holds(Rule::AtMost, si));
        match (low, high) {
            (None, None) => None,
            (low, high) => Some(low.unwrap_or(true) && high.unwrap_or(true)),
        }
    }
}

impl ProofTime {
    /// Those of the readings of a point as left that belong to it: what is read on
    /// the first day proves the work, what is read on a later one that it holds. A
    /// reading without a time was taken on the day of the visit.
    pub fn of<'a>(self, left: &[&'a Reading], visited: NaiveDate) -> Vec<&'a Reading> {
        let day = |reading: &Reading| reading.taken_at.map_or(visited, |at| at.date_naive());
        let Some(first) = left.iter().map(|reading| day(reading)).min() else {
            return Vec::new();
        };
        let belongs = |reading: &&Reading| {
            let passed = (day(reading) - first).num_days();
            match self {
                Self::Now => passed < 1,
                Self::Rechecks => passed >= 1,
                // The pipe relaxes by the logarithm of time: a reading belongs to the
                // recheck that is nearest on that scale (√7 and √210 days between them).
                Self::AfterDay => (1..=2).contains(&passed),
                Self::AfterWeek => (3..=14).contains(&passed),
                Self::AfterMonth => passed > 14,
            }
        };
        left.iter().copied().filter(belongs).collect()
    }
    /// Whether it is taken on a later day.
    pub fn is_later(self) -> bool {
        self != Self::Now
    }
}

#[cfg(test)]
mod tests;
