//! The work plan of a call, in the person's words.

mod gates;
mod unproved;
mod view;
mod wants;

pub(super) use wants::ran_words;

use super::Call;
use super::knowledge::knowledge;
use super::types::PlanView;
use crate::diagnosis::{CauseId, CauseKind, Diagnosis, Verdict};
use crate::evidence::lies;
use crate::plan::quantity::Conditions;
use crate::plan::{ProcedureId, Treatment, WorkPlan, work_plan};
use crate::records::{Instrument, Phase, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Quantity, Temperature};
use std::collections::BTreeSet;

/// A second cause is treated on the same visit when it is at least this probable.
/// Judgement.
const WORTH_TREATING: f64 = 0.35;
/// Below this nothing is treated on suspicion: there is only something to look for.
/// Judgement.
const WORTH_SUSPECTING: f64 = 0.1;
/// An instrument is tried on the same visit when it is this probable that it lies. Judgement.
const WORTH_TRYING: f64 = 0.5;
/// No more causes than this are treated in one plan.
const TREATED: usize = 2;
/// Loop temperature where nothing was read: 13 ± 8 °C. Judgement.
const USUAL_LOOP_CELSIUS: f64 = 13.0;
const USUAL_LOOP_SPREAD: f64 = 8.0;
/// How far the mean of entering and leaving water strays from the loop's. Judgement.
const MEAN_SPREAD: f64 = 1.5;

impl Call {
    /// What to do; none when there is nothing to treat.
    pub(super) fn plan(&self) -> Option<PlanView> {
        Some(self.plan_view(self.work_plan()?))
    }

    /// The plan as it was worked out.
    pub(super) fn work_plan(&self) -> Option<&WorkPlan> {
        self.plan.get_or_init(|| self.worked_out()).as_ref()
    }

    fn worked_out(&self) -> Option<WorkPlan> {
        let diagnosis = self.diagnosis.as_ref()?;
        let treatments = treatments(diagnosis);
        work_plan(
            &knowledge().library,
            &treatments,
            &self.file,
            &self.model,
            self.conditions(),
        )
        .ok()
    }

    /// What the readings say of the day.
    pub(super) fn conditions(&self) -> Conditions {
        let usual = || {
            Uncertain::new(
                Temperature::from_celsius(USUAL_LOOP_CELSIUS),
                USUAL_LOOP_SPREAD,
            )
        };
        let read = self.read_loop_temperature(Phase::Found);
        Conditions {
            loop_temperature: read.unwrap_or_else(usual),
            lowest_leaving: None,
            year: Some((self.year(read), self.day_of_year())),
            learned: self.learned_since_charge().cloned(),
            doubted: self.doubted(),
        }
    }

    /// The instruments that the diagnosis doubts.
    fn doubted(&self) -> BTreeSet<Instrument> {
        let doubted = self
            .diagnosis
            .iter()
            .flat_map(|diagnosis| &diagnosis.doubted);
        let causes: BTreeSet<&str> = doubted.map(|doubted| doubted.instrument.as_str()).collect();
        let all = Instrument::ALL.into_iter();
        all.filter(|instrument| lies(*instrument).is_some_and(|cause| causes.contains(cause)))
            .collect()
    }

    /// The loop at rest, else the mean of entering and leaving water, as read.
    pub(super) fn read_loop_temperature(&self, phase: Phase) -> Option<Uncertain<Temperature>> {
        let read = |point: ReadingPoint| {
            let readings = self.file.visit.readings.iter().rev();
            let mut found = readings.filter(|r| r.point() == point && r.phase == phase);
            found.find_map(|r| Some((r.quantity::<Temperature>()?, r.standard_uncertainty())))
        };
        if let Some((rest, spread)) = read(ReadingPoint::LoopTemperature) {
            return Some(Uncertain::new(rest, spread));
        }
        let mean = match (
            read(ReadingPoint::EnteringWater),
            read(ReadingPoint::LeavingWater),
        ) {
            (Some((entering, _)), Some((leaving, _))) => {
                Temperature::from_si((entering.si() + leaving.si()) / 2.0)
            }
            (Some((one, _)), None) | (None, Some((one, _))) => one,
            (None, None) => return None,
        };
        Some(Uncertain::new(mean, MEAN_SPREAD))
    }

    fn words(&self, key: &str) -> String {
        self.wording.catalog().text(key)
    }
}

/// What to treat: what the verdict names, or the most probable cause that has a
/// procedure, and a second one if it is probable too.
fn treatments(diagnosis: &Diagnosis) -> Vec<Treatment> {
    let graph = &knowledge().graph;
    let named: Vec<_> = match &diagnosis.verdict {
        Verdict::Cause { cause, .. } => vec![cause.clone()],
        Verdict::Pair { causes, .. } | Verdict::CannotTellApart { causes, .. } => causes.clone(),
        Verdict::NothingToCorrect { behaviour, .. } => behaviour.iter().cloned().collect(),
        Verdict::NotTheLoop { leading, .. } => leading.iter().cloned().collect(),
        Verdict::Undecided { leading } => {
            let probable = |cause: &&CauseId| {
                let mut ranked = diagnosis.causes.iter();
                ranked.any(|r| r.cause == **cause && r.probability >= WORTH_SUSPECTING)
            };
            leading.iter().filter(probable).cloned().collect()
        }
        Verdict::InstrumentFirst { instrument, .. } => vec![instrument.clone()],
    };
    let nothing_wrong = matches!(diagnosis.verdict, Verdict::NothingToCorrect { .. });
    let also = diagnosis
        .causes
        .iter()
        .filter(|_| !nothing_wrong)
        .filter(|ranked| ranked.kind != CauseKind::Instrument)
        .filter(|ranked| ranked.probability >= WORTH_TREATING)
        .map(|ranked| ranked.cause.clone());
    let candidates: Vec<CauseId> = named.into_iter().chain(also).collect();
    let normal = |cause: &CauseId| {
        let place = graph.find_cause(cause);
        place.is_some_and(|place| graph.cause(place).kind == CauseKind::Normal)
    };
    // What is put right is not left alone as well: beside a fault ordinary behaviour
    // brings no steps, and no proof for the same moment with other limits.
    let fault = candidates.iter().any(|cause| !normal(cause));
    let mut treatments: Vec<Treatment> = Vec::new();
    for cause in candidates {
        if fault && normal(&cause) {
            continue;
        }
        let place = graph.find_cause(&cause);
        let procedure = place.and_then(|place| graph.cause(place).procedure.as_ref());
        let Some(procedure) = procedure else { continue };
        let known = treatments
            .iter()
            .any(|treatment| treatment.cause == cause.as_str());
        if !known && treatments.len() < TREATED {
            treatments.push(Treatment {
                cause: cause.as_str().to_owned(),
                procedure: ProcedureId::new(procedure.as_str()),
            });
        }
    }
    // An instrument that hardly tells the truth is tried on the same visit: what is put
    // right is proven with it.
    let lying = diagnosis.doubted.iter();
    for doubted in lying.filter(|doubted| doubted.probability >= WORTH_TRYING) {
        let place = graph.find_cause(&doubted.instrument);
        let procedure = place.and_then(|place| graph.cause(place).procedure.as_ref());
        let cause = doubted.instrument.as_str();
        let known = treatments.iter().any(|treatment| treatment.cause == cause);
        if let Some(procedure) = procedure.filter(|_| !known) {
            treatments.push(Treatment {
                cause: cause.to_owned(),
                procedure: ProcedureId::new(procedure.as_str()),
            });
        }
    }
    treatments
}

#[cfg(test)]
mod tests;
