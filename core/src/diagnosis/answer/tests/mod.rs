//! The answers on a small invented graph whose numbers can be followed by hand.

mod checks;
mod headline;

use super::*;
use crate::diagnosis::evidence::{Found, Likelihood, Observation, ReadWith};
use crate::diagnosis::graph::{Level, Scale, SourceText};

const GRAPH: &str = r#"
family = [{ id = "invented" }]
fact = [{ id = "never-flushed" }]
tool = [{ id = "gauge" }]
procedure = [{ id = "purge" }]
cause = [
  { id = "air", family = "invented", kind = "loop", status = "draft", prior = 0.1, source = "judgement", procedure = "purge", context = [{ fact = "never-flushed", odds = 4.0, source = "judgement" }] },
  { id = "leak", family = "invented", kind = "loop", status = "draft", prior = 0.1, source = "judgement" },
  { id = "relaxed", family = "invented", kind = "normal", status = "draft", prior = 0.3, source = "judgement" },
  { id = "charge", family = "invented", kind = "unit", status = "draft", prior = 0.1, source = "judgement" },
  { id = "twin-a", family = "invented", kind = "loop", status = "draft", prior = 0.05, source = "judgement", procedure = "purge" },
  { id = "twin-b", family = "invented", kind = "loop", status = "draft", prior = 0.05, source = "judgement", procedure = "purge" },
  { id = "gauge-lies", family = "invented", kind = "instrument", status = "draft", prior = 0.03, source = "judgement" },
]
mechanism = [
  { id = "gas", leak = 0.0, source = "judgement" },
  { id = "loss", leak = 0.0, source = "judgement" },
]
finding = [
  { id = "noise", levels = "presence", leak = 0.01, evidence = "symptom", source = "judgement" },
  { id = "bubbles", levels = "presence", leak = 0.01, evidence = "observation", source = "judgement" },
  { id = "pressure", levels = "graded", leak_low = 0.01, leak_high = 0.01, evidence = { evaluator = "pressure" }, instrument = "gauge-lies", source = "judgement" },
  { id = "tightness", levels = "presence", normal = "present", leak = 0.01, evidence = "observation", instrument = "gauge-lies", source = "judgement" },
  { id = "cold-line", levels = "presence", leak = 0.01, evidence = "observation", source = "judgement" },
  { id = "hum", levels = "presence", leak = 0.01, evidence = "symptom", source = "judgement" },
  { id = "other-gauge-differs", levels = "presence", leak = 0.01, evidence = "observation", source = "judgement" },
]
link = [
  { from = "air", to = "gas", strength = 0.95, source = "judgement" },
  { from = "gas", to = "noise", strength = 0.9, source = "judgement" },
  { from = "gas", to = "bubbles", strength = 0.9, source = "judgement" },
  { from = "leak", to = "loss", strength = 0.95, source = "judgement" },
  { from = "relaxed", to = "loss", strength = 0.7, source = "judgement" },
  { from = "loss", to = "pressure", low = 0.95, source = "judgement" },
  { from = "leak", to = "tightness", strength = 0.95, source = "judgement" },
  { from = "charge", to = "cold-line", strength = 0.9, source = "judgement" },
  { from = "twin-a", to = "hum", strength = 0.9, source = "judgement" },
  { from = "twin-b", to = "hum", strength = 0.9, source = "judgement" },
  { from = "gauge-lies", to = "other-gauge-differs", strength = 0.95, source = "judgement" },
]
check = [
  { id = "look-for-bubbles", minutes = 2.0, reveals = ["bubbles"], source = "judgement" },
  { id = "hold-test", minutes = 20.0, tools = ["gauge"], reveals = ["tightness", "pressure"], source = "judgement" },
  { id = "refrigerant", minutes = 15.0, licence = "refrigerant", reveals = ["cold-line"], source = "judgement" },
  { id = "second-gauge", minutes = 3.0, tools = ["gauge"], reveals = ["other-gauge-differs"], source = "judgement" },
]
"#;

fn graph() -> Graph {
    loaded(GRAPH)
}

fn loaded(text: &str) -> Graph {
    let name = "invented";
    Graph::load(&[SourceText { name, text }]).unwrap_or_else(|problems| panic!("{problems:#?}"))
}

fn told(graph: &Graph, seen: &[(&str, Level)]) -> Diagnosis {
    diagnose(
        graph,
        &case(graph, seen),
        &Means::default(),
        &Policy::default(),
        3,
    )
    .expect("a possible case")
}

fn case(graph: &Graph, seen: &[(&str, Level)]) -> Case {
    let observation = |&(id, level): &(&str, Level)| {
        let id = FindingId::new(id);
        let scale: Scale = graph.finding(graph.find_finding(&id).expect("known")).scale;
        Observation::new(id, Likelihood::reported(scale, level, 1.0).expect("fits"))
    };
    Case {
        observations: seen.iter().map(observation).collect(),
        ..Case::default()
    }
}

fn probability(diagnosis: &Diagnosis, id: &str) -> f64 {
    diagnosis
        .causes
        .iter()
        .find(|cause| cause.cause.as_str() == id)
        .expect("known")
        .probability
}

#[test]
fn a_clear_case_is_found_and_traced() {
    let diagnosis = told(
        &graph(),
        &[("noise", Level::Present), ("bubbles", Level::Present)],
    );
    assert_eq!(diagnosis.causes[0].cause.as_str(), "air");
    assert!(matches!(&diagnosis.verdict, Verdict::Cause { cause, .. } if cause.as_str() == "air"));
    assert!(matches!(&diagnosis.next, NextStep::StopFound { .. }));
    let trace = &diagnosis.traces[0];
    assert_eq!(trace.steps.len(), 2);
    assert!(trace.steps.iter().all(|step| step.bits > 0.0));
    assert_eq!(
        trace.steps[0].carrier,
        Carrier::Through(vec![MechanismId::new("gas")])
    );
    assert!(diagnosis.unexplained.is_empty());
}

#[test]
fn bits_of_a_lone_finding_are_its_likelihood_ratio() {
    let graph = graph();
    let diagnosis = told(&graph, &[("noise", Level::Present)]);
    let trace = diagnosis
        .traces
        .iter()
        .find(|trace| trace.cause.as_str() == "air")
        .expect("top");
    let with = 1.0 - 0.99 * (1.0 - 0.95 * 0.9);
    assert!((trace.steps[0].bits - (with / 0.01_f64).log2()).abs() < 1e-12);
    assert!((trace.prior_bits - (0.1_f64 / 0.9).log2()).abs() < 1e-12);
    assert!((trace.prior_bits + trace.steps[0].bits - trace.posterior_bits).abs() < 1e-12);
}

#[test]
fn readings_between_two_levels_are_said_to_be_at_the_edge() {
    let graph = graph();
    let at_edge = |id: &str, likelihood: Likelihood| {
        let case = Case {
            observations: vec![Observation::new(FindingId::new(id), likelihood)],
            ..Case::default()
        };
        let told = diagnose(&graph, &case, &Means::default(), &Policy::default(), 3);
        told.expect("a possible case").traces[0].steps[0].at_edge
    };
    let pressure = |low, normal| Likelihood::graded(low, normal, 0.01).expect("fits");
    assert!(at_edge("pressure", pressure(0.6, 0.4)));
    assert!(at_edge("pressure", pressure(0.3, 0.6)));
    assert!(!at_edge("pressure", pressure(0.9, 0.1)));
    // What somebody answers is what they answered, however little it tells.
    let answered = Likelihood::presence(0.4, 0.6).expect("fits");
    assert!(!at_edge("bubbles", answered));
}

#[test]
fn a_fact_shifts_the_odds_by_its_factor() {
    let graph = graph();
    let mut case = case(&graph, &[("noise", Level::Present)]);
    case.facts
        .insert(super::super::id::FactId::new("never-flushed"), true);
    let diagnosis = diagnose(&graph, &case, &Means::default(), &Policy::default(), 3).expect("ok");
    let trace = &diagnosis.traces[0];
    assert_eq!(trace.cause.as_str(), "air");
    assert!((trace.context[0].bits - 2.0).abs() < 1e-12);
    assert!((diagnosis.causes[0].prior - (0.4 / 0.9) / (1.0 + 0.4 / 0.9)).abs() < 1e-12);
}

#[test]
fn ordinary_behaviour_is_told_from_a_fault() {
    let diagnosis = told(
        &graph(),
        &[
            ("pressure", Level::Low),
            ("tightness", Level::Present),
            ("noise", Level::Absent),
            ("bubbles", Level::Absent),
            ("cold-line", Level::Absent),
            ("hum", Level::Absent),
        ],
    );
    let Verdict::NothingToCorrect {
        behaviour,
        probability,
        settled,
    } = &diagnosis.verdict
    else {
        panic!("{:?}", diagnosis.verdict)
    };
    assert!(*probability > 0.7);
    assert_eq!(*settled, *probability >= Policy::default().healthy_settled);
    assert_eq!(behaviour.as_ref().map(CauseId::as_str), Some("relaxed"));
}

#[test]
fn a_unit_fault_is_handed_over() {
    let diagnosis = told(
        &graph(),
        &[
            ("cold-line", Level::Present),
            ("noise", Level::Absent),
            ("hum", Level::Absent),
            ("tightness", Level::Present),
        ],
    );
    assert!(matches!(&diagnosis.verdict,
        Verdict::NotTheLoop { leading: Some(cause), .. } if cause.as_str() == "charge"));
}

#[test]
fn a_contradicting_reading_lowers_trust_in_its_instrument() {
    let graph = graph();
    let before = probability(&told(&graph, &[("pressure", Level::High)]), "gauge-lies");
    let diagnosis = told(
        &graph,
        &[
            ("pressure", Level::High),
            ("other-gauge-differs", Level::Present),
        ],
    );
    assert!(before > 0.2, "{before}");
    assert!(probability(&diagnosis, "gauge-lies") > 0.9);
    assert!(matches!(
        diagnosis.verdict,
        Verdict::InstrumentFirst { .. } | Verdict::Undecided { .. }
    ));
    assert_eq!(diagnosis.doubted[0].instrument.as_str(), "gauge-lies");
    let sound = {
        let mut case = case(&graph, &[("pressure", Level::High)]);
        case.observations[0].read_with = ReadWith::Nothing;
        Inference::new(&graph, &case).expect("ok")
    };
    let gauge = graph
        .find_cause(&CauseId::new("gauge-lies"))
        .expect("known");
    assert!((sound.cause(gauge) - 0.03).abs() < 1e-12);
}

#[test]
fn a_sign_no_cause_makes_likely_is_unexplained() {
    let diagnosis = told(
        &graph(),
        &[
            ("noise", Level::Present),
            ("bubbles", Level::Present),
            ("hum", Level::Present),
        ],
    );
    // The twins share the hum, so neither is more probable than not against the other's.
    let names: Vec<_> = diagnosis
        .unexplained
        .iter()
        .map(|one| one.finding.as_str())
        .collect();
    let explained_by_twin =
        probability(&diagnosis, "twin-a") >= 0.5 || probability(&diagnosis, "twin-b") >= 0.5;
    assert_eq!(names.contains(&"hum"), !explained_by_twin);
}

#[test]
fn impossible_and_unknown_cases_are_refused() {
    let graph = graph();
    let mut wrong = case(&graph, &[("noise", Level::Present)]);
    wrong.observations[0].likelihood = Likelihood::graded(1.0, 0.0, 0.0).expect("valid");
    assert!(matches!(
        Inference::new(&graph, &wrong),
        Err(CaseError::WrongScale { .. })
    ));
    wrong.observations[0].finding = FindingId::new("no-such");
    assert!(matches!(
        Inference::new(&graph, &wrong),
        Err(CaseError::UnknownFinding(_))
    ));
}

#[test]
fn what_was_found_beyond_doubt_is_certain() {
    let graph = graph();
    let mut case = case(&graph, &[("noise", Level::Present)]);
    case.found
        .insert(CauseId::new("air"), Found::certainly(false));
    case.found
        .insert(CauseId::new("leak"), Found::certainly(true));
    let told = diagnose(&graph, &case, &Means::default(), &Policy::default(), 9).expect("possible");
    assert!(probability(&told, "air").abs() < 1e-15);
    assert!((probability(&told, "leak") - 1.0).abs() < 1e-15);
    let of = |id: &str| told.traces.iter().find(|trace| trace.cause.as_str() == id);
    let leak = of("leak").expect("traced");
    // Nothing can be said for or against what is certain.
    assert_eq!(leak.found_bits, Some(f64::INFINITY));
    assert!(leak.steps.is_empty());
    assert!(of("charge").expect("traced").found_bits.is_none());
}

#[test]
fn a_credible_finding_of_a_cause_moves_its_odds_by_its_factor() {
    let graph = graph();
    let found = Found {
        is_so: true,
        credibility: 0.9,
    };
    let mut case = Case::default();
    case.found.insert(CauseId::new("air"), found);
    let inference = Inference::new(&graph, &case).expect("possible");
    let place = graph.find_cause(&CauseId::new("air")).expect("known");
    // Odds 1/9 times 0.9/0.1.
    assert!((inference.cause(place) - 0.5).abs() < 1e-14);
    assert!((inference.prior(place) - 0.1).abs() < 1e-15);
    case.found.insert(
        CauseId::new("air"),
        Found {
            is_so: true,
            credibility: 0.0,
        },
    );
    assert!(matches!(
        Inference::new(&graph, &case),
        Err(CaseError::CredibilityOutOfRange { .. })
    ));
}

/// The small graph, with the way in which calls come about.
fn graph_of_calls() -> Graph {
    let call = r#"
call = [{ leak = 0.1, loop = 0.9, unit = 0.9, normal = 0.3, instrument = 0.1, source = "judgement" }]
"#;
    loaded(&format!("{GRAPH}{call}"))
}

#[test]
fn a_sign_that_moves_a_cause_through_others_says_which_and_which_way() {
    // Somebody called: what speaks for air takes from the charge, and the other way round.
    let graph = graph_of_calls();
    let carrier = |level: Level| {
        let mut case = case(&graph, &[("noise", level)]);
        case.called = true;
        let told = diagnose(&graph, &case, &Means::default(), &Policy::default(), 9);
        let told = told.expect("possible");
        let mut traces = told.traces.iter();
        let trace = traces.find(|trace| trace.cause.as_str() == "charge");
        let step = &trace.expect("traced").steps[0];
        (step.alone, step.carrier.clone())
    };
    let air = Some(CauseId::new("air"));
    let (bits, by) = carrier(Level::Present);
    assert!(
        bits < 0.0 && by == Carrier::Rival(air.clone()),
        "{bits} {by:?}"
    );
    let (bits, by) = carrier(Level::Absent);
    assert!(bits > 0.0 && by == Carrier::RivalLess(air), "{bits} {by:?}");
}
