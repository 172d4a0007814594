//! What data files written by hand have in common: names, texts, and the
//! problems that checks find in them.

pub(crate) mod checks;

pub use checks::Parsed;

use serde::Serialize;

/// Largest file that is read, bytes.
pub const LARGEST_FILE: usize = 1024 * 1024;

/// The text of one file, with its name for messages.
#[derive(Debug, Clone, Copy)]
pub struct SourceText<'a> {
    /// Name of the file.
    pub name: &'a str,
    /// What is in it.
    pub text: &'a str,
}

/// One problem: which check found it, where, and what it is.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{check}: {file}: {subject}: {fault}")]
pub struct Problem<F> {
    /// Name of the check.
    pub check: &'static str,
    /// Name of the file; empty where the problem is of several together.
    pub file: String,
    /// Id of the entry, or `from -> to` of a link.
    pub subject: String,
    /// What is wrong.
    pub fault: F,
}

impl<F: std::fmt::Display> Problem<F> {
    /// The problem in parts that are text, for listing problems of several kinds.
    pub fn listed(&self) -> ListedProblem {
        ListedProblem {
            check: self.check,
            file: self.file.clone(),
            subject: self.subject.clone(),
            fault: self.fault.to_string(),
        }
    }
}

/// A problem whose fault is text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ListedProblem {
    /// Name of the check.
    pub check: &'static str,
    /// Name of the file.
    pub file: String,
    /// Id of the entry.
    pub subject: String,
    /// What is wrong.
    pub fault: String,
}

/// True if `text` can be an id: lower-case words of letters and digits joined
/// by single hyphens, beginning with a letter. The double hyphen is kept free
/// because it joins the two ends of a link in a catalog key.
#[must_use]
pub fn is_well_formed(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.split('-').all(|word| {
            !word.is_empty()
                && word
                    .chars()
                    .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit())
        })
}

/// Makes one id type for each kind of thing.
macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(std::sync::Arc<str>);

        impl $name {
            /// The id of this text. Whether anything is called so is not asked.
            #[must_use]
            pub fn new(text: &str) -> Self {
                Self(std::sync::Arc::from(text))
            }

            /// The id as written in the files.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(&self.0)
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(&self.0)
            }
        }

        impl std::fmt::Debug for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                write!(f, "{}({})", stringify!($name), self.0)
            }
        }
    )*};
}

pub(crate) use ids;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_are_hyphenated_lower_case_words() {
        for good in ["air", "air-in-circuit", "valve-3-way", "a1"] {
            assert!(is_well_formed(good), "{good}");
        }
        for bad in [
            "", "Air", "air--in", "-air", "air-", "3-way", "air in", "air_in",
        ] {
            assert!(!is_well_formed(bad), "{bad}");
        }
    }
}
