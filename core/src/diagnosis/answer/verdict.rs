//! The answer in one word: found, nothing wrong, not the loop, cannot tell, or not yet.

use serde::Serialize;

use super::checks::Outlooks;
use super::explanation::{Explanations, together};
use super::policy::Policy;
use crate::diagnosis::graph::{CauseIx, CauseKind};
use crate::diagnosis::id::{CauseId, ProcedureId};
use crate::diagnosis::inference::{Factor, Inference};

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// One cause is found.
    Cause {
        /// The cause.
        cause: CauseId,
        /// Its probability.
        probability: f64,
    },
    /// Two causes are so together.
    Pair {
        /// The causes, in the order in which to treat them.
        causes: Vec<CauseId>,
        /// P(both).
        probability: f64,
    },
    /// Nothing is wrong with loop or unit: nothing to correct.
    NothingToCorrect {
        /// P(no fault).
        probability: f64,
        /// The ordinary behaviour that most probably explains what was seen.
        behaviour: Option<CauseId>,
        /// Whether it is said without reservation, and not only as far as was looked.
        settled: bool,
    },
    /// Not the loop: hand over to whoever is licensed.
    NotTheLoop {
        /// P(a unit fault and no loop fault).
        probability: f64,
        /// The most probable unit fault.
        leading: Option<CauseId>,
    },
    /// An instrument most probably lies: settle that before anything else.
    InstrumentFirst {
        /// The instrument.
        instrument: CauseId,
        /// P(it lies).
        probability: f64,
    },
    /// Two causes that no check at hand tells apart.
    CannotTellApart {
        /// The causes, in the safe order: the loop before the unit, then the more probable.
        causes: Vec<CauseId>,
        /// The correction that serves both, if it is the same.
        procedure: Option<ProcedureId>,
    },
    /// Nothing is certain enough yet.
    Undecided {
        /// The most probable fault.
        leading: Option<CauseId>,
    },
}

/// How probable it is that nothing of each kind is wrong.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Health {
    /// P(no loop fault and no unit fault | evidence).
    pub no_fault: f64,
    /// P(no loop fault | evidence).
    pub no_loop_fault: f64,
    /// P(no unit fault | evidence).
    pub no_unit_fault: f64,
}

impl Health {
    pub(super) fn of(inference: &Inference<'_>) -> Self {
        let graph = inference.graph();
        let mut probe = inference.probe();
        let mut none_of = |kinds: &[CauseKind]| {
            let factors: Vec<Factor> = graph
                .cause_places()
                .filter(|&cause| kinds.contains(&graph.cause(cause).kind))
                .map(|cause| (cause.0, [1.0, 0.0]))
                .collect();
            probe.weight(&factors)
        };
        Self {
            no_fault: none_of(&[CauseKind::Loop, CauseKind::Unit]),
            no_loop_fault: none_of(&[CauseKind::Loop]),
            no_unit_fault: none_of(&[CauseKind::Unit]),
        }
    }

    /// Whether "nothing to correct" may be said. Where nothing was looked at there is
    /// nothing to say.
    pub(super) fn is_sound(&self, inference: &Inference<'_>, policy: &Policy) -> bool {
        let faults = ranked(inference, &[CauseKind::Loop, CauseKind::Unit]);
        let most = faults.first().map_or(0.0, |&cause| inference.cause(cause));
        let unrivalled =
            self.no_fault >= policy.healthy_unrivalled && self.no_fault >= policy.rival * most;
        !inference.observed().is_empty() && (self.no_fault >= policy.healthy || unrivalled)
    }

    /// P(a unit fault and no loop fault | evidence).
    #[must_use]
    pub fn unit_alone(&self) -> f64 {
        (self.no_loop_fault - self.no_fault).max(0.0)
    }
}

/// Causes of the kinds, the most probable first.
pub(super) fn ranked(inference: &Inference<'_>, kinds: &[CauseKind]) -> Vec<CauseIx> {
    let graph = inference.graph();
    let mut causes: Vec<CauseIx> = graph
        .cause_places()
        .filter(|&cause| kinds.contains(&graph.cause(cause).kind))
        .collect();
    causes.sort_by(|&a, &b| inference.cause(b).total_cmp(&inference.cause(a)));
    causes
}

/// The causes in the order of the answer: by probability, but what does not
/// answer the call stands behind the faults. Plastic pipe always relaxes a
/// little and most gauges sink in summer: that is an answer only where nothing is to
/// be corrected. And some gauge is always off: an instrument is an
/// answer only where a sign speaks for it. What somebody found stands by its
/// probability. `is_sound` says whether nothing is to be corrected, `before` is the
/// probability of each cause before any observation.
pub(super) fn in_answer_order(
    inference: &Inference<'_>,
    is_sound: bool,
    before: &[f64],
) -> Vec<CauseIx> {
    let graph = inference.graph();
    let is_answer = |cause: CauseIx| {
        inference.found_bits(cause).is_some()
            || match graph.cause(cause).kind {
                CauseKind::Loop | CauseKind::Unit => true,
                CauseKind::Normal => is_sound,
                CauseKind::Instrument => inference.cause(cause) > before[cause.0],
            }
    };
    let mut causes: Vec<CauseIx> = graph.cause_places().collect();
    causes.sort_by(|&a, &b| inference.cause(b).total_cmp(&inference.cause(a)));
    causes.sort_by_key(|&cause| !is_answer(cause));
    causes
}

/// The safe order of two causes: the loop before the unit, then as given.
fn in_safe_order(inference: &Inference<'_>, a: CauseIx, b: CauseIx) -> Vec<CauseId> {
    let graph = inference.graph();
    let mut pair = [a, b];
    pair.sort_by_key(|&cause| graph.cause(cause).kind == CauseKind::Unit);
    pair.iter()
        .map(|&cause| graph.cause(cause).id.clone())
        .collect()
}

pub(super) fn verdict(
    inference: &Inference<'_>,
    health: &Health,
    is_sound: bool,
    explanations: &Explanations,
    outlooks: &Outlooks,
    policy: &Policy,
) -> Verdict {
    let graph = inference.graph();
    let id = |cause: CauseIx| graph.cause(cause).id.clone();
    let p = |cause: CauseIx| inference.cause(cause);
    let faults = ranked(inference, &[CauseKind::Loop, CauseKind::Unit]);
    let (first, second) = (faults.first().copied(), faults.get(1).copied());

    let liar = ranked(inference, &[CauseKind::Instrument])
        .first()
        .copied()
        .filter(|&instrument| p(instrument) >= 0.5);
    let instrument_first = liar.map(|instrument| Verdict::InstrumentFirst {
        instrument: id(instrument),
        probability: p(instrument),
    });

    if is_sound {
        // Sound only if a gauge that contradicts the rest is wrong: settle that first.
        if let Some(instrument_first) = instrument_first {
            return instrument_first;
        }
        let behaviour = ranked(inference, &[CauseKind::Normal]).first().copied();
        let behaviour = behaviour.filter(|&cause| p(cause) >= 0.5).map(id);
        return Verdict::NothingToCorrect {
            probability: health.no_fault,
            behaviour,
            settled: health.no_fault >= policy.healthy_settled,
        };
    }
    // Two that are found; or one that is, and one beside it that is more probable than
    // not and explains what the first does not: the loop is then part of the answer,
    // and what is measured at the unit is judged after it.
    if let (Some(a), Some(b)) = (first, second) {
        let is_loop = |cause: CauseIx| graph.cause(cause).kind == CauseKind::Loop;
        let beside = p(a) >= policy.enough
            && p(b) >= 0.5
            && (explanations.better_pair())
                .is_some_and(|pair| [a, b].iter().all(|&one| pair.causes.contains(&id(one))))
            && (is_loop(a) || is_loop(b));
        if p(b) >= policy.enough || beside {
            return Verdict::Pair {
                causes: in_safe_order(inference, a, b),
                probability: together(inference, a, b),
            };
        }
    }
    // A unit fault that is found is handed over, even where so many loop faults
    // are left at a little each that "no loop fault" is not said.
    let loop_leads = ranked(inference, &[CauseKind::Loop])
        .first()
        .is_some_and(|&cause| p(cause) >= 0.5);
    let unit_found = first.is_some_and(|cause| {
        graph.cause(cause).kind == CauseKind::Unit && p(cause) >= policy.enough
    });
    if health.unit_alone() >= policy.elsewhere || (unit_found && !loop_leads) {
        let leading = ranked(inference, &[CauseKind::Unit])
            .first()
            .copied()
            .map(id);
        return Verdict::NotTheLoop {
            probability: health.unit_alone(),
            leading,
        };
    }
    if let Some(cause) = first
        && p(cause) >= policy.enough
    {
        return Verdict::Cause {
            cause: id(cause),
            probability: p(cause),
        };
    }
    if let Some(instrument_first) = instrument_first {
        return instrument_first;
    }
    if let (Some(a), Some(b)) = (first, second) {
        let both = together(inference, a, b);
        if both >= 0.5 && explanations.pair_is_better {
            return Verdict::Pair {
                causes: in_safe_order(inference, a, b),
                probability: both,
            };
        }
        let either = p(a) + p(b) - both;
        let alike = p(b) >= policy.alike * p(a) && both < 0.5 * p(b);
        if alike && either >= 0.5 && !outlooks.tell_apart(inference, a, b, policy.apart) {
            let [one, other] = [a, b].map(|cause| graph.cause(cause).procedure.as_ref());
            let procedure = if one == other { one.cloned() } else { None };
            return Verdict::CannotTellApart {
                causes: in_safe_order(inference, a, b),
                procedure,
            };
        }
    }
    Verdict::Undecided {
        leading: first.map(id),
    }
}
