//! Heating or cooling season, by the best sign there is.

use crate::records::visit_file::VisitFile;
use crate::records::{OperatingMode, Phase, ReadingPoint};
use chrono::{Datelike, NaiveDate};

/// What the system is mostly used for now.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Season {
    /// It takes heat from the loop.
    Heating,
    /// It gives heat to the loop.
    Cooling,
}

/// How the season is known.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum SeasonBasis {
    /// A reading was taken while heating or cooling.
    Mode,
    /// Entering water far to one side.
    EnteringWater,
    /// The date, the site taken to lie on the northern hemisphere.
    NorthernDate,
}

impl SeasonBasis {
    /// Stable identifier; its sentence is `season-<id>`.
    pub fn id(self) -> &'static str {
        match self {
            Self::Mode => "by-mode",
            Self::EnteringWater => "by-entering-water",
            Self::NorthernDate => "by-northern-date",
        }
    }
}

/// Entering water below this, °C, is met in heating only, and above the other
/// in cooling only: undisturbed ground of 10 to 20 °C lies between. Judgement.
const HEATING_BELOW: f64 = 9.0;
const COOLING_ABOVE: f64 = 22.0;

/// The season on a day. None in spring and autumn without any other sign.
pub fn season(file: &VisitFile, day: NaiveDate) -> Option<(Season, SeasonBasis)> {
    let found = || {
        let readings = file.visit.readings.iter();
        readings.filter(|reading| reading.phase == Phase::Found)
    };
    let by_mode = found().find_map(|reading| match reading.mode? {
        OperatingMode::Heating => Some(Season::Heating),
        OperatingMode::Cooling => Some(Season::Cooling),
        OperatingMode::Idle | OperatingMode::PumpsOnly => None,
    });
    let by_water = || {
        found()
            .filter(|reading| reading.point() == ReadingPoint::EnteringWater)
            .find_map(|reading| {
                let celsius = reading.value().si() - crate::units::ZERO_CELSIUS_K;
                if celsius < HEATING_BELOW {
                    Some(Season::Heating)
                } else if celsius > COOLING_ABOVE {
                    Some(Season::Cooling)
                } else {
                    None
                }
            })
    };
    by_mode
        .map(|season| (season, SeasonBasis::Mode))
        .or_else(|| by_water().map(|season| (season, SeasonBasis::EnteringWater)))
        .or_else(|| by_date(day).map(|season| (season, SeasonBasis::NorthernDate)))
}

/// The season by the date alone, the site taken to lie on the northern hemisphere.
pub(super) fn by_date(day: NaiveDate) -> Option<Season> {
    match day.month() {
        11 | 12 | 1..=3 => Some(Season::Heating),
        6..=9 => Some(Season::Cooling),
        _ => None,
    }
}
