use super::*;
use crate::report::document::Block;
use crate::report::to_pdf;
use crate::text::{Language, catalog};

fn empty() -> ServiceReport {
    ServiceReport {
        meta: test_meta(),
        page: PageSize::Letter,
        issuer: Issuer::default(),
        about: Vec::new(),
        verdicts: Vec::new(),
        picture: None,
        gauge: Vec::new(),
        others: Vec::new(),
        used: Vec::new(),
        charts: Vec::new(),
        photos: Vec::new(),
        recommendations: Vec::new(),
        notes: None,
        signatures: Vec::new(),
        outdated: Vec::new(),
        unused: Vec::new(),
        site: "Invented farm".to_owned(),
        complaint: None,
        facts: Vec::new(),
        answers: Vec::new(),
        readings: Vec::new(),
        work: None,
        unproved: Vec::new(),
        count: String::new(),
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

fn step(text: &str, cautions: &[&str]) -> StepPart {
    StepPart {
        stage: "Make safe".to_owned(),
        text: text.to_owned(),
        cautions: cautions.iter().map(|text| (*text).to_owned()).collect(),
        quantities: vec![("Pressure".to_owned(), "0 psi".to_owned())],
        gate: Some(("it is dead".to_owned(), "lock it again".to_owned())),
        mark: None,
        noted: Vec::new(),
    }
}

/// Labels of one value stand before it as one phrase, and what a gate asks for and what
/// to do else follow their words after a colon.
#[test]
fn a_step_reads_as_written_by_a_person() {
    let label = |text: &str| (text.to_owned(), "60 psi".to_owned());
    let report = ServiceReport {
        steps: vec![StepPart {
            quantities: vec![
                label("Leave no more than"),
                label("Never above"),
                label("EWT"),
            ],
            ..step("Set it.", &[])
        }],
        ..empty()
    };
    let document = document(&report, catalog(Language::English));
    let steps = document.blocks.iter().filter_map(|block| match block {
        Block::Steps { steps, .. } => Some(steps),
        _ => None,
    });
    let said: Vec<String> = steps
        .flatten()
        .flat_map(|step| &step.blocks)
        .filter_map(|block| match block {
            Block::Paragraph { text, .. } => Some(text.to_plain()),
            _ => None,
        })
        .collect();
    let line = "Leave no more than, never above, EWT: 60 psi · Go on when: it is dead Otherwise: lock it again";
    assert_eq!(said, [line]);
}

#[test]
fn a_caution_stands_in_full_once_and_in_short_at_every_later_step() {
    const SHOCK: &str = "Electric shock kills. Lock the breaker, tag it.";
    const WET: &str = "Wet floors trip.";
    let mut report = empty();
    report.steps = vec![
        step("Switch off", &[SHOCK]),
        step("Drain", &[WET, SHOCK]),
        step("Mop", &[WET]),
    ];
    let document = document(&report, catalog(Language::English));
    let steps = document.blocks.iter().find_map(|block| match block {
        Block::Steps { steps, .. } => Some(steps),
        _ => None,
    });
    let cautions: Vec<Vec<(bool, String)>> = steps
        .expect("there are steps")
        .iter()
        .map(|step| {
            let blocks = step.blocks.iter();
            blocks
                .flat_map(|block| match block {
                    Block::Callout(callout) => callout
                        .body
                        .iter()
                        .map(|text| (true, text.to_plain()))
                        .collect(),
                    Block::Reminder(text) => vec![(false, text.to_plain())],
                    _ => Vec::new(),
                })
                .collect()
        })
        .collect();
    let full = |number: &str, text: &str| (true, format!("{number} {text}"));
    let short = |text: &str| (false, text.to_owned());
    assert_eq!(
        cautions,
        [
            vec![full("C1", SHOCK)],
            vec![full("C2", WET), short("C1 (step 1) Electric shock kills. "),],
            vec![short("C2 (step 2) Wet floors trip. ")],
        ]
    );
}
