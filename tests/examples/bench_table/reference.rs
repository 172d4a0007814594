//! The other side: a Python that has the reference libraries.

use serde_json::Value;
use std::error::Error;
use std::ffi::OsString;
use std::fs::File;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// The other side, and a folder in which it is handed its work.
pub struct Reference {
    python: Option<OsString>,
    folder: tempfile::TempDir,
}

/// What the other side took.
pub enum Answer {
    /// Seconds, the median of its runs.
    Seconds(f64),
    /// No answer, and why in a word or two.
    None(String),
}

/// How long one line of the other side may take, its start and loading included.
const PATIENCE: Duration = Duration::from_secs(150);

impl Reference {
    /// Names the Python, if there is one.
    pub fn find() -> Result<Self, Box<dyn Error>> {
        Ok(Self {
            python: std::env::var_os("RETURNLINE_PYTHON"),
            folder: tempfile::tempdir()?,
        })
    }

    /// A file of this name in the shared folder.
    pub fn file(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// The program of the other side, if there is one.
    pub fn python(&self) -> Option<&OsString> {
        self.python.as_ref()
    }

    /// Has a task of `bench.py` timed.
    pub fn time(
        &self,
        library: &'static str,
        task: &str,
        input: &Value,
    ) -> Result<Option<(&'static str, Answer)>, Box<dyn Error>> {
        let Some(python) = &self.python else {
            return Ok(None);
        };
        let given = self.file("task.json");
        std::fs::write(&given, input.to_string())?;
        let answer = run(python, task, &given, &self.file("answer.json"))?;
        Ok(Some((library, answer)))
    }

    /// What the reader should know about the last columns.
    pub fn note(&self) -> &'static str {
        if self.python.is_some() {
            "ratio: median of the library beside it over ours; above one, the library takes longer."
        } else {
            "RETURNLINE_PYTHON is not set: references are left out, all figures are our own."
        }
    }
}

fn run(
    python: &OsString,
    task: &str,
    given: &Path,
    answer: &Path,
) -> Result<Answer, Box<dyn Error>> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/reference");
    let mut child = Command::new(python)
        .args(["bench.py", task])
        .arg(given)
        .current_dir(folder)
        .stdout(File::create(answer)?)
        .stderr(Stdio::inherit())
        .spawn()?;
    let begun = Instant::now();
    let status = loop {
        if let Some(status) = child.try_wait()? {
            break status;
        }
        if begun.elapsed() > PATIENCE {
            child.kill()?;
            child.wait()?;
            return Ok(Answer::None(format!("> {} s", PATIENCE.as_secs())));
        }
        std::thread::sleep(Duration::from_millis(20));
    };
    if !status.success() {
        return Ok(Answer::None("failed".to_owned()));
    }
    let told: Value = serde_json::from_slice(&std::fs::read(answer)?)?;
    Ok(match told["seconds"].as_f64() {
        Some(seconds) => Answer::Seconds(seconds),
        None => Answer::None(told["none"].as_str().unwrap_or("none").to_owned()),
    })
}
