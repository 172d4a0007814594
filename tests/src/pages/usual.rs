//! A report as it usually is: every kind of block, lengths as in life.

use std::sync::Arc;

use returnline_core::report::{
    Document,
    chart::{Band, Bar, BarChart, Chain, ChainBox, LineChart, Role, Series, SeriesMark},
    document::{
        Align, Block, Callout, CalloutKind, Check, Column, Density, Emphasis, Fact, Level, Mark,
        PageSize, PhotoEntry, Row, RowKind, Signature, Step, Strokes, Table, Text, Tone, Width,
    },
    fonts::Typesetter,
    photo::Photo,
};

use super::{meta, texts};

/// An invented service report with every kind of block, on the given paper,
/// with the given photos.
#[must_use]
pub fn usual(page: PageSize, photos: &[Arc<Photo>]) -> Document {
    let mut blocks = vec![
        Block::Title {
            overline: Some("Service report \u{b7} invented example".into()),
            text: "Low flow and freeze-guard trips on a four-circuit loop".into(),
            subtitle: Some("Visit of 14 October 2026 \u{b7} report example-0001".into()),
        },
        Block::Paragraph {
            tone: Tone::Lead,
            text: Text::plain("Air left in circuit 3 after filling is the most likely cause. ")
                .then(
                    "The loop was purged, flow is back to its design value.",
                    Emphasis::Strong,
                ),
        },
        heading(Level::Section, "Site and system"),
        Block::Facts(facts()),
        heading(Level::Section, "Readings"),
        Block::paragraph(
            "All readings with their unit and the uncertainty that follows from the instrument. \
             Temperatures at steady running, at least 15 minutes after start.",
        ),
        Block::Table(readings()),
    ];
    blocks.extend(causes());
    blocks.extend(work());
    blocks.extend(charts());
    if !photos.is_empty() {
        blocks.push(heading(Level::Section, "Photos"));
        let captions = [
            "Air separator before the work",
            "Purge cart at the flow centre",
            "Gauge after",
        ];
        let photos = photos
            .iter()
            .zip(captions.iter().cycle())
            .map(|(photo, caption)| PhotoEntry {
                photo: Arc::clone(photo),
                caption: Some((*caption).into()),
            })
            .collect();
        blocks.push(Block::Photos { photos, per_row: 2 });
    }
    blocks.push(Block::Together(vec![
        heading(Level::Section, "Signatures"),
        Block::Signatures(vec![
            signature("Technician", "A. Example"),
            signature("Owner", ""),
        ]),
    ]));
    blocks.push(heading(Level::Section, "Method and sources"));
    blocks.push(Block::Paragraph {
        tone: Tone::Small,
        text: Text::plain(
            "Flow follows from the pressure drop over the heat exchanger and its table. \
             Friction after Darcy and Weisbach. More at ",
        )
        .then_link("www.example.org/method", "https://www.example.org/method")
        .then(".", Emphasis::None),
    });
    Document {
        meta: meta("Service report"),
        page,
        density: Density::Usual,
        blocks,
    }
}

fn heading(level: Level, text: &str) -> Block {
    Block::heading(level, text)
}

fn facts() -> Vec<Fact> {
    [
        ("Customer", "M. Sample (invented), 12 Example Lane"),
        (
            "Complaint",
            "Unit stops on cold mornings; installer topped up the loop twice.",
        ),
        (
            "Heat pump",
            "4 ton water-to-air, R-410A, two circulators in series",
        ),
        (
            "Loop",
            "4 vertical circuits, 1 in SDR-11, 250 ft deep each, parallel, reverse return",
        ),
        (
            "Fluid",
            "Propylene glycol in water, 20 % by volume, freeze point \u{2212}7 °C (19 °F)",
        ),
    ]
    .into_iter()
    .map(|(label, value)| Fact {
        label: label.into(),
        value: value.into(),
    })
    .collect()
}

fn readings() -> Table {
    let column = |head: &str, align, width| Column {
        head: head.into(),
        align,
        width,
    };
    let rows = [
        ["Entering water", "3.1 °C", "± 0.3", "4.4 °C", "± 0.3"],
        [
            "Leaving water",
            "\u{2212}1.8 °C",
            "± 0.3",
            "1.6 °C",
            "± 0.3",
        ],
        [
            "Pressure drop over exchanger",
            "1.9 psi",
            "± 0.2",
            "5.2 psi",
            "± 0.2",
        ],
        [
            "Loop flow, from pressure drop",
            "6.1 gpm",
            "± 0.5",
            "11.8 gpm",
            "± 0.6",
        ],
        [
            "Static pressure, pumps off",
            "12 psi",
            "± 1",
            "48 psi",
            "± 1",
        ],
        ["Conductivity of make-up water", "310 µS/cm", "± 15", "", ""],
    ];
    let mut all = vec![Row::group("Water side")];
    all.extend(rows.iter().map(|cells| Row::new(texts(cells))));
    all.push(Row::group("Electrical"));
    all.push(Row::new(texts(&[
        "Circulators, both",
        "385 W",
        "± 10",
        "410 W",
        "± 10",
    ])));
    all.push(Row {
        kind: RowKind::Strong,
        ..Row::new(texts(&[
            "Heat from the ground",
            "8.4 kW",
            "± 0.9",
            "13.1 kW",
            "± 0.9",
        ]))
    });
    Table {
        caption: Some("Before and after".into()),
        columns: vec![
            column("Reading", Align::Start, Width::Share(1.0)),
            column("Before", Align::End, Width::Natural),
            column("", Align::Start, Width::Natural),
            column("After", Align::End, Width::Natural),
            column("", Align::Start, Width::Natural),
        ],
        rows: all,
    }
}

fn causes() -> Vec<Block> {
    let mut set = match Typesetter::new() {
        Ok(set) => set,
        Err(_) => return Vec::new(),
    };
    let bar = |label: &str, value: f64, text: &str, strong| Bar {
        label: label.into(),
        value,
        text: text.into(),
        interval: None,
        strong,
    };
    let bars = BarChart {
        width: 470.0,
        description: "Causes by probability".into(),
        full: Some(1.0),
        bars: vec![
            bar("Air left in one circuit", 0.72, "72 %", true),
            bar("Second circulator not running", 0.11, "11 %", false),
            bar("Valve of a header part closed", 0.08, "8 %", false),
            bar("Weak antifreeze", 0.04, "4 %", false),
        ],
    };
    let content = |rank, kind: &str, text: &str, strong| ChainBox {
        rank,
        kind: kind.into(),
        text: text.into(),
        strong,
    };
    let chain = Chain {
        width: 492.0,
        description: "How the cause leads to what was found".into(),
        boxes: vec![
            content(0, "Cause", "Air left in circuit 3 after filling", true),
            content(
                1,
                "Mechanism",
                "The air column stops the flow in that circuit",
                false,
            ),
            content(
                2,
                "Mechanism",
                "Three circuits carry what four should",
                false,
            ),
            content(3, "Found", "Flow 6.1 gpm against 12 gpm by design", false),
            content(
                3,
                "Found",
                "Leaving water \u{2212}1.8 °C, guard trips",
                false,
            ),
        ],
        arrows: vec![(0, 1), (1, 2), (2, 3), (2, 4)],
    };
    vec![
        heading(Level::Section, "Causes"),
        Block::Figure {
            drawing: Arc::new(bars.draw(&mut set)),
            caption: Some("Causes after all readings, by probability.".into()),
        },
        heading(Level::Part, "Why air is in front"),
        Block::Figure {
            drawing: Arc::new(chain.draw(&mut set)),
            caption: Some("From the cause to what was found.".into()),
        },
        Block::Points(vec![
            "Flow rose in steps while purging and air was seen in the sight glass.".into(),
            Text::plain("Static pressure fell by 36 psi in two weeks ")
                .then("without any wet spot", Emphasis::Slanted)
                .then(": air dissolved and the loop relaxed.", Emphasis::None),
        ]),
    ]
}

fn work() -> Vec<Block> {
    let step = |text: &str, mark, blocks| Step {
        text: text.into(),
        mark,
        blocks,
    };
    let steps = vec![
        step(
            "Isolate the heat pump from its supply, lock and tag; wait until the circulators stand.",
            Some(Mark::Done),
            vec![Block::Callout(Callout {
                kind: CalloutKind::Caution,
                title: Some("Live parts".into()),
                body: vec![
                    "Capacitors hold their charge. Follow the unit's instructions; work on the \
                     supply is for licensed people."
                        .into(),
                ],
            })],
        ),
        step(
            "Purge each circuit at 0.6 m/s (2 ft/s) or more: 3.1 gpm for each 1 in circuit, both \
             directions, until 10 minutes without a bubble.",
            Some(Mark::Done),
            Vec::new(),
        ),
        step(
            "Add 11.5 L of propylene glycol and mix for 30 minutes.",
            Some(Mark::NotDone),
            vec![Block::Callout(Callout {
                kind: CalloutKind::Note,
                title: None,
                body: vec!["Concentration was within tolerance; see readings.".into()],
            })],
        ),
        step(
            "Set static pressure to 48 psi with the pumps off.",
            Some(Mark::Done),
            Vec::new(),
        ),
    ];
    let check = |mark, text: &str, remark: Option<&str>| Check {
        mark,
        text: text.into(),
        remark: remark.map(Into::into),
    };
    vec![
        heading(Level::Section, "Work"),
        Block::Steps { start: 1, steps },
        heading(Level::Part, "Gates"),
        Block::Checks(vec![
            check(
                Mark::Done,
                "Flow within 5 % of design",
                Some("11.8 gpm against 12.0 gpm"),
            ),
            check(Mark::Done, "Pressure holds for 30 minutes", None),
            check(
                Mark::NotDone,
                "Antifreeze topped up",
                Some("Not needed at 20 %."),
            ),
            check(Mark::NotApplied, "Header valves balanced", None),
        ]),
    ]
}

fn charts() -> Vec<Block> {
    let Ok(mut set) = Typesetter::new() else {
        return Vec::new();
    };
    let months = ["Jan", "Mar", "May", "Jul", "Sep", "Nov"];
    let at = |month: usize| f64::from(u8::try_from(month).unwrap_or(0));
    let swing = |month: usize| 38.0 - 9.0 * (at(month) / 12.0 * std::f64::consts::TAU).cos();
    let chart = LineChart {
        width: 492.0,
        height: 190.0,
        description: "Static pressure over the year with its expected band".into(),
        x_label: "Month".into(),
        y_label: "Static pressure, psi".into(),
        x_marks: months
            .iter()
            .enumerate()
            .map(|(i, name)| (at(2 * i), (*name).into()))
            .collect(),
        series: vec![
            Series {
                name: "Expected".into(),
                points: (0..12).map(|month| (at(month), swing(month))).collect(),
                mark: SeriesMark::Line,
                role: Role::Primary,
            },
            Series {
                name: "Read".into(),
                points: vec![(3.0, 36.0), (7.0, 21.0), (9.0, 12.0)],
                mark: SeriesMark::Dots,
                role: Role::Measured,
            },
        ],
        bands: vec![Band {
            name: "Expected range".into(),
            points: (0..12)
                .map(|month| (at(month), swing(month) - 4.0, swing(month) + 4.0))
                .collect(),
        }],
        limits: vec![(10.0, "Least for the circulators".into())],
    };
    vec![
        heading(Level::Section, "Pressure over the year"),
        Block::Figure {
            drawing: Arc::new(chart.draw(&mut set)),
            caption: Some("Pressure falls in summer; below the band something is wrong.".into()),
        },
    ]
}

fn signature(role: &str, name: &str) -> Signature {
    let wave = |i: u8| {
        let t = f32::from(i) / 6.0;
        (t * 14.0, 10.0 + 9.0 * (t * 2.1).sin() * (t * 0.7).cos())
    };
    let paths = if name.is_empty() {
        Vec::new()
    } else {
        vec![
            (0..90).map(wave).collect(),
            vec![(20.0, 24.0), (180.0, 20.0)],
        ]
    };
    let date = if name.is_empty() {
        ""
    } else {
        "14 October 2026"
    };
    Signature {
        role: role.into(),
        name: name.into(),
        date: date.into(),
        strokes: Strokes { paths },
    }
}
