//! Tables: head, rows, continuation.

use std::borrow::Cow;

use super::{
    Composer,
    columns::{Ask, GAP, bands, widths},
    display::Pen,
    lines::{extent, set_lines, stack},
    rows::{Cell, Finish, row},
    sheet::{CAPTION, CELL, CELL_HEAD, DEEP, HAIR, PART, SMALL, SOFT, Style},
    slab::{Keep, Slab, hold, space},
};
use crate::report::{
    document::{Align, Column, Row, RowKind, Table, Text},
    fonts::Face,
};

/// A head higher than this part of the body is not repeated.
const HEAD_LIMIT: f32 = 0.3;

impl Composer<'_> {
    pub(super) fn table(&mut self, table: &Table, x: f32, width: f32) -> Vec<Slab> {
        let columns = all_columns(table);
        let asks = self.asks(&columns, &table.rows);
        let mut slabs = Vec::new();
        for (index, band) in bands(&asks, width).into_iter().enumerate() {
            let asks: Vec<Ask> = band
                .iter()
                .filter_map(|at| asks.get(*at).copied())
                .collect();
            let mut given = widths(&asks, width).into_iter();
            let mut left = x;
            let mut places = Vec::new();
            for at in band {
                let width = given.next().unwrap_or(0.0);
                places.push(Place {
                    column: at,
                    x: left,
                    width,
                });
                left += width + GAP;
            }
            let mut part = self.band(table, &columns, &places, index > 0, x, width);
            space(&mut part, 4.0, 10.0);
            slabs.extend(part);
        }
        slabs
    }

    fn asks(&mut self, columns: &[Cow<'_, Column>], rows: &[Row]) -> Vec<Ask> {
        columns
            .iter()
            .enumerate()
            .map(|(index, column)| {
                let head = column.head.as_str().into();
                let (mut least, mut most) = extent(&mut self.set, &head, CELL_HEAD);
                for row in rows.iter().filter(|row| row.kind != RowKind::Group) {
                    if let Some(cell) = row.cells.get(index) {
                        let (word, whole) = extent(&mut self.set, cell, style_of(row.kind));
                        least = least.max(word);
                        most = most.max(whole);
                    }
                }
                // A hair more, so that rounding does not break a text that fits.
                Ask {
                    least: least + 0.1,
                    most: most + 0.1,
                    width: column.width,
                }
            })
            .collect()
    }

    /// The part of a table that is as wide as the page.
    fn band(
        &mut self,
        table: &Table,
        columns: &[Cow<'_, Column>],
        places: &[Place],
        continued: bool,
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let mut slabs = Vec::new();
        if let Some(caption) = &table.caption {
            let text = if continued {
                self.continued(caption)
            } else {
                caption.as_str().into()
            };
            let style = Style {
                size: 9.5,
                leading: 13.0,
                ..PART
            };
            let mut lines = stack(
                set_lines(&mut self.set, &text, style, width),
                x,
                width,
                Align::Start,
            );
            space(&mut lines, 0.0, 2.0);
            slabs.extend(lines);
        }
        let head_row = self.head_row(columns, places, x, width);
        let head = self.repeatable(table.caption.as_deref(), &head_row, x, width);
        slabs.extend(head_row);
        for slab in &mut slabs {
            slab.keep = Keep::Next;
        }
        if table.rows.is_empty() {
            let text = Text::plain(self.words.no_rows.clone());
            let lines = set_lines(&mut self.set, &text, CELL.inked(SOFT), width);
            let cell = Cell {
                x,
                width,
                align: Align::Start,
                lines,
            };
            slabs.extend(row(vec![cell], self.finish(x, width)));
        }
        for (index, content) in table.rows.iter().enumerate() {
            let mut cut = self.body_row(content, columns, places, x, width);
            // The last row does not stand alone under a repeated head.
            let last_but_one = index > 0 && index + 2 == table.rows.len();
            if (content.keep_with_next || last_but_one)
                && index + 1 < table.rows.len()
                && let Some(last) = cut.last_mut()
            {
                last.keep = Keep::Next;
            }
            for slab in &mut cut {
                slab.head = head;
            }
            slabs.extend(cut);
        }
        slabs
    }

    fn continued(&self, caption: &str) -> Text {
        Text::plain(format!("{caption} ({})", self.words.continued))
    }

    fn head_row(
        &mut self,
        columns: &[Cow<'_, Column>],
        places: &[Place],
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let mut cells = Vec::new();
        for place in places {
            let Some(column) = columns.get(place.column) else {
                continue;
            };
            let text = column.head.as_str().into();
            let lines = set_lines(&mut self.set, &text, CELL_HEAD, place.width);
            cells.push(Cell {
                x: place.x,
                width: place.width,
                align: column.align,
                lines,
            });
        }
        let rule = Some((x, x + width, Pen::solid(DEEP, 0.9)));
        row(
            cells,
            Finish {
                rule,
                ..Finish::plain(1.0, 3.5, self.split_over())
            },
        )
    }

    /// The head as one slab for later pages, unless it is too high for that.
    fn repeatable(
        &mut self,
        caption: Option<&str>,
        head_row: &[Slab],
        x: f32,
        width: f32,
    ) -> Option<usize> {
        let mut head = Slab::default();
        if let Some(caption) = caption {
            let text = self.continued(caption);
            for line in set_lines(&mut self.set, &text, CAPTION, width) {
                let (y, step) = (head.height, line.height);
                line.place(&mut head, x, y, width, Align::Start);
                head.height += step;
            }
            head.height += 2.0;
        }
        for slab in head_row {
            let mut slab = slab.clone();
            slab.shift(0.0, head.height);
            head.items.extend(slab.items);
            head.height += slab.height;
        }
        if head.height > self.sheet.body.height * HEAD_LIMIT {
            return None;
        }
        self.heads.push(head);
        Some(self.heads.len() - 1)
    }

    fn body_row(
        &mut self,
        content: &Row,
        columns: &[Cow<'_, Column>],
        places: &[Place],
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let style = style_of(content.kind);
        if content.kind == RowKind::Group {
            let text = content.cells.first().cloned().unwrap_or_default();
            let lines = set_lines(&mut self.set, &text, style, width);
            let cell = Cell {
                x,
                width,
                align: Align::Start,
                lines,
            };
            let finish = Finish {
                above: 7.0,
                ..self.finish(x, width)
            };
            let mut slabs = row(vec![cell], finish);
            hold(&mut slabs, Keep::Next);
            return slabs;
        }
        let mut cells = Vec::new();
        for place in places {
            let Some(column) = columns.get(place.column) else {
                continue;
            };
            let lines = match content.cells.get(place.column) {
                Some(text) => set_lines(&mut self.set, text, style, place.width),
                None => Vec::new(),
            };
            cells.push(Cell {
                x: place.x,
                width: place.width,
                align: column.align,
                lines,
            });
        }
        row(cells, self.finish(x, width))
    }

    fn finish(&self, x: f32, width: f32) -> Finish {
        let rule = Some((x, x + width, Pen::solid(HAIR, 0.5)));
        Finish {
            rule,
            ..Finish::plain(2.4, 2.8, self.split_over())
        }
    }
}

/// Where a column stands.
struct Place {
    column: usize,
    x: f32,
    width: f32,
}

fn style_of(kind: RowKind) -> Style {
    match kind {
        RowKind::Plain => CELL,
        RowKind::Strong => CELL.faced(Face::SemiBold),
        RowKind::Group => Style {
            size: 9.0,
            leading: 12.0,
            ..SMALL.faced(Face::SemiBold).inked(DEEP)
        },
    }
}

/// The columns, with nameless ones added where rows have more cells.
fn all_columns(table: &Table) -> Vec<Cow<'_, Column>> {
    let cells = table
        .rows
        .iter()
        .filter(|row| row.kind != RowKind::Group)
        .map(|row| row.cells.len())
        .max()
        .unwrap_or(0);
    let mut columns: Vec<Cow<'_, Column>> = table.columns.iter().map(Cow::Borrowed).collect();
    while columns.len() < cells {
        columns.push(Cow::Owned(Column::default()));
    }
    columns
}
