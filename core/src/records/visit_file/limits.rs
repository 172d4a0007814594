//! What a number in a record may be, each range declared once, and the checks
//! that a schema cannot express because units differ.

use super::fault::{Fault, FaultCode};
use super::{VisitFile, Vocabulary};
use crate::records::{FlowCentre, GroundLoop, Pipe, PipeRun, ReadingError, Visit, name_of};
use crate::units::{Measure, Quantity, Unit};

/// A range in a unit that people know.
struct Range {
    low: f64,
    high: f64,
    unit: Unit,
}

const fn range(low: f64, high: f64, unit: Unit) -> Range {
    Range { low, high, unit }
}

// Ends of the ranges are judgement: beyond them a value is a slip of the pen.
const ELEVATION: Range = range(-1_500.0, 20_000.0, Unit::Foot);
const UNIT_POWER: Range = range(0.05, 1_000.0, Unit::Ton);
const COP: Range = range(1.0, 15.0, Unit::Plain);
const UNIT_FLOW: Range = range(0.1, 3_000.0, Unit::GallonPerMinute);
const FREEZE_GUARD: Range = range(-40.0, 60.0, Unit::Fahrenheit);
const RATED_PRESSURE: Range = range(10.0, 1_000.0, Unit::Psi);
const CONDUCTANCE: Range = range(1.0, 1e7, Unit::WattPerKelvin);
const DROP: Range = range(0.0, 100.0, Unit::Psi);
const CURVE_FLOW: Range = range(0.0, 3_000.0, Unit::GallonPerMinute);
const HEAD: Range = range(0.0, 1_000.0, Unit::Foot);
const FLUID_TEMPERATURE: Range = range(-40.0, 212.0, Unit::Fahrenheit);
const SPEED: Range = range(5.0, 120.0, Unit::Percent);
const CIRCULATOR_POWER: Range = range(1.0, 100_000.0, Unit::Watt);
const SUCTION: Range = range(-14.7, 100.0, Unit::Psi);
const TANK: Range = range(0.1, 10_000.0, Unit::Gallon);
const DIAMETER: Range = range(0.1, 120.0, Unit::Inch);
const CIRCUIT: Range = range(1.0, 20_000.0, Unit::Foot);
const RUN: Range = range(0.1, 20_000.0, Unit::Foot);
const SHARE: Range = range(0.0, 100.0, Unit::Percent);
const FLUSH_VELOCITY: Range = range(0.0, 50.0, Unit::FootPerSecond);
const WORK_TIME: Range = range(0.0, 2_000.0, Unit::Hour);
const CART_POWER: Range = range(0.01, 200.0, Unit::Horsepower);
const LEVEL: Range = range(-5.0, 200.0, Unit::Inch);
const CHARGE_PRESSURE: Range = range(-14.7, 300.0, Unit::Psi);
const FILL: Range = range(0.0, 100_000.0, Unit::Gallon);
const COST: Range = range(0.0, 10_000_000.0, Unit::Plain);
const WANTED_FREEZE: Range = range(-60.0, 40.0, Unit::Fahrenheit);

struct Checker<'a> {
    faults: &'a mut Vec<Fault>,
}

impl Checker<'_> {
    fn one<Q: Quantity>(&mut self, path: &str, measure: Option<Measure<Q>>, range: &Range) {
        let Some(measure) = measure else { return };
        let unit = measure.unit();
        let [low, high] = [range.low, range.high].map(|end| unit.from_si(range.unit.to_si(end)));
        let hair = 1e-9 * (high - low).abs();
        if !(low - hair..=high + hair).contains(&measure.value()) {
            let found = format!("{} {}", measure.value(), unit.symbol());
            let accepted = format!("{} … {} {}", short(low), short(high), unit.symbol());
            self.faults.push(Fault::at(
                &format!("{path}.value"),
                FaultCode::OutOfRange,
                &found,
                &accepted,
            ));
        }
    }

    fn run(&mut self, path: &str, run: &PipeRun) {
        self.one(&format!("{path}.length"), Some(run.length), &RUN);
        self.pipe(&format!("{path}.pipe"), &run.pipe);
    }

    fn pipe(&mut self, path: &str, pipe: &Pipe) {
        if let Pipe::Plain { inside_diameter } = pipe {
            self.one(
                &format!("{path}.inside_diameter"),
                Some(*inside_diameter),
                &DIAMETER,
            );
        }
    }

    fn ground(&mut self, path: &str, ground: &GroundLoop) {
        for (index, circuit) in ground.circuits.iter().enumerate() {
            let path = format!("{path}.circuits[{index}]");
            self.one(&format!("{path}.length"), Some(circuit.length), &CIRCUIT);
            self.pipe(&format!("{path}.pipe"), &circuit.pipe);
        }
        for (index, run) in ground.headers.iter().enumerate() {
            self.run(&format!("{path}.headers[{index}]"), run);
        }
    }
}

/// Checks every number of the file that is not a reading.
pub(super) fn check(file: &VisitFile, faults: &mut Vec<Fault>) {
    let mut c = Checker { faults };
    c.one("site.elevation", file.site.elevation, &ELEVATION);
    let system = &file.system;
    if let Some(unit) = &system.heat_pump {
        let p = "system.heat_pump";
        c.one(
            &format!("{p}.heating_capacity"),
            unit.heating_capacity,
            &UNIT_POWER,
        );
        c.one(
            &format!("{p}.cooling_capacity"),
            unit.cooling_capacity,
            &UNIT_POWER,
        );
        c.one(&format!("{p}.heating_cop"), unit.heating_cop, &COP);
        c.one(&format!("{p}.cooling_cop"), unit.cooling_cop, &COP);
        c.one(&format!("{p}.rated_flow"), unit.rated_flow, &UNIT_FLOW);
        c.one(&format!("{p}.minimum_flow"), unit.minimum_flow, &UNIT_FLOW);
        c.one(
            &format!("{p}.freeze_guard"),
            unit.freeze_guard,
            &FREEZE_GUARD,
        );
        c.one(
            &format!("{p}.maximum_pressure"),
            unit.maximum_pressure,
            &RATED_PRESSURE,
        );
        if let Some(exchanger) = &unit.exchanger {
            let p = "system.heat_pump.exchanger";
            c.one(
                &format!("{p}.clean_conductance"),
                exchanger.clean_conductance,
                &CONDUCTANCE,
            );
            c.one(
                &format!("{p}.curve_temperature"),
                exchanger.curve_temperature,
                &FLUID_TEMPERATURE,
            );
            c.one(&format!("{p}.volume"), exchanger.volume, &TANK);
            for (index, point) in exchanger.curve.iter().enumerate() {
                c.one(
                    &format!("{p}.curve[{index}].flow"),
                    Some(point.flow),
                    &CURVE_FLOW,
                );
                c.one(&format!("{p}.curve[{index}].drop"), Some(point.drop), &DROP);
            }
        }
    }
    match &system.flow_centre {
        Some(FlowCentre::SealedWithTank {
            tank_volume,
            pre_charge,
        }) => {
            c.one("system.flow_centre.tank_volume", *tank_volume, &TANK);
            c.one(
                "system.flow_centre.pre_charge",
                *pre_charge,
                &CHARGE_PRESSURE,
            );
        }
        Some(FlowCentre::NonPressurised { reservoir_diameter }) => {
            c.one(
                "system.flow_centre.reservoir_diameter",
                *reservoir_diameter,
                &DIAMETER,
            );
        }
        Some(FlowCentre::Sealed {}) | None => {}
    }
    for (index, circulator) in system.circulators.iter().enumerate() {
        let p = format!("system.circulators[{index}]");
        c.one(&format!("{p}.speed"), circulator.speed, &SPEED);
        c.one(
            &format!("{p}.rated_power"),
            circulator.rated_power,
            &CIRCULATOR_POWER,
        );
        c.one(
            &format!("{p}.minimum_suction"),
            circulator.minimum_suction,
            &SUCTION,
        );
        for (index, point) in circulator.curve.iter().enumerate() {
            c.one(
                &format!("{p}.curve[{index}].flow"),
                Some(point.flow),
                &CURVE_FLOW,
            );
            c.one(&format!("{p}.curve[{index}].head"), Some(point.head), &HEAD);
        }
    }
    if let Some(ground) = &system.ground {
        c.ground("system.ground", ground);
    }
    for (index, run) in system.indoor.iter().enumerate() {
        c.run(&format!("system.indoor[{index}]"), run);
    }
    if let Some(fluid) = &system.fluid {
        c.one(
            "system.fluid.volume_fraction",
            fluid.volume_fraction,
            &SHARE,
        );
    }
    check_commissioning(file, &mut c);
    check_means(&file.visit, &mut c);
}

fn check_commissioning(file: &VisitFile, c: &mut Checker<'_>) {
    let record = &file.commissioning;
    let p = "commissioning";
    c.one(&format!("{p}.flush_flow"), record.flush_flow, &CURVE_FLOW);
    c.one(
        &format!("{p}.flush_velocity"),
        record.flush_velocity,
        &FLUSH_VELOCITY,
    );
    c.one(
        &format!("{p}.flush_duration"),
        record.flush_duration,
        &WORK_TIME,
    );
    c.one(&format!("{p}.cart_power"), record.cart_power, &CART_POWER);
    c.one(
        &format!("{p}.dead_head_drop"),
        record.dead_head_drop,
        &LEVEL,
    );
    c.one(
        &format!("{p}.charge_pressure"),
        record.charge_pressure,
        &CHARGE_PRESSURE,
    );
    c.one(
        &format!("{p}.charge_temperature"),
        record.charge_temperature,
        &FLUID_TEMPERATURE,
    );
    c.one(
        &format!("{p}.antifreeze_volume"),
        record.antifreeze_volume,
        &FILL,
    );
    c.one(
        &format!("{p}.mix_duration"),
        record.mix_duration,
        &WORK_TIME,
    );
}

fn check_means(visit: &Visit, c: &mut Checker<'_>) {
    let p = "visit.means";
    c.one(
        &format!("{p}.wanted_freeze_point"),
        visit.means.wanted_freeze_point,
        &WANTED_FREEZE,
    );
    if let Some(cart) = &visit.means.cart {
        let p = "visit.means.cart";
        c.one(
            &format!("{p}.reservoir_diameter"),
            cart.reservoir_diameter,
            &DIAMETER,
        );
        c.one(
            &format!("{p}.maximum_pressure"),
            cart.maximum_pressure,
            &RATED_PRESSURE,
        );
        for (index, point) in cart.curve.iter().enumerate() {
            c.one(
                &format!("{p}.curve[{index}].flow"),
                Some(point.flow),
                &CURVE_FLOW,
            );
            c.one(&format!("{p}.curve[{index}].head"), Some(point.head), &HEAD);
        }
        if let Some(hose) = &cart.hose {
            c.run(&format!("{p}.hose"), hose);
        }
    }
    c.one("visit.time_spent", visit.time_spent, &WORK_TIME);
    c.one("visit.cost", visit.cost, &COST);
    for (index, action) in visit.actions.iter().enumerate() {
        c.one(
            &format!("visit.actions[{index}].duration"),
            action.duration,
            &WORK_TIME,
        );
    }
}

/// Checks that what the visit refers to exists in the rule graph.
pub(super) fn check_vocabulary(
    visit: &Visit,
    vocabulary: &dyn Vocabulary,
    faults: &mut Vec<Fault>,
) {
    let unknown = |path: String, id: &str| {
        let close = vocabulary.close_to(id).join(", ");
        Fault::at(&path, FaultCode::NotAccepted, id, &close)
    };
    for (index, verdict) in visit.verdicts.iter().enumerate() {
        if !vocabulary.has_cause(&verdict.cause) {
            faults.push(unknown(
                format!("visit.verdicts[{index}].cause"),
                &verdict.cause,
            ));
        }
        if let Some(check) = verdict
            .by_check
            .as_deref()
            .filter(|id| !vocabulary.has_check(id))
        {
            faults.push(unknown(format!("visit.verdicts[{index}].by_check"), check));
        }
    }
    for (index, answer) in visit.answers.iter().enumerate() {
        match vocabulary.answers(&answer.finding) {
            None => {
                faults.push(unknown(
                    format!("visit.answers[{index}].finding"),
                    &answer.finding,
                ));
            }
            Some(levels) if !levels.contains(&answer.is) => {
                let accepted: Vec<String> = levels.iter().filter_map(name_of).collect();
                faults.push(Fault::at(
                    &format!("visit.answers[{index}].is"),
                    FaultCode::NotAccepted,
                    &name_of(&answer.is).unwrap_or_default(),
                    &accepted.join(", "),
                ));
            }
            Some(_) => {}
        }
    }
}

/// A reading that its point refuses, as a fault of the file.
pub(super) fn reading_fault(path: &str, error: &ReadingError) -> Fault {
    match error {
        ReadingError::WrongUnit { point, unit } => Fault::at(
            &format!("{path}.value.unit"),
            FaultCode::NotAccepted,
            unit.symbol(),
            &crate::units::parse::accepted(point.kind().dimension()),
        ),
        ReadingError::Impossible {
            value,
            unit,
            low,
            high,
            ..
        } => Fault::at(
            &format!("{path}.value.value"),
            FaultCode::OutOfRange,
            &format!("{value} {}", unit.symbol()),
            &format!("{} … {} {}", short(*low), short(*high), unit.symbol()),
        ),
        ReadingError::BadAccuracy { value, unit, .. } => Fault::at(
            &format!("{path}.accuracy.value"),
            FaultCode::OutOfRange,
            &format!("{value} {}", unit.symbol()),
            "> 0",
        ),
    }
}

/// A bound as a message shows it: four significant digits, no tail of zeros.
fn short(value: f64) -> String {
    let digits = if value == 0.0 {
        0
    } else {
        3 - value.abs().log10().floor() as i32
    };
    let scale = 10f64.powi(digits.clamp(0, 8));
    format!("{}", (value * scale).round() / scale)
}
