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

/// The files as read, with their names for messages.
#[derive(Clone, Debug, Default)]
pub struct Parsed {
    files: Vec<(String, ProcedureFile)>,
}

impl Parsed {
    /// The entries of one kind across all files.
    pub(super) fn each<'a, T: 'a>(
        &'a self,
        pick: impl Fn(&'a ProcedureFile) -> &'a Vec<T>,
    ) -> impl Iterator<Item = &'a T> {
        self.located(pick).map(|(_, entry)| entry)
    }

    /// The entries of one kind across all files, each with its file's name.
    fn located<'a, T: 'a>(
        &'a self,
        pick: impl Fn(&'a ProcedureFile) -> &'a Vec<T>,
    ) -> impl Iterator<Item = (&'a str, &'a T)> {
        self.files.iter().flat_map(move |(name, file)| {
            pick(file).iter().map(move |entry| (name.as_str(), entry))
        })
    }
}

/// Reads every file; a file that cannot be read becomes a problem and is left out.
pub fn parse(texts: &[SourceText<'_>]) -> (Parsed, Vec<Problem>) {
    let mut parsed = Parsed::default();
    let mut problems = Vec::new();
    for source in texts {
        match toml::from_str::<ProcedureFile>(source.text) {
            Ok(file) => parsed.files.push((source.name.to_owned(), file)),
            Err(error) => problems.push(Problem {
                check: "files-read",
                file: source.name.to_owned(),
                subject: String::new(),
                fault: Fault::Unreadable {
                    message: error.to_string(),
                },
            }),
        }
    }
    (parsed, problems)
}

type NamedCheck = (&'static str, fn(&Parsed, &mut Findings));

/// The structural checks by name.
const CHECKS: &[NamedCheck] = &[
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
    let mut all = Vec::new();
    for (name, check) in CHECKS {
        let mut findings = Findings {
            check: name,
            problems: Vec::new(),
        };
        check(parsed, &mut findings);
        all.append(&mut findings.problems);
    }
    all
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
    ["files-read"]
        .into_iter()
        .chain(CHECKS.iter().map(|(name, _)| *name))
        .chain(["texts-exist", "plans-hold"])
}

/// Collects what one check finds.
struct Findings {
    check: &'static str,
    problems: Vec<Problem>,
}

impl Findings {
    fn add(&mut self, file: &str, subject: &str, fault: Fault) {
        self.problems.push(Problem {
            check: self.check,
            file: file.to_owned(),
            subject: subject.to_owned(),
            fault,
        });
    }
}

#[cfg(test)]
mod tests;
