//! What is known on a visit: readings as likelihoods, facts, learned priors.

use std::collections::BTreeMap;

use super::graph::{Level, Scale};
use super::id::{CauseId, FactId, FindingId};

/// Why numbers are not a likelihood.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum LikelihoodError {
    /// A weight is negative, infinite or not a number.
    #[error("likelihood weight {weight} is not a finite number of at least 0")]
    BadWeight {
        /// The weight.
        weight: f64,
    },
    /// Every weight is zero: the observation would be impossible at every level.
    #[error("every likelihood weight is 0")]
    AllZero,
    /// The level is not one of the scale.
    #[error("level {level:?} is not on the scale {scale:?}")]
    WrongLevel {
        /// The level.
        level: Level,
        /// The scale.
        scale: Scale,
    },
    /// A reliability is outside (0, 1].
    #[error("reliability {reliability} is outside (0, 1]")]
    BadReliability {
        /// The reliability.
        reliability: f64,
    },
}

/// How likely what was observed is at each level of a finding, up to a common
/// factor: P(observed | level). All that is known about the true level, no more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Likelihood {
    /// In the order of [`Scale::levels`]; the largest is 1.
    weights: [f64; 3],
    count: usize,
}

impl Likelihood {
    /// Of a finding that is absent or present. Only the ratio matters.
    ///
    /// # Errors
    /// If a weight is negative or not finite, or both are 0.
    pub fn presence(absent: f64, present: f64) -> Result<Self, LikelihoodError> {
        Self::new([absent, present, 0.0], 2)
    }

    /// Of a graded finding. Only the ratios matter.
    ///
    /// # Errors
    /// If a weight is negative or not finite, or all are 0.
    pub fn graded(low: f64, normal: f64, high: f64) -> Result<Self, LikelihoodError> {
        Self::new([low, normal, high], 3)
    }

    /// One that says nothing: every level alike.
    #[must_use]
    pub fn flat(scale: Scale) -> Self {
        Self {
            weights: [1.0; 3],
            count: scale.count(),
        }
    }

    /// Of a level that was reported and is the true one with probability
    /// `reliability`, in (0, 1]; otherwise each other level is equally likely
    /// to have been taken for it. 1 is hard evidence.
    ///
    /// # Errors
    /// If the level is not on the scale or the reliability out of range.
    pub fn reported(scale: Scale, level: Level, reliability: f64) -> Result<Self, LikelihoodError> {
        if !(reliability > 0.0 && reliability <= 1.0) {
            return Err(LikelihoodError::BadReliability { reliability });
        }
        let at = scale
            .index(level)
            .ok_or(LikelihoodError::WrongLevel { level, scale })?;
        Self::new(
            report_weights(scale.count(), at, reliability),
            scale.count(),
        )
    }

    fn new(weights: [f64; 3], count: usize) -> Result<Self, LikelihoodError> {
        for &weight in &weights {
            if !(weight.is_finite() && weight >= 0.0) {
                return Err(LikelihoodError::BadWeight { weight });
            }
        }
        let largest = weights.iter().copied().fold(0.0, f64::max);
        if largest <= 0.0 {
            return Err(LikelihoodError::AllZero);
        }
        let weights = weights.map(|weight| weight / largest);
        Ok(Self { weights, count })
    }

    /// The weights in the order of [`Scale::levels`]; the largest is 1.
    #[must_use]
    pub fn weights(&self) -> &[f64] {
        &self.weights[..self.count]
    }

    /// The mean weight: the likelihood of the same reading on an instrument
    /// that shows every level equally often, whatever is so.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.weights().iter().sum::<f64>() / self.weights().len() as f64
    }

    /// The level it favours most, the first of equals.
    #[must_use]
    pub fn favoured(&self, scale: Scale) -> Level {
        let mut best = 0;
        for (at, &weight) in self.weights().iter().enumerate() {
            if weight > self.weights[best] {
                best = at;
            }
        }
        scale.levels().get(best).copied().unwrap_or(scale.normal())
    }
}

/// P(level `at` is reported | each level), when the truth is reported with
/// probability `reliability` and each other level equally often otherwise.
pub(super) fn report_weights(count: usize, at: usize, reliability: f64) -> [f64; 3] {
    let mut weights = [0.0; 3];
    for (level, weight) in weights.iter_mut().enumerate().take(count) {
        *weight = if level == at {
            reliability
        } else {
            (1.0 - reliability) / (count - 1) as f64
        };
    }
    weights
}

/// What an observation was read with.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum ReadWith {
    /// The instrument the graph names for the finding, if it names one.
    #[default]
    Usual,
    /// No instrument that could lie.
    Nothing,
    /// Another instrument: a cause of kind instrument.
    Other(CauseId),
}

/// One observation of one finding. A finding may be observed more than once,
/// as with two gauges; leave it out when it is unknown.
#[derive(Debug, Clone, PartialEq)]
pub struct Observation {
    /// The finding.
    pub finding: FindingId,
    /// Likelihood of what was observed, if the instrument is sound.
    pub likelihood: Likelihood,
    /// What it was read with.
    pub read_with: ReadWith,
    /// Likelihood of what was observed if the instrument lies, on the scale of
    /// [`Likelihood::weights`]; their mean if `None`.
    pub if_lying: Option<f64>,
}

impl Observation {
    /// An observation read with the instrument the graph names.
    #[must_use]
    pub fn new(finding: FindingId, likelihood: Likelihood) -> Self {
        Self {
            finding,
            likelihood,
            read_with: ReadWith::Usual,
            if_lying: None,
        }
    }
}

/// What somebody found out about a cause itself, by looking.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// Whether the cause was there.
    pub is_so: bool,
    /// P(it is found to be so | it is so), and the same for not so: 1 if the
    /// finding decides, less if it may be mistaken.
    pub credibility: f64,
}

impl Found {
    /// Found beyond doubt.
    #[must_use]
    pub fn certainly(is_so: bool) -> Self {
        Self {
            is_so,
            credibility: 1.0,
        }
    }

    /// The likelihood of what was found if the cause is not so, and if it is.
    pub(super) fn weights(self) -> [f64; 2] {
        if self.is_so {
            [1.0 - self.credibility, self.credibility]
        } else {
            [self.credibility, 1.0 - self.credibility]
        }
    }
}

/// Everything known on a visit that the graph can use.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Case {
    /// Observations, in any order.
    pub observations: Vec<Observation>,
    /// Facts known to be true or false; leave out what is unknown.
    pub facts: BTreeMap<FactId, bool>,
    /// Priors learned from own callbacks, in place of those of the graph.
    pub priors: BTreeMap<CauseId, f64>,
    /// Causes that were found to be so or not so. This is evidence, not a
    /// prior: a cause found beyond doubt has the probability 1 or 0. Finding a
    /// cause outweighs a fact that would rule it out: then the record is wrong.
    pub found: BTreeMap<CauseId, Found>,
    /// Somebody called about this system. By itself that says that something
    /// is probably wrong, and not what.
    pub called: bool,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weights_are_scaled_to_a_largest_of_one() {
        let soft = Likelihood::graded(0.2, 0.1, 0.0).expect("valid");
        assert_eq!(soft.weights(), &[1.0, 0.5, 0.0]);
        assert!((soft.mean() - 0.5).abs() < 1e-15);
        assert_eq!(soft.favoured(Scale::Graded), Level::Low);
    }

    #[test]
    fn numbers_that_are_no_likelihood_are_refused() {
        assert!(Likelihood::presence(0.0, 0.0).is_err());
        assert!(Likelihood::presence(-0.1, 1.0).is_err());
        assert!(Likelihood::graded(f64::NAN, 1.0, 1.0).is_err());
        assert!(Likelihood::graded(f64::INFINITY, 1.0, 1.0).is_err());
        assert!(Likelihood::reported(Scale::Graded, Level::Absent, 0.9).is_err());
        assert!(Likelihood::reported(Scale::Graded, Level::Low, 0.0).is_err());
    }

    #[test]
    fn a_fully_reliable_report_is_hard_evidence() {
        let hard = Likelihood::reported(Scale::Graded, Level::High, 1.0).expect("valid");
        assert_eq!(hard.weights(), &[0.0, 0.0, 1.0]);
    }
}
