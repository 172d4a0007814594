//! How long a loop has stood on the charge that it holds.

use crate::pressure::balance::Earlier;
use crate::records::ReadingPoint;
use crate::records::visit_file::VisitFile;
use crate::units::{Duration, GaugePressure, Quantity, Unit};
use chrono::NaiveDate;

/// How long a loop has stood as it reads at the least, and where nobody knows when it was
/// charged, days. Judgement.
pub const STOOD_DAYS: f64 = 1.0;
const UNKNOWN_DAYS: f64 = 30.0;

/// The day of the last charge on record, at the latest that of the installation, and how
/// many days before the visit that was.
pub fn charged_or_installed(file: &VisitFile) -> Option<(NaiveDate, f64)> {
    let day = file.commissioning.charged_on();
    let day = day.or(file.system.installed_on)?;
    Some((day, (file.visit.date? - day).num_days() as f64))
}

/// Whether fluid was put in at this visit.
pub fn topped_up(file: &VisitFile) -> bool {
    let mut readings = file.visit.readings.iter();
    readings
        .any(|reading| reading.point() == ReadingPoint::TopUpVolume && reading.value().si() > 0.0)
}

/// What the pipe has stood under, by what the gauge reads before anything is changed, and
/// how long. It keeps the stretch of that time: only what is put on or let off today
/// relaxes, or comes back, afresh. (The strains of earlier loads add up: Boltzmann's
/// superposition, as in `pressure::balance`.)
pub fn stood_under(file: &VisitFile, read: GaugePressure) -> Earlier {
    let days = match (topped_up(file), charged_or_installed(file)) {
        (true, _) => STOOD_DAYS,
        (false, Some((_, ago))) => ago.max(STOOD_DAYS),
        (false, None) => UNKNOWN_DAYS,
    };
    Earlier {
        pressure: read,
        held: Duration::from_si(Unit::Day.to_si(days)),
    }
}
