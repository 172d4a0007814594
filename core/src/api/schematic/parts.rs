//! The parts of the drawing: pipe, flow centre, heat pump, ground.

use super::WIDTH;
use crate::records::{FlowCentre, GroundKind, System};
use crate::report::chart::{Anchor, Drawing, LabelStyle, Point, Role, Shape, Stroke};
use crate::text::{Args, Catalog};

/// Circuits that are drawn; more are told by their number.
const DRAWN: u32 = 5;
/// Left and right pipe between indoors and ground.
const RETURN_X: f32 = 60.0;
const SUPPLY_X: f32 = 300.0;
const BOX_TOP: f32 = 16.0;
const BOX_BOTTOM: f32 = 126.0;
const WALL: f32 = 328.0;
const SUPPLY_HEADER: f32 = 352.0;
const RETURN_HEADER: f32 = 376.0;
const GROUND_END: f32 = 520.0;
/// Half the distance of the two legs of a circuit.
const LEG: f32 = 10.0;

/// Size of the words: read on a phone, where the drawing takes its width.
const WORDS: f32 = 13.0;

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

fn pipe(drawing: &mut Drawing, points: &[(f32, f32)]) {
    drawing.push(Shape::Polyline {
        points: points.iter().map(|(x, y)| Point::new(*x, *y)).collect(),
        stroke: Stroke::solid(Role::Primary, 3.0),
    });
}

fn boxed(drawing: &mut Drawing, left: f32, right: f32, title: String) {
    drawing.push(Shape::Box {
        at: Point::new(left, BOX_TOP),
        width: right - left,
        height: BOX_BOTTOM - BOX_TOP,
        radius: 6.0,
        fill: Some(Role::Surface),
        stroke: Some(Stroke::solid(Role::Axis, 1.5)),
    });
    let style = LabelStyle {
        strong: true,
        size: WORDS,
        ..LabelStyle::plain(Anchor::Start)
    };
    drawing.label(Point::new(left + 8.0, BOX_TOP + 18.0), title, style);
}

fn words(drawing: &mut Drawing, x: f32, y: f32, anchor: Anchor, text: String) {
    let style = LabelStyle {
        size: WORDS,
        ..LabelStyle::soft(anchor)
    };
    drawing.label(Point::new(x, y), text, style);
}

pub(super) fn draw(drawing: &mut Drawing, plan: &Plan, catalog: &Catalog) {
    boxed(drawing, 14.0, 152.0, catalog.text("schematic-flow-centre"));
    boxed(drawing, 208.0, 346.0, catalog.text("schematic-heat-pump"));
    // From the ground through the flow centre into the heat pump and back.
    pipe(
        drawing,
        &[(RETURN_X, RETURN_HEADER), (RETURN_X, 76.0), (275.0, 76.0)],
    );
    pipe(
        drawing,
        &[(275.0, 76.0), (SUPPLY_X, 76.0), (SUPPLY_X, SUPPLY_HEADER)],
    );
    arrow(drawing, (168.0, 76.0), (200.0, 76.0));
    arrow(drawing, (SUPPLY_X, 192.0), (SUPPLY_X, 204.0));
    arrow(drawing, (RETURN_X, 204.0), (RETURN_X, 196.0));
    exchanger(drawing);
    circulators(drawing, plan);
    if plan.strainer {
        strainer(drawing);
    }
    vessel(drawing, plan, catalog);
    drawing.line(
        Point::new(0.0, WALL),
        Point::new(WIDTH, WALL),
        Stroke::dashed(Role::Axis, 1.0),
    );
    words(
        drawing,
        180.0,
        WALL - 6.0,
        Anchor::Middle,
        catalog.text("schematic-indoors"),
    );
    words(
        drawing,
        180.0,
        WALL + 13.0,
        Anchor::Middle,
        ground_words(plan, catalog),
    );
    ground(drawing, plan);
}

fn arrow(drawing: &mut Drawing, from: (f32, f32), tip: (f32, f32)) {
    drawing.push(Shape::Arrow {
        points: vec![Point::new(from.0, from.1), Point::new(tip.0, tip.1)],
        stroke: Stroke::solid(Role::Primary, 3.0),
    });
}

/// Coil of the source exchanger.
fn exchanger(drawing: &mut Drawing) {
    for step in 0_u8..3 {
        drawing.push(Shape::Circle {
            centre: Point::new(262.0 + 13.0 * f32::from(step), 108.0),
            radius: 8.0,
            fill: None,
            stroke: Some(Stroke::solid(Role::Secondary, 1.5)),
        });
    }
}

fn circulators(drawing: &mut Drawing, plan: &Plan) {
    for index in 0..plan.circulators {
        let x = if index == 0 { 36.0 } else { 66.0 };
        drawing.push(Shape::Circle {
            centre: Point::new(x, 108.0),
            radius: 10.0,
            fill: Some(Role::Paper),
            stroke: Some(Stroke::solid(Role::Secondary, 1.5)),
        });
        drawing.push(Shape::Polygon {
            points: vec![
                Point::new(x - 5.0, 102.0),
                Point::new(x + 8.0, 108.0),
                Point::new(x - 5.0, 114.0),
            ],
            fill: Some(Role::Secondary),
            stroke: None,
        });
    }
}

fn strainer(drawing: &mut Drawing) {
    drawing.push(Shape::Polygon {
        points: vec![
            Point::new(RETURN_X, 274.0),
            Point::new(RETURN_X - 16.0, 292.0),
            Point::new(RETURN_X, 310.0),
            Point::new(RETURN_X + 16.0, 292.0),
        ],
        fill: Some(Role::Paper),
        stroke: Some(Stroke::solid(Role::Axis, 1.5)),
    });
}

/// Expansion tank or reservoir beside the return.
fn vessel(drawing: &mut Drawing, plan: &Plan, catalog: &Catalog) {
    let key = match plan.flow_centre {
        Some(FlowCentre::SealedWithTank { .. }) => "schematic-tank",
        Some(FlowCentre::NonPressurised { .. }) => "schematic-reservoir",
        Some(FlowCentre::Sealed {}) | None => return,
    };
    pipe(
        drawing,
        &[(RETURN_X, 138.0), (150.0, 138.0), (150.0, 164.0)],
    );
    drawing.push(Shape::Box {
        at: Point::new(122.0, 158.0),
        width: 56.0,
        height: 68.0,
        radius: if key == "schematic-tank" { 26.0 } else { 2.0 },
        fill: Some(Role::Surface),
        stroke: Some(Stroke::solid(Role::Axis, 1.5)),
    });
    words(drawing, 150.0, 240.0, Anchor::Middle, catalog.text(key));
}

fn ground_words(plan: &Plan, catalog: &Catalog) -> String {
    let kind = match plan.ground {
        Some(GroundKind::Vertical) => "vertical",
        Some(GroundKind::Horizontal) => "horizontal",
        Some(GroundKind::Pond) => "pond",
        None => "unknown",
    };
    let count = plan
        .circuits
        .map_or_else(|| "?".to_owned(), |count| count.to_string());
    catalog.fill(
        &format!("schematic-ground-{kind}"),
        &Args::new().text("count", count),
    )
}

fn ground(drawing: &mut Drawing, plan: &Plan) {
    let count = plan.circuits.unwrap_or(2).clamp(1, DRAWN);
    #[allow(clippy::cast_precision_loss)]
    let step = (SUPPLY_X - RETURN_X - 2.0 * LEG) / count.max(2).saturating_sub(1) as f32;
    #[allow(clippy::cast_precision_loss)]
    let places: Vec<f32> = (0..count)
        .map(|index| RETURN_X + LEG + step * index as f32)
        .collect();
    let first = RETURN_X;
    let last = places.last().copied().unwrap_or(first);
    pipe(
        drawing,
        &[(first, RETURN_HEADER), (last - LEG, RETURN_HEADER)],
    );
    pipe(
        drawing,
        &[
            (first + 2.0 * LEG, SUPPLY_HEADER),
            (SUPPLY_X, SUPPLY_HEADER),
        ],
    );
    for x in places {
        // The supply leg passes over the return header.
        drawing.line(
            Point::new(x + LEG, SUPPLY_HEADER + 5.0),
            Point::new(x + LEG, RETURN_HEADER + 8.0),
            Stroke::solid(Role::Paper, 9.0),
        );
        let end = GROUND_END;
        match plan.ground {
            Some(GroundKind::Horizontal) => legs(drawing, x, &zigzag(end)),
            Some(GroundKind::Pond) => {
                legs(drawing, x, &[(0.0, end - 40.0)]);
                coil(drawing, x, end - 22.0);
            }
            Some(GroundKind::Vertical) | None => legs(drawing, x, &[(0.0, end)]),
        }
    }
    if plan.circuits.is_some_and(|count| count > DRAWN) {
        words(
            drawing,
            180.0,
            GROUND_END + 20.0,
            Anchor::Middle,
            "…".to_owned(),
        );
    }
}

/// A trench, seen from above: to and fro.
fn zigzag(end: f32) -> Vec<(f32, f32)> {
    let mut points = Vec::new();
    let mut y = RETURN_HEADER + 40.0;
    let mut side = 6.0;
    while y < end {
        points.push((side, y));
        side = -side;
        y += 24.0;
    }
    points.push((0.0, end));
    points
}

/// Both legs of a circuit down through the offsets and joined at their end.
fn legs(drawing: &mut Drawing, x: f32, offsets: &[(f32, f32)]) {
    let leg = |side: f32, top: f32| {
        std::iter::once((x + side, top))
            .chain(offsets.iter().map(move |(dx, y)| (x + side + dx, *y)))
            .collect::<Vec<_>>()
    };
    let mut points = leg(LEG, SUPPLY_HEADER);
    points.extend(leg(-LEG, RETURN_HEADER).into_iter().rev());
    pipe(drawing, &points);
}

fn coil(drawing: &mut Drawing, x: f32, y: f32) {
    for radius in [6.0, 11.0, 16.0] {
        drawing.push(Shape::Circle {
            centre: Point::new(x, y),
            radius,
            fill: None,
            stroke: Some(Stroke::solid(Role::Primary, 2.0)),
        });
    }
}
