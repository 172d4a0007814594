//! The drawings of a call for the screen: the system, and the charts.

use super::readings::reading_why;
use super::types::{PictureView, PicturesView, QuantityView};
use super::{Call, OpenCall};
use crate::diagnosis::{Carrier, Trace};
use crate::records::{Phase, Reading, ReadingPoint};
use crate::report::chart::{Bar, BarChart, Chain, ChainBox};
use crate::report::fonts::Typesetter;
use crate::text::Args;
use crate::units::format;
use std::sync::Arc;

/// Widths that a chart can be laid out for, points. Letters are of one size, so a
/// narrower one has less room for its words, and a wider one less need to scroll. The
/// narrowest is what a phone of 320 px has left when its text is twice as large.
const WIDTHS: [f32; 2] = [85.0, 520.0];

/// A width that a chart can be laid out for.
pub(super) fn laid_out(width: f32) -> f32 {
    let [least, most] = WIDTHS;
    if width.is_nan() {
        least
    } else {
        width.clamp(least, most)
    }
}

/// Findings in the traced path.
const FINDINGS: usize = 4;
/// A finding that says less than this is not drawn, bits.
const WEIGHTY_BITS: f64 = 0.3;

impl OpenCall {
    /// The drawings, the charts so many points wide.
    pub fn pictures(&self, width: f32) -> PicturesView {
        self.assessed().pictures(width)
    }
}

impl Call {
    /// The drawings, the charts so many points wide.
    pub fn pictures(&self, width: f32) -> PicturesView {
        let width = laid_out(width);
        let mut charts = Vec::new();
        // Without fonts nothing can be set; the words on the screens stand alone.
        if let Ok(mut set) = Typesetter::new() {
            charts.extend(self.traced_path(width, &mut set));
            charts.extend(self.before_and_after(width, &mut set));
        }
        let plan = self.work_plan();
        let season = self.season_told(plan);
        let view = &self.answer().assessment;
        let parts = self.charts(view, plan, season.as_ref(), width);
        charts.extend(
            parts
                .into_iter()
                .zip(1..)
                .map(|(chart, number)| PictureView {
                    id: format!("chart-{number}"),
                    title: chart.part.title,
                    caption: chart.words.unwrap_or(chart.part.caption),
                    figures: chart.figures,
                    drawing: Arc::unwrap_or_clone(chart.part.drawing),
                }),
        );
        PicturesView {
            schematic: self.schematic(),
            charts,
        }
    }

    /// How the leading cause leads to what was found.
    fn traced_path(&self, width: f32, set: &mut Typesetter) -> Option<PictureView> {
        let catalog = self.wording.catalog();
        let diagnosis = self.diagnosis.as_ref()?;
        let leading = self.answer().assessment.causes.first()?;
        let trace = diagnosis
            .traces
            .iter()
            .find(|trace| trace.cause.as_str() == leading.id)?;
        let (boxes, arrows) = self.chain(trace);
        if arrows.is_empty() {
            return None;
        }
        let args = Args::new().text("cause", leading.title.clone());
        let title = catalog.fill("picture-path", &args);
        let found: Vec<&str> = boxes
            .iter()
            .filter(|place| place.kind == catalog.text("picture-finding"))
            .map(|place| place.text.as_str())
            .collect();
        let args = Args::new()
            .text("cause", leading.title.clone())
            .text("found", found.join("; "));
        let caption = catalog.fill("picture-path-words", &args);
        let chain = Chain {
            width,
            description: title.clone(),
            boxes,
            arrows,
        };
        Some(PictureView {
            id: "path".to_owned(),
            title,
            caption,
            figures: Vec::new(),
            drawing: chain.draw(set),
        })
    }

    fn chain(&self, trace: &Trace) -> (Vec<ChainBox>, Vec<(usize, usize)>) {
        let catalog = self.wording.catalog();
        let steps: Vec<_> = trace
            .steps
            .iter()
            .filter(|step| step.alone >= WEIGHTY_BITS)
            .filter_map(|step| match &step.carrier {
                Carrier::Through(mechanisms) => Some((step, mechanisms)),
                Carrier::Instrument | Carrier::Rival(_) | Carrier::RivalLess(_) => None,
            })
            .take(FINDINGS)
            .collect();
        let longest = steps.iter().map(|(_, way)| way.len()).max().unwrap_or(0);
        let mut boxes = vec![ChainBox {
            rank: 0,
            kind: catalog.text("picture-cause"),
            text: catalog.text(&format!("cause-{}", trace.cause)),
            strong: true,
        }];
        let mut arrows: Vec<(usize, usize)> = Vec::new();
        let place = |boxes: &mut Vec<ChainBox>, wanted: ChainBox| {
            let known = boxes.iter().position(|known| known.text == wanted.text);
            known.unwrap_or_else(|| {
                boxes.push(wanted);
                boxes.len() - 1
            })
        };
        for (step, mechanisms) in steps {
            let mut from = 0;
            for (rank, mechanism) in mechanisms.iter().enumerate() {
                let wanted = ChainBox {
                    rank: rank + 1,
                    kind: catalog.text("picture-mechanism"),
                    text: catalog.text(&format!("mechanism-{mechanism}")),
                    strong: false,
                };
                let to = place(&mut boxes, wanted);
                if !arrows.contains(&(from, to)) && from != to {
                    arrows.push((from, to));
                }
                from = to;
            }
            let wanted = ChainBox {
                rank: longest + 1,
                kind: catalog.text("picture-finding"),
                text: self.step_found(step),
                strong: false,
            };
            let to = place(&mut boxes, wanted);
            if !arrows.contains(&(from, to)) && from != to {
                arrows.push((from, to));
            }
        }
        (boxes, arrows)
    }

    /// Each point that was read before and after the work, in one unit.
    fn before_and_after(&self, width: f32, set: &mut Typesetter) -> Vec<PictureView> {
        let last = |point: ReadingPoint, phase: Phase| {
            let mut readings = self.file.visit.readings.iter().rev();
            readings.find(|r| r.point() == point && r.phase == phase && r.circuit.is_none())
        };
        let pairs = ReadingPoint::ALL.iter().filter_map(|point| {
            let pair = [last(*point, Phase::Found)?, last(*point, Phase::Left)?];
            Some((*point, pair))
        });
        pairs
            .filter_map(|(point, pair)| self.pair_chart(point, pair, width, set))
            .collect()
    }

    fn pair_chart(
        &self,
        point: ReadingPoint,
        [found, left]: [&Reading; 2],
        width: f32,
        set: &mut Typesetter,
    ) -> Option<PictureView> {
        let catalog = self.wording.catalog();
        let unit = self.wording.units.unit(point.kind().dimension());
        let value = |reading: &Reading| unit.from_si(reading.value().si());
        // Bars start at zero: below it, and for scales without a true zero, they
        // would mislead.
        if [found, left].iter().any(|reading| value(reading) < 0.0) {
            return None;
        }
        let bar = |reading: &Reading, key: &str| Bar {
            label: catalog.text(key),
            value: value(reading),
            text: format::plus_minus(value(reading), 0.0, unit),
            ..Bar::default()
        };
        let label = catalog.text(&format!("point-{}", point.id()));
        let title = catalog.fill("picture-pair", &Args::new().text("point", label));
        let bars = vec![
            bar(found, "phase-found"),
            Bar {
                strong: true,
                ..bar(left, "phase-left")
            },
        ];
        let figures = bars.iter().zip([found, left]).map(|(bar, reading)| {
            let why = reading_why(reading, self.wording);
            QuantityView {
                label: bar.label.clone(),
                value: reading.text(),
                why: Some(why),
            }
        });
        let figures = figures.collect();
        let chart = BarChart {
            width,
            description: title.clone(),
            bars,
            full: None,
        };
        Some(PictureView {
            id: format!("pair-{}", point.id()),
            title,
            caption: catalog.text("picture-pair-words"),
            figures,
            drawing: chart.draw(set),
        })
    }
}

#[cfg(test)]
pub(super) mod tests;
