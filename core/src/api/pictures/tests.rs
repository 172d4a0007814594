use super::*;
use crate::api::{Wording, read_visit_file};
use crate::report::chart::{Anchor, Drawing, Point, Shape};
use crate::report::fonts::Face;
use crate::text::Language;
use chrono::NaiveDate;

const SAMPLES: [&[u8]; 3] = [
    include_bytes!("../../../data/samples/air-in-one-circuit.json"),
    include_bytes!("../../../data/samples/pressure-lost-over-summer.json"),
    include_bytes!("../../../data/samples/freeze-guard-trips.json"),
];

fn calls(language: Language) -> Vec<Call> {
    let wording = Wording {
        language,
        ..Wording::default()
    };
    let day = NaiveDate::from_ymd_opt(2026, 8, 14).expect("a day");
    let calls = SAMPLES.map(|sample| {
        let mut file = read_visit_file(sample, wording).expect("a sample");
        // Read again after the work, as it was before.
        let mut left = file.visit.readings.clone();
        for reading in &mut left {
            reading.id = None;
            reading.phase = Phase::Left;
        }
        file.visit.readings.extend(left);
        Call::assess(&file, day, wording)
    });
    calls.into()
}

/// Words that stand out of the drawing, or would be too small to read.
pub(in crate::api) fn out_of_sight(drawing: &Drawing, set: &mut Typesetter) -> Vec<String> {
    let mut found = Vec::new();
    for item in &drawing.items {
        let Shape::Label {
            at,
            text,
            size,
            anchor,
            strong,
            ..
        } = item
        else {
            continue;
        };
        let face = if *strong {
            Face::SemiBold
        } else {
            Face::Regular
        };
        let wide = set.width(face, *size, text);
        let from = match anchor {
            Anchor::Start => at.x,
            Anchor::Middle => at.x - wide / 2.0,
            Anchor::End => at.x - wide,
        };
        let inside = from >= -0.5 && from + wide <= drawing.width + 0.5;
        if !inside || at.y > drawing.height || *size < 8.0 {
            found.push(format!("{text:?} from {from} of {}", drawing.width));
        }
    }
    found
}

#[test]
fn every_chart_keeps_its_words_inside_at_every_width() {
    let mut set = Typesetter::new().expect("fonts");
    for language in Language::ALL {
        for call in calls(language) {
            for width in [0.0, 184.0, f32::INFINITY] {
                let charts = call.pictures(width).charts;
                assert!(charts.len() > 2);
                for chart in charts {
                    let [least, most] = WIDTHS;
                    assert!((least..=most).contains(&chart.drawing.width));
                    let lost = out_of_sight(&chart.drawing, &mut set);
                    assert!(lost.is_empty(), "{}: {lost:?}", chart.title);
                }
            }
        }
    }
}

#[test]
fn a_width_that_is_no_number_is_the_least() {
    let [least, most] = WIDTHS;
    let asked = [f32::NAN, -1.0, 225.0, 1e9].map(laid_out);
    assert_eq!(
        asked.map(f32::to_bits),
        [least, least, 225.0, most].map(f32::to_bits)
    );
}

#[test]
fn every_number_of_a_chart_says_where_it_comes_from() {
    for call in calls(Language::English) {
        for chart in call.pictures(225.0).charts {
            // The way from cause to finding holds no number.
            assert_eq!(chart.figures.is_empty(), chart.id == "path", "{}", chart.id);
            for figure in &chart.figures {
                let why = figure.why.as_ref();
                let why = why.unwrap_or_else(|| panic!("{}: {figure:?}", chart.title));
                assert!(!why.formula.is_empty() && !why.source.is_empty());
            }
        }
    }
}

#[test]
fn a_remark_with_a_probability_says_where_it_comes_from() {
    let mut told = 0;
    // A loop that nobody read: no pressure is certain to serve it.
    let mut unread = read_visit_file(SAMPLES[0], Wording::default()).expect("a sample");
    unread
        .visit
        .readings
        .retain(|reading| reading.point() != ReadingPoint::StaticPressure);
    let day = NaiveDate::from_ymd_opt(2026, 8, 14).expect("a day");
    let unread = Call::assess(&unread, day, Wording::default());
    for call in calls(Language::English).into_iter().chain([unread]) {
        let plan = call.answer().plan.as_ref().expect("a plan");
        for remark in plan.remarks.iter().filter(|one| one.words.contains('%')) {
            let why = remark.why.as_ref().expect("explained");
            let mut values = why.inputs.iter().map(|(_, value)| value);
            let named = values.any(|value| remark.words.contains(value.as_str()));
            assert!(named, "{remark:?}");
            told += 1;
        }
    }
    assert!(told > 0, "no remark holds a probability");
}

/// Whether a straight line along an axis runs through the inside of a box.
fn runs_through(line: &[Point], box_: (f32, f32, f32, f32)) -> bool {
    let (left, top, right, bottom) = box_;
    let [x, y] = [|p: &Point| p.x, |p: &Point| p.y].map(|of| {
        let ends = [of(&line[0]), of(&line[1])];
        (ends[0].min(ends[1]), ends[0].max(ends[1]))
    });
    // The edge itself belongs to the arrows that begin and end there.
    const EDGE: f32 = 0.5;
    x.0 < right - EDGE && x.1 > left + EDGE && y.0 < bottom - EDGE && y.1 > top + EDGE
}

#[test]
fn on_a_phone_no_arrow_runs_behind_a_box_that_it_does_not_come_from() {
    let mut looked_at = 0;
    for language in Language::ALL {
        for call in calls(language) {
            for width in [85.0, 150.0, 225.0] {
                let charts = call.pictures(width).charts;
                let path = charts.iter().find(|chart| chart.id == "path");
                let items = &path.expect("a cause leads").drawing.items;
                let boxes = items.iter().filter_map(|item| match item {
                    Shape::Box {
                        at, width, height, ..
                    } => Some((at.x, at.y, at.x + width, at.y + height)),
                    _ => None,
                });
                let boxes: Vec<_> = boxes.collect();
                for item in items {
                    let Shape::Arrow { points, .. } = item else {
                        continue;
                    };
                    for line in points.windows(2) {
                        let through = boxes.iter().find(|one| runs_through(line, **one));
                        assert!(through.is_none(), "{line:?} runs through {through:?}");
                        looked_at += 1;
                    }
                }
            }
        }
    }
    assert!(looked_at > 40, "only {looked_at} lines");
}
