//! From validated files to a resolved graph.
//!
//! Everything here leans on the checks of `validate`: an entry that a check
//! would have refused is left out rather than guessed at.

use std::collections::HashMap;

use super::file::{
    CallEntry, CauseEntry, CheckEntry, EvidenceEntry, FindingEntry, LevelsEntry, LinkEntry,
    MechanismEntry, NormalEntry, ProcedureEntry,
};
use super::{
    CallModel, Cause, CauseIx, Caution, Check, ContextShift, EvidenceKind, Finding, FindingIx,
    Graph, Link, Mechanism, MechanismIx, Parent, Procedure, Push, Scale, Source, SourceMark, Step,
};
use crate::diagnosis::id::{
    CauseId, CautionId, CheckId, FactId, FamilyId, FindingId, HazardId, MechanismId, ProcedureId,
    SourceId, StepId, ToolId,
};
use crate::diagnosis::validate::Parsed;

/// Resolves files that have passed [`crate::diagnosis::validate::structure`].
pub(in crate::diagnosis) fn resolve(parsed: &Parsed) -> Graph {
    let places = Places::of(parsed);
    let call = parsed.each(|file| &file.calls).next();
    let mut graph = Graph {
        call: call.map(|entry| CallModel {
            leak: entry.leak,
            source: SourceMark::parse(&entry.source),
        }),
        causes: parsed
            .each(|file| &file.causes)
            .map(|entry| cause(entry, call, &places))
            .collect(),
        mechanisms: parsed
            .each(|file| &file.mechanisms)
            .map(mechanism)
            .collect(),
        findings: parsed
            .each(|file| &file.findings)
            .map(|entry| finding(entry, &places))
            .collect(),
        checks: parsed
            .each(|file| &file.checks)
            .map(|entry| check(entry, &places))
            .collect(),
        cautions: parsed
            .each(|file| &file.cautions)
            .map(|entry| Caution {
                id: CautionId::new(&entry.id),
                hazards: ids(&entry.hazards, HazardId::new),
            })
            .collect(),
        procedures: parsed
            .each(|file| &file.procedures)
            .map(procedure)
            .collect(),
        sources: parsed
            .each(|file| &file.sources)
            .map(|entry| Source {
                id: SourceId::new(&entry.id),
                citation: entry.citation.clone(),
            })
            .collect(),
        facts: parsed
            .each(|file| &file.facts)
            .map(|entry| FactId::new(&entry.id))
            .collect(),
        tools: parsed
            .each(|file| &file.tools)
            .map(|entry| ToolId::new(&entry.id))
            .collect(),
        hazards: parsed
            .each(|file| &file.hazards)
            .map(|entry| HazardId::new(&entry.id))
            .collect(),
        families: parsed
            .each(|file| &file.families)
            .map(|entry| FamilyId::new(&entry.id))
            .collect(),
        cause_places: HashMap::new(),
        finding_places: HashMap::new(),
    };
    for entry in parsed.each(|file| &file.links) {
        add_link(&mut graph, entry, &places);
    }
    graph.cause_places = graph
        .causes
        .iter()
        .enumerate()
        .map(|(at, c)| (c.id.clone(), CauseIx(at)))
        .collect();
    graph.finding_places = graph
        .findings
        .iter()
        .enumerate()
        .map(|(at, f)| (f.id.clone(), FindingIx(at)))
        .collect();
    graph
}

struct Places<'a> {
    causes: HashMap<&'a str, CauseIx>,
    mechanisms: HashMap<&'a str, MechanismIx>,
    findings: HashMap<&'a str, FindingIx>,
}

impl<'a> Places<'a> {
    fn of(parsed: &'a Parsed) -> Self {
        let named = |at_id: (usize, &'a str)| (at_id.1, at_id.0);
        Self {
            causes: parsed
                .each(|file| &file.causes)
                .map(|entry| entry.id.as_str())
                .enumerate()
                .map(named)
                .map(|(id, at)| (id, CauseIx(at)))
                .collect(),
            mechanisms: parsed
                .each(|file| &file.mechanisms)
                .map(|entry| entry.id.as_str())
                .enumerate()
                .map(named)
                .map(|(id, at)| (id, MechanismIx(at)))
                .collect(),
            findings: parsed
                .each(|file| &file.findings)
                .map(|entry| entry.id.as_str())
                .enumerate()
                .map(named)
                .map(|(id, at)| (id, FindingIx(at)))
                .collect(),
        }
    }

    fn findings(&self, ids: &[String]) -> Vec<FindingIx> {
        ids.iter()
            .filter_map(|id| self.findings.get(id.as_str()))
            .copied()
            .collect()
    }

    fn parent(&self, id: &str) -> Option<Parent> {
        match self.causes.get(id) {
            Some(&place) => Some(Parent::Cause(place)),
            None => self
                .mechanisms
                .get(id)
                .map(|&place| Parent::Mechanism(place)),
        }
    }
}

fn ids<T>(texts: &[String], new: impl Fn(&str) -> T) -> Vec<T> {
    texts.iter().map(|text| new(text)).collect()
}

fn cause(entry: &CauseEntry, call: Option<&CallEntry>, places: &Places<'_>) -> Cause {
    Cause {
        id: CauseId::new(&entry.id),
        family: FamilyId::new(&entry.family),
        kind: entry.kind,
        status: entry.status,
        prior: entry.prior,
        source: SourceMark::parse(&entry.source),
        calls: call.map_or(0.0, |call| {
            entry.calls.unwrap_or_else(|| call.of(entry.kind))
        }),
        calls_with: places.findings(&entry.calls_with),
        procedure: entry.procedure.as_deref().map(ProcedureId::new),
        context: entry
            .context
            .iter()
            .map(|shift| ContextShift {
                fact: FactId::new(&shift.fact),
                odds: shift.odds,
                odds_if_false: shift.odds_if_false,
                source: SourceMark::parse(&shift.source),
            })
            .collect(),
        only_if: ids(&entry.only_if, FactId::new),
        not_if: ids(&entry.not_if, FactId::new),
    }
}

fn mechanism(entry: &MechanismEntry) -> Mechanism {
    Mechanism {
        id: MechanismId::new(&entry.id),
        leak: entry.leak,
        source: SourceMark::parse(&entry.source),
        parents: Vec::new(),
    }
}

fn finding(entry: &FindingEntry, places: &Places<'_>) -> Finding {
    let (scale, leak) = match (entry.levels, entry.normal.unwrap_or_default()) {
        (LevelsEntry::Presence, normal) => {
            let scale = match normal {
                NormalEntry::Absent => Scale::NormallyAbsent,
                NormalEntry::Present => Scale::NormallyPresent,
            };
            (
                scale,
                Push {
                    low: 0.0,
                    high: entry.leak.unwrap_or(0.0),
                },
            )
        }
        (LevelsEntry::Graded, _) => (
            Scale::Graded,
            Push {
                low: entry.leak_low.unwrap_or(0.0),
                high: entry.leak_high.unwrap_or(0.0),
            },
        ),
    };
    Finding {
        id: FindingId::new(&entry.id),
        scale,
        leak,
        evidence: match &entry.evidence {
            EvidenceEntry::Symptom => EvidenceKind::Symptom,
            EvidenceEntry::Observation => EvidenceKind::Observation,
            EvidenceEntry::Evaluator(name) => EvidenceKind::Evaluator(name.clone()),
        },
        instrument: entry
            .instrument
            .as_deref()
            .and_then(|id| places.causes.get(id))
            .copied(),
        reliability: entry.reliability,
        source: SourceMark::parse(&entry.source),
        parents: Vec::new(),
    }
}

fn check(entry: &CheckEntry, places: &Places<'_>) -> Check {
    Check {
        id: CheckId::new(&entry.id),
        minutes: entry.minutes,
        tools: ids(&entry.tools, ToolId::new),
        licence: entry.licence,
        hazards: ids(&entry.hazards, HazardId::new),
        cautions: ids(&entry.cautions, CautionId::new),
        reveals: places.findings(&entry.reveals),
        only_if: ids(&entry.only_if, FactId::new),
        not_if: ids(&entry.not_if, FactId::new),
        source: SourceMark::parse(&entry.source),
    }
}

fn procedure(entry: &ProcedureEntry) -> Procedure {
    Procedure {
        id: ProcedureId::new(&entry.id),
        steps: entry
            .steps
            .iter()
            .map(|step| Step {
                id: StepId::new(&step.id),
                hazards: ids(&step.hazards, HazardId::new),
                cautions: ids(&step.cautions, CautionId::new),
            })
            .collect(),
    }
}

fn add_link(graph: &mut Graph, entry: &LinkEntry, places: &Places<'_>) {
    let Some(parent) = places.parent(&entry.from) else {
        return;
    };
    let source = SourceMark::parse(&entry.source);
    let push = match entry.strength {
        Some(strength) => Push {
            low: 0.0,
            high: strength,
        },
        None => Push {
            low: entry.low.unwrap_or(0.0),
            high: entry.high.unwrap_or(0.0),
        },
    };
    let link = Link {
        parent,
        push,
        source,
    };
    if let Some(place) = places.mechanisms.get(entry.to.as_str()) {
        graph.mechanisms[place.0].parents.push(link);
    } else if let Some(place) = places.findings.get(entry.to.as_str()) {
        graph.findings[place.0].parents.push(link);
    }
}
