//! Where the numbers of an answer come from, each asked for on its own.

use super::assess::checks::{moved_most, outcome_id};
use super::assess::{bits, percent, weight};
use super::knowledge::knowledge;
use super::types::{FigureView, WhyQuestion};
use super::{ApiError, Call, OpenCall, Wording};
use crate::diagnosis::{Carrier, CauseId, CheckId, Link, Parent, SourceMark, Trace, TraceStep};
use crate::text::Args;

/// A share of a check's bits smaller than this is not told.
const TELLING: f64 = 0.005;

impl OpenCall {
    /// Where a number of the answer comes from.
    ///
    /// # Errors
    /// [`ApiError`] of code `no-such-name` where the answer holds no such number.
    pub fn explain(&self, question: &WhyQuestion) -> Result<FigureView, ApiError> {
        self.assessed().explain(question)
    }
}

impl Call {
    /// Where a number of the answer comes from.
    ///
    /// # Errors
    /// [`ApiError`] of code `no-such-name` where the answer holds no such number.
    pub fn explain(&self, question: &WhyQuestion) -> Result<FigureView, ApiError> {
        let (found, asked): (_, &str) = match question {
            WhyQuestion::Probability { cause } => (self.why_probability(cause), cause),
            WhyQuestion::Reason { cause, finding } => (self.why_reason(cause, finding), finding),
            WhyQuestion::Check { check } => (self.why_check(check), check),
            WhyQuestion::Outcome { check, outcome } => (self.why_outcome(check, outcome), outcome),
            WhyQuestion::Pair => (self.why_pair(), "pair"),
        };
        found.ok_or_else(|| {
            let context = [("field", "why"), ("found", asked)];
            ApiError::new("no-such-name", &context, self.wording)
        })
    }

    fn trace(&self, cause: &CauseId) -> Option<&Trace> {
        let traces = &self.diagnosis.as_ref()?.traces;
        traces.iter().find(|trace| trace.cause == *cause)
    }

    /// From the expected share through facts and findings to the probability.
    fn why_probability(&self, cause: &str) -> Option<FigureView> {
        let id = CauseId::new(cause);
        let graph = &knowledge().graph;
        let shipped = graph.cause(graph.find_cause(&id)?);
        let mut ranked = self.diagnosis.as_ref()?.causes.iter();
        let ranked = ranked.find(|ranked| ranked.cause == id)?;
        let mut inputs = vec![(self.word("why-expected"), percent(shipped.prior))];
        let own = self.learned.of(shipped);
        if let Some(own) = own.filter(|_| self.learned.callbacks() > 0) {
            inputs.push((self.word("why-learned"), percent(own.mean())));
        }
        let trace = self.trace(&id);
        let facts = trace.into_iter().flat_map(|trace| &trace.context);
        inputs.extend(facts.map(|step| {
            let holds = if step.is_true {
                "answer-yes"
            } else {
                "answer-no"
            };
            let fact = self.word(&format!("fact-{}", step.fact));
            (
                format!("{fact}: {}", self.word(holds)),
                self.weight(step.bits),
            )
        }));
        inputs.push((self.word("why-before-findings"), percent(ranked.prior)));
        let call = trace.and_then(|trace| trace.call_bits);
        inputs.extend(call.map(|moved| (self.word("why-call"), self.weight(moved))));
        let steps = trace.into_iter().flat_map(|trace| &trace.steps);
        inputs.extend(steps.map(|step| {
            let args = Args::new().text("found", self.step_found(step));
            let added = self.wording.catalog().fill("why-added", &args);
            (added, self.weight(step.bits))
        }));
        inputs.push((self.word("why-altogether"), percent(ranked.probability)));
        Some(FigureView {
            measured: None,
            expected: None,
            formula: self.word("why-probability"),
            inputs,
            source: self.marked(&shipped.source),
        })
    }

    fn weight(&self, bits: f64) -> String {
        weight(bits, self.wording.catalog())
    }

    /// What one finding says of a cause, alone and beside the others, and by which links.
    fn why_reason(&self, cause: &str, finding: &str) -> Option<FigureView> {
        let trace = self.trace(&CauseId::new(cause))?;
        let mut steps = trace.steps.iter();
        let step = steps.find(|step| step.finding.as_str() == finding)?;
        let times = format!("× {:.2}", step.alone.exp2());
        let mut inputs = vec![
            (self.word("why-alone"), self.weight(step.alone)),
            (self.word("why-odds"), times),
            (self.word("why-beside"), self.weight(step.bits)),
            (self.word("why-alone-bits"), bits(step.alone)),
            (self.word("why-beside-bits"), bits(step.bits)),
        ];
        let mut sources = Vec::new();
        for (words, strength, source) in self.links(trace, step) {
            inputs.push((words, strength));
            if !sources.contains(&source) {
                sources.push(source);
            }
        }
        Some(FigureView {
            measured: None,
            expected: None,
            formula: self.word("why-bits"),
            inputs,
            source: if sources.is_empty() {
                self.word("authority-judgement")
            } else {
                sources.join("; ")
            },
        })
    }

    /// The links from a cause to a finding: from and to, how strong, whose word.
    fn links(&self, trace: &Trace, step: &TraceStep) -> Vec<(String, String, String)> {
        let Carrier::Through(mechanisms) = &step.carrier else {
            return Vec::new();
        };
        let graph = &knowledge().graph;
        let Some(start) = graph.find_cause(&trace.cause) else {
            return Vec::new();
        };
        let mut from = Parent::Cause(start);
        let mut links = Vec::new();
        let mut pass = |from: Parent, to: String, parents: &[Link]| {
            let link = parents.iter().find(|link| link.parent == from)?;
            let kind = match from {
                Parent::Cause(_) => "cause",
                Parent::Mechanism(_) => "mechanism",
            };
            let title = self.word(&format!("{kind}-{}", graph.parent_id(from)));
            let push = link.push.low.max(link.push.high);
            links.push((
                format!("{title} → {to}"),
                percent(push),
                self.marked(&link.source),
            ));
            Some(())
        };
        for id in mechanisms {
            let mut places = graph.mechanism_places();
            let Some(place) = places.find(|place| graph.mechanism(*place).id == *id) else {
                break;
            };
            let to = self.word(&format!("mechanism-{id}"));
            pass(from, to, &graph.mechanism(place).parents);
            from = Parent::Mechanism(place);
        }
        if let Some(place) = graph.find_finding(&step.finding) {
            let to = self.word(&format!("finding-{}", step.finding));
            pass(from, to, &graph.finding(place).parents);
        }
        links
    }

    /// How much a check is expected to tell, about what, in which time.
    fn why_check(&self, check: &str) -> Option<FigureView> {
        let id = CheckId::new(check);
        let mut outlooks = self.diagnosis.as_ref()?.checks.iter();
        let outlook = outlooks.find(|outlook| outlook.check == id)?;
        let mut checks = knowledge().graph.checks().iter();
        let shipped = checks.find(|known| known.id == id)?;
        let amount = |bits: f64| format!("{bits:.2} bits");
        let told = |(_, share): &&(CauseId, f64)| *share >= TELLING;
        let about = outlook.about.iter().filter(told);
        let about = about
            .map(|(cause, share)| (self.named_after("why-check-about", cause), amount(*share)));
        let mut inputs = vec![
            (self.word("why-check-bits"), amount(outlook.bits)),
            (
                self.word("why-check-minutes"),
                format!("{:.0} min", outlook.minutes),
            ),
            (
                self.word("why-check-rate"),
                format!("{:.3} bits/min", outlook.bits_per_minute),
            ),
        ];
        inputs.extend(about);
        Some(FigureView {
            measured: None,
            expected: None,
            formula: self.word("why-check"),
            inputs,
            source: self.wording.catalog().fill(
                "why-check-source",
                &Args::new().text("source", self.marked(&shipped.source)),
            ),
        })
    }

    /// How probable one outcome of a check is, and how it follows from the check
    /// and what was found so far that the causes move.
    fn why_outcome(&self, check: &str, outcome: &str) -> Option<FigureView> {
        let id = CheckId::new(check);
        let diagnosis = self.diagnosis.as_ref()?;
        let outlook = diagnosis.checks.iter().find(|known| known.check == id)?;
        let mut outcomes = outlook.outcomes.iter();
        let outcome = outcomes.find(|known| outcome_id(known) == outcome)?;
        let now = |cause: &CauseId| {
            let mut ranked = diagnosis.causes.iter();
            ranked.find(|ranked| ranked.cause == *cause)
        };
        let chance = outcome.probability;
        let mut inputs = vec![(self.word("why-outcome-chance"), percent(chance))];
        let told = moved_most(diagnosis, outcome);
        if let Some((cause, after)) = told {
            let before = now(cause)?.probability;
            // Bayes' theorem, read backwards: what of the chance comes with the
            // cause and what without it.
            let parts = [
                ("why-outcome-with", after * chance / before),
                (
                    "why-outcome-without",
                    (1.0 - after) * chance / (1.0 - before),
                ),
            ];
            let parts = parts.into_iter().filter(|(_, share)| share.is_finite());
            inputs.extend(parts.map(|(key, share)| (self.named_after(key, cause), percent(share))));
        }
        let others = outcome.leading.iter().filter(|one| Some(*one) != told);
        inputs.extend(told.into_iter().chain(others).filter_map(|(cause, after)| {
            let moved = format!("{} → {}", percent(now(cause)?.probability), percent(*after));
            Some((self.named_after("why-outcome-moves", cause), moved))
        }));
        Some(FigureView {
            measured: None,
            expected: None,
            formula: self.word("why-outcome"),
            inputs,
            source: self.word("why-worked-out"),
        })
    }

    /// How the best pair stands beside the best single cause.
    fn why_pair(&self) -> Option<FigureView> {
        let diagnosis = self.diagnosis.as_ref()?;
        let pair = diagnosis.explanations.better_pair()?;
        let single = diagnosis.explanations.single.as_ref()?;
        let alone = |causes: &[CauseId]| {
            let args = Args::new().text("cause", self.named(causes));
            self.wording.catalog().fill("why-pair-alone", &args)
        };
        Some(FigureView {
            measured: None,
            expected: None,
            formula: self.word("why-pair"),
            inputs: vec![
                (self.word("why-pair-together"), percent(pair.together)),
                (alone(&pair.causes), percent(pair.alone)),
                (alone(&single.causes), percent(single.alone)),
            ],
            source: self.word("why-worked-out"),
        })
    }

    /// A label that names a cause.
    fn named_after(&self, key: &str, cause: &CauseId) -> String {
        let args = Args::new().text("cause", self.title("cause", cause));
        self.wording.catalog().fill(key, &args)
    }

    fn word(&self, key: &str) -> String {
        self.wording.catalog().text(key)
    }

    /// Whose word a number of the graph is.
    fn marked(&self, mark: &SourceMark) -> String {
        marked(mark, self.wording)
    }
}

/// Whose word a number of the graph is.
pub(super) fn marked(mark: &SourceMark, wording: Wording) -> String {
    let catalog = wording.catalog();
    match mark {
        SourceMark::Published(id) => catalog.cited(id.as_str()),
        SourceMark::FromMemoryOf(id) => catalog.cited_from_memory(id.as_str()),
        SourceMark::FromMemory => catalog.text("authority-memory-only"),
        SourceMark::CommonPractice => catalog.text("authority-common-practice"),
        SourceMark::Judgement => catalog.text("authority-judgement"),
    }
}

#[cfg(test)]
mod tests;
