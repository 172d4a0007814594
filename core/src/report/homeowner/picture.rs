//! A simple picture of a system: house, heat pump, pumps, pipe in the ground.

use crate::report::chart::{Anchor, Drawing, LabelStyle, Point, Role, Shape, Stroke};

/// How the pipe lies.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub enum Lie {
    /// Down bores.
    Vertical,
    /// Along trenches.
    #[default]
    Horizontal,
    /// In open water.
    Pond,
}

/// What the picture shows. The parts carry numbers; their names stand in words
/// below the picture, so that they fit in any language.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct SystemPicture {
    /// How the pipe lies.
    pub lie: Lie,
    /// How many circuits; drawn up to [`SystemPicture::MOST`].
    pub circuits: u32,
    /// A vented tank instead of a closed, pressurised loop.
    pub open_tank: bool,
    /// What it shows, for those who cannot see it.
    pub description: String,
}

const WIDTH: f32 = 440.0;
const HEIGHT: f32 = 144.0;
/// Height of the ground.
const GROUND: f32 = 92.0;
/// Where the pipe leaves the house.
const EXIT: f32 = 316.0;
/// Left end of the field.
const FIELD: f32 = 24.0;
const PIPE: f32 = 2.2;

impl SystemPicture {
    /// Most circuits that are drawn.
    pub const MOST: u32 = 6;

    /// The picture.
    #[must_use]
    pub fn draw(&self) -> Drawing {
        let mut drawing = Drawing::new(WIDTH, HEIGHT, self.description.clone());
        drawing.push(Shape::Box {
            at: Point::new(0.0, GROUND),
            width: WIDTH,
            height: HEIGHT - GROUND,
            radius: 0.0,
            fill: Some(Role::Surface),
            stroke: None,
        });
        let line = Stroke::solid(Role::Axis, 1.0);
        drawing.line(Point::new(0.0, GROUND), Point::new(WIDTH, GROUND), line);
        self.field(&mut drawing);
        house(&mut drawing);
        self.indoors(&mut drawing);
        drawing
    }

    fn field(&self, drawing: &mut Drawing) {
        let supply = Stroke::solid(Role::Primary, PIPE);
        let back = Stroke::solid(Role::Secondary, PIPE);
        let count = self.circuits.clamp(1, Self::MOST);
        let (upper, lower) = (GROUND + 12.0, GROUND + 19.0);
        if self.lie == Lie::Pond {
            pond(drawing);
        }
        for index in 0..count {
            #[allow(clippy::cast_precision_loss)]
            let (at, all) = (index as f32, count as f32);
            match self.lie {
                Lie::Vertical => {
                    let x = 290.0 - (at + 0.5) * (290.0 - FIELD) / all;
                    let foot = HEIGHT - 10.0;
                    path(drawing, supply, &[(x, upper), (x, foot), (x + 5.0, foot)]);
                    path(drawing, back, &[(x + 5.0, foot), (x + 10.0, foot)]);
                    path(drawing, back, &[(x + 10.0, foot), (x + 10.0, lower)]);
                    if index + 1 == count {
                        path(drawing, supply, &[(EXIT, upper), (x, upper)]);
                        path(drawing, back, &[(EXIT + 8.0, lower), (x + 10.0, lower)]);
                    }
                }
                Lie::Horizontal => {
                    let pitch = (HEIGHT - GROUND - 30.0) / all;
                    let y = GROUND + 25.0 + (at + 0.5) * pitch;
                    let gap = (0.25 * pitch).min(3.0);
                    let run = 280.0;
                    path(
                        drawing,
                        supply,
                        &[(run, y - gap), (FIELD, y - gap), (FIELD, y)],
                    );
                    path(
                        drawing,
                        back,
                        &[(FIELD, y), (FIELD, y + gap), (run + 8.0, y + gap)],
                    );
                    if index + 1 == count {
                        let bend = [(EXIT, upper), (run, upper), (run, y - gap)];
                        path(drawing, supply, &bend);
                        let bend = [
                            (EXIT + 8.0, lower),
                            (run + 8.0, lower),
                            (run + 8.0, y + gap),
                        ];
                        path(drawing, back, &bend);
                    }
                }
                Lie::Pond => {
                    let x = 210.0 - (at + 0.5) * (210.0 - 40.0) / all;
                    for radius in [10.0, 7.0, 4.0] {
                        drawing.push(Shape::Circle {
                            centre: Point::new(x, GROUND + 32.0),
                            radius,
                            fill: None,
                            stroke: Some(Stroke::solid(Role::Primary, 1.4)),
                        });
                    }
                    let top = GROUND + 22.0;
                    path(drawing, supply, &[(x, upper), (x, top)]);
                    path(drawing, back, &[(x + 8.0, lower), (x + 8.0, top + 3.0)]);
                    if index + 1 == count {
                        path(drawing, supply, &[(EXIT, upper), (x, upper)]);
                        path(drawing, back, &[(EXIT + 8.0, lower), (x + 8.0, lower)]);
                    }
                }
            }
        }
        number(drawing, Point::new(FIELD - 10.0, GROUND + 12.0), 3);
    }

    fn indoors(&self, drawing: &mut Drawing) {
        let supply = Stroke::solid(Role::Primary, PIPE);
        let back = Stroke::solid(Role::Secondary, PIPE);
        let (upper, lower) = (GROUND + 12.0, GROUND + 19.0);
        // From the ground up through the pumps and on to the heat pump.
        path(
            drawing,
            supply,
            &[(EXIT, upper), (EXIT, 58.0), (384.0, 58.0)],
        );
        path(
            drawing,
            back,
            &[(EXIT + 8.0, lower), (EXIT + 8.0, 72.0), (384.0, 72.0)],
        );
        device(drawing, (306.0, 50.0), (30.0, 30.0));
        for x in [315.0, 327.0] {
            drawing.push(Shape::Circle {
                centre: Point::new(x, 65.0),
                radius: 4.6,
                fill: Some(Role::Paper),
                stroke: Some(Stroke::solid(Role::Label, 1.1)),
            });
        }
        device(drawing, (376.0, 44.0), (36.0, 44.0));
        if self.open_tank {
            device(drawing, (347.0, 46.0), (12.0, 32.0));
            drawing.line(
                Point::new(348.0, 58.0),
                Point::new(358.0, 58.0),
                Stroke::solid(Role::Primary, 1.4),
            );
        } else {
            // The gauge: a dial with a hand, on the pipe.
            drawing.line(
                Point::new(353.0, 58.0),
                Point::new(353.0, 50.0),
                Stroke::solid(Role::Axis, 1.2),
            );
            drawing.push(Shape::Circle {
                centre: Point::new(353.0, 44.0),
                radius: 6.5,
                fill: Some(Role::Paper),
                stroke: Some(Stroke::solid(Role::Label, 1.1)),
            });
            drawing.line(
                Point::new(353.0, 44.0),
                Point::new(356.5, 40.5),
                Stroke::solid(Role::Measured, 1.2),
            );
        }
        number(drawing, Point::new(394.0, 66.0), 1);
        number(drawing, Point::new(321.0, 39.0), 2);
        number(drawing, Point::new(353.0, 86.0 - 4.0), 4);
    }
}

fn house(drawing: &mut Drawing) {
    let wall = Stroke::solid(Role::Axis, 1.2);
    drawing.push(Shape::Box {
        at: Point::new(290.0, 30.0),
        width: 136.0,
        height: GROUND - 30.0,
        radius: 0.0,
        fill: Some(Role::Paper),
        stroke: Some(wall),
    });
    drawing.push(Shape::Polygon {
        points: [(280.0, 30.0), (358.0, 4.0), (436.0, 30.0)]
            .map(|(x, y)| Point::new(x, y))
            .to_vec(),
        fill: Some(Role::Surface),
        stroke: Some(wall),
    });
}

fn pond(drawing: &mut Drawing) {
    let edge = [
        (14.0, GROUND),
        (34.0, GROUND + 46.0),
        (216.0, GROUND + 46.0),
        (236.0, GROUND),
    ];
    drawing.push(Shape::Polygon {
        points: edge.map(|(x, y)| Point::new(x, y)).to_vec(),
        fill: Some(Role::Band),
        stroke: None,
    });
}

fn path(drawing: &mut Drawing, stroke: Stroke, points: &[(f32, f32)]) {
    drawing.push(Shape::Polyline {
        points: points.iter().map(|(x, y)| Point::new(*x, *y)).collect(),
        stroke,
    });
}

fn device(drawing: &mut Drawing, (x, y): (f32, f32), (width, height): (f32, f32)) {
    drawing.push(Shape::Box {
        at: Point::new(x, y),
        width,
        height,
        radius: 3.0,
        fill: Some(Role::Paper),
        stroke: Some(Stroke::solid(Role::Label, 1.1)),
    });
}

/// The number of a part in a circle.
fn number(drawing: &mut Drawing, centre: Point, number: u32) {
    drawing.push(Shape::Circle {
        centre,
        radius: 6.2,
        fill: Some(Role::Label),
        stroke: None,
    });
    let style = LabelStyle {
        strong: true,
        role: Role::Paper,
        ..LabelStyle::plain(Anchor::Middle)
    };
    let at = Point::new(centre.x, centre.y + 3.0);
    drawing.label(at, number.to_string(), style);
}
