use super::*;
use crate::report::document::Block;
use crate::text::{Language, catalog};

fn report(picture: FleetPicture) -> FleetReport {
    FleetReport {
        meta: crate::report::service::test_meta(),
        page: PageSize::Letter,
        issuer: Issuer::default(),
        picture,
    }
}

#[test]
fn a_period_without_visits_is_still_a_report() {
    let catalog = catalog(Language::English);
    let document = document(&report(FleetPicture::default()), catalog).expect("made");
    for block in &document.blocks {
        match block {
            Block::Heading { text, .. } => assert!(!text.contains('«'), "{text}"),
            Block::Facts(facts) => {
                for fact in facts {
                    assert!(!fact.value.to_plain().contains("NaN"), "{fact:?}");
                    assert!(!fact.label.contains('«'), "{fact:?}");
                }
            }
            _ => {}
        }
    }
}

#[test]
fn a_share_out_of_none_has_no_rate() {
    assert_eq!(Share::default().rate(), None);
    let share = Share {
        count: 3,
        of: 12,
        ..Share::default()
    };
    assert_eq!(share.rate(), Some(0.25));
}
