//! Temperatures, heat, refrigerant and electric input that follow from the flow
//! and the state.

use super::network::{Flows, fluid_at, solve};
use super::plant::Plant;
use super::state::State;
use returnline_core::units::{Quantity, Temperature};

/// What the instruments would read, before any error.
#[derive(Clone, Debug)]
pub struct Running {
    /// Flow and drops.
    pub flows: Flows,
    /// Entering and leaving water at the unit, °C.
    pub entering: f64,
    /// Leaving water, °C.
    pub leaving: f64,
    /// Return of each circuit, °C.
    pub returns: Vec<f64>,
    /// Refrigerant's saturation temperature on the loop side, °C.
    pub saturation: f64,
    /// Superheat, K.
    pub superheat: f64,
    /// Subcooling, K.
    pub subcooling: f64,
    /// Capacity, W.
    pub capacity: f64,
    /// Electric input of the unit, W.
    pub input: f64,
    /// Change of the air, K.
    pub air: f64,
    /// Electric input of the circulators, W.
    pub pumps: f64,
    /// Ice forms in the exchanger.
    pub ice: bool,
    /// Flow in the ground pipe is laminar.
    pub laminar: bool,
}

/// Below this the film in the ground pipe has collapsed.
const LAMINAR: f64 = 2_300.0;

/// Solves flow and temperatures together.
#[must_use]
pub fn run(plant: &Plant, state: &State) -> Running {
    let sign = if plant.heating_now { -1.0 } else { 1.0 };
    let mut entering = plant.ground_temperature;
    let mut leaving = entering;
    let mut flows = solve(plant, state, entering);
    let mut heat = 0.0;
    let freezing = state.fluid.freezing_point().celsius();
    let mut frozen = state.clone();
    for _ in 0..6 {
        flows = solve(plant, &frozen, 0.5 * (entering + leaving));
        let fluid = fluid_at(state, entering);
        let at = Temperature::from_celsius(entering.clamp(freezing.max(-9.0) + 0.3, 39.0));
        let capacity_rate = fluid.density.si()
            * state.fluid.specific_heat(at).map_or(4_000.0, |c| c.si())
            * flows.unit.max(1e-6);
        heat = heat_moved(plant, state, entering, flows.unit);
        // The ground: fewer live metres and a laminar film take less heat.
        let wanted: f64 = flows.circuits.iter().sum::<f64>() / flows.circuits.len() as f64;
        let live = flows
            .circuits
            .iter()
            .map(|q| (q / wanted.max(1e-9)).min(1.0))
            .sum::<f64>()
            / flows.circuits.len() as f64;
        let film = if flows.reynolds < LAMINAR { 1.3 } else { 1.0 };
        let ground = plant.resistance * film / (state.ground * live.powf(0.8).max(0.15));
        let mean = plant.ground_temperature + sign * heat * ground;
        let change = (heat / capacity_rate).min(25.0);
        // `resistance` was laid for the entering water; half of the rated change lies between.
        let rated = change_at_rated(plant, heat, capacity_rate / flows.unit.max(1e-6));
        let from_loop = mean - sign * 0.5 * (change - rated);
        // What goes past the ground comes straight back.
        entering = from_loop + sign * state.bypass / (1.0 - state.bypass).max(0.2) * change;
        leaving = entering + sign * change;
        if plant.heating_now && leaving < freezing + 1.0 {
            frozen.exchanger_block = state.exchanger_block * 4.0;
        }
        entering = entering.clamp(-12.0, 48.0);
        leaving = leaving.clamp(-15.0, 58.0);
    }
    let ice = frozen.exchanger_block > 2.0 * state.exchanger_block;
    let nominal = if plant.heating_now {
        plant.heating * (1.0 - 1.0 / plant.cop.0)
    } else {
        plant.cooling * (1.0 + 1.0 / plant.cop.1)
    };
    let load = heat / nominal;
    let slow = (plant.rated_flow / flows.unit.max(0.1 * plant.rated_flow))
        .powf(0.5)
        .min(2.0);
    let clean = match (plant.heating_now, plant.plate) {
        (true, true) => 4.3,
        (true, false) => 6.2,
        (false, true) => 3.2,
        (false, false) => 4.7,
    };
    // A blocked exchanger works on part of its surface.
    let surface = 1.0 + 0.25 * (frozen.exchanger_block - 1.0).clamp(0.0, 3.0);
    let approach = clean * load * slow * surface * state.fouling * refrigerant_approach(state);
    let saturation = leaving + sign * approach;
    let (superheat, subcooling) = superheat_and_subcooling(plant, state, flows.unit);
    let (capacity, input) = capacity_and_input(plant, state, heat);
    let rated_rise = if plant.heating_now { 15.0 } else { 10.5 };
    let rated = if plant.heating_now {
        plant.heating
    } else {
        plant.cooling
    };
    let air = rated_rise * capacity / rated / state.airflow;
    let returns = flows
        .circuits
        .iter()
        .map(|q| {
            // A circuit with little flow comes back near the ground.
            let each = flows.circuits.iter().sum::<f64>() / flows.circuits.len() as f64;
            let slow = (1.0 - q / each.max(1e-9)).clamp(0.0, 1.0);
            let usual = entering - sign * 0.0;
            usual + slow * (plant.ground_temperature - usual) * 0.8
        })
        .collect();
    let share = flows.unit / (plant.free_flow * 0.58);
    let pumps = plant.pump_power
        * state.pump_speed.powi(3)
        * (0.62 + 0.38 * share.min(1.4))
        * state.pump_input
        * (1.0 - 0.55 * state.pump_air)
        * (1.0 + 0.5 * state.bearing);
    Running {
        laminar: flows.reynolds < LAMINAR,
        flows,
        entering,
        leaving,
        returns,
        saturation,
        superheat,
        subcooling,
        capacity,
        input,
        air,
        pumps,
        ice,
    }
}

fn change_at_rated(plant: &Plant, heat: f64, capacity: f64) -> f64 {
    heat / (capacity * plant.rated_flow)
}

/// Heat between unit and loop, W: falls with colder entering water in heating,
/// with a sick refrigerant side, and somewhat with too little flow.
fn heat_moved(plant: &Plant, state: &State, entering: f64, flow: f64) -> f64 {
    let sick = refrigerant_factor(state) * state.airflow.min(1.0).powf(0.25);
    let short = (flow / plant.rated_flow).clamp(0.02, 1.0).powf(0.12);
    let foul = (1.0 / state.fouling).powf(0.12);
    let base = if plant.heating_now {
        plant.heating * (1.0 - 1.0 / plant.cop.0) * (1.0 + 0.022 * entering.clamp(-10.0, 20.0))
    } else {
        plant.cooling * (1.0 + 1.0 / plant.cop.1) * (1.0 - 0.004 * (entering - 25.0))
    };
    base * sick * short * foul
}

/// Capacity of the refrigerant side over a sound one. Judgement, with published
/// laboratory work that undercharge costs heating more than cooling.
fn refrigerant_factor(state: &State) -> f64 {
    let charge = if state.charge < 0.95 {
        1.0 - 1.1 * (0.95 - state.charge)
    } else {
        1.0
    };
    charge * (1.0 - 0.28 * state.metering.abs()) * state.compressor.min(1.0)
}

fn refrigerant_approach(state: &State) -> f64 {
    let under = (0.95 - state.charge).max(0.0);
    let starved = (-state.metering).max(0.0);
    // A starved evaporator runs colder; a compressor that pumps badly, warmer.
    (1.0 + 2.5 * under + 0.8 * starved) * state.compressor.min(1.0).powf(1.4)
}

fn superheat_and_subcooling(plant: &Plant, state: &State, flow: f64) -> (f64, f64) {
    let under = (0.95 - state.charge).max(0.0);
    let short = (1.0 - flow / plant.rated_flow).clamp(0.0, 0.8);
    let low_flow = if plant.heating_now { 2.5 * short } else { 0.0 };
    let metering = if state.metering < 0.0 {
        -12.0 * state.metering
    } else {
        -5.0 * state.metering
    };
    let superheat = (5.6 + 45.0 * under + metering - low_flow).max(0.0);
    let held_back = if state.metering < 0.0 {
        -6.0 * state.metering
    } else {
        -0.8 * state.metering
    };
    let subcooling = (5.2 - 26.0 * under + held_back).max(0.0);
    (superheat, subcooling)
}

fn capacity_and_input(plant: &Plant, state: &State, heat: f64) -> (f64, f64) {
    let under = (0.95 - state.charge).max(0.0);
    let load = (1.0 / state.airflow.min(1.0)).powf(0.5);
    let weak = 0.35 * (1.0 - state.compressor.min(1.0));
    let rated = if plant.heating_now {
        plant.heating / plant.cop.0
    } else {
        plant.cooling / plant.cop.1
    };
    let input = rated * (1.0 - 0.7 * under - weak) * load;
    let capacity = if plant.heating_now {
        heat + input
    } else {
        heat - input
    };
    (capacity.max(0.1 * rated), input)
}
