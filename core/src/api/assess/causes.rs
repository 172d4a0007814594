//! The causes with what speaks for and against each.

use super::{percent, weight};
use crate::api::Call;
use crate::api::knowledge::knowledge;
use crate::api::types::{CauseView, ContextView, FigureView, ReasonView};
use crate::diagnosis::{Carrier, CauseId, CauseKind, Diagnosis, FindingId, Trace, TraceStep};
use crate::evidence::{Beside, Explained};
use crate::text::Args;

/// Causes less probable than this are not listed.
const NEGLIGIBLE: f64 = 0.005;
/// Reasons that change the odds by less than this are not listed, bits: odds of
/// less than 1.1 to 1 read as none.
const NEGLIGIBLE_BITS: f64 = 0.08;

impl Call {
    pub(super) fn causes(&self, diagnosis: &Diagnosis) -> Vec<CauseView> {
        let graph = &knowledge().graph;
        diagnosis
            .causes
            .iter()
            .filter(|ranked| ranked.kind != CauseKind::Instrument)
            .filter(|ranked| ranked.probability >= NEGLIGIBLE)
            .map(|ranked| {
                let trace = diagnosis
                    .traces
                    .iter()
                    .find(|trace| trace.cause == ranked.cause);
                let place = graph.find_cause(&ranked.cause);
                CauseView {
                    id: ranked.cause.as_str().to_owned(),
                    title: self.title("cause", &ranked.cause),
                    homeowner: self
                        .catalog()
                        .text(&format!("cause-{}.homeowner", ranked.cause)),
                    kind: kind_id(ranked.kind).to_owned(),
                    probability: ranked.probability,
                    shown: percent(ranked.probability),
                    reasons: trace.map(|trace| self.reasons(trace)).unwrap_or_default(),
                    context: trace.map(|trace| self.context(trace)).unwrap_or_default(),
                    turns: self.turns(diagnosis, &ranked.cause, ranked.probability, trace),
                    has_plan: place.is_some_and(|place| graph.cause(place).procedure.is_some()),
                }
            })
            .collect()
    }

    /// The reasons of a cause, where they were worked out.
    pub(super) fn reasons_of(&self, diagnosis: &Diagnosis, cause: &CauseId) -> Vec<ReasonView> {
        let trace = diagnosis.traces.iter().find(|trace| trace.cause == *cause);
        trace.map(|trace| self.reasons(trace)).unwrap_or_default()
    }

    fn reasons(&self, trace: &Trace) -> Vec<ReasonView> {
        let weighty = trace
            .steps
            .iter()
            .filter(|step| step.alone.abs() >= NEGLIGIBLE_BITS);
        weighty
            .map(|step| ReasonView {
                finding: step.finding.as_str().to_owned(),
                found: self.step_found(step),
                bits: step.alone,
                shown: weight(step.alone, self.catalog()),
                path: self.path(&trace.cause, step),
                figures: self.figures(&step.finding),
            })
            .collect()
    }

    /// The chain from the cause through its mechanisms to the finding: the
    /// reason of each link.
    fn path(&self, cause: &CauseId, step: &TraceStep) -> Vec<String> {
        match &step.carrier {
            Carrier::Through(mechanisms) => {
                let mut stations = vec![cause.as_str().to_owned()];
                stations.extend(mechanisms.iter().map(|id| id.as_str().to_owned()));
                stations.push(step.finding.as_str().to_owned());
                let links = stations
                    .windows(2)
                    .map(|pair| format!("link-{}--{}", pair[0], pair[1]));
                let catalog = self.catalog();
                let links = links.filter(|key| catalog.has(key));
                // Links say what the cause does; where that is not what was
                // seen, it has to be said first.
                let against = (step.alone < 0.0).then(|| catalog.text("path-against"));
                against
                    .into_iter()
                    .chain(links.map(|key| catalog.text(&key)))
                    .collect()
            }
            Carrier::Instrument => vec![self.catalog().text("path-instrument")],
            Carrier::Rival(rival) => vec![self.rival("path-rival", rival.as_ref())],
            Carrier::RivalLess(rival) => vec![self.rival("path-rival-less", rival.as_ref())],
        }
    }

    /// Which other cause a finding tells of, or that it tells of others.
    fn rival(&self, key: &str, rival: Option<&CauseId>) -> String {
        let Some(rival) = rival else {
            return self.catalog().text(&format!("{key}-any"));
        };
        let args = Args::new().text("rival", self.title("cause", rival));
        self.catalog().fill(key, &args)
    }

    fn context(&self, trace: &Trace) -> Vec<ContextView> {
        let said = |words: String, shown: Option<String>| ContextView { words, shown };
        let found = trace.found_bits.map(|bits| {
            let key = if bits > 0.0 {
                "found-itself"
            } else {
                "ruled-out-itself"
            };
            said(self.catalog().text(key), None)
        });
        let moving = trace
            .context
            .iter()
            .filter(|step| step.bits.abs() >= NEGLIGIBLE_BITS);
        let moving = moving.map(|step| {
            let why = format!("context-{}--{}", trace.cause, step.fact);
            let args = Args::new()
                .text("fact", self.title("fact", &step.fact))
                .text("why", self.catalog().text(&why));
            // The reason says what the fact does where it holds.
            let key = if step.is_true {
                "context-line"
            } else {
                "context-line-not-so"
            };
            let words = self.catalog().fill(key, &args);
            said(words, Some(weight(step.bits, self.catalog())))
        });
        let call = trace.call_bits.filter(|bits| bits.abs() >= NEGLIGIBLE_BITS);
        let call = call.map(|by| {
            said(
                self.catalog().text("call-line"),
                Some(weight(by, self.catalog())),
            )
        });
        found
            .into_iter()
            .chain(call)
            .chain(self.learned_line(&trace.cause))
            .chain(moving)
            .collect()
    }

    /// What own callbacks did to the prior of a cause.
    fn learned_line(&self, cause: &CauseId) -> Option<ContextView> {
        let graph = &knowledge().graph;
        let shipped = graph.cause(graph.find_cause(cause)?);
        let (before, after) = (shipped.prior, self.learned.of(shipped)?);
        let args = Args::new()
            .text("callbacks", self.learned.callbacks().to_string())
            .text("confirmed", self.learned.confirmed(cause).to_string());
        Some(ContextView {
            words: self.catalog().fill("learned-line", &args),
            shown: Some(format!("{} → {}", percent(before), percent(after.mean()))),
        })
    }

    /// The numbers behind a finding. Where several instruments read it, all that they
    /// say is told, each by its name.
    fn figures(&self, finding: &FindingId) -> Option<FigureView> {
        let units = self.wording.units;
        let all = self.gathered.explained.iter();
        let all: Vec<&Explained> = all
            .filter(|explained| explained.finding == finding.as_str())
            .collect();
        let first = *all.first()?;
        let measured = |explained: &Explained| {
            let value = explained.measured.text(units);
            let Some(instrument) = explained.read_with.filter(|_| all.len() > 1) else {
                return value;
            };
            let args = Args::new()
                .text("value", value)
                .text("instrument", self.title("instrument", instrument.id()));
            self.catalog().fill("figure-by-instrument", &args)
        };
        let measured: Vec<String> = all.iter().map(|&explained| measured(explained)).collect();
        let expected = first.expected.text(units);
        let meant = match first.beside {
            Beside::Expected => None,
            Beside::AtLeast => Some("figure-at-least"),
            Beside::AtMost => Some("figure-at-most"),
            Beside::Other => Some("figure-other"),
        };
        let expected = match meant {
            None => expected,
            Some(key) => {
                let args = Args::new().text("value", expected);
                self.catalog().fill(key, &args)
            }
        };
        Some(FigureView {
            measured: Some(measured.join(", ")),
            expected: Some(expected),
            formula: first.reasoning.formula_text(self.catalog()),
            inputs: first.reasoning.input_texts(self.catalog(), units),
            source: first.reasoning.authority_text(self.catalog()),
        })
    }
}

fn kind_id(kind: CauseKind) -> &'static str {
    match kind {
        CauseKind::Loop => "loop",
        CauseKind::Unit => "unit",
        CauseKind::Normal => "normal",
        CauseKind::Instrument => "instrument",
    }
}
