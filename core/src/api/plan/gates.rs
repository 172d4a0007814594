//! What a step must reach before the next, and what proves the work.

use crate::api::Call;
use crate::api::steps::looked_key;
use crate::api::types::{CriterionView, FigureView, GateView, ProofView, UnitView};
use crate::figures::{Authority, Figure, Reasoning};
use crate::plan::quantity::{Lack, QuantityKind};
use crate::plan::{Basis, Gate, Limit, Looked, Origin, PlannedProof, WorkPlan};
use crate::records::{Action, Phase, Reading};
use crate::text::Args;
use crate::units::{Duration, Quantity, Unit};

impl Call {
    /// What a limit rests on: the quantity computed for it, or its origin.
    pub(super) fn why_limit(&self, limit: &Limit, plan: &WorkPlan) -> FigureView {
        match &limit.basis {
            Basis::Computed(kind) => match plan.sheet.get(*kind) {
                Some(computed) => self.why(&computed.reasoning),
                None => self.why(&Reasoning::new("plan-fixed", Authority::Judgement)),
            },
            Basis::Fixed(origin) => self.why_fixed(origin),
            Basis::Usual(origin, kind) => {
                let why = self.why_fixed(origin);
                match self.lack(*kind, plan).filter(|lack| lack.is_unknown()) {
                    Some(lack) => FigureView {
                        formula: self.because("why-plan-usual", lack, ""),
                        ..why
                    },
                    None => why,
                }
            }
        }
    }

    /// Where a figure comes from that is the same for every system.
    fn why_fixed(&self, origin: &Origin) -> FigureView {
        let catalog = self.wording.catalog();
        let source = match origin {
            Origin::Published(id) => catalog.cited(id.as_str()),
            Origin::FromMemory(id) => catalog.cited_from_memory(id.as_str()),
            Origin::CommonPractice => catalog.text("authority-common-practice"),
            Origin::Judgement => catalog.text("authority-judgement"),
        };
        FigureView {
            source,
            ..self.why(&Reasoning::new("plan-fixed", Authority::Judgement))
        }
    }

    /// What a quantity of the plan lacks; none where it was worked out.
    pub(super) fn lack(&self, kind: QuantityKind, plan: &WorkPlan) -> Option<Lack> {
        let mut lacking = plan.sheet.lacking.iter();
        let found = lacking.find(|lacking| lacking.kind == kind);
        found.map(|lacking| lacking.lack)
    }

    /// A sentence that gives what is unknown as its reason, and the figure used instead.
    pub(super) fn because(&self, key: &str, lack: Lack, figure: &str) -> String {
        let why = self.words(&format!("plan-lack-{}", lack.id()));
        let args = Args::new().text("why", why).text("figure", figure);
        self.wording.catalog().fill(key, &args)
    }

    /// A limit as it is shown: a long time in hours, anything else in its unit, and the one
    /// number that decides. How well it is known stands beside the quantity.
    pub(super) fn limit(&self, limit: &Limit) -> String {
        let two_hours = Duration::from_si(7200.0);
        let figure = &Figure {
            standard: 0.0,
            ..limit.value
        };
        if figure.dimension == Duration::DIMENSION && figure.si >= two_hours.si() {
            return figure
                .shown_in(Unit::Hour, Unit::Hour)
                .text(self.wording.units);
        }
        figure.text(self.wording.units)
    }

    pub(super) fn gate(
        &self,
        plan: &WorkPlan,
        gates: &[Gate],
        taken_up: &Action,
    ) -> Option<GateView> {
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
        let criteria: Vec<CriterionView> = gates
            .iter()
            .map(|gate| self.criterion(plan, gate, taken_up))
            .collect();
        let mut steps = plan.steps.iter();
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
            unread: self.unread(gates, taken_up).filter(|_| verdict == "open"),
            verdict: verdict.to_owned(),
            pass: gates.iter().map(criterion).collect::<Vec<_>>().join(" "),
            otherwise: self.way_back(plan, first)?,
            back_to: steps
                .find(|step| step.number == first.return_to)
                .map(|back| back.id.as_str().to_owned()),
        })
    }

    /// One criterion with what was found.
    fn criterion(&self, plan: &WorkPlan, gate: &Gate, taken_up: &Action) -> CriterionView {
        let limit = &gate.limit.value;
        let units: Vec<Unit> = Unit::of(limit.dimension).collect();
        let found = gate.found(taken_up);
        let own = limit.unit(self.wording.units);
        let others = units.iter().copied().filter(|unit| *unit != own);
        let offered = std::iter::once(own).chain(others);
        CriterionView {
            looked: gate.looked.id().to_owned(),
            label: self.words(&looked_key(gate.looked)),
            worked_out: gate.is_worked_out(),
            rule: self.gate_rule(gate),
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
            value: found.map(|found| found.value.to_string()),
            unit: found.map_or(own, |found| found.unit).symbol().to_owned(),
            passed: found.map(|found| gate.passes(&found)),
            why: self.why_limit(&gate.limit, plan),
        }
    }

    pub(super) fn proof(&self, plan: &WorkPlan, proof: &PlannedProof) -> ProofView {
        let catalog = self.wording.catalog();
        let ends =
            [&proof.at_least, &proof.at_most].map(|end| end.as_ref().map(|end| self.limit(end)));
        let expected = match ends {
            [Some(low), Some(high)] => Some(format!("{low} … {high}")),
            [Some(low), None] => Some(format!("≥ {low}")),
            [None, Some(high)] => Some(format!("≤ {high}")),
            [None, None] => None,
        };
        let before = self.latest(proof.reading, Some(Phase::Found));
        let after = self.as_left(proof.reading, proof.when);
        let verdict = match after.map(|after| proof.proves(after)) {
            _ if expected.is_none() => "open",
            None => "unread",
            Some(Some(false)) => "missed",
            Some(_) => "met",
        };
        let shown = |reading: &Reading| reading.text_for(self.wording.units);
        let later = proof.when.is_later();
        let verdict_words = match (verdict, later) {
            ("unread", true) => self.words("plan-proof-later"),
            _ => self.words(&format!("plan-proof-{verdict}")),
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
            before: before.map(shown),
            after: after.map(shown),
            verdict: verdict.to_owned(),
            verdict_words,
            later,
            why: (proof.at_least.as_ref())
                .or(proof.at_most.as_ref())
                .map(|end| self.why_limit(end, plan)),
        }
    }
}
