//! Tables: columns, rows and how they are set.

use super::Text;

/// A table.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Table {
    /// Words above the table, repeated with "continued" on later pages.
    pub caption: Option<String>,
    /// The columns.
    pub columns: Vec<Column>,
    /// The rows. Missing cells stay empty, surplus cells are dropped only where
    /// there is no column for them.
    pub rows: Vec<Row>,
}

/// A column of a table.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Column {
    /// Words of the head.
    pub head: String,
    /// Alignment of head and cells.
    pub align: Align,
    /// Width.
    pub width: Width,
}

/// Horizontal alignment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Align {
    /// At the left.
    #[default]
    Start,
    /// In the middle.
    Centre,
    /// At the right, for numbers.
    End,
}

/// Width of a column.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Width {
    /// As wide as the content asks, as far as there is room.
    #[default]
    Natural,
    /// A part of the room that natural columns leave, by weight.
    Share(f32),
}

/// A row of a table.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Row {
    /// One text for each column.
    pub cells: Vec<Text>,
    /// Kind.
    pub kind: RowKind,
    /// Whether the row must not part from the next one.
    pub keep_with_next: bool,
}

impl Row {
    /// A usual row.
    #[must_use]
    pub fn new(cells: Vec<Text>) -> Self {
        Self {
            cells,
            ..Self::default()
        }
    }

    /// A row with one text across all columns, heading the rows below it.
    #[must_use]
    pub fn group(text: impl Into<Text>) -> Self {
        Self {
            cells: vec![text.into()],
            kind: RowKind::Group,
            keep_with_next: true,
        }
    }
}

/// Kind of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum RowKind {
    /// Values.
    #[default]
    Plain,
    /// Values that sum up or stand out.
    Strong,
    /// First cell across all columns.
    Group,
}
