//! The drawing of one system from its records: parts that are known are drawn
//! as they are, parts that are not are drawn as the usual ones.

mod layout;
mod marks;
mod parts;
mod sheet;

use super::Call;
use super::types::{SchematicView, SpotView};
use crate::records::{FlowCentre, ReadingPoint};
use crate::report::chart::Drawing;
use layout::{Layout, SCREEN};
use marks::marks;
use parts::{Draughtsman, Plan};

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
}

/// The points that this system has.
fn points(plan: &Plan) -> Vec<ReadingPoint> {
    use ReadingPoint as P;
    let mut points = vec![
        P::CirculatorRise,
        P::EnteringWater,
        P::ExchangerDrop,
        P::StaticPressure,
        P::SuctionPressure,
        P::LeavingWater,
        P::Flow,
        P::FreezePointSupply,
        P::CircuitReturn,
        P::LoopTemperature,
    ];
    if plan.strainer {
        points.push(P::StrainerDrop);
    }
    match plan.flow_centre {
        Some(FlowCentre::SealedWithTank { .. }) => points.push(P::TankPreCharge),
        Some(FlowCentre::NonPressurised { .. }) => points.push(P::ReservoirLevelChange),
        _ => {}
    }
    points
}

impl Call {
    /// The parts of the system, with the words of one kind of reader.
    fn parts(&self, plan: &Plan, layout: &Layout, reader: &'static str) -> Drawing {
        let catalog = self.wording.catalog();
        let description = catalog.text("schematic-description");
        let mut drawing = Drawing::new(layout.width, layout.height, description);
        Draughtsman {
            drawing: &mut drawing,
            plan,
            layout,
            catalog,
            reader,
        }
        .draw();
        drawing
    }

    /// The last reading of a point, with its unit.
    fn last_read(&self, point: ReadingPoint) -> Option<String> {
        Some(self.latest(point, None)?.value().text())
    }

    /// The drawing of the system with its places to tap and what is suspected.
    pub fn schematic(&self) -> SchematicView {
        let catalog = self.wording.catalog();
        let plan = Plan::of(&self.file.system);
        let mut drawing = self.parts(&plan, &SCREEN, "schematic");
        let marks = marks(self, &mut drawing, &SCREEN, |_| true);
        let spots = points(&plan)
            .into_iter()
            .filter_map(|point| {
                let (at, _) = SCREEN.spot(point)?;
                Some(SpotView {
                    point: point.id().to_owned(),
                    label: catalog.text(&format!("point-{}", point.id())),
                    short: catalog.text(&format!("spot-{}", point.id())),
                    reading: self.last_read(point),
                    x: at.x / SCREEN.width,
                    y: at.y / SCREEN.height,
                })
            })
            .collect();
        SchematicView {
            drawing,
            spots,
            marks: marks.into_iter().map(|marked| marked.view).collect(),
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
                let dx = (spot.x - other.x).abs() * SCREEN.width;
                let dy = (spot.y - other.y).abs() * SCREEN.height;
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
