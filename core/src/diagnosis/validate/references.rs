//! Checks of ids, references and source marks.

use std::collections::{BTreeMap, HashSet};

use super::numbers;
use super::{Fault, Findings, NodeKind, Parsed};
use crate::diagnosis::graph::{CauseKind, SourceMark};
use crate::diagnosis::id::is_well_formed;

/// Every entry with an id: file, kind, id.
pub(super) fn all_ids(parsed: &Parsed) -> Vec<(&str, NodeKind, &str)> {
    let mut all = Vec::new();
    macro_rules! collect {
        ($($field:ident: $kind:ident),* $(,)?) => {$(
            all.extend(parsed.located(|file| &file.$field)
                .map(|(file, entry)| (file, NodeKind::$kind, entry.id.as_str())));
        )*};
    }
    collect!(
        causes: Cause,
        mechanisms: Mechanism,
        findings: Finding,
        checks: Check,
        cautions: Caution,
        procedures: Procedure,
        facts: Fact,
        tools: Tool,
        hazards: Hazard,
        families: Family,
        sources: Source,
    );
    all
}

pub(super) fn ids_well_formed(parsed: &Parsed, out: &mut Findings) {
    for (file, _, id) in all_ids(parsed) {
        if !is_well_formed(id) {
            out.add(file, id, Fault::BadId);
        }
    }
    for (file, procedure) in parsed.located(|file| &file.procedures) {
        for step in procedure
            .steps
            .iter()
            .filter(|step| !is_well_formed(&step.id))
        {
            out.add(file, format!("{}/{}", procedure.id, step.id), Fault::BadId);
        }
    }
}

/// Causes, mechanisms and findings share one name space, because links name
/// them without their kind; every other kind has its own.
pub(super) fn ids_unique(parsed: &Parsed, out: &mut Findings) {
    let space = |kind| match kind {
        NodeKind::Mechanism | NodeKind::Finding => NodeKind::Cause,
        other => other,
    };
    let mut seen = BTreeMap::new();
    for (file, kind, id) in all_ids(parsed) {
        match seen.get(&(space(kind), id)) {
            Some(&(first, first_file)) => {
                let first_file = String::from(first_file);
                out.add(file, id, Fault::DuplicateId { first, first_file });
            }
            None => {
                seen.insert((space(kind), id), (kind, file));
            }
        }
    }
    for (file, procedure) in parsed.located(|file| &file.procedures) {
        let mut steps = HashSet::new();
        for step in procedure
            .steps
            .iter()
            .filter(|step| !steps.insert(step.id.as_str()))
        {
            let fault = Fault::DuplicateId {
                first: NodeKind::Procedure,
                first_file: file.to_owned(),
            };
            out.add(file, format!("{}/{}", procedure.id, step.id), fault);
        }
    }
}

pub(super) fn references_known(parsed: &Parsed, out: &mut Findings) {
    let known: HashSet<(NodeKind, &str)> = all_ids(parsed)
        .into_iter()
        .map(|(_, kind, id)| (kind, id))
        .collect();
    let mut need = |file: &str, subject: &str, field: &'static str, expected, ids: &[String]| {
        for id in ids
            .iter()
            .filter(|id| !known.contains(&(expected, id.as_str())))
        {
            let id = id.clone();
            out.add(
                file,
                subject,
                Fault::UnknownId {
                    field,
                    expected,
                    id,
                },
            );
        }
    };
    for (file, cause) in parsed.located(|file| &file.causes) {
        need(
            file,
            &cause.id,
            "family",
            NodeKind::Family,
            std::slice::from_ref(&cause.family),
        );
        need(
            file,
            &cause.id,
            "procedure",
            NodeKind::Procedure,
            cause.procedure.as_slice(),
        );
        need(file, &cause.id, "only_if", NodeKind::Fact, &cause.only_if);
        need(file, &cause.id, "not_if", NodeKind::Fact, &cause.not_if);
        need(
            file,
            &cause.id,
            "calls_with",
            NodeKind::Finding,
            &cause.calls_with,
        );
        for shift in &cause.context {
            need(
                file,
                &cause.id,
                "context",
                NodeKind::Fact,
                std::slice::from_ref(&shift.fact),
            );
        }
    }
    for (file, finding) in parsed.located(|file| &file.findings) {
        need(
            file,
            &finding.id,
            "instrument",
            NodeKind::Cause,
            finding.instrument.as_slice(),
        );
    }
    for (file, check) in parsed.located(|file| &file.checks) {
        need(file, &check.id, "tools", NodeKind::Tool, &check.tools);
        need(file, &check.id, "hazards", NodeKind::Hazard, &check.hazards);
        need(
            file,
            &check.id,
            "cautions",
            NodeKind::Caution,
            &check.cautions,
        );
        need(
            file,
            &check.id,
            "reveals",
            NodeKind::Finding,
            &check.reveals,
        );
        need(file, &check.id, "only_if", NodeKind::Fact, &check.only_if);
        need(file, &check.id, "not_if", NodeKind::Fact, &check.not_if);
    }
    for (file, caution) in parsed.located(|file| &file.cautions) {
        need(
            file,
            &caution.id,
            "hazards",
            NodeKind::Hazard,
            &caution.hazards,
        );
    }
    for (file, procedure) in parsed.located(|file| &file.procedures) {
        for step in &procedure.steps {
            let subject = format!("{}/{}", procedure.id, step.id);
            need(file, &subject, "hazards", NodeKind::Hazard, &step.hazards);
            need(
                file,
                &subject,
                "cautions",
                NodeKind::Caution,
                &step.cautions,
            );
        }
    }
}

pub(super) fn instruments_are_instruments(parsed: &Parsed, out: &mut Findings) {
    let other_causes: HashSet<&str> = parsed
        .each(|file| &file.causes)
        .filter(|cause| cause.kind != CauseKind::Instrument)
        .map(|cause| cause.id.as_str())
        .collect();
    for (file, finding) in parsed.located(|file| &file.findings) {
        if let Some(id) = finding.instrument.as_ref()
            && other_causes.contains(id.as_str())
        {
            out.add(file, &finding.id, Fault::NotAnInstrument { id: id.clone() });
        }
    }
}

pub(super) fn sources_marked(parsed: &Parsed, out: &mut Findings) {
    let known: HashSet<&str> = parsed
        .each(|file| &file.sources)
        .map(|source| source.id.as_str())
        .collect();
    let mut mark = |file: &str, subject: String, text: &str| {
        if text.is_empty() {
            out.add(file, subject, Fault::NoSource);
        } else if let Some(source) = SourceMark::parse(text).source_id()
            && !known.contains(source.as_str())
        {
            let id = source.to_string();
            let fault = Fault::UnknownId {
                field: "source",
                expected: NodeKind::Source,
                id,
            };
            out.add(file, subject, fault);
        }
    };
    for (file, call) in parsed.located(|file| &file.calls) {
        mark(file, numbers::CALL.to_owned(), &call.source);
    }
    for (file, cause) in parsed.located(|file| &file.causes) {
        mark(file, cause.id.clone(), &cause.source);
        for shift in &cause.context {
            mark(
                file,
                format!("{} context {}", cause.id, shift.fact),
                &shift.source,
            );
        }
    }
    for (file, entry) in parsed.located(|file| &file.mechanisms) {
        mark(file, entry.id.clone(), &entry.source);
    }
    for (file, entry) in parsed.located(|file| &file.findings) {
        mark(file, entry.id.clone(), &entry.source);
    }
    for (file, entry) in parsed.located(|file| &file.checks) {
        mark(file, entry.id.clone(), &entry.source);
    }
    for (file, link) in parsed.located(|file| &file.links) {
        mark(file, format!("{} -> {}", link.from, link.to), &link.source);
    }
}
