//! Identifiers of records. Made outside (they need a clock and randomness)
//! and passed in.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;
use uuid::Uuid;

macro_rules! record_id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, JsonSchema)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result { self.0.fmt(f) }
        }
        impl std::str::FromStr for $name {
            type Err = uuid::Error;
            fn from_str(text: &str) -> Result<Self, Self::Err> { Uuid::parse_str(text).map(Self) }
        }
    };
}

record_id!(/// Identifies a site.
    SiteId);
record_id!(/// Identifies a system at a site.
    SystemId);
record_id!(/// Identifies a visit.
    VisitId);
record_id!(/// Identifies one reading of a visit.
    ReadingId);
record_id!(/// Identifies one photo of a visit.
    PhotoId);
