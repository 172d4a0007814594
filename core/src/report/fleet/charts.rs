//! Charts of the manager's report.

use super::{FleetPicture, GroupRow, SurvivalPoint};
use crate::report::chart::{Band, Bar, BarChart, Drawing, LineChart, Role, Series, SeriesMark};
use crate::report::fonts::Typesetter;
use crate::text::Catalog;

const WIDTH: f32 = 460.0;
/// Bars of a chart; the table below names all.
const BARS: usize = 12;

/// Causes by count.
pub(super) fn causes(picture: &FleetPicture, catalog: &Catalog, set: &mut Typesetter) -> Drawing {
    #[allow(clippy::cast_precision_loss)]
    let bars = picture.causes.iter().take(BARS).enumerate();
    let bars = bars.map(|(index, cause)| Bar {
        label: cause.title.clone(),
        value: cause.share.count as f64,
        text: cause.share.count.to_string(),
        interval: None,
        strong: index == 0,
    });
    BarChart {
        width: WIDTH,
        description: catalog.text("repeats-causes"),
        bars: bars.collect(),
        full: None,
    }
    .draw(set)
}

/// Rates of a group with their intervals.
pub(super) fn rates(title: &str, rows: &[GroupRow], set: &mut Typesetter) -> Drawing {
    let bars = rows.iter().take(BARS).map(|row| Bar {
        label: row.name.clone(),
        value: row.share.rate().unwrap_or(0.0),
        text: super::document::rate(row.share),
        interval: (row.share.of > 0).then_some((row.share.low, row.share.high)),
        strong: false,
    });
    BarChart {
        width: WIDTH,
        description: title.to_owned(),
        bars: bars.collect(),
        full: Some(1.0),
    }
    .draw(set)
}

/// Share without a callback over the months, as steps with their band.
pub(super) fn first_callback(
    points: &[SurvivalPoint],
    catalog: &Catalog,
    set: &mut Typesetter,
) -> Drawing {
    let frame = CurveFrame {
        size: (WIDTH, 200.0),
        description: catalog.text("repeats-first-callback"),
        time: catalog.text("repeats-months"),
    };
    let steps = points.iter().map(|point| CurveStep {
        time: point.months,
        without: point.without,
        low: point.low,
        high: point.high,
    });
    waiting_curve(steps, frame, catalog, set)
}

/// One point of a curve of shares without a callback.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct CurveStep {
    /// Time since start-up, in the unit of the frame's axis.
    pub time: f64,
    /// Share without a callback from here on, 0 to 1.
    pub without: f64,
    /// Low end of its interval.
    pub low: f64,
    /// High end of its interval.
    pub high: f64,
}

/// What stands around such a curve.
pub struct CurveFrame {
    /// Width and height, points.
    pub size: (f32, f32),
    /// What the picture shows, for those who cannot see it.
    pub description: String,
    /// Label of the axis of time.
    pub time: String,
}

/// The curve as steps with its band, in per cent: a share stays where it was
/// until the time of the next callback.
pub fn waiting_curve(
    steps: impl IntoIterator<Item = CurveStep>,
    frame: CurveFrame,
    catalog: &Catalog,
    set: &mut Typesetter,
) -> Drawing {
    let (mut line, mut band) = (Vec::new(), Vec::new());
    let mut add = |time: f64, step: &CurveStep| {
        line.push((time, 100.0 * step.without));
        band.push((time, 100.0 * step.low, 100.0 * step.high));
    };
    let mut before: Option<CurveStep> = None;
    for step in steps {
        if let Some(before) = before {
            add(step.time, &before);
        }
        add(step.time, &step);
        before = Some(step);
    }
    let (width, height) = frame.size;
    LineChart {
        width,
        height,
        description: frame.description,
        x_label: frame.time,
        y_label: catalog.text("repeats-without"),
        x_marks: Vec::new(),
        series: vec![Series {
            name: catalog.text("repeats-curve"),
            points: line,
            mark: SeriesMark::Line,
            role: Role::Primary,
        }],
        bands: vec![Band {
            name: catalog.text("repeats-interval"),
            points: band,
        }],
        limits: Vec::new(),
    }
    .draw(set)
}
