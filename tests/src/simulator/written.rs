//! What is on paper: the system and its commissioning, as far as anybody wrote
//! it down; and what was told about how the trouble began.

use super::plant::{CURVE, Centre, Ground, Plant, Run, feet};
use super::truth::Truth;
use crate::invented::Dice;
use returnline_core::fluids::FluidKind;
use returnline_core::units::Unit;
use serde_json::{Map, Value, json};

fn measure(value: f64, unit: &str) -> Value {
    json!({"value": (value * 1_000.0).round() / 1_000.0, "unit": unit})
}

/// Fields that are written down, each with the same chance.
struct Paper<'a> {
    map: Map<String, Value>,
    chance: f64,
    dice: &'a mut Dice,
}

impl Paper<'_> {
    fn note(&mut self, field: &str, value: Value) {
        if self.dice.chance(self.chance) {
            self.map.insert(field.to_owned(), value);
        }
    }
}

/// The file without the visit.
#[must_use]
pub fn records(truth: &Truth, dice: &mut Dice) -> Value {
    // Some crews write everything down, some nothing.
    let system_known = [0.95, 0.8, 0.4][dice.below(3)];
    let work_known = [0.85, 0.5, 0.15][dice.below(3)];
    json!({
        "format": "returnline-visit",
        "version": 1,
        "site": {"name": "Simulated (invented)"},
        "system": system(truth, system_known, dice),
        "commissioning": commissioning(truth, work_known, dice),
    })
}

fn pipe(run: &Run) -> Value {
    json!({"standard": "ips_pe", "size": run.size, "sdr": "11"})
}

fn system(truth: &Truth, chance: f64, dice: &mut Dice) -> Value {
    let plant = &truth.designed;
    let psi = |pa: f64| Unit::Psi.from_si(pa);
    let gpm = |flow: f64| Unit::GallonPerMinute.from_si(flow);
    let mut unit = Paper {
        map: Map::new(),
        chance,
        dice,
    };
    unit.note("heating_capacity", measure(plant.heating / 1e3, "kW"));
    unit.note("cooling_capacity", measure(plant.tons, "ton"));
    unit.note("heating_cop", measure(plant.cop.0, "1"));
    unit.note("cooling_cop", measure(plant.cop.1, "1"));
    unit.note("rated_flow", measure(gpm(plant.rated_flow), "gpm"));
    let points: Vec<Value> = [0.6, 1.0, 1.3]
        .iter()
        .map(|share: &f64| {
            let drop = psi(plant.exchanger_drop) * share.powf(1.8);
            json!({"flow": measure(gpm(plant.rated_flow) * share, "gpm"), "drop": measure(drop, "psi")})
        })
        .collect();
    unit.note(
        "exchanger",
        json!({
            "kind": if plant.plate { "brazed_plate" } else { "coaxial" },
            "curve_temperature": measure(15.0, "degC"),
            "curve": points,
        }),
    );
    let heat_pump = Value::Object(unit.map);
    let mut paper = Paper {
        map: Map::new(),
        chance,
        dice,
    };
    paper.map.insert("heat_pump".into(), heat_pump);
    paper.note("installed_on", json!(truth.dates.start.to_string()));
    // What stands in the room is seen.
    paper.chance = chance.max(0.9);
    paper.note("flow_centre", centre(plant));
    paper.note("fluid", fluid(plant));
    paper.note("strainer", json!(plant.strainer));
    paper.chance = chance;
    paper.note("check_valves", json!(plant.check_valves));
    paper.note("circulator_piping", json!("series"));
    let circulators = circulators(plant, paper.dice.chance(chance));
    paper.note("circulators", circulators);
    let ground = json!({
        "kind": match plant.ground {
            Ground::Vertical => "vertical",
            Ground::Horizontal => "horizontal",
            Ground::Pond => "pond",
        },
        "circuits": circuits(truth),
        "headers": [{"pipe": pipe(&plant.header), "length": measure(feet(plant.header.length), "ft")}],
    });
    paper.note("ground", ground);
    let indoor =
        json!([{"pipe": pipe(&plant.indoor), "length": measure(feet(plant.indoor.length), "ft")}]);
    paper.note("indoor", indoor);
    Value::Object(paper.map)
}

/// The circuits as laid: an uneven field is uneven on paper too.
fn circuits(truth: &Truth) -> Vec<Value> {
    let plant = &truth.plant;
    let group = |count: usize, share: f64| {
        json!({
            "count": count,
            "pipe": pipe(&plant.circuit),
            "length": measure(feet(plant.circuit.length * share), "ft"),
        })
    };
    if truth
        .state
        .circuit_length
        .iter()
        .all(|share| (share - 1.0).abs() < 1e-9)
    {
        vec![group(plant.circuits, 1.0)]
    } else {
        truth
            .state
            .circuit_length
            .iter()
            .map(|&share| group(1, share))
            .collect()
    }
}

fn centre(plant: &Plant) -> Value {
    match plant.centre {
        Centre::Sealed => json!({"kind": "sealed"}),
        Centre::Tank => json!({
            "kind": "sealed_with_tank",
            "tank_volume": measure(super::pressure::TANK.0, "gal"),
            "pre_charge": measure(super::pressure::TANK.1, "psi"),
        }),
        Centre::Vented => json!({"kind": "non_pressurised"}),
    }
}

fn fluid(plant: &Plant) -> Value {
    let kind = match plant.fluid {
        FluidKind::PropyleneGlycol => "propylene_glycol",
        FluidKind::EthyleneGlycol => "ethylene_glycol",
        FluidKind::Methanol => "methanol",
        FluidKind::Ethanol => "ethanol",
        FluidKind::Water => return json!({"kind": "water"}),
    };
    json!({"kind": kind, "volume_fraction": measure(100.0 * plant.strength, "%")})
}

fn circulators(plant: &Plant, curve: bool) -> Value {
    let each = plant.circulators as f64;
    let points: Vec<Value> = [0.0, 0.2, 0.4, 0.6, 0.8]
        .iter()
        .map(|share: &f64| {
            let head = plant.shut_off / each * (1.0 - share.powf(CURVE)) / (9.81 * 1_000.0);
            let flow = Unit::GallonPerMinute.from_si(plant.free_flow * share);
            json!({"flow": measure(flow, "gpm"), "head": measure(head, "m")})
        })
        .collect();
    let mut one = json!({"rated_power": measure(plant.pump_power / each, "W")});
    if let Some(map) = one.as_object_mut().filter(|_| curve) {
        map.insert("curve".into(), Value::Array(points));
    }
    Value::Array(vec![one; plant.circulators])
}

fn commissioning(truth: &Truth, chance: f64, dice: &mut Dice) -> Value {
    let habits = &truth.habits;
    let mut paper = Paper {
        map: Map::new(),
        chance,
        dice,
    };
    paper.note("date", json!(truth.dates.start.to_string()));
    // A crew that never flushed wrote nothing about it.
    match habits.velocity {
        Some(velocity) => {
            paper.note("flushed", json!(true));
            // Numbers are rarer than ticks.
            paper.chance = 0.5 * chance;
            paper.note("flush_velocity", measure(velocity, "ft/s"));
            paper.note("flush_duration", measure(habits.hours, "h"));
            paper.chance = chance;
            let recorded = paper.dice.chance(chance);
            paper.note("flush_recorded", json!(recorded));
        }
        None => paper.note("flushed", json!(false)),
    }
    paper.note("cart_power", measure(habits.cart, "hp"));
    paper.note("circuits_flushed_singly", json!(habits.singly));
    paper.note("heat_pump_isolated", json!(habits.isolated));
    paper.note("filtered", json!(habits.filtered));
    paper.note("circulators_bled", json!(habits.bled));
    paper.note("water_tested", json!(habits.tested));
    paper.note(
        "water_source",
        json!(if habits.well { "well" } else { "mains" }),
    );
    paper.note("pipe_relaxed", json!(habits.relaxed));
    if truth.plant.centre != Centre::Vented {
        paper.note("charge_pressure", measure(habits.charge, "psi"));
        paper.note(
            "charge_temperature",
            measure(habits.charge_temperature, "degC"),
        );
    }
    paper.note("mix_duration", measure(habits.mixed, "h"));
    paper.note("concentration_checked", json!(habits.checked));
    Value::Object(paper.map)
}

/// How the trouble began, as people tell it.
pub fn began(fault: &str, dice: &mut Dice) -> Option<&'static str> {
    let usual = match fault {
        "air-left-in-circuit"
        | "flush-too-weak"
        | "circulators-not-bled"
        | "circuit-air-locked"
        | "supply-return-crossed"
        | "circulator-too-small"
        | "circulators-opposed"
        | "check-valve-missing"
        | "unit-not-isolated-in-flush"
        | "circuits-unbalanced"
        | "circuit-kinked"
        | "ground-conducts-poorly"
        | "loop-too-short" => "since-start-up",
        "circulator-worn"
        | "strainer-loaded"
        | "exchanger-loaded"
        | "antifreeze-degraded"
        | "scaling-fill-water"
        | "iron-fill-water"
        | "corrosion"
        | "biological-fouling"
        | "air-filter-or-coil-dirty"
        | "refrigerant-undercharge"
        | "leak-indoors"
        | "leak-in-ground" => "came-on-slowly",
        "one-circulator-dead" | "flow-switch-or-sensor-fault" | "check-valve-stuck-shut" => {
            "came-on-suddenly"
        }
        _ => "",
    };
    let any = ["since-start-up", "came-on-slowly", "came-on-suddenly"][dice.below(3)];
    let told = if !usual.is_empty() && dice.chance(0.75) {
        usual
    } else {
        any
    };
    // Ordinary behaviour and calls about nothing have no beginning that is told.
    let ordinary = matches!(fault, "" | "ordinary-relaxation" | "seasonal-swing");
    (!ordinary || dice.chance(0.3)).then_some(told)
}

/// The instrument that a trial is about.
#[must_use]
pub fn trial_of(finding: &str) -> Option<&'static str> {
    Some(match finding {
        "second-gauge-disagrees" => "dial_gauge",
        "digital-gauge-not-zero" => "digital_gauge",
        "differential-gauge-not-zero" => "differential_gauge",
        "port-thermometer-ice-wrong" => "port_thermometer",
        "clamp-thermometer-ice-wrong" => "clamp_thermometer",
        "meter-disagrees-with-bucket" => "flow_meter",
        "refractometer-water-wrong" => "refractometer",
        "hydrometer-water-wrong" => "hydrometer",
        "power-meter-disagrees" => "power_meter",
        "refrigerant-gauges-not-zero" => "refrigerant_gauges",
        "test-kit-control-fails" => "test_strip",
        "display-thermometer-disagree" => "unit_display",
        _ => return None,
    })
}
