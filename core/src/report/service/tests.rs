use super::*;
use crate::report::document::Block;
use crate::report::to_pdf;
use crate::text::{Language, catalog};

fn empty() -> ServiceReport {
    ServiceReport {
        meta: Meta {
            title: "Service report".to_owned(),
            author: "Invented company".to_owned(),
            subject: "Invented call".to_owned(),
            language: "en".to_owned(),
            date: chrono::DateTime::from_timestamp(1_788_000_000, 0)
                .expect("valid")
                .fixed_offset(),
            id: "test".to_owned(),
            running_head: String::new(),
            running_foot: String::new(),
        },
        page: PageSize::Letter,
        site: "Invented farm".to_owned(),
        complaint: None,
        facts: Vec::new(),
        answers: Vec::new(),
        readings: Vec::new(),
        headline: "Nothing is known yet.".to_owned(),
        causes: Vec::new(),
        unexplained: Vec::new(),
        doubted: Vec::new(),
        checks: Vec::new(),
        treats: Vec::new(),
        tools: Vec::new(),
        materials: Vec::new(),
        steps: Vec::new(),
        remarks: Vec::new(),
        proof: Vec::new(),
        assumptions: Vec::new(),
        sources: Vec::new(),
    }
}

#[test]
fn every_heading_has_its_words() {
    let document = document(&empty(), catalog(Language::English));
    for block in &document.blocks {
        if let Block::Heading { text, .. } = block {
            assert!(!text.contains('«'), "{text}");
        }
    }
    let words = words(catalog(Language::English));
    assert_eq!(words.page_of(2, 3), "Page 2 of 3");
}

#[test]
fn a_report_without_any_content_is_still_a_document() {
    let document = document(&empty(), catalog(Language::English));
    let bytes = to_pdf(&document, &words(catalog(Language::English))).expect("made");
    assert!(bytes.starts_with(b"%PDF-1.7"));
}

#[test]
fn a_caution_stands_at_the_step_it_belongs_to() {
    let mut report = empty();
    report.steps = vec![StepPart {
        stage: "Make safe".to_owned(),
        text: "Switch off".to_owned(),
        cautions: vec!["Lock the breaker.".to_owned()],
        quantities: vec![("Pressure".to_owned(), "0 psi".to_owned())],
        gate: Some(("it is dead".to_owned(), "lock it again".to_owned())),
        done: None,
    }];
    let document = document(&report, catalog(Language::English));
    let step = document.blocks.iter().find_map(|block| match block {
        Block::Steps { steps, .. } => steps.first(),
        _ => None,
    });
    let kinds: Vec<bool> = step
        .expect("there is a step")
        .blocks
        .iter()
        .map(|block| matches!(block, Block::Callout(_)))
        .collect();
    assert_eq!(kinds, [true, false, false]);
}
