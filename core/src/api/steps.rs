//! The work as it is done: steps, timers, gates, parts and minutes.

use super::types::StepChange;
use super::{ApiError, Engine};
use crate::plan::{Looked, Observation};
use crate::records::{
    Action, GateEntry, Phase, PlainMeasure, Reading, ReadingId, ReadingPoint, StartedTimer, VisitId,
};
use crate::store::VisitRecord;
use crate::units::{Dimension, Duration, Measure, Unit, parse};
use chrono::{DateTime, NaiveDate, Utc};

/// Longest time that one step can take. Beyond it is a slip of the pen.
const LONGEST_MINUTES: f64 = 6000.0;

impl Engine {
    /// Changes what is known of a step of the work plan; it is kept when this
    /// returns.
    ///
    /// # Errors
    /// [`ApiError`]; the visit is unchanged.
    pub fn change_step(
        &mut self,
        visit: &str,
        step: &str,
        change: &StepChange,
    ) -> Result<(), ApiError> {
        let before = self.record(visit)?;
        let mut actions = before.file.visit.actions.clone();
        let of_step = |action: &Action| action.step.as_deref() == Some(step);
        let place = actions.iter().rposition(of_step).unwrap_or_else(|| {
            actions.push(Action {
                step: Some(step.to_owned()),
                ..Action::default()
            });
            actions.len() - 1
        });
        // In range: found or pushed just above.
        let action = &mut actions[place];
        let mut reading = None;
        match change {
            StepChange::Done { done: false } => {
                // A step that is done has no timer under way: of one that has no end
                // nobody knows how long it ran.
                let under_way = !action.done;
                action
                    .timers
                    .retain(|timer| under_way || timer.stopped_at.is_some());
                action.done = false;
                action.skipped = None;
                action.without = None;
                action.ahead_of.clear();
            }
            StepChange::Done { done: true } => {
                let call = self.call(visit)?;
                let now = self.surroundings.now();
                if let Some(refusal) = call.refusal(step, action, now) {
                    return Err(refusal);
                }
                self.finish(action);
            }
            StepChange::Without { reason } => {
                let reason = written(reason).ok_or_else(|| {
                    let label = self.wording.catalog().text("step-without-reason");
                    ApiError::new("no-value", &[("field", &label)], self.wording)
                })?;
                // A reason stands for a gate, a timer or the order, not for a caution.
                let call = self.call(visit)?;
                if let Some(refusal) = call.unread_caution(step, action) {
                    return Err(refusal);
                }
                let mut ahead_of = call.ahead_of(step);
                // One that was done already may have been done before others still.
                let known = std::mem::take(&mut action.ahead_of).into_iter();
                ahead_of.extend(
                    known
                        .filter(|known| action.done && !ahead_of.contains(known))
                        .collect::<Vec<_>>(),
                );
                self.finish(action);
                action.without = Some(reason);
                action.ahead_of = ahead_of;
            }
            StepChange::Skipped { reason } => {
                action.skipped = written(reason.as_deref().unwrap_or_default());
                if action.skipped.is_some() {
                    action.done = false;
                    action.without = None;
                    action.ahead_of.clear();
                }
            }
            StepChange::Acknowledged { caution, yes } => {
                // What was done was done with its cautions read; a slip on the box must
                // not leave a step that is done without them.
                if !yes && action.done && action.acknowledged.contains(caution) {
                    return Err(self.call(visit)?.held_caution(step, caution));
                }
                action.acknowledged.retain(|known| known != caution);
                if *yes {
                    action.acknowledged.push(caution.clone());
                }
            }
            StepChange::Timer { kind, running } => {
                let now = self.surroundings.now();
                if *running {
                    action.timers.retain(|timer| timer.kind != *kind);
                    action.timers.push(StartedTimer {
                        kind: kind.clone(),
                        started_at: now,
                        stopped_at: None,
                    });
                } else {
                    // How long it ran stays on record.
                    stop(
                        action.timers.iter_mut().filter(|timer| timer.kind == *kind),
                        now,
                    );
                }
            }
            StepChange::Minutes { text } => action.duration = self.minutes(text)?,
            StepChange::Parts { text } => action.parts = written(text),
            StepChange::Note { text } => action.text = written(text),
            StepChange::Gate { looked, text, unit } => {
                action.gates.retain(|entry| entry.looked != *looked);
                let id = gate_reading_id(before.id, step, looked);
                reading = Some((id, None));
                if !text.trim().is_empty() {
                    let found = self.gate_entry(looked, text, unit)?;
                    reading = Some((
                        id,
                        self.gate_reading(&found, looked, before.file.visit.date),
                    ));
                    action.gates.push(GateEntry {
                        looked: looked.clone(),
                        value: found.value,
                        unit: found.unit.symbol().to_owned(),
                    });
                }
            }
        }
        let now = self.surroundings.now();
        self.store
            .put_actions(before.id, &actions, now)
            .map_err(|error| self.failed(&error))?;
        if let Some((id, reading)) = reading {
            self.keep_gate_reading(&before, id, reading.as_ref())?;
        }
        let label = self.wording.catalog().text(&format!("plan-step-{step}"));
        match change {
            StepChange::Parts { .. } | StepChange::Minutes { .. } | StepChange::Note { .. } => {
                self.written(label, before);
            }
            _ => self.entered(label, before),
        }
        Ok(())
    }

    /// Marks a step as done; its timers run no longer.
    fn finish(&self, action: &mut Action) {
        if !action.done {
            stop(action.timers.iter_mut(), self.surroundings.now());
        }
        action.done = true;
        action.skipped = None;
        action.without = None;
        action.ahead_of.clear();
    }

    fn minutes(&self, text: &str) -> Result<Option<Measure<Duration>>, ApiError> {
        if text.trim().is_empty() {
            return Ok(None);
        }
        let label = self.wording.catalog().text("step-minutes");
        let (value, unit) = parse::plain(text, Dimension::Duration, Some(Unit::Minute))
            .map_err(|error| ApiError::typed(&label, &error, self.wording))?;
        let minutes = Unit::Minute.from_si(unit.to_si(value));
        if (0.0..=LONGEST_MINUTES).contains(&minutes) {
            return Ok(Some(Measure::new(value, unit)));
        }
        let accepted = format!("0 … {LONGEST_MINUTES} min");
        let context = [
            ("field", label.as_str()),
            ("found", text),
            ("accepted", accepted.as_str()),
        ];
        Err(ApiError::new("out-of-range", &context, self.wording))
    }

    fn gate_entry(&self, looked: &str, text: &str, unit: &str) -> Result<PlainMeasure, ApiError> {
        let Some((what, dimension)) = looked_at(looked) else {
            let context = [("field", "gate"), ("found", looked)];
            return Err(ApiError::new("no-such-name", &context, self.wording));
        };
        let label = self.wording.catalog().text(&looked_key(what));
        let beside = Unit::of(dimension).find(|known| known.symbol() == unit);
        let (value, unit) = parse::plain(text, dimension, beside)
            .map_err(|error| ApiError::typed(&label, &error, self.wording))?;
        let found = PlainMeasure { value, unit };
        if let Looked::Reading(point) = what {
            Reading::new(point, found)
                .map_err(|error| ApiError::reading(&label, &error, self.wording))?;
        }
        Ok(found)
    }

    /// What is read at a gate is a reading of the system as it is left.
    fn gate_reading(
        &self,
        found: &PlainMeasure,
        looked: &str,
        visited: Option<NaiveDate>,
    ) -> Option<Reading> {
        let point = ReadingPoint::from_id(looked)?;
        let mut reading = Reading::new(point, *found).ok()?;
        reading.phase = Phase::Left;
        reading.taken_at = self.taken_later(visited);
        let own = self
            .settings
            .accuracy(reading.instrument_or_usual(), point.kind());
        match own {
            Some(own) => reading.with_accuracy(own).ok(),
            None => Some(reading),
        }
    }

    fn keep_gate_reading(
        &mut self,
        before: &VisitRecord,
        id: ReadingId,
        reading: Option<&Reading>,
    ) -> Result<(), ApiError> {
        let now = self.surroundings.now();
        match reading {
            Some(reading) => self.store.put_reading(before.id, id, reading, now),
            None => self.store.remove_reading(before.id, id, now),
        }
        .map_err(|error| self.failed(&error))
    }
}

/// An identifier that follows from visit, step and what is looked at, so that a
/// gate entered again is one reading (FNV-1a over the names).
fn gate_reading_id(visit: VisitId, step: &str, looked: &str) -> ReadingId {
    const BASIS: u128 = 0x6c62_272e_07bb_0142_62b8_2175_6295_c58d;
    const PRIME: u128 = 0x0000_0000_0100_0000_0000_0000_0000_013b;
    let names = [visit.0.as_bytes(), step.as_bytes(), b"/", looked.as_bytes()];
    let hash = names
        .iter()
        .flat_map(|name| name.iter())
        .fold(BASIS, |hash, byte| {
            (hash ^ u128::from(*byte)).wrapping_mul(PRIME)
        });
    ReadingId(uuid::Builder::from_custom_bytes(hash.to_be_bytes()).into_uuid())
}

/// Stops those that run.
fn stop<'a>(timers: impl Iterator<Item = &'a mut StartedTimer>, now: DateTime<Utc>) {
    for timer in timers {
        timer.stopped_at.get_or_insert(now);
    }
}

fn written(text: &str) -> Option<String> {
    Some(text.trim().to_owned()).filter(|text| !text.is_empty())
}

/// What an identifier at a gate names, and what it measures.
fn looked_at(id: &str) -> Option<(Looked, Dimension)> {
    if let Some(point) = ReadingPoint::from_id(id) {
        return Some((Looked::Reading(point), point.kind().dimension()));
    }
    let seen = Observation::from_id(id)?;
    Some((Looked::Observation(seen), seen.dimension()))
}

/// Catalog key of what is looked at.
pub(super) fn looked_key(looked: Looked) -> String {
    match looked {
        Looked::Reading(point) => format!("point-{}", point.id()),
        Looked::Observation(seen) => format!("plan-observation-{}", seen.id()),
    }
}
