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
    let percent = |share: f64| 100.0 * share;
    let (mut line, mut band) = (Vec::new(), Vec::new());
    let mut before: Option<&SurvivalPoint> = None;
    for point in points {
        if let Some(before) = before {
            line.push((point.months, percent(before.without)));
            band.push((point.months, percent(before.low), percent(before.high)));
        }
        line.push((point.months, percent(point.without)));
        band.push((point.months, percent(point.low), percent(point.high)));
        before = Some(point);
    }
    LineChart {
        width: WIDTH,
        height: 200.0,
        description: catalog.text("repeats-first-callback"),
        x_label: catalog.text("repeats-months"),
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
