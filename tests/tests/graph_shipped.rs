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
