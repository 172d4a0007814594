//! What the shipped programs are made of: licences, network, duplicates, unsafe.
//!
//! Asks `cargo metadata` without a network; the lockfile is the truth.

use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

/// Licences that ask for no more than naming the authors, and the one
/// (MPL-2.0) whose duty ends at the dependency's own files. SPDX identifiers.
const ACCEPTED: &[&str] = &[
    "0BSD",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "CC0-1.0",
    "ISC",
    "MIT",
    "MIT-0",
    "MPL-2.0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Crates that speak to a network. None may be in a shipped program.
const NETWORK: &[&str] = &[
    "attohttpc",
    "curl",
    "h2",
    "hyper",
    "isahc",
    "minreq",
    "native-tls",
    "openssl",
    "quinn",
    "reqwest",
    "rustls",
    "tungstenite",
    "ureq",
];

/// Crates that we name ourselves and that others bring in another version too,
/// with the reason why that cannot be helped here.
const TWICE: &[(&str, &str)] = &[
    (
        "base64",
        "the window library reads property lists with a newer one",
    ),
    ("schemars", "tauri's build-time schemas rest on older ones"),
    (
        "thiserror",
        "the window library's bindings rest on version 1",
    ),
];

struct Metadata {
    packages: BTreeMap<String, Value>,
    nodes: BTreeMap<String, Value>,
}

impl Metadata {
    fn read() -> Self {
        let output = Command::new(env!("CARGO"))
            .args(["metadata", "--offline", "--locked", "--format-version", "1"])
            .args(["--filter-platform", "x86_64-unknown-linux-gnu"])
            .current_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/.."))
            .output()
            .expect("cargo runs");
        assert!(
            output.status.success(),
            "{}",
            String::from_utf8_lossy(&output.stderr)
        );
        let all: Value = serde_json::from_slice(&output.stdout).expect("JSON");
        let by_id = |list: &Value| {
            let list = list.as_array().expect("a list").iter();
            list.map(|entry| {
                (
                    entry["id"].as_str().expect("an id").to_owned(),
                    entry.clone(),
                )
            })
            .collect()
        };
        Self {
            packages: by_id(&all["packages"]),
            nodes: by_id(&all["resolve"]["nodes"]),
        }
    }

    fn text<'a>(&'a self, id: &str, key: &str) -> Option<&'a str> {
        self.packages[id][key].as_str()
    }

    /// Identifiers of everything that ends up in the programs we ship.
    fn shipped(&self) -> BTreeSet<String> {
        let ours = ["returnline-core", "returnline-app"];
        let named = |id: &&String| ours.contains(&self.text(id, "name").unwrap_or_default());
        let mut open: Vec<String> = self.packages.keys().filter(named).cloned().collect();
        assert_eq!(open.len(), ours.len(), "both programs are found");
        let mut seen = BTreeSet::new();
        while let Some(id) = open.pop() {
            // What a macro is made of stays with the compiler.
            let targets = self.packages[&id]["targets"].as_array().expect("a list");
            if targets
                .iter()
                .any(|target| target["kind"][0] == "proc-macro")
                || !seen.insert(id.clone())
            {
                continue;
            }
            let needs = self.nodes[&id]["deps"].as_array().expect("a list").iter();
            let linked = needs.filter(|need| {
                let kinds = need["dep_kinds"].as_array().expect("a list");
                kinds.iter().any(|kind| kind["kind"].is_null())
            });
            open.extend(linked.map(|need| need["pkg"].as_str().expect("an id").to_owned()));
        }
        seen
    }
}

/// Whether an SPDX expression can be met with accepted licences alone.
fn acceptable(expression: &str) -> bool {
    let plain = expression.replace(['(', ')'], " ").replace('/', " OR ");
    // No expression here nests OR inside AND beyond one pair of brackets, and
    // taking AND as the tighter binding then asks for more, never for less.
    let each = |text: &str| {
        text.split(" AND ")
            .all(|name| ACCEPTED.contains(&name.trim()))
    };
    if expression.contains('(') && expression.contains(" AND ") {
        return plain
            .split(" AND ")
            .all(|part| part.split(" OR ").any(each));
    }
    plain.split(" OR ").any(each)
}

#[test]
fn every_licence_is_acceptable() {
    assert!(
        acceptable("MIT OR GPL-3.0") && !acceptable("GPL-3.0") && !acceptable("MIT AND GPL-3.0")
    );
    assert!(acceptable("(MIT OR Apache-2.0) AND Unicode-3.0") && !acceptable("(MIT OR X) AND Y"));
    let metadata = Metadata::read();
    let refused: Vec<String> = metadata
        .shipped()
        .iter()
        .filter(|id| !acceptable(metadata.text(id, "license").unwrap_or("none")))
        .map(|id| format!("{id}: {:?}", metadata.text(id, "license")))
        .collect();
    assert!(refused.is_empty(), "{refused:#?}");
}

#[test]
fn nothing_that_is_shipped_speaks_to_a_network() {
    let metadata = Metadata::read();
    let found: Vec<String> = metadata
        .shipped()
        .into_iter()
        .filter(|id| NETWORK.contains(&metadata.text(id, "name").unwrap_or_default()))
        .collect();
    assert!(found.is_empty(), "{found:#?}");
}

#[test]
fn what_we_name_ourselves_is_there_once() {
    let metadata = Metadata::read();
    let mut versions: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    let shipped = metadata.shipped();
    for id in &shipped {
        let name = metadata.text(id, "name").expect("a name");
        let version = metadata.text(id, "version").expect("a version");
        versions.entry(name).or_default().insert(version);
    }
    let workspace = include_str!("../../Cargo.toml");
    let ours = |name: &str| {
        workspace
            .lines()
            .any(|line| line.starts_with(&format!("{name} = ")))
    };
    let twice: Vec<_> = versions
        .iter()
        .filter(|(name, versions)| versions.len() > 1 && ours(name))
        .filter(|(name, _)| !TWICE.iter().any(|(known, _)| known == *name))
        .collect();
    assert!(twice.is_empty(), "{twice:?}");
}

#[test]
fn our_own_crates_forbid_unsafe_code() {
    let workspace = include_str!("../../Cargo.toml");
    assert!(workspace.contains("unsafe_code = \"forbid\""));
    for manifest in [
        include_str!("../../core/Cargo.toml"),
        include_str!("../Cargo.toml"),
    ] {
        let inherits = manifest.contains("[lints]\nworkspace = true");
        assert!(
            inherits || manifest.contains("unsafe_code = \"forbid\""),
            "{manifest}"
        );
    }
    // A phone's entry point is an exported function, which the compiler counts
    // as unsafe; `forbid` would not let it be lifted for phones alone.
    assert!(include_str!("../../src-tauri/Cargo.toml").contains("unsafe_code = \"deny\""));
    let shell = include_str!("../../src-tauri/src/lib.rs");
    assert!(shell.contains("#![cfg_attr(mobile, allow(unsafe_code))]"));
    assert_eq!(
        shell.matches("unsafe").count(),
        1,
        "lifted in one place only"
    );
}
