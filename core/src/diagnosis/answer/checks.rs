//! The next best check by expected information a minute, and when to stop.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::outlook::{Outlook, Watch};
use super::policy::Policy;
use crate::diagnosis::graph::{CauseIx, CauseKind, Check, FindingIx, Level, Licence};
use crate::diagnosis::id::{CauseId, CheckId, FactId, FindingId, ToolId};
use crate::diagnosis::inference::Inference;

/// What the technician has and may do.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Means {
    /// Tools at hand; `None` if nothing is known, and then all are taken to be.
    pub tools: Option<BTreeSet<ToolId>>,
    /// Licences held.
    pub licences: BTreeSet<Licence>,
    /// Findings that no reading could tell, for want of a record. Somebody may still
    /// judge them without a number; no check is made for that.
    pub out_of_reach: BTreeSet<FindingId>,
}

/// What stands in the way of a check.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Obstacle {
    /// Tools that are not at hand.
    Tools(Vec<ToolId>),
    /// A licence that is not held.
    Licence(Licence),
    /// What it reads says nothing without a record that is not there.
    Records,
}

/// One thing a check may show, and what it would do to the ranking.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outcome {
    /// The level of each finding.
    pub levels: Vec<(FindingId, Level)>,
    /// Probability that the check shows this.
    pub probability: f64,
    /// The most probable causes afterwards.
    pub leading: Vec<(CauseId, f64)>,
}

/// What a check promises.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CheckOutlook {
    /// The check.
    pub check: CheckId,
    /// Minutes it takes.
    pub minutes: f64,
    /// Findings it would reveal that are not known yet and were taken into account.
    pub findings: Vec<FindingId>,
    /// False if the check reveals more findings than were taken into account:
    /// `bits` is then a lower bound.
    pub complete: bool,
    /// Expected information in bits: the mutual information between what the
    /// check shows and each cause that an answer may name, summed over them:
    /// the faults, and the instruments in doubt. It is by how much their
    /// entropies, taken one by one, are expected to fall. That some instrument
    /// is a little off, or that pipe relaxes, changes no answer.
    pub bits: f64,
    /// Bits a minute.
    pub bits_per_minute: f64,
    /// The causes it tells most about, with their share of the bits.
    pub about: Vec<(CauseId, f64)>,
    /// What it may show, the most probable first.
    pub outcomes: Vec<Outcome>,
    /// What stands in its way, if anything does.
    pub obstacle: Option<Obstacle>,
}

/// What to do next.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum NextStep {
    /// A cause has reached the probability that is enough.
    StopFound {
        /// The cause.
        cause: CauseId,
    },
    /// No check that can be done is worth its time.
    StopNothingWorthwhile,
    /// Do this check.
    Check(CheckId),
}

/// How many causes are listed for each outcome and each check.
const LEADING: usize = 3;
/// How many outcomes are listed for each check.
const LISTED_OUTCOMES: usize = 9;

pub(super) struct Outlooks {
    /// All checks with something left to reveal, the best first.
    pub(super) checks: Vec<CheckOutlook>,
    /// The joint tables behind those that can be done.
    possible: Vec<Outlook>,
}

impl Outlooks {
    pub(super) fn of(
        inference: &Inference<'_>,
        watch: &mut Watch<'_>,
        facts: &BTreeMap<FactId, bool>,
        means: &Means,
        policy: &Policy,
    ) -> Self {
        let named = may_be_named(inference, policy);
        let mut all = Self {
            checks: Vec::new(),
            possible: Vec::new(),
        };
        for check in inference.graph().checks() {
            let ruled_out = check
                .only_if
                .iter()
                .any(|fact| facts.get(fact) == Some(&false))
                || check
                    .not_if
                    .iter()
                    .any(|fact| facts.get(fact) == Some(&true));
            let unknown: Vec<FindingIx> = check
                .reveals
                .iter()
                .copied()
                .filter(|&finding| !inference.is_observed(finding))
                .collect();
            if ruled_out || unknown.is_empty() {
                continue;
            }
            // What could be told; where nothing could, what a record would open.
            let told = |&finding: &FindingIx| {
                let id = &inference.graph().finding(finding).id;
                !means.out_of_reach.contains(id)
            };
            let within: Vec<FindingIx> = unknown.iter().copied().filter(told).collect();
            let in_reach = !within.is_empty();
            let findings = if in_reach { within } else { unknown };
            let outlook = watch.of_reports(&findings);
            let mut entry = describe(inference, check, &outlook, findings.len(), &named, means);
            if !in_reach {
                entry.obstacle = Some(Obstacle::Records);
            }
            if entry.obstacle.is_none() {
                all.possible.push(outlook);
            }
            all.checks.push(entry);
        }
        all.checks
            .sort_by(|a, b| b.bits_per_minute.total_cmp(&a.bits_per_minute));
        all
    }

    /// Whether some check that can be done has an outcome of at least 5 %
    /// probability that changes the odds of `a` against `b` by the factor `apart`.
    pub(super) fn tell_apart(
        &self,
        inference: &Inference<'_>,
        a: CauseIx,
        b: CauseIx,
        apart: f64,
    ) -> bool {
        let now = inference.cause(a) / inference.cause(b);
        self.possible.iter().any(|outlook| {
            outlook
                .outcomes
                .iter()
                .zip(&outlook.joint)
                .any(|(&probability, joint)| {
                    let then = joint[a.0] / joint[b.0];
                    probability >= 0.05 && (then / now > apart || now / then > apart)
                })
        })
    }

    /// The next step under a policy.
    pub(super) fn next_step(&self, inference: &Inference<'_>, policy: &Policy) -> NextStep {
        let graph = inference.graph();
        let found = graph
            .cause_places()
            .filter(|&cause| graph.cause(cause).kind != CauseKind::Normal)
            .filter(|&cause| graph.cause(cause).kind != CauseKind::Instrument)
            .find(|&cause| inference.cause(cause) >= policy.enough);
        if let Some(cause) = found {
            return NextStep::StopFound {
                cause: graph.cause(cause).id.clone(),
            };
        }
        self.checks
            .iter()
            .find(|check| {
                check.obstacle.is_none()
                    && check.bits >= policy.worth_bits
                    && check.bits_per_minute >= policy.worth_bits_per_minute
            })
            .map_or(NextStep::StopNothingWorthwhile, |check| {
                NextStep::Check(check.check.clone())
            })
    }
}

fn obstacle(check: &Check, means: &Means) -> Option<Obstacle> {
    if check.licence != Licence::None && !means.licences.contains(&check.licence) {
        return Some(Obstacle::Licence(check.licence));
    }
    let tools = means.tools.as_ref()?;
    let missing: Vec<ToolId> = check
        .tools
        .iter()
        .filter(|tool| !tools.contains(tool))
        .cloned()
        .collect();
    (!missing.is_empty()).then_some(Obstacle::Tools(missing))
}

/// The causes that an answer may name as something to be put right.
fn may_be_named(inference: &Inference<'_>, policy: &Policy) -> Vec<CauseIx> {
    let graph = inference.graph();
    let may = |cause: &CauseIx| match graph.cause(*cause).kind {
        CauseKind::Loop | CauseKind::Unit => true,
        CauseKind::Instrument => inference.cause(*cause) >= policy.doubted,
        CauseKind::Normal => false,
    };
    graph.cause_places().filter(may).collect()
}

fn describe(
    inference: &Inference<'_>,
    check: &Check,
    outlook: &Outlook,
    unknown: usize,
    named: &[CauseIx],
    means: &Means,
) -> CheckOutlook {
    let graph = inference.graph();
    let id = |cause: CauseIx| graph.cause(cause).id.clone();
    let by_cause = named
        .iter()
        .map(|&cause| (cause, outlook.information(cause, inference.cause(cause))));
    let about: Vec<(CauseIx, f64)> = by_cause.collect();
    let bits = about.iter().map(|(_, bits)| bits).sum();
    let outcomes = outlook
        .outcomes
        .iter()
        .enumerate()
        .filter(|&(_, &probability)| probability > 0.0)
        .map(|(at, &probability)| Outcome {
            levels: outlook
                .levels(graph, at)
                .into_iter()
                .map(|(finding, level)| (graph.finding(finding).id.clone(), level))
                .collect(),
            probability,
            leading: greatest(
                graph
                    .cause_places()
                    .map(|cause| (cause, outlook.joint[at][cause.0] / probability)),
            )
            .map(|(cause, p)| (id(cause), p))
            .collect(),
        });
    let mut outcomes: Vec<Outcome> = outcomes.collect();
    outcomes.sort_by(|a, b| b.probability.total_cmp(&a.probability));
    outcomes.truncate(LISTED_OUTCOMES);
    CheckOutlook {
        check: check.id.clone(),
        minutes: check.minutes,
        findings: outlook
            .findings
            .iter()
            .map(|&f| graph.finding(f).id.clone())
            .collect(),
        complete: outlook.findings.len() == unknown,
        bits,
        bits_per_minute: bits / check.minutes,
        about: greatest(about.into_iter())
            .map(|(cause, bits)| (id(cause), bits))
            .collect(),
        outcomes,
        obstacle: obstacle(check, means),
    }
}

fn greatest(values: impl Iterator<Item = (CauseIx, f64)>) -> impl Iterator<Item = (CauseIx, f64)> {
    let mut values: Vec<_> = values.collect();
    values.sort_by(|a, b| b.1.total_cmp(&a.1));
    values.into_iter().take(LEADING)
}

impl Inference<'_> {
    /// Mutual information in bits, given the evidence, between the true level
    /// of a finding that was not observed and each cause, in the order of the graph.
    #[must_use]
    pub fn information(&self, finding: FindingIx) -> Vec<f64> {
        self.about_causes(&Watch::new(self).of_level(finding))
    }

    /// Mutual information in bits, given the evidence, between what a check
    /// would report on these findings and each cause, in the order of the graph.
    #[must_use]
    pub fn report_information(&self, findings: &[FindingIx]) -> Vec<f64> {
        self.about_causes(&Watch::new(self).of_reports(findings))
    }

    fn about_causes(&self, outlook: &Outlook) -> Vec<f64> {
        let causes = self.graph().cause_places();
        causes
            .map(|cause| outlook.information(cause, self.cause(cause)))
            .collect()
    }
}
