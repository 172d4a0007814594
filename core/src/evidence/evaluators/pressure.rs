//! Static and suction pressure.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::Fluid;
use crate::hydraulics::suction::TRADE_LEAST;
use crate::model::LoopModel;
use crate::pressure::balance::{ChargeState, SealedLoop, balance};
use crate::pressure::belief::{Belief, Charge, Moment, Unknowns};
use crate::records::{FlowCentre, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, GaugePressure, Quantity, Temperature, Unit};

/// Pressure at rest, psi. Low: below the 15 psi that a utility's guide to
/// testing ground loops asks for. High: above what is left at start-up (50 to
/// 70 psi, common practice, no source). The overlaps are judgement.
const SEALED: Levels = Levels::graded(&[(-14.7, 17.0)], &[(12.0, 75.0)], &[(68.0, 160.0)]);
/// The same with an expansion tank: 1 to 2.5 bar with a relief valve of 3 bar,
/// common practice, no source.
const WITH_TANK: Levels = Levels::graded(&[(-14.7, 12.0)], &[(8.0, 46.0)], &[(40.0, 120.0)]);
/// Where the kind of flow centre is not known.
const EITHER: Levels = Levels::graded(&[(-14.7, 15.0)], &[(9.0, 70.0)], &[(55.0, 160.0)]);

pub(super) const STATIC_PRESSURE: Evaluator = Evaluator {
    name: "static-pressure",
    graded: true,
    reads: &[ReadingPoint::StaticPressure],
    evaluate: static_pressure,
};

fn static_pressure(call: &Call<'_>) -> Vec<Evaluation> {
    let (levels, least, most) = match call.model.flow_centre {
        // A vented reservoir has no static pressure to speak of: its level is the gauge.
        Some(FlowCentre::NonPressurised { .. }) => return Vec::new(),
        Some(FlowCentre::Sealed {}) => (&SEALED, 15.0, 71.0),
        Some(FlowCentre::SealedWithTank { .. }) => (&WITH_TANK, 10.0, 43.0),
        None => (&EITHER, 14.0, 68.0),
    };
    let lift = seasonal_lift(call);
    let psi_of = |pa: f64| Unit::Psi.from_si(pa);
    let middle = 0.5 * (least + most);
    let today = |psi| {
        Uncertain::new(
            GaugePressure::from_si(Unit::Psi.to_si(psi) + lift.0),
            lift.1,
        )
    };
    let (least, greatest) = (today(least), today(most));
    let (rating, rated) = call.model.pressure_limit(call.file);
    call.by_instrument(ReadingPoint::StaticPressure, State::AtRest)
        .iter()
        .map(|taken| {
            let reasoning = Reasoning::new("working-band", Authority::CommonPractice)
                .with("least-pressure", Figure::uncertain(least));
            let figure = Figure::uncertain(taken.uncertain::<GaugePressure>());
            let own = psi_of(taken.si - lift.0);
            // Above the weakest part's rating is high, wherever the band lies.
            let over = if rated {
                psi_of(taken.si - rating.si()) + most
            } else {
                f64::NEG_INFINITY
            };
            // Told is the edge that the gauge is nearer to.
            let (limit, beside) = if over > own.max(middle) {
                (Figure::exact(rating), Beside::AtMost)
            } else if own > middle {
                (Figure::uncertain(greatest), Beside::AtMost)
            } else {
                (Figure::uncertain(least), Beside::AtLeast)
            };
            let x = Compared::Value(own.max(over), psi_of(taken.standard.hypot(lift.1)));
            Evaluation::of(levels, x, taken, figure, limit, reasoning).against(beside)
        })
        .collect()
}

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

/// Warmest mean temperature of a loop in a season, °C. Judgement.
const WARMEST: f64 = 25.0;
/// The most that the band is lifted for a cold loop, Pa: 20 psi. Soil, grout and
/// relaxation keep the real swing under what the pipe alone would do. Judgement.
const MOST_LIFT: f64 = 1.4e5;

/// By how much the working band lies higher today than in the warmest season,
/// Pa, with its standard uncertainty: the pressure that this loop would gain by
/// cooling from there, by the physics. Nothing where pipe, fluid or
/// today's temperature are not known.
fn seasonal_lift(call: &Call<'_>) -> (f64, f64) {
    let lift = || {
        let (now, read) = call.loop_temperature();
        if read.is_empty() || call.model.piping.circuits.is_empty() {
            return None;
        }
        call.model.fluid.kind?;
        let system = sealed_loop(call)?;
        let unknowns = unknowns(call);
        let properties = unknowns.middle();
        let charge = ChargeState {
            pressure: GaugePressure::from_si(Unit::Psi.to_si(15.0)),
            temperature: call
                .model
                .fluid
                .computable(Temperature::from_celsius(WARMEST)),
            held: Duration::from_si(86_400.0 * 100.0),
            air: None,
            earlier: None,
        };
        let now = call.model.fluid.computable(now.value());
        let moment = Duration::from_si(60.0);
        let cold = balance(&system, &properties, &charge, moment, now).ok()?;
        let gained = cold.pressure().difference(charge.pressure).si();
        Some(gained.clamp(0.0, MOST_LIFT))
    };
    let lift = lift().unwrap_or(0.0);
    // Half of it: how far the surround holds the pipe is not known.
    (lift, 0.5 * lift)
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
    let day = record.charge_date.or(record.date)?;
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

fn computable(model: &LoopModel, temperature: Uncertain<Temperature>) -> Uncertain<Temperature> {
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
