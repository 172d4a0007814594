//! What the system should show when it runs.

use super::{Known, Lack, QuantityKind as Q, Sheet};
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::Fluid;
use crate::hydraulics::component::{FluidState, LossCurve};
use crate::hydraulics::suction::TRADE_LEAST;
use crate::model::Assumption;
use crate::records::{FlowCentre, OperatingMode, Phase, ReadingPoint};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    GaugePressure, Length, Power, PressureDifference, Quantity, Temperature, TemperatureDifference,
    Unit, Volume, VolumeFlow,
};

/// Share of the rated flow that shows that the work was good: flow within
/// 10 %, from memory of a North American trade standard for ground loops.
const WITHIN: f64 = 0.9;
/// The same where only the capacity is known: the lower end of 2.25 to 3 gpm
/// per ton, common practice, no source.
const LEAST_GPM_PER_TON: f64 = 2.25;
/// Electric input of circulators that turn, over that of their plates. Judgement, as for
/// the reading of it.
const LEAST_INPUT: f64 = 0.75;
/// Water temperature for which exchanger curves are printed where the curve
/// does not say. Judgement.
const CURVE_CELSIUS: f64 = 20.0;
/// Relative uncertainty of a printed exchanger curve. Judgement.
const CURVE_SPREAD: f64 = 0.1;
/// Temperatures at which the water's change is told, °C: the middle of the
/// usual entering water in heating and in cooling. Common practice, no source.
const HEATING_CELSIUS: f64 = 4.0;
const COOLING_CELSIUS: f64 = 23.0;

pub(super) fn compute(known: &Known<'_>, sheet: &mut Sheet) {
    flow(known, sheet);
    suction(known, sheet);
    reservoir(known, sheet);
    changes(known, sheet);
    exchanger(known, sheet);
    input(known, sheet);
}

/// What all circulators together take when all of them turn: the sum of the nameplates
/// less what input falls towards no flow and plates are rounded. With one of two dead it
/// is half.
fn input(known: &Known<'_>, sheet: &mut Sheet) {
    let circulators = &known.file.system.circulators;
    let plates = circulators.iter().map(|circulator| circulator.rated_power);
    let plates: Option<f64> = plates.map(|power| Some(power?.get().si())).sum();
    let Some(plates) = plates.filter(|plates| *plates > 0.0) else {
        sheet.lack(&[Q::CirculatorPowerLow], Lack::Nameplates);
        return;
    };
    let shown = |si: f64| Figure::exact(Power::from_si(si)).shown_in(Unit::Watt, Unit::Watt);
    sheet.add(
        Q::CirculatorPowerLow,
        shown(LEAST_INPUT * plates),
        Reasoning::new("plan-circulator-power", Authority::Judgement)
            .with("plan-nameplates", shown(plates)),
    );
}

fn flow(known: &Known<'_>, sheet: &mut Sheet) {
    let demand = &known.model.demand;
    let by_capacity = known
        .model
        .assumptions
        .contains(&Assumption::FlowByCapacity);
    let needed = Figure::uncertain(demand.flow);
    let capacity = Figure::uncertain(demand.capacity).shown_in(Unit::Ton, Unit::Kilowatt);
    let (why, least) = if by_capacity {
        let tons = Unit::Ton.from_si(demand.capacity.value().si());
        let least = Unit::GallonPerMinute.to_si(LEAST_GPM_PER_TON * tons);
        let why = Reasoning::new("plan-flow-by-capacity", Authority::CommonPractice)
            .with("plan-capacity", capacity);
        (why, VolumeFlow::from_si(least))
    } else {
        let why = Reasoning::new("plan-flow-rated", Authority::FromMemory("trade-standard"))
            .with("plan-rated-flow", needed);
        (why, demand.flow.value() * WITHIN)
    };
    let least = match demand.least_flow {
        Some(own) if own > least => own,
        _ => least,
    };
    sheet.add(Q::NeededFlow, needed, why.clone());
    sheet.add(Q::LeastFlow, Figure::exact(least), why);
}

/// What the circulators ask for at their inlet. Above a vented reservoir stands no
/// pressure but its own level: ρ g h, some 0.43 psi a foot of water, less what the pipe
/// to the inlet takes. The trade's 3 psi would ask for 7 ft of it; there the limit is that
/// no vacuum stands at the inlet, which would draw air in at any joint.
fn suction(known: &Known<'_>, sheet: &mut Sheet) {
    let vented = matches!(
        known.model.flow_centre,
        Some(FlowCentre::NonPressurised { .. })
    );
    let (least, formula) = match vented {
        true => (0.0, "plan-suction-floor-vented"),
        false => (TRADE_LEAST, "plan-suction-floor"),
    };
    let asked = known.file.system.least_suction();
    let asked = asked.map_or(least, |asked| asked.si().max(least));
    sheet.add(
        Q::SuctionFloor,
        Figure::exact(GaugePressure::from_si(asked)),
        Reasoning::new(formula, Authority::CommonPractice),
    );
}

/// Fluid that brings a vented reservoir back to its mark: π/4 d² times how far the level
/// stands below it.
fn reservoir(known: &Known<'_>, sheet: &mut Sheet) {
    let Some(FlowCentre::NonPressurised { reservoir_diameter }) = &known.model.flow_centre else {
        sheet.lack(&[Q::ReservoirFill], Lack::FlowCentre);
        return;
    };
    let Some(level) = known.read::<Length>(ReadingPoint::ReservoirLevelChange) else {
        sheet.lack(&[Q::ReservoirFill], Lack::ReservoirLevel);
        return;
    };
    if level.value().si() >= 0.0 {
        sheet.lack(&[Q::ReservoirFill], Lack::NothingToDo);
        return;
    }
    let Some(diameter) = reservoir_diameter else {
        sheet.lack(&[Q::ReservoirFill], Lack::ReservoirSize);
        return;
    };
    let surface = 0.25 * std::f64::consts::PI * diameter.get().si().powi(2);
    let fill = Uncertain::new(
        Volume::from_si(-level.value().si() * surface),
        level.standard() * surface,
    );
    sheet.add(
        Q::ReservoirFill,
        Figure::uncertain(fill),
        Reasoning::new("plan-reservoir-fill", Authority::Judgement)
            .with(
                "plan-reservoir-level",
                Figure::uncertain(level).shown_in(Unit::Inch, Unit::Centimetre),
            )
            .with("plan-reservoir-diameter", Figure::written(*diameter)),
    );
}

/// The mode in which the unit runs: as it was read last, else the one in which it can be
/// run today: heat is taken from a warm loop as well, but a cold loop is not warmed by
/// cooling a cold house.
pub(super) fn mode(known: &Known<'_>) -> OperatingMode {
    let found = known.file.visit.readings.iter().rev();
    let mut read =
        found.filter_map(|reading| reading.mode.filter(|_| reading.phase == Phase::Found));
    let read = read.find(|mode| matches!(mode, OperatingMode::Heating | OperatingMode::Cooling));
    let now = known.conditions.loop_temperature.value().celsius();
    read.unwrap_or(match now > 0.5 * (HEATING_CELSIUS + COOLING_CELSIUS) {
        true => OperatingMode::Cooling,
        false => OperatingMode::Heating,
    })
}

/// Change of the water across the unit: heat over flow, density and specific
/// heat. The fluid's own uncertainty is small beside that of heat and flow.
pub(super) fn change(
    known: &Known<'_>,
    heat: Uncertain<Power>,
    mode: OperatingMode,
) -> Uncertain<TemperatureDifference> {
    let celsius = match mode {
        OperatingMode::Cooling => COOLING_CELSIUS,
        _ => HEATING_CELSIUS,
    };
    let at = known
        .model
        .fluid
        .computable(Temperature::from_celsius(celsius));
    let fluid = known.model.fluid.solution();
    let carried = |heat: Power, flow: VolumeFlow| {
        let per_kelvin = flow.heat(
            fluid.density(at)?,
            fluid.specific_heat(at)?,
            TemperatureDifference::from_si(1.0),
        );
        Ok::<_, crate::fluids::FluidError>(TemperatureDifference::from_si(heat / per_kelvin))
    };
    let flow = known.model.demand.flow;
    propagate((heat, flow), |(heat, flow)| carried(heat, flow)).map_or(
        Uncertain::new(TemperatureDifference::from_si(4.0), 1.5),
        |propagated| propagated.result,
    )
}

fn changes(known: &Known<'_>, sheet: &mut Sheet) {
    let demand = &known.model.demand;
    let mode = mode(known);
    let heat = match mode {
        OperatingMode::Cooling => demand.rejection,
        _ => demand.extraction,
    };
    let expected = change(known, heat, mode);
    let (low, high) = expected.interval(2.0);
    let formula = match mode {
        OperatingMode::Cooling => "plan-change-cooling",
        _ => "plan-change-heating",
    };
    let why = || {
        Reasoning::new(formula, Authority::Published("melinder-2010"))
            .with("plan-heat-moved", Figure::uncertain(heat))
            .with("plan-needed-flow", Figure::uncertain(demand.flow))
            .with("plan-water-change", Figure::uncertain(expected))
    };
    if low.si() > 0.0 {
        sheet.add(Q::TemperatureChangeLow, Figure::exact(low), why());
        sheet.add(Q::TemperatureChangeHigh, Figure::exact(high), why());
    } else {
        let both = [Q::TemperatureChangeLow, Q::TemperatureChangeHigh];
        sheet.lack(&both, Lack::UnitRating);
    }
}

fn exchanger(known: &Known<'_>, sheet: &mut Sheet) {
    let unit = known.file.system.heat_pump.as_ref();
    let exchanger = unit.and_then(|unit| unit.exchanger.as_ref());
    let points: Vec<(VolumeFlow, PressureDifference)> = exchanger
        .into_iter()
        .flat_map(|exchanger| &exchanger.curve)
        .map(|point| (point.flow.get(), point.drop.get()))
        .collect();
    if points.is_empty() {
        sheet.lack(
            &[Q::ExchangerDropLow, Q::ExchangerDropHigh],
            Lack::ExchangerCurve,
        );
        return;
    }
    let printed = exchanger
        .and_then(|exchanger| exchanger.curve_temperature)
        .map_or(Temperature::from_celsius(CURVE_CELSIUS), |t| t.get());
    let at = known.computable().value();
    let fluid = known.model.fluid.solution();
    let curve = FluidState::of(Fluid::WATER, printed)
        .ok()
        .and_then(|water| LossCurve::through(&points, water).ok());
    let state = FluidState::of(fluid, at).ok();
    let (Some(curve), Some(state)) = (curve, state) else {
        sheet.lack(
            &[Q::ExchangerDropLow, Q::ExchangerDropHigh],
            Lack::OutsideModel,
        );
        return;
    };
    let needed = known.model.demand.flow.value();
    let least = sheet.si(Q::LeastFlow).map_or(needed, VolumeFlow::from_si);
    let at_flow = |flow| Uncertain::relative(curve.pressure_drop(flow, state), CURVE_SPREAD);
    let why = |flow, drop| {
        Reasoning::new("plan-exchanger-drop", Authority::Judgement)
            .with("plan-needed-flow", Figure::exact(flow))
            .with("plan-loop-temperature", Figure::exact(at))
            .with("plan-drop-expected", Figure::uncertain(drop))
    };
    let (low, high) = (at_flow(least), at_flow(needed));
    sheet.add(
        Q::ExchangerDropLow,
        Figure::exact(low.interval(2.0).0),
        why(least, low),
    );
    sheet.add(
        Q::ExchangerDropHigh,
        Figure::exact(high.interval(2.0).1),
        why(needed, high),
    );
}
