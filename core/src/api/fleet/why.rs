//! Where the figures of the board come from.

use super::super::types::FigureView;
use super::super::{ApiError, Engine};

/// Parts of the board that are worked out each in its own way.
const PARTS: [&str; 7] = [
    "causes",
    "waiting",
    "differences",
    "repeats",
    "fixes",
    "practice",
    "rates",
];

impl Engine {
    /// How a part of the board is counted; the parts by group are named `rates-…`.
    ///
    /// # Errors
    /// [`ApiError`] of code `no-such-name`.
    pub fn explain_board(&self, part: &str) -> Result<FigureView, ApiError> {
        let family = part.split('-').next().unwrap_or(part);
        let known = PARTS.into_iter().find(|known| *known == family);
        let known = known.ok_or_else(|| {
            let context = [("field", "part"), ("found", part)];
            ApiError::new("no-such-name", &context, self.wording)
        })?;
        let catalog = self.wording.catalog();
        Ok(FigureView {
            measured: None,
            expected: None,
            formula: catalog.text(&format!("fleet-why-{known}")),
            inputs: Vec::new(),
            source: catalog.text(&format!("fleet-why-{known}.source")),
        })
    }
}

#[cfg(test)]
mod tests {
    use crate::api::tests::engine;

    #[test]
    fn every_part_says_how_it_is_counted_and_by_whose_method() {
        let engine = engine();
        for part in super::PARTS.into_iter().chain(["rates-crew"]) {
            let told = engine.explain_board(part).expect("explained");
            assert!(!told.formula.contains("fleet-why"), "{part}: {told:?}");
            assert!(!told.source.contains("fleet-why"), "{part}: {told:?}");
        }
        let error = engine.explain_board("weather").expect_err("refused");
        assert!(error.message.contains("weather"), "{error:?}");
    }
}
