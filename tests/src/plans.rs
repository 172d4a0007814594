//! Treatments to be planned, picked from the library.

use returnline_core::plan::{Library, Treatment};

/// The procedures at these places, each for a cause named after it; places
/// that the library does not have are passed over.
pub fn treatments(library: &Library, picks: &[usize]) -> Vec<Treatment> {
    picks
        .iter()
        .filter_map(|pick| library.procedures().nth(*pick))
        .map(|procedure| Treatment {
            cause: format!("cause-of-{}", procedure.id),
            procedure: procedure.id.clone(),
        })
        .collect()
}
