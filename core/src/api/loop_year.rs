//! What dated readings of a loop tell of its year: its temperature through the
//! seasons, and how far pipe and ground let the gauge move.

use super::Call;
use crate::evidence::{Call as EvidenceCall, State, believed};
use crate::model::topped_up;
use crate::pressure::belief::{Belief, Moment, Reading};
use crate::pressure::year::Year;
use crate::records::{Phase, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::Temperature;
use chrono::{Datelike, NaiveDate};

/// What the identifiers of leaks begin with, and how probable they may be
/// together where a loop is taken to be tight. Judgement.
const LEAKS: &str = "leak-";
const LEAK_RULED_OUT: f64 = 0.1;
/// A loop is not of one temperature: what one thermometer says of it, K. Judgement.
const THERMOMETER: f64 = 1.0;

impl Call {
    /// Place of this day in the year, days.
    pub(super) fn day_of_year(&self) -> f64 {
        f64::from(self.today.ordinal())
    }

    /// The loop's temperature over the year: the usual one, narrowed by what was
    /// read today. On which half of the Earth the site lies only a reading tells.
    pub(super) fn year(&self, read: Option<Uncertain<Temperature>>) -> Year {
        Year::told_by(self.day_of_year(), read)
    }

    /// Day of the charge on record.
    pub(super) fn charge_day(&self) -> Option<NaiveDate> {
        self.file.commissioning.charged_on()
    }

    /// What the charge on record and today's reading together tell of pipe and
    /// ground: how far this very loop moved. Only where nothing points to fluid
    /// having gone out or come in since, for that would be taken for the pipe.
    pub(super) fn learned_since_charge(&self) -> Option<&Belief> {
        self.loop_learned.get_or_init(|| self.learn()).as_ref()
    }

    fn learn(&self) -> Option<Belief> {
        let now = self.read_loop_temperature(Phase::Found)?;
        let diagnosis = self.diagnosis.as_ref()?;
        let leak: f64 = diagnosis
            .causes
            .iter()
            .filter(|cause| cause.cause.as_str().starts_with(LEAKS))
            .map(|cause| cause.probability)
            .sum();
        if leak > LEAK_RULED_OUT || topped_up(&self.file) {
            return None;
        }
        let call = EvidenceCall::new(&self.file, &self.model, self.today);
        let believed = believed(&call)?;
        let moment = Moment {
            elapsed: believed.elapsed,
            temperature: Uncertain::new(
                self.model.fluid.computable(now.value()),
                now.standard().hypot(THERMOMETER),
            ),
        };
        let taken: Vec<Reading> = call
            .by_instrument(ReadingPoint::StaticPressure, State::AtRest)
            .iter()
            .map(|taken| Reading {
                moment,
                pressure: taken.uncertain(),
            })
            .collect();
        if taken.is_empty() {
            return None;
        }
        believed.belief.after(&taken).ok()
    }
}
