use super::{engine, entry, started};
use crate::api::types::FieldEntry;

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
