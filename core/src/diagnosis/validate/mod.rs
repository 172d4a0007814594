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

/// The files as read, with their names for messages.
#[derive(Debug, Clone, Default)]
pub struct Parsed {
    files: Vec<(String, GraphFile)>,
}

impl Parsed {
    /// The entries of one kind across all files.
    pub(super) fn files<'a, T: 'a>(
        &'a self,
        pick: impl Fn(&'a GraphFile) -> &'a Vec<T>,
    ) -> impl Iterator<Item = &'a T> {
        self.files.iter().flat_map(move |(_, file)| pick(file))
    }

    /// The entries of one kind across all files, each with its file's name.
    fn located<'a, T: 'a>(
        &'a self,
        pick: impl Fn(&'a GraphFile) -> &'a Vec<T>,
    ) -> impl Iterator<Item = (&'a str, &'a T)> {
        self.files
            .iter()
            .flat_map(move |(name, file)| pick(file).iter().map(move |item| (name.as_str(), item)))
    }
}

/// Reads every file; a file that cannot be read becomes a problem and is left out.
#[must_use]
pub fn parse(texts: &[SourceText<'_>]) -> (Parsed, Vec<Problem>) {
    let mut parsed = Parsed::default();
    let mut problems = Vec::new();
    for source in texts {
        match toml::from_str::<GraphFile>(source.text) {
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

type NamedCheck = (&'static str, fn(&Parsed, &mut Report));

/// The structural checks by name.
const CHECKS: &[NamedCheck] = &[
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
    let mut all = Vec::new();
    for (name, check) in CHECKS {
        let mut report = Report {
            check: name,
            problems: Vec::new(),
        };
        check(parsed, &mut report);
        all.append(&mut report.problems);
    }
    all
}

/// Names of all checks, those of [`structure`] first.
pub fn check_names() -> impl Iterator<Item = &'static str> {
    ["files-read"]
        .into_iter()
        .chain(CHECKS.iter().map(|(name, _)| *name))
        .chain(["texts-exist", "evaluators-known"])
}

/// Collects what one check finds.
struct Report {
    check: &'static str,
    problems: Vec<Problem>,
}

impl Report {
    fn add(&mut self, file: &str, subject: impl Into<String>, fault: Fault) {
        self.problems.push(Problem {
            check: self.check,
            file: file.to_owned(),
            subject: subject.into(),
            fault,
        });
    }
}

#[cfg(test)]
mod tests;
