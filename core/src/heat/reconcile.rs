//! One flow from several ways of telling it, and the reading that does not fit.

use super::HeatError;
use crate::uncertainty::{Combined, Uncertain, normal_cumulative, weighted_mean};
use crate::units::Quantity;
use crate::units::VolumeFlow;

/// A way of telling the flow.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Way {
    /// Pressure drop of the exchanger on its curve.
    ExchangerDrop,
    /// Head of the pump on its curve.
    PumpCurve,
    /// Heat over temperature difference.
    HeatBalance,
    /// A flow meter.
    Meter,
}

/// Below this probability of so much scatter by chance the ways disagree.
pub const SIGNIFICANCE: f64 = 0.05;
/// A normalised residual above this names its reading: 5 % two-sided of the normal distribution.
pub const ODD_RESIDUAL: f64 = 1.96;

/// Whether the ways agree.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Agreement {
    /// Only one way: nothing to compare.
    Single,
    /// They do.
    Agree,
    /// This one does not fit the others, which agree among themselves.
    Odd(Way),
    /// They do not agree and none can be blamed: two ways only, or no two that agree.
    CannotTell,
}

/// How one way lies to the mean of all.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Residual {
    /// The way.
    pub way: Way,
    /// (x − mean)/√(u² − u_mean²): about normal if the stated accuracies hold.
    pub normalised: f64,
}

/// The reconciled flow.
#[derive(Clone, PartialEq, Debug)]
pub struct Reconciled {
    /// Weighted mean of all ways, or of those that agree if one is odd.
    pub flow: Uncertain<VolumeFlow>,
    /// χ² of all ways.
    pub chi_squared: f64,
    /// Probability of at least that much scatter if the stated accuracies hold.
    pub probability: f64,
    /// Whether they agree.
    pub agreement: Agreement,
    /// Every way against the mean of all.
    pub residuals: Vec<Residual>,
}

/// Probability that χ² with `freedom` degrees of freedom is at least `x`.
///
/// Recurrence Q(x|ν+2) = Q(x|ν) + (x/2)^(ν/2) e^(−x/2)/Γ(ν/2+1) from Q(x|1) and Q(x|2),
/// Abramowitz and Stegun 26.4.4 to 26.4.8. One for no freedom.
pub fn chi_squared_above(x: f64, freedom: usize) -> f64 {
    if freedom == 0 || x <= 0.0 {
        return 1.0;
    }
    let half = 0.5 * x;
    let odd = freedom % 2 == 1;
    // Γ(ν/2 + 1) for ν = 1 is √π/2, for ν = 2 is 1.
    let (mut sum, mut nu, mut gamma) = if odd {
        let first = 2.0 * normal_cumulative(-x.sqrt());
        (first, 1.0, 0.5 * std::f64::consts::PI.sqrt())
    } else {
        ((-half).exp(), 2.0, 1.0)
    };
    while nu < freedom as f64 - 0.5 {
        sum += half.powf(0.5 * nu) * (-half).exp() / gamma;
        nu += 2.0;
        gamma *= 0.5 * nu;
    }
    sum.min(1.0)
}

/// Reconciles the ways by least squares weighted with their uncertainties.
///
/// If the scatter is more than chance allows, the way whose normalised residual is largest is
/// named odd, provided it is beyond [`ODD_RESIDUAL`], the others agree without it, and no
/// other way could be left out just as well.
///
/// # Errors
/// [`HeatError::NoDetermination`].
pub fn reconcile(ways: &[(Way, Uncertain<VolumeFlow>)]) -> Result<Reconciled, HeatError> {
    let values: Vec<Uncertain<VolumeFlow>> = ways.iter().map(|(_, value)| *value).collect();
    let all = weighted_mean(&values).ok_or(HeatError::NoDetermination)?;
    let probability = chance(&all);
    let residuals: Vec<Residual> = ways
        .iter()
        .map(|(way, value)| {
            let free = value.standard().powi(2) - all.mean.standard().powi(2);
            let off = value.value().si() - all.mean.value().si();
            let normalised = if free > 0.0 { off / free.sqrt() } else { 0.0 };
            Residual {
                way: *way,
                normalised,
            }
        })
        .collect();
    let (agreement, flow) = if ways.len() < 2 {
        (Agreement::Single, all.mean)
    } else if probability >= SIGNIFICANCE {
        (Agreement::Agree, all.mean)
    } else {
        blame(ways, &residuals).unwrap_or((Agreement::CannotTell, all.widened()))
    };
    Ok(Reconciled {
        flow,
        chi_squared: all.chi_squared,
        probability,
        agreement,
        residuals,
    })
}

fn chance(combined: &Combined<VolumeFlow>) -> f64 {
    chi_squared_above(combined.chi_squared, combined.count.saturating_sub(1))
}

/// The one way without which the rest agree.
fn blame(
    ways: &[(Way, Uncertain<VolumeFlow>)],
    residuals: &[Residual],
) -> Option<(Agreement, Uncertain<VolumeFlow>)> {
    if ways.len() < 3 {
        return None;
    }
    let mut suspects = (0..ways.len()).filter_map(|left_out| {
        let rest: Vec<Uncertain<VolumeFlow>> = (0..ways.len())
            .filter(|i| *i != left_out)
            .map(|i| ways[i].1)
            .collect();
        let rest = weighted_mean(&rest)?;
        let agrees = chance(&rest) >= SIGNIFICANCE;
        (agrees && residuals[left_out].normalised.abs() > ODD_RESIDUAL)
            .then_some((left_out, rest.mean))
    });
    let (odd, mean) = suspects.next()?;
    if suspects.next().is_some() {
        return None;
    }
    Some((Agreement::Odd(ways[odd].0), mean))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn flow(litres: f64, doubt: f64) -> Uncertain<VolumeFlow> {
        Uncertain::new(VolumeFlow::from_si(litres * 1e-3), doubt * 1e-3)
    }
    fn three(drop: f64, pump: f64, heat: f64) -> Reconciled {
        reconcile(&[
            (Way::ExchangerDrop, flow(drop, 0.03)),
            (Way::PumpCurve, flow(pump, 0.05)),
            (Way::HeatBalance, flow(heat, 0.04)),
        ])
        .unwrap()
    }

    /// Percentage points of χ², Abramowitz and Stegun table 26.8.
    #[test]
    fn the_tail_of_chi_squared() {
        for (x, freedom, tail) in [
            (3.841_46, 1, 0.05),
            (5.991_47, 2, 0.05),
            (7.814_73, 3, 0.05),
            (9.487_73, 4, 0.05),
            (11.070_5, 5, 0.05),
            (9.210_34, 2, 0.01),
        ] {
            assert!(
                (chi_squared_above(x, freedom) - tail).abs() < 1e-6,
                "{freedom}"
            );
        }
    }

    #[test]
    fn agreeing_ways_sharpen_each_other() {
        let result = three(0.50, 0.52, 0.49);
        assert_eq!(result.agreement, Agreement::Agree);
        assert!(result.flow.standard() < 0.03e-3);
    }

    #[test]
    fn the_odd_one_is_named_whichever_it_is() {
        assert_eq!(
            three(0.9, 0.5, 0.5).agreement,
            Agreement::Odd(Way::ExchangerDrop)
        );
        assert_eq!(
            three(0.5, 0.9, 0.5).agreement,
            Agreement::Odd(Way::PumpCurve)
        );
        let heat = three(0.5, 0.5, 0.9);
        assert_eq!(heat.agreement, Agreement::Odd(Way::HeatBalance));
        assert!((heat.flow.value().si() - 0.5e-3).abs() < 1e-9);
    }

    #[test]
    fn two_that_differ_blame_no_one_and_widen_the_result() {
        let two = reconcile(&[
            (Way::ExchangerDrop, flow(0.5, 0.03)),
            (Way::HeatBalance, flow(0.8, 0.03)),
        ])
        .unwrap();
        assert_eq!(two.agreement, Agreement::CannotTell);
        assert!(two.flow.standard() > 0.1e-3);
        assert_eq!(three(0.3, 0.6, 0.9).agreement, Agreement::CannotTell);
        assert!(reconcile(&[]).is_err());
    }
}
