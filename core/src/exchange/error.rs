//! Why an exchange file is refused.

use super::{FORMAT, VERSION};
use thiserror::Error;

/// A file that cannot be written or taken. Nothing was changed.
#[derive(Debug, Error)]
pub enum ExchangeError {
    /// Not a file of this kind.
    #[error("the file is not of the format {FORMAT}")]
    NotExchange,
    /// Written by a newer program.
    #[error("the file is of version {found}; this program reads up to version {VERSION}")]
    Newer {
        /// Version found.
        found: u64,
    },
    /// The end is missing.
    #[error("the file ends before its last line")]
    Cut,
    /// The bytes are not those that were written.
    #[error("the file is not as it was written: {0}")]
    Altered(String),
    /// A record is not what a record must be.
    #[error("line {line}: {detail}")]
    Malformed {
        /// Line, the header being 1.
        line: u64,
        /// What is wrong.
        detail: String,
    },
    /// More than is read.
    #[error("the file holds more than is read: {0}")]
    TooLarge(&'static str),
    /// Reading or writing failed.
    #[error("{0}")]
    Io(#[from] std::io::Error),
}

impl ExchangeError {
    /// Stable code, the key of its message.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::NotExchange => "exchange-not-ours",
            Self::Newer { .. } => "exchange-newer",
            Self::Cut => "exchange-cut",
            Self::Altered(_) => "exchange-altered",
            Self::Malformed { .. } => "exchange-malformed",
            Self::TooLarge(_) => "exchange-too-large",
            Self::Io(_) => "exchange-io",
        }
    }

    /// What its message is filled with. `detail` is technical; a message stands
    /// without it.
    #[must_use]
    pub fn context(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::NotExchange | Self::Cut => Vec::new(),
            Self::Newer { found } => vec![
                ("found", found.to_string()),
                ("newest", VERSION.to_string()),
            ],
            Self::Malformed { line, detail } => {
                vec![("line", line.to_string()), ("detail", detail.clone())]
            }
            Self::Altered(detail) => vec![("detail", detail.clone())],
            Self::TooLarge(what) => vec![("detail", (*what).to_owned())],
            Self::Io(error) => vec![("detail", error.to_string())],
        }
    }
}
