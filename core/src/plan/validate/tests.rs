//! The checks find what they are there to find, all at once.

use super::*;
use crate::plan::{FILES, SourceText, load};

/// Names of the checks that complain about a file, in order.
fn complaints(text: &str) -> Vec<String> {
    let (parsed, mut problems) = parse(&[SourceText {
        name: "test.toml",
        text,
    }]);
    problems.extend(structure(&parsed));
    problems
        .iter()
        .map(|problem| format!("{}/{}", problem.check, problem.subject))
        .collect()
}

const GOOD: &str = r#"
[[caution]]
id = "bleed"
hazards = ["pressure"]
[[step]]
id = "purge"
stage = "purge"
hazards = ["pressure"]
cautions = ["bleed"]
needs = ["look"]
timers = [{ kind = "purge", minutes = 15.0, source = "judgement" }]
[[step]]
id = "look"
stage = "dead-head"
[[step.gate]]
reading = "dead_head_drop"
rule = "at-most"
value = 1.0
unit = "in"
quantity = "dead-head-limit"
source = "common-practice"
return_to = ["purge"]
[[proof]]
id = "drop"
reading = "dead_head_drop"
mode = "idle"
when = "now"
at_most = { value = 1.0, unit = "in", source = "judgement" }
[[procedure]]
id = "clear-air"
steps = ["purge"]
proofs = ["drop"]
"#;

#[test]
fn a_good_file_is_good() {
    assert_eq!(complaints(GOOD), Vec::<String>::new());
}

#[test]
fn each_check_finds_its_fault() {
    for (from, to, expected) in [
        ("[[caution]]", "[[cautio]]", "files-read/"),
        ("id = \"look\"", "id = \"Look\"", "ids-well-formed/Look"),
        (
            "[[proof]]",
            "[[step]]\nid = \"look\"\nstage = \"hold\"\n[[proof]]",
            "ids-unique/look",
        ),
        ("\"dead-head\"", "\"dead\"", "terms-known/look"),
        (
            "hazards = [\"pressure\"]",
            "hazards = [\"presure\"]",
            "terms-known/bleed",
        ),
        (
            "[[proof]]",
            "[[material]]\nid = \"water\"\namounts = [\"much\"]\n[[proof]]",
            "terms-known/water",
        ),
        (
            "[[proof]]",
            "[[material]]\nid = \"water\"\namounts = [\"loop-volume\"]\n[[proof]]",
            "nothing-unused/water loop-volume",
        ),
        (
            "needs = [\"look\"]",
            "needs = [\"look\", \"gone\"]",
            "references-known/purge",
        ),
        (
            "source = \"common-practice\"",
            "source = \"some-book\"",
            "sources-marked/look",
        ),
        ("source = \"common-practice\"", "", "sources-marked/look"),
        (
            "unit = \"in\"\nquantity",
            "unit = \"psi\"\nquantity",
            "values-fit/look",
        ),
        ("\"dead-head-limit\"", "\"loop-volume\"", "values-fit/look"),
        ("minutes = 15.0", "minutes = -1.0", "values-fit/purge"),
        ("cautions = [\"bleed\"]", "", "hazards-have-cautions/purge"),
        (
            "hazards = [\"pressure\"]\ncautions",
            "cautions",
            "cautions-have-hazards/purge",
        ),
        (
            "value = 1.0\nunit = \"in\"\nquantity",
            "quantity",
            "gates-have-pass-values/look",
        ),
        ("return_to = [\"purge\"]", "", "gates-have-pass-values/look"),
        (
            "reading = \"dead_head_drop\"\nrule",
            "rule",
            "gates-have-pass-values/look",
        ),
        (
            "return_to = [\"purge\"]",
            "return_to = [\"look\"]",
            "returns-come-before/look",
        ),
        (
            "stage = \"purge\"",
            "stage = \"hold\"",
            "returns-come-before/look",
        ),
        (
            "stage = \"dead-head\"",
            "stage = \"dead-head\"\nafter = [\"purge\"]",
            "after-within-stage/look",
        ),
        (
            "[[proof]]",
            "[[opening]]\nid = \"hole\"\n[[step]]\nid = \"drill\"\nstage = \"open\"\nopens = [\"hole\"]\n[[proof]]",
            "openings-are-closed/drill",
        ),
        (
            "at_most = { value = 1.0, unit = \"in\", source = \"judgement\" }",
            "",
            "proofs-have-ends/drop",
        ),
        ("needs = [\"look\"]", "", "steps-reachable/look"),
        ("proofs = [\"drop\"]", "", "nothing-unused/drop"),
    ] {
        assert!(GOOD.contains(from), "{from}");
        let found = complaints(&GOOD.replacen(from, to, 1));
        assert!(
            found.iter().any(|found| found.starts_with(expected)),
            "{expected}: {found:?}"
        );
    }
}

#[test]
fn all_faults_are_reported_at_once() {
    let bad = GOOD
        .replacen("cautions = [\"bleed\"]", "", 1)
        .replacen("return_to = [\"purge\"]", "", 1)
        .replacen("minutes = 15.0", "minutes = 0.0", 1);
    let found = complaints(&bad);
    for expected in [
        "hazards-have-cautions/purge",
        "gates-have-pass-values/look",
        "values-fit/purge",
    ] {
        assert!(
            found.contains(&expected.to_owned()),
            "{expected}: {found:?}"
        );
    }
}

#[test]
fn every_check_is_named_once() {
    let names: Vec<&str> = check_names().collect();
    let unique: std::collections::BTreeSet<&&str> = names.iter().collect();
    assert_eq!(names.len(), unique.len());
}

#[test]
fn the_shipped_procedures_pass_every_check() {
    let (parsed, mut problems) = parse(FILES);
    problems.extend(structure(&parsed));
    let shown: Vec<String> = problems.iter().map(ToString::to_string).collect();
    assert!(shown.is_empty(), "{}", shown.join("\n"));
}

#[test]
fn every_pair_of_shipped_procedures_keeps_the_rules_and_has_its_words() {
    use crate::text::{Language, catalog};
    for language in Language::ALL {
        let catalog = catalog(language);
        let problems = everything(FILES, language.tag(), |key| catalog.has(key));
        let shown: Vec<String> = problems.iter().map(ToString::to_string).collect();
        assert!(shown.is_empty(), "{}", shown.join("\n"));
    }
}

/// The rule graph names procedures; what is done in them is here.
#[test]
fn every_procedure_of_the_rule_graph_is_here() {
    let graph = crate::diagnosis::shipped::load().unwrap();
    let library = load().unwrap();
    for procedure in graph.procedures() {
        let id = crate::plan::ProcedureId::new(procedure.id.as_str());
        assert!(library.procedure(&id).is_some(), "{id}");
    }
}
