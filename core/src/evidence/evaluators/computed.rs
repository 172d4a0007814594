//! What the records alone foretell: the flow that circulators and loop agree
//! on, the film in the pipe, the length of the loop, the evenness of circuits.

use super::Evaluator;
use super::circulators::Circulators;
use super::flow::{across, exchanger_curve, liquid, possible_fluids, ways};
use crate::evidence::call::{Call, State};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::{Fluid, FluidKind};
use crate::hydraulics::component::FluidState;
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::network::ground_loop::{
    Circuit, GroundLoop, LoopField, Plant, ReturnPath, Run,
};
use crate::model::Section;
use crate::records::{GroundKind, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, Length, Number, Quantity, Temperature, Unit, VolumeFlow};

/// Computed over needed flow: a tenth less is short. Judgement.
const COMPUTED: Levels = Levels::presence(&[(0.87, 1.6), (1.3, 3.0)], &[(0.6, 0.9), (0.1, 0.94)]);
/// Relative standard uncertainty of the computed flow: rough walls, fittings
/// and lengths that no one measured. Judgement; more where headers are unknown.
pub(super) const NETWORK_SPREAD: f64 = 0.06;
pub(super) const HEADERS_UNKNOWN_SPREAD: f64 = 0.1;

/// Reynolds number in the ground pipe over the 2,300 below which the flow is
/// laminar (White, *Fluid Mechanics*, from memory); the overlap is the transition.
const FILM: Levels = Levels::presence(&[(0.92, 3.0), (2.0, 30.0)], &[(0.4, 1.0), (0.05, 1.12)]);
const LAMINAR_REYNOLDS: f64 = 2_300.0;

/// Length of pipe over the usual one. Judgement.
const LENGTH: Levels = Levels::presence(&[(0.78, 1.4), (1.2, 3.0)], &[(0.5, 0.83), (0.2, 0.88)]);
/// Usual pipe in the ground per ton of capacity, ft: 150 to 200 ft of bore with
/// a U-bend, 400 to 600 ft in trenches, 300 ft in a pond. Common practice, no
/// source; ground and climate move it by a third.
const VERTICAL_FT_PER_TON: f64 = 340.0;
const HORIZONTAL_FT_PER_TON: f64 = 500.0;
const POND_FT_PER_TON: f64 = 300.0;
const LENGTH_SPREAD: f64 = 0.18;

/// Largest distance of a computed circuit flow from the mean, over the mean.
/// Within a fifth is even; judgement.
const EVEN: Levels = Levels::presence(&[(0.0, 0.24)], &[(0.16, 0.6), (0.4, 2.0)]);
const EVEN_SPREAD: f64 = 0.03;

/// More circuits than this are not solved one by one.
const MOST_CIRCUITS: u32 = 600;

pub(super) const FLOW_SHORT: Evaluator = Evaluator {
    name: "computed-flow-short",
    graded: false,
    reads: &[],
    evaluate: flow_short,
};
pub(super) const COLD_FILM: Evaluator = Evaluator {
    name: "cold-film",
    graded: false,
    reads: &[],
    evaluate: cold_film,
};
pub(super) const LENGTH_SHORT: Evaluator = Evaluator {
    name: "loop-length-short",
    graded: false,
    reads: &[],
    evaluate: length_short,
};
pub(super) const CIRCUITS_UNEVEN: Evaluator = Evaluator {
    name: "computed-circuits-uneven",
    graded: false,
    reads: &[],
    evaluate: uneven,
};

/// An evaluation that stands on records and physics, with no reading behind it
/// that its outcome would need.
fn from_records(
    levels: &Levels,
    x: Compared,
    used: &[usize],
    measured: Figure,
    (expected, beside): (Figure, Beside),
    reasoning: Reasoning,
) -> Vec<Evaluation> {
    vec![Evaluation {
        likelihood: x.over(levels),
        read_with: None,
        used: used.to_vec(),
        measured,
        expected,
        beside,
        reasoning,
    }]
}

pub(super) fn run(section: &Section, fittings: f64) -> Run {
    Run {
        pipe: section.pipe,
        length: section.length,
        fittings: Number::from_si(fittings),
    }
}

/// The circuits, one by one, on one pair of headers.
pub(super) fn field(call: &Call<'_>) -> Option<LoopField> {
    let piping = &call.model.piping;
    let count = piping.circuit_count()?;
    if count > MOST_CIRCUITS {
        return None;
    }
    // In and out of a header and round a U-bend: about 4 heads of velocity. Judgement.
    let circuits = piping
        .circuits
        .iter()
        .flat_map(|section| {
            let circuit = Circuit {
                run: run(section, 4.0),
                blocked: Fraction::ZERO,
                open: true,
            };
            std::iter::repeat_n(circuit, section.count as usize)
        })
        .collect();
    Some(LoopField {
        circuits,
        supply: Vec::new(),
        returns: Vec::new(),
        path: ReturnPath::Direct,
    })
}

/// Flow at which circulators and loop agree, over the fluids it may be.
fn operating_flow(call: &Call<'_>) -> Option<Uncertain<VolumeFlow>> {
    let piping = &call.model.piping;
    let set = Circulators::of(call)?;
    let spread = set.spread;
    let plant = Plant {
        pumps: set.into_set(),
        parts: vec![exchanger_curve(call)?],
        // Elbows, valves and ports indoors: about 6 heads of velocity a run. Judgement.
        pipes: piping
            .headers
            .iter()
            .chain(&piping.indoor)
            .map(|section| run(section, 6.0))
            .collect(),
        bypass: None,
    };
    let field = field(call)?;
    let (temperature, _) = coldest(call);
    let flows: Vec<Uncertain<VolumeFlow>> = possible_fluids(call)
        .into_iter()
        .filter_map(|(kind, w)| {
            let solution = Fluid::new(kind, w.value()).ok()?;
            let state = FluidState::of(solution, liquid(solution, temperature).value()).ok()?;
            let whole = GroundLoop::build(&field, &plant, state, FrictionLaw::default());
            let solved = whole.network.solve().ok()?;
            let flow = whole.parts.first().map(|part| solved.flow(*part))?;
            // Flow goes about with the square root of the head.
            let headers = piping.headers.is_empty() && piping.indoor.is_empty();
            let unknown = if headers { HEADERS_UNKNOWN_SPREAD } else { 0.0 };
            let relative = (0.5 * spread).hypot(NETWORK_SPREAD).hypot(unknown);
            (flow.si() > 0.0).then(|| Uncertain::relative(flow, relative))
        })
        .collect();
    across(&flows)
}

/// Coldest fluid to expect: the lowest entering water that the unit logged, or
/// that of today, or what a usual loop comes down to; plain water stays above 4 °C.
fn coldest(call: &Call<'_>) -> (Uncertain<Temperature>, Vec<usize>) {
    let usual = if call.model.fluid.kind == Some(FluidKind::Water) {
        5.0
    } else {
        -1.0
    };
    let usual = Uncertain::new(Temperature::from_celsius(usual), 2.5);
    if let Some(logged) = call.best(ReadingPoint::LowestEnteringWater, State::Any) {
        return (logged.uncertain(), logged.readings);
    }
    let (today, used) = call.loop_temperature();
    if today.value() < usual.value() {
        (today, used)
    } else {
        (usual, Vec::new())
    }
}

fn flow_short(call: &Call<'_>) -> Vec<Evaluation> {
    let Some(flow) = operating_flow(call) else {
        return Vec::new();
    };
    let needed = call.model.demand.flow;
    let (temperature, used) = coldest(call);
    let reasoning = Reasoning::new("operating-point", Authority::CommonPractice)
        .with("fluid-temperature", Figure::uncertain(temperature))
        .with(
            "antifreeze-by-volume",
            Figure::uncertain(call.model.fluid.volume_fraction),
        );
    from_records(
        &COMPUTED,
        Compared::ratio(flow, needed),
        &used,
        Figure::uncertain(flow),
        (Figure::uncertain(needed), Beside::AtLeast),
        reasoning,
    )
}

fn cold_film(call: &Call<'_>) -> Vec<Evaluation> {
    let piping = &call.model.piping;
    let Some(count) = piping.circuit_count() else {
        return Vec::new();
    };
    let (temperature, used) = call.loop_temperature();
    if used.is_empty() {
        return Vec::new();
    }
    // The sharpest flow that was read, or the one that is needed.
    let sharpest = ways(call)
        .into_iter()
        .filter(|way| way.flow.value().si() > 0.0)
        .min_by(|a, b| a.flow.standard().total_cmp(&b.flow.standard()));
    let flow = sharpest
        .as_ref()
        .map_or(call.model.demand.flow, |way| way.flow);
    let longest = |a: &&Section, b: &&Section| {
        let volume = |section: &Section| section.volume().si();
        volume(a).total_cmp(&volume(b))
    };
    let Some(pipe) = piping.circuits.iter().max_by(longest).map(|s| s.pipe) else {
        return Vec::new();
    };
    let each = flow.value() / f64::from(count);
    let numbers: Vec<Uncertain<Number>> = possible_fluids(call)
        .into_iter()
        .filter_map(|(kind, w)| {
            let reynolds = |w: Fraction, shift: f64| {
                let solution = Fluid::new(kind, w).ok()?;
                let t = liquid(solution, temperature).value();
                let t = Quantity::from_si(t.si() + shift);
                let state = FluidState::of(solution, t).ok()?;
                Some(state.reynolds(pipe, each).si())
            };
            let here = reynolds(w.value(), 0.0)?;
            let warmer = reynolds(w.value(), temperature.standard()).unwrap_or(here);
            let weaker = Fraction::from_si((w.value().si() - w.standard()).max(0.0));
            let thinner = reynolds(weaker, 0.0).unwrap_or(here);
            let by_flow = flow.standard() / flow.value().si();
            let viscosity = Fluid::new(kind, w.value()).ok()?.spread().viscosity;
            let relative = by_flow
                .hypot(warmer / here - 1.0)
                .hypot(thinner / here - 1.0)
                .hypot(viscosity);
            Some(Uncertain::relative(Number::from_si(here), relative))
        })
        .collect();
    let Some(reynolds) = across(&numbers).filter(|number| number.value().si() > 0.0) else {
        return Vec::new();
    };
    let limit = Number::from_si(LAMINAR_REYNOLDS);
    // The error multiplies, whichever of the two it is charged to.
    let relative = reynolds.standard() / reynolds.value().si();
    let x = Compared::Ratio(
        (reynolds.value().si(), 0.0),
        (limit.si(), relative * limit.si()),
    );
    let reasoning = Reasoning::new("reynolds", Authority::CommonPractice)
        .with("flow", Figure::uncertain(flow))
        .with("fluid-temperature", Figure::uncertain(temperature))
        .with(
            "antifreeze-by-volume",
            Figure::uncertain(call.model.fluid.volume_fraction),
        );
    let from = from_records(
        &FILM,
        x,
        &used,
        Figure::uncertain(reynolds),
        (Figure::exact(limit), Beside::AtLeast),
        reasoning,
    );
    // What a lying meter says of the flow it says of the film.
    let read_with = sharpest.map(|way| way.taken.instrument);
    let with = |evaluation| Evaluation {
        read_with,
        ..evaluation
    };
    from.into_iter().map(with).collect()
}

fn length_short(call: &Call<'_>) -> Vec<Evaluation> {
    let piping = &call.model.piping;
    let ground = call.file.system.ground.as_ref();
    let Some(kind) = ground.and_then(|ground| ground.kind) else {
        return Vec::new();
    };
    if piping.circuits.is_empty() {
        return Vec::new();
    }
    let per_ton = match kind {
        GroundKind::Vertical => VERTICAL_FT_PER_TON,
        GroundKind::Horizontal => HORIZONTAL_FT_PER_TON,
        GroundKind::Pond => POND_FT_PER_TON,
    };
    let laid: f64 = piping
        .circuits
        .iter()
        .map(|section| f64::from(section.count) * section.length.si())
        .sum();
    let demand = &call.model.demand;
    let tons = Unit::Ton.from_si(demand.capacity.value().si());
    let usual = Length::from_si(Unit::Foot.to_si(per_ton * tons));
    let by_capacity = demand.capacity.standard() / demand.capacity.value().si();
    let usual = Uncertain::relative(usual, LENGTH_SPREAD.hypot(by_capacity));
    let laid = Uncertain::relative(Length::from_si(laid), 0.03);
    let reasoning = Reasoning::new("length-per-capacity", Authority::CommonPractice)
        .with("capacity", Figure::uncertain(demand.capacity));
    from_records(
        &LENGTH,
        Compared::ratio(laid, usual),
        &[],
        Figure::uncertain(laid),
        (Figure::uncertain(usual), Beside::AtLeast),
        reasoning,
    )
}

fn uneven(call: &Call<'_>) -> Vec<Evaluation> {
    let evaluated = || {
        let field = field(call)?;
        if field.circuits.len() < 2 {
            return None;
        }
        let flow = call.model.demand.flow.value();
        let (temperature, used) = call.loop_temperature();
        let (kind, w) = possible_fluids(call).into_iter().next()?;
        let solution = Fluid::new(kind, w.value()).ok()?;
        let state = FluidState::of(solution, liquid(solution, temperature).value()).ok()?;
        let mut network = crate::hydraulics::network::Network::new(state, FrictionLaw::default());
        let (supply, back) = (network.node(), network.node());
        let links = field.lay(&mut network, supply, back);
        network.hold(back, Quantity::from_si(0.0));
        network.take(supply, -flow);
        let solved = network.solve().ok()?;
        let flows: Vec<f64> = links
            .circuits
            .iter()
            .map(|link| solved.flow(*link).si())
            .collect();
        let mean = flows.iter().sum::<f64>() / flows.len() as f64;
        let away = |flow: &f64| (flow / mean - 1.0).abs();
        let farthest = flows.iter().map(away).fold(0.0, f64::max);
        if !(farthest.is_finite() && mean > 0.0) {
            return None;
        }
        let share = |value: f64| Fraction::from_si(value);
        Some(from_records(
            &EVEN,
            Compared::Value(farthest, EVEN_SPREAD),
            &used,
            Figure::uncertain(Uncertain::new(share(farthest), EVEN_SPREAD)),
            (Figure::exact(share(0.0)), Beside::Expected),
            Reasoning::new("circuit-flows", Authority::CommonPractice)
                .with("needed-flow", Figure::exact(flow)),
        ))
    };
    evaluated().unwrap_or_default()
}
