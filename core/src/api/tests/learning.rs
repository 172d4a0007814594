use super::{Fixed, engine, started};
use crate::api::knowledge::knowledge;
use crate::api::{Engine, Surroundings};
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
    // A prior worth 50 callbacks and one callback more.
    assert!((learned.after - (50.0 * cause.prior + 1.0) / 51.0).abs() < 1e-12);

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
