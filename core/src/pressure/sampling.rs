//! A fixed set of points that fill a normal distribution evenly: no seed, no chance.

use std::sync::LazyLock;

/// Independent standard normal coordinates that a sample has.
pub(super) const DIMENSIONS: usize = 9;
/// Points of the set.
pub(super) const POINTS: usize = 512;

const PRIMES: [u32; DIMENSIONS] = [2, 3, 5, 7, 11, 13, 17, 19, 23];

/// Halton's sequence (Halton 1960), first points left out, carried to the normal
/// distribution.
static NORMAL: LazyLock<Vec<[f64; DIMENSIONS]>> = LazyLock::new(|| {
    (0..POINTS)
        .map(|i| PRIMES.map(|base| quantile(radical_inverse(i as u32 + 29, base))))
        .collect()
});

pub(super) fn points() -> &'static [[f64; DIMENSIONS]] {
    &NORMAL
}

fn radical_inverse(mut index: u32, base: u32) -> f64 {
    let (mut place, mut sum) = (1.0, 0.0);
    while index > 0 {
        place /= f64::from(base);
        sum += place * f64::from(index % base);
        index /= base;
    }
    sum
}

/// Value below which a standard normal variable lies with probability `p`, 0 < p < 1.
///
/// P. J. Acklam's rational approximation, relative error below 1.2e-9.
pub(super) fn quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 6] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
        1.0,
    ];
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 5] = [
        7.784_695_709_041_462e-3,
        3.224_671_290_700_398e-1,
        2.445_134_137_142_996,
        3.754_408_661_907_416,
        1.0,
    ];
    let polynomial = |c: &[f64], x: f64| c.iter().fold(0.0, |sum, c| sum * x + c);
    let tail = |p: f64| {
        let q = (-2.0 * p.ln()).sqrt();
        polynomial(&C, q) / polynomial(&D, q)
    };
    if p < 0.024_25 {
        tail(p)
    } else if p > 1.0 - 0.024_25 {
        -tail(1.0 - p)
    } else {
        let q = p - 0.5;
        q * polynomial(&A, q * q) / polynomial(&B, q * q)
    }
}

/// Mean and standard deviation of values with weights that add up to one.
pub(super) fn weighted_moments(values: &[f64], weights: &[f64]) -> (f64, f64) {
    let pairs = || values.iter().zip(weights);
    let mean = pairs().map(|(v, w)| v * w).sum::<f64>();
    let variance = pairs().map(|(v, w)| w * (v - mean).powi(2)).sum::<f64>();
    (mean, variance.sqrt())
}

/// Values in order, each with the share of the weight up to its own middle.
pub(super) struct Sorted(Vec<(f64, f64)>);

impl Sorted {
    pub fn new(values: &[f64], weights: &[f64]) -> Self {
        let mut pairs: Vec<(f64, f64)> = values
            .iter()
            .copied()
            .zip(weights.iter().copied())
            .collect();
        pairs.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut sum = 0.0;
        for pair in &mut pairs {
            let weight = pair.1;
            pair.1 = sum + 0.5 * weight;
            sum += weight;
        }
        Self(pairs)
    }
    /// Value below which a share of the weight lies, straight between neighbours.
    pub fn quantile(&self, share: f64) -> f64 {
        let after = self.0.partition_point(|(_, at)| *at < share);
        match (
            after.checked_sub(1).and_then(|i| self.0.get(i)),
            self.0.get(after),
        ) {
            (Some((v0, s0)), Some((v1, s1))) if s1 > s0 => {
                v0 + (v1 - v0) * (share - s0) / (s1 - s0)
            }
            (Some((v, _)), _) | (None, Some((v, _))) => *v,
            (None, None) => 0.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::uncertainty::normal_cumulative;

    #[test]
    fn the_quantile_undoes_the_distribution() {
        for i in 1..1_000 {
            let p = f64::from(i) / 1_000.0;
            assert!((normal_cumulative(quantile(p)) - p).abs() < 1e-8, "{p}");
        }
    }

    #[test]
    fn the_points_have_mean_zero_and_variance_one() {
        for d in 0..DIMENSIONS {
            let n = POINTS as f64;
            let mean = points().iter().map(|p| p[d]).sum::<f64>() / n;
            let variance = points().iter().map(|p| p[d] * p[d]).sum::<f64>() / n;
            assert!(mean.abs() < 0.03, "{d}: {mean}");
            assert!((variance - 1.0).abs() < 0.06, "{d}: {variance}");
        }
    }
}
