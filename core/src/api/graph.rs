//! The rule graph and the procedures as they lie in files: checked, and read
//! aloud.

use super::{ApiError, Wording};
use crate::authored::{ListedProblem, SourceText};
use crate::diagnosis::{self, CauseId, Graph, Link, Parent, Push, Scale, SourceMark};
use crate::evidence;
use crate::plan;
use crate::records::name_of;
use crate::text::Language;
use serde::Serialize;

use super::knowledge::knowledge;

/// What a check of the files found.
#[derive(Clone, PartialEq, Eq, Debug, Serialize)]
pub struct FilesReport {
    /// Every problem.
    pub problems: Vec<ListedProblem>,
    /// How much there is of what, by name; none where files cannot be read.
    pub counts: Vec<(&'static str, usize)>,
}

/// Checks the shipped graph, procedures and texts by every named check.
pub fn check_shipped_files() -> FilesReport {
    check_files(diagnosis::shipped::FILES, plan::FILES)
}

/// Checks graph files and procedure files by every named check: their
/// structure, the evaluators and procedures they name, the plans they make,
/// and whether every text is in the catalogs of this program.
pub fn check_files(graph: &[SourceText<'_>], procedures: &[SourceText<'_>]) -> FilesReport {
    let mut report = FilesReport {
        problems: Vec::new(),
        counts: Vec::new(),
    };
    let languages: Vec<&str> = Language::ALL
        .iter()
        .map(|language| language.tag())
        .collect();
    let has = |tag: &str, key: &str| {
        Language::from_tag(tag).is_some_and(|language| crate::text::catalog(language).has(key))
    };
    match Graph::load(graph) {
        Err(problems) => report
            .problems
            .extend(problems.iter().map(|problem| problem.listed())),
        Ok(graph) => {
            let mut problems = diagnosis::validate::texts(&graph, &languages, has);
            let known = evidence::names();
            problems.extend(diagnosis::validate::evaluators(&graph, &known));
            report
                .problems
                .extend(problems.iter().map(|problem| problem.listed()));
            let links = graph.mechanisms().iter().map(|to| to.parents.len());
            let links = links.chain(graph.findings().iter().map(|to| to.parents.len()));
            report.counts.extend([
                ("causes", graph.causes().len()),
                ("mechanisms", graph.mechanisms().len()),
                ("findings", graph.findings().len()),
                ("links", links.sum()),
                ("checks", graph.checks().len()),
            ]);
        }
    }
    for tag in languages {
        let problems = plan::validate::everything(procedures, tag, |key| has(tag, key));
        report
            .problems
            .extend(problems.iter().map(|problem| problem.listed()));
    }
    if let Ok(library) = plan::Library::load(procedures) {
        report.counts.extend([
            ("procedures", library.procedures().count()),
            ("steps", library.steps().count()),
        ]);
    }
    // What cannot be read is found once for each language.
    let mut listed = std::mem::take(&mut report.problems).into_iter().fold(
        Vec::new(),
        |mut once: Vec<ListedProblem>, problem| {
            if !once.contains(&problem) {
                once.push(problem);
            }
            once
        },
    );
    report.problems.append(&mut listed);
    report
}

/// A cause as a reader wants to see it: what it starts from, and where it leads.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct CauseSheet {
    /// Identifier.
    pub id: String,
    /// Title.
    pub title: String,
    /// Sentence for the homeowner.
    pub homeowner: String,
    /// Share of callbacks in which it is so, before anything is known.
    pub prior: f64,
    /// Where that comes from.
    pub source: String,
    /// The correction, if there is one.
    pub procedure: Option<String>,
    /// Facts that move it: fact, factor if true, factor if false, why, source.
    pub context: Vec<ContextSheet>,
    /// Links that start at it, and at the mechanisms it brings about.
    pub links: Vec<LinkSheet>,
}

/// A fact that moves a prior.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct ContextSheet {
    /// The fact.
    pub fact: String,
    /// Factor on the odds if it is true.
    pub odds: f64,
    /// Factor on the odds if it is false.
    pub odds_if_false: f64,
    /// Why.
    pub why: String,
    /// Who says so.
    pub source: String,
}

/// A link.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct LinkSheet {
    /// Title of where it starts.
    pub from: String,
    /// Title of where it leads.
    pub to: String,
    /// How many mechanisms lie between the cause and its start.
    pub depth: usize,
    /// What it does, in words.
    pub strength: String,
    /// Why.
    pub why: String,
    /// Who says so.
    pub source: String,
}

/// Identifier and title of every cause of the shipped graph, in its order.
#[must_use]
pub fn cause_names(wording: Wording) -> Vec<(String, String)> {
    let named = |id: &CauseId| wording.catalog().text(&format!("cause-{id}"));
    let causes = knowledge().graph.causes().iter();
    causes
        .map(|cause| (cause.id.to_string(), named(&cause.id)))
        .collect()
}

/// A cause of the shipped graph for a reader.
///
/// # Errors
/// [`ApiError`] of code `no-such-name`.
pub fn cause_sheet(id: &str, wording: Wording) -> Result<CauseSheet, ApiError> {
    let graph = &knowledge().graph;
    let catalog = wording.catalog();
    let place = graph.find_cause(&CauseId::new(id)).ok_or_else(|| {
        let what = catalog.text("program-cause");
        ApiError::new("no-such-name", &[("field", &what), ("found", id)], wording)
    })?;
    let cause = graph.cause(place);
    let mut sheet = CauseSheet {
        id: id.to_owned(),
        title: catalog.text(&format!("cause-{id}")),
        homeowner: catalog.text(&format!("cause-{id}.homeowner")),
        prior: cause.prior,
        source: source(graph, &cause.source),
        procedure: cause
            .procedure
            .as_ref()
            .map(|procedure| catalog.text(&format!("procedure-{procedure}"))),
        context: cause
            .context
            .iter()
            .map(|shift| ContextSheet {
                fact: catalog.text(&format!("fact-{}", shift.fact)),
                odds: shift.odds,
                odds_if_false: shift.odds_if_false,
                why: catalog.text(&format!("context-{id}--{}", shift.fact)),
                source: source(graph, &shift.source),
            })
            .collect(),
        links: Vec::new(),
    };
    let mut open = vec![(Parent::Cause(place), 0)];
    let mut seen = Vec::new();
    while let Some((from, depth)) = open.pop() {
        if seen.contains(&from) {
            continue;
        }
        seen.push(from);
        let mut add = |kind: &str, to: &str, links: &[Link], scale: Option<Scale>| {
            let Some(link) = links.iter().find(|link| link.parent == from) else {
                return false;
            };
            let from_id = graph.parent_id(from);
            let from_kind = match from {
                Parent::Cause(_) => "cause",
                Parent::Mechanism(_) => "mechanism",
            };
            sheet.links.push(LinkSheet {
                from: catalog.text(&format!("{from_kind}-{from_id}")),
                to: catalog.text(&format!("{kind}-{to}")),
                depth,
                strength: strength(link.push, scale),
                why: catalog.text(&format!("link-{from_id}--{to}")),
                source: source(graph, &link.source),
            });
            true
        };
        for finding in graph.findings() {
            let scale = Some(finding.scale);
            add("finding", finding.id.as_str(), &finding.parents, scale);
        }
        for (at, mechanism) in graph.mechanism_places().zip(graph.mechanisms()) {
            if add("mechanism", mechanism.id.as_str(), &mechanism.parents, None) {
                open.push((Parent::Mechanism(at), depth + 1));
            }
        }
    }
    Ok(sheet)
}

/// The levels as figures: `0.80`, or `low 0.80`, or `low 0.10, high 0.30`.
fn strength(push: Push, scale: Option<Scale>) -> String {
    if scale != Some(Scale::Graded) {
        return format!("{:.2}", push.high);
    }
    let ends = [("↓", push.low), ("↑", push.high)];
    let ends = ends.iter().filter(|(_, p)| *p > 0.0);
    let ends: Vec<String> = ends.map(|(way, p)| format!("{way} {p:.2}")).collect();
    ends.join(", ")
}

fn source(graph: &Graph, mark: &SourceMark) -> String {
    match mark {
        SourceMark::Published(id) | SourceMark::FromMemoryOf(id) => graph
            .sources()
            .iter()
            .find(|source| source.id == *id)
            .map_or_else(|| id.to_string(), |source| source.citation.clone()),
        other => name_of(other).unwrap_or_default(),
    }
}
