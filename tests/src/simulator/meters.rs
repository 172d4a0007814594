//! What instruments show: the true value, the instrument's own error, and a lie
//! if it is the one that lies.

mod samples;

use self::samples::{dead_head, freeze_point, log};
use super::plant::Centre;
use super::truth::Truth;
use crate::invented::Dice;
use returnline_core::units::{Quantity, Temperature, Unit};

/// One number written down.
#[derive(Clone, Debug)]
pub struct Shown {
    /// Where.
    pub point: &'static str,
    /// The number.
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
    /// With what.
    pub instrument: &'static str,
    /// Which circuit.
    pub circuit: Option<u32>,
    /// When, if not now.
    pub at: Option<String>,
    /// Compressor on, circulators on, or at rest.
    pub mode: &'static str,
}

/// Numbers an ordinary visit may take, in groups read together.
pub const POINTS: &[&str] = &[
    "static_pressure",
    "suction_pressure",
    "tank_pre_charge",
    "reservoir_level_change",
    "top_up_volume",
    "exchanger_drop",
    "flow",
    "strainer_drop",
    "circulator_rise",
    "shut_off_rise",
    "circulator_power",
    "circulator_body_temperature",
    "freeze_point_supply",
    "freeze_point_return",
    "specific_gravity",
    "fluid_ph",
    "entering_water",
    "leaving_water",
    "loop_temperature",
    "circuit_return",
    "lowest_entering_water",
    "water_ph",
    "water_hardness",
    "water_iron",
    "unit_power",
    "unit_capacity",
    "air_temperature_change",
    "evaporating_temperature",
    "condensing_temperature",
    "superheat",
    "subcooling",
];

/// Numbers that take a test of their own.
pub const TESTS: &[&str] = &["dead_head_drop", "pressure_log"];

/// An instrument that lies, and by how much (in its own way).
#[derive(Copy, Clone, Debug)]
pub struct Lie {
    /// Which.
    pub instrument: &'static str,
    /// Sign and size, 0.5 to 1 either way.
    pub size: f64,
}

impl Lie {
    /// What a lying instrument makes of a true value in a unit.
    fn distort(self, value: f64, unit: &str) -> f64 {
        let size = self.size;
        match self.instrument {
            "dial_gauge" => value + 22.0 * size,
            "digital_gauge" => value + 14.0 * size,
            "differential_gauge" => value * (1.0 + 0.5 * size) + 1.5 * size,
            "port_thermometer" | "clamp_thermometer" => value + 5.0 * size,
            "flow_meter" | "clamp_flow_meter" => value * (1.0 + 0.45 * size),
            "refractometer" => value + 9.0 * size,
            "hydrometer" if unit == "1" => value + 0.015 * size,
            "hydrometer" => value + 8.0 * size,
            "power_meter" => value * (1.0 + 0.45 * size),
            "refrigerant_gauges" => value + 7.0 * size,
            "test_strip" if unit == "1" => value + 1.6 * size,
            "test_strip" => value * (1.0 + 0.8 * size),
            "unit_display" if unit == "degC" => value + 5.0 * size,
            "unit_display" => value * (1.0 + 0.35 * size),
            _ => value,
        }
    }
}

/// Error of a sound instrument, one standard deviation, of a value in a unit.
fn spread(instrument: &str, unit: &str, value: f64) -> f64 {
    match (instrument, unit) {
        ("dial_gauge", _) => 1.0,
        ("digital_gauge", _) => 0.3,
        ("differential_gauge", _) => 0.12,
        ("port_thermometer", "K") => 0.4,
        ("port_thermometer", _) => 0.2,
        ("flow_meter", _) => 0.02 * value,
        ("clamp_flow_meter", _) => 0.05 * value,
        ("refractometer", _) => 0.5,
        ("hydrometer", "1") => 0.001,
        ("hydrometer", _) => 0.8,
        ("power_meter", _) => 0.015 * value,
        ("refrigerant_gauges", _) => 0.7,
        ("test_strip", "1") => 0.2,
        ("test_strip", _) => 0.12 * value,
        ("ruler", _) => 0.15,
        ("unit_display", "degC") => 0.5,
        ("unit_display", _) => 0.04 * value,
        (_, "gal") => 0.05,
        _ => 0.5,
    }
}

/// What a point shows; nothing where the system or the fluid has none.
#[must_use]
pub fn read(truth: &Truth, point: &str, lie: Option<Lie>, dice: &mut Dice) -> Vec<Shown> {
    let mut all = true_values(truth, point, dice);
    for shown in &mut all {
        shown.value += dice.normal() * spread(shown.instrument, shown.unit, shown.value.abs());
        if let Some(lie) = lie.filter(|lie| lie.instrument == shown.instrument) {
            shown.value = lie.distort(shown.value, shown.unit);
        }
        let floor = match (shown.unit, shown.point) {
            ("psi", "static_pressure" | "suction_pressure" | "tank_pre_charge") => -14.0,
            ("psi", _) => -5.0,
            ("degC", _) => -45.0,
            ("in", "reservoir_level_change") => -40.0,
            ("1", "specific_gravity") => 0.8,
            _ => 0.0,
        };
        shown.value = (shown.value.max(floor) * 1_000.0).round() / 1_000.0;
    }
    all
}

fn true_values(truth: &Truth, point: &str, dice: &mut Dice) -> Vec<Shown> {
    let running = &truth.running;
    let compressor = if truth.plant.heating_now {
        "heating"
    } else {
        "cooling"
    };
    let psi = |pa: f64| Unit::Psi.from_si(pa);
    let one = |point, value, unit, instrument, mode| {
        vec![Shown {
            point,
            value,
            unit,
            instrument,
            circuit: None,
            at: None,
            mode,
        }]
    };
    let state = &truth.state;
    let vented = truth.plant.centre == Centre::Vented;
    let gauge = if dice.chance(0.6) {
        "dial_gauge"
    } else {
        "digital_gauge"
    };
    // Air lets every needle of the running loop wander.
    let wander = 1.0 + 0.12 * state.air * dice.normal();
    match point {
        "static_pressure" if !vented => {
            one("static_pressure", state.pressure, "psi", gauge, "idle")
        }
        "suction_pressure" => {
            // The suction lies a little under the static pressure: half of what
            // the ground side takes is lost before it.
            let column = if vented {
                1.2 + state.level / 27.7
            } else {
                state.pressure
            };
            let lost = if vented {
                0.15
            } else {
                0.3 * psi(running.flows.rise)
            };
            let strainer = psi(running.flows.strainer);
            one(
                "suction_pressure",
                column - lost - strainer,
                "psi",
                gauge,
                compressor,
            )
        }
        "tank_pre_charge" if truth.plant.centre == Centre::Tank => one(
            "tank_pre_charge",
            super::pressure::TANK.1 + state.pre_charge,
            "psi",
            "dial_gauge",
            "idle",
        ),
        "reservoir_level_change" if vented => {
            one("reservoir_level_change", state.level, "in", "ruler", "idle")
        }
        "top_up_volume" => one("top_up_volume", state.added, "gal", "flow_meter", "idle"),
        "exchanger_drop" => {
            let drop = psi(running.flows.exchanger) * wander;
            one(
                "exchanger_drop",
                drop,
                "psi",
                "differential_gauge",
                compressor,
            )
        }
        "flow" => {
            let meter = if dice.chance(0.4) {
                "flow_meter"
            } else {
                "clamp_flow_meter"
            };
            let flow = Unit::GallonPerMinute.from_si(running.flows.unit) * wander;
            one("flow", flow, "gpm", meter, compressor)
        }
        "strainer_drop" if truth.plant.strainer => {
            let drop = psi(running.flows.strainer);
            one(
                "strainer_drop",
                drop,
                "psi",
                "differential_gauge",
                compressor,
            )
        }
        "circulator_rise" => {
            let rise = psi(running.flows.rise) * wander;
            one(
                "circulator_rise",
                rise,
                "psi",
                "differential_gauge",
                compressor,
            )
        }
        "shut_off_rise" => {
            let rise = psi(super::network::shut_off_rise(&truth.plant, state));
            one(
                "shut_off_rise",
                rise,
                "psi",
                "differential_gauge",
                "pumps_only",
            )
        }
        "circulator_power" => one(
            "circulator_power",
            running.pumps,
            "W",
            "power_meter",
            compressor,
        ),
        "circulator_body_temperature" => {
            let hot = 18.0 + 45.0 * state.pump_air + 18.0 * state.bearing;
            let body = running.entering + hot * if state.pump_input < 0.7 { 0.5 } else { 1.0 };
            one(
                "circulator_body_temperature",
                body,
                "degC",
                "clamp_thermometer",
                compressor,
            )
        }
        "freeze_point_supply" | "freeze_point_return" => freeze_point(truth, point),
        "specific_gravity" => {
            let at = Temperature::from_celsius(18.0);
            let density = state.fluid.density(at).map_or(1_000.0, |d| d.si());
            let mut both = one(
                "specific_gravity",
                density / 999.0,
                "1",
                "hydrometer",
                "idle",
            );
            both.extend(one(
                "sample_temperature",
                18.0,
                "degC",
                "port_thermometer",
                "idle",
            ));
            both
        }
        "fluid_ph" => one("fluid_ph", state.ph, "1", "test_strip", "idle"),
        "entering_water" => one(
            "entering_water",
            running.entering,
            "degC",
            "port_thermometer",
            compressor,
        ),
        "leaving_water" => one(
            "leaving_water",
            running.leaving,
            "degC",
            "port_thermometer",
            compressor,
        ),
        "loop_temperature" => one(
            "loop_temperature",
            truth.loop_temperature(),
            "degC",
            "port_thermometer",
            "idle",
        ),
        "circuit_return" if truth.plant.circuits > 1 => running
            .returns
            .iter()
            .zip(1..)
            .map(|(&value, circuit)| Shown {
                point: "circuit_return",
                value,
                unit: "degC",
                instrument: "clamp_thermometer",
                circuit: Some(circuit),
                at: None,
                mode: compressor,
            })
            .collect(),
        "lowest_entering_water" if truth.plant.heating_now => {
            let lowest = running.entering - dice.between(0.0, 1.5);
            one(
                "lowest_entering_water",
                lowest,
                "degC",
                "unit_display",
                "heating",
            )
        }
        "water_ph" => one("water_ph", state.water_ph, "1", "test_strip", "idle"),
        "water_hardness" => {
            let mut both = one(
                "water_hardness",
                state.hardness,
                "mg/L",
                "test_strip",
                "idle",
            );
            both.extend(one(
                "water_alkalinity",
                state.alkalinity,
                "mg/L",
                "test_strip",
                "idle",
            ));
            both.extend(one(
                "water_chloride",
                state.chloride,
                "mg/L",
                "test_strip",
                "idle",
            ));
            both
        }
        "water_iron" => one("water_iron", state.iron, "mg/L", "test_strip", "idle"),
        "unit_power" => one("unit_power", running.input, "W", "power_meter", compressor),
        "unit_capacity" => one(
            "unit_capacity",
            running.capacity,
            "W",
            "unit_display",
            compressor,
        ),
        "air_temperature_change" => one(
            "air_temperature_change",
            running.air,
            "K",
            "port_thermometer",
            compressor,
        ),
        "evaporating_temperature" if truth.plant.heating_now => one(
            "evaporating_temperature",
            running.saturation,
            "degC",
            "refrigerant_gauges",
            "heating",
        ),
        "condensing_temperature" if !truth.plant.heating_now => one(
            "condensing_temperature",
            running.saturation,
            "degC",
            "refrigerant_gauges",
            "cooling",
        ),
        "superheat" => one(
            "superheat",
            running.superheat,
            "K",
            "refrigerant_gauges",
            compressor,
        ),
        "subcooling" => one(
            "subcooling",
            running.subcooling,
            "K",
            "refrigerant_gauges",
            compressor,
        ),
        "dead_head_drop" => dead_head(truth),
        "pressure_log" if !vented => log(truth),
        _ => Vec::new(),
    }
}
