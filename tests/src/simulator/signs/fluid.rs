//! Signs of the fluid, of what is in it, and of the ground.

use super::ramp;
use crate::simulator::truth::Truth;

pub(super) fn fluid_sign(truth: &Truth, finding: &str) -> Option<f64> {
    let (state, fault) = (&truth.state, truth.fault);
    let is = |name: &str| fault == name;
    let cold = truth.plant.heating_now;
    let aggressive = ramp(-state.ph, -7.2, -6.2);
    Some(match finding {
        "improves-when-warm" => {
            0.02 + if is("antifreeze-too-strong") {
                0.7
            } else {
                0.0
            }
        }
        "flow-recovers-after-rest" => {
            if truth.running.ice {
                0.75
            } else {
                0.01
            }
        }
        "worse-when-cold" => {
            let thick = is("antifreeze-too-strong") && cold;
            0.04 + if thick || truth.running.ice { 0.5 } else { 0.0 }
        }
        "freeze-guard-trip" => {
            let leaving = if cold { truth.running.leaving } else { 20.0 };
            let freezing = state.fluid.freezing_point().celsius();
            let near = ramp(-(leaving - freezing), -4.0, 0.0);
            let slug = if is("antifreeze-unmixed") && cold {
                0.5
            } else {
                0.0
            };
            0.005 + 0.7 * near.max(ramp(-leaving, 4.0, 9.0)) + slug
        }
        "trips-early-then-settles" => {
            if is("antifreeze-unmixed") {
                0.5
            } else {
                0.01
            }
        }
        "other-fluid-added" => {
            if is("antifreeze-wrong-kind") {
                0.4
            } else {
                0.01
            }
        }
        "label-disagrees" => {
            if is("antifreeze-wrong-kind") {
                0.5
            } else {
                0.01
            }
        }
        "sample-foams" => match fault {
            "antifreeze-wrong-kind" | "antifreeze-degraded" => 0.35,
            _ => 0.01 + 0.1 * state.air,
        },
        "sample-smells" => {
            let by_age = if is("antifreeze-degraded") { 0.5 } else { 0.0 };
            let wrong = if is("antifreeze-wrong-kind") {
                0.35
            } else {
                0.0
            };
            0.01 + by_age + wrong + 0.65 * state.slime
        }
        "sample-discoloured" => {
            0.02 + 0.7 * aggressive + 0.35 * state.slime + 0.2 * ramp(state.iron, 0.5, 4.0)
        }
        "orange-mud" => {
            0.005
                + if is("iron-fill-water") {
                    0.75
                } else {
                    0.15 * ramp(state.iron, 1.0, 5.0)
                }
        }
        "slime-on-screen" => {
            0.005 + 0.8 * state.slime + if is("iron-fill-water") { 0.15 } else { 0.0 }
        }
        "black-magnetic-dust" => {
            if is("corrosion") {
                0.75
            } else {
                0.015 + 0.25 * aggressive
            }
        }
        "bacteria-test-positive" => {
            if state.slime > 0.0 {
                0.9
            } else {
                0.02
            }
        }
        "scale-on-parts" => {
            if is("scaling-fill-water") {
                0.65
            } else {
                0.02
            }
        }
        "better-after-acid-wash" => {
            if is("scaling-fill-water") {
                0.85
            } else {
                0.05
            }
        }
        "lime-in-house" => 0.05 + 0.75 * ramp(state.hardness, 120.0, 280.0),
        "orange-stains-in-house" => {
            let well = if truth.habits.well { 1.0 } else { 0.3 };
            0.02 + if is("iron-fill-water") {
                0.6 * well
            } else {
                0.0
            }
        }
        _ => return None,
    })
}
