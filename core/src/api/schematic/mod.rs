//! The drawing of one system from its records: parts that are known are drawn
//! as they are, parts that are not are drawn as the usual ones.

mod marks;
mod parts;

use super::Call;
use super::types::{SchematicView, SpotView};
use crate::records::{FlowCentre, ReadingPoint};
use crate::report::chart::{Drawing, Point};
use crate::units::format;
use marks::marks;
use parts::Plan;

/// Size of the drawing, points.
pub(super) const WIDTH: f32 = 360.0;
pub(super) const HEIGHT: f32 = 590.0;

/// A place of the system, in points of the drawing.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Place {
    Suction,
    Circulator,
    Strainer,
    Exchanger,
    Supply,
    Tank,
    Header,
    Circuit,
    Ground,
}

impl Place {
    const ALL: [(&'static str, Self); 9] = [
        ("suction", Self::Suction),
        ("circulator", Self::Circulator),
        ("strainer", Self::Strainer),
        ("exchanger", Self::Exchanger),
        ("supply", Self::Supply),
        ("tank", Self::Tank),
        ("header", Self::Header),
        ("circuit", Self::Circuit),
        ("ground", Self::Ground),
    ];

    fn named(name: &str) -> Option<Self> {
        let mut all = Self::ALL.into_iter();
        all.find(|(known, _)| *known == name)
            .map(|(_, place)| place)
    }

    /// Where a sign of this place stands, clear of the places to tap.
    fn sign(self) -> Point {
        match self {
            Self::Suction => Point::new(110.0, 232.0),
            Self::Circulator => Point::new(132.0, 42.0),
            Self::Strainer => Point::new(110.0, 292.0),
            Self::Exchanger => Point::new(322.0, 42.0),
            Self::Supply => Point::new(250.0, 292.0),
            Self::Tank => Point::new(168.0, 148.0),
            Self::Header => Point::new(180.0, 352.0),
            Self::Circuit => Point::new(332.0, 545.0),
            Self::Ground => Point::new(30.0, 545.0),
        }
    }
}

/// Where each point is tapped.
fn spots(plan: &Plan) -> Vec<(ReadingPoint, Point)> {
    use ReadingPoint as P;
    let mut spots = vec![
        (P::CirculatorRise, Point::new(85.0, 76.0)),
        (P::EnteringWater, Point::new(180.0, 76.0)),
        (P::ExchangerDrop, Point::new(275.0, 76.0)),
        (P::StaticPressure, Point::new(60.0, 168.0)),
        (P::SuctionPressure, Point::new(60.0, 230.0)),
        (P::LeavingWater, Point::new(300.0, 168.0)),
        (P::Flow, Point::new(300.0, 230.0)),
        (P::FreezePointSupply, Point::new(300.0, 292.0)),
        (P::CircuitReturn, Point::new(60.0, 420.0)),
        (P::LoopTemperature, Point::new(180.0, 560.0)),
    ];
    if plan.strainer {
        spots.push((P::StrainerDrop, Point::new(60.0, 292.0)));
    }
    match plan.flow_centre {
        Some(FlowCentre::SealedWithTank { .. }) => {
            spots.push((P::TankPreCharge, Point::new(150.0, 192.0)));
        }
        Some(FlowCentre::NonPressurised { .. }) => {
            spots.push((P::ReservoirLevelChange, Point::new(150.0, 192.0)));
        }
        _ => {}
    }
    spots
}

impl Call {
    /// The drawing of the system with its places to tap and what is suspected.
    pub fn schematic(&self) -> SchematicView {
        let catalog = self.wording.catalog();
        let plan = Plan::of(&self.file.system);
        let mut drawing = Drawing::new(WIDTH, HEIGHT, catalog.text("schematic-description"));
        parts::draw(&mut drawing, &plan, catalog);
        let marks = marks(self, &mut drawing);
        let spots = spots(&plan)
            .into_iter()
            .map(|(point, at)| {
                let mut readings = self.file.visit.readings.iter().rev();
                let last = readings.find(|reading| reading.point() == point);
                SpotView {
                    point: point.id().to_owned(),
                    label: catalog.text(&format!("point-{}", point.id())),
                    short: catalog.text(&format!("spot-{}", point.id())),
                    reading: last.map(|reading| {
                        let value = reading.value();
                        format::plus_minus(value.value, 0.0, value.unit)
                    }),
                    x: at.x / WIDTH,
                    y: at.y / HEIGHT,
                }
            })
            .collect();
        SchematicView {
            drawing,
            spots,
            marks,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::api::Wording;
    use crate::records::visit_file::VisitFile;
    use crate::records::{CircuitGroup, GroundKind, GroundLoop, NominalInch, Pipe, Sdr, System};
    use crate::units::{Length, Measure, Unit};
    use chrono::NaiveDate;

    fn call(system: System) -> Call {
        let file = VisitFile {
            system,
            ..VisitFile::default()
        };
        let day = NaiveDate::from_ymd_opt(2026, 8, 14).expect("a day");
        Call::assess(&file, day, Wording::default())
    }

    fn ground(kind: GroundKind, count: u32) -> System {
        let circuits = CircuitGroup {
            count,
            pipe: Pipe::IpsPe {
                size: NominalInch::ThreeQuarter,
                sdr: Sdr::Sdr11,
            },
            length: Measure::<Length>::new(500.0, Unit::Foot),
        };
        System {
            ground: Some(GroundLoop {
                kind: Some(kind),
                circuits: vec![circuits],
                ..GroundLoop::default()
            }),
            ..System::default()
        }
    }

    #[test]
    fn nothing_known_is_still_drawn_with_places_to_tap() {
        let view = call(System::default()).schematic();
        assert!(!view.drawing.items.is_empty());
        assert!(
            view.spots
                .iter()
                .any(|spot| spot.point == "static_pressure")
        );
        for spot in &view.spots {
            assert!(
                !spot.label.contains('«') && !spot.short.contains('«'),
                "{spot:?}"
            );
        }
    }

    /// Half the side of what a thumb can hit, in points of the drawing at 360 px.
    const APART: f32 = 48.0;

    #[test]
    fn places_to_tap_lie_inside_and_a_thumb_apart() {
        let tank = System {
            flow_centre: Some(FlowCentre::SealedWithTank {
                tank_volume: None,
                pre_charge: None,
            }),
            strainer: Some(true),
            ..ground(GroundKind::Vertical, 3)
        };
        let view = call(tank).schematic();
        for (index, spot) in view.spots.iter().enumerate() {
            assert!((0.0..=1.0).contains(&spot.x) && (0.0..=1.0).contains(&spot.y));
            for other in &view.spots[..index] {
                let dx = (spot.x - other.x).abs() * WIDTH;
                let dy = (spot.y - other.y).abs() * HEIGHT;
                assert!(dx >= APART || dy >= APART, "{spot:?} {other:?}");
            }
        }
    }

    #[test]
    fn every_kind_of_ground_and_count_of_circuits_looks_its_own() {
        let kinds = [
            GroundKind::Vertical,
            GroundKind::Horizontal,
            GroundKind::Pond,
        ];
        let drawings: Vec<Drawing> = kinds
            .into_iter()
            .flat_map(|kind| [1, 3, 40].map(|count| call(ground(kind, count)).schematic().drawing))
            .collect();
        for (index, drawing) in drawings.iter().enumerate() {
            assert!(!drawings[..index].contains(drawing), "{index}");
        }
    }
}
