//! Steps, checks and points.

use super::{
    Composer, NARROWEST,
    display::{Item, Leg, Pen},
    lines::{Line, set_lines},
    rows::{Cell, Finish, row},
    sheet::{BODY, DEEP, SMALL, SOFT, Style, TEXT},
    slab::{Keep, Slab, hold, space},
};
use crate::report::{
    document::{Align, Check, Mark, Step, Text},
    fonts::Face,
};

/// Room for a number or mark at the left.
const INDENT: f32 = 24.0;
/// Room for the word of a mark at the right.
const STATE: f32 = 74.0;
/// Edge of the box of a mark.
const MARK: f32 = 8.6;

impl Composer<'_> {
    pub(super) fn steps(&mut self, start: u32, steps: &[Step], x: f32, width: f32) -> Vec<Slab> {
        let mut parts = Vec::new();
        for (number, step) in (u64::from(start)..).zip(steps) {
            let number = Text::plain(format!("{number}."));
            let style = BODY.faced(Face::SemiBold).inked(DEEP);
            let number = set_lines(&mut self.set, &number, style, INDENT.max(width / 4.0));
            let (indent, inner) = self.indent(&number, width);
            let mut cut = self.marked(Lead::Lines(number), step.mark, &step.text, x, width);
            let mut nested = self.blocks(&step.blocks, x + indent, inner);
            if !nested.is_empty() {
                hold(&mut cut, Keep::Next);
                if let Some(last) = cut.last_mut() {
                    last.keep = Keep::Next;
                }
                space(&mut nested, 2.0, 4.0);
            }
            cut.extend(nested);
            space(&mut cut, 2.0, 4.0);
            parts.push(cut);
        }
        listed(parts)
    }

    pub(super) fn checks(&mut self, checks: &[Check], x: f32, width: f32) -> Vec<Slab> {
        let mut parts = Vec::new();
        for check in checks {
            let mut cut = self.marked(Lead::Mark, Some(check.mark), &check.text, x, width);
            if let Some(remark) = &check.remark {
                let inner = width - INDENT;
                let lines = set_lines(&mut self.set, remark, SMALL, inner);
                let cell = Cell {
                    x: x + INDENT,
                    width: inner,
                    align: Align::Start,
                    lines,
                };
                if let Some(last) = cut.last_mut() {
                    last.keep = Keep::Next;
                }
                cut.extend(row(vec![cell], Finish::plain(0.0, 1.0, self.split_over())));
            }
            space(&mut cut, 1.5, 1.5);
            parts.push(cut);
        }
        listed(parts)
    }

    pub(super) fn points(&mut self, points: &[Text], x: f32, width: f32) -> Vec<Slab> {
        let indent = 13.0;
        let mut parts = Vec::new();
        for point in points {
            let lines = set_lines(&mut self.set, point, BODY, width - indent);
            let cell = Cell {
                x: x + indent,
                width: width - indent,
                align: Align::Start,
                lines,
            };
            let mut cut = row(vec![cell], Finish::plain(0.0, 0.0, self.split_over()));
            if let Some(first) = cut.first_mut() {
                first
                    .items
                    .push(dot((x + 4.0, BODY.leading / 2.0 + 0.6), 1.5));
            }
            space(&mut cut, 1.0, 2.5);
            parts.push(cut);
        }
        listed(parts)
    }

    /// Indent of what belongs to a step.
    fn indent(&self, number: &[Line], width: f32) -> (f32, f32) {
        let wide = number.iter().map(|line| line.width).fold(0.0, f32::max);
        let indent = INDENT.max(wide + 6.0);
        if width - indent < NARROWEST {
            (0.0, width)
        } else {
            (indent, width - indent)
        }
    }

    /// A number or mark, the text, and the word of the mark at the right.
    fn marked(
        &mut self,
        lead: Lead,
        mark: Option<Mark>,
        text: &Text,
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let mut cells = Vec::new();
        let mut indent = INDENT;
        let drawn = matches!(lead, Lead::Mark);
        if let Lead::Lines(lines) = lead {
            indent = indent.max(lines.iter().map(|line| line.width).fold(0.0, f32::max) + 6.0);
            cells.push(Cell {
                x,
                width: indent,
                align: Align::Start,
                lines,
            });
        }
        let state = if mark.is_some() { STATE } else { 0.0 };
        let inner = width - indent - state;
        let lines = set_lines(&mut self.set, text, BODY, inner);
        cells.push(Cell {
            x: x + indent,
            width: inner,
            align: Align::Start,
            lines,
        });
        if let Some(mark) = mark {
            let word = match mark {
                Mark::Done => &self.words.done,
                Mark::NotDone => &self.words.not_done,
                Mark::NotApplied => &self.words.not_applied,
                Mark::LeftOut => &self.words.left_out,
                Mark::Unmet => &self.words.unmet,
                Mark::Excused => &self.words.excused,
            };
            let style = Style {
                leading: BODY.leading,
                ..SMALL
            };
            let width = STATE - 22.0;
            let lines = set_lines(&mut self.set, &word.as_str().into(), style, width);
            let left = x + indent + inner + 22.0;
            cells.push(Cell {
                x: left,
                width,
                align: Align::Start,
                lines,
            });
        }
        let mut slabs = row(cells, Finish::plain(0.0, 0.0, self.split_over()));
        if let (Some(mark), Some(first)) = (mark, slabs.first_mut()) {
            let left = if drawn {
                x + 2.0
            } else {
                x + indent + inner + 8.0
            };
            first
                .items
                .extend(sign(mark, left, (BODY.leading - MARK) / 2.0 + 0.1));
        }
        slabs
    }
}

/// The parts of a list one after the other; neither its first nor its last part
/// stands alone on a page.
pub(super) fn listed(mut parts: Vec<Vec<Slab>>) -> Vec<Slab> {
    let count = parts.len();
    if count > 1 {
        for index in [0, count - 2] {
            if let Some(last) = parts.get_mut(index).and_then(|part| part.last_mut()) {
                last.keep = Keep::Next;
            }
        }
    }
    let mut slabs: Vec<Slab> = parts.into_iter().flatten().collect();
    space(&mut slabs, 2.0, 8.0);
    slabs
}

/// What stands at the left of a line.
enum Lead {
    Lines(Vec<Line>),
    Mark,
}

/// A small filled circle.
fn dot(centre: (f32, f32), radius: f32) -> Item {
    Item::Path {
        legs: circle(centre, radius),
        closed: true,
        fill: Some(SOFT),
        pen: None,
    }
}

/// A circle as four curves.
pub(super) fn circle((x, y): (f32, f32), r: f32) -> Vec<Leg> {
    // Distance of the control points for a quarter circle: 4/3 (sqrt 2 - 1).
    let k = r * 0.552_285;
    vec![
        Leg::Move(x + r, y),
        Leg::Curve([(x + r, y + k), (x + k, y + r), (x, y + r)]),
        Leg::Curve([(x - k, y + r), (x - r, y + k), (x - r, y)]),
        Leg::Curve([(x - r, y - k), (x - k, y - r), (x, y - r)]),
        Leg::Curve([(x + k, y - r), (x + r, y - k), (x + r, y)]),
    ]
}

/// The sign of a mark: a box with a tick, an empty box, a box with a bar; with half
/// a tick where something is missing.
fn sign(mark: Mark, x: f32, y: f32) -> Vec<Item> {
    let (right, bottom) = (x + MARK, y + MARK);
    let edge = Pen::solid(if mark == Mark::NotApplied { SOFT } else { TEXT }, 0.8);
    let mut items = vec![Item::Path {
        legs: vec![
            Leg::Move(x, y),
            Leg::Line(right, y),
            Leg::Line(right, bottom),
            Leg::Line(x, bottom),
        ],
        closed: true,
        fill: None,
        pen: Some(edge),
    }];
    let inner = match mark {
        Mark::Done => vec![
            Leg::Move(x + 1.9, y + 4.5),
            Leg::Line(x + 3.7, y + 6.4),
            Leg::Line(x + 6.9, y + 2.2),
        ],
        Mark::Unmet | Mark::Excused => {
            vec![Leg::Move(x + 1.9, y + 4.5), Leg::Line(x + 3.7, y + 6.4)]
        }
        Mark::NotApplied | Mark::LeftOut => {
            vec![
                Leg::Move(x + 2.2, y + MARK / 2.0),
                Leg::Line(right - 2.2, y + MARK / 2.0),
            ]
        }
        Mark::NotDone => return items,
    };
    let pen = Pen::round(if mark == Mark::Done { DEEP } else { SOFT }, 1.3);
    items.push(Item::Path {
        legs: inner,
        closed: false,
        fill: None,
        pen: Some(pen),
    });
    items
}
