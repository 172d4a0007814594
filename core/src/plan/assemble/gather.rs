//! Which steps the procedures need, and in what order.

use super::{AssembleError, Situation};
use crate::plan::id::{ProcedureId, StepId};
use crate::plan::library::{Library, Step};
use crate::plan::work::{Correction, PlanNote};
use std::collections::{BTreeMap, BTreeSet};

/// A step brought together, with the rank of the first cause that needs it.
pub(super) struct Gathered<'a> {
    pub(super) step: &'a Step,
    rank: usize,
    found: usize,
    pub(super) serves: Vec<ProcedureId>,
}

pub(super) type Gathering<'a> = BTreeMap<&'a StepId, Gathered<'a>>;

/// Every step that the procedures need, without the banned ones.
fn gather<'a>(
    library: &'a Library,
    corrections: &[Correction],
    situation: &Situation,
    banned: &BTreeSet<&'a StepId>,
) -> Gathering<'a> {
    let mut all: Gathering<'a> = BTreeMap::new();
    for (rank, correction) in corrections.iter().enumerate() {
        let Some(procedure) = library.procedure(&correction.procedure) else {
            continue;
        };
        let mut seen = BTreeSet::new();
        let mut waiting: Vec<&'a StepId> = procedure.steps.iter().rev().collect();
        while let Some(id) = waiting.pop() {
            let Some(step) = library.step(id) else {
                continue;
            };
            if banned.contains(id)
                || step.only.applies(situation) == Some(false)
                || !seen.insert(id)
            {
                continue;
            }
            let found = all.len();
            all.entry(&step.id)
                .or_insert_with(|| Gathered {
                    step,
                    rank,
                    found,
                    serves: Vec::new(),
                })
                .serves
                .push(correction.procedure.clone());
            waiting.extend(step.needs.iter().rev());
        }
    }
    all
}

/// Gathers, leaving out what is needless or undone, until nothing changes.
/// Every round bans one more step, so it ends.
pub(super) fn reduce<'a>(
    library: &'a Library,
    corrections: &[Correction],
    situation: &Situation,
    notes: &mut Vec<PlanNote>,
) -> Gathering<'a> {
    let mut banned = BTreeSet::new();
    loop {
        let all = gather(library, corrections, situation, &banned);
        let Some(note) = superseded(&all).or_else(|| excluded(&all)) else {
            return all;
        };
        let (PlanNote::Superseded { dropped, .. } | PlanNote::Excluded { dropped, .. }) = &note
        else {
            return all;
        };
        match library.step(dropped) {
            Some(step) => banned.insert(&step.id),
            None => return all,
        };
        notes.push(note);
    }
}

fn superseded(all: &Gathering<'_>) -> Option<PlanNote> {
    all.values().find_map(|kept| {
        let dropped = kept
            .step
            .supersedes
            .iter()
            .find(|id| all.contains_key(id))?;
        Some(PlanNote::Superseded {
            kept: kept.step.id.clone(),
            dropped: dropped.clone(),
        })
    })
}

fn excluded(all: &Gathering<'_>) -> Option<PlanNote> {
    let pairs = all.values().flat_map(|one| {
        let others = one.step.excludes.iter().filter_map(|id| all.get(id));
        others.map(move |other| (one, other))
    });
    let worst_last = |(one, other): (&Gathered<'_>, &Gathered<'_>)| {
        let (kept, dropped) = if (one.rank, one.found) <= (other.rank, other.found) {
            (one, other)
        } else {
            (other, one)
        };
        PlanNote::Excluded {
            kept: kept.step.id.clone(),
            dropped: dropped.step.id.clone(),
        }
    };
    pairs.map(worst_last).next()
}

/// Topological order: stage, side, `after`, rank.
pub(super) fn order(all: Gathering<'_>) -> Result<Vec<Gathered<'_>>, AssembleError> {
    let mut waiting: Vec<Gathered<'_>> = all.into_values().collect();
    waiting.sort_by_key(|gathered| {
        (
            gathered.step.stage,
            gathered.step.side,
            gathered.rank,
            gathered.found,
        )
    });
    let mut ordered = Vec::with_capacity(waiting.len());
    while !waiting.is_empty() {
        let (stage, side) = (waiting[0].step.stage, waiting[0].step.side);
        let blocked = |step: &Step| {
            waiting.iter().any(|other| {
                (other.step.stage, other.step.side) == (stage, side)
                    && step.after.contains(&other.step.id)
            })
        };
        let next = waiting.iter().position(|gathered| {
            (gathered.step.stage, gathered.step.side) == (stage, side) && !blocked(gathered.step)
        });
        match next {
            Some(index) => ordered.push(waiting.remove(index)),
            None => {
                return Err(AssembleError::Circle {
                    step: waiting[0].step.id.clone(),
                });
            }
        }
    }
    Ok(ordered)
}
