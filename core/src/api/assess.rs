//! What the engine thinks of a call, in the person's words.

use super::Call;
use super::knowledge::knowledge;
use super::types::{AssessmentView, CauseView, CheckView, FigureView, ReasonView};
use crate::diagnosis::{
    Carrier, CauseId, CauseKind, CheckId, CheckOutlook, Diagnosis, EvidenceKind, FindingId, Level,
    Licence, NextStep, Trace, TraceStep, Verdict,
};
use crate::evidence::{Evaluator, Explained, Unused};
use crate::text::{Args, Catalog};
use std::fmt::Display;

/// Causes less probable than this are not listed.
const NEGLIGIBLE: f64 = 0.005;
/// Reasons that change the odds by less than this are not listed, bits.
const NEGLIGIBLE_BITS: f64 = 0.05;
/// Checks that are listed.
const CHECKS: usize = 8;
/// Outcomes listed for a check.
const OUTCOMES: usize = 4;

impl Call {
    fn catalog(&self) -> &'static Catalog {
        self.wording.catalog()
    }

    fn title(&self, kind: &str, id: impl Display) -> String {
        self.catalog().text(&format!("{kind}-{id}"))
    }

    /// What the engine thinks.
    pub(super) fn assessment(&self) -> AssessmentView {
        let assumptions = self.model.assumptions.iter();
        let assumptions = assumptions.map(|assumed| self.title("assumption", assumed.id()));
        let unused = self
            .gathered
            .unused
            .iter()
            .filter_map(|unused| self.unused(unused));
        let Some(diagnosis) = &self.diagnosis else {
            return AssessmentView {
                verdict: "open".to_owned(),
                headline: self.catalog().text("verdict-contradiction"),
                causes: Vec::new(),
                pair: None,
                unexplained: Vec::new(),
                doubted: Vec::new(),
                checks: Vec::new(),
                stop: None,
                assumptions: assumptions.collect(),
                unused: unused.collect(),
            };
        };
        let (verdict, headline) = self.verdict(diagnosis);
        AssessmentView {
            verdict: verdict.to_owned(),
            headline,
            causes: self.causes(diagnosis),
            pair: self.pair(diagnosis),
            unexplained: diagnosis
                .unexplained
                .iter()
                .map(|left| self.found(&left.finding, left.level))
                .collect(),
            doubted: diagnosis
                .doubted
                .iter()
                .map(|doubted| {
                    let args = Args::new()
                        .text("instrument", self.title("cause", &doubted.instrument))
                        .text("probability", percent(doubted.probability));
                    self.catalog().fill("doubted", &args)
                })
                .collect(),
            checks: self.checks(diagnosis),
            stop: self.stop(diagnosis),
            assumptions: assumptions.collect(),
            unused: unused.collect(),
        }
    }

    fn verdict(&self, diagnosis: &Diagnosis) -> (&'static str, String) {
        let cause = |id: &CauseId| self.title("cause", id);
        let named = |id: &Option<CauseId>| id.as_ref().map(cause).unwrap_or_default();
        let both = |ids: &[CauseId]| ids.iter().map(cause).collect::<Vec<_>>().join(" + ");
        let say = |key: &str, what: String, probability: f64| {
            let args = Args::new()
                .text("cause", what)
                .text("probability", percent(probability));
            self.catalog().fill(key, &args)
        };
        match &diagnosis.verdict {
            Verdict::Cause {
                cause: id,
                probability,
            } => ("likely", say("verdict-cause", cause(id), *probability)),
            Verdict::Pair {
                causes,
                probability,
            } => ("likely", say("verdict-pair", both(causes), *probability)),
            Verdict::NothingToCorrect {
                probability,
                behaviour,
            } => match behaviour {
                Some(id) => (
                    "normal",
                    say("verdict-normal-because", cause(id), *probability),
                ),
                None => ("normal", say("verdict-normal", String::new(), *probability)),
            },
            Verdict::NotTheLoop {
                probability,
                leading,
            } => (
                "not_the_loop",
                say("verdict-not-the-loop", named(leading), *probability),
            ),
            Verdict::InstrumentFirst {
                instrument,
                probability,
            } => (
                "open",
                say("verdict-instrument-first", cause(instrument), *probability),
            ),
            Verdict::CannotTellApart { causes, .. } => {
                ("tied", say("verdict-tied", both(causes), 0.0))
            }
            Verdict::Undecided { leading } => {
                ("open", say("verdict-undecided", named(leading), 0.0))
            }
        }
    }

    fn causes(&self, diagnosis: &Diagnosis) -> Vec<CauseView> {
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
                found: self.found(&step.finding, step.level),
                bits: step.alone,
                shown: bits(step.alone),
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

    fn context(&self, trace: &Trace) -> Vec<String> {
        let found = trace.found_bits.map(|bits| {
            let key = if bits > 0.0 {
                "found-itself"
            } else {
                "ruled-out-itself"
            };
            self.catalog().text(key)
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
                .text("why", self.catalog().text(&key))
                .text("bits", bits(step.bits));
            self.catalog().fill("context-line", &args)
        });
        let call = trace.call_bits.filter(|bits| bits.abs() >= NEGLIGIBLE_BITS);
        let call = call.map(|by| {
            let args = Args::new().text("bits", bits(by));
            self.catalog().fill("call-line", &args)
        });
        found
            .into_iter()
            .chain(call)
            .chain(self.learned_line(&trace.cause))
            .chain(moving)
            .collect()
    }

    /// What own callbacks did to the prior of a cause.
    fn learned_line(&self, cause: &CauseId) -> Option<String> {
        let graph = &knowledge().graph;
        let before = graph.cause(graph.find_cause(cause)?).prior;
        let after = self.learned.of(cause, before)?;
        let args = Args::new()
            .text("callbacks", self.learned.callbacks().to_string())
            .text("confirmed", self.learned.confirmed(cause).to_string())
            .text("before", percent(before))
            .text("after", percent(after.mean()));
        Some(self.catalog().fill("learned-line", &args))
    }

    pub(super) fn found(&self, finding: &FindingId, level: Level) -> String {
        let key = match level {
            Level::Absent => "found-absent",
            Level::Present => "found-present",
            Level::Low => "found-low",
            Level::Normal => "found-normal",
            Level::High => "found-high",
        };
        let args = Args::new().text("finding", self.title("finding", finding));
        self.catalog().fill(key, &args)
    }

    fn figures(&self, explained: &Explained) -> FigureView {
        let units = self.wording.units;
        let say = |key: &str, value: String| {
            Some(self.catalog().fill(key, &Args::new().text("value", value)))
        };
        FigureView {
            measured: say("figure-measured", explained.measured.text(units)),
            expected: say("figure-expected", explained.expected.text(units)),
            formula: explained.reasoning.formula_text(self.catalog()),
            inputs: explained.reasoning.input_texts(self.catalog(), units),
            source: explained.reasoning.authority_text(self.catalog()),
        }
    }

    fn pair(&self, diagnosis: &Diagnosis) -> Option<String> {
        let explanations = &diagnosis.explanations;
        let pair = explanations
            .pair
            .as_ref()
            .filter(|_| explanations.pair_is_better)?;
        let names: Vec<String> = pair
            .causes
            .iter()
            .map(|id| self.title("cause", id))
            .collect();
        let args = Args::new()
            .text("causes", names.join(" + "))
            .text("probability", percent(pair.together));
        Some(self.catalog().fill("pair-better", &args))
    }

    fn stop(&self, diagnosis: &Diagnosis) -> Option<String> {
        match &diagnosis.next {
            NextStep::StopFound { cause } => {
                let args = Args::new().text("cause", self.title("cause", cause));
                Some(self.catalog().fill("stop-found", &args))
            }
            NextStep::StopNothingWorthwhile => Some(self.catalog().text("stop-nothing-worthwhile")),
            NextStep::Check(_) => None,
        }
    }

    fn checks(&self, diagnosis: &Diagnosis) -> Vec<CheckView> {
        let first = match &diagnosis.next {
            NextStep::Check(id) => Some(id),
            _ => None,
        };
        let possible = |outlook: &&CheckOutlook| outlook.obstacle.is_none() && outlook.bits > 0.0;
        let mut outlooks: Vec<&CheckOutlook> = diagnosis.checks.iter().filter(possible).collect();
        // What the engine would do next stands first, whatever the order of the rest.
        outlooks.sort_by_key(|outlook| Some(&outlook.check) != first);
        outlooks
            .into_iter()
            .take(CHECKS)
            .filter_map(|outlook| self.check(outlook))
            .collect()
    }

    fn check(&self, outlook: &CheckOutlook) -> Option<CheckView> {
        let graph = &knowledge().graph;
        let check = graph
            .checks()
            .iter()
            .find(|check| check.id == outlook.check)?;
        let title = |id: &CheckId| self.title("check", id);
        let licence = match check.licence {
            Licence::None => None,
            Licence::Refrigerant => Some(self.catalog().text("licence-refrigerant")),
            Licence::Electrical => Some(self.catalog().text("licence-electrical")),
        };
        let revealed = || check.reveals.iter().map(|place| graph.finding(*place));
        let args = Args::new()
            .text("bits", format!("{:.1}", outlook.bits))
            .text("minutes", format!("{:.0}", outlook.minutes));
        Some(CheckView {
            id: check.id.as_str().to_owned(),
            title: title(&check.id),
            how: self.catalog().text(&format!("check-{}.how", check.id)),
            minutes: outlook.minutes,
            bits: outlook.bits,
            shown: self.catalog().fill("check-brings", &args),
            tools: check
                .tools
                .iter()
                .map(|id| self.title("tool", id))
                .collect(),
            licence,
            cautions: check
                .cautions
                .iter()
                .map(|id| self.title("caution", id))
                .collect(),
            asks: revealed()
                .filter(|finding| !matches!(finding.evidence, EvidenceKind::Evaluator(_)))
                .map(|finding| finding.id.as_str().to_owned())
                .collect(),
            reads: once(
                revealed()
                    .filter_map(|finding| match &finding.evidence {
                        EvidenceKind::Evaluator(name) => Evaluator::named(name),
                        _ => None,
                    })
                    .flat_map(|evaluator| evaluator.reads.iter())
                    .map(|point| point.id().to_owned()),
            ),
            outcomes: outlook
                .outcomes
                .iter()
                .take(OUTCOMES)
                .map(|outcome| {
                    let seen = outcome
                        .levels
                        .iter()
                        .map(|(finding, level)| self.found(finding, *level));
                    let leading = outcome.leading.first();
                    let args = Args::new()
                        .text("seen", seen.collect::<Vec<_>>().join(", "))
                        .text("chance", percent(outcome.probability))
                        .text(
                            "cause",
                            leading
                                .map(|(id, _)| self.title("cause", id))
                                .unwrap_or_default(),
                        )
                        .text(
                            "probability",
                            leading.map(|(_, p)| percent(*p)).unwrap_or_default(),
                        );
                    self.catalog().fill("check-outcome", &args)
                })
                .collect(),
        })
    }

    fn unused(&self, unused: &Unused) -> Option<String> {
        let (what, why) = match unused {
            // As expected: these prove the work, they do not explain the fault.
            Unused::Reading {
                why: crate::evidence::WhyUnused::AsLeft,
                ..
            } => return None,
            Unused::Reading { point, why, .. } => (self.title("point", point.id()), why),
            Unused::Answer { finding, why } => (finding.clone(), why),
            Unused::Verdict { cause, why } => (cause.clone(), why),
        };
        let args = Args::new()
            .text("what", what)
            .text("why", self.title("unused", why.code()));
        Some(self.catalog().fill("unused-line", &args))
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

/// A probability for people: never 0 % or 100 %, which would claim certainty.
pub(super) fn percent(probability: f64) -> String {
    match probability * 100.0 {
        p if p < 1.0 => "< 1 %".to_owned(),
        p if p > 99.0 => "> 99 %".to_owned(),
        p => format!("{p:.0} %"),
    }
}

pub(super) fn bits(bits: f64) -> String {
    let sign = if bits < 0.0 { "−" } else { "+" };
    format!("{sign}{:.1} bits", bits.abs())
}

/// Each of some names once, where it first stands.
fn once(names: impl Iterator<Item = String>) -> Vec<String> {
    let mut kept = Vec::new();
    for name in names {
        if !kept.contains(&name) {
            kept.push(name);
        }
    }
    kept
}
