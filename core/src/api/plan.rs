//! The work plan of a call, in the person's words.

use super::Call;
use super::knowledge::knowledge;
use super::steps::{looked_id, looked_key};
use super::types::{
    CautionView, CriterionView, FigureView, GateView, PlanView, ProofView, QuantityView, StepView,
    TimerView, UnitView,
};
use crate::diagnosis::{CauseKind, Diagnosis, Verdict};
use crate::figures::{Authority, Figure, Reasoning};
use crate::plan::quantity::{Computed, Conditions, Lack, Part, QuantityKind, Remark};
use crate::plan::{
    Basis, Gate, Limit, Looked, Origin, PlanNote, PlannedProof, PlannedStep, PlannedTimer,
    ProcedureId, Rule, Treatment, WorkPlan, work_plan,
};
use crate::records::{Action, Phase, Reading, ReadingPoint};
use crate::text::Args;
use crate::uncertainty::Uncertain;
use crate::units::{Duration, Quantity, Temperature, Unit};

/// A second cause is treated on the same visit when it is at least this probable.
/// Judgement.
const WORTH_TREATING: f64 = 0.35;
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
        }
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

    fn plan_view(&self, plan: &WorkPlan) -> PlanView {
        let corrections = plan.corrections.iter();
        PlanView {
            treats: corrections
                .map(|correction| {
                    let causes = correction.causes.iter();
                    let causes: Vec<String> = causes
                        .map(|id| self.words(&format!("cause-{id}")))
                        .collect();
                    let args = Args::new().text("causes", causes.join(", ")).text(
                        "procedure",
                        self.words(&format!("procedure-{}", correction.procedure.as_str())),
                    );
                    self.wording.catalog().fill("plan-treats", &args)
                })
                .collect(),
            tools: plan
                .tools
                .iter()
                .map(|id| self.words(&format!("plan-tool-{}", id.as_str())))
                .collect(),
            materials: plan
                .materials
                .iter()
                .map(|id| self.words(&format!("plan-material-{}", id.as_str())))
                .collect(),
            steps: plan
                .steps
                .iter()
                .map(|step| self.step(plan, step))
                .collect(),
            proof: plan
                .proofs
                .iter()
                .map(|proof| self.proof(plan, proof))
                .collect(),
            remarks: self.remarks(plan),
        }
    }

    fn remarks(&self, plan: &WorkPlan) -> Vec<String> {
        let catalog = self.wording.catalog();
        let step = |id: &crate::plan::StepId| self.words(&format!("plan-step-{}", id.as_str()));
        let said = plan.sheet.remarks.iter().map(|remark| {
            let show = |figure: &Figure| figure.text(self.wording.units);
            let args = match remark {
                Remark::LargeHeader { velocity } => Args::new().text("velocity", show(velocity)),
                Remark::NoPressureServes {
                    inside,
                    short,
                    over,
                } => Args::new()
                    .text("inside", show(inside))
                    .text("short", show(short))
                    .text("over", show(over)),
                Remark::LimitedByRating { inside, short } => Args::new()
                    .text("inside", show(inside))
                    .text("short", show(short)),
                _ => Args::new(),
            };
            catalog.fill(&format!("plan-remark-{}", remark.id()), &args)
        });
        let noted = plan.notes.iter().filter_map(|note| match note {
            PlanNote::Excluded { kept, dropped } => {
                let args = Args::new()
                    .text("kept", step(kept))
                    .text("dropped", step(dropped));
                Some(catalog.fill("plan-note-excluded", &args))
            }
            // A smaller step inside a larger one is nothing to tell.
            PlanNote::Superseded { .. } => None,
            PlanNote::NotForThisSystem { procedure } => {
                let name = self.words(&format!("procedure-{}", procedure.as_str()));
                Some(catalog.fill("plan-note-not-here", &Args::new().text("procedure", name)))
            }
        });
        said.chain(noted).collect()
    }

    fn step(&self, plan: &WorkPlan, step: &PlannedStep) -> StepView {
        let id = step.id.as_str();
        let actions = self.file.visit.actions.iter().rev();
        let mut actions = actions.filter(|action| action.step.as_deref() == Some(id));
        let action = actions.next();
        let none = Action::default();
        let taken_up = action.unwrap_or(&none);
        StepView {
            id: id.to_owned(),
            stage: self.words(&format!("plan-stage-{}", step.stage.id())),
            text: self.words(&format!("plan-step-{id}")),
            cautions: step
                .cautions
                .iter()
                .map(|caution| CautionView {
                    id: caution.as_str().to_owned(),
                    text: self.words(&format!("plan-caution-{}", caution.as_str())),
                    acknowledge: step.acknowledge,
                    acknowledged: taken_up
                        .acknowledged
                        .iter()
                        .any(|known| known == caution.as_str()),
                })
                .collect(),
            quantities: self.quantities(plan, step),
            gate: self.gate(plan, &step.gate, taken_up),
            timers: step
                .timers
                .iter()
                .map(|timer| self.timer(plan, timer, taken_up))
                .collect(),
            done: action.map(|action| action.done),
            skipped: taken_up.skipped.clone(),
            minutes: taken_up
                .duration
                .map(|took| Unit::Minute.from_si(took.get().si()).to_string()),
            parts: taken_up.parts.clone(),
        }
    }

    fn quantities(&self, plan: &WorkPlan, step: &PlannedStep) -> Vec<QuantityView> {
        let mut views = Vec::new();
        for kind in &step.quantities {
            let mut computed = plan.sheet.all(*kind).peekable();
            if computed.peek().is_none() {
                let lacking = plan
                    .sheet
                    .lacking
                    .iter()
                    .find(|lacking| lacking.kind == *kind);
                if let Some(lacking) = lacking.filter(|lacking| lacking.lack != Lack::FlowCentre) {
                    views.push(QuantityView {
                        label: self.quantity_label(*kind, Part::Whole),
                        value: self.words(&format!("plan-lack-{}", lacking.lack.id())),
                        why: None,
                    });
                }
            }
            views.extend(computed.map(|computed| self.quantity(computed)));
        }
        views
    }

    fn timer(&self, plan: &WorkPlan, timer: &PlannedTimer, taken_up: &Action) -> TimerView {
        let kind = timer.kind.id();
        let started = taken_up.timers.iter().find(|started| started.kind == kind);
        TimerView {
            kind: kind.to_owned(),
            label: self.words(&format!("plan-timer-{kind}")),
            shown: self.limit(&timer.time),
            seconds: timer.time.value.si,
            started_at: started.map(|started| started.started_at.to_rfc3339()),
            why: self.why_limit(&timer.time, plan),
        }
    }

    pub(super) fn quantity_label(&self, kind: QuantityKind, part: Part) -> String {
        let catalog = self.wording.catalog();
        let label = catalog.text(&format!("plan-quantity-{}", kind.id()));
        let (key, number) = match part {
            Part::Whole => return label,
            Part::Circuits(at) => ("circuits", at + 1),
            Part::SupplyHeader => ("supply-header", 0),
            Part::ReturnHeader => ("return-header", 0),
            Part::AllOpen => ("all-open", 0),
            Part::Group(at) => ("group", at + 1),
        };
        let args = Args::new().text("number", number.to_string());
        format!(
            "{label} ({})",
            catalog.fill(&format!("plan-part-{key}"), &args)
        )
    }

    fn quantity(&self, computed: &Computed) -> QuantityView {
        QuantityView {
            label: self.quantity_label(computed.kind, computed.part),
            value: computed.figure.text(self.wording.units),
            why: Some(self.why(&computed.reasoning)),
        }
    }

    fn why(&self, reasoning: &Reasoning) -> FigureView {
        let catalog = self.wording.catalog();
        FigureView {
            measured: None,
            expected: None,
            formula: reasoning.formula_text(catalog),
            inputs: reasoning.input_texts(catalog, self.wording.units),
            source: reasoning.authority_text(catalog),
        }
    }

    /// What a limit rests on: the quantity computed for it, or its origin.
    fn why_limit(&self, limit: &Limit, plan: &WorkPlan) -> FigureView {
        match &limit.basis {
            Basis::Computed(kind) => match plan.sheet.get(*kind) {
                Some(computed) => self.why(&computed.reasoning),
                None => self.why(&Reasoning::new("plan-fixed", Authority::Judgement)),
            },
            Basis::Fixed(origin) => {
                let catalog = self.wording.catalog();
                let citation = origin
                    .source()
                    .and_then(|id| knowledge().library.citation(id));
                let source = match origin {
                    Origin::Published(_) => citation.unwrap_or_default().to_owned(),
                    Origin::FromMemory(_) => {
                        let args = Args::new().text("source", citation.unwrap_or_default());
                        catalog.fill("authority-from-memory", &args)
                    }
                    Origin::CommonPractice => catalog.text("authority-common-practice"),
                    Origin::Judgement => catalog.text("authority-judgement"),
                };
                FigureView {
                    source,
                    ..self.why(&Reasoning::new("plan-fixed", Authority::Judgement))
                }
            }
        }
    }

    /// A limit as it is shown: a long time in hours, anything else in its unit.
    fn limit(&self, limit: &Limit) -> String {
        let two_hours = Duration::from_si(7200.0);
        let figure = &limit.value;
        if figure.dimension == Duration::DIMENSION && figure.si >= two_hours.si() {
            return figure
                .shown_in(Unit::Hour, Unit::Hour)
                .text(self.wording.units);
        }
        figure.text(self.wording.units)
    }

    fn gate(&self, plan: &WorkPlan, gates: &[Gate], taken_up: &Action) -> Option<GateView> {
        let first = gates.first()?;
        let catalog = self.wording.catalog();
        let criterion = |gate: &Gate| {
            let what = match gate.looked {
                Looked::Reading(point) => self.words(&format!("point-{}", point.id())),
                Looked::Observation(seen) => self.words(&format!("plan-observation-{}", seen.id())),
            };
            let args = Args::new()
                .text("what", what)
                .text("rule", self.words(&format!("plan-rule-{}", gate.rule.id())))
                .text("limit", self.limit(&gate.limit));
            catalog.fill("plan-gate-pass", &args)
        };
        let back = plan
            .steps
            .iter()
            .find(|step| step.number == first.return_to)?;
        let args = Args::new().text("number", back.number.to_string()).text(
            "step",
            self.words(&format!("plan-step-{}", back.id.as_str())),
        );
        let criteria: Vec<CriterionView> = gates
            .iter()
            .map(|gate| self.criterion(plan, gate, taken_up))
            .collect();
        let passed = criteria.iter().map(|criterion| criterion.passed);
        let verdict = if passed.clone().any(|passed| passed == Some(false)) {
            "failed"
        } else if passed.clone().all(|passed| passed == Some(true)) {
            "passed"
        } else {
            "open"
        };
        Some(GateView {
            criteria,
            verdict: verdict.to_owned(),
            pass: gates.iter().map(criterion).collect::<Vec<_>>().join(" "),
            otherwise: catalog.fill("plan-gate-back", &args),
            back_to: Some(back.id.as_str().to_owned()),
        })
    }

    /// One criterion with what was found. The number is judged as it was
    /// written; what it is uncertain by is shown beside it, not counted in.
    fn criterion(&self, plan: &WorkPlan, gate: &Gate, taken_up: &Action) -> CriterionView {
        let limit = &gate.limit.value;
        let looked = looked_id(gate.looked);
        let units: Vec<Unit> = Unit::of(limit.dimension).collect();
        let entry = taken_up.gates.iter().find(|entry| entry.looked == looked);
        let found = entry.and_then(|entry| {
            let unit = *units.iter().find(|unit| unit.symbol() == entry.unit)?;
            Some((entry.value, unit))
        });
        let passed = found.map(|(value, unit)| {
            // A hair of tolerance keeps the limit itself on the good side.
            let hair = 1e-9 * limit.si.abs().max(1e-9);
            match gate.rule {
                Rule::AtMost => unit.to_si(value) <= limit.si + hair,
                Rule::AtLeast => unit.to_si(value) >= limit.si - hair,
            }
        });
        let own = limit.unit(self.wording.units);
        let others = units.iter().copied().filter(|unit| *unit != own);
        let offered = std::iter::once(own).chain(others);
        CriterionView {
            looked: looked.to_owned(),
            label: self.words(&looked_key(gate.looked)),
            rule: {
                let rule = self.words(&format!("plan-rule-{}", gate.rule.id()));
                format!("{rule} {}", self.limit(&gate.limit))
            },
            units: offered
                .map(|unit| UnitView {
                    symbol: unit.symbol().to_owned(),
                    label: unit.display().to_owned(),
                })
                .collect(),
            signed: match gate.looked {
                Looked::Reading(point) => point.bounds().possible.0 < 0.0,
                Looked::Observation(_) => false,
            },
            value: found.map(|(value, _)| value.to_string()),
            unit: found.map_or(own, |(_, unit)| unit).symbol().to_owned(),
            passed,
            why: self.why_limit(&gate.limit, plan),
        }
    }

    fn proof(&self, plan: &WorkPlan, proof: &PlannedProof) -> ProofView {
        let catalog = self.wording.catalog();
        let ends =
            [&proof.at_least, &proof.at_most].map(|end| end.as_ref().map(|end| self.limit(end)));
        let expected = match ends {
            [Some(low), Some(high)] => Some(format!("{low} … {high}")),
            [Some(low), None] => Some(format!("≥ {low}")),
            [None, Some(high)] => Some(format!("≤ {high}")),
            [None, None] => None,
        };
        let shown = |phase: Phase| {
            let latest = self.latest(proof.reading, Some(phase));
            latest.map(reading_text)
        };
        let args = Args::new()
            .text(
                "point",
                self.words(&format!("point-{}", proof.reading.id())),
            )
            .text(
                "when",
                self.words(&format!("plan-proof-time-{}", proof.when.id())),
            );
        ProofView {
            point: proof.reading.id().to_owned(),
            label: catalog.fill("plan-proof-label", &args),
            expected,
            before: shown(Phase::Found),
            after: shown(Phase::Left),
            why: (proof.at_least.as_ref())
                .or(proof.at_most.as_ref())
                .map(|end| self.why_limit(end, plan)),
        }
    }
}

fn reading_text(reading: &Reading) -> String {
    let value = reading.value();
    crate::units::format::plus_minus(value.value, 0.0, value.unit)
}

/// What to treat: what the verdict names, or the most probable cause that has a
/// procedure, and a second one if it is probable too.
fn treatments(diagnosis: &Diagnosis) -> Vec<Treatment> {
    let graph = &knowledge().graph;
    let named: Vec<_> = match &diagnosis.verdict {
        Verdict::Cause { cause, .. } => vec![cause.clone()],
        Verdict::Pair { causes, .. } | Verdict::CannotTellApart { causes, .. } => causes.clone(),
        Verdict::NothingToCorrect { behaviour, .. } => behaviour.iter().cloned().collect(),
        Verdict::NotTheLoop { leading, .. } | Verdict::Undecided { leading } => {
            leading.iter().cloned().collect()
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
    let mut treatments: Vec<Treatment> = Vec::new();
    for cause in named.into_iter().chain(also) {
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
    treatments
}
