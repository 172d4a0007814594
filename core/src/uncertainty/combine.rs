//! Several determinations of one quantity.

use super::Uncertain;
use crate::units::Quantity;

/// The weighted mean of several determinations.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Combined<Q> {
    /// Mean weighted by 1/u², with its standard uncertainty (Σ 1/u²)^-½.
    pub mean: Uncertain<Q>,
    /// Σ ((xᵢ - mean)/uᵢ)². Its expectation is the number of determinations less one.
    pub chi_squared: f64,
    /// Number of determinations.
    pub count: usize,
}

impl<Q: Quantity> Combined<Q> {
    /// The mean with its uncertainty widened by the Birge ratio
    /// √(χ²/(n-1)) where the determinations scatter more than their
    /// uncertainties allow. Birge, Phys. Rev. 40 (1932) 207.
    pub fn widened(&self) -> Uncertain<Q> {
        let freedom = self.count.saturating_sub(1).max(1) as f64;
        let birge = (self.chi_squared / freedom).sqrt().max(1.0);
        Uncertain::new(self.mean.value(), self.mean.standard() * birge)
    }
}

/// Weighted mean of independent determinations of one quantity. None if there
/// is none with a finite uncertainty. A determination without uncertainty wins
/// over all others; several of them are averaged.
pub fn weighted_mean<Q: Quantity>(determinations: &[Uncertain<Q>]) -> Option<Combined<Q>> {
    let exact = determinations.iter().any(|d| d.standard() == 0.0);
    let used: Vec<(f64, f64)> = determinations
        .iter()
        .filter(|d| d.standard().is_finite() && (!exact || d.standard() == 0.0))
        .map(|d| {
            let weight = if exact { 1.0 } else { d.standard().powi(-2) };
            (d.value().si(), weight)
        })
        .collect();
    let weights: f64 = used.iter().map(|(_, w)| w).sum();
    if used.is_empty() || !weights.is_finite() {
        return None;
    }
    let mean = used.iter().map(|(x, w)| x * w).sum::<f64>() / weights;
    let standard = if exact { 0.0 } else { weights.powf(-0.5) };
    let chi_squared = if exact {
        0.0
    } else {
        used.iter().map(|(x, w)| w * (x - mean).powi(2)).sum()
    };
    Some(Combined {
        mean: Uncertain::new(Q::from_si(mean), standard),
        chi_squared,
        count: used.len(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::VolumeFlow;

    fn flow(value: f64, standard: f64) -> Uncertain<VolumeFlow> {
        Uncertain::new(VolumeFlow::from_si(value), standard)
    }

    #[test]
    fn the_sharper_determination_weighs_more() {
        // By hand: weights 1 and 1/4; mean (10 + 14/4)/(5/4) = 10.8; u = √(4/5).
        let both = weighted_mean(&[flow(10.0, 1.0), flow(14.0, 2.0)]).unwrap();
        assert!((both.mean.value().si() - 10.8).abs() < 1e-12);
        assert!((both.mean.standard() - 0.8f64.sqrt()).abs() < 1e-12);
        assert!((both.chi_squared - (0.64 + 3.2 * 3.2 / 4.0)).abs() < 1e-12);
        assert!((both.widened().standard() - (0.8 * 3.2f64).sqrt()).abs() < 1e-12);
    }

    #[test]
    fn the_unknown_does_not_count_and_the_exact_wins() {
        assert!(weighted_mean::<VolumeFlow>(&[]).is_none());
        assert!(weighted_mean(&[flow(1.0, f64::INFINITY)]).is_none());
        let exact = weighted_mean(&[flow(3.0, 0.0), flow(5.0, 1.0)]).unwrap();
        assert!((exact.mean.value().si() - 3.0).abs() < 1e-15);
        assert!(exact.mean.standard() == 0.0);
    }
}
