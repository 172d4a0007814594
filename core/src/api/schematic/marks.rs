//! What is suspected where: a sign of its own shape with a letter, and words.

use super::Place;
use super::layout::Layout;
use crate::api::Call;
use crate::api::types::{CauseView, MarkView};
use crate::report::chart::{Anchor, Drawing, LabelStyle, Point, Role, Shape, Stroke};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::LazyLock;

const FILE: &str = include_str!("../../../data/schematic.toml");
/// A cause is marked from this probability on. Judgement.
const SUSPECTED: f64 = 0.15;
/// Signs on one drawing.
const MOST: usize = 4;

#[derive(Deserialize)]
struct Marks {
    marks: BTreeMap<String, (String, String)>,
}

static MARKS: LazyLock<BTreeMap<String, (String, String)>> = LazyLock::new(|| {
    // A test holds the shipped file; without it nothing is marked.
    toml::from_str::<Marks>(FILE).map_or_else(|_| BTreeMap::new(), |file| file.marks)
});

/// A sign on the drawing.
pub(in crate::api) struct Marked {
    /// What kind of sign it is.
    pub kind: &'static str,
    /// Its letter, cause and words.
    pub view: MarkView,
}

/// The signs of suspected causes, of those that `told` holds.
pub(super) fn marks(
    call: &Call,
    drawing: &mut Drawing,
    layout: &Layout,
    told: impl Fn(&CauseView) -> bool,
) -> Vec<Marked> {
    let catalog = call.wording.catalog();
    let answer = call.answer();
    let causes = &answer.assessment.causes;
    let suspected = causes
        .iter()
        .filter(|cause| cause.probability >= SUSPECTED && told(cause));
    let placed = suspected.filter_map(|cause| {
        let (place, sign) = MARKS.get(&cause.id)?;
        Some((cause, Place::named(place)?, sign.as_str()))
    });
    let mut used: Vec<Place> = Vec::new();
    let mut views = Vec::new();
    for ((cause, place, sign), letter) in placed.take(MOST).zip(["A", "B", "C", "D"]) {
        // Two suspicions of one place stand beside each other.
        let beside = used.iter().filter(|known| **known == place).count();
        used.push(place);
        let at = layout.sign_beside(place, beside);
        draw(drawing, at, layout.sign, sign, letter);
        let word = catalog.text(&format!("sign-{sign}"));
        if layout.sign_words {
            let style = LabelStyle {
                strong: true,
                size: 13.0,
                ..LabelStyle::plain(Anchor::Middle)
            };
            let below = Point::new(at.x, at.y + layout.sign + 12.5);
            drawing.label(below, word.clone(), style);
        }
        let view = MarkView {
            cause: cause.id.clone(),
            letter: letter.to_owned(),
            sign: word,
            text: cause.title.clone(),
            shown: cause.shown.clone(),
        };
        views.push(Marked { kind: sign, view });
    }
    views
}

/// Air is a bubble, a valve two wedges, a blocked place a square, a leak a drop,
/// a pressure that is off a diamond: told apart without colour.
fn draw(drawing: &mut Drawing, at: Point, size: f32, sign: &str, letter: &str) {
    let outline = Some(Stroke::solid(Role::Limit, 2.0 * size / 13.0));
    let point = |dx: f32, dy: f32| Point::new(at.x + dx * size, at.y + dy * size);
    let polygon = |points: Vec<Point>| Shape::Polygon {
        points,
        fill: Some(Role::Paper),
        stroke: outline,
    };
    drawing.push(match sign {
        "air" => Shape::Circle {
            centre: at,
            radius: size,
            fill: Some(Role::Paper),
            stroke: outline,
        },
        "valve" => polygon(vec![
            point(-1.4, -0.9),
            point(0.0, -0.5),
            point(1.4, -0.9),
            point(1.4, 0.9),
            point(0.0, 0.5),
            point(-1.4, 0.9),
        ]),
        "blocked" => polygon(vec![
            point(-0.9, -0.9),
            point(0.9, -0.9),
            point(0.9, 0.9),
            point(-0.9, 0.9),
        ]),
        "leak" => polygon(vec![
            point(0.0, -1.4),
            point(0.8, -0.1),
            point(0.8, 0.6),
            point(0.4, 1.0),
            point(-0.4, 1.0),
            point(-0.8, 0.6),
            point(-0.8, -0.1),
        ]),
        _ => polygon(vec![
            point(0.0, -1.2),
            point(1.2, 0.0),
            point(0.0, 1.2),
            point(-1.2, 0.0),
        ]),
    });
    let style = LabelStyle {
        strong: true,
        size: 14.0 / 13.0 * size,
        ..LabelStyle::plain(Anchor::Middle)
    };
    let base = Point::new(at.x, at.y + 5.0 / 13.0 * size);
    drawing.label(base, letter, style);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::api::knowledge;
    use crate::records::visit_file::Vocabulary;
    use crate::text::{Language, catalog};

    const SIGNS: [&str; 5] = ["air", "valve", "blocked", "leak", "gauge"];

    #[test]
    fn every_marked_cause_exists_and_has_a_place_and_a_sign() {
        let file: Marks = toml::from_str(FILE).expect("reads");
        for (cause, (place, sign)) in &file.marks {
            assert!(knowledge().has_cause(cause), "{cause}");
            assert!(Place::named(place).is_some(), "{place}");
            assert!(SIGNS.contains(&sign.as_str()), "{sign}");
        }
        for sign in SIGNS {
            for language in Language::ALL {
                assert!(catalog(language).has(&format!("sign-{sign}")), "{sign}");
            }
        }
    }
}
