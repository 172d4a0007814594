//! The drawing of the system as it stands in a report: with its readings and
//! what is suspected where, or in plain words for the homeowner.

use super::layout::PAPER;
use super::marks::{Marked, marks};
use super::parts::Plan;
use super::points;
use crate::api::Call;
use crate::records::{FlowCentre, ReadingPoint};
use crate::report::chart::{Drawing, LabelStyle, Role};

impl Call {
    /// For the technician: every reading at its place, every suspicion at its.
    pub(in crate::api) fn system_with_readings(&self) -> (Drawing, Vec<Marked>) {
        let catalog = self.wording.catalog();
        let plan = Plan::of(&self.file.system);
        let mut drawing = self.parts(&plan, &PAPER, "schematic");
        for point in points(&plan) {
            let (Some(reading), Some((at, anchor))) = (self.last_read(point), PAPER.spot(point))
            else {
                continue;
            };
            let name = catalog.text(&format!("spot-{}", point.id()));
            let style = LabelStyle {
                size: PAPER.words,
                role: Role::Measured,
                ..LabelStyle::plain(anchor)
            };
            drawing.label(at, format!("{name} {reading}"), style);
        }
        let marks = marks(self, &mut drawing, &PAPER, |_| true);
        (drawing, marks)
    }

    /// For the homeowner: plain words, and only the causes that the page tells.
    pub(in crate::api) fn system_in_plain_words(&self, told: &[String]) -> (Drawing, Vec<Marked>) {
        let plan = Plan::of(&self.file.system);
        let mut drawing = self.parts(&plan, &PAPER, "plain-part");
        let vented = matches!(plan.flow_centre, Some(FlowCentre::NonPressurised { .. }));
        let gauge = PAPER.spot(ReadingPoint::StaticPressure);
        if let Some((at, anchor)) = gauge.filter(|_| !vented) {
            let style = LabelStyle {
                size: PAPER.words,
                ..LabelStyle::soft(anchor)
            };
            let name = self.wording.catalog().text("plain-part-gauge");
            drawing.label(at, name, style);
        }
        let marks = marks(self, &mut drawing, &PAPER, |cause| told.contains(&cause.id));
        (drawing, marks)
    }
}
