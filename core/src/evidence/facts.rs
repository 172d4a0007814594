//! Facts about the system and its commissioning, from the records.
//!
//! A fact is true, false or unknown; unknown ones are left out.

use super::season::{Season, season};
use crate::diagnosis::FactId;
use crate::model::{LoopModel, Piping, Section};
use crate::records::visit_file::VisitFile;
use crate::records::{
    Circulator, Commissioning, FlowCentre, GroundKind, Level, LoopFluidKind, Phase, Reading,
    ReadingPoint, WaterSource,
};
use crate::units::{Length, Quantity, Temperature, Unit, VolumeFlow};
use chrono::{Datelike, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};

/// Least velocity in every pipe while flushing, ft/s. ENERGY STAR Homes
/// Northwest, *GHP Design and Installation Standards* (2005), 1.8.
const FLUSH_VELOCITY_FT_S: f64 = 2.0;
/// A velocity worked out from a cart's gauge is not sharp: this share of it passes. Judgement.
const FLUSH_VELOCITY_TOLERANCE: f64 = 0.95;
/// Least flushing of a whole loop, h. Common practice, no source.
const FLUSH_HOURS: f64 = 2.0;
/// Least flushing of one section, min. ENERGY STAR Homes Northwest, as above.
const FLUSH_SECTION_MINUTES: f64 = 15.0;
/// Least cart pump for a loop flushed as a whole, hp. Common practice, no source.
const CART_HP: f64 = 1.5;
/// Highest level drop that the trade passes in a dead-head test, in. Common
/// practice, no source; right only for a loop and a tank of usual size.
const DEAD_HEAD_DROP_IN: f64 = 2.0;
/// Bore from which a header wants more than 2 ft/s to carry air, mm: that of a
/// 3 in pipe. Derived from critical Froude numbers.
const LARGE_BORE_MM: f64 = 65.0;
/// Least mixing by the cart, h. Common practice, no source: 3 to 4 h.
const MIX_HOURS: f64 = 3.0;
/// A fill warmer than this was not a winter fill, °C. Judgement.
const COLD_CHARGE_CELSIUS: f64 = 10.0;
/// Water that nowhere comes below this ices nothing up and thickens no fluid, °C. Judgement.
const WARM_CELSIUS: f64 = 10.0;
/// A published curve may be off by so much. Judgement.
const CLEARLY_MORE: f64 = 1.15;
/// Start-up pressure of a sealed loop, psi: at least 40 by a utility's guide to
/// testing ground loops; 50 to 70, never above 100, common practice, no source.
const CHARGE_LOW_PSI: f64 = 40.0;
const CHARGE_HIGH_PSI: f64 = 70.0;
/// The least with an expansion tank, which is filled above its pre-charge of 1 bar and
/// more: common practice, no source.
const CHARGE_LOW_WITH_TANK_PSI: f64 = 15.0;
/// Below this share of the least it was clearly low. Judgement: the gauge's accuracy.
const CLEARLY_LOW: f64 = 0.9;

/// Everything that the records say about the facts of the rule graph.
pub fn facts(file: &VisitFile, model: &LoopModel, today: NaiveDate) -> BTreeMap<FactId, bool> {
    let mut known = Known::default();
    let day = file.visit.date.unwrap_or(today);
    flushing(&mut known, &file.commissioning, &model.piping);
    filling(&mut known, file);
    age(&mut known, file, day);
    kind(&mut known, file, model);
    if let Some((season, _)) = season(file, day) {
        known.is("heating-season", Some(season == Season::Heating));
        known.is("cooling-season", Some(season == Season::Cooling));
    }
    known.is("warm-loop", warm(file));
    told(&mut known, file);
    known.0
}

/// Whether the coldest water that was read is far from any freezing.
fn warm(file: &VisitFile) -> Option<bool> {
    let read = file.visit.readings.iter().filter(|reading| {
        reading.phase == Phase::Found
            && matches!(
                reading.point(),
                ReadingPoint::EnteringWater
                    | ReadingPoint::LeavingWater
                    | ReadingPoint::LowestEnteringWater
            )
    });
    let coldest = read.map(|reading| reading.value().si()).reduce(f64::min)?;
    Some(coldest > Temperature::from_celsius(WARM_CELSIUS).si())
}

/// Facts that the customer tells: they are answered in the visit under their
/// own name, like findings.
pub const TOLD: [&str; 5] = [
    "since-start-up",
    "came-on-slowly",
    "came-on-suddenly",
    "complaint-recurs",
    "after-work",
];

/// What was told. How the trouble began is one of three.
fn told(known: &mut Known, file: &VisitFile) {
    let [began @ .., recurs, after_work] = &TOLD;
    let answer = |fact: &str| {
        let answers = file.visit.answers.iter();
        let said = answers.rev().find(|answer| answer.finding == fact)?;
        match said.is {
            Level::Yes => Some(true),
            Level::No => Some(false),
            Level::Low | Level::Normal | Level::High => None,
        }
    };
    let so = began.iter().find(|fact| answer(fact) == Some(true));
    for fact in began {
        known.is(fact, so.map(|so| so == fact).or(answer(fact)));
    }
    known.is(recurs, answer(recurs));
    known.is(after_work, answer(after_work));
}

#[derive(Default)]
struct Known(BTreeMap<FactId, bool>);

impl Known {
    fn is(&mut self, fact: &str, value: Option<bool>) {
        if let Some(value) = value {
            self.0.insert(FactId::new(fact), value);
        }
    }
    fn is_not(&mut self, fact: &str, value: Option<bool>) {
        self.is(fact, value.map(|value| !value));
    }
}

fn flushing(known: &mut Known, record: &Commissioning, piping: &Piping) {
    // A number that somebody wrote down is a record.
    let numbers = record.flush_flow.is_some()
        || record.flush_velocity.is_some()
        || record.flush_duration.is_some();
    let recorded = record.flush_recorded.or(numbers.then_some(true));
    known.is_not("no-flush-record", recorded);
    known.is_not("never-flushed", record.flushed.or(numbers.then_some(true)));
    known.is("flush-too-slow", too_slow(record, piping));
    known.is("flush-too-short", too_short(record, piping));
    let singly = record.circuits_flushed_singly;
    known.is("circuits-flushed-singly", singly);
    let small = record
        .cart_power
        .map(|power| Unit::Horsepower.from_si(power.get().si()) < CART_HP);
    // One circuit at a time asks for less.
    let small = small.map(|small| small && singly != Some(true));
    known.is("cart-too-small", small);
    let drop = record
        .dead_head_drop
        .map(|drop| Unit::Inch.from_si(drop.get().si()) > DEAD_HEAD_DROP_IN);
    // One of the two is true; neither is ever stated false.
    match drop {
        Some(true) => known.is("dead-head-failed-at-start-up", Some(true)),
        Some(false) => known.is("dead-head-passed-at-start-up", Some(true)),
        None => {}
    }
    known.is_not("heat-pump-not-isolated-in-flush", record.heat_pump_isolated);
    known.is_not("no-filter", record.filtered);
    if !piping.headers.is_empty() {
        let large = |section: &Section| section.pipe.bore().si() > 1e-3 * LARGE_BORE_MM;
        known.is("large-headers", Some(piping.headers.iter().any(large)));
    }
}

/// Whether some pipe stayed below the flush velocity. The velocity that was
/// written down counts; else it follows from the flow in every known pipe, the
/// circuits sharing it unless they were flushed one by one.
fn too_slow(record: &Commissioning, piping: &Piping) -> Option<bool> {
    let least = FLUSH_VELOCITY_TOLERANCE * Unit::FootPerSecond.to_si(FLUSH_VELOCITY_FT_S);
    if let Some(velocity) = record.flush_velocity {
        return Some(velocity.get().si() < least);
    }
    let flow = record.flush_flow?.get();
    let slowest = slowest_velocity(flow, record.circuits_flushed_singly == Some(true), piping)?;
    Some(slowest < least)
}

/// Velocity in the slowest known pipe, m/s, at a flow of the cart. The pressure
/// drop shares the flow among circuits of one pipe in proportion to length to
/// the power -4/7 (Blasius): the longest circuit is the slow one. None without
/// known circuits, because those decide.
pub(super) fn slowest_velocity(flow: VolumeFlow, singly: bool, piping: &Piping) -> Option<f64> {
    if piping.circuits.is_empty() {
        return None;
    }
    // Share of the flow of one circuit by its conductance: d^(19/7) L^(-4/7).
    let pull = |section: &Section| {
        section.pipe.bore().si().powf(19.0 / 7.0) * section.length.si().max(1e-3).powf(-4.0 / 7.0)
    };
    let all: f64 = piping
        .circuits
        .iter()
        .map(|section| f64::from(section.count) * pull(section))
        .sum();
    let circuits = piping.circuits.iter().map(|section| {
        let share = if singly { 1.0 } else { pull(section) / all };
        share * flow.si() / section.pipe.area().si()
    });
    let headers = piping
        .headers
        .iter()
        .map(|section| flow.si() / section.pipe.area().si());
    circuits.chain(headers).reduce(f64::min)
}

fn too_short(record: &Commissioning, piping: &Piping) -> Option<bool> {
    let time = record.flush_duration?.get().si();
    let singly = record.circuits_flushed_singly == Some(true);
    let least = match (singly, piping.circuit_count()) {
        (true, Some(count)) => 60.0 * FLUSH_SECTION_MINUTES * f64::from(count),
        _ => 3_600.0 * FLUSH_HOURS,
    };
    Some(time < least)
}

fn filling(known: &mut Known, file: &VisitFile) {
    let record = &file.commissioning;
    known.is_not("circulators-not-bled", record.circulators_bled);
    known.is_not("water-not-tested", record.water_tested);
    let from = |source| record.water_source.map(|water| water == source);
    known.is("well-water", from(WaterSource::Well));
    known.is("surface-water", from(WaterSource::Surface));
    known.is_not("concentration-not-checked", record.concentration_checked);
    let mixed = record
        .mix_duration
        .map(|time| Unit::Hour.from_si(time.get().si()) < MIX_HOURS);
    known.is("mixed-too-short", mixed);
    known.is_not("pipe-not-relaxed", record.pipe_relaxed);
    let by_temperature = record
        .charge_temperature
        .map(|temperature| temperature.get().celsius() < COLD_CHARGE_CELSIUS);
    let by_date = record.charged_on().map(northern_winter);
    known.is("charged-in-winter", by_temperature.or(by_date));
    let psi = record
        .charge_pressure
        .map(|pressure| Unit::Psi.from_si(pressure.get().si()));
    // A tank or a vented reservoir asks for less.
    let vented = matches!(
        file.system.flow_centre,
        Some(FlowCentre::NonPressurised { .. })
    );
    let least = match &file.system.flow_centre {
        Some(FlowCentre::SealedWithTank { .. }) => CHARGE_LOW_WITH_TANK_PSI,
        _ => CHARGE_LOW_PSI,
    };
    // A gauge is not sharp: just under the least, nobody can say.
    let low = psi.filter(|_| !vented).and_then(|psi| {
        let clear = psi < CLEARLY_LOW * least || psi >= least;
        clear.then_some(psi < least)
    });
    known.is("charged-low", low);
    known.is("charged-high", psi.map(|psi| psi > CHARGE_HIGH_PSI));
}

/// Whether two circuits were read.
fn several_read(file: &VisitFile) -> bool {
    let numbers: BTreeSet<u32> = file
        .visit
        .readings
        .iter()
        .filter_map(|reading| reading.circuit)
        .collect();
    numbers.len() > 1
}

/// Whether the circulators were seen to give more than the strongest of them gives
/// with its discharge shut: then at least two of them run. Only of circulators that all
/// have a curve.
fn more_than_one_gives(
    circulators: &[Circulator],
    readings: &[Reading],
    model: &LoopModel,
) -> Option<bool> {
    if circulators.len() < 2 {
        return None;
    }
    let shut = |circulator: &Circulator| {
        let heads = circulator.curve.iter().map(|point| point.head.get().si());
        heads.reduce(f64::max)
    };
    let heads: Option<Vec<f64>> = circulators.iter().map(shut).collect();
    let strongest = heads?.into_iter().reduce(f64::max)?;
    let water = model.fluid.solution();
    let density = water.density(Temperature::from_celsius(10.0)).ok()?;
    let gives = Length::from_si(strongest).pressure(density).si();
    let rises = readings.iter().filter(|reading| {
        reading.phase == Phase::Found
            && matches!(
                reading.point(),
                ReadingPoint::CirculatorRise | ReadingPoint::ShutOffRise
            )
    });
    let most = rises
        .map(|reading| reading.value().si() - 2.0 * reading.standard_uncertainty())
        .reduce(f64::max)?;
    (most > CLEARLY_MORE * gives).then_some(true)
}

/// Fluid is cold from December to March, the site taken to lie on the northern
/// hemisphere.
fn northern_winter(day: NaiveDate) -> bool {
    matches!(day.month(), 12 | 1..=3)
}

fn age(known: &mut Known, file: &VisitFile, day: NaiveDate) {
    let start = file.system.installed_on.or(file.commissioning.date);
    let days = start
        .map(|start| (day - start).num_days())
        .filter(|days| *days >= 0);
    known.is("first-month", days.map(|days| days <= 31));
    known.is("first-year", days.map(|days| days <= 365));
    known.is("older-than-five-years", days.map(|days| days > 5 * 365 + 1));
}

fn kind(known: &mut Known, file: &VisitFile, model: &LoopModel) {
    let system = &file.system;
    if let Some(centre) = &system.flow_centre {
        let open = matches!(centre, FlowCentre::NonPressurised { .. });
        let tank = matches!(centre, FlowCentre::SealedWithTank { .. });
        known.is("sealed-flow-centre", Some(!open && !tank));
        known.is("sealed-with-tank", Some(tank));
    }
    let open = model.is_pressurised.map(|pressurised| !pressurised);
    known.is("non-pressurised", open);
    known.is("has-strainer", system.strainer);
    known.is("has-check-valves", system.check_valves);
    if let Some(fluid) = system.fluid {
        use LoopFluidKind as K;
        let glycol = matches!(fluid.kind, K::PropyleneGlycol | K::EthyleneGlycol);
        known.is("glycol-fluid", Some(glycol));
        known.is(
            "alcohol-fluid",
            Some(matches!(fluid.kind, K::Methanol | K::Ethanol)),
        );
        known.is("water-only", Some(fluid.kind == K::Water));
    }
    if !system.circulators.is_empty() {
        known.is("two-circulators", Some(system.circulators.len() >= 2));
    }
    known.is(
        "more-rise-than-one-gives",
        more_than_one_gives(&system.circulators, &file.visit.readings, model),
    );
    let recorded = model.piping.circuit_count().map(|count| count > 1);
    known.is(
        "several-circuits",
        recorded.or(several_read(file).then_some(true)),
    );
    if let Some(kind) = system.ground.as_ref().and_then(|ground| ground.kind) {
        known.is("horizontal-loop", Some(kind == GroundKind::Horizontal));
        known.is("vertical-loop", Some(kind == GroundKind::Vertical));
    }
}
