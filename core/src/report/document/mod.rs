//! The content of a report as plain data, before any thought of pages.
//!
//! A [`Document`] knows nothing of heat pumps. What a report says is decided
//! and tested on this data; [`super::layout`] makes pages from it.

mod table;
mod text;

pub use table::{Align, Column, Row, RowKind, Table, Width};
pub use text::{Emphasis, Span, Text};

use std::sync::Arc;

use chrono::{DateTime, FixedOffset};

use super::{chart::Drawing, photo::Photo};

/// A whole report.
#[derive(Debug, Clone, PartialEq)]
pub struct Document {
    /// What the file says about itself.
    pub meta: Meta,
    /// Paper.
    pub page: PageSize,
    /// How close the page is set.
    pub density: Density,
    /// Content from top to bottom.
    pub blocks: Vec<Block>,
}

/// What a file says about itself and what stands at the edge of each page.
///
/// Date and id come from outside: the same document gives the same bytes.
#[derive(Debug, Clone, PartialEq)]
pub struct Meta {
    /// Title, shown by readers in the window's frame.
    pub title: String,
    /// Person or company that issues the report.
    pub author: String,
    /// One line on the content.
    pub subject: String,
    /// Language tag (BCP 47), such as `en-US` or `es`.
    pub language: String,
    /// Moment of issue.
    pub date: DateTime<FixedOffset>,
    /// Identity of the report; goes into the file's identifier.
    pub id: String,
    /// Line at the head of every page but the first.
    pub running_head: String,
    /// Line at the foot of every page, beside the page number.
    pub running_foot: String,
}

/// Paper sizes in use.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum PageSize {
    /// 8.5 by 11 inches.
    #[default]
    Letter,
    /// 210 by 297 mm (ISO 216).
    A4,
}

/// How close a page is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Density {
    /// For everyone, at arm's length.
    #[default]
    Usual,
    /// For everyone, where two sheets have to hold all.
    Snug,
    /// For a record that is long and read where something is looked up.
    Close,
}

impl Density {
    /// Sizes of letters and distances against the usual ones.
    #[must_use]
    pub fn scale(self) -> f32 {
        match self {
            Self::Usual => 1.0,
            Self::Snug => 0.93,
            Self::Close => 0.84,
        }
    }
}

impl PageSize {
    /// Width and height in points (1/72 inch).
    #[must_use]
    pub fn points(self) -> (f32, f32) {
        match self {
            Self::Letter => (612.0, 792.0),
            Self::A4 => (210.0 * 72.0 / 25.4, 297.0 * 72.0 / 25.4),
        }
    }
}

/// One piece of content.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// Head of the document.
    Title {
        /// Small line above the title, such as the kind of document.
        overline: Option<String>,
        /// The title.
        text: String,
        /// Line below the title.
        subtitle: Option<Text>,
    },
    /// A heading, which also becomes a bookmark. Stays with what follows.
    Heading {
        /// Depth.
        level: Level,
        /// Words.
        text: String,
    },
    /// Running text.
    Paragraph {
        /// Words.
        text: Text,
        /// Weight in the page.
        tone: Tone,
    },
    /// Labels with values.
    Facts(Vec<Fact>),
    /// The same, two beside each other, for short values.
    PairedFacts(Vec<Fact>),
    /// Pieces beside each other, such as charts; on one page.
    Beside(Vec<Vec<Block>>),
    /// A table.
    Table(Table),
    /// A framed word of caution or a note.
    Callout(Callout),
    /// A caution that stood in full before, in short.
    Reminder(Text),
    /// Numbered steps.
    Steps {
        /// Number of the first step.
        start: u32,
        /// The steps.
        steps: Vec<Step>,
    },
    /// Lines with a mark: done, not done, not applied.
    Checks(Vec<Check>),
    /// Unnumbered points.
    Points(Vec<Text>),
    /// A vector drawing with a caption.
    Figure {
        /// The drawing; shrunk to the width there is, never enlarged.
        drawing: Arc<Drawing>,
        /// Words below it.
        caption: Option<Text>,
    },
    /// Photos side by side.
    Photos {
        /// The photos with their captions.
        photos: Vec<PhotoEntry>,
        /// How many in a row, one to four.
        per_row: usize,
    },
    /// Places for signatures, two in a row.
    Signatures(Vec<Signature>),
    /// Empty height in points; vanishes at the top of a page.
    Space(f32),
    /// A thin line across the text width.
    Rule,
    /// What follows starts on a new page.
    PageBreak,
    /// Blocks that stay on one page if they fit on one at all.
    Together(Vec<Block>),
}

impl Block {
    /// A paragraph in the usual tone.
    #[must_use]
    pub fn paragraph(text: impl Into<Text>) -> Self {
        Self::Paragraph {
            text: text.into(),
            tone: Tone::Body,
        }
    }

    /// A heading.
    #[must_use]
    pub fn heading(level: Level, text: impl Into<String>) -> Self {
        Self::Heading {
            level,
            text: text.into(),
        }
    }
}

/// Depth of a heading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// A main part of the document.
    Section,
    /// A part of a section.
    Part,
    /// A part of a part; not among the bookmarks.
    Detail,
}

/// Weight of a paragraph in the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Tone {
    /// Usual text.
    #[default]
    Body,
    /// Larger, for the sentence that matters most, or a page for everyone.
    Lead,
    /// Smaller, for method and sources.
    Small,
}

/// A label with its value.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fact {
    /// What it is.
    pub label: String,
    /// Its value.
    pub value: Text,
}

/// A framed word of caution or a note.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Callout {
    /// Kind; decides the sign and the word.
    pub kind: CalloutKind,
    /// Words after the kind's own word.
    pub title: Option<String>,
    /// Paragraphs.
    pub body: Vec<Text>,
}

/// Kind of callout: told apart by sign and word, not by colour alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CalloutKind {
    /// Someone could be hurt or something damaged.
    Caution,
    /// Good to know.
    Note,
}

/// A numbered step.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What is to do or was done.
    pub text: Text,
    /// State, where the steps are a record.
    pub mark: Option<Mark>,
    /// Cautions, quantities, tables that belong to this step.
    pub blocks: Vec<Block>,
}

/// State of a step or check.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// Done.
    Done,
    /// Not done.
    NotDone,
    /// Did not apply here.
    NotApplied,
    /// Left out for a reason.
    LeftOut,
    /// Done, though what it asks for was not met, and nobody said why.
    Unmet,
    /// Done all the same, for a reason.
    Excused,
}

/// A line of a check list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Check {
    /// State.
    pub mark: Mark,
    /// What was to be checked or done.
    pub text: Text,
    /// Result or reason, set smaller below.
    pub remark: Option<Text>,
}

/// A photo with its caption.
#[derive(Debug, Clone, PartialEq)]
pub struct PhotoEntry {
    /// The picture.
    pub photo: Arc<Photo>,
    /// Words below it.
    pub caption: Option<Text>,
}

/// A place for a signature.
#[derive(Debug, Clone, PartialEq)]
pub struct Signature {
    /// In which role the person signs.
    pub role: String,
    /// Name in print.
    pub name: String,
    /// When, as it shall be read.
    pub date: String,
    /// The strokes of the pen; empty leaves a line to sign on paper.
    pub strokes: Strokes,
}

/// Strokes of a pen, in any unit, y downward.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Strokes {
    /// Each stroke is the path of the pen from touch to lift.
    pub paths: Vec<Vec<(f32, f32)>>,
}
