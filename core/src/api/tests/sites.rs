use super::{engine, entry, started};
use crate::api::types::{FieldEntry, NewVisit, VerdictEntry};

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
fn a_visit_tells_in_short_how_the_one_before_it_ended() {
    let mut engine = engine();
    let first = started(&mut engine);
    assert_eq!(engine.visit(&first).expect("there").last, None);
    let mut read = entry("static_pressure", "8", "psi");
    engine.put_reading(&first, &read).expect("kept");
    read.phase = "left".to_owned();
    read.text = "38".to_owned();
    engine.put_reading(&first, &read).expect("kept");
    let field = |id: &str, text: &str| FieldEntry {
        id: id.to_owned(),
        text: Some(text.to_owned()),
        unit: None,
    };
    let day = field("visit.date", "2026-03-02");
    engine.set_field(&first, &day).expect("kept");
    let verdict = VerdictEntry {
        cause: "air-left-in-circuit".to_owned(),
        confirmed: Some(true),
        by_check: None,
    };
    engine.set_verdict(&first, &verdict).expect("kept");
    let new = NewVisit {
        site: String::new(),
        complaint: None,
        same_system_as: Some(first.clone()),
    };
    let second = engine.start_visit(&new).expect("started");
    let last = second.last.expect("the first");
    assert_eq!(
        (last.visit, last.date.as_deref()),
        (first.clone(), Some("2026-03-02"))
    );
    assert_eq!(last.found.len(), 1);
    assert_eq!(last.pressure.as_deref(), Some("38 ± 2 psi"));
    assert_eq!(last.outcome, None);
    // One that is told to be open is open as one of which nothing is told.
    for (outcome, told) in [("open", None), ("partly", Some("put right in part"))] {
        let ended = field("visit.outcome", outcome);
        engine.set_field(&first, &ended).expect("kept");
        let last = engine.visit(&second.id).expect("there").last;
        assert_eq!(last.and_then(|last| last.outcome).as_deref(), told);
    }
    // The first does not follow the second.
    assert_eq!(engine.visit(&first).expect("there").last, None);
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
