//! Signs of heat that is short, and of the unit.

use super::ramp;
use crate::simulator::truth::Truth;

pub(super) fn heat_sign(truth: &Truth, finding: &str) -> Option<f64> {
    let running = &truth.running;
    let heating = truth.plant.heating_now;
    // How far outside the usual the water is.
    let off = if heating {
        ramp(-running.entering, 0.5, 5.0)
    } else {
        ramp(running.entering, 31.0, 37.0)
    };
    let rated = if heating {
        truth.plant.heating
    } else {
        truth.plant.cooling
    };
    let short = ramp(-running.capacity / rated, -0.95, -0.65);
    let weak = short.max(0.6 * off);
    Some(match finding {
        "water-colder-than-it-should" => 0.02 + 0.65 * off,
        "ewt-drifts-through-season" => match truth.fault {
            "loop-too-short" => 0.75,
            "ground-conducts-poorly" => 0.25,
            _ => 0.02 + 0.15 * off,
        },
        "ewt-recovers-after-rest" => match truth.fault {
            "loop-too-short" => 0.65,
            "ground-conducts-poorly" => 0.55,
            _ => 0.04 + 0.2 * off,
        },
        "ewt-falls-fast" => match truth.fault {
            "ground-conducts-poorly" => 0.75,
            "loop-too-short" => 0.15,
            _ => 0.02,
        },
        "low-heat" => 0.03 + 0.75 * weak,
        "high-bill" => 0.05 + 0.55 * weak,
        "auxiliary-heat-often" => {
            let control = if truth.fault == "control-fault" {
                0.4
            } else {
                0.0
            };
            if heating {
                0.03 + 0.5 * weak + control
            } else {
                0.01
            }
        }
        _ => return None,
    })
}

pub(super) fn unit_sign(truth: &Truth, finding: &str) -> Option<f64> {
    let is = |name: &str| truth.fault == name;
    let state = &truth.state;
    let share = truth.running.flows.unit / truth.plant.rated_flow;
    let starved_air = ramp(-state.airflow, -0.85, -0.55);
    Some(match finding {
        "high-pressure-trip" => {
            let water = if truth.plant.heating_now {
                0.0
            } else {
                0.5 * ramp(-share, -0.75, -0.4) + 0.3 * ramp(truth.running.entering, 32.0, 38.0)
            };
            let air = if truth.plant.heating_now {
                0.55 * starved_air
            } else {
                0.0
            };
            0.01 + water + air
        }
        "weak-airflow" => 0.02 + 0.6 * starved_air,
        "air-filter-dirty" => 0.08 + 0.85 * starved_air,
        "lockout-though-flow-proven" => {
            if is("flow-switch-or-sensor-fault") {
                0.85
            } else {
                0.005
            }
        }
        "display-disagrees" => {
            if is("flow-switch-or-sensor-fault") {
                0.5
            } else {
                0.015
            }
        }
        "switch-sticks" => {
            if is("flow-switch-or-sensor-fault") {
                0.65
            } else {
                0.005
            }
        }
        "controls-out-of-step" => {
            if is("control-fault") {
                0.85
            } else {
                0.01
            }
        }
        "settings-wrong" => {
            if is("control-fault") {
                0.6
            } else {
                0.015
            }
        }
        "oil-stain" => {
            if is("refrigerant-undercharge") {
                0.45
            } else {
                0.005
            }
        }
        "hot-gas-both-ways" => {
            if is("compressor-or-reversing-valve-weak") {
                0.75
            } else {
                0.005
            }
        }
        _ => return None,
    })
}
