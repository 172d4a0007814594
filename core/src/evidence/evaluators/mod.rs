//! From readings to likelihoods, one file a topic.
//!
//! Each evaluator states once what the true quantity may be at each level (a
//! [`Levels`](super::Levels) constant with its authority), compares what was
//! measured with what the physics expects of this system, and carries every
//! uncertainty into the likelihood.

mod agreement;
mod air;
mod approach;
mod circuits;
mod circulators;
mod computed;
mod electric;
mod flow;
pub(super) mod freeze;
mod pressure;
mod pump;
mod solids;
mod split;
mod static_pressure;
mod tank;
mod trend;
mod unaccounted;
mod unit;
mod water;

pub use pressure::{Believed, believed};

use super::call::Call;
use super::evaluation::Evaluation;
use crate::figures::Figure;
use crate::records::ReadingPoint;
use crate::uncertainty::Uncertain;
use crate::units::{Power, Unit};

/// Turns the readings of a call into observations of one finding.
#[derive(Copy, Clone, Debug)]
pub struct Evaluator {
    /// Name by which the rule graph refers to it.
    pub name: &'static str,
    /// Whether its levels are low, normal and high rather than absent and present.
    pub graded: bool,
    /// Points it can make use of.
    pub reads: &'static [ReadingPoint],
    evaluate: fn(&Call<'_>) -> Vec<Evaluation>,
}

impl Evaluator {
    /// Every observation that the readings allow; none if they hold too little.
    pub fn evaluate(&self, call: &Call<'_>) -> Vec<Evaluation> {
        (self.evaluate)(call)
    }

    /// The evaluator that shows a sign by readings, if one does.
    pub fn showing(finding: &str) -> Option<&'static Self> {
        SHOWN.iter().find(|evaluator| evaluator.name == finding)
    }

    /// The evaluator of a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        ALL.iter().find(|evaluator| evaluator.name == name)
    }
}

/// Every evaluator.
pub const ALL: &[Evaluator] = &[
    static_pressure::STATIC_PRESSURE,
    pressure::PRESSURE_UNEXPLAINED,
    pressure::PRESSURE_GONE,
    trend::STATIC_PRESSURE_TREND,
    trend::FALL_SHRINKS,
    pressure::SUCTION_PRESSURE,
    tank::TANK_PRE_CHARGE,
    tank::RESERVOIR_LEVEL,
    tank::FLUID_LOST,
    air::DEAD_HEAD_AIR,
    flow::LOOP_FLOW,
    solids::STRAINER_DROP,
    solids::EXCHANGER_DROP,
    solids::EXCHANGER_SHARE,
    pump::CIRCULATOR_RISE,
    pump::SHUT_OFF_RISE,
    electric::CIRCULATOR_POWER,
    pump::CIRCULATOR_BODY_HOT,
    unaccounted::HEAD_UNACCOUNTED,
    computed::FLOW_SHORT,
    computed::COLD_FILM,
    computed::LENGTH_SHORT,
    computed::CIRCUITS_UNEVEN,
    circuits::RETURNS_DIFFER,
    circuits::RETURN_STANDS,
    freeze::FREEZE_PROTECTION,
    freeze::FREEZE_SAMPLES_DIFFER,
    freeze::GRAVITY_DISAGREES,
    split::TEMPERATURE_SPLIT,
    unit::ENTERING_WATER,
    approach::APPROACH,
    unit::SUPERHEAT_GRADED,
    unit::SUBCOOLING_GRADED,
    unit::UNIT_POWER,
    unit::UNIT_CAPACITY,
    unit::AIR_CHANGE,
    water::SCALING_WATER,
    water::IRON_IN_WATER,
    water::CORROSIVE_WATER,
    water::FLUID_ACIDITY,
];

/// Signs that people see and readings show as well: the evaluator has the name of
/// the finding, and stands in where nobody answered for it.
const SHOWN: &[Evaluator] = &[
    split::SPLIT_REVERSED,
    agreement::SECOND_GAUGE,
    agreement::DISPLAY,
];

/// The names of all evaluators, for the validation of the rule graph.
pub fn names() -> Vec<&'static str> {
    ALL.iter().map(|evaluator| evaluator.name).collect()
}

/// Electric power, shown in watts.
fn watts(power: Uncertain<Power>) -> Figure {
    Figure::uncertain(power).shown_in(Unit::Watt, Unit::Watt)
}
