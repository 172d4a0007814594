//! A field of circuits on headers, with what stands in the building.

use super::amount::Amount;
use super::error::CalcError;
use super::given::{
    FluidGiven, Law, PartGiven, RunGiven, law, pipe, pump_curve, runs, state, topic,
};
use super::network::{PipeState, Stands, pipe_state, pump_state};
use crate::hydraulics::network::ground_loop::{
    Bypass, Circuit, FlowPump, GroundLoop, LoopField, Plant, PumpSet, ReturnPath,
};
use crate::records::{self, CirculatorPiping, HeadPoint, HeaderReturn};
use crate::units::{Bound, Fraction, Length, PressureDifference, Temperature, Volume, VolumeFlow};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

const BLOCKED: Bound<Fraction> = Bound::si("blocked part of the bore", 0.0, 1.0);
const OPENING: Bound<Fraction> = Bound::si("open part of the valve", 0.0, 1.0);

/// A circuit, out and back.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct CircuitGiven {
    run: RunGiven,
    /// Part of the bore that is blocked; 100 % lets nothing through.
    blocked: Option<Amount<Fraction>>,
    /// Its valve is shut.
    #[serde(default)]
    shut: bool,
}

/// Circuits on a pair of headers.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct FieldGiven {
    /// In the order of the supply header.
    #[schemars(length(min = 1, max = 400))]
    circuits: Vec<CircuitGiven>,
    /// Sections of the supply header: number i leads to circuit i; each may have its own size.
    #[serde(default)]
    #[schemars(length(max = 400))]
    supply: Vec<RunGiven>,
    #[serde(default)]
    #[schemars(length(max = 400))]
    returns: Vec<RunGiven>,
    /// Direct when left out.
    header_return: Option<HeaderReturn>,
}

impl FieldGiven {
    pub fn field(&self) -> Result<LoopField, CalcError> {
        let circuits = self.circuits.iter().map(|given| {
            let blocked = given.blocked.map_or(Fraction::ZERO, Amount::get);
            Ok(Circuit {
                run: given.run.run()?,
                blocked: BLOCKED.check(blocked)?,
                open: !given.shut,
            })
        });
        Ok(LoopField {
            circuits: circuits.collect::<Result<_, CalcError>>()?,
            supply: runs(&self.supply)?,
            returns: runs(&self.returns)?,
            path: match self.header_return {
                Some(HeaderReturn::Reverse) => ReturnPath::Reverse,
                Some(HeaderReturn::Direct) | None => ReturnPath::Direct,
            },
        })
    }
}

/// A pump of the flow centre.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct PumpGiven {
    #[schemars(length(min = 1, max = 100))]
    curve: Vec<HeadPoint>,
    /// Running when left out.
    stands: Option<Stands>,
    /// Relative to the curve; full when left out.
    speed: Option<Amount<Fraction>>,
    check_valve: Option<PartGiven>,
}

/// A valve that should separate supply and return, left part open.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct BypassGiven {
    pipe: records::Pipe,
    /// Part of its bore that is open.
    opening: Amount<Fraction>,
}

/// A circuit of the answer.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct CircuitFlow {
    flow: Amount<VolumeFlow>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pipe: Option<PipeState>,
}

topic! {
    /// Flows of a ground loop.
    LoopFlow "loop-flow" by "gradient-method" and spreads;
    example r#"{"field": {"circuits": [{"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}}}, {"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}}, "blocked": {"value": 60, "unit": "%"}}, {"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 600, "unit": "ft"}}}], "supply": [{"pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 30, "unit": "ft"}}, {"pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 15, "unit": "ft"}}, {"pipe": {"standard": "ips_pe", "size": "1", "sdr": "11"}, "length": {"value": 15, "unit": "ft"}}], "returns": [{"pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 30, "unit": "ft"}}, {"pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 15, "unit": "ft"}}, {"pipe": {"standard": "ips_pe", "size": "1", "sdr": "11"}, "length": {"value": 15, "unit": "ft"}}], "header_return": "reverse"}, "pumps": [{"curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}]}], "bypass": {"pipe": {"standard": "ips_pe", "size": "1", "sdr": "11"}, "opening": {"value": 15, "unit": "%"}}, "fluid": {"kind": "methanol", "volume_fraction": {"value": 20, "unit": "%"}}, "temperature": {"value": 40, "unit": "degF"}}"#;
    asks LoopFlowQuestion {
        field: FieldGiven,
        #[schemars(length(min = 1, max = 10))]
        pumps: Vec<PumpGiven>,
        /// Series when left out.
        piping: Option<CirculatorPiping>,
        /// Exchanger, strainer and other parts in series.
        #[serde(default)]
        #[schemars(length(max = 20))]
        parts: Vec<PartGiven>,
        /// Pipe in the building, in series.
        #[serde(default)]
        #[schemars(length(max = 100))]
        indoor: Vec<RunGiven>,
        bypass: Option<BypassGiven>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
        law: Option<Law>,
    }
    tells LoopFlowAnswer {
        /// In the order of the question.
        circuits: Vec<CircuitFlow>,
        pumps: Vec<Amount<VolumeFlow>>,
        /// Through the unit: every circuit and the bypass.
        unit: Amount<VolumeFlow>,
        bypass: Option<Amount<VolumeFlow>>,
        /// Over the field, headers included.
        field_drop: Amount<PressureDifference>,
        field_head: Amount<Length>,
        field_volume: Amount<Volume>,
        steps: usize,
    }
    |q, show| {
        let (field, fluid) = (q.field.field()?, state(q.fluid, q.temperature)?);
        let pumps = q.pumps.iter().map(|given| Ok(FlowPump {
            curve: pump_curve(&given.curve)?,
            state: pump_state(given.stands, given.speed),
            check_valve: given.check_valve.as_ref().map(PartGiven::loss_curve).transpose()?,
        })).collect::<Result<Vec<_>, CalcError>>()?;
        let bypass = q.bypass.as_ref().map(|given| Ok::<_, CalcError>(Bypass {
            pipe: pipe(&given.pipe)?,
            opening: OPENING.check(given.opening.get())?,
        })).transpose()?;
        let plant = Plant {
            pumps: match q.piping {
                Some(CirculatorPiping::Parallel) => PumpSet::Parallel(pumps),
                Some(CirculatorPiping::Series) | None => PumpSet::Series(pumps),
            },
            parts: q.parts.iter().map(PartGiven::loss_curve).collect::<Result<_, CalcError>>()?,
            pipes: runs(&q.indoor)?,
            bypass,
        };
        let built = GroundLoop::build(&field, &plant, fluid, law(q.law));
        let solution = built.network.solve()?;
        let circuits: Vec<VolumeFlow> = built.field.circuits.iter().map(|&link| solution.flow(link)).collect();
        let through = built.bypass.map(|link| solution.flow(link));
        let unit = circuits.iter().copied().sum::<VolumeFlow>() + through.unwrap_or(VolumeFlow::ZERO);
        let drop = solution.drop(built.supply, built.back);
        Ok(LoopFlowAnswer {
            circuits: built.field.circuits.iter().zip(&circuits).map(|(&link, &flow)| CircuitFlow {
                flow: show.exact(flow),
                pipe: pipe_state(&built.network, &solution, link, show),
            }).collect(),
            pumps: built.pumps.iter().map(|&link| show.exact(solution.flow(link))).collect(),
            unit: show.exact(unit),
            bypass: through.map(|flow| show.exact(flow)),
            field_drop: show.exact(drop),
            field_head: show.exact(drop.head(fluid.density)),
            field_volume: show.exact(field.volume()),
            steps: solution.steps,
        })
    }
}
