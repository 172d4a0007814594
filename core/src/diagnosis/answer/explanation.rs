//! Which causes together explain the case, and what they leave unexplained.

use serde::Serialize;

use super::policy::Policy;
use super::seen::{Seen, seen};
use crate::diagnosis::graph::{CauseIx, CauseKind, Level};
use crate::diagnosis::id::{CauseId, FindingId};
use crate::diagnosis::inference::{Factor, Inference};

/// A set of causes as the whole explanation.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Explanation {
    /// The causes that are so, one or two.
    pub causes: Vec<CauseId>,
    /// P(these and no other fault or lying instrument | evidence). Ordinary
    /// behaviour may go along with it.
    pub alone: f64,
    /// P(all of these | evidence), whatever else is so.
    pub together: f64,
}

/// The best single cause, the best pair, and which is better.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Explanations {
    /// P(no fault and no lying instrument | evidence).
    pub nothing: f64,
    /// The best single cause, if there is a possible one.
    pub single: Option<Explanation>,
    /// The best pair among the causes that are most probable one by one.
    pub pair: Option<Explanation>,
    /// Whether the pair as the whole explanation is more probable than the single cause.
    pub pair_is_better: bool,
}

/// Pairs are sought among so many of the most probable causes.
const PAIRED: usize = 8;

fn only(inference: &Inference<'_>, chosen: &[CauseIx]) -> Vec<Factor> {
    let graph = inference.graph();
    graph
        .cause_places()
        .filter_map(|cause| {
            if chosen.contains(&cause) {
                Some((cause.0, [0.0, 1.0]))
            } else if graph.cause(cause).kind == CauseKind::Normal {
                None
            } else {
                Some((cause.0, [1.0, 0.0]))
            }
        })
        .collect()
}

impl Explanations {
    pub(super) fn of(inference: &Inference<'_>) -> Self {
        let graph = inference.graph();
        let mut candidates: Vec<CauseIx> = graph
            .cause_places()
            .filter(|&cause| graph.cause(cause).kind != CauseKind::Normal)
            .filter(|&cause| inference.cause(cause) > 0.0)
            .collect();
        candidates.sort_by(|&a, &b| inference.cause(b).total_cmp(&inference.cause(a)));
        candidates.truncate(PAIRED);
        let mut probe = inference.probe();
        let nothing = probe.weight(&only(inference, &[]));
        let mut sets: Vec<Vec<CauseIx>> = candidates.iter().map(|&cause| vec![cause]).collect();
        for (at, &a) in candidates.iter().enumerate() {
            sets.extend(candidates[at + 1..].iter().map(|&b| vec![a, b]));
        }
        let mut best: [Option<(f64, Vec<CauseIx>)>; 2] = [None, None];
        for set in sets {
            let alone = probe.weight(&only(inference, &set));
            let slot = &mut best[set.len() - 1];
            if slot.as_ref().is_none_or(|(most, _)| alone > *most) {
                *slot = Some((alone, set));
            }
        }
        let mut explain = |(alone, set): (f64, Vec<CauseIx>)| {
            let factors: Vec<Factor> = set.iter().map(|cause| (cause.0, [0.0, 1.0])).collect();
            Explanation {
                causes: set
                    .iter()
                    .map(|&cause| graph.cause(cause).id.clone())
                    .collect(),
                alone,
                together: probe.weight(&factors),
            }
        };
        let [single, pair] = best;
        let single = single.map(&mut explain);
        let pair = pair.map(&mut explain);
        let pair_is_better = match (&single, &pair) {
            (Some(single), Some(pair)) => pair.alone > single.alone,
            _ => false,
        };
        Self {
            nothing,
            single,
            pair,
            pair_is_better,
        }
    }

    /// The pair that explains better than any single cause, if one does.
    #[must_use]
    pub fn better_pair(&self) -> Option<&Explanation> {
        self.pair.as_ref().filter(|_| self.pair_is_better)
    }
}

/// P(both | evidence).
pub(super) fn together(inference: &Inference<'_>, a: CauseIx, b: CauseIx) -> f64 {
    inference
        .probe()
        .weight(&[(a.0, [0.0, 1.0]), (b.0, [0.0, 1.0])])
}

/// An abnormal observation that the leading explanation does not make likely.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Unexplained {
    /// The finding.
    pub finding: FindingId,
    /// What was seen.
    pub level: Level,
    /// P(this level) if the explanation and nothing else were so.
    pub expected: f64,
}

/// The causes taken as the explanation: all that are more probable than not,
/// or the most probable one if there is none.
pub(super) fn leading_set(inference: &Inference<'_>) -> Vec<CauseIx> {
    let graph = inference.graph();
    let likely: Vec<CauseIx> = graph
        .cause_places()
        .filter(|&cause| inference.cause(cause) >= 0.5)
        .collect();
    if !likely.is_empty() {
        return likely;
    }
    graph
        .cause_places()
        .max_by(|&a, &b| inference.cause(a).total_cmp(&inference.cause(b)))
        .into_iter()
        .collect()
}

/// The abnormal observations that `explanation` alone does not make likely. A
/// reading of an instrument that is itself part of the explanation is explained.
pub(super) fn unexplained(
    inference: &Inference<'_>,
    explanation: &[CauseIx],
    policy: &Policy,
) -> Vec<Unexplained> {
    let graph = inference.graph();
    let given: Vec<Factor> = graph
        .cause_places()
        .filter(|&cause| inference.prior(cause) > 0.0)
        .map(|cause| {
            let so = explanation.contains(&cause);
            (cause.0, if so { [0.0, 1.0] } else { [1.0, 0.0] })
        })
        .collect();
    let mut probe = inference.probe();
    probe.silence_all();
    seen(inference)
        .into_iter()
        .filter(|seen| seen.is_abnormal())
        .filter(|seen| {
            !seen
                .instruments
                .iter()
                .any(|cause| explanation.contains(cause))
        })
        .filter_map(|Seen { finding, level, .. }| {
            let entry = graph.finding(finding);
            let levels = probe.finding_levels(finding, &given);
            let expected = entry.scale.index(level).map_or(0.0, |at| levels[at]);
            (expected < policy.unexplained_below).then(|| Unexplained {
                finding: entry.id.clone(),
                level,
                expected,
            })
        })
        .collect()
}
