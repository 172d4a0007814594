//! Lines over an axis, with the band in which they are expected.

use super::{
    Anchor, Drawing, LABEL_SIZE, LabelStyle, Point, Role, Shape, Stroke, Ticks, legend::Legend,
    nice_ticks, path::wrap,
};
use crate::report::fonts::{Face, Typesetter};

/// A chart of one or more lines.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LineChart {
    /// Width, points.
    pub width: f32,
    /// Height, points; more where the legend needs it.
    pub height: f32,
    /// What it shows, for those who cannot see it.
    pub description: String,
    /// Words at the horizontal axis.
    pub x_label: String,
    /// Words at the vertical axis.
    pub y_label: String,
    /// Own marks of the horizontal axis (such as months); round numbers else.
    pub x_marks: Vec<(f64, String)>,
    /// Lines and dots.
    pub series: Vec<Series>,
    /// Expected ranges, behind the lines.
    pub bands: Vec<Band>,
    /// Horizontal limits with their names.
    pub limits: Vec<(f64, String)>,
}

/// One line or set of dots.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    /// Name in the legend.
    pub name: String,
    /// The points; those that are no numbers are left out.
    pub points: Vec<(f64, f64)>,
    /// How it is drawn.
    pub mark: SeriesMark,
    /// What it is for.
    pub role: Role,
}

/// How a series is drawn. They differ in shape, not in colour alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SeriesMark {
    /// An unbroken line.
    Line,
    /// A dashed line.
    Dashes,
    /// A dot for each point.
    Dots,
    /// An open ring for each point.
    Rings,
}

impl SeriesMark {
    /// The line through the points; none for marks at each point.
    pub(super) fn stroke(self, role: Role) -> Option<Stroke> {
        match self {
            Self::Line => Some(Stroke::solid(role, 1.6)),
            Self::Dashes => Some(Stroke::dashed(role, 1.4)),
            Self::Dots | Self::Rings => None,
        }
    }

    /// The mark at one point: a ring where it is open, a dot else.
    pub(super) fn spot(self, centre: Point, role: Role) -> Shape {
        let (radius, fill, stroke) = match self {
            Self::Rings => (2.8, Role::Paper, Stroke::solid(role, 1.3)),
            Self::Line | Self::Dashes | Self::Dots => (2.6, role, Stroke::solid(Role::Paper, 0.8)),
        };
        Shape::Circle {
            centre,
            radius,
            fill: Some(fill),
            stroke: Some(stroke),
        }
    }
}

/// A range along the horizontal axis.
#[derive(Debug, Clone, PartialEq)]
pub struct Band {
    /// Name in the legend.
    pub name: String,
    /// Place, low end, high end.
    pub points: Vec<(f64, f64, f64)>,
}

/// Room between the axis and its words.
const PAD: f32 = 5.0;
/// Height of a line of words.
pub(super) const ROW: f32 = 13.0;
/// Rows of the legend that the height has room for.
const LEGEND_ROWS: f32 = 3.0;
/// Most lines of words at an axis.
const LABEL_LINES: usize = 3;
/// Room right of the axis.
const BESIDE: f32 = 10.0;

impl LineChart {
    /// The chart as a drawing.
    pub fn draw(&self, set: &mut Typesetter) -> Drawing {
        let legend = Legend::of(self, set);
        // Words of an axis go over several lines where one is too narrow.
        let mut said = |label: &str| {
            let style = (Face::Regular, LABEL_SIZE);
            wrap(set, label, style, self.width - BESIDE, LABEL_LINES)
        };
        let (y_words, x_words) = (said(&self.y_label), said(&self.x_label));
        #[allow(clippy::cast_precision_loss)]
        let [y_rows, x_rows] = [&y_words, &x_words].map(|lines| lines.len().max(1) as f32);
        let mut words = |text: &str| set.width(Face::Regular, LABEL_SIZE, text);
        let y_ticks = self.y_ticks();
        let gutter = y_ticks
            .values
            .iter()
            .map(|value| words(&y_ticks.label(*value)))
            .fold(0.0, f32::max);
        let rows = legend.rows();
        // A legend that runs over many lines takes nothing from the picture.
        let more = (rows - LEGEND_ROWS).max(0.0) + y_rows + x_rows - 2.0;
        let height = self.height + ROW * more;
        let mut drawing = Drawing::new(self.width, height, self.description.clone());
        let top = ROW * (y_rows + rows) + 6.0;
        let bottom = height - ROW * (1.0 + x_rows) - 4.0;
        let (left, right) = (gutter + PAD + 2.0, self.width - BESIDE);
        let (x_low, x_high) = self.x_range();
        let plot = Plot {
            left,
            right: right.max(left + 1.0),
            top,
            bottom: bottom.max(top + 1.0),
            x_low,
            x_high,
            y_low: y_ticks.low(),
            y_high: y_ticks.high(),
        };
        legend.paint(&mut drawing, y_rows);
        let mut at = Point::new(0.0, ROW - 3.0);
        for line in y_words {
            drawing.label(at, line, LabelStyle::soft(Anchor::Start));
            at.y += ROW;
        }
        self.paint_bands(&mut drawing, &plot);
        for value in &y_ticks.values {
            let y = plot.y(*value);
            let grid = Stroke::solid(Role::Grid, 0.6);
            drawing.line(Point::new(plot.left, y), Point::new(plot.right, y), grid);
            let at = Point::new(plot.left - PAD, y + 3.0);
            drawing.label(at, y_ticks.label(*value), LabelStyle::soft(Anchor::End));
        }
        self.paint_x_axis(&mut drawing, &plot, &x_words, &mut words);
        self.paint_limits(&mut drawing, &plot);
        self.paint_series(&mut drawing, &plot);
        drawing
    }

    fn y_ticks(&self) -> Ticks {
        let values = self
            .series
            .iter()
            .flat_map(|series| series.points.iter().map(|point| point.1))
            .chain(
                self.bands
                    .iter()
                    .flat_map(|band| band.points.iter().flat_map(|(_, low, high)| [*low, *high])),
            )
            .chain(self.limits.iter().map(|limit| limit.0));
        let (low, high) = range(values);
        // A limit at the very edge would be taken for the axis.
        let margin = if self.limits.is_empty() {
            0.0
        } else {
            (high - low) * 0.03
        };
        nice_ticks(low - margin, high + margin, 5)
    }

    fn x_range(&self) -> (f64, f64) {
        let values = self
            .series
            .iter()
            .flat_map(|series| series.points.iter().map(|point| point.0))
            .chain(
                self.bands
                    .iter()
                    .flat_map(|band| band.points.iter().map(|point| point.0)),
            )
            .chain(self.x_marks.iter().map(|mark| mark.0));
        let (low, high) = range(values);
        if self.x_marks.is_empty() {
            let ticks = nice_ticks(low, high, 6);
            return (ticks.low(), ticks.high());
        }
        if high - low > 0.0 {
            (low, high)
        } else {
            (low - 0.5, high + 0.5)
        }
    }

    fn paint_bands(&self, drawing: &mut Drawing, plot: &Plot) {
        for band in &self.bands {
            let sane = band
                .points
                .iter()
                .filter(|(x, low, high)| x.is_finite() && low.is_finite() && high.is_finite());
            let upper = sane.clone().map(|(x, _, high)| plot.at(*x, *high));
            let lower = sane.map(|(x, low, _)| plot.at(*x, *low)).rev();
            let points: Vec<Point> = upper.chain(lower).collect();
            drawing.push(Shape::Polygon {
                points,
                fill: Some(Role::Band),
                stroke: None,
            });
        }
    }

    fn paint_x_axis(
        &self,
        drawing: &mut Drawing,
        plot: &Plot,
        label: &[String],
        words: &mut impl FnMut(&str) -> f32,
    ) {
        let axis = Stroke::solid(Role::Axis, 0.9);
        drawing.line(
            Point::new(plot.left, plot.bottom),
            Point::new(plot.right, plot.bottom),
            axis,
        );
        let ticks = nice_ticks(plot.x_low, plot.x_high, 6);
        let marks: Vec<(f64, String)> = if self.x_marks.is_empty() {
            ticks
                .values
                .iter()
                .map(|value| (*value, ticks.label(*value)))
                .collect()
        } else {
            self.x_marks.clone()
        };
        let mut taken = f32::NEG_INFINITY;
        for (value, text) in marks {
            let x = plot.x(value);
            drawing.line(
                Point::new(x, plot.bottom),
                Point::new(x, plot.bottom + 3.0),
                axis,
            );
            let half = words(&text) / 2.0;
            // The drawing holds every label inside; so must this reckoning.
            let middle = x.min(self.width - half).max(half);
            if middle - half < taken + 4.0 {
                continue;
            }
            taken = middle + half;
            let at = Point::new(middle, plot.bottom + ROW);
            drawing.label(at, text, LabelStyle::soft(Anchor::Middle));
        }
        let mut at = Point::new(plot.right, drawing.height - 3.0);
        for line in label.iter().rev() {
            drawing.label(at, line, LabelStyle::soft(Anchor::End));
            at.y -= ROW;
        }
    }

    fn paint_limits(&self, drawing: &mut Drawing, plot: &Plot) {
        for (value, _) in self.limits.iter().filter(|limit| limit.0.is_finite()) {
            let y = plot.y(*value);
            let stroke = Stroke::dashed(Role::Limit, 1.0);
            drawing.line(Point::new(plot.left, y), Point::new(plot.right, y), stroke);
        }
    }

    fn paint_series(&self, drawing: &mut Drawing, plot: &Plot) {
        for series in &self.series {
            let points: Vec<Point> = series
                .points
                .iter()
                .filter(|(x, y)| x.is_finite() && y.is_finite())
                .map(|(x, y)| plot.at(*x, *y))
                .collect();
            match series.mark.stroke(series.role) {
                Some(stroke) => drawing.push(Shape::Polyline { points, stroke }),
                None => {
                    for centre in points {
                        drawing.push(series.mark.spot(centre, series.role));
                    }
                }
            }
        }
    }
}

/// From the data to the drawing.
struct Plot {
    left: f32,
    right: f32,
    top: f32,
    bottom: f32,
    x_low: f64,
    x_high: f64,
    y_low: f64,
    y_high: f64,
}

impl Plot {
    fn x(&self, value: f64) -> f32 {
        self.left + part(value, self.x_low, self.x_high) * (self.right - self.left)
    }

    fn y(&self, value: f64) -> f32 {
        self.bottom - part(value, self.y_low, self.y_high) * (self.bottom - self.top)
    }

    fn at(&self, x: f64, y: f64) -> Point {
        Point::new(self.x(x), self.y(y))
    }
}

/// How far along a range a value lies, held within it.
#[allow(clippy::cast_possible_truncation)]
pub(super) fn part(value: f64, low: f64, high: f64) -> f32 {
    let part = (value - low) / (high - low);
    if part.is_finite() {
        part.clamp(0.0, 1.0) as f32
    } else {
        0.0
    }
}

fn range(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values
        .filter(|value| value.is_finite())
        .fold(None, |range: Option<(f64, f64)>, value| {
            let (low, high) = range.unwrap_or((value, value));
            Some((low.min(value), high.max(value)))
        })
        .unwrap_or((0.0, 1.0))
}
