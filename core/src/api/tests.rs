use super::types::{FieldEntry, NewVisit, ReadingEntry};
use super::*;

struct Fixed;
impl Surroundings for Fixed {
    fn now(&self) -> DateTime<Utc> {
        DateTime::from_timestamp(1_788_000_000, 0).expect("a valid time")
    }
    fn today(&self) -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 8, 14).expect("a valid day")
    }
    fn new_id(&self) -> Uuid {
        Uuid::now_v7()
    }
}

pub(super) fn engine() -> Engine {
    let store = Store::in_memory().expect("opens");
    Engine {
        store,
        surroundings: Box::new(Fixed),
        wording: Wording::default(),
    }
}

pub(super) fn started(engine: &mut Engine) -> String {
    let new = NewVisit {
        site: "Invented farm".to_owned(),
        complaint: None,
        same_system_as: None,
    };
    engine.start_visit(&new).expect("started").id
}

fn entry(point: &str, text: &str, unit: &str) -> ReadingEntry {
    ReadingEntry {
        id: None,
        point: point.to_owned(),
        text: text.to_owned(),
        unit: unit.to_owned(),
        accuracy: None,
        instrument: None,
        mode: None,
        phase: "found".to_owned(),
        circuit: None,
    }
}

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
    assert_eq!(set(&mut engine, Some("12")).as_deref(), Some("12.0 gpm"));
    assert_eq!(
        set(&mut engine, Some("0.8 L/s")).as_deref(),
        Some("0.80 L/s")
    );
    assert_eq!(set(&mut engine, None), None);
}

#[test]
fn a_second_visit_at_the_same_system_knows_the_system() {
    let mut engine = engine();
    let first = started(&mut engine);
    let fact = FieldEntry {
        id: "flow_centre".to_owned(),
        text: Some("sealed".to_owned()),
        unit: None,
    };
    engine.set_field(&first, &fact).expect("kept");
    let new = NewVisit {
        site: String::new(),
        complaint: None,
        same_system_as: Some(first),
    };
    let second = engine.start_visit(&new).expect("started");
    assert_eq!(second.title, "Invented farm");
    let known = second.groups.iter().flat_map(|group| &group.fields);
    let known = known.filter(|field| field.id == "flow_centre" && field.value.is_some());
    assert_eq!(known.count(), 1);
    assert_eq!(engine.visits().expect("listed").len(), 2);
}

#[test]
fn a_step_marked_as_done_is_kept_once_and_can_be_taken_back() {
    let mut engine = engine();
    let id = started(&mut engine);
    for done in [true, false] {
        engine.mark_step(&id, "some-step", done).expect("kept");
        let actions = engine.record(&id).expect("there").file.visit.actions;
        let kept: Vec<_> = actions
            .iter()
            .map(|action| (action.step.as_deref(), action.done))
            .collect();
        assert_eq!(kept, [(Some("some-step"), done)]);
    }
}
