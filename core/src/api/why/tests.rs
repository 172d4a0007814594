use super::*;
use crate::api::{Wording, read_visit_file};
use chrono::NaiveDate;

const SAMPLE: &[u8] = include_bytes!("../../../data/samples/air-in-one-circuit.json");

fn call() -> Call {
    let file = read_visit_file(SAMPLE, Wording::default()).expect("the sample");
    let day = NaiveDate::from_ymd_opt(2026, 8, 14).expect("a day");
    Call::assess(&file, day, Wording::default())
}

/// The number that begins a text such as `+2.3 bits` or `83 %`.
fn number(text: &str) -> f64 {
    let bare = text.replace('−', "-").replace(['+', '×', '<', '>'], "");
    let first = bare.split_whitespace().next().expect("a word");
    first.parse().unwrap_or_else(|_| panic!("{text:?}"))
}

#[test]
fn every_cause_every_reason_and_every_check_says_where_its_number_comes_from() {
    let call = call();
    let answer = call.answer().assessment.clone();
    assert!(answer.causes.len() > 3 && !answer.checks.is_empty());
    for cause in &answer.causes {
        let why = call.explain(&WhyQuestion::Probability {
            cause: cause.id.clone(),
        });
        let why = why.expect("explained");
        let last = why.inputs.last().expect("an outcome");
        assert_eq!(last.1, cause.shown, "{}", cause.id);
        assert!(!why.source.is_empty() && !why.formula.is_empty());
        for reason in &cause.reasons {
            let why = call.explain(&WhyQuestion::Reason {
                cause: cause.id.clone(),
                finding: reason.finding.clone(),
            });
            let why = why.expect("explained");
            assert_eq!(why.inputs[0].1, reason.shown);
            assert!(!why.source.is_empty());
            // Odds times 2 for each bit: the definition of the bit. Both are rounded.
            let times = number(&why.inputs[1].1);
            let off = times.log2() - reason.bits;
            assert!(off.abs() < 0.08, "{times} for {} bits", reason.bits);
        }
    }
    for check in &answer.checks {
        let why = call.explain(&WhyQuestion::Check {
            check: check.id.clone(),
        });
        let why = why.expect("explained");
        let [bits, minutes, rate] = [0, 1, 2].map(|at| number(&why.inputs[at].1));
        // Bits are shown to a hundredth, their rate to a thousandth.
        let rounding = 0.005 / minutes + 0.0006;
        assert!((bits / minutes - rate).abs() < rounding, "{why:?}");
    }
}

/// A probability as it is shown, where it is neither nearly none nor nearly sure.
fn share(text: &str) -> Option<f64> {
    let plain = !text.contains(['<', '>']);
    plain.then(|| number(text) / 100.0)
}

#[test]
fn the_chance_of_an_outcome_is_the_sum_over_with_and_without_the_cause() {
    let call = call();
    let diagnosis = call.diagnosis().expect("weighed");
    let mut summed = 0;
    for check in &call.answer().assessment.checks {
        assert!(!check.outcomes.is_empty(), "{}", check.id);
        for outcome in &check.outcomes {
            let question = WhyQuestion::Outcome {
                check: check.id.clone(),
                outcome: outcome.id.clone(),
            };
            let why = call.explain(&question).expect("explained");
            assert_eq!(why.inputs[0].1, outcome.shown);
            let [with, without, moves] = [1, 2, 3].map(|at| why.inputs[at].1.as_str());
            let (now, after) = moves.split_once(" → ").expect("before and after");
            let numbers = [&outcome.shown, with, without, now, after].map(share);
            let [
                Some(chance),
                Some(with),
                Some(without),
                Some(now),
                Some(after),
            ] = numbers
            else {
                continue;
            };
            // The law of total probability, and Bayes' theorem. All are shown to
            // whole per cent.
            let total = now * with + (1.0 - now) * without;
            assert!((total - chance).abs() < 0.015, "{why:?}");
            assert!((after * chance - now * with).abs() < 0.015, "{why:?}");
            summed += 1;
        }
    }
    assert!(summed > 3, "only {summed} outcomes could be summed");
    let known = |id: &CauseId| diagnosis.causes.iter().any(|ranked| ranked.cause == *id);
    let doubts = &call.answer().assessment.doubted;
    assert!(
        doubts
            .iter()
            .all(|doubt| known(&CauseId::new(&doubt.cause)))
    );
}

#[test]
fn a_doubted_instrument_and_a_better_pair_say_where_their_numbers_come_from() {
    // Two gauges that differ, and signs of two faults that cannot be one.
    let file = br#"{"format":"returnline-visit","version":1,"visit":{"answers":[
        {"finding":"second-gauge-disagrees","is":"yes"},
        {"finding":"springy-gauge","is":"yes"},
        {"finding":"air-at-vent","is":"yes"},
        {"finding":"ground-wet-over-loop","is":"yes"}]}}"#;
    let file = read_visit_file(file, Wording::default()).expect("a visit");
    let call = Call::assess(&file, NaiveDate::default(), Wording::default());
    let answer = &call.answer().assessment;
    let doubt = answer.doubted.first().expect("a doubt");
    let question = WhyQuestion::Probability {
        cause: doubt.cause.clone(),
    };
    let why = call.explain(&question).expect("explained");
    assert_eq!(why.inputs.last().expect("an outcome").1, doubt.shown);
    assert!(why.inputs.len() > 3, "no finding is named: {why:?}");
    let pair = answer.pair.as_ref().expect("a pair");
    let why = call.explain(&WhyQuestion::Pair).expect("explained");
    assert_eq!(why.inputs[0].1, pair.shown);
    let [both, one] = [1, 2].map(|at| number(&why.inputs[at].1));
    assert!(both > one, "{why:?}");
}

#[test]
fn the_odds_before_and_the_bits_of_a_single_finding_make_the_odds_after() {
    // With one finding and nothing else, Bayes' rule in odds form says that the
    // odds after are the odds before times two to the power of the bits of the
    // call itself and of the finding.
    let file = br#"{"format":"returnline-visit","version":1,"visit":{"answers":[{"finding":"gurgling","is":"yes"}]}}"#;
    let file = read_visit_file(file, Wording::default()).expect("a visit");
    let call = Call::assess(&file, NaiveDate::default(), Wording::default());
    let diagnosis = call.diagnosis().expect("weighed");
    let odds = |p: f64| p / (1.0 - p);
    let mut told = 0;
    for trace in &diagnosis.traces {
        let [step] = trace.steps.as_slice() else {
            continue;
        };
        let ranked = diagnosis.causes.iter().find(|r| r.cause == trace.cause);
        let ranked = ranked.expect("ranked");
        let call = trace.call_bits.unwrap_or(0.0);
        let after = odds(ranked.prior) * (call + step.alone).exp2();
        let off = (after / odds(ranked.probability) - 1.0).abs();
        assert!(off < 1e-6, "{}: off by {off}", trace.cause);
        told += 1;
    }
    assert!(told > 0);
}

#[test]
fn what_the_answer_does_not_hold_is_refused_by_name() {
    let question = WhyQuestion::Reason {
        cause: "air-left-in-circuit".to_owned(),
        finding: "never-heard-of".to_owned(),
    };
    let error = call().explain(&question).expect_err("refused");
    assert!(error.message.contains("never-heard-of"), "{error:?}");
}

#[test]
fn what_would_change_the_mind_says_where_both_probabilities_come_from() {
    let call = call();
    let mut told = 0;
    for cause in &call.answer().assessment.causes {
        for turn in cause.turns.iter().filter_map(|turn| turn.outcome.as_ref()) {
            assert!(turn.shown.starts_with(&cause.shown), "{turn:?}");
            let question = WhyQuestion::Outcome {
                check: turn.check.clone(),
                outcome: turn.outcome.clone(),
            };
            let why = call.explain(&question).expect("explained");
            let same = why.inputs.iter().any(|(_, value)| *value == turn.shown);
            assert!(same, "{turn:?} is not in {why:?}");
            told += 1;
        }
    }
    assert!(told > 0, "nothing would change the mind");
}

/// By the definition of the bit: odds of two to the power of the bits.
#[test]
fn a_weight_is_told_as_odds_for_or_against() {
    let catalog = Wording::default().catalog();
    let told = |bits| weight(bits, catalog);
    for (bits, words) in [
        (3.0, "8 to 1 for it"),
        (-1.0, "2 to 1 against it"),
        (3.2, "9.2 to 1 for it"),
        (5.0, "32 to 1 for it"),
        (0.02, "nothing either way"),
        (-0.02, "nothing either way"),
        (12.0, "> 1000 to 1 for it"),
    ] {
        assert_eq!(told(bits), words, "{bits} bits");
    }
}

/// The list and the panel of a number speak of the same quantity, and the panel
/// says beside it what is left of it beside the rest.
#[test]
fn the_panel_of_a_reason_begins_with_what_the_list_says() {
    let call = call();
    let catalog = Wording::default().catalog();
    let cause = &call.answer().assessment.causes[0];
    for reason in &cause.reasons {
        let question = WhyQuestion::Reason {
            cause: cause.id.clone(),
            finding: reason.finding.clone(),
        };
        let why = call.explain(&question).expect("explained");
        let [alone, beside] = ["why-alone", "why-beside"].map(|key| catalog.text(key));
        assert_eq!(why.inputs[0], (alone, reason.shown.clone()));
        assert_eq!(why.inputs[2].0, beside);
    }
}
