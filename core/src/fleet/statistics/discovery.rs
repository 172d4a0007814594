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
    let mut order: Vec<usize> = (0..p.len()).collect();
    order.sort_by(|a, b| p[*b].total_cmp(&p[*a]));
    let mut result = vec![1.0; p.len()];
    let mut least = 1.0_f64;
    for (place, index) in order.into_iter().enumerate() {
        let rank = (p.len() - place) as f64;
        least = least.min(p[index] * p.len() as f64 / rank);
        result[index] = least;
    }
    result
}

#[cfg(test)]
mod tests {
    #[test]
    fn order_is_kept_and_nothing_exceeds_one() {
        assert_eq!(super::adjusted(&[]), [] as [f64; 0]);
        let got = super::adjusted(&[0.9, 0.01, 0.02, 0.9]);
        // By hand: 0.01 · 4/1, 0.02 · 4/2, 0.9 · 4/4.
        for (got, expected) in got.iter().zip([0.9, 0.04, 0.04, 0.9]) {
            assert!((got - expected).abs() < 1e-15);
        }
    }
}
