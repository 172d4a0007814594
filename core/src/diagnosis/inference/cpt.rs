//! The conditional probabilities of the graph, in the one place that defines them.
//!
//! A mechanism or finding is a causal-independence model: each active parent
//! and the leak contributes a set of directions, independently of the others
//! (nothing, `{low}` or `{high}`), and the node depends on the union of those
//! sets alone. Union is associative and commutative, so parents may be taken
//! in any order and grouping, which is what the chains of `network` use.
//!
//! | union          | mechanism   | presence finding | graded finding                 |
//! |----------------|-------------|------------------|--------------------------------|
//! | nothing        | not at work | normal level     | normal                         |
//! | `{low}`        | -           | -                | low                            |
//! | `{high}`       | at work     | abnormal level   | high                           |
//! | `{low, high}`  | -           | -                | each level with probability 1/3 |
//!
//! With one direction this is the noisy-OR (Pearl 1988, Probabilistic
//! Reasoning in Intelligent Systems, section 4.3.2, from memory); with two it
//! is a noisy-MAX on each direction (Diez 1993, from memory) and a stated
//! rule for opposed pushes, whose sizes the graph does not know.

use crate::diagnosis::graph::{Finding, Level, Push, Scale};

/// The probability that a set of independent pushes leaves each of these alone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::diagnosis) struct Unpushed {
    /// Nobody pushes low.
    pub(in crate::diagnosis) low: f64,
    /// Nobody pushes high.
    pub(in crate::diagnosis) high: f64,
    /// Nobody pushes at all.
    pub(in crate::diagnosis) either: f64,
}

impl Unpushed {
    /// What one push leaves alone.
    pub(in crate::diagnosis) fn by(push: Push) -> Self {
        Self {
            low: 1.0 - push.low,
            high: 1.0 - push.high,
            either: 1.0 - push.low - push.high,
        }
    }
}

/// The distribution of the union of contributions, over nothing, `{low}`,
/// `{high}` and both. Built by joining contributions, never by subtraction, so
/// that small probabilities keep their relative precision.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::diagnosis) struct Union(pub(in crate::diagnosis) [f64; 4]);

impl Union {
    /// The contribution of one push.
    pub(in crate::diagnosis) fn of(push: Push) -> Self {
        Self([1.0 - push.low - push.high, push.low, push.high, 0.0])
    }

    /// The union that is certainly this set of directions.
    pub(in crate::diagnosis) fn certain(set: usize) -> Self {
        let mut union = [0.0; 4];
        union[set] = 1.0;
        Self(union)
    }

    /// The union of two independent contributions.
    pub(in crate::diagnosis) fn join(self, other: Self) -> Self {
        let mut joined = [0.0; 4];
        for (a, &p) in self.0.iter().enumerate() {
            for (b, &q) in other.0.iter().enumerate() {
                joined[a | b] += p * q;
            }
        }
        Self(joined)
    }
}

/// P(level | union of directions), in the order of [`Scale::levels`].
pub(in crate::diagnosis) fn levels_of_union(scale: Scale, union: usize) -> [f64; 3] {
    const THIRD: f64 = 1.0 / 3.0;
    let pushed = union != 0;
    match scale {
        Scale::NormallyAbsent | Scale::NormallyPresent => {
            let abnormal = match scale.normal() {
                Level::Absent => 1,
                _ => 0,
            };
            let mut levels = [0.0; 3];
            levels[if pushed { abnormal } else { 1 - abnormal }] = 1.0;
            levels
        }
        Scale::Graded => match union {
            0 => [0.0, 1.0, 0.0],
            1 => [1.0, 0.0, 0.0],
            2 => [0.0, 0.0, 1.0],
            _ => [THIRD, THIRD, THIRD],
        },
    }
}

/// P(level | the pushes of the active parents and the leak).
pub(in crate::diagnosis) fn levels(
    finding: &Finding,
    active: impl IntoIterator<Item = Push>,
) -> [f64; 3] {
    let union = active
        .into_iter()
        .fold(Union::of(finding.leak), |union, push| {
            union.join(Union::of(push))
        });
    levels_from(finding.scale, union)
}

/// P(level | the distribution of the union).
pub(in crate::diagnosis) fn levels_from(scale: Scale, union: Union) -> [f64; 3] {
    let mut levels = [0.0; 3];
    for (set, &probability) in union.0.iter().enumerate() {
        for (level, share) in levels.iter_mut().zip(levels_of_union(scale, set)) {
            *level += probability * share;
        }
    }
    levels
}

/// The rank-one decomposition of a finding's table for an unobserved finding:
/// a report with weights `report` over the levels has probability
///
/// `all + low * nL + high * nH + either * N`
///
/// where nL, nH, N are products over the parents (see [`Unpushed`]).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::diagnosis) struct Terms {
    pub(in crate::diagnosis) all: f64,
    pub(in crate::diagnosis) low: f64,
    pub(in crate::diagnosis) high: f64,
    pub(in crate::diagnosis) either: f64,
}

impl Terms {
    /// The terms of a report, before the leak is taken in.
    pub(in crate::diagnosis) fn of(scale: Scale, report: &[f64; 3]) -> Self {
        let mean = |union: usize| -> f64 {
            levels_of_union(scale, union)
                .iter()
                .zip(report)
                .map(|(p, w)| p * w)
                .sum()
        };
        let (nothing, low, high, both) = (mean(0), mean(1), mean(2), mean(3));
        if scale == Scale::Graded {
            Self {
                all: both,
                low: high - both,
                high: low - both,
                either: nothing - low - high + both,
            }
        } else {
            // One direction: nobody pushes high is the same as nobody pushes.
            Self {
                all: high,
                low: 0.0,
                high: 0.0,
                either: nothing - high,
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diagnosis::graph::{EvidenceKind, SourceMark};
    use crate::diagnosis::id::FindingId;

    fn finding(scale: Scale, leak: Push) -> Finding {
        Finding {
            id: FindingId::new("x"),
            scale,
            leak,
            evidence: EvidenceKind::Symptom,
            instrument: None,
            reliability: 1.0,
            source: SourceMark::Judgement,
            parents: Vec::new(),
        }
    }

    #[test]
    fn one_direction_is_the_noisy_or() {
        let or = finding(
            Scale::NormallyAbsent,
            Push {
                low: 0.0,
                high: 0.1,
            },
        );
        let active = [0.4, 0.7].map(|high| Push { low: 0.0, high });
        let [absent, present, _] = levels(&or, active);
        assert!((absent - 0.9 * 0.6 * 0.3).abs() < 1e-15);
        assert!((present - (1.0 - 0.9 * 0.6 * 0.3)).abs() < 1e-15);
        let present_is_normal = finding(Scale::NormallyPresent, or.leak);
        let [absent, _, _] = levels(&present_is_normal, active);
        assert!((absent - (1.0 - 0.9 * 0.6 * 0.3)).abs() < 1e-15);
    }

    #[test]
    fn the_stated_formulas_hold_for_opposed_pushes() {
        let graded = finding(
            Scale::Graded,
            Push {
                low: 0.02,
                high: 0.03,
            },
        );
        let pushes = [
            Push {
                low: 0.5,
                high: 0.1,
            },
            Push {
                low: 0.0,
                high: 0.6,
            },
        ];
        let [low, normal, high] = levels(&graded, pushes);
        let (n_low, n_high) = (0.98 * 0.5 * 1.0, 0.97 * 0.9 * 0.4);
        let neither = 0.95 * 0.4 * 0.4;
        let both = 1.0 - n_low - n_high + neither;
        assert!((low - (n_high - neither + both / 3.0)).abs() < 1e-15);
        assert!((normal - (neither + both / 3.0)).abs() < 1e-15);
        assert!((high - (n_low - neither + both / 3.0)).abs() < 1e-15);
        assert!((low + normal + high - 1.0).abs() < 1e-15);
    }

    #[test]
    fn the_terms_give_the_same_probabilities() {
        for scale in [Scale::Graded, Scale::NormallyAbsent, Scale::NormallyPresent] {
            let low = if scale == Scale::Graded { 0.2 } else { 0.0 };
            let finding = finding(
                scale,
                Push {
                    low: low / 4.0,
                    high: 0.05,
                },
            );
            let push = Push { low, high: 0.3 };
            let (leak, parent) = (Unpushed::by(finding.leak), Unpushed::by(push));
            for at in 0..scale.count() {
                let mut report = [0.0; 3];
                report[at] = 1.0;
                let terms = Terms::of(scale, &report);
                let probability = terms.all
                    + terms.low * leak.low * parent.low
                    + terms.high * leak.high * parent.high
                    + terms.either * leak.either * parent.either;
                assert!((probability - levels(&finding, [push])[at]).abs() < 1e-15);
            }
        }
    }
}
