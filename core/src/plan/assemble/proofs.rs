//! The readings that prove the work.

use super::Situation;
use super::steps::{borne, computed, rating, usual};
use crate::plan::library::{Library, Proof, ProofLimit};
use crate::plan::quantity::{Lack, Sheet};
use crate::plan::work::{Basis, Correction, PlannedProof};
use crate::records::{Instrument, ReadingPoint};
use std::collections::BTreeSet;

/// The readings that prove the corrections, each at one time once.
pub(super) fn proofs(
    library: &Library,
    corrections: &[Correction],
    situation: &Situation,
    sheet: &Sheet,
) -> Vec<PlannedProof> {
    let named = corrections
        .iter()
        .filter_map(|correction| library.procedure(&correction.procedure))
        .flat_map(|procedure| &procedure.proofs);
    let mut proofs: Vec<(&Proof, PlannedProof)> = Vec::new();
    for proof in named.filter_map(|id| library.proof(id)) {
        let planned = planned_proof(proof, sheet);
        // One reading at one time is held to one band: that of this loop, if there is one.
        let same = proofs.iter_mut().find(|(_, other)| {
            (other.reading, other.mode, other.when) == (planned.reading, planned.mode, planned.when)
        });
        if let Some((_, other)) = same {
            if is_worked_out(&planned) && !is_worked_out(other) {
                *other = planned;
            }
            continue;
        }
        if proof.only.applies(situation) != Some(false) && has_meaning(&planned, sheet) {
            proofs.push((proof, planned));
        }
    }
    proofs.sort_by_key(|(proof, _)| (proof.when, proof.reading));
    proofs.into_iter().map(|(_, planned)| planned).collect()
}

/// The proofs without those of the flow by a meter in doubt, where exchanger drop or
/// electric input of the circulators tell it.
pub(super) fn without(
    proofs: Vec<PlannedProof>,
    doubted: &BTreeSet<Instrument>,
) -> Vec<PlannedProof> {
    use ReadingPoint::{CirculatorPower, ExchangerDrop, Flow};
    let in_doubt = |proof: &PlannedProof| doubted.contains(&proof.reading.usual_instrument());
    let tells_flow = |proof: &PlannedProof| {
        let tells = [CirculatorPower, ExchangerDrop].contains(&proof.reading);
        tells && proof.at_least.is_some() && !in_doubt(proof)
    };
    let told = proofs.iter().any(tells_flow);
    let kept = |proof: &PlannedProof| !(told && proof.reading == Flow && in_doubt(proof));
    proofs.into_iter().filter(kept).collect()
}

/// Whether a band is computed for this loop at either end.
fn is_worked_out(proof: &PlannedProof) -> bool {
    let mut ends = [&proof.at_least, &proof.at_most].into_iter().flatten();
    ends.any(|end| matches!(end.basis, Basis::Computed(_)))
}

/// Whether a proof says anything here: not where its limit is one of another season.
fn has_meaning(proof: &PlannedProof, sheet: &Sheet) -> bool {
    let mut lacking = sheet.lacking.iter();
    let beside = lacking
        .any(|lacking| lacking.lack == Lack::Cooling && proof.wanted.contains(&lacking.kind));
    !(beside && proof.at_least.is_none() && proof.at_most.is_none())
}

fn planned_proof(proof: &Proof, sheet: &Sheet) -> PlannedProof {
    let limit = |end: &ProofLimit| {
        let fallback = end.fallback.as_ref();
        computed(sheet, end.quantity)
            .or_else(|| fallback.map(|(value, origin)| usual(*value, origin, end.quantity)))
    };
    let ends = || [&proof.at_least, &proof.at_most].into_iter().flatten();
    PlannedProof {
        reading: proof.reading,
        mode: proof.mode,
        when: proof.when,
        // A usual lower end that is too much for this system says nothing about it.
        at_least: (proof.at_least.as_ref().and_then(limit))
            .filter(|end| rating(proof.reading, end, sheet).is_none()),
        at_most: (proof.at_most.as_ref().and_then(limit))
            .map(|end| borne(proof.reading, end, sheet)),
        wanted: ends().filter_map(|end| end.quantity).collect(),
    }
}
