//! A small vocabulary of vector drawing, and the charts built from it.
//!
//! A [`Drawing`] names what each shape is for (its [`Role`]), not its colour:
//! the page maker and a screen each give the roles their own colours. The same
//! drawing goes into a PDF and, as shapes, to a screen.

mod bars;
mod legend;
mod lines;
mod path;
mod ticks;

use serde::Serialize;
use ts_rs::TS;

pub use bars::{Bar, BarChart};
pub use lines::{Band, LineChart, Series, SeriesMark};
pub use path::{Chain, ChainBox};
pub use ticks::{Ticks, nice_ticks};

/// A vector drawing. Lengths in points, origin top left, y downward.
#[derive(Debug, Clone, PartialEq, Default, Serialize, TS)]
pub struct Drawing {
    /// Width.
    pub width: f32,
    /// Height.
    pub height: f32,
    /// What it shows, for those who cannot see it.
    pub description: String,
    /// Shapes, painted in this order.
    pub items: Vec<Shape>,
}

/// A point: x to the right, y downward.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, TS)]
pub struct Point {
    /// Distance from the left edge.
    pub x: f32,
    /// Distance from the top edge.
    pub y: f32,
}

impl Point {
    /// A point from its coordinates.
    #[must_use]
    pub fn new(x: f32, y: f32) -> Self {
        Self { x, y }
    }
}

/// What a shape is for. A theme gives each role its colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(rename_all = "kebab-case")]
pub enum Role {
    /// Words and figures.
    Label,
    /// Words that accompany.
    SoftLabel,
    /// Axis lines and frames.
    Axis,
    /// Guide lines behind the data.
    Grid,
    /// The main data.
    Primary,
    /// Data compared with the main data.
    Secondary,
    /// What was measured.
    Measured,
    /// The range in which a value is expected.
    Band,
    /// A limit that must not be crossed.
    Limit,
    /// Data that stands behind the main data.
    Muted,
    /// Filled quiet area.
    Surface,
    /// The paper itself, to cover what lies below.
    Paper,
}

impl Role {
    /// Name used for SVG classes.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Label => "label",
            Self::SoftLabel => "soft-label",
            Self::Axis => "axis",
            Self::Grid => "grid",
            Self::Primary => "primary",
            Self::Secondary => "secondary",
            Self::Measured => "measured",
            Self::Band => "band",
            Self::Limit => "limit",
            Self::Muted => "muted",
            Self::Surface => "surface",
            Self::Paper => "paper",
        }
    }
}

/// How a line is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, TS)]
pub struct Stroke {
    /// What it is for.
    pub role: Role,
    /// Width.
    pub width: f32,
    /// Dashed, so that lines differ without colour.
    pub dashed: bool,
}

impl Stroke {
    /// An unbroken line.
    #[must_use]
    pub fn solid(role: Role, width: f32) -> Self {
        Self {
            role,
            width,
            dashed: false,
        }
    }

    /// A dashed line.
    #[must_use]
    pub fn dashed(role: Role, width: f32) -> Self {
        Self {
            role,
            width,
            dashed: true,
        }
    }
}

/// Where a label's anchor lies in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(rename_all = "kebab-case")]
pub enum Anchor {
    /// At its left end.
    Start,
    /// In its middle.
    Middle,
    /// At its right end.
    End,
}

/// One shape.
#[derive(Debug, Clone, PartialEq, Serialize, TS)]
#[serde(rename_all = "kebab-case", tag = "shape")]
#[ts(rename_all = "kebab-case", tag = "shape")]
pub enum Shape {
    /// An open line through points.
    Polyline {
        /// The points.
        points: Vec<Point>,
        /// How it is drawn.
        stroke: Stroke,
    },
    /// A closed area.
    Polygon {
        /// The corners.
        points: Vec<Point>,
        /// Fill.
        fill: Option<Role>,
        /// Outline.
        stroke: Option<Stroke>,
    },
    /// A rectangle.
    Box {
        /// Top left corner.
        at: Point,
        /// Width.
        width: f32,
        /// Height.
        height: f32,
        /// Radius of the corners.
        radius: f32,
        /// Fill.
        fill: Option<Role>,
        /// Outline.
        stroke: Option<Stroke>,
    },
    /// A circle.
    Circle {
        /// Centre.
        centre: Point,
        /// Radius.
        radius: f32,
        /// Fill.
        fill: Option<Role>,
        /// Outline.
        stroke: Option<Stroke>,
    },
    /// A line with a head at its end.
    Arrow {
        /// The points; the head is at the last.
        points: Vec<Point>,
        /// How it is drawn.
        stroke: Stroke,
    },
    /// A line of text.
    Label {
        /// Anchor on the base line.
        at: Point,
        /// Words.
        text: String,
        /// Size of the letters.
        size: f32,
        /// Where the anchor lies in the words.
        anchor: Anchor,
        /// Semi-bold.
        strong: bool,
        /// What it is for.
        role: Role,
    },
}

impl Drawing {
    /// An empty drawing.
    #[must_use]
    pub fn new(width: f32, height: f32, description: impl Into<String>) -> Self {
        Self {
            width,
            height,
            description: description.into(),
            items: Vec::new(),
        }
    }

    /// Adds a shape.
    pub fn push(&mut self, shape: Shape) {
        self.items.push(shape);
    }

    /// Adds a straight line.
    pub fn line(&mut self, from: Point, to: Point, stroke: Stroke) {
        self.push(Shape::Polyline {
            points: vec![from, to],
            stroke,
        });
    }

    /// Adds a line of text.
    pub fn label(&mut self, at: Point, text: impl Into<String>, style: LabelStyle) {
        let LabelStyle {
            size,
            anchor,
            strong,
            role,
        } = style;
        self.push(Shape::Label {
            at,
            text: text.into(),
            size,
            anchor,
            strong,
            role,
        });
    }
}

/// How a label is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LabelStyle {
    /// Size of the letters.
    pub size: f32,
    /// Where the anchor lies in the words.
    pub anchor: Anchor,
    /// Semi-bold.
    pub strong: bool,
    /// What it is for.
    pub role: Role,
}

impl LabelStyle {
    /// Quiet words at a chart's edge.
    #[must_use]
    pub fn soft(anchor: Anchor) -> Self {
        Self {
            size: LABEL_SIZE,
            anchor,
            strong: false,
            role: Role::SoftLabel,
        }
    }

    /// Words of the data.
    #[must_use]
    pub fn plain(anchor: Anchor) -> Self {
        Self {
            size: LABEL_SIZE,
            anchor,
            strong: false,
            role: Role::Label,
        }
    }
}

/// Size of letters in charts, points.
pub(crate) const LABEL_SIZE: f32 = 8.5;

/// The points of the head of an arrow that ends at `tip`, coming from `from`.
#[must_use]
pub fn arrow_head(from: Point, tip: Point, stroke_width: f32) -> Option<[Point; 3]> {
    let (dx, dy) = (tip.x - from.x, tip.y - from.y);
    let length = dx.hypot(dy);
    if !length.is_finite() || length <= f32::EPSILON {
        return None;
    }
    let (ux, uy) = (dx / length, dy / length);
    let long = 3.5 + 2.0 * stroke_width;
    let half = 0.4 * long;
    let base = Point::new(tip.x - ux * long, tip.y - uy * long);
    Some([
        Point::new(base.x - uy * half, base.y + ux * half),
        tip,
        Point::new(base.x + uy * half, base.y - ux * half),
    ])
}
