//! Exchangers, strainers, check valves and other parts known by their own curve.

use super::pipe::Pipe;
use crate::fluids::{Fluid, FluidError};
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    Bound, Density, DynamicViscosity, Fraction, Number, OutOfRange, PressureDifference, Quantity,
    Temperature, VolumeFlow,
};
use thiserror::Error;

/// Loss coefficients of fittings.
pub const LOSS_COEFFICIENT: Bound<Number> = Bound::si("loss coefficient K", 0.0, 1e9);
/// Exponents of a loss curve: 1 is laminar, 2 fully rough.
const CURVE_EXPONENT: (f64, f64) = (1.0, 2.0);
/// By how much points of a maker's table may miss them. Judgement.
const EXPONENT_PLAY: f64 = 0.05;

/// A fitting by its loss coefficient K in Δp = K ρv²/2. Values from memory of
/// ASHRAE Fundamentals and Crane TP-410 (ranges of makes and sizes are wide: ±30 %).
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Fitting {
    /// Elbow of 90°.
    Elbow90,
    /// Elbow of 45°.
    Elbow45,
    /// U-bend at the foot of a bore.
    UBend,
    /// Tee, straight through.
    TeeThrough,
    /// Tee, into or out of the branch.
    TeeBranch,
    /// Ball valve, open.
    BallValve,
    /// Three-way valve, open to the loop.
    ThreeWayValve,
    /// From a large vessel into a pipe.
    Entrance,
    /// From a pipe into a large vessel.
    Exit,
}

impl Fitting {
    /// Its loss coefficient.
    pub fn loss_coefficient(self) -> Number {
        Number::from_si(match self {
            Self::Elbow90 => 0.9,
            Self::Elbow45 => 0.4,
            Self::UBend => 1.5,
            Self::TeeThrough => 0.4,
            Self::TeeBranch => 1.4,
            Self::BallValve => 0.1,
            Self::ThreeWayValve => 1.5,
            Self::Entrance => 0.5,
            Self::Exit => 1.0,
        })
    }
}

/// Density and viscosity of a fluid at its temperature.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct FluidState {
    /// Density.
    pub density: Density,
    /// Dynamic viscosity.
    pub viscosity: DynamicViscosity,
}

impl FluidState {
    /// Of a fluid at a temperature.
    ///
    /// # Errors
    /// As [`Fluid::density`].
    pub fn of(fluid: Fluid, t: Temperature) -> Result<Self, FluidError> {
        Ok(Self {
            density: fluid.density(t)?,
            viscosity: fluid.viscosity(t)?,
        })
    }
    /// Reynolds number of a flow in a pipe, Re = 4ρQ/(πdμ).
    pub fn reynolds(self, pipe: Pipe, flow: VolumeFlow) -> Number {
        let diameter = pipe.bore().si() * std::f64::consts::PI;
        let kinematic = self.viscosity.si() / self.density.si();
        Number::from_si(4.0 * flow.si().abs() / (diameter * kinematic))
    }
}

/// Why a loss curve cannot be made.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum CurveError {
    /// Fewer than one point, or a point that is not above zero.
    #[error("a loss curve needs points of flow and pressure drop above zero")]
    Points,
    /// The points give no exponent between 1 and 2.
    #[error("the points give an exponent of {0:.2}; a loss rises with flow to the power 1 to 2")]
    Exponent(f64),
    /// A value is out of range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
}

/// Pressure drop of a part over flow: Δp = Δp₁ (Q/Q₁)ⁿ for a reference fluid.
///
/// For another fluid Δp is multiplied by (ρ/ρ₁)ⁿ⁻¹ (μ/μ₁)²⁻ⁿ: by dimensions,
/// Δp/(ρv²) is a function of Re alone in one geometry, and a power law in Q can
/// only be the same power law in Re. Holds while the regime stays that of the
/// points (for a viscous glycol in a plate exchanger published for water, the
/// exponent's uncertainty covers that).
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct LossCurve {
    coefficient: f64,
    exponent: f64,
    reference: FluidState,
}

impl LossCurve {
    /// Least-squares power law through points of flow and pressure drop of the
    /// maker's table, taken with the reference fluid. One point: exponent 1.8,
    /// usual for plate and coaxial exchangers (common practice, no source).
    ///
    /// # Errors
    /// [`CurveError`].
    pub fn through(
        points: &[(VolumeFlow, PressureDifference)],
        reference: FluidState,
    ) -> Result<Self, CurveError> {
        const SINGLE_POINT_EXPONENT: f64 = 1.8;
        let positive = |x: f64| x.is_finite() && x > 0.0;
        if points.is_empty()
            || !points
                .iter()
                .all(|(q, p)| positive(q.si()) && positive(p.si()))
        {
            return Err(CurveError::Points);
        }
        let n = points.len() as f64;
        let logs: Vec<(f64, f64)> = points
            .iter()
            .map(|(q, p)| (q.si().ln(), p.si().ln()))
            .collect();
        let (mean_x, mean_y) = logs
            .iter()
            .fold((0.0, 0.0), |(x, y), l| (x + l.0 / n, y + l.1 / n));
        let (sxx, sxy) = logs.iter().fold((0.0, 0.0), |(xx, xy), (x, y)| {
            (xx + (x - mean_x).powi(2), xy + (x - mean_x) * (y - mean_y))
        });
        let exponent = if sxx > 1e-12 {
            sxy / sxx
        } else {
            SINGLE_POINT_EXPONENT
        };
        // Rounded table values may lead a little over 2.
        let (laminar, rough) = CURVE_EXPONENT;
        if !(laminar - EXPONENT_PLAY..=rough + EXPONENT_PLAY).contains(&exponent) {
            return Err(CurveError::Exponent(exponent));
        }
        let exponent = exponent.clamp(laminar, rough);
        Ok(Self {
            coefficient: (mean_y - exponent * mean_x).exp(),
            exponent,
            reference,
        })
    }
    /// A part with loss coefficient K in a pipe.
    pub fn of_loss_coefficient(k: Number, pipe: Pipe, reference: FluidState) -> Self {
        Self {
            coefficient: 0.5 * k.si() * reference.density.si() / pipe.area().si().powi(2),
            exponent: 2.0,
            reference,
        }
    }
    /// Exponent n of the flow.
    pub fn exponent(&self) -> Number {
        Number::from_si(self.exponent)
    }
    /// Coefficient for a fluid: Δp = c |Q|ⁿ.
    pub(super) fn coefficient(&self, fluid: FluidState) -> f64 {
        self.coefficient * self.correction(self.exponent, fluid)
    }
    fn correction(&self, exponent: f64, fluid: FluidState) -> f64 {
        (fluid.density.si() / self.reference.density.si()).powf(exponent - 1.0)
            * (fluid.viscosity.si() / self.reference.viscosity.si()).powf(2.0 - exponent)
    }
    /// Pressure drop of a fluid at a flow.
    pub fn pressure_drop(&self, flow: VolumeFlow, fluid: FluidState) -> PressureDifference {
        let size = self.coefficient(fluid) * flow.si().abs().powf(self.exponent);
        PressureDifference::from_si(size.copysign(flow.si()))
    }
}

/// What is uncertain about the curve of an exchanger.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct CurveTrust {
    /// Relative standard uncertainty of the pressure drop at the reference fluid.
    pub drop: f64,
    /// Standard uncertainty of the exponent, as it acts on the viscosity correction.
    pub exponent: f64,
}

impl Default for CurveTrust {
    /// 5 % of the drop and 0.1 of the exponent: makers' curves hold to about
    /// ±10 % on a clean exchanger. Common practice, no source.
    fn default() -> Self {
        Self {
            drop: 0.05,
            exponent: 0.1,
        }
    }
}

/// Flow from the pressure drop over an exchanger on its own curve, corrected
/// for the fluid: Q = (Δp / c(ρ, μ))^(1/n).
///
/// Contributions of the result, in order: reading, temperature, mass fraction,
/// curve, exponent, viscosity correlation, density correlation.
///
/// # Errors
/// [`CurveError::OutOfRange`] for a drop that is not above zero;
/// [`FlowFromDropError::Fluid`] where the fluid has no properties.
pub fn flow_from_drop(
    curve: &LossCurve,
    trust: CurveTrust,
    drop: Uncertain<PressureDifference>,
    kind: crate::fluids::FluidKind,
    mass_fraction: Uncertain<Fraction>,
    t: Uncertain<Temperature>,
) -> Result<Propagated<VolumeFlow>, FlowFromDropError> {
    const DROP: Bound<PressureDifference> = Bound::si("pressure drop", 1e-3, 1e7);
    DROP.check(drop.value()).map_err(CurveError::from)?;
    let spread = Fluid::new(kind, mass_fraction.value())?.spread();
    let one = |relative| Uncertain::new(Number::from_si(1.0), relative);
    let inputs = (
        drop,
        t,
        mass_fraction,
        one(trust.drop),
        Uncertain::new(Number::from_si(0.0), trust.exponent),
        one(spread.viscosity),
        one(spread.density),
    );
    propagate(inputs, |(drop, t, w, scale, shift, viscosity, density)| {
        let mut state = FluidState::of(Fluid::new(kind, w)?, t)?;
        state.viscosity = DynamicViscosity::from_si(state.viscosity.si() * viscosity.si());
        state.density = Density::from_si(state.density.si() * density.si());
        let correction = curve.correction(curve.exponent + shift.si(), state);
        let coefficient = curve.coefficient * scale.si() * correction;
        let flow = (drop.si() / coefficient).powf(1.0 / curve.exponent);
        Ok(VolumeFlow::from_si(flow))
    })
}

/// Why no flow follows from a pressure drop.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum FlowFromDropError {
    /// The fluid has no properties there.
    #[error(transparent)]
    Fluid(#[from] FluidError),
    /// The drop or the curve makes no sense.
    #[error(transparent)]
    Curve(#[from] CurveError),
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fluids::FluidKind;

    fn water(celsius: f64) -> FluidState {
        FluidState::of(Fluid::WATER, Temperature::from_celsius(celsius)).unwrap()
    }
    fn points() -> [(VolumeFlow, PressureDifference); 3] {
        [(3e-4, 1.8), (4e-4, 1.8), (6e-4, 1.8)].map(|(q, n): (f64, f64)| {
            (
                VolumeFlow::from_si(q),
                PressureDifference::from_si(2e4 * (q / 5e-4).powf(n)),
            )
        })
    }

    #[test]
    fn flow_comes_back_and_glycol_is_not_over_read() {
        let curve = LossCurve::through(&points(), water(10.0)).unwrap();
        assert!((curve.exponent().si() - 1.8).abs() < 1e-12);
        let read = |kind, w| {
            flow_from_drop(
                &curve,
                CurveTrust::default(),
                Uncertain::within(PressureDifference::from_si(2e4), 500.0),
                kind,
                Uncertain::new(Fraction::from_si(w), 0.0),
                Uncertain::exact(Temperature::from_celsius(10.0)),
            )
            .unwrap()
            .result
        };
        let plain = read(FluidKind::Water, 0.0);
        assert!((plain.value().si() / 5e-4 - 1.0).abs() < 1e-9);
        let glycol = read(FluidKind::PropyleneGlycol, 0.25);
        let state = FluidState::of(
            Fluid::new(FluidKind::PropyleneGlycol, Fraction::from_si(0.25)).unwrap(),
            Temperature::from_celsius(10.0),
        )
        .unwrap();
        let back = curve.pressure_drop(glycol.value(), state).si();
        assert!((back / 2e4 - 1.0).abs() < 1e-9);
        // Glycol three times as viscous: the same drop means a tenth less flow,
        // and the correction is the less certain part.
        assert!((0.85..0.92).contains(&(glycol.value().si() / 5e-4)));
        assert!(glycol.standard() > plain.standard());
    }

    #[test]
    fn curves_that_are_none_are_refused() {
        assert_eq!(
            LossCurve::through(&[], water(10.0)),
            Err(CurveError::Points)
        );
        let flat = [(1e-4, 1e3), (2e-4, 1.1e3)]
            .map(|(q, p)| (VolumeFlow::from_si(q), PressureDifference::from_si(p)));
        assert!(matches!(
            LossCurve::through(&flat, water(10.0)),
            Err(CurveError::Exponent(_))
        ));
    }
}
