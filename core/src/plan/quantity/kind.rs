//! The quantities that steps ask for.

use crate::named::named;
use crate::units::{Dimension, Unit};

named! {
    /// A quantity computed for one system and shown at a step.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum QuantityKind {
        /// Fluid the whole loop holds.
        LoopVolume = "loop-volume",
        /// Fluid that the indoor part and the exchanger hold.
        IndoorVolume = "indoor-volume",
        /// Flow that the heat pump needs.
        NeededFlow = "needed-flow",
        /// Lowest pressure rating known in the system, or the conservative one.
        LowestRating = "lowest-rating",
        /// Flow that shows that the work was good.
        LeastFlow = "least-flow",
        /// Flow that carries air out of a section, at the transport velocity.
        PurgeFlow = "purge-flow",
        /// Flow that carries air out of one circuit, all others shut.
        CircuitPurgeFlow = "circuit-purge-flow",
        /// Fluid that one circuit holds.
        CircuitVolume = "circuit-volume",
        /// Pressure lost in loop and hoses at the purge flow.
        PurgeLoss = "purge-loss",
        /// Velocity the cart reaches in a section.
        CartVelocity = "cart-velocity",
        /// Groups in which circuits are purged, one group after the other.
        PurgeGroups = "purge-groups",
        /// Time for one turnover of a group at its flow.
        TurnoverTime = "turnover-time",
        /// Least time of flushing the loop.
        FlushTime = "flush-time",
        /// Least time of purging a group.
        PurgeTime = "purge-time",
        /// Least time of flushing the indoor part.
        UnitFlushTime = "unit-flush-time",
        /// First filter stage.
        CoarseFilter = "coarse-filter",
        /// Last filter stage.
        FineFilter = "fine-filter",
        /// Pressure to raise the loop to in the dead-head test.
        DeadHeadPressure = "dead-head-pressure",
        /// Greatest level drop that passes the dead-head test.
        DeadHeadLimit = "dead-head-limit",
        /// Air left in the loop at that drop.
        DeadHeadAir = "dead-head-air",
        /// Freeze point to reach.
        TargetFreezePoint = "target-freeze-point",
        /// Freeze point below which the fluid is needlessly strong.
        FreezePointFloor = "freeze-point-floor",
        /// Antifreeze to add.
        AntifreezeDose = "antifreeze-dose",
        /// Fluid to drain before adding antifreeze.
        DrainVolume = "drain-volume",
        /// Fluid to replace by water.
        DilutionVolume = "dilution-volume",
        /// Time to mix.
        MixTime = "mix-time",
        /// Pressure to stretch the pipe at.
        StretchPressure = "stretch-pressure",
        /// Pressure to leave today.
        LeavePressure = "leave-pressure",
        /// Lower end of what may be left today.
        LeavePressureLow = "leave-pressure-low",
        /// Upper end of what may be left today.
        LeavePressureHigh = "leave-pressure-high",
        /// Lower end of what the gauge should read after a day.
        RecheckDayLow = "recheck-day-low",
        /// Upper end of what the gauge should read after a day.
        RecheckDayHigh = "recheck-day-high",
        /// Lower end of what the gauge should read after a week.
        RecheckWeekLow = "recheck-week-low",
        /// Upper end of what the gauge should read after a week.
        RecheckWeekHigh = "recheck-week-high",
        /// Lower end of what the gauge should read after a month.
        RecheckMonthLow = "recheck-month-low",
        /// Upper end of what the gauge should read after a month.
        RecheckMonthHigh = "recheck-month-high",
        /// Lowest that the gauge may reach over the seasons.
        SeasonLow = "season-low",
        /// Highest that the gauge may reach over the seasons.
        SeasonHigh = "season-high",
        /// Fluid missing from the loop.
        MissingVolume = "missing-volume",
        /// Fluid to let out of the loop.
        ReleaseVolume = "release-volume",
        /// Time of the hold test.
        HoldTime = "hold-time",
        /// Greatest fall that passes the hold test.
        HoldFallLimit = "hold-fall-limit",
        /// Time to watch the loop as it is met.
        StandingHoldTime = "standing-hold-time",
        /// Greatest fall of a tight loop in that time.
        StandingFallLimit = "standing-fall-limit",
        /// Air pressure of the expansion tank with the fluid side at zero.
        TankPreCharge = "tank-pre-charge",
        /// Least suction pressure at the circulators.
        SuctionFloor = "suction-floor",
        /// Lower end of the fluid's temperature change across the unit.
        TemperatureChangeLow = "temperature-change-low",
        /// Upper end of the fluid's temperature change across the unit.
        TemperatureChangeHigh = "temperature-change-high",
        /// Pressure drop across the exchanger at the least flow, lower end.
        ExchangerDropLow = "exchanger-drop-low",
        /// Pressure drop across the exchanger at the needed flow, upper end.
        ExchangerDropHigh = "exchanger-drop-high",
        /// Electric input of all circulators together, no less than.
        CirculatorPowerLow = "circulator-power-low",
        /// Lowest leaving water that the fluid must stand.
        LowestLeavingWater = "lowest-leaving-water",
        /// Leaving water in heating, no lower than.
        LeavingWaterLimit = "leaving-water-limit",
        /// Fluid that fills a vented reservoir to its mark.
        ReservoirFill = "reservoir-fill",
    }
}

impl QuantityKind {
    /// What it measures.
    pub fn dimension(self) -> Dimension {
        match self {
            Self::LoopVolume
            | Self::IndoorVolume
            | Self::CircuitVolume
            | Self::DeadHeadAir
            | Self::AntifreezeDose
            | Self::DrainVolume
            | Self::DilutionVolume
            | Self::MissingVolume
            | Self::ReservoirFill
            | Self::ReleaseVolume => Dimension::Volume,
            Self::NeededFlow | Self::LeastFlow | Self::PurgeFlow | Self::CircuitPurgeFlow => {
                Dimension::VolumeFlow
            }
            Self::LowestRating
            | Self::DeadHeadPressure
            | Self::StretchPressure
            | Self::LeavePressure
            | Self::LeavePressureLow
            | Self::LeavePressureHigh
            | Self::RecheckDayLow
            | Self::RecheckDayHigh
            | Self::RecheckWeekLow
            | Self::RecheckWeekHigh
            | Self::RecheckMonthLow
            | Self::RecheckMonthHigh
            | Self::SeasonLow
            | Self::SeasonHigh
            | Self::TankPreCharge
            | Self::SuctionFloor => Dimension::Pressure,
            Self::PurgeLoss
            | Self::HoldFallLimit
            | Self::StandingFallLimit
            | Self::ExchangerDropLow
            | Self::ExchangerDropHigh => Dimension::Pressure,
            Self::CirculatorPowerLow => Dimension::Power,
            Self::CartVelocity => Dimension::Velocity,
            Self::PurgeGroups => Dimension::Number,
            Self::TurnoverTime
            | Self::FlushTime
            | Self::PurgeTime
            | Self::UnitFlushTime
            | Self::MixTime
            | Self::HoldTime
            | Self::StandingHoldTime => Dimension::Duration,
            Self::CoarseFilter | Self::FineFilter | Self::DeadHeadLimit => Dimension::Length,
            Self::TargetFreezePoint
            | Self::FreezePointFloor
            | Self::LowestLeavingWater
            | Self::LeavingWaterLimit => Dimension::Temperature,
            Self::TemperatureChangeLow | Self::TemperatureChangeHigh => {
                Dimension::TemperatureDifference
            }
        }
    }
}

impl QuantityKind {
    /// Units it reads best in, US and SI, where the usual ones would not do.
    pub fn units(self) -> Option<(Unit, Unit)> {
        match self {
            Self::DeadHeadLimit => Some((Unit::Inch, Unit::Centimetre)),
            Self::CoarseFilter | Self::FineFilter => Some((Unit::Micrometre, Unit::Micrometre)),
            Self::CirculatorPowerLow => Some((Unit::Watt, Unit::Watt)),
            _ => None,
        }
    }
}
