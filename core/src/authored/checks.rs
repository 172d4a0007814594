//! Named checks over files, each reporting every problem it finds.

use super::{LARGEST_FILE, Problem, SourceText};
use serde::de::DeserializeOwned;

/// The files as read, with their names for messages.
#[derive(Debug, Clone)]
pub struct Parsed<File>(Vec<(String, File)>);

impl<File> Parsed<File> {
    /// Every file with its name.
    pub(crate) fn files(&self) -> impl Iterator<Item = (&str, &File)> {
        self.0.iter().map(|(name, file)| (name.as_str(), file))
    }

    /// The entries of one kind across all files.
    pub(crate) fn each<'a, T: 'a>(
        &'a self,
        pick: impl Fn(&'a File) -> &'a Vec<T>,
    ) -> impl Iterator<Item = &'a T> {
        self.located(pick).map(|(_, entry)| entry)
    }

    /// The entries of one kind across all files, each with its file's name.
    pub(crate) fn located<'a, T: 'a>(
        &'a self,
        pick: impl Fn(&'a File) -> &'a Vec<T>,
    ) -> impl Iterator<Item = (&'a str, &'a T)> {
        self.files()
            .flat_map(move |(name, file)| pick(file).iter().map(move |entry| (name, entry)))
    }
}

/// The check that every file passes by being read.
pub(crate) const READ: &str = "files-read";

/// Reads every file; a file that cannot be read becomes a problem, worded from
/// the reader's message, and is left out.
pub(crate) fn parse<File: DeserializeOwned, F>(
    texts: &[SourceText<'_>],
    unreadable: impl Fn(String) -> F,
) -> (Parsed<File>, Vec<Problem<F>>) {
    let mut files = Vec::new();
    let mut problems = Vec::new();
    for source in texts {
        let read = if source.text.len() > LARGEST_FILE {
            Err(format!("it is larger than {LARGEST_FILE} bytes"))
        } else {
            toml::from_str(source.text).map_err(|error| error.to_string())
        };
        match read {
            Ok(file) => files.push((source.name.to_owned(), file)),
            Err(message) => problems.push(Problem {
                check: READ,
                file: source.name.to_owned(),
                subject: String::new(),
                fault: unreadable(message),
            }),
        }
    }
    (Parsed(files), problems)
}

/// A check and its name.
pub(crate) type NamedCheck<File, F> = (&'static str, fn(&Parsed<File>, &mut Findings<F>));

/// Runs every check and returns all problems.
pub(crate) fn run<File, F>(
    checks: &[NamedCheck<File, F>],
    parsed: &Parsed<File>,
) -> Vec<Problem<F>> {
    let mut all = Vec::new();
    for (name, check) in checks {
        let mut findings = Findings {
            check: name,
            problems: Vec::new(),
        };
        check(parsed, &mut findings);
        all.append(&mut findings.problems);
    }
    all
}

/// Collects what one check finds.
pub(crate) struct Findings<F> {
    check: &'static str,
    problems: Vec<Problem<F>>,
}

impl<F> Findings<F> {
    pub(crate) fn add(&mut self, file: &str, subject: impl Into<String>, fault: F) {
        self.problems.push(Problem {
            check: self.check,
            file: file.to_owned(),
            subject: subject.into(),
            fault,
        });
    }
}
