//! What the heat pump asks of the loop.

use super::Assumption;
use crate::records::System;
use crate::uncertainty::Uncertain;
use crate::units::{Power, Quantity, Unit, VolumeFlow};

/// Flow per ton of capacity, gpm: 3, between 2.25 and 3.5.
/// Common practice, no source.
const FLOW_PER_TON_GPM: f64 = 3.0;
const FLOW_PER_TON_SPREAD: f64 = 0.12;
/// A flow that the unit's instructions name is still a flow chosen for comfort
/// of the unit: a few per cent either way mean nothing. Judgement.
const RATED_FLOW_SPREAD: f64 = 0.03;
/// Capacity of a home whose unit nobody noted, tons. Judgement.
const UNKNOWN_CAPACITY_TON: f64 = 4.0;
const UNKNOWN_CAPACITY_SPREAD: f64 = 0.45;
/// How far capacity at the day's temperatures strays from the rated one. Judgement.
const CAPACITY_SPREAD: f64 = 0.12;
/// Usual ground-loop ratings. Judgement, near common nameplates.
const USUAL_HEATING_COP: f64 = 3.6;
const USUAL_COOLING_COP: f64 = 4.8;
/// Whatever is written, a heat pump draws something from the ground. Judgement.
const LEAST_COP: f64 = 1.2;

/// What the heat pump asks of the loop.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Demand {
    /// Capacity that sizes flow and loop.
    pub capacity: Uncertain<Power>,
    /// Flow needed.
    pub flow: Uncertain<VolumeFlow>,
    /// Flow below which the unit must not run, if known.
    pub least_flow: Option<VolumeFlow>,
    /// Heat of extraction when heating at full load.
    pub extraction: Uncertain<Power>,
    /// Heat of rejection when cooling at full load.
    pub rejection: Uncertain<Power>,
}

impl Demand {
    pub(super) fn of(system: &System, assumptions: &mut Vec<Assumption>) -> Self {
        let unit = system.heat_pump.as_ref();
        let heating = unit
            .and_then(|unit| unit.heating_capacity)
            .map(|power| power.get());
        let cooling = unit
            .and_then(|unit| unit.cooling_capacity)
            .map(|power| power.get());
        let capacity = match (cooling, heating) {
            (Some(known), _) | (None, Some(known)) => Uncertain::relative(known, CAPACITY_SPREAD),
            (None, None) => {
                assumptions.push(Assumption::CapacityUnknown);
                let guess = Power::from_si(Unit::Ton.to_si(UNKNOWN_CAPACITY_TON));
                Uncertain::relative(guess, UNKNOWN_CAPACITY_SPREAD)
            }
        };
        let cop = |written: Option<crate::units::Measure<crate::units::Number>>, usual: f64| {
            written.map_or(usual, |cop| cop.get().si().max(LEAST_COP))
        };
        let heating_cop = cop(unit.and_then(|unit| unit.heating_cop), USUAL_HEATING_COP);
        let cooling_cop = cop(unit.and_then(|unit| unit.cooling_cop), USUAL_COOLING_COP);
        if unit.is_none_or(|unit| unit.heating_cop.is_none() && unit.cooling_cop.is_none()) {
            assumptions.push(Assumption::EfficiencyUsual);
        }
        let base = |own: Option<Power>| own.unwrap_or(capacity.value());
        let relative = capacity.standard() / capacity.value().si();
        let extraction = base(heating) * (1.0 - 1.0 / heating_cop);
        let rejection = base(cooling) * (1.0 + 1.0 / cooling_cop);
        let rated = unit.and_then(|unit| unit.rated_flow).map(|flow| flow.get());
        let flow = match rated {
            Some(rated) => Uncertain::relative(rated, RATED_FLOW_SPREAD),
            None => {
                assumptions.push(Assumption::FlowByCapacity);
                let tons = Unit::Ton.from_si(capacity.value().si());
                let flow = Unit::GallonPerMinute.to_si(FLOW_PER_TON_GPM * tons);
                // The flow follows the rated capacity, not that of the day.
                let of_capacity = if heating.or(cooling).is_some() {
                    0.0
                } else {
                    relative
                };
                Uncertain::relative(
                    VolumeFlow::from_si(flow),
                    FLOW_PER_TON_SPREAD.hypot(of_capacity),
                )
            }
        };
        Self {
            capacity,
            flow,
            least_flow: unit
                .and_then(|unit| unit.minimum_flow)
                .map(|flow| flow.get()),
            extraction: Uncertain::relative(extraction, relative),
            rejection: Uncertain::relative(rejection, relative),
        }
    }
}
