use super::{Fixed, engine, started};
use crate::api::types::StepChange;
use crate::api::{Engine, Surroundings};

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
fn a_note_at_a_step_is_kept_with_it_and_taken_away_when_it_is_empty() {
    let mut engine = engine();
    let id = started(&mut engine);
    for (text, kept) in [
        (" 100 psi on the plate ", Some("100 psi on the plate")),
        (" ", None),
    ] {
        let note = StepChange::Note {
            text: text.to_owned(),
        };
        engine.change_step(&id, "a-step", &note).expect("kept");
        let actions = engine.record(&id).expect("there").file.visit.actions;
        let noted: Vec<_> = actions
            .iter()
            .map(|action| (action.step.as_deref(), action.text.as_deref(), action.done))
            .collect();
        assert_eq!(noted, [(Some("a-step"), kept, false)]);
    }
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
