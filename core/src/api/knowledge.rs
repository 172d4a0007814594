//! The shipped rule graph and procedures, loaded once.

use crate::diagnosis::{self, Graph, Scale};
use crate::evidence::TOLD;
use crate::plan::{self, Library};
use crate::records::Level;
use crate::records::visit_file::Vocabulary;
use crate::text::distance;
use std::sync::LazyLock;

/// What the program knows: embedded, read at first use.
pub struct Knowledge {
    /// The rule graph.
    pub graph: Graph,
    /// The procedures.
    pub library: Library,
}

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(|| Knowledge {
    // The shipped files are valid: a test holds it. Should one not be, the
    // program still opens and keeps records, with an empty graph.
    graph: diagnosis::shipped::load().unwrap_or_default(),
    library: plan::load().unwrap_or_default(),
});

/// Catalog key of what is answered under this identifier: a finding, or a fact
/// that the customer tells.
pub(super) fn answer_key(id: &str) -> String {
    let kind = if TOLD.contains(&id) {
        "fact"
    } else {
        "finding"
    };
    format!("{kind}-{id}")
}

/// The shipped knowledge.
pub fn knowledge() -> &'static Knowledge {
    &KNOWLEDGE
}

const PRESENCE: &[Level] = &[Level::Yes, Level::No];
const GRADED: &[Level] = &[Level::Low, Level::Normal, Level::High];
/// How many near misses a message offers.
const NEAR: usize = 3;

impl Vocabulary for Knowledge {
    fn answers(&self, finding: &str) -> Option<&[Level]> {
        if TOLD.contains(&finding) {
            return Some(PRESENCE);
        }
        let finding = self
            .graph
            .findings()
            .iter()
            .find(|known| known.id.as_str() == finding)?;
        Some(match finding.scale {
            Scale::Graded => GRADED,
            Scale::NormallyAbsent | Scale::NormallyPresent => PRESENCE,
        })
    }
    fn has_cause(&self, cause: &str) -> bool {
        self.graph
            .causes()
            .iter()
            .any(|known| known.id.as_str() == cause)
    }
    fn has_check(&self, check: &str) -> bool {
        self.graph
            .checks()
            .iter()
            .any(|known| known.id.as_str() == check)
    }
    fn close_to(&self, unknown: &str) -> Vec<String> {
        let findings = self.graph.findings().iter().map(|known| known.id.as_str());
        let causes = self.graph.causes().iter().map(|known| known.id.as_str());
        let mut near: Vec<(usize, &str)> = findings
            .chain(causes)
            .map(|known| (distance(unknown, known), known))
            .filter(|(slips, known)| *slips <= known.len() / 2)
            .collect();
        near.sort_unstable();
        near.into_iter()
            .take(NEAR)
            .map(|(_, known)| known.to_owned())
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shipped_files_are_valid() {
        assert_eq!(diagnosis::shipped::load().map(|_| ()), Ok(()));
        assert_eq!(plan::load().map(|_| ()), Ok(()));
    }

    #[test]
    fn a_slip_of_the_pen_is_met_with_the_right_name() {
        assert_eq!(
            knowledge().close_to("gurglin").first().map(String::as_str),
            Some("gurgling")
        );
    }
}
