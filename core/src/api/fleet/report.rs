//! The manager's report, filled from the board.

use super::board::view;
use super::filter::{cause_title, group_label, read};
use crate::api::Issue;
use crate::api::types::{BoardView, FleetQuery, FleetReportRequest};
use crate::api::{ApiError, Engine, Wording, not_written};
use crate::fleet::board::{self, CalledFigure, Unsettled};
use crate::fleet::statistics::{Interval, wilson};
use crate::fleet::{Dimension, Filter, Fleet};
use crate::report::document::{Meta, PageSize};
use crate::report::fleet::{
    FleetCause, FleetGroup, FleetPicture, FleetReport, GroupRow, RepeatLine, RevisitLine, Share,
    SurvivalPoint, document,
};
use crate::report::{file, service, to_pdf};
use crate::text::{Args, Language};
use chrono::NaiveDate;
use std::path::Path;

/// Most systems named in a list: a sheet of paper, not the database.
const NAMED: usize = 25;

impl Engine {
    /// The manager's report as PDF.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn fleet_report(&mut self, request: &FleetReportRequest) -> Result<Vec<u8>, ApiError> {
        let wording = self.report_wording(request)?;
        let page = match request.paper.as_deref() {
            Some("a4") => PageSize::A4,
            Some(_) => PageSize::Letter,
            None => self.page(),
        };
        let issue = Issue {
            issuer: self.issuer()?,
            ..Issue::new(self.surroundings.here(), page)
        };
        self.fleet_pdf(&request.query, wording, issue)
    }

    /// Writes it to a path, whole or not at all.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn save_fleet_report(
        &mut self,
        request: &FleetReportRequest,
        path: &Path,
    ) -> Result<(), ApiError> {
        let bytes = self.fleet_report(request)?;
        file::write_whole(path, &bytes).map_err(|error| not_written(&error, self.wording))
    }

    /// A file name for it that a person can file.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn fleet_report_name(&mut self, request: &FleetReportRequest) -> Result<String, ApiError> {
        let wording = self.report_wording(request)?;
        self.count_fleet()?;
        let fleet = self.counted()?;
        let (from, to) = period(fleet, &read(fleet, &request.query.filter, wording)?);
        let catalog = wording.catalog();
        let name = catalog.fill("repeats-file-name", &days(from, to));
        let fallback = catalog.text("repeats-file-fallback");
        Ok(file::safe_name(&name, "pdf", &fallback))
    }

    /// The manager's report in a wording and with an issue of one's own. Photos
    /// and signatures have no place in it.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn fleet_pdf(
        &mut self,
        query: &FleetQuery,
        wording: Wording,
        issue: Issue,
    ) -> Result<Vec<u8>, ApiError> {
        self.count_fleet()?;
        let picture = self.fleet_picture(query, wording)?;
        let catalog = wording.catalog();
        let named = days(picture.from, picture.to);
        let title = catalog.fill("repeats-title", &named);
        let systems = Args::new().text("systems", picture.systems.to_string());
        let report = FleetReport {
            meta: Meta {
                author: issue.issuer.company.clone().unwrap_or_default(),
                subject: catalog.fill("repeats-subject", &systems),
                language: wording.language.tag().to_owned(),
                date: issue.issued,
                id: issue.id.unwrap_or_else(|| title.clone()),
                running_head: catalog.text("repeats-report"),
                running_foot: catalog.fill("repeats-period", &named),
                title,
            },
            page: issue.page,
            issuer: issue.issuer,
            picture,
        };
        document(&report, catalog)
            .and_then(|document| to_pdf(&document, &service::words(catalog)))
            .map_err(|error| {
                let detail = error.to_string();
                ApiError::new("report-failed", &[("detail", &detail)], self.wording)
            })
    }

    fn report_wording(&self, request: &FleetReportRequest) -> Result<Wording, ApiError> {
        let Some(tag) = &request.language else {
            return Ok(self.wording);
        };
        let language = Language::from_tag(tag).ok_or_else(|| {
            let context = [("field", "language"), ("found", tag.as_str())];
            ApiError::new("no-such-name", &context, self.wording)
        })?;
        Ok(Wording {
            language,
            ..self.wording
        })
    }

    fn fleet_picture(
        &self,
        query: &FleetQuery,
        wording: Wording,
    ) -> Result<FleetPicture, ApiError> {
        let fleet = self.counted()?;
        let filter = read(fleet, &query.filter, wording)?;
        let shown = view(fleet, query, wording)?;
        let totals = board::totals(fleet, &filter);
        let (from, to) = period(fleet, &filter);
        let watch = query.watch_days.max(1);
        let repeat_days = query.repeat_days.max(1);
        let priced = |cost: f64| (cost > 0.0).then_some(cost);
        let groups = board::called(fleet, &filter, watch);
        let mut remarks = shown.notes.clone();
        let (first_fixes, fixes_by_cause) = fixes(&shown);
        let repeats = self.repeat_lines(&filter, repeat_days, wording, &mut remarks)?;
        let revisit = self.revisit_lines(&filter, wording, &mut remarks)?;
        Ok(FleetPicture {
            from,
            to,
            systems: totals.systems,
            visits: totals.visits,
            callbacks: totals.callbacks,
            called_back: called_back(fleet, &filter, watch),
            watched_months: (f64::from(watch) / board::DAYS_IN_YEAR * 12.0).round() as usize,
            repeat_days: repeat_days as usize,
            cost: priced(totals.cost),
            // Costs are written as plain numbers.
            currency: None,
            causes: causes(&shown, totals.callbacks, priced),
            first_fixes,
            fixes_by_cause,
            repeats,
            differences: shown
                .differences
                .lines
                .iter()
                .map(|line| line.words.clone())
                .collect(),
            differences_how: shown.differences.words.clone(),
            groups: group_parts(fleet, &groups, wording),
            first_callback: curve(&shown),
            revisit,
            remarks,
        })
    }

    /// Systems at which a cause came back.
    fn repeat_lines(
        &self,
        filter: &Filter,
        window: i32,
        wording: Wording,
        remarks: &mut Vec<String>,
    ) -> Result<Vec<RepeatLine>, ApiError> {
        let fleet = self.counted()?;
        let all = board::repeat_systems(fleet, filter, window);
        cut("repeats-more-repeats", all.len(), wording, remarks);
        let named = all.into_iter().take(NAMED).map(|one| {
            let titles = one.causes.iter();
            let titles = titles.map(|cause| cause_title(fleet.word(*cause), wording));
            let titles = counted(titles);
            Ok(RepeatLine {
                system: self.site_of(one.number)?,
                visits: one.visits,
                causes: titles.join("; "),
                last: one.last.and_then(NaiveDate::from_num_days_from_ce_opt),
            })
        });
        named.collect()
    }

    /// Systems to visit again.
    fn revisit_lines(
        &self,
        filter: &Filter,
        wording: Wording,
        remarks: &mut Vec<String>,
    ) -> Result<Vec<RevisitLine>, ApiError> {
        let fleet = self.counted()?;
        let all = board::unsettled(fleet, filter);
        cut("repeats-more-revisits", all.len(), wording, remarks);
        let named = all.into_iter().take(NAMED).map(|one| {
            let reason = match one.why {
                Unsettled::Failed(cause) => {
                    let title = cause_title(fleet.word(cause), wording);
                    let args = Args::new().text("cause", title);
                    wording.catalog().fill("repeats-failed", &args)
                }
                Unsettled::Unexplained => wording.catalog().text("repeats-unexplained"),
            };
            Ok(RevisitLine {
                system: self.site_of(one.number)?,
                reason,
                last: one.last.and_then(NaiveDate::from_num_days_from_ce_opt),
            })
        });
        named.collect()
    }

    /// The name of the site of a row's visit.
    fn site_of(&self, number: i64) -> Result<String, ApiError> {
        let ids = self.store.board_visits(&[number]);
        let ids = ids.map_err(|error| self.failed(&error))?;
        let Some(id) = ids.first() else {
            return Ok(String::new());
        };
        Ok(self.site_title(&self.record(&id.to_string())?.file.site.name))
    }
}

/// Each title once, with how often it was found where that is more than once.
fn counted(titles: impl Iterator<Item = String>) -> Vec<String> {
    let mut found: Vec<(String, usize)> = Vec::new();
    for title in titles {
        match found.iter_mut().find(|(known, _)| *known == title) {
            Some((_, times)) => *times += 1,
            None => found.push((title, 1)),
        }
    }
    let said = found.into_iter().map(|(title, times)| match times {
        1 => title,
        _ => format!("{title} (×{times})"),
    });
    said.collect()
}

/// A list that does not name all says so.
fn cut(key: &str, all: usize, wording: Wording, remarks: &mut Vec<String>) {
    if all > NAMED {
        let args = Args::new()
            .text("shown", NAMED.to_string())
            .text("all", all.to_string());
        remarks.push(wording.catalog().fill(key, &args));
    }
}

fn days(from: NaiveDate, to: NaiveDate) -> Args<'static> {
    Args::new()
        .text("from", from.to_string())
        .text("to", to.to_string())
}

/// The days asked for, or those on record.
fn period(fleet: &Fleet, filter: &Filter) -> (NaiveDate, NaiveDate) {
    let first = fleet.visits.iter().filter_map(|visit| visit.day).min();
    let date = |day: Option<i32>| {
        day.and_then(NaiveDate::from_num_days_from_ce_opt)
            .unwrap_or_default()
    };
    (
        date(filter.from.or(first)),
        date(filter.to.or(fleet.last_day)),
    )
}

fn share(count: usize, of: usize, ends: Option<Interval>) -> Share {
    Share {
        count,
        of,
        low: ends.map_or(0.0, |ends| ends.low),
        high: ends.map_or(1.0, |ends| ends.high),
    }
}

fn causes(
    shown: &BoardView,
    callbacks: usize,
    priced: impl Fn(f64) -> Option<f64>,
) -> Vec<FleetCause> {
    let lines = shown.causes.iter();
    lines
        .map(|line| FleetCause {
            title: line.title.clone(),
            share: share(line.count, callbacks, wilson(line.count, callbacks)),
            cost: priced(line.cost),
        })
        .collect()
}

/// Fixes after which the cause came back, of all causes and of each.
fn fixes(shown: &BoardView) -> (Share, Vec<GroupRow>) {
    let lines = shown.repeats.iter();
    let (count, of) = lines.fold((0, 0), |sum, line| (sum.0 + line.count, sum.1 + line.of));
    let rows = shown.repeats.iter().map(|line| GroupRow {
        name: line.title.clone(),
        share: share(line.count, line.of, wilson(line.count, line.of)),
        chance: None,
    });
    (share(count, of, wilson(count, of)), rows.collect())
}

/// Systems called back soon after commissioning, of all watched so long: those
/// of before and after any day together.
fn called_back(fleet: &Fleet, filter: &Filter, watch: i32) -> Share {
    let all = board::practice(fleet, filter, i32::MIN, watch).after;
    share(all.called, all.systems, all.interval)
}

fn curve(shown: &BoardView) -> Vec<SurvivalPoint> {
    if shown.waiting.points.is_empty() {
        return Vec::new();
    }
    let begin = SurvivalPoint {
        months: 0.0,
        without: 1.0,
        low: 1.0,
        high: 1.0,
    };
    let points = shown.waiting.points.iter().map(|point| SurvivalPoint {
        months: point.days / board::DAYS_IN_YEAR * 12.0,
        without: point.share.value,
        low: point.share.low,
        high: point.share.high,
    });
    std::iter::once(begin).chain(points).collect()
}

/// Groups by dimension; the habits stand together.
fn group_parts(
    fleet: &Fleet,
    groups: &[(Dimension, Vec<CalledFigure>)],
    wording: Wording,
) -> Vec<FleetGroup> {
    let catalog = wording.catalog();
    let rows = |dimension: Dimension, figures: &[CalledFigure]| -> Vec<GroupRow> {
        let row = |figure: &CalledFigure| GroupRow {
            name: group_label(fleet, dimension, figure.group, wording),
            share: share(figure.called, figure.systems, figure.interval),
            chance: figure.adjusted,
        };
        figures.iter().map(row).collect()
    };
    let mut parts = Vec::new();
    let mut habits = Vec::new();
    for (dimension, figures) in groups {
        let rows = rows(*dimension, figures);
        match dimension {
            Dimension::Habit(_) => habits.extend(rows),
            _ if rows.is_empty() => {}
            other => parts.push(FleetGroup {
                title: catalog.text(&format!("fleet-by-{}", other.id())),
                rows,
            }),
        }
    }
    if !habits.is_empty() {
        parts.push(FleetGroup {
            title: catalog.text("repeats-habits"),
            rows: habits,
        });
    }
    parts
}
