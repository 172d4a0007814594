//! What the engine thinks of a call, in the person's words.

mod causes;
pub(super) mod checks;

use super::Call;
use super::knowledge::knowledge;
use super::types::{AssessmentView, DoubtView, PairView};
use crate::diagnosis::{CauseId, Diagnosis, FindingId, Level, NextStep, TraceStep, Verdict};
use crate::evidence::{Unused, WhyUnused};
use crate::text::{Args, Catalog};
use std::fmt::Display;

/// Larger odds are not told apart: no single finding is known so well.
const MOST_ODDS: f64 = 1000.0;

impl Call {
    fn catalog(&self) -> &'static Catalog {
        self.wording.catalog()
    }

    pub(super) fn title(&self, kind: &str, id: impl Display) -> String {
        self.catalog().text(&format!("{kind}-{id}"))
    }

    /// What the engine thinks.
    pub(super) fn assessment(&self) -> AssessmentView {
        let assumptions = self.model.assumptions.iter();
        let assumptions = assumptions.map(|assumed| self.title("assumption", assumed.id()));
        let unused = self.all_unused();
        let Some(diagnosis) = &self.diagnosis else {
            return AssessmentView {
                verdict: "open".to_owned(),
                headline: self.catalog().text("verdict-contradiction"),
                causes: Vec::new(),
                pair: None,
                unexplained: Vec::new(),
                doubted: Vec::new(),
                sound: Vec::new(),
                checks: Vec::new(),
                stop: None,
                records: Vec::new(),
                assumptions: assumptions.collect(),
                unused,
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
                .map(|doubted| DoubtView {
                    cause: doubted.instrument.as_str().to_owned(),
                    title: self.title("cause", &doubted.instrument),
                    shown: percent(doubted.probability),
                    reasons: self.reasons_of(diagnosis, &doubted.instrument),
                })
                .collect(),
            sound: self.sound(diagnosis),
            checks: self.checks(diagnosis),
            stop: self.stop(diagnosis),
            records: self.records(diagnosis),
            assumptions: assumptions.collect(),
            unused,
        }
    }

    fn verdict(&self, diagnosis: &Diagnosis) -> (&'static str, String) {
        let cause = |id: &CauseId| self.title("cause", id);
        let named = |id: &Option<CauseId>| id.as_ref().map(cause).unwrap_or_default();
        let both = |ids: &[CauseId]| self.named(ids);
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
                settled,
            } => {
                let what = behaviour.as_ref().map(cause);
                let (code, key) = match (settled, what.is_some()) {
                    (true, true) => ("normal", "verdict-normal-because"),
                    (true, false) => ("normal", "verdict-normal"),
                    (false, true) => ("normal_so_far", "verdict-normal-because-so-far"),
                    (false, false) => ("normal_so_far", "verdict-normal-so-far"),
                };
                (code, say(key, what.unwrap_or_default(), *probability))
            }
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

    pub(super) fn found(&self, finding: &FindingId, level: Level) -> String {
        let args = Args::new().text("finding", self.title("finding", finding));
        let key = format!("found-{}", level_id(level));
        self.catalog().fill(&key, &args)
    }

    /// What a step of the reasons was found to be, said to be at the edge where it is.
    pub(super) fn step_found(&self, step: &TraceStep) -> String {
        self.step_at(step, step.level)
    }

    fn step_at(&self, step: &TraceStep, level: Level) -> String {
        let found = self.found(&step.finding, level);
        if !step.at_edge {
            return found;
        }
        let args = Args::new().text("found", found);
        self.catalog().fill("found-at-edge", &args)
    }

    /// What was found as it should be, what is read before what is told: the reason
    /// for an answer that nothing is to be corrected.
    fn sound(&self, diagnosis: &Diagnosis) -> Vec<String> {
        if !matches!(diagnosis.verdict, Verdict::NothingToCorrect { .. }) {
            return Vec::new();
        }
        let trace = diagnosis.traces.first();
        let steps = trace.into_iter().flat_map(|trace| &trace.steps);
        let mut normal: Vec<&TraceStep> = steps.filter(|step| !step.abnormal).collect();
        normal.sort_by_key(|step| !self.gathered.is_read(&step.finding));
        normal
            .into_iter()
            .map(|step| self.step_as_it_should_be(step))
            .collect()
    }

    /// A step that is not abnormal. Where its readings lie at an edge and lean a little to
    /// the other side, they are told as normal, at the edge.
    fn step_as_it_should_be(&self, step: &TraceStep) -> String {
        let graph = &knowledge().graph;
        let place = graph.find_finding(&step.finding);
        match place.map(|place| graph.finding(place).scale.normal()) {
            Some(normal) if step.at_edge => self.step_at(step, normal),
            _ => self.step_found(step),
        }
    }

    fn pair(&self, diagnosis: &Diagnosis) -> Option<PairView> {
        let pair = diagnosis.explanations.better_pair()?;
        let args = Args::new().text("causes", self.named(&pair.causes));
        Some(PairView {
            words: self.catalog().fill("pair-better", &args),
            shown: percent(pair.together),
        })
    }

    /// Causes that are there together, in words.
    pub(super) fn named(&self, causes: &[CauseId]) -> String {
        let titles = causes.iter().map(|id| self.title("cause", id));
        titles.collect::<Vec<_>>().join(" + ")
    }

    fn stop(&self, diagnosis: &Diagnosis) -> Option<String> {
        match &diagnosis.next {
            NextStep::StopFound { cause } => {
                let found = match &diagnosis.verdict {
                    Verdict::Pair { causes, .. } => self.named(causes),
                    _ => self.title("cause", cause),
                };
                let args = Args::new().text("cause", found);
                Some(self.catalog().fill("stop-found", &args))
            }
            NextStep::StopNothingWorthwhile => Some(self.catalog().text("stop-nothing-worthwhile")),
            NextStep::Check(_) => None,
        }
    }

    /// What was not used, each with why; readings of one point that share it in one line,
    /// with what they read.
    fn all_unused(&self) -> Vec<String> {
        let mut lines: Vec<(String, WhyUnused, Vec<String>)> = Vec::new();
        for unused in &self.gathered.unused {
            let (what, why, read) = match unused {
                // As expected: these prove the work, they do not explain the fault.
                Unused::Reading {
                    why: WhyUnused::AsLeft,
                    ..
                } => continue,
                Unused::Reading { place, point, why } => {
                    let reading = self.file.visit.readings.get(*place);
                    let read = reading.map(|reading| reading.text_for(self.wording.units));
                    (self.title("point", point.id()), *why, read)
                }
                Unused::Answer { finding, why } => (finding.clone(), *why, None),
                Unused::Verdict { cause, why } => (cause.clone(), *why, None),
            };
            let same = lines
                .iter_mut()
                .find(|line| line.0 == what && line.1 == why);
            match same {
                Some((_, _, told)) => told.extend(read),
                None => lines.push((what, why, read.into_iter().collect())),
            }
        }
        let said = lines.into_iter().map(|(what, why, read)| {
            let what = match read.is_empty() {
                true => what,
                false => format!("{what} ({})", read.join(", ")),
            };
            let args = Args::new()
                .text("what", what)
                .text("why", self.title("unused", why.code()));
            self.catalog().fill("unused-line", &args)
        });
        said.collect()
    }
}

fn level_id(level: Level) -> &'static str {
    match level {
        Level::Absent => "absent",
        Level::Present => "present",
        Level::Low => "low",
        Level::Normal => "normal",
        Level::High => "high",
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

/// What a weight means, in words: how many to one it speaks for or against.
///
/// Odds are told to a tenth below ten and whole above: nothing that a person
/// judged is known better.
pub(super) fn weight(bits: f64, catalog: &Catalog) -> String {
    let odds = bits.abs().exp2();
    let tenths = (odds * 10.0).round() / 10.0;
    let told = match odds {
        _ if tenths <= 1.0 => return catalog.text("weight-none"),
        odds if odds >= MOST_ODDS => format!("> {MOST_ODDS:.0}"),
        odds if odds >= 9.95 => format!("{odds:.0}"),
        _ if tenths.fract() == 0.0 => format!("{tenths:.0}"),
        _ => format!("{tenths:.1}"),
    };
    let key = if bits > 0.0 {
        "weight-for"
    } else {
        "weight-against"
    };
    catalog.fill(key, &Args::new().text("odds", told))
}

pub(super) fn bits(bits: f64) -> String {
    let shown = format!("{:.1} bits", bits.abs());
    match shown.as_str() {
        "0.0 bits" => shown,
        _ if bits < 0.0 => format!("−{shown}"),
        _ => format!("+{shown}"),
    }
}
