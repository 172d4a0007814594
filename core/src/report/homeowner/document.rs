//! The order of the homeowner's page: what matters most stands first.

use std::sync::Arc;

use super::HomeownerReport;
use crate::report::document::{
    Align, Block, Callout, CalloutKind, Density, Document, Emphasis, Row, Table, Text, Tone, Width,
};
use crate::report::parts::{column, mark, photos, points, section};
use crate::text::{Args, Catalog};

/// Photos in a row: small, so that two pages hold all.
const PHOTOS_PER_ROW: usize = 4;

/// The page as a document, headings in the catalog's language.
pub fn document(report: &HomeownerReport, catalog: &Catalog) -> Document {
    let mut blocks = head(report, catalog);
    blocks.extend(listed(catalog, "homeowner-wrong", &report.wrong));
    if let Some(sure) = &report.sure {
        blocks.push(Block::paragraph(sure.as_str()));
    }
    blocks.extend(listed(catalog, "homeowner-done", &report.done));
    blocks.extend(listed(catalog, "homeowner-open", &report.open));
    blocks.push(call(report, catalog));
    blocks.push(Block::paragraph(
        Text::strong(catalog.text("homeowner-next"))
            .then(format!(" {}", report.next_visit), Emphasis::None),
    ));
    blocks.extend(readings(report, catalog));
    if !report.photos.is_empty() {
        blocks.push(photos(&report.photos, PHOTOS_PER_ROW, catalog));
    }
    if let Some(picture) = &report.picture {
        blocks.push(Block::Together(vec![
            Block::heading(
                crate::report::document::Level::Section,
                picture.title.as_str(),
            ),
            Block::Figure {
                drawing: Arc::clone(&picture.drawing),
                caption: Some(Text::plain(picture.caption.as_str())),
            },
        ]));
    }
    let mut notice = listed(catalog, "homeowner-notice", &report.notice);
    let watch = listed(catalog, "homeowner-watch", &report.watch);
    match &report.season {
        // Words and chart beside each other, so that two pages hold all.
        Some(season) => {
            notice.extend(watch);
            let chart = Block::Figure {
                drawing: Arc::clone(&season.drawing),
                caption: Some(Text::plain(season.caption.as_str())),
            };
            let head = section(catalog, "homeowner-season");
            blocks.push(Block::Beside(vec![notice, vec![head, chart]]));
        }
        None => {
            blocks.extend(notice);
            blocks.extend(watch);
        }
    }
    if !report.safety.is_empty() {
        blocks.push(Block::Callout(Callout {
            kind: CalloutKind::Caution,
            title: Some(catalog.text("homeowner-safety")),
            body: report
                .safety
                .iter()
                .map(|line| Text::plain(line.as_str()))
                .collect(),
        }));
    }
    Document {
        meta: report.meta.clone(),
        page: report.page,
        density: Density::Snug,
        blocks,
    }
}

fn head(report: &HomeownerReport, catalog: &Catalog) -> Vec<Block> {
    let overline = match &report.issuer.company {
        Some(company) => format!("{company} · {}", catalog.text("homeowner-report")),
        None => catalog.text("homeowner-report"),
    };
    let mut blocks = mark(&report.issuer);
    blocks.push(Block::Title {
        overline: Some(overline),
        text: report.site.clone(),
        subtitle: Some(Text::plain(report.meta.subject.as_str())),
    });
    if let Some(told) = &report.told {
        let said = Args::new().text("text", told.as_str());
        blocks.push(Block::paragraph(
            Text::default().then(catalog.fill("homeowner-told", &said), Emphasis::Slanted),
        ));
    }
    blocks.push(Block::Paragraph {
        text: Text::strong(report.short.as_str()),
        tone: Tone::Lead,
    });
    blocks
}

fn listed(catalog: &Catalog, key: &str, items: &[String]) -> Vec<Block> {
    match items {
        [] => Vec::new(),
        [one] => vec![section(catalog, key), Block::paragraph(one.as_str())],
        more => vec![section(catalog, key), points(more)],
    }
}

/// When to call: framed, with the number.
fn call(report: &HomeownerReport, catalog: &Catalog) -> Block {
    let mut body = Vec::new();
    body.push(match &report.issuer.phone {
        Some(phone) => {
            let dialled: String = phone
                .chars()
                .filter(|sign| sign.is_ascii_digit() || *sign == '+')
                .collect();
            let words = Text::plain(catalog.text("homeowner-phone")).then(" ", Emphasis::None);
            if dialled.is_empty() {
                words.then(phone.as_str(), Emphasis::Strong)
            } else {
                words.then_link(phone.as_str(), format!("tel:{dialled}"))
            }
        }
        None => Text::plain(catalog.text("homeowner-no-phone")),
    });
    body.extend(
        report
            .call
            .iter()
            .map(|line| Text::plain(format!("· {line}"))),
    );
    Block::Callout(Callout {
        kind: CalloutKind::Note,
        title: Some(catalog.text("homeowner-call")),
        body,
    })
}

fn readings(report: &HomeownerReport, catalog: &Catalog) -> Vec<Block> {
    if report.readings.is_empty() {
        return Vec::new();
    }
    let cell = |text: &Option<String>| Text::plain(text.as_deref().unwrap_or("–"));
    let rows = report.readings.iter().map(|line| {
        Row::new(vec![
            Text::plain(line.label.as_str()),
            cell(&line.before),
            cell(&line.after),
            cell(&line.expected),
            cell(&line.verdict),
        ])
    });
    let value = |key| column(catalog, key, Align::End, Width::Share(1.1));
    vec![
        section(catalog, "homeowner-readings"),
        Block::Table(Table {
            caption: None,
            columns: vec![
                column(catalog, "homeowner-what", Align::Start, Width::Share(2.0)),
                value("homeowner-before"),
                value("homeowner-after"),
                value("homeowner-should"),
                value("homeowner-is-it"),
            ],
            rows: rows.collect(),
        }),
    ]
}
