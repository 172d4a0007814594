use super::{Fixed, engine, started};
use crate::api::knowledge::knowledge;
use crate::api::types::FieldEntry;
use crate::api::{Engine, Surroundings};
use crate::diagnosis::CauseKind;
use chrono::{DateTime, NaiveDate, Utc};
use uuid::Uuid;

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
    // A prior worth 250 callbacks and one callback more.
    assert!((learned.after - (250.0 * cause.prior + 1.0) / 251.0).abs() < 1e-12);

    // The screen shows the same number as its reasons end with.
    let why = engine
        .explain_learned(cause.id.as_str())
        .expect("explained");
    let after = &why.inputs.last().expect("an outcome").1;
    assert!(after.starts_with(&learned.after_shown), "{why:?}");
    assert!(
        why.inputs.iter().any(|(_, value)| value == "1 of 1"),
        "{why:?}"
    );
    let error = engine.explain_learned("unheard-of").expect_err("refused");
    assert_eq!(error.code, "no-such-name");

    let prior = |engine: &Engine, visit: &str| {
        let call = engine.call(visit).expect("worked out");
        call.gathered.case.priors.get(&cause.id).copied()
    };
    let second = started(&mut engine);
    assert_eq!(prior(&engine, &second), Some(learned.after));
    // A call is not its own precedent.
    assert_eq!(prior(&engine, &first), None);
}

/// Were only calls with a fault counted, each of them would make a healthy loop less
/// probable.
#[test]
fn a_call_with_nothing_wrong_counts_as_one_without_a_cause() {
    let mut engine = engine();
    let faulty = started(&mut engine);
    confirm(
        &mut engine,
        &faulty,
        knowledge().graph.causes()[0].id.as_str(),
    );
    let open = started(&mut engine);
    let healthy = engine
        .take_visit_file(
            br#"{"format":"returnline-visit","version":1,"system":{},
            "visit":{"answers":[{"finding":"gurgling","is":"no"}],"date":"2026-08-14"}}"#,
        )
        .expect("taken")
        .id;
    // A service by the calendar is no callback: nobody complained, nothing was asked.
    let service = engine
        .take_visit_file(
            br#"{"format":"returnline-visit","version":1,"system":{},
            "visit":{"outcome":"nothing_wrong","date":"2026-08-14"}}"#,
        )
        .expect("taken");
    assert_eq!(engine.learned().expect("read").own, 1, "{}", service.id);
    for (visit, outcome) in [(&open, "open"), (&healthy, "nothing_wrong")] {
        let ended = FieldEntry {
            id: "visit.outcome".to_owned(),
            text: Some(outcome.to_owned()),
            unit: None,
        };
        engine.set_field(visit, &ended).expect("kept");
    }
    let view = engine.learned().expect("read");
    // The call that is still open does not count.
    assert_eq!(view.own, 2);
    let confirmed: u32 = view.causes.iter().map(|cause| cause.confirmed).sum();
    assert_eq!(confirmed, 1);
    let first = &view.causes[0];
    assert!((first.after - (250.0 * first.before + 1.0) / 252.0).abs() < 1e-12);
    // What is ordinary is not unlearned by it, nor told as learned.
    let graph = &knowledge().graph;
    let mut causes = graph.causes().iter();
    let ordinary = causes.find(|cause| cause.kind == CauseKind::Normal);
    let ordinary = ordinary.expect("there").id.as_str();
    assert!(view.causes.iter().all(|cause| cause.id != ordinary));
    let refused = engine.explain_learned(ordinary).expect_err("refused");
    assert_eq!(refused.code, "no-such-name");
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
