//! Questions that need no number, in groups for a screen.

use super::Engine;
use super::knowledge::{answer_key, knowledge};
use super::types::{ChoiceView, QuestionGroupView, QuestionView};
use crate::diagnosis::EvidenceKind;
use crate::evidence::TOLD;
use crate::records::visit_file::Vocabulary;
use crate::records::{Visit, name_of};
use serde::Deserialize;
use std::sync::LazyLock;

const GROUPS_FILE: &str = include_str!("../../data/questions.toml");
/// Where a question goes that no group lists.
const OTHER: &str = "other";

#[derive(Deserialize)]
struct GroupsFile {
    group: Vec<Group>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Group {
    id: String,
    sort: String,
    #[serde(default)]
    open: bool,
    questions: Vec<String>,
}

static GROUPS: LazyLock<Vec<Group>> = LazyLock::new(|| {
    // A test holds the shipped file; without groups all stand under one.
    toml::from_str::<GroupsFile>(GROUPS_FILE).map_or_else(|_| Vec::new(), |file| file.group)
});

/// Every question with its sort: what the customer tells of the beginning,
/// symptoms, and what is seen, heard and felt.
fn asked() -> impl Iterator<Item = (&'static str, &'static str)> {
    let sort = |evidence: &EvidenceKind| match evidence {
        EvidenceKind::Symptom => Some("symptom"),
        EvidenceKind::Observation => Some("observation"),
        EvidenceKind::Evaluator(_) => None,
    };
    let findings = knowledge().graph.findings().iter();
    let findings =
        findings.filter_map(move |finding| Some((finding.id.as_str(), sort(&finding.evidence)?)));
    TOLD.iter().map(|fact| (*fact, "symptom")).chain(findings)
}

impl Engine {
    /// Everything that is answered without a number: symptoms first, then what
    /// is seen, heard and felt, each in its groups.
    pub(super) fn question_groups(&self, visit: &Visit) -> Vec<QuestionGroupView> {
        let known: Vec<(&str, &str)> = asked().collect();
        let listed = |id: &str| {
            GROUPS
                .iter()
                .any(|group| group.questions.iter().any(|q| q == id))
        };
        let mut groups = Vec::new();
        for sort in ["symptom", "observation"] {
            for group in GROUPS.iter().filter(|group| group.sort == sort) {
                let questions = group
                    .questions
                    .iter()
                    .filter(|id| known.contains(&(id.as_str(), sort)))
                    .filter_map(|id| self.question(id, sort, visit));
                groups.push(self.question_group(&group.id, sort, group.open, questions.collect()));
            }
            let left = known.iter().filter(|(id, of)| *of == sort && !listed(id));
            let left: Vec<_> = left
                .filter_map(|(id, _)| self.question(id, sort, visit))
                .collect();
            groups.push(self.question_group(OTHER, sort, false, left));
        }
        groups.retain(|group| !group.questions.is_empty());
        groups
    }

    fn question_group(
        &self,
        id: &str,
        sort: &str,
        open: bool,
        questions: Vec<QuestionView>,
    ) -> QuestionGroupView {
        QuestionGroupView {
            id: format!("{sort}-{id}"),
            label: self
                .wording
                .catalog()
                .text(&format!("questions-{sort}-{id}")),
            sort: sort.to_owned(),
            open,
            questions,
        }
    }

    fn question(&self, id: &str, sort: &str, visit: &Visit) -> Option<QuestionView> {
        let catalog = self.wording.catalog();
        let given = visit.answers.iter().find(|answer| answer.finding == id);
        let levels = knowledge().answers(id)?.iter().filter_map(name_of);
        Some(QuestionView {
            finding: id.to_owned(),
            label: catalog.text(&answer_key(id)),
            sort: sort.to_owned(),
            answers: levels
                .map(|value| ChoiceView {
                    label: catalog.text(&format!("answer-{value}")),
                    value,
                })
                .collect(),
            answer: given.and_then(|answer| name_of(&answer.is)),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::{Language, catalog};

    #[test]
    fn every_group_lists_questions_that_exist_once_and_has_a_label() {
        let file: GroupsFile = toml::from_str(GROUPS_FILE).expect("reads");
        let known: Vec<_> = asked().collect();
        let mut seen = Vec::new();
        for group in &file.group {
            for id in &group.questions {
                let asked = (id.as_str(), group.sort.as_str());
                assert!(known.contains(&asked), "{}: {id}", group.id);
                assert!(!seen.contains(id), "{id} stands twice");
                seen.push(id.clone());
            }
            for language in Language::ALL {
                let key = format!("questions-{}-{}", group.sort, group.id);
                assert!(catalog(language).has(&key), "{key}");
            }
        }
    }
}
