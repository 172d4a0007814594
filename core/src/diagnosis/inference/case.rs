//! From a case to priors and readings, with everything wrong about it told.

use super::network::{Observed, Reading};
use crate::diagnosis::evidence::{Case, ReadWith};
use crate::diagnosis::graph::{CauseIx, CauseKind, EvidenceKind, FindingIx, Graph, Scale};
use crate::diagnosis::id::{CauseId, FactId, FindingId};

/// Why a case cannot be worked out.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum CaseError {
    /// An observation of a finding that the graph does not have.
    #[error("the graph has no finding `{0}`")]
    UnknownFinding(FindingId),
    /// A fact that the graph does not have.
    #[error("the graph has no fact `{0}`")]
    UnknownFact(FactId),
    /// A cause that the graph does not have.
    #[error("the graph has no cause `{0}`")]
    UnknownCause(CauseId),
    /// A likelihood with another number of levels than the finding has.
    #[error("the likelihood of `{finding}` has {given} levels, the finding {expected}")]
    WrongScale {
        /// The finding.
        finding: FindingId,
        /// Levels of the likelihood.
        given: usize,
        /// Levels of the finding.
        expected: usize,
    },
    /// What a reading was taken with is not an instrument.
    #[error("`{0}` is not a cause of kind instrument")]
    NotAnInstrument(CauseId),
    /// A likelihood under a lying instrument that is not a positive finite number.
    #[error("the likelihood of `{finding}` if the instrument lies is {value}")]
    BadIfLying {
        /// The finding.
        finding: FindingId,
        /// The value.
        value: f64,
    },
    /// A learned prior outside (0, 1).
    #[error("the prior of `{cause}` is {value}, outside (0, 1)")]
    PriorOutOfRange {
        /// The cause.
        cause: CauseId,
        /// The value.
        value: f64,
    },
    /// A credibility outside (0, 1].
    #[error("the credibility of what was found about `{cause}` is {value}, outside (0, 1]")]
    CredibilityOutOfRange {
        /// The cause.
        cause: CauseId,
        /// The value.
        value: f64,
    },
    /// The observations have probability 0.
    #[error("the observations are impossible together under the graph")]
    Impossible,
}

/// The prior of each cause after learning and facts.
pub(super) fn priors(graph: &Graph, case: &Case) -> Result<Vec<f64>, CaseError> {
    for fact in case.facts.keys() {
        if !graph.facts().contains(fact) {
            return Err(CaseError::UnknownFact(fact.clone()));
        }
    }
    for (cause, &value) in &case.priors {
        if graph.find_cause(cause).is_none() {
            return Err(CaseError::UnknownCause(cause.clone()));
        }
        if !(value > 0.0 && value < 1.0) {
            return Err(CaseError::PriorOutOfRange {
                cause: cause.clone(),
                value,
            });
        }
    }
    let known = |fact: &FactId| case.facts.get(fact).copied();
    let seen = |cause: &CauseId| case.found.get(cause).is_some_and(|found| found.is_so);
    Ok(graph
        .causes()
        .iter()
        .map(|cause| {
            let ruled_out = cause.only_if.iter().any(|fact| known(fact) == Some(false))
                || cause.not_if.iter().any(|fact| known(fact) == Some(true));
            if ruled_out && !seen(&cause.id) {
                return 0.0;
            }
            let prior = case.priors.get(&cause.id).copied().unwrap_or(cause.prior);
            let odds = cause
                .context
                .iter()
                .fold(prior / (1.0 - prior), |odds, shift| {
                    odds * match known(&shift.fact) {
                        Some(true) => shift.odds,
                        Some(false) => shift.odds_if_false,
                        None => 1.0,
                    }
                });
            odds / (1.0 + odds)
        })
        .collect())
}

/// The probability that each cause, alone, makes somebody call, if somebody did
/// and the graph says how. A cause that makes people call with some complaints
/// only is no reason for a call with others: nobody calls about a noise because
/// the gauge sinks in summer.
pub(super) fn calls(graph: &Graph, case: &Case, observed: &[Observed]) -> Option<Vec<f64>> {
    if !case.called {
        return None;
    }
    graph.call()?;
    let complaints: Vec<FindingIx> = observed
        .iter()
        .filter(|seen| {
            let finding = graph.finding(seen.finding);
            finding.evidence == EvidenceKind::Symptom && is_off(finding.scale, seen)
        })
        .map(|seen| seen.finding)
        .collect();
    let fits = |with: &[FindingIx]| {
        with.is_empty() || complaints.is_empty() || with.iter().any(|one| complaints.contains(one))
    };
    let causes = graph.causes().iter();
    let calls = causes.map(|cause| {
        if fits(&cause.calls_with) {
            cause.calls
        } else {
            0.0
        }
    });
    Some(calls.collect())
}

/// Whether what was seen speaks more for another level than for the normal one.
fn is_off(scale: Scale, seen: &Observed) -> bool {
    let weights = seen.sound_weights();
    let normal = scale.index(scale.normal()).unwrap_or(0);
    weights[..scale.count()]
        .iter()
        .any(|&weight| weight > weights[normal])
}

/// What was found about causes themselves, as the likelihood of not so and so.
pub(super) fn found(graph: &Graph, case: &Case) -> Result<Vec<(CauseIx, [f64; 2])>, CaseError> {
    case.found
        .iter()
        .map(|(id, found)| {
            let place = graph
                .find_cause(id)
                .ok_or_else(|| CaseError::UnknownCause(id.clone()))?;
            if !(found.credibility > 0.0 && found.credibility <= 1.0) {
                return Err(CaseError::CredibilityOutOfRange {
                    cause: id.clone(),
                    value: found.credibility,
                });
            }
            Ok((place, found.weights()))
        })
        .collect()
}

/// The observations, those of one finding together, in the order first seen.
pub(super) fn observed(graph: &Graph, case: &Case) -> Result<Vec<Observed>, CaseError> {
    let mut all: Vec<Observed> = Vec::new();
    for observation in &case.observations {
        let id = &observation.finding;
        let place = graph
            .find_finding(id)
            .ok_or_else(|| CaseError::UnknownFinding(id.clone()))?;
        let finding = graph.finding(place);
        let given = observation.likelihood.weights();
        let expected = finding.scale.count();
        if given.len() != expected {
            return Err(CaseError::WrongScale {
                finding: id.clone(),
                given: given.len(),
                expected,
            });
        }
        let mut weights = [0.0; 3];
        weights[..expected].copy_from_slice(given);
        let instrument = match &observation.read_with {
            ReadWith::Usual => finding.instrument,
            ReadWith::Nothing => None,
            ReadWith::Other(cause) => Some(instrument(graph, cause)?),
        };
        let if_lying = observation
            .if_lying
            .unwrap_or_else(|| observation.likelihood.mean());
        if !(if_lying.is_finite() && if_lying > 0.0) {
            return Err(CaseError::BadIfLying {
                finding: id.clone(),
                value: if_lying,
            });
        }
        let reading = Reading {
            weights,
            instrument,
            if_lying,
        };
        match all.iter_mut().find(|observed| observed.finding == place) {
            Some(observed) => observed.readings.push(reading),
            None => all.push(Observed {
                finding: place,
                readings: vec![reading],
            }),
        }
    }
    Ok(all)
}

fn instrument(graph: &Graph, id: &CauseId) -> Result<CauseIx, CaseError> {
    let place = graph
        .find_cause(id)
        .ok_or_else(|| CaseError::UnknownCause(id.clone()))?;
    if graph.cause(place).kind == CauseKind::Instrument {
        Ok(place)
    } else {
        Err(CaseError::NotAnInstrument(id.clone()))
    }
}
