//! Checks of single entries: ids, words, references, numbers.

use super::{Fault, Findings, Parsed};
use crate::plan::build::{looked, mode};
use crate::plan::file::{LimitEntry, ProcedureFile};
use crate::plan::id::is_well_formed;
use crate::plan::library::Origin;
use crate::plan::quantity::{QuantityKind, written};
use crate::plan::terms::{
    FlowCentreKind, Hazard, Observation, ProofTime, Rule, Section, Side, Stage, TimerKind,
};
use crate::records::ReadingPoint;
use crate::units::Dimension;
use std::collections::BTreeSet;

type Ids = Vec<(&'static str, fn(&ProcedureFile) -> Vec<&str>)>;

/// The ids of every kind of entry.
fn kinds() -> Ids {
    vec![
        ("source", |file| {
            file.source.iter().map(|entry| entry.id.as_str()).collect()
        }),
        ("caution", |file| {
            file.caution.iter().map(|entry| entry.id.as_str()).collect()
        }),
        ("tool", |file| {
            file.tool.iter().map(|entry| entry.id.as_str()).collect()
        }),
        ("material", |file| {
            file.material
                .iter()
                .map(|entry| entry.id.as_str())
                .collect()
        }),
        ("opening", |file| {
            file.opening.iter().map(|entry| entry.id.as_str()).collect()
        }),
        ("step", |file| {
            file.step.iter().map(|entry| entry.id.as_str()).collect()
        }),
        ("proof", |file| {
            file.proof.iter().map(|entry| entry.id.as_str()).collect()
        }),
        ("procedure", |file| {
            file.procedure
                .iter()
                .map(|entry| entry.id.as_str())
                .collect()
        }),
    ]
}

pub(super) fn ids_well_formed(parsed: &Parsed, out: &mut Findings) {
    for (name, file) in parsed.files() {
        for id in kinds().iter().flat_map(|(_, ids)| ids(file)) {
            if !is_well_formed(id) {
                out.add(name, id, Fault::BadId);
            }
        }
    }
}

pub(super) fn ids_unique(parsed: &Parsed, out: &mut Findings) {
    for (kind, ids) in kinds() {
        let mut seen = BTreeSet::new();
        for (name, file) in parsed.files() {
            for id in ids(file) {
                if !seen.insert(id) {
                    out.add(name, id, Fault::DuplicateId { kind });
                }
            }
        }
    }
}

/// Reports the texts that are none of the known words.
struct Words<'a> {
    file: &'a str,
    subject: &'a str,
    out: &'a mut Findings,
}

impl Words<'_> {
    fn hold<'t>(
        &mut self,
        field: &'static str,
        texts: impl IntoIterator<Item = &'t String>,
        accepted: &[&str],
    ) {
        for text in texts {
            if !accepted.contains(&text.as_str()) {
                let fault = Fault::UnknownTerm {
                    field,
                    found: text.clone(),
                    accepted: accepted.join(", "),
                };
                self.out.add(self.file, self.subject, fault);
            }
        }
    }
}

macro_rules! words {
    ($kind:ty) => {
        <$kind>::ALL
            .iter()
            .map(|item| item.id())
            .collect::<Vec<_>>()
    };
}

pub(super) fn terms_known(parsed: &Parsed, out: &mut Findings) {
    let (hazards, sections) = (words!(Hazard), words!(Section));
    let (stages, sides, rules) = (words!(Stage), words!(Side), words!(Rule));
    let (timers, quantities) = (words!(TimerKind), words!(QuantityKind));
    let (points, observations) = (words!(ReadingPoint), words!(Observation));
    let (centres, times) = (words!(FlowCentreKind), words!(ProofTime));
    for (file, entry) in parsed.located(|file| &file.caution) {
        let subject = &entry.id;
        Words { file, subject, out }.hold("hazards", &entry.hazards, &hazards);
    }
    for (file, entry) in parsed.located(|file| &file.opening) {
        let subject = &entry.id;
        Words { file, subject, out }.hold("section", &entry.section, &sections);
    }
    for (file, entry) in parsed.located(|file| &file.material) {
        let subject = &entry.id;
        Words { file, subject, out }.hold("amounts", &entry.amounts, &quantities);
    }
    for (file, step) in parsed.located(|file| &file.step) {
        let subject = &step.id;
        let mut words = Words { file, subject, out };
        words.hold("stage", [&step.stage], &stages);
        words.hold("side", &step.side, &sides);
        words.hold("hazards", &step.hazards, &hazards);
        words.hold("relieves", &step.relieves, &sections);
        words.hold("shuts", &step.shuts, &sections);
        words.hold("joins", &step.joins, &sections);
        words.hold("pressurises", &step.pressurises, &sections);
        words.hold("at_zero", &step.at_zero, &sections);
        words.hold("quantities", &step.quantities, &quantities);
        words.hold("only_flow_centres", &step.only_flow_centres, &centres);
        for timer in &step.timers {
            words.hold("timers.kind", [&timer.kind], &timers);
            words.hold("timers.quantity", &timer.quantity, &quantities);
        }
        for criterion in &step.gate {
            words.hold("gate.rule", [&criterion.rule], &rules);
            words.hold("gate.reading", &criterion.reading, &points);
            words.hold("gate.observe", &criterion.observe, &observations);
            words.hold("gate.quantity", &criterion.quantity, &quantities);
        }
    }
    for (file, proof) in parsed.located(|file| &file.proof) {
        let subject = &proof.id;
        let mut words = Words { file, subject, out };
        words.hold("reading", [&proof.reading], &points);
        words.hold("when", [&proof.when], &times);
        words.hold("only_flow_centres", &proof.only_flow_centres, &centres);
        let modes = ["idle", "pumps_only", "heating", "cooling"];
        debug_assert!(modes.iter().all(|text| mode(text).is_some()));
        words.hold("mode", [&proof.mode], &modes);
        for end in [&proof.at_least, &proof.at_most].into_iter().flatten() {
            words.hold("quantity", &end.quantity, &quantities);
        }
    }
}

/// Every id of one kind.
fn known(parsed: &Parsed, kind: &str) -> BTreeSet<String> {
    let pick = kinds().into_iter().find(|(name, _)| *name == kind);
    let files = parsed.files().map(|(_, file)| file);
    files
        .flat_map(|file| pick.map_or_else(Vec::new, |(_, ids)| ids(file)))
        .map(str::to_owned)
        .collect()
}

pub(super) fn references_known(parsed: &Parsed, out: &mut Findings) {
    let (steps, cautions) = (known(parsed, "step"), known(parsed, "caution"));
    let (tools, materials) = (known(parsed, "tool"), known(parsed, "material"));
    let (openings, proofs) = (known(parsed, "opening"), known(parsed, "proof"));
    let mut check = |file: &str,
                     subject: &str,
                     field: &'static str,
                     ids: &[String],
                     known: &BTreeSet<String>| {
        for id in ids.iter().filter(|id| !known.contains(*id)) {
            let id = id.clone();
            out.add(file, subject, Fault::UnknownId { field, id });
        }
    };
    for (file, step) in parsed.located(|file| &file.step) {
        for (field, ids, known) in [
            ("cautions", &step.cautions, &cautions),
            ("tools", &step.tools, &tools),
            ("materials", &step.materials, &materials),
            ("needs", &step.needs, &steps),
            ("after", &step.after, &steps),
            ("supersedes", &step.supersedes, &steps),
            ("excludes", &step.excludes, &steps),
            ("opens", &step.opens, &openings),
            ("closes", &step.closes, &openings),
        ] {
            check(file, &step.id, field, ids, known);
        }
        for criterion in &step.gate {
            check(
                file,
                &step.id,
                "gate.return_to",
                &criterion.return_to,
                &steps,
            );
        }
    }
    for (file, procedure) in parsed.located(|file| &file.procedure) {
        check(file, &procedure.id, "steps", &procedure.steps, &steps);
        check(file, &procedure.id, "proofs", &procedure.proofs, &proofs);
    }
}

/// Source marks with the entry that bears them.
pub(super) fn marks(parsed: &Parsed) -> Vec<(&str, &str, &'static str, &str)> {
    let mut all = Vec::new();
    for (file, step) in parsed.located(|file| &file.step) {
        for timer in &step.timers {
            all.push((
                file,
                step.id.as_str(),
                "timers.source",
                timer.source.as_str(),
            ));
        }
        for criterion in &step.gate {
            all.push((
                file,
                step.id.as_str(),
                "gate.source",
                criterion.source.as_str(),
            ));
        }
    }
    for (file, proof) in parsed.located(|file| &file.proof) {
        for end in [&proof.at_least, &proof.at_most].into_iter().flatten() {
            if end.value.is_some() {
                all.push((file, proof.id.as_str(), "source", end.source.as_str()));
            }
        }
    }
    all
}

pub(super) fn sources_marked(parsed: &Parsed, out: &mut Findings) {
    let sources = known(parsed, "source");
    for (file, subject, field, mark) in marks(parsed) {
        let Some(origin) = Origin::parse(mark) else {
            out.add(file, subject, Fault::NoSource { field });
            continue;
        };
        if let Some(id) = origin.source()
            && !sources.contains(id.as_str())
        {
            let id = id.to_string();
            out.add(file, subject, Fault::UnknownId { field, id });
        }
    }
}

pub(super) fn values_fit(parsed: &Parsed, out: &mut Findings) {
    for (file, step) in parsed.located(|file| &file.step) {
        for timer in &step.timers {
            if !(timer.minutes > 0.0 && timer.minutes.is_finite()) {
                let fault = bad("timers.minutes", timer.minutes, "min", Dimension::Duration);
                out.add(file, &step.id, fault);
            }
            quantity_fits(
                "timers",
                timer.quantity.as_ref(),
                Dimension::Duration,
                |fault| {
                    out.add(file, &step.id, fault);
                },
            );
        }
        for criterion in &step.gate {
            let Some((_, dimension)) = looked(criterion) else {
                continue;
            };
            if let Some(value) = criterion.value
                && written(dimension, value, &criterion.unit).is_none()
            {
                let fault = bad("gate.value", value, &criterion.unit, dimension);
                out.add(file, &step.id, fault);
            }
            quantity_fits("gate", criterion.quantity.as_ref(), dimension, |fault| {
                out.add(file, &step.id, fault);
            });
        }
    }
    for (file, proof) in parsed.located(|file| &file.proof) {
        let Some(point) = ReadingPoint::from_id(&proof.reading) else {
            continue;
        };
        for end in [&proof.at_least, &proof.at_most].into_iter().flatten() {
            limit_fits(end, point.kind().dimension(), |fault| {
                out.add(file, &proof.id, fault);
            });
        }
    }
}

fn bad(field: &'static str, value: f64, unit: &str, dimension: Dimension) -> Fault {
    Fault::BadValue {
        field,
        value,
        unit: unit.to_owned(),
        dimension,
    }
}

fn quantity_fits(
    field: &'static str,
    quantity: Option<&String>,
    dimension: Dimension,
    mut report: impl FnMut(Fault),
) {
    if let Some(quantity) = quantity.and_then(|id| QuantityKind::from_id(id))
        && quantity.dimension() != dimension
    {
        report(Fault::WrongKind {
            field,
            quantity: quantity.id().to_owned(),
        });
    }
}

fn limit_fits(end: &LimitEntry, dimension: Dimension, mut report: impl FnMut(Fault)) {
    if let Some(value) = end.value
        && written(dimension, value, &end.unit).is_none()
    {
        report(bad("value", value, &end.unit, dimension));
    }
    if end.value.is_none() && end.quantity.is_none() {
        report(Fault::NoValue { field: "value" });
    }
    quantity_fits("value", end.quantity.as_ref(), dimension, report);
}
