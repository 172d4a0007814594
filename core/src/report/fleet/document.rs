//! The order of the manager's report.

use std::sync::Arc;

use chrono::NaiveDate;

use super::{FleetGroup, FleetPicture, FleetReport, GroupRow, Share, charts};
use crate::report::ReportError;
use crate::report::document::{
    Align, Block, Density, Document, Level, Row, Table, Text, Tone, Width,
};
use crate::report::fonts::Typesetter;
use crate::report::parts::{column, facts, mark, points, section, small};
use crate::text::{Args, Catalog};

/// The report as a document, words in the catalog's language.
///
/// # Errors
/// [`ReportError::Font`] when a font program in the build is damaged.
pub fn document(report: &FleetReport, catalog: &Catalog) -> Result<Document, ReportError> {
    let mut set = Typesetter::new()?;
    let picture = &report.picture;
    let mut blocks = head(report, catalog);
    blocks.extend(causes(picture, catalog, &mut set));
    blocks.extend(fixes(picture, catalog));
    blocks.extend(first_callback(picture, catalog, &mut set));
    if !picture.differences_how.is_empty() {
        blocks.push(section(catalog, "repeats-differences"));
        if !picture.differences.is_empty() {
            blocks.push(points(&picture.differences));
        }
        blocks.push(small(picture.differences_how.clone()));
    }
    if !picture.groups.is_empty() {
        blocks.push(section(catalog, "repeats-groups"));
        let months = Args::new().text("months", picture.watched_months.to_string());
        blocks.push(small(catalog.fill("repeats-groups-how", &months)));
        for group in &picture.groups {
            blocks.extend(one_group(group, catalog, &mut set));
        }
    }
    blocks.extend(revisit(picture, catalog));
    blocks.push(section(catalog, "repeats-method"));
    let days = Args::new()
        .text("days", picture.repeat_days.to_string())
        .text("months", picture.watched_months.to_string());
    blocks.push(small(catalog.fill("repeats-how", &days)));
    if !picture.remarks.is_empty() {
        blocks.push(points(&picture.remarks));
    }
    Ok(Document {
        meta: report.meta.clone(),
        page: report.page,
        density: Density::Usual,
        blocks,
    })
}

fn head(report: &FleetReport, catalog: &Catalog) -> Vec<Block> {
    let picture = &report.picture;
    let kind = catalog.text("repeats-report");
    let overline = match &report.issuer.company {
        Some(company) => format!("{company} · {kind}"),
        None => kind,
    };
    let period = Args::new()
        .text("from", picture.from.to_string())
        .text("to", picture.to.to_string());
    let mut known = vec![
        (catalog.text("repeats-systems"), picture.systems.to_string()),
        (catalog.text("repeats-visits"), picture.visits.to_string()),
        (
            catalog.text("repeats-callbacks"),
            picture.callbacks.to_string(),
        ),
        (
            catalog.fill(
                "repeats-called-back",
                &Args::new().text("months", picture.watched_months.to_string()),
            ),
            in_words(picture.called_back, catalog),
        ),
        (
            catalog.text("repeats-failed-fixes"),
            in_words(picture.first_fixes, catalog),
        ),
    ];
    if let Some(cost) = picture.cost {
        known.push((catalog.text("repeats-cost"), money(cost, picture)));
    }
    let mut blocks = mark(&report.issuer);
    blocks.extend([
        Block::Title {
            overline: Some(overline),
            text: report.meta.title.clone(),
            subtitle: Some(Text::plain(catalog.fill("repeats-period", &period))),
        },
        facts(&known),
    ]);
    if picture.visits == 0 {
        blocks.push(Block::Paragraph {
            text: Text::strong(catalog.text("repeats-nothing")),
            tone: Tone::Lead,
        });
    }
    blocks
}

fn causes(picture: &FleetPicture, catalog: &Catalog, set: &mut Typesetter) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "repeats-causes")];
    if picture.causes.is_empty() {
        blocks.push(Block::paragraph(catalog.text("repeats-no-causes")));
        return blocks;
    }
    blocks.push(Block::Figure {
        drawing: Arc::new(charts::causes(picture, catalog, set)),
        caption: None,
    });
    let rows = picture.causes.iter().map(|cause| {
        Row::new(vec![
            Text::plain(cause.title.as_str()),
            Text::plain(cause.share.count.to_string()),
            Text::plain(rate(cause.share)),
            Text::plain(interval(cause.share)),
            Text::plain(
                cause
                    .cost
                    .map_or("–".to_owned(), |cost| money(cost, picture)),
            ),
        ])
    });
    blocks.push(Block::Table(Table {
        caption: None,
        columns: vec![
            column(catalog, "repeats-cause", Align::Start, Width::Share(1.0)),
            number(catalog, "repeats-count"),
            number(catalog, "repeats-rate"),
            number(catalog, "repeats-interval"),
            number(catalog, "repeats-cost"),
        ],
        rows: rows.collect(),
    }));
    blocks
}

fn fixes(picture: &FleetPicture, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![
        section(catalog, "repeats-again"),
        Block::paragraph(catalog.fill(
            "repeats-fixes",
            &Args::new().text("share", in_words(picture.first_fixes, catalog)),
        )),
    ];
    if !picture.fixes_by_cause.is_empty() {
        blocks.push(rows_of("repeats-treated", &picture.fixes_by_cause, catalog));
    }
    if !picture.repeats.is_empty() {
        let rows = picture.repeats.iter().map(|line| {
            Row::new(vec![
                Text::plain(line.system.as_str()),
                Text::plain(line.visits.to_string()),
                Text::plain(line.causes.as_str()),
                Text::plain(day(line.last)),
            ])
        });
        blocks.push(Block::Table(Table {
            caption: Some(catalog.text("repeats-repeat-systems")),
            columns: vec![
                column(catalog, "repeats-system", Align::Start, Width::Share(1.4)),
                number(catalog, "repeats-visits"),
                column(catalog, "repeats-found", Align::Start, Width::Share(2.2)),
                column(catalog, "repeats-last", Align::Start, Width::Natural),
            ],
            rows: rows.collect(),
        }));
    }
    blocks
}

fn first_callback(picture: &FleetPicture, catalog: &Catalog, set: &mut Typesetter) -> Vec<Block> {
    let points = &picture.first_callback;
    if points.is_empty() {
        return Vec::new();
    }
    let drawing = charts::first_callback(points, catalog, set);
    let (last, known) = (points.last(), picture.systems.to_string());
    let caption = last.map(|last| {
        let args = Args::new()
            .text("without", percent(last.without))
            .text("low", percent(last.low))
            .text("high", percent(last.high))
            .text("months", format!("{:.0}", last.months))
            .text("systems", known);
        Text::plain(catalog.fill("repeats-curve-words", &args))
    });
    vec![Block::Together(vec![
        section(catalog, "repeats-first-callback"),
        Block::Figure {
            drawing: Arc::new(drawing),
            caption,
        },
    ])]
}

fn one_group(group: &FleetGroup, catalog: &Catalog, set: &mut Typesetter) -> Vec<Block> {
    if group.rows.is_empty() {
        return Vec::new();
    }
    let drawing = charts::rates(&group.title, &group.rows, set);
    vec![
        Block::Together(vec![
            Block::heading(Level::Part, group.title.as_str()),
            Block::Figure {
                drawing: Arc::new(drawing),
                caption: None,
            },
        ]),
        rows_of("repeats-value", &group.rows, catalog),
    ]
}

fn rows_of(head: &str, rows: &[GroupRow], catalog: &Catalog) -> Block {
    // Where nothing was held against the rest there is no column for it.
    let compared = rows.iter().any(|row| row.chance.is_some());
    let mut columns = vec![
        column(catalog, head, Align::Start, Width::Share(1.0)),
        number(catalog, "repeats-count"),
        number(catalog, "repeats-of"),
        number(catalog, "repeats-rate"),
        number(catalog, "repeats-interval"),
    ];
    if compared {
        columns.push(number(catalog, "repeats-chance"));
    }
    let cells = rows.iter().map(|row| {
        let mut cells = vec![
            Text::plain(row.name.as_str()),
            Text::plain(row.share.count.to_string()),
            Text::plain(row.share.of.to_string()),
            Text::plain(rate(row.share)),
            Text::plain(interval(row.share)),
        ];
        if compared {
            cells.push(Text::plain(row.chance.map_or("–".to_owned(), chance)));
        }
        Row::new(cells)
    });
    Block::Table(Table {
        caption: None,
        columns,
        rows: cells.collect(),
    })
}

fn revisit(picture: &FleetPicture, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "repeats-revisit")];
    if picture.revisit.is_empty() {
        blocks.push(Block::paragraph(catalog.text("repeats-no-revisit")));
        return blocks;
    }
    let rows = picture.revisit.iter().map(|line| {
        Row::new(vec![
            Text::plain(line.system.as_str()),
            Text::plain(line.reason.as_str()),
            Text::plain(day(line.last)),
        ])
    });
    blocks.push(Block::Table(Table {
        caption: None,
        columns: vec![
            column(catalog, "repeats-system", Align::Start, Width::Share(1.2)),
            column(catalog, "repeats-reason", Align::Start, Width::Share(2.0)),
            column(catalog, "repeats-last", Align::Start, Width::Natural),
        ],
        rows: rows.collect(),
    }));
    blocks
}

fn number(catalog: &Catalog, key: &str) -> crate::report::document::Column {
    column(catalog, key, Align::End, Width::Natural)
}

fn day(day: Option<NaiveDate>) -> String {
    day.map_or("–".to_owned(), |day| day.to_string())
}

fn percent(share: f64) -> String {
    format!("{:.0} %", 100.0 * share.clamp(0.0, 1.0))
}

/// A rate as it is shown.
pub(super) fn rate(share: Share) -> String {
    share.rate().map_or("–".to_owned(), percent)
}

fn interval(share: Share) -> String {
    if share.of == 0 {
        return "–".to_owned();
    }
    let end = |end: f64| format!("{:.0}", 100.0 * end.clamp(0.0, 1.0));
    format!("{}–{} %", end(share.low), end(share.high))
}

fn in_words(share: Share, catalog: &Catalog) -> String {
    let args = Args::new()
        .text("count", share.count.to_string())
        .text("of", share.of.to_string())
        .text("rate", rate(share))
        .text("interval", interval(share));
    let key = if share.of == 0 {
        "repeats-none-of-none"
    } else {
        "repeats-share"
    };
    catalog.fill(key, &args)
}

/// A probability by chance: two digits, and never zero.
fn chance(p: f64) -> String {
    if p < 0.001 {
        "< 0.001".to_owned()
    } else if p < 0.1 {
        format!("{p:.3}")
    } else {
        format!("{p:.2}")
    }
}

fn money(cost: f64, picture: &FleetPicture) -> String {
    let whole = format!("{:.0}", cost.abs());
    let mut grouped = String::new();
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index).is_multiple_of(3) {
            grouped.push('\u{a0}');
        }
        grouped.push(digit);
    }
    let sign = if cost < 0.0 { "−" } else { "" };
    match &picture.currency {
        Some(currency) => format!("{sign}{grouped} {currency}"),
        None => format!("{sign}{grouped}"),
    }
}
