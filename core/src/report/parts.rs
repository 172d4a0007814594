//! What every report is made of: who issues it, photos, signatures, and the
//! blocks that recur.

use std::sync::Arc;

use super::chart::Drawing;
use super::document::{
    Align, Block, Column, Fact, Level, PhotoEntry, Signature, Strokes, Text, Tone, Width,
};
use super::photo::Photo;
use crate::text::{Args, Catalog};

/// The company that issues a report, as far as it is known.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Issuer {
    /// Name of the company.
    pub company: Option<String>,
    /// Number to call.
    pub phone: Option<String>,
    /// Its mark, set small at the head.
    pub logo: Option<Arc<Photo>>,
}

/// A photo with its words.
#[derive(Clone, PartialEq, Debug)]
pub struct PhotoPart {
    /// The picture.
    pub photo: Arc<Photo>,
    /// When in the work it was taken, in words.
    pub phase: String,
    /// What it shows.
    pub caption: Option<String>,
    /// When it was taken, as shown.
    pub taken_at: Option<String>,
}

/// A signature with its words.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct SignaturePart {
    /// The role in words.
    pub role: String,
    /// Name in print; empty leaves it to be written.
    pub name: String,
    /// When, as shown.
    pub date: String,
    /// Strokes; empty leaves a line to sign on.
    pub strokes: Strokes,
}

/// A drawing with its words.
#[derive(Clone, PartialEq, Debug)]
pub struct ChartPart {
    /// Heading above it.
    pub title: String,
    /// The drawing.
    pub drawing: Arc<Drawing>,
    /// Words below it; they hold in text what the drawing shows.
    pub caption: String,
}

/// The company's mark, a quarter of the text width, if there is one.
pub(super) fn mark(issuer: &Issuer) -> Vec<Block> {
    let entry = |logo: &Arc<Photo>| PhotoEntry {
        photo: Arc::clone(logo),
        caption: None,
    };
    let logo = issuer.logo.as_ref().map(entry);
    logo.map(|logo| Block::Photos {
        photos: vec![logo],
        per_row: 4,
    })
    .into_iter()
    .collect()
}

pub(super) fn section(catalog: &Catalog, key: &str) -> Block {
    Block::heading(Level::Section, catalog.text(key))
}

pub(super) fn part(catalog: &Catalog, key: &str) -> Block {
    Block::heading(Level::Part, catalog.text(key))
}

pub(super) fn small(text: impl Into<Text>) -> Block {
    Block::Paragraph {
        text: text.into(),
        tone: Tone::Small,
    }
}

pub(super) fn points(items: &[String]) -> Block {
    let items = items.iter();
    Block::Points(items.map(|item| Text::plain(item.as_str())).collect())
}

pub(super) fn facts(items: &[(String, String)]) -> Block {
    let fact = |(label, value): &(String, String)| Fact {
        label: label.clone(),
        value: value.as_str().into(),
    };
    Block::Facts(items.iter().map(fact).collect())
}

/// The same, two beside each other.
pub(super) fn paired(items: &[(String, String)]) -> Block {
    match facts(items) {
        Block::Facts(facts) => Block::PairedFacts(facts),
        other => other,
    }
}

pub(super) fn column(catalog: &Catalog, key: &str, align: Align, width: Width) -> Column {
    Column {
        head: catalog.text(key),
        align,
        width,
    }
}

/// A chart with its heading and words, on one page.
pub(super) fn chart(chart: &ChartPart) -> Block {
    Block::Together(vec![
        Block::heading(Level::Part, chart.title.as_str()),
        Block::Figure {
            drawing: Arc::clone(&chart.drawing),
            caption: Some(Text::plain(chart.caption.as_str())),
        },
    ])
}

/// Photos side by side, each with its phase, words and time.
pub(super) fn photos(photos: &[PhotoPart], per_row: usize, catalog: &Catalog) -> Block {
    let entries = photos.iter().map(|part| {
        let mut text = part.phase.clone();
        if let Some(caption) = &part.caption {
            let args = Args::new()
                .text("phase", part.phase.as_str())
                .text("caption", caption.as_str());
            text = catalog.fill("report-photo-caption", &args);
        }
        if let Some(taken_at) = &part.taken_at {
            text = format!("{text} · {taken_at}");
        }
        PhotoEntry {
            photo: Arc::clone(&part.photo),
            caption: Some(Text::plain(text)),
        }
    });
    Block::Photos {
        photos: entries.collect(),
        per_row,
    }
}

pub(super) fn signatures(signatures: &[SignaturePart]) -> Block {
    let place = |part: &SignaturePart| Signature {
        role: part.role.clone(),
        name: part.name.clone(),
        date: part.date.clone(),
        strokes: part.strokes.clone(),
    };
    Block::Signatures(signatures.iter().map(place).collect())
}
