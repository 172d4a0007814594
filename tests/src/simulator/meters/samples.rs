//! What is tested rather than read: the sample, the dead-head test, the log.

use super::Shown;
use crate::simulator::truth::Truth;
use chrono::Duration;
use returnline_core::fluids::FluidKind;
use returnline_core::units::{Quantity, Unit};

/// Freeze point as the usual instrument of the recorded fluid shows it.
pub(super) fn freeze_point(truth: &Truth, point: &str) -> Vec<Shown> {
    let recorded = truth.plant.fluid;
    if recorded == FluidKind::Water {
        return Vec::new();
    }
    let alcohol = |kind| matches!(kind, FluidKind::Methanol | FluidKind::Ethanol);
    let (point, way) = if point == "freeze_point_supply" {
        ("freeze_point_supply", 0.5)
    } else {
        ("freeze_point_return", -0.5)
    };
    let fluid = truth.state.fluid;
    let real = fluid.volume_fraction().si() + way * truth.state.unmixed;
    // What a refractometer on a glycol scale, or a hydrometer on the scale of an
    // alcohol, makes of another fluid. Judgement.
    let seen = match (alcohol(recorded), fluid.kind()) {
        (false, FluidKind::Methanol) => 0.08 * real,
        (false, FluidKind::Ethanol) => 0.55 * real,
        (true, kind) if !alcohol(kind) => 0.0,
        _ => real,
    };
    let freezing =
        crate::simulator::plant::solution(recorded, seen.clamp(0.0, 0.55)).freezing_point();
    let instrument = if alcohol(recorded) {
        "hydrometer"
    } else {
        "refractometer"
    };
    vec![Shown {
        point,
        value: freezing.celsius(),
        unit: "degC",
        instrument,
        circuit: None,
        at: None,
        mode: "idle",
    }]
}

/// Level drop of the cart's reservoir (14 in across) from 15 to 50 psi: growth
/// of the pipe by its short-term modulus, and the squeeze of the trapped air.
pub(super) fn dead_head(truth: &Truth) -> Vec<Shown> {
    let volume = Unit::Gallon.from_si(truth.plant.volume());
    let stretch = 0.000_073 * volume * 35.0 * (1.0 - truth.properties.restraint.si());
    let trapped = volume * (0.03 * truth.state.air + 0.000_5);
    let idle = truth
        .state
        .circuit_open
        .iter()
        .filter(|open| **open < 0.2)
        .count();
    let lock = if truth.fault == "circuit-air-locked" {
        0.01 * idle as f64 * volume
    } else {
        0.0
    };
    let squeezed = (trapped + lock) * (1.0 - (15.0 + 14.7) / (50.0 + 14.7));
    let inches = (stretch + squeezed) / 0.666;
    let one = |point, value, unit, instrument| Shown {
        point,
        value,
        unit,
        instrument,
        circuit: None,
        at: None,
        mode: "idle",
    };
    vec![
        one("dead_head_drop", inches, "in", "ruler"),
        one("dead_head_pressure_before", 15.0, "psi", "dial_gauge"),
        one("dead_head_pressure_after", 50.0, "psi", "dial_gauge"),
    ]
}

/// The owner's log: the gauge on four days.
pub(super) fn log(truth: &Truth) -> Vec<Shown> {
    let Some(today) = truth.tight_before(0.0) else {
        return Vec::new();
    };
    let span = (truth.dates.age() - 1.0).clamp(0.0, 9.0);
    if span < 3.0 {
        return Vec::new();
    }
    [1.0, 0.66, 0.33, 0.0]
        .iter()
        .filter_map(|share| {
            let days = (share * span).round();
            let tight = truth.tight_before(days)?;
            let value = truth.state.pressure + (tight - today) + truth.state.loss * days;
            let day = truth.dates.visit - Duration::days(days as i64);
            Some(Shown {
                point: "static_pressure",
                value,
                unit: "psi",
                instrument: "digital_gauge",
                circuit: None,
                at: Some(format!("{day}T09:00:00-05:00")),
                mode: "idle",
            })
        })
        .collect()
}
