//! The legend of a chart of lines: names beside samples, in rows above the picture.

use super::lines::ROW;
use super::{
    Anchor, Drawing, LABEL_SIZE, LabelStyle, LineChart, Point, Role, SeriesMark, Shape, path::wrap,
};
use crate::report::fonts::{Face, Typesetter};

/// Length of a sample.
const SAMPLE: f32 = 18.0;
/// Room between a sample and its name.
const GAP: f32 = 5.0;
/// Room between an entry and the next of its row.
const BETWEEN: f32 = 16.0;
/// Most lines of a name.
const NAME_LINES: usize = 3;

/// The entries of a legend, laid out for the width of their chart.
pub(super) struct Legend {
    entries: Vec<Entry>,
}

struct Entry {
    x: f32,
    row: f32,
    lines: Vec<String>,
    sample: Sample,
}

impl Entry {
    /// Rows it takes.
    #[allow(clippy::cast_precision_loss)]
    fn rows(&self) -> f32 {
        self.lines.len().max(1) as f32
    }
}

#[derive(Clone, Copy)]
enum Sample {
    Series(SeriesMark, Role),
    Band,
}

impl Legend {
    /// Of the lines, bands and limits of a chart that have a name.
    pub(super) fn of(chart: &LineChart, set: &mut Typesetter) -> Self {
        let lines = chart.series.iter().map(|series| {
            let sample = Sample::Series(series.mark, series.role);
            (&series.name, sample)
        });
        let bands = chart.bands.iter().map(|band| (&band.name, Sample::Band));
        let limits = chart.limits.iter().map(|(_, name)| {
            let sample = Sample::Series(SeriesMark::Dashes, Role::Limit);
            (name, sample)
        });
        let mut entries: Vec<Entry> = Vec::new();
        let (mut x, mut row) = (0.0, 0.0);
        for (name, sample) in lines
            .chain(bands)
            .chain(limits)
            .filter(|(name, _)| !name.is_empty())
        {
            let wide = SAMPLE + GAP + set.width(Face::Regular, LABEL_SIZE, name);
            if x > 0.0 && x + wide > chart.width {
                let rows = entries.last().map_or(1.0, Entry::rows);
                (x, row) = (0.0, row + rows);
            }
            let style = (Face::Regular, LABEL_SIZE);
            let room = chart.width - SAMPLE - GAP;
            entries.push(Entry {
                x,
                row,
                lines: wrap(set, name, style, room, NAME_LINES),
                sample,
            });
            x += wide + BETWEEN;
        }
        Self { entries }
    }

    /// Rows that it takes.
    pub(super) fn rows(&self) -> f32 {
        self.entries
            .last()
            .map_or(0.0, |last| last.row + last.rows())
    }

    /// Paints it below so many rows of other words.
    pub(super) fn paint(&self, drawing: &mut Drawing, below: f32) {
        for entry in &self.entries {
            let y = ROW * (1.0 + below + entry.row) - 3.0;
            entry.sample.paint(drawing, Point::new(entry.x, y - 3.0));
            let mut at = Point::new(entry.x + SAMPLE + GAP, y);
            for line in &entry.lines {
                drawing.label(at, line, LabelStyle::plain(Anchor::Start));
                at.y += ROW;
            }
        }
    }
}

impl Sample {
    /// Paints it from a point to the right.
    fn paint(self, drawing: &mut Drawing, from: Point) {
        let to = Point::new(from.x + SAMPLE, from.y);
        let middle = Point::new(from.x + SAMPLE / 2.0, from.y);
        match self {
            Self::Band => drawing.push(Shape::Box {
                at: Point::new(from.x, from.y - 3.5),
                width: SAMPLE,
                height: 7.0,
                radius: 0.0,
                fill: Some(Role::Band),
                stroke: None,
            }),
            Self::Series(mark, role) => match mark.stroke(role) {
                Some(stroke) => drawing.line(from, to, stroke),
                None => drawing.push(mark.spot(middle, role)),
            },
        }
    }
}
