//! Validation of the procedure files by named checks, each reporting every error.
//!
//! [`structure`] looks at the files alone and guards [`super::Library::load`];
//! [`plans`] assembles every procedure and every pair of procedures, which
//! takes longer; [`texts`] asks a catalog, passed in as a closure.

mod entries;
mod plans;
mod problem;
mod shape;
mod texts;

pub use plans::plans;
pub use problem::{Fault, Problem};
pub use texts::{text_keys, texts};

use super::file::ProcedureFile;
use super::library::SourceText;
use crate::authored::checks;

/// The procedure files as read.
pub type Parsed = crate::authored::Parsed<ProcedureFile>;
type Findings = checks::Findings<Fault>;

/// Reads every file; a file that cannot be read becomes a problem and is left out.
pub fn parse(texts: &[SourceText<'_>]) -> (Parsed, Vec<Problem>) {
    checks::parse(texts, |message| Fault::Unreadable { message })
}

/// The structural checks by name.
const CHECKS: &[checks::NamedCheck<ProcedureFile, Fault>] = &[
    ("ids-well-formed", entries::ids_well_formed),
    ("ids-unique", entries::ids_unique),
    ("terms-known", entries::terms_known),
    ("references-known", entries::references_known),
    ("sources-marked", entries::sources_marked),
    ("values-fit", entries::values_fit),
    ("hazards-have-cautions", shape::hazards_have_cautions),
    ("cautions-have-hazards", shape::cautions_have_hazards),
    ("gates-have-pass-values", shape::gates_have_pass_values),
    ("returns-come-before", shape::returns_come_before),
    ("after-within-stage", shape::after_within_stage),
    ("openings-are-closed", shape::openings_are_closed),
    ("proofs-have-ends", shape::proofs_have_ends),
    ("steps-reachable", shape::steps_reachable),
    ("nothing-unused", shape::nothing_unused),
];

/// Runs every structural check and returns all problems.
pub fn structure(parsed: &Parsed) -> Vec<Problem> {
    checks::run(CHECKS, parsed)
}

/// Every check of some files: reading, structure, the texts of a catalog, and
/// all plans of one and two procedures.
pub fn everything(
    files: &[SourceText<'_>],
    language: &str,
    has: impl Fn(&str) -> bool,
) -> Vec<Problem> {
    match super::Library::load(files) {
        Err(problems) => problems,
        Ok(library) => {
            let mut problems = texts(&library, language, has);
            problems.extend(plans(&library));
            problems
        }
    }
}

/// Names of all checks, those of [`structure`] first.
pub fn check_names() -> impl Iterator<Item = &'static str> {
    [checks::READ]
        .into_iter()
        .chain(CHECKS.iter().map(|(name, _)| *name))
        .chain(["texts-exist", "plans-hold"])
}

#[cfg(test)]
mod tests;
