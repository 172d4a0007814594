//! Pumps by their published curve.

use crate::units::{Bound, Length, Number, OutOfRange, Quantity, VolumeFlow};
use thiserror::Error;

/// Heads of a pump curve's points.
pub const HEAD: Bound<Length> = Bound::si("head of a pump curve", 0.0, 1_000.0);
/// Flows of a pump curve's points.
pub const FLOW: Bound<VolumeFlow> = Bound::si("flow of a pump curve", 0.0, 1.0);
/// Exponents that a curve through three points can have; others become lines.
const EXPONENTS: std::ops::RangeInclusive<f64> = 0.3..=20.0;

/// Speeds at which a curve is carried over, relative to that of the curve.
pub const SPEED: Bound<Number> = Bound::si("pump speed relative to its curve", 0.05, 2.0);

/// Why points are no pump curve.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum PumpError {
    /// No points, two of them alike, or values that are not numbers above zero.
    #[error("a pump curve needs points of rising flow, with some head")]
    Points,
    /// Head must fall as flow rises; point number `at` (from zero) does not.
    #[error("the head at point {at} does not lie below the one before")]
    NotFalling {
        /// Number of the point, from zero.
        at: usize,
    },
    /// A value is out of range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
}

/// Head of a pump over flow at its reference speed, always falling.
#[derive(Clone, PartialEq, Debug)]
pub struct PumpCurve {
    shape: Shape,
    /// Where the head is zero, m³/s.
    free_flow: f64,
}

#[derive(Clone, PartialEq, Debug)]
enum Shape {
    /// H = shut_off - slope · Q^exponent.
    Power {
        shut_off: f64,
        slope: f64,
        exponent: f64,
    },
    /// Straight lines through the points, the outer ones carried on.
    Lines(Vec<(f64, f64)>),
}

impl PumpCurve {
    /// From points of flow and head, flow rising.
    ///
    /// One point: taken as the best point, with shut-off head 4/3 of it and
    /// free flow twice it (a convention of network solvers). Three points, the
    /// first at zero flow: H = H₀ - aQᶜ through all three. Otherwise straight
    /// lines from point to point.
    ///
    /// # Errors
    /// [`PumpError`].
    pub fn through(points: &[(VolumeFlow, Length)]) -> Result<Self, PumpError> {
        for (flow, head) in points {
            FLOW.check(*flow)?;
            HEAD.check(*head)?;
        }
        let points: Vec<(f64, f64)> = points.iter().map(|(q, h)| (q.si(), h.si())).collect();
        for (at, pair) in points.windows(2).enumerate() {
            if pair[1].0 <= pair[0].0 {
                return Err(PumpError::Points);
            }
            if pair[1].1 >= pair[0].1 {
                return Err(PumpError::NotFalling { at: at + 1 });
            }
        }
        let shape = match points[..] {
            [(q, h)] if q > 0.0 && h > 0.0 => power(4.0 / 3.0 * h, (q, h), (2.0 * q, 0.0)),
            [(0.0, h0), second, third] => {
                let curve = power(h0, second, third);
                match curve {
                    Shape::Power { exponent, .. } if EXPONENTS.contains(&exponent) => curve,
                    _ => Shape::Lines(points),
                }
            }
            [] | [_] => return Err(PumpError::Points),
            _ => Shape::Lines(points),
        };
        let mut curve = Self {
            shape,
            free_flow: 0.0,
        };
        curve.free_flow = curve.zero();
        Ok(curve)
    }
    /// Head at zero flow.
    pub fn shut_off(&self) -> Length {
        Length::from_si(self.at(0.0).0)
    }
    /// Flow at zero head.
    pub fn free_flow(&self) -> VolumeFlow {
        VolumeFlow::from_si(self.free_flow)
    }
    /// Head at a flow and a relative speed s by the affinity laws (Q ∝ s,
    /// H ∝ s²): H = s² H₁(Q/s). Negative beyond the free flow.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`SPEED`].
    pub fn head(&self, flow: VolumeFlow, speed: Number) -> Result<Length, OutOfRange> {
        let speed = SPEED.check(speed)?.si();
        Ok(Length::from_si(self.at_speed(flow.si(), speed).0))
    }
    /// Head and its slope by flow at a speed.
    pub(super) fn at_speed(&self, flow: f64, speed: f64) -> (f64, f64) {
        let (head, slope) = self.at(flow / speed);
        (head * speed * speed, slope * speed)
    }
    /// Loss of head through the pump when it stands still or is driven
    /// backwards, as r in rQ²: as much at the free flow as half the shut-off head.
    /// Order of magnitude only; common practice, no source.
    pub(super) fn idle_loss(&self) -> f64 {
        0.5 * self.at(0.0).0 / self.free_flow.powi(2)
    }

    fn at(&self, flow: f64) -> (f64, f64) {
        if flow < 0.0 {
            // Driven backwards it takes up more than its shut-off head.
            let r = self.idle_loss();
            return (self.at(0.0).0 + r * flow * flow, 2.0 * r * flow);
        }
        match &self.shape {
            Shape::Power {
                shut_off,
                slope,
                exponent,
            } => (
                shut_off - slope * flow.powf(*exponent),
                -slope * exponent * flow.powf(exponent - 1.0),
            ),
            Shape::Lines(points) => {
                let next = points.partition_point(|(q, _)| *q <= flow);
                let next = next.clamp(1, points.len() - 1);
                let ((q0, h0), (q1, h1)) = (points[next - 1], points[next]);
                let slope = (h1 - h0) / (q1 - q0);
                (h0 + slope * (flow - q0), slope)
            }
        }
    }
    fn zero(&self) -> f64 {
        match &self.shape {
            Shape::Power {
                shut_off,
                slope,
                exponent,
            } => (shut_off / slope).powf(1.0 / exponent),
            Shape::Lines(points) => {
                let [.., (q0, h0), (q1, h1)] = points[..] else {
                    return 0.0;
                };
                q1 + h1 * (q1 - q0) / (h0 - h1)
            }
        }
    }
}

/// The power curve through shut-off and two points.
fn power(shut_off: f64, (q1, h1): (f64, f64), (q2, h2): (f64, f64)) -> Shape {
    let exponent = ((shut_off - h2) / (shut_off - h1)).ln() / (q2 / q1).ln();
    Shape::Power {
        shut_off,
        slope: (shut_off - h1) / q1.powf(exponent),
        exponent,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn curve(points: &[(f64, f64)]) -> Result<PumpCurve, PumpError> {
        let typed: Vec<_> = points
            .iter()
            .map(|(q, h)| (VolumeFlow::from_si(*q), Length::from_si(*h)))
            .collect();
        PumpCurve::through(&typed)
    }
    fn head(curve: &PumpCurve, flow: f64, speed: f64) -> f64 {
        curve
            .head(VolumeFlow::from_si(flow), Number::from_si(speed))
            .unwrap()
            .si()
    }

    #[test]
    fn curves_meet_their_points() {
        for points in [
            vec![(0.0, 9.0), (5e-4, 7.0), (1e-3, 3.0)],
            vec![(0.0, 9.0), (3e-4, 8.0), (6e-4, 6.0), (1e-3, 2.0)],
            vec![(2e-4, 8.0), (6e-4, 5.0)],
        ] {
            let pump = curve(&points).unwrap();
            for (q, h) in points {
                assert!((head(&pump, q, 1.0) - h).abs() < 1e-9);
            }
            assert!(head(&pump, pump.free_flow().si(), 1.0).abs() < 1e-9);
        }
        let single = curve(&[(5e-4, 6.0)]).unwrap();
        assert!((single.shut_off().si() - 8.0).abs() < 1e-9);
        assert!((head(&single, 5e-4, 1.0) - 6.0).abs() < 1e-9);
    }

    #[test]
    fn half_speed_gives_half_the_flow_at_a_quarter_of_the_head() {
        let pump = curve(&[(0.0, 9.0), (5e-4, 7.0), (1e-3, 3.0)]).unwrap();
        assert!((head(&pump, 2.5e-4, 0.5) - 7.0 / 4.0).abs() < 1e-12);
        assert!(head(&pump, -1e-4, 1.0) > 9.0);
    }

    #[test]
    fn what_is_no_curve_is_refused() {
        assert_eq!(curve(&[]), Err(PumpError::Points));
        assert_eq!(curve(&[(0.0, 5.0), (0.0, 4.0)]), Err(PumpError::Points));
        assert_eq!(
            curve(&[(0.0, 5.0), (1e-3, 6.0)]),
            Err(PumpError::NotFalling { at: 1 })
        );
        assert!(matches!(
            curve(&[(0.0, f64::NAN)]),
            Err(PumpError::OutOfRange(_))
        ));
    }
}
