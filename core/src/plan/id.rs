//! Names of the things in the procedure files.

use std::fmt;
use std::sync::Arc;

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(Arc<str>);

        impl $name {
            /// The id of this text. Whether a library knows it is for the library to say.
            pub fn new(text: &str) -> Self {
                Self(Arc::from(text))
            }
            /// The id as written in the procedure files.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }
        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{}({})", stringify!($name), self.0)
            }
        }
    )*};
}

ids! {
    /// A correction: the steps that put one kind of fault right.
    ProcedureId;
    /// A step of work, shared by every procedure that needs it.
    StepId;
    /// A caution shown at the step it belongs to.
    CautionId;
    /// Something brought along and taken home again.
    ToolId;
    /// Something used up or left in the system.
    MaterialId;
    /// Something opened by one step and closed by another.
    OpeningId;
    /// A published source.
    SourceId;
}

/// Whether a text can be an id: lower-case words of letters and digits joined
/// by single hyphens, beginning with a letter.
pub fn is_well_formed(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.split('-').all(|word| {
            !word.is_empty()
                && word
                    .chars()
                    .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit())
        })
}

#[cfg(test)]
mod tests {
    use super::is_well_formed;

    #[test]
    fn ids_are_hyphenated_lower_case_words() {
        assert!(is_well_formed("purge-loop") && is_well_formed("a1"));
        for bad in ["", "Purge", "purge--loop", "-purge", "purge-", "1-a", "a b"] {
            assert!(!is_well_formed(bad), "{bad}");
        }
    }
}
