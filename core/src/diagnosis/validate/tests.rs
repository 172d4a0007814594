use super::*;
use crate::diagnosis::graph::Graph;

/// The example of the format description: it must load, so that authors can trust it.
fn example() -> String {
    let readme = include_str!("../../../data/graph/README.md");
    let start = readme
        .find("```toml")
        .expect("the description has an example")
        + 7;
    let end = readme[start..].find("```").expect("the example ends") + start;
    readme[start..end].to_owned()
}

fn problems_of(text: &str) -> Vec<Problem> {
    match Graph::load(&[SourceText {
        name: "test.toml",
        text,
    }]) {
        Ok(_) => Vec::new(),
        Err(problems) => problems,
    }
}

fn found_by(text: &str) -> Vec<&'static str> {
    let mut names: Vec<_> = problems_of(text)
        .iter()
        .map(|problem| problem.check)
        .collect();
    names.dedup();
    names
}

const CALL: &str = "[[call]]\nleak = 0.1\nloop = 0.9\nunit = 0.9\nnormal = 0.5\ninstrument = 0.1\nsource = \"judgement\"\n";

#[test]
fn example_of_the_format_description_is_valid() {
    assert_eq!(problems_of(&example()), Vec::new());
}

#[test]
fn each_check_finds_its_fault_in_a_spoiled_example() {
    let good = example();
    let spoil = |from: &str, to: &str| {
        assert!(good.contains(from), "the example has no `{from}`");
        good.replacen(from, to, 1)
    };
    let add = |text: &str| format!("{good}\n{text}");
    let cases = [
        ("files-read", spoil("prior = 0.08", "prior = ")),
        (
            "files-read",
            spoil("prior = 0.08", "prior = 0.08\nprobability = 1"),
        ),
        (
            "ids-well-formed",
            add("[[source]]\nid = \"Bad_id\"\ncitation = \"x\""),
        ),
        (
            "ids-unique",
            add("[[mechanism]]\nid = \"gurgling\"\nleak = 0.1\nsource = \"judgement\""),
        ),
        (
            "references-known",
            spoil("family = \"air\"", "family = \"water\""),
        ),
        (
            "instruments-are-instruments",
            spoil(
                "instrument = \"pressure-gauge-lies\"",
                "instrument = \"air-in-circuit\"",
            ),
        ),
        (
            "links-join-the-right-kinds",
            spoil("from = \"air-in-circuit\"", "from = \"gurgling\""),
        ),
        (
            "links-join-the-right-kinds",
            spoil("from = \"air-in-circuit\"", "from = \"nothing\""),
        ),
        (
            "links-unique",
            add(
                "[[link]]\nfrom = \"gas-in-fluid\"\nto = \"gurgling\"\nstrength = 0.5\nsource = \"judgement\"",
            ),
        ),
        (
            "no-cycles",
            add(
                "[[link]]\nfrom = \"gas-in-fluid\"\nto = \"gas-in-fluid\"\nstrength = 0.5\nsource = \"judgement\"",
            ),
        ),
        (
            "causes-have-findings",
            spoil("to = \"gas-in-fluid\"", "to = \"gurgling-elsewhere\""),
        ),
        (
            "mechanisms-are-between",
            spoil(
                "from = \"air-in-circuit\"",
                "from = \"pressure-gauge-lies\"",
            )
            .replace(
                "from = \"pressure-gauge-lies\"\nto = \"gas-in-fluid\"",
                "from = \"pressure-gauge-lies\"\nto = \"static-pressure\"",
            ),
        ),
        (
            "findings-have-causes",
            add(
                "[[finding]]\nid = \"lonely\"\nlevels = \"presence\"\nleak = 0.1\nevidence = \"symptom\"\nsource = \"judgement\"",
            ),
        ),
        (
            "findings-have-checks",
            spoil("reveals = [\"gurgling\"]", "reveals = []"),
        ),
        (
            "checks-have-findings",
            spoil("reveals = [\"gurgling\"]", "reveals = []"),
        ),
        ("nothing-unused", add("[[fact]]\nid = \"never-asked\"")),
        (
            "hazards-have-cautions",
            spoil("cautions = [\"pressurised-port\"]", "cautions = []"),
        ),
        ("fields-fit-the-scale", spoil("strength = 0.7", "low = 0.7")),
        ("fields-fit-the-scale", spoil("leak_low = 0.03\n", "")),
        (
            "numbers-in-range",
            spoil("strength = 0.7", "strength = 1.0"),
        ),
        ("numbers-in-range", spoil("prior = 0.08", "prior = nan")),
        (
            "numbers-in-range",
            spoil("low = 0.3\nhigh = 0.05", "low = 0.6\nhigh = 0.6"),
        ),
        ("numbers-in-range", add(&CALL.replace("0.5", "1.0"))),
        ("sources-marked", add(&CALL.replace("judgement", ""))),
        ("call-said-once", add(&format!("{CALL}{CALL}"))),
        (
            "call-said-once",
            spoil("prior = 0.08", "prior = 0.08\ncalls = 0.5"),
        ),
        (
            "sources-marked",
            spoil(
                "source = \"example-handbook\"",
                "source = \"other-handbook\"",
            ),
        ),
        (
            "sources-marked",
            spoil("source = \"common-practice\"", "source = \"\""),
        ),
    ];
    for (check, text) in &cases {
        assert!(
            found_by(text).contains(check),
            "{check} found nothing in:\n{text}"
        );
    }
    let covered: std::collections::BTreeSet<_> = cases.iter().map(|(check, _)| *check).collect();
    for name in check_names().filter(|name| !["texts-exist", "evaluators-known"].contains(name)) {
        assert!(covered.contains(name), "no spoiled example for {name}");
    }
}

#[test]
fn all_errors_are_reported_at_once() {
    let text = example()
        .replace("prior = 0.08", "prior = 8.0")
        .replace("family = \"air\"", "family = \"water\"")
        .replace("minutes = 2.0", "minutes = 0.0");
    let found = found_by(&text);
    assert!(found.contains(&"numbers-in-range") && found.contains(&"references-known"));
    assert!(problems_of(&text).len() >= 4, "{:?}", problems_of(&text));
}

#[test]
fn a_longer_circle_is_shown_whole() {
    let mechanism =
        |id: &str| format!("[[mechanism]]\nid = \"{id}\"\nleak = 0.0\nsource = \"judgement\"\n");
    let link = |from: &str, to: &str| {
        format!(
            "[[link]]\nfrom = \"{from}\"\nto = \"{to}\"\nstrength = 0.5\nsource = \"judgement\"\n"
        )
    };
    let text = [
        example(),
        mechanism("one"),
        mechanism("two"),
        link("gas-in-fluid", "one"),
        link("one", "two"),
        link("two", "gas-in-fluid"),
    ]
    .concat();
    let problems = problems_of(&text);
    assert_eq!(problems.len(), 1, "{problems:?}");
    assert_eq!(
        problems[0].fault,
        Fault::Cycle {
            path: String::from("gas-in-fluid -> one -> two -> gas-in-fluid")
        }
    );
}

#[test]
fn missing_texts_and_evaluators_are_found() {
    let text = example();
    let graph = Graph::load(&[SourceText {
        name: "test.toml",
        text: &text,
    }])
    .expect("valid");
    let missing = texts(&graph, &["en", "xx"], |language, key| {
        language == "en" && key != "link-gas-in-fluid--gurgling"
    });
    assert_eq!(missing.len(), 1 + text_keys(&graph).len());
    assert!(missing.iter().all(|problem| problem.check == "texts-exist"));
    assert_eq!(evaluators(&graph, &["static-pressure"]), Vec::new());
    assert_eq!(evaluators(&graph, &["flow"]).len(), 1);
}
