//! The directions in which the parts may depend on each other.
//!
//! Inside one crate the compiler cannot hold them, so this test reads the
//! sources: every `crate::<module>` that a module names must be on its list.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

const PHYSICS: &[&str] = &[
    "units",
    "uncertainty",
    "fluids",
    "hydraulics",
    "pressure",
    "charge",
    "heat",
    "water",
];

/// What every module may name: it adds to the language and knows nothing of the subject.
const EVERYBODY: &[&str] = &["named"];

/// What each module of the core may name, besides itself.
const ALLOWED: &[(&str, &[&str])] = &[
    ("units", &[]),
    ("uncertainty", &["units"]),
    ("fluids", &["units", "uncertainty"]),
    ("hydraulics", &["units", "uncertainty", "fluids"]),
    ("pressure", PHYSICS),
    ("charge", PHYSICS),
    ("heat", PHYSICS),
    ("water", PHYSICS),
    ("text", &[]),
    ("records", &["units", "text"]),
    ("figures", &["units", "uncertainty", "text"]),
    ("authored", &[]),
    ("diagnosis", &["authored"]),
    (
        "model",
        &["records", "units", "uncertainty", "fluids", "hydraulics"],
    ),
    (
        "evidence",
        &[
            "records",
            "model",
            "figures",
            "diagnosis",
            "units",
            "uncertainty",
            "fluids",
            "hydraulics",
            "pressure",
            "charge",
            "heat",
            "water",
        ],
    ),
    (
        "plan",
        &[
            "authored",
            "records",
            "model",
            "figures",
            "units",
            "uncertainty",
            "fluids",
            "hydraulics",
            "pressure",
            "charge",
            "heat",
            "water",
        ],
    ),
    ("exchange", &["records", "units"]),
    ("fleet", &["records", "units", "exchange"]),
    ("store", &["records", "units", "exchange", "fleet"]),
    ("report", &["records", "text", "units", "figures"]),
];

/// Composes everything.
const COMPOSING: &[&str] = &["api", "calc", "bin"];

/// What a pure module must not name: files, network, clock, chance, database.
const IMPURE: &[&str] = &[
    "std::fs",
    "std::net",
    "std::env",
    "SystemTime",
    "Instant",
    "Utc::now",
    "Local::now",
    "rusqlite",
    "Uuid::now",
    "println!",
    "std::process",
];

/// Modules that are pure: the mathematics, the inference, and what feeds them.
const PURE: &[&str] = &[
    "units",
    "uncertainty",
    "fluids",
    "hydraulics",
    "pressure",
    "charge",
    "heat",
    "water",
    "records",
    "figures",
    "authored",
    "diagnosis",
    "model",
    "evidence",
    "plan",
    "calc",
    "text",
    "exchange",
    "fleet",
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn sources(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).expect("a readable folder") {
            let path = entry.expect("a readable entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|found| found == ending) {
                found.push(path);
            }
        }
    }
    found
}

/// A source without its comments and unit tests, which may look around.
fn code(path: &Path) -> String {
    let text = std::fs::read_to_string(path).expect("a readable source");
    let text = text.split("#[cfg(test)]").next().unwrap_or_default();
    text.lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .collect::<Vec<_>>()
        .join("\n")
}

fn is_test(path: &Path) -> bool {
    path.components().any(|part| part.as_os_str() == "tests")
        || path
            .file_stem()
            .is_some_and(|stem| stem.to_string_lossy().ends_with("tests"))
}

/// The top-level modules that a piece of code names through `crate::`.
fn named(code: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    for (at, _) in code.match_indices("crate::") {
        let rest = &code[at + "crate::".len()..];
        let until = |stop: fn(char) -> bool| rest.split(stop).next().unwrap_or_default();
        if let Some(list) = rest.strip_prefix('{') {
            // `use crate::{units::{Length, Unit}, fluids::Fluid};` names the
            // first word of each piece at the outer level.
            let (mut depth, mut word, mut first) = (0usize, String::new(), true);
            for c in list.chars() {
                match c {
                    '{' => depth += 1,
                    '}' if depth == 0 => break,
                    '}' => depth -= 1,
                    ',' if depth == 0 => first = true,
                    ':' if first => {
                        names.insert(std::mem::take(&mut word));
                        first = false;
                    }
                    c if first && (c.is_alphanumeric() || c == '_') => word.push(c),
                    _ => {}
                }
            }
        } else {
            names.insert(until(|c| !(c.is_alphanumeric() || c == '_')).to_owned());
        }
    }
    names.retain(|name| name.starts_with(|c: char| c.is_lowercase()));
    names
}

#[test]
fn modules_of_the_core_depend_only_in_the_allowed_directions() {
    let core = root().join("core/src");
    let mut wrong = Vec::new();
    let mut known: BTreeSet<&str> = ALLOWED.iter().map(|(module, _)| *module).collect();
    known.extend(COMPOSING);
    for entry in std::fs::read_dir(&core).expect("a readable folder") {
        let path = entry.expect("a readable entry").path();
        let module = path
            .file_stem()
            .expect("a name")
            .to_string_lossy()
            .into_owned();
        if path.is_dir() && !known.contains(module.as_str()) {
            wrong.push(format!("{module} has no list of what it may name"));
        }
    }
    for (module, allowed) in ALLOWED {
        for path in sources(&core.join(module), "rs")
            .iter()
            .filter(|path| !is_test(path))
        {
            for name in named(&code(path)) {
                let free = EVERYBODY.contains(&name.as_str());
                if name != *module && !free && !allowed.contains(&name.as_str()) {
                    wrong.push(format!("{} names {name}", path.display()));
                }
            }
        }
    }
    assert_eq!(wrong, [] as [String; 0]);
}

#[test]
fn the_mathematics_and_the_inference_touch_nothing_outside() {
    let mut wrong = Vec::new();
    for module in PURE {
        for path in sources(&root().join("core/src").join(module), "rs") {
            if is_test(&path) {
                continue;
            }
            let code = code(&path);
            for word in IMPURE.iter().filter(|word| code.contains(**word)) {
                wrong.push(format!("{} names {word}", path.display()));
            }
        }
    }
    assert_eq!(wrong, [] as [String; 0]);
}

#[test]
fn the_core_never_names_the_shell() {
    let core = root().join("core");
    let manifest = std::fs::read_to_string(core.join("Cargo.toml")).expect("readable");
    assert!(!manifest.contains("tauri"));
    for path in sources(&core.join("src"), "rs") {
        assert!(!code(&path).contains("tauri"), "{}", path.display());
    }
}

#[test]
fn the_report_and_the_interface_stay_on_their_side() {
    for path in sources(&root().join("core/src/report"), "rs") {
        assert!(!code(&path).contains("crate::store"), "{}", path.display());
    }
    let shell = root().join("src-tauri/src");
    for path in sources(&shell, "rs") {
        let code = code(&path);
        for (at, _) in code.match_indices("returnline_core::") {
            let rest = &code[at + "returnline_core::".len()..];
            assert!(
                rest.starts_with("api"),
                "{} looks past the boundary",
                path.display()
            );
        }
    }
    let mut callers = Vec::new();
    for ending in ["ts", "svelte"] {
        for path in sources(&root().join("ui/src"), ending) {
            let text = std::fs::read_to_string(&path).expect("readable");
            if text.contains("invoke(") || text.contains("invoke<") {
                callers.push(path.file_name().expect("a name").to_owned());
            }
        }
    }
    assert!(
        callers.iter().all(|name| name == "client.ts"),
        "{callers:?}"
    );
}

#[test]
fn the_reader_of_names_sees_lists_and_paths() {
    let names = named("use crate::{units::{Length, Unit}, fluids::Fluid}; crate::heat::flow();");
    let expected: BTreeSet<String> = ["units", "fluids", "heat"].map(str::to_owned).into();
    assert_eq!(names, expected);
}
