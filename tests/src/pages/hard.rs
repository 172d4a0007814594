//! Documents that ask the page maker more than a usual report does.

use returnline_core::report::{
    Document,
    document::{
        Align, Block, Callout, CalloutKind, Check, Column, Density, Fact, Level, Mark, PageSize,
        Row, Signature, Step, Strokes, Table, Text, Tone, Width,
    },
};

use super::{meta, texts};

/// A document without any content.
#[must_use]
pub fn empty(page: PageSize) -> Document {
    Document {
        meta: meta("Empty"),
        page,
        density: Density::Usual,
        blocks: Vec::new(),
    }
}

/// Very long names, 60 rows, 40 columns, rows taller than a page, text in other
/// scripts, emoji, control characters.
#[must_use]
pub fn hard(page: PageSize) -> Document {
    let long_name = "Gemeindezentrum-und-Mehrzweckhallenverwaltungsgebäude ".repeat(4);
    let token = "SN-0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
        .repeat(5)
        .replace('-', "");
    let mut meta = meta("Hard");
    meta.running_head = long_name.clone();
    meta.running_foot = long_name.repeat(3);
    let blocks = vec![
        Block::Title {
            overline: Some(long_name.clone()),
            text: long_name.clone(),
            subtitle: Some(Text::plain(long_name.clone())),
        },
        Block::heading(Level::Section, long_name.clone()),
        Block::Facts(vec![
            Fact {
                label: long_name.clone(),
                value: token.clone().into(),
            },
            Fact {
                label: "Short".into(),
                value: "".into(),
            },
            Fact {
                label: "".into(),
                value: "no label".into(),
            },
        ]),
        Block::paragraph(token.clone()),
        Block::paragraph(
            "Emoji \u{1f600}\u{1f44d}\u{1f3fd}, warning \u{26a0}\u{fe0f}, Hebrew \
             \u{5e9}\u{5dc}\u{5d5}\u{5dd} \u{5e2}\u{5d5}\u{5dc}\u{5dd}, Arabic \u{633}\u{644}\u{627}\u{645}, \
             Chinese \u{4f60}\u{597d}, marks e\u{301}\u{301}\u{301}\u{301}\u{301}, bell \u{7}, \
             direction \u{202e}override\u{202c}, tab\there,\r\nnew line, µ and μ, −12 °C, 10⁻³ m²",
        ),
        rows(60),
        columns(40),
        tall_row(),
        Block::Steps {
            start: 998,
            steps: vec![
                step(&long_name, 0),
                step("Nested", 12),
                Step {
                    text: token.clone().into(),
                    mark: Some(Mark::NotApplied),
                    blocks: Vec::new(),
                },
            ],
        },
        Block::Checks(vec![
            Check {
                mark: Mark::NotDone,
                text: token.clone().into(),
                remark: Some(long_name.clone().into()),
            };
            3
        ]),
        Block::Callout(Callout {
            kind: CalloutKind::Caution,
            title: Some(long_name.clone()),
            body: vec![Text::plain("Long word of caution. ".repeat(400))],
        }),
        Block::Together(vec![
            Block::heading(Level::Part, "Group longer than a page"),
            Block::paragraph("Many words. ".repeat(900)),
        ]),
        Block::Paragraph {
            text: Text::default(),
            tone: Tone::Lead,
        },
        Block::Signatures(vec![
            Signature {
                role: long_name.clone(),
                name: token.clone(),
                date: long_name.clone(),
                strokes: Strokes {
                    paths: vec![vec![(0.0, 0.0)], vec![(f32::NAN, 1.0)]]
                },
            };
            3
        ]),
    ];
    Document {
        meta,
        page,
        density: Density::Close,
        blocks,
    }
}

fn step(text: &str, depth: usize) -> Step {
    let blocks = if depth == 0 {
        vec![Block::paragraph("Innermost.")]
    } else {
        vec![Block::Steps {
            start: 1,
            steps: vec![step(text, depth - 1)],
        }]
    };
    Step {
        text: text.into(),
        mark: Some(Mark::Done),
        blocks,
    }
}

fn rows(count: usize) -> Block {
    let column = |head: &str, align| Column {
        head: head.into(),
        align,
        width: Width::Natural,
    };
    let rows = (1..=count)
        .map(|number| {
            let reading = format!("Reading number {number} with a name of usual length");
            let value = format!("{number}.{number} °C");
            Row::new(texts(&[
                &number.to_string(),
                &reading,
                &value,
                "steady, pumps on",
            ]))
        })
        .collect();
    Block::Table(Table {
        caption: Some("Sixty readings".into()),
        columns: vec![
            column("No.", Align::End),
            column("Reading", Align::Start),
            column("Value", Align::End),
            column("Mode", Align::Centre),
        ],
        rows,
    })
}

fn columns(count: usize) -> Block {
    let columns = (1..=count)
        .map(|number| Column {
            head: format!("Circuit {number}"),
            ..Column::default()
        })
        .collect();
    let row = |name: &str| {
        let mut cells = vec![Text::plain(name)];
        cells.extend((2..=count).map(|number| Text::plain(format!("{name} {number}"))));
        Row::new(cells)
    };
    Block::Table(Table {
        caption: Some("Forty circuits side by side".into()),
        columns,
        rows: vec![row("Flow"), row("Drop"), row("Velocity")],
    })
}

fn tall_row() -> Block {
    let cell = "A note that does not end. ".repeat(420);
    Block::Table(Table {
        caption: None,
        columns: vec![
            Column {
                head: "Note".into(),
                width: Width::Share(3.0),
                ..Column::default()
            },
            Column {
                head: "By".into(),
                width: Width::Share(1.0),
                ..Column::default()
            },
        ],
        rows: vec![
            Row::new(vec![cell.into(), "A. Example".into()]),
            Row::new(texts(&["", "b"])),
        ],
    })
}
