//! Boxes and arrows: how one thing leads to another.

use super::{Anchor, Drawing, LabelStyle, Point, Role, Shape, Stroke};
use crate::report::fonts::{Face, Typesetter};

/// Boxes in ranks, joined by arrows. Ranks stand side by side from left to
/// right, or below each other where the width is too small for that; then what
/// leads past a row of boxes goes round it on the left, so that no arrow seems to
/// lead from a box that it only passes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Chain {
    /// Width, points. The height follows.
    pub width: f32,
    /// What it shows, for those who cannot see it.
    pub description: String,
    /// The boxes.
    pub boxes: Vec<ChainBox>,
    /// Arrows from box to box, by index. Others are ignored.
    pub arrows: Vec<(usize, usize)>,
}

/// A box.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ChainBox {
    /// Rank, 0 for the first. Gaps between ranks are closed.
    pub rank: usize,
    /// Small words above.
    pub kind: String,
    /// Words.
    pub text: String,
    /// Set apart.
    pub strong: bool,
}

/// Size of the words.
const SIZE: f32 = 9.0;
/// Distance of base lines.
const LEADING: f32 = 11.5;
/// Room between box and words.
const PAD: f32 = 7.0;
/// Length of an arrow.
const ARROW: f32 = 24.0;
/// Distance between boxes of one rank.
const GAP: f32 = 10.0;
/// Narrowest box in ranks side by side.
const NARROW: f32 = 92.0;
/// Distance of the lines that go round rows of boxes.
const LANE: f32 = 7.0;
/// How far from the middle of a box such a line leaves it or comes in.
const ASIDE: f32 = 4.5;
/// Most lines in a box; the rest becomes an ellipsis.
const LINES: usize = 6;

struct Placed {
    at: Point,
    /// Row from the top, where ranks stand below each other.
    row: usize,
    width: f32,
    height: f32,
    lines: Vec<String>,
}

impl Chain {
    /// The diagram as a drawing.
    pub fn draw(&self, set: &mut Typesetter) -> Drawing {
        let ranks = self.ranks();
        #[allow(clippy::cast_precision_loss)]
        let count = ranks.len().max(1) as f32;
        let side_by_side = (self.width - ARROW * (count - 1.0)) / count;
        let across = side_by_side >= NARROW;
        let mut placed: Vec<Option<Placed>> = self.boxes.iter().map(|_| None).collect();
        let height = if across {
            self.place_across(set, &ranks, side_by_side, &mut placed)
        } else {
            self.place_down(set, &ranks, &mut placed)
        };
        let mut drawing = Drawing::new(self.width, height, self.description.clone());
        let round = if across {
            Vec::new()
        } else {
            self.round(&rows_of(&placed))
        };
        for &(from, to) in &self.arrows {
            if let (Some(Some(start)), Some(Some(end))) = (placed.get(from), placed.get(to)) {
                let lane = round.iter().position(|source| *source == from);
                drawing.push(match lane {
                    Some(lane) if end.row != start.row + 1 => around(start, end, lane),
                    _ => arrow(start, end, across),
                });
            }
        }
        for (content, placed) in self.boxes.iter().zip(&placed) {
            if let Some(placed) = placed {
                paint(&mut drawing, set, content, placed);
            }
        }
        drawing
    }

    /// The boxes from which something leads past a row, the outermost line first.
    fn round(&self, rows: &[Option<usize>]) -> Vec<usize> {
        let row = |index: usize| rows.get(index).copied().flatten();
        let past = |&(from, to): &(usize, usize)| Some(row(to)? != row(from)? + 1);
        let mut sources: Vec<usize> = (self.arrows.iter())
            .filter(|arrow| past(arrow).unwrap_or(false))
            .map(|(from, _)| *from)
            .collect();
        sources.sort_unstable_by_key(|source| (row(*source), *source));
        sources.dedup();
        sources
    }

    /// Indices of the boxes of each rank.
    fn ranks(&self) -> Vec<Vec<usize>> {
        let mut numbers: Vec<usize> = self.boxes.iter().map(|content| content.rank).collect();
        numbers.sort_unstable();
        numbers.dedup();
        numbers
            .into_iter()
            .map(|rank| {
                (0..self.boxes.len())
                    .filter(|at| self.boxes[*at].rank == rank)
                    .collect()
            })
            .collect()
    }

    fn measure(&self, set: &mut Typesetter, index: usize, width: f32) -> (Vec<String>, f32) {
        let content = &self.boxes[index];
        let style = (face(content.strong), SIZE);
        let lines = wrap(set, &content.text, style, width - 2.0 * PAD, LINES);
        let rows = lines.len() + usize::from(!content.kind.is_empty());
        #[allow(clippy::cast_precision_loss)]
        let height = 2.0 * PAD - 2.0 + rows as f32 * LEADING;
        (lines, height)
    }

    fn place_across(
        &self,
        set: &mut Typesetter,
        ranks: &[Vec<usize>],
        width: f32,
        placed: &mut [Option<Placed>],
    ) -> f32 {
        let mut columns = Vec::new();
        for rank in ranks {
            let boxes: Vec<_> = rank
                .iter()
                .map(|index| (*index, self.measure(set, *index, width)))
                .collect();
            #[allow(clippy::cast_precision_loss)]
            let gaps = GAP * (boxes.len().saturating_sub(1)) as f32;
            let height = boxes.iter().map(|(_, (_, height))| height).sum::<f32>() + gaps;
            columns.push((boxes, height));
        }
        let tallest = columns
            .iter()
            .map(|(_, height)| *height)
            .fold(1.0, f32::max);
        let mut x = 0.0;
        for (boxes, height) in columns {
            let mut y = (tallest - height) / 2.0;
            for (index, (lines, height)) in boxes {
                if let Some(place) = placed.get_mut(index) {
                    *place = Some(Placed {
                        at: Point::new(x, y),
                        row: 0,
                        width,
                        height,
                        lines,
                    });
                }
                y += height + GAP;
            }
            x += width + ARROW;
        }
        tallest
    }

    fn place_down(
        &self,
        set: &mut Typesetter,
        ranks: &[Vec<usize>],
        placed: &mut [Option<Placed>],
    ) -> f32 {
        // Room for the lines on the left: they depend on the rows, and these on the room.
        let mut gutter = 0.0;
        let mut rows = chunked(ranks, self.width);
        for _ in 0..3 {
            let mut of_box = vec![None; self.boxes.len()];
            for (number, (row, _)) in rows.iter().enumerate() {
                for index in row {
                    of_box[*index] = Some(number);
                }
            }
            let lines = self.round(&of_box).len();
            #[allow(clippy::cast_precision_loss)]
            let wanted = if lines == 0 {
                0.0
            } else {
                (LANE * (lines as f32 + 0.7)).min(self.width / 3.0)
            };
            if wanted <= gutter {
                break;
            }
            gutter = wanted;
            rows = chunked(ranks, self.width - gutter);
        }
        let mut y = 0.0;
        for (number, (row, is_last)) in rows.iter().enumerate() {
            #[allow(clippy::cast_precision_loss)]
            let count = row.len() as f32;
            let width = (self.width - gutter - GAP * (count - 1.0)) / count;
            let boxes: Vec<_> = row
                .iter()
                .map(|index| (*index, self.measure(set, *index, width)))
                .collect();
            let height = boxes
                .iter()
                .map(|(_, (_, height))| *height)
                .fold(1.0, f32::max);
            let mut x = gutter;
            for (index, (lines, _)) in boxes {
                if let Some(place) = placed.get_mut(index) {
                    *place = Some(Placed {
                        at: Point::new(x, y),
                        row: number,
                        width,
                        height,
                        lines,
                    });
                }
                x += width + GAP;
            }
            y += height + if *is_last { ARROW } else { GAP };
        }
        (y - ARROW).max(1.0)
    }
}

/// Ranks in rows, as many boxes side by side as there is width for, each with
/// whether it is the last of its rank.
fn chunked(ranks: &[Vec<usize>], width: f32) -> Vec<(Vec<usize>, bool)> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let most = (((width + GAP) / (NARROW + GAP)) as usize).max(1);
    let mut rows = Vec::new();
    for rank in ranks {
        let mut chunks = rank.chunks(most).peekable();
        while let Some(chunk) = chunks.next() {
            rows.push((chunk.to_vec(), chunks.peek().is_none()));
        }
    }
    rows
}

fn rows_of(placed: &[Option<Placed>]) -> Vec<Option<usize>> {
    let rows = placed.iter();
    rows.map(|place| place.as_ref().map(|place| place.row))
        .collect()
}

fn face(strong: bool) -> Face {
    if strong {
        Face::SemiBold
    } else {
        Face::Regular
    }
}

/// Words in lines: broken at spaces; a word that is too long, or the last line
/// where there are more than `most`, ends in an ellipsis.
pub(super) fn wrap(
    set: &mut Typesetter,
    text: &str,
    (face, size): (Face, f32),
    width: f32,
    most: usize,
) -> Vec<String> {
    let text = set.clean(text).replace('\n', " ");
    let mut words = text.split(' ').filter(|word| !word.is_empty()).peekable();
    let mut lines: Vec<String> = Vec::new();
    while let Some(word) = words.next() {
        let full = lines.len() == most;
        let Some(line) = lines.last_mut() else {
            lines.push(set.fit(face, size, word, width));
            continue;
        };
        let longer = format!("{line} {word}");
        if set.width(face, size, &longer) <= width {
            *line = longer;
        } else if full {
            let rest: Vec<&str> = words.by_ref().collect();
            *line = set.fit(face, size, &format!("{longer} {}", rest.join(" ")), width);
        } else {
            lines.push(set.fit(face, size, word, width));
        }
    }
    lines
}

/// A straight arrow, or one with two right angles.
fn arrow(from: &Placed, to: &Placed, across: bool) -> Shape {
    let (start, end) = if across {
        (
            Point::new(from.at.x + from.width + 1.5, from.at.y + from.height / 2.0),
            Point::new(to.at.x - 2.0, to.at.y + to.height / 2.0),
        )
    } else {
        (
            Point::new(from.at.x + from.width / 2.0, from.at.y + from.height + 1.5),
            Point::new(to.at.x + to.width / 2.0, to.at.y - 2.0),
        )
    };
    let (aside, bend) = if across {
        let x = end.x - ARROW * 0.55;
        (
            end.y - start.y,
            [Point::new(x, start.y), Point::new(x, end.y)],
        )
    } else {
        let y = end.y - ARROW * 0.55;
        (
            end.x - start.x,
            [Point::new(start.x, y), Point::new(end.x, y)],
        )
    };
    let points = if aside.abs() < 0.5 {
        vec![start, end]
    } else {
        vec![start, bend[0], bend[1], end]
    };
    Shape::Arrow {
        points,
        stroke: Stroke::solid(Role::Axis, 1.1),
    }
}

/// An arrow that goes round the rows between, along its line on the left. A box
/// that begins its row is left and reached at its side, any other below and above.
fn around(from: &Placed, to: &Placed, lane: usize) -> Shape {
    #[allow(clippy::cast_precision_loss)]
    let x = LANE * (lane as f32 + 0.5);
    let begins = |place: &Placed| place.at.x < NARROW;
    let mut points = Vec::new();
    if begins(from) {
        let y = from.at.y + from.height / 2.0 + ASIDE;
        points.extend([Point::new(from.at.x, y), Point::new(x, y)]);
    } else {
        let middle = from.at.x + from.width / 2.0;
        let below = from.at.y + from.height + GAP / 2.0;
        points.push(Point::new(middle, from.at.y + from.height));
        points.extend([Point::new(middle, below), Point::new(x, below)]);
    }
    if begins(to) {
        let y = to.at.y + to.height / 2.0 - ASIDE;
        points.extend([Point::new(x, y), Point::new(to.at.x - 2.0, y)]);
    } else {
        let middle = to.at.x + to.width / 2.0;
        let above = to.at.y - GAP * 0.8;
        points.extend([Point::new(x, above), Point::new(middle, above)]);
        points.push(Point::new(middle, to.at.y - 2.0));
    }
    Shape::Arrow {
        points,
        stroke: Stroke::solid(Role::Axis, 1.1),
    }
}

fn paint(drawing: &mut Drawing, set: &mut Typesetter, content: &ChainBox, placed: &Placed) {
    let outline = if content.strong {
        Role::Primary
    } else {
        Role::Axis
    };
    drawing.push(Shape::Box {
        at: placed.at,
        width: placed.width,
        height: placed.height,
        radius: 2.5,
        fill: Some(Role::Surface),
        stroke: Some(Stroke::solid(
            outline,
            if content.strong { 1.3 } else { 0.7 },
        )),
    });
    let x = placed.at.x + PAD;
    let mut y = placed.at.y + PAD + 7.0;
    if !content.kind.is_empty() {
        let kind = set.fit(Face::Regular, 8.0, &content.kind, placed.width - 2.0 * PAD);
        let style = LabelStyle {
            size: 8.0,
            ..LabelStyle::soft(Anchor::Start)
        };
        drawing.label(Point::new(x, y), kind, style);
        y += LEADING;
    }
    for line in &placed.lines {
        let style = LabelStyle {
            size: SIZE,
            strong: content.strong,
            ..LabelStyle::plain(Anchor::Start)
        };
        drawing.label(Point::new(x, y), line, style);
        y += LEADING;
    }
}
