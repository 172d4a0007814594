//! Validation of the graph files by named checks, each reporting every error.
//!
//! [`structure`] runs on the files alone and guards [`super::Graph::load`].
//! [`texts`] and [`evaluators`] need something from outside, passed in as a
//! closure or a list, so that this module depends on no catalog.

mod numbers;
mod outside;
mod problem;
mod references;
mod shape;

pub use outside::{evaluators, text_keys, texts};
pub use problem::{Fault, NodeKind, Problem};

use super::graph::{GraphFile, SourceText};
use crate::authored::checks;

/// The graph files as read.
pub type Parsed = crate::authored::Parsed<GraphFile>;
type Findings = checks::Findings<Fault>;

/// Reads every file; a file that cannot be read becomes a problem and is left out.
#[must_use]
pub fn parse(texts: &[SourceText<'_>]) -> (Parsed, Vec<Problem>) {
    checks::parse(texts, |message| Fault::Unreadable { message })
}

/// The structural checks by name.
const CHECKS: &[checks::NamedCheck<GraphFile, Fault>] = &[
    ("ids-well-formed", references::ids_well_formed),
    ("ids-unique", references::ids_unique),
    ("references-known", references::references_known),
    (
        "instruments-are-instruments",
        references::instruments_are_instruments,
    ),
    (
        "links-join-the-right-kinds",
        shape::links_join_the_right_kinds,
    ),
    ("links-unique", shape::links_unique),
    ("no-cycles", shape::no_cycles),
    ("causes-have-findings", shape::causes_have_findings),
    ("mechanisms-are-between", shape::mechanisms_are_between),
    ("findings-have-causes", shape::findings_have_causes),
    ("findings-have-checks", shape::findings_have_checks),
    ("checks-have-findings", shape::checks_have_findings),
    ("nothing-unused", shape::nothing_unused),
    ("hazards-have-cautions", shape::hazards_have_cautions),
    ("fields-fit-the-scale", numbers::fields_fit_the_scale),
    ("numbers-in-range", numbers::numbers_in_range),
    ("call-said-once", numbers::call_said_once),
    ("sources-marked", references::sources_marked),
];

/// Runs every structural check and returns all problems.
#[must_use]
pub fn structure(parsed: &Parsed) -> Vec<Problem> {
    checks::run(CHECKS, parsed)
}

/// Names of all checks, those of [`structure`] first.
pub fn check_names() -> impl Iterator<Item = &'static str> {
    [checks::READ]
        .into_iter()
        .chain(CHECKS.iter().map(|(name, _)| *name))
        .chain(["texts-exist", "evaluators-known"])
}

#[cfg(test)]
mod tests;
