//! The dead-head test of this loop with this tank.

use super::{Known, Lack, QuantityKind as Q, Sheet};
use crate::figures::{Authority, Figure, Reasoning};
use crate::hydraulics::elastic::{MODULUS_TEMPERATURE, poisson_ratio, short_term_modulus};
use crate::hydraulics::purge::{ALLOWED_AIR, DeadHeadTest, PipeVolume, TankStep, dead_head};
use crate::uncertainty::Uncertain;
use crate::units::{Area, Fraction, GaugePressure, Length, Number, Quantity, Unit, Volume};

/// Pressure while the cart circulates and with the return shut, psi, where the
/// cart is not known: those of the trade's example. Common practice, no source.
const BEFORE_PSI: f64 = 10.0;
const AFTER_PSI: f64 = 50.0;
/// Standard uncertainty of the two pressures, psi. Judgement: a dial gauge.
const GAUGE_PSI: f64 = 1.0;
/// Relative uncertainty of the area of a round tank. Judgement.
const AREA_SPREAD: f64 = 0.03;

pub(super) fn compute(known: &Known<'_>, sheet: &mut Sheet) {
    let psi = |value: f64| GaugePressure::from_si(Unit::Psi.to_si(value));
    let rating = sheet.si(Q::LowestRating).unwrap_or(psi(AFTER_PSI).si());
    let after = GaugePressure::from_si(psi(AFTER_PSI).si().min(rating));
    sheet.add(
        Q::DeadHeadPressure,
        Figure::exact(after),
        Reasoning::new("plan-dead-head-pressure", Authority::CommonPractice).with(
            "plan-lowest-rating",
            Figure::exact(GaugePressure::from_si(rating)),
        ),
    );
    let allowed = known.model.piping.volume.value() * ALLOWED_AIR;
    sheet.add(
        Q::DeadHeadAir,
        Figure::exact(allowed),
        Reasoning::new("plan-dead-head-air", Authority::Judgement).with(
            "plan-loop-volume",
            Figure::uncertain(known.model.piping.volume),
        ),
    );
    let cart = known.file.visit.means.cart.as_ref();
    let Some(diameter) = cart.and_then(|cart| cart.reservoir_diameter) else {
        sheet.lack(&[Q::DeadHeadLimit], Lack::CartTank);
        return;
    };
    let Some(test) = test(known, diameter.get().circle(), psi(BEFORE_PSI), after) else {
        sheet.lack(&[Q::DeadHeadLimit], Lack::OutsideModel);
        return;
    };
    let Ok(judged) = dead_head(&test) else {
        sheet.lack(&[Q::DeadHeadLimit], Lack::OutsideModel);
        return;
    };
    let inches = |length: Uncertain<Length>| {
        Figure::uncertain(length).shown_in(Unit::Inch, Unit::Centimetre)
    };
    let reasoning = Reasoning::new("plan-dead-head-limit", Authority::Published("elasticity"))
        .with(
            "plan-loop-volume",
            Figure::uncertain(known.model.piping.volume),
        )
        .with("plan-pressure-before", Figure::uncertain(test.before))
        .with("plan-pressure-after", Figure::uncertain(test.after))
        .with("plan-tank-diameter", Figure::written(diameter))
        .with("plan-drop-without-air", inches(judged.drop_without_air))
        .with("plan-air-allowed", Figure::exact(allowed));
    sheet.add(Q::DeadHeadLimit, inches(judged.pass_limit), reasoning);
}

fn test(
    known: &Known<'_>,
    area: Area,
    before: GaugePressure,
    after: GaugePressure,
) -> Option<DeadHeadTest> {
    let piping = &known.model.piping;
    let total = piping.volume;
    let relative = total.standard() / total.value().si();
    let part = |volume: Volume, ratio: Option<Number>| PipeVolume {
        volume: Uncertain::relative(volume, relative),
        diameter_ratio: ratio,
    };
    let rigid = (total.value() - piping.plastic_volume).si().max(0.0);
    let ratio = Number::from_si(piping.diameter_ratio);
    let mut pipes = vec![part(piping.plastic_volume, Some(ratio))];
    if rigid > 0.0 {
        pipes.push(part(Volume::from_si(rigid), None));
    }
    let temperature = known.computable().value();
    // The table of moduli ends where a loop never is in service.
    let pipe_temperature = if MODULUS_TEMPERATURE.contains(temperature) {
        temperature
    } else {
        MODULUS_TEMPERATURE.min()
    };
    let ground = known.file.system.ground.as_ref();
    let unknowns = known.model.unknowns(ground.and_then(|ground| ground.kind));
    let free = Fraction::from_si(1.0) - unknowns.restraint.value();
    let gauge = Unit::Psi.to_si(GAUGE_PSI);
    Some(DeadHeadTest {
        tank: TankStep {
            drop: Uncertain::exact(Length::ZERO),
            area: Uncertain::relative(area, AREA_SPREAD),
        },
        pipes,
        before: Uncertain::new(before, gauge),
        after: Uncertain::new(after, gauge),
        atmosphere: known.model.atmosphere,
        fluid: known.model.fluid.solution(),
        temperature,
        modulus: short_term_modulus(pipe_temperature).ok()?,
        poisson: poisson_ratio(),
        freedom: Uncertain::new(free, unknowns.restraint.standard()),
        allowed_air: Fraction::from_si(ALLOWED_AIR),
    })
}
