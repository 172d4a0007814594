//! Places for signatures.

use super::{
    Composer,
    display::{Item, Leg, Pen},
    lines::set_lines,
    rows::{Cell, Finish, row},
    sheet::{BODY, SIGNED, SMALL, SOFT, TEXT},
    slab::{Keep, Slab, hold, space},
};
use crate::report::document::{Align, Signature, Strokes, Text};

/// Height of the field for the pen.
const FIELD: f32 = 54.0;
/// Distance between two fields.
const GAP: f32 = 28.0;

impl Composer<'_> {
    pub(super) fn signatures(&mut self, signatures: &[Signature], x: f32, width: f32) -> Vec<Slab> {
        let column = (width - GAP) / 2.0;
        let mut slabs = Vec::new();
        for pair in signatures.chunks(2) {
            let mut field = Slab::gap(FIELD);
            let mut cells = Vec::new();
            let mut left = x;
            for signature in pair {
                let y = FIELD - 0.5;
                let line = Item::line((left, y), (left + column, y), Pen::solid(SOFT, 0.7));
                field.items.push(line);
                if is_rule(&signature.strokes) {
                    self.signed_by_name(&signature.name, &mut field, left, column);
                } else {
                    field.items.extend(ink(&signature.strokes, left, column));
                }
                let mut lines =
                    set_lines(&mut self.set, &signature.name.as_str().into(), BODY, column);
                let role = Text::plain(&signature.role);
                lines.extend(set_lines(&mut self.set, &role, SMALL, column));
                if !signature.date.trim().is_empty() {
                    let date = Text::plain(format!("{}: {}", self.words.date, signature.date));
                    lines.extend(set_lines(&mut self.set, &date, SMALL, column));
                }
                cells.push(Cell {
                    x: left,
                    width: column,
                    align: Align::Start,
                    lines,
                });
                left += column + GAP;
            }
            let mut cut = vec![field];
            cut.extend(row(cells, Finish::plain(4.0, 0.0, self.split_over())));
            hold(&mut cut, Keep::Group);
            cut[0].keep = Keep::Next;
            space(&mut cut, 8.0, 12.0);
            slabs.extend(cut);
        }
        slabs
    }

    /// The name of one who signed by typing it, standing on the line.
    fn signed_by_name(&mut self, name: &str, field: &mut Slab, x: f32, width: f32) {
        let text = Text::plain(name);
        let mut lines = set_lines(&mut self.set, &text, SIGNED, width);
        if lines.len() > 2 {
            lines = set_lines(&mut self.set, &text, BODY, width);
        }
        let height: f32 = lines.iter().map(|line| line.height).sum();
        let mut y = (FIELD - 4.0 - height).max(0.0);
        for line in lines {
            let step = line.height;
            line.place(field, x, y, width, Align::Start);
            y += step;
        }
    }
}

/// Whether the strokes are the mark of one who typed the name: a level rule.
fn is_rule(strokes: &Strokes) -> bool {
    let [path] = strokes.paths.as_slice() else {
        return false;
    };
    matches!(path.as_slice(), [(_, from), (_, to)] if (from - to).abs() < f32::EPSILON)
}

/// The strokes scaled into the field, standing on its line.
fn ink(strokes: &Strokes, x: f32, width: f32) -> Vec<Item> {
    let points = || {
        strokes
            .paths
            .iter()
            .flatten()
            .filter(|(x, y)| x.is_finite() && y.is_finite())
    };
    let Some(&(first_x, first_y)) = points().next() else {
        return Vec::new();
    };
    let (mut left, mut right, mut top, mut bottom) = (first_x, first_x, first_y, first_y);
    for &(x, y) in points() {
        (left, right) = (left.min(x), right.max(x));
        (top, bottom) = (top.min(y), bottom.max(y));
    }
    let (room_x, room_y) = (width - 16.0, FIELD - 10.0);
    let scale = (room_x / (right - left).max(1e-3)).min(room_y / (bottom - top).max(1e-3));
    // A single dot must not become a huge one.
    let scale = if scale.is_finite() {
        scale.min(4.0)
    } else {
        0.0
    };
    let place = |&(px, py): &(f32, f32)| {
        let at = (
            x + 8.0 + (px - left) * scale,
            FIELD - 4.0 - (bottom - py) * scale,
        );
        (at.0.clamp(x, x + width), at.1.clamp(1.0, FIELD))
    };
    strokes
        .paths
        .iter()
        .filter_map(|path| {
            let mut legs: Vec<Leg> = Vec::new();
            for point in path.iter().filter(|(x, y)| x.is_finite() && y.is_finite()) {
                let (x, y) = place(point);
                legs.push(if legs.is_empty() {
                    Leg::Move(x, y)
                } else {
                    Leg::Line(x, y)
                });
            }
            if let [Leg::Move(x, y)] = legs.as_slice() {
                legs.push(Leg::Line(*x, *y));
            }
            let pen = Some(Pen::round(TEXT, 1.1));
            (!legs.is_empty()).then_some(Item::Path {
                legs,
                closed: false,
                fill: None,
                pen,
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_one_level_rule_stands_for_a_typed_name() {
        let rule = |paths: &[&[(f32, f32)]]| {
            let paths = paths.iter().map(|path| path.to_vec()).collect();
            is_rule(&Strokes { paths })
        };
        assert!(rule(&[&[(5.0, 70.0), (95.0, 70.0)]]));
        assert!(!rule(&[]));
        assert!(!rule(&[&[(5.0, 70.0), (95.0, 60.0)]]));
        assert!(!rule(&[&[(5.0, 70.0), (50.0, 70.0), (95.0, 70.0)]]));
        assert!(!rule(&[&[(5.0, 70.0), (95.0, 70.0)], &[(1.0, 1.0)]]));
    }
}
