//! The headless program, run as anyone would run it.

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// Path of the built program, beside the folder of this test.
///
/// # Panics
/// When it has not been built: the message says how.
pub fn path() -> PathBuf {
    let own = std::env::current_exe().unwrap_or_default();
    let built = own
        .ancestors()
        .nth(2)
        .map(|folder| folder.join("returnline"))
        .unwrap_or_default();
    assert!(
        built.exists(),
        "{} is missing: run `cargo build --workspace --bins` first",
        built.display()
    );
    built
}

/// Runs it with these words.
///
/// # Panics
/// When it cannot be started.
pub fn run(words: &[&str]) -> Output {
    let output = Command::new(path()).args(words).output();
    output.unwrap_or_else(|error| panic!("the program does not start: {error}"))
}

/// A sample call by its name.
pub fn sample(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../core/data/samples")
        .join(format!("{name}.json"))
}
