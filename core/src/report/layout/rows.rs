//! Texts side by side: the common ground of tables, facts, steps and checks.

use super::{
    display::{Item, Pen},
    lines::Line,
    slab::{Keep, Slab},
};
use crate::report::document::Align;

/// Lines in one column of a row.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Cell {
    /// Left edge on the page.
    pub x: f32,
    /// Width.
    pub width: f32,
    /// Alignment.
    pub align: Align,
    /// The lines.
    pub lines: Vec<Line>,
}

impl Cell {
    fn height(&self) -> f32 {
        self.lines.iter().map(|line| line.height).sum()
    }
}

/// How a row is finished.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finish {
    /// Room above the lines.
    pub above: f32,
    /// Room below the lines.
    pub below: f32,
    /// Line under the row: from, to, pen.
    pub rule: Option<(f32, f32, Pen)>,
    /// Rows higher than this may be split between lines.
    pub split_over: f32,
}

impl Finish {
    /// A row without rule.
    #[must_use]
    pub fn plain(above: f32, below: f32, split_over: f32) -> Self {
        Self {
            above,
            below,
            rule: None,
            split_over,
        }
    }
}

/// One row as one slab, or, where it is too high, as one slab for each line.
#[must_use]
pub fn row(cells: Vec<Cell>, finish: Finish) -> Vec<Slab> {
    let inner = cells.iter().map(Cell::height).fold(0.0, f32::max);
    let height = finish.above + inner + finish.below;
    let mut slabs = if height <= finish.split_over {
        let mut slab = Slab::gap(height);
        for cell in cells {
            let mut y = finish.above;
            for line in cell.lines {
                let step = line.height;
                line.place(&mut slab, cell.x, y, cell.width, cell.align);
                y += step;
            }
        }
        vec![slab]
    } else {
        split(cells, finish)
    };
    if let (Some((from, to, pen)), Some(last)) = (finish.rule, slabs.last_mut()) {
        let y = last.height - pen.width / 2.0;
        last.items.push(Item::line((from, y), (to, y), pen));
    }
    slabs
}

fn split(mut cells: Vec<Cell>, finish: Finish) -> Vec<Slab> {
    let count = cells.iter().map(|cell| cell.lines.len()).max().unwrap_or(0);
    let mut slabs = Vec::with_capacity(count);
    for index in 0..count {
        let above = if index == 0 { finish.above } else { 0.0 };
        let mut slab = Slab::gap(above);
        let mut height = 0f32;
        for cell in &mut cells {
            if let Some(line) = cell.lines.get_mut(index) {
                let line = std::mem::take(line);
                height = height.max(line.height);
                line.place(&mut slab, cell.x, above, cell.width, cell.align);
            }
        }
        slab.height += height;
        if index + 1 == count {
            slab.height += finish.below;
        }
        if index == 0 || index + 2 == count {
            slab.keep = Keep::Next;
        }
        slabs.push(slab);
    }
    if slabs.len() == 1
        && let Some(only) = slabs.first_mut()
    {
        only.keep = Keep::Free;
    }
    slabs
}
