//! What a worked-out case says: ranking, explanations, traces, verdict, next check.

mod checks;
mod explanation;
mod outlook;
mod policy;
mod products;
mod seen;
mod trace;
mod verdict;

use serde::Serialize;

pub use checks::{CheckOutlook, Means, NextStep, Obstacle, Outcome};
pub use explanation::{Explanation, Explanations, Unexplained};
pub use policy::Policy;
pub use trace::{Carrier, ContextStep, Contradiction, Doubted, Step as TraceStep, Trace};
pub use verdict::{Health, Verdict};

use super::evidence::Case;
use super::graph::{CauseIx, CauseKind, Graph};
use super::id::{CauseId, FindingId, MechanismId};
use super::inference::{CaseError, Inference};

/// A cause in the ranking.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RankedCause {
    /// The cause.
    pub cause: CauseId,
    /// Its kind.
    pub kind: CauseKind,
    /// P(cause) after facts and learned priors, before findings.
    pub prior: f64,
    /// P(cause | everything).
    pub probability: f64,
}

/// Everything the graph says about a case.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Diagnosis {
    /// The answer.
    pub verdict: Verdict,
    /// All causes, the most probable first; ordinary behaviours where some fault
    /// is more probable than none, and instruments that nothing speaks for, stand
    /// behind all faults.
    pub causes: Vec<RankedCause>,
    /// P(at work | everything) of each mechanism, in the order of the graph.
    pub mechanisms: Vec<(MechanismId, f64)>,
    /// P(level | everything) of each finding, in the order of the graph and of its levels.
    pub findings: Vec<(FindingId, Vec<f64>)>,
    /// How probable it is that nothing is wrong.
    pub health: Health,
    /// The best single cause and the best pair.
    pub explanations: Explanations,
    /// Why, for each of the causes that were asked for, the most probable first.
    pub traces: Vec<Trace>,
    /// Abnormal findings that the leading causes do not make likely.
    pub unexplained: Vec<Unexplained>,
    /// Findings that contradict the others.
    pub contradictions: Vec<Contradiction>,
    /// By how many bits the findings agree less than chance would have them;
    /// below 0 they agree.
    pub conflict_bits: f64,
    /// Instruments that the case makes doubtful.
    pub doubted: Vec<Doubted>,
    /// What each check promises, the best first.
    pub checks: Vec<CheckOutlook>,
    /// What to do next.
    pub next: NextStep,
}

/// Works a case out and answers everything. `traced` is how many of the most
/// probable causes get their reasons; every doubted instrument gets them too.
///
/// # Errors
/// As [`Inference::new`].
pub fn diagnose(
    graph: &Graph,
    case: &Case,
    means: &Means,
    policy: &Policy,
    traced: usize,
) -> Result<Diagnosis, CaseError> {
    let inference = Inference::new(graph, case)?;
    let health = Health::of(&inference);
    let (outlooks, (left_out, explanations, findings)) = beside(
        || {
            let mut watch = outlook::Watch::new(&inference);
            checks::Outlooks::of(&inference, &mut watch, &case.facts, means, policy)
        },
        || {
            (
                trace::LeftOut::of(&inference),
                Explanations::of(&inference),
                inference.findings(),
            )
        },
    );
    let is_sound = health.is_sound(&inference, policy);
    let ranked = verdict::in_answer_order(&inference, is_sound, left_out.before());
    let leading = explanation::leading_set(&inference);
    let doubted = trace::doubted(&inference, policy);
    let mut told: Vec<CauseIx> = ranked.iter().copied().take(traced).collect();
    for doubt in &doubted {
        let instrument = graph.find_cause(&doubt.instrument);
        told.extend(instrument.filter(|instrument| !told.contains(instrument)));
    }
    Ok(Diagnosis {
        verdict: verdict::verdict(
            &inference,
            &health,
            is_sound,
            &explanations,
            &outlooks,
            policy,
        ),
        causes: ranked
            .iter()
            .map(|&cause| RankedCause {
                cause: graph.cause(cause).id.clone(),
                kind: graph.cause(cause).kind,
                prior: inference.prior(cause),
                probability: inference.cause(cause),
            })
            .collect(),
        mechanisms: graph
            .mechanism_places()
            .map(|place| {
                (
                    graph.mechanism(place).id.clone(),
                    inference.mechanism(place),
                )
            })
            .collect(),
        findings: graph
            .finding_places()
            .map(|place| graph.finding(place).id.clone())
            .zip(findings)
            .collect(),
        health,
        explanations,
        traces: told
            .into_iter()
            .map(|cause| left_out.trace(&inference, &case.facts, cause))
            .collect(),
        unexplained: explanation::unexplained(&inference, &leading, policy),
        contradictions: left_out.contradictions(&inference, policy),
        conflict_bits: left_out.conflict_bits(),
        doubted,
        next: outlooks.next_step(&inference, policy),
        checks: outlooks.checks,
    })
}

/// Works two independent questions out side by side: each takes about half of the
/// time of an answer, and a phone has more than one core. One after the other where
/// no thread is to be had.
fn beside<A, B: Send>(first: impl FnOnce() -> A, second: impl Fn() -> B + Sync) -> (A, B) {
    std::thread::scope(|scope| {
        let other = std::thread::Builder::new().spawn_scoped(scope, &second);
        let first = first();
        let second = match other {
            Ok(other) => other
                .join()
                .unwrap_or_else(|panic| std::panic::resume_unwind(panic)),
            Err(_) => second(),
        };
        (first, second)
    })
}

#[cfg(test)]
mod tests;
