//! The two shapes of the drawing: upright for a phone, where every point must
//! leave a thumb its room, and wide and low for a sheet of paper. Both show the
//! same parts; only places and sizes differ.

use super::Place;
use crate::records::ReadingPoint;
use crate::report::chart::{Anchor, Point, Role};

/// Places and sizes of the parts, points.
pub(super) struct Layout {
    pub width: f32,
    pub height: f32,
    /// Size of the words, and width of the pipe.
    pub words: f32,
    pub pipe: f32,
    /// Where the house stands around the parts indoors; none leaves it out.
    pub house: Option<(f32, f32)>,
    /// What the ground is filled with.
    pub ground: Role,
    /// Top and bottom of flow centre and heat pump, and the pipe through both.
    pub top: f32,
    pub bottom: f32,
    pub run: f32,
    /// Left and right end of flow centre and heat pump.
    pub centre: (f32, f32),
    pub unit: (f32, f32),
    /// Circulators and their radius.
    pub pumps: [(f32, f32); 2],
    pub pump: f32,
    /// First ring of the exchanger's coil and its radius.
    pub coil: (f32, f32),
    pub ring: f32,
    /// Strainer: centre height and half its size.
    pub strainer: (f32, f32),
    /// Expansion tank or reservoir: branch, left, top, width, height, and its words.
    pub branch: f32,
    pub vessel: [f32; 4],
    pub vessel_words: (f32, f32, Anchor),
    /// The pipe that comes back from the ground, and the one that goes out.
    pub back: f32,
    pub out: f32,
    /// Where the arrows of both stand.
    pub arrows: f32,
    /// The gauge, drawn where it is not a place to tap.
    pub gauge: Option<(f32, f32)>,
    /// Floor of the house, headers, and the end of the circuits.
    pub wall: f32,
    pub indoors: f32,
    pub kind: f32,
    pub out_header: f32,
    pub back_header: f32,
    pub end: f32,
    /// Half the distance of the legs of a circuit; first bend and pitch of a trench.
    pub leg: f32,
    pub bends: (f32, f32),
    /// Radii of a coil in water.
    pub rings: [f32; 3],
    /// Half the size of a sign, and whether its word stands below it.
    pub sign: f32,
    pub sign_words: bool,
}

/// Read on a phone, where the drawing takes its width.
pub(super) const SCREEN: Layout = Layout {
    width: 360.0,
    height: 590.0,
    words: 14.0,
    pipe: 3.0,
    house: None,
    ground: Role::Paper,
    top: 16.0,
    bottom: 129.0,
    run: 76.0,
    centre: (14.0, 152.0),
    unit: (208.0, 346.0),
    pumps: [(36.0, 116.0), (66.0, 116.0)],
    pump: 10.0,
    coil: (262.0, 117.0),
    ring: 8.0,
    strainer: (292.0, 18.0),
    branch: 138.0,
    vessel: [122.0, 158.0, 56.0, 68.0],
    vessel_words: (150.0, 240.0, Anchor::Middle),
    back: 60.0,
    out: 300.0,
    arrows: 198.0,
    gauge: None,
    wall: 328.0,
    indoors: 322.0,
    kind: 341.0,
    out_header: 352.0,
    back_header: 376.0,
    end: 520.0,
    leg: 10.0,
    bends: (40.0, 24.0),
    rings: [6.0, 11.0, 16.0],
    sign: 13.0,
    sign_words: true,
};

/// Set in a report, as wide as the text.
pub(super) const PAPER: Layout = Layout {
    width: 460.0,
    height: 212.0,
    words: 9.0,
    pipe: 2.0,
    house: Some((24.0, 436.0)),
    ground: Role::Surface,
    top: 24.0,
    bottom: 76.0,
    run: 54.0,
    centre: (36.0, 180.0),
    unit: (280.0, 424.0),
    pumps: [(96.0, 54.0), (126.0, 54.0)],
    pump: 8.0,
    coil: (338.0, 54.0),
    ring: 7.0,
    strainer: (110.0, 8.0),
    branch: 84.0,
    vessel: [150.0, 90.0, 26.0, 30.0],
    vessel_words: (181.0, 104.0, Anchor::Start),
    back: 64.0,
    out: 396.0,
    arrows: 136.0,
    gauge: Some((78.0, 93.0)),
    wall: 126.0,
    indoors: 121.0,
    kind: 138.0,
    out_header: 146.0,
    back_header: 158.0,
    end: 196.0,
    leg: 10.0,
    bends: (8.0, 8.0),
    rings: [3.0, 6.0, 9.0],
    sign: 8.0,
    sign_words: false,
};

impl Layout {
    /// Whether this is the upright one, with places to tap.
    fn upright(&self) -> bool {
        self.height > self.width
    }

    /// Where a sign of a place stands, clear of the readings.
    pub fn sign_of(&self, place: Place) -> Point {
        let (screen, paper) = match place {
            Place::Suction => ((110.0, 232.0), (46.0, 92.0)),
            Place::Circulator => ((132.0, 42.0), (164.0, 40.0)),
            Place::Strainer => ((110.0, 292.0), (46.0, 110.0)),
            Place::Exchanger => ((322.0, 42.0), (408.0, 40.0)),
            Place::Supply => ((250.0, 292.0), (414.0, 102.0)),
            Place::Tank => ((168.0, 148.0), (163.0, 105.0)),
            Place::Header => ((180.0, 352.0), (230.0, 152.0)),
            Place::Circuit => ((332.0, 545.0), (414.0, 180.0)),
            Place::Ground => ((30.0, 545.0), (36.0, 180.0)),
        };
        let (x, y) = if self.upright() { screen } else { paper };
        Point::new(x, y)
    }

    /// The same, beside signs that stand there already.
    pub fn sign_beside(&self, place: Place, already: usize) -> Point {
        let at = self.sign_of(place);
        #[allow(clippy::cast_precision_loss)]
        let shift = 2.0 * (self.sign + 2.0) * already as f32;
        if self.upright() {
            Point::new(at.x - shift, at.y)
        } else if at.x < 0.5 * self.width {
            Point::new(at.x + shift, at.y)
        } else {
            Point::new(at.x - shift, at.y)
        }
    }

    /// Where the reading of a point stands, and where its anchor lies in it.
    pub fn spot(&self, point: ReadingPoint) -> Option<(Point, Anchor)> {
        use Anchor::{End, Middle, Start};
        use ReadingPoint as P;
        let (screen, paper, anchor) = match point {
            P::CirculatorRise => ((85.0, 76.0), (111.0, 72.0), Middle),
            P::EnteringWater => ((180.0, 76.0), (230.0, 48.0), Middle),
            P::ExchangerDrop => ((275.0, 76.0), (351.0, 72.0), Middle),
            P::StaticPressure => ((60.0, 168.0), (88.0, 96.0), Start),
            P::SuctionPressure => ((60.0, 230.0), (76.0, 107.0), Start),
            P::StrainerDrop => ((60.0, 292.0), (76.0, 118.0), Start),
            P::LeavingWater => ((300.0, 168.0), (386.0, 90.0), End),
            P::Flow => ((300.0, 230.0), (386.0, 101.0), End),
            P::FreezePointSupply => ((300.0, 292.0), (386.0, 112.0), End),
            P::TankPreCharge | P::ReservoirLevelChange => ((150.0, 192.0), (181.0, 116.0), Start),
            P::CircuitReturn => ((60.0, 420.0), (64.0, 208.0), Start),
            P::LoopTemperature => ((180.0, 560.0), (396.0, 208.0), End),
            _ => return None,
        };
        Some(if self.upright() {
            (Point::new(screen.0, screen.1), Middle)
        } else {
            (Point::new(paper.0, paper.1), anchor)
        })
    }
}
