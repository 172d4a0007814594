//! Page items as printpdf operations. The page's origin moves from the top left
//! to the bottom left here and nowhere else.

use std::{collections::BTreeMap, sync::Arc};

use printpdf::{
    Actions, BorderArray, Codepoint, Color, ColorArray, CurTransMat, DictItem, ExternalStream,
    ExternalXObject, HighlightingMode, Line, LineCapStyle, LineDashPattern, LineJoinStyle,
    LinePoint, LinkAnnotation, Op, PaintMode, PdfFontHandle, Point, Polygon, PolygonRing, Pt, Px,
    Rect, Rgb, TextItem, WindingOrder, XObject, XObjectId, XObjectMap, XObjectTransform,
};

use super::font::{Fonts, font_id};
use crate::report::{
    layout::display::{Area, Ink, Item, Leg, Link, Page, Pen, Run},
    photo::{Encoding, Photo},
};

/// Dash and gap, points.
const DASHES: [f32; 2] = [3.5, 2.5];

pub(super) fn page(page: &Page, height: f32, fonts: &Fonts, pictures: &mut Pictures) -> Vec<Op> {
    let mut painter = Painter {
        height,
        ops: Vec::new(),
        ink: None,
    };
    for item in &page.items {
        match item {
            Item::Run(run) => painter.run(run, fonts),
            Item::Fill { area, ink } => painter.fill(area, *ink),
            Item::Path {
                legs,
                closed,
                fill,
                pen,
            } => painter.path(legs, *closed, *fill, *pen),
            Item::Picture { area, photo } => painter.picture(area, photo, pictures),
        }
    }
    for link in &page.links {
        painter.link(link);
    }
    painter.ops
}

/// Hundredths of a point are finer than any printer, and short to write.
fn round(value: f32) -> f32 {
    (value * 100.0).round() / 100.0
}

fn colour(Ink(red, green, blue): Ink) -> Color {
    let part = |value: u8| (f32::from(value) / 255.0 * 1000.0).round() / 1000.0;
    Color::Rgb(Rgb {
        r: part(red),
        g: part(green),
        b: part(blue),
        icc_profile: None,
    })
}

struct Painter {
    height: f32,
    ops: Vec<Op>,
    /// Fill colour in force.
    ink: Option<Ink>,
}

impl Painter {
    fn point(&self, x: f32, y: f32) -> Point {
        Point {
            x: Pt(round(x)),
            y: Pt(round(self.height - y)),
        }
    }

    fn rect(&self, area: &Area) -> Rect {
        Rect {
            x: Pt(round(area.x)),
            y: Pt(round(self.height - area.bottom())),
            width: Pt(round(area.width)),
            height: Pt(round(area.height)),
            mode: Some(PaintMode::Fill),
            winding_order: None,
        }
    }

    fn fill_with(&mut self, ink: Ink) {
        if self.ink != Some(ink) {
            self.ops.push(Op::SetFillColor { col: colour(ink) });
            self.ink = Some(ink);
        }
    }

    fn run(&mut self, run: &Run, fonts: &Fonts) {
        self.fill_with(run.ink);
        self.ops.push(Op::StartTextSection);
        let font = PdfFontHandle::External(font_id(run.face));
        self.ops.push(Op::SetFont {
            font,
            size: Pt(round(run.size)),
        });
        self.ops.push(Op::SetTextCursor {
            pos: self.point(run.x, run.y),
        });
        let mut items = Vec::new();
        let mut rise = 0.0;
        for glyph in &run.glyphs {
            let Some(coded) = fonts.code(run.face, glyph) else {
                continue;
            };
            if (glyph.shift_y - rise).abs() > 0.5 {
                self.show(&mut items);
                rise = glyph.shift_y;
                self.ops.push(Op::SetLineOffset {
                    multiplier: round(rise * run.size / 1000.0),
                });
            }
            if glyph.shift_x.abs() > 0.5 {
                items.push(TextItem::Offset(-glyph.shift_x));
            }
            let offset = coded.width - glyph.advance + glyph.shift_x;
            let offset = if offset.abs() > 0.5 { offset } else { 0.0 };
            let code = Codepoint::with_cid(coded.number, offset, coded.character.to_string());
            items.push(TextItem::GlyphIds(vec![code]));
        }
        self.show(&mut items);
        if rise.abs() > 0.0 {
            self.ops.push(Op::SetLineOffset { multiplier: 0.0 });
        }
        self.ops.push(Op::EndTextSection);
    }

    fn show(&mut self, items: &mut Vec<TextItem>) {
        if !items.is_empty() {
            self.ops.push(Op::ShowText {
                items: std::mem::take(items),
            });
        }
    }

    fn fill(&mut self, area: &Area, ink: Ink) {
        self.fill_with(ink);
        self.ops.push(Op::DrawRectangle {
            rectangle: self.rect(area),
        });
    }

    fn pen(&mut self, pen: Pen) {
        self.ops.push(Op::SetOutlineColor {
            col: colour(pen.ink),
        });
        self.ops.push(Op::SetOutlineThickness {
            pt: Pt(round(pen.width)),
        });
        let dash = if pen.dashed {
            LineDashPattern::new(0.0, &DASHES)
        } else {
            LineDashPattern::solid()
        };
        self.ops.push(Op::SetLineDashPattern { dash });
        let (cap, join) = if pen.round && !pen.dashed {
            (LineCapStyle::Round, LineJoinStyle::Round)
        } else {
            (LineCapStyle::Butt, LineJoinStyle::Miter)
        };
        self.ops.push(Op::SetLineCapStyle { cap });
        self.ops.push(Op::SetLineJoinStyle { join });
    }

    fn path(&mut self, legs: &[Leg], closed: bool, fill: Option<Ink>, pen: Option<Pen>) {
        let mut points = Vec::with_capacity(legs.len());
        for leg in legs {
            match *leg {
                Leg::Move(x, y) | Leg::Line(x, y) => {
                    points.push(LinePoint {
                        p: self.point(x, y),
                        bezier: false,
                    });
                }
                Leg::Curve([first, second, end]) => {
                    for (x, y) in [first, second] {
                        points.push(LinePoint {
                            p: self.point(x, y),
                            bezier: true,
                        });
                    }
                    points.push(LinePoint {
                        p: self.point(end.0, end.1),
                        bezier: false,
                    });
                }
            }
        }
        if let Some(pen) = pen {
            self.pen(pen);
        }
        let fill = fill.filter(|_| closed);
        if let Some(ink) = fill {
            self.fill_with(ink);
        }
        let mode = match (fill, pen) {
            (Some(_), Some(_)) => PaintMode::FillStroke,
            (Some(_), None) => PaintMode::Fill,
            (None, Some(_)) => PaintMode::Stroke,
            (None, None) => return,
        };
        if fill.is_none() {
            self.ops.push(Op::DrawLine {
                line: Line {
                    points,
                    is_closed: closed,
                },
            });
        } else {
            let rings = vec![PolygonRing { points }];
            let polygon = Polygon {
                rings,
                mode,
                winding_order: WindingOrder::NonZero,
            };
            self.ops.push(Op::DrawPolygon { polygon });
        }
    }

    fn picture(&mut self, area: &Area, photo: &Arc<Photo>, pictures: &mut Pictures) {
        let id = pictures.id(photo);
        // Where the corners of the stored picture come to lie on the upright
        // unit square: mirrored first, then turned clockwise.
        let corner = |(mut u, mut v): (f32, f32)| {
            if photo.orientation().mirrored {
                u = 1.0 - u;
            }
            for _ in 0..photo.orientation().quarters % 4 {
                (u, v) = (v, 1.0 - u);
            }
            (
                area.x + u * area.width,
                self.height - area.bottom() + v * area.height,
            )
        };
        let (origin, along, up) = (corner((0.0, 0.0)), corner((1.0, 0.0)), corner((0.0, 1.0)));
        let matrix = CurTransMat::Raw([
            along.0 - origin.0,
            along.1 - origin.1,
            up.0 - origin.0,
            up.1 - origin.1,
            origin.0,
            origin.1,
        ]);
        let transform = XObjectTransform {
            no_auto_scale: true,
            ..Default::default()
        };
        self.ops.extend([
            Op::SaveGraphicsState,
            Op::SetTransformationMatrix { matrix },
            Op::UseXobject { id, transform },
            Op::RestoreGraphicsState,
        ]);
    }

    fn link(&mut self, link: &Link) {
        let link = LinkAnnotation::new(
            self.rect(&link.area),
            Actions::uri(link.address.clone()),
            Some(BorderArray::Solid([0.0; 3])),
            Some(ColorArray::Transparent),
            Some(HighlightingMode::Invert),
        );
        self.ops.push(Op::LinkAnnotation { link });
    }
}

/// The photos of one file, each kept once.
#[derive(Default)]
pub(super) struct Pictures {
    photos: Vec<Arc<Photo>>,
}

impl Pictures {
    fn id(&mut self, photo: &Arc<Photo>) -> XObjectId {
        let known = self
            .photos
            .iter()
            .position(|other| Arc::ptr_eq(other, photo));
        let index = known.unwrap_or_else(|| {
            self.photos.push(Arc::clone(photo));
            self.photos.len() - 1
        });
        XObjectId(format!("Photo{index:04}"))
    }

    pub fn register(self, map: &mut XObjectMap) {
        for (index, photo) in self.photos.into_iter().enumerate() {
            let id = XObjectId(format!("Photo{index:04}"));
            map.map.insert(id, XObject::External(stream(&photo)));
        }
    }
}

fn stream(photo: &Photo) -> ExternalXObject {
    let name = |text: &str| DictItem::Name(text.as_bytes().to_vec());
    let (space, filter) = match photo.encoding {
        Encoding::Jpeg { grey: true } => ("DeviceGray", Some("DCTDecode")),
        Encoding::Jpeg { grey: false } => ("DeviceRGB", Some("DCTDecode")),
        Encoding::Rgb => ("DeviceRGB", None),
    };
    let mut dict = BTreeMap::from([
        ("Type".to_owned(), name("XObject")),
        ("Subtype".to_owned(), name("Image")),
        ("Width".to_owned(), DictItem::Int(i64::from(photo.width))),
        ("Height".to_owned(), DictItem::Int(i64::from(photo.height))),
        ("ColorSpace".to_owned(), name(space)),
        ("BitsPerComponent".to_owned(), DictItem::Int(8)),
    ]);
    if let Some(filter) = filter {
        dict.insert("Filter".to_owned(), name(filter));
    }
    ExternalXObject {
        stream: ExternalStream {
            dict,
            content: photo.bytes.clone(),
            compress: filter.is_none(),
        },
        width: Some(Px(usize::try_from(photo.width).unwrap_or(0))),
        height: Some(Px(usize::try_from(photo.height).unwrap_or(0))),
        dpi: None,
    }
}
