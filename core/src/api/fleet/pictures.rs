//! The board as pictures for the screen.

use crate::api::pictures::laid_out;
use crate::api::types::{BoardView, FleetCauseLine, PictureView};
use crate::api::{Engine, Wording};
use crate::report::chart::{Bar, BarChart};
use crate::report::fleet::{CurveFrame, CurveStep, waiting_curve};
use crate::report::fonts::Typesetter;

/// Height of the curve, points.
const HEIGHT: f32 = 190.0;
/// Bars of a chart; the table beside it names all.
const BARS: usize = 10;

impl Engine {
    /// What the board shows, drawn: `causes-count`, `causes-hours`,
    /// `causes-cost`, `waiting`, and `rates-<dimension>` for every sort of group; each
    /// so many points wide.
    #[must_use]
    pub fn board_pictures(&self, board: &BoardView, width: f32) -> Vec<PictureView> {
        let width = laid_out(width);
        // Without fonts nothing can be set; the tables say the same.
        let Ok(mut set) = Typesetter::new() else {
            return Vec::new();
        };
        let mut pictures = causes(board, self.wording, width, &mut set);
        pictures.extend(waiting(board, self.wording, width, &mut set));
        pictures.extend(rates(board, self.wording, width, &mut set));
        pictures
    }
}

/// Causes by how often, how long and how dear: the greatest of each first.
fn causes(
    board: &BoardView,
    wording: Wording,
    width: f32,
    set: &mut Typesetter,
) -> Vec<PictureView> {
    type Measure = (&'static str, fn(&FleetCauseLine) -> f64);
    #[allow(clippy::cast_precision_loss)]
    let measures: [Measure; 3] = [
        ("count", |line| line.count as f64),
        ("hours", |line| line.hours),
        ("cost", |line| line.cost),
    ];
    let catalog = wording.catalog();
    let mut pictures = Vec::new();
    for (name, value) in measures {
        let mut lines: Vec<&FleetCauseLine> = board
            .causes
            .iter()
            .filter(|line| value(line) > 0.0)
            .collect();
        if lines.is_empty() {
            continue;
        }
        lines.sort_by(|a, b| value(b).total_cmp(&value(a)));
        let bars = lines.iter().take(BARS).enumerate();
        let title = catalog.text(&format!("fleet-picture-{name}"));
        let chart = BarChart {
            width,
            description: title.clone(),
            bars: bars
                .map(|(index, line)| Bar {
                    label: line.title.clone(),
                    value: value(line),
                    text: format!("{:.0}", value(line)),
                    interval: None,
                    strong: index == 0,
                })
                .collect(),
            full: None,
        };
        pictures.push(PictureView {
            id: format!("causes-{name}"),
            caption: title.clone(),
            title,
            figures: Vec::new(),
            drawing: chart.draw(set),
        });
    }
    pictures
}

/// Share without a callback over the days, as steps with their band.
fn waiting(
    board: &BoardView,
    wording: Wording,
    width: f32,
    set: &mut Typesetter,
) -> Option<PictureView> {
    let curve = &board.waiting;
    if curve.points.len() < 2 {
        return None;
    }
    let catalog = wording.catalog();
    let title = catalog.text("fleet-picture-waiting");
    let frame = CurveFrame {
        size: (width, HEIGHT),
        description: format!("{title}: {}", curve.words),
        time: catalog.text("fleet-picture-days"),
    };
    let steps = curve.points.iter().map(|point| CurveStep {
        time: point.days,
        without: point.share.value,
        low: point.share.low,
        high: point.share.high,
    });
    let drawing = waiting_curve(steps, frame, catalog, set);
    Some(PictureView {
        id: "waiting".to_owned(),
        title,
        caption: curve.words.clone(),
        figures: Vec::new(),
        drawing,
    })
}

/// Callbacks per system and year of every group, with their intervals.
fn rates(
    board: &BoardView,
    wording: Wording,
    width: f32,
    set: &mut Typesetter,
) -> Vec<PictureView> {
    let caption = wording.catalog().text("fleet-picture-rates");
    let mut pictures = Vec::new();
    for sort in &board.rates {
        let known = sort.rows.iter().filter_map(|row| Some((row, row.rate?)));
        let bars: Vec<Bar> = known
            .take(BARS)
            .map(|(row, rate)| Bar {
                label: row.label.clone(),
                value: rate.value,
                text: format!("{:.1}", rate.value),
                interval: Some((rate.low, rate.high)),
                strong: false,
            })
            .collect();
        if bars.is_empty() {
            continue;
        }
        let full = bars
            .iter()
            .filter_map(|bar| bar.interval)
            .map(|(_, high)| high)
            .fold(0.0, f64::max);
        let chart = BarChart {
            width,
            description: format!("{}: {caption}", sort.label),
            bars,
            full: Some(full),
        };
        pictures.push(PictureView {
            id: format!("rates-{}", sort.dimension),
            title: sort.label.clone(),
            caption: caption.clone(),
            figures: Vec::new(),
            drawing: chart.draw(set),
        });
    }
    pictures
}

#[cfg(test)]
mod tests {
    use crate::api::pictures::tests::out_of_sight;
    use crate::api::tests::engine;
    use crate::api::types::FleetQuery;
    use crate::report::fonts::Typesetter;

    #[test]
    fn every_part_that_has_numbers_is_drawn_and_an_empty_board_is_not() {
        let mut engine = engine();
        let empty = engine.board(&FleetQuery::default()).expect("counted");
        assert_eq!(engine.board_pictures(&empty, 230.0).len(), 0);
        engine.invent_fleet(300, 1).expect("invented");
        let board = engine.board(&FleetQuery::default()).expect("counted");
        // As narrow as text of twice its size makes a phone, too.
        let mut set = Typesetter::new().expect("fonts");
        for picture in engine.board_pictures(&board, 0.0) {
            let lost = out_of_sight(&picture.drawing, &mut set);
            assert!(lost.is_empty(), "{}: {lost:?}", picture.title);
        }
        let drawn = engine.board_pictures(&board, 230.0);
        for id in ["causes-count", "causes-hours", "waiting", "rates-crew"] {
            let picture = drawn.iter().find(|picture| picture.id == id);
            let picture = picture.unwrap_or_else(|| panic!("{id} is drawn"));
            assert!(!picture.drawing.items.is_empty(), "{id}");
        }
    }
}
