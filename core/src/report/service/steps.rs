//! The correction step by step. A caution stands in full at the first step it
//! belongs to, under a number; at each later step its number and first sentence
//! stand again, so that it is met where it counts and read once.

use crate::report::document::{
    Block, Callout, CalloutKind, Check, Emphasis, Level, Mark, Step, Text,
};
use crate::report::parts::{part, section};
use crate::text::{Args, Catalog, first_sentence};

use super::{ServiceReport, StepPart};

/// Cautions met so far, each with the number of the step where it stands in full.
#[derive(Default)]
struct Met<'a> {
    cautions: Vec<(&'a str, u32)>,
}

pub(super) fn correction(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let mut blocks = vec![section(catalog, "service-correction")];
    if report.steps.is_empty() {
        blocks.push(Block::paragraph(catalog.text("service-no-plan")));
    } else {
        blocks.extend(opening(report, catalog));
        let mut met = Met::default();
        let mut number = 1;
        for group in report.steps.chunk_by(|a, b| a.stage == b.stage) {
            if let Some(first) = group.first() {
                blocks.push(Block::heading(Level::Detail, first.stage.as_str()));
            }
            let start = number;
            let mut steps = Vec::new();
            for step in group {
                steps.push(one_step(step, number, &mut met, catalog));
                number += 1;
            }
            blocks.push(Block::Steps { start, steps });
        }
    }
    if !report.others.is_empty() {
        blocks.push(part(catalog, "service-others"));
        let check = |(text, done): &(String, bool)| Check {
            mark: mark(*done),
            text: Text::plain(text.as_str()),
            remark: None,
        };
        blocks.push(Block::Checks(report.others.iter().map(check).collect()));
    }
    blocks
}

fn opening(report: &ServiceReport, catalog: &Catalog) -> Vec<Block> {
    let treats = report.treats.join("; ");
    let treats = catalog.fill("service-treats", &Args::new().text("causes", treats));
    let mut blocks = vec![Block::paragraph(treats)];
    let begun = report.steps.iter().any(|step| step.mark.is_some());
    blocks.push(Block::paragraph(match begun {
        true => format!("{}.", report.count),
        false => {
            let args = Args::new().text("steps", report.steps.len().to_string());
            catalog.fill("service-steps-planned", &args)
        }
    }));
    blocks.push(Block::Callout(Callout {
        kind: CalloutKind::Note,
        title: None,
        body: vec![
            Text::plain(catalog.text("service-defer")),
            Text::plain(catalog.text("service-caution-how")),
        ],
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
    blocks
}

fn one_step<'a>(step: &'a StepPart, number: u32, met: &mut Met<'a>, catalog: &Catalog) -> Step {
    let mut blocks = met.cautions(step, number, catalog);
    let mut said = Text::default();
    for (labels, value) in merged(&step.quantities) {
        said = said
            .then(format!("{}: ", one_label(&labels)), Emphasis::Soft)
            .then(value, Emphasis::Strong)
            .then(" · ", Emphasis::Soft);
    }
    if let Some((pass, otherwise)) = &step.gate {
        said = said
            .then(catalog.text("service-go-on"), Emphasis::Strong)
            .then(format!(" {pass} "), Emphasis::None)
            .then(catalog.text("service-go-back"), Emphasis::Strong)
            .then(format!(" {otherwise}"), Emphasis::None);
    } else if said.spans.len() > 1 {
        // No dot after the last quantity.
        said.spans.pop();
    }
    if !said.is_empty() {
        blocks.push(Block::paragraph(said));
    }
    if !step.noted.is_empty() {
        blocks.push(Block::paragraph(step.noted.join(" ")));
    }
    Step {
        text: Text::plain(step.text.as_str()),
        mark: step.mark,
        blocks,
    }
}

/// Quantities of one value under it together: what cannot be worked out, and why,
/// is said once.
fn merged(quantities: &[(String, String)]) -> Vec<(Vec<&str>, &str)> {
    let mut merged: Vec<(Vec<&str>, &str)> = Vec::new();
    for (label, value) in quantities {
        match merged.iter_mut().find(|(_, known)| known == value) {
            Some((labels, _)) => labels.push(label),
            None => merged.push((vec![label], value)),
        }
    }
    merged
}

/// Labels in one: those after the first go on in small letters, but for what is
/// written in capitals, such as `EWT`.
fn one_label(labels: &[&str]) -> String {
    let small = |label: &str| {
        let mut letters = label.chars();
        match letters.next() {
            Some(first) if !letters.as_str().starts_with(char::is_uppercase) => {
                first.to_lowercase().chain(letters).collect()
            }
            _ => label.to_owned(),
        }
    };
    let mut said = labels.first().copied().unwrap_or_default().to_owned();
    for label in labels.iter().skip(1) {
        said.push_str(", ");
        said.push_str(&small(label));
    }
    said
}

fn mark(done: bool) -> Mark {
    if done { Mark::Done } else { Mark::NotDone }
}

impl<'a> Met<'a> {
    /// The cautions of a step: new ones in full, known ones in short.
    fn cautions(&mut self, step: &'a StepPart, number: u32, catalog: &Catalog) -> Vec<Block> {
        let (mut full, mut short) = (Vec::new(), Text::default());
        for text in &step.cautions {
            let known = self.cautions.iter().position(|(known, _)| known == text);
            let place = known.unwrap_or(self.cautions.len());
            let args = Args::new().text("number", (place + 1).to_string());
            let name = catalog.fill("service-caution-number", &args);
            match known.and_then(|at| self.cautions.get(at)) {
                None => {
                    self.cautions.push((text, number));
                    full.push(Text::strong(name).then(format!(" {text}"), Emphasis::None));
                }
                Some((_, at)) => {
                    let args = Args::new()
                        .text("number", name)
                        .text("step", at.to_string());
                    let name = catalog.fill("service-caution-see", &args);
                    let opening = format!(" {} ", first_sentence(text));
                    short = short
                        .then(name, Emphasis::Strong)
                        .then(opening, Emphasis::None);
                }
            }
        }
        let mut blocks = Vec::new();
        if !full.is_empty() {
            blocks.push(Block::Callout(Callout {
                kind: CalloutKind::Caution,
                title: None,
                body: full,
            }));
        }
        if !short.is_empty() {
            blocks.push(Block::Reminder(short));
        }
        blocks
    }
}
