//! The headless program from its start to its end.

use crate::reference::{Answer, Reference};
use crate::timing::time;
use crate::{Row, Rows};
use returnline_tests::program;
use std::ffi::OsStr;
use std::process::{Command, Stdio};

pub fn rows(reference: &Reference) -> Rows {
    let run = |program: &OsStr, words: &[&OsStr]| {
        Command::new(program)
            .args(words)
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .status()
            .is_ok_and(|status| status.success())
    };
    let own = program::path();
    let call = program::sample("pressure-lost-over-summer");
    let words: [(&str, Vec<&OsStr>, &'static str, &str); 2] = [
        (
            "returnline --version",
            vec!["--version".as_ref()],
            "Python, nothing but its start",
            "pass",
        ),
        (
            "returnline diagnose",
            vec!["diagnose".as_ref(), call.as_os_str()],
            "Python, import pyagrum alone",
            "import pyagrum",
        ),
    ];
    let mut rows = Vec::new();
    for (name, words, library, script) in words {
        if !run(own.as_os_str(), &words) {
            return Err(format!("{name} failed").into());
        }
        let beside = reference.python().map(|python| {
            let words: [&OsStr; 2] = ["-c".as_ref(), script.as_ref()];
            let answer = if run(python, &words) {
                Answer::Seconds(time(|| run(python, &words)).median)
            } else {
                Answer::None("failed".to_owned())
            };
            (library, answer)
        });
        rows.push(Row {
            what: "start to end",
            work: name.to_owned(),
            own: time(|| run(own.as_os_str(), &words)),
            beside,
        });
    }
    Ok(rows)
}
