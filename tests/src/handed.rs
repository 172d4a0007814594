//! Calls handed over by somebody else: a folder of visit files and a file
//! `truth.jsonl`, which says of each what was the matter.

use crate::simulator::score::alike;
use crate::simulator::trial::{Asked, assess, followed, ranking};
use returnline_core::api::{Wording, read_visit_file};
use returnline_core::diagnosis::{Diagnosis, Verdict};
use returnline_core::records::Visit;
use returnline_core::records::visit_file::VisitFile;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use std::fs::File;
use std::io::{self, BufWriter, Write};
use std::path::Path;

/// The file of a folder that says what was the matter, one call a line.
const TRUTHS: &str = "truth.jsonl";

/// What was the matter with one call.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Truth {
    /// The visit file, in the same folder.
    pub file: String,
    /// The causes, by their names in the rule graph; none: nothing was wrong.
    pub truth: Vec<String>,
    /// Causes that may stand first just as well on what the call holds.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub accept: Vec<String>,
}

/// What the program made of one call.
#[derive(Clone, Debug)]
pub struct Judged {
    /// What was the matter.
    pub truth: Truth,
    /// Causes but instruments, in the order of the answer.
    pub ranked: Vec<(String, f64)>,
    /// The instrument that is doubted most.
    pub doubted: Option<String>,
    /// The answer was "nothing to correct".
    pub called_healthy: bool,
}

impl Judged {
    fn of(truth: Truth, diagnosis: &Diagnosis) -> Self {
        let doubted = diagnosis.doubted.first();
        Self {
            truth,
            ranked: ranking(diagnosis),
            doubted: doubted.map(|doubt| doubt.instrument.as_str().to_owned()),
            called_healthy: matches!(diagnosis.verdict, Verdict::NothingToCorrect { .. }),
        }
    }

    /// Whether nothing was wrong.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        let ordinary = ["ordinary-relaxation", "seasonal-swing"];
        let all = &self.truth.truth;
        all.iter().all(|cause| ordinary.contains(&cause.as_str()))
    }

    /// Place of the first of the true causes, or of those that may stand first as well.
    #[must_use]
    pub fn place(&self) -> Option<usize> {
        let right =
            |cause: &String| self.truth.truth.contains(cause) || self.truth.accept.contains(cause);
        self.ranked.iter().position(|(cause, _)| right(cause))
    }

    /// Whether the first is put right by the same work as one of the true causes.
    #[must_use]
    pub fn is_same_correction(&self) -> bool {
        let first = self.ranked.first();
        first.is_some_and(|(first, _)| self.truth.truth.iter().any(|cause| alike(first, cause)))
    }
}

/// Writes calls, each a visit file as its value, and what was the matter into a
/// folder, which is made where there is none.
///
/// # Errors
/// What kept the folder or one of its files from being written.
pub fn hand_over(folder: &Path, calls: impl Iterator<Item = (Truth, Value)>) -> io::Result<()> {
    std::fs::create_dir_all(folder)?;
    let mut truths = BufWriter::new(File::create(folder.join(TRUTHS))?);
    for (truth, visit) in calls {
        std::fs::write(folder.join(&truth.file), visit.to_string())?;
        writeln!(truths, "{}", serde_json::to_string(&truth)?)?;
    }
    truths.flush()
}

fn read(folder: &Path, name: &str) -> String {
    std::fs::read_to_string(folder.join(name)).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// What was the matter with the calls of a folder, in its order.
///
/// # Panics
/// If the folder lacks `truth.jsonl`, or a line of it cannot be read.
#[must_use]
pub fn truths(folder: &Path) -> Vec<Truth> {
    read(folder, TRUTHS)
        .lines()
        .map(|line| serde_json::from_str(line).unwrap_or_else(|e| panic!("{line}: {e}")))
        .collect()
}

/// Every call of a folder, with what was the matter.
///
/// # Panics
/// As [`truths`], and if the folder lacks a file it names, or one is no visit file.
pub fn handed_over(folder: &Path) -> impl Iterator<Item = (Truth, VisitFile)> {
    truths(folder).into_iter().map(move |truth| {
        let file = read_visit_file(read(folder, &truth.file).as_bytes(), Wording::default())
            .unwrap_or_else(|error| panic!("{}: {}", truth.file, error.message));
        (truth, file)
    })
}

/// Puts every call of a folder to the program, on the graph in use.
///
/// # Panics
/// As [`handed_over`].
#[must_use]
pub fn judge(folder: &Path) -> Vec<Judged> {
    handed_over(folder)
        .map(|(truth, file)| Judged::of(truth, &assess(&file)))
        .collect()
}

/// The same after up to `follow` of the recommended checks: what they ask for is taken from
/// the file of the same name in a second folder, in which the same systems were read
/// more fully. Beside each call stands how many checks were made.
///
/// # Panics
/// As [`handed_over`], and if the folders are not of the same calls.
#[must_use]
pub fn judge_followed(folder: &Path, fuller: &Path, follow: usize) -> Vec<(Judged, usize)> {
    let mut fuller = handed_over(fuller);
    handed_over(folder)
        .map(|(truth, mut file)| {
            let (same, fuller) = fuller.next().expect("as many calls in both folders");
            assert_eq!(truth, same, "the folders are of the same calls");
            assert_eq!(file.site.name, fuller.site.name, "of the same sites");
            let (end, checks) = followed(assess(&file), follow, |asked| {
                take_over(&mut file.visit, &fuller.visit, asked);
                assess(&file)
            });
            (Judged::of(truth, &end), checks)
        })
        .collect()
}

/// Takes from a fuller visit what a check asks for and is not there yet.
fn take_over(visit: &mut Visit, fuller: &Visit, asked: &Asked) {
    for answer in &fuller.answers {
        let known = visit.answers.iter().any(|a| a.finding == answer.finding);
        if !known && asked.signs.contains(&answer.finding.as_str()) {
            visit.answers.push(answer.clone());
        }
    }
    for reading in &fuller.readings {
        let known = visit.readings.iter().any(|r| {
            let same = (r.point(), r.taken_at) == (reading.point(), reading.taken_at);
            same && r.instrument_or_usual() == reading.instrument_or_usual()
        });
        if !known && asked.points.contains(&reading.point().id()) {
            visit.readings.push(reading.clone());
        }
    }
}
