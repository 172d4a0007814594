//! Checks of how entries hang together.

use super::entries::marks;
use super::{Fault, Findings, Parsed};
use crate::plan::file::StepEntry;
use crate::plan::library::Origin;
use crate::plan::terms::{Side, Stage};
use std::collections::{BTreeMap, BTreeSet};

type Steps<'a> = BTreeMap<&'a str, &'a StepEntry>;

fn steps(parsed: &Parsed) -> Steps<'_> {
    parsed
        .each(|file| &file.step)
        .map(|step| (step.id.as_str(), step))
        .collect()
}

/// A step and all that it brings along by `pick`, transitively.
fn closure<'a>(
    steps: &Steps<'a>,
    from: &'a str,
    pick: fn(&StepEntry) -> &Vec<String>,
) -> BTreeSet<&'a str> {
    let mut all = BTreeSet::new();
    let mut waiting = vec![from];
    while let Some(id) = waiting.pop() {
        if let Some(step) = steps.get(id)
            && all.insert(id)
        {
            waiting.extend(pick(step).iter().map(String::as_str));
        }
    }
    all
}

fn answered(parsed: &Parsed) -> BTreeMap<&str, &Vec<String>> {
    parsed
        .each(|file| &file.caution)
        .map(|caution| (caution.id.as_str(), &caution.hazards))
        .collect()
}

pub(super) fn hazards_have_cautions(parsed: &Parsed, out: &mut Findings) {
    let answers = answered(parsed);
    for (file, step) in parsed.located(|file| &file.step) {
        for hazard in &step.hazards {
            let mut cautions = step.cautions.iter();
            if !cautions.any(|id| {
                answers
                    .get(id.as_str())
                    .is_some_and(|all| all.contains(hazard))
            }) {
                let hazard = hazard.clone();
                out.add(file, &step.id, Fault::HazardWithoutCaution { hazard });
            }
        }
    }
}

pub(super) fn cautions_have_hazards(parsed: &Parsed, out: &mut Findings) {
    let answers = answered(parsed);
    for (file, step) in parsed.located(|file| &file.step) {
        for caution in &step.cautions {
            let answers_one = answers
                .get(caution.as_str())
                .is_none_or(|all| all.iter().any(|hazard| step.hazards.contains(hazard)));
            if !answers_one {
                let caution = caution.clone();
                out.add(file, &step.id, Fault::CautionWithoutHazard { caution });
            }
        }
    }
}

pub(super) fn gates_have_pass_values(parsed: &Parsed, out: &mut Findings) {
    for (file, step) in parsed.located(|file| &file.step) {
        for criterion in &step.gate {
            if criterion.value.is_none() {
                out.add(file, &step.id, Fault::NoValue { field: "gate" });
            }
            if criterion.reading.is_some() == criterion.observe.is_some() {
                out.add(file, &step.id, Fault::LooksAtNothing);
            }
            if criterion.return_to.is_empty() {
                out.add(file, &step.id, Fault::NoWayBack);
            }
        }
    }
}

fn place(step: &StepEntry) -> Option<(Stage, Side)> {
    let side = match &step.side {
        None => Side::Any,
        Some(side) => Side::from_id(side)?,
    };
    Some((Stage::from_id(&step.stage)?, side))
}

/// A step to go back to is of an earlier stage or side, or of the same with
/// the gate placed after it.
pub(super) fn returns_come_before(parsed: &Parsed, out: &mut Findings) {
    let steps = steps(parsed);
    for (file, step) in parsed.located(|file| &file.step) {
        let earlier = closure(&steps, &step.id, |step| &step.after);
        for id in step.gate.iter().flat_map(|criterion| &criterion.return_to) {
            let Some(back) = steps.get(id.as_str()) else {
                continue;
            };
            let before = place(back) < place(step)
                || (place(back) == place(step)
                    && back.id != step.id
                    && earlier.contains(back.id.as_str()));
            if !before {
                let id = id.clone();
                out.add(file, &step.id, Fault::ReturnNotBefore { id });
            }
        }
    }
}

pub(super) fn after_within_stage(parsed: &Parsed, out: &mut Findings) {
    let steps = steps(parsed);
    for (file, step) in parsed.located(|file| &file.step) {
        for id in &step.after {
            if steps
                .get(id.as_str())
                .is_some_and(|other| place(other) != place(step))
            {
                let id = id.clone();
                out.add(file, &step.id, Fault::AfterElsewhere { id });
            }
        }
    }
}

pub(super) fn openings_are_closed(parsed: &Parsed, out: &mut Findings) {
    let steps = steps(parsed);
    for (file, step) in parsed.located(|file| &file.step) {
        let along = closure(&steps, &step.id, |step| &step.needs);
        for opening in &step.opens {
            let closed = along.iter().any(|id| {
                steps
                    .get(id)
                    .is_some_and(|other| other.closes.contains(opening))
            });
            if !closed {
                let opening = opening.clone();
                out.add(file, &step.id, Fault::NotClosed { opening });
            }
        }
    }
}

pub(super) fn proofs_have_ends(parsed: &Parsed, out: &mut Findings) {
    for (file, proof) in parsed.located(|file| &file.proof) {
        if proof.at_least.is_none() && proof.at_most.is_none() {
            out.add(file, &proof.id, Fault::NoEnd);
        }
    }
}

pub(super) fn steps_reachable(parsed: &Parsed, out: &mut Findings) {
    let steps = steps(parsed);
    let reached: BTreeSet<&str> = parsed
        .each(|file| &file.procedure)
        .flat_map(|procedure| &procedure.steps)
        .flat_map(|id| closure(&steps, id, |step| &step.needs))
        .collect();
    for (file, step) in parsed.located(|file| &file.step) {
        if !reached.contains(step.id.as_str()) {
            out.add(file, &step.id, Fault::Unreachable);
        }
    }
}

pub(super) fn nothing_unused(parsed: &Parsed, out: &mut Findings) {
    let mut used: BTreeSet<(&str, String)> = BTreeSet::new();
    for step in parsed.each(|file| &file.step) {
        for (kind, ids) in [
            ("caution", &step.cautions),
            ("tool", &step.tools),
            ("material", &step.materials),
            ("opening", &step.opens),
        ] {
            used.extend(ids.iter().map(|id| (kind, id.clone())));
        }
    }
    for procedure in parsed.each(|file| &file.procedure) {
        used.extend(procedure.proofs.iter().map(|id| ("proof", id.clone())));
    }
    for (_, _, _, mark) in marks(parsed) {
        if let Some(id) = Origin::parse(mark).and_then(|origin| origin.source().cloned()) {
            used.insert(("source", id.to_string()));
        }
    }
    let mut check = |kind: &'static str, file: &str, id: &str| {
        if !used.contains(&(kind, id.to_owned())) {
            out.add(file, id, Fault::Unused);
        }
    };
    for (file, entry) in parsed.located(|file| &file.source) {
        check("source", file, &entry.id);
    }
    for (file, entry) in parsed.located(|file| &file.caution) {
        check("caution", file, &entry.id);
    }
    for (file, entry) in parsed.located(|file| &file.tool) {
        check("tool", file, &entry.id);
    }
    for (file, entry) in parsed.located(|file| &file.material) {
        check("material", file, &entry.id);
    }
    for (file, entry) in parsed.located(|file| &file.opening) {
        check("opening", file, &entry.id);
    }
    for (file, entry) in parsed.located(|file| &file.proof) {
        check("proof", file, &entry.id);
    }
    for (file, entry) in parsed.located(|file| &file.material) {
        for amount in &entry.amounts {
            let shown = |step: &StepEntry| {
                step.materials.contains(&entry.id) && step.quantities.contains(amount)
            };
            if !parsed.each(|file| &file.step).any(shown) {
                out.add(file, format!("{} {amount}", entry.id), Fault::Unused);
            }
        }
    }
}
