//! Every quantity of the physics as a question with an answer, for scripts.
//!
//! A topic is a row of [`TOPICS`]: a question (one JSON object, numbers with
//! their units, accuracies where they are known), an answer of the same form,
//! an example that runs. [`Calculator`] turns lines into answers; whatever is
//! wrong with a line becomes an object with code, field, value and remedy.
//!
//! What of the physics has no topic of its own: the lists of pipe sizes (the
//! schema of `pipe-size` has them), the loss of a valve left part open and the
//! solver's warm start (inside `loop-flow` and `network`), the ranges (errors
//! tell them), the balance of a sealed loop for given properties (`static-band`
//! asks it for many), and the normal and χ² distributions (inside every
//! probability).

mod amount;
mod charge;
mod circulators;
mod error;
mod fields;
mod fluids;
mod given;
mod heat;
mod hold;
mod network;
mod pipes;
mod pressure;
mod purge;
mod season;
mod spread;
mod topic;
mod water;

use topic::entry;
pub use topic::{Calculator, Entry, MAX_LINE, too_long};

/// Every topic, in the order of the work.
pub const TOPICS: &[Entry] = &[
    entry::<fluids::Properties>(),
    entry::<fluids::Strength>(),
    entry::<fluids::FreezePoint>(),
    entry::<fluids::Refractometer>(),
    entry::<fluids::Hydrometer>(),
    entry::<fluids::VapourPressure>(),
    entry::<fluids::Atmosphere>(),
    entry::<pipes::PipeSize>(),
    entry::<pipes::HeadLoss>(),
    entry::<pipes::FrictionFactor>(),
    entry::<pipes::PartLoss>(),
    entry::<pipes::LoopVolume>(),
    entry::<pipes::PipeModulus>(),
    entry::<pipes::PipeStretch>(),
    entry::<network::PipeNetwork>(),
    entry::<fields::LoopFlow>(),
    entry::<purge::PurgePlan>(),
    entry::<purge::DeadHead>(),
    entry::<season::StaticBand>(),
    entry::<season::PressureToLeave>(),
    entry::<pressure::LeakOrRelaxation>(),
    entry::<hold::HoldTest>(),
    entry::<pressure::ExpansionTank>(),
    entry::<pressure::ReservoirLevel>(),
    entry::<pressure::AirSolubility>(),
    entry::<pressure::PressureByTemperature>(),
    entry::<charge::Dose>(),
    entry::<charge::DrainAndReplace>(),
    entry::<charge::Premix>(),
    entry::<charge::Concentrate>(),
    entry::<charge::Mixing>(),
    entry::<charge::FlashPoint>(),
    entry::<heat::FlowByExchanger>(),
    entry::<heat::FlowByPump>(),
    entry::<heat::FlowByHeat>(),
    entry::<heat::ReconcileFlow>(),
    entry::<heat::CarriedHeat>(),
    entry::<heat::UnitHeat>(),
    entry::<heat::Approach>(),
    entry::<heat::ExchangerCondition>(),
    entry::<heat::Effectiveness>(),
    entry::<heat::Saturation>(),
    entry::<circulators::SuctionMargin>(),
    entry::<circulators::ShutOffHead>(),
    entry::<circulators::PumpHead>(),
    entry::<circulators::OperatingPoint>(),
    entry::<circulators::PumpEfficiency>(),
    entry::<water::WaterIndices>(),
    entry::<water::FillWater>(),
    entry::<water::CombineReadings>(),
];

/// The topic of this name.
pub fn topic(name: &str) -> Option<Entry> {
    TOPICS.iter().copied().find(|topic| topic.name() == name)
}

/// The names nearest to one that does not exist, nearest first.
pub fn close_to(unknown: &str) -> Vec<&'static str> {
    let mut names: Vec<&'static str> = TOPICS.iter().map(Entry::name).collect();
    names.sort_by_key(|name| crate::text::distance(unknown, name));
    names.truncate(3);
    names
}
