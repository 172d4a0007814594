use super::types::{FieldEntry, NewVisit, ReadingEntry, SettingChange, StepChange};
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
    Engine::over(store, Box::new(Fixed)).expect("opens")
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
    let reading = entry("static_pressure", "20", "psi");
    engine.put_reading(&first, &reading).expect("kept");
    let new = NewVisit {
        site: String::new(),
        complaint: None,
        same_system_as: Some(first),
    };
    let second = engine.start_visit(&new).expect("started");
    assert_eq!(second.title, "Invented farm");
    let read: Vec<_> = second
        .earlier
        .iter()
        .map(|earlier| earlier.shown.as_str())
        .collect();
    assert_eq!(
        (read.as_slice(), second.readings.len()),
        (["20 ± 2 psi"].as_slice(), 0)
    );
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
        let change = StepChange::Done { done };
        engine.change_step(&id, "some-step", &change).expect("kept");
        let actions = engine.record(&id).expect("there").file.visit.actions;
        let kept: Vec<_> = actions
            .iter()
            .map(|action| (action.step.as_deref(), action.done))
            .collect();
        assert_eq!(kept, [(Some("some-step"), done)]);
    }
}

fn confirm(engine: &mut Engine, visit: &str, cause: &str) {
    let verdict = crate::records::Verdict {
        cause: cause.to_owned(),
        confirmed: true,
        by_check: None,
    };
    let id = visit.parse().expect("an identifier");
    engine
        .store
        .put_verdict(id, &verdict, Fixed.now())
        .expect("kept");
}

#[test]
fn confirmed_causes_teach_the_priors_of_later_calls() {
    let mut engine = engine();
    let cause = knowledge().graph.causes()[0].clone();
    let first = started(&mut engine);
    confirm(&mut engine, &first, cause.id.as_str());
    let view = engine.learned().expect("read");
    assert_eq!((view.own, view.elsewhere), (1, 0));
    let learned = &view.causes[0];
    assert_eq!(
        (learned.id.as_str(), learned.confirmed),
        (cause.id.as_str(), 1)
    );
    // A prior worth 50 callbacks and one callback more.
    assert!((learned.after - (50.0 * cause.prior + 1.0) / 51.0).abs() < 1e-12);

    let prior = |engine: &Engine, visit: &str| {
        let call = engine.call(visit).expect("worked out");
        call.gathered.case.priors.get(&cause.id).copied()
    };
    let second = started(&mut engine);
    assert_eq!(prior(&engine, &second), Some(learned.after));
    // A call is not its own precedent.
    assert_eq!(prior(&engine, &first), None);
}

#[test]
fn counts_travel_once_and_can_begin_anew() {
    let mut here = engine();
    let visit = started(&mut here);
    confirm(&mut here, &visit, knowledge().graph.causes()[0].id.as_str());
    let file = here.export_learned().expect("exported");
    let bytes = serde_json::to_vec(&file).expect("JSON");
    let own = here.import_learned(&bytes).expect_err("counts already");
    assert_eq!(own.code, "own-learned-file");

    let mut there = engine();
    assert_eq!(there.import_learned(&bytes).expect("taken").elsewhere, 1);
    // The same device once more replaces what it counted before.
    assert_eq!(there.import_learned(&bytes).expect("taken").elsewhere, 1);
    assert_eq!(there.export_learned().expect("exported").callbacks, 0);
    for bad in ["{}", "not JSON"] {
        let error = there.import_learned(bad.as_bytes()).expect_err("refused");
        assert_eq!(error.code, "bad-learned-file");
    }

    struct Later;
    impl Surroundings for Later {
        fn now(&self) -> DateTime<Utc> {
            Fixed.now() + chrono::Duration::seconds(1)
        }
        fn today(&self) -> NaiveDate {
            Fixed.today()
        }
        fn new_id(&self) -> Uuid {
            Fixed.new_id()
        }
    }
    here.surroundings = Box::new(Later);
    assert_eq!(here.learn_anew().expect("begun").own, 0);
    // Nothing is deleted: the verdict is still on record.
    assert_eq!(
        here.record(&visit).expect("kept").file.visit.verdicts.len(),
        1
    );
}

#[test]
fn the_last_entry_is_taken_back_and_the_one_before_it_after_that() {
    let mut engine = engine();
    let id = started(&mut engine);
    let reading = entry("static_pressure", "20", "psi");
    engine.put_reading(&id, &reading).expect("kept");
    let view = engine
        .set_answer(&id, "gurgling", Some("yes"))
        .expect("kept");
    assert!(view.undo.is_some());
    let view = engine.undo_last(&id).expect("taken back");
    assert_eq!(view.readings.len(), 1);
    let answered = view.questions.iter().flat_map(|group| &group.questions);
    assert_eq!(answered.filter(|asked| asked.answer.is_some()).count(), 0);
    let view = engine.undo_last(&id).expect("taken back");
    assert_eq!((view.readings.len(), view.undo), (0, None));
    let error = engine.undo_last(&id).expect_err("nothing left");
    assert_eq!(error.code, "nothing-to-undo");
}

#[test]
fn a_text_kept_while_it_is_written_is_taken_back_as_a_whole() {
    let mut engine = engine();
    let id = started(&mut engine);
    for text in ["It", "It gur", "It gurgles"] {
        let entry = FieldEntry {
            id: "visit.complaint".to_owned(),
            text: Some(text.to_owned()),
            unit: None,
        };
        engine.set_field(&id, &entry).expect("kept");
    }
    let view = engine.undo_last(&id).expect("taken back");
    assert_eq!((view.complaint, view.undo), (None, None));
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
fn a_site_of_like_name_is_pointed_out_and_joined() {
    let mut engine = engine();
    let first = started(&mut engine);
    let system = FieldEntry {
        id: "flow_centre".to_owned(),
        text: Some("sealed".to_owned()),
        unit: None,
    };
    engine.set_field(&first, &system).expect("kept");
    let new = NewVisit {
        site: "invented FARM".to_owned(),
        complaint: None,
        same_system_as: None,
    };
    let second = engine.start_visit(&new).expect("started");
    assert_eq!(second.similar.len(), 1);
    assert_eq!(second.similar[0].visit, first);
    engine
        .set_answer(&second.id, "gurgling", Some("yes"))
        .expect("kept");
    let joined = engine.join_site(&second.id, &first).expect("joined");
    assert_eq!(
        (joined.title.as_str(), joined.similar.len()),
        ("Invented farm", 0)
    );
    let record = engine.record(&second.id).expect("there");
    assert_eq!(record.file.visit.answers.len(), 1);
    assert!(record.file.system.flow_centre.is_some());
    // The site that no visit is at any more is gone, the other is not.
    assert_eq!(engine.store.sites().expect("listed").len(), 1);
}

#[test]
fn a_system_is_taken_from_a_template_or_another_visit_and_taken_back() {
    let mut engine = engine();
    let first = started(&mut engine);
    let template = engine.templates()[0].id.clone();
    engine.use_template(&first, &template).expect("taken");
    let second = started(&mut engine);
    engine.copy_system(&second, &first).expect("copied");
    let systems = [&first, &second].map(|id| engine.record(id).expect("there").file.system);
    assert_eq!(systems[0], systems[1]);
    assert!(systems[0].ground.is_some());
    engine.undo_last(&second).expect("taken back");
    let system = engine.record(&second).expect("there").file.system;
    assert_eq!(system.ground, None);
}

#[test]
fn a_timer_keeps_its_start_and_a_gate_is_one_reading_however_often_entered() {
    let mut engine = engine();
    let id = started(&mut engine);
    let change = |engine: &mut Engine, change| {
        engine.change_step(&id, "a-step", &change).expect("kept");
        engine.record(&id).expect("there").file.visit
    };
    let timer = StepChange::Timer {
        kind: "hold".to_owned(),
        running: true,
    };
    let visit = change(&mut engine, timer);
    assert_eq!(visit.actions[0].timers[0].started_at, Fixed.now());
    for text in ["2", "1.5"] {
        let gate = StepChange::Gate {
            looked: "dead_head_drop".to_owned(),
            text: text.to_owned(),
            unit: "in".to_owned(),
        };
        let visit = change(&mut engine, gate);
        assert_eq!((visit.readings.len(), visit.actions[0].gates.len()), (1, 1));
        assert_eq!(visit.readings[0].value().value.to_string(), text);
    }
    let empty = StepChange::Gate {
        looked: "dead_head_drop".to_owned(),
        text: String::new(),
        unit: "in".to_owned(),
    };
    let visit = change(&mut engine, empty);
    assert_eq!((visit.readings.len(), visit.actions[0].gates.len()), (0, 0));
}

#[test]
fn a_step_left_out_for_a_reason_is_not_done() {
    let mut engine = engine();
    let id = started(&mut engine);
    for change in [
        StepChange::Done { done: true },
        StepChange::Skipped {
            reason: Some("No cart on the van".to_owned()),
        },
    ] {
        engine.change_step(&id, "a-step", &change).expect("kept");
    }
    let action = engine
        .record(&id)
        .expect("there")
        .file
        .visit
        .actions
        .remove(0);
    assert_eq!(
        (action.done, action.skipped.as_deref()),
        (false, Some("No cart on the van"))
    );
}
