//! The parts of the drawing: pipe, flow centre, heat pump, ground.

use super::layout::Layout;
use crate::records::{FlowCentre, GroundKind, System};
use crate::report::chart::{Anchor, Drawing, LabelStyle, Point, Role, Shape, Stroke};
use crate::text::{Args, Catalog};

/// Circuits that are drawn; more are told by their number.
const DRAWN: u32 = 5;

/// What decides how the drawing looks.
pub(super) struct Plan {
    pub flow_centre: Option<FlowCentre>,
    pub strainer: bool,
    pub circulators: usize,
    pub ground: Option<GroundKind>,
    pub circuits: Option<u32>,
}

impl Plan {
    pub(super) fn of(system: &System) -> Self {
        let ground = system.ground.as_ref();
        let circuits: u32 = ground
            .into_iter()
            .flat_map(|ground| &ground.circuits)
            .map(|group| group.count)
            .sum();
        Self {
            flow_centre: system.flow_centre.clone(),
            // Most loops have one, and its drop may be read where it is.
            strainer: system.strainer != Some(false),
            circulators: system.circulators.len().clamp(1, 2),
            ground: ground.and_then(|ground| ground.kind),
            circuits: (circuits > 0).then_some(circuits),
        }
    }
}

/// Draws into a layout, with the words of one kind of reader.
pub(super) struct Draughtsman<'a> {
    pub drawing: &'a mut Drawing,
    pub plan: &'a Plan,
    pub layout: &'a Layout,
    pub catalog: &'a Catalog,
    /// What the messages of the parts begin with.
    pub reader: &'static str,
}

impl Draughtsman<'_> {
    pub(super) fn draw(mut self) {
        let lay = self.layout;
        self.earth();
        self.boxed(lay.centre, "flow-centre");
        self.boxed(lay.unit, "heat-pump");
        // From the ground through the flow centre into the heat pump and back.
        let middle = 0.5 * (lay.unit.0 + lay.unit.1);
        self.pipe(&[
            (lay.back, lay.back_header),
            (lay.back, lay.run),
            (middle, lay.run),
        ]);
        self.pipe(&[
            (middle, lay.run),
            (lay.out, lay.run),
            (lay.out, lay.out_header),
        ]);
        let gap = 0.5 * (lay.centre.1 + lay.unit.0);
        self.arrow((gap - 16.0, lay.run), (gap + 16.0, lay.run));
        self.arrow((lay.out, lay.arrows - 6.0), (lay.out, lay.arrows + 6.0));
        self.arrow((lay.back, lay.arrows + 6.0), (lay.back, lay.arrows - 6.0));
        self.exchanger();
        self.circulators();
        if self.plan.strainer {
            self.strainer();
        }
        self.vessel();
        self.gauge();
        let x = 0.5 * lay.width;
        let indoors = self.text("indoors");
        self.words((x, lay.indoors), Anchor::Middle, indoors);
        let kind = self.ground_words();
        self.words((x, lay.kind), Anchor::Middle, kind);
        self.ground();
    }

    fn text(&self, part: &str) -> String {
        self.catalog.text(&format!("{}-{part}", self.reader))
    }

    fn pipe(&mut self, points: &[(f32, f32)]) {
        self.drawing.push(Shape::Polyline {
            points: points.iter().map(|(x, y)| Point::new(*x, *y)).collect(),
            stroke: Stroke::solid(Role::Primary, self.layout.pipe),
        });
    }

    fn boxed(&mut self, (left, right): (f32, f32), part: &str) {
        let lay = self.layout;
        self.drawing.push(Shape::Box {
            at: Point::new(left, lay.top),
            width: right - left,
            height: lay.bottom - lay.top,
            radius: 6.0,
            fill: Some(Role::Surface),
            stroke: Some(Stroke::solid(Role::Axis, 0.5 * lay.pipe)),
        });
        let style = LabelStyle {
            strong: true,
            size: lay.words,
            ..LabelStyle::plain(Anchor::Start)
        };
        let at = Point::new(left + 8.0, lay.top + 5.0 + lay.words);
        let title = self.text(part);
        self.drawing.label(at, title, style);
    }

    fn words(&mut self, (x, y): (f32, f32), anchor: Anchor, text: String) {
        let style = LabelStyle {
            size: self.layout.words,
            ..LabelStyle::soft(anchor)
        };
        self.drawing.label(Point::new(x, y), text, style);
    }

    /// The ground, its upper edge, and the house on it.
    fn earth(&mut self) {
        let lay = self.layout;
        if lay.ground != Role::Paper {
            self.drawing.push(Shape::Box {
                at: Point::new(0.0, lay.wall),
                width: lay.width,
                height: lay.height - lay.wall,
                radius: 0.0,
                fill: Some(lay.ground),
                stroke: None,
            });
        }
        let edge = match lay.house {
            Some(_) => Stroke::solid(Role::Axis, 1.0),
            None => Stroke::dashed(Role::Axis, 1.0),
        };
        let ends = [0.0, lay.width].map(|x| Point::new(x, lay.wall));
        self.drawing.line(ends[0], ends[1], edge);
        if let Some((left, right)) = lay.house {
            let eaves = lay.top - 6.0;
            let outline = [
                (left, lay.wall),
                (left, eaves),
                (left - 8.0, eaves),
                (0.5 * (left + right), 2.0),
                (right + 8.0, eaves),
                (right, eaves),
                (right, lay.wall),
            ];
            self.drawing.push(Shape::Polyline {
                points: outline.iter().map(|(x, y)| Point::new(*x, *y)).collect(),
                stroke: Stroke::solid(Role::Axis, 1.0),
            });
        }
    }

    fn arrow(&mut self, from: (f32, f32), tip: (f32, f32)) {
        self.drawing.push(Shape::Arrow {
            points: vec![Point::new(from.0, from.1), Point::new(tip.0, tip.1)],
            stroke: Stroke::solid(Role::Primary, self.layout.pipe),
        });
    }

    /// Coil of the source exchanger.
    fn exchanger(&mut self) {
        let lay = self.layout;
        for step in 0_u8..3 {
            let x = lay.coil.0 + 1.625 * lay.ring * f32::from(step);
            self.drawing.push(Shape::Circle {
                centre: Point::new(x, lay.coil.1),
                radius: lay.ring,
                fill: None,
                stroke: Some(Stroke::solid(Role::Secondary, 1.5)),
            });
        }
    }

    fn circulators(&mut self) {
        let r = self.layout.pump;
        for (x, y) in self.layout.pumps.into_iter().take(self.plan.circulators) {
            self.drawing.push(Shape::Circle {
                centre: Point::new(x, y),
                radius: r,
                fill: Some(Role::Paper),
                stroke: Some(Stroke::solid(Role::Secondary, 1.5)),
            });
            self.drawing.push(Shape::Polygon {
                points: vec![
                    Point::new(x - 0.5 * r, y - 0.6 * r),
                    Point::new(x + 0.8 * r, y),
                    Point::new(x - 0.5 * r, y + 0.6 * r),
                ],
                fill: Some(Role::Secondary),
                stroke: None,
            });
        }
    }

    fn strainer(&mut self) {
        let (x, (y, half)) = (self.layout.back, self.layout.strainer);
        let side = 16.0 / 18.0 * half;
        self.drawing.push(Shape::Polygon {
            points: vec![
                Point::new(x, y - half),
                Point::new(x - side, y),
                Point::new(x, y + half),
                Point::new(x + side, y),
            ],
            fill: Some(Role::Paper),
            stroke: Some(Stroke::solid(Role::Axis, 1.5)),
        });
    }

    /// Expansion tank or reservoir beside the return.
    fn vessel(&mut self) {
        let (lay, [left, top, width, height]) = (self.layout, self.layout.vessel);
        let part = match self.plan.flow_centre {
            Some(FlowCentre::SealedWithTank { .. }) => "tank",
            Some(FlowCentre::NonPressurised { .. }) => "reservoir",
            Some(FlowCentre::Sealed {}) | None => return,
        };
        let middle = left + 0.5 * width;
        self.pipe(&[
            (lay.back, lay.branch),
            (middle, lay.branch),
            (middle, top + 6.0),
        ]);
        self.drawing.push(Shape::Box {
            at: Point::new(left, top),
            width,
            height,
            radius: if part == "tank" { 0.464 * width } else { 2.0 },
            fill: Some(Role::Surface),
            stroke: Some(Stroke::solid(Role::Axis, 1.5)),
        });
        let (x, y, anchor) = lay.vessel_words;
        let name = self.text(part);
        self.words((x, y), anchor, name);
    }

    /// A dial with a hand; a vented loop is read by the level of its reservoir.
    fn gauge(&mut self) {
        let Some((x, y)) = self.layout.gauge else {
            return;
        };
        if matches!(
            self.plan.flow_centre,
            Some(FlowCentre::NonPressurised { .. })
        ) {
            return;
        }
        let line = Stroke::solid(Role::Axis, 1.2);
        self.drawing.line(
            Point::new(self.layout.back, y),
            Point::new(x - 6.0, y),
            line,
        );
        self.drawing.push(Shape::Circle {
            centre: Point::new(x, y),
            radius: 6.0,
            fill: Some(Role::Paper),
            stroke: Some(Stroke::solid(Role::Label, 1.1)),
        });
        let hand = Stroke::solid(Role::Measured, 1.2);
        self.drawing
            .line(Point::new(x, y), Point::new(x + 3.2, y - 3.2), hand);
    }

    fn ground_words(&self) -> String {
        let kind = match self.plan.ground {
            Some(GroundKind::Vertical) => "vertical",
            Some(GroundKind::Horizontal) => "horizontal",
            Some(GroundKind::Pond) => "pond",
            None => "unknown",
        };
        // None known is told by a form of its own.
        let count = self.plan.circuits.unwrap_or(0);
        self.catalog.fill(
            &format!("{}-ground-{kind}", self.reader),
            &Args::new().count("count", count as usize),
        )
    }

    fn ground(&mut self) {
        let lay = self.layout;
        let count = self.plan.circuits.unwrap_or(2).clamp(1, DRAWN);
        #[allow(clippy::cast_precision_loss)]
        let step = (lay.out - lay.back - 2.0 * lay.leg) / count.max(2).saturating_sub(1) as f32;
        #[allow(clippy::cast_precision_loss)]
        let places: Vec<f32> = (0..count)
            .map(|index| lay.back + lay.leg + step * index as f32)
            .collect();
        let last = places.last().copied().unwrap_or(lay.back);
        self.pipe(&[
            (lay.back, lay.back_header),
            (last - lay.leg, lay.back_header),
        ]);
        self.pipe(&[
            (lay.back + 2.0 * lay.leg, lay.out_header),
            (lay.out, lay.out_header),
        ]);
        for x in places {
            // The supply leg passes over the return header.
            let (from, to) = (lay.out_header + 5.0, lay.back_header + 2.5 * lay.pipe);
            self.drawing.line(
                Point::new(x + lay.leg, from),
                Point::new(x + lay.leg, to),
                Stroke::solid(lay.ground, 3.0 * lay.pipe),
            );
            let largest = lay.rings[2];
            match self.plan.ground {
                Some(GroundKind::Horizontal) => {
                    let bends = self.zigzag();
                    self.legs(x, &bends);
                }
                Some(GroundKind::Pond) => {
                    self.legs(x, &[(0.0, lay.end - 2.5 * largest)]);
                    self.coil(x, lay.end - 1.375 * largest);
                }
                Some(GroundKind::Vertical) | None => self.legs(x, &[(0.0, lay.end)]),
            }
        }
        if self.plan.circuits.is_some_and(|count| count > DRAWN) {
            let at = (0.5 * lay.width, lay.end + 1.5 * lay.words);
            self.words(at, Anchor::Middle, "…".to_owned());
        }
    }

    /// A trench, seen from above: to and fro.
    fn zigzag(&self) -> Vec<(f32, f32)> {
        let lay = self.layout;
        let (first, pitch) = lay.bends;
        let mut points = Vec::new();
        let mut y = lay.back_header + first;
        let mut side = 6.0;
        while y < lay.end {
            points.push((side, y));
            side = -side;
            y += pitch;
        }
        points.push((0.0, lay.end));
        points
    }

    /// Both legs of a circuit down through the offsets and joined at their end.
    fn legs(&mut self, x: f32, offsets: &[(f32, f32)]) {
        let lay = self.layout;
        let leg = |side: f32, top: f32| {
            std::iter::once((x + side, top))
                .chain(offsets.iter().map(move |(dx, y)| (x + side + dx, *y)))
                .collect::<Vec<_>>()
        };
        let mut points = leg(lay.leg, lay.out_header);
        points.extend(leg(-lay.leg, lay.back_header).into_iter().rev());
        self.pipe(&points);
    }

    fn coil(&mut self, x: f32, y: f32) {
        for radius in self.layout.rings {
            self.drawing.push(Shape::Circle {
                centre: Point::new(x, y),
                radius,
                fill: None,
                stroke: Some(Stroke::solid(Role::Primary, 2.0)),
            });
        }
    }
}
