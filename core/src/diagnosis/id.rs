//! Names of the things in the rule graph, one type for each kind of thing.

use std::fmt;
use std::sync::Arc;

use serde::{Deserialize, Deserializer, Serialize, Serializer};

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

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(Arc<str>);

        impl $name {
            /// The id of this text. Whether a graph knows it is for the graph to say.
            #[must_use]
            pub fn new(text: &str) -> Self {
                Self(Arc::from(text))
            }

            /// The id as written in the graph files.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(&self.0)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                String::deserialize(deserializer).map(|text| Self::new(&text))
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
    /// A cause: a commissioning fault, an imitator, ordinary behaviour, or an instrument that lies.
    CauseId;
    /// A family that causes are grouped under for display and statistics.
    FamilyId;
    /// A mechanism between causes and findings.
    MechanismId;
    /// Something that can be seen, asked or measured.
    FindingId;
    /// What a technician does to learn findings.
    CheckId;
    /// A tool or instrument a check needs at hand.
    ToolId;
    /// A fact about the system or its commissioning that shifts a prior.
    FactId;
    /// A caution shown at the step it belongs to.
    CautionId;
    /// A way that work can hurt someone; cautions answer to it.
    HazardId;
    /// A correction.
    ProcedureId;
    /// A step of a correction.
    StepId;
    /// A published source.
    SourceId;
}

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
