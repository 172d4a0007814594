//! What is seen, heard, told and tried: how probable each sign is in a given
//! state. Practitioner's relations, each a judgement without a publication.

mod fluid;
mod heat;

use self::fluid::fluid_sign;
use self::heat::{heat_sign, unit_sign};
use super::plant::Centre;
use super::truth::Truth;

/// Told by the customer without being measured.
pub const TOLD: &[&str] = &[
    "gurgling",
    "came-back-after-purge",
    "gauge-reads-low",
    "gauge-lower-than-before",
    "gauge-reads-high",
    "noise-worse-in-summer",
    "relief-valve-weeps",
    "circulator-hums",
    "circulator-rattles",
    "strainer-loads-again",
    "worse-when-cold",
    "freeze-guard-trip",
    "trips-early-then-settles",
    "other-fluid-added",
    "water-colder-than-it-should",
    "low-heat",
    "high-bill",
    "auxiliary-heat-often",
    "topped-up-often",
    "low-flow-lockout",
    "valve-slams",
    "gauge-swings-widely",
    "high-pressure-trip",
    "weak-airflow",
    "lime-in-house",
    "orange-stains-in-house",
];

/// Complaints that make somebody call.
pub const COMPLAINTS: &[&str] = &[
    "gurgling",
    "gauge-reads-low",
    "gauge-lower-than-before",
    "gauge-reads-high",
    "relief-valve-weeps",
    "circulator-hums",
    "circulator-rattles",
    "freeze-guard-trip",
    "water-colder-than-it-should",
    "low-heat",
    "high-bill",
    "auxiliary-heat-often",
    "topped-up-often",
    "low-flow-lockout",
    "valve-slams",
    "gauge-swings-widely",
    "high-pressure-trip",
    "weak-airflow",
];

/// What an ordinary visit looks at, in minutes and without taking things apart.
pub const LOOKED_AT: &[&str] = &[
    "air-at-vent",
    "springy-gauge",
    "flow-unsteady",
    "circulator-vent-gives-air",
    "sample-milky",
    "circuit-valve-found-shut",
    "strainer-screen-dirty",
    "sample-has-grit",
    "sample-foams",
    "sample-smells",
    "label-disagrees",
    "sample-discoloured",
    "ewt-drifts-through-season",
    "ewt-recovers-after-rest",
    "ewt-falls-fast",
    "wet-or-crusted-fittings",
    "pressure-follows-temperature",
    "speed-set-low",
    "circulator-not-turning",
    "circulator-arrows-disagree",
    "circulator-sounds-rough",
    "no-check-valve-found",
    "tank-rings-full",
    "air-drawn-at-reservoir",
    "display-disagrees",
    "controls-out-of-step",
    "settings-wrong",
    "switch-sticks",
    "oil-stain",
    "air-filter-dirty",
    "valve-not-in-run-position",
    "port-temperatures-disagree",
    "isolation-valve-not-open",
    "split-sign-reversed",
    "crossed-at-unit",
    "orange-mud",
    "slime-on-screen",
    "black-magnetic-dust",
    "flow-when-idle",
];

/// Probability that a sign is really there; none where there is nothing to look at.
#[must_use]
pub fn sign(truth: &Truth, finding: &str) -> Option<f64> {
    let hydraulic = flow_sign(truth, finding).or_else(|| pressure_sign(truth, finding));
    hydraulic
        .or_else(|| fluid_sign(truth, finding))
        .or_else(|| heat_sign(truth, finding))
        .or_else(|| unit_sign(truth, finding))
        .filter(|_| can_be_seen(truth, finding))
}

/// How probable each complaint is, and how probable on the same system without what
/// is the matter with it. Where nothing is, all that is complained of counts.
#[must_use]
pub fn complaints(truth: &Truth) -> Vec<Complaint> {
    let sound = (!truth.fault.is_empty()).then(|| truth.without_fault());
    COMPLAINTS
        .iter()
        .filter_map(|&finding| {
            let chance = sign(truth, finding)?.min(0.98);
            let anyway = sound.as_ref().and_then(|sound| sign(sound, finding));
            Some(Complaint {
                finding,
                chance,
                anyway: anyway.unwrap_or(0.0).min(chance),
            })
        })
        .collect()
}

/// A complaint that somebody may have.
#[derive(Copy, Clone, Debug)]
pub struct Complaint {
    /// The finding.
    pub finding: &'static str,
    /// Probability that somebody has it.
    pub chance: f64,
    /// Probability that somebody would have it without the fault.
    pub anyway: f64,
}

/// Whether anybody would call because of this fault: it makes some complaint
/// much more probable than it is without.
#[must_use]
pub fn leads_to_a_call(truth: &Truth) -> bool {
    matches!(truth.fault, "" | "ordinary-relaxation" | "seasonal-swing")
        || complaints(truth)
            .iter()
            .any(|complaint| complaint.chance - complaint.anyway >= LEAST_MORE)
}

/// Less more than this is a matter of chance.
const LEAST_MORE: f64 = 0.2;

/// Whether the system has what the sign is looked for at.
fn can_be_seen(truth: &Truth, finding: &str) -> bool {
    let plant = &truth.plant;
    let vented = plant.centre == Centre::Vented;
    match finding {
        "gauge-reads-low"
        | "gauge-lower-than-before"
        | "gauge-reads-high"
        | "springy-gauge"
        | "pressure-follows-temperature"
        | "loss-with-building-isolated"
        | "loss-indoors-alone"
        | "relief-valve-weeps" => !vented,
        "tank-rings-full" | "tank-valve-gives-fluid" | "gauge-swings-widely" => {
            plant.centre == Centre::Tank
        }
        "air-drawn-at-reservoir" => vented,
        "strainer-screen-dirty" | "strainer-loads-again" => plant.strainer,
        "circulator-arrows-disagree" | "more-flow-with-one-off" => plant.circulators == 2,
        "circuit-valve-found-shut"
        | "circuit-slow-both-ways"
        | "circuit-wakes-when-purged"
        | "circuit-flow-low"
        | "one-circuit-loses" => plant.circuits > 1,
        _ => true,
    }
}

/// From a little (0) to much (1), between two bounds.
fn ramp(value: f64, from: f64, to: f64) -> f64 {
    ((value - from) / (to - from)).clamp(0.0, 1.0)
}

fn flow_sign(truth: &Truth, finding: &str) -> Option<f64> {
    let (state, fault) = (&truth.state, truth.fault);
    let is = |name: &str| fault == name;
    let share = truth.running.flows.unit / truth.plant.rated_flow;
    let starved = truth.starved();
    let idle = state.circuit_open.iter().copied().fold(1.0, f64::min);
    let air = state.air;
    let here = |there: bool, yes: f64, no: f64| if there { yes } else { no };
    Some(match finding {
        "gurgling" => 0.02 + 0.85 * ramp(air, 0.0, 0.9) + 0.1 * state.pump_air,
        "air-at-vent" => 0.01 + 0.85 * ramp(air, 0.05, 0.6),
        "springy-gauge" => 0.02 + 0.75 * ramp(air, 0.1, 0.8),
        "flow-unsteady" => 0.01 + 0.7 * ramp(air, 0.1, 0.9) + 0.35 * starved + 0.2 * state.pump_air,
        "sample-milky" => 0.01 + 0.5 * ramp(air, 0.2, 1.0),
        "came-back-after-purge" => match fault {
            "flush-too-weak" => 0.45,
            "air-left-in-circuit" => 0.25,
            "reservoir-draws-air" => 0.6,
            "circuit-air-locked" => 0.2,
            _ => 0.01,
        },
        "circulator-vent-gives-air" => 0.01 + 0.85 * ramp(state.pump_air, 0.0, 0.4) + 0.15 * air,
        "circulator-hums" => {
            let dead = here(is("one-circulator-dead"), 0.25, 0.0);
            0.03 + 0.5 * starved + 0.2 * air + 0.2 * state.bearing + 0.2 * state.pump_air + dead
        }
        "circulator-rattles" => {
            0.02 + 0.55 * state.pump_air + 0.5 * state.bearing + 0.15 * air + 0.2 * state.solids
        }
        "low-flow-lockout" => {
            let false_trip = here(is("flow-switch-or-sensor-fault"), 0.65, 0.0);
            0.005 + 0.85 * ramp(-share, -0.85, -0.5) + false_trip + 0.15 * air
        }
        "circuit-valve-found-shut" => here(is("circuit-valved-off"), 0.95, 0.003),
        "circuit-slow-both-ways" => here(is("circuit-kinked"), 0.92, 0.01),
        "circuit-wakes-when-purged" => {
            let by_air = is("circuit-air-locked") || (air > 0.3 && idle < 0.5);
            here(by_air, 0.9, 0.01)
        }
        "circuit-flow-low" => {
            let even = truth
                .running
                .flows
                .circuits
                .iter()
                .copied()
                .fold(f64::INFINITY, f64::min);
            let mean = truth.running.flows.circuits.iter().sum::<f64>()
                / truth.running.flows.circuits.len() as f64;
            0.01 + 0.95 * ramp(-even / mean.max(1e-9), -0.85, -0.6)
        }
        "strainer-screen-dirty" => 0.03 + 0.95 * ramp(state.strainer_block, 2.0, 7.0),
        "strainer-loads-again" => 0.01 + 0.55 * ramp(state.solids, 0.2, 0.8) + 0.2 * state.slime,
        "sample-has-grit" => 0.01 + 0.9 * ramp(state.solids, 0.1, 0.5),
        "better-after-backflush" => 0.01 + 0.85 * ramp(state.exchanger_block, 1.3, 2.2),
        "chips-at-exchanger" => match fault {
            "exchanger-loaded" | "unit-not-isolated-in-flush" => 0.65,
            _ => 0.01 + 0.4 * ramp(state.exchanger_block, 1.2, 2.0),
        },
        "speed-set-low" => here(is("circulator-wrong-speed"), 0.93, 0.01),
        "circulator-not-turning" => here(is("one-circulator-dead"), 0.95, 0.003),
        "circulator-arrows-disagree" => here(is("circulators-opposed"), 0.93, 0.003),
        "more-flow-with-one-off" => here(is("circulators-opposed"), 0.93, 0.003),
        "circulator-sounds-rough" => {
            0.01 + 0.8 * ramp(state.bearing, 0.0, 0.6) + 0.3 * state.solids
        }
        "shaft-stiff" => 0.01 + 0.7 * ramp(state.bearing, 0.2, 0.9),
        "flow-when-idle" => here(is("check-valve-missing"), 0.85, 0.01),
        "ewt-creeps-when-idle" => here(is("check-valve-missing"), 0.5, 0.01),
        "valve-slams" => match fault {
            "check-valve-missing" | "circulators-opposed" => 0.25,
            _ => 0.01,
        },
        "check-valve-hot-spot" => here(is("check-valve-stuck-shut"), 0.88, 0.01),
        "no-check-valve-found" => here(!truth.plant.check_valves, 0.6, 0.01),
        "air-drawn-at-reservoir" => here(is("reservoir-draws-air"), 0.88, 0.01),
        "valve-not-in-run-position" => here(is("three-way-valve-mis-set"), 0.95, 0.005),
        "port-temperatures-disagree" => {
            let ports = is("three-way-valve-mis-set");
            here(ports, 0.1 + 0.8 * ramp(state.bypass, 0.05, 0.2), 0.01)
        }
        "isolation-valve-not-open" => here(is("isolation-valve-part-closed"), 0.9, 0.005),
        "drop-across-open-valve" => match fault {
            "isolation-valve-part-closed" => 0.8,
            "check-valve-stuck-shut" => 0.3,
            _ => 0.01,
        },
        "split-sign-reversed" => here(is("supply-return-crossed"), 0.9, 0.002),
        "crossed-at-unit" => here(is("supply-return-crossed"), 0.92, 0.002),
        _ => return None,
    })
}

fn pressure_sign(truth: &Truth, finding: &str) -> Option<f64> {
    let (state, fault) = (&truth.state, truth.fault);
    let fallen = truth.habits.charge - state.pressure;
    let low = ramp(-state.pressure, -22.0, -8.0);
    let high = ramp(state.pressure, 66.0, 85.0);
    Some(match finding {
        "gauge-reads-low" => 0.02 + 0.75 * low,
        // Few people look at the gauge unless something makes them.
        "gauge-lower-than-before" => {
            let ordinary = matches!(fault, "ordinary-relaxation" | "seasonal-swing");
            let seen = if ordinary { 0.8 } else { 0.15 + 0.5 * low };
            0.01 + seen * ramp(fallen, 6.0, 20.0)
        }
        "gauge-reads-high" => 0.01 + 0.75 * high,
        "noise-worse-in-summer" => {
            let summer = if truth.plant.heating_now { 0.25 } else { 1.0 };
            0.01 + 0.5 * truth.starved() * summer + 0.25 * state.air * summer
        }
        "relief-valve-weeps" => {
            let tank = state.waterlogged || state.pre_charge.abs() > 6.0;
            0.01 + 0.55 * high + if tank { 0.25 } else { 0.0 }
        }
        "pressure-follows-temperature" => {
            let share = ramp(truth.swing.abs(), 4.0, 14.0);
            0.02 + 0.85 * share
        }
        "gauge-swings-widely" => {
            0.01 + if state.waterlogged {
                0.85
            } else {
                0.7 * ramp(state.pre_charge.abs(), 5.0, 14.0)
            }
        }
        "tank-rings-full" => {
            if state.waterlogged {
                0.88
            } else {
                0.03 + 0.3 * ramp(-state.pre_charge, 8.0, 16.0)
            }
        }
        "tank-valve-gives-fluid" => {
            if state.waterlogged {
                0.8
            } else {
                0.002
            }
        }
        "topped-up-often" => 0.01 + 0.7 * ramp(state.added, 0.5, 4.0),
        "wet-or-crusted-fittings" => match fault {
            "leak-indoors" => 0.8,
            "over-pressurised" => 0.2,
            _ => 0.02,
        },
        "loss-with-building-isolated" => {
            if fault == "leak-in-ground" {
                0.93
            } else {
                0.01
            }
        }
        "loss-indoors-alone" => {
            if fault == "leak-indoors" {
                0.93
            } else {
                0.01
            }
        }
        "ground-wet-over-loop" => {
            if fault == "leak-in-ground" {
                0.2
            } else {
                0.005
            }
        }
        "one-circuit-loses" => {
            if fault == "leak-in-ground" {
                0.85
            } else {
                0.005
            }
        }
        _ => return None,
    })
}
