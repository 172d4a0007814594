use super::{engine, entry, started};
use crate::api::Engine;
use crate::api::types::{FieldEntry, FieldKindView, SettingChange};

#[test]
fn a_reading_typed_with_its_own_unit_is_kept_as_written() {
    let mut engine = engine();
    let id = started(&mut engine);
    let view = engine
        .put_reading(&id, &entry("static_pressure", "0.6 bar", "psi"))
        .expect("kept");
    let reading = &view.readings[0];
    assert_eq!(
        (reading.value.as_str(), reading.unit.as_str()),
        ("0.6", "bar")
    );
    // A dial gauge is usually good to 2 psi, 0.14 bar (common practice, no source).
    assert_eq!(reading.shown, "0.60 ± 0.14 bar");
    assert_eq!(reading.warning, None);
}

#[test]
fn a_surprising_value_is_kept_and_marked_and_an_impossible_one_refused() {
    let mut engine = engine();
    let id = started(&mut engine);
    let view = engine
        .put_reading(&id, &entry("static_pressure", "150", "psi"))
        .expect("kept");
    assert!(view.readings[0].warning.is_some());
    let error = engine.put_reading(&id, &entry("entering_water", "320", "degF"));
    let error = error.expect_err("refused");
    assert_eq!(error.code, "out-of-range");
    assert!(error.message.contains("320"), "{}", error.message);
    assert_eq!(engine.visit(&id).expect("there").readings.len(), 1);
}

#[test]
fn every_error_code_of_typing_has_a_message() {
    let mut engine = engine();
    let id = started(&mut engine);
    for text in [
        "",
        "abc",
        "1,500",
        "1e99",
        "5 gpm",
        "5 psi psi",
        "--",
        "1/0",
        "½",
        "∞",
    ] {
        let error = engine.put_reading(&id, &entry("static_pressure", text, "psi"));
        let error = error.expect_err(text);
        assert!(!error.message.contains('«'), "{text}: {}", error.message);
    }
}

#[test]
fn facts_are_set_shown_and_made_unknown() {
    let mut engine = engine();
    let id = started(&mut engine);
    let set = |engine: &mut Engine, text: Option<&str>| {
        let entry = FieldEntry {
            id: "unit.rated_flow".to_owned(),
            text: text.map(str::to_owned),
            unit: Some("gpm".to_owned()),
        };
        let view = engine.set_field(&id, &entry).expect("kept");
        let fields = view.groups.into_iter().flat_map(|group| group.fields);
        fields
            .into_iter()
            .find(|field| field.id == "unit.rated_flow")
            .expect("listed")
            .shown
    };
    assert_eq!(set(&mut engine, Some("12")).as_deref(), Some("12 gpm"));
    assert_eq!(
        set(&mut engine, Some("0.8 L/s")).as_deref(),
        Some("0.8 L/s")
    );
    assert_eq!(set(&mut engine, None), None);
}

/// A screen has its own words beside the numbers; a report has none and says them.
#[test]
fn the_numbers_of_a_reason_carry_no_words_and_are_told_where_there_are_no_labels() {
    let mut engine = engine();
    let id = started(&mut engine);
    engine
        .put_reading(&id, &entry("entering_water", "5", "degC"))
        .expect("kept");
    let view = engine.visit(&id).expect("there");
    let why = &view.readings[0].why;
    assert_eq!(why.measured.as_ref(), Some(&view.readings[0].shown));
    let catalog = engine.wording.catalog();
    let told = why.said(catalog).join("; ");
    assert_eq!(told, format!("measured {}", view.readings[0].shown));
    let call = engine.open_call(&id).expect("there").answer();
    let causes = call.assessment.causes.iter();
    let figures: Vec<_> = causes
        .flat_map(|cause| {
            cause
                .reasons
                .iter()
                .filter_map(|reason| reason.figures.as_ref())
        })
        .collect();
    assert!(!figures.is_empty());
    for number in figures
        .iter()
        .flat_map(|one| one.measured.iter().chain(&one.expected))
    {
        let first = number.trim_start_matches('−').chars().next();
        assert!(
            first.is_some_and(|first| first.is_ascii_digit()),
            "{number}"
        );
    }
}

#[test]
fn a_circuit_that_is_no_whole_number_is_refused_in_words() {
    let mut engine = engine();
    let id = started(&mut engine);
    for (text, kept) in [
        ("2", true),
        (" ", true),
        ("2.5", false),
        ("0", false),
        ("east", false),
        ("401", false),
    ] {
        let mut entry = entry("circuit_return", "50", "degF");
        entry.circuit = Some(text.to_owned());
        match engine.put_reading(&id, &entry) {
            Ok(_) => assert!(kept, "{text} was kept"),
            Err(error) => {
                assert!(!kept, "{text}: {error}");
                assert_eq!(error.code, "not-a-circuit");
                assert!(error.message.contains(text), "{error}");
            }
        }
    }
}

#[test]
fn what_was_chosen_words_the_answers_and_fills_a_new_visit() {
    let mut engine = engine();
    for change in [
        SettingChange::Units {
            id: "si".to_owned(),
        },
        SettingChange::Technician {
            text: " A. Invented ".to_owned(),
        },
        SettingChange::Instrument {
            id: "dial_gauge".to_owned(),
            owned: true,
            accuracy: "0.1".to_owned(),
            unit: "bar".to_owned(),
        },
    ] {
        engine.change_setting(&change).expect("kept");
    }
    let id = started(&mut engine);
    let view = engine.visit(&id).expect("there");
    let point = view
        .points
        .iter()
        .find(|point| point.id == "static_pressure");
    assert_eq!(
        point.map(|point| point.units[0].symbol.as_str()),
        Some("bar")
    );
    let mut fields = view.groups.iter().flat_map(|group| &group.fields);
    let technician = fields.find(|field| field.id == "visit.technician");
    assert_eq!(
        technician.and_then(|field| field.value.as_deref()),
        Some("A. Invented")
    );
    // The gauge's own accuracy, not the usual 2 psi of a dial gauge.
    let view = engine
        .put_reading(&id, &entry("static_pressure", "1.50", "bar"))
        .expect("kept");
    assert_eq!(view.readings[0].shown, "1.50 ± 0.10 bar");
    let wrong = SettingChange::Units {
        id: "cubits".to_owned(),
    };
    assert_eq!(
        engine.change_setting(&wrong).expect_err("refused").code,
        "no-such-name"
    );
}

#[test]
fn the_unit_that_an_instrument_or_a_nameplate_shows_is_offered_first() {
    let mut engine = engine();
    let visit = started(&mut engine);
    for (system, points, capacity) in [
        ("us", ["in", "in", "W", "psi", "degF"], "ton"),
        ("si", ["cm", "cm", "W", "bar", "degC"], "kW"),
    ] {
        let change = SettingChange::Units {
            id: system.to_owned(),
        };
        engine.change_setting(&change).expect("kept");
        let view = engine.visit(&visit).expect("read");
        let first = |id: &str| {
            let point = view.points.iter().find(|point| point.id == id);
            point.expect("a point").units[0].symbol.clone()
        };
        let ids = [
            "dead_head_drop",
            "reservoir_level_change",
            "circulator_power",
            "static_pressure",
            "entering_water",
        ];
        assert_eq!(ids.map(first), points);
        let mut fields = view.groups.iter().flat_map(|group| &group.fields);
        let field = fields.find(|field| field.id == "unit.cooling_capacity");
        let kind = &field.expect("a field").kind;
        let FieldKindView::Measure { units, .. } = kind else {
            panic!("{kind:?}");
        };
        assert_eq!(units[0].symbol, capacity);
        let settings = engine.settings().expect("read");
        let mut instruments = settings.instruments.iter();
        let ruler = instruments.find(|one| one.id == "ruler").expect("a ruler");
        assert!(["in", "mm"].contains(&&*ruler.unit), "{ruler:?}");
    }
}
