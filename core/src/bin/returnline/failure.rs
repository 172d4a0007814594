//! How the program ends when it cannot do what was asked.

use returnline_core::api::ApiError;
use std::fmt::Display;
use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

/// Why the program stopped.
pub enum Failure {
    /// Something could not be read or written: exit code 1.
    Io(String),
    /// The input is not acceptable: exit code 3.
    Input(String),
    /// Whoever reads our output has gone: silence, exit code 0.
    ReaderGone,
}

impl Failure {
    /// A file that could not be read or written.
    pub fn file(path: &Path, error: &dyn Display) -> Self {
        Self::Io(format!("{}: {error}", path.display()))
    }
    /// An answer of the engine.
    pub fn api(error: &ApiError) -> Self {
        match error.code.as_str() {
            "bad-visit-file" | "bad-learned-file" | "own-learned-file" | "no-such-name" => {
                Self::Input(error.message.clone())
            }
            _ => Self::Io(error.message.clone()),
        }
    }
    /// Says why and gives the exit code.
    pub fn report(self) -> ExitCode {
        let (message, code) = match self {
            Self::Io(message) => (message, 1),
            Self::Input(message) => (message, 3),
            Self::ReaderGone => return ExitCode::SUCCESS,
        };
        // When even the error stream is gone, the exit code must do.
        let _ = writeln!(io::stderr(), "returnline: {message}");
        ExitCode::from(code)
    }
}

impl From<io::Error> for Failure {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::BrokenPipe => Self::ReaderGone,
            _ => Self::Io(error.to_string()),
        }
    }
}
