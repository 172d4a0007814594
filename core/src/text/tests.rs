use super::*;
use std::collections::{BTreeMap, BTreeSet};

/// The texts of one file by `message` or `message.attribute`, as written.
fn texts(source: &str) -> BTreeMap<String, String> {
    let mut found: BTreeMap<String, String> = BTreeMap::new();
    let (mut message, mut key) = (String::new(), String::new());
    for line in source.lines().filter(|line| !line.starts_with('#')) {
        let indented = line.starts_with(' ');
        let start = line.trim_start();
        let text = match start.split_once(" =") {
            Some((name, text)) if !indented => {
                message = name.to_owned();
                key.clone_from(&message);
                text
            }
            Some((name, text)) if start.starts_with('.') => {
                key = format!("{message}{name}");
                text
            }
            _ => start,
        };
        if !text.is_empty() {
            let all = found.entry(key.clone()).or_default();
            all.push_str(text.trim());
            all.push(' ');
        }
    }
    found
}

/// Everything that a language must say alike: each text by file and key, with
/// its variables and its numbers.
fn skeleton(language: Language) -> BTreeMap<String, (BTreeSet<String>, Vec<String>)> {
    let mut all = BTreeMap::new();
    for (file, source) in language.files() {
        for (key, text) in texts(source) {
            let parts = (variables(&text), numbers(&text));
            all.insert(format!("{file}: {key}"), parts);
        }
    }
    all
}

fn variables(text: &str) -> BTreeSet<String> {
    let ends = |c: char| !(c.is_ascii_alphanumeric() || c == '_' || c == '-');
    text.split('$')
        .skip(1)
        .filter_map(|rest| rest.split(ends).next())
        .map(str::to_owned)
        .collect()
}

/// The numbers of a text in order of value, since word order differs.
fn numbers(text: &str) -> Vec<String> {
    let mut found: Vec<String> = text
        .split(|c: char| !(c.is_ascii_digit() || c == '.' || c == ','))
        .map(|number| number.trim_matches(['.', ',']).to_owned())
        .filter(|number| !number.is_empty())
        .collect();
    found.sort_unstable();
    found
}

#[test]
fn catalogs_parse_without_fault() {
    for language in Language::ALL {
        assert_eq!(catalog(language).faults(), &[] as &[String]);
    }
}

#[test]
fn every_language_has_the_same_texts_variables_and_numbers() {
    let english = skeleton(Language::English);
    assert!(english.len() > 2000, "{} texts read", english.len());
    for language in Language::ALL {
        let other = skeleton(language);
        let keys = |map: &BTreeMap<String, _>| map.keys().cloned().collect::<BTreeSet<_>>();
        let missing: Vec<_> = keys(&english).difference(&keys(&other)).cloned().collect();
        let beside: Vec<_> = keys(&other).difference(&keys(&english)).cloned().collect();
        assert!(missing.is_empty(), "{language:?} lacks {missing:#?}");
        assert!(beside.is_empty(), "{language:?} alone has {beside:#?}");
        let differing: Vec<_> = english
            .iter()
            .filter(|(key, parts)| other.get(*key) != Some(*parts))
            .map(|(key, parts)| (key, parts, other.get(key)))
            .collect();
        assert!(differing.is_empty(), "{language:?}: {differing:#?}");
    }
}

/// A text read by the scan above is one that the catalog answers for.
#[test]
fn every_text_is_found_in_its_catalog() {
    for language in Language::ALL {
        let lost: Vec<String> = skeleton(language)
            .into_keys()
            .filter(|name| {
                let key = name.split_once(": ").map_or("", |(_, key)| key);
                !catalog(language).has(key)
            })
            .collect();
        assert!(lost.is_empty(), "{language:?}: {lost:#?}");
    }
}

/// An amount that cannot be worked out would stand in the text as its call.
#[test]
fn every_amount_in_a_text_is_read_in_every_unit_system() {
    let mut named = 0;
    for language in Language::ALL {
        let texts: BTreeMap<_, _> = language
            .files()
            .iter()
            .flat_map(|file| texts(file.1))
            .collect();
        for (key, _) in texts.iter().filter(|(_, text)| text.contains("AMOUNT(")) {
            for units in UnitSystem::ALL {
                let read = catalog_in(language, units).text(key);
                assert!(!read.contains("AMOUNT"), "{language:?} {units:?}: {read}");
                named += 1;
            }
        }
    }
    assert!(named > 50, "{named} texts with an amount");
}

/// Catalogs say what is the same everywhere; a pressure is read in the reader's units.
#[test]
fn a_fixed_amount_is_said_in_the_units_of_the_reader() {
    let said = |language, units| catalog_in(language, units).text("why-plan-lowest-rating");
    for language in Language::ALL {
        let [us, si] = [UnitSystem::Us, UnitSystem::Si].map(|units| said(language, units));
        assert!(us.contains("100 psi") && us.contains("43.5 psi") && !us.contains("bar"));
        assert!(si.contains("6.89 bar") && si.contains("3 bar") && !si.contains("psi"));
    }
}

/// Titles stay as they were published; what is said of them is said in Spanish.
#[test]
fn a_spanish_citation_has_no_english_around_its_title() {
    let files = Language::Spanish.files();
    let (_, source) = files
        .iter()
        .find(|(name, _)| *name == "sources")
        .expect("a file of sources");
    let cited = texts(source);
    assert!(cited.len() >= 20, "{} sources", cited.len());
    let english = [
        "memory",
        "practice,",
        "no source",
        "page",
        "section",
        "chapter",
        "appendix",
        "edition",
        "th ed",
        "nd ed",
        "table",
        "others",
        "abstract",
        "parts",
        "clauses",
        "estimate",
        " p. ",
    ];
    for (key, text) in &cited {
        for word in english {
            assert!(!text.contains(word), "{key}: {word} in {text}");
        }
    }
}

#[test]
fn a_tag_names_its_language() {
    for language in Language::ALL {
        assert_eq!(Language::from_tag(language.tag()), Some(language));
    }
    assert_eq!(Language::from_tag("xx"), None);
}

#[test]
fn plural_forms_follow_the_language() {
    let says = |language, count| {
        let args = Args::new().text("path", "a.json").count("count", count);
        catalog(language).fill("program-faults", &args)
    };
    assert_eq!(says(Language::English, 1), "a.json: one fault");
    assert_eq!(says(Language::English, 3), "a.json: 3 faults");
    assert_eq!(says(Language::Spanish, 1), "a.json: un error");
    assert_eq!(says(Language::Spanish, 3), "a.json: 3 errores");
}

#[test]
fn a_missing_message_shows_its_identifier() {
    for language in Language::ALL {
        assert_eq!(
            catalog(language).text("no-such-message"),
            "«no-such-message»"
        );
    }
}
