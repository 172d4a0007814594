//! Many tests at once.

/// p-values adjusted after Benjamini and Hochberg: telling all with an adjusted
/// value of at most q keeps the expected share of false ones among those told
/// at or below q, for independent tests and for positively dependent ones.
///
/// The i-th smallest of m becomes the least of p(j) m / j over j ≥ i, at most 1.
/// Source: Y. Benjamini, Y. Hochberg, *Controlling the false discovery rate*,
/// J. R. Stat. Soc. B 57 (1995) 289-300.
#[must_use]
pub fn adjusted(p: &[f64]) -> Vec<f64> {
    stepped_up(p, 1.0)
}

/// p-values adjusted after Benjamini and Yekutieli: the same promise, however the
/// tests depend on each other. The price is the factor Σ 1/i over the m tests.
///
/// Source: Y. Benjamini, D. Yekutieli, *The control of the false discovery rate in
/// multiple testing under dependency*, Ann. Stat. 29 (2001) 1165-1188, theorem 1.3.
#[must_use]
pub fn adjusted_dependent(p: &[f64]) -> Vec<f64> {
    stepped_up(p, (1..=p.len()).map(|i| 1.0 / i as f64).sum())
}

fn stepped_up(p: &[f64], factor: f64) -> Vec<f64> {
    let mut order: Vec<usize> = (0..p.len()).collect();
    order.sort_by(|a, b| p[*b].total_cmp(&p[*a]));
    let mut result = vec![1.0; p.len()];
    let mut least = 1.0_f64;
    for (place, index) in order.into_iter().enumerate() {
        let rank = (p.len() - place) as f64;
        least = least.min(factor * p[index] * p.len() as f64 / rank);
        result[index] = least;
    }
    result
}

#[cfg(test)]
mod tests {
    use super::{adjusted, adjusted_dependent};

    #[test]
    fn order_is_kept_and_nothing_exceeds_one() {
        assert_eq!(adjusted(&[]), [] as [f64; 0]);
        assert_eq!(adjusted_dependent(&[]), [] as [f64; 0]);
        let p = [0.9, 0.01, 0.02, 0.9];
        // By hand: 0.01 · 4/1, 0.02 · 4/2, 0.9 · 4/4; then times 1 + 1/2 + 1/3 + 1/4.
        let by_hand = [0.9, 0.04, 0.04, 0.9];
        for (got, expected) in adjusted(&p).iter().zip(by_hand) {
            assert!((got - expected).abs() < 1e-15);
        }
        for (got, expected) in adjusted_dependent(&p).iter().zip(by_hand) {
            assert!((got - (expected * 25.0 / 12.0).min(1.0)).abs() < 1e-15);
        }
    }
}
