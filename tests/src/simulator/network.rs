//! Flow: circulators against pipe, exchanger, strainer, valve and circuits.

use super::plant::{CURVE, Plant, Run};
use super::state::State;
use returnline_core::hydraulics::component::FluidState;
use returnline_core::hydraulics::friction::{FrictionLaw, friction_factor};
use returnline_core::units::{Number, Quantity, Temperature, VolumeFlow};

/// What flows and what the gauges would show.
#[derive(Clone, Debug)]
pub struct Flows {
    /// Through the unit, m³/s.
    pub unit: f64,
    /// Through each circuit, m³/s.
    pub circuits: Vec<f64>,
    /// Rise of the circulators, Pa.
    pub rise: f64,
    /// Drop of the exchanger, Pa.
    pub exchanger: f64,
    /// Drop of the strainer, Pa.
    pub strainer: f64,
    /// Reynolds number in the circuits.
    pub reynolds: f64,
}

/// Drop of a run of pipe: Darcy-Weisbach with the fittings, Pa.
#[must_use]
pub fn pipe_drop(run: &Run, flow: f64, fluid: FluidState) -> f64 {
    let flow = flow.max(1e-9);
    let velocity = flow / run.pipe.area().si();
    let reynolds = fluid.reynolds(run.pipe, VolumeFlow::from_si(flow)).si();
    let rough = run.pipe.roughness().si() / run.pipe.bore().si();
    let factor = friction_factor(
        FrictionLaw::default(),
        Number::from_si(reynolds.clamp(1.0, 1e7)),
        Number::from_si(rough),
    )
    .map_or(0.03, |factor| factor.si());
    let head = 0.5 * fluid.density.si() * velocity * velocity;
    (factor * run.length / run.pipe.bore().si() + run.fittings) * head
}

/// The fluid at a temperature, kept liquid.
#[must_use]
pub fn fluid_at(state: &State, celsius: f64) -> FluidState {
    let freezing = state.fluid.freezing_point().celsius();
    let celsius = celsius.clamp(freezing.max(-9.0) + 0.3, 39.0);
    FluidState::of(state.fluid, Temperature::from_celsius(celsius)).expect("liquid")
}

/// Rise of the circulators at a flow, Pa.
fn pump_rise(plant: &Plant, state: &State, flow: f64) -> f64 {
    let speed = state.pump_speed.max(0.05);
    let share = flow / (plant.free_flow * speed);
    state.pump_head * speed * speed * plant.shut_off * (1.0 - share.powf(CURVE))
}

/// Rise with the discharge shut, Pa.
#[must_use]
pub fn shut_off_rise(plant: &Plant, state: &State) -> f64 {
    pump_rise(plant, state, 0.0)
}

/// Solves the loop.
#[must_use]
pub fn solve(plant: &Plant, state: &State, celsius: f64) -> Flows {
    let fluid = fluid_at(state, celsius);
    let through = |drop: f64, open: f64, length: f64| -> f64 {
        if open < 1e-3 {
            return 0.0;
        }
        let pipe = Run {
            length: plant.circuit.length * length,
            ..plant.circuit
        };
        // A narrow place takes drop with the square of the flow.
        let narrow = |flow: f64| {
            let velocity = flow / plant.circuit.pipe.area().si();
            0.5 * fluid.density.si() * velocity * velocity * 40.0 * (1.0 / (open * open) - 1.0)
        };
        root(0.0, plant.free_flow, |flow| {
            pipe_drop(&pipe, flow, fluid) + narrow(flow) - drop
        })
    };
    let rest = |flow: f64| -> (f64, f64, f64) {
        let exchanger = plant
            .exchanger
            .pressure_drop(VolumeFlow::from_si(flow), fluid)
            .si()
            * state.exchanger_block;
        // A clean strainer takes about half a psi at rated flow.
        let square = (flow / plant.rated_flow).powi(2);
        let strainer = if plant.strainer { 3_000.0 } else { 0.0 } * square * state.strainer_block;
        let valve = state.valve_loss * plant.exchanger_drop * square;
        let pipes =
            pipe_drop(&plant.header, flow, fluid) + pipe_drop(&plant.indoor, flow, fluid) + valve;
        (exchanger, strainer, pipes)
    };
    let split = |drop: f64| -> Vec<f64> {
        let circuits = state.circuit_open.iter().zip(&state.circuit_length);
        circuits
            .map(|(&open, &length)| through(drop, open, length))
            .collect()
    };
    let most = plant.shut_off * 1.05;
    let drop = root(0.0, most, |drop| {
        let ground: f64 = split(drop).iter().sum();
        let flow = ground / (1.0 - state.bypass);
        let (exchanger, strainer, pipes) = rest(flow);
        drop + exchanger + strainer + pipes - pump_rise(plant, state, flow)
    });
    let circuits = split(drop);
    let unit = circuits.iter().sum::<f64>() / (1.0 - state.bypass);
    let (exchanger, strainer, _) = rest(unit);
    let running = circuits.iter().filter(|flow| **flow > 1e-8).count().max(1);
    let each = VolumeFlow::from_si(circuits.iter().sum::<f64>() / running as f64);
    Flows {
        unit,
        rise: pump_rise(plant, state, unit),
        exchanger,
        strainer,
        reynolds: fluid.reynolds(plant.circuit.pipe, each).si(),
        circuits,
    }
}

/// Where a rising function meets zero.
fn root(mut low: f64, mut high: f64, f: impl Fn(f64) -> f64) -> f64 {
    for _ in 0..34 {
        let middle = 0.5 * (low + high);
        if f(middle) > 0.0 {
            high = middle;
        } else {
            low = middle;
        }
    }
    0.5 * (low + high)
}
