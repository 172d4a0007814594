//! How a failed command reaches the interface.

use std::collections::BTreeMap;

use serde::Serialize;

/// A failure the interface can act on by its code and show by its message.
#[derive(Debug, Clone, Serialize)]
pub struct ApiError {
    /// Stable name of the failure.
    pub code: String,
    /// What happened, for a person.
    pub message: String,
    /// Named values that belong to the failure.
    pub context: BTreeMap<String, String>,
}
