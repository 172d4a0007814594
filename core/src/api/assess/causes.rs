//! The causes with what speaks for and against each.

use super::{percent, weight};
use crate::api::Call;
use crate::api::knowledge::knowledge;
use crate::api::types::{CauseView, ContextView, FigureView, ReasonView};
use crate::diagnosis::{Carrier, CauseId, CauseKind, Diagnosis, Trace, TraceStep};
use crate::evidence::Explained;
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
                figures: self
                    .gathered
                    .explained
                    .iter()
                    .find(|explained| explained.finding == step.finding.as_str())
                    .map(|explained| self.figures(explained)),
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
            Carrier::Rival(Some(rival)) => {
                let args = Args::new().text("rival", self.title("cause", rival));
                vec![self.catalog().fill("path-rival", &args)]
            }
            Carrier::Rival(None) => vec![self.catalog().text("path-rivals")],
        }
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
            let key = format!("context-{}--{}", trace.cause, step.fact);
            let args = Args::new()
                .text("fact", self.title("fact", &step.fact))
                .text(
                    "holds",
                    self.catalog().text(if step.is_true {
                        "answer-yes"
                    } else {
                        "answer-no"
                    }),
                )
                .text("why", self.catalog().text(&key));
            let words = self.catalog().fill("context-line", &args);
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
        let before = graph.cause(graph.find_cause(cause)?).prior;
        let after = self.learned.of(cause, before)?;
        let args = Args::new()
            .text("callbacks", self.learned.callbacks().to_string())
            .text("confirmed", self.learned.confirmed(cause).to_string());
        Some(ContextView {
            words: self.catalog().fill("learned-line", &args),
            shown: Some(format!("{} → {}", percent(before), percent(after.mean()))),
        })
    }

    fn figures(&self, explained: &Explained) -> FigureView {
        let units = self.wording.units;
        FigureView {
            measured: Some(explained.measured.text(units)),
            expected: Some(explained.expected.text(units)),
            formula: explained.reasoning.formula_text(self.catalog()),
            inputs: explained.reasoning.input_texts(self.catalog(), units),
            source: explained.reasoning.authority_text(self.catalog()),
        }
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
