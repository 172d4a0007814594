//! Titles, headings, paragraphs, facts.

use std::slice::Chunks;

use super::{
    Composer, NARROWEST,
    display::{Area, Item, Pen},
    lines::{extent, set_lines, stack},
    list::listed,
    rows::{Cell, Finish, row},
    sheet::{
        BODY, CELL, DEEP, DETAIL, HAIR, OVERLINE, PART, SECTION, SOFT, SUBTITLE, Style, TITLE,
        style_of,
    },
    slab::{Keep, Slab, space},
};
use crate::report::document::{Align, Fact, Level, Text, Tone};

/// Largest part of the width that labels of facts take.
const LABELS: f32 = 0.36;
/// The same where two facts stand beside each other.
const LABELS_PAIRED: f32 = 0.55;
/// A title of more lines is set smaller.
const TITLE_LINES: usize = 2;
/// Distance between columns of facts.
const FACT_GAP: f32 = 14.0;
/// Distance between facts that stand beside each other.
const COLUMN_GAP: f32 = 24.0;

impl Composer<'_> {
    pub(super) fn title(
        &mut self,
        overline: Option<&str>,
        text: &str,
        subtitle: Option<&Text>,
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let mut slabs = Vec::new();
        let mut bar = Slab::gap(11.0);
        let area = Area {
            x,
            y: 0.0,
            width: 34.0,
            height: 2.4,
        };
        bar.items.push(Item::Fill { area, ink: DEEP });
        slabs.push(bar);
        if let Some(overline) = overline {
            let lines = set_lines(&mut self.set, &overline.into(), OVERLINE, width);
            slabs.extend(stack(lines, x, width, Align::Start));
        }
        let mut lines = set_lines(&mut self.set, &text.into(), TITLE, width);
        if lines.len() > TITLE_LINES {
            // A name without end does not take half a page.
            lines = set_lines(&mut self.set, &text.into(), SECTION, width);
        }
        slabs.extend(stack(lines, x, width, Align::Start));
        if let Some(subtitle) = subtitle {
            let lines = set_lines(&mut self.set, subtitle, SUBTITLE, width);
            slabs.push(Slab::gap(3.0));
            slabs.extend(stack(lines, x, width, Align::Start));
        }
        for slab in &mut slabs {
            slab.keep = Keep::Next;
        }
        slabs.extend(Self::rule(x, width));
        let count = slabs.len();
        if let Some(last) = slabs.get_mut(count.saturating_sub(1)) {
            last.before = 10.0;
            last.after = 14.0;
        }
        slabs
    }

    pub(super) fn heading(&mut self, level: Level, text: &str, x: f32, width: f32) -> Vec<Slab> {
        let (style, before, after) = match level {
            Level::Section => (SECTION, 18.0, 6.0),
            Level::Part => (PART, 11.0, 3.5),
            Level::Detail => (DETAIL, 9.0, 2.0),
        };
        let lines = set_lines(&mut self.set, &text.into(), style, width);
        let mut slabs = stack(lines, x, width, Align::Start);
        for slab in &mut slabs {
            slab.keep = Keep::Next;
        }
        if level != Level::Detail
            && let Some(first) = slabs.first_mut()
        {
            let depth = usize::from(level == Level::Part);
            first.bookmark = Some((depth, self.set.clean(text).replace('\n', " ")));
        }
        space(&mut slabs, before, after);
        slabs
    }

    pub(super) fn paragraph(&mut self, text: &Text, tone: Tone, x: f32, width: f32) -> Vec<Slab> {
        let style = style_of(tone);
        let lines = set_lines(&mut self.set, text, style, width);
        let mut slabs = stack(lines, x, width, Align::Start);
        space(&mut slabs, 0.0, style.leading * 0.5);
        slabs
    }

    pub(super) fn rule(x: f32, width: f32) -> Vec<Slab> {
        let mut slab = Slab::gap(1.0);
        slab.before = 6.0;
        slab.after = 6.0;
        slab.items.push(Item::line(
            (x, 0.5),
            (x + width, 0.5),
            Pen::solid(HAIR, 0.6),
        ));
        vec![slab]
    }

    pub(super) fn facts(&mut self, facts: &[Fact], x: f32, width: f32) -> Vec<Slab> {
        let rows = facts.chunks(1);
        self.fact_rows(rows, 1, x, width)
    }

    /// Two facts in a row, read from left to right.
    pub(super) fn paired_facts(&mut self, facts: &[Fact], x: f32, width: f32) -> Vec<Slab> {
        let columns: u8 = if width < 2.0 * NARROWEST { 1 } else { 2 };
        self.fact_rows(facts.chunks(usize::from(columns)), columns, x, width)
    }

    fn fact_rows(&mut self, rows: Chunks<'_, Fact>, columns: u8, x: f32, width: f32) -> Vec<Slab> {
        let style = Style {
            leading: BODY.leading,
            ..CELL.inked(SOFT)
        };
        let count = f32::from(columns);
        let each = (width - COLUMN_GAP * (count - 1.0)) / count;
        let mut labels = 0f32;
        for fact in rows.clone().flatten() {
            let (_, wide) = extent(&mut self.set, &fact.label.as_str().into(), style);
            labels = labels.max(wide);
        }
        let most = if columns == 1 { LABELS } else { LABELS_PAIRED };
        let labels = (labels + 0.5).min(each * most);
        let value_width = each - labels - FACT_GAP;
        let mut parts = Vec::new();
        for facts in rows {
            let mut cells = Vec::new();
            for (fact, column) in facts.iter().zip(0_u8..) {
                let x = x + f32::from(column) * (each + COLUMN_GAP);
                let label = fact.label.as_str().into();
                cells.push(Cell {
                    x,
                    width: labels,
                    align: Align::Start,
                    lines: set_lines(&mut self.set, &label, style, labels),
                });
                cells.push(Cell {
                    x: x + labels + FACT_GAP,
                    width: value_width,
                    align: Align::Start,
                    lines: set_lines(&mut self.set, &fact.value, BODY, value_width),
                });
            }
            parts.push(row(cells, Finish::plain(1.0, 1.5, self.split_over())));
        }
        listed(parts)
    }
}
