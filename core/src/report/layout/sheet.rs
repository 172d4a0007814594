//! Measures, sizes and colours of the page. One place for the look.

use super::display::{Area, Ink};
use crate::report::{
    chart::Role,
    document::{Density, PageSize, Tone},
    fonts::Face,
};

/// Running text.
pub const TEXT: Ink = Ink(0x1f, 0x27, 0x2e);
/// Accompanying text.
pub const SOFT: Ink = Ink(0x5a, 0x66, 0x70);
/// Headings and links.
pub const DEEP: Ink = Ink(0x1d, 0x4a, 0x53);
/// Hairlines.
pub const HAIR: Ink = Ink(0xc8, 0xd0, 0xd4);
/// Caution: sign and word.
pub const AMBER: Ink = Ink(0x8a, 0x4b, 0x08);
/// Caution: ground.
pub const AMBER_PALE: Ink = Ink(0xfb, 0xf3, 0xe4);
/// Note: ground.
pub const SLATE_PALE: Ink = Ink(0xf0, 0xf4, 0xf5);
/// The paper.
pub const PAPER: Ink = Ink(0xff, 0xff, 0xff);

/// Colour of a chart role on paper.
#[must_use]
pub fn ink_of(role: Role) -> Ink {
    match role {
        Role::Label => TEXT,
        Role::SoftLabel => SOFT,
        Role::Axis => Ink(0x7b, 0x87, 0x90),
        Role::Grid => Ink(0xdf, 0xe4, 0xe7),
        Role::Primary => DEEP,
        Role::Secondary => Ink(0x7a, 0x5c, 0x8e),
        Role::Measured => Ink(0xb0, 0x4a, 0x2f),
        Role::Band => Ink(0xd5, 0xe4, 0xe3),
        Role::Limit => AMBER,
        Role::Muted => Ink(0x9f, 0xb2, 0xb8),
        Role::Surface => SLATE_PALE,
        Role::Paper => PAPER,
    }
}

/// A style of text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Style {
    /// Face.
    pub face: Face,
    /// Size of the letters, points.
    pub size: f32,
    /// Distance of base lines, points.
    pub leading: f32,
    /// Colour.
    pub ink: Ink,
}

impl Style {
    const fn new(face: Face, size: f32, leading: f32, ink: Ink) -> Self {
        Self {
            face,
            size,
            leading,
            ink,
        }
    }

    /// The same style in another colour.
    #[must_use]
    pub const fn inked(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }

    /// The same style in another face.
    #[must_use]
    pub const fn faced(self, face: Face) -> Self {
        Self { face, ..self }
    }
}

/// Running text.
pub const BODY: Style = Style::new(Face::Regular, 10.0, 13.5, TEXT);
/// A name that stands for a signature, larger than the one in print below it.
pub const SIGNED: Style = Style::new(Face::Regular, 17.0, 20.0, TEXT);
/// Text that matters most.
pub const LEAD: Style = Style::new(Face::Regular, 12.0, 17.0, TEXT);
/// Method, sources, remarks.
pub const SMALL: Style = Style::new(Face::Regular, 8.5, 11.5, SOFT);
/// Cells of a table.
pub const CELL: Style = Style::new(Face::Regular, 9.0, 12.0, TEXT);
/// Head of a table.
pub const CELL_HEAD: Style = Style::new(Face::SemiBold, 8.5, 11.5, SOFT);
/// Caption.
pub const CAPTION: Style = Style::new(Face::Italic, 8.5, 11.5, SOFT);
/// Title.
pub const TITLE: Style = Style::new(Face::SemiBold, 21.0, 26.0, DEEP);
/// Line above the title.
pub const OVERLINE: Style = Style::new(Face::Regular, 9.5, 14.0, SOFT);
/// Line below the title.
pub const SUBTITLE: Style = Style::new(Face::Regular, 11.0, 15.0, SOFT);
/// Heading of a section.
pub const SECTION: Style = Style::new(Face::SemiBold, 14.0, 18.0, DEEP);
/// Heading of a part.
pub const PART: Style = Style::new(Face::SemiBold, 11.0, 15.0, TEXT);
/// Heading of a detail.
pub const DETAIL: Style = Style::new(Face::Italic, 10.0, 14.0, TEXT);
/// Head and foot of the page.
pub const EDGE: Style = Style::new(Face::Regular, 8.0, 10.0, SOFT);

/// The style of a paragraph.
#[must_use]
pub fn style_of(tone: Tone) -> Style {
    match tone {
        Tone::Body => BODY,
        Tone::Lead => LEAD,
        Tone::Small => SMALL,
    }
}

/// The page: paper, body, and the lines of head and foot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sheet {
    /// Width of the paper.
    pub width: f32,
    /// Height of the paper.
    pub height: f32,
    /// Where content goes.
    pub body: Area,
    /// Body with head and foot lines.
    pub margins: Area,
}

/// Left and right margin, points.
const SIDE: f32 = 60.0;
/// Room above the body, in which the head line stands.
const HEAD: f32 = 62.0;
/// Room below the body, in which the foot line stands.
const FOOT: f32 = 62.0;
/// How much less a page set closely takes at its sides.
const CLOSER: f32 = 8.0;
/// Distance of head and foot lines from the edge of the paper.
const EDGE_DISTANCE: f32 = 34.0;

impl Sheet {
    /// The page for a paper size, larger by as much as everything on it is to be
    /// made smaller afterwards.
    #[must_use]
    pub fn new(size: PageSize, density: Density) -> Self {
        let (width, height) = size.points();
        let (width, height) = (width / density.scale(), height / density.scale());
        let (side, head, foot) = match density {
            Density::Usual | Density::Snug => (SIDE, HEAD, FOOT),
            Density::Close => (SIDE - CLOSER, HEAD - 0.5 * CLOSER, FOOT - 0.5 * CLOSER),
        };
        let inner = width - 2.0 * side;
        Self {
            width,
            height,
            body: Area {
                x: side,
                y: head,
                width: inner,
                height: height - head - foot,
            },
            margins: Area {
                x: side,
                y: EDGE_DISTANCE,
                width: inner,
                height: height - 2.0 * EDGE_DISTANCE,
            },
        }
    }
}
