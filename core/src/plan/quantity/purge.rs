//! Purge flow for every section, what the cart reaches, groups and times.

use super::{Known, Lack, Part, QuantityKind, Remark, Sheet};
use crate::figures::{Authority, Figure, Reasoning};
use crate::hydraulics::component::FluidState;
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::network::ground_loop::{Circuit, LoopField, ReturnPath, Run};
use crate::hydraulics::pipe::PipeSeries;
use crate::hydraulics::pump::PumpCurve;
use crate::hydraulics::purge::{Cart, FILTER_STAGES, PurgePlan, PurgeRules, Section, Stage, plan};
use crate::model::{self, pipe_of};
use crate::records::{FlushCart, HeadPoint, HeaderReturn};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, Fraction, Length, Number, Quantity, Unit, VolumeFlow};
use QuantityKind as Q;

/// Relative uncertainty of a flow from the published bore: average walls are
/// some 6 % over the least, the bore's area 2 to 3 % less.
const BORE_SPREAD: f64 = 0.03;
/// Relative uncertainty of a computed loss: fittings, bore and friction law. Judgement.
const LOSS_SPREAD: f64 = 0.15;
/// Fittings of a circuit and of a header, as loss coefficients: a U-bend and
/// two entries; two elbows. Judgement.
const CIRCUIT_FITTINGS: f64 = 3.0;
const HEADER_FITTINGS: f64 = 2.0;
/// Length of each hose where none is recorded.
const HOSE_FEET: f64 = 10.0;
/// Minutes for the indoor part: 5 to 10, common practice, no source.
const UNIT_MINUTES: f64 = 10.0;

pub(super) fn compute(known: &Known<'_>, sheet: &mut Sheet) {
    constants(sheet);
    let flows = [
        Q::PurgeFlow,
        Q::PurgeLoss,
        Q::CircuitPurgeFlow,
        Q::CircuitVolume,
        Q::CartVelocity,
        Q::PurgeGroups,
        Q::TurnoverTime,
        Q::FlushTime,
        Q::PurgeTime,
        Q::MixTime,
    ];
    let Some(field) = field(known) else {
        sheet.lack(&flows, Lack::Circuits);
        return;
    };
    let temperature = known.computable().value();
    let Ok(state) = FluidState::of(known.model.fluid.solution(), temperature) else {
        sheet.lack(&flows, Lack::OutsideModel);
        return;
    };
    let recorded = known.file.visit.means.cart.as_ref();
    let curve = recorded.and_then(|cart| pump_curve(&cart.curve));
    let rig = rig(known, recorded, curve.clone(), sheet);
    let rules = PurgeRules::default();
    let planned =
        rig.and_then(|cart| plan(&field, &cart, rules, state, FrictionLaw::default()).ok());
    let Some(planned) = planned else {
        sheet.lack(&flows, Lack::OutsideModel);
        return;
    };
    needs(known, &planned, rules, state, sheet);
    let of = |kind| sheet.get(kind).map(|computed| computed.figure);
    if let (Some(loss), Some(rating)) = (of(Q::PurgeLoss), of(Q::LowestRating))
        && loss.si > rating.si
    {
        sheet.remarks.push(Remark::LossAboveRating { loss, rating });
    }
    if curve.is_some() {
        reached(&planned, rules, sheet);
    } else {
        sheet.lack(&flows[4..], Lack::CartCurve);
    }
}

/// Filters and times that are the same for every loop.
fn constants(sheet: &mut Sheet) {
    let practice = |formula| Reasoning::new(formula, Authority::CommonPractice);
    for (kind, stage) in [Q::CoarseFilter, Q::FineFilter]
        .into_iter()
        .zip(FILTER_STAGES)
    {
        let fineness = Length::from_si(Unit::Micrometre.to_si(f64::from(stage.micron)));
        sheet.add(
            kind,
            Figure::exact(fineness),
            practice("plan-filter-stages"),
        );
    }
    let minutes = Duration::from_si(Unit::Minute.to_si(UNIT_MINUTES));
    sheet.add(
        Q::UnitFlushTime,
        Figure::exact(minutes),
        practice("plan-unit-flush-time"),
    );
}

/// The ground field; circuits one by one, headers as one run on either side.
fn field(known: &Known<'_>) -> Option<LoopField> {
    let piping = &known.model.piping;
    let run = |section: &model::Section, fittings: f64| Run {
        pipe: section.pipe,
        length: section.length,
        fittings: Number::from_si(fittings),
    };
    let circuits: Vec<Circuit> = piping
        .circuits
        .iter()
        .flat_map(|section| {
            let circuit = Circuit {
                run: run(section, CIRCUIT_FITTINGS),
                blocked: Fraction::ZERO,
                open: true,
            };
            std::iter::repeat_n(circuit, section.count as usize)
        })
        .collect();
    if circuits.is_empty() {
        return None;
    }
    let ground = known.file.system.ground.as_ref();
    let path = match ground.and_then(|ground| ground.header_return) {
        Some(HeaderReturn::Reverse) => ReturnPath::Reverse,
        Some(HeaderReturn::Direct) | None => ReturnPath::Direct,
    };
    // Half of what is recorded lies on either side.
    let (supply, returns) = match trunk(&piping.headers) {
        None => (Vec::new(), Vec::new()),
        Some(trunk) => {
            let half = Run {
                length: trunk.length * 0.5,
                ..trunk
            };
            let mut returns = vec![half];
            if path == ReturnPath::Reverse {
                let nothing = Run {
                    length: Length::ZERO,
                    fittings: Number::from_si(0.0),
                    ..half
                };
                returns = vec![nothing; circuits.len() - 1];
                returns.push(half);
            }
            (vec![half], returns)
        }
    };
    Some(LoopField {
        circuits,
        supply,
        returns,
        path,
    })
}

/// Headers in a row as one run of the widest pipe with the same loss: the
/// widest decides the flow, and loss goes by length over bore to the 4.75th
/// (turbulent flow in smooth pipe, Blasius).
fn trunk(headers: &[model::Section]) -> Option<Run> {
    let widest = headers
        .iter()
        .max_by(|a, b| a.pipe.bore().si().total_cmp(&b.pipe.bore().si()))?;
    let length = headers.iter().map(|section| {
        let ratio = widest.pipe.bore() / section.pipe.bore();
        section.length * ratio.powf(4.75)
    });
    Some(Run {
        pipe: widest.pipe,
        length: length.sum(),
        fittings: Number::from_si(HEADER_FITTINGS),
    })
}

fn pump_curve(points: &[HeadPoint]) -> Option<PumpCurve> {
    let points: Vec<(VolumeFlow, Length)> = points
        .iter()
        .map(|point| (point.flow.get(), point.head.get()))
        .collect();
    PumpCurve::through(&points).ok()
}

/// The cart with its hoses. Without a curve a large pump stands in, so that
/// the needs can be told; what it reaches is then not shown.
fn rig(
    known: &Known<'_>,
    recorded: Option<&FlushCart>,
    curve: Option<PumpCurve>,
    sheet: &mut Sheet,
) -> Option<Cart> {
    let hose = recorded.and_then(|cart| cart.hose.as_ref());
    let recorded_hose =
        hose.and_then(|hose| Some((pipe_of(&hose.pipe).ok()?, hose.length.get() * 0.5)));
    let (pipe, length) = match recorded_hose {
        Some(hose) => hose,
        None => {
            sheet.remarks.push(Remark::HosesAssumed);
            let pipe = PipeSeries::Hose.pipe("1", 0.0).ok()?;
            (pipe, Length::from_si(Unit::Foot.to_si(HOSE_FEET)))
        }
    };
    let run = Run {
        pipe,
        length,
        fittings: Number::from_si(HEADER_FITTINGS),
    };
    let stand_in = || {
        let count = known.model.piping.circuit_count().unwrap_or(1);
        let flow = VolumeFlow::from_si(1e-3 * f64::from(count).max(4.0));
        PumpCurve::through(&[(flow, Length::from_si(60.0))]).ok()
    };
    Some(Cart {
        pump: curve.or_else(stand_in)?,
        speed: Number::from_si(1.0),
        hoses: [run, run],
        filter: None,
    })
}

fn needs(
    known: &Known<'_>,
    planned: &PurgePlan,
    rules: PurgeRules,
    state: FluidState,
    sheet: &mut Sheet,
) {
    let why = || {
        Reasoning::new("plan-purge-flow", Authority::Published("ghp-northwest"))
            .with("plan-transport-velocity", Figure::exact(rules.velocity))
    };
    sheet.add(
        Q::PurgeFlow,
        Figure::uncertain(Uncertain::relative(planned.needed_flow, BORE_SPREAD)),
        why(),
    );
    // One line for every kind of circuit and for each header.
    let mut first = 0usize;
    for (place, group) in known.model.piping.circuits.iter().enumerate() {
        let circuit = Section::Circuit(first);
        let own = planned.sections.iter().find(|need| need.section == circuit);
        if let Some(need) = own {
            let reasoning = why().with("plan-bore", bore(group.pipe.bore()));
            let flow = Uncertain::relative(need.needed, BORE_SPREAD);
            for kind in [Q::PurgeFlow, Q::CircuitPurgeFlow] {
                let part = Part::Circuits(place);
                sheet.add_part(kind, part, Figure::uncertain(flow), reasoning.clone());
            }
            let holds = group.pipe.volume(group.length);
            sheet.add_part(
                Q::CircuitVolume,
                Part::Circuits(place),
                Figure::uncertain(Uncertain::relative(holds, BORE_SPREAD)),
                Reasoning::new(
                    "plan-circuit-volume",
                    Authority::Published("pipe-standards"),
                ),
            );
        }
        first += group.count as usize;
    }
    for (section, part) in [
        (Section::Supply(0), Part::SupplyHeader),
        (Section::Return(0), Part::ReturnHeader),
    ] {
        let own = planned.sections.iter().find(|need| need.section == section);
        if let Some(need) = own {
            let flow = Uncertain::relative(need.needed, BORE_SPREAD);
            sheet.add_part(Q::PurgeFlow, part, Figure::uncertain(flow), why());
            if let Some(velocity) = need.froude
                && let Some(run) = trunk(&known.model.piping.headers)
                && part == Part::SupplyHeader
            {
                sheet.remarks.push(Remark::LargeHeader {
                    velocity: Figure::exact(velocity),
                    bore: bore(run.pipe.bore()),
                });
            }
        }
    }
    let loss = planned.needed_head.pressure(state.density);
    let reasoning = Reasoning::new("plan-purge-loss", Authority::Published("swamee-jain"))
        .with("plan-purge-flow", Figure::exact(planned.needed_flow))
        .with("plan-density", Figure::exact(state.density))
        .with("plan-viscosity", Figure::exact(state.viscosity));
    sheet.add(
        Q::PurgeLoss,
        Figure::uncertain(Uncertain::relative(loss, LOSS_SPREAD)),
        reasoning,
    );
}

fn bore(bore: Length) -> Figure {
    Figure::exact(bore).shown_in(Unit::Inch, Unit::Millimetre)
}

fn reached(planned: &PurgePlan, rules: PurgeRules, sheet: &mut Sheet) {
    let why = |stage: &Stage| {
        Reasoning::new("plan-cart-velocity", Authority::Published("swamee-jain"))
            .with("plan-cart-flow", Figure::exact(stage.flow))
            .with(
                "plan-cart-head",
                Figure::exact(stage.head).shown_in(Unit::Foot, Unit::Metre),
            )
    };
    let velocity = |stage: &Stage| {
        Figure::uncertain(Uncertain::relative(
            rules.velocity * stage.ratio.si(),
            BORE_SPREAD,
        ))
    };
    let all = &planned.all_open;
    sheet.add_part(Q::CartVelocity, Part::AllOpen, velocity(all), why(all));
    let count = Number::from_si(planned.stages.len() as f64);
    sheet.add(
        Q::PurgeGroups,
        Figure::exact(count),
        Reasoning::new("plan-purge-groups", Authority::Published("ghp-northwest"))
            .with("plan-transport-velocity", Figure::exact(rules.velocity)),
    );
    if !planned.short.is_empty() {
        sheet.remarks.push(Remark::CartTooSmall);
    }
    let (mut whole, mut slowest, mut longest) = (Duration::ZERO, Duration::ZERO, Duration::ZERO);
    for (place, stage) in planned.stages.iter().enumerate() {
        let part = Part::Group(place);
        if planned.stages.len() > 1 {
            sheet.add_part(Q::CartVelocity, part, velocity(stage), why(stage));
        }
        let turnover = stage.volume / VolumeFlow::from_si(stage.flow.si().max(1e-9));
        let wanted = turnover * rules.turnovers.si();
        let purge = if wanted > rules.stage_minimum {
            wanted
        } else {
            rules.stage_minimum
        };
        whole += stage.duration;
        slowest = if turnover > slowest {
            turnover
        } else {
            slowest
        };
        longest = if purge > longest { purge } else { longest };
    }
    let times = |formula, authority| {
        Reasoning::new(formula, authority)
            .with("plan-turnover", Figure::exact(slowest))
            .with("plan-turnovers", Figure::exact(rules.turnovers))
    };
    let practice = Authority::CommonPractice;
    sheet.add(
        Q::TurnoverTime,
        Figure::exact(slowest),
        times("plan-turnover", practice),
    );
    sheet.add(
        Q::FlushTime,
        Figure::exact(whole),
        times("plan-flush-time", practice),
    );
    sheet.add(
        Q::PurgeTime,
        Figure::exact(longest),
        times("plan-purge-time", Authority::Published("ghp-northwest")),
    );
    // Three hours at least (common practice), and as many turnovers as make
    // samples mean something.
    let practice_time = Unit::Hour.to_si(3.0);
    let turnovers = slowest.si() * crate::charge::FEWEST_TURNOVERS * count.si();
    sheet.add(
        Q::MixTime,
        Figure::exact(Duration::from_si(practice_time.max(turnovers))),
        times("plan-mix-time", practice),
    );
}
