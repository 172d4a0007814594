//! The plan with its steps and quantities, as it is shown.

use super::ran_words;
use crate::api::Call;
use crate::api::knowledge::knowledge;
use crate::api::types::{
    CautionView, EarlierView, FigureView, MaterialView, PlanView, ProofView, QuantityView,
    RemarkView, StepView, TimerView,
};
use crate::figures::{Authority, Figure, Reasoning};
use crate::plan::quantity::{Computed, Lack, Part, QuantityKind, Remark};
use crate::plan::{
    Basis, Limit, PlanNote, PlannedStep, PlannedTimer, Progress, Run, StepId, WorkPlan,
};
use crate::pressure::belief::Unknown;
use crate::records::Action;
use crate::text::Args;
use crate::units::{Quantity, Unit};

impl Call {
    pub(super) fn plan_view(&self, plan: &WorkPlan) -> PlanView {
        let corrections = plan.corrections.iter();
        let steps = plan.steps.iter().map(|step| self.step(plan, step));
        let steps: Vec<StepView> = steps.collect();
        let proof = plan.proofs.iter().map(|proof| self.proof(plan, proof));
        let proof: Vec<ProofView> = proof.collect();
        PlanView {
            treats: corrections
                .map(|correction| {
                    let causes = correction.causes.iter();
                    let causes: Vec<String> = causes
                        .map(|id| self.words(&format!("cause-{id}")))
                        .collect();
                    let procedure =
                        self.words(&format!("procedure-{}", correction.procedure.as_str()));
                    if causes.is_empty() {
                        return procedure;
                    }
                    let args = Args::new()
                        .text("causes", causes.join(", "))
                        .text("procedure", procedure);
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
                .map(|id| MaterialView {
                    label: self.words(&format!("plan-material-{}", id.as_str())),
                    amounts: self.quantities(plan, &plan.amounts(&knowledge().library, id), None),
                })
                .collect(),
            count: self.step_count(plan),
            unproved: self.open_of_plan(plan, &steps, &proof),
            steps,
            proof,
            remarks: self.remarks(plan),
        }
    }

    fn remarks(&self, plan: &WorkPlan) -> Vec<RemarkView> {
        let catalog = self.wording.catalog();
        let step = |id: &StepId| self.words(&format!("plan-step-{}", id.as_str()));
        let said = plan.sheet.remarks.iter().map(|remark| {
            let show = |figure: &Figure| figure.text(self.wording.units);
            let args = match remark {
                Remark::LargeHeader { velocity, .. } => {
                    Args::new().text("velocity", show(velocity))
                }
                Remark::NoPressureServes {
                    inside,
                    short,
                    over,
                    widest,
                } => Args::new()
                    .text("inside", show(inside))
                    .text("short", show(short))
                    .text("over", show(over))
                    .text("narrow", self.narrow(*widest)),
                Remark::BareLeast { inside } => Args::new().text("inside", show(inside)),
                Remark::PressureKept { inside, stood } => {
                    let day = stood.day().map(|day| day.to_string());
                    let day = Args::new().text("day", day.unwrap_or_default());
                    let stood = catalog.fill(&format!("plan-stood-{}", stood.id()), &day);
                    let args = Args::new().text("stood", stood);
                    match inside {
                        Some(inside) => args.text("inside", show(inside)),
                        None => args,
                    }
                }
                Remark::SeasonsUnsure { width, widest } => Args::new()
                    .text("width", show(width))
                    .text("narrow", self.narrow(*widest)),
                Remark::LossAboveRating { loss, rating } => Args::new()
                    .text("loss", show(loss))
                    .text("rating", show(rating)),
                Remark::MayPassRating { high, rating } => Args::new()
                    .text("high", show(high))
                    .text("rating", show(rating)),
                Remark::LimitedByRating { inside, short } => Args::new()
                    .text("inside", show(inside))
                    .text("short", show(short)),
                Remark::FreezesWhereItLeaves { freezes, leaving } => Args::new()
                    .text("freezes", show(freezes))
                    .text("leaving", show(leaving)),
                Remark::ComesBack { after } => Args::new().text("after", show(after)),
                Remark::LowestEnteringAssumed { entering } => {
                    Args::new().text("entering", show(entering))
                }
                Remark::HoldShows { shows } => Args::new().text("shows", show(shows)),
                Remark::HoldCannotShow { leak, shows } => Args::new()
                    .text("leak", show(leak))
                    .text("shows", show(shows)),
                _ => Args::new(),
            };
            RemarkView {
                words: catalog.fill(&format!("plan-remark-{}", remark.id()), &args),
                why: why_remark(remark, plan).map(|reasoning| self.why(&reasoning)),
            }
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
        let noted = noted.map(|words| RemarkView { words, why: None });
        said.chain(noted).collect()
    }

    /// What would make a band of pressures narrower.
    fn narrow(&self, widest: Option<Unknown>) -> String {
        let doubt = widest.map_or("none", |unknown| unknown.id());
        self.words(&format!("plan-narrow-{doubt}"))
    }

    fn step(&self, plan: &WorkPlan, step: &PlannedStep) -> StepView {
        let id = step.id.as_str();
        let (progress, action) = self.progress(step);
        let none = Action::default();
        let taken_up = action.unwrap_or(&none);
        let quantities = self.quantities(plan, &step.quantities, Some(step));
        let timers = step.timers.iter().map(|timer| TimerView {
            told: match &timer.time.basis {
                Basis::Computed(kind) | Basis::Usual(_, kind) => step.quantities.contains(kind),
                Basis::Fixed(_) => false,
            },
            ..self.timer(plan, timer, taken_up)
        });
        let timers = timers.collect();
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
            quantities,
            gate: self.gate(plan, &step.gate, taken_up),
            timers,
            done: action.map(|action| action.done),
            progress: progress.id().to_owned(),
            earlier: match progress.is_settled() {
                true => Vec::new(),
                false => self.earlier(plan, step),
            },
            wanting: match progress {
                Progress::Unmet | Progress::Excused | Progress::LeftOut => {
                    self.wanting(&step.wants(taken_up, None))
                }
                Progress::Open | Progress::Done => Vec::new(),
            },
            without: taken_up.without.clone(),
            skipped: taken_up.skipped.clone(),
            minutes: taken_up
                .duration
                .map(|took| Unit::Minute.from_si(took.get().si()).to_string()),
            parts: taken_up.parts.clone(),
            note: taken_up.text.clone(),
        }
    }

    fn earlier(&self, plan: &WorkPlan, step: &PlannedStep) -> Vec<EarlierView> {
        let earlier = self.unsettled_before(plan, step).into_iter();
        earlier
            .map(|step| EarlierView {
                id: step.id.as_str().to_owned(),
                text: self.step_in_short(step),
            })
            .collect()
    }

    /// The quantities of these kinds; `step` is the one at which they stand.
    fn quantities(
        &self,
        plan: &WorkPlan,
        kinds: &[QuantityKind],
        step: Option<&PlannedStep>,
    ) -> Vec<QuantityView> {
        let mut views = Vec::new();
        let unread = plan.sheet.remarks.contains(&Remark::ReadGaugeFirst);
        for kind in kinds {
            let mut computed = plan.sheet.all(*kind).peekable();
            if computed.peek().is_none() {
                let lack = self.lack(*kind, plan);
                if let Some(lack) = lack.filter(|lack| !lack.is_beside_the_point()) {
                    let usual = step.and_then(|step| step.usual(*kind));
                    views.push(self.lacking(plan, *kind, lack, usual));
                }
            }
            views.extend(computed.map(|computed| {
                let mut view = self.quantity(computed);
                if unread && *kind == QuantityKind::LeavePressure {
                    let value = Args::new().text("value", view.value);
                    view.value = self.wording.catalog().fill("plan-without-gauge", &value);
                }
                view
            }));
        }
        views
    }

    /// A quantity that could not be worked out: what is used instead, and why.
    fn lacking(
        &self,
        plan: &WorkPlan,
        kind: QuantityKind,
        lack: Lack,
        usual: Option<&Limit>,
    ) -> QuantityView {
        let (value, why) = match (lack.is_unknown(), usual) {
            (false, _) => (self.words(&format!("plan-lack-{}", lack.id())), None),
            (true, None) => (self.because("plan-not-worked-out", lack, ""), None),
            (true, Some(limit)) => {
                let value = self.because("plan-usual-figure", lack, &self.limit(limit));
                (value, Some(self.why_limit(limit, plan)))
            }
        };
        QuantityView {
            label: self.quantity_label(kind, Part::Whole),
            value,
            why,
        }
    }

    fn timer(&self, plan: &WorkPlan, timer: &PlannedTimer, taken_up: &Action) -> TimerView {
        let kind = timer.kind.id();
        let started = taken_up.timers.iter().find(|started| started.kind == kind);
        let run = timer.run(taken_up, None);
        TimerView {
            kind: kind.to_owned(),
            label: self.words(&format!("plan-timer-{kind}")),
            shown: self.limit(&timer.time),
            told: false,
            seconds: timer.time.value.si,
            started_at: started.map(|started| started.started_at.to_rfc3339()),
            stopped_at: started
                .and_then(|started| started.stopped_at)
                .map(|stopped| stopped.to_rfc3339()),
            ran: match run {
                Run::For(ran) => Some(ran_words(ran, timer.met(run))),
                Run::NotStarted | Run::EndUnknown(_) => None,
            },
            met: matches!(run, Run::For(_)).then(|| timer.met(run)),
            why: self.why_limit(&timer.time, plan),
        }
    }

    pub(in crate::api) fn quantity_label(&self, kind: QuantityKind, part: Part) -> String {
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

    pub(in crate::api) fn quantity(&self, computed: &Computed) -> QuantityView {
        QuantityView {
            label: self.quantity_label(computed.kind, computed.part),
            value: self.known_so_well(&computed.figure),
            why: Some(self.why(&computed.reasoning)),
        }
    }

    /// The figure, and that it is no basis to work on where it is hardly known.
    fn known_so_well(&self, figure: &Figure) -> String {
        let value = figure.text(self.wording.units);
        match figure.is_hardly_known() {
            true => self
                .wording
                .catalog()
                .fill("plan-hardly-known", &Args::new().text("value", value)),
            false => value,
        }
    }

    pub(in crate::api) fn why(&self, reasoning: &Reasoning) -> FigureView {
        let catalog = self.wording.catalog();
        FigureView {
            measured: None,
            expected: None,
            formula: reasoning.formula_text(catalog),
            inputs: reasoning.input_texts(catalog, self.wording.units),
            source: reasoning.authority_text(catalog),
        }
    }
}

/// Where the numbers of a remark come from, if it holds any.
fn why_remark(remark: &Remark, plan: &WorkPlan) -> Option<Reasoning> {
    let of = |kind| Some(plan.sheet.get(kind)?.reasoning.clone());
    // They come out of the same reckoning as the pressure to leave.
    let leave = || of(QuantityKind::LeavePressure);
    match remark {
        Remark::LargeHeader { velocity, bore } => {
            let reasoning = Reasoning::new(
                "plan-header-velocity",
                Authority::FromMemory("two-phase-textbook"),
            );
            let reasoning = reasoning.with("plan-bore", *bore);
            Some(reasoning.with("plan-header-velocity", *velocity))
        }
        Remark::NoPressureServes { short, over, .. } => {
            let with = leave()?.with("plan-too-low", *short);
            Some(with.with("plan-too-high", *over))
        }
        Remark::LimitedByRating { short, .. } => Some(leave()?.with("plan-too-low", *short)),
        Remark::BareLeast { .. } | Remark::PressureKept { .. } | Remark::MayPassRating { .. } => {
            leave()
        }
        Remark::SeasonsUnsure { .. } => of(QuantityKind::SeasonLow).or_else(leave),
        Remark::LossAboveRating { .. } => of(QuantityKind::PurgeLoss),
        Remark::FreezesWhereItLeaves { .. } => of(QuantityKind::TargetFreezePoint),
        Remark::ComesBack { .. } => of(QuantityKind::RecheckMonthHigh).or_else(leave),
        Remark::LowestEnteringAssumed { .. } => of(QuantityKind::LowestLeavingWater),
        Remark::HoldShows { .. } | Remark::HoldCannotShow { .. } => of(QuantityKind::HoldFallLimit),
        Remark::RatingUnknown
        | Remark::CartTooSmall
        | Remark::ReadGaugeFirst
        | Remark::HosesAssumed
        | Remark::ProductAssumed => None,
    }
}
