//! A circulator at work: shut-off test, power, and two in series of which one may be dead or
//! turned round.

use super::pump::PumpCurve;
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    Bound, Density, Fraction, Length, Number, OutOfRange, Power, PressureDifference, Quantity,
    VolumeFlow,
};

/// Electric inputs of a circulator.
pub const ELECTRIC_INPUT: Bound<Power> = Bound::si("electric input of the circulator", 1.0, 1e5);
/// Exponents of a system curve.
pub const SYSTEM_EXPONENT: Bound<Number> = Bound::si("exponent of the system curve", 1.0, 2.0);

/// What the pressure rise with the discharge closed says.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum ShutOffVerdict {
    /// The pump makes its head: if the flow is low the system restricts it.
    Sound,
    /// Less than the curve: worn or damaged impeller, wrong rotation or speed, air.
    Low,
    /// More than the curve: another speed or another pump than thought.
    High,
}

/// A judged shut-off test.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct ShutOffTest {
    /// Rise that the curve asks for.
    pub expected: PressureDifference,
    /// Measured over expected.
    pub ratio: Uncertain<Fraction>,
    /// Probability that the true rise is below that of the curve by more than its tolerance.
    pub probability_low: f64,
    /// Verdict.
    pub verdict: ShutOffVerdict,
}

/// Tolerance of a head on its curve, relative: ISO 9906:2012 grade 3B, ±7 %, from memory.
pub const CURVE_TOLERANCE: f64 = 0.07;

/// Judges a shut-off test: discharge closed for seconds only, rise over the pumps against the
/// sum of the shut-off heads of those that should run, at their speeds.
///
/// # Errors
/// [`OutOfRange`] for a speed.
pub fn shut_off(
    running: &[(&PumpCurve, Number)],
    rise: Uncertain<PressureDifference>,
    density: Density,
) -> Result<ShutOffTest, OutOfRange> {
    let mut head = Length::ZERO;
    for (curve, speed) in running {
        head += curve.head(VolumeFlow::ZERO, *speed)?;
    }
    let expected = head.pressure(density);
    let floor = 1.0;
    let size = expected.si().max(floor);
    let ratio = Uncertain::new(
        Fraction::from_si(rise.value().si() / size),
        rise.standard() / size,
    );
    let low = Fraction::from_si(1.0 - CURVE_TOLERANCE);
    let high = Fraction::from_si(1.0 + CURVE_TOLERANCE);
    let probability_low = 1.0 - ratio.probability_above(low);
    let verdict = if probability_low > 0.5 {
        ShutOffVerdict::Low
    } else if ratio.probability_above(high) > 0.5 {
        ShutOffVerdict::High
    } else {
        ShutOffVerdict::Sound
    };
    Ok(ShutOffTest {
        expected,
        ratio,
        probability_low,
        verdict,
    })
}

/// Hydraulic power Q Δp over electric input: the wire-to-water efficiency. Contributions in the
/// order flow, rise, input. Small wet-rotor pumps reach 0.1 to 0.3, larger ones up to 0.5;
/// above 0.6 a reading is wrong (common practice, no source).
///
/// # Errors
/// [`OutOfRange`] for the input.
pub fn efficiency(
    flow: Uncertain<VolumeFlow>,
    rise: Uncertain<PressureDifference>,
    input: Uncertain<Power>,
) -> Result<Propagated<Fraction>, OutOfRange> {
    ELECTRIC_INPUT.check(input.value())?;
    propagate((flow, rise, input), |(flow, rise, input)| {
        let hydraulic: Power = flow * rise;
        Ok(Fraction::from_si(hydraulic.si() / input.si().max(1e-3)))
    })
}

/// How a pump in a series stands.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Condition {
    /// Running at a relative speed, the right way.
    Running(Number),
    /// Not running; the flow is pushed through it.
    Dead,
    /// Running, but mounted the wrong way round.
    TurnedRound(Number),
}

/// Head lost over flow in the rest of the loop: H = H₁ (Q/Q₁)ⁿ through one known point.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct SystemCurve {
    /// Flow of the known point.
    pub flow: VolumeFlow,
    /// Head lost there.
    pub head: Length,
    /// Exponent, 2 when rough or by fittings, 1.75 in smooth pipe, 1 when laminar.
    pub exponent: Number,
}

/// Where pumps and system meet.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct OperatingPoint {
    /// Flow; negative if it runs backwards.
    pub flow: VolumeFlow,
    /// Head over all pumps.
    pub head: Length,
}

/// Head of one pump in its condition at a forward flow. A dead pump is a loss; one turned
/// round pushes against the flow with its head and loses what it is driven backwards by.
fn head(curve: &PumpCurve, condition: Condition, flow: f64) -> Result<f64, OutOfRange> {
    let loss = 0.5 * curve.shut_off().si() / curve.free_flow().si().powi(2) * flow * flow.abs();
    let at = |flow: f64, speed| {
        curve
            .head(VolumeFlow::from_si(flow), speed)
            .map(Quantity::si)
    };
    match condition {
        Condition::Running(speed) => at(flow, speed),
        Condition::Dead => Ok(-loss),
        Condition::TurnedRound(speed) => Ok(-at(-flow, speed)?),
    }
}

/// Operating point of pumps in series on a system: Σ H(Q) = H_system(Q), by halving between
/// the largest backward and forward flow that the pumps can make.
///
/// The loss of a dead or driven pump is an order of magnitude (half its shut-off head at its
/// free flow; common practice, no source): the flow that is left is a guide, the loss of most
/// of it is the sign.
///
/// # Errors
/// [`OutOfRange`] for a speed or for the exponent.
pub fn series(
    pumps: &[(&PumpCurve, Condition)],
    system: &SystemCurve,
) -> Result<OperatingPoint, OutOfRange> {
    let exponent = SYSTEM_EXPONENT.check(system.exponent)?.si();
    let known = system.flow.si().max(1e-9);
    let lost = |q: f64| system.head.si() * (q.abs() / known).powf(exponent) * q.signum();
    let sum = |q: f64| -> Result<f64, OutOfRange> {
        let mut total = 0.0;
        for (curve, condition) in pumps {
            total += head(curve, *condition, q)?;
        }
        Ok(total)
    };
    let widest = pumps
        .iter()
        .map(|(curve, _)| curve.free_flow().si())
        .fold(0.0, f64::max);
    let (mut low, mut high) = (-2.0 * widest, 2.0 * widest);
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if sum(middle)? > lost(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    let flow = 0.5 * (low + high);
    Ok(OperatingPoint {
        flow: VolumeFlow::from_si(flow),
        head: Length::from_si(lost(flow)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn full() -> Number {
        Number::from_si(1.0)
    }
    fn pump() -> PumpCurve {
        let point = |q: f64, h: f64| (VolumeFlow::from_si(q), Length::from_si(h));
        PumpCurve::through(&[point(0.0, 9.0), point(5e-4, 7.0), point(1e-3, 3.0)]).unwrap()
    }
    /// Two sound pumps meet this system at 0.5 L/s and 14 m.
    fn system() -> SystemCurve {
        SystemCurve {
            flow: VolumeFlow::from_si(5e-4),
            head: Length::from_si(14.0),
            exponent: Number::from_si(1.75),
        }
    }
    fn flow(second: Condition) -> f64 {
        let pump = pump();
        let pumps = [(&pump, Condition::Running(full())), (&pump, second)];
        series(&pumps, &system()).unwrap().flow.si()
    }

    #[test]
    fn two_sound_pumps_meet_the_system_where_it_was_put() {
        assert!((flow(Condition::Running(full())) - 5e-4).abs() < 1e-9);
    }

    #[test]
    fn dead_is_worse_than_sound_and_turned_round_worse_than_dead() {
        let (both, dead) = (flow(Condition::Running(full())), flow(Condition::Dead));
        let opposed = flow(Condition::TurnedRound(full()));
        assert!(dead < 0.9 * both && dead > 0.4 * both, "{dead}");
        // Opposed pumps of one kind all but cancel.
        assert!(opposed.abs() < 0.05 * both, "{opposed}");
    }

    #[test]
    fn shut_off_heads_add_in_series() {
        let pump = pump();
        let rho = Density::from_si(1_000.0);
        let both = [(&pump, full()), (&pump, full())];
        let at = |metres: f64| {
            let rise = Length::from_si(metres).pressure(rho);
            shut_off(&both, Uncertain::new(rise, 3e3), rho).unwrap()
        };
        assert!((at(18.0).expected.si() - 18.0 * 9_806.65).abs() < 1e-6);
        assert_eq!(at(17.5).verdict, ShutOffVerdict::Sound);
        assert_eq!(at(9.0).verdict, ShutOffVerdict::Low);
        assert!(at(9.0).probability_low > 0.999);
        assert_eq!(at(21.0).verdict, ShutOffVerdict::High);
    }

    /// By hand: 0.5 L/s · 68.65 kPa = 34.3 W over 130 W is 26 %.
    #[test]
    fn efficiency_by_hand() {
        let found = efficiency(
            Uncertain::relative(VolumeFlow::from_si(5e-4), 0.05),
            Uncertain::exact(PressureDifference::from_si(68_650.0)),
            Uncertain::exact(Power::from_si(130.0)),
        )
        .unwrap();
        assert!((found.result.value().si() - 0.264_04).abs() < 1e-4);
        assert!((found.result.standard() / found.result.value().si() - 0.05).abs() < 1e-4);
    }
}
