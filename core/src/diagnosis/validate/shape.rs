//! Checks of the shape of the graph: ends of links, circles, loose ends, cautions.

use std::collections::{BTreeMap, BTreeSet, HashMap, HashSet};

use super::references::all_ids;
use super::{Fault, Findings, NodeKind, Parsed};
use crate::diagnosis::graph::{CauseKind, EvidenceEntry, LinkEntry};

fn arrow(link: &LinkEntry) -> String {
    format!("{} -> {}", link.from, link.to)
}

fn kinds(parsed: &Parsed) -> HashMap<&str, NodeKind> {
    all_ids(parsed)
        .into_iter()
        .filter(|(_, kind, _)| {
            matches!(
                kind,
                NodeKind::Cause | NodeKind::Mechanism | NodeKind::Finding
            )
        })
        .map(|(_, kind, id)| (id, kind))
        .collect()
}

pub(super) fn links_join_the_right_kinds(parsed: &Parsed, out: &mut Findings) {
    let kinds = kinds(parsed);
    for (file, link) in parsed.located(|file| &file.links) {
        let from = kinds.get(link.from.as_str());
        let to = kinds.get(link.to.as_str());
        for (field, id, kind) in [("from", &link.from, from), ("to", &link.to, to)] {
            if kind.is_none() {
                let expected = if field == "from" {
                    NodeKind::Cause
                } else {
                    NodeKind::Finding
                };
                out.add(
                    file,
                    arrow(link),
                    Fault::UnknownId {
                        field,
                        expected,
                        id: id.clone(),
                    },
                );
            }
        }
        if from == Some(&NodeKind::Finding) || to == Some(&NodeKind::Cause) {
            out.add(file, arrow(link), Fault::WrongEnds);
        }
    }
}

pub(super) fn links_unique(parsed: &Parsed, out: &mut Findings) {
    let mut seen = HashSet::new();
    for (file, link) in parsed.located(|file| &file.links) {
        if !seen.insert((&link.from, &link.to)) {
            out.add(file, arrow(link), Fault::DuplicateLink);
        }
    }
}

/// Adjacency in the direction of the links, or against it.
fn neighbours(parsed: &Parsed, against: bool) -> BTreeMap<&str, Vec<&str>> {
    let mut map: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for link in parsed.each(|file| &file.links) {
        let (from, to) = (link.from.as_str(), link.to.as_str());
        let (from, to) = if against { (to, from) } else { (from, to) };
        map.entry(from).or_default().push(to);
    }
    map
}

fn reached_from<'a>(
    start: impl IntoIterator<Item = &'a str>,
    next: &BTreeMap<&'a str, Vec<&'a str>>,
) -> HashSet<&'a str> {
    let mut seen = HashSet::new();
    let mut open: Vec<&str> = start.into_iter().collect();
    while let Some(id) = open.pop() {
        if seen.insert(id) {
            open.extend(next.get(id).into_iter().flatten());
        }
    }
    seen
}

pub(super) fn no_cycles(parsed: &Parsed, out: &mut Findings) {
    let next = neighbours(parsed, false);
    let mut told: HashSet<&str> = HashSet::new();
    for (file, mechanism) in parsed.located(|file| &file.mechanisms) {
        let start = mechanism.id.as_str();
        if told.contains(start) {
            continue;
        }
        if let Some(path) = circle_through(start, &next) {
            told.extend(&path);
            let path = [path.join(" -> "), start.to_owned()].join(" -> ");
            out.add(file, start, Fault::Cycle { path });
        }
    }
}

/// The shortest way from `start` back to itself.
fn circle_through<'a>(
    start: &'a str,
    next: &BTreeMap<&'a str, Vec<&'a str>>,
) -> Option<Vec<&'a str>> {
    let mut came_from: HashMap<&str, &str> = HashMap::new();
    let mut open = std::collections::VecDeque::from([start]);
    while let Some(id) = open.pop_front() {
        for &to in next.get(id).into_iter().flatten() {
            if to == start {
                let mut path = vec![id];
                let mut at = id;
                while at != start {
                    let Some(&before) = came_from.get(at) else {
                        break;
                    };
                    path.push(before);
                    at = before;
                }
                path.reverse();
                return Some(path);
            }
            if to != id && !came_from.contains_key(to) {
                came_from.insert(to, id);
                open.push_back(to);
            }
        }
    }
    None
}

/// A cause must reach a finding through links; an instrument may instead be
/// the one a finding is read with.
pub(super) fn causes_have_findings(parsed: &Parsed, out: &mut Findings) {
    let against = neighbours(parsed, true);
    let findings = parsed
        .each(|file| &file.findings)
        .map(|finding| finding.id.as_str());
    let reached = reached_from(findings, &against);
    let read_with: HashSet<&str> = parsed
        .each(|file| &file.findings)
        .filter_map(|f| f.instrument.as_deref())
        .collect();
    for (file, cause) in parsed.located(|file| &file.causes) {
        let id = cause.id.as_str();
        let reads = cause.kind == CauseKind::Instrument && read_with.contains(id);
        if !reached.contains(id) && !reads {
            out.add(file, id, Fault::ReachesNoFinding);
        }
    }
}

pub(super) fn mechanisms_are_between(parsed: &Parsed, out: &mut Findings) {
    let findings = parsed
        .each(|file| &file.findings)
        .map(|finding| finding.id.as_str());
    let causes = parsed
        .each(|file| &file.causes)
        .map(|cause| cause.id.as_str());
    let to_findings = reached_from(findings, &neighbours(parsed, true));
    let from_causes = reached_from(causes, &neighbours(parsed, false));
    for (file, mechanism) in parsed.located(|file| &file.mechanisms) {
        let id = mechanism.id.as_str();
        if !to_findings.contains(id) {
            out.add(file, id, Fault::ReachesNoFinding);
        }
        if !from_causes.contains(id) {
            out.add(file, id, Fault::ReachedByNoCause);
        }
    }
}

pub(super) fn findings_have_causes(parsed: &Parsed, out: &mut Findings) {
    let causes = parsed
        .each(|file| &file.causes)
        .map(|cause| cause.id.as_str());
    let from_causes = reached_from(causes, &neighbours(parsed, false));
    for (file, finding) in parsed.located(|file| &file.findings) {
        if !from_causes.contains(finding.id.as_str()) {
            out.add(file, &finding.id, Fault::ReachedByNoCause);
        }
    }
}

/// A symptom is told without being looked for; everything else needs a check.
pub(super) fn findings_have_checks(parsed: &Parsed, out: &mut Findings) {
    let revealed: HashSet<&str> = parsed
        .each(|file| &file.checks)
        .flat_map(|check| check.reveals.iter().map(String::as_str))
        .collect();
    for (file, finding) in parsed.located(|file| &file.findings) {
        let is_looked_for = !matches!(finding.evidence, EvidenceEntry::Symptom);
        if is_looked_for && !revealed.contains(finding.id.as_str()) {
            out.add(file, &finding.id, Fault::NoCheck);
        }
    }
}

pub(super) fn checks_have_findings(parsed: &Parsed, out: &mut Findings) {
    for (file, check) in parsed.located(|file| &file.checks) {
        if check.reveals.is_empty() {
            out.add(file, &check.id, Fault::RevealsNothing);
        }
    }
}

pub(super) fn nothing_unused(parsed: &Parsed, out: &mut Findings) {
    let mut used: BTreeSet<(NodeKind, &str)> = BTreeSet::new();
    for cause in parsed.each(|file| &file.causes) {
        used.insert((NodeKind::Family, &cause.family));
        used.extend(
            cause
                .procedure
                .iter()
                .map(|id| (NodeKind::Procedure, id.as_str())),
        );
        used.extend(
            cause
                .context
                .iter()
                .map(|shift| (NodeKind::Fact, shift.fact.as_str())),
        );
        used.extend(cause.only_if.iter().map(|id| (NodeKind::Fact, id.as_str())));
        used.extend(cause.not_if.iter().map(|id| (NodeKind::Fact, id.as_str())));
    }
    for check in parsed.each(|file| &file.checks) {
        used.extend(check.tools.iter().map(|id| (NodeKind::Tool, id.as_str())));
        used.extend(
            check
                .cautions
                .iter()
                .map(|id| (NodeKind::Caution, id.as_str())),
        );
        used.extend(
            check
                .hazards
                .iter()
                .map(|id| (NodeKind::Hazard, id.as_str())),
        );
        used.extend(check.only_if.iter().map(|id| (NodeKind::Fact, id.as_str())));
        used.extend(check.not_if.iter().map(|id| (NodeKind::Fact, id.as_str())));
    }
    for caution in parsed.each(|file| &file.cautions) {
        used.extend(
            caution
                .hazards
                .iter()
                .map(|id| (NodeKind::Hazard, id.as_str())),
        );
    }
    for step in parsed
        .each(|file| &file.procedures)
        .flat_map(|procedure| &procedure.steps)
    {
        used.extend(
            step.cautions
                .iter()
                .map(|id| (NodeKind::Caution, id.as_str())),
        );
        used.extend(
            step.hazards
                .iter()
                .map(|id| (NodeKind::Hazard, id.as_str())),
        );
    }
    for (file, kind, id) in all_ids(parsed) {
        let must_be_used = matches!(
            kind,
            NodeKind::Family
                | NodeKind::Procedure
                | NodeKind::Fact
                | NodeKind::Tool
                | NodeKind::Caution
                | NodeKind::Hazard
        );
        if must_be_used && !used.contains(&(kind, id)) {
            out.add(file, id, Fault::Unused);
        }
    }
}

/// Each hazard of a check or step must be answered by a caution shown there.
pub(super) fn hazards_have_cautions(parsed: &Parsed, out: &mut Findings) {
    let answers: HashMap<&str, &[String]> = parsed
        .each(|file| &file.cautions)
        .map(|caution| (caution.id.as_str(), caution.hazards.as_slice()))
        .collect();
    let mut need = |file: &str, subject: String, hazards: &[String], cautions: &[String]| {
        let answered: HashSet<&String> = cautions
            .iter()
            .filter_map(|id| answers.get(id.as_str()))
            .copied()
            .flatten()
            .collect();
        for hazard in hazards.iter().filter(|hazard| !answered.contains(hazard)) {
            let hazard = hazard.clone();
            out.add(
                file,
                subject.as_str(),
                Fault::HazardWithoutCaution { hazard },
            );
        }
    };
    for (file, check) in parsed.located(|file| &file.checks) {
        need(file, check.id.clone(), &check.hazards, &check.cautions);
    }
    for (file, procedure) in parsed.located(|file| &file.procedures) {
        for step in &procedure.steps {
            let subject = format!("{}/{}", procedure.id, step.id);
            need(file, subject, &step.hazards, &step.cautions);
        }
    }
}
