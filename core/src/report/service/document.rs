//! The order of the service report.

use crate::report::document::{
    Align, Block, Callout, CalloutKind, Column, Document, Emphasis, Fact, Level, Mark, Row,
    Signature, Step, Strokes, Table, Text, Tone, Width,
};
use crate::text::{Args, Catalog};

use super::{CausePart, ServiceReport, StepPart};

/// The report as a document, headings in the catalog's language.
pub fn document(report: &ServiceReport, catalog: &Catalog) -> Document {
    let mut blocks = head(report, catalog);
    blocks.extend(causes(report, catalog));
    blocks.extend(found(report, catalog));
    blocks.extend(correction(report, catalog));
    blocks.extend(proof(report, catalog));
    blocks.extend(system(report, catalog));
    blocks.extend(method(report, catalog));
    Document {
        meta: report.meta.clone(),
        page: report.page,
        blocks,
    }
}

fn section(catalog: &Catalog, key: &str) -> Block {
    Block::heading(Level::Section, catalog.text(key))
}

fn small(text: impl Into<Text>) -> Block {
    Block::Paragraph {
        text: text.into(),
        tone: Tone::Small,
    }
}

fn points(items: &[String]) -> Block {
    Block::Points(
        items
            .iter()
            .map(|item| Text::plain(item.as_str()))
            .collect(),
    )
}

fn head(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![Block::Title {
        overline: Some(catalog.text("service-report")),
        text: report.site.clone(),
        subtitle: Some(Text::plain(report.meta.subject.as_str())),
    }];
    if let Some(complaint) = &report.complaint {
        let said = catalog.fill(
            "service-complaint",
            &Args::new().text("text", complaint.as_str()),
        );
        blocks.push(Block::Paragraph {
            text: Text::default().then(said, Emphasis::Slanted),
            tone: Tone::Body,
        });
    }
    blocks.push(Block::Paragraph {
        text: Text::strong(&report.headline),
        tone: Tone::Lead,
    });
    blocks
}

fn causes(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-causes")];
    if report.causes.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-no-causes")));
    }
    for (index, cause) in report.causes.iter().enumerate() {
        blocks.extend(one_cause(cause, index == 0, catalog));
    }
    let lists = [
        ("service-unexplained", &report.unexplained),
        ("service-doubted", &report.doubted),
    ];
    for (key, items) in lists {
        if !items.is_empty() {
            blocks.push(Block::heading(Level::Part, catalog.text(key)));
            blocks.push(points(items));
        }
    }
    if !report.checks.is_empty() {
        blocks.push(Block::heading(Level::Part, catalog.text("service-next")));
        let facts = report.checks.iter();
        blocks.push(Block::Facts(
            facts
                .map(|(title, brings)| Fact {
                    label: title.clone(),
                    value: brings.as_str().into(),
                })
                .collect(),
        ));
    }
    blocks
}

fn one_cause(cause: &CausePart, leading: bool, catalog: &Catalog) -> Vec<Block> {
    let title = format!("{} · {}", cause.title, cause.probability);
    let mut blocks = vec![Block::heading(Level::Part, title)];
    // The leading cause is argued in full; the others by their strongest reasons.
    let reasons = if leading { 12 } else { 3 };
    let rows: Vec<Row> = cause
        .reasons
        .iter()
        .take(reasons)
        .map(|reason| {
            let mut why = Text::plain(reason.path.as_str());
            if let Some(figures) = &reason.figures {
                why = why.then(format!("\n{figures}"), Emphasis::Soft);
            }
            Row::new(vec![
                Text::plain(reason.found.as_str()),
                why,
                Text::plain(reason.weight.as_str()),
            ])
        })
        .collect();
    if !rows.is_empty() {
        blocks.push(Block::Table(Table {
            caption: None,
            columns: vec![
                column(catalog, "service-found", Align::Start, Width::Share(3.0)),
                column(catalog, "service-why", Align::Start, Width::Share(5.0)),
                column(catalog, "service-weight", Align::End, Width::Natural),
            ],
            rows,
        }));
    }
    if !cause.context.is_empty() {
        blocks.push(small(cause.context.join(" ")));
    }
    blocks
}

fn column(catalog: &Catalog, key: &str, align: Align, width: Width) -> Column {
    Column {
        head: catalog.text(key),
        align,
        width,
    }
}

fn found(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-readings")];
    if report.readings.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-no-readings")));
    } else {
        let rows = report
            .readings
            .iter()
            .map(|line| {
                let mut value = Text::plain(line.value.as_str());
                if let Some(warning) = &line.warning {
                    value = value.then(format!("\n{warning}"), Emphasis::Soft);
                }
                Row::new(vec![
                    Text::plain(line.point.as_str()),
                    value,
                    Text::plain(line.instrument.as_str()),
                    Text::plain(line.mode.as_str()),
                    Text::plain(line.phase.as_str()),
                ])
            })
            .collect();
        blocks.push(Block::Table(Table {
            caption: None,
            columns: vec![
                column(catalog, "service-point", Align::Start, Width::Share(3.0)),
                column(catalog, "service-value", Align::End, Width::Natural),
                column(
                    catalog,
                    "service-instrument",
                    Align::Start,
                    Width::Share(1.6),
                ),
                column(catalog, "service-mode", Align::Start, Width::Share(1.3)),
                column(catalog, "service-phase", Align::Start, Width::Natural),
            ],
            rows,
        }));
        blocks.push(small(catalog.text("service-uncertainty")));
    }
    if !report.answers.is_empty() {
        blocks.push(Block::heading(Level::Part, catalog.text("service-answers")));
        let facts = report.answers.iter();
        blocks.push(Block::Facts(
            facts
                .map(|(finding, answer)| Fact {
                    label: finding.clone(),
                    value: answer.as_str().into(),
                })
                .collect(),
        ));
    }
    blocks
}

fn correction(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-correction")];
    if report.steps.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-no-plan")));
        return blocks;
    }
    let treats = report.treats.join("; ");
    let treats = catalog.fill("service-treats", &Args::new().text("causes", treats));
    blocks.push(Block::paragraph(treats));
    blocks.push(Block::Callout(Callout {
        kind: CalloutKind::Note,
        title: None,
        body: vec![Text::plain(catalog.text("service-defer"))],
    }));
    for (key, items) in [
        ("service-tools", &report.tools),
        ("service-materials", &report.materials),
    ] {
        if !items.is_empty() {
            let line = Text::strong(catalog.text(key))
                .then(format!(" {}", items.join(" · ")), Emphasis::None);
            blocks.push(Block::paragraph(line));
        }
    }
    let mut number = 1;
    for group in report.steps.chunk_by(|a, b| a.stage == b.stage) {
        if let Some(first) = group.first() {
            blocks.push(Block::heading(Level::Detail, first.stage.as_str()));
        }
        let steps: Vec<Step> = group.iter().map(|step| one_step(step, catalog)).collect();
        blocks.push(Block::Steps {
            start: number,
            steps,
        });
        number += u32::try_from(group.len()).unwrap_or(0);
    }
    blocks
}

fn one_step(step: &StepPart, catalog: &Catalog) -> Step {
    let mut blocks = Vec::new();
    if !step.cautions.is_empty() {
        blocks.push(Block::Callout(Callout {
            kind: CalloutKind::Caution,
            title: None,
            body: step
                .cautions
                .iter()
                .map(|text| Text::plain(text.as_str()))
                .collect(),
        }));
    }
    if !step.quantities.is_empty() {
        let fact = |(label, value): &(String, String)| Fact {
            label: label.clone(),
            value: Text::strong(value.as_str()),
        };
        blocks.push(Block::Facts(step.quantities.iter().map(fact).collect()));
    }
    if let Some((pass, otherwise)) = &step.gate {
        let text = Text::strong(catalog.text("service-go-on"))
            .then(format!(" {pass}\n"), Emphasis::None)
            .then(catalog.text("service-go-back"), Emphasis::Strong)
            .then(format!(" {otherwise}"), Emphasis::None);
        blocks.push(Block::paragraph(text));
    }
    Step {
        text: Text::plain(step.text.as_str()),
        mark: step
            .done
            .map(|done| if done { Mark::Done } else { Mark::NotDone }),
        blocks,
    }
}

fn proof(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    if report.proof.is_empty() {
        return Vec::new();
    }
    let cell = |text: &Option<String>| Text::plain(text.as_deref().unwrap_or("–"));
    let rows = report
        .proof
        .iter()
        .map(|line| {
            Row::new(vec![
                Text::plain(line.label.as_str()),
                cell(&line.expected),
                cell(&line.before),
                cell(&line.after),
            ])
        })
        .collect();
    vec![
        section(catalog, "service-proof"),
        Block::Table(Table {
            caption: None,
            columns: vec![
                column(catalog, "service-point", Align::Start, Width::Share(2.0)),
                column(catalog, "service-expected", Align::End, Width::Share(1.6)),
                column(catalog, "service-before", Align::End, Width::Share(1.2)),
                column(catalog, "service-after", Align::End, Width::Share(1.2)),
            ],
            rows,
        }),
    ]
}

fn system(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-system")];
    let known: Vec<_> = report
        .facts
        .iter()
        .filter(|(_, facts)| !facts.is_empty())
        .collect();
    if known.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-nothing-known")));
    }
    for (group, facts) in known {
        blocks.push(Block::heading(Level::Part, group.as_str()));
        let fact = |(label, value): &(String, String)| Fact {
            label: label.clone(),
            value: value.as_str().into(),
        };
        blocks.push(Block::Facts(facts.iter().map(fact).collect()));
    }
    blocks
}

fn method(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-method")];
    blocks.push(small(catalog.text("service-how")));
    if !report.assumptions.is_empty() {
        blocks.push(Block::heading(Level::Part, catalog.text("service-assumed")));
        blocks.push(points(&report.assumptions));
    }
    if !report.sources.is_empty() {
        blocks.push(Block::heading(Level::Part, catalog.text("service-sources")));
        blocks.push(points(&report.sources));
    }
    blocks.push(Block::heading(Level::Part, catalog.text("service-limits")));
    blocks.push(small(catalog.text("service-not-covered")));
    let signature = |key: &str| Signature {
        role: catalog.text(key),
        name: String::new(),
        date: String::new(),
        strokes: Strokes::default(),
    };
    blocks.push(Block::Signatures(vec![
        signature("service-sign-technician"),
        signature("service-sign-customer"),
    ]));
    blocks
}
