//! The faults, and what each does to plant, habits and state.
//!
//! Written from what the fault is, in physical terms; severities are drawn over
//! the range in which a fault leads to a callback at all.

use super::plant::{Centre, Plant, solution};
use super::state::{Age, Habits, State};
use crate::invented::Dice;
use returnline_core::fluids::FluidKind;

/// What is injected, by its name in the rule graph, the family it belongs to,
/// and how old such a system mostly is.
#[derive(Copy, Clone, Debug)]
pub struct Fault {
    /// Name.
    pub id: &'static str,
    /// Share of callbacks, in percent of those with one fault: families by a
    /// published-nowhere judgement of first-year callbacks (air a quarter,
    /// pressure 15, valves 12, pumps 10, debris 8, antifreeze 8, indoor leaks 7,
    /// circuits 5, ground 4, water 3, buried leaks 1.5), the unit added, split
    /// among the members of a family.
    pub share: f64,
    /// Age at which it calls.
    pub age: Age,
}

const fn fault(id: &'static str, share: f64, age: Age) -> Fault {
    Fault { id, share, age }
}

/// Every single fault.
pub const FAULTS: &[Fault] = &[
    fault("air-left-in-circuit", 11.0, Age::Young),
    fault("flush-too-weak", 9.0, Age::Young),
    fault("circulators-not-bled", 4.0, Age::New),
    fault("charge-left-too-low", 5.0, Age::Young),
    fault("pipe-never-relaxed", 4.0, Age::Young),
    fault("charged-cold-without-allowance", 4.0, Age::Any),
    fault("over-pressurised", 2.0, Age::Any),
    fault("three-way-valve-mis-set", 5.5, Age::Any),
    fault("isolation-valve-part-closed", 5.0, Age::Any),
    fault("supply-return-crossed", 1.5, Age::New),
    fault("circulator-too-small", 1.8, Age::Young),
    fault("circulator-wrong-speed", 2.2, Age::Any),
    fault("one-circulator-dead", 2.2, Age::Any),
    fault("circulator-worn", 2.0, Age::Old),
    fault("circulators-opposed", 0.8, Age::New),
    fault("check-valve-stuck-shut", 0.8, Age::Any),
    fault("check-valve-missing", 0.8, Age::Any),
    fault("debris-left-in-loop", 2.5, Age::Young),
    fault("strainer-loaded", 3.0, Age::Any),
    fault("exchanger-loaded", 1.5, Age::Any),
    fault("unit-not-isolated-in-flush", 1.2, Age::Young),
    fault("antifreeze-too-weak", 2.2, Age::Young),
    fault("antifreeze-too-strong", 1.5, Age::Young),
    fault("antifreeze-unmixed", 2.2, Age::New),
    fault("antifreeze-wrong-kind", 0.8, Age::Any),
    fault("antifreeze-degraded", 1.0, Age::Old),
    fault("leak-indoors", 6.5, Age::Any),
    fault("leak-in-ground", 1.5, Age::Any),
    fault("circuit-valved-off", 1.2, Age::Any),
    fault("circuit-kinked", 0.9, Age::Young),
    fault("circuit-air-locked", 2.0, Age::Young),
    fault("circuits-unbalanced", 1.5, Age::Young),
    fault("loop-too-short", 2.4, Age::Young),
    fault("ground-conducts-poorly", 1.5, Age::Young),
    fault("scaling-fill-water", 0.8, Age::Old),
    fault("iron-fill-water", 0.8, Age::Any),
    fault("corrosion", 0.8, Age::Old),
    fault("biological-fouling", 0.7, Age::Old),
    fault("expansion-tank-waterlogged", 1.6, Age::Any),
    fault("expansion-tank-pre-charge-wrong", 1.6, Age::Young),
    fault("reservoir-low", 2.0, Age::Any),
    fault("reservoir-draws-air", 1.6, Age::Any),
    fault("refrigerant-undercharge", 3.5, Age::Any),
    fault("expansion-device-fault", 2.0, Age::Any),
    fault("compressor-or-reversing-valve-weak", 2.0, Age::Any),
    fault("air-filter-or-coil-dirty", 5.0, Age::Any),
    fault("flow-switch-or-sensor-fault", 3.0, Age::Any),
    fault("control-fault", 3.0, Age::Any),
];

/// Ordinary behaviour that makes people call, and calls about nothing.
pub const ORDINARY: &[Fault] = &[
    fault("ordinary-relaxation", 40.0, Age::New),
    fault("seasonal-swing", 30.0, Age::Any),
    fault("", 30.0, Age::Any),
];

/// Whether such a system can have such a fault at all.
#[must_use]
pub fn fits(fault: &str, plant: &Plant) -> bool {
    let water = plant.fluid == FluidKind::Water;
    let sealed = plant.centre == Centre::Sealed;
    match fault {
        "charge-left-too-low" | "pipe-never-relaxed" | "ordinary-relaxation" => sealed,
        "charged-cold-without-allowance" | "seasonal-swing" => sealed && !plant.heating_now,
        "over-pressurised" => plant.centre != Centre::Vented,
        "expansion-tank-waterlogged" | "expansion-tank-pre-charge-wrong" => {
            plant.centre == Centre::Tank
        }
        "reservoir-low" | "reservoir-draws-air" => plant.centre == Centre::Vented,
        "one-circulator-dead" | "circulators-opposed" => plant.circulators == 2,
        "check-valve-stuck-shut" => plant.check_valves,
        "check-valve-missing" => !plant.check_valves,
        "strainer-loaded" => plant.strainer,
        "antifreeze-too-weak" => plant.heating_now && !water,
        "antifreeze-too-strong" => {
            plant.heating_now && !water && plant.fluid != FluidKind::Methanol
        }
        "antifreeze-unmixed" | "antifreeze-wrong-kind" | "antifreeze-degraded" => !water,
        "circuit-valved-off" | "circuit-kinked" | "circuit-air-locked" | "circuits-unbalanced" => {
            plant.circuits >= 2
        }
        _ => true,
    }
}

/// What the fault made of the commissioning.
pub fn shape_habits(fault: &str, habits: &mut Habits, dice: &mut Dice) {
    match fault {
        // The flush itself was right as far as it went; a pocket stayed.
        "air-left-in-circuit" => {
            habits.velocity = Some(dice.between(1.9, 2.9));
            habits.hours = dice.between(1.5, 3.5);
        }
        "flush-too-weak" => {
            let slow = dice.chance(0.8);
            habits.velocity = if dice.chance(0.1) {
                None
            } else if slow {
                Some(dice.between(0.6, 1.7))
            } else {
                Some(dice.between(1.8, 2.6))
            };
            habits.hours = if slow {
                dice.between(0.5, 2.5)
            } else {
                dice.between(0.2, 1.0)
            };
            habits.cart = [0.5, 0.75, 1.0, 1.5][dice.below(4)];
            habits.singly = dice.chance(0.05);
        }
        "circuit-air-locked" => {
            habits.velocity = Some(dice.between(1.2, 2.4));
            habits.singly = dice.chance(0.1);
        }
        "circulators-not-bled" => habits.bled = dice.chance(0.05),
        "pipe-never-relaxed" => habits.relaxed = false,
        "ordinary-relaxation" | "seasonal-swing" | "charged-cold-without-allowance" => {
            habits.relaxed = dice.chance(0.9);
        }
        "debris-left-in-loop" => {
            habits.filtered = dice.chance(0.3);
            if dice.chance(0.4) {
                habits.velocity = Some(dice.between(1.2, 2.0));
            }
        }
        "strainer-loaded" | "exchanger-loaded" => habits.filtered = dice.chance(0.6),
        "unit-not-isolated-in-flush" => {
            habits.isolated = false;
            habits.filtered = dice.chance(0.5);
        }
        "antifreeze-too-weak" | "antifreeze-too-strong" => habits.checked = dice.chance(0.3),
        "antifreeze-unmixed" => {
            habits.mixed = dice.between(0.1, 2.5);
            habits.checked = dice.chance(0.5);
        }
        "scaling-fill-water" | "iron-fill-water" => {
            habits.tested = dice.chance(0.15);
            habits.well = dice.chance(0.85);
        }
        _ => {}
    }
}

/// What the fault made of the plant as built.
pub fn shape_plant(fault: &str, plant: &mut Plant, dice: &mut Dice) {
    match fault {
        "circulator-too-small" => {
            // Chosen for water, or without the exchanger, or for a smaller unit.
            plant.shut_off *= dice.between(0.35, 0.6);
            plant.free_flow *= dice.between(0.7, 0.85);
            plant.pump_power *= 0.45;
        }
        "loop-too-short" => {
            let short = dice.between(0.45, 0.72);
            plant.circuit.length *= short;
            plant.resistance /= short;
        }
        _ => {}
    }
}

/// What the fault makes of the state; severities over the range that calls.
pub fn shape_state(fault: &str, plant: &Plant, state: &mut State, dice: &mut Dice) {
    let one = dice.below(plant.circuits.max(1));
    match fault {
        "air-left-in-circuit" => {
            state.air = dice.between(0.35, 1.0);
            state.pump_head *= 1.0 - 0.25 * state.air;
            if plant.circuits > 1 && dice.chance(0.3) {
                state.circuit_open[one] = dice.between(0.1, 0.4);
            }
            if dice.chance(0.2) {
                state.pump_air = dice.between(0.1, 0.5);
            }
        }
        "flush-too-weak" => {
            state.air = dice.between(0.35, 1.0);
            state.pump_head *= 1.0 - 0.25 * state.air;
            if dice.chance(0.5) {
                state.solids = dice.between(0.25, 0.8);
            }
            if plant.circuits > 1 && dice.chance(0.4) {
                state.circuit_open[one] = dice.between(0.0, 0.3);
            }
        }
        "circulators-not-bled" => {
            state.pump_air = dice.between(0.5, 1.0);
            state.pump_head *= 1.0 - 0.75 * state.pump_air;
        }
        "three-way-valve-mis-set" => {
            if dice.chance(0.75) {
                state.bypass = dice.between(0.15, 0.5);
            } else {
                state.valve_loss = dice.between(3.0, 10.0);
            }
        }
        "isolation-valve-part-closed" => state.valve_loss = dice.between(4.0, 16.0),
        "supply-return-crossed" => state.fouling *= dice.between(1.4, 1.9),
        "circulator-wrong-speed" => state.pump_speed = dice.between(0.45, 0.72),
        "one-circulator-dead" => {
            state.pump_head *= 0.46;
            state.pump_input *= 0.5;
        }
        "circulator-worn" => {
            state.pump_head *= dice.between(0.4, 0.75);
            state.bearing = dice.between(0.3, 1.0);
        }
        "circulators-opposed" => state.pump_head *= dice.between(0.03, 0.12),
        "check-valve-stuck-shut" => state.valve_loss = dice.between(8.0, 40.0),
        "check-valve-missing" => {
            state.bypass = if plant.circulators == 2 {
                dice.between(0.0, 0.25)
            } else {
                0.0
            };
        }
        "debris-left-in-loop" => {
            state.solids = dice.between(0.45, 1.0);
            state.strainer_block = dice.between(1.5, 9.0);
            state.exchanger_block *= dice.between(1.0, 1.6);
        }
        "strainer-loaded" => state.strainer_block = dice.between(6.0, 60.0),
        "exchanger-loaded" | "unit-not-isolated-in-flush" => {
            state.exchanger_block = dice.between(1.7, 7.0);
            state.solids = dice.between(0.0, 0.5);
        }
        "antifreeze-too-weak" => {
            state.fluid = solution(plant.fluid, plant.strength * dice.between(0.15, 0.55));
        }
        "antifreeze-too-strong" => {
            state.fluid = solution(plant.fluid, dice.between(0.42, 0.52));
        }
        "antifreeze-unmixed" => state.unmixed = dice.between(0.07, 0.2),
        "antifreeze-wrong-kind" => {
            let other = match plant.fluid {
                FluidKind::PropyleneGlycol | FluidKind::EthyleneGlycol => {
                    [FluidKind::Methanol, FluidKind::Ethanol][dice.below(2)]
                }
                _ => FluidKind::PropyleneGlycol,
            };
            state.fluid = solution(other, dice.between(0.1, 0.3));
        }
        "antifreeze-degraded" => {
            state.ph = dice.between(5.2, 6.9);
            state.iron += dice.between(0.2, 3.0);
        }
        "leak-indoors" | "leak-in-ground" => {
            state.loss = dice.between(0.15, 2.5);
            state.added = dice.between(0.5, 12.0);
            state.level -= dice.between(2.5, 14.0);
        }
        "circuit-valved-off" => state.circuit_open[one] = 0.0,
        "circuit-kinked" => state.circuit_open[one] = dice.between(0.03, 0.25),
        "circuit-air-locked" => {
            state.circuit_open[one] = dice.between(0.0, 0.15);
            state.air = dice.between(0.0, 0.3);
        }
        "circuits-unbalanced" => {
            let longest = dice.between(1.6, 2.6);
            for (at, length) in state.circuit_length.iter_mut().enumerate() {
                *length = if at == one {
                    longest
                } else {
                    dice.between(0.55, 1.0)
                };
            }
        }
        "ground-conducts-poorly" => state.ground *= dice.between(0.4, 0.68),
        "scaling-fill-water" => {
            state.hardness = dice.between(260.0, 480.0);
            state.alkalinity = dice.between(200.0, 380.0);
            state.water_ph = dice.between(7.6, 8.3);
            state.fouling *= dice.between(1.6, 3.0);
            state.exchanger_block *= dice.between(1.0, 1.5);
        }
        "iron-fill-water" => {
            state.iron = dice.between(0.8, 8.0);
            state.fouling *= dice.between(1.1, 1.9);
            state.strainer_block *= dice.between(1.0, 6.0);
            state.exchanger_block *= dice.between(1.0, 1.5);
        }
        "corrosion" => {
            state.ph = dice.between(5.6, 7.0);
            state.iron = dice.between(0.6, 6.0);
            state.solids = dice.between(0.0, 0.5);
            if dice.chance(0.5) {
                state.chloride = dice.between(180.0, 500.0);
            }
        }
        "biological-fouling" => {
            state.slime = dice.between(0.5, 1.0);
            state.fouling *= dice.between(1.3, 2.4);
            state.strainer_block *= dice.between(1.5, 8.0);
            state.ph -= dice.between(0.0, 1.8);
        }
        "expansion-tank-waterlogged" => {
            state.waterlogged = true;
            state.pre_charge = -18.0;
        }
        "expansion-tank-pre-charge-wrong" => {
            state.pre_charge = if dice.chance(0.55) {
                dice.between(-17.0, -7.0)
            } else {
                dice.between(7.0, 25.0)
            };
        }
        "reservoir-low" => state.level = dice.between(-14.0, -4.0),
        "reservoir-draws-air" => {
            state.air = dice.between(0.35, 1.0);
            state.pump_head *= 1.0 - 0.2 * state.air;
            state.level = dice.between(-3.5, 1.5);
        }
        "refrigerant-undercharge" => state.charge = dice.between(0.6, 0.85),
        "expansion-device-fault" => {
            state.metering = if dice.chance(0.6) {
                dice.between(-1.0, -0.5)
            } else {
                dice.between(0.5, 1.0)
            };
        }
        "compressor-or-reversing-valve-weak" => state.compressor = dice.between(0.45, 0.75),
        "air-filter-or-coil-dirty" => state.airflow = dice.between(0.45, 0.72),
        _ => {}
    }
}
