//! Why a cause is thought so: which finding speaks for or against it, through
//! which mechanism, by how many bits.

use std::collections::BTreeMap;

use serde::Serialize;

use super::policy::Policy;
use super::seen::{Seen, seen};
use crate::diagnosis::graph::{
    CauseIx, CauseKind, FindingIx, Graph, Level, Link, MechanismIx, Parent,
};
use crate::diagnosis::id::{CauseId, FactId, FindingId, MechanismId};
use crate::diagnosis::inference::{Inference, Run};

/// The way by which a finding bears on a cause.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Carrier {
    /// Through these mechanisms, from the cause to the finding; none if the
    /// cause leads to the finding directly.
    Through(Vec<MechanismId>),
    /// The cause is the instrument the finding was read with.
    Instrument,
    /// Against it through other causes of the same finding or mechanism: what speaks
    /// for them takes from this one. The one that gains most, if one does.
    Rival(Option<CauseId>),
    /// For it through other causes that would show it otherwise: what takes from
    /// them is left to this one. The one that loses most, if one does.
    RivalLess(Option<CauseId>),
}

/// What one finding says about a cause.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// The finding.
    pub finding: FindingId,
    /// What was seen.
    pub level: Level,
    /// Whether that is away from normal.
    pub abnormal: bool,
    /// Whether it comes from readings that lie where two levels meet.
    pub at_edge: bool,
    /// `log2 P(seen | cause, all else seen) / P(seen | not the cause, all else seen)`:
    /// by how much the odds of the cause would change if this finding were
    /// taken away. Above 0 it speaks for the cause.
    pub bits: f64,
    /// `log2 P(seen | cause) / P(seen | not the cause)` with nothing else seen:
    /// what it says by itself. Findings that say the same are each worth this
    /// much alone and less beside each other.
    pub alone: f64,
    /// How it bears on the cause.
    pub carrier: Carrier,
}

/// What a known fact says about a cause.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ContextStep {
    /// The fact.
    pub fact: FactId,
    /// Whether it is known to be true or false.
    pub is_true: bool,
    /// Binary logarithm of the factor on the odds.
    pub bits: f64,
}

/// Why a cause has the probability it has.
///
/// The bits of single findings need not add up to the change from prior to
/// posterior: two findings that say the same are each worth little while the
/// other stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Trace {
    /// The cause.
    pub cause: CauseId,
    /// Binary logarithm of the odds before facts and findings.
    pub prior_bits: f64,
    /// Binary logarithm of the factor by which finding the cause itself moved
    /// the odds, if somebody did; infinite if it was beyond doubt, and then no
    /// finding can say more.
    pub found_bits: Option<f64>,
    /// Binary logarithm of the factor on the odds of the call itself, with
    /// nothing seen yet, if somebody called.
    pub call_bits: Option<f64>,
    /// What the facts say.
    pub context: Vec<ContextStep>,
    /// What the findings say, those that say most by themselves first.
    pub steps: Vec<Step>,
    /// Binary logarithm of the odds given everything.
    pub posterior_bits: f64,
}

/// A finding that the others make less likely than it was on its own.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Contradiction {
    /// The finding.
    pub finding: FindingId,
    /// What was seen.
    pub level: Level,
    /// `log2 P(seen) / P(seen | all else seen)`.
    pub bits: f64,
}

/// The case with each observation left out in turn.
pub(super) struct LeftOut {
    seen: Vec<Seen>,
    runs: Vec<Run>,
    /// The case with each observation and nothing else.
    alone: Vec<Run>,
    /// The case with no observation at all.
    base: Run,
}

impl LeftOut {
    pub(super) fn of(inference: &Inference<'_>) -> Self {
        let seen = seen(inference);
        let mut probe = inference.probe();
        let runs = (0..seen.len())
            .map(|at| {
                probe.silence(at);
                let run = probe.run(&[]);
                probe.restore(at);
                run
            })
            .collect();
        probe.silence_all();
        let base = probe.run(&[]);
        let alone = (0..seen.len())
            .map(|at| {
                probe.restore(at);
                let run = probe.run(&[]);
                probe.silence(at);
                run
            })
            .collect();
        Self {
            seen,
            runs,
            alone,
            base,
        }
    }

    /// P(each cause) before any observation, in the order of the graph.
    pub(super) fn before(&self) -> &[f64] {
        &self.base.causes
    }

    /// Sum over the observations of `log2 P(seen)`, less `log2` of their joint
    /// probability: above 0 they agree less than chance would have them.
    pub(super) fn conflict_bits(&self) -> f64 {
        // The weight of a run is relative to that of the whole case.
        let together = -self.base.log_weight;
        let alone: f64 = (0..self.alone.len()).map(|at| self.log_alone(at)).sum();
        (alone - together) / std::f64::consts::LN_2
    }

    /// Natural logarithm of the probability of an observation before any other.
    fn log_alone(&self, at: usize) -> f64 {
        self.alone[at].log_weight - self.base.log_weight
    }

    pub(super) fn contradictions(
        &self,
        inference: &Inference<'_>,
        policy: &Policy,
    ) -> Vec<Contradiction> {
        let graph = inference.graph();
        let mut found: Vec<Contradiction> = self
            .seen
            .iter()
            .zip(&self.runs)
            .enumerate()
            .map(|(at, (seen, run))| Contradiction {
                finding: graph.finding(seen.finding).id.clone(),
                level: seen.level,
                bits: (self.log_alone(at) + run.log_weight) / std::f64::consts::LN_2,
            })
            .filter(|found| found.bits >= policy.contradictory_bits)
            .collect();
        found.sort_by(|a, b| b.bits.total_cmp(&a.bits));
        found
    }

    pub(super) fn trace(
        &self,
        inference: &Inference<'_>,
        facts: &BTreeMap<FactId, bool>,
        cause: CauseIx,
    ) -> Trace {
        let graph = inference.graph();
        let entry = graph.cause(cause);
        let context: Vec<ContextStep> = entry
            .context
            .iter()
            .filter_map(|shift| {
                let &is_true = facts.get(&shift.fact)?;
                let odds = if is_true {
                    shift.odds
                } else {
                    shift.odds_if_false
                };
                Some(ContextStep {
                    fact: shift.fact.clone(),
                    is_true,
                    bits: odds.log2(),
                })
            })
            .filter(|step| step.bits.abs() > 0.0)
            .collect();
        let prior = inference.prior(cause);
        let prior_odds = (prior / (1.0 - prior)).log2();
        let found_bits = inference.found_bits(cause);
        let is_certain = found_bits.is_some_and(f64::is_infinite);
        // What each says by itself is counted from what is so before anything is seen.
        let before = self.base.log_odds[cause.0];
        let without_call = prior_odds + found_bits.filter(|bits| bits.is_finite()).unwrap_or(0.0);
        let mut steps: Vec<Step> = (0..self.seen.len())
            .filter(|_| !is_certain)
            .map(|at| Step {
                finding: graph.finding(self.seen[at].finding).id.clone(),
                level: self.seen[at].level,
                abnormal: self.seen[at].is_abnormal(),
                at_edge: self.seen[at].at_edge,
                bits: self.bits(inference, at, cause),
                alone: self.alone[at].log_odds[cause.0] - before,
                carrier: self.carrier(inference, at, cause),
            })
            .collect();
        steps.sort_by(|a, b| b.alone.abs().total_cmp(&a.alone.abs()));
        Trace {
            cause: entry.id.clone(),
            prior_bits: prior_odds - context.iter().map(|step| step.bits).sum::<f64>(),
            found_bits,
            call_bits: (inference.is_called() && !is_certain).then_some(before - without_call),
            context,
            steps,
            posterior_bits: inference.log_odds(cause),
        }
    }

    fn bits(&self, inference: &Inference<'_>, at: usize, cause: CauseIx) -> f64 {
        inference.log_odds(cause) - self.runs[at].log_odds[cause.0]
    }

    fn carrier(&self, inference: &Inference<'_>, at: usize, cause: CauseIx) -> Carrier {
        let seen = &self.seen[at];
        if seen.instruments.contains(&cause) {
            return Carrier::Instrument;
        }
        let ways = Ways {
            inference,
            level: seen.level,
        };
        if let Some((_, way)) = ways.best(seen.finding, cause) {
            let graph = inference.graph();
            let ids = way.iter().map(|&place| graph.mechanism(place).id.clone());
            return Carrier::Through(ids.collect());
        }
        // Told as the weight is: of the finding by itself.
        let alone = &self.alone[at];
        let speaks_for = alone.log_odds[cause.0] > self.base.log_odds[cause.0];
        let gain = |other: CauseIx| {
            let gain = alone.causes[other.0] - self.base.causes[other.0];
            if speaks_for { -gain } else { gain }
        };
        let graph = inference.graph();
        let rival = graph
            .cause_places()
            .filter(|&other| other != cause && gain(other) > 0.0)
            .filter(|&other| {
                seen.instruments.contains(&other) || ways.best(seen.finding, other).is_some()
            })
            .max_by(|&a, &b| gain(a).total_cmp(&gain(b)))
            .map(|other| graph.cause(other).id.clone());
        if speaks_for {
            Carrier::RivalLess(rival)
        } else {
            Carrier::Rival(rival)
        }
    }
}

/// Finds the strongest directed way from a cause to a finding: the product of
/// the strengths of its links and of the probabilities of its mechanisms.
struct Ways<'a> {
    inference: &'a Inference<'a>,
    level: Level,
}

impl Ways<'_> {
    fn best(&self, finding: FindingIx, cause: CauseIx) -> Option<(f64, Vec<MechanismIx>)> {
        let graph: &Graph = self.inference.graph();
        let strength: fn(&Link) -> f64 = match self.level {
            Level::Low => |link| link.push.low,
            Level::High => |link| link.push.high,
            Level::Absent | Level::Present | Level::Normal => |link| link.push.low + link.push.high,
        };
        self.among(&graph.finding(finding).parents, cause, strength)
    }

    fn among(
        &self,
        links: &[Link],
        cause: CauseIx,
        strength: fn(&Link) -> f64,
    ) -> Option<(f64, Vec<MechanismIx>)> {
        let graph = self.inference.graph();
        links
            .iter()
            .filter_map(|link| match link.parent {
                Parent::Cause(place) => (place == cause).then(|| (strength(link), Vec::new())),
                Parent::Mechanism(place) => {
                    let parents = &graph.mechanism(place).parents;
                    let (weight, mut way) = self.among(parents, cause, |link| link.push.high)?;
                    way.push(place);
                    Some((
                        weight * strength(link) * self.inference.mechanism(place),
                        way,
                    ))
                }
            })
            .max_by(|a, b| a.0.total_cmp(&b.0))
    }
}

/// An instrument that the case makes doubtful.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Doubted {
    /// The instrument.
    pub instrument: CauseId,
    /// P(it lies) before the case.
    pub prior: f64,
    /// P(it lies | evidence).
    pub probability: f64,
}

/// The instruments that the case makes doubtful, the most doubtful first.
pub(super) fn doubted(inference: &Inference<'_>, policy: &Policy) -> Vec<Doubted> {
    let graph = inference.graph();
    let mut doubted: Vec<Doubted> = graph
        .cause_places()
        .filter(|&cause| graph.cause(cause).kind == CauseKind::Instrument)
        .filter(|&cause| {
            inference.cause(cause) >= policy.doubted
                && inference.cause(cause) > inference.prior(cause)
        })
        .map(|cause| Doubted {
            instrument: graph.cause(cause).id.clone(),
            prior: inference.prior(cause),
            probability: inference.cause(cause),
        })
        .collect();
    doubted.sort_by(|a, b| b.probability.total_cmp(&a.probability));
    doubted
}
