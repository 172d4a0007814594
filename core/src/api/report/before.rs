//! What the gauge read before today, for the picture of the year to come.

use super::super::{ApiError, Call, Engine};
use super::season::Start;
use crate::pressure::year::YEAR_DAYS;
use crate::records::{Phase, Reading, ReadingPoint};
use crate::store::VisitRecord;
use crate::units::GaugePressure;
use chrono::NaiveDate;

/// The gauge at rest on a day.
pub(in crate::api) type GaugeOn = (NaiveDate, GaugePressure);

impl Engine {
    /// What the gauge read at rest at this system on other visits, with its days.
    pub(in crate::api) fn gauge_before(
        &self,
        record: &VisitRecord,
    ) -> Result<Vec<GaugeOn>, ApiError> {
        let earlier = self
            .store
            .earlier_readings(record.system_id, record.id)
            .map_err(|error| self.failed(&error))?;
        let read = earlier.iter().filter_map(|(visited, reading)| {
            let taken = reading.taken_at.map(|at| at.date_naive());
            Some((taken.or(*visited)?, gauge(reading)?))
        });
        Ok(read.collect())
    }
}

impl Call {
    /// Every earlier reading of the gauge whose day is known, the oldest first:
    /// those of other visits, and those of this one from before the work. What
    /// the band starts from is not among them.
    pub(super) fn gauge_history(&self, start: Start) -> Vec<GaugeOn> {
        let met = self.file.visit.readings.iter();
        let met = met.filter(|reading| reading.phase == Phase::Found);
        let own = met.filter_map(|reading| {
            let day = reading.taken_at.map_or(self.today, |at| at.date_naive());
            let starts = start == Start::Found && day == self.today;
            Some((day, gauge(reading).filter(|_| !starts)?))
        });
        let all = self.gauge_before.iter().copied().chain(own);
        let mut all: Vec<GaugeOn> = all.filter(|(day, _)| *day <= self.today).collect();
        all.sort_by_key(|(day, _)| *day);
        all
    }

    /// The time of the year of a day, as months from today, 0 to 12.
    pub(super) fn months_ahead(&self, day: NaiveDate) -> f64 {
        #[allow(clippy::cast_precision_loss)]
        let since = (day - self.today).num_days() as f64;
        since.rem_euclid(YEAR_DAYS) / YEAR_DAYS * 12.0
    }

    /// The readings before in words, each with its day; empty if there are none.
    pub(super) fn gauge_history_words(&self, start: Start) -> String {
        let history = self.gauge_history(start);
        if history.is_empty() {
            return String::new();
        }
        let each = history
            .iter()
            .map(|(day, read)| format!("{} ({day})", self.pressure(*read)));
        let each = each.collect::<Vec<_>>().join(", ");
        format!(" {}", self.fill("season-before-words", &[("read", &each)]))
    }
}

fn gauge(reading: &Reading) -> Option<GaugePressure> {
    let at_rest = reading.point() == ReadingPoint::StaticPressure;
    reading.quantity::<GaugePressure>().filter(|_| at_rest)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::api::Wording;
    use crate::records::visit_file::VisitFile;

    #[test]
    fn a_day_stands_at_its_time_of_the_year() {
        let day = |month| NaiveDate::from_ymd_opt(2026, month, 14).expect("a day");
        let call = Call::assess(&VisitFile::default(), day(8), Wording::default());
        // Counted on the fingers: April comes eight months after August, July eleven.
        for (month, ahead) in [(4, 8.0), (7, 11.0), (2, 6.0)] {
            let off = call.months_ahead(day(month)) - ahead;
            assert!(off.abs() < 0.1, "month {month} is off by {off}");
        }
    }
}
