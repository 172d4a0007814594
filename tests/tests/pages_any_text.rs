//! Whatever text stands in whatever block, pages come out and hold it inside
//! their margins.

use std::sync::Arc;

use proptest::prelude::*;
use returnline_core::report::{
    Document,
    chart::{
        Anchor, Band, Bar, BarChart, Chain, ChainBox, Drawing, LabelStyle, LineChart, Point, Role,
        Series, SeriesMark, Stroke,
    },
    document::{
        Align, Block, Callout, CalloutKind, Check, Column, Emphasis, Fact, Level, Mark, PageSize,
        Row, RowKind, Signature, Step, Strokes, Table, Text, Tone, Width,
    },
    fonts::Typesetter,
    layout::lay_out,
    to_pdf,
};
use returnline_tests::pages::{empty, words};

fn any_string() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => any::<String>(),
        2 => "[a-zA-Z0-9 ,.µ°−-]{0,300}",
        1 => "[A-Z0-9]{200,400}",
        1 => "[\u{590}-\u{6ff}\u{4e00}-\u{4eff}\u{1f300}-\u{1f6ff}\u{300}-\u{310} \n\r\t]{0,120}",
        1 => Just(String::new()),
    ]
}

fn any_text() -> impl Strategy<Value = Text> {
    prop::collection::vec((any_string(), 0..5u8), 0..4).prop_map(|spans| {
        spans
            .into_iter()
            .fold(Text::default(), |text, (words, style)| match style {
                0 => text.then(words, Emphasis::Strong),
                1 => text.then(words, Emphasis::Slanted),
                2 => text.then(words, Emphasis::Soft),
                3 => text.then_link(words.clone(), words),
                _ => text.then(words, Emphasis::None),
            })
    })
}

fn any_mark() -> impl Strategy<Value = Mark> {
    prop_oneof![
        Just(Mark::Done),
        Just(Mark::NotDone),
        Just(Mark::NotApplied)
    ]
}

fn any_table() -> impl Strategy<Value = Block> {
    let width = prop_oneof![Just(Width::Natural), any::<f32>().prop_map(Width::Share)];
    let align = prop_oneof![Just(Align::Start), Just(Align::Centre), Just(Align::End)];
    let column =
        (any_string(), align, width).prop_map(|(head, align, width)| Column { head, align, width });
    let kind = prop_oneof![
        Just(RowKind::Plain),
        Just(RowKind::Strong),
        Just(RowKind::Group)
    ];
    let row = (prop::collection::vec(any_text(), 0..7), kind, any::<bool>()).prop_map(
        |(cells, kind, keep_with_next)| Row {
            cells,
            kind,
            keep_with_next,
        },
    );
    let columns = prop::collection::vec(column, 0..9);
    (
        prop::option::of(any_string()),
        columns,
        prop::collection::vec(row, 0..9),
    )
        .prop_map(|(caption, columns, rows)| {
            Block::Table(Table {
                caption,
                columns,
                rows,
            })
        })
}

fn any_figure() -> impl Strategy<Value = Block> {
    let number = prop_oneof![any::<f32>(), -100.0..600.0f32];
    (any_string(), prop::collection::vec(number, 8), any_text()).prop_map(
        |(words, numbers, caption)| {
            let mut drawing = Drawing::new(numbers[0], numbers[1], words.clone());
            let at = Point::new(numbers[2], numbers[3]);
            let style = LabelStyle {
                size: numbers[4],
                ..LabelStyle::plain(Anchor::Middle)
            };
            drawing.label(at, words, style);
            let to = Point::new(numbers[5], numbers[6]);
            drawing.line(at, to, Stroke::dashed(Role::Limit, numbers[7]));
            Block::Figure {
                drawing: Arc::new(drawing),
                caption: Some(caption),
            }
        },
    )
}

fn any_chart() -> impl Strategy<Value = Block> {
    (any_string(), prop::collection::vec(any::<f64>(), 6), 0..3u8).prop_map(
        |(name, numbers, kind)| {
            let drawing = match kind {
                0 => lines(&name, &numbers),
                1 => bars(&name, &numbers),
                _ => chain(&name),
            };
            Block::Figure {
                drawing: Arc::new(drawing),
                caption: None,
            }
        },
    )
}

fn lines(name: &str, numbers: &[f64]) -> Drawing {
    LineChart {
        width: 420.0,
        height: 160.0,
        x_label: name.into(),
        y_label: name.into(),
        x_marks: vec![(numbers[0], name.into())],
        series: vec![Series {
            name: name.into(),
            points: vec![(numbers[1], numbers[2]), (numbers[3], numbers[4])],
            mark: SeriesMark::Line,
            role: Role::Primary,
        }],
        bands: vec![Band {
            name: name.into(),
            points: vec![(numbers[1], numbers[4], numbers[5])],
        }],
        limits: vec![(numbers[5], name.into())],
        ..LineChart::default()
    }
    .draw(&mut Typesetter::new().unwrap())
}

fn bars(name: &str, numbers: &[f64]) -> Drawing {
    BarChart {
        width: 420.0,
        bars: vec![Bar {
            label: name.into(),
            value: numbers[0],
            text: name.into(),
            interval: Some((numbers[1], numbers[2])),
            strong: true,
        }],
        full: Some(numbers[3]),
        ..BarChart::default()
    }
    .draw(&mut Typesetter::new().unwrap())
}

fn chain(name: &str) -> Drawing {
    let content = |rank| ChainBox {
        rank,
        kind: name.into(),
        text: name.into(),
        strong: rank == 0,
    };
    Chain {
        width: 300.0,
        boxes: (0..4).map(content).collect(),
        arrows: vec![(0, 1), (1, 2), (2, 3), (3, 0), (9, 9), (1, 1)],
        ..Chain::default()
    }
    .draw(&mut Typesetter::new().unwrap())
}

fn any_plain_block() -> impl Strategy<Value = Block> {
    let level = prop_oneof![Just(Level::Section), Just(Level::Part), Just(Level::Detail)];
    let tone = prop_oneof![Just(Tone::Body), Just(Tone::Lead), Just(Tone::Small)];
    let fact = (any_string(), any_text()).prop_map(|(label, value)| Fact { label, value });
    let check = (any_mark(), any_text(), prop::option::of(any_text()))
        .prop_map(|(mark, text, remark)| Check { mark, text, remark });
    let kind = prop_oneof![Just(CalloutKind::Caution), Just(CalloutKind::Note)];
    let body = prop::collection::vec(any_text(), 0..3);
    let strokes = prop::collection::vec(
        prop::collection::vec((any::<f32>(), any::<f32>()), 0..5),
        0..4,
    );
    let signature = (any_string(), any_string(), any_string(), strokes).prop_map(
        |(role, name, date, paths)| Signature {
            role,
            name,
            date,
            strokes: Strokes { paths },
        },
    );
    prop_oneof![
        (
            prop::option::of(any_string()),
            any_string(),
            prop::option::of(any_text())
        )
            .prop_map(|(overline, text, subtitle)| Block::Title {
                overline,
                text,
                subtitle
            }),
        (any_string(), level).prop_map(|(text, level)| Block::Heading { level, text }),
        (any_text(), tone).prop_map(|(text, tone)| Block::Paragraph { text, tone }),
        prop::collection::vec(fact, 0..4).prop_map(Block::Facts),
        any_table(),
        (kind, prop::option::of(any_string()), body)
            .prop_map(|(kind, title, body)| Block::Callout(Callout { kind, title, body })),
        prop::collection::vec(check, 0..4).prop_map(Block::Checks),
        prop::collection::vec(any_text(), 0..4).prop_map(Block::Points),
        any_figure(),
        any_chart(),
        prop::collection::vec(signature, 0..4).prop_map(Block::Signatures),
        any::<f32>().prop_map(Block::Space),
        Just(Block::Rule),
        Just(Block::PageBreak),
    ]
}

fn any_block() -> impl Strategy<Value = Block> {
    any_plain_block().prop_recursive(2, 12, 4, |inner| {
        let blocks = prop::collection::vec(inner, 0..4);
        let step = (any_text(), prop::option::of(any_mark()), blocks.clone())
            .prop_map(|(text, mark, blocks)| Step { text, mark, blocks });
        prop_oneof![
            blocks.prop_map(Block::Together),
            (any::<u32>(), prop::collection::vec(step, 0..3))
                .prop_map(|(start, steps)| Block::Steps { start, steps }),
        ]
    })
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 60,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn any_text_in_any_block_stays_inside(
        blocks in prop::collection::vec(any_block(), 0..5),
        head in any_string(),
        foot in any_string(),
        letter in any::<bool>(),
    ) {
        let paper = if letter { PageSize::Letter } else { PageSize::A4 };
        let mut document = Document { blocks, ..empty(paper) };
        document.meta.title = head.clone();
        document.meta.id = foot.clone();
        document.meta.running_head = head;
        document.meta.running_foot = foot;
        let pages = lay_out(&document, &words()).unwrap();
        for page in &pages.pages {
            for item in &page.items {
                prop_assert!(pages.margins.holds(&item.area(), 0.8), "{item:?}");
            }
            for run in page.runs() {
                prop_assert!(run.glyphs.iter().all(|glyph| glyph.id != 0), "{run:?}");
            }
        }
        let bytes = to_pdf(&document, &words()).unwrap();
        let read = lopdf::Document::load_mem(&bytes).unwrap();
        prop_assert_eq!(read.get_pages().len(), pages.pages.len());
    }
}
