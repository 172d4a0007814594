//! The graph files that ship with the program, embedded at build time.

use super::graph::{Graph, SourceText};
use super::validate::Problem;

/// The shipped files. A file added to `core/data/graph/` is added here.
pub const FILES: &[SourceText<'_>] = &[];

/// Loads the shipped graph.
///
/// # Errors
/// The problems found in the shipped files; a test holds that there are none.
pub fn load() -> Result<Graph, Vec<Problem>> {
    Graph::load(FILES)
}
