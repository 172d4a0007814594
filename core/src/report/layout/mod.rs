//! From report content to a display list.
//!
//! Every block is cut into [`slab::Slab`]s, unbreakable pieces of known height;
//! [`flow`] then fills pages with them, keeps together what belongs together and
//! repeats table heads; [`edge`] sets the lines at head and foot when the number
//! of pages is known.

mod beside;
mod callout;
mod columns;
pub mod display;
mod edge;
mod figure;
mod flow;
mod lines;
mod list;
mod picture;
mod rows;
pub mod sheet;
mod signature;
mod slab;
mod table;
mod text;

use super::{
    document::{Block, Density, Document},
    error::ReportError,
    fonts::Typesetter,
    words::Words,
};
use display::{Ink, Pages};
use sheet::Sheet;
use slab::{Keep, Slab, hold};

/// Content narrower than this is not indented any further.
const NARROWEST: f32 = 150.0;

/// The part of the body's height over which a row may be split.
const SPLIT_OVER: f32 = 0.4;

/// Lays a document out.
///
/// # Errors
/// [`ReportError::Font`] when a font program in the build is damaged. No content
/// makes this fail.
pub fn lay_out(document: &Document, words: &Words) -> Result<Pages, ReportError> {
    let sheet = Sheet::new(document.page, document.density);
    let mut composer = Composer {
        set: Typesetter::new()?,
        words,
        sheet,
        heads: Vec::new(),
        frames: Vec::new(),
    };
    let slabs = composer.blocks(&document.blocks, sheet.body.x, sheet.body.width);
    let (mut pages, bookmarks) = flow::flow(slabs, &composer.heads, &composer.frames, sheet.body);
    edge::edges(&mut composer.set, &sheet, &document.meta, words, &mut pages);
    let mut pages = Pages {
        width: sheet.width,
        height: sheet.height,
        body: sheet.body,
        margins: sheet.margins,
        pages,
        bookmarks,
    };
    if document.density != Density::Usual {
        pages.scale(document.density.scale());
        // The paper's own size, free of rounding.
        (pages.width, pages.height) = document.page.points();
    }
    Ok(pages)
}

/// Coloured ground under slabs: a box with a bar at its left edge.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Frame {
    x: f32,
    width: f32,
    ground: Ink,
    bar: Ink,
}

/// Cuts blocks into slabs.
struct Composer<'a> {
    set: Typesetter,
    words: &'a Words,
    sheet: Sheet,
    /// Table heads that may have to be repeated.
    heads: Vec<Slab>,
    frames: Vec<Frame>,
}

impl Composer<'_> {
    fn blocks(&mut self, blocks: &[Block], x: f32, width: f32) -> Vec<Slab> {
        let mut slabs = Vec::new();
        let mut page_break = false;
        for block in blocks {
            if matches!(block, Block::PageBreak) {
                page_break = true;
                continue;
            }
            let mut cut = self.block(block, x, width);
            if let Some(first) = cut.first_mut() {
                first.starts_page |= std::mem::take(&mut page_break);
            }
            slabs.extend(cut);
        }
        slabs
    }

    fn block(&mut self, block: &Block, x: f32, width: f32) -> Vec<Slab> {
        match block {
            Block::Title {
                overline,
                text,
                subtitle,
            } => self.title(overline.as_deref(), text, subtitle.as_ref(), x, width),
            Block::Heading { level, text } => self.heading(*level, text, x, width),
            Block::Paragraph { text, tone } => self.paragraph(text, *tone, x, width),
            Block::Facts(facts) => self.facts(facts, x, width),
            Block::PairedFacts(facts) => self.paired_facts(facts, x, width),
            Block::Beside(parts) => self.beside(parts, x, width),
            Block::Table(table) => self.table(table, x, width),
            Block::Callout(callout) => self.callout(callout, x, width),
            Block::Reminder(text) => self.reminder(text, x, width),
            Block::Steps { start, steps } => self.steps(*start, steps, x, width),
            Block::Checks(checks) => self.checks(checks, x, width),
            Block::Points(points) => self.points(points, x, width),
            Block::Figure { drawing, caption } => self.figure(drawing, caption.as_ref(), x, width),
            Block::Photos { photos, per_row } => self.photos(photos, *per_row, x, width),
            Block::Signatures(signatures) => self.signatures(signatures, x, width),
            Block::Space(height) => {
                let height = if height.is_finite() { *height } else { 0.0 };
                let mut slab = Slab::gap(0.0);
                slab.before = height.clamp(0.0, self.sheet.body.height / 2.0);
                vec![slab]
            }
            Block::Rule => Self::rule(x, width),
            Block::PageBreak => Vec::new(),
            Block::Together(blocks) => {
                let mut slabs = self.blocks(blocks, x, width);
                hold(&mut slabs, Keep::Group);
                slabs
            }
        }
    }

    /// Height over which a row may be split.
    fn split_over(&self) -> f32 {
        self.sheet.body.height * SPLIT_OVER
    }
}
