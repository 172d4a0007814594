//! Two groups with and without something, as a table of four counts.

use super::{Interval, Z};

/// Counts of two groups: how many have it and how many do not.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct TwoByTwo {
    /// First group, with.
    pub with: usize,
    /// First group, without.
    pub without: usize,
    /// Second group, with.
    pub other_with: usize,
    /// Second group, without.
    pub other_without: usize,
}

/// Two tables count as equally likely when they differ by rounding only.
const SAME: f64 = 1e-10;

impl TwoByTwo {
    fn cells(&self) -> [f64; 4] {
        [self.with, self.without, self.other_with, self.other_without].map(|count| count as f64)
    }

    /// Two-sided p of Fisher's exact test: the probability, margins held, of a
    /// table that is no more likely than this one.
    ///
    /// The hypergeometric weights follow from one another by
    /// w(x + 1)/w(x) = (m - x)(k - x) / ((x + 1)(n - m - k + x + 1)), where m is
    /// the first group, k all that have it and n everything, starting from this
    /// table; so no large factorial is ever formed.
    /// Source: R. A. Fisher, *The logic of inductive inference*, J. R. Stat. Soc.
    /// 98 (1935) 39-82; two-sided by the principle of least likelihood, as R and
    /// SciPy do.
    ///
    /// 1 when a margin is empty. 0 when it is below the smallest double.
    #[must_use]
    pub fn fisher(&self) -> f64 {
        let [a, b, c, d] = self.cells();
        let (group, has, all) = (a + b, a + c, a + b + c + d);
        let ratio = |x: f64| (group - x) * (has - x) / ((x + 1.0) * (all - group - has + x + 1.0));
        let least = (group + has - all).max(0.0);
        let most = group.min(has);
        // Weights relative to this table can overflow towards the mode when the
        // table is far out, so they are taken relative to the mode.
        let mode = (((group + 1.0) * (has + 1.0) / (all + 2.0)).floor()).clamp(least, most);
        let mut weights = vec![(mode, 1.0)];
        let mut weight = 1.0;
        let mut x = mode;
        while x < most && weight > 0.0 {
            weight *= ratio(x);
            x += 1.0;
            weights.push((x, weight));
        }
        (weight, x) = (1.0, mode);
        while x > least && weight > 0.0 {
            x -= 1.0;
            weight /= ratio(x);
            weights.push((x, weight));
        }
        let here = weights
            .iter()
            .find(|(x, _)| (x - a).abs() < 0.5)
            .map_or(0.0, |(_, weight)| *weight);
        // Small ones first, so that the tails keep their digits.
        weights.sort_by(|(_, a), (_, b)| a.total_cmp(b));
        let (mut tail, mut total) = (0.0, 0.0);
        for (_, weight) in weights {
            total += weight;
            if weight <= here * (1.0 + SAME) {
                tail += weight;
            }
        }
        (tail / total).min(1.0)
    }

    /// Odds ratio of the sample, (a d)/(b c). None when that is no number; it
    /// may be infinite.
    #[must_use]
    pub fn odds_ratio(&self) -> Option<f64> {
        let [a, b, c, d] = self.cells();
        let ratio = (a * d) / (b * c);
        (!ratio.is_nan()).then_some(ratio)
    }

    /// Interval of the odds ratio, exp(ln OR ± z √(1/a + 1/b + 1/c + 1/d)).
    /// Source: B. Woolf, *On estimating the relation between blood group and
    /// disease*, Ann. Hum. Genet. 19 (1955) 251-253. None when a cell is empty.
    #[must_use]
    pub fn odds_interval(&self) -> Option<Interval> {
        let cells = self.cells();
        if cells.iter().any(|count| *count <= 0.0) {
            return None;
        }
        let spread = Z * cells.iter().map(|count| 1.0 / count).sum::<f64>().sqrt();
        let ratio = self.odds_ratio()?;
        Some(around(ratio, spread))
    }

    /// Share in the first group over share in the second. None when that is no
    /// number; it may be infinite.
    #[must_use]
    pub fn risk_ratio(&self) -> Option<f64> {
        let [a, b, c, d] = self.cells();
        let ratio = (a / (a + b)) / (c / (c + d));
        (!ratio.is_nan()).then_some(ratio)
    }

    /// Interval of the risk ratio, exp(ln RR ± z √(1/a - 1/(a+b) + 1/c - 1/(c+d))).
    /// Source: D. Katz et al., *Obtaining confidence intervals for the risk ratio
    /// in cohort studies*, Biometrics 34 (1978) 469-474. None when nobody of a
    /// group has it.
    #[must_use]
    pub fn risk_interval(&self) -> Option<Interval> {
        let [a, b, c, d] = self.cells();
        if a <= 0.0 || c <= 0.0 {
            return None;
        }
        let variance = 1.0 / a - 1.0 / (a + b) + 1.0 / c - 1.0 / (c + d);
        Some(around(self.risk_ratio()?, Z * variance.max(0.0).sqrt()))
    }
}

fn around(ratio: f64, spread: f64) -> Interval {
    Interval {
        low: ratio * (-spread).exp(),
        high: ratio * spread.exp(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Fisher's tea taster: 3 of 4 told right, two-sided p 34/70 (Fisher 1935,
    /// *The Design of Experiments*, chapter II; counted by hand).
    #[test]
    fn the_lady_tasting_tea() {
        let table = TwoByTwo {
            with: 3,
            without: 1,
            other_with: 1,
            other_without: 3,
        };
        assert!((table.fisher() - 34.0 / 70.0).abs() < 1e-14);
        assert_eq!(table.odds_ratio(), Some(9.0));
    }

    #[test]
    fn empty_margins_say_nothing() {
        for (with, without, other_with, other_without) in
            [(0, 0, 0, 0), (5, 0, 7, 0), (0, 5, 0, 7), (0, 0, 3, 4)]
        {
            let table = TwoByTwo {
                with,
                without,
                other_with,
                other_without,
            };
            assert!((table.fisher() - 1.0).abs() < 1e-12, "{table:?}");
            assert_eq!(table.odds_interval(), None);
        }
    }
}
