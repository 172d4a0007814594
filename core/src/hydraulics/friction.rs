//! Darcy-Weisbach friction over all regimes.
//!
//! Head loss h = f (L/d) v²/2g with f the Darcy friction factor, a function of
//! Re = ρvd/μ and the relative roughness ε/d.

use crate::units::{Bound, Number, OutOfRange, Quantity};

/// Reynolds number below which the flow is laminar for certain.
pub const LAMINAR_BELOW: f64 = 2_000.0;
/// Reynolds number above which the turbulent laws hold.
pub const TURBULENT_ABOVE: f64 = 4_000.0;
/// Reynolds number below which a pipe of a heat-pump loop is called laminar:
/// heat passes badly. Common practice, no source.
pub const POOR_HEAT_BELOW: f64 = 2_500.0;

/// Reynolds numbers that are looked at.
pub const REYNOLDS: Bound<Number> = Bound::si("Reynolds number", 1e-6, 1e8);
/// Relative roughness ε/d that is looked at.
pub const RELATIVE_ROUGHNESS: Bound<Number> = Bound::si("relative roughness", 0.0, 0.05);

/// Which law gives the friction factor.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash, Default)]
pub enum FrictionLaw {
    /// 64/Re up to Re 2000; P. Swamee and A. Jain, J. Hydraul. Div. ASCE 102
    /// (1976) 657, from Re 4000; between them the cubic of E. Dunlop (1991)
    /// that meets both in value and slope. The law of the EPA network solver.
    #[default]
    SwameeJain,
    /// S. Churchill, Chem. Eng. 84 (1977) 91: one expression for all regimes.
    Churchill,
}

/// Regime of flow in a pipe.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Regime {
    /// Re below [`LAMINAR_BELOW`].
    Laminar,
    /// In between: laws differ by up to 35 %; [`band`] gives both ends.
    Transition,
    /// Re above [`TURBULENT_ABOVE`].
    Turbulent,
}

impl Regime {
    /// Regime at a Reynolds number.
    pub fn at(reynolds: f64) -> Self {
        if reynolds < LAMINAR_BELOW {
            Self::Laminar
        } else if reynolds <= TURBULENT_ABOVE {
            Self::Transition
        } else {
            Self::Turbulent
        }
    }
}

/// Darcy friction factor, 1.
///
/// Worked example: Re 100 000, ε/d 1e-4: Swamee-Jain 0.018 5 (Colebrook 0.018 5).
///
/// # Errors
/// [`OutOfRange`] outside [`REYNOLDS`] or [`RELATIVE_ROUGHNESS`].
pub fn friction_factor(
    law: FrictionLaw,
    reynolds: Number,
    relative_roughness: Number,
) -> Result<Number, OutOfRange> {
    let re = REYNOLDS.check(reynolds)?.si();
    let roughness = RELATIVE_ROUGHNESS.check(relative_roughness)?.si();
    Ok(Number::from_si(law.factor(re, roughness).0))
}

/// Lowest and highest friction factor that fit the regime: one value outside
/// transition; within it 64/Re and Swamee-Jain carried down.
///
/// # Errors
/// As [`friction_factor`].
pub fn band(reynolds: Number, relative_roughness: Number) -> Result<(Number, Number), OutOfRange> {
    let re = REYNOLDS.check(reynolds)?.si();
    let roughness = RELATIVE_ROUGHNESS.check(relative_roughness)?.si();
    let (low, high) = match Regime::at(re) {
        Regime::Transition => (64.0 / re, swamee_jain(re, roughness).0),
        _ => {
            let factor = FrictionLaw::default().factor(re, roughness).0;
            (factor, factor)
        }
    };
    Ok((
        Number::from_si(low.min(high)),
        Number::from_si(low.max(high)),
    ))
}

impl FrictionLaw {
    /// f and df/dRe; Re above zero.
    pub(super) fn factor(self, re: f64, roughness: f64) -> (f64, f64) {
        match self {
            Self::Churchill => churchill(re, roughness),
            Self::SwameeJain if re <= LAMINAR_BELOW => (64.0 / re, -64.0 / (re * re)),
            Self::SwameeJain if re >= TURBULENT_ABOVE => swamee_jain(re, roughness),
            Self::SwameeJain => dunlop(re, roughness),
        }
    }
}

fn swamee_jain(re: f64, roughness: f64) -> (f64, f64) {
    let viscous = 5.74 / re.powf(0.9);
    let argument = roughness / 3.7 + viscous;
    let log = argument.log10();
    let factor = 0.25 / (log * log);
    let slope = factor * 2.0 * 0.9 * viscous / (re * argument * log * std::f64::consts::LN_10);
    (factor, slope)
}

/// Cubic in r = Re/2000 between the laminar and the turbulent law.
fn dunlop(re: f64, roughness: f64) -> (f64, f64) {
    let (fa, slope) = swamee_jain(TURBULENT_ABOVE, roughness);
    let fb = 2.0 * fa + TURBULENT_ABOVE * slope;
    let x1 = 7.0 * fa - fb;
    let x2 = 0.128 - 17.0 * fa + 2.5 * fb;
    let x3 = -0.128 + 13.0 * fa - 2.0 * fb;
    let x4 = 0.032 - 3.0 * fa + 0.5 * fb;
    let r = re / LAMINAR_BELOW;
    (
        x1 + r * (x2 + r * (x3 + r * x4)),
        (x2 + r * (2.0 * x3 + r * 3.0 * x4)) / LAMINAR_BELOW,
    )
}

fn churchill(re: f64, roughness: f64) -> (f64, f64) {
    let seven = (7.0 / re).powf(0.9);
    let inner = seven + 0.27 * roughness;
    let log = -2.457 * inner.ln();
    let (a, b) = (log.powi(16), (37_530.0 / re).powi(16));
    let da = 16.0 * log.powi(15) * 2.457 * 0.9 * seven / (re * inner);
    let laminar = (8.0 / re).powi(12);
    let turbulent = (a + b).powf(-1.5);
    let sum = laminar + turbulent;
    let dsum = -12.0 * laminar / re - 1.5 * turbulent / (a + b) * (da - 16.0 * b / re);
    let factor = 8.0 * sum.powf(1.0 / 12.0);
    (factor, factor / 12.0 * dsum / sum)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slopes_are_the_slopes_and_regimes_meet() {
        for law in [FrictionLaw::SwameeJain, FrictionLaw::Churchill] {
            for re in [500.0, 1_999.0, 2_500.0, 3_500.0, 4_001.0, 2e4, 1e6] {
                for roughness in [0.0, 1e-4, 1e-2] {
                    let step = 1e-5 * re;
                    let rise =
                        law.factor(re + step, roughness).0 - law.factor(re - step, roughness).0;
                    let (f, slope) = law.factor(re, roughness);
                    let off = (rise / (2.0 * step) - slope).abs() * re / f;
                    assert!(off < 1e-3, "{law:?} {re} {roughness}: {off}");
                }
            }
        }
        for re in [2_000.0, 4_000.0] {
            let below = FrictionLaw::SwameeJain.factor(re - 1e-6, 1e-4);
            let above = FrictionLaw::SwameeJain.factor(re + 1e-6, 1e-4);
            assert!((below.0 / above.0 - 1.0).abs() < 1e-6, "{re}");
            assert!(
                (below.1 / above.1 - 1.0).abs() < 1e-4,
                "{re}: {below:?} {above:?}"
            );
        }
    }
}
