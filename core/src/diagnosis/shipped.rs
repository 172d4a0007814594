//! The graph files that ship with the program, embedded at build time.

use super::graph::{Graph, SourceText};
use super::validate::Problem;

macro_rules! shipped {
    ($($name:literal),* $(,)?) => {
        &[$(SourceText {
            name: concat!($name, ".toml"),
            text: include_str!(concat!("../../data/graph/", $name, ".toml")),
        }),*]
    };
}

/// The shipped files. A file added to `core/data/graph/` is added here.
pub const FILES: &[SourceText<'_>] = shipped![
    "base",
    "sources",
    "procedures",
    "air",
    "circuits",
    "debris",
    "fluid",
    "ground",
    "instruments",
    "leaks",
    "pressure",
    "pumps",
    "tanks",
    "unit",
    "valves",
    "water",
];

/// Loads the shipped graph.
///
/// # Errors
/// The problems found in the shipped files; a test holds that there are none.
pub fn load() -> Result<Graph, Vec<Problem>> {
    Graph::load(FILES)
}
