//! The display list: pages as positioned glyphs, lines, areas and pictures.
//!
//! Lengths in points, origin at the top left of the page, y downward. Layout is
//! tested on this list; a backend only has to paint it.

use std::sync::Arc;

use crate::report::{
    fonts::{Face, Glyph},
    photo::Photo,
};

/// A colour, red, green and blue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Ink(pub u8, pub u8, pub u8);

/// An upright rectangle.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Area {
    /// Left edge.
    pub x: f32,
    /// Top edge.
    pub y: f32,
    /// Width.
    pub width: f32,
    /// Height.
    pub height: f32,
}

impl Area {
    /// Right edge.
    #[must_use]
    pub fn right(&self) -> f32 {
        self.x + self.width
    }

    /// Bottom edge.
    #[must_use]
    pub fn bottom(&self) -> f32 {
        self.y + self.height
    }

    fn scale(&mut self, by: f32) {
        for length in [&mut self.x, &mut self.y, &mut self.width, &mut self.height] {
            *length *= by;
        }
    }

    /// Whether `other` lies inside, with a tolerance.
    #[must_use]
    pub fn holds(&self, other: &Self, tolerance: f32) -> bool {
        other.x >= self.x - tolerance
            && other.y >= self.y - tolerance
            && other.right() <= self.right() + tolerance
            && other.bottom() <= self.bottom() + tolerance
    }

    /// Whether the two share more than a seam as wide as the tolerance.
    #[must_use]
    pub fn overlaps(&self, other: &Self, tolerance: f32) -> bool {
        self.x + tolerance < other.right()
            && other.x + tolerance < self.right()
            && self.y + tolerance < other.bottom()
            && other.y + tolerance < self.bottom()
    }
}

/// How a line is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pen {
    /// Colour.
    pub ink: Ink,
    /// Width.
    pub width: f32,
    /// Dashed.
    pub dashed: bool,
    /// Round ends and corners, for strokes of a pen.
    pub round: bool,
}

impl Pen {
    /// An unbroken line with square ends.
    #[must_use]
    pub fn solid(ink: Ink, width: f32) -> Self {
        Self {
            ink,
            width,
            dashed: false,
            round: false,
        }
    }

    /// An unbroken line with round ends.
    #[must_use]
    pub fn round(ink: Ink, width: f32) -> Self {
        Self {
            ink,
            width,
            dashed: false,
            round: true,
        }
    }
}

/// Glyphs on one base line in one style.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// Face.
    pub face: Face,
    /// Size of the letters.
    pub size: f32,
    /// Colour.
    pub ink: Ink,
    /// Left end.
    pub x: f32,
    /// Base line.
    pub y: f32,
    /// The glyphs.
    pub glyphs: Vec<Glyph>,
    /// The text they show.
    pub text: String,
}

/// Height of the letters above the base line and depth below it, as parts of
/// the size, that a line makes room for (accented capitals, descenders).
pub const ABOVE: f32 = 0.92;
/// See [`ABOVE`].
pub const BELOW: f32 = 0.26;

impl Run {
    /// Width of all advances.
    #[must_use]
    pub fn width(&self) -> f32 {
        self.glyphs.iter().map(|glyph| glyph.advance).sum::<f32>() * self.size / 1000.0
    }

    /// Box around the letters.
    #[must_use]
    pub fn area(&self) -> Area {
        Area {
            x: self.x,
            y: self.y - ABOVE * self.size,
            width: self.width(),
            height: (ABOVE + BELOW) * self.size,
        }
    }
}

/// A step of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Leg {
    /// Start a new part here.
    Move(f32, f32),
    /// Straight line to here.
    Line(f32, f32),
    /// Curve with two control points to the last point (cubic Bézier).
    Curve([(f32, f32); 3]),
}

/// Something painted.
#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    /// Text.
    Run(Run),
    /// A filled rectangle.
    Fill {
        /// Where.
        area: Area,
        /// Colour.
        ink: Ink,
    },
    /// A path.
    Path {
        /// Its legs.
        legs: Vec<Leg>,
        /// Whether the last point is joined to the first.
        closed: bool,
        /// Fill of closed paths.
        fill: Option<Ink>,
        /// Outline.
        pen: Option<Pen>,
    },
    /// A photo.
    Picture {
        /// Where, upright.
        area: Area,
        /// The photo.
        photo: Arc<Photo>,
    },
}

impl Item {
    /// A straight line.
    #[must_use]
    pub fn line(from: (f32, f32), to: (f32, f32), pen: Pen) -> Self {
        Self::Path {
            legs: vec![Leg::Move(from.0, from.1), Leg::Line(to.0, to.1)],
            closed: false,
            fill: None,
            pen: Some(pen),
        }
    }

    /// Moves the item.
    pub fn shift(&mut self, dx: f32, dy: f32) {
        match self {
            Self::Run(run) => {
                run.x += dx;
                run.y += dy;
            }
            Self::Fill { area, .. } | Self::Picture { area, .. } => {
                area.x += dx;
                area.y += dy;
            }
            Self::Path { legs, .. } => {
                for leg in legs {
                    *leg = match *leg {
                        Leg::Move(x, y) => Leg::Move(x + dx, y + dy),
                        Leg::Line(x, y) => Leg::Line(x + dx, y + dy),
                        Leg::Curve(points) => Leg::Curve(points.map(|(x, y)| (x + dx, y + dy))),
                    };
                }
            }
        }
    }

    /// Makes the item smaller or larger, seen from the page's corner.
    fn scale(&mut self, by: f32) {
        match self {
            Self::Run(run) => {
                for length in [&mut run.x, &mut run.y, &mut run.size] {
                    *length *= by;
                }
            }
            Self::Fill { area, .. } | Self::Picture { area, .. } => area.scale(by),
            Self::Path { legs, pen, .. } => {
                for leg in legs {
                    *leg = match *leg {
                        Leg::Move(x, y) => Leg::Move(x * by, y * by),
                        Leg::Line(x, y) => Leg::Line(x * by, y * by),
                        Leg::Curve(points) => Leg::Curve(points.map(|(x, y)| (x * by, y * by))),
                    };
                }
                if let Some(pen) = pen {
                    pen.width *= by;
                }
            }
        }
    }

    /// Box around the item. Curves count with their control points.
    #[must_use]
    pub fn area(&self) -> Area {
        match self {
            Self::Run(run) => run.area(),
            Self::Fill { area, .. } | Self::Picture { area, .. } => *area,
            Self::Path { legs, .. } => {
                let mut points = Vec::new();
                for leg in legs {
                    match *leg {
                        Leg::Move(x, y) | Leg::Line(x, y) => points.push((x, y)),
                        Leg::Curve(three) => points.extend(three),
                    }
                }
                bounds(&points)
            }
        }
    }
}

fn bounds(points: &[(f32, f32)]) -> Area {
    let Some(&(x, y)) = points.first() else {
        return Area::default();
    };
    let (mut left, mut top, mut right, mut bottom) = (x, y, x, y);
    for &(x, y) in points {
        (left, top) = (left.min(x), top.min(y));
        (right, bottom) = (right.max(x), bottom.max(y));
    }
    Area {
        x: left,
        y: top,
        width: right - left,
        height: bottom - top,
    }
}

/// A place that leads to an address.
#[derive(Debug, Clone, PartialEq)]
pub struct Link {
    /// Where.
    pub area: Area,
    /// The address.
    pub address: String,
}

/// An entry of the outline.
#[derive(Debug, Clone, PartialEq)]
pub struct Bookmark {
    /// Depth, 0 for the outermost.
    pub depth: usize,
    /// Words.
    pub title: String,
    /// Page, counted from 0.
    pub page: usize,
    /// Height on the page.
    pub y: f32,
}

/// A page.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Page {
    /// What is painted, in this order.
    pub items: Vec<Item>,
    /// Its links.
    pub links: Vec<Link>,
}

impl Page {
    /// The text runs.
    pub fn runs(&self) -> impl Iterator<Item = &Run> {
        self.items.iter().filter_map(|item| match item {
            Item::Run(run) => Some(run),
            _ => None,
        })
    }
}

/// A laid-out document.
#[derive(Debug, Clone, PartialEq)]
pub struct Pages {
    /// Width of the paper.
    pub width: f32,
    /// Height of the paper.
    pub height: f32,
    /// The part of each page that content may fill.
    pub body: Area,
    /// The part of each page that head and foot lines may fill, body included.
    pub margins: Area,
    /// The pages.
    pub pages: Vec<Page>,
    /// The outline.
    pub bookmarks: Vec<Bookmark>,
}

impl Pages {
    /// Makes everything smaller or larger, paper included.
    pub(super) fn scale(&mut self, by: f32) {
        self.width *= by;
        self.height *= by;
        self.body.scale(by);
        self.margins.scale(by);
        for page in &mut self.pages {
            page.items.iter_mut().for_each(|item| item.scale(by));
            page.links.iter_mut().for_each(|link| link.area.scale(by));
        }
        for bookmark in &mut self.bookmarks {
            bookmark.y *= by;
        }
    }
}
