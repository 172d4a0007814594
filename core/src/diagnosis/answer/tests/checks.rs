//! What checks promise.

use super::*;

#[test]
fn checks_heed_tools_and_licence() {
    let graph = graph();
    let means = Means {
        tools: Some(std::collections::BTreeSet::new()),
        ..Means::default()
    };
    let case = case(&graph, &[("noise", Level::Present)]);
    let diagnosis = diagnose(&graph, &case, &means, &Policy::default(), 1).expect("ok");
    let find = |id: &str| {
        diagnosis
            .checks
            .iter()
            .find(|check| check.check.as_str() == id)
            .expect("listed")
    };
    assert!(matches!(
        find("hold-test").obstacle,
        Some(Obstacle::Tools(_))
    ));
    assert!(matches!(
        find("refrigerant").obstacle,
        Some(Obstacle::Licence(_))
    ));
    assert_eq!(find("look-for-bubbles").obstacle, None);
    for check in &diagnosis.checks {
        let total: f64 = check
            .outcomes
            .iter()
            .map(|outcome| outcome.probability)
            .sum();
        assert!((total - 1.0).abs() < 1e-12, "{check:?}");
    }
}

#[test]
fn an_outcome_foretells_the_ranking_it_leads_to() {
    let graph = graph();
    let now = told(&graph, &[("noise", Level::Present)]);
    let check = now
        .checks
        .iter()
        .find(|c| c.check.as_str() == "look-for-bubbles")
        .expect("listed");
    for outcome in &check.outcomes {
        let (_, level) = outcome.levels[0];
        let then = told(&graph, &[("noise", Level::Present), ("bubbles", level)]);
        for (cause, foretold) in &outcome.leading {
            assert!((probability(&then, cause.as_str()) - foretold).abs() < 1e-12);
        }
    }
}

#[test]
fn a_check_of_an_instrument_is_worth_something_where_that_is_in_doubt() {
    let graph = graph();
    let worth = |seen: &[(&str, Level)]| {
        let told = told(&graph, seen);
        let check = told
            .checks
            .iter()
            .find(|c| c.check.as_str() == "second-gauge");
        let bits = check.expect("listed").bits;
        (probability(&told, "gauge-lies"), bits)
    };
    // Nothing was read: one gauge in 33 lies, and no answer hangs on it.
    let (lies, bits) = worth(&[("noise", Level::Present)]);
    assert!(
        lies < Policy::default().doubted && bits.abs() < 1e-12,
        "{lies} {bits}"
    );
    // What nothing brings about was read: the gauge lies (a third of lies read high) or
    // the one pressure in a hundred is so. 0.01 against 0.0097, before the rest of the graph.
    let (lies, bits) = worth(&[("pressure", Level::High)]);
    assert!(
        lies >= Policy::default().doubted && bits > 0.1,
        "{lies} {bits}"
    );
}
