//! What an evaluator makes of a call.

use super::call::Taken;
use super::levels::Levels;
use crate::diagnosis::Likelihood;
use crate::figures::{Figure, Reasoning};
use crate::records::Instrument;

/// Why a finding is judged as it is: what was measured, what was to be
/// expected, and how the expectation came about.
#[derive(Clone, PartialEq, Debug)]
pub struct Explained {
    /// The finding.
    pub finding: String,
    /// What was measured.
    pub measured: Figure,
    /// What a sound loop would show, for this system and day.
    pub expected: Figure,
    /// How the two were compared.
    pub reasoning: Reasoning,
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
    /// How.
    pub reasoning: Reasoning,
}

impl Evaluation {
    /// What `taken` says about a quantity x, given as reading and standard
    /// uncertainty, over its levels.
    pub(super) fn of(
        levels: &Levels,
        x: (f64, f64),
        taken: &Taken,
        measured: Figure,
        expected: Figure,
        reasoning: Reasoning,
    ) -> Self {
        Self {
            likelihood: levels.likelihood(x.0, x.1),
            read_with: Some(taken.instrument),
            used: taken.readings.clone(),
            measured,
            expected,
            reasoning,
        }
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
