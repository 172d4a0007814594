//! The order of the service report.

use std::sync::Arc;

use crate::report::document::{
    Align, Block, Density, Document, Emphasis, Fact, Level, Row, Table, Text, Tone, Width,
};
use crate::report::parts::{
    chart, column, facts, mark, paired, part, photos, points, section, signatures, small,
};
use crate::text::{Args, Catalog};

use super::proof::{proof, summary};
use super::steps::correction;
use super::{CausePart, ServiceReport};

/// Reasons shown of the leading cause, and of each other.
const REASONS: [usize; 2] = [12, 3];
/// Photos in a row.
const PHOTOS_PER_ROW: usize = 4;
/// Charts in a row.
const CHARTS_PER_ROW: usize = 2;

/// The report as a document, headings in the catalog's language.
pub fn document(report: &ServiceReport, catalog: &Catalog) -> Document {
    let mut blocks = head(report, catalog);
    blocks.extend(readings(report, catalog));
    blocks.extend(causes(report, catalog));
    blocks.extend(correction(report, catalog));
    blocks.extend(proof(report, catalog));
    blocks.extend(used(report, catalog));
    blocks.extend(charts(report, catalog));
    if !report.photos.is_empty() {
        blocks.push(section(catalog, "service-photos"));
        blocks.push(photos(&report.photos, PHOTOS_PER_ROW, catalog));
    }
    blocks.extend(after(report, catalog));
    blocks.extend(system(report, catalog));
    blocks.extend(method(report, catalog));
    Document {
        meta: report.meta.clone(),
        page: report.page,
        density: Density::Close,
        blocks,
    }
}

fn head(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let kind = catalog.text("service-report");
    let overline = match &report.issuer.company {
        Some(company) => format!("{company} · {kind}"),
        None => kind,
    };
    let mut blocks = mark(&report.issuer);
    blocks.push(Block::Title {
        overline: Some(overline),
        text: report.site.clone(),
        subtitle: Some(Text::plain(report.meta.subject.as_str())),
    });
    if !report.about.is_empty() {
        blocks.push(paired(&report.about));
    }
    if let Some(complaint) = &report.complaint {
        let said = catalog.fill(
            "service-complaint",
            &Args::new().text("text", complaint.as_str()),
        );
        blocks.push(Block::Paragraph {
            text: Text::default().then(said, Emphasis::Slanted),
            tone: Tone::Body,
        });
    }
    blocks.extend(summary(report, catalog));
    if !report.verdicts.is_empty() {
        blocks.push(part(catalog, "service-verdicts"));
        let said = |line: &super::VerdictLine| {
            let key = if line.confirmed {
                "service-confirmed"
            } else {
                "service-ruled-out"
            };
            let args = Args::new().text("cause", line.cause.as_str());
            let verdict = Text::strong(catalog.fill(key, &args));
            match &line.check {
                Some(check) => {
                    let args = Args::new().text("check", check.as_str());
                    let how = catalog.fill("service-by-check", &args);
                    verdict.then(format!(" · {how}"), Emphasis::None)
                }
                None => verdict,
            }
        };
        blocks.push(Block::Points(report.verdicts.iter().map(said).collect()));
    }
    if let Some(picture) = &report.picture {
        blocks.push(Block::Figure {
            drawing: Arc::clone(&picture.drawing),
            caption: Some(Text::plain(picture.caption.as_str())),
        });
    }
    blocks
}

/// Charts beside each other, and the gauge by temperature below.
fn charts(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = Vec::new();
    if !report.charts.is_empty() {
        blocks.push(section(catalog, "service-charts"));
    }
    let mut parts: Vec<Vec<Block>> = report.charts.iter().map(|one| vec![chart(one)]).collect();
    if !report.gauge.is_empty() {
        let at = catalog.text("service-gauge-loop");
        let line = |(loop_at, reads): &(String, String)| Fact {
            label: format!("{at} {loop_at}"),
            value: reads.as_str().into(),
        };
        parts.push(vec![
            part(catalog, "service-gauge-table"),
            Block::Facts(report.gauge.iter().map(line).collect()),
        ]);
    }
    let rows = parts.chunks(CHARTS_PER_ROW).map(|row| {
        let mut row = row.to_vec();
        // The last one keeps the width of the others.
        row.resize(CHARTS_PER_ROW, Vec::new());
        Block::Beside(row)
    });
    blocks.extend(rows);
    blocks
}

fn causes(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-causes")];
    if report.causes.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-no-causes")));
    }
    if let Some((leading, others)) = report.causes.split_first() {
        blocks.extend(leading_cause(leading, catalog));
        let (argued, named): (Vec<_>, Vec<_>) =
            others.iter().partition(|cause| !cause.reasons.is_empty());
        if !argued.is_empty() {
            blocks.push(other_causes(&argued, catalog));
        }
        if !named.is_empty() {
            let named = named.iter();
            let named: Vec<String> = named
                .map(|cause| format!("{} ({})", cause.title, cause.probability))
                .collect();
            let args = Args::new().text("causes", named.join(" · "));
            blocks.push(small(catalog.fill("service-less-probable", &args)));
        }
    }
    let lists = [
        ("service-unexplained", &report.unexplained),
        ("service-doubted", &report.doubted),
        ("service-unused", &report.unused),
    ];
    for (key, items) in lists {
        if !items.is_empty() {
            blocks.push(part(catalog, key));
            blocks.push(points(items));
        }
    }
    blocks
}

/// The leading cause is argued in full.
fn leading_cause(cause: &CausePart, catalog: &Catalog) -> Vec<Block> {
    let title = format!("{} · {}", cause.title, cause.probability);
    let mut blocks = vec![Block::heading(Level::Part, title)];
    if !cause.reasons.is_empty() {
        blocks.push(reasons(
            reason_rows(cause, REASONS[0]).collect(),
            None,
            catalog,
        ));
    }
    if !cause.context.is_empty() {
        blocks.push(small(cause.context.join(" · ")));
    }
    blocks
}

/// The others by their strongest reasons, in one table.
fn other_causes(causes: &[&CausePart], catalog: &Catalog) -> Block {
    let mut rows = Vec::new();
    for cause in causes {
        let title = Text::plain(format!("{} · {}", cause.title, cause.probability));
        let mut own: Vec<Row> = reason_rows(cause, REASONS[1]).collect();
        if !cause.context.is_empty() {
            own.push(Row::new(vec![
                Text::default().then(catalog.text("service-context"), Emphasis::Soft),
                Text::default().then(cause.context.join(" · "), Emphasis::Soft),
            ]));
        }
        rows.push(Row {
            keep_with_next: !own.is_empty(),
            ..Row::group(title)
        });
        rows.append(&mut own);
    }
    reasons(rows, Some(catalog.text("service-other-causes")), catalog)
}

fn reason_rows(cause: &CausePart, most: usize) -> impl Iterator<Item = Row> + '_ {
    cause.reasons.iter().take(most).map(|reason| {
        let mut why = Text::plain(reason.path.as_str());
        if let Some(figures) = &reason.figures {
            why = why.then(format!(" ({figures})"), Emphasis::Soft);
        }
        Row::new(vec![
            Text::plain(reason.found.as_str()),
            why,
            Text::plain(reason.weight.as_str()),
        ])
    })
}

fn reasons(rows: Vec<Row>, caption: Option<String>, catalog: &Catalog) -> Block {
    Block::Table(Table {
        caption,
        columns: vec![
            column(catalog, "service-found", Align::Start, Width::Share(3.0)),
            column(catalog, "service-why", Align::Start, Width::Share(6.0)),
            column(catalog, "service-weight", Align::End, Width::Natural),
        ],
        rows,
    })
}

fn readings(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-readings")];
    if report.readings.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-no-readings")));
    } else {
        let cell = |text: &Option<String>| Text::plain(text.as_deref().unwrap_or("–"));
        let rows = report.readings.iter().map(|line| {
            let mut point = Text::plain(line.point.as_str());
            for remark in &line.remarks {
                point = point.then(format!("\n{remark}"), Emphasis::Soft);
            }
            Row::new(vec![
                point,
                cell(&line.found),
                cell(&line.left),
                Text::plain(line.instrument.as_str()),
                Text::plain(line.mode.as_str()),
            ])
        });
        let wide = |key, share| column(catalog, key, Align::Start, Width::Share(share));
        blocks.push(Block::Table(Table {
            caption: None,
            columns: vec![
                wide("service-point", 2.6),
                column(catalog, "service-before", Align::End, Width::Natural),
                column(catalog, "service-after", Align::End, Width::Natural),
                wide("service-instrument", 1.5),
                wide("service-mode", 1.4),
            ],
            rows: rows.collect(),
        }));
        blocks.push(small(catalog.text("service-uncertainty")));
    }
    if !report.answers.is_empty() {
        blocks.push(part(catalog, "service-answers"));
        blocks.push(paired(&report.answers));
    }
    blocks
}

fn used(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    if report.used.is_empty() {
        return Vec::new();
    }
    vec![section(catalog, "service-used"), facts(&report.used)]
}

/// What should follow, notes, and the signatures.
fn after(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = Vec::new();
    if !(report.recommendations.is_empty() && report.checks.is_empty() && report.remarks.is_empty())
    {
        blocks.push(section(catalog, "service-recommendations"));
    }
    let items = [report.recommendations.as_slice(), &report.remarks].concat();
    if !items.is_empty() {
        blocks.push(points(&items));
    }
    if !report.checks.is_empty() {
        blocks.push(part(catalog, "service-next"));
        blocks.push(facts(&report.checks));
    }
    if let Some(notes) = &report.notes {
        blocks.push(section(catalog, "service-notes"));
        blocks.push(Block::paragraph(notes.as_str()));
    }
    if !report.signatures.is_empty() {
        blocks.push(section(catalog, "service-signatures"));
        blocks.push(signatures(&report.signatures));
        if !report.outdated.is_empty() {
            blocks.push(points(&report.outdated));
        }
    }
    blocks
}

fn system(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-system")];
    let known: Vec<_> = report
        .facts
        .iter()
        .filter(|(_, facts)| !facts.is_empty())
        .collect();
    if known.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-nothing-known")));
    }
    // One line a group: looked up, not read.
    let line = |(group, known): &(String, Vec<(String, String)>)| {
        let mut value = Text::default();
        for (index, (label, known)) in known.iter().enumerate() {
            let dot = if index > 0 { " · " } else { "" };
            value = value
                .then(format!("{dot}{label}: "), Emphasis::Soft)
                .then(known.as_str(), Emphasis::None);
        }
        Fact {
            label: group.clone(),
            value,
        }
    };
    if !known.is_empty() {
        blocks.push(Block::Facts(known.into_iter().map(line).collect()));
    }
    blocks
}

/// Looked up rather than read: small, each part with its name at its beginning.
fn method(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let named = |key: &str, text: String| {
        let name = Text::strong(catalog.text(key));
        small(name.then(format!(" · {text}"), Emphasis::None))
    };
    let mut blocks = vec![
        section(catalog, "service-method"),
        small(catalog.text("service-how")),
        named("service-limits", catalog.text("service-not-covered")),
    ];
    for (key, items) in [
        ("service-assumed", &report.assumptions),
        ("service-sources", &report.sources),
    ] {
        if !items.is_empty() {
            blocks.push(named(key, items.join(" · ")));
        }
    }
    blocks
}
