//! Vector drawings in the page.

use super::{
    Composer,
    display::{ABOVE, Area, BELOW, Item, Leg, Pen, Run},
    lines::{set_lines, stack},
    list::circle,
    sheet::{CAPTION, ink_of},
    slab::{Keep, Slab, space},
};
use crate::report::{
    chart::{Anchor, Drawing, Point, Role, Shape, Stroke, arrow_head},
    document::{Align, Text},
    fonts::{Face, Typesetter},
};

/// Largest part of the body's height that a figure takes.
const HIGHEST: f32 = 0.8;

impl Composer<'_> {
    pub(super) fn figure(
        &mut self,
        drawing: &Drawing,
        caption: Option<&Text>,
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let (wide, high) = (sane(drawing.width), sane(drawing.height));
        let room = self.sheet.body.height * HIGHEST;
        let scale = (width / wide).min(room / high).min(1.0);
        let mut slab = Slab::gap(high * scale);
        let frame = Area {
            x,
            y: 0.0,
            width: wide * scale,
            height: high * scale,
        };
        let mut canvas = Canvas {
            set: &mut self.set,
            frame,
            scale,
            items: Vec::new(),
        };
        for shape in &drawing.items {
            canvas.paint(shape);
        }
        slab.items = canvas.items;
        let below = self.caption(caption, x, width, 5.0);
        if !below.is_empty() {
            slab.keep = Keep::Next;
        }
        let mut slabs = vec![slab];
        slabs.extend(below);
        space(&mut slabs, 6.0, 12.0);
        slabs
    }

    /// A caption that holds to what stands above it; the caller puts it below.
    pub(super) fn caption(
        &mut self,
        caption: Option<&Text>,
        x: f32,
        width: f32,
        before: f32,
    ) -> Vec<Slab> {
        let Some(caption) = caption.filter(|caption| !caption.is_empty()) else {
            return Vec::new();
        };
        let lines = set_lines(&mut self.set, caption, CAPTION, width);
        let mut slabs = vec![Slab {
            keep: Keep::Next,
            ..Slab::gap(before)
        }];
        slabs.extend(stack(lines, x, width, Align::Start));
        slabs
    }
}

fn sane(length: f32) -> f32 {
    if length.is_finite() {
        length.clamp(1.0, 10_000.0)
    } else {
        1.0
    }
}

struct Canvas<'a> {
    set: &'a mut Typesetter,
    frame: Area,
    scale: f32,
    items: Vec<Item>,
}

impl Canvas<'_> {
    /// A point on the page, held inside the frame.
    fn at(&self, point: Point) -> (f32, f32) {
        let inside = |value: f32, from: f32, length: f32| {
            let value = if value.is_finite() {
                value * self.scale
            } else {
                0.0
            };
            from + value.clamp(0.0, length)
        };
        (
            inside(point.x, self.frame.x, self.frame.width),
            inside(point.y, self.frame.y, self.frame.height),
        )
    }

    fn pen(&self, stroke: Stroke) -> Pen {
        let width = if stroke.width.is_finite() {
            stroke.width.clamp(0.1, 20.0)
        } else {
            1.0
        };
        Pen {
            ink: ink_of(stroke.role),
            width: width * self.scale,
            dashed: stroke.dashed,
            round: true,
        }
    }

    fn path(&mut self, points: &[Point], closed: bool, fill: Option<Role>, stroke: Option<Stroke>) {
        let mut legs = Vec::with_capacity(points.len());
        for point in points {
            let (x, y) = self.at(*point);
            legs.push(if legs.is_empty() {
                Leg::Move(x, y)
            } else {
                Leg::Line(x, y)
            });
        }
        if legs.len() > 1 {
            self.line(legs, closed, fill, stroke);
        }
    }

    fn line(&mut self, legs: Vec<Leg>, closed: bool, fill: Option<Role>, stroke: Option<Stroke>) {
        let pen = stroke.map(|stroke| self.pen(stroke));
        self.items.push(Item::Path {
            legs,
            closed,
            fill: fill.map(ink_of),
            pen,
        });
    }

    fn paint(&mut self, shape: &Shape) {
        match shape {
            Shape::Polyline { points, stroke } => self.path(points, false, None, Some(*stroke)),
            Shape::Polygon {
                points,
                fill,
                stroke,
            } => self.path(points, true, *fill, *stroke),
            Shape::Box {
                at,
                width,
                height,
                radius,
                fill,
                stroke,
            } => {
                let legs = self.rounded(*at, *width, *height, *radius);
                self.line(legs, true, *fill, *stroke);
            }
            Shape::Circle {
                centre,
                radius,
                fill,
                stroke,
            } => {
                let (x, y) = self.at(*centre);
                let reach = (x - self.frame.x)
                    .min(self.frame.right() - x)
                    .min(y - self.frame.y)
                    .min(self.frame.bottom() - y);
                let radius = if radius.is_finite() {
                    radius * self.scale
                } else {
                    0.0
                };
                let legs = circle((x, y), radius.clamp(0.0, reach.max(0.0)));
                self.line(legs, true, *fill, *stroke);
            }
            Shape::Arrow { points, stroke } => {
                self.path(points, false, None, Some(*stroke));
                if let [.., from, tip] = points.as_slice()
                    && let Some(head) = arrow_head(*from, *tip, stroke.width)
                {
                    self.path(&head, true, Some(stroke.role), None);
                }
            }
            Shape::Label {
                at,
                text,
                size,
                anchor,
                strong,
                role,
            } => {
                self.label(*at, text, *size, *anchor, *strong, *role);
            }
        }
    }

    fn rounded(&self, at: Point, width: f32, height: f32, radius: f32) -> Vec<Leg> {
        let (left, top) = self.at(at);
        let (right, bottom) = self.at(Point::new(at.x + width, at.y + height));
        let most = ((right - left).min(bottom - top) / 2.0).max(0.0);
        let r = if radius.is_finite() {
            (radius * self.scale).clamp(0.0, most)
        } else {
            0.0
        };
        if r < 0.1 {
            return vec![
                Leg::Move(left, top),
                Leg::Line(right, top),
                Leg::Line(right, bottom),
                Leg::Line(left, bottom),
            ];
        }
        let k = r * (1.0 - 0.552_285);
        vec![
            Leg::Move(left + r, top),
            Leg::Line(right - r, top),
            Leg::Curve([(right - k, top), (right, top + k), (right, top + r)]),
            Leg::Line(right, bottom - r),
            Leg::Curve([
                (right, bottom - k),
                (right - k, bottom),
                (right - r, bottom),
            ]),
            Leg::Line(left + r, bottom),
            Leg::Curve([(left + k, bottom), (left, bottom - k), (left, bottom - r)]),
            Leg::Line(left, top + r),
            Leg::Curve([(left, top + k), (left + k, top), (left + r, top)]),
        ]
    }

    fn label(
        &mut self,
        at: Point,
        text: &str,
        size: f32,
        anchor: Anchor,
        strong: bool,
        role: Role,
    ) {
        let face = if strong {
            Face::SemiBold
        } else {
            Face::Regular
        };
        let size = if size.is_finite() {
            size.clamp(1.0, 72.0) * self.scale
        } else {
            8.0
        };
        let size = size.min(self.frame.height / (ABOVE + BELOW));
        let text = self.set.fit(face, size, text, self.frame.width);
        if text.trim().is_empty() {
            return;
        }
        let shaped = self.set.shape(face, &text);
        let width = shaped.width * size / 1000.0;
        let (x, y) = self.at(at);
        // The letters, not only their base line, stay inside.
        let y = y
            .min(self.frame.bottom() - BELOW * size)
            .max(self.frame.y + ABOVE * size);
        let x = x - match anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => width / 2.0,
            Anchor::End => width,
        };
        let x = x.min(self.frame.right() - width).max(self.frame.x);
        let ink = ink_of(role);
        let glyphs = shaped.glyphs.clone();
        self.items.push(Item::Run(Run {
            face,
            size,
            ink,
            x,
            y,
            glyphs,
            text,
        }));
    }
}
