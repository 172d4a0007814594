//! The board in words.

mod causes;
mod compared;
mod rates;

use super::filter::{cause_title, day, group_id, group_label, read};
use crate::api::types::{BoardView, ChoiceView, FleetChoices, FleetQuery, FleetRange};
use crate::api::{ApiError, Wording};
use crate::fleet::board::{self, Totals};
use crate::fleet::statistics::Interval;
use crate::fleet::{Filter, Fleet, WordSort};
use crate::text::Args;

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
}
