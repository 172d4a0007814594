//! A step of the library as it stands in a plan: with what applies to this system, and with
//! its own limits.

use super::gather::Gathered;
use super::{AssembleError, Situation};
use crate::figures::Figure;
use crate::plan::id::{CautionId, StepId};
use crate::plan::library::{Criterion, Library, Looked, Origin, Step, Timer};
use crate::plan::quantity::{Lack, Lacking, QuantityKind, Sheet};
use crate::plan::terms::Hazard;
use crate::plan::work::{Basis, Condition, Gate, Limit, PlannedStep, PlannedTimer};
use crate::records::{ReadingKind, ReadingPoint};
use std::collections::BTreeMap;

pub(super) fn planned(
    library: &Library,
    gathered: &Gathered<'_>,
    number: usize,
    numbers: &BTreeMap<&StepId, usize>,
    situation: &Situation,
    sheet: &Sheet,
) -> Result<PlannedStep, AssembleError> {
    let step = gathered.step;
    let possible = |hazard: &Hazard| {
        situation
            .fluid
            .is_none_or(|fluid| hazard.possible_with(fluid))
    };
    let hazards: Vec<Hazard> = step.hazards.iter().copied().filter(possible).collect();
    let cautions: Vec<CautionId> = step
        .cautions
        .iter()
        .filter(|id| {
            library.caution(id).is_none_or(|caution| {
                caution
                    .hazards
                    .iter()
                    .any(|hazard| hazards.contains(hazard))
            })
        })
        .cloned()
        .collect();
    Ok(PlannedStep {
        number,
        id: step.id.clone(),
        stage: step.stage,
        side: step.side,
        serves: gathered.serves.clone(),
        hazards,
        cautions,
        acknowledge: step.acknowledge,
        condition: match step.only.applies(situation) {
            Some(_) => None,
            None => Some(Condition {
                flow_centres: match situation.flow_centre.is_among(&step.only.flow_centres) {
                    Some(_) => Vec::new(),
                    None => situation.flow_centre.possible(&step.only.flow_centres),
                },
                with_antifreeze: step.only.with_antifreeze && situation.fluid.is_none(),
            }),
        },
        tools: step.tools.clone(),
        materials: step.materials.clone(),
        timers: step
            .timers
            .iter()
            .filter(|timer| can_run(timer, sheet))
            .map(|timer| planned_timer(timer, sheet))
            .collect(),
        quantities: step.quantities.clone(),
        gate: step
            .gate
            .iter()
            .map(|criterion| gate(step, criterion, number, numbers, sheet))
            .collect::<Result<_, _>>()?,
    })
}

fn gate(
    step: &Step,
    criterion: &Criterion,
    number: usize,
    numbers: &BTreeMap<&StepId, usize>,
    sheet: &Sheet,
) -> Result<Gate, AssembleError> {
    let return_to = criterion
        .return_to
        .iter()
        .filter_map(|id| numbers.get(id).copied())
        .find(|back| *back < number)
        .ok_or_else(|| AssembleError::NoWayBack {
            step: step.id.clone(),
        })?;
    let limit = computed(sheet, criterion.quantity)
        .unwrap_or_else(|| usual(criterion.fallback, &criterion.origin, criterion.quantity));
    Ok(Gate {
        looked: criterion.looked,
        rule: criterion.rule,
        limit: match criterion.looked {
            Looked::Reading(point) => borne(point, limit, sheet),
            Looked::Observation(_) => limit,
        },
        return_to,
    })
}

/// The computed limit, if there is one.
pub(super) fn computed(sheet: &Sheet, quantity: Option<QuantityKind>) -> Option<Limit> {
    let kind = quantity?;
    sheet.get(kind).map(|computed| Limit {
        value: computed.figure,
        basis: Basis::Computed(kind),
    })
}

fn fixed(value: Figure, origin: &Origin) -> Limit {
    Limit {
        value,
        basis: Basis::Fixed(origin.clone()),
    }
}

/// A figure of the trade, in the place of what could not be computed if anything could.
pub(super) fn usual(value: Figure, origin: &Origin, instead_of: Option<QuantityKind>) -> Limit {
    match instead_of {
        None => fixed(value, origin),
        Some(kind) => Limit {
            value,
            basis: Basis::Usual(origin.clone(), kind),
        },
    }
}

/// The rating of the weakest part, where a limit of the pressure read at this point
/// would be above it.
pub(super) fn rating(point: ReadingPoint, limit: &Limit, sheet: &Sheet) -> Option<Limit> {
    let rating = computed(sheet, Some(QuantityKind::LowestRating))?;
    let read = point.kind() == ReadingKind::GaugePressure;
    (read && limit.value.si > rating.value.si).then_some(rating)
}

/// A limit that never asks for more pressure than the weakest part bears.
pub(super) fn borne(point: ReadingPoint, limit: Limit, sheet: &Sheet) -> Limit {
    rating(point, &limit, sheet).unwrap_or(limit)
}

/// Whether a watch would show anything: not where hardly anything stands on the gauge.
fn can_run(timer: &Timer, sheet: &Sheet) -> bool {
    let too_low = |lacking: &Lacking| {
        timer.quantity == Some(lacking.kind) && lacking.lack == Lack::GaugeTooLow
    };
    !sheet.lacking.iter().any(too_low)
}

/// The computed time, unless the least time is longer.
fn planned_timer(timer: &Timer, sheet: &Sheet) -> PlannedTimer {
    let least = Figure::exact(timer.least);
    PlannedTimer {
        kind: timer.kind,
        time: match computed(sheet, timer.quantity) {
            None => usual(least, &timer.origin, timer.quantity),
            Some(limit) if limit.value.si >= least.si => limit,
            Some(_) => fixed(least, &timer.origin),
        },
    }
}
