use super::*;
use crate::records::{Commissioning, Site};
use crate::text::{Language, catalog};

#[test]
fn every_field_has_a_name_and_every_choice_a_label() {
    for language in Language::ALL {
        let catalog = catalog(language);
        for group in FieldGroup::ALL {
            assert!(catalog.has(&format!("group-{}", group.id())), "{group:?}");
        }
        for field in TABLE {
            let key = format!("field-{}", field.id.replace('.', "-"));
            assert!(catalog.has(&key), "{key}");
            if let FieldKind::Choice(names) = field.kind {
                for name in names {
                    let key = choice_key(name);
                    assert!(catalog.has(&key), "{key}");
                }
            }
        }
    }
}

#[test]
fn identifiers_are_unique() {
    let mut ids: Vec<&str> = TABLE.iter().map(|field| field.id).collect();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), TABLE.len());
}

#[test]
fn what_is_written_is_read_and_unknown_again_when_cleared() {
    // The strength of a fluid needs a fluid, so the table is walked twice.
    let mut file = VisitFile::default();
    for _ in 0..2 {
        for field in TABLE {
            let text = match field.kind {
                FieldKind::Text => "something".to_owned(),
                FieldKind::Flag => "no".to_owned(),
                FieldKind::Date => "2026-03-05".to_owned(),
                FieldKind::Count => "3".to_owned(),
                FieldKind::Measure(dimension) => sample(field.id, dimension).to_owned(),
                FieldKind::Choice(names) => names[names.len() - 1].to_owned(),
            };
            let value = field.parse(&text, None).expect("readable");
            if field.write(&mut file, value.clone()).is_ok() {
                assert_eq!(field.read(&file), value, "{}", field.id);
            }
        }
    }
    assert!(TABLE.iter().all(|field| field.read(&file).is_some()));
    for field in TABLE {
        field
            .write(&mut file, None)
            .expect("anything may be unknown");
        assert_eq!(field.read(&file), None, "{}", field.id);
    }
}

fn sample(id: &str, dimension: Dimension) -> &'static str {
    match (id, dimension) {
        ("means.reservoir_diameter", _) => "10 in",
        (_, Dimension::Power) => "0.5 kW",
        (_, Dimension::Pressure) => "50 psi",
        (_, Dimension::Temperature) => "35 degF",
        (_, Dimension::VolumeFlow) => "12 gpm",
        (_, Dimension::Volume) => "15 gal",
        (_, Dimension::Length) => "400 ft",
        (_, Dimension::Fraction) => "20 %",
        (_, Dimension::Number) => "4.1",
        (_, Dimension::Duration) => "90 min",
        (_, Dimension::Velocity) => "2 ft/s",
        _ => "1",
    }
}

#[test]
fn a_value_that_cannot_be_is_refused_and_changes_nothing() {
    let mut file = VisitFile {
        site: Site::default(),
        commissioning: Commissioning {
            flushed: Some(true),
            ..Commissioning::default()
        },
        ..VisitFile::default()
    };
    let before = file.clone();
    let pressure = field("commissioning.charge_pressure").expect("in the table");
    let value = pressure.parse("5000", Some(Unit::Psi)).expect("readable");
    let error = pressure.write(&mut file, value).expect_err("refused");
    assert!(matches!(error, FieldError::OutOfRange { .. }), "{error}");
    assert_eq!(file, before);
    let error = pressure
        .parse("5 gpm", Some(Unit::Psi))
        .expect_err("refused");
    assert!(error.to_string().contains("psi, bar"), "{error}");
}
