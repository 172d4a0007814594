//! What the work came to: in short at the head of the report, reading by reading
//! behind the steps.

use super::ServiceReport;
use crate::report::document::{Align, Block, Row, Table, Text, Tone, Width};
use crate::report::parts::{column, part, points, section};
use crate::text::{Args, Catalog};

/// The first sentences. Once work was begun they tell what came of it, and what is
/// not proved before anything else; the cause follows.
pub(super) fn summary(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let lead = |text: &str| Block::Paragraph {
        text: Text::strong(text),
        tone: Tone::Lead,
    };
    let Some(work) = &report.work else {
        return vec![lead(&report.headline)];
    };
    let mut blocks = vec![lead(work)];
    if !report.unproved.is_empty() {
        blocks.push(part(catalog, "service-unproved"));
        blocks.push(points(&report.unproved));
    }
    let args = Args::new().text("headline", report.headline.as_str());
    blocks.push(Block::paragraph(catalog.fill("service-on-cause", &args)));
    blocks
}

pub(super) fn proof(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    if report.proof.is_empty() {
        return Vec::new();
    }
    let cell = |text: &Option<String>| Text::plain(text.as_deref().unwrap_or("–"));
    let rows = report
        .proof
        .iter()
        .map(|line| {
            Row::new(vec![
                Text::plain(line.label.as_str()),
                cell(&line.expected),
                cell(&line.before),
                cell(&line.after),
                match line.missed {
                    true => Text::strong(&line.verdict),
                    false => Text::plain(line.verdict.as_str()),
                },
            ])
        })
        .collect();
    vec![
        section(catalog, "service-proof"),
        Block::Table(Table {
            caption: None,
            columns: vec![
                column(catalog, "service-point", Align::Start, Width::Share(2.8)),
                column(catalog, "service-expected", Align::End, Width::Share(1.6)),
                column(catalog, "service-before", Align::End, Width::Share(1.3)),
                column(catalog, "service-after", Align::End, Width::Share(1.0)),
                column(catalog, "service-is-it", Align::Start, Width::Share(1.3)),
            ],
            rows,
        }),
    ]
}
