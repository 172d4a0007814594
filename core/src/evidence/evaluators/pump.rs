//! The circulators: rise, shut-off, body.

use super::Evaluator;
use super::circulators::{Circulators, density, expected_rise};
use super::flow::{Way, known_flow};
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Compared, Evaluation, ratio};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::records::ReadingPoint;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Number, PressureDifference, Quantity, Temperature, TemperatureDifference, VolumeFlow,
};
use std::convert::Infallible;

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
pub(super) const CIRCULATOR_BODY_HOT: Evaluator = Evaluator {
    name: "circulator-body-hot",
    graded: false,
    reads: &[ReadingPoint::CirculatorBodyTemperature],
    evaluate: body,
};

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
                Figure::exact(Number::from_si(set.count() as f64)),
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
