//! How long systems wait for a callback, and how many each group has.

use super::{Words, percent, range};
use crate::api::fleet::filter::{group_id, group_label, write};
use crate::api::types::{FleetCurve, FleetCurvePoint, FleetRange, FleetRateLine, FleetRates};
use crate::fleet::statistics::Step;
use crate::fleet::{Aspect, board};
use crate::text::Args;

/// Most points of the curve: more than a screen has room for.
const POINTS: usize = 240;
/// Rates are told for so many systems.
const PER: f64 = 100.0;

impl Words<'_> {
    pub(super) fn waiting(&self) -> FleetCurve {
        let (curve, _) = board::waiting(self.fleet, &self.filter);
        let step = curve.steps.len().div_ceil(POINTS).max(1);
        let last = curve.steps.len().saturating_sub(1);
        let kept = curve.steps.iter().enumerate();
        let points = kept
            .filter(|(place, _)| place % step == 0 || *place == last)
            .map(|(_, one)| FleetCurvePoint {
                days: one.time,
                share: range(one.survival, Some(one.log_log())),
                at_risk: one.at_risk,
            })
            .collect();
        let median_days = curve.median();
        let year = curve.at(board::DAYS_IN_YEAR);
        let called = year.map_or(0.0, |step| 1.0 - step.survival);
        let ends = year.map(Step::log_log);
        let args = Args::new()
            .count("systems", curve.all)
            .text("share", percent(called))
            .text("low", percent(ends.map_or(0.0, |ends| 1.0 - ends.high)))
            .text("high", percent(ends.map_or(0.0, |ends| 1.0 - ends.low)))
            .text(
                "days",
                median_days.map_or(String::new(), |days| format!("{days:.0}")),
            );
        let key = match (curve.all, median_days) {
            (0, _) => "fleet-waiting-none",
            (_, None) => "fleet-waiting",
            (_, Some(_)) => "fleet-waiting-median",
        };
        FleetCurve {
            points,
            systems: curve.all,
            median_days,
            words: self.fill(key, &args),
            open: write(self.fleet, &self.filter.with_aspect(Aspect::FirstCallbacks)),
        }
    }

    pub(super) fn rates(&self) -> Vec<FleetRates> {
        let figures = board::rates(self.fleet, &self.filter).into_iter();
        figures
            .filter(|(_, rows)| !rows.is_empty())
            .map(|(dimension, rows)| FleetRates {
                dimension: dimension.id().to_owned(),
                label: self
                    .wording
                    .catalog()
                    .text(&format!("fleet-by-{}", dimension.id())),
                rows: rows
                    .iter()
                    .map(|row| {
                        let rate = row.rate.zip(row.interval).map(|(rate, ends)| FleetRange {
                            value: PER * rate,
                            low: PER * ends.low,
                            high: PER * ends.high,
                        });
                        let open = self
                            .filter
                            .with_group(dimension, row.group)
                            .with_aspect(Aspect::Callbacks);
                        FleetRateLine {
                            group: group_id(self.fleet, dimension, row.group),
                            label: group_label(self.fleet, dimension, row.group, self.wording),
                            systems: row.systems,
                            years: row.years,
                            callbacks: row.callbacks,
                            rate,
                            shown: self.rate_text(rate),
                            open: write(self.fleet, &open),
                        }
                    })
                    .collect(),
            })
            .collect()
    }

    fn rate_text(&self, rate: Option<FleetRange>) -> String {
        match rate {
            None => self.wording.catalog().text("fleet-unknown"),
            Some(rate) => {
                let args = Args::new()
                    .text("rate", format!("{:.1}", rate.value))
                    .text("low", format!("{:.1}", rate.low))
                    .text("high", format!("{:.1}", rate.high));
                self.fill("fleet-rate", &args)
            }
        }
    }
}
