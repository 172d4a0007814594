//! What is said first.

use super::*;

#[test]
fn twins_cannot_be_told_apart() {
    let diagnosis = told(
        &graph(),
        &[
            ("hum", Level::Present),
            ("noise", Level::Absent),
            ("cold-line", Level::Absent),
        ],
    );
    let Verdict::CannotTellApart { causes, procedure } = &diagnosis.verdict else {
        panic!("{:?}", diagnosis.verdict)
    };
    assert_eq!(causes.len(), 2);
    assert_eq!(procedure.as_ref().map(|id| id.as_str()), Some("purge"));
}

#[test]
fn two_faults_explain_better_than_one() {
    let diagnosis = told(
        &graph(),
        &[
            ("noise", Level::Present),
            ("bubbles", Level::Present),
            ("tightness", Level::Absent),
            ("pressure", Level::Low),
        ],
    );
    assert!(diagnosis.explanations.pair_is_better);
    let pair = diagnosis.explanations.pair.as_ref().expect("a pair");
    let mut ids: Vec<_> = pair.causes.iter().map(CauseId::as_str).collect();
    ids.sort_unstable();
    assert_eq!(ids, ["air", "leak"]);
    assert!(matches!(diagnosis.verdict, Verdict::Pair { .. }));
}

#[test]
fn a_likely_loop_fault_stands_beside_a_unit_fault_that_is_found() {
    let graph = graph();
    let mut case = case(&graph, &[("cold-line", Level::Present)]);
    // A noise half heard: 18 to 1 for air, by hand below.
    let absent = (0.8566 - 0.18) / (18.0 * 0.99 - 0.1434);
    let heard = Likelihood::presence(absent, 1.0).expect("positive");
    case.observations
        .push(Observation::new(FindingId::new("noise"), heard));
    let told = diagnose(&graph, &case, &Means::default(), &Policy::default(), 3);
    let told = told.expect("possible");
    // The charge: 1/9 times 0.901/0.01. Air: 1/9 times 18, P(noise | air) being
    // 1 - 0.99 * (1 - 0.95 * 0.9) = 0.85645. They have no sign in common.
    let charge = 90.1 / (90.1 + 9.0);
    let air = 18.0 / (18.0 + 9.0);
    assert!((probability(&told, "charge") - charge).abs() < 1e-9);
    assert!((probability(&told, "air") - air).abs() < 1e-3);
    let Verdict::Pair {
        causes,
        probability,
    } = &told.verdict
    else {
        panic!("{:?}", told.verdict)
    };
    let causes: Vec<_> = causes.iter().map(CauseId::as_str).collect();
    assert_eq!(causes, ["air", "charge"], "the loop before the unit");
    assert!((probability - charge * air).abs() < 1e-3);
}

#[test]
fn ordinary_behaviour_leads_exactly_where_nothing_is_to_be_corrected() {
    let graph = graph();
    let case = case(
        &graph,
        &[("pressure", Level::Low), ("tightness", Level::Present)],
    );
    let first = |policy: Policy| {
        let told = diagnose(&graph, &case, &Means::default(), &policy, 1).expect("possible");
        let is_sound = matches!(told.verdict, Verdict::NothingToCorrect { .. });
        (is_sound, told.causes[0].kind)
    };
    let (is_sound, kind) = first(Policy {
        healthy: 0.5,
        ..Policy::default()
    });
    assert!(is_sound && kind == CauseKind::Normal);
    let (is_sound, kind) = first(Policy {
        healthy: 1.0,
        healthy_unrivalled: 1.0,
        ..Policy::default()
    });
    assert!(!is_sound && kind != CauseKind::Normal);
}
