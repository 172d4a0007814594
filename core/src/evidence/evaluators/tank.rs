//! Expansion tank, vented reservoir, and fluid that went missing.

use super::Evaluator;
use crate::evidence::call::{Call, State};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::hydraulics::elastic::Axial;
use crate::pressure::level::{OpenLoop, level_change};
use crate::records::{FlowCentre, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, GaugePressure, Length, Quantity, Temperature, Unit, Volume};

/// Pre-charge less the one that was set, psi. Judgement.
const PRE_CHARGE: Levels = Levels::graded(&[(-80.0, -3.0)], &[(-4.5, 4.5)], &[(3.0, 60.0)]);
/// Pre-charge that a tank is set to when nobody noted it, psi, loosely. Common
/// practice, no source.
const USUAL_PRE_CHARGE_PSI: (f64, f64) = (18.0, 8.0);
/// The same under the pressure that the loop was filled to, where that was noted: the
/// tank is to hold a little fluid, and is set a few psi below. Common practice, no
/// source; its spread is judgement.
const PRE_CHARGE_BELOW_FILL_PSI: (f64, f64) = (4.0, 4.0);

pub(super) const TANK_PRE_CHARGE: Evaluator = Evaluator {
    name: "tank-pre-charge",
    graded: true,
    reads: &[ReadingPoint::TankPreCharge],
    evaluate: pre_charge,
};

fn pre_charge(call: &Call<'_>) -> Vec<Evaluation> {
    let set = match &call.model.flow_centre {
        Some(FlowCentre::SealedWithTank { pre_charge, .. }) => {
            pre_charge.as_ref().map(|set| set.get())
        }
        Some(FlowCentre::Sealed {} | FlowCentre::NonPressurised { .. }) | None => None,
    };
    let psi = |(value, spread): (f64, f64)| {
        let value = GaugePressure::from_si(Unit::Psi.to_si(value));
        Uncertain::new(value, Unit::Psi.to_si(spread))
    };
    let filled = call.file.commissioning.charge_pressure;
    let expected = match (set, filled) {
        (Some(set), _) => Uncertain::new(set, Unit::Psi.to_si(1.0)),
        (None, Some(filled)) => {
            let (below, spread) = PRE_CHARGE_BELOW_FILL_PSI;
            psi((Unit::Psi.from_si(filled.get().si()) - below, spread))
        }
        (None, None) => psi(USUAL_PRE_CHARGE_PSI),
    };
    call.by_instrument(ReadingPoint::TankPreCharge, State::Any)
        .iter()
        .map(|taken| {
            let away = Unit::Psi.from_si(taken.si - expected.value().si());
            let spread = Unit::Psi.from_si(taken.standard.hypot(expected.standard()));
            Evaluation::of(
                &PRE_CHARGE,
                Compared::Value(away, spread),
                taken,
                Figure::uncertain(taken.uncertain::<GaugePressure>()),
                Figure::uncertain(expected),
                Reasoning::new("pre-charge-as-set", Authority::CommonPractice),
            )
        })
        .collect()
}

/// Level less the one that the temperature explains, in: within three inches,
/// which come and go with the seasons (common practice, no source).
const LEVEL: Levels = Levels::graded(
    &[(-12.0, -2.4), (-60.0, -6.0)],
    &[(-3.6, 3.6)],
    &[(2.4, 30.0)],
);
/// The swing where the loop or the reservoir is not known, in.
const USUAL_SWING_IN: f64 = 2.0;

pub(super) const RESERVOIR_LEVEL: Evaluator = Evaluator {
    name: "reservoir-level",
    graded: true,
    reads: &[ReadingPoint::ReservoirLevelChange],
    evaluate: reservoir,
};

fn reservoir(call: &Call<'_>) -> Vec<Evaluation> {
    let unknown = Uncertain::new(Length::ZERO, Unit::Inch.to_si(USUAL_SWING_IN));
    let expected = expected_level(call).unwrap_or(unknown);
    let inches = |figure: Figure| figure.shown_in(Unit::Inch, Unit::Millimetre);
    let (now, companions) = call.loop_temperature();
    call.by_instrument(ReadingPoint::ReservoirLevelChange, State::Any)
        .iter()
        .map(|taken| {
            let away = Unit::Inch.from_si(taken.si - expected.value().si());
            let spread = Unit::Inch.from_si(taken.standard.hypot(expected.standard()));
            let reasoning = Reasoning::new("level-by-temperature", Authority::CommonPractice)
                .with("charge-temperature", Figure::uncertain(filled_at(call)))
                .with("loop-temperature", Figure::uncertain(now));
            Evaluation::of(
                &LEVEL,
                Compared::Value(away, spread),
                taken,
                inches(Figure::uncertain(taken.uncertain::<Length>())),
                inches(Figure::uncertain(expected)),
                reasoning,
            )
            .using(&companions)
        })
        .collect()
}

fn filled_at(call: &Call<'_>) -> Uncertain<Temperature> {
    let record = &call.file.commissioning;
    match record.charge_temperature {
        Some(written) => Uncertain::new(written.get(), 2.0),
        None => {
            let day = record.charged_on();
            let season = day.and_then(crate::evidence::season::by_date);
            crate::evidence::call::guess(season)
        }
    }
}

/// Level change that the temperature explains since the fill.
fn expected_level(call: &Call<'_>) -> Option<Uncertain<Length>> {
    let Some(FlowCentre::NonPressurised {
        reservoir_diameter: Some(diameter),
    }) = &call.model.flow_centre
    else {
        return None;
    };
    let piping = &call.model.piping;
    let unknowns = super::pressure::unknowns(call);
    let relative = piping.volume.standard() / piping.volume.value().si();
    let rigid = (piping.volume.value() - piping.plastic_volume)
        .si()
        .max(0.0);
    let system = OpenLoop {
        plastic: Uncertain::relative(piping.plastic_volume, relative),
        rigid: Volume::from_si(rigid),
        fluid: call.fluid(),
        axial: Axial::Held,
        expansion: unknowns.expansion,
        restraint: unknowns.restraint,
        surface: diameter.get().circle(),
    };
    let liquid = |t: Uncertain<Temperature>| {
        Uncertain::new(call.model.fluid.computable(t.value()), t.standard())
    };
    let now = liquid(call.loop_temperature().0);
    let change = level_change(&system, liquid(filled_at(call)), now)
        .ok()?
        .result;
    change.standard().is_finite().then_some(change)
}

/// Fluid added over what the loop holds. The stretch of a tight polyethylene
/// loop that relaxes from 50 psi takes up some half a percent: derived from the
/// pipe's compliance at the moduli of the PPI handbook, table B.1.1. The
/// overlap is judgement.
const LOST: Levels = Levels::presence(&[(0.0, 0.011)], &[(0.007, 0.04), (0.02, 0.5)]);
/// That half percent, and how loosely it is known.
const RELAXATION_SHARE: (f64, f64) = (0.005, 0.003);

pub(super) const FLUID_LOST: Evaluator = Evaluator {
    name: "fluid-lost",
    graded: false,
    reads: &[ReadingPoint::TopUpVolume],
    evaluate: lost,
};

fn lost(call: &Call<'_>) -> Vec<Evaluation> {
    let holds = call.model.piping.volume;
    let (share, spread) = RELAXATION_SHARE;
    call.by_instrument(ReadingPoint::TopUpVolume, State::Any)
        .iter()
        .map(|taken| {
            let added: Uncertain<Volume> = taken.uncertain();
            let takes = Uncertain::new(holds.value() * share, holds.value().si() * spread);
            let reasoning =
                Reasoning::new("added-over-volume", Authority::Published("ppi-handbook"))
                    .with("loop-volume", Figure::uncertain(holds))
                    .with(
                        "relaxation-share",
                        Figure::uncertain(Uncertain::new(Fraction::from_si(share), spread)),
                    );
            Evaluation::of(
                &LOST,
                Compared::ratio(added, holds),
                taken,
                Figure::uncertain(added),
                Figure::uncertain(takes),
                reasoning,
            )
        })
        .collect()
}
