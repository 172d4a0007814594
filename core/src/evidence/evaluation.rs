//! What an evaluator makes of a call.

use super::call::Taken;
use super::levels::Levels;
use crate::diagnosis::Likelihood;
use crate::figures::{Figure, Reasoning};
use crate::records::Instrument;
use crate::uncertainty::Uncertain;
use crate::units::Quantity;

/// What a measured value is held against.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Beside {
    /// What a sound loop would show.
    Expected,
    /// The least that is sound.
    AtLeast,
    /// The most that is sound.
    AtMost,
    /// Another reading, which should say the same.
    Other,
}

/// Why a finding is judged as it is: what was measured, what was to be
/// expected, and how the expectation came about.
#[derive(Clone, PartialEq, Debug)]
pub struct Explained {
    /// The finding.
    pub finding: String,
    /// What it was measured with, if it stands or falls with that.
    pub read_with: Option<Instrument>,
    /// What was measured.
    pub measured: Figure,
    /// What a sound loop would show, for this system and day.
    pub expected: Figure,
    /// As what that is meant.
    pub beside: Beside,
    /// How the two were compared.
    pub reasoning: Reasoning,
}

/// How a measured value is compared with what the levels are about.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(super) enum Compared {
    /// The quantity itself, or a difference: reading and standard uncertainty.
    Value(f64, f64),
    /// What was measured over what is to be expected, each with its standard
    /// uncertainty.
    Ratio((f64, f64), (f64, f64)),
}

impl Compared {
    /// Likelihood over levels.
    pub fn over(self, levels: &Levels) -> Likelihood {
        match self {
            Self::Value(value, standard) => levels.likelihood(value, standard),
            Self::Ratio(measured, expected) => levels.likelihood_of_ratio(measured, expected),
        }
    }
    /// A measured quantity over an expected one.
    pub fn ratio<Q: Quantity>(measured: Uncertain<Q>, expected: Uncertain<Q>) -> Self {
        Self::Ratio(
            (measured.value().si(), measured.standard()),
            (expected.value().si(), expected.standard()),
        )
    }
}

/// One observation of a finding.
#[derive(Clone, PartialEq, Debug)]
pub struct Evaluation {
    /// P(reading | level).
    pub likelihood: Likelihood,
    /// The instrument that would have to lie for it to be wrong; none if it
    /// stands on records and physics alone.
    pub read_with: Option<Instrument>,
    /// Places of the readings used, in the visit.
    pub used: Vec<usize>,
    /// What was measured.
    pub measured: Figure,
    /// What was to be expected.
    pub expected: Figure,
    /// As what that is meant.
    pub beside: Beside,
    /// How.
    pub reasoning: Reasoning,
}

impl Evaluation {
    /// What `taken` says about a quantity over its levels.
    pub(super) fn of(
        levels: &Levels,
        x: Compared,
        taken: &Taken,
        measured: Figure,
        expected: Figure,
        reasoning: Reasoning,
    ) -> Self {
        Self {
            likelihood: x.over(levels),
            read_with: Some(taken.instrument),
            used: taken.readings.clone(),
            measured,
            expected,
            beside: Beside::Expected,
            reasoning,
        }
    }

    /// The same, what was to be expected being meant so.
    pub(super) fn against(mut self, beside: Beside) -> Self {
        self.beside = beside;
        self
    }

    /// The same, as a difference of readings of one instrument: what it is off
    /// by is off in both, so a lie does not make a difference.
    pub(super) fn of_one_instrument(mut self) -> Self {
        self.read_with = None;
        self
    }

    /// The same, with more readings behind it.
    pub(super) fn using(mut self, readings: &[usize]) -> Self {
        self.used.extend_from_slice(readings);
        self
    }
}

/// A ratio of two independent uncertain numbers with its standard uncertainty,
/// to first order: r = a/b, u² = (u_a/b)² + (a u_b/b²)². No number over nothing.
pub(super) fn ratio(a: (f64, f64), b: (f64, f64)) -> (f64, f64) {
    let r = a.0 / b.0;
    (r, (a.1 / b.0).hypot(r * b.1 / b.0))
}
