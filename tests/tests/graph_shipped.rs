//! The shipped rule graph holds together and has its words in every language.

use returnline_core::diagnosis::{Graph, shipped, validate};
use returnline_core::text::{Language, catalog};

fn graph() -> Graph {
    shipped::load().unwrap_or_else(|problems| panic!("{problems:#?}"))
}

#[test]
fn every_text_exists_in_every_language() {
    let tags: Vec<_> = Language::ALL
        .into_iter()
        .map(|language| language.tag())
        .collect();
    let has = |tag: &str, key: &str| {
        Language::from_tag(tag).is_some_and(|language| catalog(language).has(key))
    };
    let problems = validate::texts(&graph(), &tags, has);
    assert!(problems.is_empty(), "{problems:#?}");
}

/// A file of the graph says its sources itself, since it is read without the catalogs
/// too; it says the same.
#[test]
fn every_source_is_cited_in_every_language_and_in_english_as_the_graph_has_it() {
    let graph = graph();
    assert!(graph.sources().len() > 10);
    for source in graph.sources() {
        let key = format!("source-{}", source.id);
        for language in Language::ALL {
            assert!(catalog(language).has(&key), "{language:?}: {key}");
        }
        assert_eq!(catalog(Language::English).text(&key), source.citation);
    }
}

#[test]
fn it_covers_the_families_in_breadth() {
    let graph = graph();
    assert!(graph.causes().len() >= 35);
    assert!(graph.mechanisms().len() >= 20);
    assert!(graph.findings().len() >= 70);
}

#[test]
fn facts_and_evaluators_are_documented() {
    let graph = graph();
    let facts = include_str!("../../core/data/graph/facts.md");
    let evaluators = include_str!("../../core/data/graph/evaluators.md");
    for fact in graph.facts() {
        assert!(facts.contains(&format!("| `{fact}` |")), "fact {fact}");
    }
    for finding in graph.findings() {
        if let returnline_core::diagnosis::EvidenceKind::Evaluator(name) = &finding.evidence {
            assert!(
                evaluators.contains(&format!("| `{name}` |")),
                "evaluator {name}"
            );
        }
    }
}

/// Of the three ways a trouble may begin one is told, each a third of the time
/// before any cause is known: what makes one more frequent makes the two others so
/// much less. Source: the definition of conditional probability.
#[test]
fn odds_of_how_it_began_make_one_whole() {
    let told = ["since-start-up", "came-on-slowly", "came-on-suddenly"];
    let mut seen = 0;
    for cause in graph().causes() {
        for shift in &cause.context {
            if told.contains(&shift.fact.as_str()) {
                seen += 1;
                let whole = (1.0 - shift.odds / 3.0) / (1.0 - 1.0 / 3.0);
                let want = whole.max(0.3);
                assert!(
                    (shift.odds_if_false - want).abs() < 0.011,
                    "{} and {}: {} if false, not {want:.2}",
                    cause.id,
                    shift.fact,
                    shift.odds_if_false
                );
            }
        }
    }
    assert!(seen >= 30, "only {seen} are told");
}
