//! Learning of priors from confirmed causes.
//!
//! The prior of a cause is taken as the mean of a Beta distribution worth
//! `weight` callbacks, Beta(weight * prior, weight * (1 - prior)). Of `callbacks`
//! closed callbacks the cause was confirmed in `confirmed`; the Beta is conjugate
//! to the binomial, so the distribution after them is
//! Beta(weight * prior + confirmed, weight * (1 - prior) + callbacks - confirmed).
//! Source: Gelman et al., Bayesian Data Analysis, section 2.4 (from memory).

use std::collections::BTreeMap;

use serde::Serialize;

use super::graph::{Cause, CauseKind, Graph};
use super::id::CauseId;

/// How many callbacks the shipped prior is worth. Judgement: a shipped share of 1.5 % is held
/// for right within half of itself either way (the standard deviation of its Beta
/// distribution), so that a first hundred callbacks in which it did not happen to come up
/// do not unlearn it. `core/docs/diagnosis-figures.md` says what other weights do.
pub const PRIOR_WEIGHT: f64 = 250.0;

/// Confirmed causes as counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Counts {
    confirmed: u32,
    callbacks: u32,
}

/// Why counts or a prior are refused.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum LearningError {
    /// More confirmed than closed.
    #[error("{confirmed} confirmed of {callbacks} callbacks")]
    MoreThanAll {
        /// Callbacks in which the cause was confirmed.
        confirmed: u32,
        /// Closed callbacks.
        callbacks: u32,
    },
    /// The prior is not in (0, 1).
    #[error("prior {prior} is outside (0, 1)")]
    BadPrior {
        /// The prior.
        prior: f64,
    },
    /// The weight is not a positive finite number.
    #[error("prior weight {weight} is not a positive finite number")]
    BadWeight {
        /// The weight.
        weight: f64,
    },
}

impl Counts {
    /// `confirmed` of `callbacks`.
    ///
    /// # Errors
    /// If more are confirmed than there are.
    pub fn new(confirmed: u32, callbacks: u32) -> Result<Self, LearningError> {
        if confirmed > callbacks {
            return Err(LearningError::MoreThanAll {
                confirmed,
                callbacks,
            });
        }
        Ok(Self {
            confirmed,
            callbacks,
        })
    }
}

/// A prior after learning.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LearnedPrior {
    /// The prior before.
    pub prior: f64,
    /// How many callbacks it was worth.
    pub weight: f64,
    /// What was learned from.
    pub counts: Counts,
    /// First parameter of the Beta distribution after.
    pub alpha: f64,
    /// Second parameter of the Beta distribution after.
    pub beta: f64,
}

impl LearnedPrior {
    /// Learns from counts.
    ///
    /// # Errors
    /// If the prior is not in (0, 1) or the weight not positive and finite.
    pub fn new(prior: f64, weight: f64, counts: Counts) -> Result<Self, LearningError> {
        if !(prior > 0.0 && prior < 1.0) {
            return Err(LearningError::BadPrior { prior });
        }
        if !(weight.is_finite() && weight > 0.0) {
            return Err(LearningError::BadWeight { weight });
        }
        let confirmed = f64::from(counts.confirmed);
        let others = f64::from(counts.callbacks) - confirmed;
        let alpha = weight * prior + confirmed;
        let beta = weight * (1.0 - prior) + others;
        Ok(Self {
            prior,
            weight,
            counts,
            alpha,
            beta,
        })
    }

    /// The prior after: the mean of the distribution.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.alpha / (self.alpha + self.beta)
    }

    /// Its standard deviation.
    #[must_use]
    pub fn standard_deviation(&self) -> f64 {
        let total = self.alpha + self.beta;
        (self.alpha * self.beta / (total * total * (total + 1.0))).sqrt()
    }
}

/// Confirmed causes of all callbacks that count.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Learned {
    callbacks: u32,
    confirmed: BTreeMap<CauseId, u32>,
}

impl Learned {
    /// Takes in the counts of some more callbacks. A cause is confirmed at most
    /// once in each of them.
    pub fn add(&mut self, callbacks: u32, confirmed: impl IntoIterator<Item = (CauseId, u32)>) {
        self.callbacks = self.callbacks.saturating_add(callbacks);
        for (cause, count) in confirmed {
            let sum = self.confirmed.entry(cause).or_default();
            *sum = sum.saturating_add(count.min(callbacks));
        }
    }

    /// Callbacks that were settled: a cause was confirmed, or nothing was wrong.
    #[must_use]
    pub fn callbacks(&self) -> u32 {
        self.callbacks
    }

    /// Callbacks in which this cause was.
    #[must_use]
    pub fn confirmed(&self, cause: &CauseId) -> u32 {
        self.confirmed.get(cause).copied().unwrap_or(0)
    }

    /// Every cause that was, with how often.
    pub fn all_confirmed(&self) -> impl Iterator<Item = (&CauseId, u32)> {
        self.confirmed.iter().map(|(cause, count)| (cause, *count))
    }

    /// What was learned about a cause; none before the first callback. Nothing is about
    /// what is ordinary: a call that ends as "nothing wrong" seldom says which behaviour was
    /// met, and would unlearn the one that explained it.
    #[must_use]
    pub fn of(&self, cause: &Cause) -> Option<LearnedPrior> {
        match cause.kind {
            CauseKind::Normal => None,
            CauseKind::Loop | CauseKind::Unit | CauseKind::Instrument => {
                self.counted(&cause.id, cause.prior)
            }
        }
    }

    /// The counts of a cause on top of this shipped prior.
    fn counted(&self, cause: &CauseId, prior: f64) -> Option<LearnedPrior> {
        if self.callbacks == 0 {
            return None;
        }
        let counts = Counts::new(self.confirmed(cause), self.callbacks).ok()?;
        LearnedPrior::new(prior, PRIOR_WEIGHT, counts).ok()
    }

    /// The priors of a graph of which something was learned, for [`super::Case::priors`];
    /// empty before the first callback.
    #[must_use]
    pub fn priors(&self, graph: &Graph) -> BTreeMap<CauseId, f64> {
        let causes = graph.causes().iter();
        causes
            .filter_map(|cause| {
                let learned = self.of(cause)?;
                Some((cause.id.clone(), learned.mean()))
            })
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_pull_the_prior_by_their_number() {
        let counts = Counts::new(5, 10).expect("valid");
        let learned = LearnedPrior::new(0.1, 10.0, counts).expect("valid");
        // (10 * 0.1 + 5) / (10 + 10)
        assert!((learned.mean() - 0.3).abs() < 1e-15);
    }

    #[test]
    fn counts_of_several_devices_add_up() {
        let air = CauseId::new("air");
        let mut learned = Learned::default();
        assert!(learned.counted(&air, 0.1).is_none());
        learned.add(6, [(air.clone(), 2)]);
        learned.add(4, [(air.clone(), 3), (CauseId::new("leak"), 1)]);
        let after = learned.counted(&air, 0.1).expect("learned");
        // (250 * 0.1 + 5) / (250 + 10)
        assert!((after.mean() - 30.0 / 260.0).abs() < 1e-15);
        let never = learned
            .counted(&CauseId::new("charge"), 0.3)
            .expect("learned");
        assert!((never.mean() - 75.0 / 260.0).abs() < 1e-15);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(Counts::new(2, 1).is_err());
        let none = Counts::new(0, 0).expect("valid");
        assert!(LearnedPrior::new(0.0, 10.0, none).is_err());
        assert!(LearnedPrior::new(f64::NAN, 10.0, none).is_err());
        assert!(LearnedPrior::new(0.1, 0.0, none).is_err());
    }
}
