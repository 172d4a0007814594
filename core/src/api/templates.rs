//! Usual systems to start from, invented and of no maker.

use super::types::{TemplateView, VisitView};
use super::{ApiError, Engine};
use crate::records::System;

/// Identifier and system of each, in the order offered. Label and note are
/// `template-<id>` and `template-<id>.note`.
const TEMPLATES: &[(&str, &str)] = &[
    (
        "vertical-sealed",
        include_str!("../../data/templates/vertical-sealed.json"),
    ),
    (
        "horizontal-sealed",
        include_str!("../../data/templates/horizontal-sealed.json"),
    ),
    (
        "vertical-vented",
        include_str!("../../data/templates/vertical-vented.json"),
    ),
    (
        "pond-sealed",
        include_str!("../../data/templates/pond-sealed.json"),
    ),
];

impl Engine {
    /// Usual systems to start from.
    pub fn templates(&self) -> Vec<TemplateView> {
        let catalog = self.wording.catalog();
        TEMPLATES
            .iter()
            .map(|(id, _)| TemplateView {
                id: (*id).to_owned(),
                label: catalog.text(&format!("template-{id}")),
                note: catalog.text(&format!("template-{id}.note")),
            })
            .collect()
    }

    /// Takes a usual system as this visit's, in place of what was known.
    ///
    /// # Errors
    /// [`ApiError`] of code `no-such-name`.
    pub fn use_template(&mut self, visit: &str, template: &str) -> Result<VisitView, ApiError> {
        let found = TEMPLATES.iter().find(|(id, _)| *id == template);
        let system = found.and_then(|(_, text)| serde_json::from_str::<System>(text).ok());
        let system = system.ok_or_else(|| {
            let context = [("field", "template"), ("found", template)];
            ApiError::new("no-such-name", &context, self.wording)
        })?;
        self.replace_system(visit, system)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::visit_file::{VisitFile, check_limits};
    use crate::text::{Language, catalog};

    #[test]
    fn every_template_is_a_system_within_limits_with_its_words() {
        for (id, text) in TEMPLATES {
            let system: System = serde_json::from_str(text).expect(id);
            let file = VisitFile {
                system,
                ..VisitFile::default()
            };
            assert_eq!(check_limits(&file), [], "{id}");
            for language in Language::ALL {
                for key in [format!("template-{id}"), format!("template-{id}.note")] {
                    assert!(catalog(language).has(&key), "{key}");
                }
            }
        }
    }
}
