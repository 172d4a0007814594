//! What is to be said beside the quantities.

use super::QuantityKind;
use crate::figures::Figure;
use crate::pressure::belief::Unknown;
use chrono::NaiveDate;

/// Something to be said beside the quantities.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Remark {
    /// No rating of the heat pump is known: the conservative limit was taken.
    RatingUnknown,
    /// The cart reaches the velocity in some section in no group.
    CartTooSmall,
    /// All circuits at once would take more pressure than the weakest part bears.
    LossAboveRating {
        /// Pressure at the cart.
        loss: Figure,
        /// The rating.
        rating: Figure,
    },
    /// A large header needs this velocity to clear of air: vent its high points.
    LargeHeader {
        /// The velocity.
        velocity: Figure,
        /// Bore of the header.
        bore: Figure,
    },
    /// The hoses are not known: 20 ft of 1 in hose were assumed.
    HosesAssumed,
    /// Nobody logged the lowest entering water of the season: this one was taken.
    LowestEnteringAssumed {
        /// What was taken.
        entering: Figure,
    },
    /// What is added was assumed: pure glycol, or alcohol premixed half and half.
    ProductAssumed,
    /// No pressure is certain to stay inside the limits in every season: see it again.
    NoPressureServes {
        /// Probability that the one to leave does.
        inside: Figure,
        /// How far the lowest lies under the least.
        short: Figure,
        /// How far the highest lies over the most.
        over: Figure,
        /// What makes the band widest.
        widest: Option<Unknown>,
    },
    /// The fluid may freeze at the water that leaves, or that must be reckoned with.
    FreezesWhereItLeaves {
        /// Its freeze point.
        freezes: Figure,
        /// The water.
        leaving: Figure,
    },
    /// From which fall on a leak shows in the hour after a charge.
    HoldShows {
        /// Fall per day that shows.
        shows: Figure,
    },
    /// The leak that was seen is too slow for the hour after a charge.
    HoldCannotShow {
        /// Fall per day that was seen.
        leak: Figure,
        /// Fall per day that shows.
        shows: Figure,
    },
    /// No pressure is certain to keep both limits; this one keeps what the loop cannot run
    /// without, and under the rating.
    BareLeast {
        /// Probability that it stays inside the limits.
        inside: Figure,
    },
    /// Nothing speaks against what the loop stood at: it is left so.
    PressureKept {
        /// Probability that it stays inside the limits, by pipe and seasons alone; none
        /// where that is so low that it only tells how little is known.
        inside: Option<Figure>,
        /// How long it has stood on the charge that it holds.
        stood: Stood,
    },
    /// The band over the seasons is wide for what is not known of the loop.
    SeasonsUnsure {
        /// Width of the band at one moment.
        width: Figure,
        /// What makes it widest.
        widest: Option<Unknown>,
    },
    /// At the upper end of its band the loop may come above its weakest part's rating.
    MayPassRating {
        /// What it may come to.
        high: Figure,
        /// The rating.
        rating: Figure,
    },
    /// What is let down comes back in part, for the pipe shrinks after.
    ComesBack {
        /// What the gauge most likely reads after a month.
        after: Figure,
    },
    /// What the loop stands at was not read.
    ReadGaugeFirst,
    /// What the seasons ask for is more than may be put on: see it again.
    LimitedByRating {
        /// Probability that the pressure to leave stays inside the limits.
        inside: Figure,
        /// How far the lowest lies under the least.
        short: Figure,
    },
}

/// How long a loop has stood on the charge that it holds, as far as is on record.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Stood {
    /// Through every season since this day.
    EverySeason(NaiveDate),
    /// Less than a year, since this day.
    Since(NaiveDate),
    /// That is not on record.
    Unknown,
}

impl Stood {
    /// Stable ids; their clauses are `plan-stood-<id>`.
    pub const IDS: [&'static str; 3] = ["every-season", "since", "unknown"];
    /// Stable id.
    pub fn id(self) -> &'static str {
        match self {
            Self::EverySeason(_) => Self::IDS[0],
            Self::Since(_) => Self::IDS[1],
            Self::Unknown => Self::IDS[2],
        }
    }
    /// The day, if one is on record.
    pub fn day(self) -> Option<NaiveDate> {
        match self {
            Self::EverySeason(day) | Self::Since(day) => Some(day),
            Self::Unknown => None,
        }
    }
}

impl Remark {
    /// Stable ids of all kinds.
    pub const IDS: [&'static str; 19] = [
        "rating-unknown",
        "cart-too-small",
        "large-header",
        "hoses-assumed",
        "product-assumed",
        "no-pressure-serves",
        "limited-by-rating",
        "hold-shows",
        "hold-cannot-show",
        "bare-least",
        "pressure-kept",
        "may-pass-rating",
        "read-gauge-first",
        "freezes-where-it-leaves",
        "lowest-entering-assumed",
        "comes-back",
        "pressure-kept-unsure",
        "seasons-unsure",
        "loss-above-rating",
    ];
    /// The quantities that it is said beside.
    pub fn about(&self) -> &'static [QuantityKind] {
        use QuantityKind as Q;
        match self {
            Self::RatingUnknown => &[Q::LowestRating],
            Self::CartTooSmall | Self::LargeHeader { .. } => &[Q::PurgeFlow, Q::CartVelocity],
            Self::LossAboveRating { .. } => &[Q::PurgeLoss],
            Self::HosesAssumed => &[Q::PurgeLoss, Q::CartVelocity],
            Self::ProductAssumed => &[Q::AntifreezeDose],
            Self::NoPressureServes { .. }
            | Self::BareLeast { .. }
            | Self::PressureKept { .. }
            | Self::MayPassRating { .. }
            | Self::ComesBack { .. }
            | Self::ReadGaugeFirst
            | Self::LimitedByRating { .. } => &[Q::LeavePressure],
            Self::SeasonsUnsure { .. } => &[Q::SeasonLow, Q::SeasonHigh],
            Self::FreezesWhereItLeaves { .. } => &[Q::TargetFreezePoint],
            Self::LowestEnteringAssumed { .. } => &[Q::LowestLeavingWater],
            Self::HoldShows { .. } | Self::HoldCannotShow { .. } => &[Q::HoldFallLimit],
        }
    }
    /// Stable id; its sentence is `plan-remark-<id>`.
    pub fn id(&self) -> &'static str {
        match self {
            Self::RatingUnknown => Self::IDS[0],
            Self::CartTooSmall => Self::IDS[1],
            Self::LargeHeader { .. } => Self::IDS[2],
            Self::HosesAssumed => Self::IDS[3],
            Self::ProductAssumed => Self::IDS[4],
            Self::NoPressureServes { .. } => Self::IDS[5],
            Self::LimitedByRating { .. } => Self::IDS[6],
            Self::HoldShows { .. } => Self::IDS[7],
            Self::HoldCannotShow { .. } => Self::IDS[8],
            Self::BareLeast { .. } => Self::IDS[9],
            Self::PressureKept {
                inside: Some(_), ..
            } => Self::IDS[10],
            Self::MayPassRating { .. } => Self::IDS[11],
            Self::ReadGaugeFirst => Self::IDS[12],
            Self::FreezesWhereItLeaves { .. } => Self::IDS[13],
            Self::LowestEnteringAssumed { .. } => Self::IDS[14],
            Self::ComesBack { .. } => Self::IDS[15],
            Self::PressureKept { inside: None, .. } => Self::IDS[16],
            Self::SeasonsUnsure { .. } => Self::IDS[17],
            Self::LossAboveRating { .. } => Self::IDS[18],
        }
    }
}
