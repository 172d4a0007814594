//! Horizontal bars with their values in words.

use super::{Anchor, Drawing, LABEL_SIZE, LabelStyle, Point, Role, Shape, Stroke, lines::part};
use crate::report::fonts::{Face, Typesetter};

/// A chart of horizontal bars from zero.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BarChart {
    /// Width, points. The height follows from the number of bars.
    pub width: f32,
    /// What it shows, for those who cannot see it.
    pub description: String,
    /// The bars from top to bottom.
    pub bars: Vec<Bar>,
    /// Value of a full bar; the largest value where not given.
    pub full: Option<f64>,
}

/// One bar.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Bar {
    /// Name at the left.
    pub label: String,
    /// Length; negative values and those that are no numbers draw nothing.
    pub value: f64,
    /// The value as it shall be read.
    pub text: String,
    /// Interval of uncertainty.
    pub interval: Option<(f64, f64)>,
    /// Set apart, such as the leading one.
    pub strong: bool,
}

/// Height of a row.
const ROW: f32 = 19.0;
/// Height of a bar.
const BAR: f32 = 10.0;
/// Room between names, bars and values.
const GAP: f32 = 8.0;
/// Largest part of the width that names take.
const NAMES: f32 = 0.45;
/// Height of a name that stands above its bar.
const NAME: f32 = 12.0;
/// Largest part of the width that values take beside bar and name.
const VALUES: f32 = 0.3;
/// The same where the names stand above: a shorter bar is read, a number cut is not.
const VALUES_ALONE: f32 = 0.7;

impl BarChart {
    /// The chart as a drawing.
    pub fn draw(&self, set: &mut Typesetter) -> Drawing {
        // Where a name or a number would be cut beside its bar, all names stand above theirs.
        let above = self.bars.iter().any(|bar| {
            let mut wide = |words: &str| set.width(face(bar.strong), LABEL_SIZE, words);
            wide(&bar.label) > self.width * NAMES || wide(&bar.text) > self.width * VALUES
        });
        let row = if above { NAME + ROW } else { ROW };
        #[allow(clippy::cast_precision_loss)]
        let height = (self.bars.len().max(1) as f32) * row;
        let mut drawing = Drawing::new(self.width, height, self.description.clone());
        let widest = |set: &mut Typesetter, of: fn(&Bar) -> &str, limit: f32| {
            self.bars
                .iter()
                .map(|bar| set.width(face(bar.strong), LABEL_SIZE, of(bar)))
                .fold(0.0, f32::max)
                .min(self.width * limit)
        };
        let names = widest(set, |bar| &bar.label, NAMES) + 0.5;
        let values = widest(
            set,
            |bar| &bar.text,
            if above { VALUES_ALONE } else { VALUES },
        ) + 0.5;
        let (names, left) = if above {
            (self.width, 0.0)
        } else {
            (names, names + GAP)
        };
        let room = (self.width - left - GAP - values).max(1.0);
        let full = self.full_value();
        let mut y = 0.0;
        for bar in &self.bars {
            let middle = y + row - ROW / 2.0;
            let base = middle + 3.0;
            let name_base = if above { y + NAME - 2.0 } else { base };
            let strong = |style: LabelStyle| LabelStyle {
                strong: bar.strong,
                ..style
            };
            let name = set.fit(face(bar.strong), LABEL_SIZE, &bar.label, names);
            drawing.label(
                Point::new(0.0, name_base),
                name,
                strong(LabelStyle::plain(Anchor::Start)),
            );
            let length = part(bar.value, 0.0, full) * room;
            let role = if bar.strong {
                Role::Primary
            } else {
                Role::Muted
            };
            let fill = |at, width, role| Shape::Box {
                at,
                width,
                height: BAR,
                radius: 0.0,
                fill: Some(role),
                stroke: None,
            };
            let at = Point::new(left, middle - BAR / 2.0);
            drawing.push(fill(at, room, Role::Surface));
            if length > 0.0 {
                drawing.push(fill(at, length.max(0.8), role));
            }
            if let Some((low, high)) = bar.interval {
                let (from, to) = (
                    left + part(low, 0.0, full) * room,
                    left + part(high, 0.0, full) * room,
                );
                // Below it a line of the paper, so that it is seen on a bar as dark as itself.
                for stroke in [
                    Stroke::solid(Role::Paper, 2.4),
                    Stroke::solid(Role::Label, 0.9),
                ] {
                    drawing.line(Point::new(from, middle), Point::new(to, middle), stroke);
                    for x in [from, to] {
                        let (top, bottom) =
                            (Point::new(x, middle - 2.5), Point::new(x, middle + 2.5));
                        drawing.line(top, bottom, stroke);
                    }
                }
            }
            let text = set.fit(face(bar.strong), LABEL_SIZE, &bar.text, values);
            let at = Point::new(left + room + GAP, base);
            drawing.label(at, text, strong(LabelStyle::plain(Anchor::Start)));
            y += row;
        }
        drawing
    }

    fn full_value(&self) -> f64 {
        let largest = self
            .bars
            .iter()
            .flat_map(|bar| [bar.value, bar.interval.map_or(0.0, |interval| interval.1)])
            .filter(|value| value.is_finite())
            .fold(0.0, f64::max);
        match self.full {
            Some(full) if full.is_finite() && full > 0.0 => full,
            _ if largest > 0.0 => largest,
            _ => 1.0,
        }
    }
}

fn face(strong: bool) -> Face {
    if strong {
        Face::SemiBold
    } else {
        Face::Regular
    }
}
