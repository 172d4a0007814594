//! The circulators: rise, shut-off, electric input, body.

use super::Evaluator;
use super::flow::Way;
use crate::diagnosis::Likelihood;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Compared, Evaluation, ratio};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::hydraulics::network::PumpState;
use crate::hydraulics::network::ground_loop::FlowPump;
use crate::hydraulics::pump::PumpCurve;
use crate::records::{CirculatorPiping, ReadingPoint};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Current, Density, Length, Number, Power, PressureDifference, Quantity, Temperature,
    TemperatureDifference, VolumeFlow,
};
use std::convert::Infallible;

/// Relative standard uncertainty of the head of a new circulator against its
/// published curve: makers allow about a tenth. Common practice, no source.
const CURVE_SPREAD: f64 = 0.06;
/// The same of a circulator whose speed nobody noted, taken as full. Judgement.
const SPEED_SPREAD: f64 = 0.12;

/// Rise over the rise that the published curves give at the needed flow: a
/// restriction drives the circulators up their curve. Where the flow is known,
/// what lies under the curve at that flow counts as missing instead: a tenth
/// and a half of the shut-off rise is the edge. Judgement.
const RISE: Levels = Levels::graded(
    &[(0.5, 0.85), (-0.2, 0.88)],
    &[(0.88, 1.12), (0.78, 1.2)],
    &[(1.15, 1.5), (1.12, 2.2)],
);
/// The missing part of the shut-off rise that weighs as much as 0.17 of the
/// rise at the needed flow.
const MISSING_WEIGHT: f64 = 0.17 / 0.15;
/// Rise with the discharge shut over that of the published curves. Common
/// practice, no source, that they match; within 15 % is judgement.
const SHUT_OFF: Levels = Levels::graded(
    &[(0.45, 0.85), (-0.2, 0.88)],
    &[(0.9, 1.1), (0.82, 1.18)],
    &[(1.12, 1.8)],
);
/// Electric input over that of the nameplates: low by more than 25 %, high by
/// more than 15 %. It falls towards no flow. Judgement.
const POWER: Levels = Levels::graded(
    &[(0.45, 0.75), (0.0, 0.8)],
    &[(0.82, 1.12), (0.69, 1.2)],
    &[(1.15, 1.5), (1.1, 2.5)],
);
/// Body over fluid, K. Judgement: a wet-rotor circulator warms by 10 to 30 K
/// while its fluid cools it.
const BODY: Levels = Levels::presence(&[(-4.0, 31.0)], &[(25.0, 45.0), (35.0, 120.0)]);

pub(super) const CIRCULATOR_RISE: Evaluator = Evaluator {
    name: "circulator-rise",
    graded: true,
    reads: &[ReadingPoint::CirculatorRise],
    evaluate: rise,
};
pub(super) const SHUT_OFF_RISE: Evaluator = Evaluator {
    name: "shut-off-rise",
    graded: true,
    reads: &[ReadingPoint::ShutOffRise],
    evaluate: shut_off,
};
pub(super) const CIRCULATOR_POWER: Evaluator = Evaluator {
    name: "circulator-power",
    graded: true,
    reads: &[
        ReadingPoint::CirculatorPower,
        ReadingPoint::CirculatorCurrent,
    ],
    evaluate: power,
};
pub(super) const CIRCULATOR_BODY_HOT: Evaluator = Evaluator {
    name: "circulator-body-hot",
    graded: false,
    reads: &[ReadingPoint::CirculatorBodyTemperature],
    evaluate: body,
};

/// The circulators of a system by their published curves.
pub(super) struct Circulators {
    pumps: Vec<(PumpCurve, Number)>,
    parallel: bool,
    /// Relative standard uncertainty of the head.
    pub spread: f64,
}

impl Circulators {
    /// None unless every circulator has a curve.
    pub fn of(call: &Call<'_>) -> Option<Self> {
        let system = &call.file.system;
        let mut spread = CURVE_SPREAD;
        let mut pumps = Vec::new();
        for circulator in &system.circulators {
            let points: Vec<(VolumeFlow, Length)> = circulator
                .curve
                .iter()
                .map(|point| (point.flow.get(), point.head.get()))
                .collect();
            let speed = match circulator.speed {
                Some(speed) => speed.get().si(),
                None => {
                    spread = CURVE_SPREAD.hypot(SPEED_SPREAD);
                    1.0
                }
            };
            pumps.push((PumpCurve::through(&points).ok()?, Number::from_si(speed)));
        }
        // Two circulators of unknown piping stand in series: common practice, no source.
        let parallel = system.circulator_piping == Some(CirculatorPiping::Parallel);
        (!pumps.is_empty()).then_some(Self {
            pumps,
            parallel,
            spread,
        })
    }

    /// Head of the set at a flow. Side by side each takes an even share.
    pub fn head(&self, flow: VolumeFlow) -> Option<Length> {
        let n = self.pumps.len() as f64;
        let each = if self.parallel { flow / n } else { flow };
        let sum: f64 = self
            .pumps
            .iter()
            .map(|(curve, speed)| curve.head(each, *speed).map(Quantity::si).ok())
            .sum::<Option<f64>>()?;
        let head = if self.parallel { sum / n } else { sum };
        head.is_finite().then_some(Length::from_si(head))
    }

    /// As parts of a network, all running.
    pub fn into_pumps(self) -> Vec<FlowPump> {
        self.pumps
            .into_iter()
            .map(|(curve, speed)| FlowPump {
                curve,
                state: PumpState::Running(speed),
                check_valve: None,
            })
            .collect()
    }

    /// Flow at which the set gives a head, by halving; none above shut-off.
    fn flow_at(&self, head: Length) -> Option<VolumeFlow> {
        let (mut low, mut high) = (0.0, 1e-4);
        if self.head(VolumeFlow::ZERO)? < head {
            return None;
        }
        while self.head(VolumeFlow::from_si(high))? > head {
            high *= 2.0;
            if high > 1.0 {
                return None;
            }
        }
        for _ in 0..50 {
            let middle = 0.5 * (low + high);
            if self.head(VolumeFlow::from_si(middle))? > head {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(VolumeFlow::from_si(0.5 * (low + high)))
    }
}

/// Density of what is pumped, and its relative standard uncertainty.
fn density(call: &Call<'_>) -> Option<(Density, f64)> {
    let (temperature, _) = call.loop_temperature();
    let at = call.model.fluid.computable(temperature.value());
    let unknown = if call.model.fluid.kind.is_none() {
        0.02
    } else {
        0.005
    };
    Some((call.fluid().density(at).ok()?, unknown))
}

/// Pressure rise of the set at a flow, with its uncertainty.
fn expected_rise(
    call: &Call<'_>,
    set: &Circulators,
    flow: Uncertain<VolumeFlow>,
) -> Option<Uncertain<PressureDifference>> {
    let (density, unknown) = density(call)?;
    let rise = |flow| set.head(flow).map(|head| head.pressure(density)).ok_or(());
    let by_flow = propagate((flow,), |(flow,)| rise(flow)).ok()?.result;
    let own = by_flow.value().si() * set.spread.hypot(unknown);
    Some(Uncertain::new(
        by_flow.value(),
        by_flow.standard().hypot(own),
    ))
}

fn compared(
    levels: &Levels,
    taken: &Taken,
    expected: Uncertain<PressureDifference>,
    reasoning: Reasoning,
) -> Option<Evaluation> {
    (expected.value().si() > 0.0).then(|| {
        let measured = taken.uncertain();
        Evaluation::of(
            levels,
            Compared::ratio(measured, expected),
            taken,
            Figure::uncertain(measured),
            Figure::uncertain(expected),
            reasoning,
        )
    })
}

fn rise(call: &Call<'_>) -> Vec<Evaluation> {
    let needed = call.model.demand.flow;
    let Some(set) = Circulators::of(call) else {
        return Vec::new();
    };
    let Some(expected) = expected_rise(call, &set, needed) else {
        return Vec::new();
    };
    let known = known_flow(call).and_then(|way| {
        let here = expected_rise(call, &set, way.flow)?;
        let shut = expected_rise(call, &set, Uncertain::exact(VolumeFlow::ZERO))?;
        Some((way, here, shut.value().si()))
    });
    call.by_instrument(ReadingPoint::CirculatorRise, State::Running)
        .iter()
        .filter_map(|taken| {
            let reasoning = Reasoning::new("rise-by-curve", Authority::CommonPractice)
                .with("needed-flow", Figure::uncertain(needed));
            let Some((way, here, shut)) = &known else {
                return compared(&RISE, taken, expected, reasoning);
            };
            let (x, spread) = ratio(
                (taken.si, taken.standard),
                (expected.value().si(), expected.standard()),
            );
            // Under the curve at the known flow: missing. Above the curve at the
            // needed flow: pushed. On the curve at a larger flow: neither.
            let missing = (taken.si - here.value().si()) / shut;
            let doubt = taken.standard.hypot(here.standard()) / shut;
            let value = x.max(1.0) + MISSING_WEIGHT * missing.min(0.0);
            let standard = spread.max(MISSING_WEIGHT * doubt);
            let reasoning = reasoning.with("flow", Figure::uncertain(way.flow));
            let evaluation = Evaluation::of(
                &RISE,
                Compared::Value(value, standard),
                taken,
                Figure::uncertain(taken.uncertain::<PressureDifference>()),
                Figure::uncertain(*here),
                reasoning,
            );
            (shut.is_finite() && *shut > 0.0).then(|| evaluation.using(&way.taken.readings))
        })
        .collect()
}

/// The sharpest flow known otherwise than by the circulators.
pub(super) fn known_flow(call: &Call<'_>) -> Option<Way> {
    super::flow::ways_but_curve(call)
        .filter(|way| way.flow.value().si() > 0.0)
        .min_by(|a, b| a.flow.standard().total_cmp(&b.flow.standard()))
}

fn shut_off(call: &Call<'_>) -> Vec<Evaluation> {
    let Some(set) = Circulators::of(call) else {
        return Vec::new();
    };
    let Some(expected) = expected_rise(call, &set, Uncertain::exact(VolumeFlow::ZERO)) else {
        return Vec::new();
    };
    call.by_instrument(ReadingPoint::ShutOffRise, State::Running)
        .iter()
        .filter_map(|taken| {
            let reasoning = Reasoning::new("shut-off-by-curve", Authority::CommonPractice).with(
                "circulators",
                Figure::exact(Number::from_si(set.pumps.len() as f64)),
            );
            compared(&SHUT_OFF, taken, expected, reasoning)
        })
        .collect()
}

/// Flow by the measured rise on curves that a shut-off test has proven: heads
/// and flows are scaled as by speed, H = k H₁(Q/√k) with k the shut-off rise
/// measured over the published one. Without the test a weak circulator would
/// look like a large flow, so nothing is said.
pub(super) fn flow_by_curve(call: &Call<'_>) -> Option<Way> {
    let set = Circulators::of(call)?;
    let rise = call.best(ReadingPoint::CirculatorRise, State::Running)?;
    let shut = call.best(ReadingPoint::ShutOffRise, State::Running)?;
    let (density, _) = density(call)?;
    let published = set.head(VolumeFlow::ZERO)?.pressure(density).si();
    let flow = |(rise, shut): (PressureDifference, PressureDifference)| {
        let k = (shut.si() / published).clamp(0.05, 2.0);
        let head = PressureDifference::from_si(rise.si() / k).head(density);
        let flow = set.flow_at(head).ok_or(())?;
        Ok::<_, ()>(flow * k.sqrt())
    };
    let inputs = (
        rise.uncertain::<PressureDifference>(),
        shut.uncertain::<PressureDifference>(),
    );
    let result = propagate(inputs, flow).ok()?.result;
    // The shape of the curve is not proven by its end.
    let shape = set.spread * result.value().si();
    let flow = Uncertain::new(result.value(), result.standard().hypot(shape));
    let reasoning = Reasoning::new("flow-by-curve", Authority::CommonPractice)
        .with("circulator-rise", Figure::uncertain(inputs.0))
        .with("shut-off-rise", Figure::uncertain(inputs.1));
    let taken = Taken {
        readings: [rise.readings, shut.readings].concat(),
        ..rise
    };
    flow.standard().is_finite().then_some(Way {
        taken,
        flow,
        reasoning,
        is_by_drop: false,
    })
}

fn power(call: &Call<'_>) -> Vec<Evaluation> {
    let circulators = &call.file.system.circulators;
    let rated: Option<f64> = circulators
        .iter()
        .map(|circulator| circulator.rated_power.map(|power| power.get().si()))
        .sum();
    let Some(rated) = rated.filter(|rated| *rated > 0.0) else {
        return Vec::new();
    };
    // Plates are rounded and voltage varies. Judgement.
    let rated = Uncertain::relative(Power::from_si(rated), 0.07);
    let metered = call.by_instrument(ReadingPoint::CirculatorPower, State::Running);
    // Current says the same once more, and less sharply.
    if metered.is_empty() {
        return by_current(call, rated);
    }
    metered
        .iter()
        .map(|taken| {
            Evaluation::of(
                &POWER,
                Compared::ratio(taken.uncertain(), rated),
                taken,
                super::watts(taken.uncertain()),
                super::watts(rated),
                Reasoning::new("power-by-plate", Authority::Judgement),
            )
        })
        .collect()
}

/// Mains that a circulator may be wired to, V. Common practice, no source.
const MAINS: [f64; 2] = [115.0, 230.0];
/// Power factor of small wet-rotor circulators, and its spread. Judgement.
const POWER_FACTOR: (f64, f64) = (0.9, 0.08);

/// Electric input from the current, P = U I cos φ. Nobody notes the voltage, so
/// that both are possible: only a current that is too small or too large at
/// either says much.
fn by_current(call: &Call<'_>, rated: Uncertain<Power>) -> Vec<Evaluation> {
    let (factor, spread) = POWER_FACTOR;
    let over = |taken: &Taken, volts: f64| {
        let watts = volts * factor * taken.si;
        let standard = (volts * factor * taken.standard).hypot(volts * spread * taken.si);
        Uncertain::new(Power::from_si(watts), standard)
    };
    call.by_instrument(ReadingPoint::CirculatorCurrent, State::Running)
        .iter()
        .filter_map(|taken| {
            let mut weights = [0.0; 3];
            for volts in MAINS {
                let likelihood = Compared::ratio(over(taken, volts), rated).over(&POWER);
                for (sum, weight) in weights.iter_mut().zip(likelihood.weights()) {
                    *sum += weight / MAINS.len() as f64;
                }
            }
            let [low, normal, high] = weights;
            let evaluation = Evaluation::of(
                &POWER,
                Compared::ratio(over(taken, MAINS[0]), rated),
                taken,
                Figure::uncertain(taken.uncertain::<Current>()),
                super::watts(rated),
                Reasoning::new("power-by-current", Authority::Judgement),
            );
            let likelihood = Likelihood::graded(low, normal, high).ok()?;
            Some(Evaluation {
                likelihood,
                ..evaluation
            })
        })
        .collect()
}

fn body(call: &Call<'_>) -> Vec<Evaluation> {
    let (fluid, companions) = call.loop_temperature();
    call.by_instrument(ReadingPoint::CirculatorBodyTemperature, State::Running)
        .iter()
        .map(|taken| {
            let over = propagate(
                (taken.uncertain::<Temperature>(), fluid),
                |(body, fluid)| Ok::<TemperatureDifference, Infallible>(body - fluid),
            );
            let x = match over {
                Ok(over) => Compared::Value(over.result.value().si(), over.result.standard()),
                Err(never) => match never {},
            };
            let usual = TemperatureDifference::from_si(20.0);
            Evaluation::of(
                &BODY,
                x,
                taken,
                Figure::uncertain(taken.uncertain::<Temperature>()),
                Figure::uncertain(Uncertain::new(
                    fluid.value() + usual,
                    fluid.standard().hypot(10.0),
                )),
                Reasoning::new("body-over-fluid", Authority::Judgement)
                    .with("fluid-temperature", Figure::uncertain(fluid)),
            )
            .using(&companions)
        })
        .collect()
}
