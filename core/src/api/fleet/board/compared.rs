//! Differences between groups, and before and after a change of practice.

use super::{Words, percent, share};
use crate::api::fleet::filter::{group_id, group_label, write};
use crate::api::types::{FleetDifferenceLine, FleetDifferences, FleetPractice, FleetRange};
use crate::fleet::board::{self, Difference};
use crate::fleet::{Aspect, Dimension, Filter};
use crate::text::Args;
use chrono::NaiveDate;

impl Words<'_> {
    pub(super) fn differences(&self, watch: i32) -> FleetDifferences {
        let compared = board::differences(self.fleet, &self.filter, watch);
        let args = Args::new()
            .count("systems", compared.systems)
            .count("tests", compared.tests)
            .count("few", compared.too_few)
            .count("out", compared.left_out)
            .text("months", months(watch))
            .text("least", ratio(board::MINIMUM_RATIO));
        let key = match (compared.tests, compared.told.len()) {
            (0, _) => "fleet-differences-too-few",
            (_, 0) => "fleet-differences-none",
            _ => "fleet-differences",
        };
        FleetDifferences {
            words: self.fill(key, &args),
            lines: compared
                .told
                .iter()
                .map(|one| self.difference(one, watch))
                .collect(),
        }
    }

    fn difference(&self, found: &Difference, watch: i32) -> FleetDifferenceLine {
        let (cause, title) = self.cause(found.cause);
        let table = found.table;
        let here = [table.with, table.with + table.without];
        let others = [table.other_with, table.other_with + table.other_without];
        let part = |[with, all]: [usize; 2]| percent(with as f64 / all as f64);
        let label = group_label(self.fleet, found.dimension, found.group, self.wording);
        let finite = found.ratio.is_finite();
        let args = Args::new()
            .text("group", label)
            .text("cause", title)
            .text("months", months(watch))
            .text("here", part(here))
            .text("others", part(others))
            .text("with", here[0].to_string())
            .text("all", here[1].to_string())
            .text("other-with", others[0].to_string())
            .text("other-all", others[1].to_string())
            .text("times", ratio(found.ratio))
            .text(
                "low",
                found.interval.map_or(String::new(), |ends| ratio(ends.low)),
            )
            .text(
                "high",
                found
                    .interval
                    .map_or(String::new(), |ends| ratio(ends.high)),
            );
        let sort = match found.dimension {
            Dimension::Habit(_) => "habit",
            other => other.id(),
        };
        let key = if finite {
            "fleet-difference"
        } else {
            "fleet-difference-only"
        };
        let open = self
            .filter
            .with_group(found.dimension, found.group)
            .with_cause(found.cause)
            .with_aspect(Aspect::Early(watch));
        FleetDifferenceLine {
            words: self.fill(&format!("{key}-{sort}"), &args),
            dimension: found.dimension.id().to_owned(),
            group: group_id(self.fleet, found.dimension, found.group),
            cause,
            here,
            others,
            ratio: finite.then_some(found.ratio),
            ratio_ends: found.interval.map(|ends| [ends.low, ends.high]),
            odds_ratio: table.odds_ratio().filter(|odds| odds.is_finite()),
            odds_ends: table.odds_interval().map(|ends| [ends.low, ends.high]),
            p: found.p,
            adjusted: found.adjusted,
            open: write(self.fleet, &open),
        }
    }

    pub(super) fn practice(&self, changed: i32, watch: i32) -> FleetPractice {
        let figure = board::practice(self.fleet, &self.filter, changed, watch);
        let side = |side: board::Side| share(side.called, side.systems, side.interval);
        let (before, after) = (side(figure.before), side(figure.after));
        let part =
            |share: Option<FleetRange>| share.map_or(String::new(), |one| percent(one.value));
        let date = NaiveDate::from_num_days_from_ce_opt(changed);
        let args = Args::new()
            .text("date", date.map_or(String::new(), |date| date.to_string()))
            .text("months", months(watch))
            .text("before", part(before))
            .text("after", part(after))
            .text("before-all", figure.before.systems.to_string())
            .text("after-all", figure.after.systems.to_string());
        let key = match (figure.p, figure.interval) {
            (None, _) => "fleet-practice-too-few",
            // One question was asked, so one test answers it.
            (Some(p), _) if p > 0.05 => "fleet-practice-same",
            (Some(_), _) if figure.ratio.is_some_and(|ratio| ratio > 1.0) => "fleet-practice-worse",
            _ => "fleet-practice-better",
        };
        let open = |from, to| {
            let early = self.filter.with_aspect(Aspect::Early(watch));
            let narrowed = Filter {
                started_from: from,
                started_to: to,
                ..early
            };
            write(self.fleet, &narrowed)
        };
        FleetPractice {
            words: self.fill(key, &args),
            before: [figure.before.called, figure.before.systems],
            after: [figure.after.called, figure.after.systems],
            before_share: before,
            after_share: after,
            p: figure.p,
            open_before: open(self.filter.started_from, Some(changed - 1)),
            open_after: open(Some(changed), self.filter.started_to),
        }
    }
}

/// A ratio with two digits.
fn ratio(value: f64) -> String {
    if value < 10.0 {
        format!("{value:.1}")
    } else {
        format!("{value:.0}")
    }
}

fn months(days: i32) -> String {
    format!("{:.0}", f64::from(days) / board::DAYS_IN_YEAR * 12.0)
}
