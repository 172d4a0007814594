//! Freeze point to reach, and what to drain and add for it.

use super::{Known, Lack, QuantityKind as Q, Remark, Sheet};
use crate::charge::{ChargeError, FREEZE_MARGIN, Measured, Product, adjust_measured, target};
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::{Fluid, FluidKind};
use crate::model::Concentration;
use crate::records::{OperatingMode, ReadingPoint};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{Fraction, Quantity, Temperature, TemperatureDifference};
use std::convert::Infallible;

/// Lowest entering water of a season that nobody logged, °C: 25 to 35 °F in a
/// loop of usual size. Common practice, no source.
const USUAL_LOWEST_ENTERING: f64 = -1.0;
const USUAL_LOWEST_SPREAD: f64 = 2.5;
/// How far below the freeze point to reach a fluid is needlessly strong, K.
/// Judgement.
const TOO_STRONG: f64 = 10.0 / 1.8;
/// 95 % of a normal distribution lie below so many standard uncertainties.
const ONE_SIDED: f64 = 1.645;
/// Strength of an alcohol premix, by volume. Judgement: stated beside the dose.
const PREMIX: f64 = 0.5;

/// A freeze point and the water that it is too near to.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Freezing {
    /// Freeze point that was measured.
    pub at: Uncertain<Temperature>,
    /// Water that leaves the heat pump, or must be reckoned with.
    pub leaving: Uncertain<Temperature>,
}

/// Whether the fluid that was measured may freeze where the water leaves: by the readings
/// of both as well as they are known, or because it freezes above the lowest water that
/// must be reckoned with. None where it does not, for plain water, and without a sample
/// read by an instrument that can tell this fluid.
pub fn may_freeze(known: &Known<'_>) -> Option<Freezing> {
    let kind = known
        .model
        .fluid
        .kind
        .filter(|kind| *kind != FluidKind::Water)?;
    if known.model.fluid.concentration != Concentration::Measured {
        return None;
    }
    let at = freezing_as_met(known, kind);
    let read = known.read_in(ReadingPoint::LeavingWater, OperatingMode::Heating);
    let too_near = |leaving: &Uncertain<Temperature>| {
        let doubt = at.standard().hypot(leaving.standard());
        at.value().si() + ONE_SIDED * doubt >= leaving.value().si()
    };
    if let Some(leaving) = read.filter(too_near) {
        return Some(Freezing { at, leaving });
    }
    if let Some(asked) = known.file.visit.means.wanted_freeze_point {
        // What was asked for lies the margin below the water that was reckoned with.
        let leaving = asked.get() + TemperatureDifference::from_si(FREEZE_MARGIN);
        let leaving = Uncertain::exact(leaving);
        return (at.value() >= leaving.value()).then_some(Freezing { at, leaving });
    }
    let heats = super::running::mode(known) == OperatingMode::Heating;
    let (leaving, _) = reckoned_leaving(known);
    (heats && at.value() >= leaving.value()).then_some(Freezing { at, leaving })
}

pub(super) fn compute(known: &Known<'_>, sheet: &mut Sheet) {
    if let Some(Freezing { at, leaving }) = may_freeze(known) {
        sheet.remarks.push(Remark::FreezesWhereItLeaves {
            freezes: Figure::uncertain(at),
            leaving: Figure::uncertain(leaving),
        });
    }
    let leaving = lowest_leaving(known, sheet);
    let wanted = wanted(known, leaving, sheet);
    let floor = wanted - TemperatureDifference::from_si(TOO_STRONG);
    sheet.add(
        Q::FreezePointFloor,
        Figure::exact(floor),
        Reasoning::new("plan-freeze-point-floor", Authority::Judgement)
            .with("plan-target-freeze-point", Figure::exact(wanted)),
    );
    let doses = [Q::AntifreezeDose, Q::DrainVolume, Q::DilutionVolume];
    let kind = match known.model.fluid.kind {
        Some(kind) if kind != FluidKind::Water => kind,
        Some(_) => {
            sheet.lack(&doses, Lack::NothingToDo);
            return;
        }
        None => {
            sheet.lack(&doses, Lack::FluidKind);
            return;
        }
    };
    if !known.refilled && known.model.fluid.concentration == Concentration::Assumed {
        sheet.lack(&doses, Lack::FreezePointSample);
        return;
    }
    let no_margin = TemperatureDifference::ZERO;
    let Ok(solution) = target(kind, wanted, no_margin) else {
        sheet.lack(&doses, Lack::OutsideModel);
        return;
    };
    let now = freezing_now(known, kind);
    strengthen(known, kind, solution, now, sheet);
    let diluted = Product::water()
        .and_then(|water| adjust_measured(known.model.piping.volume, now, kind, solution, &water));
    match diluted {
        Ok(plan) if plan.plan.drain.si() > 0.0 => {
            let why = reasoning("plan-dilution", known, now, solution);
            sheet.add(Q::DilutionVolume, Figure::uncertain(plan.drain.result), why);
        }
        other => sheet.lack(&doses[2..], why_not(known, other)),
    }
}

/// That nothing is to be done takes a sample: what was written down, or dosed,
/// is what may be wrong.
fn why_not(known: &Known<'_>, result: Result<Measured, ChargeError>) -> Lack {
    let sampled = known.model.fluid.concentration == Concentration::Measured;
    match result {
        Ok(_) | Err(ChargeError::ProductCannotReach) if known.refilled || sampled => {
            Lack::NothingToDo
        }
        Ok(_) | Err(ChargeError::ProductCannotReach) => Lack::FreezePointSample,
        Err(_) => Lack::OutsideModel,
    }
}

fn strengthen(
    known: &Known<'_>,
    kind: FluidKind,
    solution: Fluid,
    now: Uncertain<Temperature>,
    sheet: &mut Sheet,
) {
    let strength = if kind.is_flammable() { PREMIX } else { 1.0 };
    let product = Product::by_volume(kind, Fraction::from_si(strength));
    let dosed = product.and_then(|product| {
        adjust_measured(known.model.piping.volume, now, kind, solution, &product)
    });
    match dosed {
        Ok(plan) if plan.plan.add.si() > 0.0 => {
            sheet.remarks.push(Remark::ProductAssumed);
            let why = |formula| {
                reasoning(formula, known, now, solution).with(
                    "plan-product-strength",
                    Figure::exact(Fraction::from_si(strength)),
                )
            };
            let (add, drain) = (plan.add.result, plan.drain.result);
            sheet.add(Q::AntifreezeDose, Figure::uncertain(add), why("plan-dose"));
            sheet.add(Q::DrainVolume, Figure::uncertain(drain), why("plan-drain"));
        }
        other => sheet.lack(&[Q::AntifreezeDose, Q::DrainVolume], why_not(known, other)),
    }
}

fn reasoning(
    formula: &'static str,
    known: &Known<'_>,
    now: Uncertain<Temperature>,
    solution: Fluid,
) -> Reasoning {
    Reasoning::new(formula, Authority::Published("melinder-2010"))
        .with(
            "plan-loop-volume",
            Figure::uncertain(known.model.piping.volume),
        )
        .with("plan-freeze-point-now", Figure::uncertain(now))
        .with(
            "plan-strength-after",
            Figure::exact(solution.volume_fraction()),
        )
}

/// Freeze point of what is in the loop before the dose.
fn freezing_now(known: &Known<'_>, kind: FluidKind) -> Uncertain<Temperature> {
    match known.refilled {
        true => Uncertain::exact(Fluid::WATER.freezing_point()),
        false => freezing_as_met(known, kind),
    }
}

/// Freeze point of what is in the loop as it was met.
fn freezing_as_met(known: &Known<'_>, kind: FluidKind) -> Uncertain<Temperature> {
    let at = |fraction: Fraction| -> Result<Temperature, Infallible> {
        let fraction = Fraction::from_si(fraction.si().clamp(0.0, 0.6));
        let fluid = Fluid::from_volume_fraction(kind, fraction);
        Ok(fluid.map_or(Fluid::WATER.freezing_point(), Fluid::freezing_point))
    };
    let inputs = (known.model.fluid.volume_fraction,);
    match propagate(inputs, |(fraction,)| at(fraction)) {
        Ok(propagated) => propagated.result,
        Err(never) => match never {},
    }
}

/// The lowest water that will leave the heat pump.
fn lowest_leaving(known: &Known<'_>, sheet: &mut Sheet) -> Uncertain<Temperature> {
    let (lowest, why) = reckoned_leaving(known);
    // What is reckoned with is one number, too: how far it is known is told beside it.
    sheet.add(Q::LowestLeavingWater, Figure::exact(lowest.value()), why);
    let logged = known.read::<Temperature>(ReadingPoint::LowestEnteringWater);
    if known.conditions.lowest_leaving.is_none() && logged.is_none() {
        let entering = Temperature::from_celsius(USUAL_LOWEST_ENTERING);
        sheet.remarks.push(Remark::LowestEnteringAssumed {
            entering: Figure::exact(entering),
        });
    }
    // A limit is one number: that with which the dose reckons. What it may be off is
    // covered by the margin between it and the freeze point. In cooling the water leaves
    // warmer than it comes, and freezing is no question.
    if super::running::mode(known) == OperatingMode::Cooling {
        sheet.lack(&[Q::LeavingWaterLimit], Lack::Cooling);
    } else {
        let why = Reasoning::new("plan-leaving-water-limit", Authority::CommonPractice)
            .with("plan-lowest-leaving-water", Figure::uncertain(lowest));
        sheet.add(Q::LeavingWaterLimit, Figure::exact(lowest.value()), why);
    }
    lowest
}

/// The same, with its reasons.
fn reckoned_leaving(known: &Known<'_>) -> (Uncertain<Temperature>, Reasoning) {
    let demand = &known.model.demand;
    if let Some(given) = known.conditions.lowest_leaving {
        let why = Reasoning::new("plan-lowest-leaving-known", Authority::CommonPractice);
        (given, why)
    } else {
        let logged = known.read(ReadingPoint::LowestEnteringWater);
        let entering = logged.unwrap_or(Uncertain::new(
            Temperature::from_celsius(USUAL_LOWEST_ENTERING),
            USUAL_LOWEST_SPREAD,
        ));
        let change = super::running::change(known, demand.extraction, OperatingMode::Heating);
        let spread = entering.standard().hypot(change.standard());
        let why = Reasoning::new("plan-lowest-leaving", Authority::CommonPractice)
            .with("plan-lowest-entering", Figure::uncertain(entering))
            .with("plan-water-change", Figure::uncertain(change));
        (
            Uncertain::new(entering.value() - change.value(), spread),
            why,
        )
    }
}

/// The freeze point to reach: what was asked for, or the trade's margin below
/// the lowest leaving water.
fn wanted(known: &Known<'_>, leaving: Uncertain<Temperature>, sheet: &mut Sheet) -> Temperature {
    let (wanted, why) = match known.file.visit.means.wanted_freeze_point {
        Some(asked) => (
            asked.get(),
            Reasoning::new("plan-freeze-point-asked", Authority::CommonPractice),
        ),
        None => {
            let margin = TemperatureDifference::from_si(FREEZE_MARGIN);
            let why = Reasoning::new("plan-target-freeze-point", Authority::CommonPractice)
                .with("plan-lowest-leaving-water", Figure::uncertain(leaving))
                .with("plan-freeze-margin", Figure::exact(margin));
            (leaving.value() - margin, why)
        }
    };
    sheet.add(Q::TargetFreezePoint, Figure::exact(wanted), why);
    wanted
}
