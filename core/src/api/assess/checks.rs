//! The checks that would tell most for their minutes.

use super::{level_id, percent};
use crate::api::Call;
use crate::api::knowledge::knowledge;
use crate::api::types::{CheckView, OutcomeView};
use crate::diagnosis::{
    CauseId, CheckId, CheckOutlook, Diagnosis, EvidenceKind, Licence, NextStep, Obstacle, Outcome,
};
use crate::evidence::Evaluator;
use crate::text::Args;

/// Checks that are listed.
const CHECKS: usize = 8;
/// Outcomes listed for a check.
const OUTCOMES: usize = 4;
/// Records that are asked for, and the bits from which one is.
const RECORDS: usize = 2;
const RECORD_BITS: f64 = 0.1;
/// Bits from which a check tells much, or something; judgement. One bit settles
/// one question of even odds.
const MUCH: f64 = 0.5;
const SOME: f64 = 0.15;
/// Share of what a check tells from which it is said to tell about a cause.
const ABOUT: f64 = 0.15;

impl Call {
    pub(super) fn checks(&self, diagnosis: &Diagnosis) -> Vec<CheckView> {
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
            .filter_map(|outlook| self.check(diagnosis, outlook))
            .collect()
    }

    /// What the program would work out by itself if the record held more. A reading
    /// that lacks a record is told among those that were not used.
    pub(super) fn records(&self, diagnosis: &Diagnosis) -> Vec<String> {
        let computed = |outlook: &&CheckOutlook| {
            let mut findings = outlook.findings.iter();
            outlook.obstacle == Some(Obstacle::Records)
                && outlook.bits >= RECORD_BITS
                && findings
                    .all(|id| Evaluator::named(id.as_str()).is_some_and(|e| e.reads.is_empty()))
        };
        let wanted = diagnosis.checks.iter().filter(computed).take(RECORDS);
        wanted
            .map(|outlook| self.catalog().text(&format!("check-{}.how", outlook.check)))
            .collect()
    }

    fn check(&self, diagnosis: &Diagnosis, outlook: &CheckOutlook) -> Option<CheckView> {
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
        Some(CheckView {
            id: check.id.as_str().to_owned(),
            title: title(&check.id),
            how: self.catalog().text(&format!("check-{}.how", check.id)),
            minutes: outlook.minutes,
            bits: outlook.bits,
            shown: self.worth(outlook),
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
                .map(|outcome| self.outcome(diagnosis, outcome))
                .collect(),
        })
    }

    /// Its minutes, and how much it tells about what.
    fn worth(&self, outlook: &CheckOutlook) -> String {
        let key = match outlook.bits {
            bits if bits >= MUCH => "check-tells-much",
            bits if bits >= SOME => "check-tells-some",
            _ => "check-tells-little",
        };
        let about = outlook.about.iter().enumerate();
        let about = about.filter(|(at, (_, bits))| *at == 0 || *bits >= ABOUT * outlook.bits);
        let causes = about.map(|(_, (cause, _))| self.title("cause", cause));
        let causes: Vec<String> = causes.collect();
        let args = Args::new()
            .text("minutes", format!("{:.0}", outlook.minutes))
            .text("causes", causes.join("; "));
        self.catalog().fill(key, &args)
    }

    fn outcome(&self, diagnosis: &Diagnosis, outcome: &Outcome) -> OutcomeView {
        let seen = outcome.levels.iter();
        let seen = seen.map(|(finding, level)| self.found(finding, *level));
        let moved = moved_most(diagnosis, outcome);
        let then = moved.map(|(id, probability)| {
            let args = Args::new()
                .text("cause", self.title("cause", id))
                .text("probability", percent(*probability));
            self.catalog().fill("check-outcome", &args)
        });
        OutcomeView {
            id: outcome_id(outcome),
            seen: seen.collect::<Vec<_>>().join(", "),
            shown: percent(outcome.probability),
            then: then.unwrap_or_default(),
        }
    }
}

/// The leading cause that an outcome moves most: the one that is certain anyway
/// tells nothing about the check.
pub(in crate::api) fn moved_most<'a>(
    diagnosis: &Diagnosis,
    outcome: &'a Outcome,
) -> Option<&'a (CauseId, f64)> {
    let change = |(cause, after): &(CauseId, f64)| {
        let mut ranked = diagnosis.causes.iter();
        let now = ranked.find(|ranked| ranked.cause == *cause);
        now.map_or(0.0, |now| (after - now.probability).abs())
    };
    let leading = outcome.leading.iter();
    leading.max_by(|a, b| change(a).total_cmp(&change(b)))
}

/// An outcome's identifier: what it shows of each finding.
pub(in crate::api) fn outcome_id(outcome: &Outcome) -> String {
    let shows = outcome.levels.iter();
    let shows = shows.map(|(finding, level)| format!("{finding}:{}", level_id(*level)));
    shows.collect::<Vec<_>>().join(" ")
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
