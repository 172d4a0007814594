//! Where the system stands and who lives with it.

use crate::units::{Length, Measure};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A site: one address with one or more systems.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Site {
    /// What the company calls it, usually the customer's name or the street.
    pub name: String,
    /// Postal address, as one text.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub address: Option<String>,
    /// The person to talk to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub contact: Option<String>,
    /// Height above sea level; sets the atmosphere for suction checks.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Measure<Length>>,
    /// Anything else.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub notes: Option<String>,
}
