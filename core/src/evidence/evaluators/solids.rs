//! Strainer and exchanger by their pressure drop.

use super::Evaluator;
use super::flow::{Way, across, exchanger_curve, liquid, possible_fluids, ways};
use crate::evidence::call::{Call, State};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::Fluid;
use crate::hydraulics::component::{CurveTrust, FluidState};
use crate::records::ReadingPoint;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{PressureDifference, Quantity, Unit};

/// Drop across the strainer, psi: a clean one takes some tenths to one psi at
/// the flow of the unit. Common practice, no source; the ranges are judgement.
const STRAINER: Levels = Levels::graded(&[(-4.0, 0.02)], &[(0.0, 1.6)], &[(1.0, 5.0), (4.0, 25.0)]);
const CLEAN_STRAINER_PSI: f64 = 1.0;
/// Drop of the exchanger over that of its curve at a flow known otherwise,
/// within a quarter. Judgement.
const EXCHANGER: Levels = Levels::graded(
    &[(0.0, 0.8)],
    &[(0.82, 1.18), (0.7, 1.31)],
    &[(1.2, 3.0), (2.5, 9.0)],
);

pub(super) const STRAINER_DROP: Evaluator = Evaluator {
    name: "strainer-drop",
    graded: true,
    reads: &[ReadingPoint::StrainerDrop],
    evaluate: strainer,
};
pub(super) const EXCHANGER_DROP: Evaluator = Evaluator {
    name: "exchanger-drop-for-flow",
    graded: true,
    reads: &[ReadingPoint::ExchangerDrop, ReadingPoint::Flow],
    evaluate: exchanger,
};

/// Drop of the exchanger over the rise of the circulators at the same flow: usually a
/// quarter to a half. Common practice, no source; the ranges are judgement.
const SHARE: Levels = Levels::presence(&[(0.15, 0.55), (0.0, 0.68)], &[(0.66, 1.1)]);

/// What needs no curve: where nearly all of the rise is lost in the exchanger, little
/// is left that anything else could hold up.
pub(super) const EXCHANGER_SHARE: Evaluator = Evaluator {
    name: "exchanger-takes-the-head",
    graded: false,
    reads: &[
        ReadingPoint::ExchangerDrop,
        ReadingPoint::CirculatorRise,
        ReadingPoint::ShutOffRise,
    ],
    evaluate: share,
};

fn share(call: &Call<'_>) -> Vec<Evaluation> {
    let evaluated = || {
        let drop = call.best(ReadingPoint::ExchangerDrop, State::Running)?;
        // With the discharge shut the rise is at its most: the share at least this.
        let rise = call
            .best(ReadingPoint::CirculatorRise, State::Running)
            .or_else(|| call.best(ReadingPoint::ShutOffRise, State::Running))?;
        let measured = drop.uncertain::<PressureDifference>();
        let of = rise.uncertain::<PressureDifference>();
        let reasoning = Reasoning::new("share-of-rise", Authority::CommonPractice)
            .with("circulator-rise", Figure::uncertain(of));
        let usual = Uncertain::relative(of.value() * 0.4, 0.3);
        let evaluation = Evaluation::of(
            &SHARE,
            Compared::ratio(measured, of),
            &drop,
            Figure::uncertain(measured),
            Figure::uncertain(usual),
            reasoning,
        );
        (of.value().si() > 0.0).then(|| evaluation.using(&rise.readings))
    };
    evaluated().into_iter().collect()
}

fn strainer(call: &Call<'_>) -> Vec<Evaluation> {
    if call.file.system.strainer == Some(false) {
        return Vec::new();
    }
    let clean = PressureDifference::from_si(Unit::Psi.to_si(CLEAN_STRAINER_PSI));
    call.by_instrument(ReadingPoint::StrainerDrop, State::Running)
        .iter()
        .map(|taken| {
            Evaluation::of(
                &STRAINER,
                Compared::Value(
                    Unit::Psi.from_si(taken.si),
                    Unit::Psi.from_si(taken.standard),
                ),
                taken,
                Figure::uncertain(taken.uncertain::<PressureDifference>()),
                Figure::exact(clean),
                Reasoning::new("clean-strainer", Authority::CommonPractice),
            )
        })
        .collect()
}

fn exchanger(call: &Call<'_>) -> Vec<Evaluation> {
    // Any way to the flow but the drop itself.
    let independent = ways(call)
        .into_iter()
        .filter(|way| !way.is_by_drop)
        .min_by(|a, b| relative(a).total_cmp(&relative(b)));
    let Some(way) = independent else {
        return Vec::new();
    };
    let Some(expected) = expected_drop(call, &way) else {
        return Vec::new();
    };
    call.by_instrument(ReadingPoint::ExchangerDrop, State::Running)
        .iter()
        .map(|taken| {
            let measured = taken.uncertain::<PressureDifference>();
            let reasoning = Reasoning::new("drop-by-curve", Authority::CommonPractice)
                .with("flow", Figure::uncertain(way.flow));
            Evaluation::of(
                &EXCHANGER,
                Compared::ratio(measured, expected),
                taken,
                Figure::uncertain(measured),
                Figure::uncertain(expected),
                reasoning,
            )
            .using(&way.taken.readings)
        })
        .collect()
}

fn relative(way: &Way) -> f64 {
    way.flow.standard() / way.flow.value().si().abs().max(1e-9)
}

/// Drop of a clean exchanger at the flow, over the fluids it may be.
pub(super) fn expected_drop(call: &Call<'_>, way: &Way) -> Option<Uncertain<PressureDifference>> {
    let curve = exchanger_curve(call)?;
    let (temperature, _) = call.loop_temperature();
    let trust = CurveTrust::default();
    let drops: Vec<Uncertain<PressureDifference>> = possible_fluids(call)
        .into_iter()
        .filter_map(|(kind, w)| {
            let solution = Fluid::new(kind, w.value()).ok()?;
            let inputs = (way.flow, liquid(solution, temperature), w);
            let by_flow = propagate(inputs, |(flow, t, w)| {
                let state = FluidState::of(Fluid::new(kind, w)?, t)?;
                Ok::<_, crate::fluids::FluidError>(curve.pressure_drop(flow, state))
            });
            let drop = by_flow.ok()?.result;
            // The viscosity enters with 2 less the exponent, which is about 0.2.
            let own = trust
                .drop
                .hypot(trust.exponent)
                .hypot(0.2 * solution.spread().viscosity);
            let standard = drop.standard().hypot(own * drop.value().si());
            Some(Uncertain::new(drop.value(), standard))
        })
        .collect();
    across(&drops).filter(|drop| drop.value().si() > 0.0)
}
