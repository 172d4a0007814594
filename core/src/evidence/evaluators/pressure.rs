//! Pressure that is gone, pressure that nothing explains, and suction.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::Fluid;
use crate::hydraulics::suction::TRADE_LEAST;
use crate::model::LoopModel;
use crate::pressure::balance::SealedLoop;
use crate::pressure::belief::{Belief, Charge, Moment, Unknowns};
use crate::records::{FlowCentre, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, GaugePressure, Quantity, Temperature, Unit};

/// Pressure at rest of a loop that is no warmer than mild, psi. Relaxation takes a
/// share of the charge and never all of it, and a cool pipe is tight on its fluid: at
/// or below nothing on the gauge, fluid is gone. Judgement for the ranges.
const GONE: Levels = Levels::presence(&[(2.0, 160.0)], &[(-14.7, 1.0), (-14.7, 3.0)]);
/// A loop at or below this mean temperature counts as no warmer than mild, °C.
const MILD: f64 = 16.0;

pub(super) const PRESSURE_GONE: Evaluator = Evaluator {
    name: "pressure-gone",
    graded: false,
    reads: &[ReadingPoint::StaticPressure, ReadingPoint::LoopTemperature],
    evaluate: gone,
};

fn gone(call: &Call<'_>) -> Vec<Evaluation> {
    let vented = matches!(
        call.model.flow_centre,
        Some(FlowCentre::NonPressurised { .. })
    );
    let (temperature, companions) = call.loop_temperature();
    let warmest = temperature.value().celsius() + 0.5 * temperature.standard();
    if vented || warmest > MILD {
        return Vec::new();
    }
    call.by_instrument(ReadingPoint::StaticPressure, State::AtRest)
        .iter()
        .map(|taken| {
            let reasoning = Reasoning::new("nothing-left", Authority::Published("ppi-handbook"))
                .with("loop-temperature", Figure::uncertain(temperature));
            Evaluation::of(
                &GONE,
                psi(taken, 0.0),
                taken,
                Figure::uncertain(taken.uncertain::<GaugePressure>()),
                Figure::exact(GaugePressure::from_si(Unit::Psi.to_si(2.0))),
                reasoning,
            )
            .against(Beside::AtLeast)
            .using(&companions)
        })
        .collect()
}

/// A pressure in psi, moved by a correction.
fn psi(taken: &Taken, shift: f64) -> Compared {
    let read = Unit::Psi.from_si(taken.si);
    Compared::Value(read + shift, Unit::Psi.from_si(taken.standard))
}

/// Reading less what a tight loop charged as recorded would show today, psi.
/// The physics gives the spread; what it leaves is a psi or two. Judgement.
const UNEXPLAINED: Levels = Levels::presence(&[(-3.0, 6.0)], &[(-20.0, -2.0), (-80.0, -10.0)]);

pub(super) const PRESSURE_UNEXPLAINED: Evaluator = Evaluator {
    name: "pressure-unexplained",
    graded: false,
    reads: &[ReadingPoint::StaticPressure],
    evaluate: unexplained,
};

fn unexplained(call: &Call<'_>) -> Vec<Evaluation> {
    let Some(believed) = believed(call) else {
        return Vec::new();
    };
    let (temperature, companions) = call.loop_temperature();
    let moment = Moment {
        elapsed: believed.elapsed,
        temperature,
    };
    let Ok(band) = believed.belief.band(&moment) else {
        return Vec::new();
    };
    let expected = Uncertain::new(band.median, band.standard);
    call.by_instrument(ReadingPoint::StaticPressure, State::AtRest)
        .iter()
        .map(|taken| {
            let difference = Unit::Psi.from_si(taken.si - expected.value().si());
            let spread = Unit::Psi.from_si(taken.standard.hypot(expected.standard()));
            let charge = &believed.charge;
            let reasoning = Reasoning::new("tight-loop-band", Authority::Published("ppi-handbook"))
                .with("charge-pressure", Figure::uncertain(charge.pressure))
                .with("charge-temperature", Figure::uncertain(charge.temperature))
                .with(
                    "time-since-charge",
                    Figure::exact(believed.elapsed).shown_in(Unit::Day, Unit::Day),
                )
                .with("loop-temperature", Figure::uncertain(temperature));
            Evaluation::of(
                &UNEXPLAINED,
                Compared::Value(difference, spread),
                taken,
                Figure::uncertain(taken.uncertain::<GaugePressure>()),
                Figure::uncertain(expected),
                reasoning,
            )
            .using(&companions)
        })
        .collect()
}

/// What is believed of a sealed loop since its recorded charge.
pub struct Believed {
    /// What is believed, before any reading.
    pub belief: Belief,
    /// The charge on record.
    pub charge: Charge,
    /// Time since then.
    pub elapsed: Duration,
}

/// Standard uncertainty of a charge pressure in a record, Pa (2 psi). Judgement.
const CHARGE_PRESSURE_SPREAD: f64 = 1.4e4;
/// Pressure is held 20 to 30 min for the pipe to relax; common practice, no
/// source. Without that the gauge is read some minutes after pumping. Judgement.
const RELAXED_MINUTES: f64 = 25.0;
const NOT_RELAXED_MINUTES: f64 = 5.0;

/// None without a recorded charge of a sealed loop: then no band stands.
pub fn believed(call: &Call<'_>) -> Option<Believed> {
    let record = &call.file.commissioning;
    let pressure = record.charge_pressure?.get();
    let day = record.charged_on()?;
    let days = (call.day - day).num_days();
    if days < 0 {
        return None;
    }
    let system = sealed_loop(call)?;
    let temperature = match record.charge_temperature {
        Some(written) => Uncertain::new(written.get(), 1.5),
        None => {
            let season = crate::evidence::season::by_date(day);
            crate::evidence::call::guess(season)
        }
    };
    let minutes = if record.pipe_relaxed == Some(true) {
        RELAXED_MINUTES
    } else {
        NOT_RELAXED_MINUTES
    };
    let charge = Charge {
        pressure: Uncertain::new(pressure, CHARGE_PRESSURE_SPREAD),
        temperature: computable(call.model, temperature),
        held: Duration::from_si(60.0 * minutes),
        air: Some(call.model.trapped_air()),
        earlier: None,
    };
    let belief = Belief::prior(system, unknowns(call), charge).ok()?;
    // A charge of today is some hours old.
    let elapsed = Duration::from_si(86_400.0 * (days as f64).max(0.2));
    Some(Believed {
        belief,
        charge,
        elapsed,
    })
}

/// A temperature brought inside what the fluid of a loop can be computed at.
pub(super) fn computable(
    model: &LoopModel,
    temperature: Uncertain<Temperature>,
) -> Uncertain<Temperature> {
    Uncertain::new(
        model.fluid.computable(temperature.value()),
        temperature.standard(),
    )
}

/// What is not known of pipe, surround and fluid.
pub(super) fn unknowns(call: &Call<'_>) -> Unknowns {
    let kind = call
        .file
        .system
        .ground
        .as_ref()
        .and_then(|ground| ground.kind);
    call.model.unknowns(kind)
}

/// The sealed loop of the call; none for a vented one.
pub(super) fn sealed_loop(call: &Call<'_>) -> Option<SealedLoop> {
    call.model.sealed_loop()
}

/// Suction of the circulators while running, psi, brought to sea level and
/// cold fluid and to a circulator that asks for [`TRADE_LEAST`]. The overlaps
/// are judgement.
const SUCTION: Levels = Levels::graded(&[(-14.7, 4.0)], &[(2.0, 72.0)], &[(65.0, 160.0)]);
/// The same under a vented reservoir, where the column above is a few feet.
const SUCTION_VENTED: Levels = Levels::graded(&[(-14.7, 0.3)], &[(-0.3, 8.0)], &[(6.0, 60.0)]);

pub(super) const SUCTION_PRESSURE: Evaluator = Evaluator {
    name: "suction-pressure",
    graded: true,
    reads: &[ReadingPoint::SuctionPressure],
    evaluate: suction,
};

fn suction(call: &Call<'_>) -> Vec<Evaluation> {
    let vented = matches!(
        call.model.flow_centre,
        Some(FlowCentre::NonPressurised { .. })
    );
    let levels = if vented { &SUCTION_VENTED } else { &SUCTION };
    let (temperature, _) = call.loop_temperature();
    let vapour = |t| {
        let water = Fluid::WATER.vapour_pressure(t);
        call.fluid().vapour_pressure(t).or(water).ok()
    };
    let warm = vapour(call.model.fluid.computable(temperature.value()));
    let cold = vapour(Temperature::from_celsius(5.0));
    let by_vapour = match (warm, cold) {
        (Some(warm), Some(cold)) => (cold - warm).si(),
        _ => 0.0,
    };
    let standard_air = crate::units::AbsolutePressure::standard_atmosphere();
    let by_height = (call.model.atmosphere - standard_air).si();
    let asked = call.file.system.least_suction();
    let by_make = asked.map_or(0.0, |asked| TRADE_LEAST - asked.si());
    let shift = if vented {
        0.0
    } else {
        Unit::Psi.from_si(by_vapour + by_height + by_make)
    };
    // What stands in a vented reservoir is a few feet: there it only must not draw.
    let usual = if vented { 0.0 } else { TRADE_LEAST };
    let least = asked.map_or(usual, Quantity::si);
    call.by_instrument(ReadingPoint::SuctionPressure, State::Running)
        .iter()
        .map(|taken| {
            let reasoning = Reasoning::new("suction-reserve", Authority::CommonPractice)
                .with("atmosphere", Figure::exact(call.model.atmosphere));
            Evaluation::of(
                levels,
                psi(taken, shift),
                taken,
                Figure::uncertain(taken.uncertain::<GaugePressure>()),
                Figure::exact(GaugePressure::from_si(least)),
                reasoning,
            )
            .against(Beside::AtLeast)
        })
        .collect()
}
