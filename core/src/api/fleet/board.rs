//! The board in words.

use super::filter::{cause_title, day, group_id, group_label, read, write};
use crate::api::types::{
    BoardView, ChoiceView, FleetCauseLine, FleetChoices, FleetCurve, FleetCurvePoint,
    FleetDifferenceLine, FleetDifferences, FleetHeldLine, FleetPractice, FleetQuery, FleetRange,
    FleetRateLine, FleetRates, FleetShareLine,
};
use crate::api::{ApiError, Wording};
use crate::fleet::board::{self, Difference, Totals};
use crate::fleet::statistics::Interval;
use crate::fleet::{Aspect, Dimension, Filter, Fleet, WordSort};
use crate::text::Args;
use chrono::NaiveDate;

/// Most points of the curve: more than a screen has room for.
const POINTS: usize = 240;
/// Rates are told for so many systems.
const PER: f64 = 100.0;

/// What every part of the board needs.
struct Words<'a> {
    fleet: &'a Fleet,
    filter: Filter,
    wording: Wording,
}

/// The board of a query.
pub(super) fn view(
    fleet: &Fleet,
    query: &FleetQuery,
    wording: Wording,
) -> Result<BoardView, ApiError> {
    let words = Words {
        fleet,
        filter: read(fleet, &query.filter, wording)?,
        wording,
    };
    let changed = query.changed_on.as_deref();
    let changed = changed.map(|text| day(text, wording)).transpose()?;
    let repeat_days = query.repeat_days.max(1);
    let watch_days = query.watch_days.max(1);
    let totals = board::totals(fleet, &words.filter);
    Ok(BoardView {
        headline: words.headline(&totals),
        notes: words.notes(&totals),
        choices: words.choices(),
        causes: words.causes(),
        repeats: words.repeats(repeat_days),
        waiting: words.waiting(),
        rates: words.rates(),
        differences: words.differences(watch_days),
        fixes: words.fixes(),
        practice: changed.map(|day| words.practice(day, watch_days)),
    })
}

fn range(value: f64, interval: Option<Interval>) -> FleetRange {
    FleetRange {
        value,
        low: interval.map_or(0.0, |ends| ends.low),
        high: interval.map_or(1.0, |ends| ends.high),
    }
}

fn share(count: usize, of: usize, interval: Option<Interval>) -> Option<FleetRange> {
    (of > 0).then(|| range(count as f64 / of as f64, interval))
}

/// A share in per cent with a digit where it matters.
fn percent(share: f64) -> String {
    let percent = 100.0 * share;
    if percent > 0.0 && percent < 10.0 {
        format!("{percent:.1}")
    } else {
        format!("{percent:.0}")
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

impl Words<'_> {
    fn fill(&self, key: &str, args: &Args<'_>) -> String {
        self.wording.catalog().fill(key, args)
    }

    fn cause(&self, cause: u32) -> (String, String) {
        let id = self.fleet.word(cause).to_owned();
        let title = cause_title(&id, self.wording);
        (id, title)
    }

    fn share_text(&self, count: usize, of: usize, share: Option<FleetRange>) -> String {
        match share {
            None => self.wording.catalog().text("fleet-unknown"),
            Some(share) => {
                let args = Args::new()
                    .text("share", percent(share.value))
                    .text("low", percent(share.low))
                    .text("high", percent(share.high))
                    .text("count", count.to_string())
                    .text("of", of.to_string());
                self.fill("fleet-share", &args)
            }
        }
    }

    fn headline(&self, totals: &Totals) -> String {
        let args = Args::new()
            .count("systems", totals.systems)
            .count("visits", totals.visits)
            .count("callbacks", totals.callbacks)
            .text("hours", format!("{:.0}", totals.hours))
            .text("cost", format!("{:.0}", totals.cost));
        self.fill("fleet-headline", &args)
    }

    fn notes(&self, totals: &Totals) -> Vec<String> {
        let mut notes = Vec::new();
        let count = |count: usize| Args::new().count("count", count);
        let unexplained = totals.callbacks - totals.explained;
        if unexplained > 0 {
            notes.push(self.fill("fleet-note-unexplained", &count(unexplained)));
        }
        let unpriced = totals.callbacks - totals.priced;
        if unpriced > 0 {
            notes.push(self.fill("fleet-note-unpriced", &count(unpriced)));
        }
        let undated = totals.systems - totals.dated;
        if undated > 0 {
            notes.push(self.fill("fleet-note-undated", &count(undated)));
        }
        // Were only troubled systems on record, every rate would be too high.
        if totals.dated > 0 && totals.quiet == 0 {
            notes.push(self.wording.catalog().text("fleet-note-only-troubled"));
        }
        notes
    }

    fn choices(&self) -> Vec<FleetChoices> {
        let catalog = self.wording.catalog();
        let choice = |value: String, label: String| ChoiceView { value, label };
        let mut choices = Vec::new();
        for (dimension, groups) in board::rates(self.fleet, &Filter::default()) {
            choices.push(FleetChoices {
                dimension: dimension.id().to_owned(),
                label: catalog.text(&format!("fleet-by-{}", dimension.id())),
                groups: groups
                    .iter()
                    .map(|one| {
                        choice(
                            group_id(self.fleet, dimension, one.group),
                            group_label(self.fleet, dimension, one.group, self.wording),
                        )
                    })
                    .collect(),
            });
        }
        let causes = self.fleet.words(WordSort::Cause).into_iter();
        let mut causes: Vec<ChoiceView> = causes
            .map(|cause| self.cause(cause))
            .map(|(id, title)| choice(id, title))
            .collect();
        causes.sort_by(|a, b| a.label.cmp(&b.label));
        choices.push(FleetChoices {
            dimension: "cause".to_owned(),
            label: catalog.text("fleet-by-cause"),
            groups: causes,
        });
        choices
    }

    fn causes(&self) -> Vec<FleetCauseLine> {
        let figures = board::causes(self.fleet, &self.filter).into_iter();
        figures
            .map(|figure| {
                let (cause, title) = self.cause(figure.cause);
                let share = range(figure.share, figure.interval);
                let of = (figure.count as f64 / figure.share).round() as usize;
                let open = self
                    .filter
                    .with_cause(figure.cause)
                    .with_aspect(Aspect::Callbacks);
                FleetCauseLine {
                    cause,
                    title,
                    count: figure.count,
                    shown: self.share_text(figure.count, of, Some(share)),
                    share,
                    hours: figure.hours,
                    cost: figure.cost,
                    open: write(self.fleet, &open),
                }
            })
            .collect()
    }

    fn repeats(&self, window: i32) -> Vec<FleetShareLine> {
        let figures = board::repeated(self.fleet, &self.filter, window).into_iter();
        figures
            .map(|figure| {
                let (cause, title) = self.cause(figure.cause);
                let part = figure.came_back as f64 / figure.watched as f64;
                let share = range(part, figure.interval);
                let open = self
                    .filter
                    .with_cause(figure.cause)
                    .with_aspect(Aspect::Repeats(window));
                FleetShareLine {
                    cause,
                    title,
                    of: figure.watched,
                    count: figure.came_back,
                    shown: self.share_text(figure.came_back, figure.watched, Some(share)),
                    share,
                    open: write(self.fleet, &open),
                }
            })
            .collect()
    }

    fn waiting(&self) -> FleetCurve {
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
        let ends = year.map(crate::fleet::statistics::Step::log_log);
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

    fn rates(&self) -> Vec<FleetRates> {
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

    fn differences(&self, watch: i32) -> FleetDifferences {
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

    fn fixes(&self) -> Vec<FleetHeldLine> {
        let figures = board::fixes(self.fleet, &self.filter).into_iter();
        figures
            .map(|figure| {
                let share = share(figure.held, figure.known, figure.interval);
                let open = self.filter.with_aspect(Aspect::NotHeld(figure.days));
                FleetHeldLine {
                    days: figure.days,
                    label: self
                        .wording
                        .catalog()
                        .text(&format!("fleet-held-{}", figure.days)),
                    known: figure.known,
                    held: figure.held,
                    shown: self.share_text(figure.held, figure.known, share),
                    share,
                    unasked: figure.unasked,
                    too_early: figure.too_early,
                    open: write(self.fleet, &open),
                }
            })
            .collect()
    }

    fn practice(&self, changed: i32, watch: i32) -> FleetPractice {
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

fn months(days: i32) -> String {
    format!("{:.0}", f64::from(days) / board::DAYS_IN_YEAR * 12.0)
}
