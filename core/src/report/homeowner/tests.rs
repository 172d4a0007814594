use super::*;
use crate::report::document::Block;
use crate::text::{Language, catalog};

#[test]
fn the_number_to_call_can_be_dialled() {
    let report = HomeownerReport {
        meta: crate::report::service::test_meta(),
        page: PageSize::A4,
        issuer: Issuer {
            company: Some("Invented company".to_owned()),
            phone: Some("(555) 010-0199".to_owned()),
            logo: None,
        },
        site: "Invented farm".to_owned(),
        told: None,
        short: "It is fixed.".to_owned(),
        wrong: Vec::new(),
        sure: None,
        done: Vec::new(),
        open: Vec::new(),
        picture: None,
        readings: Vec::new(),
        notice: Vec::new(),
        season: None,
        watch: Vec::new(),
        call: vec!["the gauge falls".to_owned()],
        next_visit: "None".to_owned(),
        safety: Vec::new(),
        photos: Vec::new(),
    };
    let document = document(&report, catalog(Language::English));
    let spans: Vec<_> = document
        .blocks
        .iter()
        .filter_map(|block| match block {
            Block::Callout(callout) => Some(callout.body.iter().flat_map(|text| &text.spans)),
            _ => None,
        })
        .flatten()
        .collect();
    assert!(
        spans
            .iter()
            .any(|span| span.link.as_deref() == Some("tel:5550100199"))
    );
    for block in &document.blocks {
        if let Block::Heading { text, .. } = block {
            assert!(!text.contains('«'), "{text}");
        }
    }
}
